//! The place: its name, the search, and every figure of it to be typed over.

use inchwise_core::climate::{ClimateQuantity, Place};
use inchwise_core::design::Field;
use inchwise_core::units::{
    Angle, Irradiation, Length, Pressure, Temperature, TemperatureDifference,
};
use inchwise_wire::{NamedPlace, PlaceTable};
use js_sys::{Function, Promise};
use wasm_bindgen::closure::Closure;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::KeyboardEvent;

use super::missed::missed;
use super::on_toggle;
use super::unit::number;
use crate::dom::{El, el, input_of};
use crate::measure::shortest;
use crate::reactive::{Watched, keep_up};
use crate::text::Language;
use crate::year::{ChosenPlace, PlaceKind, YearState};

/// Most places shown at once.
const MOST: usize = 8;

/// The table of places: loaded when it is first needed.
#[derive(Clone, Copy)]
pub struct Places {
    /// The page's way to load its text.
    load: Watched<Function>,
    table: Watched<Table>,
}

enum Table {
    NotAsked,
    Loading,
    There(PlaceTable),
    Failed,
}

impl Places {
    /// Nothing is loaded yet; `load` gives a promise of the table's text.
    pub fn new(load: Function) -> Self {
        Self { load: Watched::new(load), table: Watched::new(Table::NotAsked) }
    }

    fn ask(self) {
        if !self.table.with_untracked(|table| matches!(table, Table::NotAsked | Table::Failed)) {
            return;
        }
        self.table.set(Table::Loading);
        let promise = self.load.with_untracked(|load| load.call0(&JsValue::NULL));
        let Some(promise) = promise.ok().and_then(|promise| promise.dyn_into::<Promise>().ok())
        else {
            self.table.set(Table::Failed);
            return;
        };
        let there = Closure::once_into_js(move |text: JsValue| {
            let table = text.as_string().and_then(|text| PlaceTable::read(&text).ok());
            self.table.set(table.map_or(Table::Failed, Table::There));
        });
        let failed = Closure::once_into_js(move |_: JsValue| self.table.set(Table::Failed));
        // Of the two one is called and freed; the other stays, once a planner.
        let then = js_sys::Reflect::get(&promise, &"then".into()).ok();
        if let Some(then) = then.and_then(|then| then.dyn_into::<Function>().ok()) {
            let _ = then.call2(&promise, &there, &failed);
        }
    }

    fn search(self, words: &str) -> Vec<NamedPlace> {
        self.table.with(|table| match table {
            Table::There(table) => table.search(words, MOST),
            _ => Vec::new(),
        })
    }
}

/// The place's part of the panel.
pub(super) fn place(year: YearState, language: Language, places: Places) -> El {
    let words = language.year();
    let name = el("p").class("year-place").test_id("year-place").with(&[
        el("strong").text_with(move || {
            let name = year.place.with(|place| place.name.clone());
            if name.is_empty() { words.varnholm.to_owned() } else { name }
        }),
        el("span").text_with(move || [" ", &described(year, language)].concat()),
    ]);
    let size = el("button")
        .attr("type", "button")
        .class("mind")
        .test_id("year-size-for")
        .on("click", move |_| {
            let winter = year.place.with_untracked(|place| place.place.winter_design);
            let step = Field::OutdoorTemperature.range().step;
            let rounded = (winter.as_celsius() / step).floor() * step;
            year.state.put(Field::OutdoorTemperature, Some(rounded));
        })
        .text_with(move || {
            let winter = year.state.notation().temperature(year.winter_design());
            words.size_for.with(&[&winter])
        });
    let inside = el("div").class("year-search").with(&[search(year, language, places), size]);
    el("div").class("year-places").with(&[
        name,
        missed(year, language),
        inside,
        figures(year, language),
    ])
}

/// Where the figures come from and how far they are to be trusted.
fn described(year: YearState, language: Language) -> String {
    let words = language.year();
    let notation = year.state.notation();
    year.place.with(|place| {
        let kind = match place.kind {
            PlaceKind::Invented => words.invented.to_owned(),
            PlaceKind::Table(error) => {
                words.estimate.with(&[&notation.temperature_difference(error)])
            }
        };
        if place.is_changed { [&kind, " ", words.changed].concat() } else { kind }
    })
}

fn search(year: YearState, language: Language, places: Places) -> El {
    const KEY: &str = "year-place-search";
    let words = language.year();
    let typed = Watched::new(String::new());
    let list = el("ul").class("year-found").test_id("year-found");
    let inside = list.clone();
    let box_ = el("input")
        .attr("type", "search")
        .attr("id", KEY)
        .attr("autocomplete", "off")
        .attr("aria-describedby", "year-place-note")
        .test_id(KEY)
        .on("input", move |event| {
            places.ask();
            if let Some(input) = input_of(&event) {
                typed.set(input.value());
            }
        });
    let first = list.clone();
    let box_ = box_.on("keydown", move |event| {
        let Ok(event) = event.dyn_into::<KeyboardEvent>() else { return };
        let found = first.element().query_selector("button").ok().flatten();
        let Some(button) = found.and_then(|found| found.dyn_into::<web_sys::HtmlElement>().ok())
        else {
            return;
        };
        match event.key().as_str() {
            "Enter" => button.click(),
            "ArrowDown" => {
                event.prevent_default();
                let _ = button.focus();
            }
            _ => {}
        }
    });
    let cleared = box_.clone();
    let choose = move |place: ChosenPlace| {
        cleared.property("value", &"".into());
        typed.set(String::new());
        let _ = cleared.html().focus();
        year.go_to(place);
    };
    keep_up(Box::new(move || {
        let found = typed.with(|words| places.search(words));
        let rows: Vec<El> = found
            .into_iter()
            .map(|named| {
                let choose = choose.clone();
                let name = named.name.clone();
                let button = el("button")
                    .attr("type", "button")
                    .text(&name)
                    .on("click", move |_| {
                        choose(ChosenPlace {
                            name: named.name.clone(),
                            kind: PlaceKind::Table(named.error),
                            is_changed: false,
                            place: named.place.clone(),
                        });
                    })
                    .on("keydown", step_among);
                el("li").child(&button)
            })
            .collect();
        inside.refill(&rows);
    }));
    let status = el("p").class("hint").attr("role", "status").text_with(move || {
        let asked = typed.with(|typed| !typed.trim().is_empty());
        places.table.with(|table| match table {
            Table::Failed => words.no_table.to_owned(),
            Table::Loading if asked => words.working_out.to_owned(),
            Table::There(table) if asked => {
                let count = typed.with(|typed| table.search(typed, table.count()).len());
                words.found.with(&[&year.state.notation().count(count as f64)])
            }
            _ => String::new(),
        })
    });
    let back = el("button")
        .attr("type", "button")
        .class("mind")
        .on("click", move |_| year.go_to(ChosenPlace::default()))
        .text(words.back);
    let shown = back.clone();
    keep_up(Box::new(move || {
        shown.flag("hidden", year.place.with(|place| *place == ChosenPlace::default()));
    }));
    let sources = el("details").class("year-sources").child(&el("summary").text(words.sources));
    let credit = el("div").children_with(move || {
        places.table.with(|table| match table {
            Table::There(table) => {
                // The last line of the head describes the columns.
                let lines = table.sources.len().saturating_sub(1);
                let shown = table.sources.iter().take(lines);
                shown.map(|line| el("p").attr("lang", "en").text(line)).collect()
            }
            _ => Vec::new(),
        })
    });
    let sources = sources.child(&credit);
    let hidden = sources.clone();
    keep_up(Box::new(move || {
        let there = places.table.with(|table| matches!(table, Table::There(_)));
        hidden.flag("hidden", !there);
    }));
    el("div").class("field").with(&[
        el("label").attr("for", KEY).text(words.search),
        box_,
        el("p").class("hint").attr("id", "year-place-note").text(words.search_note),
        status,
        list,
        back,
        sources,
    ])
}

/// Up and down among the places found.
fn step_among(event: web_sys::Event) {
    let Ok(event) = event.dyn_into::<KeyboardEvent>() else { return };
    let button =
        event.current_target().and_then(|target| target.dyn_into::<web_sys::Element>().ok());
    let Some(item) = button.and_then(|button| button.parent_element()) else { return };
    let next = match event.key().as_str() {
        "ArrowDown" => item.next_element_sibling(),
        "ArrowUp" => item.previous_element_sibling(),
        _ => return,
    };
    event.prevent_default();
    let next = next.and_then(|next| next.first_element_child());
    if let Some(next) = next.and_then(|next| next.dyn_into::<web_sys::HtmlElement>().ok()) {
        let _ = next.focus();
    }
}

/// One figure of a place: how it is read and set.
#[derive(Clone, Copy)]
struct Figure {
    quantity: ClimateQuantity,
    get: fn(&Place, usize) -> f64,
    set: fn(&mut Place, usize, f64),
}

/// Figures of the whole place.
const WHOLE: [Figure; 4] = [
    Figure {
        quantity: ClimateQuantity::Elevation,
        get: |place, _| place.elevation.value(),
        set: |place, _, value| place.elevation = Length::new(value),
    },
    Figure {
        quantity: ClimateQuantity::Latitude,
        get: |place, _| place.latitude.as_degrees(),
        set: |place, _, value| place.latitude = Angle::degrees(value),
    },
    Figure {
        quantity: ClimateQuantity::WinterDesign,
        get: |place, _| place.winter_design.as_celsius(),
        set: |place, _, value| place.winter_design = Temperature::celsius(value),
    },
    Figure {
        quantity: ClimateQuantity::SummerDesign,
        get: |place, _| place.summer_design.as_celsius(),
        set: |place, _, value| place.summer_design = Temperature::celsius(value),
    },
];

/// Figures of a month.
const MONTHLY: [Figure; 4] = [
    Figure {
        quantity: ClimateQuantity::Temperature,
        get: |place, month| place.months[month].temperature.as_celsius(),
        set: |place, month, value| place.months[month].temperature = Temperature::celsius(value),
    },
    Figure {
        quantity: ClimateQuantity::DailyRange,
        get: |place, month| place.months[month].daily_range.value(),
        set: |place, month, value| {
            place.months[month].daily_range = TemperatureDifference::new(value);
        },
    },
    Figure {
        quantity: ClimateQuantity::VapourPressure,
        get: |place, month| place.months[month].vapour_pressure.value(),
        set: |place, month, value| place.months[month].vapour_pressure = Pressure::new(value),
    },
    Figure {
        quantity: ClimateQuantity::DailyGlobalIrradiation,
        get: |place, month| place.months[month].daily_global_irradiation.as_kilowatt_hours(),
        set: |place, month, value| {
            place.months[month].daily_global_irradiation = Irradiation::kilowatt_hours(value);
        },
    },
];

/// Every figure of the place in a box of its own, made when it is opened.
fn figures(year: YearState, language: Language) -> El {
    let words = language.year();
    let open = Watched::new(false);
    let inside = el("div").children_with(move || {
        if !open.get() {
            return Vec::new();
        }
        let whole = [words.elevation, words.latitude, words.winter, words.summer_temperature];
        let rows: Vec<El> = WHOLE
            .into_iter()
            .zip(whole)
            .enumerate()
            .map(|(index, (figure, label))| {
                let key = ["place-whole-", &index.to_string()].concat();
                let input = figure_box(year, language, key.clone(), figure, 0);
                let label = el("label").attr("for", &key).text(label);
                el("div").class("year-figure").with(&[label, input])
            })
            .collect();
        let heads = words.figure_columns.map(|name| el("th").attr("scope", "col").text(name));
        let months = words.months.iter().enumerate().map(|(month, name)| {
            let cells = MONTHLY.iter().enumerate().map(|(index, &figure)| {
                let key = ["place-", &month.to_string(), "-", &index.to_string()].concat();
                let said = [*name, ", ", words.figure_columns[index + 1]].concat();
                let input = figure_box(year, language, key, figure, month);
                el("td").child(&input.attr("aria-label", &said))
            });
            let cells: Vec<El> = cells.collect();
            el("tr").child(&el("th").attr("scope", "row").text(name)).with(&cells)
        });
        let months: Vec<El> = months.collect();
        let table = el("table")
            .with(&[el("thead").child(&el("tr").with(&heads)), el("tbody").with(&months)]);
        let fault = el("p").class("fault").attr("role", "status").text_with(move || {
            let wrong = !year.place_errors().is_empty()
                || year.typed.with(|typed| typed.iter().any(|it| it.key.starts_with("place-")));
            if wrong { words.bad_figure.to_owned() } else { String::new() }
        });
        vec![el("div").class("year-whole").with(&rows), fault, table]
    });
    let details = el("details")
        .class("year-place-figures")
        .test_id("year-place-figures")
        .with(&[el("summary").text(words.figures), inside]);
    on_toggle(&details, move |is_open| open.set(is_open));
    details
}

fn figure_box(
    year: YearState,
    language: Language,
    key: String,
    figure: Figure,
    month: usize,
) -> El {
    let own = key.clone();
    let input = el("input")
        .attr("type", "text")
        .attr("inputmode", "decimal")
        .attr("autocomplete", "off")
        .attr("id", &key)
        .on("change", move |event| {
            let Some(input) = input_of(&event) else { return };
            match number(&input.value(), "", language) {
                Some(value) => {
                    year.change_place(&own, |place| (figure.set)(place, month, value));
                }
                None => year.keep_typed(&own, input.value()),
            }
        });
    let shown = input.clone();
    keep_up(Box::new(move || {
        let typed = year.typed.with(|typed| {
            typed.iter().find(|typed| typed.key == key).map(|typed| typed.text.clone())
        });
        let wrong = typed.is_some()
            || year.place_errors().iter().any(|error| {
                error.quantity == figure.quantity && error.index.is_none_or(|index| index == month)
            });
        let text = typed.unwrap_or_else(|| {
            let value = year.place.with(|place| (figure.get)(&place.place, month));
            shortest(value, 2, language)
        });
        shown.property("value", &text.into());
        shown.set("aria-invalid", if wrong { "true" } else { "false" });
    }));
    input
}
