//! The year against closed forms, published figures and the monthly method.

mod air;
mod cold_place;
mod heat;
mod heater;
mod steady;
mod sun;
mod warm_up;

use std::sync::{Mutex, OnceLock};

use inchwise_core::climate::{
    HOURS_IN_YEAR, SEED, Spread, WeatherHour, WeatherYear, reconstruct, varnholm_flats,
};
use inchwise_core::design::Design;
use inchwise_core::detail::{Effort, FieldCache};
use inchwise_core::evaluate::{Evaluation, evaluate_with};
use inchwise_core::units::{Angle, Irradiance, Length, Power, Pressure, Temperature};
use inchwise_core::year::{
    CheckedYearChoices, Surroundings, YearChoices, YearModel, YearOutcome, run_year,
};

/// A design with its sections solved, each of them once for all checks.
fn evaluated(design: &Design) -> Evaluation {
    static FIELDS: OnceLock<Mutex<FieldCache>> = OnceLock::new();
    let checked = design.check().expect("a lawful design");
    let mut fields = FIELDS.get_or_init(Mutex::default).lock().expect("no check failed in here");
    evaluate_with(&checked, &mut fields, Effort::Sections)
}

fn varnholm() -> Surroundings {
    let place = varnholm_flats().check().expect("the default place passes its check");
    let year = reconstruct(&place, Spread::DesignTemperatures, SEED);
    Surroundings::new(year, Design::default().front_faces)
}

/// The same hour all year, without sun.
fn always(outdoors: f64, vapour: f64) -> Surroundings {
    through(|_| [outdoors, vapour])
}

/// A year of hours of stated °C and Pa, without sun.
fn through(hours: impl Fn(usize) -> [f64; 2]) -> Surroundings {
    let hours: Vec<WeatherHour> = (0..HOURS_IN_YEAR)
        .map(|hour| {
            let [celsius, pascals] = hours(hour);
            WeatherHour {
                temperature: Temperature::celsius(celsius),
                vapour_pressure: Pressure::new(pascals),
                global_horizontal_irradiance: Irradiance::new(0.0),
            }
        })
        .collect();
    let year = WeatherYear::new(Length::new(0.0), Angle::degrees(50.0), &hours);
    Surroundings::new(year.expect("a year"), Design::default().front_faces)
}

/// No people, no equipment, no moisture.
fn empty_room() -> Design {
    Design { person_count: 0.0, equipment_in_use: Power::ZERO, ..Design::default() }
}

/// A heater that is always enough.
fn ample() -> YearChoices {
    YearChoices { heater_limit: Power::new(30_000.0), ..YearChoices::default() }
}

fn lawful(choices: &YearChoices) -> CheckedYearChoices {
    choices.check().expect("lawful choices")
}

fn modelled<'a>(
    evaluation: &Evaluation,
    surroundings: &'a Surroundings,
    checked: &CheckedYearChoices,
) -> YearModel<'a> {
    YearModel::new(evaluation, surroundings, checked).expect("a room in its surroundings")
}

fn run(evaluation: &Evaluation, surroundings: &Surroundings, choices: &YearChoices) -> YearOutcome {
    run_year(&modelled(evaluation, surroundings, &lawful(choices)))
}

/// A design with a heater that is always enough.
fn run_design(design: &Design, surroundings: &Surroundings) -> YearOutcome {
    run(&evaluated(design), surroundings, &ample())
}
