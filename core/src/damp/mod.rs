//! Damp and air of a design: how humid its use makes the room, what leaks and fan carry out, what
//! lands on the cold spots, and what gathers in the build-ups through the year.
//!
//! The formulas stand in [`crate::moisture`] and [`crate::ventilation`]; here a design is put to
//! them. The limits of the surfaces themselves are [`ColdSpots`], which need no use.

mod air_need;
mod build_up_water;
mod cold_spot_water;
mod humidity_curve;
mod opening;
mod outlook;
mod room_humidity;

pub use air_need::*;
pub use build_up_water::*;
pub use cold_spot_water::*;
pub use humidity_curve::*;
pub use opening::*;
pub use outlook::*;
pub use room_humidity::*;

use crate::design::{CheckedDesign, Design};
use crate::envelope::Envelope;
use crate::moisture::{
    ColdSpot, ColdSpots, Deferral, MoistureError, MoistureLoad, MoistureRate, SurfaceRisk,
    all_at_once, in_the_mean_of_a_day, loads,
};
use crate::psychro::{MoistAir, standard_pressure};
use crate::room::Room;
use crate::units::{Pressure, RelativeHumidity, Temperature, Volume};
use crate::ventilation::DryAirFlow;

/// What gives moisture to the room's air.
#[derive(Clone, Debug, PartialEq)]
pub struct Sources {
    /// Each of them.
    pub loads: Vec<MoistureLoad>,
    /// All at the same time: the busy hours.
    pub busy: MoistureRate,
    /// In the mean of a day.
    pub mean: MoistureRate,
}

/// Damp and air of a design at its winter temperatures.
#[derive(Clone, Debug, PartialEq)]
pub struct Damp {
    /// Moisture given off.
    pub sources: Sources,
    /// Outdoor air at the design's winter temperature.
    pub outdoor: MoistAir,
    /// The room as it is to be held.
    pub target: MoistAir,
    /// Outdoor air that leaks in, or comes in at all times.
    pub leakage: DryAirFlow,
    /// The fan against its openings.
    pub fan: Fan,
    /// The room in the busy hours.
    pub busy: RoomHumidity,
    /// The room in the mean of a day, when no surface takes water.
    pub mean: RoomHumidity,
    /// Outdoor air that is needed.
    pub need: AirNeed,
    /// What lands on the cold spots.
    pub cold_spots: ColdSpotWater,
    /// When outdoor air holds the target and what else can.
    pub outlook: Outlook,
    /// Water inside the build-ups through the year.
    pub build_ups: Vec<BuildUpWater>,
    /// What must be asked of others.
    pub deferrals: &'static [Deferral],
}

/// What the air of a design depends on, in one place.
#[derive(Clone, Copy, Debug)]
pub(super) struct Setting<'a> {
    design: &'a Design,
    volume: Volume,
    pressure: Pressure,
    target: MoistAir,
    leakage: DryAirFlow,
}

impl<'a> Setting<'a> {
    fn of(design: &'a Design, room: &Room) -> Result<Self, MoistureError> {
        let pressure = standard_pressure(design.site_altitude)?;
        let (indoor, held) = (design.indoor_temperature, design.target_humidity);
        let target = MoistAir::from_relative_humidity(indoor, held, pressure)?;
        let leakage = DryAirFlow::from_volume(design.air_changes * room.volume, &target)?;
        Ok(Self { design, volume: room.volume, pressure, target, leakage })
    }

    /// Outdoor air at a temperature, as humid as the design says.
    fn outdoor(&self, temperature: Temperature) -> Result<MoistAir, MoistureError> {
        self.air(temperature, self.design.outdoor_humidity)
    }

    fn air(
        &self,
        temperature: Temperature,
        humidity: RelativeHumidity,
    ) -> Result<MoistAir, MoistureError> {
        Ok(MoistAir::from_relative_humidity(temperature, humidity, self.pressure)?)
    }
}

impl Damp {
    /// What the use brings to a place: drips in the busy hours, mould in the mean of a day.
    pub fn risk_at(&self, spot: &ColdSpot) -> SurfaceRisk {
        match spot.limit.risk(self.busy.ventilated()) {
            SurfaceRisk::Drip => SurfaceRisk::Drip,
            _ => spot.limit.risk(self.mean.ventilated()).min(SurfaceRisk::Mould),
        }
    }

    /// Damp and air of a design, with the cold spots known so far.
    ///
    /// # Errors
    /// Where a state lies outside the range of a formula; none for a checked design.
    pub fn of(
        checked: &CheckedDesign,
        room: &Room,
        envelope: &Envelope,
        spots: &ColdSpots,
    ) -> Result<Self, MoistureError> {
        let design = checked.design();
        let setting = Setting::of(design, room)?;
        let outdoor = setting.outdoor(design.outdoor_temperature)?;
        let loads = loads(design)?;
        let sources =
            Sources { busy: all_at_once(&loads), mean: in_the_mean_of_a_day(&loads), loads };
        let fan = Fan::of(&setting, &outdoor)?;
        let busy = setting.humidity(sources.busy.typical, fan.moves(), &outdoor)?;
        let mean = setting.humidity(sources.mean.typical, fan.moves(), &outdoor)?;
        let need = AirNeed::of(&setting, room, &sources, &fan, [&busy, &mean], &outdoor)?;
        let air = setting.leakage.plus(need.mean)?;
        let source = sources.mean.typical;
        let cold_spots = ColdSpotWater::of(&setting, room, envelope, spots, source, air, &outdoor)?;
        let outlook = Outlook::of(&setting, sources.busy.typical, &fan)?;
        let build_ups = build_up_water(checked, envelope, &setting)?;
        Ok(Self {
            target: setting.target,
            leakage: setting.leakage,
            deferrals: design.room_use.deferrals(),
            sources,
            outdoor,
            fan,
            busy,
            mean,
            need,
            cold_spots,
            outlook,
            build_ups,
        })
    }
}
