//! Which steps help a cold place, each tried on the engine before it is offered.

use super::slice::finish;
use super::{NotTried, Pair, PlaceFigures, RemedySearch, RoomFigures, Step};
use crate::design::DesignError;
use crate::detail::FieldCache;
use crate::envelope::ThermalBridge;
use crate::evaluate::Evaluation;
use crate::humidity::SpotPlace;
use crate::moisture::SurfaceRisk;

/// A step helps a place only if it raises the temperature factor there by more: a quarter of a kelvin at 50 K.
/// Common practice, no source.
pub const LEAST_RISE: f64 = 0.005;

/// A step on the room's air helps a place that stays at its risk only if the room stands drier there by more, as a
/// share of relative humidity. Common practice, no source.
pub const LEAST_DRYING: f64 = 0.01;

/// A step that helps a place.
#[derive(Clone, Debug, PartialEq)]
pub struct Remedy {
    /// What is done.
    pub step: Step,
    /// The place it helps.
    pub place: Pair<PlaceFigures>,
    /// The room.
    pub room: Pair<RoomFigures>,
    /// Other places that it brings to a risk, or to a worse one, coldest first. A fan brings the sleeves of its
    /// dampers; a place that no longer takes water leaves it to others.
    pub worse: Vec<PlaceFigures>,
    /// The details that it changes: those whose fields had to be known anew.
    pub changed: Vec<ThermalBridge>,
}

/// Why a step is not offered.
#[derive(Clone, Debug, PartialEq)]
pub enum WhyNot {
    /// The design with it would not pass its check.
    Unlawful(Vec<DesignError>),
    /// It does nothing worth its work there; this is what the place would be, all else as it is unless the step is
    /// one that was tried for another place too.
    DoesNotHelp(PlaceFigures),
    /// Its field at the place does not solve.
    NotKnown,
}

/// A step that is not offered.
#[derive(Clone, Debug, PartialEq)]
pub struct NotOffered {
    /// What would be done.
    pub step: Step,
    /// Why not.
    pub why: WhyNot,
}

/// What was tried for one place.
#[derive(Clone, Debug, PartialEq)]
pub struct PlaceRemedies {
    /// The place as it is.
    pub place: PlaceFigures,
    /// What helps, best first.
    pub offered: Vec<Remedy>,
    /// What does not, in the order of [`StepKind::ALL`](super::StepKind::ALL).
    pub not_offered: Vec<NotOffered>,
}

/// Whether a step helps a place: it raises the temperature factor there; or, acting on the air, it takes away risk or
/// leaves the room drier than what the place stands.
pub(super) fn helps(step: &Step, place: &Pair<PlaceFigures>, room: &Pair<RoomFigures>) -> bool {
    let (before, after) = (&place.before, &place.after);
    if !step.kind.acts_on_air() {
        let rise = after.temperature_factor.value() - before.temperature_factor.value();
        return rise > LEAST_RISE;
    }
    if before.risk == SurfaceRisk::None {
        return false;
    }
    let drier = room.before.design_day.value() - room.after.design_day.value();
    after.risk < before.risk || (after.risk == before.risk && drier > LEAST_DRYING)
}

impl Remedy {
    /// Better first: the lesser risk at the place; of those that take the risk away, what brings the fewest other
    /// places to one, takes the least room, asks the least load; of those that do not, what gains the most.
    pub(super) fn in_order_with(&self, other: &Self) -> core::cmp::Ordering {
        let takes_risk_away = self.place.before.risk != SurfaceRisk::None
            && self.place.after.risk == SurfaceRisk::None;
        let risks = self.place.after.risk.cmp(&other.place.after.risk);
        let cost = || {
            let [one, other] = [&self.room.after, &other.room.after];
            let volume = one.lost_volume.value().total_cmp(&other.lost_volume.value());
            let load = one.load_at_work.value().total_cmp(&other.load_at_work.value());
            volume.then(load)
        };
        let margin = |remedy: &Self| remedy.place.after.margin_in(&remedy.room.after);
        let gain = || margin(other).total_cmp(&margin(self));
        risks.then_with(|| {
            if takes_risk_away {
                let brought = self.worse.len().cmp(&other.worse.len());
                brought.then_with(cost).then_with(gain)
            } else {
                gain().then_with(cost)
            }
        })
    }
}

/// Remedies for every place at risk in the room's own use, worst and coldest first; in a dry room, for its weakest
/// place. Each place with what helps it, best first.
///
/// Every step of [`steps_of`](super::steps_of) is tried with its fields solved, those that `cache` holds not again.
///
/// # Errors
/// [`NotTried`]: only where the cache holds no solver and lacks a field.
pub fn remedies(
    evaluation: &Evaluation,
    cache: &mut FieldCache,
) -> Result<Vec<PlaceRemedies>, NotTried> {
    let mut search = RemedySearch::at_risk(&evaluation.checked);
    finish(cache, |cache| search.slice(cache))?;
    Ok(search.found())
}

/// Remedies for one place, as [`remedies`]; nothing where the room has no such place.
///
/// # Errors
/// As [`remedies`].
pub fn remedies_for(
    evaluation: &Evaluation,
    place: SpotPlace,
    cache: &mut FieldCache,
) -> Result<Vec<PlaceRemedies>, NotTried> {
    let mut search = RemedySearch::of_place(&evaluation.checked, place);
    finish(cache, |cache| search.slice(cache))?;
    Ok(search.found())
}
