//! One numeric choice: slider, typed value and nudges, all through the same door.

use inchwise_core::design::{Design, Field};
use leptos::prelude::*;

use super::fault::{fault_words, in_order, unread_words};
use crate::measure::{Notation, Scale, Unread};
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

/// The fault of an entry in words; empty while all is well.
fn fault(state: State, entry: Entry, notation: Notation) -> String {
    let concerned = |field: &Field| entry.fields.contains(field);
    let unread = state.unread.with(|unread| {
        unread.iter().find(|text| concerned(&text.field)).map(|text| unread_words(text, notation))
    });
    unread.unwrap_or_else(|| {
        state.outcome.with(|outcome| {
            outcome
                .errors
                .iter()
                .find(|error| concerned(&error.field))
                .map(|error| fault_words(error, notation))
                .unwrap_or_default()
        })
    })
}

/// Takes what was typed. What cannot be read is kept as it was typed.
fn take_typed(state: State, entry: Entry, field: Field, typed: &str) {
    match state.notation().read(field, typed) {
        Ok(si) => state.put_all(entry.fields, Some(si)),
        Err(Unread::Empty) if field.range().default.is_none() => {
            state.put_all(entry.fields, None);
        }
        Err(fault) => state.keep_unread(UnreadText { field, typed: typed.to_owned(), fault }),
    }
}

/// The entry's row.
pub fn field(state: State, language: Language, entry: Entry) -> AnyView {
    let Some(&field) = entry.fields.first() else { return ().into_any() };
    let controls = language.controls();
    let shown = move || state.design.with(|design| shown_number(design, field));
    let scale = move || Scale::of(field, state.units.get());
    let step_by = move |steps: i64| {
        state.put_all(entry.fields, Some(scale().moved(shown(), steps)));
    };
    let typed = move || {
        let typed = state.unread.with(|unread| {
            unread.iter().find(|text| text.field == field).map(|text| text.typed.clone())
        });
        typed.unwrap_or_else(|| {
            let si = state.design.with(|design| design.get(field));
            si.map(|si| state.notation().field(field, si)).unwrap_or_default()
        })
    };
    let fault = Memo::new(move |_| fault(state, entry, state.notation()));
    let hint = move || {
        let notation = state.notation();
        let scale = scale();
        let range = in_order(field, scale.si(scale.lowest), scale.si(scale.highest), notation);
        let range = controls.range.with(&[&range.0, &range.1]);
        let measured = state.design.with(|design| design.get(field).is_some());
        if measured {
            range
        } else {
            controls.not_measured.with(&[&notation.field(field, shown()), &range])
        }
    };
    // A change of units makes a new slider: a browser clips a value set before its new ends.
    let slider = move || {
        let scale = scale();
        let position = move || scale.position(shown());
        view! {
            <input
                type="range"
                min=scale.lowest
                max=scale.highest
                step="1"
                aria-label=controls.slider.with(&[entry.label])
                aria-valuetext=move || state.notation().field(field, shown())
                prop:value=move || position().to_string()
                on:input:target=move |event| {
                    let position = event.target().value_as_number();
                    if position.is_finite() {
                        state.put_all(entry.fields, Some(scale.si(position as i64)));
                    }
                }
            />
        }
    };
    let nudge = move |direction: i64| {
        let phrase = if direction < 0 { controls.less } else { controls.more };
        let spoken = move || phrase.with(&[entry.label, &state.notation().nudge(&scale(), true)]);
        let sign = if direction < 0 { "−" } else { "+" };
        let at_end = move || {
            let scale = scale();
            let position = scale.position(shown());
            if direction < 0 { position <= scale.lowest } else { position >= scale.highest }
        };
        view! {
            <button
                type="button"
                class="nudge"
                aria-label=spoken
                prop:disabled=at_end
                on:click=move |_| step_by(scale().nudge * direction)
            >
                {sign}
                {move || state.notation().nudge(&scale(), false)}
            </button>
        }
    };
    let id = entry.key;
    let hint_id = format!("{id}-hint");
    let fault_id = format!("{id}-fault");
    view! {
        <div class="field" class:wrong=move || fault.with(|fault| !fault.is_empty())>
            <label for=id>{entry.label}</label>
            <div class="moves">
                {slider}
                {nudge(-1)}
                <input
                    type="text"
                    id=id
                    data-testid=format!("field-{id}")
                    autocomplete="off"
                    spellcheck="false"
                    enterkeyhint="done"
                    aria-describedby=format!("{hint_id} {fault_id}")
                    aria-invalid=move || fault.with(|fault| (!fault.is_empty()).to_string())
                    prop:value=typed
                    on:change:target=move |event| {
                        take_typed(state, entry, field, &event.target().value());
                        event.target().set_value(&typed());
                    }
                    on:keydown=move |event| {
                        let steps = match event.key().as_str() {
                            "ArrowUp" => 1,
                            "ArrowDown" => -1,
                            "PageUp" => scale().nudge,
                            "PageDown" => -scale().nudge,
                            _ => return,
                        };
                        event.prevent_default();
                        step_by(steps);
                    }
                />
                {nudge(1)}
            </div>
            <p class="hint" id=hint_id.clone()>{hint}</p>
            <p class="fault" id=fault_id.clone()>
                {move || if fault.with(String::is_empty) { "" } else { language.faults().sign }}
                " "
                {move || fault.get()}
            </p>
        </div>
    }
    .into_any()
}
