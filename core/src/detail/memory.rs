//! What was solved before, so that a change of climate or comfort never solves again.

use super::detail::Detail;
use super::model::DetailField;
use crate::conduction::ConductionError;

/// A small memory of solved details, keyed on exactly what their fields depend on.
///
/// The oldest is forgotten when it is full. It holds results, so it changes how fast an answer
/// comes and never the answer.
#[derive(Clone, Debug)]
pub struct DetailMemory {
    known: Vec<(Detail, Result<DetailField, ConductionError>)>,
    solves: usize,
    /// How what is not known is solved. A program that only ever learns is linked without a solver.
    solver: Option<Solver>,
}

/// Solves one detail.
type Solver = fn(&Detail) -> Result<DetailField, ConductionError>;

impl Default for DetailMemory {
    /// A memory that solves what it does not know.
    fn default() -> Self {
        Self { solver: Some(Detail::solve), ..Self::that_learns() }
    }
}

impl DetailMemory {
    /// How many details it holds at most: a dozen or two belong to each design, and a sweep over
    /// wall depths brings another for each depth.
    const CAPACITY: usize = 1024;

    /// A memory that solves nothing by itself: what it does not know waits until it is told.
    pub const fn that_learns() -> Self {
        Self { known: Vec::new(), solves: 0, solver: None }
    }

    /// The field of a detail if it was solved before.
    pub fn known(&self, detail: &Detail) -> Option<&Result<DetailField, ConductionError>> {
        self.known.iter().rev().find(|(known, _)| known == detail).map(|(_, outcome)| outcome)
    }

    /// The field of a detail, solved unless it is known; `None` if it is not known and nothing is
    /// solved here.
    pub fn field(&mut self, detail: &Detail) -> Option<Result<DetailField, ConductionError>> {
        if let Some(outcome) = self.known(detail) {
            return Some(outcome.clone());
        }
        let outcome = self.solver?(detail);
        self.solves += 1;
        self.learn(*detail, outcome.clone());
        Some(outcome)
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
