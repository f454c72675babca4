//! Coarser and coarser matrices from a fine one.
//!
//! Neighbouring cells are aggregated along an axis only while the width of the aggregate stays below a bound that
//! grows from level to level. Narrow cells are aggregated first, so a graded grid coarsens along its strong
//! couplings by itself, and smoothing cell by cell suffices on every level.

use crate::conduction::conductance_matrix::ConductanceMatrix;

/// The first bound on the width of an aggregate, in narrowest cell widths.
const FIRST_WIDTH_BOUND: f64 = 2.2;
/// How much the bound grows from level to level.
const BOUND_GROWTH: f64 = 1.3;
/// The most cells of an aggregate along an axis.
const LARGEST_AGGREGATE: usize = 2;
/// A level is made only if it has at most this share of the cells of the one above, for each axis with
/// more than one.
const COARSENING_RATIO: f64 = 0.91;
/// The aggregate that each cell along each axis belongs to: the coarse index of every fine one.
pub(super) type Aggregates = [Vec<u32>; 3];

/// Cell widths along the three axes.
pub(super) type Widths = [Vec<f64>; 3];

/// A coarser matrix and how its cells arose.
pub(super) struct CoarseLevel {
    pub matrix: ConductanceMatrix,
    pub widths: Widths,
    pub aggregates: Aggregates,
}

/// Coarsens a matrix level by level.
pub(super) struct Coarsening {
    bound: f64,
}

impl Coarsening {
    pub fn new(widths: &Widths) -> Self {
        let all = widths.iter().filter(|widths| widths.len() > 1).flatten();
        let narrowest = all.fold(f64::INFINITY, |least, &width| least.min(width));
        Self { bound: FIRST_WIDTH_BOUND * narrowest }
    }

    /// The next coarser level.
    pub fn next(&mut self, matrix: &ConductanceMatrix, widths: &Widths) -> CoarseLevel {
        let cells: usize = matrix.counts.iter().product();
        let axes = matrix.counts.iter().filter(|&&count| count > 1);
        let most_coarse_share: f64 = axes.map(|_| COARSENING_RATIO).product();
        loop {
            let aggregated = [0, 1, 2].map(|d| aggregate(&widths[d], self.bound));
            let coarse: usize = aggregated.iter().map(|(_, widths)| widths.len()).product();
            self.bound *= BOUND_GROWTH;
            if coarse as f64 <= most_coarse_share * cells as f64 || coarse == 1 {
                let [(x, x_widths), (y, y_widths), (z, z_widths)] = aggregated;
                let (aggregates, coarse_widths) = ([x, y, z], [x_widths, y_widths, z_widths]);
                let matrix = assemble_coarse(matrix, widths, &coarse_widths, &aggregates);
                return CoarseLevel { matrix, widths: coarse_widths, aggregates };
            }
        }
    }
}

/// Aggregates neighbours from the low end while their width stays within a bound; returns the coarse
/// index of every fine cell and the coarse widths.
fn aggregate(widths: &[f64], bound: f64) -> (Vec<u32>, Vec<f64>) {
    let mut indices = Vec::with_capacity(widths.len());
    let mut aggregated: Vec<f64> = Vec::with_capacity(widths.len());
    let mut members = 0;
    for &width in widths {
        match aggregated.last_mut() {
            Some(last) if members < LARGEST_AGGREGATE && *last + width <= bound => {
                *last += width;
                members += 1;
            }
            _ => {
                aggregated.push(width);
                members = 1;
            }
        }
        indices.push(aggregated.len() as u32 - 1);
    }
    (indices, aggregated)
}

/// The coarse matrix: conductances between aggregates, and from each aggregate to the environments.
fn assemble_coarse(
    matrix: &ConductanceMatrix,
    widths: &Widths,
    coarse_widths: &Widths,
    aggregates: &Aggregates,
) -> ConductanceMatrix {
    let [nx, ny, nz] = matrix.counts;
    let mut coarse = ConductanceMatrix::empty([0, 1, 2].map(|d| coarse_widths[d].len()));
    let ratios = [0, 1, 2].map(|d| distance_ratios(&widths[d], &coarse_widths[d], &aggregates[d]));
    for k in 0..nz {
        for j in 0..ny {
            let fine = matrix.padded_index([0, j, k]);
            let row =
                coarse.padded_index([0, aggregates[1][j] as usize, aggregates[2][k] as usize]);
            let to_environments = &matrix.boundary_conductance[fine..fine + nx];
            for (&i, conductance) in aggregates[0].iter().zip(to_environments) {
                coarse.boundary_conductance[row + i as usize] += conductance;
            }
            if coarse.counts[0] > 1 {
                let to_next = &matrix.neighbour_conductance[0][fine..fine + nx];
                let pairs = to_next.iter().zip(&ratios[0]);
                for (&i, (conductance, ratio)) in aggregates[0].iter().zip(pairs) {
                    coarse.neighbour_conductance[0][row + i as usize] += ratio * conductance;
                }
            }
            for (d, ratio) in [(1, ratios[1][j]), (2, ratios[2][k])] {
                if coarse.counts[d] > 1 && ratio > 0.0 {
                    let to_next = &matrix.neighbour_conductance[d][fine..fine + nx];
                    for (&i, conductance) in aggregates[0].iter().zip(to_next) {
                        coarse.neighbour_conductance[d][row + i as usize] += ratio * conductance;
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
fn distance_ratios(widths: &[f64], coarse_widths: &[f64], aggregates: &[u32]) -> Vec<f64> {
    let mut ratios: Vec<f64> = aggregates
        .windows(2)
        .zip(widths.windows(2))
        .map(|(indices, widths)| {
            let (a, b) = (indices[0] as usize, indices[1] as usize);
            if a == b {
                return 0.0;
            }
            (widths[0] + widths[1]) / (coarse_widths[a] + coarse_widths[b])
        })
        .collect();
    ratios.push(0.0);
    ratios
}
