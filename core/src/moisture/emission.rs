//! What gives moisture to the room's air, and how much.

use super::error::{MoistureError, MoistureQuantity};
use crate::bounds::BoundedQuantity;
use crate::source::Source;
use crate::units::{Density, Mass, MassFlow, Time};

/// A flow of moisture as it is known: the usual, and from where to where it may be.
#[derive(Clone, Copy, Debug, PartialEq, Default)]
pub struct MoistureRate {
    /// The least.
    pub least: MassFlow,
    /// The usual.
    pub typical: MassFlow,
    /// The most.
    pub most: MassFlow,
}

impl core::iter::Sum for MoistureRate {
    fn sum<I: Iterator<Item = Self>>(rates: I) -> Self {
        rates.fold(Self::default(), |total, rate| Self {
            least: total.least + rate.least,
            typical: total.typical + rate.typical,
            most: total.most + rate.most,
        })
    }
}

impl core::ops::Mul<f64> for MoistureRate {
    type Output = Self;
    fn mul(self, factor: f64) -> Self {
        Self {
            least: self.least * factor,
            typical: self.typical * factor,
            most: self.most * factor,
        }
    }
}

/// What one unit of a source gives off.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Emission {
    /// As long as it is there: least, usual, most.
    WhileThere([MassFlow; 3]),
    /// Each time, however long it takes: least, usual, most.
    EachTime([Mass; 3]),
}

/// Something that gives off moisture. One unit of it is what its name says.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum MoistureSource {
    /// A person who sits.
    PersonResting,
    /// A person at ordinary activity.
    PersonActive,
    /// A person at hard work.
    PersonAtHardWork,
    /// A person asleep.
    PersonAsleep,
    /// A washer load of laundry dried in the room.
    LaundryLoad,
    /// A five-minute shower, towels left out.
    Shower,
    /// A potted plant.
    PottedPlant,
    /// A kilogram of water given to plants: all of it comes to the air.
    WaterGivenToPlants,
    /// A kilogram of dog or like animal.
    AnimalKilogram,
    /// A square metre of floor mopped.
    MoppedFloor,
    /// Hosing the room down once.
    HoseDown,
    /// A kilogram of propane burnt without a flue.
    UnventedPropane,
    /// A litre of kerosene burnt without a flue.
    UnventedKerosene,
}

/// Density of kerosene at 15 °C, 0.81 kg/L, amid the 0.775 to 0.840 of ASTM D1655. From memory.
pub const KEROSENE_DENSITY: Density = Density::new(810.0);

/// A US liquid pint, 28.875 cubic inches, of water of 1000 kg/m³, kg.
const PINT: f64 = 0.473_176_473;
/// Square metres in a square foot.
const SQUARE_FOOT: f64 = 0.3048 * 0.3048;

const fn grams_per_hour(least: f64, typical: f64, most: f64) -> Emission {
    Emission::WhileThere([
        MassFlow::grams_per_hour(least),
        MassFlow::grams_per_hour(typical),
        MassFlow::grams_per_hour(most),
    ])
}

const fn kilograms(least: f64, typical: f64, most: f64) -> Emission {
    Emission::EachTime([Mass::new(least), Mass::new(typical), Mass::new(most)])
}

impl MoistureSource {
    /// Every source.
    pub const ALL: [Self; 13] = [
        Self::PersonResting,
        Self::PersonActive,
        Self::PersonAtHardWork,
        Self::PersonAsleep,
        Self::LaundryLoad,
        Self::Shower,
        Self::PottedPlant,
        Self::WaterGivenToPlants,
        Self::AnimalKilogram,
        Self::MoppedFloor,
        Self::HoseDown,
        Self::UnventedPropane,
        Self::UnventedKerosene,
    ];

    /// Stable name.
    pub const fn key(self) -> &'static str {
        match self {
            Self::PersonResting => "person_resting",
            Self::PersonActive => "person_active",
            Self::PersonAtHardWork => "person_at_hard_work",
            Self::PersonAsleep => "person_asleep",
            Self::LaundryLoad => "laundry_load",
            Self::Shower => "shower",
            Self::PottedPlant => "potted_plant",
            Self::WaterGivenToPlants => "water_given_to_plants_kg",
            Self::AnimalKilogram => "animal_kg",
            Self::MoppedFloor => "mopped_floor_m2",
            Self::HoseDown => "hose_down",
            Self::UnventedPropane => "unvented_propane_kg",
            Self::UnventedKerosene => "unvented_kerosene_l",
        }
    }

    /// What one unit gives off, least, usual and most; the usual of a published range is its
    /// middle unless the source names one. Measured values tend to be lower than those of the older
    /// tables (Zemitis, Borodinecs and Frolova, Energy and Buildings 127, 2016).
    pub const fn emission(self) -> Emission {
        match self {
            Self::PersonResting => grams_per_hour(40.0, 50.0, 60.0),
            Self::PersonActive => grams_per_hour(60.0, 90.0, 120.0),
            Self::PersonAtHardWork => grams_per_hour(120.0, 160.0, 200.0),
            // The source names 50 only; the range is that of a person who sits.
            Self::PersonAsleep => grams_per_hour(40.0, 50.0, 60.0),
            // 4.7 to 6.2 US pints.
            Self::LaundryLoad => kilograms(4.7 * PINT, 5.45 * PINT, 6.2 * PINT),
            // Half a US pint; the other table's 2500 g/h gives 0.21 kg in five minutes.
            Self::Shower => kilograms(2.5 / 12.0, 0.5 * PINT, 0.52 * PINT),
            Self::PottedPlant => grams_per_hour(7.0, 11.0, 15.0),
            Self::WaterGivenToPlants => kilograms(1.0, 1.0, 1.0),
            // One US pint a day for 50 lb; the range is a half more or less.
            Self::AnimalKilogram => grams_per_hour(0.43, 0.87, 1.30),
            // 0.03 US pints a square foot; the range is a third more or less.
            Self::MoppedFloor => {
                let typical = 0.03 * PINT / SQUARE_FOOT;
                kilograms(typical * 0.67, typical, typical * 1.33)
            }
            // 5 to 15 litres wetted, half of it drained.
            Self::HoseDown => kilograms(2.5, 5.0, 7.5),
            // C₃H₈ + 5 O₂ gives 4 H₂O: 1.63 kg at most.
            Self::UnventedPropane => kilograms(1.60, 1.60, 1.64),
            // 7.6 US pints a US gallon; the most is all the hydrogen of the fuel.
            Self::UnventedKerosene => kilograms(0.90, 0.95, 1.10),
        }
    }

    /// Where the usual value comes from.
    pub const fn source(self) -> Source {
        match self {
            Self::PersonResting
            | Self::PersonActive
            | Self::PersonAtHardWork
            | Self::PottedPlant => Source::SustainableSolarHousing2007,
            Self::LaundryLoad | Self::Shower | Self::UnventedKerosene => Source::AngellOlson1988,
            Self::PersonAsleep | Self::WaterGivenToPlants | Self::UnventedPropane => {
                Source::NewZealandMetalRoofCode
            }
            Self::AnimalKilogram | Self::HoseDown => Source::CommonPractice,
            Self::MoppedFloor => Source::FromMemory,
        }
    }
}

/// So much of a source, so long a day.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct MoistureLoad {
    source: MoistureSource,
    count: f64,
    active: Time,
}

const DAY: Time = Time::days(1.0);

impl MoistureLoad {
    /// A number of units, there for a part of each day; of what comes each time (a load, a wash),
    /// the number a day and how long it takes to come to the air.
    ///
    /// Range: count from 0 to 10 000, active from one minute to 24 h.
    ///
    /// # Errors
    /// Refuses an input out of range.
    pub fn new(source: MoistureSource, count: f64, active: Time) -> Result<Self, MoistureError> {
        MoistureQuantity::Count.check(count)?;
        MoistureQuantity::ActiveTime.check(active.value())?;
        Ok(Self { source, count, active })
    }

    /// Which source.
    pub const fn source(&self) -> MoistureSource {
        self.source
    }

    /// How many units.
    pub const fn count(&self) -> f64 {
        self.count
    }

    /// How long a day.
    pub const fn active(&self) -> Time {
        self.active
    }

    /// The flow while it is active.
    pub fn while_active(&self) -> MoistureRate {
        let [least, typical, most] = match self.source.emission() {
            Emission::WhileThere(flows) => flows.map(|flow| flow * self.count),
            Emission::EachTime(masses) => masses.map(|mass| mass / self.active * self.count),
        };
        MoistureRate { least, typical, most }
    }

    /// The flow in the mean of a day.
    pub fn daily_mean(&self) -> MoistureRate {
        self.while_active() * (self.active / DAY)
    }
}
