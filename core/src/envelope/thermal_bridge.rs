//! Where the details are, and how many metres or pieces of each.

use super::members_on;
use super::opening::{CutOpening, Opening, cut_openings};
use crate::design::{Design, DoorEndFinish, FloorRecesses, Surface, Wall};
use crate::freight_box::{Dimensions, FORKLIFT_POCKET, FreightBox};
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
    /// The steel frame round an opening, at its jambs and head.
    OpeningFrame(Opening),
    /// The same frame at the foot of the personnel door, with the threshold on it.
    DoorThreshold,
    /// The same frame under a window.
    WindowSill,
    /// The edge of roof and door end, under the header of the cargo doors.
    CargoDoorHeader,
    /// The edge of floor and door end, at the sill of the cargo doors.
    CargoDoorSill,
    /// The edges of side walls and leaves with foam in them, at the posts they hang on.
    CargoDoorHinges,
    /// The line where two leaves with foam in them meet.
    CargoDoorMeeting,
    /// A batten in the foam of a leaf.
    CargoDoorBatten,
    /// A top corner casting.
    TopCasting(End),
    /// A bottom corner casting.
    BottomCasting(End),
    /// The sleeve of an intake's damper.
    DamperSleeve,
    /// The sleeve of an exhaust's damper.
    ExhaustSleeve,
    /// A long screw through lining and foam into the sheet.
    ScrewThrough,
    /// A spot where the foam is too thin or missed.
    ThinFoam,
    /// The end of a joist with its bracket at the top rail.
    JoistEnd,
    /// A forklift pocket under the floor.
    ForkliftPocket,
    /// The gooseneck tunnel under the floor.
    GooseneckTunnel,
    /// A drain through the floor.
    FloorDrain,
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
            Self::DoorThreshold => "door_threshold",
            Self::WindowSill => "window_sill",
            Self::CargoDoorHeader => "cargo_door_header",
            Self::CargoDoorSill => "cargo_door_sill",
            Self::CargoDoorHinges => "cargo_door_hinges",
            Self::CargoDoorMeeting => "cargo_door_meeting",
            Self::CargoDoorBatten => "cargo_door_batten",
            Self::TopCasting(End::Front) => "front_top_casting",
            Self::TopCasting(End::Door) => "door_top_casting",
            Self::BottomCasting(End::Front) => "front_bottom_casting",
            Self::BottomCasting(End::Door) => "door_bottom_casting",
            Self::DamperSleeve => "damper_sleeve",
            Self::ExhaustSleeve => "exhaust_sleeve",
            Self::ScrewThrough => "screw_through",
            Self::ThinFoam => "thin_foam",
            Self::JoistEnd => "joist_end",
            Self::ForkliftPocket => "forklift_pocket",
            Self::GooseneckTunnel => "gooseneck_tunnel",
            Self::FloorDrain => "floor_drain",
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
            | Self::ExhaustSleeve
            | Self::ScrewThrough
            | Self::JoistEnd
            | Self::FloorDrain => true,
            Self::FrameLine(_)
            | Self::Waves(_)
            | Self::RoofEdge(_)
            | Self::CornerPost(_)
            | Self::FloorEdge(_)
            | Self::FloorMember
            | Self::OpeningFrame(_)
            | Self::ThinFoam
            | Self::ForkliftPocket
            | Self::GooseneckTunnel
            | Self::DoorThreshold
            | Self::WindowSill
            | Self::CargoDoorHeader
            | Self::CargoDoorSill
            | Self::CargoDoorHinges
            | Self::CargoDoorMeeting
            | Self::CargoDoorBatten => false,
        }
    }

    /// The door or window whose edge its section shows.
    pub const fn opening_shown(self) -> Option<Opening> {
        match self {
            Self::OpeningFrame(opening) => Some(opening),
            Self::DoorThreshold => Some(Opening::PersonnelDoor),
            Self::WindowSill => Some(Opening::Window),
            _ => None,
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
        Surface::DoorEnd if design.door_end_finish == DoorEndFinish::FoamedLeaves => 0,
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
    freight_box: &FreightBox,
    waves: impl Iterator<Item = (ThermalBridge, Amount)>,
) -> Vec<(ThermalBridge, Amount)> {
    let mut places: Vec<(ThermalBridge, Amount)> = waves.collect();
    let openings = cut_openings(design);
    for surface in FRAMED {
        let each = if surface == Surface::Ceiling { clear.width } else { clear.height };
        let count = frame_members(design, clear, surface);
        let in_wall = openings.iter().filter(|opening| opening.wall == surface);
        let at_openings: Length =
            in_wall.map(|opening| opening.frame_line(clear.height, design.stud_spacing)).sum();
        let metres = each * f64::from(count) + at_openings;
        places.push((ThermalBridge::FrameLine(surface), Amount::Metres(metres)));
    }
    // Both side walls, but one wall at each end.
    let along = |wall| match wall {
        Surface::SideWall => clear.length * 2.0,
        _ => clear.width,
    };
    // The floor's edge is interrupted where a threshold lies.
    let threshold = |wall: Surface| -> Length {
        let doors = openings.iter().filter(|opening| opening.opening == Opening::PersonnelDoor);
        doors.filter(|door| door.wall == wall).map(CutOpening::foot).sum()
    };
    // The door end has header and sill for rails: between finished faces, as all edges, so over what the
    // side walls leave of the width of the doors' opening.
    for wall in WALLS {
        let (at_roof, at_floor) = match wall {
            Surface::DoorEnd => (ThermalBridge::CargoDoorHeader, ThermalBridge::CargoDoorSill),
            _ => (ThermalBridge::RoofEdge(wall), ThermalBridge::FloorEdge(wall)),
        };
        places.push((at_roof, Amount::Metres(along(wall))));
        places.push((at_floor, Amount::Metres(along(wall) - threshold(wall))));
    }
    let posts = Amount::Metres(clear.height * 2.0);
    places.push((ThermalBridge::CornerPost(End::Front), posts));
    match design.door_end_finish {
        DoorEndFinish::FramedWall => places.push((ThermalBridge::CornerPost(End::Door), posts)),
        DoorEndFinish::FoamedLeaves => {
            places.push((ThermalBridge::CargoDoorHinges, posts));
            places.push((ThermalBridge::CargoDoorMeeting, Amount::Metres(clear.height)));
            let battens = f64::from(members_on(clear.width, design.stud_spacing));
            let metres = clear.height * battens;
            places.push((ThermalBridge::CargoDoorBatten, Amount::Metres(metres)));
        }
    }
    // A pocket, with members for its sides, stands in the place of those that would be there.
    let has_recesses = design.floor_recesses != FloorRecesses::None;
    let pockets = if has_recesses { f64::from(freight_box.forklift_pockets) } else { 0.0 };
    let beside = clear.length - FORKLIFT_POCKET.width * pockets;
    let members = (beside / freight_box.floor_member.spacing).floor();
    places.push((ThermalBridge::FloorMember, Amount::Metres(clear.width * members)));
    places.push((ThermalBridge::ForkliftPocket, Amount::Metres(clear.width * pockets)));
    if has_recesses {
        let outside_room = freight_box.front_recess() + design.stack(Surface::FrontEnd).total();
        let tunnel = freight_box.gooseneck_tunnel - outside_room;
        places.push((ThermalBridge::GooseneckTunnel, Amount::Metres(tunnel)));
    }
    for opening in &openings {
        let metres = Amount::Metres(opening.jambs_and_head());
        places.push((ThermalBridge::OpeningFrame(opening.opening), metres));
    }
    for opening in &openings {
        let foot = match opening.opening {
            Opening::PersonnelDoor => ThermalBridge::DoorThreshold,
            Opening::Window => ThermalBridge::WindowSill,
        };
        places.push((foot, Amount::Metres(opening.foot())));
    }
    places.push((ThermalBridge::ThinFoam, Amount::Metres(design.thin_foam_length)));
    for end in End::ALL {
        places.push((ThermalBridge::TopCasting(end), Amount::Pieces(2.0)));
    }
    let studs: u32 = WALLS.iter().map(|&wall| frame_members(design, clear, wall)).sum();
    places.push((ThermalBridge::StudHead, Amount::Pieces(f64::from(studs))));
    let joists = f64::from(frame_members(design, clear, Surface::Ceiling));
    places.push((ThermalBridge::JoistEnd, Amount::Pieces(2.0 * joists)));
    for end in End::ALL {
        places.push((ThermalBridge::BottomCasting(end), Amount::Pieces(2.0)));
    }
    let exhausts = design.exhaust_count.min(design.damper_count);
    places.push((ThermalBridge::DamperSleeve, Amount::Pieces(design.damper_count - exhausts)));
    places.push((ThermalBridge::ExhaustSleeve, Amount::Pieces(exhausts)));
    places.push((ThermalBridge::ScrewThrough, Amount::Pieces(design.screws_through)));
    places.push((ThermalBridge::FloorDrain, Amount::Pieces(design.floor_drains)));
    places.retain(|(_, amount)| match amount {
        Amount::Metres(length) => *length > Length::ZERO,
        Amount::Pieces(count) => *count > 0.0,
    });
    places
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::design::CheckedDesign;
    use crate::envelope::Envelope;
    use crate::room::Room;

    fn amounts(checked: &CheckedDesign) -> Vec<(ThermalBridge, Amount)> {
        Envelope::of(checked, &Room::of(checked).clear).thermal_bridges
    }

    /// What is counted by the piece or by the metre as stated stands in the list once, as stated, and not at all where
    /// none was.
    #[test]
    fn what_is_stated_by_piece_or_metre_stands_once_as_stated() {
        let stated = [
            (ThermalBridge::ScrewThrough, Amount::Pieces(40.0)),
            (ThermalBridge::ThinFoam, Amount::Metres(Length::new(3.0))),
            (ThermalBridge::FloorDrain, Amount::Pieces(2.0)),
        ];
        let all_of = |list: &[(ThermalBridge, Amount)], wanted| -> Vec<Amount> {
            list.iter().filter(|(place, _)| *place == wanted).map(|&(_, amount)| amount).collect()
        };
        let without = amounts(&CheckedDesign::default());
        let design = Design {
            screws_through: 40.0,
            thin_foam_length: Length::new(3.0),
            floor_drains: 2.0,
            ..Design::default()
        };
        let with = amounts(&design.check().unwrap());
        for (place, amount) in stated {
            assert_eq!(all_of(&with, place), [amount], "{}", place.key());
            assert_eq!(all_of(&without, place), [], "{}", place.key());
        }
        assert_eq!(with.len(), without.len() + stated.len());
    }
}
