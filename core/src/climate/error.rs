//! Refusals: what about a place or an hour cannot be.

use core::fmt;

use crate::bounds::{
    BoundedQuantity, Bounds, Figure, OutOfRange, bounded_quantities, write_unit, write_words,
};

bounded_quantities! {
    /// What a figure of a place or an hour means. Its bounds lie a little beyond what has been
    /// measured on earth (from memory).
    ClimateQuantity {
        /// Mean temperature of a month, or temperature of an hour, °C.
        Temperature: "temperature", "°C", TEMPERATURE;
        /// Mean of the daily highest less the daily lowest, K.
        DailyRange: "daily_range", "K", Bounds::between(0.5, 35.0);
        /// Partial pressure of water vapour, Pa.
        VapourPressure: "vapour_pressure", "Pa", Bounds::between(0.1, 5000.0);
        /// Mean daily global irradiation, kWh/m².
        DailyGlobalIrradiation: "daily_global_irradiation", "kWh/m²", Bounds::between(0.0, 12.0);
        /// Mean global horizontal irradiance of an hour, W/m².
        GlobalHorizontalIrradiance: "global_horizontal_irradiance", "W/m²",
            Bounds::between(0.0, 1500.0);
        /// Height over the sea, m.
        Elevation: "elevation", "m", Bounds::between(-450.0, 6000.0);
        /// Latitude, degrees, north above 0.
        Latitude: "latitude", "°", Bounds::between(-90.0, 90.0);
        /// Temperature exceeded in 99 % of the hours, °C.
        WinterDesign: "winter_design", "°C", TEMPERATURE;
        /// Temperature exceeded in 1 % of the hours, °C.
        SummerDesign: "summer_design", "°C", TEMPERATURE;
    }
}

/// Temperatures of air on earth, °C.
const TEMPERATURE: Bounds = Bounds::between(-75.0, 60.0);

/// One figure that cannot stand.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ClimateError {
    /// What it is.
    pub quantity: ClimateQuantity,
    /// The month it is of, from 0, or the hour; `None` for a figure of the whole place.
    pub index: Option<usize>,
    /// What was given.
    pub given: f64,
    /// What is wrong.
    pub problem: ClimateProblem,
}

/// What is wrong with a figure.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub enum ClimateProblem {
    /// Not a number, or outside the bounds of its quantity.
    OutOfRange,
    /// More vapour than air of the month's mean temperature holds.
    AboveSaturation {
        /// The most it holds, Pa.
        saturation: f64,
    },
    /// The winter design temperature is not below the summer one.
    WinterNotBelowSummer,
    /// Not as many hours as the year has.
    NotAYear,
    /// More than the extraterrestrial irradiation.
    AboveExtraterrestrial {
        /// What reaches it, in the figure's unit.
        extraterrestrial: f64,
    },
}

impl ClimateError {
    /// Stable name of what is wrong.
    pub const fn code(&self) -> &'static str {
        match self.problem {
            ClimateProblem::OutOfRange => "out_of_range",
            ClimateProblem::AboveSaturation { .. } => "above_saturation",
            ClimateProblem::WinterNotBelowSummer => "winter_not_below_summer",
            ClimateProblem::NotAYear => "not_a_year",
            ClimateProblem::AboveExtraterrestrial { .. } => "above_extraterrestrial",
        }
    }
}

impl fmt::Display for ClimateError {
    /// The index is counted from 0, as in [`ClimateError::index`].
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Self { quantity, index, given, problem } = *self;
        if problem == ClimateProblem::NotAYear {
            return write!(out, "a year needs {} hours, {given} given", super::HOURS_IN_YEAR);
        }
        if let Some(index) = index {
            write!(out, "at index {index}: ")?;
        }
        if problem == ClimateProblem::OutOfRange {
            return OutOfRange { quantity, given, allowed: quantity.bounds() }.fmt(out);
        }
        write_words(out, quantity.key())?;
        write!(out, " of {}", Figure(given))?;
        write_unit(out, quantity.unit())?;
        match problem {
            ClimateProblem::AboveSaturation { saturation } => write!(
                out,
                " must be at most {} times that of saturation, {} Pa",
                super::MOST_VAPOUR,
                Figure(saturation)
            ),
            ClimateProblem::WinterNotBelowSummer => {
                out.write_str(" must be below the summer design temperature")
            }
            ClimateProblem::AboveExtraterrestrial { extraterrestrial } => {
                write!(out, " must be at most the extraterrestrial, {}", Figure(extraterrestrial))?;
                write_unit(out, quantity.unit())
            }
            ClimateProblem::OutOfRange | ClimateProblem::NotAYear => Ok(()),
        }
    }
}

impl core::error::Error for ClimateError {}

/// A refusal, if a figure is outside the bounds of its quantity.
pub(super) fn out_of_range(
    quantity: ClimateQuantity,
    index: Option<usize>,
    given: f64,
) -> Option<ClimateError> {
    let problem = ClimateProblem::OutOfRange;
    let refused = !quantity.bounds().contains(given);
    refused.then_some(ClimateError { quantity, index, given, problem })
}
