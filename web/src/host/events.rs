//! The event that follows every change.

use gloo_timers::callback::Timeout;
use inchwise_core::design::Design;
use inchwise_core::evaluate::Evaluation;
use inchwise_link::{entries, link_of, plain_number};
use js_sys::{Object, Reflect};
use leptos::prelude::*;
use wasm_bindgen::JsValue;
use web_sys::{CustomEvent, CustomEventInit, HtmlElement};

use crate::state::{ChangedBy, Planner};

/// The event that follows every change to a lawful design.
const CHANGE: &str = "inchwise-change";

/// A hand that drags a slider causes one event when it pauses, not sixty a second, ms.
const REST: u32 = 120;

/// Tells the host of every change: who caused it, the design, and the figures that matter. Told
/// again when a load that was still being worked out is whole.
pub fn tell(planner: Planner, host: HtmlElement) {
    let waiting = StoredValue::new_local(None::<Timeout>);
    Effect::new(move |before: Option<()>| {
        planner.outcome.with(|outcome| {
            if before.is_none() || !outcome.errors.is_empty() {
                return;
            }
            let (host, good) = (host.clone(), outcome.good.clone());
            let changed_by = planner.changed_by.get_untracked();
            let tell = Timeout::new(REST, move || send(&host, detail(&good, changed_by)));
            waiting.set_value(Some(tell));
        });
    });
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
    object(entries(design).into_iter().map(|(key, written)| {
        let value =
            plain_number(&written).map_or_else(|| JsValue::from_str(&written), JsValue::from_f64);
        (key, value)
    }))
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
    if !evaluation.heat_loss.is_waiting() {
        summary.push(("design_load_w", evaluation.heat_loss.design_load.value()));
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
