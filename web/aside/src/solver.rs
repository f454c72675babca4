//! The worker's side: what is asked, solved piece by piece.
//!
//! A piece is never longer than one field, so that a newer request waits for no longer than that.
//! A year comes first, which is far shorter than a field: it is run with the fields there are, and
//! again once all are solved. Then the place that is looked at: its pictures, then its figures.

use inchwise_core::conduction::ConductionError;
use inchwise_core::design::{CheckedDesign, EndWallTreatment};
use inchwise_core::detail::{
    DampField, Detail, Effort, FieldCache, Outcome, Solving, drawn_detail, first_lacking,
    placed_detail,
};
use inchwise_core::envelope::{Amount, Envelope, ThermalBridge};
use inchwise_core::room::Room;
use inchwise_core::tradeoff::{wall_depth_point, with_wall_depth};
use inchwise_core::units::Length;

use crate::message::Message;
use crate::pack::unpack_design;
use crate::pack_picture::{PlacePictures, pack_pictures, place_of_number};
use crate::year_job::{YearJob, Years};

/// Lines across the wider side of a picture: between two of them an isotherm runs straight.
const COLUMNS: usize = 80;

/// The number of a request of which every answer is known: only pictures may still be wanted.
pub const ONLY_SEEN: u32 = 0;

/// One design to be worked through.
struct Job {
    request: u32,
    checked: CheckedDesign,
    places: Vec<(ThermalBridge, Amount)>,
    /// Numbers of places in the order they are solved.
    order: Vec<usize>,
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
    cache: FieldCache,
    job: Option<Job>,
    /// The place that is looked at, whatever design comes.
    sight: Option<ThermalBridge>,
    /// The design whose pictures of it are still to be made.
    look: Option<CheckedDesign>,
    /// What the last pictures were of.
    shown: Option<Detail>,
    /// The field of the last pictures: where the figures of its detail begin.
    seen: Option<DampField>,
    /// What is half solved.
    solving: Option<Solving>,
    /// The year that was asked for last, and how far it is.
    year: Option<(YearJob, Progress)>,
    years: Years,
}

/// What came of one piece of work.
enum Piece {
    Said(Message),
    /// A field more is solved, and nothing is to be told yet.
    Silent,
    Idle,
}

impl Solver {
    /// Takes a design in place of whatever was being worked on, with the wall depths of the curve in
    /// metres, none for no curve. A design that does not pass its check is not worked on, and of one
    /// under the number [`ONLY_SEEN`] only pictures are made.
    pub fn take(&mut self, request: u32, design: &[f64], depths: &[f64]) {
        self.job = unpack_design(design).and_then(|design| design.check().ok()).map(|checked| {
            let room = Room::of(&checked);
            let places = Envelope::of(&checked, &room.clear).thermal_bridges;
            self.look = Some(checked.clone());
            let is_known = request == ONLY_SEEN;
            let depths = if is_known { &[] } else { depths };
            Job {
                request,
                checked,
                order: if is_known { Vec::new() } else { self.order(&places) },
                places,
                next_place: 0,
                next_point: 0,
                depths: depths.iter().map(|&depth| Length::new(depth)).collect(),
                done: is_known,
            }
        });
    }

    /// Looks at a place, or at none, by its number: pictures of it are made of this design, and of
    /// every one that is taken from now on, unless they are those that were made last.
    pub fn look(&mut self, place: Option<usize>, design: &[f64]) {
        self.sight = place.and_then(place_of_number);
        self.look = unpack_design(design).and_then(|design| design.check().ok());
        if let Some(mut job) = self.job.take_if(|job| job.request != ONLY_SEEN) {
            job.order = self.order(&job.places);
            job.next_place = 0;
            self.job = Some(job);
        }
    }

    /// Takes a year in place of the one before: a design, what heats it, and measured hours where there are some, each
    /// packed. One of which anything does not pass its check is not run.
    pub fn take_year(&mut self, request: u32, design: &[f64], choices: &[f64], hours: &[f64]) {
        let year = YearJob::of(request, design, choices, hours);
        self.year = year.map(|year| (year, Progress::Fresh));
    }

    /// The numbers of places in the order they are solved.
    fn order(&self, places: &[(ThermalBridge, Amount)]) -> Vec<usize> {
        let is_looked_at = |&number: &usize| Some(places[number].0) == self.sight;
        let all = 0..places.len();
        let (first, others): (Vec<_>, Vec<_>) = all.partition(is_looked_at);
        first.into_iter().chain(others).collect()
    }

    /// Works on for one piece and says what came of it, which may be nothing yet; `None` once all
    /// is done.
    pub fn step(&mut self) -> Option<Vec<f64>> {
        if let Some(year) = self.run_year(Progress::Fresh) {
            return Some(year);
        }
        if let Some(pictures) = self.pictures() {
            return Some(pack_pictures(&pictures));
        }
        let fields_are_solved =
            self.job.as_ref().is_none_or(|job| job.next_place == job.order.len());
        if fields_are_solved && let Some(year) = self.run_year(Progress::Provisional) {
            return Some(year);
        }
        let mut job = self.job.take()?;
        let piece = self.piece(&mut job);
        let request = job.request;
        self.job = Some(job);
        match piece {
            Piece::Said(message) => Some(message.pack(request)),
            Piece::Silent => Some(Vec::new()),
            Piece::Idle => None,
        }
    }

    /// Runs the year that was asked for, if it is so far.
    fn run_year(&mut self, from: Progress) -> Option<Vec<f64>> {
        let (year, progress) = self.year.as_mut().filter(|(_, progress)| *progress == from)?;
        // Fields of another design than the one worked on would take long.
        let same = self.job.as_ref().is_none_or(|job| job.checked == year.checked);
        let effort =
            if from == Progress::Provisional && same { Effort::All } else { Effort::Known };
        let answer = self.years.run(year, &mut self.cache, effort);
        let waits = answer.as_ref().is_some_and(|answer| answer.is_waiting);
        *progress = if waits && from == Progress::Fresh {
            Progress::Provisional
        } else {
            Progress::Settled
        };
        let numbers = answer.map_or_else(Vec::new, |answer| answer.pack());
        Some(Message::Year(numbers).pack(year.request))
    }

    fn piece(&mut self, job: &mut Job) -> Piece {
        if let Some(&number) = job.order.get(job.next_place) {
            let (place, amount) = job.places[number];
            if let Some(detail) = first_lacking(&job.checked, place, &self.cache) {
                self.solve_on(detail);
                return Piece::Silent;
            }
            job.next_place += 1;
            let placed = placed_detail(&job.checked, place, amount, &mut self.cache, Effort::Known);
            return match placed.outcome {
                Outcome::Solved(field) => {
                    Piece::Said(Message::Solved { place: number, field: Box::new(field) })
                }
                Outcome::Failed(error) => Piece::Said(Message::Failed { place: number, error }),
                Outcome::Waiting => Piece::Silent,
            };
        }
        while let Some(&depth) = job.depths.get(job.next_point / EndWallTreatment::ALL.len()) {
            let treatment = job.next_point % EndWallTreatment::ALL.len();
            let kind = EndWallTreatment::ALL[treatment];
            if let Some(detail) = self.lacking_section(&job.checked, depth, kind) {
                self.solve_on(detail);
                return Piece::Silent;
            }
            job.next_point += 1;
            let point = wall_depth_point(&job.checked, depth, kind, &mut self.cache);
            if let Some(point) = point {
                return Piece::Said(Message::CurvePoint { treatment, point });
            }
        }
        if job.done {
            return Piece::Idle;
        }
        job.done = true;
        Piece::Said(Message::Done)
    }

    /// Pictures of the place that is looked at, if they are still to be made.
    fn pictures(&mut self) -> Option<PlacePictures> {
        let checked = self.look.take()?;
        let place = self.sight?;
        let detail = drawn_detail(&checked, place)?;
        if self.shown == Some(detail) {
            return None;
        }
        // Where this fails, the figures of the place fail for the same reason, and say so.
        let field = detail.damp_field().ok()?;
        let (coldest, pictures) = (field.coldest().ok()?, field.pictures(COLUMNS).ok()?);
        self.seen = Some(field);
        self.shown = Some(detail);
        Some(PlacePictures { design: checked.design().clone(), place, coldest, pictures })
    }

    /// A section that a point of the curve lacks.
    fn lacking_section(
        &self,
        checked: &CheckedDesign,
        depth: Length,
        treatment: EndWallTreatment,
    ) -> Option<Detail> {
        let varied = with_wall_depth(checked.design(), depth, treatment).check().ok()?;
        let places = Envelope::of(&varied, &Room::of(&varied).clear).thermal_bridges;
        places
            .iter()
            .filter(|(place, _)| !place.takes_a_body())
            .find_map(|&(place, _)| first_lacking(&varied, place, &self.cache))
    }

    /// One field more of a detail; what was half solved of another is let go.
    fn solve_on(&mut self, detail: Detail) {
        let half = self.solving.take().filter(|solving| *solving.detail() == detail);
        let outcome = match half {
            Some(mut solving) => solving.step().map(|done| (solving, done)),
            None => self.begin(detail).map(|solving| (solving, None)),
        };
        match outcome {
            Ok((_, Some(field))) => self.cache.insert(detail, Ok(field)),
            Ok((solving, None)) => self.solving = Some(solving),
            Err(error) => self.cache.insert(detail, Err(error)),
        }
    }

    fn begin(&mut self, detail: Detail) -> Result<Solving, ConductionError> {
        let seen = self.seen.take_if(|seen| *seen.detail() == detail.drawn());
        let field = match seen {
            Some(field) => field,
            None => detail.damp_field()?,
        };
        Solving::new(detail, field)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::pack::pack_design;
    use crate::pack_picture::{begins_pictures, place_number, unpack_pictures};
    use inchwise_core::design::Design;
    use inchwise_core::envelope::End;
    use inchwise_core::evaluate::evaluate;

    fn said(solver: &mut Solver) -> (Vec<PlacePictures>, Vec<Message>) {
        let (mut pictures, mut messages) = (Vec::new(), Vec::new());
        while let Some(numbers) = solver.step() {
            match numbers.first() {
                Some(&first) if begins_pictures(first) => {
                    assert!(messages.is_empty(), "pictures come first");
                    pictures.push(unpack_pictures(&numbers).unwrap());
                }
                Some(_) => messages.push(Message::unpack(&numbers).unwrap().1),
                None => {}
            }
        }
        (pictures, messages)
    }

    const CASTING: ThermalBridge = ThermalBridge::TopCasting(End::Front);

    #[test]
    fn what_is_looked_at_comes_first_and_every_field_is_that_of_the_engine() {
        let checked = Design::default().check().unwrap();
        let evaluation = evaluate(&checked, &mut FieldCache::default());
        let mut solver = Solver::default();
        let design = pack_design(checked.design());
        solver.look(place_number(CASTING), &design);
        solver.take(1, &design, &[]);
        let (pictures, messages) = said(&mut solver);
        let [seen] = pictures.as_slice() else { panic!("one design, pictures once") };
        assert_eq!((seen.place, seen.pictures.len()), (CASTING, 3));
        let order = messages.iter().filter_map(|message| match message {
            Message::Solved { place, field } => Some((*place, field)),
            _ => None,
        });
        let order: Vec<_> = order.collect();
        let first = evaluation.envelope.thermal_bridges[order[0].0].0;
        assert_eq!(first, CASTING, "then the figures of the same place");
        assert_eq!(order.len(), evaluation.details.len());
        for (place, field) in order {
            assert_eq!(Some(&**field), evaluation.details[place].field());
        }
        assert_eq!(messages.last(), Some(&Message::Done));
    }

    #[test]
    fn of_a_design_that_is_known_only_pictures_are_made() {
        let mut solver = Solver::default();
        let design = pack_design(&Design::default());
        solver.take(ONLY_SEEN, &design, &[0.05]);
        assert_eq!(solver.step(), None, "nobody looks");
        solver.look(place_number(CASTING), &design);
        solver.take(ONLY_SEEN, &design, &[]);
        let (pictures, messages) = said(&mut solver);
        assert_eq!((pictures.len(), messages.len()), (1, 0));
    }

    #[test]
    fn the_newest_wish_wins_between_two_fields() {
        let mut solver = Solver::default();
        let design = pack_design(&Design::default());
        solver.take(1, &design, &[]);
        for _ in 0..5 {
            solver.step();
        }
        solver.look(place_number(CASTING), &design);
        assert!(begins_pictures(solver.step().unwrap()[0]));
        let deeper = Design { casting_cover: Length::mm(60.0), ..Design::default() };
        solver.take(2, &pack_design(&deeper), &[]);
        let seen = unpack_pictures(&solver.step().unwrap()).unwrap();
        assert_eq!(seen.design, deeper, "every design that comes is looked at");
        solver.look(None, &design);
        let (pictures, messages) = said(&mut solver);
        assert!(pictures.is_empty(), "nobody looks");
        assert_eq!(messages.last(), Some(&Message::Done));
    }
}
