//! Conjugate gradients on the cells of colour 1, those of colour 0 being eliminated exactly.
//!
//! With D₀, D₁ the diagonals and E the conductances between the colours, the eliminated problem is
//! S·x₁ = f₁ + Eᵀ·D₀⁻¹·f₀ with S = D₁ − Eᵀ·D₀⁻¹·E.

use super::coarsen::Widths;
use super::dot_product::{LANES, dot, sum_products};
use super::red_black::RedBlackMatrix;
use super::sliding_window::SlidingWindow;
use super::v_cycle::VCycle;
use crate::conduction::conductance_matrix::ConductanceMatrix;
use crate::conduction::solve::Accuracy;

/// How often the true residual may send the iteration back to work.
const MAXIMUM_RESTARTS: usize = 4;
/// Iterations without a new lowest residual after which the cycle is given up for the inverse diagonal.
const STAGNATION_ITERATIONS: usize = 60;
/// How many iterations with the inverse diagonal one with the cycle is worth.
const JACOBI_ITERATIONS_PER_CYCLE: usize = 40;

/// A conductance matrix made ready to be solved for any right-hand side.
pub(in crate::conduction) struct ConjugateGradients {
    matrix: RedBlackMatrix<f64>,
    /// D₁ without halo.
    diagonal: Vec<f64>,
    cycle: VCycle,
    window: SlidingWindow<f64>,
    counts: [usize; 3],
    /// The first padded index of every row of cells.
    rows: Vec<usize>,
}

/// A solution and how it was reached.
pub(in crate::conduction) struct SolverOutcome {
    /// A value per cell, without padding.
    pub solution: Vec<f64>,
    /// Right-hand side less matrix times solution, per cell.
    pub residual: Vec<f64>,
    pub iterations: usize,
    /// The norm of the residual over the norm of the right-hand side.
    pub relative_residual: f64,
}

#[derive(Clone, Copy, PartialEq)]
enum Preconditioner {
    Multigrid,
    /// The inverse diagonal: slow, but nothing can go wrong with it.
    Jacobi,
}

enum Termination {
    Converged,
    IterationLimit,
    /// The preconditioner does not serve.
    Breakdown,
}

/// The vectors of the iteration, each of colour 1 with halo unless said otherwise: x, r, p and S·p.
struct Vectors {
    solution: Vec<f64>,
    residual: Vec<f64>,
    direction: Vec<f64>,
    matrix_product: Vec<f64>,
    /// Of colour 0.
    eliminated: Vec<f64>,
}

impl ConjugateGradients {
    pub fn new(conductances: &ConductanceMatrix, widths: Widths) -> Self {
        let diagonal = conductances.diagonal();
        let matrix = RedBlackMatrix::new(conductances, &diagonal);
        let cycle = VCycle::new(conductances, &diagonal, widths);
        let odd = diagonal.chunks_exact(2).map(|pair| pair[1]).collect();
        let rows = conductances.rows().collect();
        let window = SlidingWindow::new(&matrix.layout);
        Self { matrix, diagonal: odd, cycle, window, counts: conductances.counts, rows }
    }

    /// Solves for a right-hand side given per cell, without padding.
    pub fn solve(&mut self, rhs: &[f64], accuracy: &Accuracy) -> SolverOutcome {
        let [rhs0, rhs1] = self.scatter(rhs);
        let (rhs0, rhs1) = (rhs0.as_slice(), rhs1.as_slice());
        let rhs_norm = (dot(rhs0, rhs0) + dot(rhs1, rhs1)).sqrt();
        let tolerance = accuracy.relative_residual * rhs_norm;
        let mut vectors = Vectors {
            solution: self.matrix.zeros(),
            residual: self.matrix.zeros(),
            direction: self.matrix.zeros(),
            matrix_product: self.matrix.zeros(),
            eliminated: self.matrix.zeros(),
        };
        let mut preconditioner = Preconditioner::Multigrid;
        let mut iterations = 0;
        let mut norm = self.compute_residual(rhs0, rhs1, &mut vectors);
        for _ in 0..=MAXIMUM_RESTARTS {
            if norm <= tolerance || norm.is_nan() {
                break;
            }
            let spent = iterations;
            let budget = accuracy.maximum_iterations.saturating_sub(spent);
            let termination = self.iterate(
                preconditioner,
                norm,
                tolerance,
                budget,
                &mut iterations,
                &mut vectors,
            );
            norm = self.compute_residual(rhs0, rhs1, &mut vectors);
            match termination {
                Termination::IterationLimit => break,
                Termination::Converged => {}
                Termination::Breakdown => preconditioner = Preconditioner::Jacobi,
            }
        }
        let Vectors { solution, residual, eliminated, matrix_product: mut zero, .. } = vectors;
        zero.fill(0.0);
        SolverOutcome {
            solution: self.gather([&eliminated, &solution]),
            // On colour 0 it is zero.
            residual: self.gather([&zero, &residual]),
            iterations,
            relative_residual: norm / rhs_norm,
        }
    }

    /// Iterates until the running residual is small enough.
    fn iterate(
        &mut self,
        preconditioner: Preconditioner,
        first_norm: f64,
        tolerance: f64,
        budget: usize,
        iterations: &mut usize,
        vectors: &mut Vectors,
    ) -> Termination {
        let budget = match preconditioner {
            Preconditioner::Multigrid => budget,
            Preconditioner::Jacobi => budget.saturating_mul(JACOBI_ITERATIONS_PER_CYCLE),
        };
        let mut norm = first_norm;
        let (mut lowest_norm, mut stagnant_iterations) = (norm, 0);
        let (mut residual_product, mut alpha) = (0.0, 0.0);
        // What a failed preconditioner left behind must not live on.
        vectors.direction.fill(0.0);
        // Single precision has a narrow range: the cycle works on a residual of about size one.
        let mut scale = norm;
        let layout = &self.matrix.layout;
        let residual = &vectors.residual[layout.halo..];
        for (rhs, residual) in self.cycle.rhs_and_solution(layout).0.iter_mut().zip(residual) {
            *rhs = (residual / scale) as f32;
        }
        for step in 0..budget {
            let next_residual_product = self.precondition(preconditioner, scale, vectors);
            if !(next_residual_product > 0.0 && next_residual_product.is_finite()) {
                vectors.advance(alpha);
                return Termination::Breakdown;
            }
            let beta = if step == 0 { 0.0 } else { next_residual_product / residual_product };
            residual_product = next_residual_product;
            let curvature = self.update_direction(preconditioner, beta, scale, alpha, vectors);
            if !(curvature > 0.0 && curvature.is_finite()) {
                return Termination::Breakdown;
            }
            alpha = residual_product / curvature;
            let (rhs, _) = self.cycle.rhs_and_solution(&self.matrix.layout);
            let next_scale = norm;
            norm = vectors.update_residual(alpha, self.matrix.layout.halo, rhs, next_scale);
            scale = next_scale;
            *iterations += 1;
            stagnant_iterations += 1;
            if norm < 0.9 * lowest_norm {
                (lowest_norm, stagnant_iterations) = (norm, 0);
            }
            let is_stagnant = preconditioner == Preconditioner::Multigrid
                && stagnant_iterations > STAGNATION_ITERATIONS;
            if norm <= tolerance || is_stagnant {
                vectors.advance(alpha);
                return if norm <= tolerance {
                    Termination::Converged
                } else {
                    Termination::Breakdown
                };
            }
        }
        vectors.advance(alpha);
        Termination::IterationLimit
    }

    /// Applies the preconditioner to the residual r, z = M⁻¹·r, and returns r·z.
    fn precondition(
        &mut self,
        preconditioner: Preconditioner,
        scale: f64,
        vectors: &Vectors,
    ) -> f64 {
        let layout = &self.matrix.layout;
        let range = 0..layout.sizes[1];
        let residual = &vectors.residual[layout.halo..][range.clone()];
        match preconditioner {
            Preconditioner::Multigrid => scale * scale * self.cycle.apply(),
            Preconditioner::Jacobi => {
                sum_products(residual, self.matrix.inverse_diagonal(1, &range), |r, inverse| {
                    r * r * inverse
                })
            }
        }
    }

    /// Goes the last step x += α·p, makes the next direction p = z + β·p and its product S·p; returns
    /// p·S·p. The step waits until here because the direction is in the cache.
    fn update_direction(
        &mut self,
        preconditioner: Preconditioner,
        beta: f64,
        scale: f64,
        alpha: f64,
        vectors: &mut Vectors,
    ) -> f64 {
        let Vectors { solution, residual, direction, matrix_product, .. } = vectors;
        let halo = self.matrix.layout.halo;
        let (_, preconditioned) = self.cycle.rhs_and_solution(&self.matrix.layout);
        let mut curvature = 0.0;
        for [ready, middle, done] in self.matrix.layout.chunks() {
            let directions = direction[halo..][ready.clone()].iter_mut();
            let target = directions.zip(&mut solution[halo..][ready.clone()]);
            match preconditioner {
                Preconditioner::Multigrid => {
                    for ((p, x), &z) in target.zip(&preconditioned[ready]) {
                        *x += alpha * *p;
                        *p = scale * f64::from(z) + beta * *p;
                    }
                }
                Preconditioner::Jacobi => {
                    let inverse = self.matrix.inverse_diagonal(1, &ready);
                    let residual = &residual[halo..][ready];
                    for (((p, x), r), inverse) in target.zip(residual).zip(inverse) {
                        *x += alpha * *p;
                        *p = r * inverse + beta * *p;
                    }
                }
            }
            let inverse = self.matrix.inverse_diagonal(0, &middle);
            let out = self.window.slot(&self.matrix.layout, &middle);
            self.matrix.sweep(0, &middle, &*direction, out, |p, sum| inverse[p] * sum);
            let (own, diagonal) = (&direction[halo..][done.clone()], &self.diagonal[done.clone()]);
            let out = &mut matrix_product[halo..][done.clone()];
            let eliminated = self.window.values();
            self.matrix.sweep(1, &done, eliminated, out, |p, sum| diagonal[p] * own[p] - sum);
            curvature += dot(own, out);
        }
        curvature
    }

    /// Eliminates colour 0 at the solution, computes the residual on colour 1, and returns its norm.
    fn compute_residual(&self, rhs0: &[f64], rhs1: &[f64], vectors: &mut Vectors) -> f64 {
        let Vectors { solution, residual, eliminated, .. } = vectors;
        let halo = self.matrix.layout.halo;
        let mut square = 0.0;
        for [_, middle, done] in self.matrix.layout.chunks() {
            let (rhs, inverse) =
                (&rhs0[halo..][middle.clone()], self.matrix.inverse_diagonal(0, &middle));
            let out = &mut eliminated[halo..][middle.clone()];
            self.matrix.sweep(0, &middle, &*solution, out, |p, sum| inverse[p] * (rhs[p] + sum));
            let (rhs, diagonal) = (&rhs1[halo..][done.clone()], &self.diagonal[done.clone()]);
            let own = &solution[halo..][done.clone()];
            let out = &mut residual[halo..][done.clone()];
            let residual_of = |p: usize, sum: f64| rhs[p] + (sum - diagonal[p] * own[p]);
            self.matrix.sweep(1, &done, &*eliminated, out, residual_of);
            square += dot(out, out);
        }
        square.sqrt()
    }

    /// An entry per cell to entries by colour, with padding and halos.
    fn scatter(&self, cells: &[f64]) -> [Vec<f64>; 2] {
        let halo = self.matrix.layout.halo;
        let mut coloured = [self.matrix.zeros(), self.matrix.zeros()];
        for (row, &first) in cells.chunks_exact(self.counts[0]).zip(&self.rows) {
            for (n, &cell) in row.iter().enumerate() {
                let index = first + n;
                coloured[index % 2][halo + index / 2] = cell;
            }
        }
        coloured
    }

    /// Entries by colour, with padding and halos, to an entry per cell.
    fn gather(&self, coloured: [&[f64]; 2]) -> Vec<f64> {
        let halo = self.matrix.layout.halo;
        let nx = self.counts[0];
        let mut cells = vec![0.0; nx * self.rows.len()];
        for (row, &first) in cells.chunks_exact_mut(nx).zip(&self.rows) {
            for (n, cell) in row.iter_mut().enumerate() {
                let index = first + n;
                *cell = coloured[index % 2][halo + index / 2];
            }
        }
        cells
    }
}

impl Vectors {
    /// Goes a step along the direction: x += α·p.
    fn advance(&mut self, alpha: f64) {
        for (solution, direction) in self.solution.iter_mut().zip(&self.direction) {
            *solution += alpha * direction;
        }
    }

    /// Updates the residual, r -= α·S·p, hands it over a scale to the cycle as its right-hand side, and
    /// returns its new norm.
    fn update_residual(&mut self, alpha: f64, halo: usize, rhs: &mut [f32], scale: f64) -> f64 {
        let inverse_scale = 1.0 / scale;
        let mut sums = [0.0; LANES];
        let length = rhs.len();
        let mut residuals = self.residual[halo..][..length].chunks_exact_mut(LANES);
        let mut products = self.matrix_product[halo..][..length].chunks_exact(LANES);
        let mut rhs_lanes = rhs.chunks_exact_mut(LANES);
        let chunks = residuals.by_ref().zip(products.by_ref()).zip(rhs_lanes.by_ref());
        for ((residuals, products), rhs_lanes) in chunks {
            for n in 0..LANES {
                residuals[n] -= alpha * products[n];
                sums[n] += residuals[n] * residuals[n];
                rhs_lanes[n] = (inverse_scale * residuals[n]) as f32;
            }
        }
        let mut rest = 0.0;
        let residuals = residuals.into_remainder().iter_mut().zip(products.remainder());
        for ((residual, product), rhs) in residuals.zip(rhs_lanes.into_remainder()) {
            *residual -= alpha * product;
            rest += *residual * *residual;
            *rhs = (inverse_scale * *residual) as f32;
        }
        (sums.iter().sum::<f64>() + rest).sqrt()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::conduction::boundary::Boundary;
    use crate::conduction::{Block, CellSizes, Dimensionality, Environment, Grid, Problem, Side};
    use crate::units::{Length, ThermalConductivity, ThermalResistance};

    /// A steel bar in foam between two environments.
    fn solver_and_rhs() -> (ConjugateGradients, Vec<f64>) {
        let cells = CellSizes::new(Length::mm(5.0), Length::mm(10.0));
        let foam = ThermalConductivity::new(0.03);
        let domain = Block::metres([0.0; 3], [0.1, 0.2, 0.3]);
        let mut problem = Problem::new(domain, Dimensionality::Three, foam, cells);
        let bar = Block::metres([0.04, 0.05, 0.06], [0.06, 0.07, 0.3]);
        problem.paint(bar, ThermalConductivity::new(50.0));
        problem.expose(Side::ZMinimum, Environment(0), ThermalResistance::new(0.13));
        problem.expose(Side::ZMaximum, Environment(1), ThermalResistance::new(0.04));
        let grid = Grid::new(&problem).unwrap();
        let boundary = Boundary::new(&problem, &grid);
        let matrix = ConductanceMatrix::assemble(&grid, &boundary);
        let solver = ConjugateGradients::new(&matrix, [0, 1, 2].map(|d| grid.widths(d)));
        let mut rhs = vec![0.0; grid.cells()];
        for face in boundary.faces().iter().filter(|face| face.environment == 0) {
            rhs[face.cell as usize] += face.conductance;
        }
        (solver, rhs)
    }

    #[test]
    fn a_spoilt_cycle_only_costs_iterations() {
        let accuracy = Accuracy::default();
        let (mut solver, rhs) = solver_and_rhs();
        let good = solver.solve(&rhs, &accuracy);
        assert!(good.iterations < 30, "{} iterations", good.iterations);
        solver.cycle.spoil();
        let spoilt = solver.solve(&rhs, &accuracy);
        assert!(spoilt.iterations > good.iterations);
        assert!(spoilt.relative_residual <= accuracy.relative_residual);
        for (good, spoilt) in good.solution.iter().zip(&spoilt.solution) {
            assert!((good - spoilt).abs() < 1e-5);
        }
    }

    #[test]
    fn an_impossible_accuracy_ends_with_the_true_residual() {
        let (mut solver, rhs) = solver_and_rhs();
        let impossible = Accuracy { relative_residual: 1e-30, maximum_iterations: 100 };
        let outcome = solver.solve(&rhs, &impossible);
        assert!(outcome.relative_residual > 1e-30 && outcome.relative_residual < 1e-12);
    }
}
