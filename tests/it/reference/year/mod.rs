//! The year against closed forms, published figures and the monthly method.

mod air;
mod heat;
mod heater;
mod sun;
mod warm_up;

use inchwise_core::climate::{
    HOURS_IN_YEAR, SEED, Spread, WeatherHour, WeatherYear, reconstruct, varnholm_flats,
};
use inchwise_core::design::{CheckedDesign, Design};
use inchwise_core::detail::{Effort, FieldCache};
use inchwise_core::evaluate::{Evaluation, evaluate_with};
use inchwise_core::units::{Angle, Irradiance, Length, MassFlow, Power, Pressure, Temperature};
use inchwise_core::year::{
    CheckedYearChoices, Surroundings, YearChoices, YearModel, YearOutcome, run_year,
};

fn evaluated(design: &Design) -> Evaluation {
    let checked = design.check().expect("a lawful design");
    evaluate_with(&checked, &mut FieldCache::default(), Effort::Sections)
}

fn default_evaluation() -> Evaluation {
    evaluate_with(&CheckedDesign::default(), &mut FieldCache::default(), Effort::Sections)
}

fn varnholm() -> Surroundings {
    let place = varnholm_flats().check().expect("the default place passes its check");
    let year = reconstruct(&place, Spread::DesignTemperatures, SEED);
    Surroundings::new(year, YearChoices::default().front_faces).expect("an ordinary elevation")
}

/// The same hour all year, at sea level.
fn always(outdoors: f64, vapour: f64) -> Surroundings {
    let hour = WeatherHour {
        temperature: Temperature::celsius(outdoors),
        vapour_pressure: Pressure::new(vapour),
        global_horizontal_irradiance: Irradiance::new(0.0),
    };
    let year = WeatherYear::new(Length::new(0.0), Angle::degrees(50.0), &[hour; HOURS_IN_YEAR]);
    Surroundings::new(year.expect("a year"), YearChoices::default().front_faces)
        .expect("an ordinary elevation")
}

/// No people, no equipment, no moisture, and a heater that is always enough.
fn empty_room() -> YearChoices {
    YearChoices {
        heater_limit: Power::new(30_000.0),
        people: 0.0,
        equipment_in_use: Power::ZERO,
        moisture_in_use: MassFlow::ZERO,
        ..YearChoices::default()
    }
}

fn lawful(evaluation: &Evaluation, choices: &YearChoices) -> CheckedYearChoices {
    let set_point = evaluation.checked.design().indoor_temperature;
    choices.check(set_point).expect("lawful choices")
}

fn modelled<'a>(
    evaluation: &Evaluation,
    surroundings: &'a Surroundings,
    checked: &CheckedYearChoices,
) -> YearModel<'a> {
    YearModel::new(evaluation, surroundings, checked).expect("a room in its surroundings")
}

fn run(evaluation: &Evaluation, surroundings: &Surroundings, choices: &YearChoices) -> YearOutcome {
    let checked = lawful(evaluation, choices);
    run_year(&modelled(evaluation, surroundings, &checked))
}
