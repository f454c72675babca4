//! What the planner tells the page around it: events on its element, and the page's address.
//!
//! Effects here only lead outward; none writes a signal.

use std::time::Duration;

use inchwise_core::climate::Place;
use inchwise_core::design::Design;
use inchwise_core::evaluate::Evaluation;
use js_sys::{Array, Object, Reflect};
use wasm_bindgen::JsValue;
use web_sys::{CustomEvent, CustomEventInit, HtmlElement};

use crate::dom::{Waiting, listen_to_window, window};
use crate::figure::{Figure, MONTHLY, WHOLE};
use crate::link::{design_of_link_at, entries, fragment_of, link_of, link_without_place};
use crate::measure::plain_number;
use crate::reactive::keep_up;
use crate::state::{ChangedBy, State};

/// The event that follows every change to a lawful design.
const CHANGE: &str = "inchwise-change";

/// A hand that drags a slider causes one event when it pauses, not sixty a second.
const EVENT_REST: Duration = Duration::from_millis(120);

/// Tells the host of every change: who caused it, the design, and the figures that matter. Told
/// again when a load that was still being refined is whole.
pub fn tell_host(state: State, host: HtmlElement) {
    let waiting = Waiting::new();
    let mut first = true;
    keep_up(Box::new(move || {
        let outcome = state.now();
        if !std::mem::take(&mut first) && outcome.errors.is_empty() {
            let (host, changed_by) = (host.clone(), state.changed_by.get_untracked());
            let tell = move || send(&host, detail(&outcome.good, changed_by));
            waiting.after(EVENT_REST, Box::new(tell));
        }
    }));
}

fn send(host: &HtmlElement, detail: Object) {
    let init = CustomEventInit::new();
    init.set_bubbles(true);
    init.set_composed(true);
    init.set_detail(&detail);
    if let Ok(event) = CustomEvent::new_with_event_init_dict(CHANGE, &init) {
        let _ = host.dispatch_event(&event);
    }
}

fn object(entries: impl IntoIterator<Item = (String, JsValue)>) -> Object {
    let object = Object::new();
    for (key, value) in entries {
        // Setting a property of a fresh object cannot fail.
        let _ = Reflect::set(&object, &JsValue::from_str(&key), &value);
    }
    object
}

/// A design as an object with the keys of the JSON form.
pub fn design_object(design: &Design) -> Object {
    let choices = entries(design).into_iter().map(|(key, written)| {
        let value =
            plain_number(&written).map_or_else(|| JsValue::from_str(&written), JsValue::from_f64);
        (key, value)
    });
    let place = ("place".to_owned(), place_object(design.place.place()).into());
    object(choices.chain([place]))
}

/// A place as an object with the keys of the JSON form.
fn place_object(place: &Place) -> Object {
    let figures = |quantities: [_; 4], month| {
        quantities.map(|quantity| {
            let figure = Figure { quantity, month };
            let path = figure.path();
            // Behind the last dot stands the key.
            let key = path.rsplit('.').next().unwrap_or_default().to_owned();
            (key, JsValue::from_f64(figure.of(place)))
        })
    };
    let months: Array = (0..12).map(|month| object(figures(MONTHLY, month))).collect();
    let months = ("months".to_owned(), months.into());
    object(figures(WHOLE, 0).into_iter().chain([months]))
}

fn detail(evaluation: &Evaluation, changed_by: ChangedBy) -> Object {
    let source = match changed_by {
        ChangedBy::Visitor => "visitor",
        ChangedBy::Host => "host",
    };
    let room = &evaluation.room;
    let design = evaluation.checked.design();
    let mut summary = vec![
        ("clear_length_mm", room.clear.length.as_mm()),
        ("clear_width_mm", room.clear.width.as_mm()),
        ("clear_height_mm", room.clear.height.as_mm()),
        ("floor_area_m2", room.floor_area.value()),
        ("lost_litres", room.lost_volume.as_litres()),
        ("lost_share", room.lost_share),
    ];
    // A load with parts missing is no load to hand on.
    if !evaluation.heat_loss.is_waiting()
        && let Ok(balance) = &evaluation.balance
    {
        let load = &balance.load;
        summary.push(("design_load_w", load.greatest().value()));
        summary.push(("load_at_rest_w", load.at_rest.total().value()));
    }
    let summary = summary.into_iter().map(|(key, value)| (key.to_owned(), value.into()));
    let parts: [(&str, JsValue); 4] = [
        ("source", source.into()),
        ("design", design_object(design).into()),
        ("link", link_of(design).into()),
        ("summary", object(summary).into()),
    ];
    object(parts.map(|(key, value)| (key.to_owned(), value)))
}

/// Reads the design in the fragment of the page's address, now and whenever it changes. The
/// further part writes it (`address.rs`).
pub fn read_addresses(state: State) {
    read_address(state);
    listen_to_window("hashchange", Box::new(move || read_address(state)));
}

fn read_address(state: State) {
    let hash = window().location().hash().unwrap_or_default();
    // Another fragment is the page's own business.
    let Some((text, _)) = fragment_of(&hash) else { return };
    let (known, place) =
        state.chosen_untracked(|design| (link_without_place(design), design.place.clone()));
    // Where the box stands may be said behind the design, by name.
    match design_of_link_at(text, &place) {
        Ok(design) if text != known => {
            state.replace(design);
            state.link_unread.set(false);
        }
        Ok(_) => {}
        Err(_) => {
            state.replace(Design { place, ..Design::default() });
            state.link_unread.set(true);
        }
    }
}
