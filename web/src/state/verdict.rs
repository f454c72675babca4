//! What becomes of damp in this room, with its use, its air and its place.

use inchwise_core::evaluate::Evaluation;
use inchwise_core::moisture::{ColdSpot, SpotPlace, SurfaceRisk};
use inchwise_core::units::{Mass, RelativeHumidity};

/// What a humidity does to a place.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Risk {
    /// Nothing.
    Dry,
    /// Mould may grow.
    Mould,
    /// It drips.
    Drip,
    /// What lands there freezes.
    Frost,
}

/// What becomes of damp.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Verdict {
    /// How humid the room stands through a cold spell, once the cold places have taken their part.
    pub stands_at: RelativeHumidity,
    /// How humid it would be in the busy hours if no place took any.
    pub busy: RelativeHumidity,
    /// Places that frost.
    pub frost: usize,
    /// Places that drip.
    pub drip: usize,
    /// Places where mould may grow.
    pub mould: usize,
    /// The coldest place.
    pub coldest: Option<SpotPlace>,
    /// What lands on cold places in a day of the cold spell.
    pub a_day: Mass,
}

/// What the room's own humidity does to a place.
pub fn risk_at(evaluation: &Evaluation, spot: &ColdSpot) -> Risk {
    let Ok(damp) = evaluation.damp() else { return Risk::Dry };
    match damp.risk_at(spot) {
        SurfaceRisk::None => Risk::Dry,
        SurfaceRisk::Mould => Risk::Mould,
        SurfaceRisk::Drip if spot.frosts() => Risk::Frost,
        SurfaceRisk::Drip => Risk::Drip,
    }
}

impl Verdict {
    /// The verdict on an evaluation; none where a formula does not reach.
    pub fn of(evaluation: &Evaluation) -> Option<Self> {
        const SECONDS_IN_A_DAY: f64 = 86_400.0;
        let damp = evaluation.damp().ok()?;
        let spots = &evaluation.cold_spots.spots;
        let count = |risk| spots.iter().filter(|spot| risk_at(evaluation, spot) == risk).count();
        Some(Self {
            stands_at: damp.cold_spots.room.relative_humidity(),
            busy: damp.busy.ventilated(),
            frost: count(Risk::Frost),
            drip: count(Risk::Drip),
            mould: count(Risk::Mould),
            coldest: evaluation.cold_spots.weakest().map(|spot| spot.place),
            a_day: Mass::new(damp.cold_spots.condensing.rate.value() * SECONDS_IN_A_DAY),
        })
    }

    /// The worst of it, and on how many places.
    pub const fn worst(&self) -> (Risk, usize) {
        if self.frost > 0 {
            (Risk::Frost, self.frost)
        } else if self.drip > 0 {
            (Risk::Drip, self.drip)
        } else if self.mould > 0 {
            (Risk::Mould, self.mould)
        } else {
            (Risk::Dry, 0)
        }
    }

    /// How many places are not dry.
    pub const fn wet_places(&self) -> usize {
        self.frost + self.drip + self.mould
    }
}
