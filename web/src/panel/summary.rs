//! Every choice in a list: only for paper, so that a print can be built from.

use inchwise_core::design::{Design, FanGiven, Field, OutdoorAirRule};
use inchwise_core::year::YearField;

use super::fold::{DAMPERS, FAN, FAN_POINTS, FAN_RUN, RECOVERY, SCREENS};
use super::year::written;
use crate::dom::{El, el};
use crate::measure::Notation;
use crate::state::State;
use crate::text::Language;
use crate::year::{YearState, day};

/// A label and its value.
type Line = (&'static str, String);

fn lines(state: State, language: Language) -> Vec<Line> {
    let notation = Notation { units: state.units.get(), language };
    let folds = language.folds();
    let controls = language.controls();
    let good = state.good();
    let design = good.checked.design();
    let options = [
        (controls.box_size, language.box_size(design.box_size)),
        (controls.treatment, language.treatment(design.end_wall_treatment)),
        (folds.foam_measure, language.foam_measure(design.foam_measure)),
        (folds.frame_position, language.frame_position(design.frame_position)),
        (folds.lining_material, language.lining_material(design.lining_material)),
        (folds.personnel_door, language.personnel_door(design.personnel_door)),
        (folds.window_wall, language.wall(design.window_wall)),
        (folds.window_spacer, language.window_spacer(design.window_spacer)),
        (folds.door_end_finish, language.door_end_finish(design.door_end_finish)),
        (folds.floor_recesses, language.floor_recesses(design.floor_recesses)),
        (language.damp().room_use, language.room_use(design.room_use)),
        (folds.outdoor_air_rule, language.outdoor_air_rule(design.outdoor_air_rule)),
    ];
    let of_dampers = [
        (folds.sleeve_end, language.sleeve_end(design.sleeve_end)),
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
    if field == Field::RuleAirChanges && design.outdoor_air_rule != OutdoorAirRule::AirChanges {
        return false;
    }
    if !has_dampers(design) {
        let of_dampers = [DAMPERS, SCREENS, FAN, FAN_POINTS, RECOVERY, FAN_RUN];
        let is_of_dampers = of_dampers.into_iter().any(|fields| fields.contains(&field));
        return field == Field::DamperCount || !is_of_dampers;
    }
    match design.fan_given {
        FanGiven::Label => !FAN_POINTS.contains(&field),
        FanGiven::Curve => !FAN.contains(&field),
    }
}

/// What is chosen about the year.
fn lines_of_year(year: YearState, language: Language) -> Vec<Line> {
    let notation = Notation { units: year.state.units.get(), language };
    let words = language.year_choices();
    year.choices.with(|choices| {
        let heater = (words.what_heats, language.heater(choices.heater).to_owned());
        let numbers = YearField::ALL.iter().filter_map(|&field| {
            let si = choices.get(field)?;
            Some((language.year_field(field), written(field, si, notation)))
        });
        let dated = choices.prices_of.map(|date| (words.prices_of, day(date)));
        [heater].into_iter().chain(numbers).chain(dated).collect()
    })
}

/// The list.
pub fn summary(year: YearState, language: Language) -> El {
    let list = el("dl").rows_with(["div", "dt", "dd"], move || {
        let lines = lines(year.state, language).into_iter();
        lines
            .chain(lines_of_year(year, language))
            .map(|(label, value)| [label.to_owned(), value])
            .collect()
    });
    el("section").class("summary").with(&[el("h3").text(language.folds().chosen), list])
}
