//! Castings and what is done about them, drawn.

use super::geometry::{Corner, Cover, Showing, all_closed, rects};
use super::paper::path;
use super::pattern::Patterns;
use crate::dom::{El, svg};
use crate::kept::Kept;
use crate::measure::plain;

/// A drop, its tip up, one unit about its middle.
const DROP: &str =
    "M0-1C0.5-0.3 0.75 0.1 0.75 0.45A0.75 0.75 0 0 1-0.75 0.45C-0.75 0.1-0.5-0.3 0-1Z";

/// The corners of a drawing, whose unit sizes the marks on bare ones.
#[derive(Clone, Debug, PartialEq)]
pub struct Corners {
    /// The castings.
    pub corners: Vec<Corner>,
    /// The drawing's unit.
    pub unit: f64,
}

impl Corners {
    fn covers(&self) -> impl Iterator<Item = &Cover> {
        self.corners.iter().filter_map(|corner| corner.cover.as_ref())
    }

    fn foam(&self) -> String {
        rects(self.covers().map(|cover| &cover.foam))
    }

    fn boards(&self) -> String {
        all_closed(self.covers().map(|cover| &cover.board[..]))
    }

    fn steel(&self, showing: Showing) -> String {
        let shown = self.corners.iter().filter(|corner| corner.showing == showing);
        rects(shown.map(|corner| &corner.steel))
    }

    /// A drop that hangs on each bare casting.
    fn drops(&self) -> Vec<El> {
        let bare = self.corners.iter().filter(|corner| corner.showing == Showing::Bare);
        bare.map(|corner| {
            let centre = corner.steel.centre();
            let size = (self.unit * 13.0).min(corner.steel.height() * 0.28);
            let place = format!("{} scale({})", centre.translated(), plain(size, 2, ""));
            svg("path").attr("d", DROP).attr("transform", &place)
        })
        .collect()
    }
}

/// Castings as drawn.
pub fn castings(corners: Kept<Corners>, patterns: &Patterns) -> [El; 6] {
    let all = |draw: fn(&Corners) -> String| move || corners.with(draw);
    [
        path("foam", all(Corners::foam)).attr("fill", &patterns.foam()),
        path("board", all(Corners::boards)).attr("fill", &patterns.wood()),
        path("steel", all(|corners| corners.steel(Showing::Cut))),
        path("steel bare", all(|corners| corners.steel(Showing::Bare))),
        path("steel-outline hidden", all(|corners| corners.steel(Showing::Behind))),
        svg("g").class("drop").children_with(move || corners.with(Corners::drops)),
    ]
}
