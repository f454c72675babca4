//! The room in the mean of each month: how humid its own use makes it, and which month asks most of its
//! surfaces.

use super::room_humidity::ForOccupants;
use super::{FanAir, Setting, relative_humidity};
use crate::moisture::{
    CriticalMonth, EXCESS_MARGIN, MoistureError, MonthState, SteadyRoom, critical_month,
};
use crate::psychro::iso_13788::saturation_pressure;
use crate::units::{MassFlow, RelativeHumidity, TemperatureFactor};

/// The room through the months, January first.
#[derive(Clone, Debug, PartialEq)]
pub struct RoomMonths {
    /// Room and outdoors with the margin for a year worse than the mean.
    pub states: [MonthState; 12],
    /// How humid the room stands in the mean of each month, without that margin.
    pub humidity: [RelativeHumidity; 12],
    /// The month that asks most of a surface, by 80 % there; `None` where no month is colder outdoors than
    /// in the room.
    pub critical: Option<CriticalMonth>,
}

impl RoomMonths {
    /// The room with its use, leaks and fan against the outdoor air of each month of its place, as warm as is held
    /// or as outdoors where that is warmer.
    ///
    /// The excess of vapour over outdoors counts 1.10-fold, for a year worse than the mean (ISO 13788:2012,
    /// clause 4), up to saturation of the room.
    pub(super) fn of(
        setting: &Setting,
        source: MassFlow,
        occupants: ForOccupants,
        fan: Option<&FanAir>,
    ) -> Result<Self, MoistureError> {
        let design = setting.design;
        let months = &design.place.place().months;
        let mut humidity = [RelativeHumidity::new(0.0); 12];
        let mut states = Vec::with_capacity(12);
        for (month, means) in months.iter().enumerate() {
            let outdoor = means.air(setting.pressure)?;
            let indoor = design.indoor_temperature.max(means.temperature);
            let target = setting.air(indoor, design.target_humidity)?;
            let room = Setting { target, ..*setting }.humidity(source, occupants, fan, &outdoor)?;
            humidity[month] = relative_humidity(&room.with_fan);
            let outdoor_vapour = outdoor.vapour_pressure();
            let saturated = saturation_pressure(indoor)?;
            let stands = match &room.with_fan {
                SteadyRoom::Holds(air) => air.vapour_pressure(),
                SteadyRoom::Saturated { .. } => saturated,
            };
            let with_margin = outdoor_vapour + (stands - outdoor_vapour) * EXCESS_MARGIN;
            let indoor_vapour = with_margin.min(saturated);
            states.push(MonthState {
                indoor,
                indoor_vapour,
                outdoor: means.temperature,
                outdoor_vapour,
            });
        }
        // Twelve were pushed.
        let states: [MonthState; 12] =
            states.try_into().map_err(|_| MoistureError::NoHeatingMonth)?;
        let critical = match critical_month(&states) {
            Ok(found) => Some(found),
            Err(MoistureError::NoHeatingMonth) => None,
            Err(other) => return Err(other),
        };
        Ok(Self { states, humidity, critical })
    }

    /// The temperature factor that keeps a surface from mould, f_Rsi of the critical month.
    pub fn needed_factor(&self) -> Option<TemperatureFactor> {
        self.critical.as_ref().map(|months| months.critical.factor)
    }
}
