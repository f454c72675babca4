//! From a problem to its solution.

use super::boundary::Boundary;
use super::conductance_matrix::ConductanceMatrix;
use super::error::ConductionError;
use super::grid::Grid;
use super::multigrid::ConjugateGradients;
use super::problem::Problem;
use super::solution::Solution;

/// How closely the heat balance of the cells is to be met.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Accuracy {
    /// The norm of the residual (what the heat balances of the cells lack) over the norm of the
    /// right-hand side.
    /// Flows follow with the square of it, so 1e-6 is ample for a figure shown to a person.
    pub relative_residual: f64,
    /// The most iterations to spend on one unit field.
    pub maximum_iterations: usize,
}

impl Default for Accuracy {
    /// A relative residual of 1e-8 within 500 iterations.
    fn default() -> Self {
        Self { relative_residual: 1e-8, maximum_iterations: 500 }
    }
}

/// Solves a problem for one unit field per environment.
///
/// # Errors
/// A fault of the problem (see [`Problem::check`]), [`ConductionError::TooManyCells`],
/// [`ConductionError::Empty`], [`ConductionError::NoBoundary`] or [`ConductionError::NotConverged`].
pub fn solve(problem: &Problem, accuracy: &Accuracy) -> Result<Solution, ConductionError> {
    let grid = Grid::new(problem)?;
    let boundary = Boundary::new(problem, &grid);
    if boundary.faces().is_empty() {
        return Err(ConductionError::NoBoundary);
    }
    let matrix = ConductanceMatrix::assemble(&grid, &boundary);
    let mut solver = ConjugateGradients::new(&matrix, [0, 1, 2].map(|d| grid.widths(d)));

    let environments = problem.environments();
    let mut faces = vec![0_usize; environments];
    for face in boundary.faces() {
        faces[face.environment as usize] += 1;
    }
    // All unit fields together are 1 everywhere, so one of them follows from the others.
    let remainder = (0..environments).max_by_key(|&n| faces[n]).unwrap_or(0);
    let mut unit_fields = vec![Vec::new(); environments];
    let mut residual_fields = vec![Vec::new(); environments];
    let (mut iterations, mut worst) = (0, 0.0_f64);
    for environment in (0..environments).filter(|&n| n != remainder && faces[n] > 0) {
        let mut rhs = vec![0.0; grid.cells()];
        for face in boundary.faces().iter().filter(|f| f.environment as usize == environment) {
            rhs[face.cell as usize] += face.conductance;
        }
        let outcome = solver.solve(&rhs, accuracy);
        iterations += outcome.iterations;
        let residual = outcome.relative_residual;
        if residual.is_nan() || residual > accuracy.relative_residual {
            return Err(ConductionError::NotConverged { residual, iterations });
        }
        worst = worst.max(residual);
        unit_fields[environment] = outcome.solution;
        residual_fields[environment] = outcome.residual;
    }
    Ok(Solution::new(grid, boundary, unit_fields, &residual_fields, remainder, iterations, worst))
}
