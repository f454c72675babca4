//! Every choice in a list: only for paper, so that a print can be built from.

use inchwise_core::design::Field;

use crate::dom::{El, el};
use crate::measure::Notation;
use crate::state::State;
use crate::text::Language;

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
        (language.damp().room_use, language.room_use(design.room_use)),
        (folds.weather_cover, language.weather_cover(design.weather_cover)),
        (folds.damper_screen, language.damper_screen(design.damper_screen)),
        (folds.fan_given, language.fan_given(design.fan_given)),
    ];
    let numbers = Field::ALL.iter().filter_map(|&field| {
        design.get(field).map(|si| (language.field(field), notation.field(field, si)))
    });
    options.into_iter().map(|(label, value)| (label, value.to_owned())).chain(numbers).collect()
}

/// The list.
pub fn summary(state: State, language: Language) -> El {
    let list = el("dl").rows_with(["div", "dt", "dd"], move || {
        let lines = lines(state, language).into_iter();
        lines.map(|(label, value)| [label.to_owned(), value]).collect()
    });
    el("section").class("summary").with(&[el("h3").text(language.folds().chosen), list])
}
