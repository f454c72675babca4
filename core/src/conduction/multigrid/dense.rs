//! The exact answer on the coarsest network.

use super::coloured::Layout;
use crate::conduction::network::Network;

/// The inverse of a small network's matrix.
pub(super) struct DenseInverse {
    /// Where each conducting cell stands in the coloured arrays.
    positions: Vec<u32>,
    /// Symmetric, row by row.
    inverse: Vec<f32>,
    /// Room for the answer.
    values: Vec<f32>,
}

impl DenseInverse {
    pub fn new(network: &Network, diagonal: &[f64], layout: &Layout) -> Self {
        let cells: Vec<usize> = (0..diagonal.len()).filter(|&c| diagonal[c] > 0.0).collect();
        let positions = cells.iter().map(|&cell| layout.position(cell) as u32).collect();
        let n = cells.len();
        let mut matrix = vec![0.0; n * n];
        for (row, &cell) in cells.iter().enumerate() {
            matrix[row * n + row] = diagonal[cell];
            for (d, joins) in network.between.iter().enumerate() {
                if let Some(&conductance) = joins.get(cell)
                    && conductance > 0.0
                    && let Ok(column) = cells.binary_search(&(cell + network.stride(d)))
                {
                    matrix[row * n + column] = -conductance;
                    matrix[column * n + row] = -conductance;
                }
            }
        }
        invert(&mut matrix, n);
        let inverse = matrix.iter().map(|&value| value as f32).collect();
        Self { positions, inverse, values: vec![0.0; n] }
    }

    /// Fills the conducting cells of `out` with the answer to a heat input.
    pub fn solve(&mut self, heat: &[f32], out: &mut [f32]) {
        self.values.fill(0.0);
        // Column by column, as the matrix is symmetric: each step is a flat loop.
        let columns = self.inverse.chunks_exact(self.positions.len().max(1));
        for (column, &at) in columns.zip(&self.positions) {
            let heat = heat[at as usize];
            for (value, inverse) in self.values.iter_mut().zip(column) {
                *value += inverse * heat;
            }
        }
        for (value, &at) in self.values.iter().zip(&self.positions) {
            out[at as usize] = *value;
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
        for value in &mut pivot_row {
            *value *= inverse;
        }
        for (row, values) in matrix.chunks_exact_mut(n).enumerate() {
            if row == p {
                continue;
            }
            let factor = values[p];
            values[p] = 0.0;
            for (value, pivot) in values.iter_mut().zip(&pivot_row) {
                *value -= factor * pivot;
            }
        }
        matrix[p * n..(p + 1) * n].copy_from_slice(&pivot_row);
    }
}

#[cfg(test)]
impl DenseInverse {
    /// Makes every answer worthless.
    pub(super) fn spoil(&mut self) {
        self.inverse.fill(f32::NAN);
    }
}
