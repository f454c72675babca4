//! The month that asks most of a surface.

use super::error::MoistureError;
use super::limit::MOULD_SURFACE_HUMIDITY;
use super::month::MonthState;
use crate::psychro::iso_13788::{lowest_surface_temperature, saturation_pressure};
use crate::units::{Temperature, TemperatureDifference, TemperatureFactor};

/// Least difference of room and outdoors that makes a temperature factor.
const LEAST_DIFFERENCE: TemperatureDifference = TemperatureDifference::new(0.1);

/// What one month asks of a surface.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct MonthlyFactor {
    /// Index of the month, 0 for January.
    pub month: usize,
    /// Lowest surface temperature θ_si,min, of 80 % surface humidity.
    pub surface: Temperature,
    /// f_Rsi,min; below 0 where any surface does, above 1 where none does.
    pub factor: TemperatureFactor,
}

/// What a year asks of a surface.
#[derive(Clone, Debug, PartialEq)]
pub struct CriticalMonth {
    /// The months that are colder outdoors than in the room, in the order of the year.
    pub months: Vec<MonthlyFactor>,
    /// The one that asks most: f_Rsi,max.
    pub critical: MonthlyFactor,
}

/// Finds the critical month and the temperature factor that it needs.
///
/// For each month θ_si,min is where p_i is 0.8·p_sat, and f_Rsi,min =
/// (θ_si,min − θ_e) / (θ_i − θ_e); the critical month has the largest. A month that is not a tenth of
/// a kelvin colder outdoors than in the room has no factor and is left out. Where two months are alike to the last
/// digit the earlier is named.
///
/// Source: ISO 13788:2012, clause 5. The margin for a bad year belongs in the states: see
/// [`MonthState::from_class`].
///
/// # Errors
/// Refuses a temperature or vapour pressure out of range; [`MoistureError::NoHeatingMonth`].
pub fn critical_month(months: &[MonthState; 12]) -> Result<CriticalMonth, MoistureError> {
    let mut asked = Vec::with_capacity(12);
    for (month, state) in months.iter().enumerate() {
        for temperature in [state.indoor, state.outdoor] {
            saturation_pressure(temperature)?;
        }
        if state.indoor - state.outdoor >= LEAST_DIFFERENCE {
            let surface = lowest_surface_temperature(state.indoor_vapour, MOULD_SURFACE_HUMIDITY)?;
            let factor = (surface - state.outdoor) / (state.indoor - state.outdoor);
            let factor = TemperatureFactor::new(factor);
            asked.push(MonthlyFactor { month, surface, factor });
        }
    }
    let critical = asked
        .iter()
        .copied()
        .reduce(|most, next| if next.factor > most.factor { next } else { most })
        .ok_or(MoistureError::NoHeatingMonth)?;
    Ok(CriticalMonth { months: asked, critical })
}
