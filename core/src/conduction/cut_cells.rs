//! Cells cut by the sloping edges of prisms.
//!
//! Such a cell takes the mean conductivity of points spread over it, and the transmittances
//! of its faces are read from the materials on either hand of them. A sheet that
//! slopes through the grid then carries heat along itself by the share of every face it covers,
//! however thin it is.

use core::ops::Range;

use super::geometry::{Axis, Shape};
use super::problem::{AirRegion, Paint};
use super::rasterise::Rasteriser;

/// Points per direction that a cell or a face is sampled at.
const SAMPLES: usize = 8;
/// How far beside a face its materials are looked up, as a share of the cell's width.
const BESIDE: f64 = 1e-6;

/// A face between two cells beside a sloping edge.
#[derive(Clone, Copy, Debug)]
pub(super) struct CutFace {
    /// The axis it is square to.
    pub axis: Axis,
    /// The indices of the lower of the two cells.
    pub indices: [usize; 3],
    /// From cell centre to cell centre, W/(m²·K).
    pub transmittance: f64,
}

/// What sampling tells of a cell: nothing where all samples are air.
#[derive(Clone, Copy)]
struct CutCell {
    conductivity: Option<f64>,
    /// For the two axes across the prism, the transmittances of the faces below and above.
    transmittances: [[Option<f64>; 2]; 2],
}

/// Gives every cell that a sloping edge of a paint cuts its mean conductivity; returns the faces
/// of these cells.
pub(super) fn average_cut_cells(
    rasteriser: &Rasteriser<'_>,
    conductivity: &mut [f64],
) -> Vec<CutFace> {
    let mut faces = Vec::new();
    for paint in &rasteriser.problem.paints {
        let Shape::Prism { axis, .. } = paint.shape else { continue };
        let across_axes = axis.others();
        for Column { across, along } in find_cut_columns(rasteriser, &paint.shape, axis) {
            let mut previous: Option<(OverlappingShapes<'_>, CutCell)> = None;
            for n in along {
                let mut indices = [0; 3];
                indices[axis.index()] = n;
                indices[across_axes[0].index()] = across[0];
                indices[across_axes[1].index()] = across[1];
                let overlapping = OverlappingShapes::new(rasteriser, indices);
                // Nothing but the list of shapes changes along the axis a prism is drawn out along.
                let cut_cell = match &previous {
                    Some((same, cut_cell))
                        if *same == overlapping && overlapping.lies_along(axis) =>
                    {
                        *cut_cell
                    }
                    _ => CutCell::new(rasteriser, indices, across_axes, &overlapping),
                };
                if let Some(mean) = cut_cell.conductivity {
                    conductivity[rasteriser.cell(indices)] = mean;
                }
                cut_cell.list_faces(indices, across_axes, &mut faces);
                previous = Some((overlapping, cut_cell));
            }
        }
    }
    faces
}

/// A column of cells along the axis a prism is drawn out along.
struct Column {
    /// Its indices along the two other axes.
    across: [usize; 2],
    along: Range<usize>,
}

/// The columns of cells cut by a prism's sloping edges.
fn find_cut_columns(rasteriser: &Rasteriser<'_>, shape: &Shape, axis: Axis) -> Vec<Column> {
    let bounds = shape.bounds();
    let d = axis.index();
    let along = rasteriser.range(d, bounds.minimum.array()[d], bounds.maximum.array()[d]);
    let [p, q] = axis.others().map(Axis::index);
    let spanned = |d: usize, from: f64, to: f64| {
        let lines = &rasteriser.lines[d];
        let first = lines.partition_point(|&line| line <= from.min(to)).saturating_sub(1);
        first..lines.partition_point(|&line| line < from.max(to)).min(lines.len() - 1)
    };
    let mut cut = Vec::new();
    for [a, b] in shape.sloping_edges() {
        let (dx, dy) = (b[0] - a[0], b[1] - a[1]);
        for m in spanned(q, a[1], b[1]) {
            for n in spanned(p, a[0], b[0]) {
                let half_x = 0.5 * (rasteriser.lines[p][n + 1] - rasteriser.lines[p][n]);
                let half_y = 0.5 * (rasteriser.lines[q][m + 1] - rasteriser.lines[q][m]);
                let (x, y) = (rasteriser.middle(p, n) - a[0], rasteriser.middle(q, m) - a[1]);
                if (dx * y - dy * x).abs() < dx.abs() * half_y + dy.abs() * half_x {
                    cut.push([n, m]);
                }
            }
        }
    }
    cut.sort_unstable();
    cut.dedup();
    cut.into_iter().map(|across| Column { across, along: along.clone() }).collect()
}

impl CutCell {
    fn new(
        rasteriser: &Rasteriser<'_>,
        indices: [usize; 3],
        across: [Axis; 2],
        overlapping: &OverlappingShapes<'_>,
    ) -> Self {
        let [low, high] = corners(rasteriser, indices);
        // One sample is exact along an axis in which nothing slopes.
        let samples = [0, 1, 2].map(|d| if overlapping.slopes_in(d) { SAMPLES } else { 1 });
        let spread =
            |d: usize, n: usize| low[d] + (high[d] - low[d]) * (n as f64 + 0.5) / samples[d] as f64;
        let conductivity = mean(samples, |share| {
            overlapping.conductivity(rasteriser, [0, 1, 2].map(|d| spread(d, share[d])))
        });
        let transmittances = across.map(|axis| {
            let d = axis.index();
            let mut samples = samples;
            samples[d] = 1;
            [false, true].map(|is_above| {
                let neighbour =
                    if is_above { indices[d] + 1 } else { indices[d].checked_sub(1)? };
                if neighbour + 1 >= rasteriser.lines[d].len() {
                    return None;
                }
                let own = high[d] - low[d];
                let other = rasteriser.lines[d][neighbour + 1] - rasteriser.lines[d][neighbour];
                let face = if is_above { high[d] } else { low[d] };
                let outward = if is_above { 1.0 } else { -1.0 };
                mean(samples, |share| {
                    let mut at = [0, 1, 2].map(|d| spread(d, share[d]));
                    at[d] = face - outward * BESIDE * own;
                    let here = overlapping.conductivity(rasteriser, at)?;
                    at[d] = face + outward * BESIDE * other;
                    let there = overlapping.conductivity(rasteriser, at)?;
                    Some(1.0 / (0.5 * (own / here + other / there)))
                })
            })
        });
        Self { conductivity, transmittances }
    }

    fn list_faces(&self, indices: [usize; 3], across: [Axis; 2], faces: &mut Vec<CutFace>) {
        for (axis, [below, above]) in across.into_iter().zip(self.transmittances) {
            if let Some(transmittance) = below {
                let mut indices = indices;
                indices[axis.index()] -= 1;
                faces.push(CutFace { axis, indices, transmittance });
            }
            if let Some(transmittance) = above {
                faces.push(CutFace { axis, indices, transmittance });
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
fn corners(rasteriser: &Rasteriser<'_>, indices: [usize; 3]) -> [[f64; 3]; 2] {
    [0, 1].map(|end| [0, 1, 2].map(|d| rasteriser.lines[d][indices[d] + end]))
}

/// The shapes that reach into a cell or up to its faces, the winning paint first.
struct OverlappingShapes<'a> {
    paints: Vec<&'a Paint>,
    air: Vec<&'a AirRegion>,
}

impl PartialEq for OverlappingShapes<'_> {
    /// Whether both are made of the very same shapes.
    fn eq(&self, other: &Self) -> bool {
        self.paints.len() == other.paints.len()
            && self.air.len() == other.air.len()
            && self.paints.iter().zip(&other.paints).all(|(a, b)| core::ptr::eq(*a, *b))
            && self.air.iter().zip(&other.air).all(|(a, b)| core::ptr::eq(*a, *b))
    }
}

impl<'a> OverlappingShapes<'a> {
    fn new(rasteriser: &Rasteriser<'a>, indices: [usize; 3]) -> Self {
        let problem = rasteriser.problem;
        let [low, high] = corners(rasteriser, indices);
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

    /// The conductivity at a point; none in air.
    fn conductivity(&self, rasteriser: &Rasteriser<'_>, at: [f64; 3]) -> Option<f64> {
        let axes = rasteriser.problem.axes();
        if self.air.iter().any(|air| air.shape.contains(at, axes)) {
            return None;
        }
        let painted = self.paints.iter().find(|paint| paint.shape.contains(at, axes));
        Some(painted.map_or(rasteriser.problem.background, |paint| paint.conductivity).value())
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
