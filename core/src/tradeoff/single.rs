//! Whether a step dries a room alone.

use super::figures::{PlaceFigures, RoomFigures};
use super::slice::{NotTried, Pending, Slice, balance_of};
use super::{Step, steps_of};
use crate::detail::FieldCache;
use crate::evaluate::Evaluation;
use crate::humidity::SpotPlace;
use crate::moisture::SurfaceRisk;

/// Steps tried one by one, whether they dry the room alone.
#[derive(Clone, Debug)]
pub(super) struct Single {
    steps: Vec<Step>,
    next: usize,
    /// The places at risk, and how many of them the step at hand is known to dry.
    places: Vec<SpotPlace>,
    dried: usize,
    pending: Option<Pending>,
    best: Option<(Step, RoomFigures, Evaluation)>,
}

impl Single {
    pub(super) fn new(start: &Evaluation, at_risk: &[PlaceFigures]) -> Self {
        Self {
            steps: steps_of(start.checked.design()),
            next: 0,
            places: at_risk.iter().map(|place| place.place).collect(),
            dried: 0,
            pending: None,
            best: None,
        }
    }

    /// The best that dries the room, once all are tried.
    pub(super) fn into_best(self) -> Option<(Step, Evaluation)> {
        self.best.map(|(step, _, after)| (step, after))
    }

    /// A step on surfaces is given up at the first place at risk that it does not dry.
    pub(super) fn slice(
        &mut self,
        start: &Evaluation,
        cache: &mut FieldCache,
    ) -> Result<Slice, NotTried> {
        let Some(step) = self.steps.get(self.next) else { return Ok(Slice::Done) };
        let place = if step.kind.acts_on_air() { None } else { self.places.get(self.dried) };
        let Some(pending) = &mut self.pending else {
            match step.taken_by(start.checked.design()).check() {
                Err(_) => self.next += 1,
                Ok(checked) => {
                    self.pending = Some(match place {
                        Some(&place) => Pending::of_places(checked, &[place]),
                        None => Pending::all(checked),
                    });
                }
            }
            return Ok(Slice::Further);
        };
        if let Some(detail) = pending.lacking(cache) {
            return Ok(Slice::Solve(Box::new(detail)));
        }
        if let Some(&place) = place {
            let beside = pending.evaluate_beside(start, cache);
            let after = PlaceFigures::of(&beside, balance_of(&beside)?, place);
            if after.is_some_and(|after| after.risk == SurfaceRisk::None) {
                self.dried += 1;
            } else {
                self.next += 1;
                self.dried = 0;
            }
        } else {
            let after = pending.evaluate(cache);
            let balance = balance_of(&after)?;
            let room = RoomFigures::of(&after, balance);
            let costs = |room: &RoomFigures| [room.lost_volume.value(), room.load_at_work.value()];
            let is_less = |best: &RoomFigures| costs(&room) < costs(best);
            if balance.humidity.verdict.is_dry()
                && self.best.as_ref().is_none_or(|(_, best, _)| is_less(best))
            {
                self.best = Some((step.clone(), room, after));
            }
            self.next += 1;
            self.dried = 0;
        }
        self.pending = None;
        Ok(Slice::Further)
    }
}
