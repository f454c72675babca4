//! Where the heat goes: one table, largest first, every figure with its reckoning.

use inchwise_core::evaluate::Evaluation;
use inchwise_core::heat_loss::{Element, Loss};
use leptos::prelude::{Get, GetUntracked, RwSignal, Set, With};
use wasm_bindgen::JsCast;

use super::figure::figure;
use super::reckoning::reckoning;
use crate::dom::{El, el, keep_up};
use crate::measure::{Notation, decimal};
use crate::state::State;
use crate::text::Language;

/// Losses in the order they are read.
fn largest_first(evaluation: &Evaluation) -> Vec<Loss> {
    // A dozen at most: each goes in front of the first that is smaller.
    let mut sorted: Vec<Loss> = Vec::new();
    for &loss in &evaluation.heat_loss.losses {
        let smaller = |other: &Loss| other.power < loss.power;
        let place = sorted.iter().position(smaller).unwrap_or(sorted.len());
        sorted.insert(place, loss);
    }
    sorted
}

/// The table and what it leaves out.
pub fn losses(state: State, language: Language) -> El {
    let words = language.losses();
    // Rows change places as shares change: what is open goes with the element, not with the row.
    let open = RwSignal::new(None::<Element>);
    let rows = el("tbody").children_with(move || {
        let notation = state.notation();
        let losses = state.outcome.with(|outcome| largest_first(&outcome.good));
        losses.into_iter().map(|loss| row(state, loss, notation, open)).collect()
    });
    let left_out = el("ul").class("not-counted").children_with(move || {
        state.outcome.with(|outcome| {
            let parts = outcome.good.heat_loss.not_counted.iter();
            parts.map(|&part| el("li").text(&language.not_counted(part))).collect()
        })
    });
    let column = |name| el("th").attr("scope", "col").text(name);
    let head = el("tr").with(&[
        column(words.part),
        column(words.loss).class("number"),
        column(words.share).class("number").attr("colspan", "2"),
    ]);
    let foot = el("tr").with(&[
        el("th").attr("scope", "row").text(words.total),
        el("td").class("number").text_with(figure(state, total)),
        el("td").attr("colspan", "2"),
    ]);
    el("section").class("losses").test_id("losses").attr("aria-label", words.title).with(&[
        el("h3").text(words.title),
        el("table").with(&[el("thead").child(&head), rows, el("tfoot").child(&foot)]),
        el("h4").text(words.not_counted),
        el("p").class("note").text(words.not_counted_note),
        left_out,
    ])
}

fn total(evaluation: &Evaluation, notation: Notation) -> String {
    notation.part_of_load(evaluation.heat_loss.design_load)
}

fn row(state: State, loss: Loss, notation: Notation, open: RwSignal<Option<Element>>) -> El {
    let language = notation.language;
    let element = loss.element;
    let how = el("div").children_with(move || {
        if open.get() != Some(element) {
            return Vec::new();
        }
        state.outcome.with(|outcome| {
            let how = reckoning(&outcome.good, &loss, notation);
            let behind: Vec<El> = how.behind.iter().map(|line| el("li").text(line)).collect();
            vec![el("p").class("formula").text(&how.formula), el("ul").with(&behind)]
        })
    });
    let summary = el("summary")
        .text(language.element(element))
        .text(" ")
        .child(&el("span").class("how").text(language.losses().how));
    let details = el("details").with(&[summary, how]).on("toggle", move |event| {
        let target = event.current_target().and_then(|target| target.dyn_into().ok());
        let is_open = target.is_some_and(|target: web_sys::Element| target.has_attribute("open"));
        if is_open {
            open.set(Some(element));
        } else if open.get_untracked() == Some(element) {
            open.set(None);
        }
    });
    let shown = details.clone();
    keep_up(Box::new(move || shown.flag("open", open.get() == Some(element))));
    let bar = el("span");
    let width = format!("{}%", decimal(loss.share * 100.0, 1, Language::English));
    let _ = bar.html().style().set_property("inline-size", &width);
    el("tr").with(&[
        el("th").attr("scope", "row").child(&details),
        el("td").class("number").text(&notation.part_of_load(loss.power)),
        el("td").class("number").text(&notation.percent(loss.share)),
        el("td").class("bar").attr("aria-hidden", "true").child(&bar),
    ])
}
