//! Trapezoidal corrugation of wall and roof sheet.

use crate::source::Source;
use crate::units::Length;

/// One wave of a trapezoidal sheet, seen along the flutes.
///
/// The *inner* flat is the crest towards the room and lies in the datum plane; the *outer* flat
/// lies one depth further out, so that foam flush over the crests also fills the troughs.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Corrugation {
    /// From the inner flat to the outer flat, square to the wall.
    pub depth: Length,
    /// Width of the outer flat.
    pub outer_flat: Length,
    /// Width of the inner flat.
    pub inner_flat: Length,
    /// Width that one slope takes along the wall.
    pub slope: Length,
    /// Sheet thickness.
    pub thickness: Length,
    /// Where the profile comes from.
    pub source: Source,
}

impl Corrugation {
    /// Width of a whole wave: both flats and two slopes.
    pub fn pitch(&self) -> Length {
        self.outer_flat + self.inner_flat + self.slope * 2.0
    }

    /// Developed length of the sheet over its plan length, ≥ 1.
    ///
    /// (outer flat + inner flat + 2 √(slope² + depth²)) / pitch.
    pub fn developed_ratio(&self) -> f64 {
        let (slope, depth) = (self.slope.value(), self.depth.value());
        let slant = (slope * slope + depth * depth).sqrt();
        (self.outer_flat.value() + self.inner_flat.value() + 2.0 * slant) / self.pitch().value()
    }

    /// Mean depth of the troughs behind the inner plane: the thickness of foam that would fill
    /// them, spread evenly.
    ///
    /// depth · (outer flat + slope) / pitch, since each slope fills half its width.
    pub fn mean_trough(&self) -> Length {
        self.depth * ((self.outer_flat + self.slope) / self.pitch())
    }
}

/// Side wall sheet: box makers' specification sheets give depth 36, outer flat 72, slope 68; the
/// inner flat of 70 closes the stated pitch of 278 mm.
pub const SIDE_WALL: Corrugation = Corrugation {
    depth: Length::mm(36.0),
    outer_flat: Length::mm(72.0),
    inner_flat: Length::mm(70.0),
    slope: Length::mm(68.0),
    thickness: Length::mm(1.6),
    source: Source::MakerSheet,
};

/// Front end wall sheet: deeper and steeper than the side walls, pitch 250 mm.
pub const FRONT_END: Corrugation = Corrugation {
    depth: Length::mm(45.6),
    outer_flat: Length::mm(110.0),
    inner_flat: Length::mm(104.0),
    slope: Length::mm(18.0),
    thickness: Length::mm(2.0),
    source: Source::MakerSheet,
};

/// Roof sheet, pitch 209 mm. Recalled; no specification sheet seen.
pub const ROOF: Corrugation = Corrugation {
    depth: Length::mm(20.0),
    outer_flat: Length::mm(91.0),
    inner_flat: Length::mm(91.0),
    slope: Length::mm(13.5),
    thickness: Length::mm(2.0),
    source: Source::FromMemory,
};
