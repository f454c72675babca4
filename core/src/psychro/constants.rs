//! Constants of dry air and water vapour, each stated here and nowhere else.

/// Gas constant of dry air, J/(kg·K) (ASHRAE Fundamentals 2017, chapter 1, equation 1).
pub const GAS_CONSTANT_OF_DRY_AIR: f64 = 287.042;

/// Gas constant of water vapour, J/(kg·K) (ASHRAE Fundamentals 2017, chapter 1, equation 2).
pub const GAS_CONSTANT_OF_VAPOUR: f64 = 461.524;

/// Molar mass of water over that of dry air (ASHRAE Fundamentals 2017, chapter 1, equation 20).
pub const MOLAR_MASS_RATIO: f64 = 0.621_945;

/// Specific heat capacity of dry air at constant pressure, J/(kg·K) (ASHRAE Fundamentals 2017,
/// chapter 1, equation 30).
pub const HEAT_CAPACITY_OF_DRY_AIR: f64 = 1006.0;

/// Specific heat capacity of water vapour at constant pressure, J/(kg·K) (ASHRAE Fundamentals 2017,
/// chapter 1, equation 30).
pub const HEAT_CAPACITY_OF_VAPOUR: f64 = 1860.0;

/// Latent heat of vaporisation of water at 0 °C, J/kg (ASHRAE Fundamentals 2017, chapter 1,
/// equation 30).
pub const LATENT_HEAT_AT_ZERO: f64 = 2.501e6;

/// Latent heat of vaporisation of water, 2 501 000 − 2326·t, J/kg with t in °C.
///
/// Range: 0 °C to about 60 °C. Source: ASHRAE Fundamentals 2017, chapter 1, equation 33.
pub const fn latent_heat_of_vaporisation(celsius: f64) -> f64 {
    LATENT_HEAT_AT_ZERO - 2326.0 * celsius
}
