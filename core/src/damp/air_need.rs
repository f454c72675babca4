//! How much outdoor air people, humidity and heat need, and what warming it takes.

use super::{Fan, RoomHumidity, Setting, Sources};
use crate::design::RoomUse;
use crate::moisture::MoistureError;
use crate::psychro::MoistAir;
use crate::room::Room;
use crate::units::{AirChangeRate, Effectiveness, Power, Time, VolumeFlow};
use crate::ventilation::{
    DryAirFlow, HeatRecovery, OutdoorAirRate, RecoveredAir, VentilationError, flow_to_carry_heat,
    flow_to_hold, heat_to_warm,
};

/// Air changes that rooms of animals are planned with at the least, 10 an hour (Guide for the Care
/// and Use of Laboratory Animals, 10 to 15; read as quoted).
pub const ANIMAL_AIR_CHANGES: AirChangeRate = AirChangeRate::per_hour(10.0);

/// By which rule the outdoor air of those inside is counted.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum OccupantRule {
    /// So much a person and so much a square metre, as for offices.
    Office,
    /// The same, as for dwellings.
    Dwelling,
    /// Air changes of the whole room.
    AirChanges,
    /// Nobody is inside.
    Nobody,
}

impl OccupantRule {
    /// Stable name.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Office => "office",
            Self::Dwelling => "dwelling",
            Self::AirChanges => "air_changes",
            Self::Nobody => "nobody",
        }
    }
}

/// Outdoor air that is needed at the design's winter temperature, and in summer.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct AirNeed {
    /// For those inside, while they are there; leaks do not count for it.
    pub occupants: DryAirFlow,
    /// By which rule.
    pub rule: OccupantRule,
    /// To hold the humidity in the busy hours, leaks and all; an error where outdoor air cannot.
    pub humidity: Result<DryAirFlow, VentilationError>,
    /// To carry off the heat of a hot day; an error where outdoor air cannot.
    pub heat: Result<DryAirFlow, VentilationError>,
    /// What the fan has to move in the busy hours: for those inside or for the humidity.
    pub busy: DryAirFlow,
    /// What it has to move in the mean of a day.
    pub mean: DryAirFlow,
    /// What warms the air of the busy hours, after any heat exchanger.
    pub busy_heat: Power,
    /// What warms the air in the mean of a day, after any heat exchanger.
    pub mean_heat: Power,
    /// The heat exchanger in the busy hours, where there is one.
    pub recovery: Option<RecoveredAir>,
}

impl AirNeed {
    pub(super) fn of(
        setting: &Setting,
        room: &Room,
        sources: &Sources,
        fan: &Fan,
        [busy, mean]: [&RoomHumidity; 2],
        outdoor: &MoistAir,
    ) -> Result<Self, MoistureError> {
        let design = setting.design;
        let target = &setting.target;
        let (rule, flow, hours) = occupants(setting, room)?;
        let occupants = DryAirFlow::from_volume(flow, target)?;
        // Without a fan nobody gets more than what leaks in.
        let has_fan = fan.run().is_some();
        let for_them = |share: f64| {
            let flow = occupants.dry_air() * if has_fan { share } else { 0.0 };
            DryAirFlow::new(flow)
        };
        let busy_flow = busy.fan_flow.max(for_them(1.0)?);
        let mean_flow = mean.fan_flow.max(for_them(hours / Time::days(1.0))?);
        let exchanger = if design.heat_recovery > Effectiveness::default() {
            Some(HeatRecovery::new(design.heat_recovery, design.recovery_frost_limit)?)
        } else {
            None
        };
        let heat = |flow| match &exchanger {
            Some(exchanger) => exchanger.recover(flow, target, outdoor).heat_to_warm,
            None => heat_to_warm(flow, target, outdoor),
        };
        let summer = setting.outdoor(design.summer_outdoor_temperature)?;
        let hot_room = MoistAir::from_humidity_ratio(
            design.summer_room_temperature.max(design.summer_outdoor_temperature),
            summer.humidity_ratio(),
            setting.pressure,
        )?;
        Ok(Self {
            occupants,
            rule,
            humidity: flow_to_hold(sources.busy.typical, target, outdoor),
            heat: flow_to_carry_heat(design.heat_gain, &hot_room, &summer),
            busy: busy_flow,
            mean: mean_flow,
            busy_heat: heat(busy_flow),
            mean_heat: heat(mean_flow),
            recovery: exchanger.map(|exchanger| exchanger.recover(busy_flow, target, outdoor)),
        })
    }
}

/// The rule for those inside, their air, and how long a day they need it.
fn occupants(
    setting: &Setting,
    room: &Room,
) -> Result<(OccupantRule, VolumeFlow, Time), MoistureError> {
    let design = setting.design;
    if design.room_use == RoomUse::Animals {
        let flow = ANIMAL_AIR_CHANGES * setting.volume;
        return Ok((OccupantRule::AirChanges, flow, Time::days(1.0)));
    }
    let people = design.person_count as u32;
    if people == 0 {
        return Ok((OccupantRule::Nobody, VolumeFlow::ZERO, Time::ZERO));
    }
    let (rule, rate) = match design.room_use {
        RoomUse::Sleeping => (OccupantRule::Dwelling, OutdoorAirRate::DWELLING),
        _ => (OccupantRule::Office, OutdoorAirRate::OFFICE),
    };
    Ok((rule, rate.flow(people, room.floor_area)?, design.person_time))
}
