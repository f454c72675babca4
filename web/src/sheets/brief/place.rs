//! Where the box stands: the place by name, what its figures are worth, and each to be typed over.

use inchwise_core::climate::mean_extraterrestrial_irradiation;
use inchwise_core::design::Field;
use inchwise_core::units::Irradiation;
use inchwise_link::{ChosenPlace, Figure, PlaceKind};
use leptos::prelude::*;

use crate::measure::degree_days;
use crate::state::{Inputs, Planner, Table, winter_of};
use crate::text::Language;
use crate::ui::{Disclosure, Entry, NumberField, place_shown};

/// Most places shown at once.
const MOST: usize = 8;

const KEY: &str = "place-search";

/// The name of the place.
pub fn place_name(inputs: &Inputs, language: Language) -> String {
    let name = &inputs.place.name;
    if name.is_empty() { language.year().varnholm.to_owned() } else { name.clone() }
}

/// Daily sun that twilight and an instrument's zero may add (common practice, no source).
const TWILIGHT: Irradiation = Irradiation::kilowatt_hours(0.1);

/// Whether a month of the visitor's own hours has more sun than reaches the place's latitude.
fn has_too_much_sun(inputs: &Inputs) -> bool {
    let place = place_shown(inputs);
    let reaches = |month| mean_extraterrestrial_irradiation(place.latitude, month) + TWILIGHT;
    let mut months = place.months.iter().enumerate();
    months.any(|(month, means)| means.daily_global_irradiation > reaches(month))
}

/// Where the figures come from and how far they are to be trusted.
fn described(planner: Planner) -> String {
    let notation = planner.notation();
    let language = notation.language;
    let (words, year_words) = (language.weather(), language.year());
    let kind = planner.inputs.with(|inputs| {
        if inputs.hours.is_some() {
            let said = words.own_hours_are.with(&[&place_name(inputs, language)]);
            let too_much = has_too_much_sun(inputs);
            return if too_much { [&said, " ", words.too_much_sun].concat() } else { said };
        }
        let place = &inputs.place;
        let error = |error| notation.temperature_difference(error);
        let kind = match place.kind {
            PlaceKind::Invented => year_words.invented.to_owned(),
            PlaceKind::Table(of) => year_words.estimate.with(&[&error(of)]),
            PlaceKind::OfTheShop(of) => words.shop_estimate.with(&[&error(of)]),
        };
        if place.is_changed() { [&kind, " ", year_words.changed].concat() } else { kind }
    });
    let Some(year) = planner.year.get() else { return kind };
    let (days, base) = degree_days(year.degree_days, notation);
    [&kind, " ", &words.degree_days.with(&[&days, &base])].concat()
}

fn go_to(planner: Planner, place: ChosenPlace) {
    planner.typed.update(|typed| {
        typed.retain(|text| !matches!(text.subject, crate::state::Subject::Place(_)));
    });
    planner.change(None, |inputs| {
        inputs.hours = None;
        inputs.place = place;
    });
}

/// The search among the tables of places.
#[component]
pub fn PlaceSearch() -> impl IntoView {
    let planner = Planner::here();
    let typed = RwSignal::new(String::new());
    let words = move || planner.language.get().year();
    let name = move || planner.inputs.with(|it| place_name(it, planner.language.get()));
    let own = move || planner.inputs.with(|it| it.hours.as_ref().map(|hours| hours.name.clone()));
    let choose = move |place: ChosenPlace| {
        typed.set(String::new());
        go_to(planner, place);
    };
    let found = move || {
        let found = typed.with(|words| planner.places.search(words, MOST));
        let row = |place: ChosenPlace| {
            let of_shop = matches!(place.kind, PlaceKind::OfTheShop(_))
                .then(|| planner.language.get().weather().of_the_shop);
            let name = place.name.clone();
            view! {
                <li>
                    <button type="button" on:click=move |_| choose(place.clone())>
                        {name} {" "} <span class="hint">{of_shop}</span>
                    </button>
                </li>
            }
        };
        found.into_iter().map(row).collect_view()
    };
    let said = move || {
        let asked = typed.with(|typed| !typed.trim().is_empty());
        planner.places.shipped.with(|table| match table {
            Table::Failed => words().no_table.to_owned(),
            Table::Loading if asked => words().working_out.to_owned(),
            _ if asked => {
                let count = typed.with(|typed| planner.places.search(typed, usize::MAX).len());
                words().found.with(&[&planner.notation().count(count as f64)])
            }
            _ => String::new(),
        })
    };
    let is_usual = move || planner.inputs.with(|it| it.place == ChosenPlace::default());
    let size_for = move |_| {
        let winter = planner.inputs.with_untracked(winter_of);
        let step = Field::OutdoorTemperature.range().step;
        let rounded = (winter.as_celsius() / step).floor() * step;
        planner.choose(|design| design.set(Field::OutdoorTemperature, Some(rounded)));
    };
    let winter = move || {
        let winter = planner.inputs.with(winter_of);
        words().size_for.with(&[&planner.notation().temperature(winter)])
    };
    let key = move |event: leptos::ev::KeyboardEvent| {
        if event.key() == "Enter" {
            event.prevent_default();
            let first = untrack(|| typed.with(|words| planner.places.search(words, 1)));
            first.into_iter().for_each(choose);
        }
    };
    view! {
        <p class="place-name" data-testid="place">
            <strong>{move || own().unwrap_or_else(name)}</strong> {" "}
            <span class="hint">{move || described(planner)}</span>
        </p>
        <p class="fault" data-testid="place-missed">{move || missed(planner)}</p>
        <div class="field wide">
            <label for=KEY>{move || words().search}</label>
            <input
                type="search"
                id=KEY
                data-testid=KEY
                autocomplete="off"
                maxlength="60"
                aria-describedby="place-note"
                prop:value=move || typed.get()
                on:input=move |event| {
                    planner.places.ask();
                    typed.set(event_target_value(&event));
                }
                on:keydown=key
            />
            <p class="hint" id="place-note">{move || words().search_note}</p>
            <p class="hint" role="status" data-testid="place-said">{said}</p>
            <ul class="found" data-testid="place-found">{found}</ul>
            {move || (!is_usual()).then(|| view! {
                <button type="button" class="plain" data-testid="place-back"
                    on:click=move |_| go_to(planner, ChosenPlace::default())
                >{words().back}</button>
            })}
            <button type="button" class="plain" data-testid="size-for" on:click=size_for>{winter}</button>
            <Sources/>
        </div>
    }
}

/// What of a place its hours do not have.
fn missed(planner: Planner) -> String {
    use inchwise_core::climate::ClimateQuantity as Q;
    use inchwise_core::units::Temperature;
    let notation = planner.notation();
    let words = notation.language.year();
    let Some(year) = planner.year.get() else { return String::new() };
    let [winter, summer, months @ ..] = words.missed_items;
    let celsius = |value: f64| notation.temperature(Temperature::celsius(value));
    let mut items = Vec::new();
    for (quantity, phrase) in [(Q::WinterDesign, winter), (Q::SummerDesign, summer)] {
        let of_it = year.not_reached.iter().find(|missed| missed.quantity == quantity);
        items.extend(of_it.map(|it| phrase.with(&[&celsius(it.asked), &celsius(it.reached)])));
    }
    let monthly = [Q::Temperature, Q::DailyRange, Q::VapourPressure, Q::DailyGlobalIrradiation];
    for (quantity, phrase) in monthly.into_iter().zip(months) {
        let count = year.not_reached.iter().filter(|it| it.quantity == quantity).count();
        if count > 0 {
            items.push(phrase.with(&[&notation.count(count as f64)]));
        }
    }
    if items.is_empty() { String::new() } else { words.missed.with(&[&items.join("; ")]) }
}

/// Where the tables' figures come from, once they are there.
#[component]
fn Sources() -> impl IntoView {
    let planner = Planner::here();
    let lines = Memo::new(move |_| {
        let of = |table: &Table| match table {
            // The last line of a head describes the columns.
            Table::There(table) => table.sources[..table.sources.len().saturating_sub(1)].to_vec(),
            _ => Vec::new(),
        };
        let mut lines = planner.places.own.with(of);
        lines.extend(planner.places.shipped.with(of));
        lines
    });
    let heading = Signal::derive(move || planner.language.get().year().sources.to_owned());
    move || {
        lines.with(|lines| !lines.is_empty()).then(|| {
            view! {
                <Disclosure test_id="place-sources" heading>
                    {move || lines.get().into_iter()
                        .map(|line| view! { <p class="hint" lang="en">{line}</p> })
                        .collect_view()}
                </Disclosure>
            }
        })
    }
}

/// Every figure of the place in a field of its own.
#[component]
pub fn PlaceFigures() -> impl IntoView {
    let planner = Planner::here();
    let heading = Signal::derive(move || planner.language.get().year().figures.to_owned());
    let measured = move || {
        let is_measured = planner.inputs.with(|it| it.hours.is_some());
        is_measured.then(|| planner.language.get().weather().measured_figures)
    };
    view! {
        <Disclosure test_id="place-figures" heading>
            <p class="hint">{measured}</p>
            {Figure::all()
                .map(|figure| view! { <NumberField entry=Entry::Place(figure)/> })
                .collect_view()}
        </Disclosure>
    }
}
