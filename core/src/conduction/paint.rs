//! Fills the cells of a grid with the materials and the air of a problem.

use core::ops::Range;

use super::geometry::{Axis, Shape};
use super::grid::NO_AIR;
use super::problem::{AirRegion, Paint, Problem};

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
    fn range(&self, d: usize, from: f64, to: f64) -> Range<usize> {
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
        let mut columns = Vec::new();
        for paint in &self.problem.paints {
            if let Shape::Prism { axis, .. } = paint.shape {
                self.find_cut_columns(&paint.shape, axis, &mut columns);
            }
        }
        for Column { axis, across, along } in columns {
            let [p, q] = axis.others().map(Axis::index);
            let mut previous: Option<(Touching<'_>, Option<f64>)> = None;
            for n in along {
                let mut place = [0; 3];
                (place[p], place[q], place[axis.index()]) = (across[0], across[1], n);
                let touching = self.touching(place);
                // Nothing but the list of shapes changes along the axis a prism is drawn out along.
                let mean = match &previous {
                    Some((same, mean)) if *same == touching && touching.lies_along(axis) => *mean,
                    _ => self.mean_conductivity(place, &touching),
                };
                if let Some(mean) = mean {
                    conductivity[self.cell(place)] = mean;
                }
                previous = Some((touching, mean));
            }
        }
    }

    /// Collects the columns of cells cut by a prism's sloping edges.
    fn find_cut_columns(&self, shape: &Shape, axis: Axis, columns: &mut Vec<Column>) {
        let bounds = shape.bounds();
        let d = axis.index();
        let along = self.range(d, bounds.minimum.array()[d], bounds.maximum.array()[d]);
        let [p, q] = axis.others().map(Axis::index);
        let mut cut = Vec::new();
        for [a, b] in shape.sloping_edges() {
            let (dx, dy) = (b[0] - a[0], b[1] - a[1]);
            for m in self.spanned(q, a[1], b[1]) {
                for n in self.spanned(p, a[0], b[0]) {
                    let half_x = 0.5 * (self.lines[p][n + 1] - self.lines[p][n]);
                    let half_y = 0.5 * (self.lines[q][m + 1] - self.lines[q][m]);
                    let (x, y) = (self.middle(p, n) - a[0], self.middle(q, m) - a[1]);
                    if (dx * y - dy * x).abs() < dx.abs() * half_y + dy.abs() * half_x {
                        cut.push([n, m]);
                    }
                }
            }
        }
        cut.sort_unstable();
        cut.dedup();
        columns.extend(cut.into_iter().map(|across| Column { axis, across, along: along.clone() }));
    }

    /// The cells along an axis that a stretch runs through.
    fn spanned(&self, d: usize, from: f64, to: f64) -> Range<usize> {
        let lines = &self.lines[d];
        let first = lines.partition_point(|&line| line <= from.min(to)).saturating_sub(1);
        first..lines.partition_point(|&line| line < from.max(to)).min(lines.len() - 1)
    }

    /// The corners of a cell.
    fn corners(&self, place: [usize; 3]) -> [[f64; 3]; 2] {
        [0, 1].map(|end| [0, 1, 2].map(|d| self.lines[d][place[d] + end]))
    }

    /// The shapes that reach into a cell.
    fn touching(&self, place: [usize; 3]) -> Touching<'_> {
        let [low, high] = self.corners(place);
        let reaches = |shape: &Shape| {
            let bounds = shape.bounds();
            let (from, to) = (bounds.minimum.array(), bounds.maximum.array());
            self.problem.axes().iter().all(|axis| {
                let d = axis.index();
                from[d] < high[d] && to[d] > low[d]
            })
        };
        Touching {
            paints: self.problem.paints.iter().rev().filter(|p| reaches(&p.shape)).collect(),
            air: self.problem.air.iter().filter(|air| reaches(&air.shape)).collect(),
        }
    }

    /// The mean conductivity of the samples of a cell that are no air; none if all are.
    fn mean_conductivity(&self, place: [usize; 3], touching: &Touching<'_>) -> Option<f64> {
        let axes = self.problem.axes();
        let [low, high] = self.corners(place);
        // One sample is exact along an axis in which nothing slopes.
        let samples = [0, 1, 2].map(|d| if touching.slopes_in(d) { SAMPLES } else { 1 });
        let (mut sum, mut count) = (0.0, 0_usize);
        for n in 0..samples.iter().product::<usize>() {
            let share = [n % samples[0], n / samples[0] % samples[1], n / samples[0] / samples[1]];
            let at = [0, 1, 2]
                .map(|d| low[d] + (high[d] - low[d]) * (share[d] as f64 + 0.5) / samples[d] as f64);
            if touching.air.iter().any(|air| air.shape.contains(at, axes)) {
                continue;
            }
            let painted = touching.paints.iter().find(|paint| paint.shape.contains(at, axes));
            sum += painted.map_or(self.problem.background, |paint| paint.conductivity).value();
            count += 1;
        }
        (count > 0).then(|| sum / count as f64)
    }
}

/// A column of cells along the axis a prism is drawn out along.
struct Column {
    axis: Axis,
    /// Its place along the two other axes.
    across: [usize; 2],
    along: Range<usize>,
}

/// The shapes that reach into a cell, the winning paint first.
struct Touching<'a> {
    paints: Vec<&'a Paint>,
    air: Vec<&'a AirRegion>,
}

impl PartialEq for Touching<'_> {
    /// Whether both are made of the very same shapes.
    fn eq(&self, other: &Self) -> bool {
        self.paints.len() == other.paints.len()
            && self.air.len() == other.air.len()
            && self.paints.iter().zip(&other.paints).all(|(a, b)| core::ptr::eq(*a, *b))
            && self.air.iter().zip(&other.air).all(|(a, b)| core::ptr::eq(*a, *b))
    }
}

impl Touching<'_> {
    fn shapes(&self) -> impl Iterator<Item = &Shape> {
        let air = self.air.iter().map(|air| &air.shape);
        self.paints.iter().map(|paint| &paint.shape).chain(air)
    }

    /// Whether every prism among them is drawn out along one axis.
    fn lies_along(&self, along: Axis) -> bool {
        self.shapes().all(|shape| !matches!(shape, Shape::Prism { axis, .. } if *axis != along))
    }

    /// Whether a prism among them may slope in a direction.
    fn slopes_in(&self, d: usize) -> bool {
        self.shapes().any(|shape| matches!(shape, Shape::Prism { axis, .. } if axis.index() != d))
    }
}
