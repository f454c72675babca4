//! Everything chosen in a list, so that a print can be built from.

use inchwise_core::design::{Design, FanGiven, Field};
use inchwise_core::year::{YearChoices, YearField};
use inchwise_link::day;
use leptos::prelude::*;

use crate::measure::written_of_year;
use crate::state::Planner;
use crate::text::Language;
use crate::ui::Disclosure;

const DAMPERS: [Field; 18] = [
    Field::ExhaustCount,
    Field::DamperDiameter,
    Field::ExhaustDiameter,
    Field::DuctLength,
    Field::DamperRise,
    Field::ScreenFreeArea,
    Field::ScreenClogged,
    Field::FanFreeAirFlow,
    Field::FanShutOffPressure,
    Field::FanFirstFlow,
    Field::FanFirstPressure,
    Field::FanSecondFlow,
    Field::FanSecondPressure,
    Field::FanThirdFlow,
    Field::FanThirdPressure,
    Field::HeatRecovery,
    Field::RecoveryFrostLimit,
    Field::DamperCount,
];

const FAN: [Field; 2] = [Field::FanFreeAirFlow, Field::FanShutOffPressure];

const FAN_POINTS: [Field; 6] = [
    Field::FanFirstFlow,
    Field::FanFirstPressure,
    Field::FanSecondFlow,
    Field::FanSecondPressure,
    Field::FanThirdFlow,
    Field::FanThirdPressure,
];

/// A label and its value.
type Line = (&'static str, String);

fn lines(planner: Planner, language: Language) -> Vec<Line> {
    let notation = planner.notation();
    let folds = language.folds();
    let controls = language.controls();
    let good = planner.outcome.get().good;
    let design = good.checked.design();
    let options = [
        (controls.box_size, language.box_size(design.box_size)),
        (controls.treatment, language.treatment(design.end_wall_treatment)),
        (folds.foam_measure, language.foam_measure(design.foam_measure)),
        (folds.frame_position, language.frame_position(design.frame_position)),
        (folds.lining_material, language.lining_material(design.lining_material)),
        (folds.personnel_door, language.personnel_door(design.personnel_door)),
        (folds.window_wall, language.wall(design.window_wall)),
        (language.damp().room_use, language.room_use(design.room_use)),
    ];
    let of_dampers = [
        (folds.weather_cover, language.weather_cover(design.weather_cover)),
        (folds.damper_screen, language.damper_screen(design.damper_screen)),
        (folds.fan_given, language.fan_given(design.fan_given)),
    ];
    let of_dampers = of_dampers.into_iter().filter(|_| has_dampers(design));
    let numbers = Field::ALL.iter().filter(|&&field| matters(design, field));
    let numbers = numbers.filter_map(|&field| {
        design.get(field).map(|si| (language.field(field), notation.field(field, si)))
    });
    let options = options.into_iter().chain(of_dampers);
    options.map(|(label, value)| (label, value.to_owned())).chain(numbers).collect()
}

fn has_dampers(design: &Design) -> bool {
    design.damper_count > 0.0
}

/// Whether a field says something about this design: nobody is to build from a fan that is not there.
fn matters(design: &Design, field: Field) -> bool {
    if !has_dampers(design) {
        return field == Field::DamperCount || !DAMPERS.contains(&field);
    }
    match design.fan_given {
        FanGiven::Label => !FAN_POINTS.contains(&field),
        FanGiven::Curve => !FAN.contains(&field),
    }
}

/// What is chosen about the year.
fn lines_of_year(planner: Planner, language: Language) -> Vec<Line> {
    let notation = planner.notation();
    let words = language.year_choices();
    planner.inputs.with(|inputs| {
        let choices = &inputs.year;
        let heater = (words.what_heats, language.heater(choices.heater).to_owned());
        let numbers = YearField::ALL.iter().filter(|&&field| matters_in_year(choices, field));
        let numbers = numbers.filter_map(|&field| {
            let si = choices.get(field)?;
            Some((language.year_field(field), written_of_year(field, si, notation)))
        });
        let dated = choices.prices_of.map(|date| (words.prices_of, day(date)));
        [heater].into_iter().chain(numbers).chain(dated).collect()
    })
}

/// As [`matters`], of the fan that cools and dries in the year.
fn matters_in_year(choices: &YearChoices, field: YearField) -> bool {
    use YearField::{FanAbove, FanFlow, FanOver, FanPower};
    let of_fan = [FanFlow, FanPower, FanAbove, FanOver];
    choices.fan_flow.value() > 0.0 || !of_fan.contains(&field)
}

/// The list.
#[component]
pub fn Summary() -> impl IntoView {
    let planner = Planner::here();
    let rows = move || {
        let language = planner.language.get();
        let all = lines(planner, language).into_iter().chain(lines_of_year(planner, language));
        all.map(|(label, value)| view! { <div><dt>{label}</dt><dd>{value}</dd></div> })
            .collect_view()
    };
    let heading = Signal::derive(move || planner.language.get().sheets().everything.to_owned());
    view! {
        <Disclosure test_id="summary" heading>
            <dl class="facts">{rows}</dl>
        </Disclosure>
    }
}
