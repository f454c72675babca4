//! Where the grid lines stand along one axis.
//!
//! Faces of materials are fixed lines. Between two of them the cell widths follow the widest
//! function that respects every target: `size` where it is set, growing with distance so that each cell
//! is at most `growth` times its neighbour.

use super::error::ConductionError;
use super::geometry::{Axis, Shape};
use super::problem::{Problem, RefinementRegion};

/// Lines closer than this share of the domain's extent are one line: faces that should meet but
/// were computed by different sums.
const SAME_LINE: f64 = 1e-7;

/// A target size of the cells throughout an interval of the axis.
struct TargetSize {
    from: f64,
    to: f64,
    size: f64,
}

/// The lines along one axis, in metres, rising.
///
/// # Errors
/// [`ConductionError::TooManyCells`] if this axis alone needs more than are allowed.
pub(super) fn grid_lines(problem: &Problem, axis: Axis) -> Result<Vec<f64>, ConductionError> {
    let start = problem.domain.minimum.along(axis).value();
    let end = problem.domain.maximum.along(axis).value();
    if !problem.axes().contains(&axis) {
        return Ok(vec![start, end]);
    }
    let tolerance = SAME_LINE * (end - start);
    let (fixed, optional, target_sizes) = collect(problem, axis, start, end);
    let fixed = merge(fixed, start, end, tolerance);
    let breaks = add_optional(fixed, optional, start, end, tolerance);
    fill(problem, &breaks, &target_sizes)
}

/// Fixed lines, optional lines with the distance they keep from others, and target sizes.
fn collect(
    problem: &Problem,
    axis: Axis,
    start: f64,
    end: f64,
) -> (Vec<f64>, Vec<(f64, f64)>, Vec<TargetSize>) {
    let finest = problem.cells.finest.value();
    let tolerance = SAME_LINE * (end - start);
    let (mut fixed, mut optional, mut target_sizes) = (Vec::new(), Vec::new(), Vec::new());
    for exposed in problem.exposed.iter().filter(|exposed| exposed.side.axis() == axis) {
        let at = if exposed.side.is_maximum() { end } else { start };
        target_sizes.push(TargetSize { from: at, to: at, size: finest });
    }
    let painted = problem.paints.iter().map(|paint| &paint.shape);
    for shape in painted.chain(problem.air.iter().map(|region| &region.shape)) {
        for at in faces_of(shape, axis) {
            // A face on the border of the domain is a cut through the material, not a face of it.
            if at > start + tolerance && at < end - tolerance {
                fixed.push(at);
                target_sizes.push(TargetSize { from: at, to: at, size: finest });
            }
        }
        if let Shape::Prism { axis: drawn_along, .. } = shape {
            let Some(d) = drawn_along.others().iter().position(|&other| other == axis) else {
                continue;
            };
            for [a, b] in shape.sloping_edges() {
                let (from, to) = (a[d].min(b[d]), a[d].max(b[d]));
                optional.push((from, finest / 2.0));
                optional.push((to, finest / 2.0));
                target_sizes.push(TargetSize { from, to, size: finest });
            }
        }
    }
    for refinement in &problem.cells.refinements {
        let size = refinement.size.value();
        let (from, to) = match refinement.region {
            RefinementRegion::Point(at) => (at.along(axis), at.along(axis)),
            RefinementRegion::Plane { axis: of_plane, at } if of_plane == axis => (at, at),
            RefinementRegion::Plane { .. } => continue,
            RefinementRegion::Block(block) => {
                (block.minimum.along(axis), block.maximum.along(axis))
            }
        };
        let (from, to) = (from.value(), to.value());
        optional.push((from, size / 2.0));
        optional.push((to, size / 2.0));
        target_sizes.push(TargetSize { from, to, size });
    }
    (fixed, optional, target_sizes)
}

/// Where a shape has faces square to an axis.
fn faces_of(shape: &Shape, axis: Axis) -> Vec<f64> {
    match shape {
        Shape::Block(block) => {
            vec![block.minimum.along(axis).value(), block.maximum.along(axis).value()]
        }
        Shape::Prism { axis: drawn_along, from, to, .. } => {
            match drawn_along.others().iter().position(|&other| other == axis) {
                None => vec![from.value(), to.value()],
                Some(d) => shape.edges().filter(|[a, b]| a[d] == b[d]).map(|[a, _]| a[d]).collect(),
            }
        }
    }
}

/// The fixed lines in order, without doubles, with the two ends of the domain.
fn merge(mut fixed: Vec<f64>, start: f64, end: f64, tolerance: f64) -> Vec<f64> {
    fixed.sort_by(f64::total_cmp);
    let mut lines = vec![start];
    for at in fixed {
        if at - lines[lines.len() - 1] > tolerance && end - at > tolerance {
            lines.push(at);
        }
    }
    lines.push(end);
    lines
}

/// Adds the optional lines that stand far enough from every other line.
fn add_optional(
    mut lines: Vec<f64>,
    optional: Vec<(f64, f64)>,
    start: f64,
    end: f64,
    tolerance: f64,
) -> Vec<f64> {
    for (at, keep) in optional {
        if at <= start || at >= end {
            continue;
        }
        let next = lines.partition_point(|&line| line < at);
        let gap = (at - lines[next - 1]).min(lines[next] - at);
        if gap > keep.max(tolerance) {
            lines.insert(next, at);
        }
    }
    lines
}

/// Divides every interval between two lines into cells.
fn fill(
    problem: &Problem,
    breaks: &[f64],
    target_sizes: &[TargetSize],
) -> Result<Vec<f64>, ConductionError> {
    let growth = problem.cells.growth;
    let coarsest = problem.cells.coarsest.value();
    let slope = libm::log(growth);
    // The width function at the near edge of a cell that is `size` wide and whose next neighbour is
    // `growth` times as wide, unless the coarsest width comes first.
    let at_edge = |size: f64| {
        if size * growth > coarsest { size } else { size * slope / (growth - 1.0) }
    };
    let width_at = |at: f64| {
        target_sizes.iter().fold(coarsest, |least, target| {
            let distance = (target.from - at).max(at - target.to).max(0.0);
            least.min(at_edge(target.size) + slope * distance)
        })
    };
    let mut lines = vec![breaks[0]];
    for pair in breaks.windows(2) {
        let (from, to) = (pair[0], pair[1]);
        let middle = 0.5 * (from + to);
        let cap = target_sizes
            .iter()
            .filter(|target| target.from < middle && target.to > middle)
            .fold(coarsest, |cap, target| cap.min(target.size));
        let interval = GradedInterval::new(to - from, width_at(from), width_at(to), cap, slope);
        // Whatever is beyond the range of integers saturates, and is too much anyway.
        let count = libm::ceil(interval.cells() - 0.1).max(1.0) as usize;
        let (cells, limit) = (count.saturating_add(lines.len() - 1), problem.cells.limit);
        if cells > limit {
            return Err(ConductionError::TooManyCells { cells, limit });
        }
        for n in 1..count {
            lines.push(from + interval.position(n as f64 / count as f64));
        }
        lines.push(to);
    }
    Ok(lines)
}

/// An interval between two lines, on which the target width rises from both ends at the same slope
/// until the two meet or reach a cap.
struct GradedInterval {
    length: f64,
    left: f64,
    right: f64,
    slope: f64,
    cap: f64,
    /// Where the rise from the left stops, and where the rise from the right stops.
    knees: [f64; 2],
    /// The number of cells left of each knee.
    counts: [f64; 2],
}

impl GradedInterval {
    fn new(length: f64, left: f64, right: f64, cap: f64, slope: f64) -> Self {
        let (left, right) = (left.min(cap), right.min(cap));
        let mut knees = [(cap - left) / slope, length - (cap - right) / slope];
        if knees[0] > knees[1] {
            let meeting = (0.5 * (length + (right - left) / slope)).clamp(0.0, length);
            knees = [meeting, meeting];
        }
        let first = libm::log1p(slope * knees[0] / left) / slope;
        let counts = [first, first + (knees[1] - knees[0]) / cap];
        Self { length, left, right, slope, cap, knees, counts }
    }

    /// How many cells the target widths call for.
    fn cells(&self) -> f64 {
        self.counts[1]
            + libm::log1p(self.slope * (self.length - self.knees[1]) / self.right) / self.slope
    }

    /// Where a share of the cells ends, as a distance from the left end.
    fn position(&self, share: f64) -> f64 {
        let total = self.cells();
        let wanted = share * total;
        if wanted <= self.counts[0] {
            self.left * libm::expm1(self.slope * wanted) / self.slope
        } else if wanted <= self.counts[1] {
            self.knees[0] + (wanted - self.counts[0]) * self.cap
        } else {
            self.length - self.right * libm::expm1(self.slope * (total - wanted)) / self.slope
        }
    }
}
