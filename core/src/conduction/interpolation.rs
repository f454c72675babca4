//! Values between the cell centres: at the middles of faces and edges and at corners.
//!
//! Nodes are counted in half cells along each axis: 2n is the n-th line, 2n + 1 the middle of the
//! n-th cell. At a node the heat of the cells around it balances. A cell counts with
//! λ·Π(2/d) over the axes on which the node lies on a line, a quarter of a surface with
//! (1/R)·Π(2/d) over those axes but the one it is square to. The rule is exact for any layered
//! material, for a linear field, and at the edges and corners of a body where heat enters evenly,
//! and no value leaves the range of those around it.

use super::boundary::Boundary;
use super::geometry::{Point, Side};
use super::grid::Grid;

/// Indices in half cells along the three axes.
pub(super) type Node = [usize; 3];

/// Interpolates a field between the cell centres.
#[derive(Clone, Copy)]
pub(super) struct Interpolator<'a> {
    pub grid: &'a Grid,
    pub boundary: &'a Boundary,
    /// A value per cell.
    pub cells: &'a [f64],
    /// A value per environment.
    pub environments: &'a [f64],
}

impl Interpolator<'_> {
    /// Where a node stands.
    pub fn point(&self, node: Node) -> Point {
        Point::from_array([0, 1, 2].map(|d| {
            let n = node[d] / 2;
            if node[d] % 2 == 1 { self.grid.middle(d, n) } else { self.grid.line(d, n) }
        }))
    }

    /// The value at a node, if any cell around it conducts.
    pub fn value(&self, node: Node) -> Option<f64> {
        let counts = self.grid.counts();
        let on_line = node.map(|n| n.is_multiple_of(2));
        let choices = on_line.map(|on_line| if on_line { 2 } else { 1 });
        // Weights and weighted values of what conducts, and of surfaces held at a temperature (Dirichlet).
        let (mut weight, mut sum) = (0.0, 0.0);
        let (mut dirichlet_weight, mut dirichlet_sum) = (0.0, 0.0);
        for choice in 0..choices.iter().product::<usize>() {
            let picks = [
                choice % choices[0],
                choice / choices[0] % choices[1],
                choice / choices[0] / choices[1],
            ];
            let Some(indices) = neighbour(node, picks, counts) else { continue };
            let cell = self.grid.cell(indices);
            if self.grid.is_air(cell) {
                continue;
            }
            let spread = |d: usize| {
                if on_line[d] { 2.0 / self.grid.width(d, indices[d]) } else { 1.0 }
            };
            let spreads = [spread(0), spread(1), spread(2)];
            let full = spreads[0] * spreads[1] * spreads[2];
            let of_cell = self.grid.conductivity[cell] * full;
            weight += of_cell;
            sum += of_cell * self.cells[cell];
            for d in (0..3).filter(|&d| on_line[d]) {
                // The first choice is the cell below the line, which the line bounds from above.
                let side = Side::ALL[2 * d + usize::from(picks[d] == 0)];
                let Some(face) = self.boundary.face(cell, side) else { continue };
                let value = self.environments[face.environment as usize];
                let share = full / spreads[d];
                if face.resistance > 0.0 {
                    weight += share / face.resistance;
                    sum += share / face.resistance * value;
                } else {
                    dirichlet_weight += share;
                    dirichlet_sum += share * value;
                }
            }
        }
        if dirichlet_weight > 0.0 {
            Some(dirichlet_sum / dirichlet_weight)
        } else if weight > 0.0 {
            Some(sum / weight)
        } else {
            None
        }
    }

    /// The value inside a conducting cell or on its faces, by linear interpolation between the
    /// centre, face, edge and corner nodes of the eighth of the cell the point lies in.
    pub fn value_in_cell(&self, indices: [usize; 3], at: [f64; 3]) -> Option<f64> {
        let mut corners = [[0; 2]; 3];
        let mut shares = [0.0; 3];
        for d in 0..3 {
            let centre = 2 * indices[d] + 1;
            corners[d] = [centre, centre];
            if d < self.grid.axes().len() {
                let off = (at[d] - self.grid.middle(d, indices[d]))
                    / (0.5 * self.grid.width(d, indices[d]));
                corners[d][1] = if off < 0.0 { centre - 1 } else { centre + 1 };
                shares[d] = off.abs().min(1.0);
            }
        }
        let mut sum = 0.0;
        for pick in 0..8_usize {
            let bits = [pick & 1, pick >> 1 & 1, pick >> 2];
            let weight: f64 =
                (0..3).map(|d| if bits[d] == 1 { shares[d] } else { 1.0 - shares[d] }).product();
            if weight > 0.0 {
                sum += weight * self.value([0, 1, 2].map(|d| corners[d][bits[d]]))?;
            }
        }
        Some(sum)
    }
}

/// The cell on one hand of a node along each axis, if there is one.
fn neighbour(node: Node, picks: [usize; 3], counts: [usize; 3]) -> Option<[usize; 3]> {
    let mut indices = [0; 3];
    for d in 0..3 {
        let n = node[d] / 2;
        indices[d] = if node[d] % 2 == 1 || picks[d] == 1 { n } else { n.checked_sub(1)? };
        if indices[d] >= counts[d] {
            return None;
        }
    }
    Some(indices)
}
