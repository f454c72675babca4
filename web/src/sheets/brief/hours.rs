//! A year of hours of the visitor's own, read from a file on this page and kept here.

use inchwise_core::climate::ClimateQuantity;
use inchwise_link::OwnHours;
use inchwise_wire::{HourlyFileError, read_hours};
use leptos::prelude::*;
use std::sync::Arc;
use wasm_bindgen::JsCast;
use wasm_bindgen_futures::JsFuture;
use web_sys::{Blob, DragEvent, File, FileList, HtmlInputElement};

use super::place::place_name;
use crate::measure::{Notation, shortest};
use crate::state::Planner;
use crate::ui::Disclosure;

/// The largest file that is read: a year of hours with twenty columns is under two of these.
const MEGABYTES: f64 = 10.0;

/// Faults that are told line by line.
const TOLD: usize = 5;

/// Letters of a cell that are told.
const LONGEST: usize = 24;

const KEY: &str = "hours-file";

/// The head and three hours of a file that can be read.
const EXAMPLE: &str = "\
hour,temperature_c,dew_point_c,global_horizontal_w_m2
0,-21.4,-24.0,0
1,-21.9,-24.3,0
2,-22.3,-24.8,0
";

/// What became of the last file.
#[derive(Clone, PartialEq)]
enum Reading {
    /// None was given, or it is in use.
    Nothing,
    /// A file of this name is being read.
    Busy(String),
    /// A file of this name is too large.
    TooLarge(String),
    /// A file of this name could not be read at all.
    NotRead(String),
    /// A file of this name has faults.
    Faulty(String, Vec<HourlyFileError>),
}

/// The box for the file, what became of it, and what it must hold.
#[component]
pub fn HoursOfOnesOwn() -> impl IntoView {
    let planner = Planner::here();
    let reading = RwSignal::new(Reading::Nothing);
    let is_over = RwSignal::new(false);
    let words = move || planner.language.get().weather();
    let change = move |event: leptos::ev::Event| {
        let input: HtmlInputElement = event_target(&event);
        take_first(planner, reading, input.files());
    };
    // So that the same file can be chosen again once it is put right.
    let forget = move |event: leptos::ev::MouseEvent| {
        event_target::<HtmlInputElement>(&event).set_value("");
    };
    let over = move |event: DragEvent| {
        event.prevent_default();
        is_over.set(true);
    };
    let drop = move |event: DragEvent| {
        event.prevent_default();
        is_over.set(false);
        take_first(planner, reading, event.data_transfer().and_then(|it| it.files()));
    };
    let faults = move || {
        let notation = planner.notation();
        let lines = reading.with(|reading| match reading {
            Reading::Faulty(_, errors) => told(errors, notation),
            _ => Vec::new(),
        });
        lines.into_iter().map(|line| view! { <li>{line}</li> }).collect_view()
    };
    let is_measured = move || planner.inputs.with(|inputs| inputs.hours.is_some());
    let back_to = move || {
        let name = planner.inputs.with(|it| place_name(it, planner.language.get()));
        words().back_to.with(&[&name])
    };
    let back = move |_| {
        reading.set(Reading::Nothing);
        planner.change(None, |inputs| inputs.hours = None);
    };
    let heading = Signal::derive(move || words().own_hours.to_owned());
    view! {
        <Disclosure test_id="own-hours" heading>
            <div
                class="field wide"
                class:over=move || is_over.get()
                data-testid="hours"
                on:dragover=over
                on:dragleave=move |_| is_over.set(false)
                on:drop=drop
            >
                <label for=KEY>{move || words().own_hours}</label>
                <input
                    type="file"
                    id=KEY
                    data-testid=KEY
                    accept=".csv,.txt,text/csv,text/plain"
                    aria-describedby="hours-note"
                    on:change=change
                    on:click=forget
                />
                <p class="hint" id="hours-note">{move || words().own_hours_note}</p>
                <p class="hint" data-testid="hours-said" role="status">{move || said(planner, reading)}</p>
                <ul class="hours-faults" data-testid="hours-faults">{faults}</ul>
                {move || is_measured().then(|| view! {
                    <button type="button" class="plain" data-testid="hours-back" on:click=back>{back_to}</button>
                })}
                <Format/>
            </div>
        </Disclosure>
    }
}

/// Reads the first of the files, if there is one.
fn take_first(planner: Planner, reading: RwSignal<Reading>, files: Option<FileList>) {
    let Some(file) = files.and_then(|files| files.get(0)) else { return };
    let name = File::name(&file);
    if Blob::size(&file) > MEGABYTES * 1e6 {
        reading.set(Reading::TooLarge(name));
        return;
    }
    reading.set(Reading::Busy(name.clone()));
    leptos::task::spawn_local(async move {
        let text = JsFuture::from(Blob::text(&file)).await;
        // Another file may have been given meanwhile, or the planner be gone.
        let is_mine = reading.try_with_untracked(|it| *it == Reading::Busy(name.clone()));
        if is_mine != Some(true) {
            return;
        }
        let Some(text) = text.ok().and_then(|text| text.as_string()) else {
            reading.set(Reading::NotRead(name));
            return;
        };
        let (elevation, latitude) = planner
            .inputs
            .with_untracked(|inputs| (inputs.place.place.elevation, inputs.place.place.latitude));
        match read_hours(&text, elevation, latitude) {
            Ok(weather) => {
                let own = Arc::new(OwnHours::new(name, weather));
                planner.change(None, |inputs| inputs.hours = Some(own));
                reading.set(Reading::Nothing);
            }
            Err(errors) => reading.set(Reading::Faulty(name, errors)),
        }
    });
}

/// What became of the last file, in a sentence.
fn said(planner: Planner, reading: RwSignal<Reading>) -> String {
    let language = planner.language.get();
    let words = language.weather();
    reading.with(|reading| match reading {
        Reading::Nothing => {
            let name = planner.inputs.with(|it| it.hours.as_ref().map(|hours| hours.name.clone()));
            name.map_or_else(String::new, |name| words.in_use.with(&[&name]))
        }
        Reading::Busy(name) => words.reading.with(&[name]),
        Reading::TooLarge(name) => words.too_large.with(&[name, &shortest(MEGABYTES, 0, language)]),
        Reading::NotRead(name) => words.not_read.with(&[name]),
        Reading::Faulty(name, _) => words.not_used.with(&[name]),
    })
}

/// The first faults line by line, and how many more there are.
fn told(errors: &[HourlyFileError], notation: Notation) -> Vec<String> {
    let mut lines: Vec<String> =
        errors.iter().take(TOLD).map(|error| fault(error, notation)).collect();
    let more = errors.len().saturating_sub(TOLD);
    if more > 0 {
        lines.push(notation.language.weather().more_faults.with(&[&notation.count(more as f64)]));
    }
    lines
}

fn fault(error: &HourlyFileError, notation: Notation) -> String {
    let language = notation.language;
    let words = language.weather();
    let number = |value: f64| shortest(value, 2, language);
    match error {
        HourlyFileError::NotCommas { .. } => words.not_commas.to_owned(),
        HourlyFileError::ColumnTwice { column } => words.column_twice.with(&[column]),
        HourlyFileError::LongLine { line } => words.long_line.with(&[&line.to_string()]),
        HourlyFileError::NotATime { line, text } => {
            words.not_a_time.with(&[&line.to_string(), &shortened(text)])
        }
        HourlyFileError::NotTheNextHour { line, text } => {
            words.not_the_next_hour.with(&[&line.to_string(), &shortened(text)])
        }
        HourlyFileError::NotInItsUnit { column, found, least, most } => {
            let [found, least, most] = [*found, *least, *most].map(number);
            words.not_in_its_unit.with(&[column, &found, &least, &most])
        }
        HourlyFileError::NoColumn { any_of } => words.no_column.with(&[&any_of.join(words.or)]),
        HourlyFileError::ShortLine { line } => words.short_line.with(&[&line.to_string()]),
        HourlyFileError::NotANumber { line, column, text } => {
            words.not_a_number.with(&[&line.to_string(), column, &shortened(text)])
        }
        HourlyFileError::OutOfRange { line, error } => {
            let [least, most] = error.quantity.range().map(number);
            let name = match error.quantity {
                ClimateQuantity::GlobalHorizontalIrradiance => words.sun_of_hour,
                ClimateQuantity::VapourPressure => words.vapour_of_hour,
                _ => words.temperature_of_hour,
            };
            let given = number(error.given);
            words.out_of_range.with(&[&line.to_string(), name, &given, &least, &most])
        }
        HourlyFileError::NoHumidity { line, column, given } => {
            words.no_humidity.with(&[&line.to_string(), column, &number(*given)])
        }
        HourlyFileError::NotAYear { hours } => {
            words.not_a_year.with(&[&notation.count(*hours as f64)])
        }
        HourlyFileError::Place { .. } => words.bad_place.to_owned(),
    }
}

/// Hands the example to the visitor as a file.
fn save_example() {
    let encoded = js_sys::encode_uri_component(EXAMPLE);
    let address = ["data:text/csv;charset=utf-8,", &String::from(encoded)].concat();
    let link = document().create_element("a").ok();
    let link = link.and_then(|link| link.dyn_into::<web_sys::HtmlElement>().ok());
    if let Some(link) = link {
        let _ = link.set_attribute("href", &address);
        let _ = link.set_attribute("download", "hours.csv");
        link.click();
    }
}

/// As much of a cell as is told.
fn shortened(text: &str) -> String {
    text.chars().take(LONGEST).collect()
}

/// What the file must hold, with an example to be seen and saved.
#[component]
fn Format() -> impl IntoView {
    let planner = Planner::here();
    let words = move || planner.language.get().weather();
    let columns = move || {
        let row = |[names, meaning]: &[&'static str; 2]| {
            view! { <div><dt><code>{*names}</code></dt><dd>{*meaning}</dd></div> }
        };
        words().columns.iter().map(row).collect_view()
    };
    let heading = Signal::derive(move || words().format.to_owned());
    view! {
        <Disclosure test_id="hours-format" heading>
            <dl class="facts">{columns}</dl>
            <p class="hint">{words().format_note}</p>
            <pre tabindex="0" role="region" aria-label=words().example><code>{EXAMPLE}</code></pre>
            <button type="button" class="plain" on:click=|_| save_example()>{words().save}</button>
        </Disclosure>
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::measure::UnitSystem;
    use inchwise_core::units::{Angle, Length};

    #[test]
    fn the_example_goes_on_to_a_year_that_can_be_read() {
        let mut text = EXAMPLE.to_owned();
        for hour in 3..8760 {
            text.push_str(&format!("{hour},-5,-8,100\n"));
        }
        assert!(read_hours(&text, Length::new(100.0), Angle::degrees(60.0)).is_ok());
        let errors = read_hours(EXAMPLE, Length::new(100.0), Angle::degrees(60.0)).unwrap_err();
        assert_eq!(errors, [HourlyFileError::NotAYear { hours: 3 }]);
    }

    #[test]
    fn the_first_faults_are_told_and_how_many_more() {
        let units = UnitSystem::Metric;
        for language in Language::ALL {
            let notation = Notation { units, language };
            let errors: Vec<HourlyFileError> = (2..=30)
                .map(|line| HourlyFileError::NotANumber {
                    line,
                    column: "temperature_c",
                    text: "x".repeat(99),
                })
                .collect();
            let lines = told(&errors, notation);
            assert_eq!(lines.len(), TOLD + 1);
            assert!(lines[0].contains("2") && lines[0].contains("temperature_c"), "{}", lines[0]);
            assert!(lines[0].len() < 90, "{}", lines[0]);
            assert!(lines[TOLD].contains("24"), "{}", lines[TOLD]);
            assert_eq!(told(&errors[..TOLD], notation).len(), TOLD);
        }
    }
}
