//! A year of measured hours from comma-separated text with named columns.
//!
//! The first line names the columns; lines that start with `#` are passed over. Needed:
//!
//! | column | meaning |
//! |---|---|
//! | `temperature_c` | mean temperature of the hour, °C |
//! | `dew_point_c`, `relative_humidity_percent` or `vapour_pressure_pa` | its vapour |
//! | `global_horizontal_w_m2` | mean sun on level ground in the hour, W/m² |
//!
//! 8,760 hours from the first of 1 January, in the sun's own time or near it. Columns of other
//! names are passed over.

use inchwise_core::climate::{ClimateError, HOURS_IN_YEAR, WeatherHour, WeatherYear};
use inchwise_core::psychro::hyland_wexler;
use inchwise_core::units::{Angle, Irradiance, Length, Pressure, RelativeHumidity, Temperature};

/// What is wrong with a file of hours.
#[derive(Clone, Debug, PartialEq)]
pub enum HourlyFileError {
    /// No column of any of these names.
    NoColumn {
        /// The names of which one is needed.
        any_of: &'static [&'static str],
    },
    /// A line has fewer cells than the first.
    ShortLine {
        /// Number of the line, from 1.
        line: usize,
    },
    /// A cell is not a number.
    NotANumber {
        /// Number of the line, from 1.
        line: usize,
        /// Which column.
        column: &'static str,
        /// What stands there.
        text: String,
    },
    /// A cell is a number that its column cannot have.
    OutOfRange {
        /// Number of the line, from 1.
        line: usize,
        /// What is wrong.
        error: ClimateError,
    },
    /// A humidity that its formula refuses: a dew point beyond −100 °C to 200 °C, or a relative
    /// humidity beyond 0 to 100 %.
    NoHumidity {
        /// Number of the line, from 1.
        line: usize,
        /// Which column.
        column: &'static str,
        /// Its value.
        given: f64,
    },
    /// Not 8,760 hours.
    NotAYear {
        /// How many there are.
        hours: usize,
    },
    /// Elevation or latitude, which the file does not hold, is out of range.
    Place {
        /// What is wrong.
        error: ClimateError,
    },
}

const TEMPERATURE: &[&str] = &["temperature_c"];
const SUN: &[&str] = &["global_horizontal_w_m2"];
const VAPOUR: &[&str] = &["dew_point_c", "relative_humidity_percent", "vapour_pressure_pa"];

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
/// Everything that is wrong, line by line; a wrong heading ends the reading.
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
    let heading: Vec<&str> =
        lines.next().map_or_else(Vec::new, |(_, line)| line.split(',').map(str::trim).collect());
    let find = |names: &'static [&'static str]| {
        let found = names
            .iter()
            .find_map(|&name| Some((heading.iter().position(|&other| other == name)?, name)));
        found.ok_or(HourlyFileError::NoColumn { any_of: names })
    };
    let columns = match (find(TEMPERATURE), find(VAPOUR), find(SUN)) {
        (Ok(temperature), Ok(vapour), Ok(sun)) => [temperature, vapour, sun],
        (temperature, vapour, sun) => {
            return Err([temperature, vapour, sun].into_iter().filter_map(Result::err).collect());
        }
    };
    let vapour = match columns[1].1 {
        "dew_point_c" => Vapour::DewPoint,
        "relative_humidity_percent" => Vapour::RelativeHumidity,
        _ => Vapour::Pressure,
    };
    let mut errors = Vec::new();
    let mut hours = Vec::with_capacity(HOURS_IN_YEAR);
    let mut line_of = Vec::with_capacity(HOURS_IN_YEAR);
    for (line, text) in lines {
        let cells: Vec<&str> = text.split(',').map(str::trim).collect();
        let mut numbers = [0.0; 3];
        let mut whole = true;
        for (number, (at, column)) in numbers.iter_mut().zip(columns) {
            match cells.get(at).map(|cell| (cell, cell.parse::<f64>())) {
                Some((_, Ok(value))) if value.is_finite() => *number = value,
                Some((cell, _)) => {
                    whole = false;
                    let text = (*cell).to_owned();
                    errors.push(HourlyFileError::NotANumber { line, column, text });
                }
                None => {
                    whole = false;
                    errors.push(HourlyFileError::ShortLine { line });
                    break;
                }
            }
        }
        line_of.push(line);
        let [temperature, given, sun] = numbers;
        let temperature = Temperature::celsius(temperature);
        let vapour_pressure = if whole { vapour.pressure(temperature, given) } else { None };
        match vapour_pressure {
            Some(vapour_pressure) => hours.push(WeatherHour {
                temperature,
                vapour_pressure,
                level_sun: Irradiance::new(sun),
            }),
            None if whole => {
                let column = columns[1].1;
                errors.push(HourlyFileError::NoHumidity { line, column, given });
            }
            None => {}
        }
    }
    if line_of.len() != HOURS_IN_YEAR {
        errors.push(HourlyFileError::NotAYear { hours: line_of.len() });
    }
    if !errors.is_empty() {
        return Err(errors);
    }
    WeatherYear::new(elevation, latitude, &hours).map_err(|wrong| {
        let at_line = |error: ClimateError| match error.index.and_then(|hour| line_of.get(hour)) {
            Some(&line) => HourlyFileError::OutOfRange { line, error },
            None => HourlyFileError::Place { error },
        };
        wrong.into_iter().map(at_line).collect()
    })
}

impl Vapour {
    fn pressure(self, temperature: Temperature, given: f64) -> Option<Pressure> {
        match self {
            Self::DewPoint => hyland_wexler::saturation_pressure(Temperature::celsius(given)).ok(),
            Self::RelativeHumidity => {
                let humidity = RelativeHumidity::percent(given);
                hyland_wexler::vapour_pressure(temperature, humidity).ok()
            }
            Self::Pressure => Some(Pressure::new(given)),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::{HourlyFileError, read_hours};
    use inchwise_core::units::{Angle, Length};

    fn read(text: &str) -> Result<(), Vec<HourlyFileError>> {
        read_hours(text, Length::new(100.0), Angle::degrees(50.0)).map(|_| ())
    }

    fn year(line_100: &str) -> String {
        let mut text = "hour,temperature_c,dew_point_c,global_horizontal_w_m2\n".to_owned();
        for hour in 0..8760 {
            if hour == 98 {
                text.push_str(line_100);
            } else {
                text.push_str(&format!("{hour},-5.0,-8.0,100"));
            }
            text.push('\n');
        }
        text
    }

    #[test]
    fn a_whole_year_is_read() {
        assert_eq!(read(&year("98,-5,-8,0")), Ok(()));
    }

    #[test]
    fn what_is_wrong_is_told_by_its_line() {
        let wrong = |line: &str| read(&year(line)).expect_err("a wrong line");
        assert!(matches!(
            wrong("98,cold,-8,0")[..],
            [HourlyFileError::NotANumber { line: 100, column: "temperature_c", .. }]
        ));
        assert_eq!(wrong("98,-5,-8"), [HourlyFileError::ShortLine { line: 100 }]);
        assert!(matches!(
            wrong("98,-99,-99.5,0")[..],
            [HourlyFileError::OutOfRange { line: 100, .. }, ..]
        ));
        assert!(matches!(
            wrong("98,-5,-300,0")[..],
            [HourlyFileError::NoHumidity { line: 100, .. }]
        ));
        assert!(matches!(wrong("# 98")[..], [HourlyFileError::NotAYear { hours: 8759 }]));
        let missing = read("hour,temperature_c\n").expect_err("columns are missing");
        assert_eq!(missing.len(), 2, "{missing:?}");
        assert!(read("").is_err());
    }
}
