//! Whether steps on surfaces can dry a room at all.

use super::figures::PlaceFigures;
use super::slice::{NotTried, Pending, Slice, balance_of};
use super::{StepKind, steps_of};
use crate::design::CheckedDesign;
use crate::detail::FieldCache;
use crate::evaluate::Evaluation;
use crate::humidity::SpotPlace;
use crate::moisture::SurfaceRisk;

/// How many steps of each kind are taken at once: foam three inches deeper, all else to the end of its row.
const STEPS_OF_A_KIND: usize = 3;

/// A design with every step on its surfaces taken, looked at place by place until one stays at risk: then a search
/// among those steps is not worth its time.
#[derive(Clone, Debug)]
pub(super) struct AllSurfaces {
    checked: CheckedDesign,
    places: Vec<SpotPlace>,
    dried: usize,
    stays_at_risk: bool,
    pending: Option<Pending>,
}

impl AllSurfaces {
    pub(super) fn new(start: &Evaluation) -> Result<Self, NotTried> {
        let mut checked = start.checked.clone();
        for kind in StepKind::ALL.into_iter().filter(|kind| !kind.acts_on_air()) {
            for _ in 0..STEPS_OF_A_KIND {
                let steps = steps_of(checked.design());
                let step = steps.iter().find(|step| step.kind == kind);
                let Some(Ok(with)) = step.map(|step| step.taken_by(checked.design()).check())
                else {
                    break;
                };
                checked = with;
            }
        }
        let at_risk = PlaceFigures::at_risk(start, balance_of(start)?);
        Ok(Self {
            checked,
            places: at_risk.iter().map(|place| place.place).collect(),
            dried: 0,
            stays_at_risk: false,
            pending: None,
        })
    }

    /// Whether no place stays at risk, once all are looked at.
    pub(super) fn dries(&self) -> bool {
        !self.stays_at_risk
    }

    pub(super) fn slice(
        &mut self,
        start: &Evaluation,
        cache: &mut FieldCache,
    ) -> Result<Slice, NotTried> {
        let next = self.places.get(self.dried).filter(|_| !self.stays_at_risk);
        let Some(&place) = next else { return Ok(Slice::Done) };
        let new = || Pending::of_places(self.checked.clone(), &[place]);
        let pending = self.pending.get_or_insert_with(new);
        if let Some(detail) = pending.lacking(cache) {
            return Ok(Slice::Solve(Box::new(detail)));
        }
        let beside = pending.evaluate_beside(start, cache);
        let after = PlaceFigures::of(&beside, balance_of(&beside)?, place);
        self.stays_at_risk = after.is_none_or(|after| after.risk != SurfaceRisk::None);
        self.dried += 1;
        self.pending = None;
        Ok(Slice::Further)
    }
}
