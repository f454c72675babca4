//! Text that follows from the evaluation.

use inchwise_core::evaluate::Evaluation;

use crate::measure::Notation;
use crate::state::State;

/// Writes one text from an evaluation.
pub type Figure = fn(&Evaluation, Notation) -> String;

/// A text that keeps up with the last good evaluation, the units and the language.
pub fn figure(state: State, write: Figure) -> impl Fn() -> String + Copy + Send + Sync + 'static {
    move || {
        let notation = state.notation();
        state.look(|outcome| write(&outcome.good, notation))
    }
}
