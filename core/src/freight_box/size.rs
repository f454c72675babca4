//! The standard sizes.

use super::{BottomRail, CastingIntrusion, Dimensions, FloorMember, FloorRecess, FreightBox, Rail};
use super::{FRONT_END, ROOF, SIDE_WALL};
use crate::units::{Length, Mass};

/// Length of an ISO 1161 corner fitting along the box, mm.
pub const CORNER_FITTING_LENGTH: Length = Length::mm(178.0);
/// Width of an ISO 1161 corner fitting across the box, mm.
pub const CORNER_FITTING_WIDTH: Length = Length::mm(162.0);
/// Height of an ISO 1161 corner fitting, mm.
pub const CORNER_FITTING_HEIGHT: Length = Length::mm(118.0);

/// From the outside of the box to the inner crests of the front end wall.
///
/// Derived from makers' inside and outside lengths; take ± 10 mm until measured.
const FRONT_RECESS: Length = Length::mm(62.0);

/// The top of the roof sheet lies this far below the top of the corner fittings (makers' sheets).
const ROOF_BELOW_FITTING: Length = Length::mm(6.0);

/// Rails and posts stay this far inside the outer faces of the corner fittings (makers' sheets).
const RAIL_CLEARANCE: Length = Length::mm(3.0);

/// A forklift pocket, 360 mm wide and 115 mm high (ISO 1496-1 annex on fork-lift pockets, from memory) within members
/// of 122 mm, under a plate of 3 mm (makers' sheets, from memory): 122 − 115 − 3 = 4 mm are left above it.
pub const FORKLIFT_POCKET: FloorRecess = FloorRecess {
    width: Length::mm(360.0),
    below_plywood: Length::mm(4.0),
    plate: Length::mm(3.0),
};

/// The gooseneck tunnel, 1029 mm wide and 120 mm high over the underside of the corner fittings (ISO 1496-1 annex on
/// gooseneck tunnels, from memory), under a plate of 4 mm (makers' sheets, from memory). The top of the floor is 170 mm
/// over that underside: 170 − 28 of plywood − 120 − 4 = 18 mm are left above it.
pub const GOOSENECK_TUNNEL: FloorRecess = FloorRecess {
    width: Length::mm(1029.0),
    below_plywood: Length::mm(18.0),
    plate: Length::mm(4.0),
};

/// Length of that tunnel from the outside of the front end, from 3150 to 3500 mm (the same annex, from memory).
const TUNNEL_LENGTH: Length = Length::mm(3150.0);
/// Steel of the header over the cargo doors, a hollow beam. From memory.
pub const DOOR_HEADER_THICKNESS: Length = Length::mm(4.0);

/// The standard sizes of general-purpose freight box.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Default)]
pub enum BoxSize {
    /// 10 ft long, 8 ft 6 in high (ISO 668 length D).
    TenStandard,
    /// 20 ft long, 8 ft 6 in high (ISO 668 1CC).
    #[default]
    TwentyStandard,
    /// 20 ft long, 9 ft 6 in high (ISO 668 1CCC).
    TwentyHighCube,
    /// 40 ft long, 8 ft 6 in high (ISO 668 1AA).
    FortyStandard,
    /// 40 ft long, 9 ft 6 in high (ISO 668 1AAA).
    FortyHighCube,
    /// 45 ft long, 9 ft 6 in high (ISO 668 1EEE).
    FortyFiveHighCube,
}

impl BoxSize {
    /// Every size, shortest first.
    pub const ALL: [Self; 6] = [
        Self::TenStandard,
        Self::TwentyStandard,
        Self::TwentyHighCube,
        Self::FortyStandard,
        Self::FortyHighCube,
        Self::FortyFiveHighCube,
    ];

    /// Stable name in links and files.
    pub const fn key(self) -> &'static str {
        match self {
            Self::TenStandard => "10_standard",
            Self::TwentyStandard => "20_standard",
            Self::TwentyHighCube => "20_high_cube",
            Self::FortyStandard => "40_standard",
            Self::FortyHighCube => "40_high_cube",
            Self::FortyFiveHighCube => "45_high_cube",
        }
    }

    /// The size of this name.
    pub fn from_key(key: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|size| size.key() == key)
    }

    /// The box as standards and makers' sheets give it.
    ///
    /// Outside: ISO 668 table of lengths, widths and heights. Inside and doors: makers'
    /// specification sheets of the common 20 and 40 ft boxes; the 10 and 45 ft lengths keep the
    /// same 160 mm between outside and inside. Pockets on 10 and 20 ft boxes, a tunnel on longer ones (ISO 1496-1, from
    /// memory; makers' sheets).
    /// Floor members: makers' sheets. Rails, posts and the
    /// tare of the 10 and 45 ft boxes: from memory.
    pub fn nominal(self) -> FreightBox {
        const STANDARD_HEIGHT: f64 = 2591.0;
        const HIGH_CUBE_HEIGHT: f64 = 2896.0;
        let (external_length, external_height, tare) = match self {
            Self::TenStandard => (2991.0, STANDARD_HEIGHT, 1300.0),
            Self::TwentyStandard => (6058.0, STANDARD_HEIGHT, 2250.0),
            Self::TwentyHighCube => (6058.0, HIGH_CUBE_HEIGHT, 2350.0),
            Self::FortyStandard => (12192.0, STANDARD_HEIGHT, 3750.0),
            Self::FortyHighCube => (12192.0, HIGH_CUBE_HEIGHT, 3950.0),
            Self::FortyFiveHighCube => (13716.0, HIGH_CUBE_HEIGHT, 4800.0),
        };
        let (internal_height, door_height) =
            if external_height == STANDARD_HEIGHT { (2393.0, 2280.0) } else { (2698.0, 2585.0) };
        let external = Dimensions::mm(external_length, 2438.0, external_height);
        let internal = Dimensions::mm(external_length - 160.0, 2352.0, internal_height);
        let door_recess = external.length - internal.length - FRONT_RECESS;
        let side_recess = (external.width - internal.width) / 2.0;
        let roof_recess = ROOF_BELOW_FITTING + ROOF.depth + ROOF.thickness;
        FreightBox {
            size: self,
            external,
            internal,
            door_opening_width: Length::mm(2340.0),
            door_opening_height: Length::mm(door_height),
            tare: Mass::new(tare),
            side_corrugation: SIDE_WALL,
            front_corrugation: FRONT_END,
            roof_corrugation: ROOF,
            casting: CastingIntrusion {
                front_length: CORNER_FITTING_LENGTH - FRONT_RECESS,
                door_length: CORNER_FITTING_LENGTH - door_recess,
                width: CORNER_FITTING_WIDTH - side_recess,
                height: CORNER_FITTING_HEIGHT - roof_recess,
            },
            top_rail: Rail {
                width: Length::mm(60.0),
                height: Length::mm(60.0),
                thickness: Length::mm(3.0),
            },
            rail_clearance: RAIL_CLEARANCE,
            corner_post_thickness: Length::mm(6.0),
            bottom_rail: BottomRail {
                height: Length::mm(162.0),
                lower_flange: Length::mm(30.0),
                thickness: Length::mm(4.5),
            },
            floor_plywood: Length::mm(28.0),
            floor_member: FloorMember {
                depth: Length::mm(122.0),
                flange: Length::mm(45.0),
                thickness: Length::mm(4.0),
                spacing: Length::mm(305.0),
            },
            forklift_pockets: if external_length < 12_000.0 { 2 } else { 0 },
            gooseneck_tunnel: if external_length < 12_000.0 { Length::ZERO } else { TUNNEL_LENGTH },
        }
    }
}
