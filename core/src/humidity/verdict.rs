//! What the room's own humidity brings to each of its places, each by its own clause.
//!
//! Water and frost come in hours: they are judged at the design temperature, with the humidity of a day of use,
//! whose ups and downs the lining evens out. Mould needs days: it is judged at the critical month, and on opaque surfaces only. Frames, leaves and glazing
//! are judged by condensation on the coldest day alone (ISO 13788:2012, clause 5).

use super::{ColdSpot, ColdSpots, RoomHumidity, RoomMonths, SpotPlace};
use crate::envelope::SurfaceKind;
use crate::moisture::SurfaceRisk;
use crate::units::{RelativeHumidity, TemperatureFactor};

/// One place in this room.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PlaceVerdict {
    /// Where.
    pub place: SpotPlace,
    /// What kind of surface it is, and so by what it is judged.
    pub kind: SurfaceKind,
    /// Its temperature factor.
    pub temperature_factor: TemperatureFactor,
    /// What the use brings to it.
    pub risk: SurfaceRisk,
    /// Whether what condenses there at the design hour freezes.
    pub freezes: bool,
}

/// Every known place in this room, coldest first.
#[derive(Clone, Debug, PartialEq)]
pub struct Verdict {
    /// How humid the room stands on a day of use at the design temperature.
    pub design_day: RelativeHumidity,
    /// Index from January of the month by which mould is judged; `None` where none is heated.
    pub critical_month: Option<usize>,
    /// The factor that an opaque surface needs in that month.
    pub needed_factor: Option<TemperatureFactor>,
    /// Each place.
    pub places: Vec<PlaceVerdict>,
    /// Whether places are still being solved, so that a worse one may turn up.
    pub is_waiting: bool,
}

impl Verdict {
    pub(super) fn of(spots: &ColdSpots, day: &RoomHumidity, months: &RoomMonths) -> Self {
        let design_day = day.ventilated();
        let needed_factor = months.needed_factor();
        let judged = |spot: &ColdSpot| {
            let drips = spot.limit.risk(design_day) == SurfaceRisk::Drip;
            let moulds = spot.kind == SurfaceKind::Opaque
                && needed_factor.is_some_and(|needed| spot.temperature_factor < needed);
            PlaceVerdict {
                place: spot.place,
                kind: spot.kind,
                temperature_factor: spot.temperature_factor,
                risk: match (drips, moulds) {
                    (true, _) => SurfaceRisk::Drip,
                    (false, true) => SurfaceRisk::Mould,
                    (false, false) => SurfaceRisk::None,
                },
                freezes: drips && spot.frosts(),
            }
        };
        Self {
            design_day,
            critical_month: months.critical.map(|found| found.month),
            needed_factor,
            places: spots.spots.iter().map(judged).collect(),
            is_waiting: spots.is_waiting(),
        }
    }

    /// The places that anything happens to, worst and coldest first.
    pub fn at_risk(&self) -> impl Iterator<Item = &PlaceVerdict> {
        let of = |risk: SurfaceRisk| self.places.iter().filter(move |place| place.risk == risk);
        of(SurfaceRisk::Drip).chain(of(SurfaceRisk::Mould))
    }

    /// Whether no known place drips, frosts or moulds.
    pub fn is_dry(&self) -> bool {
        self.places.iter().all(|place| place.risk == SurfaceRisk::None)
    }
}
