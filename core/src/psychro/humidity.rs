//! Measures of how much vapour air holds, and the way from one to another.

use super::constants::{GAS_CONSTANT_OF_VAPOUR, MOLAR_MASS_RATIO};
use super::error::{
    PsychroError, check_air_pressure, check_any_vapour_pressure, check_concentration,
    check_humidity_ratio, check_temperature, check_vapour_pressure,
};
use super::hyland_wexler::saturation_pascals;
use crate::units::{HumidityRatio, Pressure, Temperature, VapourConcentration};

/// W from p_w and p in Pa that have been checked.
pub(super) fn ratio_of(vapour_pressure: f64, air_pressure: f64) -> f64 {
    MOLAR_MASS_RATIO * vapour_pressure / (air_pressure - vapour_pressure)
}

/// p_w in Pa from W and p in Pa that have been checked.
pub(super) fn pressure_of(ratio: f64, air_pressure: f64) -> f64 {
    air_pressure * ratio / (MOLAR_MASS_RATIO + ratio)
}

/// v from t and p_w that have been checked.
pub(super) fn concentration_of(
    temperature: Temperature,
    vapour_pressure: Pressure,
) -> VapourConcentration {
    let per_kilogram = GAS_CONSTANT_OF_VAPOUR * temperature.as_kelvin();
    VapourConcentration::new(vapour_pressure.value() / per_kilogram)
}

/// Humidity ratio W = 0.621945·p_w / (p − p_w), kg/kg, both as ideal gases.
///
/// Range: p from 20 kPa to 200 kPa, p_w from 0 to 0.9414·p, where W is 10. Real moist air at saturation holds
/// about 0.5 % more (the enhancement factor), which the formula leaves out.
/// Source: ASHRAE Fundamentals 2017, chapter 1, equation 20.
///
/// # Errors
/// Refuses a pressure out of range.
pub fn humidity_ratio(
    vapour_pressure: Pressure,
    air_pressure: Pressure,
) -> Result<HumidityRatio, PsychroError> {
    let p = check_air_pressure(air_pressure)?;
    let p_w = check_vapour_pressure(vapour_pressure, p)?;
    Ok(HumidityRatio::new(ratio_of(p_w, p)))
}

/// Vapour pressure p_w = p·W / (0.621945 + W), Pa: the inverse of [`humidity_ratio`].
///
/// Range: p from 20 kPa to 200 kPa, W from 0 to 10.
/// Source: ASHRAE Fundamentals 2017, chapter 1, equation 20 solved for p_w.
///
/// # Errors
/// Refuses an air pressure or humidity ratio out of range.
pub fn vapour_pressure_from_humidity_ratio(
    ratio: HumidityRatio,
    air_pressure: Pressure,
) -> Result<Pressure, PsychroError> {
    let p = check_air_pressure(air_pressure)?;
    Ok(Pressure::new(pressure_of(check_humidity_ratio(ratio)?, p)))
}

/// Humidity ratio of saturated air W_s = 0.621945·p_ws(t) / (p − p_ws(t)), kg/kg.
///
/// Range: p from 20 kPa to 200 kPa, t from −100 °C to 2 K below boiling at p.
/// Source: ASHRAE Fundamentals 2017, chapter 1, equation 20 at saturation.
///
/// # Errors
/// Refuses an input out of range; near and above boiling the saturation pressure is refused.
pub fn saturation_humidity_ratio(
    temperature: Temperature,
    air_pressure: Pressure,
) -> Result<HumidityRatio, PsychroError> {
    let saturation = Pressure::new(saturation_pascals(check_temperature(temperature)?));
    humidity_ratio(saturation, air_pressure)
}

/// Vapour concentration v = p_w / (R_v·T), kg/m³ with T in K and R_v = 461.524 J/(kg·K).
///
/// Range: t from −100 °C to 200 °C, p_w from 0 to 1.6 MPa.
/// Source: ASHRAE Fundamentals 2017, chapter 1, equation 2 and the ideal-gas law.
///
/// # Errors
/// Refuses a temperature or vapour pressure out of range.
pub fn vapour_concentration(
    temperature: Temperature,
    vapour_pressure: Pressure,
) -> Result<VapourConcentration, PsychroError> {
    check_temperature(temperature)?;
    check_any_vapour_pressure(vapour_pressure)?;
    Ok(concentration_of(temperature, vapour_pressure))
}

/// Vapour pressure p_w = v·R_v·T, Pa: the inverse of [`vapour_concentration`]. Being linear it also
/// turns an excess of concentration into an excess of pressure.
///
/// Range: t from −100 °C to 200 °C, v from 0 to 10 kg/m³.
/// Source: ASHRAE Fundamentals 2017, chapter 1, equation 2 and the ideal-gas law.
///
/// # Errors
/// Refuses a temperature or concentration out of range.
pub fn vapour_pressure_from_concentration(
    temperature: Temperature,
    concentration: VapourConcentration,
) -> Result<Pressure, PsychroError> {
    check_temperature(temperature)?;
    let v = check_concentration(concentration.value())?;
    Ok(Pressure::new(v * GAS_CONSTANT_OF_VAPOUR * temperature.as_kelvin()))
}
