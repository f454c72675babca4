//! What is known of a place: its twelve months and a few figures of the whole.

use super::calendar::{DAYS_IN_MONTH, days_of};
use super::error::{ClimateError, ClimateProblem, ClimateQuantity, out_of_range};
use super::sun_position::daily_extraterrestrial_irradiation;
use super::varnholm::{AIR_PRESSURE_AT_VARNHOLM_FLATS, varnholm_flats};
use crate::psychro::{MoistAir, PsychroError, hyland_wexler, standard_pressure};
use crate::units::{
    Angle, Irradiation, Length, Pressure, RelativeHumidity, Temperature, TemperatureDifference,
};

/// The means of one month over many years.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct MonthMeans {
    /// Mean temperature.
    pub temperature: Temperature,
    /// Mean of the daily highest less the daily lowest temperature.
    pub daily_range: TemperatureDifference,
    /// Mean partial pressure of water vapour.
    pub vapour_pressure: Pressure,
    /// Mean daily global irradiation, on a level plane.
    pub daily_global_irradiation: Irradiation,
}

/// A place, as given.
#[derive(Clone, Debug, PartialEq)]
pub struct Place {
    /// Height over the sea.
    pub elevation: Length,
    /// Latitude, north above 0.
    pub latitude: Angle,
    /// January to December.
    pub months: [MonthMeans; 12],
    /// Temperature exceeded in 99 % of the hours of the year.
    pub winter_design: Temperature,
    /// Temperature exceeded in 1 % of the hours of the year.
    pub summer_design: Temperature,
}

/// Most vapour pressure of a month over saturation at its mean temperature: e^(½·(0.09·σ)²) for saturated
/// air that varies by σ = 11 K, the most that days of a month do.
pub const MOST_VAPOUR: f64 = 1.65;

/// A place whose figures can be.
#[derive(Clone, Debug, PartialEq)]
pub struct CheckedPlace {
    place: Place,
    air_pressure: Pressure,
}

impl CheckedPlace {
    /// Its figures.
    pub fn place(&self) -> &Place {
        &self.place
    }

    /// Pressure of the standard atmosphere at its height.
    pub fn air_pressure(&self) -> Pressure {
        self.air_pressure
    }
}

impl Default for CheckedPlace {
    /// The invented place, which a test holds to its own check.
    fn default() -> Self {
        let place = varnholm_flats();
        Self { air_pressure: AIR_PRESSURE_AT_VARNHOLM_FLATS, place }
    }
}

impl MonthMeans {
    /// Relative humidity at the month's mean temperature, over ice below the triple point; 1 where the
    /// mean vapour pressure is beyond saturation there.
    ///
    /// # Errors
    /// Refuses a temperature out of the range of the saturation formula; a checked place has none.
    pub fn relative_humidity(&self) -> Result<RelativeHumidity, PsychroError> {
        let saturation = hyland_wexler::saturation_pressure(self.temperature)?;
        Ok(RelativeHumidity::new((self.vapour_pressure / saturation).min(1.0)))
    }

    /// Outdoor air in the mean of the month at an air pressure.
    ///
    /// # Errors
    /// As [`Self::relative_humidity`].
    pub fn air(&self, pressure: Pressure) -> Result<MoistAir, PsychroError> {
        MoistAir::from_relative_humidity(self.temperature, self.relative_humidity()?, pressure)
    }
}

impl Place {
    /// Index from January of the month that is coldest in the mean; of several alike the first.
    pub fn coldest_month(&self) -> usize {
        let colder = |most: usize, next: usize| {
            if self.months[next].temperature < self.months[most].temperature { next } else { most }
        };
        (1..12).fold(0, colder)
    }

    /// Index from January of the month that is warmest in the mean; of several alike the first.
    pub fn warmest_month(&self) -> usize {
        let warmer = |most: usize, next: usize| {
            if self.months[next].temperature > self.months[most].temperature { next } else { most }
        };
        (1..12).fold(0, warmer)
    }

    /// Checks every figure.
    ///
    /// Vapour pressure may be up to [`MOST_VAPOUR`] times saturation at the month's mean temperature:
    /// warm days hold more than cold ones lack. Irradiation may be up to the
    /// extraterrestrial.
    ///
    /// # Errors
    /// Every figure that cannot stand.
    pub fn check(&self) -> Result<CheckedPlace, Vec<ClimateError>> {
        use ClimateQuantity as Q;
        let mut errors = Vec::new();
        let whole = [
            (Q::Elevation, self.elevation.value()),
            (Q::Latitude, self.latitude.as_degrees()),
            (Q::WinterDesign, self.winter_design.as_celsius()),
            (Q::SummerDesign, self.summer_design.as_celsius()),
        ];
        errors.extend(whole.iter().filter_map(|&(quantity, given)| {
            // Degrees come back from radians a rounding beyond the pole.
            out_of_range(
                quantity,
                None,
                if quantity == Q::Latitude { given * (1.0 - 1e-12) } else { given },
            )
        }));
        for (month, means) in self.months.iter().enumerate() {
            let figures = [
                (Q::Temperature, means.temperature.as_celsius()),
                (Q::DailyRange, means.daily_range.value()),
                (Q::VapourPressure, means.vapour_pressure.value()),
                (Q::DailyGlobalIrradiation, means.daily_global_irradiation.as_kilowatt_hours()),
            ];
            errors.extend(
                figures
                    .iter()
                    .filter_map(|&(quantity, given)| out_of_range(quantity, Some(month), given)),
            );
        }
        if errors.is_empty() {
            self.check_together(&mut errors);
        }
        match standard_pressure(self.elevation) {
            Ok(air_pressure) if errors.is_empty() => {
                Ok(CheckedPlace { place: self.clone(), air_pressure })
            }
            // An elevation beyond the atmosphere's formula is beyond the range of elevations too.
            _ => Err(errors),
        }
    }

    fn check_together(&self, errors: &mut Vec<ClimateError>) {
        if self.winter_design >= self.summer_design {
            errors.push(ClimateError {
                quantity: ClimateQuantity::WinterDesign,
                index: None,
                given: self.winter_design.as_celsius(),
                problem: ClimateProblem::WinterNotBelowSummer,
            });
        }
        for (month, means) in self.months.iter().enumerate() {
            if let Ok(saturation) = hyland_wexler::saturation_pressure(means.temperature)
                && means.vapour_pressure > saturation * MOST_VAPOUR
            {
                errors.push(ClimateError {
                    quantity: ClimateQuantity::VapourPressure,
                    index: Some(month),
                    given: means.vapour_pressure.value(),
                    problem: ClimateProblem::AboveSaturation { saturation: saturation.value() },
                });
            }
            let extraterrestrial = mean_extraterrestrial_irradiation(self.latitude, month);
            if means.daily_global_irradiation > extraterrestrial {
                errors.push(ClimateError {
                    quantity: ClimateQuantity::DailyGlobalIrradiation,
                    index: Some(month),
                    given: means.daily_global_irradiation.as_kilowatt_hours(),
                    problem: ClimateProblem::AboveExtraterrestrial {
                        extraterrestrial: extraterrestrial.as_kilowatt_hours(),
                    },
                });
            }
        }
    }
}

/// Mean daily extraterrestrial irradiation of a level plane in a month, from 0.
pub fn mean_extraterrestrial_irradiation(latitude: Angle, month: usize) -> Irradiation {
    let sum: Irradiation =
        days_of(month).map(|day| daily_extraterrestrial_irradiation(latitude, day)).sum();
    sum / DAYS_IN_MONTH[month] as f64
}
