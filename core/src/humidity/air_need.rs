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
        those_inside: &Occupants,
        [busy, mean]: [&RoomHumidity; 2],
        outdoor: &MoistAir,
    ) -> Result<Self, MoistureError> {
        let design = setting.design;
        let target = &setting.target;
        let (rule, occupants) = (those_inside.rule, those_inside.flow);
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

/// The rule for those inside, their air, and when they need it.
#[derive(Clone, Copy, Debug)]
pub(super) struct Occupants {
    pub(super) rule: OutdoorAirRule,
    pub(super) flow: DryAirFlow,
    /// Part of a day of use, and of a week, in which they need it.
    day: f64,
    week: f64,
}

impl Occupants {
    /// While they are there.
    pub(super) fn busy(&self) -> ForOccupants {
        ForOccupants { flow: self.flow, share: f64::from(u8::from(self.week > 0.0)) }
    }

    /// In the mean of a day of use.
    pub(super) fn in_a_day(&self) -> ForOccupants {
        ForOccupants { flow: self.flow, share: self.day }
    }

    /// In the mean of a week.
    pub(super) fn in_a_week(&self) -> ForOccupants {
        ForOccupants { flow: self.flow, share: self.week }
    }
}

impl Setting<'_> {
    /// Those inside, as the design's rule counts their air.
    pub(super) fn occupants(&self) -> Result<Occupants, MoistureError> {
        let design = self.design;
        let people = design.person_count as u32;
        let used = design.use_time().as_hours() / 24.0;
        let (rule, flow, day, days) = match design.outdoor_air_rule {
            OutdoorAirRule::AirChanges => {
                (OutdoorAirRule::AirChanges, design.rule_air_changes * self.volume, 1.0, 1.0)
            }
            OutdoorAirRule::Office if people > 0 => {
                let flow = OutdoorAirRate::OFFICE.flow(people, self.floor_area)?;
                (OutdoorAirRule::Office, flow, used, design.share_of_days())
            }
            OutdoorAirRule::Dwelling if people > 0 => {
                let flow = OutdoorAirRate::DWELLING.flow(people, self.floor_area)?;
                (OutdoorAirRule::Dwelling, flow, used, design.share_of_days())
            }
            _ => (OutdoorAirRule::None, VolumeFlow::ZERO, 0.0, 0.0),
        };
        let flow = DryAirFlow::from_volume(flow, &self.target)?;
        Ok(Occupants { rule, flow, day, week: day * days })
    }
}
