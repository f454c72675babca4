//! Refusals: why a network of a room cannot be.

use core::fmt;

use crate::bounds::{Figure, write_words};

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

impl NetworkPart {
    /// Stable name, and the unit of what is given.
    const fn key_and_unit(self) -> (&'static str, &'static str) {
        match self {
            Self::Opaque => ("opaque", "W/K"),
            Self::Openings => ("openings", "W/K"),
            Self::Leaks => ("leaks", "W/K"),
            Self::Capacity => ("capacity", "J/K"),
            Self::OpaqueArea => ("opaque_area", "m²"),
            Self::MassToSurface => ("mass_to_surface", "W/K"),
            Self::MassArea => ("mass_area", "m²"),
            Self::TotalArea => ("total_area", "m²"),
        }
    }

    /// Stable name.
    pub const fn key(self) -> &'static str {
        self.key_and_unit().0
    }
}

/// A part of the network is not a finite number, is below nothing, or is nothing where something must be
/// there.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RoomNetworkError {
    /// Which part.
    pub part: NetworkPart,
    /// What it is, SI.
    pub given: f64,
}

impl RoomNetworkError {
    /// Stable name of what is wrong.
    pub const fn code(&self) -> &'static str {
        "no_network"
    }
}

impl fmt::Display for RoomNetworkError {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        let (key, unit) = self.part.key_and_unit();
        write_words(out, key)?;
        write!(out, " of {} {unit} must be finite and above 0", Figure(self.given))?;
        let may_be_nothing = matches!(self.part, NetworkPart::Openings | NetworkPart::Leaks);
        out.write_str(if may_be_nothing { ", or 0" } else { "" })
    }
}

impl core::error::Error for RoomNetworkError {}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn it_says_what_was_given_and_what_is_allowed() {
        let error = RoomNetworkError { part: NetworkPart::Leaks, given: -1.0 };
        assert_eq!(error.to_string(), "leaks of -1 W/K must be finite and above 0, or 0");
    }
}
