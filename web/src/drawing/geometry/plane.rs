//! A plain plot: two axes on paper.

use super::shape::{Point, Rect};
use super::ticks::Axis;

/// Paper with a plot whose axes run between round numbers.
#[derive(Clone, Debug, PartialEq)]
pub struct Plane {
    /// The paper.
    pub paper: Rect,
    /// The plot.
    pub plot: Rect,
    /// Across.
    pub across: Axis,
    /// Up.
    pub up: Axis,
}

impl Plane {
    /// A plot of a usual size.
    pub const fn new(across: Axis, up: Axis) -> Self {
        Self {
            paper: Rect::new(0.0, 0.0, 1000.0, 620.0),
            plot: Rect::new(90.0, 60.0, 970.0, 520.0),
            across,
            up,
        }
    }

    /// Where a pair of values lies; past the upper end of its axis, on the edge.
    pub fn at(&self, across: f64, up: f64) -> Point {
        let share = self.up.share(up).min(1.0);
        Point::new(
            self.plot.left + self.plot.width() * self.across.share(across),
            self.plot.bottom - self.plot.height() * share,
        )
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_ends_of_the_axes_are_the_corners_of_the_plot() {
        let plane = Plane::new(Axis::holding(&[-40.0, 10.0], 5), Axis::holding(&[0.0, 100.0], 5));
        assert_eq!(plane.at(-40.0, 0.0), Point::new(plane.plot.left, plane.plot.bottom));
        assert_eq!(plane.at(10.0, 250.0), Point::new(plane.plot.right, plane.plot.top));
    }
}
