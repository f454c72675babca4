//! Which designs the worker was asked about, and what it answered. Both parts of the page keep
//! one, as both know the fields.

use std::rc::Rc;

use inchwise_aside::{Message, unpack_design};
use inchwise_core::conduction::ConductionError;
use inchwise_core::design::{CheckedDesign, EndWallTreatment};
use inchwise_core::detail::{DetailField, Effort, placed_detail};
use inchwise_core::envelope::{Amount, Envelope, ThermalBridge};
use inchwise_core::room::Room;
use inchwise_core::tradeoff::WallDepthPoint;
use js_sys::{Array, Float64Array};
use wasm_bindgen::JsCast;
use wasm_bindgen::prelude::Closure;
use web_sys::{MessageEvent, Worker};

use crate::drawing::geometry::swept_away;
use crate::measure::UnitSystem;
use crate::reactive::{Watched, at_end};
use crate::sight::is_of_pictures;
use crate::state::State;

/// Answers to older requests than this many are let go.
const REMEMBERED: usize = 8;

/// The points of the curve over wall depth, treatment by treatment.
pub type CurvePoints = Vec<(EndWallTreatment, Vec<WallDepthPoint>)>;

/// What was asked under one number.
pub struct Request {
    /// The number.
    pub number: u32,
    /// The design, packed.
    pub design: Vec<f64>,
    /// The units of the curve's depths that were asked for with it, if they were.
    pub curve: Option<UnitSystem>,
}

impl Request {
    /// A request as the other part of the page tells it: with whether its curve was asked for in
    /// imperial depths, if one was.
    pub const fn new(number: u32, design: Vec<f64>, imperial_curve: Option<bool>) -> Self {
        let curve = match imperial_curve {
            Some(true) => Some(UnitSystem::Imperial),
            Some(false) => Some(UnitSystem::Metric),
            None => None,
        };
        Self { number, design, curve }
    }

    /// Whether its curve was asked for in imperial depths, if one was.
    pub fn imperial_curve(&self) -> Option<bool> {
        self.curve.map(|units| units == UnitSystem::Imperial)
    }
}

/// A request and what was made of it.
struct Entry {
    request: Request,
    /// Made when the first answer comes, for most requests of a drag are overtaken.
    opened: Option<Opened>,
    /// The points so far of its curve.
    points: CurvePoints,
}

struct Opened {
    checked: CheckedDesign,
    places: Vec<(ThermalBridge, Amount)>,
}

impl Opened {
    fn of(design: &[f64]) -> Option<Self> {
        let checked = unpack_design(design)?.check().ok()?;
        let places = Envelope::of(&checked, &Room::of(&checked).clear).thermal_bridges;
        Some(Self { checked, places })
    }
}

/// The requests of one planner that may still be answered.
#[derive(Clone, Copy)]
pub struct Ledger {
    state: State,
    entries: Watched<Vec<Entry>>,
}

impl Ledger {
    /// Nothing was asked yet.
    pub fn new(state: State) -> Self {
        Self { state, entries: Watched::new(Vec::new()) }
    }

    /// The number of the next request.
    pub fn next_number(self) -> u32 {
        let last = self.entries.with_untracked(|entries| entries.last().map(|e| e.request.number));
        last.map_or(1, |last| last.wrapping_add(1))
    }

    /// Notes a request.
    pub fn note(self, request: Request) {
        self.entries.update_untracked(|entries| {
            if entries.len() == REMEMBERED {
                drop(entries.remove(0));
            }
            entries.push(Entry { request, opened: None, points: Vec::new() });
        });
    }

    /// Hears what the worker says for as long as the planner stands. What it says of pictures goes
    /// to `see`.
    pub fn listen(self, worker: Worker, see: fn(State, &Float64Array)) {
        let on_message = Closure::<dyn FnMut(MessageEvent)>::new(move |event: MessageEvent| {
            let answers = event.data().dyn_into::<Array>().unwrap_or_default();
            let answers = answers.iter().filter_map(|answer| answer.dyn_into().ok());
            let (pictures, others): (Vec<_>, Vec<_>) = answers.partition(is_of_pictures);
            self.hear(others.iter().map(Float64Array::to_vec));
            for picture in &pictures {
                see(self.state, picture);
            }
        });
        worker.set_onmessage(Some(on_message.as_ref().unchecked_ref()));
        at_end(Box::new(move || {
            worker.set_onmessage(None);
            drop(on_message);
        }));
    }

    /// Learns what was said; the page is told once for all of it.
    fn hear(self, answers: impl Iterator<Item = Vec<f64>>) {
        let mut learned = false;
        let mut curve = None;
        let mut year = None;
        for (number, message) in answers.filter_map(|answer| Message::unpack(&answer)) {
            let message = match message {
                Message::Year(numbers) => {
                    year = Some((number, Rc::new(numbers)));
                    continue;
                }
                other => other,
            };
            self.entries.update_untracked(|entries| {
                let newest = entries.last().map(|last| last.request.number);
                let found = entries.iter_mut().find(|entry| entry.request.number == number);
                let Some(entry) = found else { return };
                match message {
                    Message::Solved { place, field } => {
                        learned |= self.learn(entry, place, Ok(*field));
                    }
                    Message::Failed { place, error } => {
                        learned |= self.learn(entry, place, Err(error));
                    }
                    Message::CurvePoint { treatment, point } => {
                        push_point(&mut entry.points, EndWallTreatment::ALL[treatment], point);
                    }
                    Message::Done if newest == Some(number) => {
                        curve = entry.request.curve.and_then(|units| {
                            let swept = swept_away(&unpack_design(&entry.request.design)?);
                            Some(((swept, units), std::mem::take(&mut entry.points)))
                        });
                    }
                    Message::Done | Message::Year(_) => {}
                }
            });
        }
        if learned {
            self.state.has_learned();
        }
        if curve.is_some() {
            self.state.curve.set(curve);
        }
        if year.is_some() {
            self.state.year.set(year);
        }
    }

    fn learn(
        self,
        entry: &mut Entry,
        place: usize,
        outcome: Result<DetailField, ConductionError>,
    ) -> bool {
        if entry.opened.is_none() {
            entry.opened = Opened::of(&entry.request.design);
        }
        let Some(Opened { checked, places }) = &entry.opened else { return false };
        let Some(&(place, amount)) = places.get(place) else { return false };
        let learned = self.state.cache.update_untracked(|cache| {
            let placed = placed_detail(checked, place, amount, cache, Effort::Known);
            let Some(detail) = placed.detail else { return false };
            if cache.get(&detail).is_some() {
                return false;
            }
            cache.insert(detail, outcome);
            true
        });
        learned == Some(true)
    }
}

fn push_point(points: &mut CurvePoints, treatment: EndWallTreatment, point: WallDepthPoint) {
    match points.iter_mut().find(|(known, _)| *known == treatment) {
        Some((_, points)) => points.push(point),
        None => points.push((treatment, vec![point])),
    }
}
