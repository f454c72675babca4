//! What lands on the cold spots through a cold spell, as water or frost, and never more than the
//! use gives off.

use super::cold_places::ColdPlace;
use super::{SpotPlace, StandingRoom};
use crate::moisture::{
    ColdSpellWater, Condensing, MoistureError, limited_by_source, surface_temperature,
};
use crate::psychro::MoistAir;
use crate::units::{Area, Mass, MassFlow, Temperature, Time, Volume};

/// What lands on one place.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SpotWater {
    /// Where.
    pub place: SpotPlace,
    /// Area taken to be as cold as the coldest point there, so that what lands is the most it can
    /// be.
    pub area: Area,
    /// How fast.
    pub rate: MassFlow,
    /// Whether it freezes.
    pub is_frost: bool,
    /// What a cold spell leaves.
    pub spell: ColdSpellWater,
}

/// The moisture of the room in a cold spell: what comes, and where it goes.
#[derive(Clone, Debug, PartialEq)]
pub struct ColdSpotWater {
    /// The room's air once the cold spots take their part.
    pub room: MoistAir,
    /// What the use gives off in the mean of a week.
    pub source: MassFlow,
    /// What air carries out; below 0 where outdoor air brings moisture.
    pub carried_out: MassFlow,
    /// What the places could take if the use kept the room as humid as without them.
    pub could_take: MassFlow,
    /// What they do take, and what holds it there.
    pub condensing: Condensing,
    /// What is left over in a saturated room and condenses wherever it can.
    pub anywhere: MassFlow,
    /// Every place that takes water, coldest first.
    pub places: Vec<SpotWater>,
    /// How long the spell is.
    pub spell: Time,
}

impl ColdSpotWater {
    /// What freezes, how fast.
    pub fn frosting(&self) -> MassFlow {
        self.places.iter().filter(|place| place.is_frost).map(|place| place.rate).sum()
    }

    /// What drips at once, how fast.
    pub fn dripping(&self) -> MassFlow {
        self.places.iter().filter(|place| !place.is_frost).map(|place| place.rate).sum()
    }

    /// Frost at the end of the spell.
    pub fn frost(&self) -> Mass {
        self.places.iter().map(|place| place.spell.frost).sum()
    }

    /// The water it melts to.
    pub fn released_at_thaw(&self) -> Volume {
        self.places.iter().map(|place| place.spell.released_at_thaw()).sum()
    }

    /// What a spell at a steady state of the room leaves on its cold places.
    pub(super) fn of(
        standing: &StandingRoom,
        places: &[ColdPlace],
        source: MassFlow,
        outdoor: Temperature,
        spell: Time,
    ) -> Result<Self, MoistureError> {
        let indoor = standing.air.temperature();
        let condensing = limited_by_source(standing.could_take, source, standing.carried_out)?;
        let mut wet = Vec::new();
        for (place, &rate) in places.iter().zip(&standing.taken) {
            if rate > MassFlow::ZERO {
                let surface = surface_temperature(place.factor, indoor, outdoor);
                let is_frost = surface < Temperature::celsius(0.0);
                let spell = ColdSpellWater::over(rate, is_frost, spell)?;
                wet.push(SpotWater { place: place.place, area: place.area, rate, is_frost, spell });
            }
        }
        Ok(Self {
            room: standing.air,
            source,
            carried_out: standing.carried_out,
            could_take: standing.could_take,
            condensing,
            anywhere: standing.over,
            places: wet,
            spell,
        })
    }
}
