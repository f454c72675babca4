//! What warmth alone moves through two openings, one low and one high.

use super::air_path::AirPath;
use super::error::{VentilationError, VentilationQuantity};
use crate::bounds::BoundedQuantity;
use crate::units::{Density, Length, MassFlow, Pressure, VolumeFlow};

/// Standard acceleration of free fall, m/s², exact (ISO 80000-3).
const FREE_FALL: f64 = 9.806_65;

/// Which way the air goes through the room.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum StackDirection {
    /// In below and out above: the room is the warmer.
    Upward,
    /// In above and out below: the room is the colder.
    Downward,
    /// Nowhere: two densities alike, or an opening shut.
    Still,
}

/// Flow through two openings that stand one above the other.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct StackFlow {
    /// Pressure that drives it, never negative, Pa.
    pub pressure: Pressure,
    /// Mass of air that passes, kg/s.
    pub mass_flow: MassFlow,
    /// The same as outdoor air, m³/s.
    pub let_in: VolumeFlow,
    /// Which way it goes.
    pub direction: StackDirection,
}

/// Pressure of a column of room air against one of outdoor air, Δp = g·h·(ρ_outdoor − ρ_room), Pa;
/// negative if the room is the colder.
///
/// Range: h from 0 to 20 m, densities from 0.5 to 1.9 kg/m³.
/// Source: ASHRAE Handbook of Fundamentals 2017, chapter 16, stack pressure.
///
/// # Errors
/// Refuses an input out of range.
pub fn stack_pressure(
    height: Length,
    outdoor: Density,
    room: Density,
) -> Result<Pressure, VentilationError> {
    let h = VentilationQuantity::StackHeight.check(height.value())?;
    let lighter = VentilationQuantity::AirDensity.check(outdoor.value())?
        - VentilationQuantity::AirDensity.check(room.value())?;
    Ok(Pressure::new(FREE_FALL * h * lighter))
}

/// Flow by warmth alone through a low and a high opening a height apart, wind and fans still:
/// m = √(Δp / (R_low + R_high)), each R = Σ ζ / (2·ρ·A²) with the density of the air that passes.
///
/// Range: as [`stack_pressure`].
/// Source: ASHRAE Handbook of Fundamentals 2017, chapter 16, stack pressure and flow through
/// openings in series.
///
/// # Errors
/// Refuses an input out of range.
pub fn stack_flow(
    low: &AirPath,
    high: &AirPath,
    height: Length,
    outdoor: Density,
    room: Density,
) -> Result<StackFlow, VentilationError> {
    let signed = stack_pressure(height, outdoor, room)?.value();
    let still = StackFlow {
        pressure: Pressure::new(signed.abs()),
        mass_flow: MassFlow::ZERO,
        let_in: VolumeFlow::ZERO,
        direction: StackDirection::Still,
    };
    if low.is_shut() || high.is_shut() || signed == 0.0 {
        return Ok(still);
    }
    let (direction, way_in, way_out) = if signed > 0.0 {
        (StackDirection::Upward, low, high)
    } else {
        (StackDirection::Downward, high, low)
    };
    let resistance = way_in.resistance(outdoor.value()) + way_out.resistance(room.value());
    let mass_flow = MassFlow::new((signed.abs() / resistance).sqrt());
    Ok(StackFlow { mass_flow, let_in: mass_flow / outdoor, direction, ..still })
}
