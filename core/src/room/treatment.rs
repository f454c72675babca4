//! What hiding or covering the castings takes of the room.

use super::{LadderStep, Room, Taker};
use crate::units::{Length, Volume};

/// What a room's treatment of the castings takes, against walls and ceiling left where frame and
/// foam put them.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CastingCost {
    /// Of the length, by end walls brought in.
    pub length: Length,
    /// Of the height, by a ceiling brought down.
    pub height: Length,
    /// Of the volume, blocks in the corners included.
    pub volume: Volume,
}

fn brought_in(ladder: &[LadderStep]) -> Length {
    ladder.iter().filter(|step| step.taker == Taker::BroughtIn).map(|step| step.taken).sum()
}

impl Room {
    /// What the castings cost here.
    ///
    /// With l and h brought in along and down: (L + l)·W·(H + h) − V.
    pub fn casting_cost(&self) -> CastingCost {
        let (length, height) = (brought_in(&self.length_ladder), brought_in(&self.height_ladder));
        let untouched = (self.clear.length + length) * self.clear.width;
        CastingCost {
            length,
            height,
            volume: untouched * (self.clear.height + height) - self.volume,
        }
    }
}

#[cfg(test)]
mod tests {
    use crate::design::{Design, EndWallTreatment};
    use crate::room::Room;

    fn room(end_wall_treatment: EndWallTreatment) -> Room {
        let design = Design { end_wall_treatment, ..Design::default() };
        Room::of(&design.check().expect("lawful"))
    }

    #[test]
    fn a_treatment_costs_what_the_room_is_smaller_than_untouched() {
        let bare = room(EndWallTreatment::LeaveBare);
        let untouched = bare.clear.volume();
        for &treatment in EndWallTreatment::ALL {
            let room = room(treatment);
            let cost = room.casting_cost();
            let close = |a: f64, b: f64| assert!((a - b).abs() < 1e-12, "{treatment:?} {a} {b}");
            close(cost.volume.value(), (untouched - room.volume).value());
            close(cost.length.value(), (bare.clear.length - room.clear.length).value());
            close(cost.height.value(), (bare.clear.height - room.clear.height).value());
        }
    }
}
