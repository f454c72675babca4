//! What must hold of every year.

use std::sync::OnceLock;

use inchwise_core::climate::{
    SEED, Spread, exceeded_for, not_reached, reconstruct, varnholm_flats,
};
use inchwise_core::design::{CheckedDesign, Design, Field};
use inchwise_core::detail::{Effort, FieldCache};
use inchwise_core::evaluate::evaluate_with;
use inchwise_core::units::{Energy, Power, SolarShare, Temperature};
use inchwise_core::year::{
    CheckedYearChoices, HeaterKind, Summer, Surroundings, YearChoices, YearField, YearModel,
    YearOutcome, run_year,
};
use proptest::prelude::*;

use super::design::lawful_design;
use super::place::lawful_place;

fn surroundings() -> &'static Surroundings {
    static VARNHOLM: OnceLock<Surroundings> = OnceLock::new();
    VARNHOLM.get_or_init(|| {
        let place = varnholm_flats().check().expect("the default place passes its check");
        let year = reconstruct(&place, Spread::DesignTemperatures, SEED);
        Surroundings::new(year, Design::default().front_faces)
    })
}

fn year_of(design: &CheckedDesign, choices: &CheckedYearChoices) -> YearOutcome {
    year_in(surroundings(), design, choices)
}

fn year_in(
    surroundings: &Surroundings,
    design: &CheckedDesign,
    choices: &CheckedYearChoices,
) -> YearOutcome {
    // Plain areas, doors and air are enough: no field need be solved.
    let evaluation = evaluate_with(design, &mut FieldCache::default(), Effort::Known);
    let turned = surroundings.clone().turned(design.design().front_faces);
    run_year(&YearModel::new(&evaluation, &turned, choices).expect("a room in its surroundings"))
}

/// Choices of which each number is anywhere in its range.
fn any_choices() -> impl Strategy<Value = YearChoices> {
    let numbers = proptest::collection::vec(0.0..=1.0_f64, YearField::ALL.len());
    (numbers, proptest::sample::select(HeaterKind::LAWFUL.to_vec())).prop_map(
        |(numbers, heater)| {
            let mut choices = YearChoices { heater, ..YearChoices::default() };
            for (&field, share) in YearField::ALL.iter().zip(numbers) {
                let range = field.range();
                if range.default.is_some() {
                    let number = range.minimum + share * (range.maximum - range.minimum);
                    choices.set(field, Some(number));
                }
            }
            choices
        },
    )
}

/// A design without fan or anything that gives off moisture.
fn dry(checked: &CheckedDesign) -> CheckedDesign {
    let mut design = checked.design().clone();
    let sources = [
        Field::PersonCount,
        Field::LaundryLoads,
        Field::Showers,
        Field::PlantWater,
        Field::AnimalMass,
        Field::MoppedFloor,
        Field::HoseDowns,
        Field::UnventedPropane,
        Field::UnventedKerosene,
    ];
    for field in sources.into_iter().chain([Field::DamperCount]) {
        design.set(field, Some(0.0));
    }
    design.check().expect("less of everything is lawful")
}

fn ample() -> CheckedYearChoices {
    let choices = YearChoices { heater_limit: Power::new(30_000.0), ..YearChoices::default() };
    choices.check().expect("lawful choices")
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(32))]

    #[test]
    fn balances_close_and_every_figure_is_a_number(
        design in lawful_design(),
        choices in any_choices(),
    ) {
        let choices = choices.check().expect("lawful choices");
        let outcome = year_of(&design, &choices);
        prop_assert!(outcome.heat_off().abs() < 1e-9, "heat off {:e}", outcome.heat_off());
        prop_assert!(outcome.water_off().abs() < 1e-9, "water off {:e}", outcome.water_off());
        for hour in &outcome.hours {
            prop_assert!(hour.celsius.is_finite() && hour.humidity.is_finite(), "{hour:?}");
            prop_assert!(hour.humidity >= 0.0 && hour.heat >= 0.0, "{hour:?}");
        }
        prop_assert!(outcome.greatest_heat.value() <= choices.choices().heater_limit.value()
            + choices.choices().backup_limit.value() + 1e-9);
    }

    #[test]
    fn a_year_of_any_place_is_made_of_numbers(
        place in lawful_place(),
        design in lawful_design(),
        choices in any_choices(),
    ) {
        let weather = reconstruct(&place, Spread::DesignTemperatures, SEED);
        let told = not_reached(&place, &weather);
        prop_assert!(told.iter().all(|it| it.asked.is_finite() && it.reached.is_finite()), "{told:?}");
        // What is not told is so.
        for (asked, share) in
            [(place.place().winter_design, 0.99), (place.place().summer_design, 0.01)]
        {
            let off = (exceeded_for(&weather, share) - asked).value().abs();
            let is_told = told.iter().any(|it| it.month.is_none() && it.asked == asked.as_celsius());
            prop_assert!(is_told || off <= 1.0, "{asked:?} off by {off}");
        }
        let choices = choices.check().expect("lawful choices");
        let surroundings = Surroundings::new(weather, design.design().front_faces);
        let outcome = year_in(&surroundings, &design, &choices);
        prop_assert!(outcome.heat_off().abs() < 1e-9, "heat off {:e}", outcome.heat_off());
        for hour in &outcome.hours {
            prop_assert!(hour.celsius.is_finite() && hour.humidity.is_finite(), "{hour:?}");
        }
    }

    #[test]
    fn light_paint_and_shade_never_make_a_room_warmer(
        choices in any_choices(),
        paint in 0.1..=0.95_f64,
        roof in 0.0..=1.0_f64,
    ) {
        let design = Design {
            paint: SolarShare::new(paint),
            sun_on_roof: SolarShare::new(roof),
            // A fan stops, and a stove is lit, on one side of a limit and not on the other.
            damper_count: 0.0,
            ..Design::default()
        };
        let design = design.check().expect("a lawful design");
        let choices = YearChoices { heater: HeaterKind::ElectricResistance, ..choices };
        let choices = choices.check().expect("lawful choices");
        let evaluation = evaluate_with(&design, &mut FieldCache::default(), Effort::Known);
        let turned = surroundings().clone().turned(design.design().front_faces);
        let model = YearModel::new(&evaluation, &turned, &choices).expect("a room in its surroundings");
        let summer = Summer::of(&run_year(&model), &evaluation, &turned, &choices)
            .expect("a room in its surroundings");
        let warmest = summer.as_chosen.warmest.as_celsius() + 1e-9;
        prop_assert!(summer.light_paint.warmest.as_celsius() <= warmest, "{summer:?}");
        prop_assert!(summer.shaded.warmest.as_celsius() <= warmest, "{summer:?}");
        prop_assert_eq!(summer.as_chosen, summer.without_fan);
    }

    /// In a dry room without a fan: where water lands or a fan dries, warmer places may cost heat.
    #[test]
    fn more_foam_never_takes_more_heat(
        design in lawful_design(),
        field in proptest::sample::select(vec![
            Field::SideWallFoam, Field::FrontEndFoam, Field::DoorEndFoam, Field::CeilingFoam,
        ]),
        more in 0.0..1.0_f64,
    ) {
        let design = dry(&design);
        let mut deeper = design.design().clone();
        let now = deeper.get(field).expect("a chosen number");
        deeper.set(field, Some(now + more * (field.range().maximum - now)));
        if let Ok(deeper) = deeper.check() {
            let heat = |design| year_of(design, &ample()).year.energy.heat();
            let (before, after) = (heat(&design), heat(&deeper));
            prop_assert!(after <= before * (1.0 + 1e-6), "{before:?} {after:?}");
        }
    }

    #[test]
    fn a_higher_set_point_never_takes_less_heat(design in lawful_design(), more in 0.0..5.0_f64) {
        let design = dry(&design);
        let mut warmer = design.design().clone();
        let now = warmer.indoor_temperature.as_celsius();
        warmer.indoor_temperature = Temperature::celsius(now + more);
        if let Ok(warmer) = warmer.check() {
            let heat = |design| year_of(design, &ample()).year.energy.heat();
            let (before, after) = (heat(&design), heat(&warmer));
            prop_assert!(before <= after + Energy::new(1.0), "{before:?} {after:?}");
        }
    }
}
