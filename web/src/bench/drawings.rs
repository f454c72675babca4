//! The drawing on the bench: the section, the plan, or a cold place with its temperatures.

use leptos::prelude::*;

use crate::drawing;
use crate::state::{DrawingName, Planner};

const ALL: [DrawingName; 3] = [DrawingName::Section, DrawingName::Plan, DrawingName::Corner];

impl DrawingName {
    /// Stable name in styles and tests.
    const fn key(self) -> &'static str {
        match self {
            Self::Section => "section",
            Self::Plan => "plan",
            Self::Corner => "corner",
        }
    }
}

/// The drawing with its names.
#[component]
pub fn Drawings() -> impl IntoView {
    let planner = Planner::here();
    let words = move || planner.language.get().bench();
    let name = move |drawing: DrawingName| match drawing {
        DrawingName::Section => words().section,
        DrawingName::Plan => words().plan,
        DrawingName::Corner => words().corner,
    };
    let button = move |drawing: DrawingName| {
        let is_shown = move || planner.view.drawing.get() == drawing;
        view! {
            <button
                type="button"
                data-testid=["drawing-", drawing.key()].concat()
                aria-pressed=move || is_shown().to_string()
                on:click=move |_| planner.view.drawing.set(drawing)
            >
                {move || name(drawing)}
            </button>
        }
    };
    let names = ALL.map(button).into_iter().collect_view();
    // Words of a drawing that stay are those of the language it was made in.
    let shown = move || {
        planner.language.track();
        match planner.view.drawing.get() {
            DrawingName::Section => drawing::section(planner),
            DrawingName::Plan => drawing::plan(planner),
            DrawingName::Corner => drawing::corner(planner),
        }
    };
    view! {
        <section
            class="drawings"
            class:stands-in=move || planner.stands_in()
            data-drawing=move || planner.view.drawing.get().key()
            aria-label=move || words().drawings
        >
            <div class="drawing-names">{names}</div>
            <div class="drawing" data-testid="drawing">{shown}</div>
        </section>
    }
}
