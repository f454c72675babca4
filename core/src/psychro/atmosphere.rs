//! The standard atmosphere.

use super::error::{PsychroError, check_altitude};
use crate::units::{Length, Pressure, Temperature};

/// Standard atmospheric pressure at sea level, exactly 101 325 Pa.
pub const STANDARD_PRESSURE: Pressure = Pressure::new(101_325.0);

/// Pressure of the standard atmosphere p = 101 325·(1 − 2.25577·10⁻⁵·Z)^5.2559, Pa, at Z in m.
///
/// Range: −5000 m to 11 000 m. Source: ASHRAE Fundamentals 2017, chapter 1, equation 3.
///
/// # Errors
/// Refuses an altitude out of range.
pub fn standard_pressure(altitude: Length) -> Result<Pressure, PsychroError> {
    let z = check_altitude(altitude)?;
    Ok(STANDARD_PRESSURE * libm::pow(1.0 - 2.255_77e-5 * z, 5.2559))
}

/// Temperature of the standard atmosphere t = 15 − 0.0065·Z, °C, at Z in m.
///
/// Range: −5000 m to 11 000 m. Source: ASHRAE Fundamentals 2017, chapter 1, equation 4.
///
/// # Errors
/// Refuses an altitude out of range.
pub fn standard_temperature(altitude: Length) -> Result<Temperature, PsychroError> {
    let z = check_altitude(altitude)?;
    Ok(Temperature::celsius(15.0 - 0.0065 * z))
}
