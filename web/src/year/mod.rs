//! What is chosen about the year, and what the worker made of it. Only the further part of the
//! page knows of years.

mod notation;
mod place;
mod places;

use std::rc::Rc;

use inchwise_aside::{YearAnswer, pack_choices, pack_design, pack_hours};
use inchwise_core::climate::{CheckedPlace, ClimateError, ClimateQuantity, Place};
use inchwise_core::design::{Design, DesignError, Field};
use inchwise_core::units::Temperature;
use inchwise_core::year::{HeaterKind, YearChoices, YearError, YearField};
use js_sys::{Float64Array, Object, Reflect};
use wasm_bindgen::JsValue;
use web_sys::{Element, Worker};

use notation::PlaceWish;
pub use notation::{OfDesign, YearText, date_of, day};
pub use place::{ChosenPlace, OwnHours, PlaceKind};
pub use places::{Places, Table};

use crate::figure::Figure;
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
    /// The place as given, with its name; once its figures can be, it is the design's.
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
        let design = design_of_host(host.as_ref());
        let at = YearText {
            place: PlaceWish::of(&ChosenPlace::told(&design.place)),
            ..YearText::default()
        };
        let usual = YearText::read(&attribute.unwrap_or_default(), &at);
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
        let stands = state.chosen_untracked(|design| design.place.clone());
        let moved = stands != design.place;
        year.take(if moved { usual.at(&stands) } else { usual });
        year.unused.set(Vec::new());
        keep_up(Box::new(move || year.follow_design()));
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

    /// Takes over what a text says, upon what the host chose, behind a design that may say where it stands itself.
    pub fn take_text(self, text: &str, design: &Design) {
        let read = self.usual.with_untracked(|usual| {
            let read = YearText::read(text, usual);
            let is_silent = read.place == usual.place;
            if is_silent && design.place != CheckedPlace::default() {
                read.at(&design.place)
            } else {
                read
            }
        });
        self.take(read);
    }

    /// Goes back to the design and the year that the host chose, on behalf of the visitor.
    pub fn start_over(self) {
        let design = self.host.with_untracked(|host| design_of_host(host.as_ref()));
        self.state.start_over(design);
        self.take(self.usual.get_untracked());
    }

    fn take(self, read: YearText) {
        self.typed.set(Vec::new());
        self.hours.set(None);
        self.choices.set(read.choices);
        self.unused.set(read.unused);
        self.amend_design(&read.of_design);
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
        // The outdoor temperature of the design is said by its own link.
        if let Some(place) = self.lawful_place() {
            self.state.amend(|design| design.place = place);
        }
        if !refused.is_empty() {
            self.unused.update(|unused| unused.extend(refused));
        }
    }

    /// Sets choices of the design that an earlier year held; those that cannot be are not set, and named.
    fn amend_design(self, numbers: &[OfDesign]) {
        let mut amended = self.state.chosen_untracked(Clone::clone);
        let mut refused = Vec::new();
        for number in numbers {
            let mut tried = amended.clone();
            tried.set(number.field, Some(number.si));
            let errors = |design: &Design| design.check().err().map_or(0, |errors| errors.len());
            if errors(&tried) > errors(&amended) {
                refused.push(number);
            } else {
                amended = tried;
            }
        }
        // Hours may be lawful only together.
        let together = {
            let mut tried = amended.clone();
            for number in &refused {
                tried.set(number.field, Some(number.si));
            }
            tried
        };
        if !refused.is_empty() && together.check().is_ok() {
            amended = together;
            refused.clear();
        }
        self.state.amend(|design| *design = amended);
        let refused: Vec<String> = refused.iter().map(|number| number.key.clone()).collect();
        self.unused.update(|unused| unused.extend(refused));
    }

    /// The place as given, if it can be.
    fn lawful_place(self) -> Option<CheckedPlace> {
        self.place.with_untracked(|place| place.place.check().ok())
    }

    /// Follows a place that came with a design from elsewhere.
    fn follow_design(self) {
        let stands = self.state.chosen(|design| design.place.clone());
        if self.lawful_place().is_some_and(|place| place != stands) {
            self.place.set(ChosenPlace::told(&stands));
        }
    }

    /// What is wrong with the choices.
    pub fn errors(self) -> Vec<YearError> {
        self.choices.with(|choices| choices.check().err().unwrap_or_default())
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
        let choices =
            self.choices.with(|choices| choices.check().is_ok().then(|| pack_choices(choices)));
        let hours = self.place_errors().is_empty().then(|| {
            self.hours.with(|hours| pack_hours(hours.as_ref().map(|hours| &hours.weather)))
        });
        let (Some(design), Some(choices), Some(hours)) = (design, choices, hours) else {
            return;
        };
        let now = [design, choices, hours];
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
        if let Some(place) = self.lawful_place() {
            self.state.choose(|design| stand_at(design, place));
        }
    }

    /// Runs the year on hours of the visitor's own, or on those of the place again.
    pub fn run_on(self, hours: Option<OwnHours>) {
        self.typed.update(|typed| typed.retain(|typed| !typed.key.starts_with("place-")));
        self.hours.set(hours.map(Rc::new));
    }

    /// Changes a figure of the place. With its winter temperature goes the one that the design is reckoned for.
    pub fn change_place(self, key: &str, figure: Figure, value: f64) {
        self.forget(key);
        self.place.update(|place| figure.set(&mut place.place, value));
        if let Some(place) = self.lawful_place() {
            self.state.choose(|design| match figure.quantity {
                ClimateQuantity::WinterDesign => stand_at(design, place),
                _ => design.place = place,
            });
        }
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

    /// The temperature heaters are sized for in these hours.
    pub fn winter_design(self) -> Temperature {
        self.figures().winter_design
    }
}

/// Puts a design at a place, reckoned for its winter; where that is warmer than a design may be reckoned for, for the
/// temperature it was.
fn stand_at(design: &mut Design, place: CheckedPlace) {
    let mut moved = design.clone();
    moved.take_place(place.clone());
    let about_winter = |errors: &[DesignError]| {
        errors.iter().any(|error| error.field == Field::OutdoorTemperature)
    };
    if moved.check().is_err_and(|errors| about_winter(&errors)) {
        design.place = place;
    } else {
        *design = moved;
    }
}

/// The design that the host chose.
fn design_of_host(host: Option<&Element>) -> Design {
    let text = host.and_then(|host| host.get_attribute("design"));
    text.and_then(|text| design_of_link(&text).ok()).unwrap_or_default()
}

fn post(worker: &Worker, number: u32, [design, choices, hours]: &[Vec<f64>; 3]) {
    let message = Object::new();
    let array = |numbers: &[f64]| JsValue::from(Float64Array::from(numbers));
    let entries: [(&str, JsValue); 4] = [
        ("request", JsValue::from(number)),
        ("design", array(design)),
        ("choices", array(choices)),
        ("hours", array(hours)),
    ];
    for (key, value) in entries {
        // Setting a property of a fresh object cannot fail.
        let _ = Reflect::set(&message, &JsValue::from_str(key), &value);
    }
    if let Err(refused) = worker.post_message(&message) {
        web_sys::console::warn_1(&refused);
    }
}
