//! Metric or imperial: quantities to and from the words of each.
//!
//! Figures are rounded once, when they are written; a rounded figure is never converted.

mod air;
mod decimal;
mod notation;
mod place;
mod reading;
mod scale;
mod working;
mod year;

pub use decimal::*;
pub use inchwise_link::{plain_number, plain_text};
pub use notation::*;
pub use place::{PlaceUnit, degree_days};
pub use reading::*;
pub use scale::*;
pub use year::{read_of_year, unit_of_year, written_of_year};

#[cfg(test)]
mod tests;

/// Which units are shown and taken.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum UnitSystem {
    /// Millimetres, metres, litres, watts.
    #[default]
    Metric,
    /// Feet and inches, cubic feet, Btu/h, R-values.
    Imperial,
}

impl UnitSystem {
    /// Stable name in attributes and files.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Metric => "metric",
            Self::Imperial => "imperial",
        }
    }

    /// The system of this name.
    pub fn from_key(key: &str) -> Option<Self> {
        match key {
            "metric" => Some(Self::Metric),
            "imperial" => Some(Self::Imperial),
            _ => None,
        }
    }
}
