//! How humid a use makes the room, with its leaks alone and with its fan.

use super::cold_places::sinks;
use super::{FanAir, Setting, StandingRoom};
use crate::moisture::{MoistureError, taken};
use crate::psychro::MoistAir;
use crate::units::{Duty, MassFlow, RelativeHumidity};
use crate::ventilation::{DryAirFlow, VentilationError, flow_to_hold};

/// What keeps the room at its humidity, or why nothing does.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Holding {
    /// What leaks in does.
    Leakage,
    /// The fan does, in this part of the time.
    Fan(Duty),
    /// The fan runs without a pause and moves too little.
    FanTooSmall {
        /// What it would have to move.
        needed: DryAirFlow,
    },
    /// It takes a fan, and there is none.
    NoFan {
        /// What it would have to add to the leaks.
        needed: DryAirFlow,
    },
    /// Outdoor air is as damp as the room is to be: no flow of it helps.
    OutdoorTooDamp,
}

impl Holding {
    /// Stable name.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Leakage => "leakage",
            Self::Fan(_) => "fan",
            Self::FanTooSmall { .. } => "fan_too_small",
            Self::NoFan { .. } => "no_fan",
            Self::OutdoorTooDamp => "outdoor_too_damp",
        }
    }

    /// Whether the room is held.
    pub const fn holds(self) -> bool {
        matches!(self, Self::Leakage | Self::Fan(_))
    }
}

/// The room with a source in it, its cold places taking their part.
#[derive(Clone, Debug, PartialEq)]
pub struct RoomHumidity {
    /// With what leaks in alone.
    pub left_alone: StandingRoom,
    /// With the fan run for those inside and to hold the humidity, or without a pause where that does
    /// not do.
    pub with_fan: StandingRoom,
    /// What holds it.
    pub holding: Holding,
    /// Part of the time in which the fan runs.
    pub duty: Duty,
    /// What passes the fan, in the mean.
    pub fan_flow: DryAirFlow,
    /// All outdoor air that comes in, leaks and fan together, in the mean.
    pub air: DryAirFlow,
}

impl RoomHumidity {
    /// Humidity with what leaks in alone.
    pub fn alone(&self) -> RelativeHumidity {
        self.left_alone.relative_humidity()
    }

    /// Humidity with the fan: how humid the room stands.
    pub fn ventilated(&self) -> RelativeHumidity {
        self.with_fan.relative_humidity()
    }
}

/// What the fan is asked for beside the humidity: so much for those inside, in a part of the time.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct ForOccupants {
    /// While they are there.
    pub flow: DryAirFlow,
    /// Part of the time in which they are there.
    pub share: f64,
}

/// A fan at a duty.
struct Running {
    room: StandingRoom,
    duty: Duty,
    moved: DryAirFlow,
    air: DryAirFlow,
}

impl Setting<'_> {
    /// The room with a source in it, against outdoor air, and what its fan does if there is one.
    ///
    /// The fan runs as much as those inside need, and more as far as it takes to hold the room at its
    /// target.
    pub(super) fn humidity(
        &self,
        source: MassFlow,
        occupants: ForOccupants,
        fan: Option<&FanAir>,
        outdoor: &MoistAir,
    ) -> Result<RoomHumidity, MoistureError> {
        let stands =
            |air| StandingRoom::of(source, air, outdoor, self.target.temperature(), self.places);
        let at = |duty: f64| -> Result<Running, MoistureError> {
            let duty = Duty::new(duty);
            let none = DryAirFlow::new(MassFlow::ZERO)?;
            let (moved, added) = match fan {
                Some(fan) => (fan.moved_at(duty)?, fan.added_at(duty)?),
                None => (none, none),
            };
            let air = self.leakage.plus(added)?;
            Ok(Running { room: stands(air)?, duty, moved, air })
        };
        let for_them = fan.map_or(0.0, |fan| fan.duty_to_move(occupants.flow).min(1.0));
        let for_them = for_them * occupants.share;
        let left_alone = stands(self.leakage)?;
        let mut running = at(for_them)?;
        let mut holding =
            if for_them > 0.0 { Holding::Fan(running.duty) } else { Holding::Leakage };
        if running.room.relative_humidity() > self.target.relative_humidity() {
            let duty;
            (holding, duty) = self.holding_at_target(source, fan, outdoor)?;
            // Outdoor air damper than the room as it stands would only make it worse.
            let helps = running.room.air.humidity_ratio() > outdoor.humidity_ratio();
            if helps && duty > for_them {
                running = at(duty)?;
            }
        }
        let Running { room, duty, moved, air } = running;
        Ok(RoomHumidity { left_alone, with_fan: room, holding, duty, fan_flow: moved, air })
    }

    /// What holds the room at its target, cold places taking their part there, and the duty of the fan for it.
    fn holding_at_target(
        &self,
        source: MassFlow,
        fan: Option<&FanAir>,
        outdoor: &MoistAir,
    ) -> Result<(Holding, f64), MoistureError> {
        let vapour = self.target.vapour_pressure();
        let between = [self.target.temperature(), outdoor.temperature()];
        let places = taken(&sinks(self.places, between, vapour)?, vapour);
        let left = (source - places).max(MassFlow::ZERO);
        let needed = match flow_to_hold(left, &self.target, outdoor) {
            Ok(whole) => whole.less(self.leakage),
            Err(VentilationError::CannotHold { .. }) => {
                let duty = if fan.is_some() { 1.0 } else { 0.0 };
                return Ok((Holding::OutdoorTooDamp, duty));
            }
            Err(other) => return Err(other.into()),
        };
        Ok(match fan {
            None => (Holding::NoFan { needed }, 0.0),
            Some(fan) => match fan.duty_to_add(needed) {
                duty if duty <= 1.0 => (Holding::Fan(Duty::new(duty)), duty),
                _ => (Holding::FanTooSmall { needed }, 1.0),
            },
        })
    }
}
