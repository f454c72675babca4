//! Until when outdoor air holds the room, and what does where it cannot.

use super::room_humidity::ForOccupants;
use super::{FanAir, RoomHumidity, Setting};
use crate::moisture::MoistureError;
use crate::psychro::{MoistAir, hyland_wexler, vapour_pressure_from_humidity_ratio};
use crate::units::{HumidityRatio, MassFlow, Temperature};
use crate::ventilation::{DryAirFlow, steady_humidity_ratio};

/// What else brings the room to its humidity.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct OtherWays {
    /// Heating the room to this, with the air that passes; `None` where no air passes, or so little
    /// that no heating helps.
    pub heat_to: Option<Temperature>,
    /// A dehumidifier that takes out this, with the dampers shut; nothing where leaks do.
    pub dehumidify: MassFlow,
}

/// The warm end of the year, and the outdoor temperature from which on outdoor air fails.
#[derive(Clone, Debug, PartialEq)]
pub struct WarmSeason {
    /// Outdoor air of the warmest month.
    pub outdoor: MoistAir,
    /// The room against it, in the busy hours; as warm as outdoors where that is warmer.
    pub room: RoomHumidity,
    /// Warmest outdoors at which the air that can pass still holds the room, outdoor humidity being
    /// that of the coldest month: wait until it is colder. `None` where it never does.
    pub holds_up_to: Option<Temperature>,
    /// What else can, in the warmest month; `None` where outdoor air does.
    pub other_ways: Option<OtherWays>,
}

impl WarmSeason {
    pub(super) fn of(
        setting: &Setting,
        source: MassFlow,
        occupants: ForOccupants,
        fan: Option<&FanAir>,
    ) -> Result<Self, MoistureError> {
        let design = setting.design;
        let place = design.place.place();
        let warmest = &place.months[place.warmest_month()];
        let outdoor = warmest.air(setting.pressure)?;
        let indoor = design.indoor_temperature.max(warmest.temperature);
        let target = setting.air(indoor, design.target_humidity)?;
        let summer = Setting { target, ..*setting };
        let room = summer.humidity(source, occupants, fan, &outdoor)?;
        let added = fan.map(|fan| fan.adds);
        let all = setting.leakage.plus(added.unwrap_or(DryAirFlow::new(MassFlow::ZERO)?))?;
        let other_ways = if room.holding.holds() {
            None
        } else {
            Some(summer.other_ways(source, all, &outdoor)?)
        };
        Ok(Self { outdoor, room, holds_up_to: setting.holds_up_to(source, all)?, other_ways })
    }
}

/// Whether anything passes at all.
fn passes(flow: DryAirFlow) -> bool {
    flow.dry_air() > MassFlow::new(1e-9)
}

impl Setting<'_> {
    /// Warmest outdoors at which a flow holds the room: where
    /// φ_out·p_ws(t) is the vapour pressure of W_target − G / m.
    fn holds_up_to(
        &self,
        source: MassFlow,
        flow: DryAirFlow,
    ) -> Result<Option<Temperature>, MoistureError> {
        if !passes(flow) {
            return Ok(None);
        }
        let left = self.target.humidity_ratio().value() - source / flow.dry_air();
        // Air this dry is not met with.
        if left < 1e-6 {
            return Ok(None);
        }
        let vapour = vapour_pressure_from_humidity_ratio(HumidityRatio::new(left), self.pressure)?;
        let saturation = vapour / self.outdoor_humidity.value();
        Ok(Some(hyland_wexler::dew_point(saturation)?))
    }

    fn other_ways(
        &self,
        source: MassFlow,
        flow: DryAirFlow,
        outdoor: &MoistAir,
    ) -> Result<OtherWays, MoistureError> {
        let ratio =
            passes(flow).then(|| steady_humidity_ratio(source, flow, outdoor)).transpose()?;
        // A room wetter or hotter than a formula goes is one that no heating dries.
        let heat_to = ratio.and_then(|ratio| {
            let vapour = vapour_pressure_from_humidity_ratio(ratio, self.pressure).ok()?;
            let saturation = vapour / self.target.relative_humidity().value();
            hyland_wexler::dew_point(saturation).ok()
        });
        let carried = self.target.humidity_ratio().value() - outdoor.humidity_ratio().value();
        let left = source - self.leakage.dry_air() * carried;
        Ok(OtherWays { heat_to, dehumidify: left.max(MassFlow::ZERO) })
    }
}
