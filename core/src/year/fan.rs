//! The fan through the hours: for those inside, to dry, to cool.

use crate::design::{Design, OutdoorAirRule};
use crate::extremes::{greater, lesser};
use crate::heat_loss::air_coefficient;
use crate::humidity::Humidity;

/// The fan as a year runs it.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(super) struct FanOfYear {
    /// H of what it adds to the leaks at full flow, W/K, as if none of the heat were kept; 0 is no fan.
    pub(super) full: f64,
    /// Watts that it draws at full flow.
    pub(super) draws: f64,
    /// Part of the hour that it runs for those inside while they are there.
    occupants: f64,
    /// Whether they always are.
    always: bool,
    /// Sensible effectiveness of the heat exchanger, 0 without one, and how cold it may make leaving air, °C.
    effectiveness: f64,
    frost_limit: f64,
}

impl FanOfYear {
    /// The fan of a design, moving what it does at the design's winter temperature.
    pub(super) fn of(design: &Design, humidity: &Humidity) -> Self {
        let Some(fan) = &humidity.fan_air else { return Self::default() };
        Self {
            full: air_coefficient(fan.adds.dry_air()).value(),
            draws: design.fan_power.value() * design.exhaust_count,
            occupants: fan.duty_to_move(humidity.need.occupants).min(1.0),
            always: humidity.need.rule == OutdoorAirRule::AirChanges,
            effectiveness: design.heat_recovery.value(),
            frost_limit: design.recovery_frost_limit.as_celsius(),
        }
    }

    /// Part of an hour that it runs for those inside.
    pub(super) fn for_occupants(&self, used: bool) -> f64 {
        if used || self.always { self.occupants } else { 0.0 }
    }

    /// Part of the heat that the exchanger keeps between a room and outdoors: held back where leaving air would
    /// come to its frost limit ([`crate::ventilation::HeatRecovery::recover`]).
    pub(super) fn kept(&self, room: f64, outdoors: f64) -> f64 {
        let difference = room - outdoors;
        if difference <= 0.0 {
            return self.effectiveness;
        }
        let frost_free = greater(room - self.frost_limit, 0.0) / difference;
        lesser(self.effectiveness, frost_free)
    }
}
