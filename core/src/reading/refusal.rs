//! Refusals: which reading is not worth a factor, and what would be.

use core::fmt;
use core::ops::RangeInclusive;

use crate::psychro::PsychroError;

/// What a refused number is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum ReadingField {
    /// Inside air temperature θ_i, °C.
    InsideTemperature,
    /// Outside air temperature θ_e, °C.
    OutsideTemperature,
    /// Surface temperature θ_si, °C.
    SurfaceTemperature,
    /// How far the inside thermometer may be off, K.
    InsideUncertainty,
    /// How far the outside thermometer may be off, K.
    OutsideUncertainty,
    /// How far the surface thermometer may be off, K.
    SurfaceUncertainty,
    /// What the inside air changes in an hour, K.
    InsideDrift,
    /// What the outside air changes in an hour, K.
    OutsideDrift,
    /// What the surface changes in an hour, K.
    SurfaceDrift,
    /// Time constant of the place, h.
    TimeConstant,
    /// How long inside and outside have stood, h.
    SteadyFor,
    /// How long the sun has been off the steel, h.
    SinceSun,
    /// Inside less outside temperature, K.
    Difference,
    /// Half the width of the factor's band.
    HalfBand,
    /// How many times the thermometers were read.
    LogRows,
    /// When a row of a log was read, h.
    RowTime,
    /// Room temperature of the design, °C.
    DesignIndoor,
    /// Outdoor temperature of the design, °C.
    DesignOutdoor,
    /// Surface temperature at the design's temperatures, °C.
    DesignSurface,
    /// The factor that was predicted.
    PredictedFactor,
}

impl ReadingField {
    /// Stable name.
    pub const fn key(self) -> &'static str {
        match self {
            Self::InsideTemperature => "inside_temperature",
            Self::OutsideTemperature => "outside_temperature",
            Self::SurfaceTemperature => "surface_temperature",
            Self::InsideUncertainty => "inside_uncertainty",
            Self::OutsideUncertainty => "outside_uncertainty",
            Self::SurfaceUncertainty => "surface_uncertainty",
            Self::InsideDrift => "inside_drift",
            Self::OutsideDrift => "outside_drift",
            Self::SurfaceDrift => "surface_drift",
            Self::TimeConstant => "time_constant",
            Self::SteadyFor => "steady_for",
            Self::SinceSun => "since_sun",
            Self::Difference => "difference",
            Self::HalfBand => "half_band",
            Self::LogRows => "log_rows",
            Self::RowTime => "row_time",
            Self::DesignIndoor => "design_indoor",
            Self::DesignOutdoor => "design_outdoor",
            Self::DesignSurface => "design_surface",
            Self::PredictedFactor => "predicted_factor",
        }
    }

    /// The unit that its value and range are given in; none for a plain number.
    pub const fn unit(self) -> &'static str {
        match self {
            Self::InsideTemperature
            | Self::OutsideTemperature
            | Self::SurfaceTemperature
            | Self::DesignIndoor
            | Self::DesignOutdoor
            | Self::DesignSurface => "°C",
            Self::InsideUncertainty
            | Self::OutsideUncertainty
            | Self::SurfaceUncertainty
            | Self::Difference => "K",
            Self::InsideDrift | Self::OutsideDrift | Self::SurfaceDrift => "K/h",
            Self::TimeConstant | Self::SteadyFor | Self::SinceSun | Self::RowTime => "h",
            Self::HalfBand | Self::LogRows | Self::PredictedFactor => "",
        }
    }
}

/// One number that cannot stand.
#[derive(Clone, Debug, PartialEq)]
pub struct ReadingRefusal {
    /// What it is.
    pub field: ReadingField,
    /// Which row of a log, from 0; `None` of readings taken once.
    pub row: Option<usize>,
    /// Its value, in the unit of the field.
    pub given: f64,
    /// What would be allowed with the other numbers as they are.
    pub allowed: RangeInclusive<f64>,
}

impl fmt::Display for ReadingRefusal {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(out, "{}", self.field.key())?;
        if let Some(row) = self.row {
            write!(out, " of row {row}")?;
        }
        let space = if self.field.unit().is_empty() { "" } else { " " };
        let (least, most) = (self.allowed.start(), self.allowed.end());
        write!(
            out,
            " is {}, allowed is from {least} to {most}{space}{}",
            self.given,
            self.field.unit()
        )
    }
}

/// Every number that cannot stand, together.
#[derive(Clone, Debug, PartialEq)]
pub struct ReadingError {
    /// In the order they were found, at least one.
    pub refusals: Vec<ReadingRefusal>,
}

impl fmt::Display for ReadingError {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        for (n, refusal) in self.refusals.iter().enumerate() {
            let before = if n == 0 { "" } else { "; " };
            write!(out, "{before}{refusal}")?;
        }
        Ok(())
    }
}

impl std::error::Error for ReadingError {}

/// Gathers refusals.
#[derive(Default)]
pub(super) struct Refusals {
    found: Vec<ReadingRefusal>,
}

impl Refusals {
    /// Whether a number is in its range; if not it is refused. A NaN is in no range.
    pub(super) fn holds(
        &mut self,
        field: ReadingField,
        given: f64,
        allowed: RangeInclusive<f64>,
    ) -> bool {
        self.holds_in_row(None, field, given, allowed)
    }

    /// As [`Self::holds`], of a row of a log.
    pub(super) fn holds_in_row(
        &mut self,
        row: Option<usize>,
        field: ReadingField,
        given: f64,
        allowed: RangeInclusive<f64>,
    ) -> bool {
        let holds = allowed.contains(&given);
        if !holds {
            self.found.push(ReadingRefusal { field, row, given, allowed });
        }
        holds
    }

    /// Whether nothing was refused.
    pub(super) fn are_none(&self) -> bool {
        self.found.is_empty()
    }

    /// All that was refused.
    pub(super) fn into_error(self) -> ReadingError {
        ReadingError { refusals: self.found }
    }

    /// Nothing refused, or all that was.
    pub(super) fn done(self) -> Result<(), ReadingError> {
        if self.are_none() { Ok(()) } else { Err(self.into_error()) }
    }
}

/// A surface or room temperature of the design that the saturation formula is not stated for.
pub(super) fn beyond_saturation(error: &PsychroError) -> ReadingError {
    let end = |bound| match bound {
        core::ops::Bound::Included(value) | core::ops::Bound::Excluded(value) => value,
        core::ops::Bound::Unbounded => f64::INFINITY,
    };
    ReadingError {
        refusals: vec![ReadingRefusal {
            field: ReadingField::DesignSurface,
            row: None,
            given: error.given,
            allowed: end(error.allowed.0)..=end(error.allowed.1),
        }],
    }
}
