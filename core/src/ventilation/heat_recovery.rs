//! A heat exchanger between the air that leaves and the air that comes in.

use super::cost::heat_to_warm;
use super::error::{VentilationError, VentilationQuantity};
use super::need::DryAirFlow;
use crate::bounds::BoundedQuantity;
use crate::psychro::MoistAir;
use crate::units::{Effectiveness, Power, Temperature};

/// A heat exchanger for equal flows of leaving and incoming air, protected from frost.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct HeatRecovery {
    effectiveness: Effectiveness,
    frost_limit: Temperature,
}

/// What comes of a heat exchanger at a pair of temperatures.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RecoveredAir {
    /// Effectiveness that frost protection leaves.
    pub effectiveness: Effectiveness,
    /// Whether frost protection holds the exchanger back.
    pub held_by_frost: bool,
    /// Temperature of the air that comes in, after the exchanger.
    pub supply: Temperature,
    /// Temperature of the air that leaves, after the exchanger.
    pub leaving: Temperature,
    /// Heat still needed to bring the incoming air to the room, W.
    pub heat_to_warm: Power,
}

impl HeatRecovery {
    /// An exchanger of a sensible effectiveness η that must not cool leaving air below its frost
    /// limit.
    ///
    /// Range: η above 0 and to 1, frost limit from −30 °C to 15 °C.
    ///
    /// # Errors
    /// Refuses an input out of range.
    pub fn new(
        effectiveness: Effectiveness,
        frost_limit: Temperature,
    ) -> Result<Self, VentilationError> {
        VentilationQuantity::Effectiveness.check(effectiveness.value())?;
        VentilationQuantity::FrostLimit.check(frost_limit.as_celsius())?;
        Ok(Self { effectiveness, frost_limit })
    }

    /// What the exchanger does for a flow between a room and outdoors.
    ///
    /// Incoming air is brought to t_outdoor + η·(t_room − t_outdoor) and leaving air to
    /// t_room − η·(t_room − t_outdoor). In frost η is held to
    /// (t_room − t_limit) / (t_room − t_outdoor), nothing for a room at or below the limit.
    /// Condensation, which warms the leaving air, is left out: true recovery is no lower.
    ///
    /// Source: ASHRAE Handbook, HVAC Systems and Equipment 2016, chapter 26, sensible
    /// effectiveness.
    pub fn recover(&self, flow: DryAirFlow, room: &MoistAir, outdoor: &MoistAir) -> RecoveredAir {
        let difference = room.temperature() - outdoor.temperature();
        let above_limit = (room.temperature() - self.frost_limit).value().max(0.0);
        // Leaving air is cooled only where outdoors is the colder.
        let frost_free =
            if difference.value() > 0.0 { above_limit / difference.value() } else { f64::INFINITY };
        let held_by_frost = frost_free < self.effectiveness.value();
        let effectiveness = if held_by_frost { frost_free } else { self.effectiveness.value() };
        let exchanged = difference * effectiveness;
        RecoveredAir {
            effectiveness: Effectiveness::new(effectiveness),
            held_by_frost,
            supply: outdoor.temperature() + exchanged,
            leaving: room.temperature() - exchanged,
            heat_to_warm: heat_to_warm(flow, room, outdoor) * (1.0 - effectiveness),
        }
    }
}
