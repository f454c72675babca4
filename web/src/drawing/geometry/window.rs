//! The window of a cut, laid on the page.

use inchwise_core::conduction::Point as FieldPoint;
use inchwise_core::detail::View;

use super::shape::{Point, Rect};

/// How far from a cut a place still counts as shown by it, mm: the width of a bracket's leg and a
/// flange.
const NEAR: f64 = 16.0;

/// A view laid on the page.
pub struct Window {
    /// The paper.
    pub paper: Rect,
    view: View,
}

impl Window {
    /// The window of a view.
    pub fn of(view: &View) -> Self {
        let [left, right] = view.across.map(|at| at.as_mm());
        let [low, high] = view.down.map(|at| at.as_mm());
        let [top, bottom] = if view.rises { [-high, -low] } else { [low, high] };
        Self { paper: Rect::new(left, top, right, bottom), view: *view }
    }

    /// Where a place of the view lies on the page.
    pub const fn place(&self, at: Point) -> Point {
        if self.view.rises { Point::new(at.x, -at.y) } else { at }
    }

    /// Where a block of the view lies on the page.
    pub(super) fn rect(&self, left: f64, low: f64, right: f64, high: f64) -> Rect {
        let [a, b] = [Point::new(left, low), Point::new(right, high)].map(|at| self.place(at));
        Rect::new(left, a.y.min(b.y), right, a.y.max(b.y))
    }

    /// Where a place of the model lies, if the cut shows it.
    pub(super) fn shows(&self, at: FieldPoint) -> Option<Point> {
        let [p, q] = self.view.axis.others();
        let off = (at.along(self.view.axis) - self.view.at).as_mm().abs();
        let point = self.place(Point::new(at.along(p).as_mm(), at.along(q).as_mm()));
        (off <= NEAR && self.paper.holds(point)).then_some(point)
    }
}
