//! Every figure of the place in a box of its own, made when it is opened.

use inchwise_core::climate::ClimateQuantity;

use super::unit;
use crate::dom::{El, el};
use crate::figure::{Figure, MONTHLY, WHOLE};
use crate::panel::year::on_toggle;
use crate::panel::year::text_box::TextBox;
use crate::reactive::{Watched, keep_up, untracked};
use crate::text::Language;
use crate::year::YearState;

/// The folded boxes.
pub(in crate::panel::year) fn figures(year: YearState, language: Language) -> El {
    let open = Watched::new(false);
    let inside = el("div")
        .children_with(move || if open.get() { boxes(year, language) } else { Vec::new() });
    let details = el("details")
        .class("year-place-figures")
        .test_id("year-place-figures")
        .with(&[el("summary").text(language.year().figures), inside]);
    on_toggle(&details, move |is_open| open.set(is_open));
    details
}

fn boxes(year: YearState, language: Language) -> Vec<El> {
    let words = language.year();
    let whole = [words.elevation, words.latitude, words.winter, words.summer_temperature];
    let rows = WHOLE.into_iter().zip(whole).map(|(quantity, label)| {
        let figure = Figure { quantity, month: 0 };
        let label =
            el("label").attr("for", &key(figure)).text_with(move || named(year, label, quantity));
        el("div").class("year-figure").with(&[label, figure_box(year, figure)])
    });
    let rows: Vec<El> = rows.collect();
    let [month, names @ ..] = words.figure_columns;
    let heads = MONTHLY.into_iter().zip(names).map(|(quantity, name)| {
        el("th").attr("scope", "col").text_with(move || named(year, name, quantity))
    });
    let heads: Vec<El> = heads.collect();
    let months = language.months().iter().enumerate().map(|(month, month_name)| {
        let cells = MONTHLY.into_iter().zip(names).map(|(quantity, name)| {
            let input = figure_box(year, Figure { quantity, month });
            let said = move || [month_name, ", ", &named(year, name, quantity)].concat();
            el("td").child(&input.attr_with("aria-label", said))
        });
        let cells: Vec<El> = cells.collect();
        el("tr").child(&el("th").attr("scope", "row").text(month_name)).with(&cells)
    });
    let months: Vec<El> = months.collect();
    let head = el("tr").child(&el("th").attr("scope", "col").text(month)).with(&heads);
    let table = el("table").with(&[el("thead").child(&head), el("tbody").with(&months)]);
    let fault = el("p").class("fault").attr("role", "status").text_with(move || {
        let wrong = !year.place_errors().is_empty()
            || year.typed.with(|typed| typed.iter().any(|it| it.key.starts_with("place-")));
        if wrong { words.bad_figure.to_owned() } else { String::new() }
    });
    let measured = el("p").class("hint").text_with(move || {
        if year.is_measured() { language.weather().measured_figures } else { "" }.to_owned()
    });
    vec![measured, el("div").class("year-whole").with(&rows), fault, table]
}

/// The name of a figure with its unit.
fn named(year: YearState, name: &str, quantity: ClimateQuantity) -> String {
    [name, ", ", unit(year, quantity).name()].concat()
}

/// The key of a figure's box.
fn key(figure: Figure) -> String {
    ["place-", &figure.key()].concat()
}

/// Whether measured hours take a figure from the place.
fn is_taken(quantity: ClimateQuantity) -> bool {
    matches!(quantity, ClimateQuantity::Elevation | ClimateQuantity::Latitude)
}

fn figure_box(year: YearState, figure: Figure) -> El {
    let key = key(figure);
    let own = key.clone();
    let text = TextBox::new(&key, move |typed| {
        match untracked(|| unit(year, figure.quantity)).read(typed) {
            Some(value) => year.change_place(&own, figure, value),
            None => year.keep_typed(&own, typed.to_owned()),
        }
    });
    let input = text.input.clone().attr("inputmode", "decimal");
    let shown = input.clone();
    keep_up(Box::new(move || {
        let typed = year.typed.with(|typed| {
            typed.iter().find(|typed| typed.key == key).map(|typed| typed.text.clone())
        });
        let wrong = typed.is_some()
            || year.place_errors().iter().any(|error| {
                error.quantity == figure.quantity
                    && error.index.is_none_or(|index| index == figure.month)
            });
        let now = typed
            .unwrap_or_else(|| unit(year, figure.quantity).written(figure.of(&year.figures())));
        text.say(&now, wrong);
        shown.flag("readonly", year.is_measured() && !is_taken(figure.quantity));
    }));
    input
}
