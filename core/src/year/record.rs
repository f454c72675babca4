//! What a run writes down as it goes.

use super::cold_places::{ColdPlaces, Lying};
use super::model::YearModel;
use super::outcome::{Period, RoomHour, SpotHours, SpotState, YearOutcome, add};
use crate::climate::{HOURS_IN_YEAR, hours_of};
use crate::extremes::{greater, lesser};
use crate::units::{Energy, Mass, Power, SurfaceMoisture, Temperature, TemperatureFactor};

/// What happened at one place.
#[derive(Clone, Copy, Debug, Default)]
struct PlaceRecord {
    drip: u32,
    frost: u32,
    came: f64,
    ran_off: f64,
    most_frost: f64,
}

/// The records of a run.
pub(super) struct Record {
    hours: Vec<RoomHour>,
    places: Vec<PlaceRecord>,
    greatest_heat: f64,
    warmest: f64,
    coldest: f64,
    pub(super) water_given: f64,
    pub(super) water_by_air: f64,
}

impl Record {
    pub(super) fn new(places: usize) -> Self {
        Self {
            hours: vec![RoomHour::default(); HOURS_IN_YEAR],
            places: vec![PlaceRecord::default(); places],
            greatest_heat: 0.0,
            warmest: f64::NEG_INFINITY,
            coldest: f64::INFINITY,
            water_given: 0.0,
            water_by_air: 0.0,
        }
    }

    /// Forgets what the lead-in wrote down, but for what lies on the places.
    pub(super) fn forget(&mut self, places: &ColdPlaces<'_>) {
        for (record, lying) in self.places.iter_mut().zip(&places.lying) {
            *record = PlaceRecord { most_frost: lying.frost, ..PlaceRecord::default() };
        }
        self.greatest_heat = 0.0;
        self.warmest = f64::NEG_INFINITY;
        self.coldest = f64::INFINITY;
        self.water_given = 0.0;
        self.water_by_air = 0.0;
    }

    /// Lets an hour of seconds pass over the cold places at a vapour pressure: what the coldest did, and the joules
    /// that came to the room, of what was set free at each place the part of its temperature factor.
    pub(super) fn let_pass(
        &mut self,
        places: &mut ColdPlaces<'_>,
        pascals: f64,
        seconds: f64,
        period: &mut Period,
    ) -> (SpotState, f64) {
        let (mut coldest, mut joules) = (SpotState::Dry, 0.0);
        let records = &mut self.places;
        let (mut condensed, mut frosted, mut dried_back, mut ran_off) = (0.0, 0.0, 0.0, 0.0);
        places.pass(pascals, seconds, |n, place, celsius, hour, lying: &Lying| {
            let record = &mut records[n];
            let state = if celsius < 0.0 {
                if hour.came > 0.0 { SpotState::Frost } else { SpotState::Dry }
            } else if hour.thawed || hour.came > 0.0 {
                SpotState::Drip
            } else {
                SpotState::Dry
            };
            record.frost += u32::from(state == SpotState::Frost);
            record.drip += u32::from(state == SpotState::Drip);
            record.ran_off += hour.ran_off;
            record.most_frost = greater(record.most_frost, lying.frost);
            if hour.came > 0.0 {
                record.came += hour.came;
                if celsius < 0.0 { frosted += hour.came } else { condensed += hour.came }
            } else {
                dried_back -= hour.came;
            }
            ran_off += hour.ran_off;
            joules += place.factor * hour.released;
            if n == 0 {
                coldest = state;
            }
        });
        period.condensed += Mass::new(condensed);
        period.frosted += Mass::new(frosted);
        period.dried_back += Mass::new(dried_back);
        period.ran_off += Mass::new(ran_off);
        (coldest, joules)
    }

    /// Writes down an hour.
    pub(super) fn hour(&mut self, hour: usize, air: f64, heat: f64, of: RoomHour) {
        self.greatest_heat = greater(self.greatest_heat, heat);
        self.warmest = greater(self.warmest, air);
        self.coldest = lesser(self.coldest, air);
        self.hours[hour] = of;
    }

    /// The year from its months.
    pub(super) fn outcome(
        self,
        model: &YearModel<'_>,
        months: [Period; 12],
        stored: Energy,
        water_stored: Mass,
    ) -> YearOutcome {
        let coldest_day = self
            .hours
            .chunks(24)
            .map(|day| day.iter().map(|hour| f64::from(hour.heat)).sum::<f64>() / 24.0)
            .fold(0.0, f64::max);
        let coldest = model.places.first();
        let frost = self.places.first().map_or(0.0, |record| record.most_frost);
        let most_frost = coldest.map_or(0.0, |place| frost / place.area);
        let wet = model.places.iter().zip(&self.places);
        YearOutcome {
            year: whole_year(&months),
            months,
            spots: wet
                .filter(|(_, record)| record.drip + record.frost > 0)
                .map(|(place, record)| SpotHours {
                    place: place.at.place,
                    temperature_factor: TemperatureFactor::new(place.factor),
                    drip: record.drip,
                    frost: record.frost,
                    came: Mass::new(record.came),
                    ran_off: Mass::new(record.ran_off),
                    most_frost: Mass::new(record.most_frost),
                })
                .collect(),
            coldest_spot: coldest.map(|place| place.at.place),
            most_frost: SurfaceMoisture::new(most_frost),
            greatest_heat: Power::new(self.greatest_heat),
            coldest_day: Power::new(coldest_day),
            warmest: Temperature::celsius(self.warmest),
            coldest: Temperature::celsius(self.coldest),
            stored,
            water_given: Mass::new(self.water_given),
            water_by_air: Mass::new(self.water_by_air),
            water_stored,
            is_waiting: model.is_waiting,
            hours: self.hours,
        }
    }
}

/// The sums of the months, and the means weighed by their hours.
fn whole_year(months: &[Period; 12]) -> Period {
    let mut year = Period::default();
    for (month, of) in months.iter().enumerate() {
        add(&mut year.energy, &of.energy);
        year.unmet_hours += of.unmet_hours;
        year.too_warm_hours += of.too_warm_hours;
        year.drip_hours += of.drip_hours;
        year.frost_hours += of.frost_hours;
        year.fan_hours += of.fan_hours;
        year.condensed += of.condensed;
        year.frosted += of.frosted;
        year.dried_back += of.dried_back;
        year.ran_off += of.ran_off;
        year.water_on_lining += of.water_on_lining;
        let weight = hours_of(month).len() as f64 / HOURS_IN_YEAR as f64;
        year.mean_celsius += of.mean_celsius * weight;
        year.mean_humidity += of.mean_humidity * weight;
    }
    year
}
