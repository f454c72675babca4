//! The faces through which cells exchange heat with an environment.

use super::geometry::{Axis, Shape, Side};
use super::grid::{Grid, NO_AIR};
use super::problem::{AirRegion, Problem};

/// A face of a conducting cell that looks into an environment.
#[derive(Clone, Copy, Debug)]
pub(super) struct BoundaryFace {
    pub cell: u32,
    pub side: Side,
    pub environment: u32,
    /// Surface resistance R of the face as gridded, m²·K/W.
    pub resistance: f64,
    /// From the centre of the cell to the environment, W/K: A / (d / (2 λ) + R).
    pub conductance: f64,
}

impl BoundaryFace {
    const fn key(&self) -> (u32, usize) {
        (self.cell, self.side.index())
    }
}

/// All boundary faces of a grid, in the order of their cells.
#[derive(Clone, Debug)]
pub(super) struct Boundary {
    faces: Vec<BoundaryFace>,
    /// Where the faces of each cell begin, and the end of the last.
    starts: Vec<u32>,
}

impl Boundary {
    pub fn new(problem: &Problem, grid: &Grid) -> Self {
        let mut boundary = Self { faces: Vec::new(), starts: vec![0; grid.cells() + 1] };
        boundary.find_faces_to_air(problem, grid);
        boundary.find_exposed_faces(problem, grid);
        boundary.faces.sort_unstable_by_key(BoundaryFace::key);
        for face in &boundary.faces {
            boundary.starts[face.cell as usize + 1] += 1;
        }
        let mut sum = 0;
        for start in &mut boundary.starts {
            sum += *start;
            *start = sum;
        }
        boundary
    }

    pub fn faces(&self) -> &[BoundaryFace] {
        &self.faces
    }

    /// The face of a cell on one of its sides, if it looks into an environment.
    pub fn face(&self, cell: usize, side: Side) -> Option<&BoundaryFace> {
        let of_cell = self.starts[cell] as usize..self.starts[cell + 1] as usize;
        self.faces[of_cell].iter().find(|face| face.side == side)
    }

    fn find_faces_to_air(&mut self, problem: &Problem, grid: &Grid) {
        let counts = grid.counts();
        let sides = &Side::ALL[..2 * grid.axes().len()];
        let strides = [0, 1, 2].map(|d| grid.stride(d));
        let is_matter = |cell: usize| grid.region.get(cell) == Some(&NO_AIR);
        let may_touch_matter = |cell: usize| {
            strides.iter().any(|&s| is_matter(cell + s) || is_matter(cell.wrapping_sub(s)))
        };
        for (air_cell, &region_number) in grid.region.iter().enumerate() {
            // Most air lies beside air: that is told before indices are worked out.
            if region_number == NO_AIR || !may_touch_matter(air_cell) {
                continue;
            }
            let region = &problem.air[region_number as usize];
            let air_indices = grid.indices(air_cell);
            for &side in sides {
                // The material's side looks at the air, so the material stands on the other hand.
                let d = side.axis().index();
                let mut indices = air_indices;
                if side.is_maximum() {
                    if indices[d] == 0 {
                        continue;
                    }
                    indices[d] -= 1;
                } else {
                    indices[d] += 1;
                    if indices[d] == counts[d] {
                        continue;
                    }
                }
                let cell = grid.cell(indices);
                if !grid.is_air(cell) {
                    let slope = step_cosine(region, grid, indices, air_indices, side);
                    let resistance = region.surface_resistance.of(side).value() / slope;
                    self.push(grid, cell, side, region.environment.0, resistance);
                }
            }
        }
    }

    fn find_exposed_faces(&mut self, problem: &Problem, grid: &Grid) {
        let counts = grid.counts();
        for exposed in &problem.exposed {
            let d = exposed.side.axis().index();
            let [p, q] = exposed.side.axis().others().map(Axis::index);
            let mut indices = [0; 3];
            indices[d] = if exposed.side.is_maximum() { counts[d] - 1 } else { 0 };
            for n in 0..counts[q] {
                indices[q] = n;
                for m in 0..counts[p] {
                    indices[p] = m;
                    let cell = grid.cell(indices);
                    if !grid.is_air(cell) {
                        let resistance = exposed.surface_resistance.value();
                        self.push(grid, cell, exposed.side, exposed.environment.0, resistance);
                    }
                }
            }
        }
    }

    fn push(&mut self, grid: &Grid, cell: usize, side: Side, environment: usize, resistance: f64) {
        let indices = grid.indices(cell);
        let d = side.axis().index();
        let [p, q] = side.axis().others().map(Axis::index);
        let area = grid.width(p, indices[p]) * grid.width(q, indices[q]);
        let inside = 0.5 * grid.width(d, indices[d]) / grid.conductivity[cell];
        self.faces.push(BoundaryFace {
            cell: cell as u32,
            side,
            environment: environment as u32,
            resistance,
            conductance: area / (inside + resistance),
        });
    }
}

/// The cosine of the angle between a stepped face and the sloping edge of the air it stands for; 1
/// where nothing slopes.
///
/// Steps in two directions stand for one slope. Weighting each by its cosine gives
/// A·(cos² + sin²) = A, the true area.
fn step_cosine(
    region: &AirRegion,
    grid: &Grid,
    indices: [usize; 3],
    air_indices: [usize; 3],
    side: Side,
) -> f64 {
    let Shape::Prism { axis, .. } = &region.shape else { return 1.0 };
    let d = side.axis().index();
    let others = axis.others().map(Axis::index);
    let Some(p) = others.iter().position(|&other| other == d) else { return 1.0 };
    let q = 1 - p;
    let (here, there) = (grid.middle(d, indices[d]), grid.middle(d, air_indices[d]));
    let (low, high) = (here.min(there), here.max(there));
    let across = grid.middle(others[q], indices[others[q]]);
    for [a, b] in region.shape.edges() {
        if (a[q] > across) == (b[q] > across) {
            continue;
        }
        let crossing = a[p] + (b[p] - a[p]) * (across - a[q]) / (b[q] - a[q]);
        if crossing >= low && crossing <= high {
            let (along, up) = (b[p] - a[p], b[q] - a[q]);
            return up.abs() / (along * along + up * up).sqrt();
        }
    }
    1.0
}
