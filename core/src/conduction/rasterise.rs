//! Fills the cells of a grid with the materials and the air of a problem.

use core::ops::Range;

use super::cut_cells::{CutFace, average_cut_cells};
use super::geometry::{Axis, Shape};
use super::grid::NO_AIR;
use super::problem::Problem;

/// What fills the cells of a grid.
pub(super) struct CellMaterials {
    /// W/(m·K); zero in air.
    pub conductivity: Vec<f64>,
    /// The air region of each cell, or [`NO_AIR`].
    pub region: Vec<u32>,
    /// Faces beside sloping edges, whose transmittance the conductivities of the two cells do not tell.
    pub cut_faces: Vec<CutFace>,
}

/// Fills the cells of a grid.
pub(super) fn fill_cells(problem: &Problem, lines: &[Vec<f64>; 3]) -> CellMaterials {
    let cells = lines.iter().map(|l| l.len() - 1).product();
    let mut conductivity = vec![problem.background.value(); cells];
    let mut region = vec![NO_AIR; cells];
    let rasteriser = Rasteriser { problem, lines };
    for paint in &problem.paints {
        rasteriser.fill(&paint.shape, &mut conductivity, paint.conductivity.value());
    }
    let cut_faces = average_cut_cells(&rasteriser, &mut conductivity);
    for (n, air) in problem.air.iter().enumerate() {
        rasteriser.fill(&air.shape, &mut region, n as u32);
    }
    for (conductivity, &region) in conductivity.iter_mut().zip(&region) {
        if region != NO_AIR {
            *conductivity = 0.0;
        }
    }
    CellMaterials { conductivity, region, cut_faces }
}

/// A problem and the lines it is painted on.
pub(super) struct Rasteriser<'a> {
    pub problem: &'a Problem,
    pub lines: &'a [Vec<f64>; 3],
}

impl Rasteriser<'_> {
    pub fn middle(&self, d: usize, n: usize) -> f64 {
        0.5 * (self.lines[d][n] + self.lines[d][n + 1])
    }

    pub fn cell(&self, indices: [usize; 3]) -> usize {
        (indices[2] * (self.lines[1].len() - 1) + indices[1]) * (self.lines[0].len() - 1)
            + indices[0]
    }

    /// The cells along an axis whose middles lie between two coordinates.
    pub fn range(&self, d: usize, from: f64, to: f64) -> Range<usize> {
        let lines = &self.lines[d];
        let cells = lines.len() - 1;
        if !self.problem.axes().contains(&Axis::ALL[d]) {
            return 0..cells;
        }
        let below = |at: f64| {
            let n = lines.partition_point(|&line| line < at).saturating_sub(1).min(cells - 1);
            if at > self.middle(d, n) { n + 1 } else { n }
        };
        below(from)..below(to)
    }

    /// Writes a value into every cell whose centre lies in a shape.
    fn fill<T: Copy>(&self, shape: &Shape, values: &mut [T], value: T) {
        let bounds = shape.bounds();
        let (low, high) = (bounds.minimum.array(), bounds.maximum.array());
        let [xs, ys, zs] = [0, 1, 2].map(|d| self.range(d, low[d], high[d]));
        for k in zs {
            for j in ys.clone() {
                match shape {
                    Shape::Block(_) => {
                        let row = self.cell([0, j, k]);
                        values[row + xs.start..row + xs.end].fill(value);
                    }
                    Shape::Prism { .. } => {
                        for i in xs.clone() {
                            let at = [self.middle(0, i), self.middle(1, j), self.middle(2, k)];
                            if shape.contains(at, self.problem.axes()) {
                                values[self.cell([i, j, k])] = value;
                            }
                        }
                    }
                }
            }
        }
    }
}
