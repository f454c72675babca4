//! What is chosen about the year, and what the worker made of it. Only the further part of the
//! page knows of years.

mod figure;
mod notation;
mod place;
mod places;

use std::rc::Rc;

use inchwise_aside::{YearAnswer, pack_choices, pack_climate, pack_design};
use inchwise_core::climate::{ClimateError, Place};
use inchwise_core::units::Temperature;
use inchwise_core::year::{HeaterKind, YearChoices, YearError, YearField};
use js_sys::{Float64Array, Object, Reflect};
use wasm_bindgen::JsValue;
use web_sys::{Element, Worker};

pub use figure::{Figure, MONTHLY, WHOLE};
use notation::PlaceWish;
pub use notation::{YearText, date_of, day};
pub use place::{ChosenPlace, OwnHours, PlaceKind};
pub use places::{Places, Table};

use crate::link::design_of_link;
use crate::reactive::{Watched, keep_up, untracked};
use crate::state::State;

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
    /// Hours of the visitor's own, in place of those of the place.
    pub hours: Watched<Option<Rc<OwnHours>>>,
    /// The tables of places.
    pub places: Places,
    /// Typed texts that are no values.
    pub typed: Watched<Vec<Typed>>,
    /// Keys of the page's address that could not be used.
    pub unused: Watched<Vec<String>>,
    /// What the host chose.
    usual: Watched<YearText>,
    /// The place that is still to be found in the tables.
    wish: Watched<Option<PlaceWish>>,
    /// The element on the host's page.
    host: Watched<Option<Element>>,
    /// The number of the last year asked for, and what it was.
    asked: Watched<(u32, [Vec<f64>; 3])>,
    /// The last answer with the numbers it was read from.
    read: Watched<Option<ReadAnswer>>,
    worker: Watched<Worker>,
}

impl YearState {
    /// A year that starts from the attribute `year` of its host, and asks the worker from now on
    /// whenever something changes.
    pub fn start(state: State, worker: Worker, places: Places, host: Option<Element>) -> Self {
        let attribute = host.as_ref().and_then(|host| host.get_attribute("year"));
        let set_point = untracked(|| state.good().checked.design().indoor_temperature);
        let attribute = attribute.unwrap_or_default();
        let usual = YearText::read(&attribute, &YearText::default(), set_point);
        for key in &usual.unused {
            places::warn(&["not a choice of the year that can be: ", key].concat());
        }
        let year = Self {
            state,
            choices: Watched::new(YearChoices::default()),
            place: Watched::new(ChosenPlace::default()),
            hours: Watched::new(None),
            places,
            typed: Watched::new(Vec::new()),
            unused: Watched::new(Vec::new()),
            usual: Watched::new(usual.clone()),
            wish: Watched::new(None),
            host: Watched::new(host),
            asked: Watched::new((0, Default::default())),
            read: Watched::new(None),
            worker: Watched::new(worker),
        };
        year.take(usual);
        year.unused.set(Vec::new());
        keep_up(Box::new(move || year.ask()));
        year
    }

    /// An attribute of the element on the host's page.
    pub fn attribute(self, name: &str) -> Option<String> {
        self.host.with_untracked(|host| host.as_ref()?.get_attribute(name))
    }

    /// Loads the tables of places, if they are not there.
    pub fn load_places(self) {
        self.places.ask(self.attribute("places"));
    }

    /// The text that says what is chosen otherwise than the host chose; whoever asks is told when
    /// it changes. A place that is still being looked for counts as chosen.
    pub fn text(self) -> String {
        let wish = self.wish.get();
        self.usual.with_untracked(|usual| {
            let wish = wish.unwrap_or_else(|| self.place.with(PlaceWish::of));
            self.choices.with(|choices| usual.otherwise(choices, &wish))
        })
    }

    /// Takes over what a text says, upon what the host chose, in a room held at a temperature.
    pub fn take_text(self, text: &str, set_point: Temperature) {
        let read = self.usual.with_untracked(|usual| YearText::read(text, usual, set_point));
        self.take(read);
    }

    /// Goes back to the design and the year that the host chose, on behalf of the visitor.
    pub fn start_over(self) {
        let design = self.attribute("design").and_then(|text| design_of_link(&text).ok());
        self.state.start_over(design.unwrap_or_default());
        self.take(self.usual.get_untracked());
    }

    fn take(self, read: YearText) {
        self.typed.set(Vec::new());
        self.hours.set(None);
        self.choices.set(read.choices);
        self.unused.set(read.unused);
        if read.place.name.is_empty() {
            self.wish.set(None);
            self.go_to_wished(ChosenPlace::default(), &read.place);
        } else {
            self.wish.set(Some(read.place));
            self.load_places();
            self.places.once_settled(Box::new(move || self.find_wish()));
        }
    }

    /// Goes to the place that was wished for, now that the tables are there.
    fn find_wish(self) {
        let Some(wish) = self.wish.get_untracked() else { return };
        self.wish.set(None);
        match untracked(|| self.places.named(&wish.name)) {
            Some(place) => self.go_to_wished(place, &wish),
            None => self.unused.update(|unused| unused.push("place".to_owned())),
        }
    }

    fn go_to_wished(self, mut place: ChosenPlace, wish: &PlaceWish) {
        let refused = wish.change(&mut place.place);
        self.place.set(place);
        if !refused.is_empty() {
            self.unused.update(|unused| unused.extend(refused));
        }
    }

    /// What is wrong with the choices.
    pub fn errors(self) -> Vec<YearError> {
        let set_point = self.set_point();
        self.choices.with(|choices| choices.check(set_point).err().unwrap_or_default())
    }

    /// The figures that the year's hours have: those of the place, or of the visitor's own hours.
    pub fn figures(self) -> Place {
        self.place.with(|place| {
            self.hours.with(|hours| match hours {
                Some(hours) => hours.figures_at(&place.place),
                None => place.place.clone(),
            })
        })
    }

    /// Whether the hours are the visitor's own.
    pub fn is_measured(self) -> bool {
        self.hours.with(Option::is_some)
    }

    /// What is wrong with the place.
    pub fn place_errors(self) -> Vec<ClimateError> {
        place::place_errors(&self.figures(), self.is_measured())
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
        let climate = self.place_errors().is_empty().then(|| {
            let figures = self.figures();
            self.hours
                .with(|hours| pack_climate(&figures, hours.as_ref().map(|hours| &hours.weather)))
        });
        let (Some(design), Some(choices), Some(climate)) = (design, choices, climate) else {
            return;
        };
        let now = [design, choices, climate];
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
            self.worker.with_untracked(|worker| post(worker, *number, &now));
            *last = now;
            Some(())
        });
        debug_assert!(number.is_some(), "values of one planner end together");
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

    /// Goes to a place, and to its hours.
    pub fn go_to(self, place: ChosenPlace) {
        self.typed.update(|typed| typed.retain(|typed| !typed.key.starts_with("place-")));
        self.wish.set(None);
        self.hours.set(None);
        self.place.set(place);
    }

    /// Runs the year on hours of the visitor's own, or on those of the place again.
    pub fn run_on(self, hours: Option<OwnHours>) {
        self.typed.update(|typed| typed.retain(|typed| !typed.key.starts_with("place-")));
        self.hours.set(hours.map(Rc::new));
    }

    /// Changes a figure of the place.
    pub fn change_place(self, key: &str, figure: Figure, value: f64) {
        self.forget(key);
        self.place.update(|place| figure.set(&mut place.place, value));
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

    /// The temperature heaters are sized for in these hours.
    pub fn winter_design(self) -> Temperature {
        self.figures().winter_design
    }
}

fn post(worker: &Worker, number: u32, [design, choices, climate]: &[Vec<f64>; 3]) {
    let message = Object::new();
    let array = |numbers: &[f64]| JsValue::from(Float64Array::from(numbers));
    let entries: [(&str, JsValue); 4] = [
        ("request", JsValue::from(number)),
        ("design", array(design)),
        ("choices", array(choices)),
        ("climate", array(climate)),
    ];
    for (key, value) in entries {
        // Setting a property of a fresh object cannot fail.
        let _ = Reflect::set(&message, &JsValue::from_str(key), &value);
    }
    if let Err(refused) = worker.post_message(&message) {
        web_sys::console::warn_1(&refused);
    }
}
