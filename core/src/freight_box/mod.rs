//! The steel freight box as it is delivered: standard sizes, corrugated sheet, corner fittings,
//! rails and floor.
//!
//! The datum of every inside dimension is the innermost steel plane: the crests of the
//! corrugation that point into the room, the inner plane of the roof sheet, the top of the floor.

mod corrugation;
mod size;

pub use corrugation::{Corrugation, FRONT_END, ROOF, SIDE_WALL};
pub use size::{
    BoxSize, CORNER_FITTING_HEIGHT, CORNER_FITTING_LENGTH, CORNER_FITTING_WIDTH,
    DOOR_HEADER_THICKNESS, FORKLIFT_POCKET, GOOSENECK_TUNNEL,
};

use crate::units::{Area, Length, Mass, Volume};

/// Length, width and height of a box or room.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Dimensions {
    /// Along the box, from the front end to the cargo doors.
    pub length: Length,
    /// Across the box.
    pub width: Length,
    /// Upwards.
    pub height: Length,
}

impl Dimensions {
    /// From millimetres.
    pub const fn mm(length: f64, width: f64, height: f64) -> Self {
        Self { length: Length::mm(length), width: Length::mm(width), height: Length::mm(height) }
    }

    /// length × width.
    pub fn floor_area(&self) -> Area {
        self.length * self.width
    }

    /// length × width × height.
    pub fn volume(&self) -> Volume {
        self.length * self.width * self.height
    }
}

/// How far a top corner fitting stands past the datum planes into the room.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CastingIntrusion {
    /// Past the front end wall, along the box.
    pub front_length: Length,
    /// Past the inside plane of the cargo doors, along the box.
    pub door_length: Length,
    /// Past a side wall.
    pub width: Length,
    /// Below the roof's inner plane.
    pub height: Length,
}

/// A hollow or open steel section that runs along an edge.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Rail {
    /// Across the wall.
    pub width: Length,
    /// Up the wall.
    pub height: Length,
    /// Wall thickness of the section.
    pub thickness: Length,
}

/// The channel along the bottom of the walls.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BottomRail {
    /// From the top of the floor down.
    pub height: Length,
    /// Width of the lower flange, which points inwards.
    pub lower_flange: Length,
    /// Sheet thickness.
    pub thickness: Length,
}

/// The C-shaped steel members under the floor.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FloorMember {
    /// Depth of the web.
    pub depth: Length,
    /// Width of the flange.
    pub flange: Length,
    /// Sheet thickness.
    pub thickness: Length,
    /// From one member to the next.
    pub spacing: Length,
}

/// A place where the floor has less depth, for something to reach under it: a plate closes it off from above.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FloorRecess {
    /// Between its sides.
    pub width: Length,
    /// From the plywood's underside to its plate.
    pub below_plywood: Length,
    /// Thickness of the plate.
    pub plate: Length,
}

/// A freight box: nominal dimensions of one standard size, any inside dimension replaced by a
/// measured one where the survey has it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FreightBox {
    /// Which standard size.
    pub size: BoxSize,
    /// Outside, corner fitting to corner fitting.
    pub external: Dimensions,
    /// Inside, between the innermost steel planes.
    pub internal: Dimensions,
    /// Clear width of the cargo door opening.
    pub door_opening_width: Length,
    /// Clear height of the cargo door opening, from the floor.
    pub door_opening_height: Length,
    /// Mass of the empty box.
    pub tare: Mass,
    /// Side walls.
    pub side_corrugation: Corrugation,
    /// Front end wall, opposite the cargo doors.
    pub front_corrugation: Corrugation,
    /// Roof.
    pub roof_corrugation: Corrugation,
    /// What the top corner fittings leave standing in the room.
    pub casting: CastingIntrusion,
    /// Along the top of the side walls.
    pub top_rail: Rail,
    /// How far rails and posts stay inside the outer faces of the corner fittings.
    pub rail_clearance: Length,
    /// Steel thickness of the corner posts.
    pub corner_post_thickness: Length,
    /// Along the bottom of all walls: a channel whose web carries on the wall sheet downwards.
    pub bottom_rail: BottomRail,
    /// Thickness of the plywood floor.
    pub floor_plywood: Length,
    /// Under the floor.
    pub floor_member: FloorMember,
    /// Forklift pockets ([`FORKLIFT_POCKET`]), which go right across the box.
    pub forklift_pockets: u32,
    /// Length of the gooseneck tunnel ([`GOOSENECK_TUNNEL`]) from the outside of the front end; 0 without one.
    pub gooseneck_tunnel: Length,
}

impl FreightBox {
    /// From the outer face of the corner fittings to the front end wall's inner crests.
    pub fn front_recess(&self) -> Length {
        CORNER_FITTING_LENGTH - self.size.nominal().casting.front_length
    }

    /// From the outer face of the corner fittings to the inside plane of the cargo doors.
    pub fn door_recess(&self) -> Length {
        CORNER_FITTING_LENGTH - self.size.nominal().casting.door_length
    }

    /// From the outer face of the corner fittings to the side walls' inner crests.
    pub fn side_recess(&self) -> Length {
        CORNER_FITTING_WIDTH - self.size.nominal().casting.width
    }

    /// From the top of the corner fittings to the roof's inner plane.
    pub fn roof_recess(&self) -> Length {
        CORNER_FITTING_HEIGHT - self.size.nominal().casting.height
    }

    /// From the floor's top to the underside of the corner fittings the box stands on.
    pub fn floor_height(&self) -> Length {
        let nominal = self.size.nominal();
        nominal.external.height - nominal.internal.height - self.roof_recess()
    }

    /// How far the header over the cargo doors hangs below the roof's inner plane.
    pub fn header_drop(&self) -> Length {
        (self.internal.height - self.door_opening_height).max(Length::ZERO)
    }
}
