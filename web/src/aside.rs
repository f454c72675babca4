//! Asks the worker for the fields that the present design lacks, and learns what it says.

use inchwise_aside::{Message, pack_design};
use inchwise_core::conduction::ConductionError;
use inchwise_core::design::{CheckedDesign, EndWallTreatment};
use inchwise_core::detail::{DetailField, Effort, placed_detail};
use inchwise_core::envelope::{Amount, Envelope, Place};
use inchwise_core::room::Room;
use inchwise_core::tradeoff::WallDepthPoint;
use js_sys::{Array, Float64Array, Object, Reflect};
use wasm_bindgen::JsCast;
use wasm_bindgen::prelude::{Closure, JsValue};
use web_sys::{MessageEvent, Worker};

use crate::drawing::geometry::depths;
use crate::reactive::{Watched, at_end, keep_up, untracked};
use crate::state::{Outcome, State};

/// Answers to older requests than this many are let go.
const REMEMBERED: usize = 8;

/// The points of the curve over wall depth, treatment by treatment.
pub type CurvePoints = Vec<(EndWallTreatment, Vec<WallDepthPoint>)>;

/// What was asked under one number.
struct Request {
    number: u32,
    checked: CheckedDesign,
    places: Vec<(Place, Amount)>,
    /// The points so far of the curve that was asked with it.
    points: CurvePoints,
    with_curve: bool,
}

/// The worker and what hears it.
struct Hand {
    worker: Worker,
    _on_message: Closure<dyn FnMut(MessageEvent)>,
}

/// The work aside of one planner.
#[derive(Clone, Copy)]
pub struct Aside {
    state: State,
    hand: Watched<Option<Hand>>,
    requests: Watched<Vec<Request>>,
}

impl Aside {
    /// Sets a worker to work for as long as the planner stands.
    pub fn start(state: State, worker: Worker) {
        let aside = Self { state, hand: Watched::new(None), requests: Watched::new(Vec::new()) };
        let on_message = Closure::<dyn FnMut(MessageEvent)>::new(move |event: MessageEvent| {
            let answers = event.data().dyn_into::<Array>().unwrap_or_default();
            let answers = answers.iter().filter_map(|answer| answer.dyn_into().ok());
            aside.hear(answers.map(|answer: Float64Array| answer.to_vec()));
        });
        worker.set_onmessage(Some(on_message.as_ref().unchecked_ref()));
        aside.hand.set(Some(Hand { worker, _on_message: on_message }));
        keep_up(Box::new(move || aside.ask()));
        at_end(Box::new(move || aside.stop()));
    }

    /// Asks for the present design, unless nothing of it is lacking.
    fn ask(self) {
        let lawful = self.state.chosen(|design| design.check().ok());
        let key = self.state.curve_key();
        let Some(checked) = lawful else { return };
        let with_curve = self
            .state
            .curve
            .with_untracked(|curve| curve.as_ref().is_none_or(|(known, _)| *known != key));
        let is_lacking = untracked(|| self.state.look(Outcome::is_refining));
        if !is_lacking && !with_curve {
            return;
        }
        let sweep: Vec<f64> = if with_curve {
            depths(checked.design(), key.1).iter().map(|d| d.value()).collect()
        } else {
            Vec::new()
        };
        let places = Envelope::of(&checked, &Room::of(&checked).clear).places;
        let design = pack_design(checked.design());
        let number = self
            .requests
            .update_untracked(|requests| {
                let number = requests.last().map_or(1, |last| last.number.wrapping_add(1));
                if requests.len() == REMEMBERED {
                    drop(requests.remove(0));
                }
                let points = Vec::new();
                requests.push(Request { number, checked, places, points, with_curve });
                number
            })
            .unwrap_or_default();
        self.hand.with_untracked(|hand| {
            if let Some(hand) = hand {
                post(&hand.worker, number, &design, &sweep);
            }
        });
    }

    /// Learns what was said; the page is told once for all of it.
    fn hear(self, answers: impl Iterator<Item = Vec<f64>>) {
        let mut learned = false;
        let mut curve = None;
        for (number, message) in answers.filter_map(|answer| Message::unpack(&answer)) {
            self.requests.update_untracked(|requests| {
                let newest = requests.last().map(|last| last.number);
                let Some(request) = requests.iter_mut().find(|one| one.number == number) else {
                    return;
                };
                match message {
                    Message::Solved { place, field } => {
                        learned |= self.learn(request, place, Ok(*field));
                    }
                    Message::Failed { place, error } => {
                        learned |= self.learn(request, place, Err(error));
                    }
                    Message::CurvePoint { treatment, point } => {
                        push_point(&mut request.points, EndWallTreatment::ALL[treatment], point);
                    }
                    Message::Done if request.with_curve && newest == Some(number) => {
                        curve = Some(std::mem::take(&mut request.points));
                    }
                    Message::Done => {}
                }
            });
        }
        if learned {
            self.state.has_learned();
        }
        if let Some(points) = curve {
            let key = untracked(|| self.state.curve_key());
            self.state.curve.set(Some((key, points)));
        }
    }

    fn learn(
        self,
        request: &Request,
        place: usize,
        outcome: Result<DetailField, ConductionError>,
    ) -> bool {
        let Some(&(place, amount)) = request.places.get(place) else { return false };
        self.state
            .memory
            .update_untracked(|memory| {
                let checked = &request.checked;
                let placed = placed_detail(checked, place, amount, memory, Effort::Known);
                let Some(detail) = placed.detail else { return false };
                if memory.known(&detail).is_some() {
                    return false;
                }
                memory.learn(detail, outcome);
                true
            })
            .unwrap_or(false)
    }

    fn stop(self) {
        if let Some(Some(hand)) = self.hand.update_untracked(Option::take) {
            hand.worker.set_onmessage(None);
        }
    }
}

fn push_point(points: &mut CurvePoints, treatment: EndWallTreatment, point: WallDepthPoint) {
    match points.iter_mut().find(|(known, _)| *known == treatment) {
        Some((_, points)) => points.push(point),
        None => points.push((treatment, vec![point])),
    }
}

fn post(worker: &Worker, request: u32, design: &[f64], depths: &[f64]) {
    let message = Object::new();
    let entries: [(&str, JsValue); 3] = [
        ("request", JsValue::from(request)),
        ("design", Float64Array::from(design).into()),
        ("depths", Float64Array::from(depths).into()),
    ];
    for (key, value) in entries {
        // Setting a property of a fresh object cannot fail.
        let _ = Reflect::set(&message, &JsValue::from_str(key), &value);
    }
    if let Err(refused) = worker.post_message(&message) {
        web_sys::console::warn_1(&refused);
    }
}
