//! Cells cut by the sloping edges of prisms.
//!
//! Such a cell takes the mean conductivity of points spread over it, and its joins with its
//! neighbours are read from the materials on either hand of the faces between them. A sheet that
//! slopes through the grid then carries heat along itself by the share of every face it covers,
//! however thin it is.

use core::ops::Range;

use super::geometry::{Axis, Shape};
use super::paint::Painter;
use super::problem::{AirRegion, Paint};

/// Points per direction that a cell or a face is sampled at.
const SAMPLES: usize = 8;
/// How far beside a face its materials are looked up, as a share of the cell's width.
const BESIDE: f64 = 1e-6;

/// How a cell beside a sloping edge joins its next along an axis.
#[derive(Clone, Copy, Debug)]
pub(super) struct SlopingJoin {
    pub axis: Axis,
    /// The place of the lower of the two cells.
    pub place: [usize; 3],
    /// From centre to centre, W/(m²·K).
    pub transmittance: f64,
}

/// What sampling tells of a cell: nothing where all samples are air.
#[derive(Clone, Copy)]
struct Mixture {
    conductivity: Option<f64>,
    /// For the two axes across the prism, the joins below and above.
    joins: [[Option<f64>; 2]; 2],
}

/// Gives every cell that a sloping edge of a paint cuts its mean conductivity; returns the joins of
/// these cells with their neighbours.
pub(super) fn mix_cut_cells(painter: &Painter<'_>, conductivity: &mut [f64]) -> Vec<SlopingJoin> {
    let mut columns: Vec<Column> = Vec::new();
    for paint in &painter.problem.paints {
        let Shape::Prism { axis, .. } = paint.shape else { continue };
        columns.extend(find_cut_columns(painter, &paint.shape, axis));
    }
    // A slope that two materials share cuts its cells once.
    columns.sort_by_key(|column| (column.axis.index(), column.across, column.along.start));
    columns.dedup();
    let mut joins = Vec::new();
    for Column { axis, across, along } in columns {
        let across_axes = axis.others();
        let mut previous: Option<(Touching<'_>, Mixture)> = None;
        for n in along {
            let mut place = [0; 3];
            place[axis.index()] = n;
            place[across_axes[0].index()] = across[0];
            place[across_axes[1].index()] = across[1];
            let touching = Touching::new(painter, place);
            // Nothing but the list of shapes changes along the axis a prism is drawn out along.
            let mixture = match &previous {
                Some((same, mixture)) if *same == touching && touching.lies_along(axis) => *mixture,
                _ => Mixture::new(painter, place, across_axes, &touching),
            };
            if let Some(mean) = mixture.conductivity {
                conductivity[painter.cell(place)] = mean;
            }
            mixture.list_joins(place, across_axes, &mut joins);
            previous = Some((touching, mixture));
        }
    }
    joins
}

/// A column of cells along the axis a prism is drawn out along.
#[derive(PartialEq, Eq)]
struct Column {
    axis: Axis,
    /// Its place along the two other axes.
    across: [usize; 2],
    along: Range<usize>,
}

/// The columns of cells cut by a prism's sloping edges.
fn find_cut_columns(painter: &Painter<'_>, shape: &Shape, axis: Axis) -> Vec<Column> {
    let bounds = shape.bounds();
    let d = axis.index();
    let along = painter.range(d, bounds.minimum.array()[d], bounds.maximum.array()[d]);
    let [p, q] = axis.others().map(Axis::index);
    let spanned = |d: usize, from: f64, to: f64| {
        let lines = &painter.lines[d];
        let first = lines.partition_point(|&line| line <= from.min(to)).saturating_sub(1);
        first..lines.partition_point(|&line| line < from.max(to)).min(lines.len() - 1)
    };
    let mut cut = Vec::new();
    for [a, b] in shape.sloping_edges() {
        let (dx, dy) = (b[0] - a[0], b[1] - a[1]);
        for m in spanned(q, a[1], b[1]) {
            for n in spanned(p, a[0], b[0]) {
                let half_x = 0.5 * (painter.lines[p][n + 1] - painter.lines[p][n]);
                let half_y = 0.5 * (painter.lines[q][m + 1] - painter.lines[q][m]);
                let (x, y) = (painter.middle(p, n) - a[0], painter.middle(q, m) - a[1]);
                if (dx * y - dy * x).abs() < dx.abs() * half_y + dy.abs() * half_x {
                    cut.push([n, m]);
                }
            }
        }
    }
    cut.sort_unstable();
    cut.dedup();
    cut.into_iter().map(|across| Column { axis, across, along: along.clone() }).collect()
}

impl Mixture {
    fn new(
        painter: &Painter<'_>,
        place: [usize; 3],
        across: [Axis; 2],
        touching: &Touching<'_>,
    ) -> Self {
        let [low, high] = corners(painter, place);
        // One sample is exact along an axis in which nothing slopes.
        let samples = [0, 1, 2].map(|d| if touching.slopes_in(d) { SAMPLES } else { 1 });
        let spread =
            |d: usize, n: usize| low[d] + (high[d] - low[d]) * (n as f64 + 0.5) / samples[d] as f64;
        let conductivity = mean(samples, |share| {
            touching.conductivity(painter, [0, 1, 2].map(|d| spread(d, share[d])))
        });
        let joins = across.map(|axis| {
            let d = axis.index();
            let mut samples = samples;
            samples[d] = 1;
            [false, true].map(|is_above| {
                let neighbour = if is_above { place[d] + 1 } else { place[d].checked_sub(1)? };
                if neighbour + 1 >= painter.lines[d].len() {
                    return None;
                }
                let own = high[d] - low[d];
                let other = painter.lines[d][neighbour + 1] - painter.lines[d][neighbour];
                let face = if is_above { high[d] } else { low[d] };
                let outward = if is_above { 1.0 } else { -1.0 };
                mean(samples, |share| {
                    let mut at = [0, 1, 2].map(|d| spread(d, share[d]));
                    at[d] = face - outward * BESIDE * own;
                    let here = touching.conductivity(painter, at)?;
                    at[d] = face + outward * BESIDE * other;
                    let there = touching.conductivity(painter, at)?;
                    Some(1.0 / (0.5 * (own / here + other / there)))
                })
            })
        });
        Self { conductivity, joins }
    }

    fn list_joins(&self, place: [usize; 3], across: [Axis; 2], joins: &mut Vec<SlopingJoin>) {
        for (axis, [below, above]) in across.into_iter().zip(self.joins) {
            if let Some(transmittance) = below {
                let mut place = place;
                place[axis.index()] -= 1;
                joins.push(SlopingJoin { axis, place, transmittance });
            }
            if let Some(transmittance) = above {
                joins.push(SlopingJoin { axis, place, transmittance });
            }
        }
    }
}

/// The mean over samples that have a value.
fn mean(samples: [usize; 3], value: impl Fn([usize; 3]) -> Option<f64>) -> Option<f64> {
    let (mut sum, mut count) = (0.0, 0_usize);
    for n in 0..samples.iter().product::<usize>() {
        let share = [n % samples[0], n / samples[0] % samples[1], n / samples[0] / samples[1]];
        if let Some(value) = value(share) {
            sum += value;
            count += 1;
        }
    }
    (count > 0).then(|| sum / count as f64)
}

/// The corners of a cell.
fn corners(painter: &Painter<'_>, place: [usize; 3]) -> [[f64; 3]; 2] {
    [0, 1].map(|end| [0, 1, 2].map(|d| painter.lines[d][place[d] + end]))
}

/// The shapes that reach into a cell or up to its faces, the winning paint first.
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

impl<'a> Touching<'a> {
    fn new(painter: &Painter<'a>, place: [usize; 3]) -> Self {
        let problem = painter.problem;
        let [low, high] = corners(painter, place);
        let reaches = |shape: &Shape| {
            let bounds = shape.bounds();
            let (from, to) = (bounds.minimum.array(), bounds.maximum.array());
            problem.axes().iter().all(|axis| {
                let d = axis.index();
                let margin = 1e-3 * (high[d] - low[d]);
                from[d] < high[d] + margin && to[d] > low[d] - margin
            })
        };
        Self {
            paints: problem.paints.iter().rev().filter(|paint| reaches(&paint.shape)).collect(),
            air: problem.air.iter().filter(|air| reaches(&air.shape)).collect(),
        }
    }

    /// The conductivity at a point; none in air and where nothing is painted on no background.
    fn conductivity(&self, painter: &Painter<'_>, at: [f64; 3]) -> Option<f64> {
        let axes = painter.problem.axes();
        if self.air.iter().any(|air| air.shape.contains(at, axes)) {
            return None;
        }
        let painted = self.paints.iter().find(|paint| paint.shape.contains(at, axes));
        let conductivity = painted.map(|paint| paint.conductivity).or(painter.problem.background);
        conductivity.map(|conductivity| conductivity.value())
    }

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
