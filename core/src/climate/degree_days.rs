//! Sums of a year of weather.

use super::calendar::{DAYS_IN_YEAR, hours_of};
use super::place::MonthMeans;
use super::weather_year::WeatherYear;
use crate::units::{Irradiation, Pressure, Temperature, TemperatureDifference};

/// Degree days of one day: how far its mean lies below a base, K·d.
pub fn degree_days_of_day(daily_mean: Temperature, base: Temperature) -> f64 {
    (base - daily_mean).value().max(0.0)
}

/// Heating degree days of the year to a base, K·d: the sum of [`degree_days_of_day`].
pub fn heating_degree_days(year: &WeatherYear, base: Temperature) -> f64 {
    (0..DAYS_IN_YEAR)
        .map(|day| {
            let hours = &year.celsius()[day * 24..day * 24 + 24];
            let mean = hours.iter().sum::<f64>() / 24.0;
            degree_days_of_day(Temperature::celsius(mean), base)
        })
        .sum()
}

/// The temperature that is exceeded for a share of the hours, 0 to 1; 0.99 is what heaters are
/// sized for.
pub fn exceeded_for(year: &WeatherYear, share: f64) -> Temperature {
    let mut sorted = year.celsius().to_vec();
    Temperature::celsius(exceeded_among(&mut sorted, share))
}

/// The value exceeded by a share of the values; their order is lost.
pub(super) fn exceeded_among(values: &mut [f64], share: f64) -> f64 {
    let last = values.len().saturating_sub(1);
    let rank = (((1.0 - share) * values.len() as f64) as usize).min(last);
    *values.select_nth_unstable_by(rank, f64::total_cmp).1
}

impl WeatherYear {
    /// The twelve months of these hours, as a place gives them.
    pub fn month_means(&self) -> [MonthMeans; 12] {
        core::array::from_fn(|month| {
            let hours = hours_of(month);
            let count = hours.len() as f64;
            let mean = |values: &[f64]| values[hours.clone()].iter().sum::<f64>() / count;
            let ranges = self.celsius()[hours.clone()].chunks(24).map(|day| {
                let highest = day.iter().copied().fold(f64::NEG_INFINITY, f64::max);
                highest - day.iter().copied().fold(f64::INFINITY, f64::min)
            });
            let temperature = Temperature::celsius(mean(self.celsius()));
            MonthMeans {
                temperature,
                daily_range: TemperatureDifference::new(ranges.sum::<f64>() / (count / 24.0)),
                vapour_pressure: Pressure::new(mean(self.vapour_pascals())),
                daily_global_irradiation: Irradiation::new(
                    mean(self.global_horizontal_irradiance()) * 86_400.0,
                ),
            }
        })
    }
}
