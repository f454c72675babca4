//! The tables of places: the shipped one, and one of the shop's own where the element names it.
//! Both are loaded when they are first needed.

use inchwise_wire::{NamedPlace, PlaceTable};
use js_sys::Function;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{Response, Url};

use super::place::{ChosenPlace, PlaceKind};
use crate::dom::window;
use crate::promise::{Settled, settled};
use crate::reactive::Watched;

/// How far a table is.
pub enum Table {
    /// Nobody needed it.
    NotAsked,
    /// It is on its way.
    Loading,
    /// Here it is.
    There(PlaceTable),
    /// It did not come.
    Failed,
}

impl Table {
    const fn is_open(&self) -> bool {
        matches!(self, Self::NotAsked | Self::Failed)
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
    /// The page's way to load the shipped table's text.
    load: Watched<Function>,
    /// The shipped table.
    pub shipped: Watched<Table>,
    /// The shop's own, empty where it has none.
    pub own: Watched<Table>,
    /// What is to be done once both are as they will stay.
    waiting: Watched<Vec<Box<dyn FnOnce()>>>,
}

impl Places {
    /// Nothing is loaded yet; `load` gives a promise of the shipped table's text.
    pub fn new(load: Function) -> Self {
        Self {
            load: Watched::new(load),
            shipped: Watched::new(Table::NotAsked),
            own: Watched::new(Table::NotAsked),
            waiting: Watched::new(Vec::new()),
        }
    }

    /// Loads what was not loaded yet; `address` is that of the shop's own table.
    pub fn ask(self, address: Option<String>) {
        if self.own.with_untracked(Table::is_open) {
            self.own.set(Table::Loading);
            match address {
                Some(address) => self.fetch_own(&address),
                None => self.come(self.own, Table::There(PlaceTable::default())),
            }
        }
        if self.shipped.with_untracked(Table::is_open) {
            self.shipped.set(Table::Loading);
            let promise = self.load.with_untracked(|load| load.call0(&JsValue::NULL));
            let there = move |text: Settled| {
                let text = text.ok().and_then(|text| text.as_string());
                let table = text.and_then(|text| PlaceTable::read(&text).ok());
                self.come(self.shipped, table.map_or(Table::Failed, Table::There));
            };
            settled(&promise.unwrap_or_default(), Box::new(there));
        }
    }

    fn fetch_own(self, address: &str) {
        let fail = move |why: &str| {
            warn(why);
            self.come(self.own, Table::Failed);
        };
        let Some(url) = own_address(address) else {
            fail(&["places are read from this host only, not from ", address].concat());
            return;
        };
        let fetched = window().fetch_with_str(&url);
        let answered = move |answer: Settled| {
            let response = answer.ok().and_then(|answer| answer.dyn_into::<Response>().ok());
            let text = response.filter(Response::ok).and_then(|response| response.text().ok());
            let Some(text) = text else {
                fail(&["the table of places was not found at ", &url].concat());
                return;
            };
            let read = move |text: Settled| {
                let text = text.ok().and_then(|text| text.as_string()).unwrap_or_default();
                self.come(self.own, Table::There(own_table(&text)));
            };
            settled(&text, Box::new(read));
        };
        settled(&fetched, Box::new(answered));
    }

    fn come(self, which: Watched<Table>, table: Table) {
        which.set(table);
        self.act();
    }

    /// Does something once both tables are as they will stay.
    pub fn once_settled(self, act: Box<dyn FnOnce()>) {
        self.waiting.update_untracked(|waiting| waiting.push(act));
        self.act();
    }

    fn act(self) {
        let is_settled = |table: &mut Table| matches!(table, Table::There(_) | Table::Failed);
        let both = [self.own, self.shipped];
        // None of them once the planner is gone.
        if both.into_iter().all(|table| table.update_untracked(is_settled) == Some(true)) {
            let waiting = self.waiting.update_untracked(std::mem::take).unwrap_or_default();
            for act in waiting {
                act();
            }
        }
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

/// An address in full, if it is one of the page's own host.
fn own_address(address: &str) -> Option<String> {
    let page = window().document()?.base_uri().ok()??;
    let url = Url::new_with_base(address, &page).ok()?;
    (url.origin() == window().location().origin().ok()?).then(|| url.href())
}

/// The places of a shop's table that are places; the others are told to whoever wrote it.
fn own_table(text: &str) -> PlaceTable {
    let (table, faults) = PlaceTable::read_checked(text);
    for fault in faults {
        let line = fault.line.to_string();
        warn(&["line ", &line, " of the table of places is not a place that can be"].concat());
    }
    table
}

/// Tells whoever wrote the page.
pub fn warn(text: &str) {
    web_sys::console::warn_1(&JsValue::from_str(&["inchwise-planner: ", text].concat()));
}
