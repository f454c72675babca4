//! Where the door and the windows are drawn along their walls.

use inchwise_core::design::{Design, Wall};

use super::shape::{Point, Rect};

/// What an opening is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum OpeningKind {
    /// The personnel door.
    Door,
    /// A window.
    Window,
}

/// An opening along a wall, mm from the start of the finished wall.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Opening {
    /// Which kind.
    pub kind: OpeningKind,
    /// Where it starts.
    pub from: f64,
    /// Where it ends.
    pub to: f64,
}

/// An opening on the paper.
#[derive(Clone, Debug, PartialEq)]
pub struct DrawnOpening {
    /// Which kind.
    pub kind: OpeningKind,
    /// What it cuts out of sheet and build-up.
    pub hole: Rect,
    /// The steel tubes that frame it, on either side.
    pub jambs: [Rect; 2],
    /// The foam packed over their inner faces and round into the reveal.
    pub packing: [Rect; 2],
    /// Glass lines, or the open leaf of the door.
    pub lines: Vec<[Point; 2]>,
    /// The path the door's edge takes: radius, from, to, and whether it sweeps clockwise.
    pub swing: Option<Swing>,
}

/// A quarter turn of a door.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Swing {
    /// The width of the leaf.
    pub radius: f64,
    /// The shut edge.
    pub shut: Point,
    /// The open edge.
    pub open: Point,
    /// Whether the arc from shut to open runs clockwise on the paper.
    pub clockwise: bool,
}

/// The openings of a wall, spread evenly along it: where they will be cut is not a choice yet.
///
/// The door stands nearest the cargo doors, or first on an end wall.
pub fn openings_on(design: &Design, wall: Wall, run: f64) -> Vec<Opening> {
    let mut kinds = Vec::new();
    if design.window_wall == wall && design.window_count > 0.0 {
        let width = design.window_width.as_mm();
        kinds.resize(design.window_count as usize, (OpeningKind::Window, width));
    }
    if design.personnel_door.wall() == Some(wall) {
        kinds.push((OpeningKind::Door, design.door_width.as_mm()));
    }
    let taken: f64 = kinds.iter().map(|(_, width)| width).sum();
    let gap = (run - taken) / (kinds.len() + 1) as f64;
    let mut end = 0.0;
    kinds
        .into_iter()
        .map(|(kind, width)| {
            let from = end + gap;
            end = from + width;
            Opening { kind, from, to: end }
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use inchwise_core::design::{CLEAR_OF_CORNERS, PersonnelDoor};

    #[test]
    fn openings_that_pass_the_check_are_drawn_clear_of_corners_and_each_other() {
        let design = Design {
            window_count: 3.0,
            window_wall: Wall::RightSide,
            personnel_door: PersonnelDoor::RightSide,
            ..Design::default()
        };
        let checked = design.check().unwrap();
        let run = design.clear_dimensions().length.as_mm();
        let openings = openings_on(checked.design(), Wall::RightSide, run);
        assert_eq!(openings.len(), 4);
        assert_eq!(openings[3].kind, OpeningKind::Door);
        let mut end = 0.0;
        for opening in &openings {
            assert!(opening.from - end >= CLEAR_OF_CORNERS.as_mm());
            end = opening.to;
        }
        assert!(run - end >= CLEAR_OF_CORNERS.as_mm());
        assert_eq!(openings_on(checked.design(), Wall::FrontEnd, 2000.0), vec![]);
    }
}
