//! A conductance matrix in red-black order, and the sweeps that run over it.
//!
//! Even padded indices make colour 0 and odd ones colour 1; all neighbours of a cell are of the other
//! colour (see [`pad`](crate::conduction::conductance_matrix::pad)). The neighbours of the p-th cell of a colour
//! stand at a fixed distance from p in the other colour's array, whatever row it is in, so that
//! every sweep is one flat loop.

use core::ops::{Add, Mul, Range, Sub};

use crate::conduction::conductance_matrix::ConductanceMatrix;

/// The floating-point types a matrix is stored in.
pub(super) trait Real:
    Copy + Default + Add<Output = Self> + Sub<Output = Self> + Mul<Output = Self>
{
    /// To this type, never above a positive value.
    ///
    /// Conductances and inverse diagonals rounded towards zero keep the matrix positive definite.
    fn from_f64_down(value: f64) -> Self;
}

impl Real for f64 {
    fn from_f64_down(value: f64) -> Self {
        value
    }
}

impl Real for f32 {
    fn from_f64_down(value: f64) -> Self {
        // Rounding to nearest adds at most half a unit in the last place.
        (value * (1.0 - 0.5 * f64::from(Self::EPSILON))) as Self
    }
}

/// How the cells of a grid are laid out by colour.
#[derive(Clone, Debug)]
pub(super) struct Layout {
    /// Distance in padded indices to the next cell along each axis that has more than one; all odd.
    strides: Vec<usize>,
    /// Cells of each colour, padding included.
    pub sizes: [usize; 2],
    /// Zeros kept on both hands of an array, so that no neighbour falls outside.
    pub halo: usize,
}

impl Layout {
    /// The cells of one colour that a sweep over both takes at a time.
    pub const CHUNK: usize = 4096;

    pub fn new(matrix: &ConductanceMatrix) -> Self {
        let cells = matrix.cells();
        let axes = (0..3).filter(|&d| matrix.counts[d] > 1);
        let strides: Vec<usize> = axes.map(|d| matrix.stride(d)).collect();
        let halo = strides.iter().map(|stride| stride.div_ceil(2)).max().unwrap_or(0);
        Self { strides, sizes: [cells.div_ceil(2), cells / 2], halo }
    }

    /// The length of one colour's array.
    pub const fn colour_length(&self) -> usize {
        self.sizes[0] + 2 * self.halo
    }

    /// Where a cell stands in an array of both colours.
    pub const fn position(&self, padded_index: usize) -> usize {
        (padded_index % 2) * self.colour_length() + self.halo + padded_index / 2
    }

    /// How far the next and the previous neighbour stand in the other colour's array.
    const fn neighbour_offsets(colour: usize, stride: usize) -> (usize, usize) {
        let (less, more) = ((stride - 1) / 2, stride.div_ceil(2));
        if colour == 0 { (less, more) } else { (more, less) }
    }

    /// Cuts a sweep over both colours into chunks that stay in the cache. For each chunk: a range of
    /// colour 1 that is to be made ready, a range of colour 0 whose neighbours then are, and a range
    /// of colour 1 whose neighbours have all been visited and which no later chunk looks at.
    pub fn chunks(&self) -> impl Iterator<Item = [Range<usize>; 3]> + use<> {
        let ([n0, n1], reach) = (self.sizes, self.halo);
        let ahead = move |end: usize| if end == n0 { n1 } else { (end + reach).min(n1) };
        let behind = move |end: usize| if end == n0 { n1 } else { end.saturating_sub(reach) };
        (0..n0).step_by(Self::CHUNK).map(move |from| {
            let to = (from + Self::CHUNK).min(n0);
            let ready = if from == 0 { 0 } else { ahead(from) };
            let done = if from == 0 { 0 } else { behind(from) };
            [ready..ahead(to), from..to, done..behind(to)]
        })
    }
}

/// Values of one colour, or those of them that are still in a window.
#[derive(Clone, Copy)]
pub(super) struct ColourView<'a, T> {
    pub entries: &'a [T],
    /// Where the first entry stands in the array of the whole colour, halo included.
    pub first: usize,
}

impl<'a, T> From<&'a [T]> for ColourView<'a, T> {
    /// All values of a colour.
    fn from(entries: &'a [T]) -> Self {
        Self { entries, first: 0 }
    }
}

impl<'a, T> From<&'a mut [T]> for ColourView<'a, T> {
    fn from(entries: &'a mut [T]) -> Self {
        Self { entries, first: 0 }
    }
}

impl<'a, T> From<&'a Vec<T>> for ColourView<'a, T> {
    fn from(entries: &'a Vec<T>) -> Self {
        Self { entries, first: 0 }
    }
}

/// A conductance matrix by colour.
#[derive(Clone, Debug)]
pub(super) struct RedBlackMatrix<T> {
    pub layout: Layout,
    /// For each axis of the layout, the conductance between every cell and its next: the negative of
    /// the entry off the diagonal.
    off_diagonals: Vec<Vec<T>>,
    /// The inverse of the diagonal; zero where there is no cell.
    inverse_diagonal: Vec<T>,
}

impl<T: Real> RedBlackMatrix<T> {
    pub fn new(matrix: &ConductanceMatrix, diagonal: &[f64]) -> Self {
        let layout = Layout::new(matrix);
        let used = matrix.neighbour_conductance.iter().filter(|entries| !entries.is_empty());
        let off_diagonals =
            used.map(|entries| sort_by_colour(&layout, entries, T::from_f64_down)).collect();
        let invert = |d: f64| T::from_f64_down(if d > 0.0 { 1.0 / d } else { 0.0 });
        let inverse_diagonal = sort_by_colour(&layout, diagonal, invert);
        Self { layout, off_diagonals, inverse_diagonal }
    }

    /// An array of one colour, all zero.
    pub fn zeros(&self) -> Vec<T> {
        vec![T::default(); self.layout.colour_length()]
    }

    /// The inverse diagonal of a range of cells of a colour.
    pub fn inverse_diagonal(&self, colour: usize, range: &Range<usize>) -> &[T] {
        &self.inverse_diagonal[colour * self.layout.colour_length() + self.layout.halo..]
            [range.clone()]
    }

    /// For every cell of a range of a colour, hands its index in the range and the sum of conductance
    /// times value over its neighbours to `combine`, and stores what that returns.
    ///
    /// `values` are the other colour's; `out` has the length of the range.
    #[inline(always)]
    pub fn sweep<'a>(
        &self,
        colour: usize,
        range: &Range<usize>,
        values: impl Into<ColourView<'a, T>>,
        out: &mut [T],
        combine: impl Fn(usize, T) -> T,
    ) where
        T: 'a,
    {
        let values = values.into();
        match self.off_diagonals.len() {
            0 => out.iter_mut().enumerate().for_each(|(p, out)| *out = combine(p, T::default())),
            1 => self.sweep_axes::<1, 2>(colour, range, values, out, combine),
            2 => self.sweep_axes::<2, 4>(colour, range, values, out, combine),
            _ => self.sweep_axes::<3, 6>(colour, range, values, out, combine),
        }
    }

    #[inline(always)]
    fn sweep_axes<const AXES: usize, const NEIGHBOURS: usize>(
        &self,
        colour: usize,
        range: &Range<usize>,
        values: ColourView<'_, T>,
        out: &mut [T],
        combine: impl Fn(usize, T) -> T,
    ) {
        let ColourView { entries, first: hidden } = values;
        let (colour_length, n) = (self.layout.colour_length(), range.len());
        let first = self.layout.halo + range.start;
        let shown = first - hidden;
        let mut pairs: [(&[T], &[T]); NEIGHBOURS] = [(&[], &[]); NEIGHBOURS];
        for axis in 0..AXES {
            let (next, previous) = Layout::neighbour_offsets(colour, self.layout.strides[axis]);
            let own = &self.off_diagonals[axis][colour * colour_length + first..][..n];
            let others =
                &self.off_diagonals[axis][(1 - colour) * colour_length + first - previous..][..n];
            pairs[2 * axis] = (own, &entries[shown + next..][..n]);
            pairs[2 * axis + 1] = (others, &entries[shown - previous..][..n]);
        }
        let out = &mut out[..n];
        for p in 0..n {
            let mut sum = T::default();
            for (conductances, values) in pairs {
                sum = sum + conductances[p] * values[p];
            }
            out[p] = combine(p, sum);
        }
    }
}

/// Sorts entries in padded order by colour, both with their halos.
fn sort_by_colour<T: Real>(layout: &Layout, entries: &[f64], convert: impl Fn(f64) -> T) -> Vec<T> {
    let mut sorted = vec![T::default(); 2 * layout.colour_length()];
    let (even, odd) = sorted.split_at_mut(layout.colour_length());
    let (even, odd) = (&mut even[layout.halo..], &mut odd[layout.halo..]);
    let pairs = entries.chunks_exact(2);
    if let [last] = pairs.remainder() {
        even[entries.len() / 2] = convert(*last);
    }
    for ((even, odd), pair) in even.iter_mut().zip(odd).zip(pairs) {
        *even = convert(pair[0]);
        *odd = convert(pair[1]);
    }
    sorted
}
