//! How deep foam must be to hold vapour back by itself.

use super::error::{MoistureError, MoistureQuantity};
use crate::bounds::BoundedQuantity;
use crate::units::{Length, VapourPermeability, VapourPermeance, VapourResistanceFactor};

/// Water vapour permeability of still air δ₀ = 2·10⁻¹⁰ kg/(m·s·Pa) (ISO 13788:2012, clause 4).
pub const STILL_AIR_PERMEABILITY: VapourPermeability = VapourPermeability::new(2.0e-10);

/// The most a layer may pass to count as vapour control in a cold climate, 60 ng/(Pa·s·m²), about
/// 1.05 perm (National Building Code of Canada, 9.25.4; quoted by the standards for sprayed foam).
pub const VAPOUR_CONTROL_PERMEANCE: VapourPermeance =
    VapourPermeance::nanograms_per_pascal_second_square_metre(60.0);

/// Permeability of a material, δ = δ₀ / µ (ISO 10456:2007).
///
/// Range: µ from 1 (still air) up.
///
/// # Errors
/// Refuses a factor below 1 or not finite.
pub fn permeability(factor: VapourResistanceFactor) -> Result<VapourPermeability, MoistureError> {
    // As a permeability, so that the refusal names what is at fault in its unit.
    let least = STILL_AIR_PERMEABILITY / factor.value();
    MoistureQuantity::VapourPermeability.check(least.value())?;
    Ok(least)
}

/// Depth from which a layer passes no more than a permeance, d = δ / W.
///
/// With δ of 3 ng/(Pa·s·m), usual for closed-cell foam, 60 ng/(Pa·s·m²) takes 50 mm.
/// Range: δ above 0 and to that of still air, W from 10⁻¹⁸ to 10⁻⁶ kg/(m²·s·Pa).
///
/// # Errors
/// Refuses an input out of range.
pub fn least_depth(
    permeability: VapourPermeability,
    permeance: VapourPermeance,
) -> Result<Length, MoistureError> {
    MoistureQuantity::VapourPermeability.check(permeability.value())?;
    MoistureQuantity::VapourPermeance.check(permeance.value())?;
    Ok(permeability / permeance)
}

/// [`least_depth`] for [`VAPOUR_CONTROL_PERMEANCE`]: how deep foam counts as vapour control.
///
/// # Errors
/// As [`least_depth`].
pub fn least_depth_for_vapour_control(
    permeability: VapourPermeability,
) -> Result<Length, MoistureError> {
    least_depth(permeability, VAPOUR_CONTROL_PERMEANCE)
}
