//! The worker's side: what is asked, solved piece by piece.

use inchwise_core::design::{CheckedDesign, EndWallTreatment};
use inchwise_core::detail::{DetailMemory, Effort, Outcome, placed_detail};
use inchwise_core::envelope::{Amount, Envelope, Place};
use inchwise_core::room::Room;
use inchwise_core::tradeoff::wall_depth_point;
use inchwise_core::units::Length;

use crate::message::Message;
use crate::pack::unpack_design;

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

/// Solves what the page asks, one piece a step.
#[derive(Default)]
pub struct Solver {
    memory: DetailMemory,
    job: Option<Job>,
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

    /// Works on for one piece and says what came of it; nothing once all is done.
    pub fn step(&mut self) -> Option<Vec<f64>> {
        let job = self.job.as_mut()?;
        let message = next_message(job, &mut self.memory)?;
        Some(message.pack(job.request))
    }
}

fn next_message(job: &mut Job, memory: &mut DetailMemory) -> Option<Message> {
    if let Some(&(place, amount)) = job.places.get(job.next_place) {
        let number = job.next_place;
        job.next_place += 1;
        let placed = placed_detail(&job.checked, place, amount, memory, Effort::All);
        return Some(match placed.outcome {
            Outcome::Solved(field) => Message::Solved { place: number, field: Box::new(field) },
            Outcome::Failed(error) => Message::Failed { place: number, error },
            // All effort leaves nothing waiting.
            Outcome::Waiting => Message::Done,
        });
    }
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
