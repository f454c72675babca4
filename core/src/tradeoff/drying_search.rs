//! The search for the least that makes a room dry, in slices.

use super::Drying;
use super::all_surfaces::AllSurfaces;
use super::figures::PlaceFigures;
use super::pruning::{Pruning, Taken};
use super::round::{Round, worsened};
use super::single::Single;
use super::slice::{NotTried, Pending, Slice, balance_of};
use crate::design::CheckedDesign;
use crate::detail::FieldCache;
use crate::evaluate::Evaluation;
use crate::humidity::SpotPlace;

/// The least that makes a room dry ([`least_that_dries`](super::least_that_dries)). Each slice is one field to be solved
/// by whoever runs it, or one evaluation.
#[derive(Clone, Debug)]
pub struct DryingSearch {
    stage: Stage,
    /// The design as it is, once known.
    start: Option<Evaluation>,
    taken: Vec<Taken>,
    /// Places that nothing helps any more.
    stuck: Vec<SpotPlace>,
    /// What a first run ended with, where a second is made without steps that bring other places to a risk.
    first: Option<Box<Drying>>,
}

#[derive(Clone, Debug)]
enum Stage {
    /// The design as it is.
    Start(Pending),
    /// One step alone.
    Single(Box<Single>),
    /// The next step for the worst place.
    Round(Box<Round>),
    /// All that the step does which was found the best.
    Take(Pending),
    /// What is not needed is left out again.
    Pruning(Box<Pruning>),
    /// Whether a second run is worth while.
    AllSurfaces(Box<AllSurfaces>),
    Done(Box<Drying>),
}

impl DryingSearch {
    /// For a design in its own use.
    pub fn new(checked: &CheckedDesign) -> Self {
        Self {
            stage: Stage::Start(Pending::all(checked.clone())),
            start: None,
            taken: Vec::new(),
            stuck: Vec::new(),
            first: None,
        }
    }

    /// What was found, once the search is done.
    pub fn found(&self) -> Option<&Drying> {
        match &self.stage {
            Stage::Done(drying) => Some(drying),
            _ => None,
        }
    }

    /// Goes on by one slice.
    ///
    /// # Errors
    /// Where air and heat of a design are not known.
    pub fn slice(&mut self, cache: &mut FieldCache) -> Result<Slice, NotTried> {
        let slice = match &mut self.stage {
            Stage::Done(_) => return Ok(Slice::Done),
            Stage::Start(pending) | Stage::Take(pending) => {
                pending.lacking(cache).map_or(Slice::Done, |detail| Slice::Solve(Box::new(detail)))
            }
            Stage::Single(single) => match &self.start {
                Some(start) => single.slice(start, cache)?,
                None => Slice::Done,
            },
            Stage::Round(round) => round.slice(cache)?,
            Stage::Pruning(pruning) => pruning.slice(cache)?,
            Stage::AllSurfaces(all) => match &self.start {
                Some(start) => all.slice(start, cache)?,
                None => Slice::Done,
            },
        };
        if slice == Slice::Done {
            self.stage = self.next(cache)?;
            return Ok(Slice::Further);
        }
        Ok(slice)
    }

    /// The stage after one that is done.
    fn next(&mut self, cache: &mut FieldCache) -> Result<Stage, NotTried> {
        let stage = self.stage.clone();
        if let Stage::Start(pending) = &stage {
            let start = pending.evaluate(cache);
            let at_risk = PlaceFigures::at_risk(&start, balance_of(&start)?);
            let stage = if at_risk.is_empty() {
                Stage::Done(Box::new(Drying::of(&start, [], &start)?))
            } else {
                Stage::Single(Box::new(Single::new(&start, &at_risk)))
            };
            self.start = Some(start);
            return Ok(stage);
        }
        let Some(start) = self.start.clone() else { return Ok(stage) };
        match stage {
            Stage::Start(_) | Stage::Done(_) => Ok(stage),
            Stage::Single(single) => match single.into_best() {
                Some((step, after)) => {
                    Ok(Stage::Done(Box::new(Drying::of(&start, [&step], &after)?)))
                }
                None => self.round(start),
            },
            Stage::Round(round) => match round.into_best() {
                (_, _, Some((taken, checked))) => {
                    self.taken.push(taken);
                    Ok(Stage::Take(Pending::all(checked)))
                }
                (place, current, None) => {
                    self.stuck.push(place.place);
                    match self.first.clone() {
                        // A second run is no use unless it dries the room.
                        Some(first) => Ok(Stage::Done(first)),
                        None => self.round(current),
                    }
                }
            },
            Stage::Take(pending) => self.round(pending.evaluate(cache)),
            Stage::Pruning(pruning) => {
                let steps = pruning.taken().iter().map(|taken| &taken.step);
                let found = Box::new(Drying::of(&start, steps, pruning.current())?);
                match self.first.take() {
                    Some(first) => Ok(Stage::Done(if found.dries() { found } else { first })),
                    None if found.dries() || worsened(&start, pruning.current())?.is_empty() => {
                        Ok(Stage::Done(found))
                    }
                    None => {
                        self.first = Some(found);
                        Ok(Stage::AllSurfaces(Box::new(AllSurfaces::new(&start)?)))
                    }
                }
            }
            Stage::AllSurfaces(all) => match self.first.clone() {
                Some(first) if !all.dries() => Ok(Stage::Done(first)),
                _ => {
                    self.taken.clear();
                    self.stuck.clear();
                    self.round(start)
                }
            },
        }
    }

    /// The worst place that something may still help; once there is none, what is not needed is left out.
    fn round(&self, current: Evaluation) -> Result<Stage, NotTried> {
        let at_risk = PlaceFigures::at_risk(&current, balance_of(&current)?);
        let worst = at_risk.into_iter().find(|place| !self.stuck.contains(&place.place));
        let Some(place) = worst else {
            let start = self.start.as_ref().unwrap_or(&current).checked.clone();
            let taken = self.taken.clone();
            return Ok(Stage::Pruning(Box::new(Pruning::new(start, taken, current)?)));
        };
        let spares_others = self.first.is_some();
        Ok(Stage::Round(Box::new(Round::new(current, place, spares_others)?)))
    }
}
