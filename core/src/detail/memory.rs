//! What was solved before, so that a change of climate or comfort never solves again.

use super::detail::Detail;
use super::model::DetailField;
use crate::conduction::ConductionError;

/// A small memory of solved details, keyed on exactly what their fields depend on.
///
/// The oldest is forgotten when it is full. It holds results, so it changes how fast an answer
/// comes and never the answer.
#[derive(Clone, Debug, Default)]
pub struct DetailMemory {
    known: Vec<(Detail, Result<DetailField, ConductionError>)>,
    solves: usize,
}

impl DetailMemory {
    /// How many details it holds at most: a dozen or two belong to each design, and a sweep over
    /// wall depths brings another for each depth.
    const CAPACITY: usize = 1024;

    /// The field of a detail if it was solved before.
    pub fn known(&self, detail: &Detail) -> Option<&Result<DetailField, ConductionError>> {
        self.known.iter().rev().find(|(known, _)| known == detail).map(|(_, outcome)| outcome)
    }

    /// The field of a detail, solved unless it is known.
    ///
    /// # Errors
    /// What the solver reports.
    pub fn field(&mut self, detail: &Detail) -> Result<DetailField, ConductionError> {
        if let Some(outcome) = self.known(detail) {
            return outcome.clone();
        }
        let outcome = detail.solve();
        self.solves += 1;
        self.learn(*detail, outcome.clone());
        outcome
    }

    /// Takes in a field that was solved elsewhere.
    pub fn learn(&mut self, detail: Detail, outcome: Result<DetailField, ConductionError>) {
        if self.known.len() == Self::CAPACITY {
            drop(self.known.remove(0));
        }
        self.known.push((detail, outcome));
    }

    /// How many details were solved here so far.
    pub const fn solves(&self) -> usize {
        self.solves
    }
}
