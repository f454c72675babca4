//! The best step for one place of a room.

use super::figures::{Pair, PlaceFigures, RoomFigures};
use super::pruning::Taken;
use super::remedy::{Remedy, helps};
use super::slice::{NotTried, Pending, Slice, balance_of};
use super::{Step, steps_of};
use crate::design::CheckedDesign;
use crate::detail::FieldCache;
use crate::evaluate::Evaluation;
use crate::moisture::SurfaceRisk;

/// Steps tried for one place: those on surfaces at the place alone, those on the air whole.
#[derive(Clone, Debug)]
pub(super) struct Round {
    current: Evaluation,
    place: PlaceFigures,
    room: RoomFigures,
    /// Whether steps that bring other places to a risk are left aside.
    spares_others: bool,
    steps: Vec<Step>,
    next: usize,
    pending: Option<Pending>,
    best: Option<(Remedy, CheckedDesign)>,
}

impl Round {
    pub(super) fn new(
        current: Evaluation,
        place: PlaceFigures,
        spares_others: bool,
    ) -> Result<Self, NotTried> {
        Ok(Self {
            room: RoomFigures::of(&current, balance_of(&current)?),
            steps: steps_of(current.checked.design()),
            place,
            current,
            spares_others,
            next: 0,
            pending: None,
            best: None,
        })
    }

    /// The place, the room it is sought for, and the best step with the design that it makes; once all are tried.
    pub(super) fn into_best(self) -> (PlaceFigures, Evaluation, Option<(Taken, CheckedDesign)>) {
        let place = self.place.place;
        let best = self.best.map(|(remedy, checked)| (Taken { step: remedy.step, place }, checked));
        (self.place, self.current, best)
    }

    pub(super) fn slice(&mut self, cache: &mut FieldCache) -> Result<Slice, NotTried> {
        let Some(step) = self.steps.get(self.next) else { return Ok(Slice::Done) };
        let Some(pending) = &mut self.pending else {
            match step.taken_by(self.current.checked.design()).check() {
                Err(_) => self.next += 1,
                Ok(checked) if step.kind.acts_on_air() => {
                    self.pending = Some(Pending::all(checked));
                }
                Ok(checked) => {
                    self.pending = Some(Pending::of_places(checked, &[self.place.place]));
                }
            }
            return Ok(Slice::Further);
        };
        if let Some(detail) = pending.lacking(cache) {
            return Ok(Slice::Solve(Box::new(detail)));
        }
        let after = if step.kind.acts_on_air() {
            pending.evaluate(cache)
        } else {
            pending.evaluate_beside(&self.current, cache)
        };
        if let Some(remedy) = self.remedy(step, &after)? {
            let is_better = |best: &Remedy| remedy.in_order_with(best).is_lt();
            if self.best.as_ref().is_none_or(|(best, _)| is_better(best)) {
                self.best = Some((remedy, after.checked));
            }
        }
        self.next += 1;
        self.pending = None;
        Ok(Slice::Further)
    }

    /// What a step does for the place; `None` where it does not help, or harms where that is not wanted.
    fn remedy(&self, step: &Step, after: &Evaluation) -> Result<Option<Remedy>, NotTried> {
        let balance = balance_of(after)?;
        let Some(place) = PlaceFigures::of(after, balance, self.place.place) else {
            return Ok(None);
        };
        let place = Pair { before: self.place, after: place };
        let room = Pair { before: self.room, after: RoomFigures::of(after, balance) };
        let worse = worsened(&self.current, after)?;
        let is_wanted = worse.is_empty() || !self.spares_others;
        let remedy = Remedy { step: step.clone(), place, room, worse, changed: Vec::new() };
        Ok((is_wanted && helps(step, &place, &room)).then_some(remedy))
    }
}

/// The places that one evaluation has at a risk, or at a worse one, than another, coldest first.
pub(super) fn worsened(
    before: &Evaluation,
    after: &Evaluation,
) -> Result<Vec<PlaceFigures>, NotTried> {
    let judged = &balance_of(before)?.humidity.verdict.places;
    let risk_before = |place: &PlaceFigures| {
        let found = judged.iter().find(|judged| judged.place == place.place);
        found.map_or(SurfaceRisk::None, |judged| judged.risk)
    };
    let mut worse = PlaceFigures::at_risk(after, balance_of(after)?);
    worse.retain(|place| place.risk > risk_before(place));
    Ok(worse)
}
