//! The steps taken: undone, done again, started over, and the link that brings it all back.

use inchwise_core::design::Field;
use leptos::prelude::*;
use wasm_bindgen_futures::JsFuture;

use crate::host::address_of;
use crate::measure::Notation;
use crate::state::{Inputs, Planner};
use inchwise_core::year::YearField;

/// Steps that are shown.
const SHOWN: usize = 3;

/// What a step did, in a few words.
pub fn step_words(before: &Inputs, after: &Inputs, notation: Notation) -> String {
    let language = notation.language;
    let words = language.bench();
    let (b, a) = (&before.design, &after.design);
    let mut said: Vec<String> = Vec::new();
    let mut named = |name: &str, from: &str, to: &str| {
        said.push(words.step.with(&[name, from, to]));
    };
    if b.box_size != a.box_size {
        let [from, to] = [b, a].map(|it| language.box_size(it.box_size));
        named(language.controls().box_size, from, to);
    }
    if b.end_wall_treatment != a.end_wall_treatment {
        named(
            "",
            language.treatment(b.end_wall_treatment),
            language.treatment(a.end_wall_treatment),
        );
    }
    if b.room_use != a.room_use {
        named(
            language.damp().room_use,
            language.room_use(b.room_use),
            language.room_use(a.room_use),
        );
    }
    if before.place != after.place {
        named(language.sheets().place, place_name(before, notation), place_name(after, notation));
    }
    let walls = [Field::SideWallFoam, Field::FrontEndFoam, Field::DoorEndFoam];
    let moved_together = walls.iter().all(|&field| b.get(field) != a.get(field));
    for &field in Field::ALL {
        if b.get(field) == a.get(field) || (moved_together && walls[1..].contains(&field)) {
            continue;
        }
        let name = if moved_together && field == walls[0] {
            language.controls().wall_foam
        } else {
            language.field(field)
        };
        let written = |si: Option<f64>| si.map_or("–".to_owned(), |si| notation.field(field, si));
        named(name, &written(b.get(field)), &written(a.get(field)));
    }
    for &field in YearField::ALL {
        let (from, to) = (before.year.get(field), after.year.get(field));
        if from != to {
            let written = |si: Option<f64>| {
                si.map_or("–".to_owned(), |si| {
                    crate::measure::written_of_year(field, si, notation)
                })
            };
            named(language.year_field(field), &written(from), &written(to));
        }
    }
    match said.len() {
        1 => said.swap_remove(0).trim().to_owned(),
        _ => words.several.to_owned(),
    }
}

fn place_name(inputs: &Inputs, notation: Notation) -> &str {
    let name = inputs.place.name.as_str();
    if name.is_empty() { notation.language.year().varnholm } else { name }
}

/// A step of a length in a system of units: so much, or a quarter of an inch.
pub fn step_by(
    units: crate::measure::UnitSystem,
    metric: inchwise_core::units::Length,
) -> inchwise_core::units::Length {
    match units {
        crate::measure::UnitSystem::Metric => metric,
        crate::measure::UnitSystem::Imperial => inchwise_core::units::Length::inches(0.5),
    }
}

/// The steps.
#[component]
pub fn Steps() -> impl IntoView {
    let planner = Planner::here();
    let words = move || planner.language.get().bench();
    let history = planner.history;
    let lines = move || {
        let notation = planner.notation();
        let now = planner.inputs.get();
        history.past.with(|past| {
            let befores = past.iter().rev().take(SHOWN);
            let afters = std::iter::once(&now).chain(past.iter().rev());
            let said: Vec<String> = befores
                .zip(afters)
                .map(|(before, after)| step_words(before, after, notation))
                .collect();
            said.into_iter().map(|said| view! { <li>{said}</li> }).collect_view()
        })
    };
    let nothing_to_undo = move || history.past.with(Vec::is_empty);
    let nothing_to_redo = move || history.future.with(Vec::is_empty);
    view! {
        <div class="steps" data-testid="steps">
            <h3>{move || words().steps}</h3>
            <button type="button" class="plain" data-testid="undo"
                aria-disabled=move || nothing_to_undo().to_string()
                on:click=move |_| planner.undo()
            >{"↶ "}{move || words().undo_short}</button>
            <button type="button" class="plain" data-testid="redo"
                aria-disabled=move || nothing_to_redo().to_string()
                on:click=move |_| planner.redo()
            >{"↷ "}{move || words().redo}</button>
            <ol class="step-list">{lines}</ol>
            <button type="button" class="plain" data-testid="start-over" on:click=move |_| planner.start_over()>
                {move || planner.language.get().controls().start_over}
            </button>
            <CopyLink/>
        </div>
    }
}

/// Copies the link that brings everything back.
#[component]
fn CopyLink() -> impl IntoView {
    let planner = Planner::here();
    let told = RwSignal::new(None::<bool>);
    let copy = move |_| {
        let address = address_of(planner);
        leptos::task::spawn_local(async move {
            let window = web_sys::window();
            let promise = window.map(|window| window.navigator().clipboard().write_text(&address));
            let done = match promise {
                Some(promise) => JsFuture::from(promise).await.is_ok(),
                None => false,
            };
            told.try_set(Some(done));
        });
    };
    let said = move || {
        let words = planner.language.get().bench();
        let lacking = planner.inputs.with(|inputs| inputs.hours.is_some());
        let lacking = if lacking { planner.language.get().weather().hours_not_linked } else { "" };
        told.get().map_or_else(String::new, |done| {
            [if done { words.copied } else { words.not_copied }, " ", lacking].concat()
        })
    };
    view! {
        <button type="button" class="plain" data-testid="copy-link" on:click=copy>
            {move || planner.language.get().bench().copy_link}
        </button>
        <p class="hint" role="status">{said}</p>
    }
}
