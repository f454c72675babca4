//! What is chosen, in the fragment of the page's address: `#v=1&side_wall_foam_mm=89;people=3;dry`.
//!
//! A fragment that is not ours is the page's own business and leaves everything as it is. Steps of
//! the planner stay out of the page's history; only the sheet before the open one takes a place in
//! it, so that Back goes there, and then leaves.

use gloo_events::EventListener;
use gloo_timers::callback::Timeout;
use inchwise_link::Fragment;
use js_sys::Reflect;
use leptos::prelude::*;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{History, PopStateEvent, Window};

use crate::sheets::Sheet;
use crate::state::Planner;

/// Browsers allow about a hundred changes of the address in half a minute, ms.
const REST: u32 = 400;

/// What marks the place in the page's history that is ours, and where what is chosen is kept while
/// the fragment is the page's own.
const MARK: &str = "inchwise-planner";

fn window() -> Window {
    web_sys::window().expect("a planner stands on a page")
}

fn hash() -> String {
    window().location().hash().unwrap_or_default()
}

/// The whole address that brings everything back.
pub fn address_of(planner: Planner) -> String {
    let href = window().location().href().unwrap_or_default();
    let page = href.split('#').next().unwrap_or_default();
    [page, "#", &untrack(|| planner.fragment())].concat()
}

/// Keeps the address for as long as the planner stands. `reads` says whether it is to be reopened
/// from what stands there.
pub fn keep(planner: Planner, reads: bool) {
    if reads {
        reopen(planner);
    }
    let previous = StoredValue::new(None::<Sheet>);
    // Whether the place in the history that is shown is the one we added.
    let is_on_ours = StoredValue::new(is_marked(&window().history().ok()));
    let last = StoredValue::new(untrack(|| planner.fragment()));
    let listen = |event: &'static str, hear: Box<dyn Fn(&web_sys::Event)>| {
        let listener = EventListener::new(&window(), event, move |event| hear(event));
        StoredValue::new_local(listener);
    };
    listen(
        "popstate",
        Box::new(move |event| {
            let state = event.dyn_ref::<PopStateEvent>().map(PopStateEvent::state);
            let is_ours = state.is_some_and(|state| state_is_marked(&state));
            let was_ours = is_on_ours.get_value();
            is_on_ours.set_value(is_ours);
            let is_stepping_back = was_ours && !is_ours && Fragment::read(&hash()).is_some();
            if is_stepping_back && let Some(sheet) = previous.get_value() {
                previous.set_value(Some(planner.view.sheet.get_untracked()));
                planner.view.sheet.set(sheet);
                // The place we came back to says what was chosen when it was left.
                write(&untrack(|| planner.fragment()), false);
            }
        }),
    );
    listen(
        "hashchange",
        Box::new(move |_| {
            if hash() != ["#", &last.get_value()].concat() {
                let now = untrack(|| planner.fragment());
                if Fragment::read(&hash()).is_some_and(|it| it.written() != now) {
                    reopen(planner);
                }
            }
        }),
    );
    let waiting = StoredValue::new_local(None::<Timeout>);
    Effect::new(move |before: Option<Sheet>| {
        let sheet = planner.view.sheet.get();
        let fragment = planner.fragment();
        let is_lawful = planner.outcome.with(|outcome| outcome.errors.is_empty());
        if let Some(before) = before.filter(|before| *before != sheet)
            && previous.get_value() != Some(before)
        {
            previous.set_value(Some(before));
            if !is_on_ours.get_value() {
                is_on_ours.set_value(true);
                write(&fragment, true);
            }
        }
        // A page that nobody touched keeps the address it was opened with.
        if before.is_some() && is_lawful && last.get_value() != fragment {
            last.set_value(fragment.clone());
            waiting.set_value(Some(Timeout::new(REST, move || write(&fragment, false))));
        }
        sheet
    });
}

fn reopen(planner: Planner) {
    let hash = hash();
    let kept = kept();
    let fragment = Fragment::read(&hash).or_else(|| kept.as_deref().and_then(Fragment::read));
    if let Some(fragment) = fragment {
        planner.reopen(&fragment);
    } else if hash.starts_with("#v=") {
        // Ours by its first letters, and longer than anything that is read.
        planner.unread_link.set(Some(Vec::new()));
    }
}

fn kept() -> Option<String> {
    window().session_storage().ok()??.get_item(MARK).ok()?
}

fn state_is_marked(state: &JsValue) -> bool {
    state.is_object() && Reflect::has(state, &JsValue::from_str(MARK)).unwrap_or(false)
}

fn is_marked(history: &Option<History>) -> bool {
    history.as_ref().and_then(|it| it.state().ok()).is_some_and(|it| state_is_marked(&it))
}

fn write(fragment: &str, as_new: bool) {
    // What cannot be kept is not kept: the address still says it.
    if let Ok(Some(storage)) = window().session_storage() {
        let _ = storage.set_item(MARK, fragment);
    }
    let address = ["#", fragment].concat();
    let Ok(history) = window().history() else { return };
    if as_new {
        let state = js_sys::Object::new();
        let _ = Reflect::set(&state, &JsValue::from_str(MARK), &JsValue::TRUE);
        let _ = history.push_state_with_url(&state, "", Some(&address));
    } else if hash() != address {
        let state = history.state().unwrap_or(JsValue::NULL);
        let _ = history.replace_state_with_url(&state, "", Some(&address));
    }
}
