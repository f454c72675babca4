//! The grid as a network of conductances: what the solver sees.

use super::boundary::Boundary;
use super::error::ConductionError;
use super::grid::Grid;

/// Conductances between neighbouring cells and from each cell to the environments, W/K.
///
/// A cell with no conductance at all (air) is not part of the network.
#[derive(Clone, Debug)]
pub(super) struct Network {
    pub counts: [usize; 3],
    /// `between[d][c]` joins cell c with its next along axis d; zero at the end of a row.
    pub between: [Vec<f64>; 3],
    /// From each cell to all environments together.
    pub ground: Vec<f64>,
}

impl Network {
    pub fn new(grid: &Grid, boundary: &Boundary) -> Self {
        let between = [0, 1, 2].map(|d| join(grid, d));
        let mut ground = vec![0.0; grid.cells()];
        for face in boundary.faces() {
            ground[face.cell as usize] += face.conductance;
        }
        Self { counts: grid.counts(), between, ground }
    }

    pub fn cells(&self) -> usize {
        self.ground.len()
    }

    pub fn stride(&self, d: usize) -> usize {
        [1, self.counts[0], self.counts[0] * self.counts[1]][d]
    }

    /// The sum of all conductances that end in each cell.
    pub fn diagonal(&self) -> Vec<f64> {
        let mut diagonal = self.ground.clone();
        for (d, joins) in self.between.iter().enumerate() {
            let stride = self.stride(d);
            for (cell, &conductance) in joins.iter().enumerate() {
                if conductance > 0.0 {
                    diagonal[cell] += conductance;
                    diagonal[cell + stride] += conductance;
                }
            }
        }
        diagonal
    }

    /// The heat that leaves each cell at given temperatures when every environment is at zero.
    pub fn outflow(&self, diagonal: &[f64], temperatures: &[f64], outflow: &mut [f64]) {
        for ((out, &d), &t) in outflow.iter_mut().zip(diagonal).zip(temperatures) {
            *out = d * t;
        }
        for (d, joins) in self.between.iter().enumerate() {
            let stride = self.stride(d);
            if self.counts[d] == 1 {
                continue;
            }
            let joined = self.cells() - stride;
            for cell in 0..joined {
                outflow[cell] -= joins[cell] * temperatures[cell + stride];
                outflow[cell + stride] -= joins[cell] * temperatures[cell];
            }
        }
    }

    /// Whether every body is tied to an environment.
    ///
    /// # Errors
    /// [`ConductionError::NoBoundary`], [`ConductionError::FloatingRegion`].
    pub fn check_tied(&self, grid: &Grid) -> Result<(), ConductionError> {
        let mut tied: Vec<bool> = self.ground.iter().map(|&ground| ground > 0.0).collect();
        let mut front: Vec<usize> = (0..tied.len()).filter(|&cell| tied[cell]).collect();
        if front.is_empty() {
            return Err(ConductionError::NoBoundary);
        }
        if grid.region.iter().all(|&region| region == super::grid::NO_AIR) {
            return Ok(());
        }
        while let Some(cell) = front.pop() {
            for (d, joins) in self.between.iter().enumerate() {
                let stride = self.stride(d);
                if joins[cell] > 0.0 && !tied[cell + stride] {
                    tied[cell + stride] = true;
                    front.push(cell + stride);
                }
                if cell >= stride && joins[cell - stride] > 0.0 && !tied[cell - stride] {
                    tied[cell - stride] = true;
                    front.push(cell - stride);
                }
            }
        }
        match (0..tied.len()).find(|&cell| !tied[cell] && !grid.is_air(cell)) {
            Some(cell) => Err(ConductionError::FloatingRegion { at: grid.centre(cell) }),
            None => Ok(()),
        }
    }
}

/// The harmonic conductance from every cell to its next along an axis: A / (d₁/2λ₁ + d₂/2λ₂).
fn join(grid: &Grid, d: usize) -> Vec<f64> {
    let counts = grid.counts();
    let mut joins = vec![0.0; grid.cells()];
    if counts[d] == 1 {
        return joins;
    }
    let stride = grid.stride(d);
    let widths = [0, 1, 2].map(|d| (0..counts[d]).map(|n| grid.width(d, n)).collect::<Vec<_>>());
    for k in 0..counts[2] {
        for j in 0..counts[1] {
            for i in 0..counts[0] {
                let place = [i, j, k];
                if place[d] + 1 == counts[d] {
                    continue;
                }
                let cell = grid.cell(place);
                let (here, next) = (grid.conductivity[cell], grid.conductivity[cell + stride]);
                if here > 0.0 && next > 0.0 {
                    let area = match d {
                        0 => widths[1][j] * widths[2][k],
                        1 => widths[0][i] * widths[2][k],
                        _ => widths[0][i] * widths[1][j],
                    };
                    let (w0, w1) = (widths[d][place[d]], widths[d][place[d] + 1]);
                    joins[cell] = area / (0.5 * (w0 / here + w1 / next));
                }
            }
        }
    }
    joins
}
