//! How fast a cold surface takes water from the air.

use super::error::{MoistureError, MoistureQuantity};
use crate::bounds::BoundedQuantity;
use crate::heat_loss::{AIR_DENSITY, AIR_HEAT_CAPACITY};
use crate::psychro::{MoistAir, hyland_wexler, vapour_concentration};
use crate::units::{MoistureFlux, Speed, SurfaceCoefficient, Temperature};

/// Lewis number of water vapour in air: thermal over mass diffusivity, about 0.87 at room
/// temperature (from memory).
pub const LEWIS_NUMBER: f64 = 0.87;

/// Convective coefficient in a still corner of a room, 3.5 W/(m²·K). Common practice, no source:
/// 2 behind furniture, 5 where the air is stirred.
pub const STILL_CORNER_COEFFICIENT: SurfaceCoefficient = SurfaceCoefficient::new(3.5);

/// The least and the most that [`STILL_CORNER_COEFFICIENT`] may be taken for.
pub const STILL_CORNER_RANGE: [SurfaceCoefficient; 2] =
    [SurfaceCoefficient::new(2.0), SurfaceCoefficient::new(5.0)];

/// Mass-transfer coefficient by the Lewis relation, β = h_c / (ρ·c_p·Le^⅔), m/s.
///
/// ρ·c_p is that of air at about 20 °C and sea level, 1206 J/(m³·K); air at −30 °C is a fifth
/// denser, which would lower β as much. Range: h_c above 0 and to 30 W/(m²·K).
/// Source: ASHRAE Handbook of Fundamentals 2017, chapter 6, Lewis relation.
///
/// # Errors
/// Refuses a coefficient out of range.
pub fn mass_transfer_coefficient(convective: SurfaceCoefficient) -> Result<Speed, MoistureError> {
    let h_c = MoistureQuantity::SurfaceCoefficient.check(convective.value())?;
    let volumetric = AIR_DENSITY.value() * AIR_HEAT_CAPACITY.value();
    Ok(Speed::new(h_c / (volumetric * libm::pow(LEWIS_NUMBER, 2.0 / 3.0))))
}

/// Water between the room's air and a surface.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SurfaceFlux {
    /// Onto the surface; below 0 what a wet surface would give back.
    pub flux: MoistureFlux,
    /// Whether the surface is below 0 °C, so that what it takes stays as frost.
    pub is_frost: bool,
}

/// Water that a surface takes from the air, or gives back while it is wet,
/// g = β·(v_room − v_sat(θ_s)), kg/(m²·s), saturation being over ice below the triple point.
///
/// The heat that condensing sets free, which warms the surface, and the insulation of the frost
/// itself are left out: the true rate is no higher. It is what the surface could take; the room
/// must also hold it, see [`super::limited_by_source`].
///
/// Range: θ_s from −100 °C to 200 °C, h_c as for [`mass_transfer_coefficient`].
///
/// # Errors
/// Refuses an input out of range.
pub fn surface_flux(
    room: &MoistAir,
    surface: Temperature,
    convective: SurfaceCoefficient,
) -> Result<SurfaceFlux, MoistureError> {
    let saturation = hyland_wexler::saturation_pressure(surface)?;
    let at_surface = vapour_concentration(surface, saturation)?;
    let flux = mass_transfer_coefficient(convective)? * (room.vapour_concentration() - at_surface);
    Ok(SurfaceFlux { flux, is_frost: surface < Temperature::celsius(0.0) })
}
