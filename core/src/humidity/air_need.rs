//! How much outdoor air those inside, humidity and heat need.

use super::room_humidity::ForOccupants;
use super::{FanAir, RoomHumidity, Setting, Sources};
use crate::design::{Design, OutdoorAirRule};
use crate::moisture::MoistureError;
use crate::psychro::MoistAir;
use crate::units::{Effectiveness, Power, VolumeFlow};
use crate::ventilation::{
    DryAirFlow, HeatRecovery, OutdoorAirRate, RecoveredAir, VentilationError, flow_to_carry_heat,
    flow_to_hold,
};

/// Outdoor air that is needed at the design's winter temperature, and in summer.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct AirNeed {
    /// For those inside, while they are there; leaks do not count for it.
    pub occupants: DryAirFlow,
    /// By which rule; [`OutdoorAirRule::None`] where nobody is inside.
    pub rule: OutdoorAirRule,
    /// What of it the fan cannot bring while they are there.
    pub occupants_lack: DryAirFlow,
    /// To hold the humidity in the busy hours, leaks and all; an error where outdoor air cannot.
    pub humidity: Result<DryAirFlow, VentilationError>,
    /// To carry off the heat of a hot day; an error where outdoor air cannot.
    pub heat: Result<DryAirFlow, VentilationError>,
    /// Dry heat given off in the room in the busy hours: people, animals, equipment.
    pub heat_gain: Power,
    /// What passes the fan in the busy hours: for those inside or for the humidity.
    pub busy: DryAirFlow,
    /// What passes it in the mean of a week.
    pub mean: DryAirFlow,
    /// The heat exchanger in the busy hours, where there is one.
    pub recovery: Option<RecoveredAir>,
}

/// Dry heat given off in the room while it is used: people, animals and equipment.
pub fn heat_gain_in_use(design: &Design) -> Power {
    design.heat_of_person * design.person_count
        + design.animal_heat
        + design.equipment_in_use
        + design.equipment_always
}

/// The heat exchanger of a design, where there is one.
///
/// # Errors
/// As [`HeatRecovery::new`]; none for a checked design.
pub fn heat_exchanger(design: &Design) -> Result<Option<HeatRecovery>, VentilationError> {
    let there = design.heat_recovery > Effectiveness::default();
    there.then(|| HeatRecovery::new(design.heat_recovery, design.recovery_frost_limit)).transpose()
}

impl AirNeed {
    pub(super) fn of(
        setting: &Setting,
        sources: &Sources,
        fan: Option<&FanAir>,
        rule: OutdoorAirRule,
        occupants: DryAirFlow,
        [busy, mean]: [&RoomHumidity; 2],
        outdoor: &MoistAir,
    ) -> Result<Self, MoistureError> {
        let design = setting.design;
        let target = &setting.target;
        let hot = setting.hot_day()?;
        let hot_room = MoistAir::from_humidity_ratio(
            design.too_warm.max(hot.temperature()),
            hot.humidity_ratio(),
            setting.pressure,
        )?;
        let lack = fan.map_or(occupants, |fan| occupants.less(fan.moves));
        let heat_gain = heat_gain_in_use(design);
        Ok(Self {
            occupants,
            rule,
            occupants_lack: lack,
            humidity: flow_to_hold(sources.busy.typical, target, outdoor),
            heat: flow_to_carry_heat(heat_gain, &hot_room, &hot),
            heat_gain,
            busy: busy.fan_flow,
            mean: mean.fan_flow,
            recovery: heat_exchanger(design)?
                .map(|exchanger| exchanger.recover(busy.fan_flow, target, outdoor)),
        })
    }
}

impl Setting<'_> {
    /// The rule for those inside, their air, and the part of a week in which they need it.
    pub(super) fn occupants(&self) -> Result<(OutdoorAirRule, ForOccupants), MoistureError> {
        let design = self.design;
        let people = design.person_count as u32;
        let while_used = design.use_time().as_hours() / 24.0 * design.share_of_days();
        let (rule, flow, share) = match design.outdoor_air_rule {
            OutdoorAirRule::AirChanges => {
                (OutdoorAirRule::AirChanges, design.rule_air_changes * self.volume, 1.0)
            }
            OutdoorAirRule::Office if people > 0 => {
                let flow = OutdoorAirRate::OFFICE.flow(people, self.floor_area)?;
                (OutdoorAirRule::Office, flow, while_used)
            }
            OutdoorAirRule::Dwelling if people > 0 => {
                let flow = OutdoorAirRate::DWELLING.flow(people, self.floor_area)?;
                (OutdoorAirRule::Dwelling, flow, while_used)
            }
            _ => (OutdoorAirRule::None, VolumeFlow::ZERO, 0.0),
        };
        let flow = DryAirFlow::from_volume(flow, &self.target)?;
        Ok((rule, ForOccupants { flow, share }))
    }
}
