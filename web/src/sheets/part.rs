//! What several sheets are made of.

use inchwise_core::caution::Caution;
use inchwise_core::evaluate::Evaluation;
use leptos::prelude::*;

use crate::measure::Notation;
use crate::state::Planner;
use crate::text::Language;

/// A text that keeps up with the last good evaluation, the units and the language.
pub fn figure(
    planner: Planner,
    write: fn(&Evaluation, Notation) -> String,
) -> impl Fn() -> String + Copy + Send + Sync + 'static {
    move || {
        let notation = planner.notation();
        planner.look(|evaluation| write(evaluation, notation))
    }
}

/// Words of the language that is spoken.
pub fn words(
    planner: Planner,
    say: fn(Language) -> &'static str,
) -> impl Fn() -> &'static str + Copy + Send + Sync + 'static {
    move || say(planner.language.get())
}

/// The head of a sheet: its name, and what it is about.
#[component]
pub fn Head(
    /// What it is about.
    #[prop(into)]
    about: Signal<String>,
) -> impl IntoView {
    let planner = Planner::here();
    view! {
        <header class="sheet-head">
            <h2>{move || planner.language.get().sheet(planner.view.sheet.get())}</h2>
            <p class="about">{move || about.get()}</p>
        </header>
    }
}

/// A part of a sheet that stands open, under its heading.
#[component]
pub fn Part(
    /// Its name for checks in a browser.
    test_id: &'static str,
    /// The heading.
    heading: fn(Language) -> &'static str,
    /// What is in it.
    children: Children,
) -> impl IntoView {
    let planner = Planner::here();
    view! {
        <section class="part" data-testid=test_id>
            <h3>{words(planner, heading)}</h3>
            {children()}
        </section>
    }
}

/// Warnings, in full, where and while they apply.
#[component]
pub fn Minds(
    /// The warnings.
    cautions: &'static [Caution],
) -> impl IntoView {
    let planner = Planner::here();
    let applying = Memo::new(move |_| {
        planner.look(|evaluation| {
            let all = cautions.iter().copied();
            all.filter(|caution| evaluation.cautions.contains(caution)).collect::<Vec<_>>()
        })
    });
    let one = move |caution: Caution| {
        let words = planner.language.get().warning(caution)?;
        Some(view! {
            <p class="mind"><strong>{words.heading}</strong> {" "} <span>{words.body}</span></p>
        })
    };
    move || applying.get().into_iter().map(one).collect_view()
}
