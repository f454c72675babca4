//! What must hold of every room.

use inchwise_core::design::{Field, Quantity};
use inchwise_core::room::{LadderStep, Room};
use inchwise_core::units::Length;
use proptest::prelude::*;

use super::design::lawful_design;

fn sum(ladder: &[LadderStep]) -> f64 {
    ladder.iter().map(|step| step.taken).sum::<Length>().as_mm()
}

proptest! {
    #[test]
    fn rungs_and_volumes_add_up_to_the_bare_box(checked in lawful_design()) {
        let room = Room::of(&checked);
        for (ladder, bare) in [
            (&room.length_ladder, room.bare.length),
            (&room.width_ladder, room.bare.width),
            (&room.height_ladder, room.bare.height),
        ] {
            prop_assert!((sum(ladder) - bare.as_mm()).abs() < 1e-6, "{:?}", ladder);
            prop_assert!(ladder.iter().all(|step| step.taken > Length::ZERO), "{:?}", ladder);
        }
        let together = room.volume + room.lost_volume;
        prop_assert!((together / room.bare.volume() - 1.0).abs() < 1e-12);
        prop_assert!(0.0 < room.lost_share && room.lost_share < 1.0, "{}", room.lost_share);
    }

    #[test]
    fn more_of_anything_that_takes_room_never_leaves_more_room(
        checked in lawful_design(),
        n in 0..Field::ALL.len(),
        more in 0.0..1.0_f64,
    ) {
        let field = Field::ALL[n];
        let range = field.range();
        let opening = matches!(
            field,
            Field::DoorWidth | Field::DoorHeight | Field::WindowWidth | Field::WindowHeight
        );
        prop_assume!(range.default.is_some() && range.quantity == Quantity::Length && !opening);
        let mut deeper = checked.design().clone();
        let now = deeper.get(field).expect("a chosen number");
        deeper.set(field, Some(now + more * (range.maximum - now)));
        let (before, after) = (Room::of(&checked), deeper.check().map(|deeper| Room::of(&deeper)));
        // A design that no longer passes, its door now too tall, has no room to compare.
        if let Ok(after) = after {
            prop_assert!(after.volume.value() <= before.volume.value() * (1.0 + 1e-12));
        }
    }
}
