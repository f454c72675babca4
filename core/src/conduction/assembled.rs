//! The assembled system of equations, written out for other solvers to be compared with.

use super::boundary::Boundary;
use super::conductance_matrix::ConductanceMatrix;
use super::error::ConductionError;
use super::geometry::Axis;
use super::grid::Grid;
use super::problem::{Environment, Problem};
use crate::units::HeatTransferCoefficient;

/// The heat balances of the cells of a problem, before they are solved.
///
/// In a steady field the heat that leaves a cell through all its faces is zero:
/// Σ g·(θ − θ') + Σ h·(θ − θ_environment) = 0, g over its interior and h over its boundary faces.
#[derive(Clone, Debug)]
pub struct AssembledSystem {
    /// Cells of the grid, air included.
    pub cells: usize,
    /// Pairs of neighbouring cells and the conductance g between their centres; each pair once.
    pub interior_faces: Vec<(usize, usize, HeatTransferCoefficient)>,
    /// Cells, the environments they look into, and the conductance h between the two; one entry per
    /// face.
    pub boundary_faces: Vec<(usize, Environment, HeatTransferCoefficient)>,
}

/// Writes out the heat balances of a problem, in the numbering of [`Grid`].
///
/// # Errors
/// As [`Grid::new`].
pub fn assemble(problem: &Problem) -> Result<AssembledSystem, ConductionError> {
    let grid = Grid::new(problem)?;
    let boundary = Boundary::new(problem, &grid);
    let matrix = ConductanceMatrix::assemble(&grid, &boundary);
    let mut interior_faces = Vec::new();
    for axis in Axis::ALL {
        let to_next = &matrix.neighbour_conductance[axis.index()];
        if to_next.is_empty() {
            continue;
        }
        let stride = grid.stride(axis.index());
        for cell in 0..grid.cells() {
            let conductance = to_next[matrix.padded_index(grid.indices(cell))];
            if conductance > 0.0 {
                interior_faces.push((
                    cell,
                    cell + stride,
                    HeatTransferCoefficient::new(conductance),
                ));
            }
        }
    }
    let boundary_faces = boundary.faces().iter().map(|face| {
        let environment = Environment(face.environment as usize);
        (face.cell as usize, environment, HeatTransferCoefficient::new(face.conductance))
    });
    Ok(AssembledSystem {
        cells: grid.cells(),
        interior_faces,
        boundary_faces: boundary_faces.collect(),
    })
}
