//! How humid a use makes the room, with its leaks alone and with its fan.

use super::{FanAir, Setting};
use crate::moisture::{MoistureError, SteadyRoom};
use crate::psychro::MoistAir;
use crate::units::{Duty, MassFlow, RelativeHumidity};
use crate::ventilation::{DryAirFlow, VentilationError, flow_to_hold};

/// A flow of air so small that it counts as none, kg/s.
const NO_AIR: MassFlow = MassFlow::new(1e-9);

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

/// The room with a source in it, no surface taking water.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RoomHumidity {
    /// With what leaks in alone.
    pub left_alone: SteadyRoom,
    /// With the fan run for those inside and to hold the humidity, or without a pause where that does
    /// not do.
    pub with_fan: SteadyRoom,
    /// What holds it.
    pub holding: Holding,
    /// Part of the time in which the fan runs.
    pub duty: Duty,
    /// What passes the fan, in the mean.
    pub fan_flow: DryAirFlow,
    /// All outdoor air that comes in, leaks and fan together, in the mean.
    pub air: DryAirFlow,
}

/// Relative humidity of a steady room; 1 where it is saturated.
pub fn relative_humidity(room: &SteadyRoom) -> RelativeHumidity {
    match room {
        SteadyRoom::Holds(air) => air.relative_humidity(),
        SteadyRoom::Saturated { .. } => RelativeHumidity::new(1.0),
    }
}

impl RoomHumidity {
    /// Humidity with what leaks in alone.
    pub fn alone(&self) -> RelativeHumidity {
        relative_humidity(&self.left_alone)
    }

    /// Humidity with the fan: how humid the room stands.
    pub fn ventilated(&self) -> RelativeHumidity {
        relative_humidity(&self.with_fan)
    }
}

/// The room a source and a flow come to; as dry as outdoors where nothing is given off, and
/// saturated where nothing carries off what is.
fn steady(
    source: MassFlow,
    flow: DryAirFlow,
    outdoor: &MoistAir,
    room: &MoistAir,
) -> Result<SteadyRoom, MoistureError> {
    if flow.dry_air() >= NO_AIR {
        return SteadyRoom::of(source, flow, outdoor, room.temperature());
    }
    if source > MassFlow::ZERO {
        return Ok(SteadyRoom::Saturated { condensing: source });
    }
    let ratio = outdoor.humidity_ratio();
    let air = MoistAir::from_humidity_ratio(room.temperature(), ratio, room.air_pressure())?;
    Ok(SteadyRoom::Holds(air))
}

/// What the fan is asked for beside the humidity: so much for those inside, in a part of the time.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct ForOccupants {
    /// While they are there.
    pub flow: DryAirFlow,
    /// Part of the time in which they are there.
    pub share: f64,
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
        let left_alone = steady(source, self.leakage, outdoor, &self.target)?;
        let for_them = fan.map_or(0.0, |fan| fan.duty_to_move(occupants.flow).min(1.0));
        let for_them = for_them * occupants.share;
        let at = |duty: f64| -> Result<_, MoistureError> {
            let duty = Duty::new(duty);
            let none = DryAirFlow::new(MassFlow::ZERO)?;
            let (moved, added) = match fan {
                Some(fan) => (fan.moved_at(duty)?, fan.added_at(duty)?),
                None => (none, none),
            };
            let air = self.leakage.plus(added)?;
            Ok((steady(source, air, outdoor, &self.target)?, duty, moved, air))
        };
        let mut running = at(for_them)?;
        let wanted = self.target.relative_humidity();
        let mut holding = if for_them > 0.0 { Holding::Fan(running.1) } else { Holding::Leakage };
        if relative_humidity(&running.0) > wanted {
            let needed = match flow_to_hold(source, &self.target, outdoor) {
                Ok(whole) => Some(whole.less(self.leakage)),
                Err(VentilationError::CannotHold { .. }) => None,
                Err(other) => return Err(other.into()),
            };
            let duty = match (needed, fan) {
                (None, Some(_)) => {
                    holding = Holding::OutdoorTooDamp;
                    1.0
                }
                (None, None) => {
                    holding = Holding::OutdoorTooDamp;
                    0.0
                }
                (Some(needed), None) => {
                    holding = Holding::NoFan { needed };
                    0.0
                }
                (Some(needed), Some(fan)) => {
                    let duty = fan.duty_to_add(needed);
                    holding = if duty <= 1.0 {
                        Holding::Fan(Duty::new(duty))
                    } else {
                        Holding::FanTooSmall { needed }
                    };
                    duty.min(1.0)
                }
            };
            // Outdoor air damper than the room as it stands would only make it worse.
            let helps = match &running.0 {
                SteadyRoom::Holds(air) => air.humidity_ratio() > outdoor.humidity_ratio(),
                SteadyRoom::Saturated { .. } => true,
            };
            if helps && duty > for_them {
                running = at(duty)?;
            }
        }
        let (with_fan, duty, fan_flow, air) = running;
        Ok(RoomHumidity { left_alone, with_fan, holding, duty, fan_flow, air })
    }
}
