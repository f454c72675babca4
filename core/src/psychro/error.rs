//! Refusals: which input lay outside the range a formula is stated for.

use super::humidity::pressure_of;
use crate::bounds::{BoundedQuantity, Bounds, OutOfRange, bounded_quantities};
use crate::units::{HumidityRatio, Length, Pressure, RelativeHumidity, Temperature};

/// Coldest that the saturation formulas of ASHRAE are stated for, °C.
pub(super) const COLDEST: f64 = -100.0;

/// Hottest that the saturation formulas of ASHRAE are stated for, °C.
pub(super) const HOTTEST: f64 = 200.0;

bounded_quantities! {
    /// What an input to a moist-air formula means; the unit is that of the value in a refusal.
    ///
    /// Temperatures are those of the Hyland–Wexler formulas. Air pressures are those of the standard
    /// atmosphere from −5 km to 11 km, rounded outwards; a humidity ratio of 10 is air of which
    /// 94 % is vapour; vapour pressure and concentration reach just above saturation at 200 °C.
    PsychroQuantity {
        /// Temperature of the air or of a surface, °C.
        Temperature: "temperature", "°C", Bounds::between(COLDEST, HOTTEST);
        /// Dew point, below the triple point the frost point, °C.
        DewPoint: "dew_point", "°C", Bounds::between(COLDEST, HOTTEST);
        /// Wet-bulb temperature, °C.
        WetBulb: "wet_bulb", "°C", Bounds::between(COLDEST, HOTTEST);
        /// Partial pressure of water vapour, Pa.
        VapourPressure: "vapour_pressure", "Pa", Bounds::between(0.0, 1.6e6);
        /// Total pressure of the air, Pa.
        AirPressure: "air_pressure", "Pa", Bounds::between(20_000.0, 200_000.0);
        /// Relative humidity, 1 for saturated.
        RelativeHumidity: "relative_humidity", "", Bounds::between(0.0, 1.0);
        /// Humidity ratio, kg of vapour per kg of dry air.
        HumidityRatio: "humidity_ratio", "kg/kg", Bounds::between(0.0, 10.0);
        /// Mass of vapour per volume of air, kg/m³.
        VapourConcentration: "vapour_concentration", "kg/m³", Bounds::between(0.0, 10.0);
        /// Height above sea level, m.
        Altitude: "altitude", "m", Bounds::between(-5000.0, 11_000.0);
    }
}

/// An input outside the range its formula is stated for, or not a number.
pub type PsychroError = OutOfRange<PsychroQuantity>;

/// The temperature in °C, if the ASHRAE formulas are stated for it.
pub(super) fn check_temperature(temperature: Temperature) -> Result<f64, PsychroError> {
    PsychroQuantity::Temperature.check(temperature.as_celsius())
}

/// The air pressure in Pa, if it occurs in the standard atmosphere.
pub(super) fn check_air_pressure(pressure: Pressure) -> Result<f64, PsychroError> {
    PsychroQuantity::AirPressure.check(pressure.value())
}

/// The vapour pressure in Pa, if it leaves enough of the air pressure to dry air.
pub(super) fn check_vapour_pressure(
    vapour_pressure: Pressure,
    air_pressure: f64,
) -> Result<f64, PsychroError> {
    let highest = pressure_of(PsychroQuantity::HumidityRatio.bounds().maximum(), air_pressure);
    let allowed = Bounds::between(0.0, highest);
    PsychroQuantity::VapourPressure.check_within(vapour_pressure.value(), allowed)
}

/// The humidity ratio, if from dry to the highest.
pub(super) fn check_humidity_ratio(ratio: HumidityRatio) -> Result<f64, PsychroError> {
    PsychroQuantity::HumidityRatio.check(ratio.value())
}

/// The vapour pressure in Pa, where no air pressure bounds it.
pub(super) fn check_any_vapour_pressure(vapour_pressure: Pressure) -> Result<f64, PsychroError> {
    PsychroQuantity::VapourPressure.check(vapour_pressure.value())
}

/// The vapour concentration in kg/m³, if from dry to the highest.
pub(super) fn check_concentration(concentration: f64) -> Result<f64, PsychroError> {
    PsychroQuantity::VapourConcentration.check(concentration)
}

/// The relative humidity, if from dry to saturated.
pub(super) fn check_relative_humidity(humidity: RelativeHumidity) -> Result<f64, PsychroError> {
    PsychroQuantity::RelativeHumidity.check(humidity.value())
}

/// The altitude in m, if the standard-atmosphere formulas are stated for it.
pub(super) fn check_altitude(altitude: Length) -> Result<f64, PsychroError> {
    PsychroQuantity::Altitude.check(altitude.value())
}
