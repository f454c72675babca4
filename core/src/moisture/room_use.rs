//! What a room is used for, what that usually gives to its air, and what must be asked of others.

use super::emission::{MoistureLoad, MoistureRate, MoistureSource};
use crate::source::Source;

/// A use of the room.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum RoomUse {
    /// Dry goods, hardly anyone inside.
    Store,
    /// Two people at work.
    Workshop,
    /// Two people at desks.
    Office,
    /// Two people asleep.
    Sleeping,
    /// Washing, and drying in the room.
    LaundryAndDrying,
    /// Plants on racks.
    Growing,
    /// Hosed down daily.
    WashingDown,
    /// Dogs or like animals.
    Animals,
}

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

/// So many, so many hours a day.
const fn load(source: MoistureSource, count: f64, hours: f64) -> MoistureLoad {
    MoistureLoad::of_hours(source, count, hours)
}

impl RoomUse {
    /// Every use.
    pub const ALL: [Self; 8] = [
        Self::Store,
        Self::Workshop,
        Self::Office,
        Self::Sleeping,
        Self::LaundryAndDrying,
        Self::Growing,
        Self::WashingDown,
        Self::Animals,
    ];

    /// Stable name.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Store => "store",
            Self::Workshop => "workshop",
            Self::Office => "office",
            Self::Sleeping => "sleeping",
            Self::LaundryAndDrying => "laundry_and_drying",
            Self::Growing => "growing",
            Self::WashingDown => "washing_down",
            Self::Animals => "animals",
        }
    }

    /// What such a use usually has in a 20 ft box. Common practice, no source; the visitor's own
    /// numbers go before it.
    pub fn usual_loads(self) -> Vec<MoistureLoad> {
        use MoistureSource::*;
        match self {
            Self::Store => vec![],
            Self::Workshop => vec![load(PersonActive, 2.0, 8.0)],
            Self::Office => vec![load(PersonResting, 2.0, 8.0)],
            Self::Sleeping => vec![load(PersonAsleep, 2.0, 8.0)],
            Self::LaundryAndDrying => {
                vec![load(PersonActive, 1.0, 4.0), load(LaundryLoad, 3.0, 12.0)]
            }
            Self::Growing => {
                vec![load(PersonActive, 1.0, 2.0), load(WaterGivenToPlants, 10.0, 24.0)]
            }
            Self::WashingDown => vec![load(PersonActive, 1.0, 8.0), load(HoseDown, 1.0, 6.0)],
            // Six dogs of 25 kg and their floor.
            Self::Animals => vec![load(AnimalKilogram, 150.0, 24.0), load(MoppedFloor, 13.0, 6.0)],
        }
    }

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

/// All loads at the same time: the worst hour.
pub fn all_at_once(loads: &[MoistureLoad]) -> MoistureRate {
    loads.iter().map(MoistureLoad::while_active).sum()
}

/// All loads in the mean of a day.
pub fn in_the_mean_of_a_day(loads: &[MoistureLoad]) -> MoistureRate {
    loads.iter().map(MoistureLoad::daily_mean).sum()
}
