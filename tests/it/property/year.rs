//! What must hold of every year.

use std::sync::OnceLock;

use inchwise_core::climate::{
    CheckedPlace, MonthMeans, Place, SEED, Spread, exceeded_for, not_reached, reconstruct,
    varnholm_flats,
};
use inchwise_core::design::{CheckedDesign, Field};
use inchwise_core::detail::{Effort, FieldCache};
use inchwise_core::evaluate::evaluate_with;
use inchwise_core::units::{
    Angle, Energy, Irradiation, Length, Power, Pressure, SolarShare, Temperature,
    TemperatureDifference, VolumeFlow,
};
use inchwise_core::year::{
    CheckedYearChoices, HeaterKind, Summer, Surroundings, YearChoices, YearField, YearModel,
    YearOutcome, YearQuantity, run_year,
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
    let turned = surroundings.clone().turned(choices.choices().front_faces);
    run_year(&YearModel::new(&evaluation, &turned, choices).expect("a room in its surroundings"))
}

/// Choices of which each number is anywhere in its range.
fn any_choices() -> impl Strategy<Value = YearChoices> {
    let numbers = proptest::collection::vec(0.0..=1.0_f64, YearField::ALL.len());
    (numbers, proptest::sample::select(HeaterKind::LAWFUL.to_vec())).prop_filter_map(
        "the same hour twice",
        |(numbers, heater)| {
            let mut choices = YearChoices { heater, ..YearChoices::default() };
            for (&field, share) in YearField::ALL.iter().zip(numbers) {
                let range = field.range();
                let number = range.minimum + share * (range.maximum - range.minimum);
                let whole = range.quantity == YearQuantity::Count;
                if range.default.is_some() {
                    choices.set(field, Some(if whole { number.round() } else { number }));
                }
            }
            (choices.used_from != choices.used_until).then_some(choices)
        },
    )
}

/// The same with a fan that cools no lower than the heater warms.
fn beside(design: &CheckedDesign, mut choices: YearChoices) -> CheckedYearChoices {
    let set_point = design.design().indoor_temperature;
    if choices.fan_above < set_point {
        choices.fan_above = set_point;
    }
    choices.check(set_point).expect("lawful choices")
}

fn ample(design: &CheckedDesign) -> CheckedYearChoices {
    beside(design, YearChoices { heater_limit: Power::new(30_000.0), ..YearChoices::default() })
}

/// Any place of the range, lawful for all its figures: a cosine of warmth through the year, with air
/// and sun in proportion.
fn lawful_place() -> impl Strategy<Value = CheckedPlace> {
    let latitude = -90.0..=90.0_f64;
    let warmth = (-45.0..=30.0_f64, 0.0..=28.0_f64);
    let design = (1.0..=25.0_f64, 1.0..=20.0_f64);
    (latitude, warmth, 0.5..=35.0_f64, 0.05..=1.6_f64, 0.0..=1.0_f64, design, -450.0..=6000.0_f64)
        .prop_filter_map(
            "a place",
            |(latitude, (mean, half), range, damp, sun, ends, elevation)| {
                let saturation = inchwise_core::psychro::SaturationTable::new();
                let latitude = Angle::degrees(latitude);
                let months = core::array::from_fn(|month| {
                    let celsius =
                        mean - half * libm::cos(month as f64 / 6.0 * core::f64::consts::PI);
                    let above =
                        inchwise_core::climate::mean_extraterrestrial_irradiation(latitude, month);
                    MonthMeans {
                        temperature: Temperature::celsius(celsius),
                        daily_range: TemperatureDifference::new(range),
                        vapour_pressure: Pressure::new(
                            (damp * saturation.pascals(celsius)).clamp(0.1, 5000.0),
                        ),
                        daily_global_irradiation: Irradiation::new(sun * above.value()),
                    }
                });
                let place = Place {
                    elevation: Length::new(elevation),
                    latitude,
                    winter_design: Temperature::celsius(mean - half - ends.0),
                    summer_design: Temperature::celsius(mean + half + ends.1),
                    months,
                };
                place.check().ok()
            },
        )
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(32))]

    #[test]
    fn balances_close_and_every_figure_is_a_number(
        design in lawful_design(),
        choices in any_choices(),
    ) {
        let choices = beside(&design, choices);
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
    fn a_year_of_any_place_is_made_of_numbers(
        place in lawful_place(),
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
        let design = CheckedDesign::default();
        let choices = beside(&design, choices);
        let surroundings = Surroundings::new(weather, choices.choices().front_faces)
            .expect("an elevation in range");
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
        let design = CheckedDesign::default();
        let choices = YearChoices {
            paint: SolarShare::new(paint),
            sun_on_roof: SolarShare::new(roof),
            // A fan stops, and a stove is lit, on one side of a limit and not on the other.
            heater: HeaterKind::ElectricResistance,
            fan_flow: VolumeFlow::ZERO,
            ..choices
        };
        let choices = beside(&design, choices);
        let evaluation = evaluate_with(&design, &mut FieldCache::default(), Effort::Known);
        let turned = surroundings().clone().turned(choices.choices().front_faces);
        let model = YearModel::new(&evaluation, &turned, &choices).expect("a room in its surroundings");
        let summer = Summer::of(&run_year(&model), &evaluation, &turned, &choices)
            .expect("a room in its surroundings");
        let warmest = summer.as_chosen.warmest.as_celsius() + 1e-9;
        prop_assert!(summer.light_paint.warmest.as_celsius() <= warmest, "{summer:?}");
        prop_assert!(summer.shaded.warmest.as_celsius() <= warmest, "{summer:?}");
        prop_assert_eq!(summer.as_chosen, summer.without_fan);
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
            let heat = |design| year_of(design, &ample(design)).year.energy.heat();
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
            let heat = |design| year_of(design, &ample(design)).year.energy.heat();
            let (before, after) = (heat(&design), heat(&warmer));
            prop_assert!(before <= after + Energy::new(1.0), "{before:?} {after:?}");
        }
    }
}
