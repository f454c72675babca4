//! Values on a plane cut through the domain, tile by tile.

use super::geometry::Axis;
use super::grid::Grid;
use super::interpolation::{Interpolator, Node};
use crate::units::Length;

/// A plane cut through the domain, to be drawn.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Section {
    /// The axis the plane is square to; z in two dimensions.
    pub axis: Axis,
    /// Where it stands along that axis; not looked at in two dimensions.
    pub at: Length,
}

/// Where a coordinate stands in a grid: its cell, the nodes at the cell's middle and on the line the
/// coordinate lies towards, and how far it is from the one to the other.
#[derive(Clone, Copy)]
struct AxisPosition {
    cell: usize,
    nodes: [usize; 2],
    share: f64,
}

impl AxisPosition {
    fn new(grid: &Grid, d: usize, cell: usize, at: f64) -> Self {
        let middle = 2 * cell + 1;
        let off = (at - grid.middle(d, cell)) / (0.5 * grid.width(d, cell));
        let towards = if off < 0.0 { middle - 1 } else { middle + 1 };
        Self { cell, nodes: [middle, towards], share: off.abs().min(1.0) }
    }

    /// The stands of the middles of equal parts of the domain along an axis.
    fn parts(grid: &Grid, d: usize, count: usize) -> Vec<Self> {
        let (from, to) = (grid.line(d, 0), grid.line(d, grid.counts()[d]));
        let mut cell = 0;
        let position = |n: usize| {
            let at = from + (to - from) * (n as f64 + 0.5) / count as f64;
            while cell + 1 < grid.counts()[d] && at > grid.line(d, cell + 1) {
                cell += 1;
            }
            Self::new(grid, d, cell, at)
        };
        (0..count).map(position).collect()
    }

    fn weights(&self) -> [f64; 2] {
        [1.0 - self.share, self.share]
    }
}

/// The values at the middles of `width` × `height` tiles of a section; none in air.
pub(super) fn sample_section(
    interpolator: Interpolator<'_>,
    section: Section,
    width: usize,
    height: usize,
) -> Vec<Option<f64>> {
    let grid = interpolator.grid;
    let d = section.axis.index();
    let [p, q] = section.axis.others().map(Axis::index);
    let is_flat = !grid.axes().contains(&section.axis);
    let at = if is_flat { grid.middle(d, 0) } else { section.at.value() };
    // On a line between two cells either may be the one that conducts.
    let mut planes: Vec<Plane<'_>> = grid
        .cells_at(d, at)
        .map(|cell| Plane::new(interpolator, d, AxisPosition::new(grid, d, cell, at)))
        .collect();
    let columns = AxisPosition::parts(grid, p, width);
    let rows = AxisPosition::parts(grid, q, height);
    let mut values = Vec::with_capacity(width * height);
    for row in &rows {
        for column in &columns {
            let mut values_of_planes = planes.iter_mut().map(|plane| plane.value(column, row));
            values.push(values_of_planes.find_map(|value| value));
        }
    }
    values
}

/// The values of a section where lines cross: row by row of `down`, in each row along `across`, in
/// metres. On the surface of a material it is that of the surface; none in air.
pub(super) fn sample_crossings(
    interpolator: Interpolator<'_>,
    section: Section,
    across: &[f64],
    down: &[f64],
) -> Vec<Option<f64>> {
    let grid = interpolator.grid;
    let d = section.axis.index();
    let [p, q] = section.axis.others().map(Axis::index);
    let is_flat = !grid.axes().contains(&section.axis);
    let at = if is_flat { grid.middle(d, 0) } else { section.at.value() };
    // On a line between two cells either may be the one that conducts.
    let positions = |d: usize, at: f64| -> Vec<AxisPosition> {
        grid.cells_at(d, at).map(|cell| AxisPosition::new(grid, d, cell, at)).collect()
    };
    let mut planes: Vec<Plane<'_>> = positions(d, at)
        .into_iter()
        .map(|position| Plane::new(interpolator, d, position))
        .collect();
    let columns: Vec<Vec<AxisPosition>> = across.iter().map(|&at| positions(p, at)).collect();
    let mut values = Vec::with_capacity(across.len() * down.len());
    for &at in down {
        let rows = positions(q, at);
        for columns in &columns {
            let mut value = None;
            for plane in &mut planes {
                for row in &rows {
                    for column in columns {
                        value = value.or_else(|| plane.value(column, row));
                    }
                }
            }
            values.push(value);
        }
    }
    values
}

/// The nodes of a plane, each read once.
struct Plane<'a> {
    interpolator: Interpolator<'a>,
    d: usize,
    position: AxisPosition,
    /// Row by row of nodes; not a number where not yet read.
    nodes: Vec<f64>,
    row_length: usize,
}

impl<'a> Plane<'a> {
    fn new(interpolator: Interpolator<'a>, d: usize, position: AxisPosition) -> Self {
        let [p, q] = Axis::ALL[d].others().map(Axis::index);
        let counts = interpolator.grid.counts();
        let row_length = 2 * counts[p] + 1;
        Self {
            interpolator,
            d,
            position,
            nodes: vec![f64::NAN; row_length * (2 * counts[q] + 1)],
            row_length,
        }
    }

    /// The value where a column and a row cross; none in air.
    fn value(&mut self, column: &AxisPosition, row: &AxisPosition) -> Option<f64> {
        let indices = self.turn([self.position.cell, column.cell, row.cell]);
        if self.interpolator.grid.is_air(self.interpolator.grid.cell(indices)) {
            return None;
        }
        let mut sum = 0.0;
        for (m, of_row) in row.nodes.into_iter().zip(row.weights()) {
            for (n, of_column) in column.nodes.into_iter().zip(column.weights()) {
                if of_row * of_column > 0.0 {
                    sum += of_row * of_column * self.node(n, m)?;
                }
            }
        }
        Some(sum)
    }

    fn node(&mut self, n: usize, m: usize) -> Option<f64> {
        let known = self.nodes[m * self.row_length + n];
        if !known.is_nan() {
            return Some(known);
        }
        let mut sum = 0.0;
        for (along, weight) in self.position.nodes.into_iter().zip(self.position.weights()) {
            if weight > 0.0 {
                sum += weight * self.interpolator.value(self.turn([along, n, m]))?;
            }
        }
        self.nodes[m * self.row_length + n] = sum;
        Some(sum)
    }

    /// From the order normal, column, row to the order x, y, z.
    fn turn(&self, [along, n, m]: [usize; 3]) -> Node {
        let [p, q] = Axis::ALL[self.d].others().map(Axis::index);
        let mut turned = [0; 3];
        (turned[self.d], turned[p], turned[q]) = (along, n, m);
        turned
    }
}
