//! The least that makes a room dry in its own use.

use super::slice::{balance_of, finish};
use super::step::joined;
use super::{DryingSearch, NotTried, Pair, PlaceFigures, RoomFigures, Step};
use crate::design::CheckedDesign;
use crate::detail::FieldCache;
use crate::evaluate::Evaluation;
use crate::humidity::UnknownSpot;

/// The least of the steps that makes a room dry, or comes nearest to it.
#[derive(Clone, Debug, PartialEq)]
pub struct Drying {
    /// What is done, each kind once, from the design as it is; nothing where it is dry already or nothing helps.
    pub steps: Vec<Step>,
    /// The design with all of it taken.
    pub checked: CheckedDesign,
    /// The room.
    pub room: Pair<RoomFigures>,
    /// What still drips, frosts or moulds, worst and coldest first: nothing where the steps make the room dry. Of
    /// these places no step of the list takes the risk away.
    pub remaining: Vec<PlaceFigures>,
    /// Places of which nothing is known.
    pub unknown: Vec<UnknownSpot>,
}

impl Drying {
    /// Whether nothing drips, frosts or moulds with it.
    pub fn dries(&self) -> bool {
        self.remaining.is_empty() && self.unknown.is_empty()
    }

    /// What a run of steps made of a design.
    pub(super) fn of<'a>(
        before: &Evaluation,
        taken: impl IntoIterator<Item = &'a Step>,
        after: &Evaluation,
    ) -> Result<Self, NotTried> {
        let figures = |evaluation: &Evaluation| -> Result<RoomFigures, NotTried> {
            let balance = balance_of(evaluation)?;
            Ok(RoomFigures::of(evaluation, balance))
        };
        let balance = balance_of(after)?;
        Ok(Self {
            steps: joined(before.checked.design(), taken),
            checked: after.checked.clone(),
            room: Pair { before: figures(before)?, after: figures(after)? },
            remaining: PlaceFigures::at_risk(after, balance),
            unknown: after.cold_spots.unknown.clone(),
        })
    }
}

/// The least set of steps that makes a room dry in its own use, or what comes nearest to it.
///
/// Where one step does alone, the one that takes the least room, then asks the least heat. Else step after step is
/// taken, each the best for the place that is then worst; then every step without which no place comes to a risk that
/// it need not have is left out again. Where a step of them brought places to a risk that stay at it, as the sleeves of a
/// fan's dampers, and steps on surfaces might do, the same is tried without such steps. No smaller set is to be had by leaving one of them out; one of other steps there
/// may be.
///
/// # Errors
/// [`NotTried`]: only where the cache holds no solver and lacks a field.
pub fn least_that_dries(
    evaluation: &Evaluation,
    cache: &mut FieldCache,
) -> Result<Drying, NotTried> {
    let mut search = DryingSearch::new(&evaluation.checked);
    finish(cache, |cache| search.slice(cache))?;
    search.found().cloned().ok_or(NotTried::NoSolver)
}
