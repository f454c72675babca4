//! Fills the cells of a grid with the materials and the air of a problem.

use super::geometry::{Axis, Shape};
use super::grid::NO_AIR;
use super::problem::Problem;

/// Points per direction that a cell cut by a sloping edge is sampled at.
const SAMPLES: usize = 8;

/// The conductivity of every cell (zero in air) and its air region (or [`NO_AIR`]).
pub(super) fn fill_cells(problem: &Problem, lines: &[Vec<f64>; 3]) -> (Vec<f64>, Vec<u32>) {
    let cells = lines.iter().map(|l| l.len() - 1).product();
    let mut conductivity = vec![problem.background.value(); cells];
    let mut region = vec![NO_AIR; cells];
    let painter = Painter { problem, lines };
    for paint in &problem.paints {
        painter.fill(&paint.shape, &mut conductivity, paint.conductivity.value());
    }
    painter.mix_cut_cells(&mut conductivity);
    for (n, air) in problem.air.iter().enumerate() {
        painter.fill(&air.shape, &mut region, n as u32);
    }
    for (conductivity, &region) in conductivity.iter_mut().zip(&region) {
        if region != NO_AIR {
            *conductivity = 0.0;
        }
    }
    (conductivity, region)
}

struct Painter<'a> {
    problem: &'a Problem,
    lines: &'a [Vec<f64>; 3],
}

impl Painter<'_> {
    fn middle(&self, d: usize, n: usize) -> f64 {
        0.5 * (self.lines[d][n] + self.lines[d][n + 1])
    }

    fn cell(&self, place: [usize; 3]) -> usize {
        (place[2] * (self.lines[1].len() - 1) + place[1]) * (self.lines[0].len() - 1) + place[0]
    }

    /// The cells along an axis whose middles lie between two coordinates.
    fn range(&self, d: usize, from: f64, to: f64) -> core::ops::Range<usize> {
        let lines = &self.lines[d];
        let cells = lines.len() - 1;
        if !self.problem.axes().contains(&Axis::ALL[d]) {
            return 0..cells;
        }
        let below = |at: f64| {
            let n = lines.partition_point(|&line| line < at).saturating_sub(1).min(cells - 1);
            if at > self.middle(d, n) { n + 1 } else { n }
        };
        below(from)..below(to)
    }

    /// Writes a value into every cell whose centre lies in a shape.
    fn fill<T: Copy>(&self, shape: &Shape, values: &mut [T], value: T) {
        let bounds = shape.bounds();
        let (low, high) = (bounds.minimum.array(), bounds.maximum.array());
        let [xs, ys, zs] = [0, 1, 2].map(|d| self.range(d, low[d], high[d]));
        for k in zs {
            for j in ys.clone() {
                match shape {
                    Shape::Block(_) => {
                        let row = self.cell([0, j, k]);
                        values[row + xs.start..row + xs.end].fill(value);
                    }
                    Shape::Prism { .. } => {
                        for i in xs.clone() {
                            let at = [self.middle(0, i), self.middle(1, j), self.middle(2, k)];
                            if shape.contains(at, self.problem.axes()) {
                                values[self.cell([i, j, k])] = value;
                            }
                        }
                    }
                }
            }
        }
    }

    /// Gives every cell that a sloping edge of a paint cuts the mean of its samples.
    fn mix_cut_cells(&self, conductivity: &mut [f64]) {
        let mut cut = Vec::new();
        for paint in &self.problem.paints {
            if let Shape::Prism { axis, .. } = paint.shape {
                self.find_cut_cells(&paint.shape, axis, &mut cut);
            }
        }
        cut.sort_unstable();
        cut.dedup();
        for place in cut {
            if let Some(mean) = self.mean_conductivity(place) {
                conductivity[self.cell([place[2], place[1], place[0]])] = mean;
            }
        }
    }

    /// Collects the places (z, y, x) of the cells cut by a prism's sloping edges.
    fn find_cut_cells(&self, shape: &Shape, axis: Axis, cut: &mut Vec<[usize; 3]>) {
        let bounds = shape.bounds();
        let d = axis.index();
        let along = self.range(d, bounds.minimum.array()[d], bounds.maximum.array()[d]);
        let [p, q] = axis.others().map(Axis::index);
        for [a, b] in shape.sloping_edges() {
            let spanned = |d: usize, from: f64, to: f64| {
                let (low, high) = (from.min(to), from.max(to));
                let lines = &self.lines[d];
                let first = lines.partition_point(|&line| line <= low).saturating_sub(1);
                first..lines.partition_point(|&line| line < high).min(lines.len() - 1)
            };
            for m in spanned(q, a[1], b[1]) {
                for n in spanned(p, a[0], b[0]) {
                    let (dx, dy) = (b[0] - a[0], b[1] - a[1]);
                    let (half_x, half_y) = (
                        0.5 * (self.lines[p][n + 1] - self.lines[p][n]),
                        0.5 * (self.lines[q][m + 1] - self.lines[q][m]),
                    );
                    let (x, y) = (self.middle(p, n) - a[0], self.middle(q, m) - a[1]);
                    if (dx * y - dy * x).abs() < dx.abs() * half_y + dy.abs() * half_x {
                        cut.extend(along.clone().map(|l| {
                            let mut place = [0; 3];
                            (place[2 - d], place[2 - p], place[2 - q]) = (l, n, m);
                            place
                        }));
                    }
                }
            }
        }
    }

    /// The mean conductivity of the samples of a cell that are no air; none if all are.
    fn mean_conductivity(&self, place: [usize; 3]) -> Option<f64> {
        let axes = self.problem.axes();
        let [k, j, i] = place;
        let low = [self.lines[0][i], self.lines[1][j], self.lines[2][k]];
        let high = [self.lines[0][i + 1], self.lines[1][j + 1], self.lines[2][k + 1]];
        let touches = |shape: &Shape| {
            let bounds = shape.bounds();
            let (from, to) = (bounds.minimum.array(), bounds.maximum.array());
            axes.iter().all(|axis| {
                let d = axis.index();
                from[d] < high[d] && to[d] > low[d]
            })
        };
        let paints: Vec<_> =
            self.problem.paints.iter().rev().filter(|paint| touches(&paint.shape)).collect();
        let air: Vec<_> = self.problem.air.iter().filter(|region| touches(&region.shape)).collect();
        // Nothing varies along an axis no sloping edge leans in: one sample is exact there.
        let leans = |d: usize| {
            paints
                .iter()
                .any(|paint| matches!(&paint.shape, Shape::Prism { axis, .. } if axis.index() != d))
        };
        let samples = [0, 1, 2].map(|d| if leans(d) { SAMPLES } else { 1 });
        let (mut sum, mut count) = (0.0, 0_usize);
        for c in 0..samples[2] {
            for b in 0..samples[1] {
                for a in 0..samples[0] {
                    let share = [a, b, c];
                    let at = [0, 1, 2].map(|d| {
                        low[d] + (high[d] - low[d]) * (share[d] as f64 + 0.5) / samples[d] as f64
                    });
                    if air.iter().any(|region| region.shape.contains(at, axes)) {
                        continue;
                    }
                    let painted = paints.iter().find(|paint| paint.shape.contains(at, axes));
                    sum += painted.map_or(self.problem.background, |p| p.conductivity).value();
                    count += 1;
                }
            }
        }
        (count > 0).then(|| sum / count as f64)
    }
}
