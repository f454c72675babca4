//! One number: typed, or moved by a step.

use leptos::ev::KeyboardEvent;
use leptos::prelude::*;

use super::Entry;
use crate::measure::Scale;
use crate::state::Planner;

/// The field of an entry.
#[component]
pub fn NumberField(
    /// What it sets.
    entry: Entry,
) -> impl IntoView {
    let planner = Planner::here();
    let id = entry.key();
    let (hint_id, fault_id) = ([&id, "-hint"].concat(), [&id, "-fault"].concat());
    let described_by = [&hint_id, " ", &fault_id].concat();
    let test_id = ["field-", &id].concat();
    let label = move || entry.label(planner.language.get());
    let text = Memo::new(move |_| {
        if let Some(typed) = entry.typed(planner) {
            return typed.text;
        }
        let notation = planner.notation();
        planner
            .inputs
            .with(|it| entry.number(it))
            .map_or_else(String::new, |number| entry.written(number, notation))
    });
    let fault = Memo::new(move |_| entry.fault(planner));
    let hint = move || {
        let notation = planner.notation();
        planner.inputs.with(|inputs| entry.hint(inputs, notation))
    };
    let is_wrong = move || fault.with(|fault| !fault.is_empty());
    let take = move |event: leptos::ev::Event| {
        let input: web_sys::HtmlInputElement = event_target(&event);
        entry.take(planner, &input.value());
        // What was typed gives way to the value as it is written, even an equal one.
        input.set_value(&text.get_untracked());
    };
    let press = move |event: KeyboardEvent| {
        let steps: fn(&Scale) -> i64 = match event.key().as_str() {
            "ArrowUp" => |_| 1,
            "ArrowDown" => |_| -1,
            "PageUp" => |scale| scale.nudge,
            "PageDown" => |scale| -scale.nudge,
            _ => return,
        };
        if entry.field().is_some() {
            event.prevent_default();
            entry.step_by(planner, steps);
        }
    };
    let nudge = move |sign: i64| entry.field().is_some().then(|| view! { <Nudge entry sign/> });
    view! {
        <div class="field" class:wrong=is_wrong>
            <label for=id.clone()>{label}</label>
            <div class="moves">
                {nudge(-1)}
                <input
                    type="text"
                    id=id
                    data-testid=test_id
                    autocomplete="off"
                    spellcheck="false"
                    enterkeyhint="done"
                    maxlength="60"
                    aria-describedby=described_by
                    aria-invalid=move || is_wrong().to_string()
                    prop:value=move || text.get()
                    on:change=take
                    on:keydown=press
                />
                {nudge(1)}
            </div>
            <p class="hint" id=hint_id>{hint}</p>
            <p class="fault" id=fault_id>
                {move || fault.with(|fault| {
                    let sign = planner.language.get().faults().sign;
                    if fault.is_empty() { String::new() } else { [sign, " ", fault].concat() }
                })}
            </p>
        </div>
    }
}

/// The button that moves a field by a step.
#[component]
fn Nudge(entry: Entry, sign: i64) -> impl IntoView {
    let planner = Planner::here();
    let name = move || {
        let notation = planner.notation();
        let words = notation.language.controls();
        let Some(scale) = entry.scale(notation.units) else { return String::new() };
        let step = notation.nudge(&scale, true);
        let phrase = if sign < 0 { words.less } else { words.more };
        phrase.with(&[&entry.label(notation.language), &step])
    };
    let is_at_end = move || {
        let Some(scale) = entry.scale(planner.units.get()) else { return true };
        let shown = planner.inputs.with(|inputs| entry.shown(inputs));
        let position = shown.map_or(0, |shown| scale.position(shown));
        if sign < 0 { position <= scale.lowest } else { position >= scale.highest }
    };
    view! {
        <button
            type="button"
            class="nudge"
            aria-label=name
            // It keeps the keyboard at the end of the range, where it does nothing.
            aria-disabled=move || is_at_end().to_string()
            on:click=move |_| entry.step_by(planner, |scale| sign * scale.nudge)
        >
            {if sign < 0 { "−" } else { "+" }}
        </button>
    }
}

/// Fields of the design, one below the other.
#[component]
pub fn NumberFields(
    /// The fields, each by itself.
    fields: &'static [inchwise_core::design::Field],
) -> impl IntoView {
    fields
        .chunks(1)
        .map(|single| view! { <NumberField entry=Entry::Design(single)/> })
        .collect_view()
}
