//! What the planner tells the page around it: events on its element, and the page's address.
//!
//! Effects here only lead outward; none writes a signal.

use std::time::Duration;

use inchwise_core::design::Design;
use inchwise_core::evaluate::Evaluation;
use inchwise_wire::design_to_value;
use leptos::prelude::*;
use serde_json::json;
use wasm_bindgen::JsValue;
use web_sys::{CustomEvent, CustomEventInit, HtmlElement};

use crate::link::{design_of_link, is_link, link_of};
use crate::state::{ChangedBy, State};

/// The event that follows every change to a lawful design.
const CHANGE: &str = "inchwise-change";

/// Browsers allow about a hundred changes of the address in half a minute.
const ADDRESS_REST: Duration = Duration::from_millis(400);

/// Tells the host of every change: who caused it, the design, and the figures that matter.
pub fn tell_host(state: State, host: HtmlElement) {
    Effect::new(move |before: Option<()>| {
        let good = state.outcome.with(|outcome| outcome.errors.is_empty().then(|| state.good()));
        if let (Some(()), Some(good)) = (before, good) {
            send(&host, &detail(&good, state.changed_by.get_value()));
        }
    });
}

fn send(host: &HtmlElement, detail: &str) {
    let init = CustomEventInit::new();
    init.set_bubbles(true);
    init.set_composed(true);
    init.set_detail(&js_sys::JSON::parse(detail).unwrap_or(JsValue::NULL));
    if let Ok(event) = CustomEvent::new_with_event_init_dict(CHANGE, &init) {
        let _ = host.dispatch_event(&event);
    }
}

fn detail(evaluation: &Evaluation, changed_by: ChangedBy) -> String {
    let source = match changed_by {
        ChangedBy::Visitor => "visitor",
        ChangedBy::Host => "host",
    };
    let room = &evaluation.room;
    let design = evaluation.checked.design();
    json!({
        "source": source,
        "design": design_to_value(design),
        "link": link_of(design),
        "summary": {
            "clear_length_mm": room.clear.length.as_mm(),
            "clear_width_mm": room.clear.width.as_mm(),
            "clear_height_mm": room.clear.height.as_mm(),
            "floor_area_m2": room.floor_area.value(),
            "lost_litres": room.lost_volume.as_litres(),
            "lost_share": room.lost_share,
            "design_load_w": evaluation.heat_loss.design_load.value(),
        },
    })
    .to_string()
}

/// Keeps the design in the fragment of the page's address: read now and whenever it changes,
/// written when things have come to rest.
pub fn keep_in_address(state: State) {
    state.in_address.set_value(true);
    read_address(state);
    let listener = window_event_listener_untyped("hashchange", move |_| read_address(state));
    let waiting = StoredValue::new(None::<TimeoutHandle>);
    let stop = move || {
        if let Some(Some(handle)) = waiting.try_update_value(Option::take) {
            handle.clear();
        }
    };
    Effect::new(move |before: Option<()>| {
        let lawful = state.outcome.with(|outcome| outcome.errors.is_empty());
        let link = state.design.with(link_of);
        stop();
        if before.is_some() && lawful {
            let write = move || write_address(&link);
            waiting.set_value(set_timeout_with_handle(write, ADDRESS_REST).ok());
        }
    });
    on_cleanup(move || {
        listener.remove();
        stop();
    });
}

fn read_address(state: State) {
    let hash = window().location().hash().unwrap_or_default();
    let text = hash.trim_start_matches('#');
    // Another fragment is the page's own business.
    if !is_link(text) {
        return;
    }
    let known = state.design.with_untracked(link_of);
    match design_of_link(text) {
        Ok(design) if text != known => {
            state.replace(design);
            state.link_unread.set(false);
        }
        Ok(_) => {}
        Err(_) => {
            state.replace(Design::default());
            state.link_unread.set(true);
        }
    }
}

fn write_address(link: &str) {
    let address = format!("#{link}");
    if window().location().hash().is_ok_and(|hash| hash == address) {
        return;
    }
    if let Ok(history) = window().history() {
        let _ = history.replace_state_with_url(&JsValue::NULL, "", Some(&address));
    }
}
