//! The worker's side of a year: the hours of a place kept for many designs, and one run for each.

use inchwise_core::climate::{CheckedPlace, HOURS_IN_YEAR, NotReached, heating_degree_days};
use inchwise_core::design::CheckedDesign;
use inchwise_core::detail::{Effort, FieldCache};
use inchwise_core::evaluate::{Evaluation, evaluate_with};
use inchwise_core::room_network::RoomPart;
use inchwise_core::units::{Energy, Temperature};
use inchwise_core::year::{
    CheckedYearChoices, HeaterCheck, RoomHour, SpotState, Summer, SupplyCheck, Surroundings,
    YearGrounds, YearModel, YearModelError, YearOutcome, run_year,
};

use crate::climate::PlaceHours;
use crate::pack::unpack_design;
use crate::year::{COOLED_TO, DEGREE_DAY_BASES, WARM_ENOUGH, YearAnswer, YearDay, unpack_choices};

/// A year that was asked for.
pub(crate) struct YearJob {
    pub(crate) request: u32,
    pub(crate) checked: CheckedDesign,
    choices: CheckedYearChoices,
    /// Measured hours, packed; none where those of the design's place are made.
    measured: Vec<f64>,
}

impl YearJob {
    /// From numbers; `None` if anything of it does not pass its check.
    pub(crate) fn of(
        request: u32,
        design: &[f64],
        choices: &[f64],
        measured: &[f64],
    ) -> Option<Self> {
        let checked = unpack_design(design)?.check().ok()?;
        let choices = unpack_choices(choices)?.check().ok()?;
        Some(Self { request, checked, choices, measured: measured.to_vec() })
    }
}

/// The hours of a place.
struct Hours {
    /// What they were made of.
    place: CheckedPlace,
    measured: Vec<f64>,
    /// The hours about the box.
    surroundings: Surroundings,
    winter: Temperature,
    degree_days: [f64; 2],
    /// What of the place they do not have.
    not_reached: Vec<NotReached>,
}

/// Runs years, and keeps what the next one can use.
#[derive(Default)]
pub(crate) struct Years {
    hours: Option<Hours>,
    /// The last evaluation with every field in it.
    complete: Option<Evaluation>,
}

impl Years {
    /// Runs a year with the fields that the effort allows; what waits is taken over from the last
    /// design without gaps. `None` if no year can be reckoned.
    pub(crate) fn run(
        &mut self,
        job: &YearJob,
        cache: &mut FieldCache,
        effort: Effort,
    ) -> Option<YearAnswer> {
        let mut evaluation = evaluate_with(&job.checked, cache, effort);
        if !evaluation.heat_loss.is_waiting() {
            self.complete = Some(evaluation.clone());
        } else if let Some(earlier) = &self.complete {
            evaluation = evaluation.with_waiting_from(earlier);
        }
        let hours = self.hours(job)?;
        answer(&evaluation, hours, job).ok()
    }

    /// The hours of a year; none for numbers that are not those of hours.
    fn hours(&mut self, job: &YearJob) -> Option<&Hours> {
        let design = job.checked.design();
        let faces = design.front_faces;
        let is_theirs =
            |known: &Hours| known.place == design.place && known.measured == job.measured;
        let known = self.hours.take().filter(is_theirs);
        let hours = match known {
            Some(known) if known.surroundings.front_faces() == faces => known,
            Some(known) => Hours { surroundings: known.surroundings.turned(faces), ..known },
            None => {
                let PlaceHours { weather, winter, not_reached } =
                    PlaceHours::of(&design.place, &job.measured)?;
                let degree_days = DEGREE_DAY_BASES.map(|base| heating_degree_days(&weather, base));
                let surroundings = Surroundings::new(weather, faces);
                let (place, measured) = (design.place.clone(), job.measured.clone());
                Hours { place, measured, surroundings, winter, degree_days, not_reached }
            }
        };
        Some(self.hours.insert(hours))
    }
}

fn answer(
    evaluation: &Evaluation,
    hours: &Hours,
    job: &YearJob,
) -> Result<YearAnswer, YearModelError> {
    let (checked, surroundings) = (&job.choices, &hours.surroundings);
    let model = YearModel::new(evaluation, surroundings, checked)?;
    let load = &evaluation.balance.as_ref().map_err(Clone::clone)?.load;
    let outcome = run_year(&model);
    let choices = checked.choices();
    let winter = hours.winter;
    let design = evaluation.checked.design();
    let set_point = design.indoor_temperature;
    let network = model.network();
    let cooling = network.cooling(set_point, winter, RoomPart::Air);
    let capacity = HeaterCheck::at(choices, load.greatest(), winter).capacity;
    let warming = [RoomPart::Air, RoomPart::Surfaces]
        .map(|part| network.warming(capacity, winter, winter, part));
    Ok(YearAnswer {
        is_waiting: outcome.is_waiting,
        days: days(&outcome),
        greatest_heat: outcome.greatest_heat,
        coldest_day: outcome.coldest_day,
        most_frost: outcome.most_frost,
        summer: Summer::of(&outcome, evaluation, surroundings, checked)?,
        cool_down: COOLED_TO.map(|to| cooling.until(to)),
        warm_up: warming.map(|course| course.until(set_point - WARM_ENOUGH)),
        heater: HeaterCheck::of(choices, load),
        supply: SupplyCheck::of(design, choices, design.outdoor_temperature),
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
