//! Dimension lines.

use super::geometry::{Point, all_closed, all_open};
use super::paper::path;
use super::pattern::Patterns;
use crate::dom::El;
use crate::kept::Kept;

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
    pub unit: f64,
}

impl Tape {
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
    fn fine(&self) -> String {
        let [_, start, end, _] = self.ends;
        let beyond = if self.from < self.at { self.half() } else { -self.half() };
        let out = |along: f64| [self.point(along, self.from), self.point(along, self.at + beyond)];
        let line = [self.point(start, self.at), self.point(end, self.at)];
        all_open([out(start), out(end), line].iter().map(|line| &line[..]))
    }

    /// Where room is taken.
    fn taken(&self) -> String {
        let [first, start, end, last] = self.ends;
        let half = self.half();
        let taken = [(first, start), (end, last)].map(|(from, to)| {
            [(from, -half), (to, -half), (to, half), (from, half)]
                .map(|(along, across)| self.point(along, self.at + across))
        });
        all_closed(taken.iter().map(|outline| &outline[..]))
    }

    fn heads(&self) -> String {
        let [_, start, end, _] = self.ends;
        let heads = [(start, 1.0), (end, -1.0)].map(|(tip, direction)| {
            let back = tip + direction * self.unit * 14.0;
            let spread = self.unit * 3.2;
            [(tip, 0.0), (back, spread), (back, -spread)]
                .map(|(along, across)| self.point(along, self.at + across))
        });
        all_closed(heads.iter().map(|outline| &outline[..]))
    }
}

/// Tapes as drawn.
pub fn tapes(tapes: Kept<[Tape; 2]>, patterns: &Patterns) -> [El; 3] {
    let all =
        |draw: fn(&Tape) -> String| move || tapes.with(|tapes| tapes.iter().map(draw).collect());
    [
        path("fine", all(Tape::fine)),
        path("taken", all(Tape::taken)).attr("fill", &patterns.lost()),
        path("arrow-head", all(Tape::heads)),
    ]
}

/// Path data of a plain dimension between two points of one upright line, with short strokes
/// across its ends.
pub fn upright(ends: &[Point; 2], unit: f64) -> String {
    let [top, bottom] = *ends;
    let half = unit * 5.0;
    let stroke = |end: Point| [Point::new(end.x - half, end.y), Point::new(end.x + half, end.y)];
    all_open([[top, bottom], stroke(top), stroke(bottom)].iter().map(|line| &line[..]))
}
