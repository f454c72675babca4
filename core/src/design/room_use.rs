//! What a use of the room usually brings with it.

use super::choice::{OutdoorAirRule, RoomUse};
use super::field::{Design, Field};
use crate::climate::CheckedPlace;
use crate::units::{AirChangeRate, Time};

/// What a use usually brings: its numbers and its rule for outdoor air.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct UsualUse {
    /// Numeric choices, SI.
    pub numbers: [(Field, f64); 20],
    /// By which rule the outdoor air of those inside is counted.
    pub outdoor_air_rule: OutdoorAirRule,
}

/// Dry heat of a kilogram of dog or like animal, W: 2.5 times the basal 3.5·m^0.75 of an animal of 25 kg, two
/// thirds of it dry (ASHRAE Fundamentals 2017, chapter 10, laboratory animals, from memory):
/// 2.5·3.5·25^0.75·0.67/25.
const DRY_HEAT_OF_ANIMAL_KILOGRAM: f64 = 2.6;

impl RoomUse {
    /// The choices that a use sets when it is picked, each free to be changed afterwards.
    ///
    /// Common practice, no source, for a 20 ft box.
    pub fn usual(self) -> UsualUse {
        let hours = |hours| Time::hours(hours).value();
        // People, from which hour until which, days of the week, watts of a person, of equipment in use.
        let [people, from, until, days, person, equipment] = match self {
            Self::Store => [0.0, 8.0, 17.0, 5.0, 75.0, 0.0],
            Self::Workshop | Self::Office => [2.0, 8.0, 17.0, 5.0, 75.0, 100.0],
            Self::Sleeping => [2.0, 22.0, 6.0, 7.0, 60.0, 0.0],
            Self::LaundryAndDrying => [1.0, 8.0, 12.0, 7.0, 75.0, 100.0],
            Self::Growing => [1.0, 8.0, 10.0, 7.0, 75.0, 100.0],
            Self::WashingDown => [1.0, 8.0, 16.0, 7.0, 75.0, 100.0],
            Self::Animals => [0.0, 8.0, 17.0, 7.0, 75.0, 0.0],
        };
        // Loads, litres to plants, kilograms of animals, square metres mopped, hose-downs, percent to hold.
        let [loads, plants, animals, mopped, hosed, percent] = match self {
            Self::Store => [0.0, 0.0, 0.0, 0.0, 0.0, 50.0],
            Self::Workshop | Self::Office => [0.0, 0.0, 0.0, 0.0, 0.0, 40.0],
            Self::Sleeping => [0.0, 0.0, 0.0, 0.0, 0.0, 45.0],
            Self::LaundryAndDrying => [3.0, 0.0, 0.0, 0.0, 0.0, 60.0],
            Self::Growing => [0.0, 10.0, 0.0, 0.0, 0.0, 70.0],
            Self::WashingDown => [0.0, 0.0, 0.0, 0.0, 1.0, 70.0],
            // Six dogs of 25 kg and their floor.
            Self::Animals => [0.0, 0.0, 150.0, 13.0, 0.0, 60.0],
        };
        let outdoor_air_rule = match self {
            Self::Store => OutdoorAirRule::None,
            Self::Sleeping => OutdoorAirRule::Dwelling,
            Self::Animals => OutdoorAirRule::AirChanges,
            _ => OutdoorAirRule::Office,
        };
        let numbers = [
            (Field::PersonCount, people),
            (Field::UsedFrom, from),
            (Field::UsedUntil, until),
            (Field::UsedDays, days),
            (Field::HeatOfPerson, person),
            (Field::EquipmentInUse, equipment),
            (Field::EquipmentAlways, 0.0),
            (Field::LaundryLoads, loads),
            (Field::LaundryTime, hours(12.0)),
            (Field::Showers, 0.0),
            (Field::PlantWater, plants),
            (Field::AnimalMass, animals),
            (Field::AnimalHeat, animals * DRY_HEAT_OF_ANIMAL_KILOGRAM),
            (Field::MoppedFloor, mopped),
            (Field::HoseDowns, hosed),
            (Field::UnventedPropane, 0.0),
            (Field::UnventedKerosene, 0.0),
            (Field::Setback, 0.0),
            (Field::RuleAirChanges, AirChangeRate::per_hour(10.0).value()),
            (Field::TargetHumidity, percent / 100.0),
        ];
        UsualUse { numbers, outdoor_air_rule }
    }
}

impl Design {
    /// Takes up a use with all that it usually brings.
    pub fn take_use(&mut self, room_use: RoomUse) {
        self.room_use = room_use;
        let usual = room_use.usual();
        self.outdoor_air_rule = usual.outdoor_air_rule;
        for (field, number) in usual.numbers {
            self.set(field, Some(number));
        }
    }

    /// Takes up a place, and sizes the heater for the temperature that it goes below in one hour of a
    /// hundred.
    pub fn take_place(&mut self, place: CheckedPlace) {
        self.outdoor_temperature = place.place().winter_design;
        self.place = place;
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_use_passes_the_check_and_the_default_is_one_of_them() {
        for &room_use in RoomUse::ALL {
            let mut design = Design::default();
            design.take_use(room_use);
            assert!(design.check().is_ok(), "{room_use:?}: {:?}", design.check());
        }
        let mut design = Design::default();
        design.take_use(RoomUse::default());
        assert_eq!(design, Design::default());
    }
}
