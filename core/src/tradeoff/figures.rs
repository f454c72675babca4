//! What is told of a room and of a place, to be compared before and after a step.

use crate::envelope::SurfaceKind;
use crate::evaluate::{Balance, Evaluation};
use crate::freight_box::Dimensions;
use crate::humidity::{PlaceVerdict, SpotPlace};
use crate::moisture::{HumidityLimit, SurfaceRisk};
use crate::units::{Area, Length, Power, RelativeHumidity, Temperature, TemperatureFactor, Volume};

/// The same figures before and after.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Pair<T> {
    /// Of the design as it is.
    pub before: T,
    /// With the step taken.
    pub after: T,
}

/// The figures of a room that a step may move.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RoomFigures {
    /// Heat load with the fan off, drying included.
    pub load_at_rest: Power,
    /// Heat load with the fan at the flow that the use needs, drying included.
    pub load_at_work: Power,
    /// How humid the room stands on a day of use at the design temperature.
    pub design_day: RelativeHumidity,
    /// The factor that opaque surfaces need in the critical month; `None` where no month is heated.
    pub needed_factor: Option<TemperatureFactor>,
    /// Between the finished faces.
    pub clear: Dimensions,
    /// Clear length × clear width.
    pub floor_area: Area,
    /// Headroom under what is left standing in the corners.
    pub headroom_under_corners: Length,
    /// Bare volume less what is left of it.
    pub lost_volume: Volume,
    /// Places that drip or frost.
    pub dripping: usize,
    /// Places that mould and do not drip.
    pub moulding: usize,
}

impl RoomFigures {
    /// The figures of an evaluation.
    pub(super) fn of(evaluation: &Evaluation, balance: &Balance) -> Self {
        let room = &evaluation.room;
        let verdict = &balance.humidity.verdict;
        let count = |risk| verdict.places.iter().filter(|place| place.risk == risk).count();
        Self {
            load_at_rest: balance.load.at_rest.total(),
            load_at_work: balance.load.at_work.total(),
            design_day: verdict.design_day,
            needed_factor: verdict.needed_factor,
            clear: room.clear,
            floor_area: room.floor_area,
            headroom_under_corners: room.headroom_under_corners,
            lost_volume: room.lost_volume,
            dripping: count(SurfaceRisk::Drip),
            moulding: count(SurfaceRisk::Mould),
        }
    }

    /// Places that anything happens to.
    pub const fn at_risk(&self) -> usize {
        self.dripping + self.moulding
    }
}

/// One place of a room.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PlaceFigures {
    /// Where.
    pub place: SpotPlace,
    /// What kind of surface it is, and so by what it is judged.
    pub kind: SurfaceKind,
    /// Its temperature factor.
    pub temperature_factor: TemperatureFactor,
    /// Its surface temperature at the design temperatures.
    pub surface_temperature: Temperature,
    /// How humid the room may be there.
    pub limit: HumidityLimit,
    /// What the use brings to it.
    pub risk: SurfaceRisk,
    /// Whether what condenses there at the design hour freezes.
    pub freezes: bool,
}

impl PlaceFigures {
    /// A place of an evaluation; `None` where it is not known, or not there.
    pub(super) fn of(evaluation: &Evaluation, balance: &Balance, place: SpotPlace) -> Option<Self> {
        let judged = balance.humidity.verdict.places.iter().find(|judged| judged.place == place)?;
        Self::judged(evaluation, judged)
    }

    /// Every place that anything happens to, worst and coldest first.
    pub(super) fn at_risk(evaluation: &Evaluation, balance: &Balance) -> Vec<Self> {
        let judged = balance.humidity.verdict.at_risk();
        judged.filter_map(|judged| Self::judged(evaluation, judged)).collect()
    }

    fn judged(evaluation: &Evaluation, judged: &PlaceVerdict) -> Option<Self> {
        let spots = &evaluation.cold_spots.spots;
        let spot = spots.iter().find(|spot| spot.place == judged.place)?;
        Some(Self {
            place: judged.place,
            kind: judged.kind,
            temperature_factor: judged.temperature_factor,
            surface_temperature: spot.surface_temperature,
            limit: spot.limit,
            risk: judged.risk,
            freezes: judged.freezes,
        })
    }

    /// How far it is from its risk in a room, to be compared at equal risk only: what moulds, by temperature factor;
    /// any other, by the humidity that it stands.
    pub(super) fn margin_in(&self, room: &RoomFigures) -> f64 {
        match (self.risk, room.needed_factor) {
            (SurfaceRisk::Mould, Some(needed)) => self.temperature_factor.value() - needed.value(),
            _ => self.limit.drip.value() - room.design_day.value(),
        }
    }
}
