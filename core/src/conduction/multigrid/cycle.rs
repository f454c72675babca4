//! One multigrid cycle in single precision: the preconditioner.
//!
//! On each level colour 1 is balanced from nothing, then colour 0; what is left over on colour 1
//! goes to the next level; its answer corrects colour 1, and the balancing is done in reverse order.
//! That makes the cycle symmetric, as conjugate gradients ask.

use core::ops::Range;

use super::coarsen::{Coarsening, Merging, Widths};
use super::coloured::{Coloured, Layout, Values};
use super::dense::DenseInverse;
use super::sums::lanes;
use super::window::Window;
use crate::conduction::network::Network;

/// A network of at most this many conducting cells is answered exactly.
const EXACT: usize = 90;

/// A level of at most this share of the finest's cells is balanced twice on each way. That costs little
/// and keeps large grids, which have more levels below, from taking more iterations than small ones.
const SMALL: f64 = 0.15;

struct Level {
    matrix: Coloured<f32>,
    /// For every cell of colour 1, where its coarse cell stands in the arrays of the next level;
    /// zero, a place that is always zero, for padding.
    parents: Vec<u32>,
    /// Whether it is balanced twice on each way.
    is_small: bool,
}

/// Heat inputs and values of a level, both colours in one array each.
struct State {
    heat: Vec<f32>,
    values: Vec<f32>,
}

/// A ladder of ever coarser networks.
pub(super) struct Cycle {
    levels: Vec<Level>,
    bottom: DenseInverse,
    /// One per level and one for the bottom.
    states: Vec<State>,
    left_over: Vec<f32>,
    window: Window<f32>,
}

impl Cycle {
    pub fn new(network: &Network, diagonal: &[f64], widths: Widths) -> Self {
        let mut coarsening = Coarsening::new(&widths);
        let (mut levels, mut states) = (Vec::new(), Vec::new());
        let mut coarser: Option<(Network, Vec<f64>)> = None;
        let mut widths = widths;
        loop {
            let (fine, diagonal) = match &coarser {
                None => (network, diagonal),
                Some((network, diagonal)) => (network, diagonal.as_slice()),
            };
            let layout = Layout::new(fine);
            let size = 2 * layout.stride();
            states.push(State { heat: vec![0.0; size], values: vec![0.0; size] });
            if diagonal.iter().filter(|&&sum| sum > 0.0).count() <= EXACT {
                let bottom = DenseInverse::new(fine, diagonal, &layout);
                let room = levels.iter().map(Level::room).max().unwrap_or(0);
                let window = Window::new(&Layout::new(network));
                return Self { levels, bottom, states, left_over: vec![0.0; room], window };
            }
            let matrix = Coloured::new(fine, diagonal);
            let next = coarsening.next(fine, &widths);
            let parents = find_parents(fine, &next.merging, &next.network);
            let is_small = fine.cells() as f64 <= SMALL * network.cells() as f64;
            levels.push(Level { matrix, parents, is_small });
            let diagonal = next.network.diagonal();
            (coarser, widths) = (Some((next.network, diagonal)), next.widths);
        }
    }

    /// Where the heat input of colour 1 of the finest level is to be put before [`Self::run`], and
    /// where its answer stands afterwards; without halos.
    pub fn ports(&mut self, layout: &Layout) -> (&mut [f32], &[f32]) {
        let from = layout.stride() + layout.halo;
        let state = &mut self.states[0];
        (&mut state.heat[from..][..layout.sizes[1]], &state.values[from..][..layout.sizes[1]])
    }

    /// Answers the heat input of colour 1 of the finest level, and returns the product of the two.
    pub fn run(&mut self) -> f64 {
        let bottom = self.levels.len();
        for (depth, level) in self.levels.iter().enumerate() {
            let (fine, coarse) = self.states.split_at_mut(depth + 1);
            let (fine, heat) = (&mut fine[depth], &mut coarse[0].heat);
            if level.is_small {
                level.descend_twice(fine, heat, &mut self.left_over);
            } else {
                level.descend(fine, heat, &mut self.left_over, &mut self.window, depth == 0);
            }
        }
        let State { heat, values } = &mut self.states[bottom];
        self.bottom.solve(heat, values);
        let mut product = 0.0;
        for (depth, level) in self.levels.iter().enumerate().rev() {
            let (fine, coarse) = self.states.split_at_mut(depth + 1);
            let (fine, values) = (&mut fine[depth], &coarse[0].values);
            if level.is_small {
                level.ascend_twice(fine, values);
            } else if depth == 0 {
                product = level.finish(fine, values, &mut self.window);
            } else {
                level.ascend(fine, values);
            }
        }
        product
    }
}

impl Level {
    /// How much room the way down needs for what is left over.
    fn room(&self) -> usize {
        let layout = &self.matrix.layout;
        let pieces = layout.pieces().map(|[.., done]| done.len());
        if self.is_small { 2 * layout.stride() } else { pieces.max().unwrap_or(0) }
    }

    /// Balances from nothing and hands what is left over to the coarse level.
    fn descend(
        &self,
        state: &mut State,
        coarse_heat: &mut [f32],
        left_over: &mut [f32],
        window: &mut Window<f32>,
        is_finest: bool,
    ) {
        let layout = &self.matrix.layout;
        let (halo, stride) = (layout.halo, layout.stride());
        let (heat0, heat1) = state.heat.split_at(stride);
        let values1 = &mut state.values[stride..];
        coarse_heat.fill(0.0);
        for [ready, middle, done] in self.matrix.layout.pieces() {
            let heat = &heat1[halo..][ready.clone()];
            let inverse = self.matrix.inverse(1, &ready);
            let values = values1[halo..][ready].iter_mut();
            for ((value, heat), inverse) in values.zip(heat).zip(inverse) {
                *value = inverse * heat;
            }
            let heat0 = (!is_finest).then_some(heat0);
            self.balance(0, &middle, heat0, &*values1, window.room(layout, &middle));
            // Colour 1 was in balance before colour 0 moved: what is left over is what flows in.
            let left_over = &mut left_over[..done.len()];
            self.matrix.sweep(1, &done, window.values(), left_over, |_, sum| sum);
            self.hand_down(done, left_over, coarse_heat);
        }
    }

    /// As [`Self::descend`], both colours balanced twice.
    fn descend_twice(&self, state: &mut State, coarse_heat: &mut [f32], room: &mut [f32]) {
        let Layout { halo, sizes, .. } = self.matrix.layout;
        let stride = self.matrix.layout.stride();
        let (heat0, heat1) = state.heat.split_at(stride);
        let (values0, values1) = state.values.split_at_mut(stride);
        let [all0, all1] = sizes.map(|size| 0..size);
        let values = values1[halo..][all1.clone()].iter_mut();
        let inverse = self.matrix.inverse(1, &all1);
        for ((value, heat), inverse) in values.zip(&heat1[halo..]).zip(inverse) {
            *value = inverse * heat;
        }
        self.balance(0, &all0, Some(heat0), &*values1, &mut values0[halo..][all0.clone()]);
        self.balance(1, &all1, Some(heat1), &*values0, &mut values1[halo..][all1.clone()]);
        // Only what colour 0 moves by from here on is left over on colour 1.
        let (moved, left_over) = room.split_at_mut(stride);
        moved.fill(0.0);
        let (old, inverse) = (&mut values0[halo..][all0.clone()], self.matrix.inverse(0, &all0));
        let (heat, out) = (&heat0[halo..][all0.clone()], &mut moved[halo..][all0.clone()]);
        let step = |p: usize, sum: f32| inverse[p] * (heat[p] + sum) - old[p];
        self.matrix.sweep(0, &all0, &*values1, out, step);
        for (value, moved) in old.iter_mut().zip(&moved[halo..]) {
            *value += moved;
        }
        let left_over = &mut left_over[..all1.len()];
        self.matrix.sweep(1, &all1, &*moved, left_over, |_, sum| sum);
        coarse_heat.fill(0.0);
        self.hand_down(all1, left_over, coarse_heat);
    }

    /// Adds what is left over on a range of colour 1 to the heat of the coarse level.
    fn hand_down(&self, range: Range<usize>, left_over: &[f32], coarse_heat: &mut [f32]) {
        for (left, &parent) in left_over.iter().zip(&self.parents[range]) {
            coarse_heat[parent as usize] += left;
        }
    }

    /// Corrects a range of colour 1 by the coarse level's answer.
    fn correct(&self, range: Range<usize>, coarse_values: &[f32], values1: &mut [f32]) {
        let values = values1[self.matrix.layout.halo..][range.clone()].iter_mut();
        for (value, &parent) in values.zip(&self.parents[range]) {
            *value += coarse_values[parent as usize];
        }
    }

    /// Corrects by the coarse level's answer and balances in reverse order.
    fn ascend(&self, state: &mut State, coarse_values: &[f32]) {
        let Layout { halo, .. } = self.matrix.layout;
        let stride = self.matrix.layout.stride();
        let (heat0, heat1) = state.heat.split_at(stride);
        let (values0, values1) = state.values.split_at_mut(stride);
        for [ready, middle, done] in self.matrix.layout.pieces() {
            self.correct(ready, coarse_values, values1);
            let out = &mut values0[halo..][middle.clone()];
            self.balance(0, &middle, Some(heat0), &*values1, out);
            let out = &mut values1[halo..][done.clone()];
            self.balance(1, &done, Some(heat1), &*values0, out);
        }
    }

    /// As [`Self::ascend`], on the finest level: colour 0 has no heat input and need not be kept.
    /// Returns the product of heat input and answer.
    fn finish(&self, state: &mut State, coarse_values: &[f32], window: &mut Window<f32>) -> f64 {
        let layout = &self.matrix.layout;
        let (halo, stride) = (layout.halo, layout.stride());
        let heat1 = &state.heat[stride..];
        let values1 = &mut state.values[stride..];
        let mut product = 0.0;
        for [ready, middle, done] in layout.pieces() {
            self.correct(ready, coarse_values, values1);
            self.balance(0, &middle, None, &*values1, window.room(layout, &middle));
            let out = &mut values1[halo..][done.clone()];
            self.balance(1, &done, Some(heat1), window.values(), out);
            product += lanes(&heat1[halo..][done], out, |f, x| f64::from(f) * f64::from(x));
        }
        product
    }

    /// As [`Self::ascend`], both colours balanced twice.
    fn ascend_twice(&self, state: &mut State, coarse_values: &[f32]) {
        let stride = self.matrix.layout.stride();
        let (heat0, heat1) = state.heat.split_at(stride);
        let (values0, values1) = state.values.split_at_mut(stride);
        let Layout { halo, sizes, .. } = self.matrix.layout;
        let [all0, all1] = sizes.map(|size| 0..size);
        self.correct(all1.clone(), coarse_values, values1);
        for _ in 0..2 {
            self.balance(0, &all0, Some(heat0), &*values1, &mut values0[halo..][all0.clone()]);
            self.balance(1, &all1, Some(heat1), &*values0, &mut values1[halo..][all1.clone()]);
        }
    }

    /// Balances every cell of a range of a colour: x = (f + Σ g·x') / D, f being nothing if not given.
    #[inline]
    fn balance<'a>(
        &self,
        colour: usize,
        range: &Range<usize>,
        heat: Option<&[f32]>,
        other: impl Into<Values<'a, f32>>,
        out: &mut [f32],
    ) {
        let inverse = self.matrix.inverse(colour, range);
        if let Some(heat) = heat {
            let heat = &heat[self.matrix.layout.halo..][range.clone()];
            self.matrix.sweep(colour, range, other, out, |p, sum| inverse[p] * (heat[p] + sum));
        } else {
            self.matrix.sweep(colour, range, other, out, |p, sum| inverse[p] * sum);
        }
    }
}

/// Where the coarse cell of every cell of colour 1 stands.
fn find_parents(fine: &Network, merging: &Merging, coarse: &Network) -> Vec<u32> {
    let layout = Layout::new(coarse);
    let [nx, ny, nz] = fine.counts;
    let mut parents = vec![0; fine.cells() / 2];
    for k in 0..nz {
        for j in 0..ny {
            let first = fine.number([0, j, k]);
            let row = coarse.number([0, merging[1][j] as usize, merging[2][k] as usize]);
            let odd = 1 - first % 2;
            for i in (odd..nx).step_by(2) {
                parents[(first + i) / 2] = layout.position(row + merging[0][i] as usize) as u32;
            }
        }
    }
    parents
}

#[cfg(test)]
impl Cycle {
    /// Makes every answer worthless.
    pub(super) fn spoil(&mut self) {
        self.bottom.spoil();
    }
}
