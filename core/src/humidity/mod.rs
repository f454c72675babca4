//! The humidity of a design: how humid its use makes the room, what leaks and fan carry out, what that
//! brings to its cold places, and what gathers in the build-ups through the year.
//!
//! The formulas stand in [`crate::moisture`] and [`crate::ventilation`]; here a design is put to
//! them.
//!
//! - where: [`ColdSpots`], every place by its temperature factor;
//! - from what: [`Sources`]; with which air: [`FanRun`], [`FanAir`], [`AirNeed`];
//! - how humid: [`RoomHumidity`] in the mean of a day of use and of a week, [`RoomMonths`] through
//!   the year;
//! - what that brings: [`Verdict`] of each place, [`ColdSpotWater`], [`BuildUpWater`], [`WarmSeason`].

mod air_exchange;
mod air_need;
mod build_up_water;
mod cold_places;
mod cold_spot;
mod cold_spot_water;
mod fan;
mod humidity_curve;
mod moisture_sources;
mod months;
mod room_humidity;
mod standing;
mod verdict;
mod warm_season;

pub use air_exchange::FanAir;
pub use air_need::{AirNeed, heat_exchanger, heat_gain_in_use};
pub use build_up_water::{
    BuildUpWater, WettestMonth, assembly_of, build_up_water, controls_vapour,
};
pub use cold_places::{ColdPlace, cold_area, cold_places, conductance_onto_surface};
pub use cold_spot::{
    ColdSpot, ColdSpots, SpotPlace, UnknownReason, UnknownSpot, opening_temperature_factor,
    plain_temperature_factors,
};
pub use cold_spot_water::{ColdSpotWater, SpotWater};
pub use fan::{FASTEST_INTAKE, FLUE_SPILLS_AT, Fan, FanPoint, FanRun};
pub use humidity_curve::HumidityPoint;
pub use moisture_sources::{Deferral, SourceOfRoom, Sources, Timing, sources};
pub use months::RoomMonths;
pub use room_humidity::{Holding, RoomHumidity};
pub use standing::StandingRoom;
pub use verdict::{PlaceVerdict, Verdict};
pub use warm_season::{OtherWays, WarmSeason};

use crate::design::{CheckedDesign, Design};
use crate::envelope::Envelope;
use crate::heat_loss::leakage;
use crate::moisture::{MoistureError, MoistureRate};
use crate::psychro::{MoistAir, hyland_wexler};
use crate::room::Room;
use crate::units::{Area, Pressure, RelativeHumidity, Temperature, Time, Volume};
use crate::ventilation::DryAirFlow;

/// Humidity and air of a design at its winter temperatures and through the months.
#[derive(Clone, Debug, PartialEq)]
pub struct Humidity {
    /// Moisture given off.
    pub sources: Sources,
    /// Outdoor air at the design's winter temperature.
    pub outdoor: MoistAir,
    /// The room as it is to be held.
    pub target: MoistAir,
    /// Outdoor air that leaks in at all times.
    pub leakage: DryAirFlow,
    /// The fan against its openings.
    pub fan: Fan,
    /// The fan beside the leaks, where there is one.
    pub fan_air: Option<FanAir>,
    /// The room if the busy hours lasted: what its fan must do in them.
    pub busy: RoomHumidity,
    /// The room in the mean of a day of use, whose ups and downs its lining evens out: how humid it stands on the
    /// coldest day.
    pub day: RoomHumidity,
    /// The room in the mean of a week.
    pub mean: RoomHumidity,
    /// Outdoor air that is needed.
    pub need: AirNeed,
    /// The room in the mean of each month, and which asks most of its surfaces.
    pub months: RoomMonths,
    /// What the room's humidity brings to each of its places.
    pub verdict: Verdict,
    /// The places that take water from its air, coldest first.
    pub places: Vec<ColdPlace>,
    /// What lands on them through a cold spell.
    pub cold_spots: ColdSpotWater,
    /// When outdoor air holds the target and what else can.
    pub warm_season: WarmSeason,
    /// What must be asked of others.
    pub deferrals: &'static [Deferral],
}

/// What the air of a design depends on, in one place.
#[derive(Clone, Copy, Debug)]
pub(super) struct Setting<'a> {
    design: &'a Design,
    volume: Volume,
    floor_area: Area,
    pressure: Pressure,
    target: MoistAir,
    leakage: DryAirFlow,
    /// Places that take water from the room's air.
    places: &'a [ColdPlace],
    /// Humidity of the coldest month's air, which colder air is taken to have too.
    outdoor_humidity: RelativeHumidity,
}

impl<'a> Setting<'a> {
    fn of(design: &'a Design, room: &Room, places: &'a [ColdPlace]) -> Result<Self, MoistureError> {
        let pressure = design.place.air_pressure();
        let place = design.place.place();
        let (indoor, held) = (design.indoor_temperature, design.target_humidity);
        Ok(Self {
            design,
            volume: room.volume,
            floor_area: room.floor_area,
            pressure,
            target: MoistAir::from_relative_humidity(indoor, held, pressure)?,
            leakage: DryAirFlow::new(leakage(design, room))?,
            places,
            outdoor_humidity: place.months[place.coldest_month()].relative_humidity()?,
        })
    }

    /// Outdoor air at a winter temperature, as humid as that of the coldest month.
    fn outdoor(&self, temperature: Temperature) -> Result<MoistAir, MoistureError> {
        self.air(temperature, self.outdoor_humidity)
    }

    /// Outdoor air of a hot day: the place's summer temperature with the vapour of its warmest month, as far as air
    /// that warm holds it.
    fn hot_day(&self) -> Result<MoistAir, MoistureError> {
        let place = self.design.place.place();
        let vapour = place.months[place.warmest_month()].vapour_pressure;
        let saturation = hyland_wexler::saturation_pressure(place.summer_design)?;
        self.air(place.summer_design, RelativeHumidity::new((vapour / saturation).min(1.0)))
    }

    fn air(
        &self,
        temperature: Temperature,
        humidity: RelativeHumidity,
    ) -> Result<MoistAir, MoistureError> {
        Ok(MoistAir::from_relative_humidity(temperature, humidity, self.pressure)?)
    }
}

impl Humidity {
    /// Humidity and air of a design, with the cold spots known so far.
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
        let places = cold_places(spots, design, room, envelope);
        let setting = Setting::of(design, room, &places)?;
        let outdoor = setting.outdoor(design.outdoor_temperature)?;
        let sources = Sources::of(design)?;
        let fan = Fan::of(&setting, &outdoor)?;
        let is_balanced = heat_exchanger(design)?.is_some();
        let fan_air = fan
            .moves()
            .map(|moves| FanAir::beside(setting.leakage, moves, is_balanced))
            .transpose()?;
        let inside = setting.occupants()?;
        let running = fan_air.as_ref();
        let stands = |source: MoistureRate, occupants| {
            setting.humidity(source.typical, occupants, running, &outdoor)
        };
        let busy = stands(sources.busy, inside.busy())?;
        let day = stands(sources.day, inside.in_a_day())?;
        let mean = stands(sources.mean, inside.in_a_week())?;
        let need = AirNeed::of(&setting, &sources, running, &inside, [&busy, &mean], &outdoor)?;
        let months = RoomMonths::of(&setting, sources.mean.typical, inside.in_a_week(), running)?;
        let verdict = Verdict::of(spots, &day, &months);
        let spell = Time::days(design.cold_spell_days);
        let source = sources.mean.typical;
        let cold_spots =
            ColdSpotWater::of(&mean.with_fan, &places, source, outdoor.temperature(), spell)?;
        let warm_season = WarmSeason::of(&setting, sources.busy.typical, inside.busy(), running)?;
        Ok(Self {
            target: setting.target,
            leakage: setting.leakage,
            deferrals: design.room_use.deferrals(),
            sources,
            outdoor,
            fan,
            fan_air,
            busy,
            day,
            mean,
            need,
            months,
            verdict,
            places,
            cold_spots,
            warm_season,
        })
    }
}
