//! One numeric choice: slider, typed value and nudges, all through the same door.

use inchwise_core::design::{Design, Field};
use wasm_bindgen::{JsCast, JsValue};

use super::fault::{fault_words, in_order, unread_words};
use crate::dom::{El, el, input_of};
use crate::measure::{Notation, Scale, Unread};
use crate::reactive::{keep_up, untracked};
use crate::state::{State, UnreadText};
use crate::text::Language;

/// A numeric choice as it is shown: one field, or several that move together.
#[derive(Clone, Copy)]
pub struct Entry {
    /// What it sets; the first is the one that is shown.
    pub fields: &'static [Field],
    /// What it is called.
    pub label: &'static str,
    /// Its name in the page, without spaces.
    pub key: &'static str,
}

impl Entry {
    /// A field by itself, under its own name. `field` is a slice of one.
    pub fn single(field: &'static [Field], language: Language) -> Option<Self> {
        let first = field.first()?;
        Some(Self { fields: field, label: language.field(*first), key: first.range().key })
    }
}

/// What stands in where nothing was measured.
fn shown_number(design: &Design, field: Field) -> f64 {
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

/// What an entry shows, and all that it follows from.
#[derive(Clone, PartialEq)]
struct Shown {
    notation: Notation,
    /// The number, or what stands in for a measurement that was not taken.
    si: f64,
    /// Whether there is a number of its own.
    given: bool,
    /// What was typed and is no value.
    typed: Option<String>,
    /// What is wrong; empty while all is well.
    fault: String,
}

impl Shown {
    fn of(state: State, entry: Entry, field: Field) -> Self {
        let notation = state.notation();
        let concerned = |field: &Field| entry.fields.contains(field);
        let (si, given) =
            state.chosen(|design| (shown_number(design, field), design.get(field).is_some()));
        let unread = state.unread.with(|unread| {
            let text = unread.iter().find(|text| concerned(&text.field))?;
            Some((text.typed.clone(), unread_words(text, notation)))
        });
        let wrong = || {
            state.look(|outcome| {
                let error = outcome.errors.iter().find(|error| concerned(&error.field));
                error.map(|error| fault_words(error, notation)).unwrap_or_default()
            })
        };
        let (typed, fault) = match unread {
            Some((typed, fault)) => (Some(typed), fault),
            None => (None, wrong()),
        };
        Self { notation, si, given, typed, fault }
    }

    /// What stands in the box.
    fn text(&self, field: Field) -> String {
        match &self.typed {
            Some(typed) => typed.clone(),
            None if self.given => self.notation.field_box(field, self.si),
            None => String::new(),
        }
    }

    /// What is allowed, and what stands in.
    fn hint(&self, field: Field, scale: &Scale) -> String {
        let words = self.notation.language.controls();
        let ends = (scale.si(scale.lowest), scale.si(scale.highest));
        let ends = in_order(field, ends.0, ends.1, self.notation);
        let range = words.range.with(&[&ends.0, &ends.1]);
        if self.given {
            range
        } else {
            words.not_measured.with(&[&self.notation.field(field, self.si), &range])
        }
    }
}

/// Takes what was typed. What cannot be read is kept as it was typed.
fn take_typed(state: State, entry: Entry, field: Field, typed: &str) {
    match untracked(|| state.notation()).read(field, typed) {
        Ok(si) => state.put_all(entry.fields, Some(si)),
        Err(Unread::Empty) if field.range().default.is_none() => {
            state.put_all(entry.fields, None);
        }
        Err(fault) => state.keep_unread(UnreadText { field, typed: typed.to_owned(), fault }),
    }
}

/// Moves an entry so many steps from where it stands.
fn step_by(state: State, entry: Entry, field: Field, steps: fn(&Scale) -> i64) {
    let scale = Scale::of(field, state.units.get_untracked());
    let si = state.chosen_untracked(|design| shown_number(design, field));
    state.put_all(entry.fields, Some(scale.moved(si, steps(&scale))));
}

/// The elements of a row that keep up.
#[derive(Clone)]
struct Row {
    whole: El,
    slider: El,
    less: El,
    text: El,
    more: El,
    hint: El,
    fault: El,
}

/// The entry's row.
pub fn field(state: State, language: Language, entry: Entry) -> El {
    let Some(&field) = entry.fields.first() else { return el("div") };
    let id = entry.key;
    let (hint_id, fault_id) = (format!("{id}-hint"), format!("{id}-fault"));
    let nudge = move |steps: fn(&Scale) -> i64| {
        el("button")
            .attr("type", "button")
            .class("nudge")
            .on("click", move |_| step_by(state, entry, field, steps))
    };
    let row = Row {
        whole: el("div").class("field"),
        slider: slider(state, language, entry, field),
        less: nudge(|scale| -scale.nudge),
        text: text_box(state, entry, field)
            .attr("aria-describedby", &format!("{hint_id} {fault_id}")),
        more: nudge(|scale| scale.nudge),
        hint: el("p").class("hint").attr("id", &hint_id),
        fault: el("p").class("fault").attr("id", &fault_id),
    };
    let keeping = row.clone();
    let mut last: Option<Shown> = None;
    keep_up(Box::new(move || {
        let now = Shown::of(state, entry, field);
        if last.as_ref() != Some(&now) {
            let moved = last.as_ref().is_none_or(|last| last.notation != now.notation);
            keeping.show(&now, entry, field, moved);
            last = Some(now);
        }
    }));
    row.whole.with(&[
        el("label").attr("for", id).text(entry.label),
        el("div").class("moves").with(&[row.slider, row.less, row.text, row.more]),
        row.hint,
        row.fault,
    ])
}

fn slider(state: State, language: Language, entry: Entry, field: Field) -> El {
    el("input")
        .attr("type", "range")
        .attr("step", "1")
        .attr("aria-label", &language.controls().slider.with(&[entry.label]))
        .on("input", move |event| {
            let position = input_of(&event).map_or(f64::NAN, |input| input.value_as_number());
            if position.is_finite() {
                let scale = Scale::of(field, state.units.get_untracked());
                state.put_all(entry.fields, Some(scale.si(position as i64)));
            }
        })
}

fn text_box(state: State, entry: Entry, field: Field) -> El {
    el("input")
        .attr("type", "text")
        .attr("id", entry.key)
        .test_id(&format!("field-{}", entry.key))
        .attr("autocomplete", "off")
        .attr("spellcheck", "false")
        .attr("enterkeyhint", "done")
        .on("change", move |event| {
            if let Some(input) = input_of(&event) {
                take_typed(state, entry, field, &input.value());
                // What was typed gives way to the value as it is written, even an equal one.
                input.set_value(&untracked(|| Shown::of(state, entry, field).text(field)));
            }
        })
        .on("keydown", move |event| {
            let key: &web_sys::KeyboardEvent = event.unchecked_ref();
            let steps: fn(&Scale) -> i64 = match key.key().as_str() {
                "ArrowUp" => |_| 1,
                "ArrowDown" => |_| -1,
                "PageUp" => |scale| scale.nudge,
                "PageDown" => |scale| -scale.nudge,
                _ => return,
            };
            event.prevent_default();
            step_by(state, entry, field, steps);
        })
}

impl Row {
    /// Writes everything; names and ends only where the units or the language changed.
    fn show(&self, now: &Shown, entry: Entry, field: Field, renamed: bool) {
        let scale = Scale::of(field, now.notation.units);
        let position = scale.position(now.si);
        if renamed {
            // A browser clips a value that is set before its new ends.
            self.slider.set("min", &scale.lowest.to_string());
            self.slider.set("max", &scale.highest.to_string());
            self.name(now.notation, entry, &scale);
        }
        self.slider.property("value", &JsValue::from_f64(position as f64));
        self.slider.set("aria-valuetext", &now.notation.field(field, now.si));
        self.text.property("value", &JsValue::from_str(&now.text(field)));
        self.less.flag("disabled", position <= scale.lowest);
        self.more.flag("disabled", position >= scale.highest);
        self.hint.say(&now.hint(field, &scale));
        let wrong = !now.fault.is_empty();
        let fault = if wrong {
            format!("{} {}", now.notation.language.faults().sign, now.fault)
        } else {
            String::new()
        };
        self.fault.say(&fault);
        self.whole.toggle("wrong", wrong);
        self.text.set("aria-invalid", if wrong { "true" } else { "false" });
    }

    /// Names the nudges by how far they move.
    fn name(&self, notation: Notation, entry: Entry, scale: &Scale) {
        let words = notation.language.controls();
        let (short, full) = (notation.nudge(scale, false), notation.nudge(scale, true));
        self.less.say(&format!("−{short}"));
        self.more.say(&format!("+{short}"));
        self.less.set("aria-label", &words.less.with(&[entry.label, &full]));
        self.more.set("aria-label", &words.more.with(&[entry.label, &full]));
    }
}
