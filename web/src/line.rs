//! The line between the first part of the page and the further one: what is chosen in one is told
//! to the other.

use std::time::Duration;

use crate::choices::{Choices, Packed};
use crate::dom::Pace;
use crate::reactive::{Watched, keep_up, untracked};
use crate::state::State;

/// One end of the line.
#[derive(Clone, Copy)]
pub struct Line {
    state: State,
    /// What was last said or heard, so that nothing is said back.
    last: Watched<Packed>,
}

impl Line {
    /// An end at which nothing was said yet.
    pub fn new(state: State) -> Self {
        Self { state, last: Watched::new(Packed::default()) }
    }

    /// Takes over what was chosen at the other end. Numbers that are no choices change nothing:
    /// both ends are one build, which never sends such.
    pub fn hear(self, packed: Packed) {
        if let Some(choices) = Choices::unpack(&packed) {
            self.last.update_untracked(|last| *last = packed);
            self.state.adopt(choices);
        }
    }

    /// Says what is chosen after each change, at most once in so long, and nothing before the
    /// other end has spoken.
    pub fn answer(self, rest: Duration, say: Box<dyn Fn(&Packed)>) {
        let last = self.last;
        self.speak(
            rest,
            Box::new(move |packed| {
                if last.with_untracked(|last| !last.numbers.is_empty()) {
                    say(packed);
                }
            }),
        );
    }

    /// Says what is chosen, now and after each change, at most once in so long.
    pub fn speak(self, rest: Duration, say: Box<dyn Fn(&Packed)>) {
        let pace = Pace::new(
            rest,
            Box::new(move || {
                let now = untracked(|| self.state.choices()).pack();
                if self.last.with_untracked(|last| *last != now) {
                    say(&now);
                    self.last.update_untracked(|last| *last = now);
                }
            }),
        );
        keep_up(Box::new(move || {
            self.state.choices();
            pace.call();
        }));
    }
}
