//! What is chosen about the year, and what the worker made of it. Only the further part of the
//! page knows of years.

use std::rc::Rc;

use inchwise_aside::{YearAnswer, pack_choices, pack_design, pack_place};
use inchwise_core::climate::{ClimateError, Place, varnholm_flats};
use inchwise_core::units::{Temperature, TemperatureDifference};
use inchwise_core::year::{HeaterKind, PriceDate, YearChoices, YearError, YearField};
use js_sys::{Float64Array, Object, Reflect};
use wasm_bindgen::JsValue;
use web_sys::Worker;

use crate::measure::plain_number;
use crate::reactive::{Watched, keep_up};
use crate::state::State;

/// Where a place's figures come from.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum PlaceKind {
    /// The invented default.
    Invented,
    /// The table of places: estimates with a standard error of monthly temperatures.
    Table(TemperatureDifference),
}

/// The place that is chosen.
#[derive(Clone, Debug, PartialEq)]
pub struct ChosenPlace {
    /// Its name; nothing for the invented one, which every language names itself.
    pub name: String,
    /// Where its figures come from.
    pub kind: PlaceKind,
    /// Whether a figure was changed by hand.
    pub is_changed: bool,
    /// Its figures.
    pub place: Place,
}

impl Default for ChosenPlace {
    fn default() -> Self {
        Self {
            name: String::new(),
            kind: PlaceKind::Invented,
            is_changed: false,
            place: varnholm_flats(),
        }
    }
}

/// A text that is no value, kept as it was typed.
#[derive(Clone, Debug, PartialEq)]
pub struct Typed {
    /// Where: the key of its box.
    pub key: String,
    /// What stands there.
    pub text: String,
}

/// An answer with the numbers it was read from.
type ReadAnswer = (Rc<Vec<f64>>, Rc<YearAnswer>);

/// The year of one planner.
#[derive(Clone, Copy)]
pub struct YearState {
    /// The design and all else.
    pub state: State,
    /// The choices as given, lawful or not.
    pub choices: Watched<YearChoices>,
    /// The place.
    pub place: Watched<ChosenPlace>,
    /// Typed texts that are no values.
    pub typed: Watched<Vec<Typed>>,
    /// The number of the last year asked for, and what it was.
    asked: Watched<(u32, [Vec<f64>; 3])>,
    /// The last answer with the numbers it was read from.
    read: Watched<Option<ReadAnswer>>,
    worker: Watched<Worker>,
}

impl YearState {
    /// A year that starts from the host's attribute, if it has one, and asks the worker from now
    /// on whenever something changes.
    pub fn start(state: State, worker: Worker, attribute: Option<&str>) -> Self {
        let year = Self {
            state,
            choices: Watched::new(choices_of(attribute.unwrap_or_default())),
            place: Watched::new(ChosenPlace::default()),
            typed: Watched::new(Vec::new()),
            asked: Watched::new((0, Default::default())),
            read: Watched::new(None),
            worker: Watched::new(worker),
        };
        keep_up(Box::new(move || year.ask()));
        year
    }

    /// What is wrong with the choices.
    pub fn errors(self) -> Vec<YearError> {
        let set_point = self.set_point();
        self.choices.with(|choices| choices.check(set_point).err().unwrap_or_default())
    }

    /// What is wrong with the place.
    pub fn place_errors(self) -> Vec<ClimateError> {
        self.place.with(|place| place.place.check().err().unwrap_or_default())
    }

    /// Whether something chosen or typed cannot stand, so that the year shown is an earlier one.
    pub fn stands_in(self) -> bool {
        !self.errors().is_empty()
            || !self.place_errors().is_empty()
            || self.typed.with(|typed| !typed.is_empty())
    }

    fn ask(self) {
        let design = self.state.look(|outcome| {
            outcome.errors.is_empty().then(|| pack_design(outcome.good.checked.design()))
        });
        let set_point = self.set_point();
        let choices = self
            .choices
            .with(|choices| choices.check(set_point).is_ok().then(|| pack_choices(choices)));
        let place =
            self.place.with(|place| place.place.check().is_ok().then(|| pack_place(&place.place)));
        let (Some(design), Some(choices), Some(place)) = (design, choices, place) else { return };
        let now = [design, choices, place];
        let number = self.asked.update_untracked(|(number, last)| {
            // Prices not given are NaN, and NaN is never the same: compare the bits.
            let same = last.iter().zip(&now).all(|(last, now)| {
                last.len() == now.len()
                    && last.iter().zip(now).all(|(a, b)| a.to_bits() == b.to_bits())
            });
            if same {
                return None;
            }
            *number = number.wrapping_add(1);
            *last = now.clone();
            Some(*number)
        });
        if let Some(Some(number)) = number {
            self.worker.with_untracked(|worker| post(worker, number, &now));
        }
    }

    /// What the worker made of it, and whether that is of all that is chosen now.
    pub fn answer(self) -> Option<Rc<YearAnswer>> {
        self.state.year.with(|answer| {
            let (_, numbers) = answer.as_ref()?;
            self.read.update_untracked(|read| {
                if let Some((of, answer)) = read
                    && Rc::ptr_eq(of, numbers)
                {
                    return Some(Rc::clone(answer));
                }
                let answer = Rc::new(YearAnswer::unpack(numbers)?);
                *read = Some((Rc::clone(numbers), Rc::clone(&answer)));
                Some(answer)
            })?
        })
    }

    /// Whether the worker could make no year of what was asked last.
    pub fn is_refused(self) -> bool {
        self.state.year.with(|answer| answer.as_ref().is_some_and(|(_, of)| of.is_empty()))
    }

    /// Sets a numeric choice.
    pub fn put(self, field: YearField, number: Option<f64>) {
        self.forget(field.range().key);
        self.choices.update(|choices| choices.set(field, number));
    }

    /// Chooses the heater.
    pub fn heat_with(self, heater: HeaterKind) {
        self.choices.update(|choices| choices.heater = heater);
    }

    /// Goes to a place.
    pub fn go_to(self, place: ChosenPlace) {
        self.typed.update(|typed| typed.retain(|typed| !typed.key.starts_with("place-")));
        self.place.set(place);
    }

    /// Changes a figure of the place.
    pub fn change_place(self, key: &str, change: impl FnOnce(&mut Place)) {
        self.forget(key);
        self.place.update(|place| {
            place.is_changed = true;
            change(&mut place.place);
        });
    }

    /// Keeps a typed text that is no value.
    pub fn keep_typed(self, key: &str, text: String) {
        self.forget(key);
        self.typed.update(|typed| typed.push(Typed { key: key.to_owned(), text }));
    }

    /// Lets go of a typed text that was no value.
    pub fn forget_typed(self, key: &str) {
        self.forget(key);
    }

    fn forget(self, key: &str) {
        if self.typed.with_untracked(|typed| typed.iter().any(|typed| typed.key == key)) {
            self.typed.update(|typed| typed.retain(|typed| typed.key != key));
        }
    }

    /// The temperature that the heater holds: the room's, as last chosen lawfully.
    pub fn set_point(self) -> Temperature {
        self.state.look(|outcome| outcome.good.checked.design().indoor_temperature)
    }

    /// The temperature the place's heaters are sized for.
    pub fn winter_design(self) -> Temperature {
        self.place.with(|place| place.place.winter_design)
    }
}

fn post(worker: &Worker, number: u32, [design, choices, place]: &[Vec<f64>; 3]) {
    let message = Object::new();
    let array = |numbers: &[f64]| JsValue::from(Float64Array::from(numbers));
    let entries: [(&str, JsValue); 4] = [
        ("request", JsValue::from(number)),
        ("design", array(design)),
        ("choices", array(choices)),
        ("climate", array(place)),
    ];
    for (key, value) in entries {
        // Setting a property of a fresh object cannot fail.
        let _ = Reflect::set(&message, &JsValue::from_str(key), &value);
    }
    if let Err(refused) = worker.post_message(&message) {
        web_sys::console::warn_1(&refused);
    }
}

/// The choices of a host's attribute: `heater=air_source_heat_pump&electricity_price=0.16`, keys as in
/// the table of choices, numbers in SI, `currency` and `prices_of=2026-01-31` beside them. What
/// cannot be read is reported to the console, for whoever wrote the page, and left out.
fn choices_of(attribute: &str) -> YearChoices {
    let mut choices = YearChoices::default();
    for entry in attribute.split('&').filter(|entry| !entry.is_empty()) {
        let read = entry.split_once('=').and_then(|(key, value)| put(&mut choices, key, value));
        if read.is_none() {
            let said = ["inchwise-planner: not a choice of the year: ", entry].concat();
            web_sys::console::warn_1(&JsValue::from_str(&said));
        }
    }
    choices
}

fn put(choices: &mut YearChoices, key: &str, value: &str) -> Option<()> {
    match key {
        "heater" => choices.heater = HeaterKind::from_key(value)?,
        "currency" => choices.currency = value.as_bytes().try_into().ok()?,
        "prices_of" => choices.prices_of = Some(date_of(value)?),
        _ => choices.set(YearField::from_key(key)?, Some(plain_number(value)?)),
    }
    Some(())
}

/// A day written `2026-01-31`.
pub fn date_of(text: &str) -> Option<PriceDate> {
    let parts: Vec<&str> = text.trim().split('-').collect();
    let &[year, month, day] = &parts[..] else { return None };
    Some(PriceDate { year: year.parse().ok()?, month: month.parse().ok()?, day: day.parse().ok()? })
}
