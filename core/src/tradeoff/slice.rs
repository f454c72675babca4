//! Evaluations in slices: one field at a time, so that a program may stop between any two.

use crate::design::CheckedDesign;
use crate::detail::{Detail, Effort, FieldCache, first_lacking};
use crate::envelope::{Envelope, ThermalBridge};
use crate::evaluate::{Balance, Evaluation, NotReckoned, evaluate_with};
use crate::humidity::SpotPlace;
use crate::room::Room;

/// What comes of one slice of a search.
#[derive(Clone, Debug, PartialEq)]
pub enum Slice {
    /// A field is wanted: solve it in whatever way, insert it into the cache, and go on.
    Solve(Box<Detail>),
    /// Something more is known; go on.
    Further,
    /// All is known.
    Done,
}

/// Why a search was given up.
#[derive(Clone, Debug, PartialEq)]
pub enum NotTried {
    /// The air and heat of the design are not known.
    NotReckoned(NotReckoned),
    /// A field is wanted, and the cache holds no solver.
    NoSolver,
}

impl core::fmt::Display for NotTried {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        match self {
            Self::NotReckoned(why) => why.fmt(f),
            Self::NoSolver => f.write_str("a field is not known and nothing solves it"),
        }
    }
}

impl std::error::Error for NotTried {}

/// The balance of an evaluation.
pub(super) fn balance_of(evaluation: &Evaluation) -> Result<&Balance, NotTried> {
    evaluation.balance.as_ref().map_err(|why| NotTried::NotReckoned(why.clone()))
}

/// A design whose fields are being solved, all of them or those of chosen places.
#[derive(Clone, Debug)]
pub(super) struct Pending {
    pub(super) checked: CheckedDesign,
    bridges: Vec<ThermalBridge>,
    next: usize,
}

impl Pending {
    /// All of a design.
    pub(super) fn all(checked: CheckedDesign) -> Self {
        Self::such(checked, |_| true)
    }

    /// What tells how cold some places are.
    pub(super) fn of_places(checked: CheckedDesign, places: &[SpotPlace]) -> Self {
        let tells = |bridge: ThermalBridge| {
            // The edge of a door or window is seen in the sections of its frame and of its foot.
            let opening = bridge.opening_shown().map(SpotPlace::of_opening);
            [Some(SpotPlace::of(bridge)), opening]
                .into_iter()
                .flatten()
                .any(|place| places.contains(&place))
        };
        Self::such(checked, tells)
    }

    fn such(checked: CheckedDesign, wanted: impl Fn(ThermalBridge) -> bool) -> Self {
        let clear = Room::of(&checked).clear;
        let envelope = Envelope::of(&checked, &clear);
        let bridges = envelope.thermal_bridges.iter().map(|&(bridge, _)| bridge);
        Self { bridges: bridges.filter(|&bridge| wanted(bridge)).collect(), checked, next: 0 }
    }

    /// What has to be solved next.
    pub(super) fn lacking(&mut self, cache: &FieldCache) -> Option<Detail> {
        while let Some(&bridge) = self.bridges.get(self.next) {
            if let Some(detail) = first_lacking(&self.checked, bridge, cache) {
                return Some(detail);
            }
            self.next += 1;
        }
        None
    }

    /// The evaluation once nothing of it is lacking; a field that the cache has dropped since is solved again.
    pub(super) fn evaluate(&self, cache: &mut FieldCache) -> Evaluation {
        evaluate_with(&self.checked, cache, Effort::All)
    }

    /// The evaluation once nothing of its places is lacking, with all other fields as in another design: what a step
    /// does to a place before all that it does is known. Whatever else the cache may hold is left aside, so that the
    /// answer does not hang on it.
    pub(super) fn evaluate_beside(&self, other: &Evaluation, cache: &mut FieldCache) -> Evaluation {
        let mut own = FieldCache::without_solver();
        for &bridge in &self.bridges {
            while let Some(detail) = first_lacking(&self.checked, bridge, &own) {
                let Some(field) = cache.get_or_solve(&detail) else { break };
                own.insert(detail, field);
            }
        }
        evaluate_with(&self.checked, &mut own, Effort::Known).with_waiting_from(other)
    }
}

/// Goes on with a search until it is done.
pub(super) fn finish(
    cache: &mut FieldCache,
    mut slice: impl FnMut(&mut FieldCache) -> Result<Slice, NotTried>,
) -> Result<(), NotTried> {
    loop {
        match slice(cache)? {
            Slice::Solve(detail) => {
                if cache.get_or_solve(&detail).is_none() {
                    return Err(NotTried::NoSolver);
                }
            }
            Slice::Further => {}
            Slice::Done => return Ok(()),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::{Pending, Slice, finish};
    use crate::design::{CheckedDesign, Design};
    use crate::detail::FieldCache;
    use crate::evaluate::evaluate;
    use crate::units::Length;

    /// With its own fields alone every place, the edge of a window too, is as cold as in the whole.
    #[test]
    fn a_place_tried_alone_is_as_cold_as_in_the_whole() {
        let mut cache = FieldCache::default();
        let before = evaluate(&CheckedDesign::default(), &mut cache);
        let changed = Design {
            side_wall_foam: Length::mm(75.0),
            opening_frame_foam: Length::mm(40.0),
            ..Design::default()
        };
        let changed = changed.check().expect("lawful");
        let whole = evaluate(&changed, &mut cache);
        let factor = |of: &crate::evaluate::Evaluation, place| {
            let spot = of.cold_spots.spots.iter().find(|spot| spot.place == place);
            spot.map(|spot| spot.temperature_factor)
        };
        let mut moved = 0;
        for spot in &whole.cold_spots.spots {
            let mut pending = Pending::of_places(changed.clone(), &[spot.place]);
            let solved = finish(&mut cache, |cache| {
                let detail = pending.lacking(cache);
                Ok(detail.map_or(Slice::Done, |detail| Slice::Solve(Box::new(detail))))
            });
            assert_eq!(solved, Ok(()));
            let beside = pending.evaluate_beside(&before, &mut cache);
            let (alone, known) = (factor(&beside, spot.place), Some(spot.temperature_factor));
            assert_eq!(alone, known, "{}", spot.place.key());
            moved += usize::from(known != factor(&before, spot.place));
        }
        assert!(moved > 10, "only {moved} places were moved by the change");
    }
}
