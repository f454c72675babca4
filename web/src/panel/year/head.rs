//! What a year of heat costs, written beside the load in the first part of the page.

use inchwise_core::year::Costs;

use super::figures::{energy, money};
use crate::dom::El;
use crate::heights::Rests;
use crate::reactive::keep_up;
use crate::text::Language;
use crate::year::YearState;

/// Keeps the line under the load up to date at each rest, and slants it until then. `whole` stands
/// in the planner.
pub fn yearly(year: YearState, language: Language, rests: Rests, whole: &El) {
    let (asking, writing) = (whole.clone(), whole.clone());
    let stale = move || {
        if let Some(line) = line(&asking) {
            line.toggle("earlier", true);
        }
    };
    let write = move || {
        let said = said(year, language);
        let is_old = year.stands_in() || year.answer().is_none_or(|answer| answer.is_waiting);
        if let Some(line) = line(&writing) {
            line.say(&said);
            line.toggle("earlier", is_old);
        }
    };
    rests.at_rests(stale, || keep_up(Box::new(write)));
}

/// Where it is written.
fn line(whole: &El) -> Option<El> {
    whole.closest(".planner")?.find(".yearly")
}

/// The cost of heating where prices are given, and what is bought where not.
fn said(year: YearState, language: Language) -> String {
    let Some(answer) = year.answer() else { return String::new() };
    let notation = year.state.notation();
    year.choices.with(|choices| {
        let costs = Costs::of(choices, &answer.year.energy);
        let amount = match (costs.heating, choices.prices_of) {
            (Some(heating), Some(_)) => money(heating, choices, notation),
            _ => energy(answer.year.energy.heat(), notation),
        };
        language.year().heats_for.with(&[&amount])
    })
}
