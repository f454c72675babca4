//! The rectilinear grid and what fills its cells.

use super::cut_cells::CutFace;
use super::error::ConductionError;
use super::geometry::{Axis, Point};
use super::grading::grid_lines;
use super::problem::{Dimensionality, Environment, Problem};
use super::rasterise::{CellMaterials, fill_cells};
use crate::units::{Length, ThermalConductivity};

/// Marks a cell that is no air.
pub(super) const NO_AIR: u32 = u32::MAX;

/// A rectilinear grid with a material or air in every cell.
///
/// Cells are numbered with x running fastest, then y, then z.
#[derive(Clone, Debug)]
pub struct Grid {
    dimensions: Dimensionality,
    lines: [Vec<f64>; 3],
    /// W/(m·K); zero in air.
    pub(super) conductivity: Vec<f64>,
    /// The air region of each cell, or [`NO_AIR`].
    pub(super) region: Vec<u32>,
    /// The environment of each air region.
    environments: Vec<Environment>,
    /// Faces beside sloping edges, whose transmittance the conductivities of the two cells do not tell.
    pub(super) cut_faces: Vec<CutFace>,
}

impl Grid {
    /// The grid of a problem.
    ///
    /// # Errors
    /// Whatever [`Problem::check`] finds; [`ConductionError::TooManyCells`];
    /// [`ConductionError::Empty`].
    pub fn new(problem: &Problem) -> Result<Self, ConductionError> {
        problem.check()?;
        let [x, y, z] = Axis::ALL.map(|axis| grid_lines(problem, axis));
        let lines = [x?, y?, z?];
        let cells = lines.iter().fold(1_usize, |product, l| product.saturating_mul(l.len() - 1));
        // Cell numbers are kept in 32 bits, one of them as a mark.
        let limit = problem.cells.limit.min(u32::MAX as usize / 8);
        if cells > limit {
            return Err(ConductionError::TooManyCells { cells, limit });
        }
        let CellMaterials { conductivity, region, cut_faces } = fill_cells(problem, &lines);
        if region.iter().all(|&region| region != NO_AIR) {
            return Err(ConductionError::Empty);
        }
        let environments = problem.air.iter().map(|region| region.environment).collect();
        Ok(Self {
            dimensions: problem.dimensions,
            lines,
            conductivity,
            region,
            environments,
            cut_faces,
        })
    }

    /// In how many dimensions heat flows.
    pub const fn dimensions(&self) -> Dimensionality {
        self.dimensions
    }

    /// The axes heat flows along.
    pub const fn axes(&self) -> &'static [Axis] {
        match self.dimensions {
            Dimensionality::Two => &[Axis::X, Axis::Y],
            Dimensionality::Three => &Axis::ALL,
        }
    }

    /// The grid lines along an axis, rising: one more than there are cells.
    pub fn lines(&self, axis: Axis) -> impl ExactSizeIterator<Item = Length> + '_ {
        self.lines[axis.index()].iter().map(|&at| Length::new(at))
    }

    /// The number of cells along each axis.
    pub fn counts(&self) -> [usize; 3] {
        [self.lines[0].len() - 1, self.lines[1].len() - 1, self.lines[2].len() - 1]
    }

    /// The number of cells, air included.
    pub fn cells(&self) -> usize {
        self.conductivity.len()
    }

    /// The number of the cell with given indices along the three axes.
    pub fn cell(&self, indices: [usize; 3]) -> usize {
        let [nx, ny, _] = self.counts();
        (indices[2] * ny + indices[1]) * nx + indices[0]
    }

    /// The indices of a cell along the three axes.
    pub fn indices(&self, cell: usize) -> [usize; 3] {
        let [nx, ny, _] = self.counts();
        [cell % nx, cell / nx % ny, cell / (nx * ny)]
    }

    /// The conductivity of a cell; none where it is air.
    pub fn conductivity(&self, cell: usize) -> Option<ThermalConductivity> {
        (self.region[cell] == NO_AIR).then(|| ThermalConductivity::new(self.conductivity[cell]))
    }

    /// The environment a cell of air belongs to; none where it is material.
    pub fn air(&self, cell: usize) -> Option<Environment> {
        let region = self.region[cell];
        (region != NO_AIR).then(|| self.environments[region as usize])
    }

    /// The centre of a cell.
    pub fn centre(&self, cell: usize) -> Point {
        let indices = self.indices(cell);
        Point::from_array([0, 1, 2].map(|d| self.middle(d, indices[d])))
    }

    /// The cell that holds a point; of two that share it, the one further up the axis. None
    /// outside the domain.
    pub fn cell_at(&self, point: Point) -> Option<usize> {
        let at = point.array();
        let mut indices = [0; 3];
        for d in 0..3 {
            indices[d] = self.cells_at(d, at[d]).last()?;
        }
        Some(self.cell(indices))
    }

    pub(super) fn is_air(&self, cell: usize) -> bool {
        self.region[cell] != NO_AIR
    }

    pub(super) fn line(&self, d: usize, n: usize) -> f64 {
        self.lines[d][n]
    }

    pub(super) fn width(&self, d: usize, n: usize) -> f64 {
        self.lines[d][n + 1] - self.lines[d][n]
    }

    pub(super) fn widths(&self, d: usize) -> Vec<f64> {
        self.lines[d].windows(2).map(|pair| pair[1] - pair[0]).collect()
    }

    pub(super) fn middle(&self, d: usize, n: usize) -> f64 {
        0.5 * (self.lines[d][n] + self.lines[d][n + 1])
    }

    /// How far apart two numbered cells are that follow each other along an axis.
    pub(super) fn stride(&self, d: usize) -> usize {
        let [nx, ny, _] = self.counts();
        [1, nx, nx * ny][d]
    }

    /// The cells along one axis that hold a coordinate: none outside, two on a line between cells.
    pub(super) fn cells_at(&self, d: usize, at: f64) -> impl Iterator<Item = usize> + use<> {
        let lines = &self.lines[d];
        let last = lines.len() - 1;
        let tolerance = 1e-9 * (lines[last] - lines[0]);
        let first = lines.partition_point(|&line| line < at - tolerance).saturating_sub(1);
        let is_outside = at < lines[0] - tolerance || at > lines[last] + tolerance || at.is_nan();
        let next_too = first + 1 < last && at >= lines[first + 1] - tolerance;
        let end = if is_outside { first } else { first + 1 + usize::from(next_too) };
        first..end
    }
}
