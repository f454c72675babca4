//! What is wrong with a choice of the year or a figure of the place, in words.

use inchwise_core::choice_table::RangeProblem;
use inchwise_core::year::{HeaterKind, YearError, YearProblem, YearSubject};
use inchwise_link::{Figure, place_errors};

use super::entry::place_shown;
use crate::measure::{Notation, decimal, written_of_year};
use crate::state::Inputs;
use crate::text::Language;

/// Kilograms of water from one of propane.
pub fn water_of_propane(language: Language) -> String {
    let water = HeaterKind::UnventedPropane.water_to_room().unwrap_or(f64::NAN);
    decimal(water, 1, language)
}

/// What is wrong with a choice of the year.
pub fn year_fault(error: &YearError, notation: Notation) -> String {
    let words = notation.language.year_choices();
    match (error.problem, error.subject) {
        (
            YearProblem::ByItself(RangeProblem::OutOfRange { minimum, maximum }),
            YearSubject::Field(field),
        ) => words.range.with(&[
            &written_of_year(field, minimum, notation),
            &written_of_year(field, maximum, notation),
        ]),
        (YearProblem::ByItself(RangeProblem::NotWhole), _) => words.whole.to_owned(),
        (YearProblem::UsedUntilIsUsedFrom, _) => words.used_hours.to_owned(),
        (YearProblem::CoolsBelowSetPoint { set_point }, _) => {
            words.cools_below.with(&[&notation.temperature(set_point)])
        }
        (YearProblem::UnventedFlame { .. }, _) => {
            words.refused.with(&[&water_of_propane(notation.language)])
        }
        (YearProblem::PriceWithoutDate, _) => words.undated.to_owned(),
        (YearProblem::NoSuchDay, _) => words.no_day.to_owned(),
        (YearProblem::NotACurrency, _) => words.no_currency.to_owned(),
        _ => words.no_number.to_owned(),
    }
}

/// What is wrong with a figure of the place.
pub fn place_fault(inputs: &Inputs, figure: Figure, notation: Notation) -> String {
    let errors = place_errors(&place_shown(inputs), inputs.hours.is_some());
    let month = |error: &inchwise_core::climate::ClimateError| error.index.unwrap_or(0);
    let mine = errors.iter().any(|e| e.quantity == figure.quantity && month(e) == figure.month);
    if mine { notation.language.year().bad_figure.to_owned() } else { String::new() }
}
