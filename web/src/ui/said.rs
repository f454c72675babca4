//! Sentences, each with its working one touch away.

use leptos::prelude::*;

use super::{Working, WorkingView};
use crate::state::Planner;

/// A sentence: what it is a figure of, its label, and what is said behind it.
#[derive(Clone, Debug, PartialEq)]
pub struct SaidRow<K> {
    /// What can be asked about it.
    pub figure: K,
    /// In bold.
    pub label: String,
    /// Behind that.
    pub said: String,
}

/// A list of sentences that keeps up. What is open of it stays open while the figures move.
#[component]
pub fn SaidList<K>(
    /// Its name for checks in a browser.
    test_id: &'static str,
    /// The sentences.
    rows: Memo<Vec<SaidRow<K>>>,
    /// How one of them comes about.
    working: fn(Planner, K) -> Option<Working>,
) -> impl IntoView
where
    K: Copy + PartialEq + Send + Sync + std::hash::Hash + Eq + 'static,
{
    let keys =
        Memo::new(move |_| rows.with(|rows| rows.iter().map(|row| row.figure).collect::<Vec<_>>()));
    let row_of = move |figure: K| {
        let of = move |part: fn(&SaidRow<K>) -> &str| {
            rows.with(|rows| {
                let row = rows.iter().find(|row| row.figure == figure);
                row.map_or_else(String::new, |row| part(row).to_owned())
            })
        };
        let summary = move || {
            view! {
                <b>{move || of(|row| &row.label)}</b> {" "}
                <span>{move || of(|row| &row.said)}</span>
            }
        };
        view! { <Asked figure working summary=ViewFn::from(summary)/> }
    };
    view! {
        <ul class="said" data-testid=test_id>
            <For each=move || keys.get() key=|figure| *figure children=row_of/>
        </ul>
    }
}

/// One sentence.
#[component]
fn Asked<K>(figure: K, working: fn(Planner, K) -> Option<Working>, summary: ViewFn) -> impl IntoView
where
    K: Copy + PartialEq + Send + Sync + 'static,
{
    let planner = Planner::here();
    let is_open = RwSignal::new(false);
    let toggle = move |event: leptos::ev::Event| {
        let details: web_sys::Element = event_target(&event);
        is_open.set(details.has_attribute("open"));
    };
    let inside = move || {
        let how = if is_open.get() { working(planner, figure) } else { None };
        how.map(|working| view! { <WorkingView working/> })
    };
    view! {
        <li>
            <details on:toggle=toggle>
                <summary>
                    {summary.run()} {"\u{a0}"}
                    <span class="how">{move || planner.language.get().losses().how}</span>
                </summary>
                <div class="working">{inside}</div>
            </details>
        </li>
    }
}
