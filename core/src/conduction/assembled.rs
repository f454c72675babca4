//! The heat balances of the cells, written out for other solvers to be compared with.

use super::boundary::Boundary;
use super::error::ConductionError;
use super::geometry::Axis;
use super::grid::Grid;
use super::network::Network;
use super::problem::{Environment, Problem};
use crate::units::HeatTransferCoefficient;

/// The heat balances of the cells of a problem, before they are solved.
///
/// In a steady field the heat that leaves a cell through all its joins and surfaces is zero:
/// Σ g·(θ − θ') + Σ h·(θ − θ_environment) = 0, g over its joins and h over its surfaces.
#[derive(Clone, Debug)]
pub struct HeatBalances {
    /// Cells of the grid, air included.
    pub cells: usize,
    /// Pairs of neighbouring cells and the conductance g between their centres; each pair once.
    pub joins: Vec<(usize, usize, HeatTransferCoefficient)>,
    /// Cells, the environments they look into, and the conductance h between the two; one entry per
    /// face.
    pub surfaces: Vec<(usize, Environment, HeatTransferCoefficient)>,
}

/// Writes out the heat balances of a problem, in the numbering of [`Grid`].
///
/// # Errors
/// As [`Grid::new`].
pub fn assemble(problem: &Problem) -> Result<HeatBalances, ConductionError> {
    let grid = Grid::new(problem)?;
    let boundary = Boundary::new(problem, &grid);
    let network = Network::new(&grid, &boundary);
    let mut joins = Vec::new();
    for axis in Axis::ALL {
        let between = &network.between[axis.index()];
        if between.is_empty() {
            continue;
        }
        let stride = grid.stride(axis.index());
        for cell in 0..grid.cells() {
            let conductance = between[network.number(grid.place(cell))];
            if conductance > 0.0 {
                joins.push((cell, cell + stride, HeatTransferCoefficient::new(conductance)));
            }
        }
    }
    let surfaces = boundary.faces().iter().map(|face| {
        let environment = Environment(face.environment as usize);
        (face.cell as usize, environment, HeatTransferCoefficient::new(face.conductance))
    });
    Ok(HeatBalances { cells: grid.cells(), joins, surfaces: surfaces.collect() })
}
