//! A year of hours of the visitor's own, read from a file on this page and kept here.

use inchwise_core::bounds::BoundedQuantity;
use inchwise_core::climate::ClimateQuantity;
use inchwise_wire::{HourlyFileError, read_hours};
use js_sys::Reflect;
use wasm_bindgen::JsCast;
use web_sys::{Blob, DragEvent, Event, File, FileList};

use super::{back, place_name};
use crate::dom::{El, el, input_of};
use crate::measure::{Notation, shortest};
use crate::promise::{Settled, settled};
use crate::reactive::Watched;
use crate::text::Language;
use crate::year::{OwnHours, YearState};

/// The largest file that is read: a year of hours with twenty columns is under two of these.
const MEGABYTES: f64 = 10.0;

/// Faults that are told line by line.
const TOLD: usize = 5;

/// Letters of a cell that are told.
const LONGEST: usize = 24;

const KEY: &str = "year-hours-file";

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
pub(super) fn hours(year: YearState, language: Language) -> El {
    let words = language.weather();
    let reading = Watched::new(Reading::Nothing);
    let input = el("input")
        .attr("type", "file")
        .attr("id", KEY)
        .attr("accept", ".csv,.txt,text/csv,text/plain")
        .attr("aria-describedby", "year-hours-note")
        .test_id(KEY)
        .on("change", move |event| {
            let files = input_of(&event).and_then(|input| input.files());
            take_first(year, reading, files);
        })
        // So that the same file can be chosen again once it is put right.
        .on("click", |event| forget(&event));
    let status = el("p").class("hint").test_id("year-hours-said").attr("role", "status");
    let status = status.text_with(move || said(year, reading, language));
    let faults = el("ul").class("year-hours-faults").test_id("year-hours-faults");
    let faults = faults.children_with(move || {
        let notation = year.state.notation();
        let lines = reading.with(|reading| match reading {
            Reading::Faulty(_, errors) => told(errors, notation),
            _ => Vec::new(),
        });
        lines.iter().map(|line| el("li").text(line)).collect()
    });
    let emptied = input.clone();
    let back = back(
        move || words.back_to.with(&[&place_name(year, language)]),
        move || year.is_measured(),
        move || {
            emptied.property("value", &"".into());
            reading.set(Reading::Nothing);
            year.run_on(None);
            let _ = emptied.html().focus();
        },
    );
    let whole = el("div").class("field year-hours").test_id("year-hours").with(&[
        el("label").attr("for", KEY).text(words.own_hours),
        input,
        el("p").class("hint").attr("id", "year-hours-note").text(words.own_hours_note),
        status,
        faults,
        back.test_id("year-hours-back"),
        format(language),
    ]);
    let dropped_on = whole.clone();
    let over = move |event: &Event, is_over: bool| {
        event.prevent_default();
        dropped_on.toggle("over", is_over);
    };
    let (enter, leave) = (over.clone(), over.clone());
    whole
        .on("dragover", move |event| enter(&event, true))
        .on("dragleave", move |event| leave(&event, false))
        .on("drop", move |event| {
            over(&event, false);
            let dropped = event.dyn_into::<DragEvent>().ok();
            let files = dropped.and_then(|event| event.data_transfer()?.files());
            take_first(year, reading, files);
        })
}

fn forget(event: &Event) {
    if let Some(input) = event.current_target() {
        // Emptying a box for files cannot fail.
        let _ = Reflect::set(&input, &"value".into(), &"".into());
    }
}

/// Reads the first of the files, if there is one.
fn take_first(year: YearState, reading: Watched<Reading>, files: Option<FileList>) {
    let Some(file) = files.and_then(|files| files.get(0)) else { return };
    let name = File::name(&file);
    if Blob::size(&file) > MEGABYTES * 1e6 {
        reading.set(Reading::TooLarge(name));
        return;
    }
    reading.set(Reading::Busy(name.clone()));
    let hear = move |text: Settled| {
        // Another file may have been given meanwhile, or the planner be gone.
        let is_mine = |reading: &mut Reading| *reading == Reading::Busy(name.clone());
        if reading.update_untracked(is_mine) != Some(true) {
            return;
        }
        let Some(text) = text.ok().and_then(|text| text.as_string()) else {
            reading.set(Reading::NotRead(name));
            return;
        };
        let (elevation, latitude) =
            year.place.with_untracked(|place| (place.place.elevation, place.place.latitude));
        match read_hours(&text, elevation, latitude) {
            Ok(weather) => {
                year.run_on(Some(OwnHours::new(name, weather)));
                reading.set(Reading::Nothing);
            }
            Err(errors) => reading.set(Reading::Faulty(name, errors)),
        }
    };
    settled(&Blob::text(&file), Box::new(hear));
}

/// What became of the last file, in a sentence.
fn said(year: YearState, reading: Watched<Reading>, language: Language) -> String {
    let words = language.weather();
    reading.with(|reading| match reading {
        Reading::Nothing => {
            let name = year.hours.with(|hours| hours.as_ref().map(|hours| hours.name.clone()));
            name.map_or(String::new(), |name| words.in_use.with(&[&name]))
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
            let bounds = error.quantity.bounds();
            let [least, most] = [bounds.minimum(), bounds.maximum()].map(number);
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
    el("a").attr("href", &address).attr("download", "hours.csv").html().click();
}

/// As much of a cell as is told.
fn shortened(text: &str) -> String {
    text.chars().take(LONGEST).collect()
}

/// What the file must hold, with an example to be seen and saved.
fn format(language: Language) -> El {
    let words = language.weather();
    let columns: Vec<El> = words
        .columns
        .iter()
        .map(|[names, meaning]| {
            el("div").with(&[el("dt").child(&el("code").text(names)), el("dd").text(meaning)])
        })
        .collect();
    let example = el("pre")
        .attr("tabindex", "0")
        .attr("role", "region")
        .attr("aria-label", words.example)
        .child(&el("code").text(EXAMPLE));
    let save = el("button").attr("type", "button").class("mind").text(words.save);
    let save = save.on("click", |_| save_example());
    el("details").class("year-hours-format").test_id("year-hours-format").with(&[
        el("summary").text(words.format),
        el("dl").with(&columns),
        el("p").class("hint").text(words.format_note),
        example,
        save,
    ])
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
