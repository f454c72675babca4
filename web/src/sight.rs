//! What is looked at of the cold spots: asked of the worker, and kept as it answers.

use std::rc::Rc;
use std::time::Duration;

use inchwise_aside::{begins_pictures, pack_design, place_number, unpack_pictures};
use inchwise_core::conduction::FactorSpot;
use inchwise_core::design::CheckedDesign;
use inchwise_core::detail::{Detail, Picture, drawn_detail};
use inchwise_core::envelope::{Opening, ThermalBridge};
use inchwise_core::evaluate::Evaluation;
use inchwise_core::humidity::{ColdSpots, SpotPlace, UnknownReason};
use inchwise_core::units::TemperatureFactor;
use js_sys::{Float64Array, Object, Reflect};
use wasm_bindgen::prelude::JsValue;
use web_sys::Worker;

use crate::dom::Waiting;
use crate::reactive::{Watched, keep_up, untracked};
use crate::state::State;

/// What is to be seen at a place of a design.
#[derive(Debug)]
pub struct Seen {
    /// The place.
    pub place: ThermalBridge,
    /// Its detail as drawn.
    pub detail: Detail,
    /// The coldest of the room's surface, not yet refined there.
    pub coldest: FactorSpot,
    /// Pictures of its views.
    pub pictures: Vec<Picture>,
}

impl Seen {
    /// Whether it shows the place as it stands in a design.
    pub fn is_of(&self, checked: &CheckedDesign) -> bool {
        drawn_detail(checked, self.place) == Some(self.detail)
    }
}

/// A place with the temperature factor it is judged by and the ordinary one.
type Factors = (SpotPlace, [TemperatureFactor; 2]);

/// What one planner looks at.
#[derive(Clone, Copy)]
pub struct Sight {
    /// Whether the picture is on screen.
    pub is_open: Watched<bool>,
    /// The place that was chosen; the coldest where none was.
    pub chosen: Watched<Option<ThermalBridge>>,
    /// The coldest when all fields were solved last.
    coldest: Watched<Option<ThermalBridge>>,
    /// Which of a body's cuts.
    pub cut: Watched<usize>,
    /// What was seen last.
    pub seen: Watched<Option<Rc<Seen>>>,
    /// The factors known last, for what is being solved anew.
    last: Watched<Vec<Factors>>,
    /// The spots of the evaluation they were last reckoned for.
    kept: Watched<Option<(Rc<Evaluation>, Rc<Spots>)>>,
}

impl Default for Sight {
    fn default() -> Self {
        Self {
            is_open: Watched::new(false),
            chosen: Watched::new(None),
            coldest: Watched::new(Some(ThermalBridge::OpeningFrame(Opening::PersonnelDoor))),
            cut: Watched::new(0),
            seen: Watched::new(None),
            last: Watched::new(Vec::new()),
            kept: Watched::new(None),
        }
    }
}

/// Every cold spot of the present design.
pub struct Spots {
    /// In order. Those that are being solved anew stand where they stood before.
    pub list: ColdSpots,
    /// Those whose figures are of an earlier design.
    pub stale: Vec<SpotPlace>,
}

impl Spots {
    /// The spots of the present design; whoever asks is told when they change.
    pub fn of(state: State) -> Rc<Self> {
        let good = state.good();
        let kept = state.sight.kept.with_untracked(|kept| match kept {
            Some((evaluation, spots)) if Rc::ptr_eq(evaluation, &good) => Some(Rc::clone(spots)),
            _ => None,
        });
        kept.unwrap_or_else(|| {
            let spots = Rc::new(Self::of_evaluation(state, &good));
            let now = Some((good, Rc::clone(&spots)));
            state.sight.kept.update_untracked(|kept| *kept = now);
            spots
        })
    }

    fn of_evaluation(state: State, evaluation: &Evaluation) -> Self {
        let now = &evaluation.cold_spots;
        let known = |place| now.spots.iter().any(|spot| spot.place == place);
        let is_waiting = |place| {
            let waits = |reason| reason == UnknownReason::Waiting;
            now.unknown.iter().any(|spot| spot.place == place && waits(spot.reason))
        };
        let stale: Vec<Factors> = state
            .sight
            .last
            .update_untracked(|last| {
                last.retain(|(place, _)| !known(*place));
                let stale = last.iter().filter(|(place, _)| is_waiting(*place)).copied().collect();
                last.extend(now.spots.iter().map(|spot| (spot.place, spot.factors())));
                stale
            })
            .unwrap_or_default();
        let places: Vec<SpotPlace> = stale.iter().map(|(place, _)| *place).collect();
        let all = now.spots.iter().map(|spot| (spot.place, spot.factors())).chain(stale);
        let rest = now.unknown.iter().filter(|spot| !places.contains(&spot.place)).copied();
        let list = ColdSpots::from_factors(now.indoor, now.outdoor, all, rest.collect());
        Self { list, stale: places }
    }
}

/// The place whose picture shows a spot of the present design, if one does.
pub fn pictured(state: State, spot: SpotPlace) -> Option<ThermalBridge> {
    // What belongs to a door or window is coldest at its edge in the steel frame, and is seen there.
    let shows = |&place: &ThermalBridge| match place {
        ThermalBridge::OpeningFrame(opening) if SpotPlace::of_opening(opening) == spot => true,
        _ => SpotPlace::of(place) == spot,
    };
    let standing = &state.good().envelope.thermal_bridges;
    standing.iter().map(|(place, _)| *place).find(shows)
}

impl Sight {
    /// The place that is looked at: the chosen one if the design has it, else the coldest. Which
    /// that is wanders while fields are being solved: until all are, it is the one of before, and
    /// in the beginning the one that mostly comes out.
    pub fn place(self, state: State) -> Option<ThermalBridge> {
        let chosen = self.chosen.get();
        let stands = |place: &ThermalBridge| {
            state.good().envelope.thermal_bridges.iter().any(|(standing, _)| standing == place)
        };
        let coldest = || {
            let spots = Spots::of(state);
            let is_solved = !spots.list.is_waiting() && spots.stale.is_empty();
            if !is_solved && let Some(before) = self.coldest.get_untracked().filter(stands) {
                return Some(before);
            }
            let found = spots.list.spots.iter().find_map(|spot| pictured(state, spot.place));
            self.coldest.update_untracked(|coldest| *coldest = found);
            found
        };
        chosen.filter(stands).or_else(coldest)
    }

    /// What is seen of a place, whichever design it is of; whoever asks is told when it changes.
    pub fn seen_of(self, place: ThermalBridge) -> Option<Rc<Seen>> {
        self.seen.get().filter(|seen| seen.place == place)
    }

    /// Learns what the worker says of pictures.
    pub fn learn(self, answer: &[f64]) {
        let Some(seen) = unpack_pictures(answer) else { return };
        let drawn = seen.design.check().ok().and_then(|c| drawn_detail(&c, seen.place));
        if let Some(detail) = drawn {
            let (place, coldest, pictures) = (seen.place, seen.coldest, seen.pictures);
            self.seen.set(Some(Rc::new(Seen { place, detail, coldest, pictures })));
        }
    }
}

/// Whether an answer of the worker is one of pictures.
pub fn is_of_pictures(answer: &Float64Array) -> bool {
    answer.length() > 0 && begins_pictures(answer.get_index(0))
}

/// After a change the worker is asked about by the first part of the page, which is ahead of this
/// one; only where its picture has not come after so long is it asked from here.
const NOT_COME_AFTER: Duration = Duration::from_millis(110);

/// Tells the worker what is looked at for as long as the planner stands. Every design that it is
/// asked about otherwise it looks at by itself.
pub fn ask(state: State, worker: Worker) {
    let sight = state.sight;
    let waiting = Waiting::new();
    let worker = Rc::new(worker);
    let mut last = None;
    keep_up(Box::new(move || {
        let wanted = if sight.is_open.get() { sight.place(state) } else { None };
        let lacks = move || {
            wanted.is_some_and(|place| {
                let seen = sight.seen.get_untracked();
                seen.is_none_or(|seen| seen.place != place || !seen.is_of(&state.good().checked))
            })
        };
        let worker = Rc::clone(&worker);
        let say = move || {
            let design = state.chosen_untracked(pack_design);
            post(&worker, wanted.and_then(place_number), &design);
        };
        if wanted != last {
            last = wanted;
            say();
        } else if lacks() {
            waiting.after(
                NOT_COME_AFTER,
                Box::new(move || {
                    if untracked(lacks) {
                        say();
                    }
                }),
            );
        }
    }));
}

fn post(worker: &Worker, place: Option<usize>, design: &[f64]) {
    let message = Object::new();
    let entries: [(&str, JsValue); 2] = [
        ("place", place.map_or(JsValue::UNDEFINED, |number| JsValue::from(number as u32))),
        ("design", Float64Array::from(design).into()),
    ];
    for (key, value) in entries {
        // Setting a property of a fresh object cannot fail.
        let _ = Reflect::set(&message, &JsValue::from_str(key), &value);
    }
    if let Err(refused) = worker.post_message(&message) {
        web_sys::console::warn_1(&refused);
    }
}
