//! Room and outdoors in the mean of a month.

use super::error::MoistureError;
use super::humidity_class::HumidityClass;
use crate::climate::DAYS_IN_MONTH;
use crate::psychro::PsychroError;
use crate::psychro::iso_13788::vapour_pressure;
use crate::units::{Pressure, RelativeHumidity, Temperature, Time};

/// How long a month lasts, by its index from January; it comes round again after twelve.
///
/// The balance of a month depends on its length by one or two in a hundred: calendar months of an
/// ordinary year are used throughout.
pub const fn month_length(month: usize) -> Time {
    Time::days(DAYS_IN_MONTH[month % 12] as f64)
}

/// Factor on the excess of indoor over outdoor vapour pressure that makes up for a year worse than
/// the mean one, 1.10 (ISO 13788:2012, clause 4).
pub const EXCESS_MARGIN: f64 = 1.10;

/// What is added to a constant indoor relative humidity for the same reason, 0.05
/// (ISO 13788:2012, clause 4).
pub const HUMIDITY_MARGIN: f64 = 0.05;

/// Mean state of room and outdoors over a month.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct MonthState {
    /// Room temperature θ_i.
    pub indoor: Temperature,
    /// Vapour pressure in the room p_i.
    pub indoor_vapour: Pressure,
    /// Outdoor temperature θ_e; for a build-up, that of the air its outer surface gives heat to,
    /// sun included.
    pub outdoor: Temperature,
    /// Outdoor vapour pressure p_e.
    pub outdoor_vapour: Pressure,
}

impl MonthState {
    /// From relative humidities as they are, p = φ·p_sat(θ), without a margin.
    ///
    /// Range: −60 °C to 100 °C, φ from 0 to 1.
    ///
    /// # Errors
    /// Refuses an input out of range.
    pub fn from_humidities(
        indoor: Temperature,
        indoor_humidity: RelativeHumidity,
        outdoor: Temperature,
        outdoor_humidity: RelativeHumidity,
    ) -> Result<Self, PsychroError> {
        Ok(Self {
            indoor,
            indoor_vapour: vapour_pressure(indoor, indoor_humidity)?,
            outdoor,
            outdoor_vapour: vapour_pressure(outdoor, outdoor_humidity)?,
        })
    }

    /// From a humidity class, p_i = p_e + 1.10·Δp with Δp at the upper limit of the class
    /// (ISO 13788:2012, clause 4 and annex A).
    ///
    /// # Errors
    /// Refuses an input out of range; [`MoistureError::OpenEndedClass`] for class 5.
    pub fn from_class(
        indoor: Temperature,
        class: HumidityClass,
        outdoor: Temperature,
        outdoor_humidity: RelativeHumidity,
    ) -> Result<Self, MoistureError> {
        let excess = class.vapour_excess(outdoor).ok_or(MoistureError::OpenEndedClass)?;
        let outdoor_vapour = vapour_pressure(outdoor, outdoor_humidity)?;
        let indoor_vapour = outdoor_vapour + excess * EXCESS_MARGIN;
        Ok(Self { indoor, indoor_vapour, outdoor, outdoor_vapour })
    }

    /// From a relative humidity that is held, with its margin, p_i = (φ_i + 0.05)·p_sat(θ_i)
    /// (ISO 13788:2012, clause 4).
    ///
    /// Range: φ_i from 0 to 0.95.
    ///
    /// # Errors
    /// Refuses an input out of range.
    pub fn from_held_humidity(
        indoor: Temperature,
        held: RelativeHumidity,
        outdoor: Temperature,
        outdoor_humidity: RelativeHumidity,
    ) -> Result<Self, PsychroError> {
        let with_margin = RelativeHumidity::new(held.value() + HUMIDITY_MARGIN);
        Self::from_humidities(indoor, with_margin, outdoor, outdoor_humidity)
    }
}
