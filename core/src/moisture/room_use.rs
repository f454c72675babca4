//! What a room is used for, what that usually gives to its air, and what must be asked of others.

use super::emission::{KEROSENE_DENSITY, MoistureLoad, MoistureRate, MoistureSource};
use super::error::MoistureError;
use crate::design::{Design, RoomUse};
use crate::source::Source;
use crate::units::Time;

/// A matter for others to decide, shown as something to ask about.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Deferral {
    /// A use that holds the room humid in winter calls for an engineered design.
    EngineeredDesign,
    /// Welfare rules for the animals kept.
    AnimalWelfare,
    /// Where the water goes.
    Drainage,
    /// Galvanised or stainless metal, sealed edges.
    Corrosion,
    /// Outdoor air that runs whether or not it is warm.
    ContinuousAir,
}

impl Deferral {
    /// Stable name.
    pub const fn key(self) -> &'static str {
        match self {
            Self::EngineeredDesign => "engineered_design_for_humid_use",
            Self::AnimalWelfare => "animal_welfare_rules",
            Self::Drainage => "drainage",
            Self::Corrosion => "corrosion",
            Self::ContinuousAir => "continuous_air",
        }
    }

    /// Where it comes from.
    pub const fn source(self) -> Source {
        match self {
            // Buildings held above 35 % or 60 % in the heating season, by climate; the sentence
            // is read in the explanation of an earlier edition (9.25.1).
            Self::EngineeredDesign => Source::NationalBuildingCodeOfCanada2020,
            Self::AnimalWelfare | Self::Drainage | Self::Corrosion | Self::ContinuousAir => {
                Source::CommonPractice
            }
        }
    }
}

impl RoomUse {
    /// What must be asked of others; nothing for a dry use.
    pub const fn deferrals(self) -> &'static [Deferral] {
        match self {
            Self::Store | Self::Workshop | Self::Office | Self::Sleeping => &[],
            Self::LaundryAndDrying => &[Deferral::EngineeredDesign, Deferral::Drainage],
            Self::Growing | Self::WashingDown => {
                &[Deferral::EngineeredDesign, Deferral::Drainage, Deferral::Corrosion]
            }
            Self::Animals => &[
                Deferral::EngineeredDesign,
                Deferral::AnimalWelfare,
                Deferral::ContinuousAir,
                Deferral::Drainage,
                Deferral::Corrosion,
            ],
        }
    }

    /// Whether the use itself wets the room.
    pub const fn is_wet(self) -> bool {
        !self.deferrals().is_empty()
    }
}

/// How long a floor takes to dry once it is mopped or hosed down. Common practice, no source.
const FLOOR_DRIES_IN: Time = Time::hours(6.0);

/// How long it takes until the water of a day's showers has come to the air. Common practice, no
/// source: towels and walls hold the last of it.
const SHOWER_DRIES_IN: Time = Time::hours(2.0);

/// What gives moisture to the room's air in a design, in the order of its choices. People are at
/// work, at desks or asleep as the use says.
///
/// # Errors
/// As [`MoistureLoad::new`]; none for a checked design.
pub fn loads(design: &Design) -> Result<Vec<MoistureLoad>, MoistureError> {
    let person = match design.room_use {
        RoomUse::Office => MoistureSource::PersonResting,
        RoomUse::Sleeping => MoistureSource::PersonAsleep,
        _ => MoistureSource::PersonActive,
    };
    let all_day = Time::days(1.0);
    let kerosene = design.unvented_kerosene / KEROSENE_DENSITY;
    [
        (person, design.person_count, design.person_time),
        (MoistureSource::LaundryLoad, design.laundry_loads, design.laundry_time),
        (MoistureSource::Shower, design.showers, SHOWER_DRIES_IN),
        (MoistureSource::WaterGivenToPlants, design.plant_water.value(), all_day),
        (MoistureSource::AnimalKilogram, design.animal_mass.value(), all_day),
        (MoistureSource::MoppedFloor, design.mopped_floor.value(), FLOOR_DRIES_IN),
        (MoistureSource::HoseDown, design.hose_downs, FLOOR_DRIES_IN),
        (MoistureSource::UnventedPropane, design.unvented_propane.value(), design.person_time),
        (MoistureSource::UnventedKerosene, kerosene.as_litres(), design.person_time),
    ]
    .into_iter()
    .filter(|&(_, count, _)| count > 0.0)
    .map(|(source, count, active)| MoistureLoad::new(source, count, active))
    .collect()
}

/// All loads at the same time: the worst hour.
pub fn all_at_once(loads: &[MoistureLoad]) -> MoistureRate {
    loads.iter().map(MoistureLoad::while_active).sum()
}

/// All loads in the mean of a day.
pub fn in_the_mean_of_a_day(loads: &[MoistureLoad]) -> MoistureRate {
    loads.iter().map(MoistureLoad::daily_mean).sum()
}
