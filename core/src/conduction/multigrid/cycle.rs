//! One multigrid cycle in single precision: the preconditioner.
//!
//! On each level colour 1 is balanced from nothing, then colour 0; what is left over on colour 1
//! goes to the next level; its answer corrects colour 1, and the balancing is done in reverse order.
//! That makes the cycle symmetric, as conjugate gradients ask.

use super::coarsen::{Coarsening, Merging, Widths};
use super::coloured::{Coloured, Layout};
use super::dense::DenseInverse;
use crate::conduction::network::Network;

/// A network of at most this many conducting cells is answered exactly.
const EXACT: usize = 90;

struct Level {
    matrix: Coloured<f32>,
    /// For every cell of colour 1, where its coarse cell stands in the arrays of the next level;
    /// zero, a place that is always zero, for padding.
    parents: Vec<u32>,
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
            let room = vec![0.0; 2 * layout.stride()];
            states.push(State { heat: room.clone(), values: room });
            if diagonal.iter().filter(|&&sum| sum > 0.0).count() <= EXACT {
                let bottom = DenseInverse::new(fine, diagonal, &layout);
                let left_over = states[0].heat.clone();
                return Self { levels, bottom, states, left_over };
            }
            let matrix = Coloured::new(fine, diagonal);
            let next = coarsening.next(fine, &widths);
            let parents = find_parents(fine, &next.merging, &next.network);
            levels.push(Level { matrix, parents });
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

    /// Answers the heat input of colour 1 of the finest level.
    pub fn run(&mut self) {
        let bottom = self.levels.len();
        for (depth, level) in self.levels.iter().enumerate() {
            let (fine, coarse) = self.states.split_at_mut(depth + 1);
            level.descend(&mut fine[depth], &mut coarse[0].heat, &mut self.left_over, depth == 0);
        }
        let State { heat, values } = &mut self.states[bottom];
        self.bottom.solve(heat, values);
        for (depth, level) in self.levels.iter().enumerate().rev() {
            let (fine, coarse) = self.states.split_at_mut(depth + 1);
            level.ascend(&mut fine[depth], &coarse[0].values, depth == 0);
        }
    }
}

impl Level {
    /// Balances from nothing and hands what is left over to the coarse level.
    fn descend(
        &self,
        state: &mut State,
        coarse_heat: &mut [f32],
        left_over: &mut [f32],
        is_finest: bool,
    ) {
        let Layout { halo, .. } = self.matrix.layout;
        let stride = self.matrix.layout.stride();
        let (heat0, heat1) = state.heat.split_at(stride);
        let (values0, values1) = state.values.split_at_mut(stride);
        coarse_heat.fill(0.0);
        for [ready, middle, done] in self.matrix.layout.pieces() {
            let heat = &heat1[halo..][ready.clone()];
            let inverse = self.matrix.inverse(1, &ready);
            let values = values1[halo..][ready].iter_mut();
            for ((value, heat), inverse) in values.zip(heat).zip(inverse) {
                *value = inverse * heat;
            }
            self.balance(0, middle, heat0, values1, values0, !is_finest);
            // Colour 1 was in balance before colour 0 moved: what is left over is what flows in.
            let left_over = &mut left_over[..done.len()];
            self.matrix.sweep(1, &done, values0, left_over, |_, sum| sum);
            for (left, &parent) in left_over.iter().zip(&self.parents[done]) {
                coarse_heat[parent as usize] += left;
            }
        }
    }

    /// Corrects by the coarse level's answer and balances in reverse order.
    fn ascend(&self, state: &mut State, coarse_values: &[f32], is_finest: bool) {
        let Layout { halo, .. } = self.matrix.layout;
        let stride = self.matrix.layout.stride();
        let (heat0, heat1) = state.heat.split_at(stride);
        let (values0, values1) = state.values.split_at_mut(stride);
        for [ready, middle, done] in self.matrix.layout.pieces() {
            let values = values1[halo..][ready.clone()].iter_mut();
            for (value, &parent) in values.zip(&self.parents[ready]) {
                *value += coarse_values[parent as usize];
            }
            self.balance(0, middle, heat0, values1, values0, !is_finest);
            self.balance(1, done, heat1, values0, values1, true);
        }
    }

    /// Balances every cell of a range of a colour: x = (f + Σ g·x') / D.
    #[inline]
    fn balance(
        &self,
        colour: usize,
        range: core::ops::Range<usize>,
        heat: &[f32],
        other: &[f32],
        own: &mut [f32],
        is_heated: bool,
    ) {
        let halo = self.matrix.layout.halo;
        let inverse = self.matrix.inverse(colour, &range);
        let own = &mut own[halo..][range.clone()];
        if is_heated {
            let heat = &heat[halo..][range.clone()];
            self.matrix.sweep(colour, &range, other, own, |p, sum| inverse[p] * (heat[p] + sum));
        } else {
            self.matrix.sweep(colour, &range, other, own, |p, sum| inverse[p] * sum);
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
