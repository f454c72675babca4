//! The first part of the page: what a visitor sees and takes hold of before anything else is
//! there. The further part (`further.rs`) is loaded behind it.

use std::time::Duration;

use inchwise_core::climate::CheckedPlace;
use inchwise_core::design::Design;
use wasm_bindgen::JsValue;
use web_sys::{HtmlElement, Worker};

use crate::app::first_part;
use crate::aside::{Aside, Told};
use crate::choices::Packed;
use crate::dom::{El, el};
use crate::line::Line;
use crate::link::{BARE, design_of_link_at};
use crate::measure::UnitSystem;
use crate::outward;
use crate::reactive::Scope;
use crate::state::State;
use crate::text::Language;

/// While a hand drags, the further part of the page follows so many times a second at most.
const FOLLOWS_AFTER: Duration = Duration::from_millis(90);

/// One planner on the page. The page's script keeps it for as long as its element stays in the
/// document.
pub struct Planner {
    state: State,
    host: HtmlElement,
    aside: Aside,
    line: Line,
    further: El,
    scope: Scope,
}

impl Planner {
    /// Puts a planner into `root`, an empty block inside the shadow root of `host`. Attributes
    /// already on the host are read here; later changes arrive through [`Planner::set`].
    ///
    /// - `design`: what the planner starts from, as a link `v=1&side_wall_foam_mm=89`; the script
    ///   also takes an object or its JSON and makes a link of it.
    /// - `units`: `metric` or `imperial`.
    /// - `language`: `en` or `fr`; without it, the nearest `lang` of the page.
    /// - `theme`: `light` or `dark`, read by the style sheet alone.
    /// - `address`: where it stands, design and year are kept in the fragment of the page's address.
    ///
    /// Fields are solved by `worker`, a fresh one of `web/worker.js`, or what behaves like one.
    pub fn mount(root: &HtmlElement, host: HtmlElement, worker: Worker) -> Self {
        let scope = Scope::new();
        let further = el("div").class("further").test_id("further");
        let (state, aside, line) = scope.with(|| {
            let state = state_of(&host);
            let aside = Aside::start(state, worker);
            outward::tell_host(state, host.clone());
            if host.has_attribute("address") {
                outward::read_addresses(state);
            }
            let _ = root.append_child(first_part(state, &further).element());
            (state, aside, Line::new(state))
        });
        Self { state, host, aside, line, further, scope }
    }

    /// The block for the further part.
    pub fn further(&self) -> HtmlElement {
        self.further.html().clone()
    }

    /// Tells the further part what is chosen, from now on, and what the worker is asked.
    pub fn follow(&self, say: Box<dyn Fn(&Packed)>, told: Told) {
        self.scope.with(|| self.line.speak(FOLLOWS_AFTER, say));
        self.aside.tell(told);
    }

    /// Takes over what was chosen in the further part. Once it is the visitor's choice, what is said of the page's
    /// address is past.
    pub fn hear(&self, packed: Packed) {
        if packed.is_of_visitor() {
            self.state.link_unread.set(false);
        }
        self.line.hear(packed);
    }

    /// An attribute of the host changed; `None` says it was removed. Unknown names do nothing.
    pub fn set(&self, attribute: &str, value: Option<&str>) {
        let state = self.state;
        match attribute {
            "design" => {
                // Where the box stands may be said elsewhere.
                let place = state.chosen_untracked(|design| design.place.clone());
                if let Some(design) = design_of(value, &place) {
                    state.replace(design);
                }
            }
            "units" => state.units.set(units_of(value)),
            "language" => state.language.set(language_of(&self.host)),
            _ => {}
        }
    }

    /// The design as it stands, lawful or not: an object with the keys of the JSON form.
    pub fn design(&self) -> JsValue {
        self.state.chosen_untracked(|design| outward::design_object(design).into())
    }

    /// Takes the planner out of the document and ends everything it started.
    pub fn unmount(&self) {
        self.scope.end();
    }
}

/// The state that a host's attributes ask for.
fn state_of(host: &HtmlElement) -> State {
    let units = units_of(host.get_attribute("units").as_deref());
    let design = design_of(host.get_attribute("design").as_deref(), &CheckedPlace::default());
    State::new(design.unwrap_or_default(), units, language_of(host))
}

fn units_of(attribute: Option<&str>) -> UnitSystem {
    attribute.and_then(UnitSystem::from_key).unwrap_or_default()
}

fn language_of(host: &HtmlElement) -> Language {
    let own = host.get_attribute("language");
    let near = || host.closest("[lang]").ok().flatten()?.get_attribute("lang");
    own.or_else(near).as_deref().and_then(Language::from_tag).unwrap_or_default()
}

/// The design of an attribute, standing at a place unless it says another; the default one where there is none. One
/// that cannot be read is reported to the console, for whoever wrote the page, and changes nothing.
fn design_of(attribute: Option<&str>, place: &CheckedPlace) -> Option<Design> {
    match design_of_link_at(attribute.unwrap_or(BARE), place) {
        Ok(design) => Some(design),
        Err(fault) => {
            let said = format!("inchwise-planner: the design cannot be read: {}", fault.said());
            web_sys::console::warn_1(&JsValue::from_str(&said));
            None
        }
    }
}
