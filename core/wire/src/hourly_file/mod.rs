//! A year of measured hours from comma-separated text with named columns.
//!
//! The first line names the columns; lines that start with `#` are passed over. Needed:
//!
//! | column | meaning |
//! |---|---|
//! | `temperature_c` | mean temperature of the hour, °C |
//! | `dew_point_c`, `relative_humidity_percent` or `vapour_pressure_pa` | its vapour |
//! | `global_horizontal_w_m2` | mean global horizontal irradiance of the hour, W/m² |
//!
//! 8,760 hours from the first of 1 January, in the sun's own time or near it, or 8,784 with those of
//! 29 February, which are left out. Columns of other names are passed over, but two are read if they
//! are there, and every line must then be the hour after the one before:
//!
//! | column | meaning |
//! |---|---|
//! | `time` | `2026-01-31T13:00`, by the beginning or the end of the hour; years may differ |
//! | `hour` | hour of the year or of the day, from 0 or from 1 |
//!
//! Dew point and relative humidity are over water in frost too, as the World Meteorological
//! Organization has them (from memory; so does the Glossary of the American Meteorological Society).
//! Of two typical years that hold all three, one (NSRDB TMY3, Greensboro) keeps that to ±1.2 % of
//! humidity between −10 °C and 0 °C, over ice it would be 2.5 % off; the other (Sand Point, Alaska)
//! took its humidity from dew point and temperature both over ice, which its humidity alone does not
//! show: read over water it gives 8 % more vapour at −8 °C.
//!
//! Numbers have decimal points. A file between semicolons, or with decimal commas, is refused.

mod error;
mod order;
mod plausible;

pub use error::HourlyFileError;

use inchwise_core::climate::{HOURS_IN_YEAR, WeatherHour, WeatherYear};
use inchwise_core::psychro::hyland_wexler::{
    saturation_pressure_over_water, vapour_pressure_over_water,
};
use inchwise_core::units::{Angle, Irradiance, Length, Pressure, RelativeHumidity, Temperature};
use order::{Clock, LEAP_DAY, Order};
use plausible::not_in_their_units;

const TEMPERATURE: &[&str] = &["temperature_c"];
const SUN: &[&str] = &["global_horizontal_w_m2"];
const VAPOUR: &[&str] = &["dew_point_c", "relative_humidity_percent", "vapour_pressure_pa"];
const TIME: &str = "time";
const HOUR: &str = "hour";

/// How the file gives vapour.
#[derive(Clone, Copy)]
enum Vapour {
    DewPoint,
    RelativeHumidity,
    Pressure,
}

/// Reads a year of hours.
///
/// # Errors
/// Everything that is wrong, line by line; a heading that is wrong ends the reading.
pub fn read_hours(
    text: &str,
    elevation: Length,
    latitude: Angle,
) -> Result<WeatherYear, Vec<HourlyFileError>> {
    let mut lines = text
        .trim_start_matches('\u{feff}')
        .lines()
        .enumerate()
        .map(|(index, line)| (index + 1, line.trim()))
        .filter(|(_, line)| !line.is_empty() && !line.starts_with('#'));
    let heading = Heading::read(lines.next().map_or("", |(_, line)| line))?;
    let mut reading = Reading::default();
    for (line, text) in lines {
        reading.take(&heading, line, text);
    }
    reading.year(&heading, elevation, latitude)
}

/// Where the columns stand.
struct Heading {
    count: usize,
    /// Of temperature, vapour and sun.
    columns: [Column; 3],
    vapour: Vapour,
    clock: Option<(usize, Clock)>,
}

/// A column's place in a line, and its name.
type Column = (usize, &'static str);

impl Heading {
    fn read(line: &str) -> Result<Self, Vec<HourlyFileError>> {
        let names: Vec<&str> = line.split(',').map(str::trim).collect();
        let columns = [TEMPERATURE, VAPOUR, SUN].map(|any_of| {
            let found = any_of
                .iter()
                .find_map(|&name| Some((names.iter().position(|&other| other == name)?, name)));
            found.ok_or(HourlyFileError::NoColumn { any_of })
        });
        let [Ok(temperature), Ok(vapour), Ok(sun)] = columns else {
            let other = [';', '\t'].into_iter().find(|&separator| {
                line.split(separator).any(|name| TEMPERATURE.contains(&name.trim()))
            });
            return Err(match other {
                Some(separator) => vec![HourlyFileError::NotCommas { separator }],
                None => columns.into_iter().filter_map(Result::err).collect(),
            });
        };
        let columns = [temperature, vapour, sun];
        let twice = columns.iter().filter(|&&(at, name)| names[at + 1..].contains(&name));
        let twice: Vec<_> =
            twice.map(|&(_, column)| HourlyFileError::ColumnTwice { column }).collect();
        if !twice.is_empty() {
            return Err(twice);
        }
        let clock =
            [(TIME, Clock::Time), (HOUR, Clock::Hour)].into_iter().find_map(|(name, clock)| {
                Some((names.iter().position(|&other| other == name)?, clock))
            });
        let vapour = match vapour.1 {
            "dew_point_c" => Vapour::DewPoint,
            "relative_humidity_percent" => Vapour::RelativeHumidity,
            _ => Vapour::Pressure,
        };
        Ok(Self { count: names.len(), columns, vapour, clock })
    }
}

/// A file being read.
#[derive(Default)]
struct Reading {
    hours: Vec<WeatherHour>,
    /// How many lines there were, whatever was wrong with them.
    lines: usize,
    order: Order,
    errors: Vec<HourlyFileError>,
}

impl Reading {
    fn take(&mut self, heading: &Heading, line: usize, text: &str) {
        self.lines += 1;
        let cells: Vec<&str> = text.split(',').map(str::trim).collect();
        let too_long = cells.iter().skip(heading.count).any(|cell| !cell.is_empty());
        if let Some((at, clock)) = heading.clock {
            let said = cells.get(at).copied().unwrap_or_default();
            let wrong = self.order.take(clock, line, said).err();
            self.errors.extend(wrong.filter(|_| !too_long));
        }
        // A decimal comma moves every figure behind it into the next column.
        if too_long {
            self.errors.push(HourlyFileError::LongLine { line });
            return;
        }
        let mut numbers = [0.0; 3];
        let mut whole = true;
        for (number, (at, column)) in numbers.iter_mut().zip(heading.columns) {
            match cells.get(at).map(|cell| (cell, cell.parse::<f64>())) {
                Some((_, Ok(value))) if value.is_finite() => *number = value,
                Some((cell, _)) => {
                    whole = false;
                    let text = (*cell).to_owned();
                    self.errors.push(HourlyFileError::NotANumber { line, column, text });
                }
                None => {
                    self.errors.push(HourlyFileError::ShortLine { line });
                    return;
                }
            }
        }
        if whole {
            self.take_numbers(heading, line, numbers);
        }
    }

    fn take_numbers(&mut self, heading: &Heading, line: usize, numbers: [f64; 3]) {
        let [celsius, given, sun] = numbers;
        let temperature = Temperature::celsius(celsius);
        let Some(vapour_pressure) = heading.vapour.pressure(temperature, given) else {
            let column = heading.columns[1].1;
            self.errors.push(HourlyFileError::NoHumidity { line, column, given });
            return;
        };
        let hour = WeatherHour {
            temperature,
            vapour_pressure,
            global_horizontal_irradiance: Irradiance::new(sun),
        };
        let wrong = hour.check(self.lines - 1);
        self.errors
            .extend(wrong.into_iter().map(|error| HourlyFileError::OutOfRange { line, error }));
        self.hours.push(hour);
    }

    fn year(
        mut self,
        heading: &Heading,
        elevation: Length,
        latitude: Angle,
    ) -> Result<WeatherYear, Vec<HourlyFileError>> {
        if let Some((_, clock)) = heading.clock {
            self.errors.extend(self.order.faults(clock));
        }
        let leap = self.lines == HOURS_IN_YEAR + LEAP_DAY.len();
        if self.lines != HOURS_IN_YEAR && !leap {
            self.errors.push(HourlyFileError::NotAYear { hours: self.lines });
        }
        if self.errors.is_empty() {
            let names = heading.columns.map(|(_, name)| name);
            self.errors = not_in_their_units(&self.hours, names);
        }
        if !self.errors.is_empty() {
            // In the order of the lines, the faults of the whole file last.
            self.errors.sort_by_key(|error| error.line().unwrap_or(usize::MAX));
            return Err(self.errors);
        }
        if leap {
            self.hours.drain(LEAP_DAY);
        }
        WeatherYear::new(elevation, latitude, &self.hours).map_err(|wrong| {
            wrong.into_iter().map(|error| HourlyFileError::Place { error }).collect()
        })
    }
}

impl Vapour {
    /// The vapour pressure of an hour, worked out once, when it is read. Dew point and relative
    /// humidity are over water at all temperatures, as weather services state them.
    fn pressure(self, temperature: Temperature, given: f64) -> Option<Pressure> {
        match self {
            Self::DewPoint => saturation_pressure_over_water(Temperature::celsius(given)).ok(),
            Self::RelativeHumidity => {
                vapour_pressure_over_water(temperature, RelativeHumidity::percent(given)).ok()
            }
            Self::Pressure => Some(Pressure::new(given)),
        }
    }
}

#[cfg(test)]
mod tests;
