//! Says the answer aloud, once things have come to rest.

use gloo_timers::callback::Timeout;
use leptos::prelude::*;

use crate::state::Planner;

/// After the last change for so long, the answer is read out, ms.
const REST: u32 = 900;

/// One polite sentence for screen readers after each change.
#[component]
pub fn Announcer() -> impl IntoView {
    let planner = Planner::here();
    let said = RwSignal::new(String::new());
    let waiting = StoredValue::new_local(None::<Timeout>);
    Effect::new(move |before: Option<()>| {
        planner.outcome.track();
        planner.units.track();
        // What stands there from the start is found by reading; only changes are announced.
        if before.is_some() {
            let say = Timeout::new(REST, move || {
                said.try_set(untrack(|| sentence(planner)));
            });
            waiting.set_value(Some(say));
        }
    });
    view! { <p class="spoken" aria-live="polite">{move || said.get()}</p> }
}

fn sentence(planner: Planner) -> String {
    // What is wrong has its own place to be announced.
    if planner.stands_in() {
        return String::new();
    }
    let notation = planner.notation();
    let headline = planner.headline.get();
    let Some(load) = headline.load() else { return String::new() };
    notation.language.answer().spoken.with(&[
        &notation.dimensions(&headline.clear),
        &notation.volume(headline.lost),
        &notation.percent(headline.lost_share),
        &notation.load(load),
    ])
}
