//! The answer: clear size, room lost, heating load, always in sight; and the facts beside it.

use inchwise_core::design::Field;
use inchwise_core::evaluate::Evaluation;
use inchwise_core::heat_load::HeatLoad;
use inchwise_core::units::Temperature;

use super::drip::drip;
use super::fault::{fault_words, unread_words};
use super::figure::{Figure, figure};
use crate::dom::{El, el};
use crate::measure::Notation;
use crate::state::{Outcome, State};
use crate::text::Language;

/// The strip that stays in sight; under the load, the block that the further part writes to.
pub fn answer(state: State, language: Language, yearly: &El) -> El {
    let words = language.answer();
    let part = move |class, test_id, label, value: Figure, aside: Figure| {
        el("div").class(class).test_id(test_id).with(&[
            el("dt").text(label),
            el("dd").with(&[
                el("span").class("value").text_with(figure(state, value)),
                el("span").class("aside").text_with(figure(state, aside)),
            ]),
        ])
    };
    let figures = el("dl").class("figures").class_with("stands-in", move || state.stands_in());
    el("section").class("answer").attr("aria-label", words.title).with(&[
        figures.with(&[
            part("figure clear", "answer-clear", words.clear, clear_size, order_of_sizes),
            part("figure lost", "answer-lost", words.lost, lost_volume, lost_share),
            load(state, language, yearly),
        ]),
        drip(state, language),
        reason(state, language),
    ])
}

fn clear_size(evaluation: &Evaluation, notation: Notation) -> String {
    notation.dimensions(&evaluation.room.clear)
}

fn order_of_sizes(_: &Evaluation, notation: Notation) -> String {
    notation.language.answer().order.to_owned()
}

fn lost_volume(evaluation: &Evaluation, notation: Notation) -> String {
    notation.volume(evaluation.room.lost_volume)
}

fn lost_share(evaluation: &Evaluation, notation: Notation) -> String {
    let share = notation.percent(evaluation.room.lost_share);
    notation.language.answer().of_bare.with(&[&share])
}

/// The heating load, and whether it is still being refined.
fn load(state: State, language: Language, yearly: &El) -> El {
    let refining = move || state.look(Outcome::is_refining);
    el("div").class("figure load").test_id("answer-load").with(&[
        el("dt").text(language.answer().load),
        el("dd").class_with("refining", refining).with(&[
            el("span").class("value").text_with(move || heating_load(state)),
            el("span").class("aside").text_with(move || beside_load(state)),
            yearly.clone(),
        ]),
    ])
}

/// The load, parts that are still being solved taken over from before.
fn heating_load(state: State) -> String {
    let notation = state.notation();
    let words = notation.language.answer();
    state.look(|outcome| {
        let load =
            outcome.shown.as_ref().and(outcome.balance()).map(|balance| balance.load.greatest());
        let written = load.map(|load| words.about.with(&[&notation.load(load)]));
        written.unwrap_or_else(|| words.working.to_owned())
    })
}

/// At which temperatures it holds, or that it is still being refined.
fn beside_load(state: State) -> String {
    let notation = state.notation();
    state.look(|outcome| {
        if outcome.is_refining() {
            notation.language.answer().refining.to_owned()
        } else {
            let at = temperatures(&outcome.good, notation);
            let parts =
                outcome.balance().map(|balance| at_rest_and_at_work(&balance.load, notation));
            [at, parts.unwrap_or_default()].concat()
        }
    })
}

/// What it is at rest and at work, where the use makes a difference.
fn at_rest_and_at_work(load: &HeatLoad, notation: Notation) -> String {
    let [rest, work] = [load.at_rest, load.at_work].map(|parts| notation.load(parts.total()));
    if rest == work {
        String::new()
    } else {
        notation.language.answer().rest_and_work.with(&[&rest, &work])
    }
}

fn temperatures(evaluation: &Evaluation, notation: Notation) -> String {
    let design = evaluation.checked.design();
    let written = |temperature: Temperature| notation.temperature(temperature);
    notation
        .language
        .answer()
        .at
        .with(&[&written(design.outdoor_temperature), &written(design.indoor_temperature)])
}

/// Why the picture is not of what is chosen; nothing while it is.
fn reason(state: State, language: Language) -> El {
    let place = el("div").class("reason").attr("role", "status").test_id("reason");
    place.class_with("filled", move || state.stands_in()).children_with(move || {
        if !state.stands_in() {
            return Vec::new();
        }
        let words = language.answer();
        let mut sentences = reasons(state, language);
        let count = sentences.len();
        sentences.truncate(1);
        if count > 1 {
            let more = state.notation().count((count - 1) as f64);
            sentences.push(words.more_faults.with(&[&more]));
        }
        sentences.push(words.stands_in.to_owned());
        let spoken = sentences.iter().map(|sentence| el("span").text(" ").text(sentence));
        [el("strong").text(language.faults().sign)].into_iter().chain(spoken).collect()
    })
}

/// Everything that stands in the way, each with the name of its field; the same fault of several
/// fields, as of walls that move together, once.
fn reasons(state: State, language: Language) -> Vec<String> {
    let notation = state.notation();
    let mut faults: Vec<(Field, String)> = state.unread.with(|unread| {
        unread.iter().map(|text| (text.field, unread_words(text, notation))).collect()
    });
    state.look(|outcome| {
        for error in &outcome.errors {
            let fault = fault_words(error, notation);
            if !faults.iter().any(|(_, known)| *known == fault) {
                faults.push((error.field, fault));
            }
        }
    });
    let at_field = language.faults().at_field;
    faults.iter().map(|(field, fault)| at_field.with(&[language.field(*field), fault])).collect()
}

/// What belongs to the answer and need not stay in sight.
pub fn facts(state: State, language: Language) -> El {
    let words = language.answer();
    let fact = move |label, value: Figure| {
        el("div").with(&[el("dt").text(label), el("dd").text_with(figure(state, value))])
    };
    el("div").class("facts").with(&[
        el("dl").with(&[fact(words.headroom, headroom), fact(words.floor, floor_area)]),
        el("p").class("remark").text(words.without),
        el("p").class("remark").text_with(figure(state, kind_of_sizes)),
    ])
}

fn headroom(evaluation: &Evaluation, notation: Notation) -> String {
    let words = notation.language.answer();
    let room = &evaluation.room;
    let mut written = notation.length(room.clear.height);
    let mut also = |phrase: crate::text::Phrase, height| {
        written.push_str(", ");
        written.push_str(&phrase.with(&[&notation.length(height)]));
    };
    if room.front_corner.stands_out() || room.door_corner.stands_out() {
        also(words.under_corners, room.headroom_under_corners);
    }
    also(words.under_header, room.headroom_under_header);
    written
}

fn floor_area(evaluation: &Evaluation, notation: Notation) -> String {
    notation.area(evaluation.room.floor_area)
}

fn kind_of_sizes(evaluation: &Evaluation, notation: Notation) -> String {
    use inchwise_core::caution::Caution;
    let words = notation.language.answer();
    let nominal = evaluation.cautions.contains(&Caution::NominalSizes);
    if nominal { words.nominal } else { words.measured }.to_owned()
}
