//! Every change that was made, to be undone and done again.

use leptos::prelude::*;

use super::Inputs;

/// Changes that are kept at most.
const KEPT: usize = 100;

/// What stood before each change, and after each that was undone.
#[derive(Clone, Copy)]
pub struct History {
    /// What stood before, the newest last.
    pub past: RwSignal<Vec<Inputs>>,
    /// What was undone, the next to be done again last.
    pub future: RwSignal<Vec<Inputs>>,
    /// The hand that is still moving something: all it moves is one change.
    hand: StoredValue<Option<&'static str>>,
}

impl History {
    /// Nothing was changed yet.
    pub fn new() -> Self {
        Self {
            past: RwSignal::new(Vec::new()),
            future: RwSignal::new(Vec::new()),
            hand: StoredValue::new(None),
        }
    }

    /// Notes what stood before a change. What one hand moves without letting go is one change.
    pub fn note(self, before: Inputs, hand: Option<&'static str>) {
        let goes_on = hand.is_some() && self.hand.get_value() == hand;
        self.hand.set_value(hand);
        if !goes_on {
            self.past.update(|past| {
                if past.len() == KEPT {
                    drop(past.remove(0));
                }
                past.push(before);
            });
        }
        if !self.future.with_untracked(Vec::is_empty) {
            self.future.set(Vec::new());
        }
    }

    /// The hand let go.
    pub fn let_go(self) {
        self.hand.set_value(None);
    }

    /// Steps back: what is to stand now, given what stands.
    pub fn undo(self, now: Inputs) -> Option<Inputs> {
        self.let_go();
        let before = self.past.try_update(Vec::pop).flatten()?;
        self.future.update(|future| future.push(now));
        Some(before)
    }

    /// Steps on again.
    pub fn redo(self, now: Inputs) -> Option<Inputs> {
        self.let_go();
        let after = self.future.try_update(Vec::pop).flatten()?;
        self.past.update(|past| past.push(now));
        Some(after)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use inchwise_core::units::Length;

    fn tall(mm: f64) -> Inputs {
        Inputs { own_height: Length::mm(mm), ..Inputs::default() }
    }

    #[test]
    fn what_was_done_is_undone_and_done_again() {
        Owner::new().with(|| {
            let history = History::new();
            history.note(tall(1.0), None);
            history.note(tall(2.0), None);
            assert_eq!(history.undo(tall(3.0)), Some(tall(2.0)));
            assert_eq!(history.undo(tall(2.0)), Some(tall(1.0)));
            assert_eq!(history.undo(tall(1.0)), None);
            assert_eq!(history.redo(tall(1.0)), Some(tall(2.0)));
            history.note(tall(2.0), None);
            assert_eq!(history.redo(tall(9.0)), None, "a new change ends what was undone");
        });
    }

    #[test]
    fn what_one_hand_moves_is_one_change() {
        Owner::new().with(|| {
            let history = History::new();
            for mm in [1.0, 2.0, 3.0] {
                history.note(tall(mm), Some("wall"));
            }
            history.let_go();
            history.note(tall(4.0), Some("wall"));
            assert_eq!(history.undo(tall(5.0)), Some(tall(4.0)));
            assert_eq!(history.undo(tall(4.0)), Some(tall(1.0)));
        });
    }
}
