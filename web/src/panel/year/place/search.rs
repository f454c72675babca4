//! The search among the tables of places.

use wasm_bindgen::JsCast;
use web_sys::{HtmlElement, KeyboardEvent};

use super::{back, is_usual};
use crate::dom::{El, el, input_of};
use crate::reactive::{Watched, keep_up};
use crate::text::Language;
use crate::year::{ChosenPlace, PlaceKind, Table, YearState};

/// Most places shown at once.
const MOST: usize = 8;

const KEY: &str = "year-place-search";

/// The box, what is found, the way back, and the sources of the tables.
pub(super) fn search(year: YearState, language: Language) -> El {
    let words = language.year();
    let typed = Watched::new(String::new());
    let list = el("ul").class("year-found").test_id("year-found");
    let box_ = search_box(year, &list, typed);
    let cleared = box_.clone();
    let choose = move |place: ChosenPlace| {
        cleared.property("value", &"".into());
        typed.set(String::new());
        let _ = cleared.html().focus();
        year.go_to(place);
    };
    let inside = list.clone();
    keep_up(Box::new(move || {
        let found = typed.with(|words| year.places.search(words, MOST)).into_iter();
        let rows: Vec<El> = found.map(|place| row(place, choose.clone(), language)).collect();
        inside.refill(&rows);
    }));
    let status = el("p").class("hint").attr("role", "status").text_with(move || {
        let asked = typed.with(|typed| !typed.trim().is_empty());
        let said = year.places.shipped.with(|table| match table {
            Table::Failed => Some(words.no_table),
            Table::Loading if asked => Some(words.working_out),
            _ if asked => None,
            _ => Some(""),
        });
        said.map_or_else(
            || {
                let count = typed.with(|typed| year.places.search(typed, usize::MAX).len());
                words.found.with(&[&year.state.notation().count(count as f64)])
            },
            str::to_owned,
        )
    });
    let back = back(
        || words.back.to_owned(),
        move || !is_usual(year),
        move || year.go_to(ChosenPlace::default()),
    );
    el("div").class("field").with(&[
        el("label").attr("for", KEY).text(words.search),
        box_,
        el("p").class("hint").attr("id", "year-place-note").text(words.search_note),
        status,
        list,
        back,
        sources(year, language),
    ])
}

fn search_box(year: YearState, list: &El, typed: Watched<String>) -> El {
    let list = list.clone();
    el("input")
        .attr("type", "search")
        .attr("id", KEY)
        .attr("autocomplete", "off")
        .attr("aria-describedby", "year-place-note")
        .test_id(KEY)
        .on("input", move |event| {
            year.load_places();
            if let Some(input) = input_of(&event) {
                typed.set(input.value());
            }
        })
        .on("keydown", move |event| {
            let Ok(event) = event.dyn_into::<KeyboardEvent>() else { return };
            let found = list.element().query_selector("button").ok().flatten();
            let Some(button) = found.and_then(|found| found.dyn_into::<HtmlElement>().ok()) else {
                return;
            };
            match event.key().as_str() {
                "Enter" => button.click(),
                "ArrowDown" => {
                    event.prevent_default();
                    let _ = button.focus();
                }
                _ => {}
            }
        })
}

/// A place that was found.
fn row(place: ChosenPlace, choose: impl Fn(ChosenPlace) + 'static, language: Language) -> El {
    let button = el("button").attr("type", "button").text(&place.name);
    let button = if matches!(place.kind, PlaceKind::OfTheShop(_)) {
        let mark = [" ", language.weather().of_the_shop].concat();
        button.child(&el("span").class("year-of-shop").text(&mark))
    } else {
        button
    };
    let button = button.on("click", move |_| choose(place.clone())).on("keydown", step_among);
    el("li").child(&button)
}

/// Up and down among the places found.
fn step_among(event: web_sys::Event) {
    let Ok(event) = event.dyn_into::<KeyboardEvent>() else { return };
    let button =
        event.current_target().and_then(|target| target.dyn_into::<web_sys::Element>().ok());
    let Some(item) = button.and_then(|button| button.parent_element()) else { return };
    let next = match event.key().as_str() {
        "ArrowDown" => item.next_element_sibling(),
        "ArrowUp" => item.previous_element_sibling(),
        _ => return,
    };
    event.prevent_default();
    let next = next.and_then(|next| next.first_element_child());
    if let Some(next) = next.and_then(|next| next.dyn_into::<HtmlElement>().ok()) {
        let _ = next.focus();
    }
}

/// Where the tables' figures come from, once they are there.
fn sources(year: YearState, language: Language) -> El {
    let lines = move || -> Vec<String> {
        let both = [year.places.own, year.places.shipped];
        let of = |table: &Table| match table {
            // The last line of a head describes the columns.
            Table::There(table) => table.sources[..table.sources.len().saturating_sub(1)].to_vec(),
            _ => Vec::new(),
        };
        both.into_iter().flat_map(|table| table.with(of)).collect()
    };
    let credit = el("div").children_with(move || {
        lines().iter().map(|line| el("p").attr("lang", "en").text(line)).collect()
    });
    let summary = el("summary").text(language.year().sources);
    let sources = el("details").class("year-sources").with(&[summary, credit]);
    let hidden = sources.clone();
    keep_up(Box::new(move || hidden.flag("hidden", lines().is_empty())));
    sources
}
