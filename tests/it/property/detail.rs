//! What must hold of the cold details of any design.

use inchwise_core::design::{EndWallTreatment, Field};
use inchwise_core::detail::{DetailMemory, Effort, Outcome, PlacedDetail, placed_detail};
use inchwise_core::envelope::{Amount, End, Place};
use proptest::prelude::*;

use super::design::lawful_design;

/// A temperature factor is settled to 0.1 K at 50 K.
const SETTLED: f64 = 0.002;

const WALLS_AND_CEILING: [Field; 4] =
    [Field::SideWallFoam, Field::FrontEndFoam, Field::DoorEndFoam, Field::CeilingFoam];

proptest! {
    // Each case solves two bodies with all their rounds of refinement.
    #![proptest_config(ProptestConfig::with_cases(6))]

    /// Foam on a casting keeps warm what stands over it: the coldest spot of the corner never gets
    /// colder. Only where walls and ceiling carry next to no foam does a deep cover take the room's
    /// warmth from a still colder edge beside it, so they carry 50 mm here at least.
    #[test]
    fn more_cover_never_makes_the_corner_colder(
        checked in lawful_design(),
        treatment in prop::sample::select(
            EndWallTreatment::ALL
                .iter()
                .copied()
                .filter(|&treatment| treatment != EndWallTreatment::LeaveBare)
                .collect::<Vec<_>>(),
        ),
        end in prop::sample::select(vec![End::Front, End::Door]),
        thin in 5.0..60.0, more in 5.0..80.0,
    ) {
        let mut design = checked.design().clone();
        design.end_wall_treatment = treatment;
        for field in WALLS_AND_CEILING {
            let foam = design.get(field).expect("a chosen number");
            design.set(field, Some(foam.max(0.05)));
        }
        let mut factor = |cover: f64| {
            design.set(Field::CastingCover, Some(cover / 1000.0));
            let checked = design.check().ok()?;
            let mut memory = DetailMemory::default();
            let place = Place::TopCasting(end);
            let placed: PlacedDetail =
                placed_detail(&checked, place, Amount::Pieces(2.0), &mut memory, Effort::All);
            match placed.outcome {
                Outcome::Solved(field) => Some(field.temperature_factor.value()),
                other => panic!("{other:?}"),
            }
        };
        if let (Some(thin), Some(thick)) = (factor(thin), factor(thin + more)) {
            prop_assert!(thick > thin - SETTLED, "{thin} became {thick}");
        }
    }
}
