//! Says the answer aloud, once things have come to rest.

use std::time::Duration;

use crate::dom::{El, Waiting, el};
use crate::reactive::{keep_up, untracked};
use crate::state::{Outcome, State};
use crate::text::Language;

/// After the last change for so long, the answer is read out.
const REST: Duration = Duration::from_millis(900);

/// One polite sentence for screen readers after each change.
pub fn announcer(state: State, language: Language) -> El {
    let place = el("p").class("spoken").attr("aria-live", "polite");
    let waiting = Waiting::new();
    let spoken = place.clone();
    let mut first = true;
    keep_up(Box::new(move || {
        state.now();
        state.units.track();
        // What stands there from the start is found by reading; only changes are announced.
        if !std::mem::take(&mut first) {
            let place = spoken.clone();
            waiting.after(REST, Box::new(move || place.say(&sentence(state, language))));
        }
    }));
    place
}

fn sentence(state: State, language: Language) -> String {
    untracked(|| {
        // What is wrong has its own place to be announced.
        if state.stands_in() || state.look(Outcome::is_refining) {
            return String::new();
        }
        let notation = state.notation();
        state.look(|outcome| {
            let room = &outcome.good.room;
            let Some(balance) = outcome.balance() else { return String::new() };
            language.answer().spoken.with(&[
                &notation.dimensions(&room.clear),
                &notation.volume(room.lost_volume),
                &notation.percent(room.lost_share),
                &notation.load(balance.load.greatest()),
            ])
        })
    })
}
