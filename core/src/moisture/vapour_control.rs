//! How deep foam must be to hold vapour back by itself.

use super::error::{MoistureError, MoistureQuantity};
use crate::bounds::BoundedQuantity;
use crate::units::{Length, VapourPermeability, VapourPermeance, VapourResistanceFactor};

pub use crate::material::{STILL_AIR_PERMEABILITY, VAPOUR_CONTROL_PERMEANCE};

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
