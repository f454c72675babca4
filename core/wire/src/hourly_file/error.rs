//! What is wrong with a file of hours.

use core::fmt;

use inchwise_core::climate::ClimateError;

/// What is wrong with a file of hours.
#[derive(Clone, Debug, PartialEq)]
pub enum HourlyFileError {
    /// The heading names its columns between semicolons or tabs; the numbers below may then be
    /// written with a decimal comma, so nothing is guessed.
    NotCommas {
        /// What stands between the names.
        separator: char,
    },
    /// No column of any of these names.
    NoColumn {
        /// The names of which one is needed.
        any_of: &'static [&'static str],
    },
    /// Two columns of one name.
    ColumnTwice {
        /// The name.
        column: &'static str,
    },
    /// A line has fewer cells than the first.
    ShortLine {
        /// Number of the line, from 1.
        line: usize,
    },
    /// A line has more cells than the first, as decimal commas make them.
    LongLine {
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
    /// A humidity that its formula refuses: a dew point beyond −80 °C to 200 °C, or a relative
    /// humidity beyond 0 to 100 %.
    NoHumidity {
        /// Number of the line, from 1.
        line: usize,
        /// Which column.
        column: &'static str,
        /// Its value.
        given: f64,
    },
    /// A time that cannot be read.
    NotATime {
        /// Number of the line, from 1.
        line: usize,
        /// What stands there.
        text: String,
    },
    /// A time that is not the hour after that of the line before: it stands twice, is out of order,
    /// or hours are missing before it. The first must be that of 1 January.
    NotTheNextHour {
        /// Number of the line, from 1.
        line: usize,
        /// What stands there.
        text: String,
    },
    /// Neither 8,760 hours nor 8,784 with 29 February.
    NotAYear {
        /// How many there are.
        hours: usize,
    },
    /// Every line could be, but not the year of them: the column is likely in another unit.
    NotInItsUnit {
        /// Which column.
        column: &'static str,
        /// What was looked at: mean temperature in °C, mean relative humidity in %, or the greatest sun
        /// in W/m².
        found: f64,
        /// The least it is anywhere on earth.
        least: f64,
        /// The most it is anywhere on earth.
        most: f64,
    },
    /// Elevation or latitude, which the file does not hold, is out of range.
    Place {
        /// What is wrong.
        error: ClimateError,
    },
}

impl HourlyFileError {
    /// The line it is about, from 1; `None` for the heading and the whole file.
    pub fn line(&self) -> Option<usize> {
        match self {
            Self::ShortLine { line }
            | Self::LongLine { line }
            | Self::NotANumber { line, .. }
            | Self::OutOfRange { line, .. }
            | Self::NoHumidity { line, .. }
            | Self::NotATime { line, .. }
            | Self::NotTheNextHour { line, .. } => Some(*line),
            _ => None,
        }
    }
}

impl HourlyFileError {
    /// Stable name of what is wrong.
    pub const fn code(&self) -> &'static str {
        match self {
            Self::NotCommas { .. } => "not_commas",
            Self::NoColumn { .. } => "no_column",
            Self::ColumnTwice { .. } => "column_twice",
            Self::ShortLine { .. } => "short_line",
            Self::LongLine { .. } => "long_line",
            Self::NotANumber { .. } => "not_a_number",
            Self::OutOfRange { error, .. } | Self::Place { error } => error.code(),
            Self::NoHumidity { .. } => "no_humidity",
            Self::NotATime { .. } => "not_a_time",
            Self::NotTheNextHour { .. } => "not_the_next_hour",
            Self::NotAYear { .. } => "not_a_year",
            Self::NotInItsUnit { .. } => "not_in_its_unit",
        }
    }
}

impl fmt::Display for HourlyFileError {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        if let Some(line) = self.line() {
            write!(out, "line {line}: ")?;
        }
        match self {
            Self::NotCommas { separator } => {
                write!(out, "cells must be parted by commas, {separator:?} given")
            }
            Self::NoColumn { any_of } => {
                write!(out, "a column of one of these names is needed: {}", any_of.join(", "))
            }
            Self::ColumnTwice { column } => write!(out, "the column {column} stands twice"),
            Self::ShortLine { .. } => out.write_str("fewer cells than the first line has"),
            Self::LongLine { .. } => out.write_str("more cells than the first line has"),
            Self::NotANumber { column, text, .. } => {
                write!(out, "{column} must be a number, {text:?} given")
            }
            Self::OutOfRange { error, .. } | Self::Place { error } => error.fmt(out),
            Self::NoHumidity { column, given, .. } => {
                write!(out, "{column} of {given} gives no vapour pressure")
            }
            Self::NotATime { text, .. } => write!(out, "{text:?} is no time"),
            Self::NotTheNextHour { text, .. } => {
                write!(out, "{text:?} is not the hour after that of the line before")
            }
            Self::NotAYear { hours } => write!(out, "8760 or 8784 hours needed, {hours} given"),
            Self::NotInItsUnit { column, found, least, most } => {
                write!(out, "{column} must come to {least} to {most}, {found} found: another unit?")
            }
        }
    }
}

impl std::error::Error for HourlyFileError {}
