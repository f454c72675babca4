//! Design and year in the fragment of the page's address: `#v=1&side_wall_foam_mm=89;heater=wood_stove`.
//!
//! The first part of the page reads the design in it, this one the year behind the semicolon, and
//! writes both when things have come to rest.

use std::time::Duration;

use wasm_bindgen::JsValue;

use crate::dom::{El, Waiting, el, listen_to_window, window};
use crate::link::{design_of_link, fragment_of, link_without_place};
use crate::reactive::{keep_up, untracked};
use crate::state::ChangedBy;
use crate::text::Language;
use crate::year::YearState;

/// Browsers allow about a hundred changes of the address in half a minute.
const ADDRESS_REST: Duration = Duration::from_millis(400);

/// Keeps the address of the page where the host asks for it: the year in it is read now and
/// whenever it changes, and design and year are written when things have come to rest.
pub fn keep(year: YearState) {
    if !is_kept(year) {
        return;
    }
    read(year);
    listen_to_window("hashchange", Box::new(move || read(year)));
    let waiting = Waiting::new();
    // A page that nobody touched keeps the address it was opened with.
    let is_touched = year.state.changed_by.get_untracked() == ChangedBy::Visitor;
    let mut last = (!is_touched).then(|| untracked(|| fragment(year)));
    keep_up(Box::new(move || {
        let design_stands = year.state.look(|outcome| outcome.errors.is_empty());
        let year_stands = year.errors().is_empty() && year.place_errors().is_empty();
        let now = fragment(year);
        if design_stands && year_stands && last.as_ref() != Some(&now) {
            last = Some(now.clone());
            waiting.after(ADDRESS_REST, Box::new(move || write(&now)));
        }
    }));
}

fn is_kept(year: YearState) -> bool {
    year.attribute("address").is_some()
}

/// What the address is to end in; whoever asks is told when it changes.
fn fragment(year: YearState) -> String {
    let design = year.state.chosen(link_without_place);
    let text = year.text();
    if text.is_empty() { design } else { [&design, ";", &text].concat() }
}

fn read(year: YearState) {
    // Another fragment is the page's own business.
    let Some((design, text)) = fragment_of_page() else { return };
    if untracked(|| year.text()) != text {
        let design = design_of_link(&design).unwrap_or_default();
        year.take_text(&text, &design);
    }
}

fn fragment_of_page() -> Option<(String, String)> {
    let hash = window().location().hash().ok()?;
    let (design, year) = fragment_of(&hash)?;
    Some((design.to_owned(), year.to_owned()))
}

fn write(fragment: &str) {
    let address = ["#", fragment].concat();
    if window().location().hash().is_ok_and(|hash| hash == address) {
        return;
    }
    if let Ok(history) = window().history() {
        let _ = history.replace_state_with_url(&JsValue::NULL, "", Some(&address));
    }
}

/// The address that reopens what is chosen, where the page's address is kept.
pub fn link(year: YearState, language: Language) -> Vec<El> {
    if !is_kept(year) {
        return Vec::new();
    }
    let link = el("a")
        .test_id("design-link")
        .text(language.controls().link)
        .attr_with("href", move || ["#", &fragment(year)].concat());
    let lacking = el("span").class("hint").text_with(move || {
        if year.is_measured() { language.weather().hours_not_linked } else { "" }.to_owned()
    });
    vec![el("p").class("link").with(&[link, lacking])]
}
