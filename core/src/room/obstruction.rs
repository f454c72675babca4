//! What still stands in the room's top corners: covered castings, bare castings, or nothing.

use crate::design::{Design, EndWallTreatment, Surface};
use crate::freight_box::Dimensions;
use crate::units::{Length, Volume};

/// A block in each of the two top corners of one end, past the finished faces.
///
/// With a cover: (casting reach + cover + lining − build-up)₊ in each direction. Bare: casting
/// reach − build-up. Where any direction comes to nothing, the build-up hides the casting.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CornerObstruction {
    /// Along, across and down from the finished faces; all zero where nothing stands out.
    pub size: Dimensions,
    /// Whether bare steel of the casting is in touch with the room's air.
    pub bare_steel: bool,
}

impl CornerObstruction {
    /// Volume of one block.
    pub fn volume(&self) -> Volume {
        self.size.volume()
    }

    /// How far it hangs below the finished ceiling.
    pub fn drop(&self) -> Length {
        self.size.height
    }

    /// Whether anything stands out.
    pub fn stands_out(&self) -> bool {
        self.size.height > Length::ZERO
    }
}

/// The blocks at the front end and at the door end.
pub fn corner_obstructions(design: &Design) -> (CornerObstruction, CornerObstruction) {
    let casting = design.freight_box().casting;
    let bare = design.end_wall_treatment == EndWallTreatment::LeaveBare;
    let boards = design.lining_thickness + design.panel_thickness;
    let over = if bare { Length::ZERO } else { design.casting_cover + boards };
    let past =
        |reach: Length, surface| (reach + over - design.stack(surface).total()).max(Length::ZERO);
    let corner = |reach: Length, end| {
        let size = Dimensions {
            length: past(reach, end),
            width: past(casting.width, Surface::SideWall),
            height: past(casting.height, Surface::Ceiling),
        };
        let stands_out = size.volume() > Volume::ZERO;
        let nothing = Dimensions::mm(0.0, 0.0, 0.0);
        CornerObstruction {
            size: if stands_out { size } else { nothing },
            bare_steel: bare && stands_out,
        }
    };
    (corner(casting.front_length, Surface::FrontEnd), corner(casting.door_length, Surface::DoorEnd))
}

/// Depths of frame or foam from which on the castings, with their cover, are hidden whatever the
/// treatment: the point where the treatments come to the same room.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct HiddenFrom {
    /// Depth at the front end.
    pub front_end: Length,
    /// Depth at the door end.
    pub door_end: Length,
    /// Depth at the side walls.
    pub side_wall: Length,
    /// Depth at the ceiling.
    pub ceiling: Length,
    /// Whether the chosen depths hide them at both ends without bringing anything in.
    pub hidden_already: bool,
}

impl HiddenFrom {
    /// For the castings and the cover of a design: reach + cover in each direction. One
    /// direction suffices.
    pub fn of(design: &Design) -> Self {
        let casting = design.freight_box().casting;
        let over = |reach: Length| reach + design.casting_cover;
        let depth = |surface| {
            let stack = design.stack(surface);
            stack.lining_back() - stack.brought_in
        };
        let (front_end, door_end) = (over(casting.front_length), over(casting.door_length));
        let (side_wall, ceiling) = (over(casting.width), over(casting.height));
        let above = depth(Surface::Ceiling) >= ceiling || depth(Surface::SideWall) >= side_wall;
        let ends = depth(Surface::FrontEnd) >= front_end && depth(Surface::DoorEnd) >= door_end;
        Self { front_end, door_end, side_wall, ceiling, hidden_already: above || ends }
    }
}
