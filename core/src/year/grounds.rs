//! What a year's figures rest on, for whoever reckons one of them again by hand: means of months and
//! days, and how often the room would be too cold or too warm if it stood still.

use core::ops::Range;

use super::model::YearModel;
use super::outcome::YearOutcome;
use crate::climate::{DAYS_IN_YEAR, HOURS_IN_YEAR, hours_of};
use crate::units::{
    HeatCapacity, HeatTransferCoefficient, Power, Pressure, Temperature, TemperatureFactor,
};

/// What acted on the room in the mean of some hours, and how warm it was.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct MeanHour {
    /// Outdoor air.
    pub outdoors: Temperature,
    /// Vapour of outdoor air.
    pub outdoor_vapour: Pressure,
    /// What the heater was to hold, setback and all.
    pub set_point: Temperature,
    /// What the room was.
    pub room: Temperature,
    /// Heat of people.
    pub people: Power,
    /// Heat of equipment.
    pub equipment: Power,
    /// Sun through the windows.
    pub sun: Power,
    /// Sun on steel and personnel door, as far as it comes through to the room: H·α·I/h_o.
    pub sun_on_steel: Power,
    /// What the sky draws from steel, windows and personnel door: H·ε·ΔR/h_o.
    pub sky: Power,
    /// What water drying in the room takes.
    pub drying: Power,
}

impl MeanHour {
    /// Everything that warms the room beside its heater, less what the sky draws and drying takes.
    pub fn gains(&self) -> Power {
        self.people + self.equipment + self.sun + self.sun_on_steel - self.sky - self.drying
    }

    /// The room without heater and fan if all this stood still, θ_e + gains/H.
    pub fn stands_at(&self, loss: HeatTransferCoefficient) -> Temperature {
        self.outdoors + self.gains() / loss
    }
}

/// What a year's figures rest on.
#[derive(Clone, Debug, PartialEq)]
pub struct YearGrounds {
    /// Steady loss H with the fan off; air weighs what it does at the place's height.
    pub loss: HeatTransferCoefficient,
    /// The part of it that leaks.
    pub leaks: HeatTransferCoefficient,
    /// What the fan's air takes at full flow.
    pub fan: HeatTransferCoefficient,
    /// Heat capacity of everything inside the foam.
    pub capacity: HeatCapacity,
    /// Pressure of the air.
    pub air_pressure: Pressure,
    /// Temperature factor of the windows in their mean.
    pub window_factor: TemperatureFactor,
    /// Water that runs down the windows for each pascal that the room's vapour is above saturation
    /// there, kg/(s·Pa).
    pub onto_windows: f64,
    /// January to December.
    pub months: [MeanHour; 12],
    /// The day that took the most heat, from 0 on 1 January.
    pub coldest_day: usize,
    /// That day.
    pub on_coldest_day: MeanHour,
    /// The day of the warmest hour.
    pub warmest_day: usize,
    /// That day.
    pub on_warmest_day: MeanHour,
    /// Hours in which heater and backup at full load give less than H·(set-point − outdoors).
    pub short_hours: u32,
    /// Days whose [`MeanHour::stands_at`] is too warm.
    pub warm_days: u32,
}

impl YearGrounds {
    /// Of a model and what it came to.
    pub fn of(model: &YearModel<'_>, outcome: &YearOutcome) -> Self {
        let network = model.network();
        let loss = network.steady_loss();
        let celsius = |hour: usize| f64::from(outcome.hours[hour].celsius);
        let most = |of: &dyn Fn(usize) -> f64| {
            let larger = |most: usize, day: usize| if of(day) > of(most) { day } else { most };
            (1..DAYS_IN_YEAR).fold(0, larger)
        };
        let heat = |day: usize| {
            day_hours(day).map(|hour| f64::from(outcome.hours[hour].heat)).sum::<f64>()
        };
        let warmest = |day: usize| day_hours(day).map(celsius).fold(f64::NEG_INFINITY, f64::max);
        let (coldest_day, warmest_day) = (most(&heat), most(&warmest));
        let mean = |hours| model.mean_of(outcome, hours);
        let too_warm = model.choices.too_warm;
        let is_warm = |&day: &usize| mean(day_hours(day)).stands_at(loss) > too_warm;
        let short = |&hour: &usize| model.is_short_at(hour, loss.value());
        let onto_windows = model.vapour.coefficients();
        let onto_windows = onto_windows.iter().find(|(name, _)| *name == "vapour_onto_windows");
        Self {
            loss,
            leaks: HeatTransferCoefficient::new(network.leaks),
            fan: HeatTransferCoefficient::new(model.fan),
            capacity: HeatCapacity::new(network.capacity),
            air_pressure: model.surroundings.air_pressure,
            window_factor: TemperatureFactor::new(model.window_factor),
            onto_windows: onto_windows.map_or(0.0, |&(_, conductance)| conductance),
            months: core::array::from_fn(|month| mean(hours_of(month))),
            coldest_day,
            on_coldest_day: mean(day_hours(coldest_day)),
            warmest_day,
            on_warmest_day: mean(day_hours(warmest_day)),
            short_hours: (0..HOURS_IN_YEAR).filter(short).count() as u32,
            warm_days: (0..DAYS_IN_YEAR).filter(is_warm).count() as u32,
        }
    }
}

const fn day_hours(day: usize) -> Range<usize> {
    day * 24..day * 24 + 24
}

impl YearModel<'_> {
    fn set_point_at(&self, hour: usize) -> f64 {
        let used = self.choices.is_used(hour);
        if used { self.set_point } else { self.set_point - self.choices.setback.value() }
    }

    /// The mean of some hours.
    fn mean_of(&self, outcome: &YearOutcome, hours: Range<usize>) -> MeanHour {
        let (choices, weather) = (&self.choices, &self.surroundings.weather);
        let count = hours.len() as f64;
        let mean = |of: &dyn Fn(usize) -> f64| hours.clone().map(of).sum::<f64>() / count;
        let used = mean(&|hour| f64::from(u8::from(choices.is_used(hour))));
        let sun = self.surroundings.sun.hours();
        let warmed = |hour: usize| -> f64 {
            sun[hour].iter().zip(&self.sun_at_steel).map(|(sun, per)| sun * per).sum()
        };
        let network = &self.network;
        let opaque = network.steady_loss().value() - network.openings - network.leaks;
        let (open, column) = self.window;
        let (on_door, door) = self.sun_on_door;
        MeanHour {
            outdoors: Temperature::celsius(mean(&|hour| weather.celsius()[hour])),
            outdoor_vapour: Pressure::new(mean(&|hour| weather.vapour_pascals()[hour])),
            set_point: Temperature::celsius(mean(&|hour| self.set_point_at(hour))),
            room: Temperature::celsius(mean(&|hour| f64::from(outcome.hours[hour].celsius))),
            people: choices.heat_of_person * choices.people * used,
            equipment: choices.equipment_always + choices.equipment_in_use * used,
            sun: Power::new(open * mean(&|hour| sun[hour][column])),
            sun_on_steel: Power::new(
                opaque * mean(&warmed) + on_door * mean(&|hour| sun[hour][door]),
            ),
            sky: self.sky_loss(),
            drying: Power::new(self.drying),
        }
    }

    /// Whether heater and backup at full load give less than a steady room would lose in an hour.
    fn is_short_at(&self, hour: usize, loss: f64) -> bool {
        let (choices, outdoors) = (&self.choices, self.surroundings.weather.celsius()[hour]);
        let kind = choices.heater;
        let is_lit = !kind.needs_someone() || choices.is_used(hour);
        let share = kind.capacity_share(Temperature::celsius(outdoors));
        let main = if is_lit { choices.heater_limit.value() * share } else { 0.0 };
        main + choices.backup_limit.value() < loss * (self.set_point_at(hour) - outdoors)
    }
}

#[cfg(test)]
mod tests {
    use super::super::{CheckedYearChoices, Surroundings, YearChoices, run_year};
    use super::*;
    use crate::climate::{Spread, reconstruct, varnholm_flats};
    use crate::design::CheckedDesign;
    use crate::detail::FieldCache;
    use crate::evaluate::evaluate;

    /// Means times hours are the sums of the year, and the monthly parts its balance.
    #[test]
    fn means_come_to_the_sums_of_the_year() {
        let evaluation = evaluate(&CheckedDesign::default(), &mut FieldCache::default());
        let place = varnholm_flats().check().expect("a place");
        let weather = reconstruct(&place, Spread::DesignTemperatures, 1);
        let choices = YearChoices::default();
        let surroundings = Surroundings::new(weather, choices.front_faces).expect("a height");
        let model = YearModel::new(&evaluation, &surroundings, &CheckedYearChoices::default())
            .expect("a model");
        let outcome = run_year(&model);
        let grounds = YearGrounds::of(&model, &outcome);
        for (month, mean) in grounds.months.iter().enumerate() {
            let energy = &outcome.months[month].energy;
            let hours = hours_of(month).len() as f64 * 3600.0;
            let sums = [(mean.people, energy.people), (mean.equipment, energy.equipment)];
            for (mean, sum) in sums.into_iter().chain([(mean.sun, energy.sun)]) {
                assert!((mean.value() * hours - sum.value()).abs() <= 1e-6 * sum.value());
            }
        }
        let day = grounds.on_coldest_day;
        assert!(day.outdoors < grounds.months[0].outdoors);
        assert_eq!(day.set_point, Temperature::celsius(20.0));
        assert!(grounds.on_warmest_day.room > grounds.months[6].room);
        let lost = (grounds.on_coldest_day.room - day.outdoors) * grounds.loss;
        assert!((lost - day.gains()).value() > 0.5 * outcome.coldest_day.value());
        assert!(grounds.short_hours >= outcome.year.unmet_hours);
    }
}
