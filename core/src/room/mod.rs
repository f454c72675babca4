//! The room that is left: clear sizes, what took each millimetre, and what still stands in it.

mod ladder;
mod obstruction;
mod treatment;

pub use ladder::*;
pub use obstruction::*;
pub use treatment::*;

use crate::design::{CheckedDesign, EndWallTreatment};
use crate::freight_box::Dimensions;
use crate::units::{Area, Length, Volume};

/// The finished room.
#[derive(Clone, Debug, PartialEq)]
pub struct Room {
    /// Inside the bare steel.
    pub bare: Dimensions,
    /// Between the finished faces.
    pub clear: Dimensions,
    /// Clear length × clear width.
    pub floor_area: Area,
    /// Clear volume, less what covers or castings still fill.
    pub volume: Volume,
    /// Bare volume less [`Room::volume`].
    pub lost_volume: Volume,
    /// Lost volume over bare volume.
    pub lost_share: f64,
    /// What took the length, from the front end to the cargo doors.
    pub length_ladder: Vec<LadderStep>,
    /// What took the width, from one side wall to the other.
    pub width_ladder: Vec<LadderStep>,
    /// What took the height, from the roof to the floor.
    pub height_ladder: Vec<LadderStep>,
    /// What is left standing in the two corners of the front end.
    pub front_corner: CornerObstruction,
    /// What is left standing in the two corners of the door end.
    pub door_corner: CornerObstruction,
    /// Headroom under what is left standing in the corners, where anything is.
    pub headroom_under_corners: Length,
    /// Clear height of the way through the cargo doors, over the finished floor.
    pub headroom_under_header: Length,
    /// From which depths on nothing is left to hide.
    pub castings_hidden_from: HiddenFrom,
}

impl Room {
    /// The room of a design.
    pub fn of(checked: &CheckedDesign) -> Self {
        let design = checked.design();
        let freight_box = checked.freight_box();
        let bare = freight_box.internal;
        let clear = design.clear_dimensions();
        let (front_corner, door_corner) = corner_obstructions(design);
        let filled = front_corner.volume() * 2.0 + door_corner.volume() * 2.0;
        let volume = clear.volume() - filled;
        let lost_volume = bare.volume() - volume;
        let lowest = front_corner.drop().max(door_corner.drop());
        let floor = design.stack(crate::design::Surface::Floor).total();
        Self {
            bare,
            clear,
            floor_area: clear.floor_area(),
            volume,
            lost_volume,
            lost_share: lost_volume / bare.volume(),
            length_ladder: length_ladder(design),
            width_ladder: width_ladder(design),
            height_ladder: height_ladder(design),
            front_corner,
            door_corner,
            headroom_under_corners: clear.height - lowest,
            headroom_under_header: (freight_box.door_opening_height - floor).min(clear.height),
            castings_hidden_from: HiddenFrom::of(design),
        }
    }
}

/// What each treatment of the castings would leave of the room, all else alike.
///
/// A treatment under which the design would no longer pass its check is left out.
pub fn rooms_by_treatment(checked: &CheckedDesign) -> Vec<(EndWallTreatment, Room)> {
    EndWallTreatment::ALL
        .iter()
        .filter_map(|&treatment| {
            let mut design = checked.design().clone();
            design.end_wall_treatment = treatment;
            design.check().ok().map(|checked| (treatment, Room::of(&checked)))
        })
        .collect()
}
