//! What is out of sight costs nothing while a slider moves: the style sheet lets it be passed over
//! (`content-visibility`), and the browser keeps the room that it last took. So it is laid out in
//! full before it is first seen, and once more whenever the planner comes to rest after a change:
//! whoever leaps down the page then finds everything where it stays.

use std::time::Duration;

use wasm_bindgen::JsCast;
use wasm_bindgen::prelude::Closure;

use crate::dom::{El, Waiting, listen_to_window, window};
use crate::reactive::keep_up;
use crate::state::State;

/// While this class stands nothing is passed over.
const IN_FULL: &str = "in-full";

/// The planner has come to rest when nothing has changed for so long.
const REST: Duration = Duration::from_millis(200);

/// Keeps the heights of all parts of `whole` known for as long as the present scope stands.
pub fn know_heights(whole: El, state: State) {
    whole.toggle(IN_FULL, true);
    let waiting = Waiting::new();
    let at_rest = move || {
        let whole = whole.clone();
        let rest = move || {
            state.sight.rests.update(|rests| *rests = rests.wrapping_add(1));
            lay_out(whole);
        };
        waiting.after(REST, Box::new(rest));
    };
    let resized = at_rest.clone();
    listen_to_window("resize", Box::new(resized));
    keep_up(Box::new(move || {
        state.choices();
        state.curve.track();
        state.year.track();
        state.sight.seen.track();
        if !state.look(|outcome| outcome.is_refining()) {
            at_rest();
        }
    }));
}

/// Lays everything out for one frame. The browser notes what room it takes at the frame's end.
fn lay_out(whole: El) {
    whole.toggle(IN_FULL, true);
    at_next_frame(move || at_next_frame(move || whole.toggle(IN_FULL, false)));
}

fn at_next_frame(act: impl FnOnce() + 'static) {
    let act = Closure::once_into_js(act);
    // A window that draws no more frames needs no heights.
    let _ = window().request_animation_frame(act.unchecked_ref());
}
