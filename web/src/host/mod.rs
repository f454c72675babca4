//! The page around the planner: attributes come in, events and the address go out.

mod address;
mod attributes;
mod events;

use js_sys::{Function, Reflect};
use leptos::mount::{UnmountHandle, mount_to};
use leptos::prelude::*;
use leptos::tachys::view::any_view::AnyViewState;
use wasm_bindgen::prelude::wasm_bindgen;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::HtmlElement;

pub use address::address_of;

use crate::app::App;
use crate::sheets::Sheet;
use crate::state::{Health, Inputs, Planner, Start};
use inchwise_link::Fragment;

/// One planner on the page. The page's script keeps it for as long as its element stays in the
/// document.
#[wasm_bindgen]
pub struct Handle {
    planner: Planner,
    host: HtmlElement,
    mounted: Option<UnmountHandle<AnyViewState>>,
}

fn tool(tools: &JsValue, name: &str) -> Function {
    let tool = Reflect::get(tools, &JsValue::from_str(name)).unwrap_or_default();
    tool.dyn_into().unwrap_or_else(|_| Function::new_no_args(""))
}

/// Puts a planner into `root`, an empty block inside the shadow root of `host`. Attributes already
/// on the host are read here; later changes arrive through [`Handle::set`].
///
/// - `design`: what the planner starts from, as a link `v=1&side_wall_foam_mm=89`; the script also
///   takes an object or its JSON and makes a link of it.
/// - `year`: heater, prices and place, as at the end of a link.
/// - `places`: the address of a table of the shop's own places.
/// - `units`: `metric` or `imperial`.
/// - `language`: `en` or `fr`; without it, the nearest `lang` of the page.
/// - `theme`: `light` or `dark`, read by the style sheet alone.
/// - `address`: where it stands, what is chosen is kept in the fragment of the page's address.
///
/// Of `tools`, `spawn` gives a fresh worker, `places` a promise of the text of the table of places,
/// and `kept` is what an earlier [`Handle::unmount`] gave.
#[wasm_bindgen]
pub fn mount(root: HtmlElement, host: HtmlElement, tools: JsValue) -> Handle {
    std::panic::set_hook(Box::new(|broken| {
        web_sys::console::error_1(&JsValue::from_str(&broken.to_string()));
    }));
    let spawn = tool(&tools, "spawn");
    let load_places = tool(&tools, "places");
    let kept = Reflect::get(&tools, &JsValue::from_str("kept")).ok().and_then(|it| it.as_string());
    let usual = attributes::usual(&host);
    let start = Start {
        units: attributes::units(&host),
        language: attributes::language(&host),
        own_places: host.get_attribute("places"),
        usual,
        spawn,
        load_places,
    };
    let slot = StoredValueSlot::default();
    let inside = slot.clone();
    let own = send_wrapper::SendWrapper::new(host.clone());
    let mounted = mount_to(root, move || {
        let planner = Planner::new(start);
        provide_context(planner);
        inside.set(planner);
        outwards(planner, &own, kept.as_deref());
        view! { <App/> }.into_any()
    });
    Handle { planner: slot.get(), host, mounted: Some(mounted) }
}

/// Where the planner is handed out of the closure that makes it.
#[derive(Clone, Default)]
struct StoredValueSlot(std::rc::Rc<std::cell::Cell<Option<Planner>>>);

impl StoredValueSlot {
    fn set(&self, planner: Planner) {
        self.0.set(Some(planner));
    }

    fn get(&self) -> Planner {
        self.0.get().expect("a planner is made as it is mounted")
    }
}

/// Everything that leads out of the planner, and what it is reopened from.
fn outwards(planner: Planner, host: &HtmlElement, kept: Option<&str>) {
    planner.find_place(planner.usual.with_value(|(_, text)| text.place.clone()), true);
    if let Some(fragment) = kept.and_then(Fragment::read) {
        planner.reopen(&fragment);
    }
    if host.has_attribute("address") {
        address::keep(planner, kept.is_none());
    }
    events::tell(planner, host.clone());
    let host = host.clone();
    Effect::new(move |_| {
        let state = match (planner.pool.health.get(), planner.is_whole()) {
            (Health::Lost, _) => "lost",
            (_, false) => "working",
            (_, true) => "ready",
        };
        let _ = host.set_attribute("data-state", state);
    });
}

#[wasm_bindgen]
impl Handle {
    /// An attribute of the host changed; `None` says it was removed. Unknown names do nothing.
    pub fn set(&self, attribute: &str, value: Option<String>) {
        let planner = self.planner;
        match attribute {
            "design" => {
                if let Some(design) = attributes::design(value.as_deref()) {
                    let mut inputs = planner.inputs.get_untracked();
                    inputs.design = design;
                    planner.replace(inputs);
                }
            }
            "units" => planner.units.set(attributes::units(&self.host)),
            "language" => planner.language.set(attributes::language(&self.host)),
            _ => {}
        }
    }

    /// The design as it stands, lawful or not: an object with the keys of the JSON form.
    pub fn design(&self) -> JsValue {
        self.planner.inputs.with_untracked(|inputs| events::design_object(&inputs.design).into())
    }

    /// Takes the planner out of the document and ends everything it started; gives what a later one
    /// is reopened from.
    pub fn unmount(mut self) -> String {
        let kept = untrack(|| self.planner.fragment());
        drop(self.mounted.take());
        kept
    }
}

impl Planner {
    /// The text that brings everything back.
    pub fn fragment(self) -> String {
        let sheet = self.view.sheet.get().key();
        self.usual.with_value(|(_, usual)| self.inputs.with(|inputs| inputs.fragment(usual, sheet)))
    }

    /// Takes over what a fragment says, on behalf of the page.
    pub fn reopen(self, fragment: &Fragment<'_>) {
        let read = self.usual.with_value(|(inputs, usual)| {
            let tall = inputs.own_height;
            Inputs::read(fragment.design, fragment.year, usual)
                .map(|(inputs, year)| (Inputs { own_height: tall, ..inputs }, year))
        });
        match read {
            Ok((inputs, year)) => {
                self.replace(inputs);
                let unused = (!year.unused.is_empty()).then_some(year.unused);
                self.unread_link.set(unused);
                self.find_place(year.place, false);
            }
            Err(_) => {
                self.replace(self.usual.with_value(|(inputs, _)| inputs.clone()));
                self.unread_link.set(Some(Vec::new()));
            }
        }
        if let Some(sheet) = Sheet::from_key(fragment.sheet) {
            self.view.sheet.set(sheet);
        }
    }

    /// Goes to a place that was wished for, once the tables of places are there.
    fn find_place(self, wish: inchwise_link::PlaceWish, is_usual: bool) {
        let go = move |mut place: inchwise_link::ChosenPlace, wish: &inchwise_link::PlaceWish| {
            let refused = wish.change(&mut place.place);
            self.inputs.update(|inputs| inputs.place = place.clone());
            if is_usual {
                self.usual.update_value(|(inputs, _)| inputs.place = place);
            }
            if !refused.is_empty() {
                self.unread_link.set(Some(refused));
            }
        };
        if wish.name.is_empty() {
            if !wish.changes.is_empty() {
                go(inchwise_link::ChosenPlace::default(), &wish);
            }
            return;
        }
        self.places.ask();
        Effect::new(move |done: Option<bool>| {
            if done == Some(true) || !self.places.are_settled() {
                return done == Some(true);
            }
            match untrack(|| self.places.named(&wish.name)) {
                Some(place) => go(place, &wish),
                None => self.unread_link.set(Some(vec!["place".to_owned()])),
            }
            true
        });
    }
}
