//! The worker's side: what is asked, solved piece by piece.

use inchwise_core::design::{CheckedDesign, EndWallTreatment};
use inchwise_core::detail::{DetailMemory, Effort, Outcome, placed_detail};
use inchwise_core::envelope::{Amount, Envelope, Place};
use inchwise_core::room::Room;
use inchwise_core::tradeoff::wall_depth_point;
use inchwise_core::units::Length;

use crate::message::Message;
use crate::pack::unpack_design;
use crate::year_job::{YearJob, Years};

/// One design to be worked through.
struct Job {
    request: u32,
    checked: CheckedDesign,
    places: Vec<(Place, Amount)>,
    next_place: usize,
    /// Next point of the curve, depth after depth and within it treatment after treatment.
    next_point: usize,
    depths: Vec<Length>,
    done: bool,
}

/// How far a year is.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Progress {
    /// Not run yet.
    Fresh,
    /// Run while fields were waiting.
    Provisional,
    /// Run with all that can be known.
    Settled,
}

/// Solves what the page asks, one piece a step.
#[derive(Default)]
pub struct Solver {
    memory: DetailMemory,
    job: Option<Job>,
    year: Option<(YearJob, Progress)>,
    years: Years,
}

impl Solver {
    /// Takes a design in place of whatever was being worked on, with the wall depths of the curve in
    /// metres, none for no curve. A design that does not pass its check is not worked on.
    pub fn take(&mut self, request: u32, design: &[f64], depths: &[f64]) {
        self.job = unpack_design(design).and_then(|design| design.check().ok()).map(|checked| {
            let room = Room::of(&checked);
            let places = Envelope::of(&checked, &room.clear).places;
            let depths = depths.iter().map(|&depth| Length::new(depth)).collect();
            Job { request, checked, places, next_place: 0, next_point: 0, depths, done: false }
        });
    }

    /// Takes a year in place of the one before: a design, choices about use and a place, each packed. One of
    /// which anything does not pass its check is not run.
    pub fn take_year(&mut self, request: u32, design: &[f64], choices: &[f64], place: &[f64]) {
        let year = YearJob::of(request, design, choices, place);
        self.year = year.map(|year| (year, Progress::Fresh));
    }

    /// Works on for one piece and says what came of it; nothing once all is done. A year comes
    /// first, with fields taken over where they wait, and again once they are solved.
    pub fn step(&mut self) -> Option<Vec<f64>> {
        if let Some(year) = self.run_year(Progress::Fresh) {
            return Some(year);
        }
        if let Some(job) = &mut self.job
            && let Some(message) = next_field(job, &mut self.memory)
        {
            return Some(message.pack(job.request));
        }
        if let Some(year) = self.run_year(Progress::Provisional) {
            return Some(year);
        }
        let job = self.job.as_mut()?;
        let message = next_point(job, &mut self.memory)?;
        Some(message.pack(job.request))
    }

    /// Runs the year that was asked for, if it is so far.
    fn run_year(&mut self, from: Progress) -> Option<Vec<f64>> {
        let (year, progress) = self.year.as_mut().filter(|(_, progress)| *progress == from)?;
        // Fields of another design than the one worked on would take long.
        let same = self.job.as_ref().is_none_or(|job| job.checked == year.checked);
        let effort =
            if from == Progress::Provisional && same { Effort::All } else { Effort::Known };
        let answer = self.years.run(year, &mut self.memory, effort);
        let waits = answer.as_ref().is_some_and(|answer| answer.is_waiting);
        *progress = if waits && from == Progress::Fresh {
            Progress::Provisional
        } else {
            Progress::Settled
        };
        Some(Message::Year(answer?.pack()).pack(year.request))
    }
}

fn next_field(job: &mut Job, memory: &mut DetailMemory) -> Option<Message> {
    let &(place, amount) = job.places.get(job.next_place)?;
    let number = job.next_place;
    job.next_place += 1;
    let placed = placed_detail(&job.checked, place, amount, memory, Effort::All);
    Some(match placed.outcome {
        Outcome::Solved(field) => Message::Solved { place: number, field: Box::new(field) },
        Outcome::Failed(error) => Message::Failed { place: number, error },
        // All effort leaves nothing waiting.
        Outcome::Waiting => Message::Done,
    })
}

fn next_point(job: &mut Job, memory: &mut DetailMemory) -> Option<Message> {
    while let Some(&depth) = job.depths.get(job.next_point / EndWallTreatment::ALL.len()) {
        let treatment = job.next_point % EndWallTreatment::ALL.len();
        job.next_point += 1;
        let kind = EndWallTreatment::ALL[treatment];
        let point = wall_depth_point(&job.checked, depth, kind, memory);
        if let Some(point) = point {
            return Some(Message::CurvePoint { treatment, point });
        }
    }
    let first_time = !job.done;
    job.done = true;
    first_time.then_some(Message::Done)
}

#[cfg(test)]
mod tests {
    use super::Solver;
    use crate::{Message, YearAnswer, pack_choices, pack_design, pack_place};
    use inchwise_core::climate::varnholm_flats;
    use inchwise_core::design::{CheckedDesign, Design};
    use inchwise_core::detail::{DetailMemory, Effort};
    use inchwise_core::evaluate::evaluate_with;
    use inchwise_core::year::YearChoices;

    fn year_of(numbers: &[f64]) -> Option<(u32, YearAnswer)> {
        match Message::unpack(numbers)? {
            (request, Message::Year(numbers)) => Some((request, YearAnswer::unpack(&numbers)?)),
            _ => None,
        }
    }

    #[test]
    fn a_year_comes_at_once_and_again_when_the_fields_are_there() {
        let mut solver = Solver::default();
        let design = pack_design(&Design::default());
        let (choices, place) =
            (pack_choices(&YearChoices::default()), pack_place(&varnholm_flats()));
        solver.take(7, &design, &[]);
        solver.take_year(3, &design, &choices, &place);
        let first = solver.step().expect("a first answer");
        let (request, provisional) = year_of(&first).expect("the year comes first");
        assert_eq!(request, 3);
        assert!(provisional.is_waiting && provisional.days.len() == 365);
        assert_eq!(provisional.months.len(), 12);
        let mut last = None;
        while let Some(answer) = solver.step() {
            last = year_of(&answer).or(last);
        }
        let (_, settled) = last.expect("it comes again");
        assert!(!settled.is_waiting);
        assert!(settled.year.energy.heat() > provisional.year.energy.heat(), "with details");
        let by_days: f64 = settled.days.iter().map(|day| day.heat.value()).sum();
        let by_year = settled.year.energy.heat().value();
        assert!((by_days / by_year - 1.0).abs() < 1e-5, "{by_days} {by_year}");
        assert_eq!(YearAnswer::unpack(&settled.pack()), Some(settled.clone()));
        let load =
            evaluate_with(&CheckedDesign::default(), &mut DetailMemory::default(), Effort::Known);
        assert!(settled.heater.design_load > load.heat_loss.design_load);
    }

    #[test]
    fn a_year_that_cannot_be_is_not_run() {
        let mut solver = Solver::default();
        let design = pack_design(&Design::default());
        solver.take_year(1, &design, &[], &pack_place(&varnholm_flats()));
        assert_eq!(solver.step(), None);
        let mut cold = varnholm_flats();
        cold.elevation = inchwise_core::units::Length::new(f64::NAN);
        solver.take_year(1, &design, &pack_choices(&YearChoices::default()), &pack_place(&cold));
        assert_eq!(solver.step(), None);
    }
}
