//! What is out of sight costs nothing while a slider moves. Its content waits for a rest, and the
//! style sheet lets it be passed over (`content-visibility`); the browser keeps the room that it
//! last took. So it is laid out in full before it is first seen, and once more whenever the planner
//! comes to rest after a change: whoever leaps down the page then finds everything where it stays.

use std::time::Duration;

use wasm_bindgen::JsCast;
use wasm_bindgen::prelude::Closure;

use crate::dom::{El, Waiting, in_sight, listen_to_window, window};
use crate::reactive::{Patience, Watched, keep_up};
use crate::state::State;

/// While this class stands on the sheet, what is out of sight is passed over.
const KNOWN: &str = "heights-known";

/// The planner has come to rest when nothing has changed for so long.
const REST: Duration = Duration::from_millis(200);

/// The rests of one planner.
#[derive(Clone, Copy)]
pub struct Rests {
    /// How often it came to rest.
    count: Watched<u32>,
    /// Asks for one more.
    ask: Watched<Box<dyn Fn()>>,
}

impl Rests {
    /// Counts rests for as long as the present scope stands, and keeps the heights of all parts of
    /// `whole` known.
    pub fn of(state: State, whole: El) -> Self {
        let count = Watched::new(0);
        let waiting = Waiting::new();
        let at_rest = move || {
            let whole = whole.clone();
            waiting.after(REST, Box::new(move || come(count, &whole)));
        };
        let (resized, asked) = (at_rest.clone(), at_rest.clone());
        listen_to_window("resize", Box::new(resized));
        keep_up(Box::new(move || {
            state.choices();
            state.curve.track();
            state.year.track();
            state.sight.seen.track();
            state.look(|_| ());
            at_rest();
        }));
        Self { count, ask: Watched::new(Box::new(asked)) }
    }

    /// A part of the page that is brought up to date while it is in sight, and at each rest.
    pub fn part(self, make: impl FnOnce() -> El) -> El {
        let seen = Watched::new(true);
        let part = Patience { in_sight: seen, rests: self.count, ask: self.ask }.over(make);
        in_sight(&part, seen);
        part
    }

    /// Something that is always in sight and yet waits for each rest; `stale` is called when it
    /// begins to wait.
    pub fn at_rests<R>(self, stale: impl Fn() + 'static, make: impl FnOnce() -> R) -> R {
        let ask: Box<dyn Fn()> = Box::new(move || {
            stale();
            self.ask.with_untracked(|ask| ask());
        });
        let in_sight = Watched::new(false);
        Patience { in_sight, rests: self.count, ask: Watched::new(ask) }.over(make)
    }
}

fn come(rests: Watched<u32>, whole: &El) {
    rests.update(|rests| *rests = rests.wrapping_add(1));
    let Some(sheet) = whole.closest(".sheet") else { return };
    // Laid out for one frame; the browser notes what room each part takes at the frame's end.
    sheet.toggle(KNOWN, false);
    at_next_frame(move || at_next_frame(move || sheet.toggle(KNOWN, true)));
}

fn at_next_frame(act: impl FnOnce() + 'static) {
    let act = Closure::once_into_js(act);
    // A window that draws no more frames needs no heights.
    let _ = window().request_animation_frame(act.unchecked_ref());
}
