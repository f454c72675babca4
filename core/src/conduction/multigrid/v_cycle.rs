//! One multigrid V-cycle in single precision: the preconditioner.
//!
//! The smoother is red-black Gauss-Seidel. On each level colour 1 is smoothed from zero, then colour
//! 0; the residual on colour 1 is restricted to the next level; its solution is prolonged to colour
//! 1, and the smoothing is done in reverse order. That makes the cycle symmetric, as conjugate
//! gradients ask.

use core::ops::Range;

use super::coarsen::{Aggregates, Coarsening, Widths};
use super::dense::DenseInverse;
use super::dot_product::sum_products;
use super::red_black::{ColourView, Layout, RedBlackMatrix};
use super::sliding_window::SlidingWindow;
use crate::conduction::conductance_matrix::ConductanceMatrix;

/// A level of at most this many conducting cells is solved directly.
const COARSEST_CELLS: usize = 90;

/// A level of at most this share of the finest's cells is smoothed twice on each way. That costs little
/// and keeps large grids, which have more levels below, from taking more iterations than small ones.
const TWICE_SMOOTHED_SHARE: f64 = 0.15;

struct Level {
    matrix: RedBlackMatrix<f32>,
    /// For every cell of colour 1, where its coarse cell stands in the arrays of the next level;
    /// zero, where the array is always zero, for padding.
    coarse_positions: Vec<u32>,
    /// Whether it is smoothed twice on each way.
    is_smoothed_twice: bool,
}

/// Right-hand side and solution of a level, both colours in one array each.
struct LevelVectors {
    rhs: Vec<f32>,
    solution: Vec<f32>,
}

/// A hierarchy of ever coarser matrices.
pub(super) struct VCycle {
    levels: Vec<Level>,
    coarsest: DenseInverse,
    /// One per level and one for the coarsest.
    vectors: Vec<LevelVectors>,
    residual: Vec<f32>,
    window: SlidingWindow<f32>,
}

impl VCycle {
    pub fn new(finest: &ConductanceMatrix, diagonal: &[f64], widths: Widths) -> Self {
        let mut coarsening = Coarsening::new(&widths);
        let (mut levels, mut vectors) = (Vec::new(), Vec::new());
        let mut coarser: Option<(ConductanceMatrix, Vec<f64>)> = None;
        let mut widths = widths;
        loop {
            let (fine, diagonal) = match &coarser {
                None => (finest, diagonal),
                Some((matrix, diagonal)) => (matrix, diagonal.as_slice()),
            };
            let layout = Layout::new(fine);
            let size = 2 * layout.colour_length();
            vectors.push(LevelVectors { rhs: vec![0.0; size], solution: vec![0.0; size] });
            if diagonal.iter().filter(|&&sum| sum > 0.0).count() <= COARSEST_CELLS {
                let coarsest = DenseInverse::new(fine, diagonal, &layout);
                let residual_length = levels.iter().map(Level::residual_length).max().unwrap_or(0);
                let window = SlidingWindow::new(&Layout::new(finest));
                return Self {
                    levels,
                    coarsest,
                    vectors,
                    residual: vec![0.0; residual_length],
                    window,
                };
            }
            let matrix = RedBlackMatrix::new(fine, diagonal);
            let next = coarsening.next(fine, &widths);
            let coarse_positions = find_coarse_positions(fine, &next.aggregates, &next.matrix);
            let is_smoothed_twice =
                fine.cells() as f64 <= TWICE_SMOOTHED_SHARE * finest.cells() as f64;
            levels.push(Level { matrix, coarse_positions, is_smoothed_twice });
            let diagonal = next.matrix.diagonal();
            (coarser, widths) = (Some((next.matrix, diagonal)), next.widths);
        }
    }

    /// Where the right-hand side of colour 1 of the finest level is to be put before [`Self::apply`],
    /// and where the solution stands afterwards; without halos.
    pub fn rhs_and_solution(&mut self, layout: &Layout) -> (&mut [f32], &[f32]) {
        let from = layout.colour_length() + layout.halo;
        let vectors = &mut self.vectors[0];
        (&mut vectors.rhs[from..][..layout.sizes[1]], &vectors.solution[from..][..layout.sizes[1]])
    }

    /// Applies the cycle to the right-hand side of colour 1 of the finest level, and returns the dot
    /// product of right-hand side and solution.
    pub fn apply(&mut self) -> f64 {
        let coarsest = self.levels.len();
        for (depth, level) in self.levels.iter().enumerate() {
            let (fine, coarse) = self.vectors.split_at_mut(depth + 1);
            let (fine, rhs) = (&mut fine[depth], &mut coarse[0].rhs);
            if level.is_smoothed_twice {
                level.presmooth_twice_and_restrict(fine, rhs, &mut self.residual);
            } else {
                level.presmooth_and_restrict(
                    fine,
                    rhs,
                    &mut self.residual,
                    &mut self.window,
                    depth == 0,
                );
            }
        }
        let LevelVectors { rhs, solution } = &mut self.vectors[coarsest];
        self.coarsest.solve(rhs, solution);
        let mut product = 0.0;
        for (depth, level) in self.levels.iter().enumerate().rev() {
            let (fine, coarse) = self.vectors.split_at_mut(depth + 1);
            let (fine, solution) = (&mut fine[depth], &coarse[0].solution);
            if level.is_smoothed_twice {
                level.prolong_and_postsmooth_twice(fine, solution);
            } else if depth == 0 {
                product = level.prolong_and_postsmooth_finest(fine, solution, &mut self.window);
            } else {
                level.prolong_and_postsmooth(fine, solution);
            }
        }
        product
    }
}

impl Level {
    /// The length of the array that the residual needs on the way down.
    fn residual_length(&self) -> usize {
        let layout = &self.matrix.layout;
        let chunks = layout.chunks().map(|[.., done]| done.len());
        if self.is_smoothed_twice { 2 * layout.colour_length() } else { chunks.max().unwrap_or(0) }
    }

    /// Smooths from zero and restricts the residual to the coarse level.
    fn presmooth_and_restrict(
        &self,
        vectors: &mut LevelVectors,
        coarse_rhs: &mut [f32],
        residual: &mut [f32],
        window: &mut SlidingWindow<f32>,
        is_finest: bool,
    ) {
        let layout = &self.matrix.layout;
        let (halo, colour_length) = (layout.halo, layout.colour_length());
        let (rhs0, rhs1) = vectors.rhs.split_at(colour_length);
        let solution1 = &mut vectors.solution[colour_length..];
        coarse_rhs.fill(0.0);
        for [ready, middle, done] in self.matrix.layout.chunks() {
            let rhs = &rhs1[halo..][ready.clone()];
            let inverse = self.matrix.inverse_diagonal(1, &ready);
            let solution = solution1[halo..][ready].iter_mut();
            for ((value, rhs), inverse) in solution.zip(rhs).zip(inverse) {
                *value = inverse * rhs;
            }
            let rhs0 = (!is_finest).then_some(rhs0);
            self.smooth(0, &middle, rhs0, &*solution1, window.slot(layout, &middle));
            // The residual of colour 1 was zero before colour 0 moved: now it is what flows in.
            let residual = &mut residual[..done.len()];
            self.matrix.sweep(1, &done, window.values(), residual, |_, sum| sum);
            self.restrict(done, residual, coarse_rhs);
        }
    }

    /// As [`Self::presmooth_and_restrict`], both colours smoothed twice.
    fn presmooth_twice_and_restrict(
        &self,
        vectors: &mut LevelVectors,
        coarse_rhs: &mut [f32],
        buffer: &mut [f32],
    ) {
        let Layout { halo, sizes, .. } = self.matrix.layout;
        let colour_length = self.matrix.layout.colour_length();
        let (rhs0, rhs1) = vectors.rhs.split_at(colour_length);
        let (solution0, solution1) = vectors.solution.split_at_mut(colour_length);
        let [all0, all1] = sizes.map(|size| 0..size);
        let solution = solution1[halo..][all1.clone()].iter_mut();
        let inverse = self.matrix.inverse_diagonal(1, &all1);
        for ((value, rhs), inverse) in solution.zip(&rhs1[halo..]).zip(inverse) {
            *value = inverse * rhs;
        }
        self.smooth(0, &all0, Some(rhs0), &*solution1, &mut solution0[halo..][all0.clone()]);
        self.smooth(1, &all1, Some(rhs1), &*solution0, &mut solution1[halo..][all1.clone()]);
        // The residual on colour 1 is only what colour 0 moves by from here on.
        let (change, residual) = buffer.split_at_mut(colour_length);
        change.fill(0.0);
        let (old, inverse) =
            (&mut solution0[halo..][all0.clone()], self.matrix.inverse_diagonal(0, &all0));
        let (rhs, out) = (&rhs0[halo..][all0.clone()], &mut change[halo..][all0.clone()]);
        let step = |p: usize, sum: f32| inverse[p] * (rhs[p] + sum) - old[p];
        self.matrix.sweep(0, &all0, &*solution1, out, step);
        for (value, change) in old.iter_mut().zip(&change[halo..]) {
            *value += change;
        }
        let residual = &mut residual[..all1.len()];
        self.matrix.sweep(1, &all1, &*change, residual, |_, sum| sum);
        coarse_rhs.fill(0.0);
        self.restrict(all1, residual, coarse_rhs);
    }

    /// Adds the residual on a range of colour 1 to the right-hand side of the coarse level.
    fn restrict(&self, range: Range<usize>, residual: &[f32], coarse_rhs: &mut [f32]) {
        for (residual, &coarse_position) in residual.iter().zip(&self.coarse_positions[range]) {
            coarse_rhs[coarse_position as usize] += residual;
        }
    }

    /// Corrects a range of colour 1 by the coarse level's solution.
    fn prolong(&self, range: Range<usize>, coarse_solution: &[f32], solution1: &mut [f32]) {
        let solution = solution1[self.matrix.layout.halo..][range.clone()].iter_mut();
        for (value, &coarse_position) in solution.zip(&self.coarse_positions[range]) {
            *value += coarse_solution[coarse_position as usize];
        }
    }

    /// Corrects by the coarse level's solution and smooths in reverse order.
    fn prolong_and_postsmooth(&self, vectors: &mut LevelVectors, coarse_solution: &[f32]) {
        let Layout { halo, .. } = self.matrix.layout;
        let colour_length = self.matrix.layout.colour_length();
        let (rhs0, rhs1) = vectors.rhs.split_at(colour_length);
        let (solution0, solution1) = vectors.solution.split_at_mut(colour_length);
        for [ready, middle, done] in self.matrix.layout.chunks() {
            self.prolong(ready, coarse_solution, solution1);
            let out = &mut solution0[halo..][middle.clone()];
            self.smooth(0, &middle, Some(rhs0), &*solution1, out);
            let out = &mut solution1[halo..][done.clone()];
            self.smooth(1, &done, Some(rhs1), &*solution0, out);
        }
    }

    /// As [`Self::prolong_and_postsmooth`], on the finest level: the right-hand side of colour 0 is zero
    /// and its solution need not be kept. Returns the dot product of right-hand side and solution.
    fn prolong_and_postsmooth_finest(
        &self,
        vectors: &mut LevelVectors,
        coarse_solution: &[f32],
        window: &mut SlidingWindow<f32>,
    ) -> f64 {
        let layout = &self.matrix.layout;
        let (halo, colour_length) = (layout.halo, layout.colour_length());
        let rhs1 = &vectors.rhs[colour_length..];
        let solution1 = &mut vectors.solution[colour_length..];
        let mut product = 0.0;
        for [ready, middle, done] in layout.chunks() {
            self.prolong(ready, coarse_solution, solution1);
            self.smooth(0, &middle, None, &*solution1, window.slot(layout, &middle));
            let out = &mut solution1[halo..][done.clone()];
            self.smooth(1, &done, Some(rhs1), window.values(), out);
            product += sum_products(&rhs1[halo..][done], out, |f, x| f64::from(f) * f64::from(x));
        }
        product
    }

    /// As [`Self::prolong_and_postsmooth`], both colours smoothed twice.
    fn prolong_and_postsmooth_twice(&self, vectors: &mut LevelVectors, coarse_solution: &[f32]) {
        let colour_length = self.matrix.layout.colour_length();
        let (rhs0, rhs1) = vectors.rhs.split_at(colour_length);
        let (solution0, solution1) = vectors.solution.split_at_mut(colour_length);
        let Layout { halo, sizes, .. } = self.matrix.layout;
        let [all0, all1] = sizes.map(|size| 0..size);
        self.prolong(all1.clone(), coarse_solution, solution1);
        for _ in 0..2 {
            self.smooth(0, &all0, Some(rhs0), &*solution1, &mut solution0[halo..][all0.clone()]);
            self.smooth(1, &all1, Some(rhs1), &*solution0, &mut solution1[halo..][all1.clone()]);
        }
    }

    /// One Gauss-Seidel sweep over a range of a colour: x = (f + Σ g·x') / D, f being zero if not given.
    #[inline]
    fn smooth<'a>(
        &self,
        colour: usize,
        range: &Range<usize>,
        rhs: Option<&[f32]>,
        other: impl Into<ColourView<'a, f32>>,
        out: &mut [f32],
    ) {
        let inverse = self.matrix.inverse_diagonal(colour, range);
        if let Some(rhs) = rhs {
            let rhs = &rhs[self.matrix.layout.halo..][range.clone()];
            self.matrix.sweep(colour, range, other, out, |p, sum| inverse[p] * (rhs[p] + sum));
        } else {
            self.matrix.sweep(colour, range, other, out, |p, sum| inverse[p] * sum);
        }
    }
}

/// Where the coarse cell of every cell of colour 1 stands.
fn find_coarse_positions(
    fine: &ConductanceMatrix,
    aggregates: &Aggregates,
    coarse: &ConductanceMatrix,
) -> Vec<u32> {
    let layout = Layout::new(coarse);
    let [nx, ny, nz] = fine.counts;
    let mut coarse_positions = vec![0; fine.cells() / 2];
    for k in 0..nz {
        for j in 0..ny {
            let first = fine.padded_index([0, j, k]);
            let row =
                coarse.padded_index([0, aggregates[1][j] as usize, aggregates[2][k] as usize]);
            let odd = 1 - first % 2;
            for i in (odd..nx).step_by(2) {
                coarse_positions[(first + i) / 2] =
                    layout.position(row + aggregates[0][i] as usize) as u32;
            }
        }
    }
    coarse_positions
}

#[cfg(test)]
impl VCycle {
    /// Makes every solution worthless.
    pub(super) fn spoil(&mut self) {
        self.coarsest.spoil();
    }
}
