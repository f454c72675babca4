//! Where the hours come from: the place's name, the search, hours of the visitor's own, and every
//! figure to be typed over.

mod figures;
mod hours;
mod search;

pub(super) use figures::figures;

use inchwise_core::climate::{ClimateQuantity, mean_extraterrestrial_irradiation};
use inchwise_core::design::Field;
use inchwise_core::units::Irradiation;

use super::missed::missed;
use super::place_unit;
use crate::dom::{El, el};
use crate::reactive::keep_up;
use crate::text::Language;
use crate::year::{ChosenPlace, PlaceKind, YearState};

/// The place's part of the panel.
pub(super) fn place(year: YearState, language: Language) -> El {
    let words = language.year();
    let name = el("p").class("year-place").test_id("year-place").with(&[
        el("strong").text_with(move || {
            let hours = year.hours.with(|hours| hours.as_ref().map(|hours| hours.name.clone()));
            hours.unwrap_or_else(|| place_name(year, language))
        }),
        el("span").text_with(move || [" ", &described(year, language)].concat()),
    ]);
    let size = el("button")
        .attr("type", "button")
        .class("mind")
        .test_id("year-size-for")
        .on("click", move |_| {
            let winter = crate::reactive::untracked(|| year.winter_design());
            let step = Field::OutdoorTemperature.range().step;
            let rounded = (winter.as_celsius() / step).floor() * step;
            year.state.put(Field::OutdoorTemperature, Some(rounded));
        })
        .text_with(move || {
            let winter = year.state.notation().temperature(year.winter_design());
            words.size_for.with(&[&winter])
        });
    let inside = el("div").class("year-search").with(&[
        search::search(year, language),
        hours::hours(year, language),
        size,
    ]);
    el("div").class("year-places").with(&[
        name,
        missed(year, language),
        unused(year, language),
        inside,
    ])
}

/// The name of the place.
fn place_name(year: YearState, language: Language) -> String {
    let name = year.place.with(|place| place.name.clone());
    if name.is_empty() { language.year().varnholm.to_owned() } else { name }
}

/// Where the figures come from and how far they are to be trusted, and the degree days of the
/// hours.
fn described(year: YearState, language: Language) -> String {
    let words = language.weather();
    let notation = year.state.notation();
    let kind = if year.is_measured() {
        let said = words.own_hours_are.with(&[&place_name(year, language)]);
        if has_too_much_sun(year) { [&said, " ", words.too_much_sun].concat() } else { said }
    } else {
        year.place.with(|place| {
            let error = |error| notation.temperature_difference(error);
            let kind = match place.kind {
                PlaceKind::Invented => language.year().invented.to_owned(),
                PlaceKind::Table(of) => language.year().estimate.with(&[&error(of)]),
                PlaceKind::OfTheShop(of) => words.shop_estimate.with(&[&error(of)]),
            };
            if place.is_changed() { [&kind, " ", language.year().changed].concat() } else { kind }
        })
    };
    let Some(answer) = year.answer() else { return kind };
    let (days, base) = place_unit::degree_days(answer.degree_days, notation);
    [&kind, " ", &words.degree_days.with(&[&days, &base])].concat()
}

/// Daily sun that twilight and an instrument's zero may add (common practice, no source).
const TWILIGHT: Irradiation = Irradiation::kilowatt_hours(0.1);

/// Whether a month of the visitor's own hours has more sun than reaches the place's latitude.
fn has_too_much_sun(year: YearState) -> bool {
    let place = year.figures();
    let reaches = |month| mean_extraterrestrial_irradiation(place.latitude, month) + TWILIGHT;
    let mut months = place.months.iter().enumerate();
    months.any(|(month, means)| means.daily_global_irradiation > reaches(month))
}

/// What of a link could not be used.
fn unused(year: YearState, language: Language) -> El {
    let said = move || {
        let keys = year.unused.with(|unused| unused.join(", "));
        if keys.is_empty() { keys } else { language.weather().unused.with(&[&keys]) }
    };
    el("p").class("fault").test_id("year-unused").attr("role", "status").text_with(said)
}

/// A button that leads back, there only while there is something to lead back from.
fn back(
    label: impl Fn() -> String + 'static,
    is_there: impl Fn() -> bool + 'static,
    go: impl Fn() + 'static,
) -> El {
    let button = el("button")
        .attr("type", "button")
        .class("mind")
        .on("click", move |_| go())
        .text_with(label);
    let shown = button.clone();
    keep_up(Box::new(move || shown.flag("hidden", !is_there())));
    button
}

/// Whether the place is the invented one as it is.
fn is_usual(year: YearState) -> bool {
    year.place.with(|place| *place == ChosenPlace::default())
}

/// The unit of a figure, and the figure's number in it and back.
fn unit(year: YearState, quantity: ClimateQuantity) -> place_unit::PlaceUnit {
    place_unit::PlaceUnit { quantity, notation: year.state.notation() }
}
