//! Density and specific volume of dry and moist air.

use super::constants::{GAS_CONSTANT_OF_DRY_AIR, MOLAR_MASS_RATIO};
use super::error::{PsychroError, check_air_pressure, check_humidity_ratio, check_temperature};
use crate::units::{Density, HumidityRatio, Pressure, SpecificVolume, Temperature};

/// v from an input that has been checked.
pub(super) fn specific_volume_of(
    temperature: Temperature,
    ratio: f64,
    air_pressure: Pressure,
) -> SpecificVolume {
    let dry = GAS_CONSTANT_OF_DRY_AIR * temperature.as_kelvin() / air_pressure.value();
    SpecificVolume::new(dry * (1.0 + ratio / MOLAR_MASS_RATIO))
}

/// ρ from an input that has been checked.
pub(super) fn density_of(temperature: Temperature, ratio: f64, air_pressure: Pressure) -> Density {
    Density::new((1.0 + ratio) / specific_volume_of(temperature, ratio, air_pressure).value())
}

/// Density of dry air ρ = p / (287.042·T), kg/m³ with T in K.
///
/// Range: t from −100 °C to 200 °C, p from 20 kPa to 200 kPa.
/// Source: ASHRAE Fundamentals 2017, chapter 1, equation 1 and the ideal-gas law.
///
/// # Errors
/// Refuses a temperature or pressure out of range.
pub fn dry_air_density(
    temperature: Temperature,
    air_pressure: Pressure,
) -> Result<Density, PsychroError> {
    check_temperature(temperature)?;
    check_air_pressure(air_pressure)?;
    Ok(density_of(temperature, 0.0, air_pressure))
}

/// Volume of moist air that holds a kilogram of dry air, v = 287.042·T·(1 + W / 0.621945) / p,
/// m³/kg with T in K and p in Pa.
///
/// Range: t from −100 °C to 200 °C, p from 20 kPa to 200 kPa, W from 0 to 10.
/// Source: ASHRAE Fundamentals 2017, chapter 1, equation 26.
///
/// # Errors
/// Refuses an input out of range.
pub fn specific_volume(
    temperature: Temperature,
    ratio: HumidityRatio,
    air_pressure: Pressure,
) -> Result<SpecificVolume, PsychroError> {
    check_temperature(temperature)?;
    check_air_pressure(air_pressure)?;
    Ok(specific_volume_of(temperature, check_humidity_ratio(ratio)?, air_pressure))
}

/// Density of moist air, air and vapour together, ρ = (1 + W) / v, kg/m³. Damp air is lighter than
/// dry air of the same temperature and pressure.
///
/// Range: as [`specific_volume`]. Source: ASHRAE Fundamentals 2017, chapter 1, equation 11.
///
/// # Errors
/// Refuses an input out of range.
pub fn moist_air_density(
    temperature: Temperature,
    ratio: HumidityRatio,
    air_pressure: Pressure,
) -> Result<Density, PsychroError> {
    check_temperature(temperature)?;
    check_air_pressure(air_pressure)?;
    Ok(density_of(temperature, check_humidity_ratio(ratio)?, air_pressure))
}
