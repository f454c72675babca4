//! What must hold of every heat loss.

use inchwise_core::design::Field;
use inchwise_core::detail::{Effort, FieldCache, Outcome};
use inchwise_core::evaluate::{Evaluation, evaluate_with};
use inchwise_core::units::TemperatureFactor;
use proptest::prelude::*;

use super::design::lawful_design;

fn evaluated(checked: &inchwise_core::design::CheckedDesign) -> Evaluation {
    evaluate_with(checked, &mut FieldCache::default(), Effort::Sections)
}

proptest! {
    // Each case solves eight fields.
    #![proptest_config(ProptestConfig::with_cases(24))]

    #[test]
    fn heat_by_element_adds_up_to_the_load(checked in lawful_design()) {
        let evaluation = evaluated(&checked);
        let heat_loss = &evaluation.heat_loss;
        let power: f64 = heat_loss.losses.iter().map(|loss| loss.power.value()).sum();
        let share: f64 = heat_loss.losses.iter().map(|loss| loss.share).sum();
        prop_assert!((power / heat_loss.design_load.value() - 1.0).abs() < 1e-9);
        prop_assert!((share - 1.0).abs() < 1e-9);
        for placed in &evaluation.details {
            let field = match &placed.outcome {
                Outcome::Solved(field) => field,
                // Bodies take too long for so many cases; the reference checks solve them.
                Outcome::Waiting => continue,
                other => return Err(TestCaseError::fail(format!("{:?}: {other:?}", placed.place))),
            };
            let within = |factor: TemperatureFactor| (0.0..=1.0).contains(&factor.value());
            prop_assert!(within(field.temperature_factor), "{:?}", placed);
            prop_assert!(field.marks.iter().flatten().all(|&mark| within(mark)), "{:?}", placed);
        }
    }

    #[test]
    fn more_foam_never_loses_more_heat(
        checked in lawful_design(),
        field in proptest::sample::select(vec![
            Field::SideWallFoam, Field::FrontEndFoam, Field::DoorEndFoam, Field::CeilingFoam,
            Field::FloorFoamBetween, Field::FloorFoamOver,
        ]),
        more in 0.0..1.0_f64,
    ) {
        let mut deeper = checked.design().clone();
        let now = deeper.get(field).expect("a chosen number");
        deeper.set(field, Some(now + more * (field.range().maximum - now)));
        if let Ok(deeper) = deeper.check() {
            let before = evaluated(&checked).heat_loss.total();
            let after = evaluated(&deeper).heat_loss.total();
            prop_assert!(after.value() <= before.value() * (1.0 + 1e-6), "{before:?} {after:?}");
        }
    }
}
