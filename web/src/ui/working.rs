//! How a figure comes about.

use leptos::prelude::*;

use crate::state::Planner;

/// How a figure comes about.
#[derive(Clone, Debug, PartialEq)]
pub struct Working {
    /// The formula in words.
    pub rule: &'static str,
    /// The numbers put in, a step each.
    pub steps: Vec<String>,
    /// Where the formula and its constants come from.
    pub source: String,
}

/// A working as it is shown.
#[component]
pub fn WorkingView(
    /// The working.
    working: Working,
) -> impl IntoView {
    let words = Planner::here().notation().language.workings();
    let steps = working.steps.into_iter().map(|step| view! { <li>{step}</li> }).collect_view();
    view! {
        <p>{working.rule}</p>
        <ul>{steps}</ul>
        <p class="hint">{words.source.with(&[&working.source])}</p>
    }
}
