//! The tables of places: the shipped one, and one of the shop's own where the element names it.
//! Both are loaded when they are first needed.

use std::sync::Arc;

use gloo_net::http::Request;
use inchwise_link::{ChosenPlace, PlaceKind};
use inchwise_wire::{NamedPlace, PlaceTable};
use js_sys::{Function, Promise};
use leptos::prelude::*;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::Url;

/// How far a table is.
#[derive(Clone)]
pub enum Table {
    /// Nobody needed it.
    NotAsked,
    /// It is on its way.
    Loading,
    /// Here it is.
    There(Arc<PlaceTable>),
    /// It did not come.
    Failed,
}

impl Table {
    const fn is_open(&self) -> bool {
        matches!(self, Self::NotAsked | Self::Failed)
    }

    /// Whether it is as it will stay.
    pub const fn is_settled(&self) -> bool {
        matches!(self, Self::There(_) | Self::Failed)
    }

    fn search(&self, words: &str, most: usize) -> Vec<NamedPlace> {
        match self {
            Self::There(table) => table.search(words, most),
            _ => Vec::new(),
        }
    }
}

/// The tables of one planner.
#[derive(Clone, Copy)]
pub struct Places {
    load: StoredValue<Function, LocalStorage>,
    address: StoredValue<Option<String>>,
    /// The shipped table.
    pub shipped: RwSignal<Table>,
    /// The shop's own, empty where it has none.
    pub own: RwSignal<Table>,
}

impl Places {
    /// Nothing is loaded yet; `load` gives a promise of the shipped table's text, `address` is that
    /// of the shop's own table.
    pub fn new(load: Function, address: Option<String>) -> Self {
        Self {
            load: StoredValue::new_local(load),
            address: StoredValue::new(address),
            shipped: RwSignal::new(Table::NotAsked),
            own: RwSignal::new(Table::NotAsked),
        }
    }

    /// Loads what was not loaded yet.
    pub fn ask(self) {
        if self.own.with_untracked(Table::is_open) {
            match self.address.get_value() {
                None => self.own.set(Table::There(Arc::default())),
                Some(address) => {
                    self.own.set(Table::Loading);
                    leptos::task::spawn_local(async move {
                        let table = own_table(&address).await;
                        self.own
                            .try_set(table.map_or(Table::Failed, |it| Table::There(Arc::new(it))));
                    });
                }
            }
        }
        if self.shipped.with_untracked(Table::is_open) {
            self.shipped.set(Table::Loading);
            let promise = self.load.with_value(|load| load.call0(&JsValue::NULL));
            leptos::task::spawn_local(async move {
                let text = match promise.and_then(JsCast::dyn_into::<Promise>) {
                    Ok(promise) => JsFuture::from(promise).await.ok(),
                    Err(_) => None,
                };
                let table = text.and_then(|text| PlaceTable::read(&text.as_string()?).ok());
                self.shipped.try_set(table.map_or(Table::Failed, |it| Table::There(Arc::new(it))));
            });
        }
    }

    /// Whether both tables are as they will stay; whoever asks is told.
    pub fn are_settled(self) -> bool {
        self.own.with(Table::is_settled) && self.shipped.with(Table::is_settled)
    }

    /// Places whose names hold the words, the shop's own first; at most so many.
    pub fn search(self, words: &str, most: usize) -> Vec<ChosenPlace> {
        let own = self.own.with(|table| table.search(words, most));
        let shipped = self.shipped.with(|table| table.search(words, most - own.len()));
        let own = own.into_iter().map(|named| {
            ChosenPlace::new(named.name, PlaceKind::OfTheShop(named.error), named.place)
        });
        let shipped = shipped
            .into_iter()
            .map(|named| ChosenPlace::new(named.name, PlaceKind::Table(named.error), named.place));
        own.chain(shipped).collect()
    }

    /// The place of exactly this name.
    pub fn named(self, name: &str) -> Option<ChosenPlace> {
        self.search(name, usize::MAX).into_iter().find(|place| place.name == name)
    }
}

/// The table at an address of the page's own host.
async fn own_table(address: &str) -> Option<PlaceTable> {
    let Some(url) = own_address(address) else {
        warn("places are read from this host only");
        return None;
    };
    let answer = Request::get(&url).send().await.ok().filter(|answer| answer.ok());
    let Some(answer) = answer else {
        warn("the shop's table of places was not found");
        return None;
    };
    let text = answer.text().await.ok()?;
    let (table, faults) = PlaceTable::read_checked(&text);
    for fault in faults.iter().take(8) {
        let line = fault.line.to_string();
        warn(&["line ", &line, " of the table of places is not a place that can be"].concat());
    }
    Some(table)
}

/// An address in full, if it is one of the page's own host.
fn own_address(address: &str) -> Option<String> {
    let page = web_sys::window()?.document()?.base_uri().ok()??;
    let url = Url::new_with_base(address, &page).ok()?;
    (url.origin() == web_sys::window()?.location().origin().ok()?).then(|| url.href())
}

/// Tells whoever wrote the page.
pub fn warn(text: &str) {
    web_sys::console::warn_1(&JsValue::from_str(&["inchwise-planner: ", text].concat()));
}
