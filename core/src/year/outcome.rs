//! What a year came to.

use crate::humidity::SpotPlace;
use crate::units::{Energy, Mass, Power, SurfaceMoisture, Temperature, TemperatureFactor};

/// Energy of a month or a year, by where it came from and where it went.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct EnergyByPurpose {
    /// Heat given by the heater.
    pub heater_heat: Energy,
    /// Heat given by the electric backup, as much electricity.
    pub backup_heat: Energy,
    /// What the heater drew of its own carrier, gross.
    pub heater_input: Energy,
    /// Electricity beside its fuel that the heater drew.
    pub heater_own: Energy,
    /// Electricity of the fan.
    pub fan: Energy,
    /// Electricity of equipment; all of it becomes heat.
    pub equipment: Energy,
    /// Dry heat of people and animals.
    pub people: Energy,
    /// Sun through the windows.
    pub sun: Energy,
    /// Lost through everything opaque, sun and sky on the steel taken off.
    pub through_envelope: Energy,
    /// Lost through windows and door, sun and sky on the door and sky before the windows taken off.
    pub through_openings: Energy,
    /// Lost by leaks and the air always let in.
    pub by_leaks: Energy,
    /// Lost by what the fan moved.
    pub by_fan: Energy,
    /// Taken by water that dried in the room.
    pub by_drying: Energy,
    /// Given back by water that condensed and froze on cold places, as far as it came to the room, or in full air; below
    /// 0 what thawing and drying back took.
    pub condensing: Energy,
}

impl EnergyByPurpose {
    /// Heat that came in.
    pub fn gained(&self) -> Energy {
        self.heater_heat
            + self.backup_heat
            + self.equipment
            + self.people
            + self.sun
            + self.condensing
    }

    /// Heat that went out.
    pub fn lost(&self) -> Energy {
        self.through_envelope + self.through_openings + self.by_leaks + self.by_fan + self.by_drying
    }

    /// Heat of heater and backup.
    pub fn heat(&self) -> Energy {
        self.heater_heat + self.backup_heat
    }
}

/// Adds field by field.
pub(super) fn add(into: &mut EnergyByPurpose, more: &EnergyByPurpose) {
    into.heater_heat += more.heater_heat;
    into.backup_heat += more.backup_heat;
    into.heater_input += more.heater_input;
    into.heater_own += more.heater_own;
    into.fan += more.fan;
    into.equipment += more.equipment;
    into.people += more.people;
    into.sun += more.sun;
    into.through_envelope += more.through_envelope;
    into.through_openings += more.through_openings;
    into.by_leaks += more.by_leaks;
    into.by_fan += more.by_fan;
    into.by_drying += more.by_drying;
    into.condensing += more.condensing;
}

/// A month or a year.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Period {
    /// Energy.
    pub energy: EnergyByPurpose,
    /// Hours in which the heater left the room more than half a kelvin under its set-point.
    pub unmet_hours: u32,
    /// Hours in which the room was too warm.
    pub too_warm_hours: u32,
    /// Hours in which water condensed on the coldest known spot and did not freeze, or frost
    /// thawed from it.
    pub drip_hours: u32,
    /// Hours in which frost grew on the coldest known spot.
    pub frost_hours: u32,
    /// Hours of full fan, parts of hours added up.
    pub fan_hours: f64,
    /// Water that came to cold places from the air as water.
    pub condensed: Mass,
    /// Water that came to them as frost.
    pub frosted: Mass,
    /// What went back to the air from them.
    pub dried_back: Mass,
    /// What ran off them.
    pub ran_off: Mass,
    /// Sum of the hours' room temperatures over their number: the mean, °C.
    pub mean_celsius: f64,
    /// Mean of the hours' relative humidities, 0 to 1.
    pub mean_humidity: f64,
    /// Water that condensed wherever it could, on the lining first, because the air held no more.
    pub water_on_lining: Mass,
}

/// How long a cold place was wet, and by how much.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SpotHours {
    /// Where.
    pub place: SpotPlace,
    /// Its temperature factor with ordinary surface resistances.
    pub temperature_factor: TemperatureFactor,
    /// Hours in which it took water from the air above freezing, or thawed.
    pub drip: u32,
    /// Hours in which it took water from the air as frost.
    pub frost: u32,
    /// Water that came to it from the air, frost too.
    pub came: Mass,
    /// Water that ran off it.
    pub ran_off: Mass,
    /// Most frost that lay on it.
    pub most_frost: Mass,
}

/// One hour, for a picture of the year.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct RoomHour {
    /// Mean temperature of the air, °C.
    pub celsius: f32,
    /// Relative humidity, 0 to 1.
    pub humidity: f32,
    /// Heat of heater and backup, W.
    pub heat: f32,
    /// What the coldest known spot did.
    pub spot: SpotState,
    /// Whether the room was too warm.
    pub too_warm: bool,
    /// Whether the heater left it more than half a kelvin under its set-point.
    pub unmet: bool,
}

/// What a cold spot does in an hour.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum SpotState {
    /// It stays dry.
    #[default]
    Dry,
    /// Frost grows on it.
    Frost,
    /// It drips.
    Drip,
}

/// A year in the room.
#[derive(Clone, Debug, PartialEq)]
pub struct YearOutcome {
    /// January to December.
    pub months: [Period; 12],
    /// The whole year.
    pub year: Period,
    /// Every hour from the first of 1 January.
    pub hours: Vec<RoomHour>,
    /// Known cold spots that were ever wet, coldest first.
    pub spots: Vec<SpotHours>,
    /// The coldest known spot.
    pub coldest_spot: Option<SpotPlace>,
    /// Most frost that lay on the coldest known spot, kg/m².
    pub most_frost: SurfaceMoisture,
    /// Greatest heat of an hour.
    pub greatest_heat: Power,
    /// Mean heat of the day that took the most.
    pub coldest_day: Power,
    /// Highest room temperature of an hour.
    pub warmest: Temperature,
    /// Lowest room temperature of an hour.
    pub coldest: Temperature,
    /// Heat stored in the mass over the year.
    pub stored: Energy,
    /// Water given to the air over the year.
    pub water_given: Mass,
    /// Water carried off by air over the year.
    pub water_by_air: Mass,
    /// Water stored over the year in air and lining, and on cold places.
    pub water_stored: Mass,
    /// Whether parts of the envelope are still being solved aside, so that the figures will move.
    pub is_waiting: bool,
}

impl YearOutcome {
    /// What the balance of heat is off by, over the heat that passed: gained − lost − stored. Heat that
    /// came in by a way out counts as passed, so that a year that gains what it loses has a share too.
    pub fn heat_off(&self) -> f64 {
        let energy = &self.year.energy;
        let ways = [
            energy.through_envelope,
            energy.through_openings,
            energy.by_leaks,
            energy.by_fan,
            energy.by_drying,
            energy.condensing,
            self.stored,
        ];
        let passed =
            energy.gained().value() + ways.map(|way| way.value().abs()).iter().sum::<f64>();
        (energy.gained() - energy.lost() - self.stored).value() / passed.max(1.0)
    }

    /// What the balance of water is off by, over the water that passed.
    pub fn water_off(&self) -> f64 {
        let gone =
            self.water_by_air + self.year.ran_off + self.year.water_on_lining + self.water_stored;
        let passed = self.water_given.value() + self.water_by_air.value().abs();
        (self.water_given - gone).value() / passed.max(1e-9)
    }
}
