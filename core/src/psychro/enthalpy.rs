//! Enthalpy of moist air.

use super::constants::{HEAT_CAPACITY_OF_DRY_AIR, HEAT_CAPACITY_OF_VAPOUR, LATENT_HEAT_AT_ZERO};
use super::error::{PsychroError, check_humidity_ratio, check_temperature};
use crate::units::{HumidityRatio, SpecificEnthalpy, Temperature};

/// h from t in °C and W that have been checked.
pub(super) fn enthalpy_of(celsius: f64, ratio: f64) -> SpecificEnthalpy {
    let of_vapour = LATENT_HEAT_AT_ZERO + HEAT_CAPACITY_OF_VAPOUR * celsius;
    SpecificEnthalpy::new(HEAT_CAPACITY_OF_DRY_AIR * celsius + ratio * of_vapour)
}

/// Enthalpy of moist air per kilogram of its dry air, h = 1006·t + W·(2 501 000 + 1860·t), J/kg
/// with t in °C; nothing for dry air at 0 °C and for liquid water at 0 °C.
///
/// Range: t from −100 °C to 200 °C, W from 0 to 10.
/// Source: ASHRAE Fundamentals 2017, chapter 1, equation 30.
///
/// # Errors
/// Refuses a temperature or humidity ratio out of range.
pub fn enthalpy(
    temperature: Temperature,
    ratio: HumidityRatio,
) -> Result<SpecificEnthalpy, PsychroError> {
    let t = check_temperature(temperature)?;
    Ok(enthalpy_of(t, check_humidity_ratio(ratio)?))
}
