//! One state of moist air, checked once and read many ways.

use super::density::{density_of, specific_volume_of};
use super::enthalpy::enthalpy_of;
use super::error::{
    COLDEST, PsychroError, PsychroQuantity, check_air_pressure, check_humidity_ratio,
    check_relative_humidity, check_temperature, check_vapour_pressure,
};
use super::humidity::{concentration_of, pressure_of, ratio_of};
use super::hyland_wexler::{dew_point, saturation_pascals};
use super::wet_bulb::{ROUNDING, humidity_ratio_from_wet_bulb, wet_bulb};
use crate::bounds::{BoundedQuantity, Bounds};
use crate::units::*;

/// Air at a temperature, holding some vapour, at a pressure; never more vapour than saturation.
///
/// Saturation is that of [`super::hyland_wexler`] throughout.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct MoistAir {
    temperature: Temperature,
    vapour_pressure: Pressure,
    saturation_pressure: Pressure,
    air_pressure: Pressure,
}

impl MoistAir {
    /// Air of a vapour pressure.
    ///
    /// Range: t from −100 °C to 200 °C, p from 20 kPa to 200 kPa, p_w from 0 to saturation and
    /// to 0.9414·p.
    ///
    /// # Errors
    /// Refuses an input out of range.
    pub fn from_vapour_pressure(
        temperature: Temperature,
        vapour_pressure: Pressure,
        air_pressure: Pressure,
    ) -> Result<Self, PsychroError> {
        let saturation = saturation_pascals(check_temperature(temperature)?);
        let p = check_air_pressure(air_pressure)?;
        let allowed = Bounds::between(0.0, saturation);
        PsychroQuantity::VapourPressure.check_within(vapour_pressure.value(), allowed)?;
        check_vapour_pressure(vapour_pressure, p)?;
        Ok(Self {
            temperature,
            vapour_pressure,
            saturation_pressure: Pressure::new(saturation),
            air_pressure,
        })
    }

    /// Air of a relative humidity, p_w = φ·p_ws(t).
    ///
    /// Range: t from −100 °C to 200 °C, φ from 0 to 1, p from 20 kPa to 200 kPa, p_w to 0.9414·p.
    /// Source: ASHRAE Fundamentals 2017, chapter 1, equations 12 and 22.
    ///
    /// # Errors
    /// Refuses an input out of range.
    pub fn from_relative_humidity(
        temperature: Temperature,
        humidity: RelativeHumidity,
        air_pressure: Pressure,
    ) -> Result<Self, PsychroError> {
        let saturation = Pressure::new(saturation_pascals(check_temperature(temperature)?));
        let vapour_pressure = saturation * check_relative_humidity(humidity)?;
        Self::from_vapour_pressure(temperature, vapour_pressure, air_pressure)
    }

    /// Air of a humidity ratio, p_w = p·W / (0.621945 + W).
    ///
    /// Saturated air may come back from a calculation a rounding above saturation; within
    /// 10⁻¹² of it the air is taken as saturated.
    ///
    /// Range: t from −100 °C to 200 °C, W from 0 to saturation, p from 20 kPa to 200 kPa.
    /// Source: ASHRAE Fundamentals 2017, chapter 1, equation 20 solved for p_w.
    ///
    /// # Errors
    /// Refuses an input out of range.
    pub fn from_humidity_ratio(
        temperature: Temperature,
        ratio: HumidityRatio,
        air_pressure: Pressure,
    ) -> Result<Self, PsychroError> {
        let saturation = saturation_pascals(check_temperature(temperature)?);
        let p = check_air_pressure(air_pressure)?;
        let p_w = pressure_of(check_humidity_ratio(ratio)?, p);
        if saturation < p {
            let highest = ratio_of(saturation, p) * (1.0 + ROUNDING);
            let allowed = Bounds::between(0.0, highest);
            PsychroQuantity::HumidityRatio.check_within(ratio.value(), allowed)?;
        }
        Self::from_vapour_pressure(temperature, Pressure::new(p_w.min(saturation)), air_pressure)
    }

    /// Air of a dew point or frost point, p_w = p_ws(t_d).
    ///
    /// Range: t from −100 °C to 200 °C, t_d from −100 °C to t, p from 20 kPa to 200 kPa, p_w to
    /// 0.9414·p. Source: ASHRAE Fundamentals 2017, chapter 1, equation 36.
    ///
    /// # Errors
    /// Refuses an input out of range.
    pub fn from_dew_point(
        temperature: Temperature,
        dew_point: Temperature,
        air_pressure: Pressure,
    ) -> Result<Self, PsychroError> {
        let dry = check_temperature(temperature)?;
        let allowed = Bounds::between(COLDEST, dry);
        let dew = PsychroQuantity::DewPoint.check_within(dew_point.as_celsius(), allowed)?;
        let vapour_pressure = Pressure::new(saturation_pascals(dew));
        Self::from_vapour_pressure(temperature, vapour_pressure, air_pressure)
    }

    /// Air of a wet-bulb temperature, by [`humidity_ratio_from_wet_bulb`].
    ///
    /// # Errors
    /// As [`humidity_ratio_from_wet_bulb`].
    pub fn from_wet_bulb(
        temperature: Temperature,
        wet_bulb: Temperature,
        air_pressure: Pressure,
    ) -> Result<Self, PsychroError> {
        let ratio = humidity_ratio_from_wet_bulb(temperature, wet_bulb, air_pressure)?;
        Self::from_humidity_ratio(temperature, ratio, air_pressure)
    }

    /// Dry-bulb temperature t, °C.
    pub fn temperature(&self) -> Temperature {
        self.temperature
    }

    /// Vapour pressure p_w, Pa.
    pub fn vapour_pressure(&self) -> Pressure {
        self.vapour_pressure
    }

    /// Saturation pressure p_ws at the dry bulb, Pa.
    pub fn saturation_pressure(&self) -> Pressure {
        self.saturation_pressure
    }

    /// Total pressure p, Pa.
    pub fn air_pressure(&self) -> Pressure {
        self.air_pressure
    }

    /// Relative humidity φ = p_w / p_ws(t).
    pub fn relative_humidity(&self) -> RelativeHumidity {
        RelativeHumidity::new(self.vapour_pressure / self.saturation_pressure)
    }

    /// Humidity ratio W = 0.621945·p_w / (p − p_w), kg/kg.
    pub fn humidity_ratio(&self) -> HumidityRatio {
        HumidityRatio::new(ratio_of(self.vapour_pressure.value(), self.air_pressure.value()))
    }

    /// Dew point or frost point, °C, by [`super::hyland_wexler::dew_point`].
    ///
    /// # Errors
    /// Refuses air so dry that it lies below −100 °C.
    pub fn dew_point(&self) -> Result<Temperature, PsychroError> {
        dew_point(self.vapour_pressure)
    }

    /// Wet-bulb temperature, °C, by [`wet_bulb`].
    ///
    /// # Errors
    /// Refuses air hotter than boiling, or so cold and dry that the bulb would read below −100 °C.
    pub fn wet_bulb(&self) -> Result<Temperature, PsychroError> {
        wet_bulb(self.temperature, self.humidity_ratio(), self.air_pressure)
    }

    /// Enthalpy per kilogram of dry air, J/kg, by [`super::enthalpy`].
    pub fn enthalpy(&self) -> SpecificEnthalpy {
        enthalpy_of(self.temperature.as_celsius(), self.humidity_ratio().value())
    }

    /// Volume that holds a kilogram of dry air, m³/kg, by [`super::specific_volume`].
    pub fn specific_volume(&self) -> SpecificVolume {
        specific_volume_of(self.temperature, self.humidity_ratio().value(), self.air_pressure)
    }

    /// Density of air and vapour together, kg/m³, by [`super::moist_air_density`].
    pub fn density(&self) -> Density {
        density_of(self.temperature, self.humidity_ratio().value(), self.air_pressure)
    }

    /// Vapour concentration v = p_w / (R_v·T), kg/m³, by [`super::vapour_concentration`].
    pub fn vapour_concentration(&self) -> VapourConcentration {
        concentration_of(self.temperature, self.vapour_pressure)
    }
}
