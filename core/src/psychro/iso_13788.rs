//! Saturation pressure of water vapour as ISO 13788 prescribes it, and its closed inverse.
//!
//! Source: ISO 13788:2012, annex E. Use it for the features that follow
//! that standard, and only there: it lies below [`super::hyland_wexler`] by 0.1 % between 0 °C and
//! 30 °C, 0.2 % at −10 °C, 0.5 % at −20 °C and 1.9 % at −40 °C.

use super::error::{
    PsychroError, PsychroQuantity, check_any_vapour_pressure, check_relative_humidity,
};
use crate::bounds::{BoundedQuantity, Bounds};
use crate::units::{Pressure, RelativeHumidity, Temperature};

/// Saturation pressure at 0 °C, Pa, in both formulas.
const AT_ZERO: f64 = 610.5;

/// The standard states no range; this one covers building surfaces and the air of every place. The pair stays
/// within 5 % of Hyland–Wexler down to −60 °C, and within 16 % down to −90 °C.
const TEMPERATURE: Bounds = Bounds::between(-90.0, 100.0);

/// One formula of the pair: p_sat = 610.5·exp(a·θ / (b + θ)).
struct Magnus {
    a: f64,
    b: f64,
}

const OVER_ICE: Magnus = Magnus { a: 21.875, b: 265.5 };
const OVER_WATER: Magnus = Magnus { a: 17.269, b: 237.3 };

/// p_sat in Pa at θ in °C.
fn saturation_pascals(celsius: f64) -> f64 {
    let Magnus { a, b } = if celsius < 0.0 { OVER_ICE } else { OVER_WATER };
    AT_ZERO * libm::exp(a * celsius / (b + celsius))
}

/// θ in °C at which p_sat is p, in Pa, p being more than nothing.
pub(super) fn dew_point_celsius(p: f64) -> f64 {
    let k = libm::log(p / AT_ZERO);
    let Magnus { a, b } = if k < 0.0 { OVER_ICE } else { OVER_WATER };
    b * k / (a - k)
}

/// Saturation pressure p_sat, Pa, at θ in °C: 610.5·exp(17.269·θ / (237.3 + θ)) from 0 °C up,
/// 610.5·exp(21.875·θ / (265.5 + θ)) below.
///
/// Range: −90 °C to 100 °C. Source: ISO 13788:2012, annex E.
///
/// # Errors
/// Refuses a temperature out of range.
pub fn saturation_pressure(temperature: Temperature) -> Result<Pressure, PsychroError> {
    let celsius =
        PsychroQuantity::Temperature.check_within(temperature.as_celsius(), TEMPERATURE)?;
    Ok(Pressure::new(saturation_pascals(celsius)))
}

/// Dew point of a vapour pressure, °C, below 0 °C the frost point: with k = ln(p / 610.5),
/// 237.3·k / (17.269 − k) from 610.5 Pa up, 265.5·k / (21.875 − k) below.
///
/// Range: the saturation pressures from −90 °C to 100 °C, 8 mPa to 102 kPa.
/// Source: ISO 13788:2012, annex E.
///
/// # Errors
/// Refuses a vapour pressure out of range; air without vapour has no dew point.
pub fn dew_point(vapour_pressure: Pressure) -> Result<Temperature, PsychroError> {
    let [lowest, highest] = [TEMPERATURE.minimum(), TEMPERATURE.maximum()].map(saturation_pascals);
    let allowed = Bounds::between(lowest, highest);
    let p = PsychroQuantity::VapourPressure.check_within(vapour_pressure.value(), allowed)?;
    Ok(Temperature::celsius(dew_point_celsius(p)))
}

/// Vapour pressure p = φ·p_sat(θ), Pa.
///
/// Range: −90 °C to 100 °C, φ from 0 to 1. Source: ISO 13788:2012, clause 3 and annex E.
///
/// # Errors
/// Refuses a temperature or relative humidity out of range.
pub fn vapour_pressure(
    temperature: Temperature,
    humidity: RelativeHumidity,
) -> Result<Pressure, PsychroError> {
    let humidity = check_relative_humidity(humidity)?;
    Ok(saturation_pressure(temperature)? * humidity)
}

/// Relative humidity φ = p / p_sat(θ), in the air or at a surface. More than 1 says that vapour
/// would condense.
///
/// Range: −90 °C to 100 °C, p from 0 to 1.6 MPa. Source: ISO 13788:2012, clause 3 and annex E.
///
/// # Errors
/// Refuses a temperature out of range or vapour pressure out of range.
pub fn relative_humidity(
    temperature: Temperature,
    vapour_pressure: Pressure,
) -> Result<RelativeHumidity, PsychroError> {
    let p = check_any_vapour_pressure(vapour_pressure)?;
    Ok(RelativeHumidity::new(p / saturation_pressure(temperature)?.value()))
}

/// Lowest surface temperature, °C, at which a vapour pressure p gives no more than a critical
/// relative humidity φ_cr at the surface: the dew point of p_sat = p / φ_cr.
///
/// Range: φ_cr above 0 and up to 1, p / φ_cr as for [`dew_point`].
/// Source: ISO 13788:2012, clause 5.
///
/// # Errors
/// Refuses a critical humidity out of range, or the pressure p / φ_cr out of range.
pub fn lowest_surface_temperature(
    vapour_pressure: Pressure,
    critical: RelativeHumidity,
) -> Result<Temperature, PsychroError> {
    let allowed = Bounds::above(0.0, 1.0);
    let critical = PsychroQuantity::RelativeHumidity.check_within(critical.value(), allowed)?;
    dew_point(vapour_pressure / critical)
}
