//! The grid as a network of conductances: what the solver sees.

use super::boundary::Boundary;
use super::geometry::Axis;
use super::grid::Grid;

/// Conductances between neighbouring cells and from each cell to the environments, W/K.
///
/// Rows and layers are padded to an odd number of cells (see [`pad`]), and cells carry their padded
/// numbers. A cell with no conductance at all (air or padding) is not part of the network.
#[derive(Clone, Debug)]
pub(super) struct Network {
    pub counts: [usize; 3],
    pub padded: [usize; 3],
    /// `between[d][c]` joins cell c with its next along axis d; zero at the end of a row. Empty
    /// along an axis with a single cell.
    pub between: [Vec<f64>; 3],
    /// From each cell to all environments together.
    pub ground: Vec<f64>,
}

/// The counts with the first two made odd where a further axis follows, so that the numbers of
/// neighbours always differ by an odd step: even numbers make one colour of a chessboard, odd
/// numbers the other.
pub(super) const fn pad(counts: [usize; 3]) -> [usize; 3] {
    let ny = if counts[2] > 1 { counts[1] | 1 } else { counts[1] };
    [counts[0] | 1, ny, counts[2]]
}

impl Network {
    /// A network with all conductances zero.
    pub fn empty(counts: [usize; 3]) -> Self {
        let padded = pad(counts);
        let cells = padded.iter().product();
        let between = counts.map(|n| if n > 1 { vec![0.0; cells] } else { Vec::new() });
        Self { counts, padded, between, ground: vec![0.0; cells] }
    }

    /// The network of a grid.
    pub fn new(grid: &Grid, boundary: &Boundary) -> Self {
        let mut network = Self::empty(grid.counts());
        let inverse: Vec<f64> = grid.conductivity.iter().map(|&value| 1.0 / value).collect();
        for d in (0..3).filter(|&d| grid.counts()[d] > 1) {
            network.join(grid, &inverse, d);
        }
        network.join_beside_slopes(grid);
        for face in boundary.faces() {
            let number = network.number(grid.place(face.cell as usize));
            network.ground[number] += face.conductance;
        }
        network
    }

    /// The harmonic conductance from every cell to its next along an axis:
    /// A / (d₁/2λ₁ + d₂/2λ₂). In air 1/λ is infinite and the conductance comes out as zero.
    fn join(&mut self, grid: &Grid, inverse: &[f64], d: usize) {
        let [nx, ny, nz] = self.counts;
        let widths = [0, 1, 2].map(|d| grid.widths(d));
        let step = grid.stride(d);
        let joined = [nx, ny, nz].map(|n| n - 1);
        let layers = if d == 2 { joined[2] } else { nz };
        let rows = if d == 1 { joined[1] } else { ny };
        for k in 0..layers {
            for j in 0..rows {
                let from = grid.cell([0, j, k]);
                let here = &inverse[from..from + nx];
                let number = self.number([0, j, k]);
                let out = &mut self.between[d][number..number + nx];
                if d == 0 {
                    let area = widths[1][j] * widths[2][k];
                    let pairs = here.windows(2).zip(widths[0].windows(2));
                    for (out, (inverse, width)) in out.iter_mut().zip(pairs) {
                        *out = 2.0 * area / (width[0] * inverse[0] + width[1] * inverse[1]);
                    }
                } else {
                    let next = &inverse[from + step..][..nx];
                    let n = if d == 1 { j } else { k };
                    let across = if d == 1 { widths[2][k] } else { widths[1][j] };
                    let (w0, w1) = (widths[d][n], widths[d][n + 1]);
                    let pairs = here.iter().zip(next).zip(&widths[0]);
                    for (out, ((here, next), width)) in out.iter_mut().zip(pairs) {
                        *out = 2.0 * across * width / (w0 * here + w1 * next);
                    }
                }
            }
        }
    }

    /// Joins the cells beside sloping edges as was sampled there.
    fn join_beside_slopes(&mut self, grid: &Grid) {
        for join in &grid.sloping_joins {
            let d = join.axis.index();
            let [p, q] = join.axis.others().map(Axis::index);
            let area = grid.width(p, join.place[p]) * grid.width(q, join.place[q]);
            let number = self.number(join.place);
            // Where either cell is air there is nothing to join.
            if self.between[d][number] > 0.0 {
                self.between[d][number] = join.transmittance * area;
            }
        }
    }

    /// How many numbers there are, padding included.
    pub fn cells(&self) -> usize {
        self.ground.len()
    }

    /// The number of the cell at a place.
    pub const fn number(&self, place: [usize; 3]) -> usize {
        (place[2] * self.padded[1] + place[1]) * self.padded[0] + place[0]
    }

    /// How far apart the numbers of neighbours along an axis are.
    pub const fn stride(&self, d: usize) -> usize {
        [1, self.padded[0], self.padded[0] * self.padded[1]][d]
    }

    /// The first number of every row of cells, layer by layer.
    pub fn rows(&self) -> impl Iterator<Item = usize> + use<> {
        let ([_, ny, nz], [px, py, _]) = (self.counts, self.padded);
        (0..nz).flat_map(move |k| (0..ny).map(move |j| (k * py + j) * px))
    }

    /// The sum of all conductances that end in each cell.
    pub fn diagonal(&self) -> Vec<f64> {
        let mut diagonal = self.ground.clone();
        for (d, joins) in self.between.iter().enumerate().filter(|(_, joins)| !joins.is_empty()) {
            let step = self.stride(d);
            let (first, rest) = diagonal.split_at_mut(step);
            for (sum, (next, previous)) in rest.iter_mut().zip(joins[step..].iter().zip(joins)) {
                *sum += next + previous;
            }
            for (sum, next) in first.iter_mut().zip(joins) {
                *sum += next;
            }
        }
        diagonal
    }
}
