//! How the page is put together.

use crate::address;
use crate::dom::{El, el};
use crate::drawing;
use crate::heights::Rests;
use crate::panel;
use crate::state::State;
use crate::text::Language;
use crate::year::YearState;

/// The first part. A change of language makes it anew around the block of the further part; any
/// other change moves only what it concerns.
pub fn first_part(state: State, further: &El) -> El {
    let further = further.clone();
    let yearly = el("span").class("yearly");
    el("div").children_with(move || vec![first(state, state.language.get(), &further, &yearly)])
}

/// A block that is greyed while what it shows is not what is chosen.
fn framed(state: State, class: &str) -> El {
    el("div").class(class).class_with("stands-in", move || state.stands_in())
}

fn first(state: State, language: Language, further: &El, yearly: &El) -> El {
    let awaiting = !further.element().has_child_nodes();
    let sheet = el("div").class(if awaiting { "sheet awaiting" } else { "sheet" }).with(&[
        framed(state, "drawing section").child(&drawing::section(state, language)),
        el("div")
            .class("choices")
            .with(&[panel::controls(state, language), panel::facts(state, language)]),
        framed(state, "drawing plan").child(&drawing::plan(state, language)),
        further.clone(),
    ]);
    el("div").class("planner").attr("lang", language.code()).with(&[
        panel::answer(state, language, yearly),
        sheet,
        link_unread(state, language),
        el("p").class("planning-aid").text(language.answer().planning_aid),
        panel::announcer(state, language),
    ])
}

/// The further part.
pub fn further_part(state: State, year: YearState) -> El {
    let whole = el("div").class("further-part");
    let rests = Rests::of(state, whole.clone());
    let within = whole.clone();
    whole.children_with(move || {
        let language = state.language.get();
        panel::yearly(year, language, rests, &within);
        let mut parts = vec![
            rests.part(|| {
                framed(state, "drawing close-up").child(&drawing::close_up(state, language))
            }),
            rests
                .part(|| framed(state, "drawing spots-part").child(&panel::spots(state, language))),
            rests.part(|| {
                framed(state, "drawing chart").child(&drawing::depth_chart(state, language))
            }),
            el("div").class("side-column").with(&[
                rests.part(|| panel::folds(state, language)),
                rests.part(|| {
                    framed(state, "drawing ladder").child(&drawing::ladder(state, language))
                }),
                rests.part(|| panel::losses(state, language)),
            ]),
            rests.part(|| panel::damp(state, language)),
            rests.part(|| panel::year(year, language)),
            rests.part(|| panel::summary(year, language)),
            rests.part(|| panel::cautions(state, language)),
        ];
        parts.extend(address::link(year, language));
        parts.push(foot(year, language));
        parts
    })
}

/// What is wrong with the page's address.
fn link_unread(state: State, language: Language) -> El {
    let words = language.controls();
    let unread = move || if state.link_unread.get() { words.link_unread } else { "" };
    el("p").attr("role", "status").text_with(move || unread().to_owned())
}

/// Starting over, design and year alike.
fn foot(year: YearState, language: Language) -> El {
    let start_over = el("button")
        .attr("type", "button")
        .test_id("start-over")
        .text(language.controls().start_over)
        .on("click", move |_| year.start_over());
    el("div").class("foot").child(&start_over)
}
