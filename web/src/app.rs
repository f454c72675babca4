//! How the page is put together: the bench, which never leaves, and the open sheet.

use leptos::prelude::*;

use crate::bench::{Answer, Chips, Controls, Drawings, OnPaper, Steps};
use crate::sheets::{Names, OpenSheet};
use crate::state::{Health, Planner};
use crate::ui::Announcer;

/// The whole planner.
#[component]
pub fn App() -> impl IntoView {
    let planner = Planner::here();
    let words = move || planner.language.get().bench();
    let lost = move || planner.pool.health.get() == Health::Lost;
    let undo = move |event: leptos::ev::KeyboardEvent| {
        if !(event.ctrl_key() || event.meta_key()) || is_typing(&event) {
            return;
        }
        match (event.key().to_lowercase().as_str(), event.shift_key()) {
            ("z", false) => planner.undo(),
            ("z", true) | ("y", _) => planner.redo(),
            _ => return,
        }
        event.prevent_default();
    };
    view! {
        <div
            class="planner"
            lang=move || planner.language.get().code()
            dir="ltr"
            data-sheet=move || planner.view.sheet.get().key()
            on:keydown=undo
        >
            <div class="bench" class:pulled-up=move || planner.view.pulled_up.get()>
                <Answer/>
                <Drawings/>
                <OnPaper/>
                <Chips/>
                <form class="controls" aria-label=move || words().controls on:submit=|event| event.prevent_default()>
                    <Controls/>
                    <Steps/>
                </form>
                <div class="sheet-holder">
                    <button
                        type="button"
                        class="pull"
                        aria-expanded=move || planner.view.pulled_up.get().to_string()
                        aria-label=move || {
                            if planner.view.pulled_up.get() { words().let_down } else { words().pull_up }
                        }
                        on:click=move |_| planner.view.pulled_up.update(|up| *up = !*up)
                    >
                        {""}
                    </button>
                    {move || lost().then(|| view! {
                        <div class="lost" role="alert" data-testid="solver-lost">
                            <p>{words().solver_lost}</p>
                            <button type="button" class="do" on:click=move |_| planner.pool.try_again()>
                                {words().try_again}
                            </button>
                        </div>
                    })}
                    <OpenSheet/>
                </div>
                <Names/>
            </div>
            <p class="planning-aid">{move || planner.language.get().answer().planning_aid}</p>
            <Announcer/>
        </div>
    }
}

/// Whether a key goes into a box for text, which has an undoing of its own.
fn is_typing(event: &leptos::ev::KeyboardEvent) -> bool {
    use wasm_bindgen::JsCast;
    let target = event.composed_path().get(0).dyn_into::<web_sys::HtmlInputElement>();
    target.is_ok_and(|input| matches!(input.type_().as_str(), "text" | "search"))
}
