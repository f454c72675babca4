//! All details of a design, solved or waiting to be.

use super::detail::{Detail, detail_at};
use super::memory::DetailMemory;
use super::model::DetailField;
use crate::conduction::ConductionError;
use crate::design::CheckedDesign;
use crate::envelope::{Amount, Envelope, Place};

/// Which details are solved at once.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Effort {
    /// All of them.
    All,
    /// Sections only; bodies in three dimensions wait unless they are known, so that a page can
    /// solve them aside.
    Sections,
}

/// What is known of one detail.
#[derive(Clone, Debug, PartialEq)]
pub enum Outcome {
    /// Its field.
    Solved(DetailField),
    /// Why there is none.
    Failed(ConductionError),
    /// It waits to be solved aside.
    Waiting,
}

/// One place of a design with its detail.
#[derive(Clone, Debug, PartialEq)]
pub struct PlacedDetail {
    /// Where.
    pub place: Place,
    /// How much of it there is.
    pub amount: Amount,
    /// What is to be solved; `None` where an edge that it is judged against did not solve.
    pub detail: Option<Detail>,
    /// What is known of it.
    pub outcome: Outcome,
}

impl PlacedDetail {
    /// Its field, once solved.
    pub fn field(&self) -> Option<&DetailField> {
        match &self.outcome {
            Outcome::Solved(field) => Some(field),
            Outcome::Failed(_) | Outcome::Waiting => None,
        }
    }
}

/// The details at every place of an envelope.
pub fn details(
    checked: &CheckedDesign,
    envelope: &Envelope,
    memory: &mut DetailMemory,
    effort: Effort,
) -> Vec<PlacedDetail> {
    let one = |&(place, amount): &(Place, Amount)| {
        let detail = match detail_at(checked, place, memory) {
            Ok(detail) => detail,
            Err(error) => {
                return PlacedDetail {
                    place,
                    amount,
                    detail: None,
                    outcome: Outcome::Failed(error),
                };
            }
        };
        let waits =
            effort == Effort::Sections && detail.is_body() && memory.known(&detail).is_none();
        let outcome = if waits {
            Outcome::Waiting
        } else {
            match memory.field(&detail) {
                Ok(field) => Outcome::Solved(field),
                Err(error) => Outcome::Failed(error),
            }
        };
        PlacedDetail { place, amount, detail: Some(detail), outcome }
    };
    envelope.places.iter().map(one).collect()
}
