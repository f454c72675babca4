//! The answer: clear size, room lost, heating load, always in sight; and the facts beside it.

use inchwise_core::evaluate::Evaluation;
use inchwise_core::units::Temperature;
use leptos::prelude::*;

use super::fault::{fault_words, unread_words};
use super::figure::{Figure, figure};
use crate::measure::Notation;
use crate::state::{Outcome, State};
use crate::text::Language;

/// The strip that stays in sight.
pub fn answer(state: State, language: Language) -> AnyView {
    let words = language.answer();
    let part = move |class, test_id, label, value: Figure, aside: Figure| {
        view! {
            <div class=class data-testid=test_id>
                <dt>{label}</dt>
                <dd>
                    <span class="value">{figure(state, value)}</span>
                    <span class="aside">{figure(state, aside)}</span>
                </dd>
            </div>
        }
        .into_any()
    };
    view! {
        <section class="answer" aria-label=words.title>
            <dl class="figures" class:stands-in=move || state.stands_in()>
                {part("figure clear", "answer-clear", words.clear, clear_size, order_of_sizes)}
                {part("figure lost", "answer-lost", words.lost, lost_volume, lost_share)}
                <div class="figure load" data-testid="answer-load">
                    <dt>{words.load}</dt>
                    <dd class:refining=move || state.outcome.with(Outcome::is_refining)>
                        <span class="value">{move || heating_load(state)}</span>
                        <span class="aside">{move || beside_load(state)}</span>
                    </dd>
                </div>
            </dl>
            {reason(state, language)}
        </section>
    }
    .into_any()
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

/// The last load with every part in it.
fn heating_load(state: State) -> String {
    let notation = state.notation();
    let words = notation.language.answer();
    state.outcome.with(|outcome| {
        let written = outcome.load.map(|load| words.about.with(&[&notation.load(load)]));
        written.unwrap_or_else(|| words.working.to_owned())
    })
}

/// At which temperatures it holds, or that it is still an earlier one.
fn beside_load(state: State) -> String {
    let notation = state.notation();
    state.outcome.with(|outcome| {
        if outcome.is_refining() {
            notation.language.answer().refining.to_owned()
        } else {
            temperatures(&outcome.good, notation)
        }
    })
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
fn reason(state: State, language: Language) -> AnyView {
    let words = language.answer();
    let first = move || {
        let notation = state.notation();
        let faults = language.faults();
        let at = |label: &str, fault: &str| faults.at_field.with(&[label, fault]);
        let unread = state.unread.with(|unread| {
            unread.first().map(|text| at(language.field(text.field), &unread_words(text, notation)))
        });
        let wrong = state.outcome.with(|outcome| {
            outcome
                .errors
                .first()
                .map(|error| at(language.field(error.field), &fault_words(error, notation)))
        });
        unread.or(wrong).unwrap_or_default()
    };
    let more = move || {
        let count = state.unread.with(Vec::len) + state.outcome.with(|o| o.errors.len());
        match count.saturating_sub(1) {
            0 => String::new(),
            more => words.more_faults.with(&[&state.notation().count(more as f64)]),
        }
    };
    let sign = move || if state.stands_in() { language.faults().sign } else { "" };
    let last = move || if state.stands_in() { words.stands_in } else { "" };
    view! {
        <div class="reason" role="status" data-testid="reason" class:filled=move || state.stands_in()>
            <strong>{sign}</strong>
            <span>{first}</span>
            <span>{more}</span>
            <span>{last}</span>
        </div>
    }
    .into_any()
}

/// What belongs to the answer and need not stay in sight.
pub fn facts(state: State, language: Language) -> AnyView {
    let words = language.answer();
    let fact = move |label, value: Figure| {
        view! {
            <div>
                <dt>{label}</dt>
                <dd>{figure(state, value)}</dd>
            </div>
        }
        .into_any()
    };
    view! {
        <div class="facts">
            <dl>
                {fact(words.headroom, headroom)}
                {fact(words.floor, floor_area)}
            </dl>
            <p class="note">{words.without}</p>
            <p class="note">{figure(state, kind_of_sizes)}</p>
        </div>
    }
    .into_any()
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
