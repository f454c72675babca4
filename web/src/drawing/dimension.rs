//! Dimension lines.

use leptos::prelude::*;

use super::geometry::{Point, all_closed, all_open};
use super::pattern::Patterns;

/// A measure laid beside the box, steel to steel: hatched where room is taken, an arrowed line
/// where it is clear.
pub struct Tape {
    /// Whether it runs up the paper.
    pub upright: bool,
    /// Where it lies across its run.
    pub at: f64,
    /// Steel, room, room, steel along its run.
    pub ends: [f64; 4],
    /// From where the fine lines to the room's ends start.
    pub from: f64,
}

impl Tape {
    const fn point(&self, along: f64, across: f64) -> Point {
        if self.upright { Point::new(across, along) } else { Point::new(along, across) }
    }

    /// The middle of the clear part, where its figure goes.
    pub fn middle(&self) -> Point {
        self.point((self.ends[1] + self.ends[2]) / 2.0, self.at)
    }

    /// The tape as drawn.
    pub fn drawn(&self, patterns: &Patterns) -> AnyView {
        let half = patterns.unit * 5.0;
        let [first, start, end, last] = self.ends;
        let taken = |from: f64, to: f64| {
            [(from, -half), (to, -half), (to, half), (from, half)]
                .map(|(along, across)| self.point(along, self.at + across))
        };
        let taken = [taken(first, start), taken(end, last)];
        let head = |tip: f64, direction: f64| {
            let back = tip + direction * patterns.unit * 14.0;
            let spread = patterns.unit * 3.2;
            [(tip, 0.0), (back, spread), (back, -spread)]
                .map(|(along, across)| self.point(along, self.at + across))
        };
        let heads = [head(start, 1.0), head(end, -1.0)];
        let beyond = if self.from < self.at { half } else { -half };
        let out = |along: f64| [self.point(along, self.from), self.point(along, self.at + beyond)];
        let line = [self.point(start, self.at), self.point(end, self.at)];
        let fine = [out(start), out(end), line];
        view! {
            <path class="fine" d=all_open(fine.iter().map(|line| &line[..])) />
            <path
                class="taken"
                fill=patterns.lost()
                d=all_closed(taken.iter().map(|outline| &outline[..]))
            />
            <path class="arrow-head" d=all_closed(heads.iter().map(|outline| &outline[..])) />
        }
        .into_any()
    }
}

/// A plain dimension between two points of one upright or level line, with short strokes across
/// its ends.
pub fn between(ends: &[Point; 2], patterns: &Patterns) -> AnyView {
    let [a, b] = *ends;
    let half = patterns.unit * 5.0;
    let (across_x, across_y) = if a.x == b.x { (half, 0.0) } else { (0.0, half) };
    let stroke = |end: Point| {
        [
            Point::new(end.x - across_x, end.y - across_y),
            Point::new(end.x + across_x, end.y + across_y),
        ]
    };
    let lines = [[a, b], stroke(a), stroke(b)];
    view! { <path class="fine" d=all_open(lines.iter().map(|line| &line[..])) /> }.into_any()
}
