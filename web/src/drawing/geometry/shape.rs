//! Points, rectangles and outlines on the paper, in millimetres, x to the right and y downwards.

use crate::measure::{plain, push_plain};

/// A place on the paper, mm.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Point {
    /// To the right.
    pub x: f64,
    /// Downwards.
    pub y: f64,
}

impl Point {
    /// The point at x, y.
    pub const fn new(x: f64, y: f64) -> Self {
        Self { x, y }
    }

    /// As two numbers of a drawing.
    pub fn written(self) -> String {
        plain(self.x, 1, " ") + &plain(self.y, 1, "")
    }

    /// As the `transform` that moves the origin here.
    pub fn translated(self) -> String {
        format!("translate({})", self.written())
    }
}

/// An upright rectangle, mm.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Rect {
    /// Least x.
    pub left: f64,
    /// Least y.
    pub top: f64,
    /// Greatest x.
    pub right: f64,
    /// Greatest y.
    pub bottom: f64,
}

impl Rect {
    /// From its four sides, left before right and top before bottom.
    pub const fn new(left: f64, top: f64, right: f64, bottom: f64) -> Self {
        Self { left, top, right, bottom }
    }

    /// Left to right.
    pub const fn width(&self) -> f64 {
        self.right - self.left
    }

    /// Top to bottom.
    pub const fn height(&self) -> f64 {
        self.bottom - self.top
    }

    /// The middle.
    pub const fn centre(&self) -> Point {
        Point::new((self.left + self.right) / 2.0, (self.top + self.bottom) / 2.0)
    }

    /// Whether it covers nothing.
    pub fn is_empty(&self) -> bool {
        self.width() <= 0.0 || self.height() <= 0.0
    }

    /// Each side moved outwards by so much.
    pub const fn grown(&self, left: f64, top: f64, right: f64, bottom: f64) -> Self {
        Self::new(self.left - left, self.top - top, self.right + right, self.bottom + bottom)
    }

    /// The corners, clockwise from the top left.
    pub const fn corners(&self) -> [Point; 4] {
        [
            Point::new(self.left, self.top),
            Point::new(self.right, self.top),
            Point::new(self.right, self.bottom),
            Point::new(self.left, self.bottom),
        ]
    }

    /// Whether the point lies in it or on its edge, to within a thousandth of a millimetre.
    pub fn holds(&self, point: Point) -> bool {
        const EDGE: f64 = 1e-3;
        point.x >= self.left - EDGE
            && point.x <= self.right + EDGE
            && point.y >= self.top - EDGE
            && point.y <= self.bottom + EDGE
    }

    /// Where a point lies on it, in per cent of width and height: the place of a label or a grip
    /// over the drawing whose paper this is.
    pub fn percent(&self, point: Point) -> (f64, f64) {
        ((point.x - self.left) / self.width() * 100.0, (point.y - self.top) / self.height() * 100.0)
    }

    /// As the `viewBox` of a drawing.
    pub fn view_box(&self) -> String {
        let from = Point::new(self.left, self.top).written();
        from + " " + &Point::new(self.width(), self.height()).written()
    }

    /// As path data.
    pub fn path(&self) -> String {
        closed(&self.corners())
    }
}

fn append(path: &mut String, points: &[Point]) {
    for (index, point) in points.iter().enumerate() {
        path.push(if index == 0 { 'M' } else { 'L' });
        push_plain(path, point.x, 2);
        path.push(' ');
        push_plain(path, point.y, 2);
    }
}

/// Path data of an open line.
pub fn open(points: &[Point]) -> String {
    let mut path = String::new();
    append(&mut path, points);
    path
}

/// Path data of a closed outline.
pub fn closed(points: &[Point]) -> String {
    let mut path = open(points);
    path.push('Z');
    path
}

/// Path data of several closed outlines.
pub fn all_closed<'a>(outlines: impl IntoIterator<Item = &'a [Point]>) -> String {
    let mut path = String::new();
    for points in outlines {
        append(&mut path, points);
        path.push('Z');
    }
    path
}

/// Path data of several open lines.
pub fn all_open<'a>(lines: impl IntoIterator<Item = &'a [Point]>) -> String {
    let mut path = String::new();
    for points in lines {
        append(&mut path, points);
    }
    path
}

/// Path data of several rectangles; those that cover nothing are left out.
pub fn rects<'a>(rects: impl IntoIterator<Item = &'a Rect>) -> String {
    rects.into_iter().filter(|rect| !rect.is_empty()).map(Rect::path).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_label_lies_at_its_share_of_the_paper() {
        let paper = Rect::new(-100.0, -50.0, 300.0, 150.0);
        assert_eq!(paper.percent(Point::new(100.0, 100.0)), (50.0, 75.0));
        assert_eq!(paper.view_box(), "-100.0 -50.0 400.0 200.0");
    }

    #[test]
    fn paths_open_and_close() {
        let points = [Point::new(0.0, 0.0), Point::new(1.5, 2.0)];
        assert_eq!(open(&points), "M0.00 0.00L1.50 2.00");
        assert_eq!(closed(&points), "M0.00 0.00L1.50 2.00Z");
        let two = all_closed([&points[..], &points[..]]);
        assert_eq!(two, "M0.00 0.00L1.50 2.00ZM0.00 0.00L1.50 2.00Z");
    }
}
