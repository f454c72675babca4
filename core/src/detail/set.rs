//! All details of a design, solved or waiting to be.

use super::detail::{Detail, detail_at};
use super::field_cache::FieldCache;
use super::model::DetailField;
use crate::conduction::ConductionError;
use crate::design::CheckedDesign;
use crate::envelope::{Amount, Envelope, ThermalBridge};

/// Which details are solved at once.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Effort {
    /// All of them.
    All,
    /// Sections only; bodies in three dimensions wait unless they are known.
    Sections,
    /// None: what is not known waits, so that a page can have it solved aside.
    Known,
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
    pub place: ThermalBridge,
    /// How much of it there is.
    pub amount: Amount,
    /// What is to be solved; `None` while a section that it is judged against is not solved.
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

impl Effort {
    /// What is known of a detail after this effort.
    fn spend(self, detail: &Detail, cache: &mut FieldCache) -> Outcome {
        let solves = match self {
            Self::All => true,
            Self::Sections => !detail.is_body(),
            Self::Known => false,
        };
        let outcome = if solves { cache.get_or_solve(detail) } else { cache.get(detail).cloned() };
        match outcome {
            Some(Ok(field)) => Outcome::Solved(field),
            Some(Err(error)) => Outcome::Failed(error),
            None => Outcome::Waiting,
        }
    }
}

/// The detail at one place, with the effort spent on it.
pub fn placed_detail(
    checked: &CheckedDesign,
    place: ThermalBridge,
    amount: Amount,
    cache: &mut FieldCache,
    effort: Effort,
) -> PlacedDetail {
    let mut line = |detail: &Detail| match effort.spend(detail, cache) {
        Outcome::Solved(field) => Ok(field.linear_transmittance()),
        other => Err(other),
    };
    match detail_at(checked, place, &mut line) {
        Ok(detail) => {
            let outcome = effort.spend(&detail, cache);
            PlacedDetail { place, amount, detail: Some(detail), outcome }
        }
        Err(outcome) => PlacedDetail { place, amount, detail: None, outcome },
    }
}

/// What has to be solved next before the field at a place is known: a section that a body is
/// judged against, or the detail itself. `None` once the field is known, or cannot be.
pub fn first_lacking(
    checked: &CheckedDesign,
    place: ThermalBridge,
    cache: &FieldCache,
) -> Option<Detail> {
    let mut lacking = None;
    let mut line = |detail: &Detail| match cache.get(detail) {
        Some(Ok(field)) => Ok(field.linear_transmittance()),
        Some(Err(error)) => Err(Outcome::Failed(*error)),
        None => {
            lacking = Some(*detail);
            Err(Outcome::Waiting)
        }
    };
    match detail_at(checked, place, &mut line) {
        Ok(detail) => cache.get(&detail).is_none().then_some(detail),
        Err(_) => lacking,
    }
}

/// The details at every place of an envelope.
pub fn details(
    checked: &CheckedDesign,
    envelope: &Envelope,
    cache: &mut FieldCache,
    effort: Effort,
) -> Vec<PlacedDetail> {
    envelope
        .thermal_bridges
        .iter()
        .map(|&(place, amount)| placed_detail(checked, place, amount, cache, effort))
        .collect()
}
