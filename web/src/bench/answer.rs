//! The answer: clear sizes, room lost, heat, what that costs and what becomes of damp. It stands in
//! sight whatever is open.

use inchwise_core::year::Costs;
use leptos::prelude::*;

use super::delta;
use crate::measure::{Notation, decimal};
use crate::state::{Inputs, Planner, Risk, Verdict, YearAnswer};
use crate::ui::fault_words;

/// The answer.
#[component]
pub fn Answer() -> impl IntoView {
    let planner = Planner::here();
    let words = move || planner.language.get().bench();
    let stands_in = move || planner.stands_in();
    let clear = move || planner.notation().dimensions(&planner.headline.get().clear);
    let lost = move || {
        let (notation, headline) = (planner.notation(), planner.headline.get());
        notation
            .language
            .bench()
            .lost_is
            .with(&[&notation.volume(headline.lost), &notation.percent(headline.lost_share)])
    };
    let load_name = move || {
        let notation = planner.notation();
        let outdoors = planner.look(|it| it.checked.design().outdoor_temperature);
        words().load.with(&[&notation.temperature(outdoors)])
    };
    let load = move || {
        let notation = planner.notation();
        planner.headline.get().load().map(|load| notation.load(load))
    };
    let is_dry = move || planner.headline.get().verdict().is_some_and(|it| it.wet_places() == 0);
    let is_waiting = move || planner.headline.get().load().is_none();
    view! {
        <section class="answer" aria-label=move || planner.language.get().answer().title>
            <dl class="figures" class:stands-in=stands_in>
                <Figure class="clear" test_id="answer-clear"
                    name=Signal::derive(move || words().clear.with(&[]))
                    value=Signal::derive(move || Some(clear()))
                    delta=Signal::derive(move || sizes_delta(planner))
                />
                <Figure class="lost-room" test_id="answer-lost"
                    name=Signal::derive(move || words().lost.to_owned())
                    value=Signal::derive(move || Some(lost()))
                    delta=Signal::derive(move || lost_delta(planner))
                />
                <Figure class="load" test_id="answer-load"
                    name=Signal::derive(load_name)
                    value=Signal::derive(load)
                    delta=Signal::derive(move || load_delta(planner))
                />
                <Figure class="cost" test_id="answer-cost"
                    name=Signal::derive(move || words().cost.to_owned())
                    value=Signal::derive(move || cost(planner))
                    delta=Signal::derive(move || cost_delta(planner))
                />
                <div class="figure damp" data-testid="answer-drip" class:waiting=is_waiting class:is-dry=is_dry>
                    <dt>{move || {
                        let language = planner.language.get();
                        let room_use = planner.look(|it| it.checked.design().room_use);
                        words().damp.with(&[language.room_use(room_use)])
                    }}</dt>
                    <dd class="short">{move || verdict_short(planner)}</dd>
                    <dd class="long">{move || verdict_sentence(planner)}</dd>
                </div>
            </dl>
            <Reason/>
        </section>
    }
}

/// One figure with what changed of it.
#[component]
fn Figure(
    class: &'static str,
    test_id: &'static str,
    name: Signal<String>,
    value: Signal<Option<String>>,
    delta: Signal<Option<String>>,
) -> impl IntoView {
    let planner = Planner::here();
    let shown =
        move || value.get().unwrap_or_else(|| planner.language.get().bench().working.to_owned());
    view! {
        <div class=["figure ", class].concat() data-testid=test_id class:waiting=move || value.get().is_none()>
            <dt>{move || name.get()}</dt>
            <dd class="value">{shown}</dd>
            <dd class="delta">{move || delta.get().unwrap_or_default()}</dd>
        </div>
    }
}

/// A change, or that there is none; nothing before anything was changed.
fn told(planner: Planner, change: Option<String>) -> Option<String> {
    let change = change?;
    if change.is_empty() {
        return Some(planner.language.get().bench().as_before.to_owned());
    }
    Some(change)
}

fn sizes_delta(planner: Planner) -> Option<String> {
    let before = planner.before.get()?;
    let change = delta::sizes(&planner.headline.get(), &before, planner.notation());
    told(planner, Some(change))
}

fn lost_delta(planner: Planner) -> Option<String> {
    let (now, before) = (planner.headline.get(), planner.before.get()?);
    let notation = planner.notation();
    let by = now.lost - before.lost;
    let change = if by.as_litres().abs() < 0.5 {
        String::new()
    } else if by.as_litres() > 0.0 {
        ["+", &notation.volume(by)].concat()
    } else {
        ["−", &notation.volume(before.lost - now.lost)].concat()
    };
    told(planner, Some(change))
}

fn load_delta(planner: Planner) -> Option<String> {
    let before = planner.before.get()?;
    told(planner, delta::load(&planner.headline.get(), &before, planner.notation()))
}

/// What heating comes to in a year: money where prices are given, else energy; the number and the
/// text.
fn heating(inputs: &Inputs, year: &YearAnswer, notation: Notation) -> (f64, String) {
    let costs = Costs::of(&inputs.year, &year.year.energy);
    match (costs.heating, inputs.year.prices_of) {
        (Some(amount), Some(_)) => (amount, money(amount, inputs, notation)),
        _ => {
            let energy = year.year.energy.heat().as_kilowatt_hours();
            let written = crate::measure::to_nearest(energy, 10.0, notation.language);
            (energy, [&written, "\u{a0}kWh"].concat())
        }
    }
}

fn money(amount: f64, inputs: &Inputs, notation: Notation) -> String {
    let currency = String::from_utf8_lossy(&inputs.year.currency);
    let places = if amount < 10.0 { 2 } else { 0 };
    [&decimal(amount, places, notation.language), "\u{a0}", &currency].concat()
}

fn cost(planner: Planner) -> Option<String> {
    let notation = planner.notation();
    let year = planner.year.get()?;
    let amount = planner.inputs.with(|inputs| heating(inputs, &year, notation)).1;
    Some(notation.language.bench().a_year.with(&[&amount]))
}

fn cost_delta(planner: Planner) -> Option<String> {
    let notation = planner.notation();
    let (now, before) = (planner.year.get()?, planner.year_before.get()?);
    let change = planner.inputs.with(|inputs| {
        let past = planner.history.past.with(|past| past.last().cloned())?;
        let ((now, _), (before, _)) =
            (heating(inputs, &now, notation), heating(&past, &before, notation));
        let by = now - before;
        if by.abs() < 1.0 {
            return Some(String::new());
        }
        let sign = if by < 0.0 { "−" } else { "+" };
        Some([sign, &decimal(by.abs(), 0, notation.language)].concat())
    });
    told(planner, change)
}

fn verdict_short(planner: Planner) -> String {
    let notation = planner.notation();
    match planner.headline.get().verdict() {
        Some(verdict) => delta::damp_short(&verdict, notation),
        None => notation.language.bench().working.to_owned(),
    }
}

/// What becomes of damp, in one sentence.
pub fn verdict_words(verdict: &Verdict, notation: Notation) -> String {
    let words = notation.language.bench();
    let mut said = words.stands_at.with(&[&notation.percent(verdict.stands_at.value())]);
    let (risk, count) = verdict.worst();
    let number = notation.count(count as f64);
    let damage = match (risk, count) {
        (Risk::Dry, _) => words.dry.to_owned(),
        (Risk::Mould, 1) => words.mould_one.to_owned(),
        (Risk::Mould, _) => words.mould.with(&[&number]),
        (Risk::Drip, 1) => words.drip_one.to_owned(),
        (Risk::Drip, _) => words.drip.with(&[&number]),
        (Risk::Frost, 1) => words.frost_one.to_owned(),
        (Risk::Frost, _) => words.frost.with(&[&number]),
    };
    said.push_str(&damage);
    if verdict.a_day.value() > 0.0 {
        said.push_str(&words.a_day.with(&[&notation.water(verdict.a_day)]));
    }
    said.push('.');
    said
}

fn verdict_sentence(planner: Planner) -> String {
    let notation = planner.notation();
    match planner.headline.get().verdict() {
        Some(verdict) => verdict_words(&verdict, notation),
        None => notation.language.bench().working.to_owned(),
    }
}

/// Why the picture is not of what is chosen; nothing while it is.
#[component]
fn Reason() -> impl IntoView {
    let planner = Planner::here();
    let sentences = Memo::new(move |_| {
        if !planner.stands_in() {
            return Vec::new();
        }
        let notation = planner.notation();
        let words = notation.language.answer();
        let mut faults = faults(planner);
        let count = faults.len();
        faults.truncate(1);
        if count > 1 {
            faults.push(words.more_faults.with(&[&notation.count((count - 1) as f64)]));
        }
        faults.push(words.stands_in.to_owned());
        faults
    });
    let unread = move || {
        let keys = planner.unread_link.get()?;
        let language = planner.language.get();
        let named: Vec<&str> =
            keys.iter().filter(|key| !key.is_empty()).map(String::as_str).collect();
        Some(if keys.is_empty() {
            language.bench().link_unread.to_owned()
        } else {
            language.weather().unused.with(&[&named.join(", ")])
        })
    };
    view! {
        <div class="reason" role="status" data-testid="reason" class:filled=move || sentences.with(|it| !it.is_empty()) || unread().is_some()>
            {move || {
                let sign = planner.language.get().faults().sign;
                let said = sentences.get().join(" ");
                (!said.is_empty()).then(|| view! { <strong>{sign}</strong> <span>{said}</span> })
            }}
            {move || unread().map(|said| view! { <span data-testid="link-unread">{said}</span> })}
        </div>
    }
}

/// Everything that stands in the way, each with the name of its field; the same fault of several
/// fields, as of walls that move together, once.
fn faults(planner: Planner) -> Vec<String> {
    let notation = planner.notation();
    let language = notation.language;
    let at_field = language.faults().at_field;
    let mut faults: Vec<(String, String)> = planner.typed.with(|typed| {
        let words = language.year_choices();
        typed
            .iter()
            .map(|text| match text.subject {
                crate::state::Subject::Design(field) => {
                    let said = crate::ui::unread_words(&text.text, &text.fault, field, notation);
                    (language.field(field).to_owned(), said)
                }
                crate::state::Subject::Year(field) => {
                    (language.year_field(field).to_owned(), words.no_number.to_owned())
                }
                crate::state::Subject::Place(figure) => {
                    (language.figure(figure), words.no_number.to_owned())
                }
                crate::state::Subject::Currency => {
                    (words.currency.to_owned(), words.no_currency.to_owned())
                }
                crate::state::Subject::PricesOf => {
                    (words.prices_of.to_owned(), words.date_hint.to_owned())
                }
            })
            .collect()
    });
    planner.outcome.with(|outcome| {
        for error in &outcome.errors {
            let fault = fault_words(error, notation);
            if !faults.iter().any(|(_, known)| *known == fault) {
                faults.push((language.field(error.field).to_owned(), fault));
            }
        }
    });
    faults.iter().map(|(field, fault)| at_field.with(&[field, fault])).collect()
}
