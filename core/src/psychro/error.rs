//! Refusals: which input lay outside the range a formula is stated for.

use core::ops::{Bound, RangeBounds};

use super::humidity::pressure_of;
use crate::units::{HumidityRatio, Length, Pressure, RelativeHumidity, Temperature};

/// Lowest and highest value allowed, each included or excluded.
pub type AllowedRange = (Bound<f64>, Bound<f64>);

/// What an input to a moist-air formula means; the unit is that of the value in a refusal.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum PsychroQuantity {
    /// Temperature of the air or of a surface, °C.
    Temperature,
    /// Dew point, below the triple point the frost point, °C.
    DewPoint,
    /// Wet-bulb temperature, °C.
    WetBulb,
    /// Partial pressure of water vapour, Pa.
    VapourPressure,
    /// Total pressure of the air, Pa.
    AirPressure,
    /// Relative humidity, 1 for saturated.
    RelativeHumidity,
    /// Humidity ratio, kg of vapour per kg of dry air.
    HumidityRatio,
    /// Mass of vapour per volume of air, kg/m³.
    VapourConcentration,
    /// Height above sea level, m.
    Altitude,
}

/// An input outside the range its formula is stated for, or not a number.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PsychroError {
    /// The input refused.
    pub quantity: PsychroQuantity,
    /// Its value, in the unit of the quantity.
    pub given: f64,
    /// The values allowed with the other inputs as they were.
    pub allowed: AllowedRange,
}

/// Lowest and highest temperature of the Hyland–Wexler formulas, °C.
const TEMPERATURE: AllowedRange = (Bound::Included(-100.0), Bound::Included(200.0));

/// Pressures of the standard atmosphere from −5 km to 11 km, rounded outwards, Pa.
const AIR_PRESSURE: AllowedRange = (Bound::Included(20_000.0), Bound::Included(200_000.0));

/// Highest humidity ratio, kg/kg: air of which 94 % is vapour, far beyond any room.
const HIGHEST_HUMIDITY_RATIO: f64 = 10.0;

/// Highest vapour pressure where no air pressure bounds it, Pa: just above saturation at 200 °C.
const HIGHEST_VAPOUR_PRESSURE: f64 = 1.6e6;

/// Highest vapour concentration, kg/m³: above saturated vapour at 200 °C.
const HIGHEST_CONCENTRATION: f64 = 10.0;

/// Passes a value inside its range, refuses one outside it; a NaN is inside no range.
pub(super) fn check(
    quantity: PsychroQuantity,
    given: f64,
    allowed: AllowedRange,
) -> Result<f64, PsychroError> {
    if allowed.contains(&given) {
        Ok(given)
    } else {
        Err(PsychroError { quantity, given, allowed })
    }
}

/// The temperature in °C, if the ASHRAE formulas are stated for it.
pub(super) fn check_temperature(temperature: Temperature) -> Result<f64, PsychroError> {
    check(PsychroQuantity::Temperature, temperature.as_celsius(), TEMPERATURE)
}

/// The air pressure in Pa, if it occurs in the standard atmosphere.
pub(super) fn check_air_pressure(pressure: Pressure) -> Result<f64, PsychroError> {
    check(PsychroQuantity::AirPressure, pressure.value(), AIR_PRESSURE)
}

/// The vapour pressure in Pa, if it leaves enough of the air pressure to dry air.
pub(super) fn check_vapour_pressure(
    vapour_pressure: Pressure,
    air_pressure: f64,
) -> Result<f64, PsychroError> {
    let highest = pressure_of(HIGHEST_HUMIDITY_RATIO, air_pressure);
    let allowed = (Bound::Included(0.0), Bound::Included(highest));
    check(PsychroQuantity::VapourPressure, vapour_pressure.value(), allowed)
}

/// The humidity ratio, if from dry to the highest.
pub(super) fn check_humidity_ratio(ratio: HumidityRatio) -> Result<f64, PsychroError> {
    let allowed = (Bound::Included(0.0), Bound::Included(HIGHEST_HUMIDITY_RATIO));
    check(PsychroQuantity::HumidityRatio, ratio.value(), allowed)
}

/// The vapour pressure in Pa, where no air pressure bounds it.
pub(super) fn check_any_vapour_pressure(vapour_pressure: Pressure) -> Result<f64, PsychroError> {
    let allowed = (Bound::Included(0.0), Bound::Included(HIGHEST_VAPOUR_PRESSURE));
    check(PsychroQuantity::VapourPressure, vapour_pressure.value(), allowed)
}

/// The vapour concentration in kg/m³, if from dry to the highest.
pub(super) fn check_concentration(concentration: f64) -> Result<f64, PsychroError> {
    let allowed = (Bound::Included(0.0), Bound::Included(HIGHEST_CONCENTRATION));
    check(PsychroQuantity::VapourConcentration, concentration, allowed)
}

/// The relative humidity, if from dry to saturated.
pub(super) fn check_relative_humidity(humidity: RelativeHumidity) -> Result<f64, PsychroError> {
    let allowed = (Bound::Included(0.0), Bound::Included(1.0));
    check(PsychroQuantity::RelativeHumidity, humidity.value(), allowed)
}

/// The altitude in m, if the standard-atmosphere formulas are stated for it.
pub(super) fn check_altitude(altitude: Length) -> Result<f64, PsychroError> {
    let allowed = (Bound::Included(-5000.0), Bound::Included(11_000.0));
    check(PsychroQuantity::Altitude, altitude.value(), allowed)
}
