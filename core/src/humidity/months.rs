//! The room in the mean of each month: how humid its own use makes it, and which month asks most of its
//! surfaces.

use super::room_humidity::ForOccupants;
use super::{FanAir, Setting};
use crate::moisture::{EXCESS_MARGIN, MoistureError, MonthState, MonthlyFactor, critical_month};
use crate::psychro::MoistAir;
use crate::psychro::iso_13788::saturation_pressure;
use crate::units::{MassFlow, RelativeHumidity, TemperatureDifference, TemperatureFactor};

/// How much colder than the room a month must be in the mean to count as heated. In warmer ones the sun and
/// those inside warm the room, doors stand open, and its air holds what outdoor air does. Common practice, no
/// source: a heating limit of 12 °C for a room of 20 °C.
const HEATED: TemperatureDifference = TemperatureDifference::new(8.0);

/// The room through the months, January first.
#[derive(Clone, Debug, PartialEq)]
pub struct RoomMonths {
    /// Room and outdoors with the margin for a year worse than the mean.
    pub states: [MonthState; 12],
    /// How humid the room stands in the mean of each month, without that margin.
    pub humidity: [RelativeHumidity; 12],
    /// What each month that is colder than the room asks of a surface, by 80 % there.
    pub asked: Vec<MonthlyFactor>,
    /// The heated month that asks most; `None` where none is heated.
    pub critical: Option<MonthlyFactor>,
}

impl RoomMonths {
    /// The room with its use, leaks and fan against the outdoor air of each heated month of its place, aired in the
    /// others; as warm as is held, or as outdoors where that is warmer.
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
            // Saturated air of the one pair of formulas is a hair beyond saturation by the other.
            let outdoor_vapour =
                outdoor.vapour_pressure().min(saturation_pressure(means.temperature)?);
            let stands = if indoor - means.temperature >= HEATED {
                let target = setting.air(indoor, design.target_humidity)?;
                let held = Setting { target, ..*setting };
                held.humidity(source, occupants, fan, &outdoor)?.with_fan.air
            } else {
                MoistAir::from_vapour_pressure(indoor, outdoor_vapour, setting.pressure)?
            };
            humidity[month] = stands.relative_humidity();
            let excess = stands.vapour_pressure() - outdoor_vapour;
            let indoor_vapour =
                (outdoor_vapour + excess * EXCESS_MARGIN).min(saturation_pressure(indoor)?);
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
        let asked = match critical_month(&states) {
            Ok(found) => found.months,
            Err(MoistureError::NoHeatingMonth) => Vec::new(),
            Err(other) => return Err(other),
        };
        let is_heated = |asked: &&MonthlyFactor| {
            let state = &states[asked.month];
            state.indoor - state.outdoor >= HEATED
        };
        let critical = asked
            .iter()
            .filter(is_heated)
            .copied()
            .reduce(|most, next| if next.factor > most.factor { next } else { most });
        Ok(Self { states, humidity, asked, critical })
    }

    /// The temperature factor that keeps a surface from mould, f_Rsi of the critical month.
    pub fn needed_factor(&self) -> Option<TemperatureFactor> {
        self.critical.map(|month| month.factor)
    }
}
