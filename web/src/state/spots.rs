//! The cold places of the present design, and what is looked at of them.

use std::sync::Arc;

use inchwise_core::conduction::FactorSpot;
use inchwise_core::design::CheckedDesign;
use inchwise_core::detail::{Detail, Picture, drawn_detail};
use inchwise_core::envelope::ThermalBridge;
use inchwise_core::evaluate::Evaluation;
use inchwise_core::moisture::{ColdSpot, SpotPlace};

use super::{Risk, risk_at};

/// Places that carry a number on the drawings.
pub const NUMBERED: usize = 5;

/// A cold place of the present design.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Spot {
    /// Its number on the drawings and in the list, from 1; the worst only.
    pub number: Option<usize>,
    /// Where.
    pub place: SpotPlace,
    /// What is known of it; none while it is being worked out.
    pub known: Option<(ColdSpot, Risk)>,
}

/// All places: the known ones coldest first, then the others. Numbers are given once every field is
/// solved, for until then nobody knows which is the coldest.
pub fn spots_of(evaluation: &Evaluation) -> Vec<Spot> {
    let is_whole = !evaluation.heat_loss.is_waiting();
    let known = evaluation.cold_spots.spots.iter().enumerate().map(|(index, spot)| {
        let risk = risk_at(evaluation, spot);
        let is_numbered = is_whole && index < NUMBERED && risk != Risk::Dry;
        Spot {
            number: is_numbered.then_some(index + 1),
            place: spot.place,
            known: Some((*spot, risk)),
        }
    });
    let unknown = evaluation.cold_spots.unknown.iter();
    let unknown = unknown.map(|spot| Spot { number: None, place: spot.place, known: None });
    known.chain(unknown).collect()
}

/// The place whose picture shows a spot of a design, if one does.
pub fn pictured(evaluation: &Evaluation, spot: SpotPlace) -> Option<ThermalBridge> {
    let standing = &evaluation.envelope.thermal_bridges;
    standing.iter().map(|(place, _)| *place).find(|&place| SpotPlace::of(place) == spot)
}

/// What is to be seen at a place of a design.
#[derive(Clone, Debug, PartialEq)]
pub struct Seen {
    /// The place.
    pub place: ThermalBridge,
    /// Its detail as drawn.
    pub detail: Detail,
    /// The coldest of the room's surface, not yet refined there.
    pub coldest: FactorSpot,
    /// Pictures of its views.
    pub pictures: Arc<Vec<Picture>>,
}

impl Seen {
    /// Whether it shows the place as it stands in a design.
    pub fn is_of(&self, checked: &CheckedDesign) -> bool {
        drawn_detail(checked, self.place) == Some(self.detail)
    }
}
