//! The humidity that a source and outdoor air come to.

use super::error::MoistureError;
use crate::psychro::{MoistAir, saturation_humidity_ratio};
use crate::units::{MassFlow, Temperature};
use crate::ventilation::{DryAirFlow, steady_humidity_ratio};

/// A room left to itself with a moisture source and a flow of outdoor air.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum SteadyRoom {
    /// It comes to this state.
    Holds(MoistAir),
    /// It comes to saturation, and this much must condense somewhere.
    Saturated {
        /// G − m·(W_sat − W_outdoor), kg/s.
        condensing: MassFlow,
    },
}

impl SteadyRoom {
    /// The room a source and a flow come to: W = W_outdoor + G / m, by
    /// [`steady_humidity_ratio`], at the room's temperature and the outdoor air's pressure.
    ///
    /// Range: G from 0 to 1 kg/s, m from 10⁻⁹ kg/s. Nothing condenses on a cold spot, nothing is
    /// stored in the lining: with cold spots below the dew point the room stays drier, and they
    /// get wet.
    ///
    /// # Errors
    /// Refuses an input out of range.
    pub fn of(
        source: MassFlow,
        flow: DryAirFlow,
        outdoor: &MoistAir,
        indoor: Temperature,
    ) -> Result<Self, MoistureError> {
        let ratio = steady_humidity_ratio(source, flow, outdoor)?;
        let saturated = saturation_humidity_ratio(indoor, outdoor.air_pressure())?;
        if ratio > saturated {
            let beyond = ratio.value() - saturated.value();
            Ok(Self::Saturated { condensing: flow.dry_air() * beyond })
        } else {
            let air = MoistAir::from_humidity_ratio(indoor, ratio, outdoor.air_pressure())?;
            Ok(Self::Holds(air))
        }
    }
}
