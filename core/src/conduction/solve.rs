//! From a problem to its solution.

use super::boundary::Boundary;
use super::error::ConductionError;
use super::grid::Grid;
use super::network::Network;
use super::problem::Problem;
use super::solution::Solution;

/// How closely the heat balance of the cells is to be met.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Accuracy {
    /// The norm of what is left over in the cells' heat balances, over the norm of the heat put in.
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
/// A fault of the problem (see [`Problem::check`]), too many cells, a body or a whole domain that no
/// environment touches, or [`ConductionError::NotConverged`].
pub fn solve(problem: &Problem, accuracy: &Accuracy) -> Result<Solution, ConductionError> {
    let grid = Grid::new(problem)?;
    let boundary = Boundary::new(problem, &grid);
    let network = Network::new(&grid, &boundary);
    network.check_tied(&grid)?;

    let environments = problem.environments();
    let mut faces = vec![0_usize; environments];
    for face in boundary.faces() {
        faces[face.environment as usize] += 1;
    }
    // All unit fields together are 1 everywhere, so one of them follows from the others.
    let remainder = (0..environments).max_by_key(|&n| faces[n]).unwrap_or(0);
    let diagonal = network.diagonal();
    let mut unit_fields = vec![Vec::new(); environments];
    let mut residual_fields = vec![Vec::new(); environments];
    let (mut iterations, mut worst) = (0, 0.0_f64);
    for environment in (0..environments).filter(|&n| n != remainder && faces[n] > 0) {
        let mut heat = vec![0.0; network.cells()];
        for face in boundary.faces().iter().filter(|f| f.environment as usize == environment) {
            heat[face.cell as usize] += face.conductance;
        }
        let outcome = conjugate_gradients(&network, &diagonal, &heat, accuracy)?;
        iterations += outcome.iterations;
        worst = worst.max(outcome.residual);
        unit_fields[environment] = outcome.field;
        residual_fields[environment] = outcome.left_over;
    }
    Ok(Solution::new(grid, boundary, unit_fields, &residual_fields, remainder, iterations, worst))
}

struct Outcome {
    field: Vec<f64>,
    /// Heat put in less heat taken out by the field, cell by cell.
    left_over: Vec<f64>,
    iterations: usize,
    residual: f64,
}

fn dot(a: &[f64], b: &[f64]) -> f64 {
    a.iter().zip(b).map(|(a, b)| a * b).sum()
}

fn conjugate_gradients(
    network: &Network,
    diagonal: &[f64],
    heat: &[f64],
    accuracy: &Accuracy,
) -> Result<Outcome, ConductionError> {
    let cells = network.cells();
    let inverse: Vec<f64> = diagonal.iter().map(|&d| if d > 0.0 { 1.0 / d } else { 0.0 }).collect();
    let mut field = vec![0.0; cells];
    let mut left = heat.to_vec();
    let mut product = vec![0.0; cells];
    let scaled = |left: &[f64]| left.iter().zip(&inverse).map(|(r, w)| r * w).collect::<Vec<_>>();
    let mut direction = scaled(&left);
    let mut energy = dot(&left, &direction);
    let size = dot(heat, heat).sqrt();
    // The plain method needs some ten times the iterations of a multigrid one.
    let limit = accuracy.maximum_iterations.saturating_mul(40);
    for iteration in 0..limit {
        let residual = dot(&left, &left).sqrt() / size;
        if residual <= accuracy.relative_residual {
            return Ok(Outcome { field, left_over: left, iterations: iteration, residual });
        }
        network.outflow(diagonal, &direction, &mut product);
        let step = energy / dot(&direction, &product);
        for n in 0..cells {
            field[n] += step * direction[n];
            left[n] -= step * product[n];
        }
        let next = scaled(&left);
        let next_energy = dot(&left, &next);
        let share = next_energy / energy;
        energy = next_energy;
        for n in 0..cells {
            direction[n] = next[n] + share * direction[n];
        }
    }
    let residual = dot(&left, &left).sqrt() / size;
    Err(ConductionError::NotConverged { residual, iterations: limit })
}
