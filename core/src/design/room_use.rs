//! What a use of the room usually brings with it.

use super::choice::RoomUse;
use super::field::{Design, Field};
use crate::units::Time;

impl RoomUse {
    /// The choices that a use sets when it is picked, each free to be changed afterwards, SI:
    /// people and hours, loads, showers, plants, animals, washing down, flames, and the humidity to
    /// hold.
    ///
    /// Common practice, no source, for a 20 ft box.
    pub fn usual(self) -> [(Field, f64); 12] {
        let hours = |hours| Time::hours(hours).value();
        // People, their hours, loads, litres to plants, kilograms of animals, square metres
        // mopped, hose-downs, percent to hold.
        let [people, time, loads, plants, animals, mopped, hosed, percent] = match self {
            Self::Store => [0.0, 1.0, 0.0, 0.0, 0.0, 0.0, 0.0, 50.0],
            Self::Workshop => [2.0, 8.0, 0.0, 0.0, 0.0, 0.0, 0.0, 40.0],
            Self::Office => [2.0, 8.0, 0.0, 0.0, 0.0, 0.0, 0.0, 40.0],
            Self::Sleeping => [2.0, 8.0, 0.0, 0.0, 0.0, 0.0, 0.0, 45.0],
            Self::LaundryAndDrying => [1.0, 4.0, 3.0, 0.0, 0.0, 0.0, 0.0, 60.0],
            Self::Growing => [1.0, 2.0, 0.0, 10.0, 0.0, 0.0, 0.0, 70.0],
            Self::WashingDown => [1.0, 8.0, 0.0, 0.0, 0.0, 0.0, 1.0, 70.0],
            // Six dogs of 25 kg and their floor.
            Self::Animals => [0.0, 1.0, 0.0, 0.0, 150.0, 13.0, 0.0, 60.0],
        };
        [
            (Field::PersonCount, people),
            (Field::PersonTime, hours(time)),
            (Field::LaundryLoads, loads),
            (Field::LaundryTime, hours(12.0)),
            (Field::Showers, 0.0),
            (Field::PlantWater, plants),
            (Field::AnimalMass, animals),
            (Field::MoppedFloor, mopped),
            (Field::HoseDowns, hosed),
            (Field::UnventedPropane, 0.0),
            (Field::UnventedKerosene, 0.0),
            (Field::TargetHumidity, percent / 100.0),
        ]
    }
}

impl Design {
    /// Takes up a use with all that it usually brings.
    pub fn take_use(&mut self, room_use: RoomUse) {
        self.room_use = room_use;
        for (field, number) in room_use.usual() {
            self.set(field, Some(number));
        }
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
