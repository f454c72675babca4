//! The year of a design: hour by hour, once every field of it is solved.

use std::sync::Arc;

use inchwise_core::climate::{
    HOURS_IN_YEAR, NotReached, Place, SEED, Spread, heating_degree_days, not_reached, reconstruct,
};
use inchwise_core::evaluate::Evaluation;
use inchwise_core::units::{
    Angle, Energy, Power, SurfaceMoisture, Temperature, TemperatureDifference, Time,
};
use inchwise_core::year::{
    CheckedYearChoices, Course, HeaterCheck, Period, RoomHour, RoomPart, SpotState, Summer,
    SupplyCheck, Surroundings, YearGrounds, YearModel, YearModelError, YearOutcome, run_year,
};
use inchwise_link::OwnHours;

/// One day of a year: heat, and hours of each state.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct YearDay {
    /// Heat of heater and backup.
    pub heat: Energy,
    /// Hours in which frost grew on the coldest spot.
    pub frost: f64,
    /// Hours in which it dripped.
    pub drip: f64,
    /// Hours in which the room was too warm.
    pub too_warm: f64,
    /// Hours in which the heater could not hold the set-point.
    pub too_cold: f64,
}

/// What the page shows of a year.
#[derive(Clone, Debug, PartialEq)]
pub struct YearAnswer {
    /// January to December.
    pub months: Vec<Period>,
    /// The whole year.
    pub year: Period,
    /// 1 January to 31 December.
    pub days: Vec<YearDay>,
    /// Greatest heat of an hour.
    pub greatest_heat: Power,
    /// Mean heat of the day that took the most.
    pub coldest_day: Power,
    /// Most frost on the coldest spot.
    pub most_frost: SurfaceMoisture,
    /// The summer as chosen and otherwise.
    pub summer: Summer,
    /// After a power cut at the place's winter temperature: until each of [`COOLED_TO`]; none if never.
    pub cool_down: [Option<Time>; 2],
    /// From as cold as outdoors to [`WARM_ENOUGH`] of the set-point: air, surfaces; none if never.
    pub warm_up: [Option<Time>; 2],
    /// Whether the heater holds the room.
    pub heater: HeaterCheck,
    /// Whether the supply carries it.
    pub supply: SupplyCheck,
    /// Heating degree days of the hours to each of [`DEGREE_DAY_BASES`], K·d.
    pub degree_days: [f64; 2],
    /// How the room cools after a power cut, and how air and surfaces warm up.
    pub courses: [Course; 3],
    /// What the figures rest on.
    pub grounds: YearGrounds,
    /// What of the place its hours do not have.
    pub not_reached: Vec<NotReached>,
}

/// What heating degree days are counted to: 18 °C in metric and 65 °F in imperial units (common
/// practice, no source).
pub const DEGREE_DAY_BASES: [Temperature; 2] =
    [Temperature::celsius(18.0), Temperature::fahrenheit(65.0)];

/// How near the set-point the room counts as warmed up, K.
pub const WARM_ENOUGH: TemperatureDifference = TemperatureDifference::new(3.0);

/// How cold the room gets after a power cut until the times that are told: +5 °C, and freezing.
pub const COOLED_TO: [Temperature; 2] = [Temperature::celsius(5.0), Temperature::celsius(0.0)];

/// Something large that is shared, the same only if it is the very same.
#[derive(Debug)]
pub struct Shared<T>(pub Arc<T>);

impl<T> Clone for Shared<T> {
    fn clone(&self) -> Self {
        Self(Arc::clone(&self.0))
    }
}

impl<T> PartialEq for Shared<T> {
    fn eq(&self, other: &Self) -> bool {
        Arc::ptr_eq(&self.0, &other.0)
    }
}

impl<T> std::ops::Deref for Shared<T> {
    type Target = T;

    fn deref(&self) -> &T {
        &self.0
    }
}

/// The hours of a place about the box.
#[derive(Clone, Debug)]
pub struct Hours {
    surroundings: Surroundings,
    degree_days: [f64; 2],
    /// What of the place they do not have.
    not_reached: Vec<NotReached>,
}

impl Hours {
    /// The hours of a place, or a visitor's own at its height; `None` for a place that does not
    /// pass its check.
    pub fn of(place: &Place, own: Option<&OwnHours>, front_faces: Angle) -> Option<Self> {
        let (weather, missed) = match own {
            Some(own) => {
                let mut weather = own.weather.clone();
                (weather.elevation, weather.latitude) = (place.elevation, place.latitude);
                (weather, Vec::new())
            }
            None => {
                let checked = place.check().ok()?;
                let made = reconstruct(&checked, Spread::DesignTemperatures, SEED);
                let missed = not_reached(&checked, &made);
                (made, missed)
            }
        };
        let degree_days = DEGREE_DAY_BASES.map(|base| heating_degree_days(&weather, base));
        let surroundings = Surroundings::new(weather, front_faces).ok()?;
        Some(Self { surroundings, degree_days, not_reached: missed })
    }
}

impl YearAnswer {
    /// The year of a design whose fields are all solved, in the hours of its place.
    ///
    /// # Errors
    /// Why no year can be reckoned.
    pub fn of(
        evaluation: &Evaluation,
        hours: &Hours,
        checked: &CheckedYearChoices,
        winter: Temperature,
    ) -> Result<Shared<Self>, YearModelError> {
        answer(evaluation, hours, checked, winter).map(|answer| Shared(Arc::new(answer)))
    }
}

fn answer(
    evaluation: &Evaluation,
    hours: &Hours,
    checked: &CheckedYearChoices,
    winter: Temperature,
) -> Result<YearAnswer, YearModelError> {
    let surroundings = &hours.surroundings;
    let model = YearModel::new(evaluation, surroundings, checked)?;
    let outcome = run_year(&model);
    let choices = checked.choices();
    let design = evaluation.checked.design();
    let set_point = design.indoor_temperature;
    let load = evaluation.heat_loss.design_load;
    let network = model.network();
    let cooling = network.cooling(set_point, winter, RoomPart::Air);
    let capacity = HeaterCheck::of(choices, load, winter).capacity;
    let warming = [RoomPart::Air, RoomPart::Surfaces]
        .map(|part| network.warming(capacity, winter, winter, part));
    Ok(YearAnswer {
        days: days(&outcome),
        greatest_heat: outcome.greatest_heat,
        coldest_day: outcome.coldest_day,
        most_frost: outcome.most_frost,
        summer: Summer::of(&outcome, evaluation, surroundings, checked)?,
        cool_down: COOLED_TO.map(|to| cooling.until(to)),
        warm_up: warming.map(|course| course.until(set_point - WARM_ENOUGH)),
        heater: HeaterCheck::of(choices, load, design.outdoor_temperature),
        supply: SupplyCheck::of(choices, design.outdoor_temperature),
        degree_days: hours.degree_days,
        months: outcome.months.to_vec(),
        year: outcome.year,
        courses: [cooling, warming[0], warming[1]],
        grounds: YearGrounds::of(&model, &outcome),
        not_reached: hours.not_reached.clone(),
    })
}

fn days(outcome: &YearOutcome) -> Vec<YearDay> {
    debug_assert_eq!(outcome.hours.len(), HOURS_IN_YEAR);
    outcome
        .hours
        .chunks(24)
        .map(|hours| {
            let count =
                |is: fn(&RoomHour) -> bool| hours.iter().filter(|hour| is(hour)).count() as f64;
            let watt_hours: f64 = hours.iter().map(|hour| f64::from(hour.heat)).sum();
            YearDay {
                heat: Energy::kilowatt_hours(watt_hours / 1000.0),
                frost: count(|hour| hour.spot == SpotState::Frost),
                drip: count(|hour| hour.spot == SpotState::Drip),
                too_warm: count(|hour| hour.too_warm),
                too_cold: count(|hour| hour.unmet),
            }
        })
        .collect()
}
