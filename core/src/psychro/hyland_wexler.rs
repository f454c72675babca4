//! Saturation pressure of water vapour by Hyland and Wexler (1983), as ASHRAE prints it.
//!
//! Source: ASHRAE Handbook of Fundamentals 2017, chapter 1, equations 5 (ice) and 6 (water); from
//! R. W. Hyland and A. Wexler, Formulations for the thermodynamic properties of the saturated
//! phases of H2O from 173.15 K to 473.15 K, ASHRAE Transactions 89(2A), 1983.
//!
//! The handbook changes from ice to water at 0 °C, where its two formulas differ by 0.06 Pa. They
//! meet at the triple point, to 4 µPa, so the change is made there: otherwise a dew point
//! near freezing would have no answer, or two.

use super::error::{
    COLDEST, HOTTEST, PsychroError, PsychroQuantity, check_any_vapour_pressure,
    check_relative_humidity, check_temperature,
};
use super::iso_13788;
use crate::bounds::{BoundedQuantity, Bounds};
use crate::units::{Pressure, RelativeHumidity, Temperature};

/// Where ice, water and vapour stand together, 0.01 °C: ice below, water above.
pub const TRIPLE_POINT: Temperature = Temperature::celsius(0.01);

const TRIPLE_POINT_KELVIN: f64 = 273.16;
const COLDEST_KELVIN: f64 = 173.15;
const HOTTEST_KELVIN: f64 = 473.15;

/// Coldest that the formula of liquid water is carried on to, °C: it still gives 0.12 Pa there.
const COLDEST_LIQUID: f64 = -80.0;

/// Steps after which the search for a dew point ends in any case. The logarithm of the pressure is
/// a concave rising curve, on which Newton's method cannot miss; it settles in four or five.
const MOST_STEPS: usize = 12;

/// One of the two phases that vapour may condense to.
#[derive(Clone, Copy)]
enum Phase {
    Ice,
    Water,
}

impl Phase {
    /// ln p_ws, p_ws in Pa, at T in K.
    fn log_pressure(self, t: f64) -> f64 {
        match self {
            Self::Ice => {
                let powers = 6.392_524_7
                    + t * (-9.677_843e-3
                        + t * (6.221_570_1e-7 + t * (2.074_782_5e-9 - t * 9.484_024e-13)));
                -5.674_535_9e3 / t + powers + 4.163_501_9 * libm::log(t)
            }
            Self::Water => {
                let powers =
                    1.391_499_3 + t * (-4.864_023_9e-2 + t * (4.176_476_8e-5 - t * 1.445_209_3e-8));
                -5.800_220_6e3 / t + powers + 6.545_967_3 * libm::log(t)
            }
        }
    }

    /// d ln p_ws / dT, 1/K, at T in K.
    fn log_pressure_slope(self, t: f64) -> f64 {
        match self {
            Self::Ice => {
                let powers = -9.677_843e-3
                    + t * (2.0 * 6.221_570_1e-7
                        + t * (3.0 * 2.074_782_5e-9 - t * 4.0 * 9.484_024e-13));
                (5.674_535_9e3 / t + 4.163_501_9) / t + powers
            }
            Self::Water => {
                let powers =
                    -4.864_023_9e-2 + t * (2.0 * 4.176_476_8e-5 - t * 3.0 * 1.445_209_3e-8);
                (5.800_220_6e3 / t + 6.545_967_3) / t + powers
            }
        }
    }

    /// p_ws in Pa at T in K.
    fn pressure(self, t: f64) -> f64 {
        libm::exp(self.log_pressure(t))
    }

    /// T in K at which p_ws is p, in Pa: Newton's method on ln p_ws.
    fn temperature(self, p: f64) -> f64 {
        let target = libm::log(p);
        // Only where to start: the closed inverse of the other family is within 3 K.
        let mut t = iso_13788::dew_point_celsius(p) + 273.15;
        let mut last_step = f64::INFINITY;
        for _ in 0..MOST_STEPS {
            let step = (target - self.log_pressure(t)) / self.log_pressure_slope(t);
            // Once steps stop shrinking only rounding is left.
            if step.abs() >= last_step {
                break;
            }
            t += step;
            last_step = step.abs();
        }
        t
    }
}

/// p_ws in Pa at a temperature in °C that has been checked.
pub(super) fn saturation_pascals(celsius: f64) -> f64 {
    let phase = if celsius <= TRIPLE_POINT.as_celsius() { Phase::Ice } else { Phase::Water };
    phase.pressure(celsius + 273.15)
}

/// Saturation pressure over ice, Pa, at T in K:
/// ln p_ws = C1/T + C2 + C3·T + C4·T² + C5·T³ + C6·T⁴ + C7·ln T.
///
/// Range: −100 °C to 0.01 °C. Source: ASHRAE Fundamentals 2017, chapter 1, equation 5.
///
/// # Errors
/// Refuses a temperature out of range.
pub fn saturation_pressure_over_ice(temperature: Temperature) -> Result<Pressure, PsychroError> {
    let allowed = Bounds::between(COLDEST, TRIPLE_POINT.as_celsius());
    PsychroQuantity::Temperature.check_within(temperature.as_celsius(), allowed)?;
    Ok(Pressure::new(Phase::Ice.pressure(temperature.as_kelvin())))
}

/// Saturation pressure over liquid water, Pa, at T in K:
/// ln p_ws = C8/T + C9 + C10·T + C11·T² + C12·T³ + C13·ln T.
///
/// Below 0 °C it is the formula of liquid water carried on to supercooled water, over which weather
/// services state dew point and relative humidity in frost too. There it lies above Goff and Gratch
/// by 0.3 % at −20 °C, 0.8 % at −40 °C and 3 % at −60 °C.
///
/// Range: −80 °C to 200 °C, stated by its source from 0 °C. Source: ASHRAE Fundamentals 2017,
/// chapter 1, equation 6.
///
/// # Errors
/// Refuses a temperature out of range.
pub fn saturation_pressure_over_water(temperature: Temperature) -> Result<Pressure, PsychroError> {
    let allowed = Bounds::between(COLDEST_LIQUID, HOTTEST);
    PsychroQuantity::Temperature.check_within(temperature.as_celsius(), allowed)?;
    Ok(Pressure::new(Phase::Water.pressure(temperature.as_kelvin())))
}

/// Saturation pressure p_ws, Pa: over ice up to the triple point, over water above it.
///
/// Range: −100 °C to 200 °C. Source: ASHRAE Fundamentals 2017, chapter 1, equations 5 and 6.
///
/// # Errors
/// Refuses a temperature out of range.
pub fn saturation_pressure(temperature: Temperature) -> Result<Pressure, PsychroError> {
    Ok(Pressure::new(saturation_pascals(check_temperature(temperature)?)))
}

/// Dew point of a vapour pressure, °C; below the triple point it is the frost point.
///
/// The inverse of [`saturation_pressure`] itself, by Newton's method to the last digits, not a
/// fitted formula. Range: the saturation pressures from −100 °C to 200 °C, 0.0014 Pa to 1.555 MPa.
///
/// # Errors
/// Refuses a vapour pressure out of range; air without vapour has no dew point.
pub fn dew_point(vapour_pressure: Pressure) -> Result<Temperature, PsychroError> {
    let allowed =
        Bounds::between(Phase::Ice.pressure(COLDEST_KELVIN), Phase::Water.pressure(HOTTEST_KELVIN));
    let p = PsychroQuantity::VapourPressure.check_within(vapour_pressure.value(), allowed)?;
    let kelvin = if p <= Phase::Ice.pressure(TRIPLE_POINT_KELVIN) {
        Phase::Ice.temperature(p)
    } else if p >= Phase::Water.pressure(TRIPLE_POINT_KELVIN) {
        Phase::Water.temperature(p)
    } else {
        // Inside the 4 µPa by which the two formulas miss each other.
        TRIPLE_POINT_KELVIN
    };
    Ok(Temperature::kelvin(kelvin))
}

/// Vapour pressure p_w = φ·p_ws(t), Pa.
///
/// Range: −100 °C to 200 °C, φ from 0 to 1. Source: ASHRAE Fundamentals 2017, chapter 1,
/// equations 12 and 22.
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

/// Vapour pressure of a relative humidity over water, also in frost, p_w = φ·p_w,water(t), Pa.
///
/// Weather services state humidity over water at all temperatures, because most hygrometers follow
/// it (American Meteorological Society, Glossary of Meteorology, relative humidity). What they state
/// in frost is more than air saturated over ice may hold.
///
/// Range: as [`saturation_pressure_over_water`], φ from 0 to 1.
///
/// # Errors
/// Refuses a temperature or relative humidity out of range.
pub fn vapour_pressure_over_water(
    temperature: Temperature,
    humidity: RelativeHumidity,
) -> Result<Pressure, PsychroError> {
    let humidity = check_relative_humidity(humidity)?;
    Ok(saturation_pressure_over_water(temperature)? * humidity)
}

/// Relative humidity φ = p_w / p_ws(t). More than 1 says that vapour would condense.
///
/// Range: −100 °C to 200 °C, p_w from 0 to 1.6 MPa.
/// Source: ASHRAE Fundamentals 2017, chapter 1, equations 12 and 22.
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
