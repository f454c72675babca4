//! The place whose temperatures are looked at: asked of the worker, and kept as it answers.

use std::rc::Rc;

use inchwise_aside::{begins_pictures, pack_design, place_number, unpack_pictures};
use inchwise_core::conduction::FactorSpot;
use inchwise_core::design::CheckedDesign;
use inchwise_core::detail::{Detail, Picture, drawn_detail};
use inchwise_core::envelope::Place;
use js_sys::{Float64Array, Object, Reflect};
use wasm_bindgen::prelude::JsValue;
use web_sys::Worker;

use crate::reactive::{Watched, keep_up};
use crate::state::State;

/// What is to be seen at a place of a design.
#[derive(Debug)]
pub struct Seen {
    /// The place.
    pub place: Place,
    /// Its detail as drawn.
    pub detail: Detail,
    /// The coldest of the room's surface, not yet refined there.
    pub coldest: FactorSpot,
    /// Pictures of its views.
    pub pictures: Vec<Picture>,
}

/// What one planner looks at.
#[derive(Clone, Copy)]
pub struct Sight {
    /// The place that is looked at; none while no picture is on screen.
    pub wanted: Watched<Option<Place>>,
    /// What was seen last.
    pub seen: Watched<Option<Rc<Seen>>>,
}

impl Default for Sight {
    fn default() -> Self {
        Self { wanted: Watched::new(None), seen: Watched::new(None) }
    }
}

impl Sight {
    /// What is seen of a place, whichever design it is of.
    pub fn seen_of(self, place: Place) -> Option<Rc<Seen>> {
        self.seen.get().filter(|seen| seen.place == place)
    }

    /// Learns what the worker says of pictures; anything else it says is not for here.
    pub fn learn(self, answer: &[f64]) {
        let Some(seen) = unpack_pictures(answer) else { return };
        let detail = seen.design.check().ok().and_then(|c| drawn_detail(&c, seen.place));
        let (Some(detail), true) = (detail, self.wanted.get_untracked() == Some(seen.place)) else {
            return;
        };
        let (place, coldest, pictures) = (seen.place, seen.coldest, seen.pictures);
        self.seen.set(Some(Rc::new(Seen { place, detail, coldest, pictures })));
    }
}

/// Whether an answer of the worker is one of pictures.
pub fn is_of_pictures(answer: &Float64Array) -> bool {
    answer.length() > 0 && begins_pictures(answer.get_index(0))
}

impl Seen {
    /// Whether it shows the place as it stands in a design.
    pub fn is_of(&self, checked: &CheckedDesign) -> bool {
        drawn_detail(checked, self.place) == Some(self.detail)
    }
}

/// Tells the worker what is looked at for as long as the planner stands. Every design that it is
/// asked about otherwise it looks at by itself.
pub fn ask(state: State, worker: Worker) {
    let mut last = None;
    keep_up(Box::new(move || {
        let wanted = state.sight.wanted.get();
        let checked = state.good().checked.clone();
        let lacks = wanted.is_some_and(|place| {
            let seen = state.sight.seen.get_untracked();
            seen.is_none_or(|seen| seen.place != place || !seen.is_of(&checked))
        });
        if lacks || wanted != last {
            post(&worker, wanted, &checked);
            last = wanted;
        }
    }));
}

fn post(worker: &Worker, place: Option<Place>, checked: &CheckedDesign) {
    let message = Object::new();
    let number = place.and_then(place_number);
    let entries: [(&str, JsValue); 2] = [
        ("place", number.map_or(JsValue::UNDEFINED, |number| JsValue::from(number as u32))),
        ("design", Float64Array::from(&*pack_design(checked.design())).into()),
    ];
    for (key, value) in entries {
        // Setting a property of a fresh object cannot fail.
        let _ = Reflect::set(&message, &JsValue::from_str(key), &value);
    }
    if let Err(refused) = worker.post_message(&message) {
        web_sys::console::warn_1(&refused);
    }
}
