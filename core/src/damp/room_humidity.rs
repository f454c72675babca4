//! How humid a use makes the room, left alone and with the fan.

use super::Setting;
use crate::moisture::{MoistureError, SteadyRoom};
use crate::psychro::MoistAir;
use crate::units::{Duty, MassFlow, RelativeHumidity};
use crate::ventilation::{DryAirFlow, VentilationError, flow_to_hold};

/// Flow below which nothing is told from no air at all, kg/s.
const NO_AIR: MassFlow = MassFlow::new(1e-9);

/// What holds the room at the humidity it is to have, or why nothing does.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Holding {
    /// What leaks in carries enough out.
    Leakage,
    /// The fan, running so much of the time, or at so much of its speed.
    Fan(Duty),
    /// The fan moves less than is needed even without a pause.
    FanTooSmall {
        /// What it would have to move.
        needed: DryAirFlow,
    },
    /// There is no fan.
    NoFan {
        /// What one would have to move.
        needed: DryAirFlow,
    },
    /// Outdoor air is no drier than the room is to be: no fan helps.
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
    /// With the fan run to hold the humidity, or without a pause where that does not do.
    pub with_fan: SteadyRoom,
    /// What holds it.
    pub holding: Holding,
    /// What the fan moves for it, in the mean.
    pub fan_flow: DryAirFlow,
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

    /// Humidity with the fan.
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

impl Setting<'_> {
    /// The room with a source in it, against outdoor air, and what its fan moves if there is one.
    ///
    /// The fan runs only as much as holds the room at its target; a room that leaks keep drier than
    /// that stays as dry as it is.
    pub(super) fn humidity(
        &self,
        source: MassFlow,
        moves: Option<DryAirFlow>,
        outdoor: &MoistAir,
    ) -> Result<RoomHumidity, MoistureError> {
        let left_alone = steady(source, self.leakage, outdoor, &self.target)?;
        let none = DryAirFlow::new(MassFlow::ZERO)?;
        if relative_humidity(&left_alone) <= self.target.relative_humidity() {
            let (with_fan, holding) = (left_alone, Holding::Leakage);
            return Ok(RoomHumidity { left_alone, with_fan, holding, fan_flow: none });
        }
        let needed = match flow_to_hold(source, &self.target, outdoor) {
            Ok(whole) => Some(whole.less(self.leakage)),
            Err(VentilationError::CannotHold { .. }) => None,
            Err(other) => return Err(other.into()),
        };
        let (holding, fan_flow) = match (needed, moves) {
            (None, moves) => (Holding::OutdoorTooDamp, moves.unwrap_or(none)),
            (Some(needed), None) => (Holding::NoFan { needed }, none),
            (Some(needed), Some(most)) if needed <= most => {
                (Holding::Fan(Duty::new(needed.dry_air() / most.dry_air())), needed)
            }
            (Some(needed), Some(most)) => (Holding::FanTooSmall { needed }, most),
        };
        let with_fan = steady(source, self.leakage.plus(fan_flow)?, outdoor, &self.target)?;
        Ok(RoomHumidity { left_alone, with_fan, holding, fan_flow })
    }
}
