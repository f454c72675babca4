//! Lines of equal temperature through a picture, and where their labels stand.

use inchwise_core::detail::Picture;
use inchwise_core::units::Length;

use super::shape::{Point, Rect};

/// No edge.
const NONE: u32 = u32::MAX;

/// The lines along which a picture's factor is `level`, each from end to end; millimetres of the
/// view, the second axis as the picture has it.
///
/// A line crosses the edge of a cell where the factor, straight between the edge's ends, comes to
/// the level (marching squares). It ends where a material does: air has no line.
pub fn isolines(mesh: &Mesh, level: f64) -> Vec<Vec<Point>> {
    let mesh = Level { mesh, level };
    let Mesh { columns, rows, .. } = *mesh.mesh;
    let mut joins = vec![[NONE; 2]; columns * rows * 2];
    for row in 0..rows - 1 {
        for column in 0..columns - 1 {
            for [a, b] in mesh.segments(column, row).into_iter().flatten() {
                join(&mut joins, a, b);
                join(&mut joins, b, a);
            }
        }
    }
    let mut lines = Vec::new();
    // Open lines from their ends first; what is then left runs in rings.
    for open in [true, false] {
        for start in 0..joins.len() {
            let [first, second] = joins[start];
            if first != NONE && (!open || second == NONE) {
                lines.push(walk(&mut joins, start as u32, &mesh));
            }
        }
    }
    lines
}

fn join(joins: &mut [[u32; 2]], from: u32, to: u32) {
    let ends = &mut joins[from as usize];
    let free = if ends[0] == NONE { 0 } else { 1 };
    ends[free] = to;
}

/// Follows a line from an edge on, and takes it away.
fn walk(joins: &mut [[u32; 2]], start: u32, mesh: &Level<'_>) -> Vec<Point> {
    let mut line = vec![mesh.crossing(start)];
    let mut at = start;
    loop {
        let [first, second] = joins[at as usize];
        let next = if first == NONE { second } else { first };
        if next == NONE {
            return line;
        }
        for (here, there) in [(at, next), (next, at)] {
            let ends = &mut joins[here as usize];
            if let Some(end) = ends.iter_mut().find(|end| **end == there) {
                *end = NONE;
            }
        }
        line.push(mesh.crossing(next));
        at = next;
    }
}

/// A picture's lines and factors as plain numbers.
pub struct Mesh {
    /// mm.
    across: Vec<f64>,
    /// mm.
    down: Vec<f64>,
    columns: usize,
    rows: usize,
    /// Where lines cross, row by row; not a number in air.
    factors: Vec<f64>,
    /// Of each cell, row by row.
    is_solid: Vec<bool>,
}

impl Mesh {
    /// The mesh of a picture.
    pub fn of(picture: &Picture) -> Self {
        let mm = |lines: &[Length]| -> Vec<f64> { lines.iter().map(|at| at.as_mm()).collect() };
        let plain = |factor: &Option<f32>| factor.map_or(f64::NAN, f64::from);
        Self {
            across: mm(&picture.across),
            down: mm(&picture.down),
            columns: picture.across.len(),
            rows: picture.down.len(),
            factors: picture.factors.iter().map(plain).collect(),
            is_solid: picture.fillings.iter().map(|filling| filling.is_solid()).collect(),
        }
    }
}

/// A mesh against one level.
struct Level<'a> {
    mesh: &'a Mesh,
    level: f64,
}

impl Level<'_> {
    /// How far the factor lies above the level where two lines cross.
    fn above(&self, column: usize, row: usize) -> f64 {
        self.mesh.factors[row * self.mesh.columns + column] - self.level
    }

    /// The number of the edge that runs across, or down, from where two lines cross.
    const fn edge(&self, column: usize, row: usize, down: bool) -> u32 {
        (2 * (row * self.mesh.columns + column) + down as usize) as u32
    }

    /// Pieces of the line in one cell, from edge to edge.
    fn segments(&self, column: usize, row: usize) -> [Option<[u32; 2]>; 2] {
        if !self.mesh.is_solid[row * (self.mesh.columns - 1) + column] {
            return [None; 2];
        }
        let corners =
            [(0, 0), (1, 0), (1, 1), (0, 1)].map(|(c, r)| self.above(column + c, row + r));
        let edges = [
            self.edge(column, row, false),
            self.edge(column + 1, row, true),
            self.edge(column, row + 1, false),
            self.edge(column, row, true),
        ];
        let mut crossed = [NONE; 4];
        let mut count = 0;
        for (n, edge) in edges.into_iter().enumerate() {
            if (corners[n] >= 0.0) != (corners[(n + 1) % 4] >= 0.0) {
                crossed[count] = edge;
                count += 1;
            }
        }
        let [a, b, c, d] = crossed;
        match count {
            2 => [Some([a, b]), None],
            // A saddle: the mean says which two corners hang together.
            4 if (corners.iter().sum::<f64>() >= 0.0) == (corners[0] >= 0.0) => {
                [Some([a, b]), Some([c, d])]
            }
            4 => [Some([a, d]), Some([b, c])],
            _ => [None; 2],
        }
    }

    /// Where the line crosses an edge.
    fn crossing(&self, edge: u32) -> Point {
        let (place, down) = (edge as usize / 2, edge % 2 == 1);
        let columns = self.mesh.columns;
        let (column, row) = (place % columns, place / columns);
        let (next_column, next_row) = if down { (column, row + 1) } else { (column + 1, row) };
        let (here, there) = (self.above(column, row), self.above(next_column, next_row));
        let share = if here == there { 0.5 } else { here / (here - there) };
        let between = |from: f64, to: f64| from + (to - from) * share;
        let (across, down) = (&self.mesh.across, &self.mesh.down);
        Point::new(between(across[column], across[next_column]), between(down[row], down[next_row]))
    }
}

/// How long a line is.
pub fn length_of(line: &[Point]) -> f64 {
    line.windows(2).map(|pair| distance(pair[0], pair[1])).sum()
}

fn distance(a: Point, b: Point) -> f64 {
    let (x, y) = (b.x - a.x, b.y - a.y);
    (x * x + y * y).sqrt()
}

/// The point a share of its length along a line.
fn along(line: &[Point], share: f64) -> Option<Point> {
    let mut left = length_of(line) * share;
    for pair in line.windows(2) {
        let step = distance(pair[0], pair[1]);
        if left <= step && step > 0.0 {
            let part = left / step;
            let [x, y] = [(pair[0].x, pair[1].x), (pair[0].y, pair[1].y)]
                .map(|(from, to)| from + (to - from) * part);
            return Some(Point::new(x, y));
        }
        left -= step;
    }
    line.last().copied()
}

/// Where labels of `width` by `height` stand on lines: at most one on each level, the middle of its
/// longest line for choice, within `window` and clear of one another and of what is `taken`. None
/// where there is no room.
pub fn label_places(
    levels: &[&[Vec<Point>]],
    window: &Rect,
    taken: &[Rect],
    width: f64,
    height: f64,
) -> Vec<Option<Point>> {
    const SHARES: [f64; 11] = [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.14, 0.86, 0.08, 0.92];
    let mut taken = taken.to_vec();
    let mut places = Vec::with_capacity(levels.len());
    for lines in levels {
        let mut longest: Vec<&Vec<Point>> =
            lines.iter().filter(|line| length_of(line) > width).collect();
        longest.sort_by(|a, b| length_of(b).total_cmp(&length_of(a)));
        let candidates = longest
            .into_iter()
            .flat_map(|line| SHARES.iter().filter_map(move |&share| along(line, share)));
        let mut free = candidates.filter(|&at| {
            let label = around(at, width, height);
            let within = label.corners().into_iter().all(|corner| window.holds(corner));
            within && taken.iter().all(|other| !overlap(&label, other))
        });
        let place = free.next();
        drop(free);
        if let Some(at) = place {
            taken.push(around(at, width, height));
        }
        places.push(place);
    }
    places
}

/// The rectangle about a point.
pub fn around(at: Point, width: f64, height: f64) -> Rect {
    Rect::new(at.x, at.y, at.x, at.y).grown(width / 2.0, height / 2.0, width / 2.0, height / 2.0)
}

/// Whether two rectangles share more than an edge.
pub fn overlap(a: &Rect, b: &Rect) -> bool {
    a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom
}

#[cfg(test)]
mod tests {
    use super::*;
    use inchwise_core::conduction::Axis;
    use inchwise_core::detail::{Filling, View};

    /// A picture of a field given by a rule, on lines that are not evenly spaced.
    fn picture(factor: impl Fn(f64, f64) -> f64, is_air: impl Fn(f64, f64) -> bool) -> Picture {
        let lines = |count: usize| -> Vec<Length> {
            (0..count).map(|n| Length::mm(n as f64 * 4.0 + (n * n) as f64 * 0.1)).collect()
        };
        let (across, down) = (lines(21), lines(16));
        let at = |length: &Length| length.as_mm();
        let crossings = down.iter().flat_map(|y| across.iter().map(move |x| (at(x), at(y))));
        let factors = crossings.map(|(x, y)| Some(factor(x, y) as f32)).collect();
        let middles = down.windows(2).flat_map(|y| {
            across
                .windows(2)
                .map(move |x| ((at(&x[0]) + at(&x[1])) / 2.0, (at(&y[0]) + at(&y[1])) / 2.0))
        });
        let fillings = middles
            .map(|(x, y)| if is_air(x, y) { Filling::Room } else { Filling::Foam })
            .collect();
        let view = View {
            axis: Axis::Z,
            at: Length::ZERO,
            across: [across[0], across[20]],
            down: [down[0], down[15]],
            rises: false,
        };
        Picture { view, across, down, factors, fillings }
    }

    #[test]
    fn lines_of_a_straight_field_are_straight_and_where_they_belong() {
        let field = picture(|x, y| 0.1 + 0.004 * x + 0.003 * y, |_, _| false);
        for level in [0.2, 0.31, 0.42] {
            let lines = isolines(&Mesh::of(&field), level);
            assert_eq!(lines.len(), 1, "one line at {level}");
            for point in &lines[0] {
                let value = 0.1 + 0.004 * point.x + 0.003 * point.y;
                assert!((value - level).abs() < 1e-6, "{point:?} at {level}");
            }
        }
        assert!(isolines(&Mesh::of(&field), 0.05).is_empty(), "colder than anywhere");
    }

    #[test]
    fn a_ring_closes_and_is_found_once() {
        let off = |x: f64, y: f64| distance(Point::new(x, y), Point::new(50.0, 40.0));
        let round = |x: f64, y: f64| off(x, y) / 100.0;
        let lines = isolines(&Mesh::of(&picture(round, |_, _| false)), 0.2);
        assert_eq!(lines.len(), 1);
        let ring = &lines[0];
        assert_eq!(ring.first(), ring.last());
        for point in ring {
            assert!((off(point.x, point.y) - 20.0).abs() < 0.8, "{point:?}");
        }
        let round_about = length_of(ring) / (core::f64::consts::TAU * 20.0);
        assert!((0.98..1.005).contains(&round_about), "{round_about}");
    }

    #[test]
    fn a_line_ends_where_air_begins() {
        let field = picture(|_, y| y / 100.0, |x, _| x > 60.0);
        let lines = isolines(&Mesh::of(&field), 0.3);
        assert_eq!(lines.len(), 1);
        assert!(lines[0].iter().all(|point| point.x <= 60.0 + 8.0));
        assert!(lines[0].iter().all(|point| (point.y - 30.0).abs() < 1e-5));
    }

    #[test]
    fn a_saddle_s_branches_do_not_cross() {
        let saddle = picture(|x, y| 0.5 + (x - 61.0) * (y - 43.0) / 1e4, |_, _| false);
        let lines = isolines(&Mesh::of(&saddle), 0.5005);
        assert_eq!(lines.len(), 2, "two branches");
    }

    #[test]
    fn labels_keep_clear_of_one_another_and_of_what_is_there() {
        let field = picture(|_, y| y / 100.0, |_, _| false);
        let levels: Vec<_> =
            (1..9).map(|level| isolines(&Mesh::of(&field), f64::from(level) * 0.1)).collect();
        let levels: Vec<&[Vec<Point>]> = levels.iter().map(Vec::as_slice).collect();
        let window = Rect::new(0.0, 0.0, 120.0, 82.0);
        let grip = Rect::new(40.0, 20.0, 60.0, 40.0);
        let places = label_places(&levels, &window, &[grip], 24.0, 14.0);
        let mut boxes = vec![grip];
        for (level, place) in places.iter().enumerate() {
            let Some(at) = place else { continue };
            assert!((at.y - (level + 1) as f64 * 10.0).abs() < 1e-4, "on its line");
            let label = around(*at, 24.0, 14.0);
            assert!(boxes.iter().all(|other| !overlap(&label, other)), "{at:?}");
            boxes.push(label);
        }
        assert!(boxes.len() >= 5, "most lines are labelled: {}", boxes.len());
    }
}
