//! Where the details are, and how many metres or pieces of each.

use super::members_on;
use crate::design::{Design, PersonnelDoor, Surface, Wall};
use crate::freight_box::Dimensions;
use crate::units::Length;

/// One end of the box.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum End {
    /// Opposite the cargo doors.
    Front,
    /// At the cargo doors.
    Door,
}

impl End {
    /// Both ends.
    pub const ALL: [Self; 2] = [Self::Front, Self::Door];

    /// Its wall.
    pub const fn surface(self) -> Surface {
        match self {
            Self::Front => Surface::FrontEnd,
            Self::Door => Surface::DoorEnd,
        }
    }
}

/// What is cut into a wall.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Opening {
    /// The personnel door.
    PersonnelDoor,
    /// A window.
    Window,
}

/// A place where heat finds a way past the foam.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum ThermalBridge {
    /// A stud of a wall, or a joist of the ceiling.
    FrameLine(Surface),
    /// The waves of a plain area's sheet.
    Waves(Surface),
    /// The head of a stud with its bracket at the top rail.
    StudHead,
    /// The edge of roof and wall, at the top rail.
    RoofEdge(Surface),
    /// The edge of side wall and end, at the corner post.
    CornerPost(End),
    /// The edge of floor and wall, at the bottom rail.
    FloorEdge(Surface),
    /// A steel member under the floor.
    FloorMember,
    /// The steel frame round an opening.
    OpeningFrame(Opening),
    /// A top corner casting.
    TopCasting(End),
    /// A bottom corner casting.
    BottomCasting(End),
    /// The sleeve of an intake's damper.
    DamperSleeve,
    /// The sleeve of an exhaust's damper.
    ExhaustSleeve,
}

impl ThermalBridge {
    /// Stable name.
    pub const fn key(self) -> &'static str {
        match self {
            Self::FrameLine(Surface::Ceiling) => "ceiling_joist",
            Self::FrameLine(Surface::SideWall) => "side_wall_stud",
            Self::FrameLine(Surface::FrontEnd) => "front_end_stud",
            Self::FrameLine(Surface::DoorEnd) => "door_end_stud",
            Self::FrameLine(Surface::Floor) | Self::FloorMember => "floor_member",
            Self::Waves(Surface::FrontEnd) => "front_end_waves",
            Self::Waves(Surface::Ceiling) => "ceiling_waves",
            Self::Waves(_) => "side_wall_waves",
            Self::StudHead => "stud_head",
            Self::RoofEdge(Surface::FrontEnd) => "front_roof_edge",
            Self::RoofEdge(Surface::DoorEnd) => "door_roof_edge",
            Self::RoofEdge(_) => "side_roof_edge",
            Self::CornerPost(End::Front) => "front_corner_post",
            Self::CornerPost(End::Door) => "door_corner_post",
            Self::FloorEdge(Surface::FrontEnd) => "front_floor_edge",
            Self::FloorEdge(Surface::DoorEnd) => "door_floor_edge",
            Self::FloorEdge(_) => "side_floor_edge",
            Self::OpeningFrame(Opening::PersonnelDoor) => "door_frame",
            Self::OpeningFrame(Opening::Window) => "window_frame",
            Self::TopCasting(End::Front) => "front_top_casting",
            Self::TopCasting(End::Door) => "door_top_casting",
            Self::BottomCasting(End::Front) => "front_bottom_casting",
            Self::BottomCasting(End::Door) => "door_bottom_casting",
            Self::DamperSleeve => "damper_sleeve",
            Self::ExhaustSleeve => "exhaust_sleeve",
        }
    }
}

impl ThermalBridge {
    /// Whether only a body in three dimensions shows what happens here; a section does elsewhere.
    pub const fn takes_a_body(self) -> bool {
        match self {
            Self::StudHead
            | Self::TopCasting(_)
            | Self::BottomCasting(_)
            | Self::DamperSleeve
            | Self::ExhaustSleeve => true,
            Self::FrameLine(_)
            | Self::Waves(_)
            | Self::RoofEdge(_)
            | Self::CornerPost(_)
            | Self::FloorEdge(_)
            | Self::FloorMember
            | Self::OpeningFrame(_) => false,
        }
    }
}

/// How much of a place there is.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Amount {
    /// Metres of a line.
    Metres(Length),
    /// Whole pieces.
    Pieces(f64),
}

/// The walls that carry studs, and the ceiling that carries joists.
pub const FRAMED: [Surface; 4] =
    [Surface::SideWall, Surface::FrontEnd, Surface::DoorEnd, Surface::Ceiling];

/// The walls all round.
const WALLS: [Surface; 3] = [Surface::SideWall, Surface::FrontEnd, Surface::DoorEnd];

/// How many studs a wall has, both side walls together, or how many joists the ceiling.
pub fn frame_members(design: &Design, clear: &Dimensions, surface: Surface) -> u32 {
    match surface {
        Surface::SideWall => members_on(clear.length, design.stud_spacing) * 2,
        Surface::FrontEnd | Surface::DoorEnd => members_on(clear.width, design.stud_spacing),
        Surface::Ceiling => members_on(clear.length, design.joist_spacing),
        Surface::Floor => 0,
    }
}

/// The wall a surface stands for.
pub const fn surface_of(wall: Wall) -> Surface {
    match wall {
        Wall::RightSide | Wall::LeftSide => Surface::SideWall,
        Wall::FrontEnd => Surface::FrontEnd,
        Wall::DoorEnd => Surface::DoorEnd,
    }
}

/// Every place of a design with its amount, between finished faces: those that a section shows
/// first, then those that take a body in three dimensions. Places that are not there are left out.
/// The waves of the plain areas come from whoever knows the sheets.
pub fn thermal_bridges(
    design: &Design,
    clear: &Dimensions,
    member_spacing: Length,
    waves: impl Iterator<Item = (ThermalBridge, Amount)>,
) -> Vec<(ThermalBridge, Amount)> {
    let mut places: Vec<(ThermalBridge, Amount)> = waves.collect();
    for surface in FRAMED {
        let each = if surface == Surface::Ceiling { clear.width } else { clear.height };
        let count = frame_members(design, clear, surface);
        places.push((ThermalBridge::FrameLine(surface), Amount::Metres(each * f64::from(count))));
    }
    // Both side walls, but one wall at each end.
    let along = |wall| match wall {
        Surface::SideWall => clear.length * 2.0,
        _ => clear.width,
    };
    for wall in WALLS {
        places.push((ThermalBridge::RoofEdge(wall), Amount::Metres(along(wall))));
        places.push((ThermalBridge::FloorEdge(wall), Amount::Metres(along(wall))));
    }
    for end in End::ALL {
        places.push((ThermalBridge::CornerPost(end), Amount::Metres(clear.height * 2.0)));
    }
    let members = (clear.length / member_spacing).floor();
    places.push((ThermalBridge::FloorMember, Amount::Metres(clear.width * members)));
    if design.personnel_door != PersonnelDoor::None {
        let round = design.door_width + design.door_height * 2.0;
        places.push((ThermalBridge::OpeningFrame(Opening::PersonnelDoor), Amount::Metres(round)));
    }
    let round = (design.window_width + design.window_height) * 2.0 * design.window_count;
    places.push((ThermalBridge::OpeningFrame(Opening::Window), Amount::Metres(round)));
    for end in End::ALL {
        places.push((ThermalBridge::TopCasting(end), Amount::Pieces(2.0)));
    }
    let studs: u32 = WALLS.iter().map(|&wall| frame_members(design, clear, wall)).sum();
    places.push((ThermalBridge::StudHead, Amount::Pieces(f64::from(studs))));
    for end in End::ALL {
        places.push((ThermalBridge::BottomCasting(end), Amount::Pieces(2.0)));
    }
    let exhausts = design.exhaust_count.min(design.damper_count);
    places.push((ThermalBridge::DamperSleeve, Amount::Pieces(design.damper_count - exhausts)));
    places.push((ThermalBridge::ExhaustSleeve, Amount::Pieces(exhausts)));
    places.retain(|(_, amount)| match amount {
        Amount::Metres(length) => *length > Length::ZERO,
        Amount::Pieces(count) => *count > 0.0,
    });
    places
}
