//! The trial of all steps for some places, in slices.

use super::figures::{Pair, PlaceFigures, RoomFigures};
use super::remedy::{NotOffered, PlaceRemedies, Remedy, WhyNot, helps};
use super::round::worsened;
use super::slice::{NotTried, Pending, Slice, balance_of};
use super::{Step, steps_of};
use crate::design::{CheckedDesign, DesignError};
use crate::detail::{FieldCache, PlacedDetail};
use crate::envelope::ThermalBridge;
use crate::evaluate::Evaluation;
use crate::humidity::SpotPlace;

/// Which places remedies are sought for.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Sought {
    /// All at risk; in a dry room the weakest.
    AtRisk,
    /// One.
    Place(SpotPlace),
}

/// What a trial told.
#[derive(Clone, Debug)]
enum Told {
    /// The step is not lawful.
    Unlawful(Vec<DesignError>),
    /// It helps none of the places: what each would be.
    HelpsNone(Vec<Option<PlaceFigures>>),
    /// It may help: all that it does.
    Whole {
        room: RoomFigures,
        places: Vec<Option<PlaceFigures>>,
        worse: Vec<PlaceFigures>,
        changed: Vec<ThermalBridge>,
    },
}

/// The design as it is.
#[derive(Clone, Debug)]
struct Base {
    evaluation: Evaluation,
    room: RoomFigures,
    places: Vec<PlaceFigures>,
}

/// How far the trial of a step is.
#[derive(Clone, Debug)]
enum Trial {
    /// Its places are being solved.
    Places(Pending),
    /// It helps one of them: all of it is being solved.
    Whole(Pending),
}

/// The trial of every step for some places of a design. Each slice is one field to be solved by whoever runs it, or one
/// evaluation; what was found so far can be read between any two.
///
/// A step is first tried at the places alone: of one that helps none nothing else is solved.
#[derive(Clone, Debug)]
pub struct RemedySearch {
    sought: Sought,
    pending: Pending,
    base: Option<Base>,
    steps: Vec<Step>,
    told: Vec<Told>,
    trial: Option<Trial>,
}

impl RemedySearch {
    /// For every place at risk in the room's own use; in a dry room for its weakest place.
    pub fn at_risk(checked: &CheckedDesign) -> Self {
        Self::new(checked, Sought::AtRisk)
    }

    /// For one place.
    pub fn of_place(checked: &CheckedDesign, place: SpotPlace) -> Self {
        Self::new(checked, Sought::Place(place))
    }

    fn new(checked: &CheckedDesign, sought: Sought) -> Self {
        Self {
            sought,
            steps: steps_of(checked.design()),
            pending: Pending::all(checked.clone()),
            base: None,
            told: Vec::new(),
            trial: None,
        }
    }

    /// How many steps were tried, of how many.
    pub fn progress(&self) -> [usize; 2] {
        [self.told.len(), self.steps.len()]
    }

    /// Goes on by one slice.
    ///
    /// # Errors
    /// Where air and heat of the design itself are not known.
    pub fn slice(&mut self, cache: &mut FieldCache) -> Result<Slice, NotTried> {
        let Some(base) = &self.base else {
            if let Some(detail) = self.pending.lacking(cache) {
                return Ok(Slice::Solve(Box::new(detail)));
            }
            self.base = Some(Base::of(self.pending.evaluate(cache), self.sought)?);
            return Ok(Slice::Further);
        };
        let Some(step) = self.steps.get(self.told.len()) else {
            return Ok(Slice::Done);
        };
        if base.places.is_empty() {
            return Ok(Slice::Done);
        }
        match &mut self.trial {
            None => match step.taken_by(base.evaluation.checked.design()).check() {
                Err(errors) => self.told.push(Told::Unlawful(errors)),
                Ok(checked) if step.kind.acts_on_air() => {
                    self.trial = Some(Trial::Whole(Pending::all(checked)));
                }
                Ok(checked) => {
                    let places: Vec<_> = base.places.iter().map(|place| place.place).collect();
                    self.trial = Some(Trial::Places(Pending::of_places(checked, &places)));
                }
            },
            Some(Trial::Places(pending)) => {
                if let Some(detail) = pending.lacking(cache) {
                    return Ok(Slice::Solve(Box::new(detail)));
                }
                let beside = pending.evaluate_beside(&base.evaluation, cache);
                let (room, places) = base.seen_in(&beside)?;
                if base.is_helped(step, &room, &places) {
                    self.trial = Some(Trial::Whole(Pending::all(pending.checked.clone())));
                } else {
                    self.told.push(Told::HelpsNone(places));
                    self.trial = None;
                }
            }
            Some(Trial::Whole(pending)) => {
                if let Some(detail) = pending.lacking(cache) {
                    return Ok(Slice::Solve(Box::new(detail)));
                }
                let told = base.whole(&pending.evaluate(cache))?;
                self.told.push(told);
                self.trial = None;
            }
        }
        Ok(Slice::Further)
    }

    /// What was found so far, place by place.
    pub fn found(&self) -> Vec<PlaceRemedies> {
        let places = self.base.iter().flat_map(|base| base.places.iter().map(move |p| (base, p)));
        places.enumerate().map(|(n, (base, place))| self.found_for(base, n, place)).collect()
    }

    fn found_for(&self, base: &Base, n: usize, place: &PlaceFigures) -> PlaceRemedies {
        let (mut offered, mut not_offered) = (Vec::new(), Vec::new());
        for (step, told) in self.steps.iter().zip(&self.told) {
            let why = match told {
                Told::Unlawful(errors) => WhyNot::Unlawful(errors.clone()),
                Told::HelpsNone(places) => not_helped(places, n),
                Told::Whole { room, places, worse, changed } => {
                    let tried = base.remedy(step, room, place, places.get(n).copied().flatten());
                    if let Some((place, room)) = tried {
                        let (step, worse) = (step.clone(), worse.clone());
                        offered.push(Remedy { step, place, room, worse, changed: changed.clone() });
                        continue;
                    }
                    not_helped(places, n)
                }
            };
            not_offered.push(NotOffered { step: step.clone(), why });
        }
        // Equals stay in the order of the steps.
        offered.sort_by(Remedy::in_order_with);
        PlaceRemedies { place: *place, offered, not_offered }
    }
}

fn not_helped(places: &[Option<PlaceFigures>], n: usize) -> WhyNot {
    places.get(n).copied().flatten().map_or(WhyNot::NotKnown, WhyNot::DoesNotHelp)
}

impl Base {
    fn of(evaluation: Evaluation, sought: Sought) -> Result<Self, NotTried> {
        let balance = balance_of(&evaluation)?;
        let room = RoomFigures::of(&evaluation, balance);
        let one = |place| PlaceFigures::of(&evaluation, balance, place).into_iter().collect();
        let places: Vec<PlaceFigures> = match sought {
            Sought::Place(place) => one(place),
            Sought::AtRisk => {
                let at_risk = PlaceFigures::at_risk(&evaluation, balance);
                match evaluation.cold_spots.weakest() {
                    Some(weakest) if at_risk.is_empty() => one(weakest.place),
                    _ => at_risk,
                }
            }
        };
        Ok(Self { room, places, evaluation })
    }

    /// The room and the places in another evaluation.
    fn seen_in(
        &self,
        other: &Evaluation,
    ) -> Result<(RoomFigures, Vec<Option<PlaceFigures>>), NotTried> {
        let balance = balance_of(other)?;
        let seen = |place: &PlaceFigures| PlaceFigures::of(other, balance, place.place);
        Ok((RoomFigures::of(other, balance), self.places.iter().map(seen).collect()))
    }

    /// What a step does to a place and the room; `None` where it does not help.
    fn remedy(
        &self,
        step: &Step,
        room: &RoomFigures,
        before: &PlaceFigures,
        after: Option<PlaceFigures>,
    ) -> Option<(Pair<PlaceFigures>, Pair<RoomFigures>)> {
        let place = Pair { before: *before, after: after? };
        let room = Pair { before: self.room, after: *room };
        helps(step, &place, &room).then_some((place, room))
    }

    fn is_helped(&self, step: &Step, room: &RoomFigures, places: &[Option<PlaceFigures>]) -> bool {
        let mut pairs = self.places.iter().zip(places);
        pairs.any(|(before, after)| self.remedy(step, room, before, *after).is_some())
    }

    /// All that a step does.
    fn whole(&self, after: &Evaluation) -> Result<Told, NotTried> {
        let (room, places) = self.seen_in(after)?;
        let worse = worsened(&self.evaluation, after)?;
        let as_before = |placed: &PlacedDetail| {
            let before = &self.evaluation.details;
            before.iter().any(|one| one.place == placed.place && one.detail == placed.detail)
        };
        let changed = after.details.iter().filter(|placed| !as_before(placed));
        let changed = changed.map(|placed| placed.place).collect();
        Ok(Told::Whole { room, places, worse, changed })
    }
}
