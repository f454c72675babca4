//! Heat: where it goes, what a year of it comes to, and what the heater, the supply and a power cut
//! make of it.

mod figures;
mod losses;
mod months;
mod reckoning;
mod working;

use inchwise_core::caution::Caution;
use inchwise_core::design::Field;
use inchwise_core::year::{HeaterKind, YearField};
use leptos::prelude::*;

use super::part::{Head, Minds, Part, words};
use crate::drawing;
use crate::measure::Notation;
use crate::state::{Planner, winter_of};
use crate::ui::{
    Choice, Disclosure, Entry, NumberField, SaidList, Select, TextChoice, TextField, Working,
    water_of_propane,
};
use losses::Losses;
use months::Months;
use working::{Behind, YearFigure, working};

/// The numbers of the design that it holds.
pub const FIELDS: &[&[Field]] = &[];

const HEATER: &[YearField] = &[
    YearField::HeaterLimit,
    YearField::BackupLimit,
    YearField::SupplyVoltage,
    YearField::SupplyCurrent,
];

const PRICES: &[YearField] =
    &[YearField::ElectricityPrice, YearField::FuelPrice, YearField::GridEmission];

const SUMMER: &[YearField] = &[YearField::TooWarm];

const KIND: Choice = Choice {
    key: "heater",
    label: |language| language.year_choices().what_heats,
    options: |language| {
        HeaterKind::LAWFUL.iter().map(|&kind| (kind.key(), language.heater(kind))).collect()
    },
    chosen: |inputs| inputs.year.heater.key(),
    choose: |inputs, key| {
        if let Some(kind) = HeaterKind::from_key(key) {
            inputs.year.heater = kind;
        }
    },
};

fn of_year(fields: &'static [YearField]) -> impl IntoView {
    fields.iter().map(|&field| view! { <NumberField entry=Entry::Year(field)/> }).collect_view()
}

fn how(planner: Planner, figure: YearFigure) -> Option<Working> {
    let answer = planner.year.get()?;
    let notation: Notation = planner.notation();
    planner.inputs.with(|inputs| {
        planner.outcome.with(|outcome| {
            let behind = Behind {
                evaluation: &outcome.good,
                answer: &answer,
                choices: &inputs.year,
                winter: winter_of(inputs),
                notation,
            };
            working(figure, &behind)
        })
    })
}

/// The year for those who do not see the strip.
fn strip_told(planner: Planner) -> String {
    let notation = planner.notation();
    let words = notation.language.year();
    let Some(answer) = planner.year.get() else { return words.working_out.to_owned() };
    let days = &answer.days;
    let hours = |of: fn(&crate::state::YearDay) -> f64| notation.count(days.iter().map(of).sum());
    words.strip_told.with(&[
        &figures::energy(answer.year.energy.heat(), notation),
        &hours(|day| day.frost),
        &hours(|day| day.drip),
        &hours(|day| day.too_warm),
        &hours(|day| day.too_cold),
    ])
}

/// The sheet.
pub fn sheet(planner: Planner) -> AnyView {
    let about = move || {
        let notation = planner.notation();
        planner.look(|evaluation| {
            let design = evaluation.checked.design();
            notation.language.answer().at.with(&[
                &notation.temperature(design.outdoor_temperature),
                &notation.temperature(design.indoor_temperature),
            ])
        })
    };
    let heading = move |say: fn(crate::text::Language) -> &'static str| {
        Signal::derive(move || say(planner.language.get()).to_owned())
    };
    let figures = Memo::new(move |_| figures::figures(planner));
    let verdicts = Memo::new(move |_| figures::verdicts(planner));
    let waits = move || planner.year.get().is_none().then(|| planner.language.get().sheets().waits);
    let refused = move || {
        let language = planner.language.get();
        language.year_choices().refused.with(&[&water_of_propane(language)])
    };
    view! {
        <Head about=Signal::derive(about)/>
        <Part test_id="losses" heading=|language| language.losses().title>
            <Losses/>
        </Part>
        <Part test_id="year" heading=|language| language.year().title>
            <p class="hint" role="status" data-testid="year-waits">{waits}</p>
            <SaidList test_id="year-figures" rows=figures working=how/>
            {drawing::year_strip(planner, strip_told)}
            <SaidList test_id="year-verdicts" rows=verdicts working=how/>
            <Months/>
            <p class="hint">{words(planner, |language| language.year().note)}</p>
        </Part>
        <Part test_id="year-heater" heading=|language| language.sheets().heater>
            <Select choice=KIND/>
            {of_year(HEATER)}
            <p class="hint">{refused}</p>
            <p class="hint">{words(planner, |language| language.year_choices().supply_note)}</p>
            <Minds cautions=&[Caution::SealedHeaters, Caution::Electrical]/>
        </Part>
        <Disclosure test_id="fold-prices" heading=heading(|language| language.sheets().prices)>
            {of_year(PRICES)}
            <TextField text=TextChoice::Currency/>
            <TextField text=TextChoice::PricesOf/>
        </Disclosure>
        <Disclosure test_id="fold-summer" heading=heading(|language| language.year_choices().groups[3])>
            {of_year(SUMMER)}
        </Disclosure>
    }
    .into_any()
}
