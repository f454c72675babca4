//! The hours of a year, reconstructed or measured.

use super::calendar::HOURS_IN_YEAR;
use super::error::{ClimateError, ClimateProblem, ClimateQuantity, out_of_range};
use crate::units::{Angle, Irradiance, Length, Pressure, Temperature};

/// 8,760 hours of outdoor air and sun, from the first hour of 1 January.
#[derive(Clone, Debug, PartialEq)]
pub struct WeatherYear {
    /// Height over the sea.
    pub elevation: Length,
    /// Latitude, north above 0.
    pub latitude: Angle,
    celsius: Vec<f64>,
    vapour_pascals: Vec<f64>,
    global_horizontal_irradiance: Vec<f64>,
}

/// The air and sun of one hour.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WeatherHour {
    /// Mean temperature.
    pub temperature: Temperature,
    /// Mean partial pressure of water vapour.
    pub vapour_pressure: Pressure,
    /// Mean global horizontal irradiance.
    pub global_horizontal_irradiance: Irradiance,
}

impl WeatherHour {
    /// Every figure out of its range, of the hour of this number.
    pub fn check(&self, hour: usize) -> Vec<ClimateError> {
        use ClimateQuantity as Q;
        [
            (Q::Temperature, self.temperature.as_celsius()),
            (Q::VapourPressure, self.vapour_pressure.value()),
            (Q::GlobalHorizontalIrradiance, self.global_horizontal_irradiance.value()),
        ]
        .iter()
        .filter_map(|&(quantity, given)| out_of_range(quantity, Some(hour), given))
        .collect()
    }
}

impl WeatherYear {
    /// From measured hours.
    ///
    /// # Errors
    /// Refuses a series that is not a year, and every figure out of its range.
    pub fn new(
        elevation: Length,
        latitude: Angle,
        hours: &[WeatherHour],
    ) -> Result<Self, Vec<ClimateError>> {
        use ClimateQuantity as Q;
        if hours.len() != HOURS_IN_YEAR {
            return Err(vec![ClimateError {
                quantity: Q::Temperature,
                index: None,
                given: hours.len() as f64,
                problem: ClimateProblem::NotAYear,
            }]);
        }
        let mut errors: Vec<ClimateError> =
            [(Q::Elevation, elevation.value()), (Q::Latitude, latitude.as_degrees())]
                .iter()
                .filter_map(|&(quantity, given)| out_of_range(quantity, None, given))
                .collect();
        errors.extend(hours.iter().enumerate().flat_map(|(n, hour)| hour.check(n)));
        if !errors.is_empty() {
            return Err(errors);
        }
        Ok(Self::of_numbers(
            elevation,
            latitude,
            hours.iter().map(|hour| hour.temperature.as_celsius()).collect(),
            hours.iter().map(|hour| hour.vapour_pressure.value()).collect(),
            hours.iter().map(|hour| hour.global_horizontal_irradiance.value()).collect(),
        ))
    }

    /// From °C, Pa and W/m², a year of each.
    pub(super) fn of_numbers(
        elevation: Length,
        latitude: Angle,
        celsius: Vec<f64>,
        vapour_pascals: Vec<f64>,
        global_horizontal_irradiance: Vec<f64>,
    ) -> Self {
        Self { elevation, latitude, celsius, vapour_pascals, global_horizontal_irradiance }
    }

    /// An hour, from 0 in the first of 1 January; `None` past the year.
    pub fn hour(&self, hour: usize) -> Option<WeatherHour> {
        Some(WeatherHour {
            temperature: Temperature::celsius(*self.celsius.get(hour)?),
            vapour_pressure: Pressure::new(*self.vapour_pascals.get(hour)?),
            global_horizontal_irradiance: Irradiance::new(
                *self.global_horizontal_irradiance.get(hour)?,
            ),
        })
    }

    /// Temperature of every hour, °C, for numeric loops.
    pub fn celsius(&self) -> &[f64] {
        &self.celsius
    }

    /// Vapour pressure of every hour, Pa, for numeric loops.
    pub fn vapour_pascals(&self) -> &[f64] {
        &self.vapour_pascals
    }

    /// Global horizontal irradiance of every hour, W/m², for numeric loops.
    pub fn global_horizontal_irradiance(&self) -> &[f64] {
        &self.global_horizontal_irradiance
    }
}
