//! The year: where the box stands, what the year comes to, and what can be chosen about it.

mod choices;
mod figures;
mod head;
mod missed;
mod place;
mod place_unit;
mod text_box;
mod unit;
mod working;

use wasm_bindgen::JsCast;

use crate::dom::{El, el};
use crate::drawing;
use crate::reactive::Watched;
use crate::text::Language;
use crate::year::YearState;

pub use head::yearly;
pub(super) use unit::written;

/// The whole panel.
pub fn year(year: YearState, language: Language) -> El {
    let words = language.year();
    let open = Watched::new(Vec::new());
    el("section").class("year").test_id("year").attr("aria-label", words.title).with(&[
        el("div").class("year-head").with(&[
            el("h3").text(words.title),
            choices::faults(year, language),
            el("p").class("fault").attr("role", "status").text_with(move || {
                if year.is_refused() { words.no_year.to_owned() } else { String::new() }
            }),
        ]),
        place::place(year, language),
        drawing::year_strip(year, language, figures::strip_told),
        figures::figures(year, open, language).class_with("stands-in", move || year.stands_in()),
        figures::verdicts(year, open, language),
        figures::table(year, language),
        choices::choices(year, language),
        place::figures(year, language),
        el("p").class("remark").text(words.note),
    ])
}

/// Hears whether a folded part is open.
fn on_toggle(details: &El, hear: impl Fn(bool) + 'static) {
    let _ = details.clone().on("toggle", move |event| {
        let target = event.current_target().and_then(|target| target.dyn_into().ok());
        hear(target.is_some_and(|target: web_sys::Element| target.has_attribute("open")));
    });
}
