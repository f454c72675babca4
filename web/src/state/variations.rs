//! What else the design could be, tried on the engine: one more step, another treatment, a remedy.

use std::sync::Arc;

use inchwise_core::design::{Design, EndWallTreatment};
use leptos::prelude::*;

use super::{Asked, Fields, Headline, known};

/// One change to the design.
#[derive(Clone, Debug, PartialEq)]
pub enum Change {
    /// Foam on all walls.
    Walls(f64),
    /// Foam under the roof.
    Ceiling(f64),
    /// Another treatment of the castings.
    Treatment(EndWallTreatment),
    /// A remedy for cold places, by its number.
    Remedy(usize),
}

/// A change with the design it leads to and what that comes to, as far as it is known.
#[derive(Clone, Debug, PartialEq)]
pub struct Variation {
    change: Change,
    headline: Option<Headline>,
}

/// What is tried.
#[derive(Clone, Copy)]
pub struct Variations {
    /// What is asked for by whatever is shown: who asks, and each change with its design.
    asked: RwSignal<Vec<(u32, Change, Design)>>,
    found: Memo<Vec<Variation>>,
    next: StoredValue<u32>,
}

impl Variations {
    /// Nothing is asked for yet.
    pub fn new(fields: Fields) -> Self {
        let asked: RwSignal<Vec<(u32, Change, Design)>> = RwSignal::new(Vec::new());
        let found = Memo::new(move |_| {
            asked.with(|asked| {
                let one = |(_, change, design): &(u32, Change, Design)| {
                    let checked = design.check().ok();
                    let headline = checked.map(|checked| {
                        Headline::of(&fields.reckon(|memory| known(&checked, memory)))
                    });
                    Variation { change: change.clone(), headline }
                };
                asked.iter().map(one).collect()
            })
        });
        Self { asked, found, next: StoredValue::new(0) }
    }

    /// Asks for changes for as long as the present component stands. `changes` is asked again
    /// whenever what it reads changes.
    pub fn ask(self, changes: impl Fn() -> Vec<(Change, Design)> + 'static) {
        let own = self.next.get_value();
        self.next.set_value(own + 1);
        let asked = self.asked;
        Effect::new(move |_| {
            let mine = changes();
            asked.update(|asked| {
                asked.retain(|(owner, ..)| *owner != own);
                asked.extend(mine.into_iter().map(|(change, design)| (own, change, design)));
            });
        });
        on_cleanup(move || {
            asked.try_update(|asked| asked.retain(|(owner, ..)| *owner != own));
        });
    }

    /// What a change comes to: none if nobody asked for it or it does not fit the other choices.
    /// Whoever asks is told when more of it is known.
    pub fn of(self, change: &Change) -> Option<Headline> {
        self.found.with(|found| found.iter().find(|one| one.change == *change)?.headline)
    }

    /// The designs that fields are wanted for.
    pub fn asked(self) -> Vec<Arc<Asked>> {
        self.asked.with(|asked| {
            asked
                .iter()
                .filter_map(|(_, _, design)| Some(Asked::of(&design.check().ok()?)))
                .collect()
        })
    }
}
