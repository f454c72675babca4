//! The direct solution on the coarsest level.

use super::red_black::Layout;
use crate::conduction::conductance_matrix::ConductanceMatrix;

/// The inverse of a small conductance matrix.
pub(super) struct DenseInverse {
    /// Where each conducting cell stands in the arrays of both colours.
    positions: Vec<u32>,
    /// Symmetric, row by row.
    inverse: Vec<f32>,
    /// The solution, cell by cell.
    solution: Vec<f32>,
}

impl DenseInverse {
    pub fn new(conductances: &ConductanceMatrix, diagonal: &[f64], layout: &Layout) -> Self {
        let cells: Vec<usize> = (0..diagonal.len()).filter(|&c| diagonal[c] > 0.0).collect();
        let positions = cells.iter().map(|&cell| layout.position(cell) as u32).collect();
        let n = cells.len();
        let mut matrix = vec![0.0; n * n];
        for (row, &cell) in cells.iter().enumerate() {
            matrix[row * n + row] = diagonal[cell];
            for (d, to_next) in conductances.neighbour_conductance.iter().enumerate() {
                if let Some(&conductance) = to_next.get(cell)
                    && conductance > 0.0
                    && let Ok(column) = cells.binary_search(&(cell + conductances.stride(d)))
                {
                    matrix[row * n + column] = -conductance;
                    matrix[column * n + row] = -conductance;
                }
            }
        }
        invert(&mut matrix, n);
        let inverse = matrix.iter().map(|&entry| entry as f32).collect();
        Self { positions, inverse, solution: vec![0.0; n] }
    }

    /// Fills the conducting cells of `out` with the solution for a right-hand side.
    pub fn solve(&mut self, rhs: &[f32], out: &mut [f32]) {
        self.solution.fill(0.0);
        // Column by column, as the matrix is symmetric: each step is a flat loop.
        let columns = self.inverse.chunks_exact(self.positions.len().max(1));
        for (column, &at) in columns.zip(&self.positions) {
            let rhs = rhs[at as usize];
            for (entry, inverse) in self.solution.iter_mut().zip(column) {
                *entry += inverse * rhs;
            }
        }
        for (entry, &at) in self.solution.iter().zip(&self.positions) {
            out[at as usize] = *entry;
        }
    }
}

/// Inverts a symmetric positive definite matrix in place by Gauss-Jordan elimination, which needs
/// no pivoting there.
fn invert(matrix: &mut [f64], n: usize) {
    let mut pivot_row = vec![0.0; n];
    for p in 0..n {
        let inverse = 1.0 / matrix[p * n + p];
        pivot_row.copy_from_slice(&matrix[p * n..(p + 1) * n]);
        pivot_row[p] = 1.0;
        for entry in &mut pivot_row {
            *entry *= inverse;
        }
        for (row, solution) in matrix.chunks_exact_mut(n).enumerate() {
            if row == p {
                continue;
            }
            let factor = solution[p];
            solution[p] = 0.0;
            for (entry, pivot) in solution.iter_mut().zip(&pivot_row) {
                *entry -= factor * pivot;
            }
        }
        matrix[p * n..(p + 1) * n].copy_from_slice(&pivot_row);
    }
}

#[cfg(test)]
impl DenseInverse {
    /// Makes every solution worthless.
    pub(super) fn spoil(&mut self) {
        self.inverse.fill(f32::NAN);
    }
}
