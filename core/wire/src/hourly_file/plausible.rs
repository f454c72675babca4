//! Whether the columns of a whole year can be in the units they are said to be in.

use inchwise_core::climate::WeatherHour;
use inchwise_core::psychro::SaturationTable;

use super::error::HourlyFileError;

/// Least and most of a year's mean temperature, °C: from the ice sheets to the hottest deserts, both with
/// something to spare (from memory: −58 and 35).
const MEAN_TEMPERATURE: [f64; 2] = [-65.0, 38.0];

/// Least and most of a year's mean relative humidity, %: deserts have some 20 (from memory). Vapour
/// pressure in hectopascals comes to less than two.
const MEAN_HUMIDITY: [f64; 2] = [5.0, 101.0];

/// Least and most of the year's sunniest hour, W/m²: the poles have some 400 (from memory). Kilowatts and
/// megajoules come to a few.
const SUNNIEST: [f64; 2] = [100.0, 1500.0];

/// What about whole columns cannot be. A year without any sun is taken as one whose sun is left out.
pub(super) fn not_in_their_units(
    hours: &[WeatherHour],
    [temperature, vapour, sun]: [&'static str; 3],
) -> Vec<HourlyFileError> {
    let saturation = SaturationTable::new();
    let count = hours.len() as f64;
    let mean = |of: &dyn Fn(&WeatherHour) -> f64| hours.iter().map(of).sum::<f64>() / count;
    let celsius = mean(&|hour| hour.temperature.as_celsius());
    let humidity = mean(&|hour| {
        let most = saturation.pascals(hour.temperature.as_celsius());
        100.0 * (hour.vapour_pressure.value() / most).min(1.0)
    });
    let sunniest =
        hours.iter().map(|hour| hour.global_horizontal_irradiance.value()).fold(0.0, f64::max);
    let figures = [
        (temperature, celsius, MEAN_TEMPERATURE),
        (vapour, humidity, MEAN_HUMIDITY),
        (sun, sunniest, if sunniest > 0.0 { SUNNIEST } else { [0.0, SUNNIEST[1]] }),
    ];
    figures
        .into_iter()
        .filter(|(_, found, [least, most])| !(least..=most).contains(&found))
        .map(|(column, found, [least, most])| HourlyFileError::NotInItsUnit {
            column,
            found,
            least,
            most,
        })
        .collect()
}
