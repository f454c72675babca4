//! A number that can be chosen: of the design, of the year or of the place. Every field of the page
//! goes through here, whatever it sets.

use inchwise_core::design::{Design, Field};
use inchwise_core::year::{YearField, YearSubject};
use inchwise_link::Figure;

use super::fault::{fault_words, in_order, unread_words};
use super::year_fault::{place_fault, year_fault};
use crate::measure::{
    Notation, PlaceUnit, Scale, UnitSystem, Unread, read_of_year, written_of_year,
};
use crate::state::{Inputs, Planner, Subject, Typed};
use crate::text::Language;

/// What a field of the page sets.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Entry {
    /// Numbers of the design that move together; the first is the one that is shown.
    Design(&'static [Field]),
    /// A number of the year.
    Year(YearField),
    /// A figure of the place.
    Place(Figure),
}

/// Foam on all walls.
pub const WALLS: &[Field] = &[Field::SideWallFoam, Field::FrontEndFoam, Field::DoorEndFoam];

/// Foam under the roof.
pub const CEILING: &[Field] = &[Field::CeilingFoam];

/// What stands in where nothing was measured.
fn stand_in(design: &Design, field: Field) -> f64 {
    let freight_box = design.freight_box();
    let nominal = match field {
        Field::MeasuredLength => freight_box.internal.length,
        Field::MeasuredWidth => freight_box.internal.width,
        Field::MeasuredHeight => freight_box.internal.height,
        Field::MeasuredCastingFront => freight_box.casting.front_length,
        Field::MeasuredCastingDoor => freight_box.casting.door_length,
        Field::MeasuredCastingWidth => freight_box.casting.width,
        Field::MeasuredCastingHeight => freight_box.casting.height,
        _ => return design.get(field).unwrap_or(f64::NAN),
    };
    nominal.value()
}

impl Entry {
    /// The first field of a design's entry.
    pub fn field(self) -> Option<Field> {
        match self {
            Self::Design(fields) => fields.first().copied(),
            Self::Year(_) | Self::Place(_) => None,
        }
    }

    /// Its name in the page, without spaces.
    pub fn key(self) -> String {
        match self {
            Self::Design(WALLS) => "wall_foam".to_owned(),
            Self::Design(fields) => fields.first().map_or("", |field| field.range().key).to_owned(),
            Self::Year(field) => ["year-", field.range().key].concat(),
            Self::Place(figure) => ["place-", &figure.key()].concat(),
        }
    }

    /// What it is called.
    pub fn label(self, language: Language) -> String {
        match self {
            Self::Design(WALLS) => language.controls().wall_foam.to_owned(),
            Self::Design(fields) => {
                fields.first().map_or("", |&field| language.field(field)).to_owned()
            }
            Self::Year(field) => language.year_field(field).to_owned(),
            Self::Place(figure) => language.figure(figure),
        }
    }

    fn subject(self) -> Option<Subject> {
        Some(match self {
            Self::Design(fields) => Subject::Design(*fields.first()?),
            Self::Year(field) => Subject::Year(field),
            Self::Place(figure) => Subject::Place(figure),
        })
    }

    /// The number that stands, in the unit it is kept in; none where none is given.
    pub fn number(self, inputs: &Inputs) -> Option<f64> {
        match self {
            Self::Design(fields) => inputs.design.get(*fields.first()?),
            Self::Year(field) => inputs.year.get(field),
            Self::Place(figure) => Some(figure.of(&place_shown(inputs))),
        }
    }

    /// Sets it.
    pub fn put(self, inputs: &mut Inputs, number: Option<f64>) {
        match self {
            Self::Design(fields) => {
                fields.iter().for_each(|&field| inputs.design.set(field, number));
            }
            Self::Year(field) => inputs.year.set(field, number),
            Self::Place(figure) => {
                if let Some(number) = number {
                    figure.set(&mut inputs.place.place, number);
                }
            }
        }
    }

    /// The steps that it is moved by; none where it is only typed.
    pub fn scale(self, units: UnitSystem) -> Option<Scale> {
        self.field().map(|field| Scale::of(field, units))
    }

    /// A number as it stands in its box.
    pub fn written(self, number: f64, notation: Notation) -> String {
        match self {
            Self::Design(fields) => {
                fields.first().map_or_else(String::new, |&it| notation.field_box(it, number))
            }
            Self::Year(field) => written_of_year(field, number, notation),
            Self::Place(figure) => {
                PlaceUnit { quantity: figure.quantity, notation }.written(number)
            }
        }
    }

    /// The same with its unit.
    pub fn said(self, number: f64, notation: Notation) -> String {
        match self.field() {
            Some(field) => notation.field(field, number),
            None => self.written(number, notation),
        }
    }

    fn may_be_empty(self) -> bool {
        match self {
            Self::Design(fields) => fields.first().is_some_and(|it| it.range().default.is_none()),
            Self::Year(field) => field.range().default.is_none(),
            Self::Place(_) => false,
        }
    }

    /// The number of what was typed; none where it takes a number back.
    ///
    /// # Errors
    /// Why it is no value.
    pub fn read(self, text: &str, notation: Notation) -> Result<Option<f64>, Unread> {
        if text.trim().is_empty() && self.may_be_empty() {
            return Ok(None);
        }
        let plain = |number: Option<f64>| number.map(Some).ok_or(Unread::NotANumber);
        match self {
            Self::Design(fields) => match fields.first() {
                Some(&field) => notation.read(field, text).map(Some),
                None => Err(Unread::NotANumber),
            },
            Self::Year(field) => plain(read_of_year(field, text, notation)),
            Self::Place(figure) => {
                plain(PlaceUnit { quantity: figure.quantity, notation }.read(text))
            }
        }
    }

    /// Takes what was typed. What cannot be read is kept as it was typed.
    pub fn take(self, planner: Planner, text: &str) {
        let notation = leptos::prelude::untrack(|| planner.notation());
        let Some(subject) = self.subject() else { return };
        match self.read(text, notation) {
            Ok(number) => {
                planner.forget_typed(subject);
                planner.change(None, |inputs| self.put(inputs, number));
            }
            Err(fault) => planner.keep_typed(Typed { subject, text: text.to_owned(), fault }),
        }
    }

    /// Moves it so many steps.
    pub fn step_by(self, planner: Planner, steps: impl FnOnce(&Scale) -> i64) {
        use leptos::prelude::{GetUntracked, WithUntracked};
        let Some(scale) = self.scale(planner.units.get_untracked()) else { return };
        let Some(shown) = planner.inputs.with_untracked(|inputs| self.shown(inputs)) else {
            return;
        };
        let moved = scale.moved(shown, steps(&scale));
        self.forget(planner);
        planner.change(None, |inputs| self.put(inputs, Some(moved)));
    }

    /// Sets it to a number; all that one hand moves is one change.
    pub fn move_to(self, planner: Planner, number: f64, hand: &'static str) {
        self.forget(planner);
        planner.change(Some(hand), |inputs| self.put(inputs, Some(number)));
    }

    fn forget(self, planner: Planner) {
        if let Some(subject) = self.subject() {
            planner.forget_typed(subject);
        }
    }

    /// The number, or what stands in for a measurement that was not taken.
    pub fn shown(self, inputs: &Inputs) -> Option<f64> {
        match self.field() {
            Some(field) => Some(stand_in(&inputs.design, field)),
            None => self.number(inputs),
        }
    }

    /// What was typed here and is no value.
    pub fn typed(self, planner: Planner) -> Option<Typed> {
        use leptos::prelude::With;
        let subject = self.subject()?;
        planner.typed.with(|typed| typed.iter().find(|text| text.subject == subject).cloned())
    }

    /// What is wrong here, in words; empty while all is well.
    pub fn fault(self, planner: Planner) -> String {
        use leptos::prelude::With;
        let notation = planner.notation();
        if let Some(typed) = self.typed(planner) {
            return match self {
                Self::Design(fields) => fields.first().map_or_else(String::new, |&field| {
                    unread_words(&typed.text, &typed.fault, field, notation)
                }),
                _ => notation.language.year_choices().no_number.to_owned(),
            };
        }
        match self {
            Self::Design(fields) => planner.outcome.with(|outcome| {
                let error = outcome.errors.iter().find(|error| fields.contains(&error.field));
                error.map(|error| fault_words(error, notation)).unwrap_or_default()
            }),
            Self::Year(field) => planner.inputs.with(|inputs| {
                let errors = inputs.year.check(inputs.set_point()).err().unwrap_or_default();
                let mine = errors.iter().find(|e| e.subject == YearSubject::Field(field));
                mine.map_or_else(String::new, |error| year_fault(error, notation))
            }),
            Self::Place(figure) => {
                planner.inputs.with(|inputs| place_fault(inputs, figure, notation))
            }
        }
    }

    /// What is allowed, and what stands in.
    pub fn hint(self, inputs: &Inputs, notation: Notation) -> String {
        let words = notation.language.controls();
        match self {
            Self::Design(fields) => {
                let Some(&field) = fields.first() else { return String::new() };
                // The ends themselves, as a fault names them, not the steps nearest to them.
                let range = field.range();
                let ends = in_order(field, range.minimum, range.maximum, notation);
                let range = words.range.with(&[&ends.0, &ends.1]);
                if inputs.design.get(field).is_some() {
                    return range;
                }
                let nominal = notation.field(field, stand_in(&inputs.design, field));
                words.not_measured.with(&[&nominal, &range])
            }
            Self::Year(field) => {
                let range = field.range();
                let ends =
                    [range.minimum, range.maximum].map(|end| written_of_year(field, end, notation));
                words.range.with(&[&ends[0], &ends[1]])
            }
            Self::Place(figure) => {
                PlaceUnit { quantity: figure.quantity, notation }.name().to_owned()
            }
        }
    }
}

/// The figures that the year's hours have: those of the place, or of the visitor's own hours.
pub fn place_shown(inputs: &Inputs) -> inchwise_core::climate::Place {
    match &inputs.hours {
        Some(hours) => hours.figures_at(&inputs.place.place),
        None => inputs.place.place.clone(),
    }
}
