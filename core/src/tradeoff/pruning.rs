//! Leaving out again what a room does not need to be as dry as it is.

use super::figures::PlaceFigures;
use super::slice::{NotTried, Pending, Slice, balance_of};
use super::{Step, StepKind};
use crate::design::{CheckedDesign, Design};
use crate::detail::FieldCache;
use crate::evaluate::Evaluation;
use crate::humidity::SpotPlace;
use crate::moisture::SurfaceRisk;
use crate::room::Room;

/// A step with the place it was taken for.
#[derive(Clone, Debug)]
pub(super) struct Taken {
    pub(super) step: Step,
    pub(super) place: SpotPlace,
}

/// How far the trial of leaving a step out is.
#[derive(Clone, Debug)]
enum Trial {
    /// The place it was taken for is being solved.
    Place(Pending),
    /// All of it is.
    Whole(Pending),
}

/// Steps left out one by one, those first that take the most room. Of each kind only the last can go, as the others
/// lead to it.
#[derive(Clone, Debug)]
pub(super) struct Pruning {
    start: CheckedDesign,
    taken: Vec<Taken>,
    /// Whether a step is known to be needed.
    needed: Vec<bool>,
    current: Evaluation,
    /// What may stay at risk: what nothing helps.
    allowed: Vec<(SpotPlace, SurfaceRisk)>,
    trial: Option<(usize, Trial)>,
}

impl Pruning {
    pub(super) fn new(
        start: CheckedDesign,
        taken: Vec<Taken>,
        current: Evaluation,
    ) -> Result<Self, NotTried> {
        let at_risk = PlaceFigures::at_risk(&current, balance_of(&current)?);
        Ok(Self {
            allowed: at_risk.iter().map(|place| (place.place, place.risk)).collect(),
            needed: vec![false; taken.len()],
            start,
            taken,
            current,
            trial: None,
        })
    }

    /// What is left.
    pub(super) fn taken(&self) -> &[Taken] {
        &self.taken
    }

    /// The design with what is left.
    pub(super) fn current(&self) -> &Evaluation {
        &self.current
    }

    fn is_allowed(&self, place: &PlaceFigures) -> bool {
        self.allowed.iter().any(|&(allowed, risk)| allowed == place.place && place.risk <= risk)
    }

    fn without(&self, n: usize) -> Design {
        let others = self.taken.iter().enumerate().filter(|&(other, _)| other != n);
        others.fold(self.start.design().clone(), |design, (_, taken)| taken.step.taken_by(&design))
    }

    /// The next step to be left out, with the design that is then left.
    fn next(&mut self) -> Option<(usize, CheckedDesign)> {
        let mut best: Option<(usize, CheckedDesign, f64)> = None;
        for n in 0..self.taken.len() {
            let kind: StepKind = self.taken[n].step.kind;
            let is_last = self.taken[n + 1..].iter().all(|later| later.step.kind != kind);
            if self.needed[n] || !is_last {
                continue;
            }
            let Ok(checked) = self.without(n).check() else {
                self.needed[n] = true;
                continue;
            };
            let lost = Room::of(&checked).lost_volume.value();
            if best.as_ref().is_none_or(|(_, _, least)| lost < *least) {
                best = Some((n, checked, lost));
            }
        }
        best.map(|(n, checked, _)| (n, checked))
    }

    /// Goes on by one slice.
    pub(super) fn slice(&mut self, cache: &mut FieldCache) -> Result<Slice, NotTried> {
        let Some((n, mut trial)) = self.trial.take() else {
            let Some((n, checked)) = self.next() else { return Ok(Slice::Done) };
            let place = self.taken[n].place;
            self.trial = Some((n, Trial::Place(Pending::of_places(checked, &[place]))));
            return Ok(Slice::Further);
        };
        let (Trial::Place(pending) | Trial::Whole(pending)) = &mut trial;
        if let Some(detail) = pending.lacking(cache) {
            self.trial = Some((n, trial));
            return Ok(Slice::Solve(Box::new(detail)));
        }
        match trial {
            Trial::Place(pending) => {
                let beside = pending.evaluate_beside(&self.current, cache);
                let place = PlaceFigures::of(&beside, balance_of(&beside)?, self.taken[n].place);
                let stays = |place: &PlaceFigures| {
                    place.risk == SurfaceRisk::None || self.is_allowed(place)
                };
                if place.as_ref().is_none_or(stays) {
                    self.trial = Some((n, Trial::Whole(Pending::all(pending.checked))));
                } else {
                    self.needed[n] = true;
                }
            }
            Trial::Whole(pending) => {
                let without = pending.evaluate(cache);
                let at_risk = PlaceFigures::at_risk(&without, balance_of(&without)?);
                if at_risk.iter().all(|place| self.is_allowed(place)) {
                    self.taken.remove(n);
                    self.needed.remove(n);
                    self.current = without;
                } else {
                    self.needed[n] = true;
                }
            }
        }
        Ok(Slice::Further)
    }
}

#[cfg(test)]
mod tests {
    use super::{Pruning, Taken};
    use crate::design::{Design, FloorRecesses, PersonnelDoor, RoomUse, Surface, WindowSpacer};
    use crate::detail::FieldCache;
    use crate::envelope::{End, ThermalBridge};
    use crate::evaluate::evaluate;
    use crate::humidity::SpotPlace;
    use crate::tradeoff::slice::finish;
    use crate::tradeoff::{StepKind, steps_of};

    /// Packing and better windows for a bedroom whose windows stand its humidity go; so does the second rung of a
    /// ladder whose first is enough. Without any one of those that stay it would not
    /// be dry.
    #[test]
    fn what_a_dry_room_does_not_need_is_left_out() {
        let mut start = Design::default();
        start.take_use(RoomUse::Sleeping);
        start.floor_recesses = FloorRecesses::Filled;
        start.personnel_door = PersonnelDoor::None;
        start.window_spacer = WindowSpacer::WarmEdge;
        let wanted = [
            (StepKind::BuildOutEndWalls, ThermalBridge::BottomCasting(End::Front)),
            (StepKind::DeepenSideWallFoam, ThermalBridge::StudHead),
            (StepKind::WrapFloorMembers, ThermalBridge::FloorMember),
            (StepKind::WrapFloorMembers, ThermalBridge::FloorMember),
            (StepKind::HoldJoistsOff, ThermalBridge::JoistEnd),
            (StepKind::HoldJoistsOff, ThermalBridge::JoistEnd),
            (StepKind::PackOpeningFrames, ThermalBridge::FrameLine(Surface::SideWall)),
            (StepKind::BetterWindows, ThermalBridge::FrameLine(Surface::SideWall)),
        ];
        let (mut design, mut taken) = (start.clone(), Vec::new());
        for (kind, place) in wanted {
            let steps = steps_of(&design);
            let step = steps.into_iter().find(|step| step.kind == kind).expect("it stands open");
            design = step.taken_by(&design);
            taken.push(Taken { step, place: SpotPlace::Detail(place) });
        }
        let mut cache = FieldCache::default();
        let all = evaluate(&design.check().expect("lawful"), &mut cache);
        let mut pruning =
            Pruning::new(start.check().expect("lawful"), taken, all).expect("air is known");
        finish(&mut cache, |cache| pruning.slice(cache)).expect("a cache that solves");
        let left: Vec<StepKind> = pruning.taken().iter().map(|taken| taken.step.kind).collect();
        assert!(left.len() < wanted.len() - 2, "a second rung too is left out: {left:?}");
        for surplus in [StepKind::PackOpeningFrames, StepKind::BetterWindows] {
            assert!(!left.contains(&surplus), "{left:?}");
        }
        for (out, kind) in left.iter().enumerate() {
            let mut fewer = start.clone();
            for (n, taken) in pruning.taken().iter().enumerate() {
                // The higher rungs of its ladder go with it.
                if n < out || taken.step.kind != *kind {
                    fewer = taken.step.taken_by(&fewer);
                }
            }
            let fewer = evaluate(&fewer.check().expect("lawful"), &mut cache);
            let balance = fewer.balance.as_ref().expect("air is known");
            assert!(!balance.humidity.verdict.is_dry(), "{kind:?} could go too");
        }
        let balance = pruning.current().balance.as_ref().expect("air is known");
        assert!(balance.humidity.verdict.is_dry());
    }
}
