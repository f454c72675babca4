//! A build-up judged by one cold and one warm block instead of a year.

use super::assembly::{Assembly, VapourLayer};
use super::error::MoistureError;
use super::vapour_profile::vapour_profile;
use crate::units::{Pressure, SurfaceMoisture, Temperature, Time};

/// A block of condensing and a block of drying.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BlockClimate {
    /// Room temperature while it condenses.
    pub indoor: Temperature,
    /// Vapour pressure in the room then.
    pub indoor_vapour: Pressure,
    /// Outdoor temperature then.
    pub outdoor: Temperature,
    /// Outdoor vapour pressure then.
    pub outdoor_vapour: Pressure,
    /// Vapour pressure in the room and outdoors while it dries.
    pub drying_vapour: Pressure,
    /// Saturation pressure where the water lies while it dries.
    pub drying_saturation: Pressure,
    /// How long each block lasts.
    pub length: Time,
}

impl BlockClimate {
    /// Walls: 20 °C and 50 % against −5 °C and 80 %, drying at 1200 Pa from 1700 Pa, 90 days each
    /// (DIN 4108-3:2018, annex A, from memory).
    pub const DIN_4108_3_WALL: Self = Self {
        indoor: Temperature::celsius(20.0),
        indoor_vapour: Pressure::new(1168.0),
        outdoor: Temperature::celsius(-5.0),
        outdoor_vapour: Pressure::new(321.0),
        drying_vapour: Pressure::new(1200.0),
        drying_saturation: Pressure::new(1700.0),
        length: Time::days(90.0),
    };

    /// Roofs, which the sun warms: as walls, drying from 2000 Pa.
    pub const DIN_4108_3_ROOF: Self =
        Self { drying_saturation: Pressure::new(2000.0), ..Self::DIN_4108_3_WALL };
}

/// The most that may condense, 1.0 kg/m² (DIN 4108-3:2018, from memory).
pub const CONDENSATE_LIMIT: SurfaceMoisture = SurfaceMoisture::new(1.0);

/// The most where neither side of the interface takes up water, as at steel, 0.5 kg/m²
/// (DIN 4108-3:2018, from memory).
pub const CONDENSATE_LIMIT_AT_TIGHT_FACE: SurfaceMoisture = SurfaceMoisture::new(0.5);

/// What the two blocks come to.
#[derive(Clone, Debug, PartialEq)]
pub struct BlockBalance {
    /// What condenses at every interface, from the inside.
    pub condensed: Vec<SurfaceMoisture>,
    /// What could dry from where it condensed, all together.
    pub can_dry: SurfaceMoisture,
}

impl BlockBalance {
    /// What condenses, all together.
    pub fn total(&self) -> SurfaceMoisture {
        self.condensed.iter().copied().sum()
    }

    /// Whether as much could dry as condenses.
    pub fn dries_out(&self) -> bool {
        self.can_dry >= self.total()
    }

    /// Whether it dries out and no more condenses than a limit allows.
    pub fn passes(&self, limit: SurfaceMoisture) -> bool {
        self.dries_out() && self.total() <= limit
    }
}

/// Judges a build-up by a block climate, its surface resistances being those it was made with
/// (DIN 4108-3 takes 0.25 and 0.04 m²·K/W).
///
/// Vapour flows in the drying block as between places all at the drying saturation pressure and air
/// at the drying vapour pressure, the inner and outer layers passing what their s_d lets.
/// Diffusion only. Source: DIN 4108-3:2018, annex A.
///
/// # Errors
/// Refuses a temperature out of range.
pub fn block_climate(
    assembly: &Assembly,
    climate: &BlockClimate,
) -> Result<BlockBalance, MoistureError> {
    let layers: &[VapourLayer] = assembly.layers();
    let saturation = assembly.interface_saturations(climate.indoor, climate.outdoor)?;
    let dry = vec![false; saturation.len()];
    let (indoor, outdoor) = (climate.indoor_vapour, climate.outdoor_vapour);
    let cold = vapour_profile(layers, indoor, outdoor, &saturation, &dry);
    let condensed: Vec<SurfaceMoisture> =
        cold.condensing.iter().map(|&flux| flux * climate.length).collect();

    let wet: Vec<bool> = condensed.iter().map(|&water| water > SurfaceMoisture::ZERO).collect();
    let warm = vec![climate.drying_saturation; saturation.len()];
    let air = climate.drying_vapour;
    let drying = vapour_profile(layers, air, air, &warm, &wet);
    let can_dry = drying.condensing.iter().map(|&flux| -(flux * climate.length)).sum();
    Ok(BlockBalance { condensed, can_dry })
}
