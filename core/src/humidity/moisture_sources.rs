//! What a room is used for, what that usually gives to its air, and what must be asked of others.

use crate::design::{Design, RoomUse};
use crate::moisture::{
    KEROSENE_DENSITY, MoistureError, MoistureLoad, MoistureRate, MoistureSource,
};
use crate::source::Source;
use crate::units::{MassFlow, Time};

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

/// When a source gives off its moisture.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Timing {
    /// Day and night, every day.
    Always,
    /// As long as the room is used.
    WhileUsed,
    /// From the beginning of each day's use until its water has come to the air.
    FromStartOfUse,
}

impl Timing {
    /// Stable name.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Always => "always",
            Self::WhileUsed => "while_used",
            Self::FromStartOfUse => "from_start_of_use",
        }
    }
}

/// A source of a design: how much, when, and whose heat turns it to vapour.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SourceOfRoom {
    /// What, how much of it, and how long on a day of use.
    pub load: MoistureLoad,
    /// When.
    pub timing: Timing,
    /// Part of the days on which it gives off anything.
    pub share_of_days: f64,
    /// Whether the water evaporates with heat of the room's air, as from laundry, floors and plants;
    /// breath, showers and flames bring theirs along.
    pub takes_heat_of_the_room: bool,
}

impl SourceOfRoom {
    /// The flow in the mean of a week.
    pub fn weekly_mean(&self) -> MoistureRate {
        self.load.daily_mean() * self.share_of_days
    }
}

/// What gives moisture to the room's air in a design, in the order of its choices. People are at
/// work, at desks or asleep as the use says.
///
/// # Errors
/// As [`MoistureLoad::new`]; none for a checked design.
pub fn sources(design: &Design) -> Result<Vec<SourceOfRoom>, MoistureError> {
    use MoistureSource as M;
    use Timing::{Always, FromStartOfUse, WhileUsed};
    let person = match design.room_use {
        RoomUse::Office => M::PersonResting,
        RoomUse::Sleeping => M::PersonAsleep,
        _ => M::PersonActive,
    };
    let used = design.use_time();
    let all_day = Time::days(1.0);
    let kerosene = design.unvented_kerosene / KEROSENE_DENSITY;
    [
        (person, design.person_count, used, WhileUsed, false),
        (M::LaundryLoad, design.laundry_loads, design.laundry_time, FromStartOfUse, true),
        (M::Shower, design.showers, SHOWER_DRIES_IN, FromStartOfUse, false),
        (M::WaterGivenToPlants, design.plant_water.value(), all_day, Always, true),
        (M::AnimalKilogram, design.animal_mass.value(), all_day, Always, false),
        (M::MoppedFloor, design.mopped_floor.value(), FLOOR_DRIES_IN, FromStartOfUse, true),
        (M::HoseDown, design.hose_downs, FLOOR_DRIES_IN, FromStartOfUse, true),
        (M::UnventedPropane, design.unvented_propane.value(), used, WhileUsed, false),
        (M::UnventedKerosene, kerosene.as_litres(), used, WhileUsed, false),
    ]
    .into_iter()
    .filter(|&(_, count, ..)| count > 0.0)
    .map(|(source, count, active, timing, takes_heat_of_the_room)| {
        let load = MoistureLoad::new(source, count, active)?;
        let share_of_days = if timing == Always { 1.0 } else { design.share_of_days() };
        Ok(SourceOfRoom { load, timing, share_of_days, takes_heat_of_the_room })
    })
    .collect()
}

/// What gives moisture to the room's air, put together.
#[derive(Clone, Debug, PartialEq)]
pub struct Sources {
    /// Each of them.
    pub each: Vec<SourceOfRoom>,
    /// All at the same time: the busy hours.
    pub busy: MoistureRate,
    /// In the mean of a day of use.
    pub day: MoistureRate,
    /// In the mean of a week.
    pub mean: MoistureRate,
    /// Of the busy hours, what evaporates with heat of the room's air.
    pub busy_drying: MassFlow,
}

impl Sources {
    /// Of a design.
    ///
    /// # Errors
    /// As [`sources`].
    pub fn of(design: &Design) -> Result<Self, MoistureError> {
        let each = sources(design)?;
        let drying = each.iter().filter(|source| source.takes_heat_of_the_room);
        Ok(Self {
            busy: each.iter().map(|source| source.load.while_active()).sum(),
            day: each.iter().map(|source| source.load.daily_mean()).sum(),
            mean: each.iter().map(SourceOfRoom::weekly_mean).sum(),
            busy_drying: drying.map(|source| source.load.while_active().typical).sum(),
            each,
        })
    }
}
