//! What mends a cold spot.

use super::spot::SpotPlace;
use crate::design::Surface;
use crate::envelope::{Opening, ThermalBridge};

/// The choice that warms a place. Places of one remedy are mended together.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Remedy {
    /// Cover the castings, or build out or drop a surface past them.
    CoverCastings,
    /// Hold the studs off the steel.
    HoldStudsOff,
    /// Hold the ceiling joists off the roof.
    HoldJoistsOff,
    /// A thicker pad between the studs' brackets and the rail.
    PadBrackets,
    /// Foam under, round or over the floor.
    InsulateFloor,
    /// Foam over the steel frames of openings.
    PackOpeningFrames,
    /// Insulated dampers.
    InsulateDampers,
    /// More foam on walls and ceiling.
    DeepenFoam,
    /// A better door.
    BetterDoor,
    /// Better windows.
    BetterWindows,
}

impl Remedy {
    /// Stable name.
    pub const fn key(self) -> &'static str {
        match self {
            Self::CoverCastings => "cover_castings",
            Self::HoldStudsOff => "hold_studs_off",
            Self::HoldJoistsOff => "hold_joists_off",
            Self::PadBrackets => "pad_brackets",
            Self::InsulateFloor => "insulate_floor",
            Self::PackOpeningFrames => "pack_opening_frames",
            Self::InsulateDampers => "insulate_dampers",
            Self::DeepenFoam => "deepen_foam",
            Self::BetterDoor => "better_door",
            Self::BetterWindows => "better_windows",
        }
    }

    /// What mends a place.
    pub const fn of(place: SpotPlace) -> Self {
        match place {
            SpotPlace::Detail(detail) => match detail {
                ThermalBridge::TopCasting(_) => Self::CoverCastings,
                ThermalBridge::FrameLine(Surface::Ceiling) => Self::HoldJoistsOff,
                ThermalBridge::FrameLine(Surface::Floor)
                | ThermalBridge::FloorMember
                | ThermalBridge::FloorEdge(_)
                | ThermalBridge::BottomCasting(_) => Self::InsulateFloor,
                ThermalBridge::FrameLine(_) => Self::HoldStudsOff,
                ThermalBridge::StudHead => Self::PadBrackets,
                ThermalBridge::Waves(_)
                | ThermalBridge::RoofEdge(_)
                | ThermalBridge::CornerPost(_) => Self::DeepenFoam,
                ThermalBridge::OpeningFrame(Opening::PersonnelDoor | Opening::Window) => {
                    Self::PackOpeningFrames
                }
                ThermalBridge::DamperSleeve | ThermalBridge::ExhaustSleeve => Self::InsulateDampers,
            },
            SpotPlace::Plain(Surface::Floor) => Self::InsulateFloor,
            SpotPlace::Plain(_) => Self::DeepenFoam,
            SpotPlace::PersonnelDoor => Self::BetterDoor,
            SpotPlace::Windows => Self::BetterWindows,
        }
    }
}
