//! Dimension lines.

use super::geometry::{Pen, Point, Rect};
use super::pattern::unit_of;

/// A measure laid beside the box, steel to steel: hatched where room is taken, an arrowed line
/// where it is clear.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Tape {
    /// Whether it runs up the paper.
    pub upright: bool,
    /// Where it lies across its run.
    pub at: f64,
    /// Steel, room, room, steel along its run.
    pub ends: [f64; 4],
    /// From where the fine lines to the room's ends start.
    pub from: f64,
    /// The drawing's unit.
    unit: f64,
}

impl Tape {
    /// Along the bottom of a box, at so far down.
    pub fn below(paper: &Rect, outside: &Rect, bare: &Rect, clear: &Rect, at: f64) -> Self {
        Self {
            upright: false,
            at,
            ends: [bare.left, clear.left, clear.right, bare.right],
            from: outside.bottom + 20.0,
            unit: unit_of(paper),
        }
    }

    /// Up the left side of a box, at so far right.
    pub fn beside(paper: &Rect, outside: &Rect, bare: &Rect, clear: &Rect, at: f64) -> Self {
        Self {
            upright: true,
            at,
            ends: [bare.top, clear.top, clear.bottom, bare.bottom],
            from: outside.left - 20.0,
            unit: unit_of(paper),
        }
    }

    const fn point(&self, along: f64, across: f64) -> Point {
        if self.upright { Point::new(across, along) } else { Point::new(along, across) }
    }

    /// The middle of the clear part, where its figure goes.
    pub fn middle(&self) -> Point {
        self.point((self.ends[1] + self.ends[2]) / 2.0, self.at)
    }

    const fn half(&self) -> f64 {
        self.unit * 5.0
    }

    /// The line, and fine lines to it from the room's ends.
    pub fn fine(&self, pen: Pen) -> Pen {
        let [_, start, end, _] = self.ends;
        let beyond = if self.from < self.at { self.half() } else { -self.half() };
        let end_of =
            |along: f64| [self.point(along, self.from), self.point(along, self.at + beyond)];
        pen.line(&end_of(start))
            .line(&end_of(end))
            .line(&[self.point(start, self.at), self.point(end, self.at)])
    }

    /// Where room is taken.
    pub fn taken(&self, pen: Pen) -> Pen {
        let [first, start, end, last] = self.ends;
        let half = self.half();
        let taken = |from: f64, to: f64| {
            [
                self.point(from, self.at - half),
                self.point(to, self.at - half),
                self.point(to, self.at + half),
                self.point(from, self.at + half),
            ]
        };
        pen.outline(&taken(first, start)).outline(&taken(end, last))
    }

    /// The arrow heads at the room's ends.
    pub fn heads(&self, pen: Pen) -> Pen {
        let head = |tip: f64, direction: f64| {
            let back = tip + direction * self.unit * 14.0;
            let spread = self.unit * 3.2;
            [
                self.point(tip, self.at),
                self.point(back, self.at + spread),
                self.point(back, self.at - spread),
            ]
        };
        pen.outline(&head(self.ends[1], 1.0)).outline(&head(self.ends[2], -1.0))
    }
}

/// A plain dimension between two points of one upright line, with short strokes across its ends.
pub fn upright(pen: Pen, ends: &[Point; 2], paper: &Rect) -> Pen {
    let [top, bottom] = *ends;
    let half = unit_of(paper) * 5.0;
    pen.line(ends).between(top.x - half, top.y, top.x + half, top.y).between(
        bottom.x - half,
        bottom.y,
        bottom.x + half,
        bottom.y,
    )
}
