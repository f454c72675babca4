//! Refusals: why a year cannot be reckoned.

use crate::units::{Angle, Temperature};

/// A part of the network of the room.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum NetworkPart {
    /// H of everything opaque, W/K.
    Opaque,
    /// H of windows and doors, W/K.
    Openings,
    /// H of the air that leaks, W/K.
    Leaks,
    /// Heat capacity inside the foam, J/K.
    Capacity,
    /// Opaque inside area, m².
    OpaqueArea,
    /// H from the surfaces to the middle of the boards, W/K.
    MassToSurface,
    /// Effective mass area, m².
    MassArea,
    /// Inside area, openings and all, m².
    TotalArea,
}

/// Why a design, its surroundings and the choices about use make no year.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub enum YearModelError {
    /// A part of the network is not a finite number, is below nothing, or is nothing where something
    /// must be there.
    NoNetwork {
        /// Which part.
        part: NetworkPart,
        /// What it is, SI.
        given: f64,
    },
    /// The sun was reckoned for a box that faces otherwise than chosen.
    FacesOtherwise {
        /// The direction of the surroundings.
        surroundings: Angle,
        /// The direction chosen.
        chosen: Angle,
    },
    /// The choices were checked beside another set-point than the design's room temperature.
    CheckedForAnotherSetPoint {
        /// The set-point they were checked with.
        checked: Temperature,
        /// The design's.
        design: Temperature,
    },
}
