//! What must hold of every year.

use std::sync::OnceLock;

use inchwise_core::climate::{SEED, Spread, reconstruct, varnholm_flats};
use inchwise_core::design::Field;
use inchwise_core::detail::{DetailMemory, Effort};
use inchwise_core::evaluate::evaluate_with;
use inchwise_core::units::{Energy, Power, Temperature};
use inchwise_core::year::{
    CheckedYearChoices, HeaterKind, Surroundings, YearChoices, YearField, YearModel, YearOutcome,
    run_year,
};
use proptest::prelude::*;

use super::design::lawful_design;

fn surroundings() -> &'static Surroundings {
    static VARNHOLM: OnceLock<Surroundings> = OnceLock::new();
    VARNHOLM.get_or_init(|| {
        let place = varnholm_flats().check().expect("the default place passes its check");
        let year = reconstruct(&place, Spread::DesignTemperatures, SEED);
        Surroundings::new(year, YearChoices::default().front_faces).expect("an elevation")
    })
}

fn year_of(
    design: &inchwise_core::design::CheckedDesign,
    choices: &CheckedYearChoices,
) -> YearOutcome {
    // Plain areas, doors and air are enough: no field need be solved.
    let evaluation = evaluate_with(design, &mut DetailMemory::default(), Effort::Known);
    run_year(&YearModel::new(&evaluation, surroundings(), choices))
}

/// Choices that pass their check, each number anywhere in its range.
fn lawful_choices() -> impl Strategy<Value = CheckedYearChoices> {
    let numbers = proptest::collection::vec(0.0..=1.0_f64, YearField::ALL.len());
    (numbers, proptest::sample::select(HeaterKind::LAWFUL.to_vec())).prop_filter_map(
        "used until after used from",
        |(numbers, heater)| {
            let mut choices = YearChoices { heater, ..YearChoices::default() };
            for (&field, share) in YearField::ALL.iter().zip(numbers) {
                let range = field.range();
                let number = range.minimum + share * (range.maximum - range.minimum);
                let whole = range.quantity == inchwise_core::year::YearQuantity::Count;
                if range.default.is_some() {
                    choices.set(field, Some(if whole { number.round() } else { number }));
                }
            }
            choices.check().ok()
        },
    )
}

fn ample(choices: YearChoices) -> CheckedYearChoices {
    YearChoices { heater_limit: Power::new(30_000.0), ..choices }.check().expect("lawful choices")
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(32))]

    #[test]
    fn balances_close_and_every_figure_is_a_number(
        design in lawful_design(),
        choices in lawful_choices(),
    ) {
        let outcome = year_of(&design, &choices);
        prop_assert!(outcome.heat_off().abs() < 1e-9, "heat off {:e}", outcome.heat_off());
        prop_assert!(outcome.water_off().abs() < 1e-6, "water off {:e}", outcome.water_off());
        for hour in &outcome.hours {
            prop_assert!(hour.celsius.is_finite() && hour.humidity.is_finite(), "{hour:?}");
            prop_assert!(hour.humidity >= 0.0 && hour.heat >= 0.0, "{hour:?}");
        }
        prop_assert!(outcome.greatest_heat.value() <= choices.choices().heater_limit.value()
            + choices.choices().backup_limit.value() + 1e-9);
    }

    #[test]
    fn more_foam_never_takes_more_heat(
        design in lawful_design(),
        field in proptest::sample::select(vec![
            Field::SideWallFoam, Field::FrontEndFoam, Field::DoorEndFoam, Field::CeilingFoam,
        ]),
        more in 0.0..1.0_f64,
    ) {
        let mut deeper = design.design().clone();
        let now = deeper.get(field).expect("a chosen number");
        deeper.set(field, Some(now + more * (field.range().maximum - now)));
        if let Ok(deeper) = deeper.check() {
            let choices = ample(YearChoices::default());
            let heat = |design| year_of(design, &choices).year.energy.heat();
            let (before, after) = (heat(&design), heat(&deeper));
            prop_assert!(after <= before * (1.0 + 1e-6), "{before:?} {after:?}");
        }
    }

    #[test]
    fn a_higher_set_point_never_takes_less_heat(design in lawful_design(), more in 0.0..5.0_f64) {
        let mut warmer = design.design().clone();
        let now = warmer.indoor_temperature.as_celsius();
        warmer.indoor_temperature = Temperature::celsius(now + more);
        if let Ok(warmer) = warmer.check() {
            let choices = ample(YearChoices::default());
            let heat = |design| year_of(design, &choices).year.energy.heat();
            let (before, after) = (heat(&design), heat(&warmer));
            prop_assert!(before <= after + Energy::new(1.0), "{before:?} {after:?}");
        }
    }
}
