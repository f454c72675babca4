//! What can be chosen about the year, folded under plain headings.

use inchwise_core::choice_table::RangeProblem;
use inchwise_core::year::{HeaterKind, YearError, YearField, YearProblem, YearSubject};

use super::text_box::TextBox;
use super::unit::{read, written};
use crate::dom::{El, el, select_of};
use crate::measure::{Notation, decimal};
use crate::reactive::{keep_up, untracked};
use crate::text::Language;
use crate::year::{YearState, date_of, day};

use YearField as F;

/// The fields of each group, in the order of their headings.
const GROUPS: [&[YearField]; 2] = [
    &[F::HeaterLimit, F::BackupLimit, F::SupplyVoltage, F::SupplyCurrent],
    &[F::ElectricityPrice, F::FuelPrice, F::GridEmission],
];

/// The folded groups.
pub(super) fn choices(year: YearState, language: Language) -> El {
    let words = language.year_choices();
    let groups: Vec<El> = GROUPS
        .iter()
        .zip(words.groups)
        .enumerate()
        .map(|(index, (fields, heading))| {
            let inside = el("div").class("folded");
            let inside = if index == 0 { inside.child(&heater(year, language)) } else { inside };
            let rows: Vec<El> = fields.iter().map(|&field| row(year, language, field)).collect();
            let inside = inside.with(&rows);
            let inside = match index {
                0 => inside.with(&[
                    el("p").class("remark").text(&words.refused.with(&[&water(language)])),
                    el("p").class("remark").text(words.supply_note),
                ]),
                _ => inside.with(&[
                    text_row(year, language, Text::Currency),
                    text_row(year, language, Text::PricesOf),
                ]),
            };
            let summary = el("summary").child(&el("h3").text(heading));
            el("details").test_id(GROUP_KEYS[index]).with(&[summary, inside])
        })
        .collect();
    el("div").class("folds").with(&groups)
}

const GROUP_KEYS: [&str; 2] = ["year-heater", "year-prices"];

/// Kilograms of water from one of propane.
fn water(language: Language) -> String {
    let water = HeaterKind::UnventedPropane.water_to_room().unwrap_or(f64::NAN);
    decimal(water, 1, language)
}

fn heater(year: YearState, language: Language) -> El {
    const KEY: &str = "year-heater-kind";
    let options: Vec<El> = HeaterKind::LAWFUL
        .iter()
        .map(|kind| el("option").attr("value", kind.key()).text(language.heater(*kind)))
        .collect();
    let list =
        el("select").attr("id", KEY).test_id(KEY).with(&options).on("change", move |event| {
            if let Some(kind) =
                select_of(&event).and_then(|list| HeaterKind::from_key(&list.value()))
            {
                year.heat_with(kind);
            }
        });
    let shown = list.clone();
    keep_up(Box::new(move || {
        shown.property("value", &year.choices.with(|choices| choices.heater.key()).into());
    }));
    let label = el("label").attr("for", KEY).text(language.year_choices().what_heats);
    el("div").class("field").with(&[label, list])
}

/// What is wrong with a choice, in words.
fn fault(error: &YearError, notation: Notation) -> String {
    let words = notation.language.year_choices();
    match (error.problem, error.subject) {
        (
            YearProblem::ByItself(RangeProblem::OutOfRange { minimum, maximum }),
            YearSubject::Field(field),
        ) => words
            .range
            .with(&[&written(field, minimum, notation), &written(field, maximum, notation)]),
        (YearProblem::ByItself(RangeProblem::NotWhole), _) => words.whole.to_owned(),
        (YearProblem::UnventedFlame { .. }, _) => words.refused.with(&[&water(notation.language)]),
        (YearProblem::PriceWithoutDate, _) => words.undated.to_owned(),
        (YearProblem::NoSuchDay, _) => words.no_day.to_owned(),
        (YearProblem::NotACurrency, _) => words.no_currency.to_owned(),
        _ => words.no_number.to_owned(),
    }
}

/// Why the year shown is an earlier one: every choice that cannot stand, by name. The boxes stand in
/// folds that may be shut, and what is wrong with one may come of the design.
pub(super) fn faults(year: YearState, language: Language) -> El {
    let words = language.year_choices();
    let heading = el("p").text_with(move || {
        if year.errors().is_empty() { String::new() } else { words.earlier.to_owned() }
    });
    let list = el("ul").rows_with(["li", "strong", "span"], move || {
        let notation = year.state.notation();
        let errors = year.errors();
        let rows = errors.iter().map(|error| {
            let name = match error.subject {
                YearSubject::Field(field) => language.year_field(field),
                YearSubject::Heater => words.what_heats,
                YearSubject::Currency => words.currency,
                YearSubject::PricesOf => words.prices_of,
            };
            [words.named.with(&[name]), fault(error, notation)]
        });
        rows.collect()
    });
    el("div").class("fault").attr("role", "status").test_id("year-faults").with(&[heading, list])
}

/// The parts of a row that keep up.
struct Parts {
    row: El,
    text: TextBox,
    fault: El,
}

impl Parts {
    fn show(&self, text: &str, fault: &str) {
        self.text.say(text, !fault.is_empty());
        self.fault.say(fault);
        self.row.toggle("wrong", !fault.is_empty());
    }
}

/// A row with a box for text: name, box, hint and fault.
fn box_row(key: &str, label: &str, hint: &El, take: impl Fn(&str) + 'static) -> Parts {
    let id = ["year-", key].concat();
    let [hint_id, fault_id] = ["-hint", "-fault"].map(|part| [&id, part].concat());
    let text = TextBox::new(&id, take);
    let input = text.input.clone().attr("aria-describedby", &[&hint_id, " ", &fault_id].concat());
    let fault = el("p").class("fault").attr("id", &fault_id);
    let hint = hint.clone().class("hint").attr("id", &hint_id);
    let row = el("div").class("field").with(&[
        el("label").attr("for", &id).text(label),
        el("div").class("moves").child(&input),
        hint,
        fault.clone(),
    ]);
    Parts { row, text, fault }
}

fn row(year: YearState, language: Language, field: YearField) -> El {
    let notation = move || year.state.notation();
    let hint = el("p").text_with(move || {
        let range = field.range();
        let ends = [range.minimum, range.maximum].map(|end| written(field, end, notation()));
        language.year_choices().range.with(&[&ends[0], &ends[1]])
    });
    let key = field.range().key;
    let parts = box_row(key, language.year_field(field), &hint, move |typed| {
        let notation = untracked(notation);
        match read(field, typed, notation) {
            Some(si) => year.put(field, Some(si)),
            None if typed.trim().is_empty() && field.range().default.is_none() => {
                year.put(field, None);
            }
            None => year.keep_typed(key, typed.to_owned()),
        }
    });
    let row = parts.row.clone();
    keep_up(Box::new(move || {
        let notation = notation();
        let typed = year.typed.with(|typed| {
            typed.iter().find(|typed| typed.key == key).map(|typed| typed.text.clone())
        });
        if let Some(typed) = typed {
            parts.show(&typed, notation.language.year_choices().no_number);
            return;
        }
        let text = year
            .choices
            .with(|choices| choices.get(field))
            .map_or(String::new(), |si| written(field, si, notation));
        let errors = year.errors();
        let mine = errors.iter().find(|error| error.subject == YearSubject::Field(field));
        parts.show(&text, &mine.map_or(String::new(), |error| fault(error, notation)));
    }));
    row
}

/// A choice that is a text.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Text {
    Currency,
    PricesOf,
}

fn text_row(year: YearState, language: Language, text: Text) -> El {
    let words = language.year_choices();
    let (key, label, hint, subject) = match text {
        Text::Currency => ("currency", words.currency, "XTS", YearSubject::Currency),
        Text::PricesOf => ("prices-of", words.prices_of, words.date_hint, YearSubject::PricesOf),
    };
    let parts = box_row(key, label, &el("p").text(hint), move |typed| {
        let typed = typed.trim();
        let read = match text {
            Text::Currency => typed.as_bytes().try_into().ok().map(|currency| {
                year.choices.update(|choices| choices.currency = currency);
            }),
            Text::PricesOf if typed.is_empty() => {
                year.choices.update(|choices| choices.prices_of = None);
                Some(())
            }
            Text::PricesOf => date_of(typed).map(|date| {
                year.choices.update(|choices| choices.prices_of = Some(date));
            }),
        };
        match read {
            Some(()) => year.forget_typed(key),
            None => year.keep_typed(key, typed.to_owned()),
        }
    });
    let row = parts.row.clone();
    keep_up(Box::new(move || {
        let words = year.state.language.get().year_choices();
        let typed = year.typed.with(|typed| {
            typed.iter().find(|typed| typed.key == key).map(|typed| typed.text.clone())
        });
        if let Some(typed) = typed {
            let fault = if text == Text::Currency { words.no_currency } else { words.date_hint };
            parts.show(&typed, fault);
            return;
        }
        let written = year.choices.with(|choices| match text {
            Text::Currency => String::from_utf8_lossy(&choices.currency).into_owned(),
            Text::PricesOf => choices.prices_of.map_or(String::new(), day),
        });
        let errors = year.errors();
        let mine = errors.iter().find(|error| error.subject == subject);
        let notation = year.state.notation();
        parts.show(&written, &mine.map_or(String::new(), |error| fault(error, notation)));
    }));
    row
}
