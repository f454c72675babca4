//! Coarser and coarser networks from a fine one.
//!
//! Neighbouring cells are merged along an axis only while the merged width stays below a bound that
//! grows from level to level. Narrow cells merge first, so a graded grid coarsens along its strong
//! couplings by itself, and smoothing cell by cell suffices on every level.

use crate::conduction::network::Network;

/// The first bound, in narrowest cell widths.
const FIRST_BOUND: f64 = 2.2;
/// How much the bound grows from level to level.
const BOUND_GROWTH: f64 = 1.3;
/// The most cells merged into one along an axis.
const MOST_MERGED: usize = 2;
/// A level is made only if it has at most this share of the cells of the one above, for each axis with
/// more than one.
const LEAST_GAIN: f64 = 0.91;
/// How the cells along each axis merge: the coarse number of every fine one.
pub(super) type Merging = [Vec<u32>; 3];

/// Cell widths along the three axes.
pub(super) type Widths = [Vec<f64>; 3];

/// A coarser network.
pub(super) struct Coarser {
    pub network: Network,
    pub widths: Widths,
    pub merging: Merging,
}

/// Coarsens a network step by step.
pub(super) struct Coarsening {
    bound: f64,
}

impl Coarsening {
    pub fn new(widths: &Widths) -> Self {
        let spread = widths.iter().filter(|widths| widths.len() > 1).flatten();
        let narrowest = spread.fold(f64::INFINITY, |least, &width| least.min(width));
        Self { bound: FIRST_BOUND * narrowest }
    }

    /// The next coarser network.
    pub fn next(&mut self, network: &Network, widths: &Widths) -> Coarser {
        let cells: usize = network.counts.iter().product();
        let axes = network.counts.iter().filter(|&&count| count > 1);
        let least_gain: f64 = axes.map(|_| LEAST_GAIN).product();
        loop {
            let merged = [0, 1, 2].map(|d| merge(&widths[d], self.bound));
            let coarse: usize = merged.iter().map(|(_, widths)| widths.len()).product();
            self.bound *= BOUND_GROWTH;
            if coarse as f64 <= least_gain * cells as f64 || coarse == 1 {
                let [(x, x_widths), (y, y_widths), (z, z_widths)] = merged;
                let (merging, coarse_widths) = ([x, y, z], [x_widths, y_widths, z_widths]);
                let network = sum_up(network, widths, &coarse_widths, &merging);
                return Coarser { network, widths: coarse_widths, merging };
            }
        }
    }
}

/// Merges neighbours from the low end while their width stays within a bound.
fn merge(widths: &[f64], bound: f64) -> (Vec<u32>, Vec<f64>) {
    let mut numbers = Vec::with_capacity(widths.len());
    let mut merged: Vec<f64> = Vec::with_capacity(widths.len());
    let mut members = 0;
    for &width in widths {
        match merged.last_mut() {
            Some(last) if members < MOST_MERGED && *last + width <= bound => {
                *last += width;
                members += 1;
            }
            _ => {
                merged.push(width);
                members = 1;
            }
        }
        numbers.push(merged.len() as u32 - 1);
    }
    (numbers, merged)
}

fn sum_up(
    network: &Network,
    widths: &Widths,
    coarse_widths: &Widths,
    merging: &Merging,
) -> Network {
    let [nx, ny, nz] = network.counts;
    let mut coarse = Network::empty([0, 1, 2].map(|d| coarse_widths[d].len()));
    let factors = [0, 1, 2].map(|d| factors(&widths[d], &coarse_widths[d], &merging[d]));
    for k in 0..nz {
        for j in 0..ny {
            let fine = network.number([0, j, k]);
            let (up, across) = (merging[2][k] as usize, merging[1][j] as usize);
            let row = coarse.number([0, across, up]);
            let ground = &network.ground[fine..fine + nx];
            for (&i, ground) in merging[0].iter().zip(ground) {
                coarse.ground[row + i as usize] += ground;
            }
            if coarse.counts[0] > 1 {
                let joins = &network.between[0][fine..fine + nx];
                let pairs = joins.iter().zip(&factors[0]);
                for (&i, (join, factor)) in merging[0].iter().zip(pairs) {
                    coarse.between[0][row + i as usize] += factor * join;
                }
            }
            for (d, factor) in [(1, factors[1][j]), (2, factors[2][k])] {
                if coarse.counts[d] > 1 && factor > 0.0 {
                    let joins = &network.between[d][fine..fine + nx];
                    for (&i, join) in merging[0].iter().zip(joins) {
                        coarse.between[d][row + i as usize] += factor * join;
                    }
                }
            }
        }
    }
    coarse
}

/// What the conductance between each cell and its next counts for between their coarse cells, whose
/// middles stand further apart; zero where both are in the same.
///
/// The sum of what crosses, times the ratio of the distances, is exact where nothing varies and keeps
/// the conductance of a sheet that crosses.
fn factors(widths: &[f64], coarse_widths: &[f64], merging: &[u32]) -> Vec<f64> {
    let mut factors: Vec<f64> = merging
        .windows(2)
        .zip(widths.windows(2))
        .map(|(numbers, widths)| {
            let (a, b) = (numbers[0] as usize, numbers[1] as usize);
            if a == b {
                return 0.0;
            }
            (widths[0] + widths[1]) / (coarse_widths[a] + coarse_widths[b])
        })
        .collect();
    factors.push(0.0);
    factors
}
