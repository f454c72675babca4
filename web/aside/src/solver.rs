//! The worker's side: what is asked, solved piece by piece.
//!
//! A piece is never longer than one field, so that a newer request waits for no longer than that.
//! The place that is looked at comes first: its pictures, then its figures.

use inchwise_core::conduction::ConductionError;
use inchwise_core::design::{CheckedDesign, EndWallTreatment};
use inchwise_core::detail::{
    DampField, Detail, DetailMemory, Effort, Outcome, Solving, drawn_detail, first_lacking,
    placed_detail,
};
use inchwise_core::envelope::{Amount, Envelope, Place};
use inchwise_core::room::Room;
use inchwise_core::tradeoff::{wall_depth_point, with_wall_depth};
use inchwise_core::units::Length;

use crate::message::{Message, PlacePictures};
use crate::pack::unpack_design;

/// Lines across the wider side of a picture: between two of them an isotherm runs straight.
const COLUMNS: usize = 80;

/// One design to be worked through.
struct Job {
    request: u32,
    checked: CheckedDesign,
    places: Vec<(Place, Amount)>,
    /// Numbers of places in the order they are solved.
    order: Vec<usize>,
    next_place: usize,
    /// The place whose pictures are still to be made.
    sight: Option<usize>,
    /// Next point of the curve, depth after depth and within it treatment after treatment.
    next_point: usize,
    depths: Vec<Length>,
    done: bool,
}

/// Solves what the page asks, one piece a step.
#[derive(Default)]
pub struct Solver {
    memory: DetailMemory,
    job: Option<Job>,
    /// The field of the last pictures: where the figures of its detail begin.
    seen: Option<DampField>,
    /// What is half solved.
    solving: Option<Solving>,
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
    /// metres, none for no curve, and the number of the place that is looked at. A design that does
    /// not pass its check is not worked on.
    pub fn take(&mut self, request: u32, design: &[f64], depths: &[f64], sight: Option<usize>) {
        self.job = unpack_design(design).and_then(|design| design.check().ok()).map(|checked| {
            let room = Room::of(&checked);
            let places = Envelope::of(&checked, &room.clear).places;
            let sight = sight.filter(|&number| number < places.len());
            let others = (0..places.len()).filter(|&number| Some(number) != sight);
            Job {
                request,
                checked,
                order: sight.into_iter().chain(others).collect(),
                places,
                next_place: 0,
                sight,
                next_point: 0,
                depths: depths.iter().map(|&depth| Length::new(depth)).collect(),
                done: false,
            }
        });
    }

    /// Works on for one piece and says what came of it, which may be nothing yet; `None` once all
    /// is done.
    pub fn step(&mut self) -> Option<Vec<f64>> {
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

    fn piece(&mut self, job: &mut Job) -> Piece {
        if let Some(number) = job.sight.take() {
            return self.look(job, number);
        }
        if let Some(&number) = job.order.get(job.next_place) {
            let (place, amount) = job.places[number];
            if let Some(detail) = first_lacking(&job.checked, place, &self.memory) {
                self.solve_on(detail);
                return Piece::Silent;
            }
            job.next_place += 1;
            let placed =
                placed_detail(&job.checked, place, amount, &mut self.memory, Effort::Known);
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
            let point = wall_depth_point(&job.checked, depth, kind, &mut self.memory);
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

    /// Pictures of a place.
    fn look(&mut self, job: &Job, number: usize) -> Piece {
        let (place, _) = job.places[number];
        let Some(detail) = drawn_detail(&job.checked, place) else { return Piece::Silent };
        match self.seen_anew(&detail) {
            Ok(seen) => {
                Piece::Said(Message::Pictures(Box::new(PlacePictures { place: number, ..seen })))
            }
            // Its figures fail for the same reason, and say so.
            Err(_) => Piece::Silent,
        }
    }

    fn seen_anew(&mut self, detail: &Detail) -> Result<PlacePictures, ConductionError> {
        let field = detail.damp_field()?;
        let (coldest, pictures) = (field.coldest()?, field.pictures(COLUMNS)?);
        self.seen = Some(field);
        Ok(PlacePictures { place: 0, coldest, pictures })
    }

    /// A section that a point of the curve lacks.
    fn lacking_section(
        &self,
        checked: &CheckedDesign,
        depth: Length,
        treatment: EndWallTreatment,
    ) -> Option<Detail> {
        let varied = with_wall_depth(checked.design(), depth, treatment).check().ok()?;
        let places = Envelope::of(&varied, &Room::of(&varied).clear).places;
        places
            .iter()
            .filter(|(place, _)| !place.takes_a_body())
            .find_map(|&(place, _)| first_lacking(&varied, place, &self.memory))
    }

    /// One field more of a detail; what was half solved of another is let go.
    fn solve_on(&mut self, detail: Detail) {
        let half = self.solving.take().filter(|solving| *solving.detail() == detail);
        let outcome = match half {
            Some(mut solving) => solving.step().map(|done| (solving, done)),
            None => self.begin(detail).map(|solving| (solving, None)),
        };
        match outcome {
            Ok((_, Some(field))) => self.memory.learn(detail, Ok(field)),
            Ok((solving, None)) => self.solving = Some(solving),
            Err(error) => self.memory.learn(detail, Err(error)),
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
    use inchwise_core::design::Design;
    use inchwise_core::evaluate::evaluate;

    fn said(solver: &mut Solver) -> Vec<Message> {
        let mut messages = Vec::new();
        while let Some(numbers) = solver.step() {
            if !numbers.is_empty() {
                messages.push(Message::unpack(&numbers).unwrap().1);
            }
        }
        messages
    }

    fn number_of(evaluation: &inchwise_core::evaluate::Evaluation, key: &str) -> usize {
        let places = &evaluation.envelope.places;
        places.iter().position(|(place, _)| place.key() == key).unwrap()
    }

    #[test]
    fn what_is_looked_at_comes_first_and_every_field_is_that_of_the_engine() {
        let checked = Design::default().check().unwrap();
        let evaluation = evaluate(&checked, &mut DetailMemory::default());
        let corner = number_of(&evaluation, "front_top_casting");
        let mut solver = Solver::default();
        solver.take(1, &pack_design(checked.design()), &[], Some(corner));
        let messages = said(&mut solver);
        let Message::Pictures(seen) = &messages[0] else { panic!("pictures come first") };
        assert_eq!((seen.place, seen.pictures.len()), (corner, 3));
        let order = messages.iter().filter_map(|message| match message {
            Message::Solved { place, field } => Some((*place, field)),
            _ => None,
        });
        let order: Vec<_> = order.collect();
        assert_eq!(order[0].0, corner, "then the figures of the same place");
        assert_eq!(order.len(), evaluation.details.len());
        for (place, field) in order {
            assert_eq!(Some(&**field), evaluation.details[place].field());
        }
        assert_eq!(messages.last(), Some(&Message::Done));
    }

    #[test]
    fn the_newest_design_wins_between_two_fields() {
        let checked = Design::default().check().unwrap();
        let evaluation = evaluate(&checked, &mut DetailMemory::default());
        let corner = number_of(&evaluation, "front_top_casting");
        let mut solver = Solver::default();
        let design = pack_design(checked.design());
        solver.take(1, &design, &[], None);
        for _ in 0..5 {
            solver.step();
        }
        solver.take(2, &design, &[], Some(corner));
        let (request, message) = Message::unpack(&solver.step().unwrap()).unwrap();
        assert_eq!(request, 2);
        assert!(matches!(message, Message::Pictures(_)));
    }
}
