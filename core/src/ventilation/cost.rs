//! What ventilation costs: running time of the fan and heat for the air.

use super::error::{VentilationError, VentilationQuantity};
use super::need::{DryAirFlow, heat_capacity};
use crate::bounds::{BoundedQuantity, Bounds};
use crate::psychro::MoistAir;
use crate::units::{Duty, Power, VolumeFlow};

/// Part of the time that a fan must run to move what is needed on average,
/// duty = q_needed / q_moved, both as the same air.
///
/// Range: q_needed from 0, q_moved above 0, both to 100 m³/s.
///
/// # Errors
/// [`VentilationError::FanTooSmall`] if it would have to run more than all the time; refuses a
/// flow out of range.
pub fn duty(needed: VolumeFlow, moved: VolumeFlow) -> Result<Duty, VentilationError> {
    let flow = VentilationQuantity::VolumeFlow;
    flow.check(needed.value())?;
    flow.check_within(moved.value(), Bounds::above(0.0, flow.bounds().maximum()))?;
    if needed > moved {
        return Err(VentilationError::FanTooSmall { needed, moved });
    }
    Ok(Duty::new(needed / moved))
}

/// Heat that outdoor air takes to come to the temperature of the room,
/// Φ = m·c·(t_room − t_outdoor), c = 1006 + 1860·W_outdoor, W; negative if it is the warmer.
///
/// Source: ASHRAE Handbook of Fundamentals 2017, chapter 1, equation 30.
pub fn heat_to_warm(flow: DryAirFlow, room: &MoistAir, outdoor: &MoistAir) -> Power {
    let rise = room.temperature() - outdoor.temperature();
    Power::new(flow.dry_air().value() * heat_capacity(outdoor) * rise.value())
}
