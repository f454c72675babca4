//! Conjugate gradients on the cells of colour 1, those of colour 0 being eliminated exactly.
//!
//! With D₀, D₁ the diagonals and E the conductances between the colours, the eliminated problem is
//! S·x₁ = f₁ + Eᵀ·D₀⁻¹·f₀ with S = D₁ − Eᵀ·D₀⁻¹·E.

use super::coarsen::Widths;
use super::coloured::Coloured;
use super::cycle::Cycle;
use super::sums::{LANES, dot, lanes};
use super::window::Window;
use crate::conduction::network::Network;
use crate::conduction::solve::Accuracy;

/// How often the true residual may send the iteration back to work.
const RESTARTS: usize = 4;
/// Iterations without a new lowest residual after which the cycle is given up for plain scaling.
const PATIENCE: usize = 60;
/// How many plain iterations one preconditioned iteration is worth.
const PLAIN_WORTH: usize = 40;

/// A network made ready to be solved for any heat input.
pub(in crate::conduction) struct Solver {
    matrix: Coloured<f64>,
    /// D₁ without halo.
    diagonal: Vec<f64>,
    cycle: Cycle,
    window: Window<f64>,
    counts: [usize; 3],
    /// The first number of every row of cells.
    rows: Vec<usize>,
}

/// A field and how it was reached.
pub(in crate::conduction) struct Outcome {
    /// A value per cell, without padding.
    pub field: Vec<f64>,
    /// The heat put in less the heat taken out, per cell.
    pub left_over: Vec<f64>,
    pub iterations: usize,
    /// The norm of what is left over, over the norm of the heat put in.
    pub residual: f64,
}

#[derive(Clone, Copy, PartialEq)]
enum Preconditioner {
    Cycle,
    /// The inverse diagonal: slow, but nothing can go wrong with it.
    Plain,
}

enum Ending {
    Reached,
    Spent,
    /// The preconditioner does not serve.
    Failed,
}

/// The vectors of the iteration, each of colour 1 with halo unless said otherwise.
struct Vectors {
    answer: Vec<f64>,
    residual: Vec<f64>,
    direction: Vec<f64>,
    product: Vec<f64>,
    /// Of colour 0.
    eliminated: Vec<f64>,
}

impl Solver {
    pub fn new(network: &Network, widths: Widths) -> Self {
        let diagonal = network.diagonal();
        let matrix = Coloured::new(network, &diagonal);
        let cycle = Cycle::new(network, &diagonal, widths);
        let odd = diagonal.chunks_exact(2).map(|pair| pair[1]).collect();
        let rows = network.rows().collect();
        let window = Window::new(&matrix.layout);
        Self { matrix, diagonal: odd, cycle, window, counts: network.counts, rows }
    }

    /// Solves for a heat input per cell, without padding.
    pub fn solve(&mut self, heat: &[f64], accuracy: &Accuracy) -> Outcome {
        let [heat0, heat1] = self.spread(heat);
        let (heat0, heat1) = (heat0.as_slice(), heat1.as_slice());
        let size = (dot(heat0, heat0) + dot(heat1, heat1)).sqrt();
        let wanted = accuracy.relative_residual * size;
        let mut vectors = Vectors {
            answer: self.matrix.zeros(),
            residual: self.matrix.zeros(),
            direction: self.matrix.zeros(),
            product: self.matrix.zeros(),
            eliminated: self.matrix.zeros(),
        };
        let mut preconditioner = Preconditioner::Cycle;
        let mut iterations = 0;
        let mut norm = self.find_residual(heat0, heat1, &mut vectors);
        for _ in 0..=RESTARTS {
            if norm <= wanted || norm.is_nan() {
                break;
            }
            let spent = iterations;
            let budget = accuracy.maximum_iterations.saturating_sub(spent);
            let ending =
                self.iterate(preconditioner, norm, wanted, budget, &mut iterations, &mut vectors);
            norm = self.find_residual(heat0, heat1, &mut vectors);
            match ending {
                Ending::Spent => break,
                Ending::Reached => {}
                Ending::Failed => preconditioner = Preconditioner::Plain,
            }
        }
        let Vectors { answer, residual, eliminated, product: mut balanced, .. } = vectors;
        balanced.fill(0.0);
        Outcome {
            field: self.gather([&eliminated, &answer]),
            // Colour 0 is in balance.
            left_over: self.gather([&balanced, &residual]),
            iterations,
            residual: norm / size,
        }
    }

    /// Iterates until the running residual is small enough.
    fn iterate(
        &mut self,
        preconditioner: Preconditioner,
        first_norm: f64,
        wanted: f64,
        budget: usize,
        iterations: &mut usize,
        vectors: &mut Vectors,
    ) -> Ending {
        let budget = match preconditioner {
            Preconditioner::Cycle => budget,
            Preconditioner::Plain => budget.saturating_mul(PLAIN_WORTH),
        };
        let mut norm = first_norm;
        let (mut lowest, mut since_lowest) = (norm, 0);
        let (mut energy, mut last_step) = (0.0, 0.0);
        // What a failed preconditioner left behind must not live on.
        vectors.direction.fill(0.0);
        // Single precision has a narrow range: the cycle works on a residual of about size one.
        let mut scale = norm;
        let layout = &self.matrix.layout;
        let residual = &vectors.residual[layout.halo..];
        for (heat, residual) in self.cycle.ports(layout).0.iter_mut().zip(residual) {
            *heat = (residual / scale) as f32;
        }
        for step in 0..budget {
            let next_energy = self.precondition(preconditioner, scale, vectors);
            if !(next_energy > 0.0 && next_energy.is_finite()) {
                vectors.go(last_step);
                return Ending::Failed;
            }
            let share = if step == 0 { 0.0 } else { next_energy / energy };
            energy = next_energy;
            let curvature = self.turn(preconditioner, share, scale, last_step, vectors);
            if !(curvature > 0.0 && curvature.is_finite()) {
                return Ending::Failed;
            }
            last_step = energy / curvature;
            let (heat, _) = self.cycle.ports(&self.matrix.layout);
            let next_scale = norm;
            norm = vectors.reduce_residual(last_step, self.matrix.layout.halo, heat, next_scale);
            scale = next_scale;
            *iterations += 1;
            since_lowest += 1;
            if norm < 0.9 * lowest {
                (lowest, since_lowest) = (norm, 0);
            }
            let is_lost = preconditioner == Preconditioner::Cycle && since_lowest > PATIENCE;
            if norm <= wanted || is_lost {
                vectors.go(last_step);
                return if norm <= wanted { Ending::Reached } else { Ending::Failed };
            }
        }
        vectors.go(last_step);
        Ending::Spent
    }

    /// Lets the preconditioner answer the residual and returns the product of the two.
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
            Preconditioner::Cycle => scale * scale * self.cycle.run(),
            Preconditioner::Plain => {
                lanes(residual, self.matrix.inverse(1, &range), |r, inverse| r * r * inverse)
            }
        }
    }

    /// Goes the last step along the direction, makes the next direction p = z + share·p and its product
    /// S·p; returns p·S·p. The step waits until here because the direction is at hand.
    fn turn(
        &mut self,
        preconditioner: Preconditioner,
        share: f64,
        scale: f64,
        last_step: f64,
        vectors: &mut Vectors,
    ) -> f64 {
        let Vectors { answer, residual, direction, product, .. } = vectors;
        let halo = self.matrix.layout.halo;
        let (_, preconditioned) = self.cycle.ports(&self.matrix.layout);
        let mut curvature = 0.0;
        for [ready, middle, done] in self.matrix.layout.pieces() {
            let directions = direction[halo..][ready.clone()].iter_mut();
            let target = directions.zip(&mut answer[halo..][ready.clone()]);
            match preconditioner {
                Preconditioner::Cycle => {
                    for ((p, x), &z) in target.zip(&preconditioned[ready]) {
                        *x += last_step * *p;
                        *p = scale * f64::from(z) + share * *p;
                    }
                }
                Preconditioner::Plain => {
                    let inverse = self.matrix.inverse(1, &ready);
                    let residual = &residual[halo..][ready];
                    for (((p, x), r), inverse) in target.zip(residual).zip(inverse) {
                        *x += last_step * *p;
                        *p = r * inverse + share * *p;
                    }
                }
            }
            let inverse = self.matrix.inverse(0, &middle);
            let out = self.window.room(&self.matrix.layout, &middle);
            self.matrix.sweep(0, &middle, &*direction, out, |p, sum| inverse[p] * sum);
            let (own, diagonal) = (&direction[halo..][done.clone()], &self.diagonal[done.clone()]);
            let out = &mut product[halo..][done.clone()];
            let eliminated = self.window.values();
            self.matrix.sweep(1, &done, eliminated, out, |p, sum| diagonal[p] * own[p] - sum);
            curvature += dot(own, out);
        }
        curvature
    }

    /// Balances colour 0 against the answer, finds what is left over on colour 1, and returns its
    /// norm.
    fn find_residual(&self, heat0: &[f64], heat1: &[f64], vectors: &mut Vectors) -> f64 {
        let Vectors { answer, residual, eliminated, .. } = vectors;
        let halo = self.matrix.layout.halo;
        let mut square = 0.0;
        for [_, middle, done] in self.matrix.layout.pieces() {
            let (heat, inverse) = (&heat0[halo..][middle.clone()], self.matrix.inverse(0, &middle));
            let out = &mut eliminated[halo..][middle.clone()];
            self.matrix.sweep(0, &middle, &*answer, out, |p, sum| inverse[p] * (heat[p] + sum));
            let (heat, diagonal) = (&heat1[halo..][done.clone()], &self.diagonal[done.clone()]);
            let own = &answer[halo..][done.clone()];
            let out = &mut residual[halo..][done.clone()];
            let left = |p: usize, sum: f64| heat[p] + (sum - diagonal[p] * own[p]);
            self.matrix.sweep(1, &done, &*eliminated, out, left);
            square += dot(out, out);
        }
        square.sqrt()
    }

    /// An entry per cell to entries by colour, with padding and halos.
    fn spread(&self, cells: &[f64]) -> [Vec<f64>; 2] {
        let halo = self.matrix.layout.halo;
        let mut coloured = [self.matrix.zeros(), self.matrix.zeros()];
        for (row, &first) in cells.chunks_exact(self.counts[0]).zip(&self.rows) {
            for (n, &cell) in row.iter().enumerate() {
                let number = first + n;
                coloured[number % 2][halo + number / 2] = cell;
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
                let number = first + n;
                *cell = coloured[number % 2][halo + number / 2];
            }
        }
        cells
    }
}

impl Vectors {
    /// Goes a step along the direction.
    fn go(&mut self, step: f64) {
        for (answer, direction) in self.answer.iter_mut().zip(&self.direction) {
            *answer += step * direction;
        }
    }

    /// Takes from the residual what a step takes, hands it over a scale to the cycle as its heat input,
    /// and returns its new norm.
    fn reduce_residual(&mut self, step: f64, halo: usize, heat: &mut [f32], scale: f64) -> f64 {
        let inverse = 1.0 / scale;
        let mut sums = [0.0; LANES];
        let size = heat.len();
        let mut residuals = self.residual[halo..][..size].chunks_exact_mut(LANES);
        let mut products = self.product[halo..][..size].chunks_exact(LANES);
        let mut heats = heat.chunks_exact_mut(LANES);
        let pieces = residuals.by_ref().zip(products.by_ref()).zip(heats.by_ref());
        for ((residuals, products), heats) in pieces {
            for n in 0..LANES {
                residuals[n] -= step * products[n];
                sums[n] += residuals[n] * residuals[n];
                heats[n] = (inverse * residuals[n]) as f32;
            }
        }
        let mut rest = 0.0;
        let residuals = residuals.into_remainder().iter_mut().zip(products.remainder());
        for ((residual, product), heat) in residuals.zip(heats.into_remainder()) {
            *residual -= step * product;
            rest += *residual * *residual;
            *heat = (inverse * *residual) as f32;
        }
        (sums.iter().sum::<f64>() + rest).sqrt()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::conduction::boundary::Boundary;
    use crate::conduction::{Block, CellSizes, Dimensions, Environment, Grid, Problem, Side};
    use crate::units::{Length, ThermalConductivity, ThermalResistance};

    /// A steel bar in foam between two environments.
    fn solver_and_heat() -> (Solver, Vec<f64>) {
        let cells = CellSizes::new(Length::mm(5.0), Length::mm(10.0));
        let foam = ThermalConductivity::new(0.03);
        let domain = Block::metres([0.0; 3], [0.1, 0.2, 0.3]);
        let mut problem = Problem::new(domain, Dimensions::Three, foam, cells);
        let bar = Block::metres([0.04, 0.05, 0.06], [0.06, 0.07, 0.3]);
        problem.paint(bar, ThermalConductivity::new(50.0));
        problem.expose(Side::ZMinimum, Environment(0), ThermalResistance::new(0.13));
        problem.expose(Side::ZMaximum, Environment(1), ThermalResistance::new(0.04));
        let grid = Grid::new(&problem).unwrap();
        let boundary = Boundary::new(&problem, &grid);
        let network = Network::new(&grid, &boundary);
        let solver = Solver::new(&network, [0, 1, 2].map(|d| grid.widths(d)));
        let mut heat = vec![0.0; grid.cells()];
        for face in boundary.faces().iter().filter(|face| face.environment == 0) {
            heat[face.cell as usize] += face.conductance;
        }
        (solver, heat)
    }

    #[test]
    fn a_spoilt_cycle_only_costs_iterations() {
        let accuracy = Accuracy::default();
        let (mut solver, heat) = solver_and_heat();
        let good = solver.solve(&heat, &accuracy);
        assert!(good.iterations < 30, "{} iterations", good.iterations);
        solver.cycle.spoil();
        let spoilt = solver.solve(&heat, &accuracy);
        assert!(spoilt.iterations > good.iterations);
        assert!(spoilt.residual <= accuracy.relative_residual);
        for (good, spoilt) in good.field.iter().zip(&spoilt.field) {
            assert!((good - spoilt).abs() < 1e-5);
        }
    }

    #[test]
    fn an_impossible_accuracy_ends_with_the_true_residual() {
        let (mut solver, heat) = solver_and_heat();
        let wish = Accuracy { relative_residual: 1e-30, maximum_iterations: 100 };
        let outcome = solver.solve(&heat, &wish);
        assert!(outcome.residual > 1e-30 && outcome.residual < 1e-12);
    }
}
