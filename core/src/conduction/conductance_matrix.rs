//! The matrix of the discrete problem: the conductances of a grid, as the solver sees them.

use super::boundary::Boundary;
use super::geometry::Axis;
use super::grid::Grid;

/// Conductances between neighbouring cells and from each cell to the environments, W/K: a symmetric
/// matrix with the negative conductances off its diagonal and all that end in a cell on it.
///
/// Rows and layers are padded to an odd number of cells (see [`pad`]), and cells carry their padded
/// indices. A cell with no conductance at all (air or padding) is no unknown.
#[derive(Clone, Debug)]
pub(super) struct ConductanceMatrix {
    pub counts: [usize; 3],
    pub padded_counts: [usize; 3],
    /// `neighbour_conductance[d][c]` is that between cell c and its next along axis d; zero at the end
    /// of a row. Empty along an axis with a single cell.
    pub neighbour_conductance: [Vec<f64>; 3],
    /// From each cell to all environments together.
    pub boundary_conductance: Vec<f64>,
}

/// The counts with the first two made odd where a further axis follows, so that the
/// padded indices of neighbours always differ by an odd step: even indices make one colour of a
/// chessboard, odd ones the other.
pub(super) const fn pad(counts: [usize; 3]) -> [usize; 3] {
    let ny = if counts[2] > 1 { counts[1] | 1 } else { counts[1] };
    [counts[0] | 1, ny, counts[2]]
}

impl ConductanceMatrix {
    /// A matrix of zeros.
    pub fn empty(counts: [usize; 3]) -> Self {
        let padded_counts = pad(counts);
        let cells = padded_counts.iter().product();
        let neighbour_conductance =
            counts.map(|n| if n > 1 { vec![0.0; cells] } else { Vec::new() });
        Self {
            counts,
            padded_counts,
            neighbour_conductance,
            boundary_conductance: vec![0.0; cells],
        }
    }

    /// The matrix of a grid.
    pub fn assemble(grid: &Grid, boundary: &Boundary) -> Self {
        let mut matrix = Self::empty(grid.counts());
        let inverse: Vec<f64> = grid.conductivity.iter().map(|&value| 1.0 / value).collect();
        for d in (0..3).filter(|&d| grid.counts()[d] > 1) {
            matrix.set_harmonic_conductances(grid, &inverse, d);
        }
        matrix.set_cut_face_conductances(grid);
        for face in boundary.faces() {
            let padded_index = matrix.padded_index(grid.indices(face.cell as usize));
            matrix.boundary_conductance[padded_index] += face.conductance;
        }
        matrix
    }

    /// The harmonic conductance from every cell to its next along an axis:
    /// A / (d₁/2λ₁ + d₂/2λ₂). In air 1/λ is infinite and the conductance comes out as zero.
    fn set_harmonic_conductances(&mut self, grid: &Grid, inverse: &[f64], d: usize) {
        let [nx, ny, nz] = self.counts;
        let widths = [0, 1, 2].map(|d| grid.widths(d));
        let step = grid.stride(d);
        let layers = if d == 2 { nz - 1 } else { nz };
        let rows = if d == 1 { ny - 1 } else { ny };
        for k in 0..layers {
            for j in 0..rows {
                let from = grid.cell([0, j, k]);
                let here = &inverse[from..from + nx];
                let padded_index = self.padded_index([0, j, k]);
                let out = &mut self.neighbour_conductance[d][padded_index..padded_index + nx];
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

    /// The conductances through faces beside sloping edges, as was sampled there.
    fn set_cut_face_conductances(&mut self, grid: &Grid) {
        for face in &grid.cut_faces {
            let d = face.axis.index();
            let [p, q] = face.axis.others().map(Axis::index);
            let area = grid.width(p, face.indices[p]) * grid.width(q, face.indices[q]);
            let padded_index = self.padded_index(face.indices);
            // Where either cell is air nothing is conducted.
            if self.neighbour_conductance[d][padded_index] > 0.0 {
                self.neighbour_conductance[d][padded_index] = face.transmittance * area;
            }
        }
    }

    /// The number of cells, padding included.
    pub fn cells(&self) -> usize {
        self.boundary_conductance.len()
    }

    /// The padded index of a cell.
    pub const fn padded_index(&self, indices: [usize; 3]) -> usize {
        (indices[2] * self.padded_counts[1] + indices[1]) * self.padded_counts[0] + indices[0]
    }

    /// How far apart the padded indices of neighbours along an axis are.
    pub const fn stride(&self, d: usize) -> usize {
        [1, self.padded_counts[0], self.padded_counts[0] * self.padded_counts[1]][d]
    }

    /// The first padded index of every row of cells, layer by layer.
    pub fn rows(&self) -> impl Iterator<Item = usize> + use<> {
        let ([_, ny, nz], [px, py, _]) = (self.counts, self.padded_counts);
        (0..nz).flat_map(move |k| (0..ny).map(move |j| (k * py + j) * px))
    }

    /// The sum of all conductances that end in each cell.
    pub fn diagonal(&self) -> Vec<f64> {
        let mut diagonal = self.boundary_conductance.clone();
        for (d, interior_faces) in self
            .neighbour_conductance
            .iter()
            .enumerate()
            .filter(|(_, interior_faces)| !interior_faces.is_empty())
        {
            let step = self.stride(d);
            let (first, rest) = diagonal.split_at_mut(step);
            for (sum, (next, previous)) in
                rest.iter_mut().zip(interior_faces[step..].iter().zip(interior_faces))
            {
                *sum += next + previous;
            }
            for (sum, next) in first.iter_mut().zip(interior_faces) {
                *sum += next;
            }
        }
        diagonal
    }
}
