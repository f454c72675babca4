//! Fields that were solved before, so that a change of climate or comfort never solves again.

use super::detail::Detail;
use super::model::DetailField;
use crate::conduction::ConductionError;

/// A cache of solved fields, keyed on exactly what they depend on.
///
/// The oldest entry is evicted when it is full. It holds results, so it changes how fast an answer
/// comes and never the answer.
#[derive(Clone, Debug)]
pub struct FieldCache {
    entries: Vec<(Detail, Result<DetailField, ConductionError>)>,
    solves: usize,
    /// How a field that is not cached is solved. A program that only inserts is linked without a
    /// solver.
    solver: Option<DetailSolver>,
}

/// Solves one detail.
type DetailSolver = fn(&Detail) -> Result<DetailField, ConductionError>;

impl Default for FieldCache {
    /// An empty cache that solves what it does not hold.
    fn default() -> Self {
        Self { solver: Some(Detail::solve), ..Self::without_solver() }
    }
}

impl FieldCache {
    /// How many fields it holds at most: a dozen or two belong to each design, and a sweep over
    /// wall depths brings another for each depth.
    const CAPACITY: usize = 1024;

    /// An empty cache that solves nothing: what it does not hold has to be inserted.
    pub const fn without_solver() -> Self {
        Self { entries: Vec::new(), solves: 0, solver: None }
    }

    /// The field of a detail if it is cached.
    pub fn get(&self, detail: &Detail) -> Option<&Result<DetailField, ConductionError>> {
        self.entries.iter().rev().find(|(cached, _)| cached == detail).map(|(_, outcome)| outcome)
    }

    /// The field of a detail, solved and inserted unless it is cached; `None` if it is not cached
    /// and nothing is solved here.
    pub fn get_or_solve(
        &mut self,
        detail: &Detail,
    ) -> Option<Result<DetailField, ConductionError>> {
        if let Some(outcome) = self.get(detail) {
            return Some(outcome.clone());
        }
        let outcome = self.solver?(detail);
        self.solves += 1;
        self.insert(*detail, outcome.clone());
        Some(outcome)
    }

    /// Inserts a field that was solved elsewhere.
    pub fn insert(&mut self, detail: Detail, outcome: Result<DetailField, ConductionError>) {
        if self.entries.len() == Self::CAPACITY {
            drop(self.entries.remove(0));
        }
        self.entries.push((detail, outcome));
    }

    /// How many details were solved here so far.
    pub const fn solves(&self) -> usize {
        self.solves
    }
}
