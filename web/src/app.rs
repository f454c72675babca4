//! How the page is put together.

use leptos::html;
use leptos::prelude::*;

use crate::drawing;
use crate::panel;
use crate::state::State;
use crate::text::Language;

/// The planner. A change of language makes the page anew; any other change moves only what it
/// concerns.
pub fn planner(state: State) -> impl IntoView {
    move || page(state, state.language.get())
}

fn page(state: State, language: Language) -> AnyView {
    let see = NodeRef::<html::Section>::new();
    let planning_aid = language.answer().planning_aid;
    let drawings = move |class: &'static str, drawing: AnyView| {
        view! { <div class=class class:stands-in=move || state.stands_in()>{drawing}</div> }
            .into_any()
    };
    view! {
        <div class="planner" lang=language.code()>
            {panel::answer(state, language)}
            <div class="sheet">
                {drawings("drawing section", drawing::section(state))}
                {panel::controls(state, language, see)}
                {panel::facts(state, language)}
                {drawings("drawing plan", drawing::plan(state))}
                {drawings("drawing close-up", drawing::close_up(state))}
                {drawings("drawing ladder", drawing::ladder(state))}
                {drawings("drawing chart", drawing::depth_chart(state))}
                {panel::folds(state, language, see)}
                {panel::losses(state, language)}
                {panel::summary(state, language)}
                {panel::cautions(state, language, see)}
            </div>
            {foot(state, language)}
            <p class="planning-aid">{planning_aid}</p>
            {panel::announcer(state, language)}
        </div>
    }
    .into_any()
}

/// Starting over, and the address that reopens this design.
fn foot(state: State, language: Language) -> AnyView {
    let words = language.controls();
    let address = move || {
        let link = format!("#{}", state.design.with(crate::link::link_of));
        view! { <a href=link data-testid="design-link">{words.link}</a> }
    };
    let in_address = state.in_address.get_value();
    view! {
        <div class="foot">
            <button type="button" data-testid="start-over" on:click=move |_| state.start_over()>
                {words.start_over}
            </button>
            {in_address.then(|| address)}
            <p class="note" role="status">
                {move || if state.link_unread.get() { words.link_unread } else { "" }}
            </p>
        </div>
    }
    .into_any()
}
