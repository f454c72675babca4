//! A network stored by colour, and the sweeps that run over it.
//!
//! Even numbers make one colour and odd numbers the other; all neighbours of a cell are of the other
//! colour (see [`pad`](crate::conduction::network::pad)). The neighbours of the p-th cell of a colour
//! stand at a fixed distance from p in the other colour's array, whatever row it is in, so that
//! every sweep is one flat loop.

use core::ops::{Add, Mul, Range, Sub};

use crate::conduction::network::Network;

/// The floating-point types a network is stored in.
pub(super) trait Real:
    Copy + Default + Add<Output = Self> + Sub<Output = Self> + Mul<Output = Self>
{
    /// To this type, never above a positive value.
    ///
    /// Conductances and inverse diagonals rounded towards zero keep the network positive definite.
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

/// How the cells of a network are laid out by colour.
#[derive(Clone, Debug)]
pub(super) struct Layout {
    /// Distance to the next cell along each axis that has more than one, in numbers; all odd.
    steps: Vec<usize>,
    /// Cells of each colour, padding included.
    pub sizes: [usize; 2],
    /// Zeros kept on both hands of an array, so that no neighbour falls outside.
    pub halo: usize,
}

impl Layout {
    /// The cells of one colour that a pass over both takes at a time.
    pub const PIECE: usize = 4096;

    pub fn new(network: &Network) -> Self {
        let cells = network.cells();
        let axes = (0..3).filter(|&d| network.counts[d] > 1);
        let steps: Vec<usize> = axes.map(|d| network.stride(d)).collect();
        let halo = steps.iter().map(|step| step.div_ceil(2)).max().unwrap_or(0);
        Self { steps, sizes: [cells.div_ceil(2), cells / 2], halo }
    }

    /// The length of one colour's array.
    pub const fn stride(&self) -> usize {
        self.sizes[0] + 2 * self.halo
    }

    /// Where a cell stands in an array of both colours.
    pub const fn position(&self, number: usize) -> usize {
        (number % 2) * self.stride() + self.halo + number / 2
    }

    /// How far the next and the previous neighbour stand in the other colour's array.
    const fn reach(colour: usize, step: usize) -> (usize, usize) {
        let (less, more) = ((step - 1) / 2, step.div_ceil(2));
        if colour == 0 { (less, more) } else { (more, less) }
    }

    /// Cuts a pass over both colours into pieces that stay in the cache. For each piece: a range of
    /// colour 1 that is to be made ready, a range of colour 0 whose neighbours then are, and a range
    /// of colour 1 whose neighbours have all been visited and which no later piece looks at.
    pub fn pieces(&self) -> impl Iterator<Item = [Range<usize>; 3]> + use<> {
        let ([n0, n1], reach) = (self.sizes, self.halo);
        let ahead = move |end: usize| if end == n0 { n1 } else { (end + reach).min(n1) };
        let behind = move |end: usize| if end == n0 { n1 } else { end.saturating_sub(reach) };
        (0..n0).step_by(Self::PIECE).map(move |from| {
            let to = (from + Self::PIECE).min(n0);
            let ready = if from == 0 { 0 } else { ahead(from) };
            let done = if from == 0 { 0 } else { behind(from) };
            [ready..ahead(to), from..to, done..behind(to)]
        })
    }
}

/// Values of one colour, or those of them that are still at hand.
#[derive(Clone, Copy)]
pub(super) struct Values<'a, T> {
    pub entries: &'a [T],
    /// Where the first entry stands in the array of the whole colour, halo included.
    pub first: usize,
}

impl<'a, T> From<&'a [T]> for Values<'a, T> {
    /// All values of a colour.
    fn from(entries: &'a [T]) -> Self {
        Self { entries, first: 0 }
    }
}

impl<'a, T> From<&'a mut [T]> for Values<'a, T> {
    fn from(entries: &'a mut [T]) -> Self {
        Self { entries, first: 0 }
    }
}

impl<'a, T> From<&'a Vec<T>> for Values<'a, T> {
    fn from(entries: &'a Vec<T>) -> Self {
        Self { entries, first: 0 }
    }
}

/// The conductances of a network by colour.
#[derive(Clone, Debug)]
pub(super) struct Coloured<T> {
    pub layout: Layout,
    /// For each axis of the layout, joins every cell with its next.
    links: Vec<Vec<T>>,
    /// The inverse of the sum of all conductances that end in a cell; zero where there is no cell.
    inverse: Vec<T>,
}

impl<T: Real> Coloured<T> {
    pub fn new(network: &Network, diagonal: &[f64]) -> Self {
        let layout = Layout::new(network);
        let used = network.between.iter().filter(|joins| !joins.is_empty());
        let links = used.map(|joins| split(&layout, joins, T::from_f64_down)).collect();
        let invert = |d: f64| T::from_f64_down(if d > 0.0 { 1.0 / d } else { 0.0 });
        let inverse = split(&layout, diagonal, invert);
        Self { layout, links, inverse }
    }

    /// An array of one colour, all zero.
    pub fn zeros(&self) -> Vec<T> {
        vec![T::default(); self.layout.stride()]
    }

    /// The inverse diagonal of a range of cells of a colour.
    pub fn inverse(&self, colour: usize, range: &Range<usize>) -> &[T] {
        &self.inverse[colour * self.layout.stride() + self.layout.halo..][range.clone()]
    }

    /// For every cell of a range of a colour, hands its place in the range and the sum of conductance
    /// times value over its neighbours to `finish`, and stores what that returns.
    ///
    /// `values` are the other colour's; `out` has the length of the range.
    #[inline(always)]
    pub fn sweep<'a>(
        &self,
        colour: usize,
        range: &Range<usize>,
        values: impl Into<Values<'a, T>>,
        out: &mut [T],
        finish: impl Fn(usize, T) -> T,
    ) where
        T: 'a,
    {
        let values = values.into();
        match self.links.len() {
            0 => out.iter_mut().enumerate().for_each(|(p, out)| *out = finish(p, T::default())),
            1 => self.sweep_axes::<1, 2>(colour, range, values, out, finish),
            2 => self.sweep_axes::<2, 4>(colour, range, values, out, finish),
            _ => self.sweep_axes::<3, 6>(colour, range, values, out, finish),
        }
    }

    #[inline(always)]
    fn sweep_axes<const AXES: usize, const LINKS: usize>(
        &self,
        colour: usize,
        range: &Range<usize>,
        values: Values<'_, T>,
        out: &mut [T],
        finish: impl Fn(usize, T) -> T,
    ) {
        let Values { entries, first: hidden } = values;
        let (stride, n) = (self.layout.stride(), range.len());
        let first = self.layout.halo + range.start;
        let shown = first - hidden;
        let mut pairs: [(&[T], &[T]); LINKS] = [(&[], &[]); LINKS];
        for axis in 0..AXES {
            let (next, previous) = Layout::reach(colour, self.layout.steps[axis]);
            let own = &self.links[axis][colour * stride + first..][..n];
            let others = &self.links[axis][(1 - colour) * stride + first - previous..][..n];
            pairs[2 * axis] = (own, &entries[shown + next..][..n]);
            pairs[2 * axis + 1] = (others, &entries[shown - previous..][..n]);
        }
        let out = &mut out[..n];
        for p in 0..n {
            let mut sum = T::default();
            for (conductances, values) in pairs {
                sum = sum + conductances[p] * values[p];
            }
            out[p] = finish(p, sum);
        }
    }
}

/// Sorts the entries of a network by colour, both with their halos.
fn split<T: Real>(layout: &Layout, entries: &[f64], turn: impl Fn(f64) -> T) -> Vec<T> {
    let mut sorted = vec![T::default(); 2 * layout.stride()];
    let (even, odd) = sorted.split_at_mut(layout.stride());
    let (even, odd) = (&mut even[layout.halo..], &mut odd[layout.halo..]);
    let pairs = entries.chunks_exact(2);
    if let [last] = pairs.remainder() {
        even[entries.len() / 2] = turn(*last);
    }
    for ((even, odd), pair) in even.iter_mut().zip(odd).zip(pairs) {
        *even = turn(pair[0]);
        *odd = turn(pair[1]);
    }
    sorted
}
