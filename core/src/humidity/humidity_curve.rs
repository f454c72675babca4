//! Limits of the room and its own humidity over the outdoor temperature.

use super::{ColdSpots, FanAir, Humidity, Setting, heat_exchanger};
use crate::design::CheckedDesign;
use crate::moisture::{HumidityLimit, MoistureError, surface_temperature};
use crate::room::Room;
use crate::units::{RelativeHumidity, Temperature, TemperatureFactor};

/// One outdoor temperature.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct HumidityPoint {
    /// Outdoors.
    pub outdoor: Temperature,
    /// What the weakest spot stands; `None` while none is known.
    pub weakest: Option<HumidityLimit>,
    /// What the next would stand once that is mended.
    pub next: Option<HumidityLimit>,
    /// The room in the mean of a day of use with what leaks in alone.
    pub left_alone: RelativeHumidity,
    /// The same with the fan.
    pub with_fan: RelativeHumidity,
}

impl Humidity {
    /// The curve of a design over a run of outdoor temperatures. The fan is set against each: cold
    /// air is denser.
    ///
    /// # Errors
    /// Refuses an outdoor temperature out of range.
    pub fn over_outdoors(
        &self,
        checked: &CheckedDesign,
        room: &Room,
        spots: &ColdSpots,
        outdoors: impl IntoIterator<Item = Temperature>,
    ) -> Result<Vec<HumidityPoint>, MoistureError> {
        let setting = Setting::of(checked.design(), room, &self.places)?;
        let is_balanced = heat_exchanger(checked.design())?.is_some();
        let occupants = setting.occupants()?.in_a_day();
        let weakest = spots.weakest().map(|spot| spot.temperature_factor);
        let next = spots.next_weakest().map(|spot| spot.temperature_factor);
        let limit = |factor: Option<TemperatureFactor>, outdoor| {
            let surface = factor.map(|f| surface_temperature(f, spots.indoor, outdoor));
            surface.map(|surface| HumidityLimit::at_surface(surface, spots.indoor)).transpose()
        };
        outdoors
            .into_iter()
            .map(|outdoor| {
                let air = setting.outdoor(outdoor)?;
                let moves = self.fan.moves_against(&air, &setting.target)?;
                let fan = moves
                    .map(|moves| FanAir::beside(setting.leakage, moves, is_balanced))
                    .transpose()?;
                let source = self.sources.day.typical;
                let humidity = setting.humidity(source, occupants, fan.as_ref(), &air)?;
                Ok(HumidityPoint {
                    outdoor,
                    weakest: limit(weakest, outdoor)?,
                    next: limit(next, outdoor)?,
                    left_alone: humidity.alone(),
                    with_fan: humidity.ventilated(),
                })
            })
            .collect()
    }
}
