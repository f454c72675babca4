//! Refusals: why a network of a room cannot be.

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
    /// Stable name.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Opaque => "opaque",
            Self::Openings => "openings",
            Self::Leaks => "leaks",
            Self::Capacity => "capacity",
            Self::OpaqueArea => "opaque_area",
            Self::MassToSurface => "mass_to_surface",
            Self::MassArea => "mass_area",
            Self::TotalArea => "total_area",
        }
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

impl core::fmt::Display for RoomNetworkError {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        let allowed = match self.part {
            NetworkPart::Openings | NetworkPart::Leaks => "0 or more",
            _ => "more than 0",
        };
        write!(f, "{} of the room's network is {}, not {allowed}", self.part.key(), self.given)
    }
}

impl std::error::Error for RoomNetworkError {}
