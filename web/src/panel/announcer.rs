//! Says the answer aloud, once things have come to rest.

use std::time::Duration;

use leptos::html;
use leptos::prelude::*;

use crate::state::{Outcome, State};
use crate::text::Language;

/// After the last change for so long, the answer is read out.
const REST: Duration = Duration::from_millis(900);

/// One polite sentence for screen readers after each change.
pub fn announcer(state: State, language: Language) -> AnyView {
    let place = NodeRef::<html::P>::new();
    let waiting = StoredValue::new(None::<TimeoutHandle>);
    let stop = move || {
        if let Some(Some(handle)) = waiting.try_update_value(Option::take) {
            handle.clear();
        }
    };
    Effect::new(move |before: Option<()>| {
        state.outcome.track();
        state.units.track();
        stop();
        // What stands there from the start is found by reading; only changes are announced.
        if before.is_some() {
            let speak = move || {
                if let Some(place) = place.get_untracked() {
                    place.set_text_content(Some(&sentence(state, language)));
                }
            };
            waiting.set_value(set_timeout_with_handle(speak, REST).ok());
        }
    });
    on_cleanup(stop);
    view! { <p class="spoken" aria-live="polite" node_ref=place></p> }.into_any()
}

fn sentence(state: State, language: Language) -> String {
    untrack(|| {
        // What is wrong has its own place to be announced.
        if state.stands_in() || state.outcome.with(Outcome::is_refining) {
            return String::new();
        }
        let notation = state.notation();
        state.outcome.with(|outcome| {
            let room = &outcome.good.room;
            language.answer().spoken.with(&[
                &notation.dimensions(&room.clear),
                &notation.volume(room.lost_volume),
                &notation.percent(room.lost_share),
                &notation.load(outcome.good.heat_loss.design_load),
            ])
        })
    })
}
