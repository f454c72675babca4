//! What a year comes to: figures, verdicts, and the months as a table.

use std::rc::Rc;

use inchwise_aside::{COOLED_TO, WARM_ENOUGH, YearAnswer};
use inchwise_core::heat_loss::Element;
use inchwise_core::humidity::SpotPlace;
use inchwise_core::units::{Energy, Power, Temperature, Time};
use inchwise_core::year::{Costs, EnergyCarrier, Period, YearChoices};

use super::super::asked::{Row, asked, rows};
use super::super::how::Open;
use super::working::{Behind, YearFigure, working};
use crate::dom::{El, el};
use crate::measure::{Notation, decimal, shortest, to_nearest};
use crate::reactive::Watched;
use crate::text::Language;
use crate::year::{YearState, day};

/// Whole kilowatt hours, from a hundred on to ten.
pub(super) fn energy(energy: Energy, notation: Notation) -> String {
    let value = energy.as_kilowatt_hours();
    let digits = if value >= 100.0 {
        to_nearest(value, 10.0, notation.language)
    } else {
        decimal(value, 0, notation.language)
    };
    [&digits, "\u{a0}kWh"].concat()
}

pub(super) fn money(amount: f64, choices: &YearChoices, notation: Notation) -> String {
    let currency = String::from_utf8_lossy(&choices.currency);
    let places = if amount < 10.0 { 2 } else { 0 };
    [&decimal(amount, places, notation.language), "\u{a0}", &currency].concat()
}

/// How long: to ten minutes, from three days on in days.
fn lasting(time: Time, notation: Notation) -> String {
    let words = notation.language.year_verdicts();
    let hours = time.as_hours();
    if hours >= 72.0 {
        return words.days.with(&[&shortest(hours / 24.0, 1, notation.language)]);
    }
    let tens = (hours * 6.0).round();
    let (whole, minutes) = ((tens / 6.0).floor(), tens % 6.0 * 10.0);
    if minutes == 0.0 {
        return words.whole_hours.with(&[&notation.count(whole)]);
    }
    if whole == 0.0 {
        return words.minutes.with(&[&notation.count(minutes)]);
    }
    words.hours_minutes.with(&[&notation.count(whole), &notation.count(minutes)])
}

/// The figures that people ask for first.
pub(super) fn figures(year: YearState, open: Open<YearFigure>, language: Language) -> El {
    let make = move |figure| {
        let cells = [el("dt"), el("span")];
        let summary = el("summary").child(&cells[1]);
        let asked = asked_of_year(year, figure, open, summary);
        let whole = el("div").with(&[cells[0].clone(), el("dd").child(&asked)]);
        Row { figure, whole, cells }
    };
    rows(el("dl").class("year-figures").test_id("year-figures"), make, move || {
        let notation = year.state.notation();
        let Some(answer) = year.answer() else { return Vec::new() };
        year.choices.with(|choices| lines(&answer, choices, notation, language))
    })
}

/// A figure or sentence that unfolds its working.
fn asked_of_year(year: YearState, figure: YearFigure, open: Open<YearFigure>, summary: El) -> El {
    asked(year.state, figure, open, summary, move || {
        // What cannot stand is no ground for a figure of the year before it.
        if !year.errors().is_empty() {
            return None;
        }
        let (answer, notation) = (year.answer()?, year.state.notation());
        let evaluation = year.state.look(|outcome| Rc::clone(outcome.best()));
        let winter = year.winter_design();
        year.choices.with(|choices| {
            let (evaluation, answer) = (&*evaluation, &*answer);
            working(figure, &Behind { evaluation, answer, choices, winter, notation })
        })
    })
}

/// What is bought for heat, with its units.
pub(super) fn bought(costs: &Costs, choices: &YearChoices, language: Language) -> String {
    let mut bought = Vec::new();
    if costs.fuel_units > 0.0 {
        let units = to_nearest(costs.fuel_units, 1.0, language);
        bought.push(language.bought(choices.heater.carrier()).with(&[&units]));
    }
    if costs.electricity_for_heat > Energy::ZERO || bought.is_empty() {
        let units = to_nearest(costs.electricity_for_heat.as_kilowatt_hours(), 10.0, language);
        bought.push(language.bought(EnergyCarrier::Electricity).with(&[&units]));
    }
    bought.join(" + ")
}

fn lines(
    answer: &YearAnswer,
    choices: &YearChoices,
    notation: Notation,
    language: Language,
) -> Vec<(YearFigure, [String; 2])> {
    let words = language.year();
    let costs = Costs::of(choices, &answer.year.energy);
    let cost = match (costs.heating, choices.prices_of) {
        (Some(heating), Some(date)) => {
            let (dearest, month) = dearest_month(&answer.months, choices);
            words.cost_is.with(&[
                &money(heating, choices, notation),
                &money(heating / 12.0, choices, notation),
                &money(dearest, choices, notation),
                language.month(month),
                &day(date),
            ])
        }
        _ => words.no_price.to_owned(),
    };
    let carbon = costs.carbon_dioxide.map_or_else(
        || words.no_grid.to_owned(),
        |mass| [&to_nearest(mass.value(), 10.0, language), "\u{a0}kg"].concat(),
    );
    [
        (YearFigure::Heat, words.heat, energy(answer.year.energy.heat(), notation)),
        (YearFigure::Bought, words.bought, bought(&costs, choices, language)),
        (YearFigure::Cost, words.cost, cost),
        (YearFigure::ColdestDay, words.coldest_day, power(answer.coldest_day, notation)),
        (YearFigure::Carbon, words.carbon, carbon),
    ]
    .map(|(figure, label, value)| (figure, [label.to_owned(), value]))
    .to_vec()
}

/// Kilowatts to a tenth, or what a load is written in.
fn power(power: Power, notation: Notation) -> String {
    match notation.units {
        crate::measure::UnitSystem::Metric => {
            [&decimal(power.value() / 1000.0, 1, notation.language), "\u{a0}kW"].concat()
        }
        crate::measure::UnitSystem::Imperial => notation.load(power),
    }
}

/// What the month that costs the most to heat costs, and which it is.
pub(super) fn dearest_month(months: &[Period], choices: &YearChoices) -> (f64, usize) {
    let cost = |period: &Period| Costs::of(choices, &period.energy).heating.unwrap_or(0.0);
    let dearest = most_of(months, cost);
    (cost(&months[dearest]), dearest)
}

/// The month that has the most of something.
pub(super) fn most_of(months: &[Period], of: impl Fn(&Period) -> f64) -> usize {
    let larger = |most: usize, month: usize| {
        if of(&months[month]) > of(&months[most]) { month } else { most }
    };
    (1..months.len()).fold(0, larger)
}

/// The name of a cold spot.
fn spot(place: SpotPlace, language: Language) -> &'static str {
    match place {
        SpotPlace::Detail(place) => language.place(place),
        SpotPlace::Plain(surface) => language.element(Element::Plain(surface)),
        SpotPlace::PersonnelDoor => language.element(Element::PersonnelDoor),
        SpotPlace::Windows => language.element(Element::Windows),
    }
}

/// Whether it holds: heater, supply, power cut, damp and summer, each with a word in front.
pub(super) fn verdicts(year: YearState, open: Open<YearFigure>, language: Language) -> El {
    let make = move |figure| {
        let cells = [el("strong"), el("span")];
        let summary = el("summary").child(&cells[1]);
        let asked = asked_of_year(year, figure, open, summary);
        Row { figure, whole: el("li").with(&[cells[0].clone(), asked]), cells }
    };
    let list = rows(el("ul").test_id("year-verdicts"), make, move || {
        let Some(answer) = year.answer() else { return Vec::new() };
        told(year, &answer, language)
    });
    el("div").class("year-verdicts").with(&[el("h4").text(language.year_verdicts().verdicts), list])
}

fn told(
    year: YearState,
    answer: &YearAnswer,
    language: Language,
) -> Vec<(YearFigure, [String; 2])> {
    let words = language.year_verdicts();
    let notation = year.state.notation();
    let choices = year.choices.get();
    let good = year.state.good();
    let design = good.checked.design();
    let (outdoor, indoor) = (design.outdoor_temperature, design.indoor_temperature);
    let coldest = year.state.look(|outcome| {
        outcome.balance().and_then(|balance| Some(balance.humidity.places.first()?.place))
    });
    let winter = year.winter_design();
    let holds = |holds: bool| if holds { words.holds } else { words.short };
    let mut lines: Vec<(YearFigure, &str, String)> = Vec::new();
    let heater = &answer.heater;
    let stove = choices.heater.needs_someone();
    let mut sentence = words.heater.with(&[
        &notation.load(heater.capacity),
        &notation.temperature(outdoor),
        &notation.load(heater.needed),
    ]);
    if stove {
        add(&mut sentence, &words.unattended.with(&[&notation.load(heater.unattended)]));
    }
    let word = if heater.holds_only_attended() { words.tended } else { holds(heater.holds()) };
    lines.push((YearFigure::Heater, word, sentence));
    let supply = &answer.supply;
    let whole_watts =
        |power: Power| [&to_nearest(power.value(), 10.0, language), "\u{a0}W"].concat();
    lines.push((
        YearFigure::Supply,
        holds(supply.holds()),
        words.supply.with(&[
            &notation.count(choices.supply_voltage.value()),
            &notation.count(choices.supply_current.value()),
            &whole_watts(supply.largest),
            &whole_watts(supply.asked()),
            &whole_watts(supply.for_heat),
        ]),
    ));
    // Every line stands at all times, so that nothing below moves when a figure changes.
    let unmet = answer.year.unmet_hours;
    let hours = notation.count(f64::from(unmet));
    lines.push((YearFigure::Unmet, holds(unmet == 0), words.unmet.with(&[&hours])));
    let down = |to: Temperature, time: Option<Time>| {
        let to = notation.temperature(to);
        match time {
            Some(time) => words.down_after.with(&[&to, &lasting(time, notation)]),
            None => words.down_never.with(&[&to]),
        }
    };
    let mut sentence = words.power_cut.with(&[
        &notation.temperature(winter),
        &down(COOLED_TO[0], answer.cool_down[0]),
        &down(COOLED_TO[1], answer.cool_down[1]),
    ]);
    add(&mut sentence, language.at_power_cut(choices.heater.at_power_cut()));
    lines.push((YearFigure::PowerCut, words.said, sentence));
    let up = |time: Option<Time>| match time {
        Some(time) => words.after.with(&[&lasting(time, notation)]),
        None => words.never.to_owned(),
    };
    let mut sentence = words.warm_up.with(&[
        &notation.temperature(winter),
        &notation.temperature(indoor - WARM_ENOUGH),
        &up(answer.warm_up[0]),
        &up(answer.warm_up[1]),
    ]);
    if stove {
        add(&mut sentence, words.while_fed);
    }
    lines.push((YearFigure::WarmUp, words.said, sentence));
    if let Some(place) = coldest {
        let name = spot(place, language);
        let (frost, drip) = (answer.year.frost_hours, answer.year.drip_hours);
        if frost + drip > 0 {
            let [frost, drip] = [frost, drip].map(|hours| notation.count(f64::from(hours)));
            lines.push((YearFigure::Damp, words.damp, words.wet.with(&[name, &frost, &drip])));
        } else {
            lines.push((YearFigure::Damp, words.stays_dry, words.dry.with(&[name])));
        }
    }
    let period = &answer.year;
    let masses = [period.condensed, period.frosted, period.dried_back, period.ran_off];
    let water = masses.map(|mass| notation.water(mass));
    let sentence = words.water.with(&water.each_ref().map(String::as_str));
    lines.push((YearFigure::Water, words.said, sentence));
    let summer = &answer.summer;
    let warmest = |case: &inchwise_core::year::SummerCase| {
        notation.temperature(Temperature::celsius(case.warmest.as_celsius().round()))
    };
    let shown = [
        warmest(&summer.as_chosen),
        warmest(&summer.light_paint),
        warmest(&summer.shaded),
        warmest(&summer.without_fan),
    ];
    let [chosen, light, shaded, still] = &shown;
    let mut sentence = words.summer.with(&[chosen, light, shaded]);
    if design.damper_count > 0.0 {
        add(&mut sentence, &words.without_fan.with(&[still]));
    }
    lines.push((YearFigure::Summer, words.said, sentence));
    let hours = notation.count(f64::from(summer.as_chosen.too_warm_hours));
    let over = notation.temperature(design.too_warm);
    lines.push((YearFigure::TooWarm, words.said, words.too_warm.with(&[&hours, &over])));
    lines
        .into_iter()
        .map(|(figure, word, sentence)| (figure, [word.to_owned(), sentence]))
        .collect()
}

/// Adds a sentence.
fn add(to: &mut String, sentence: &str) {
    to.push(' ');
    to.push_str(sentence);
}

/// The year for those who do not see the strip.
pub(super) fn strip_told(year: YearState) -> String {
    let notation = year.state.notation();
    let words = notation.language.year();
    let Some(answer) = year.answer() else { return words.working_out.to_owned() };
    let days = &answer.days;
    let hours = |of: fn(&inchwise_aside::YearDay) -> f64| notation.count(days.iter().map(of).sum());
    words.strip_told.with(&[
        &energy(answer.year.energy.heat(), notation),
        &hours(|day| day.frost),
        &hours(|day| day.drip),
        &hours(|day| day.too_warm),
        &hours(|day| day.too_cold),
    ])
}

/// The months as a table, made only while it is open.
pub(super) fn table(year: YearState, language: Language) -> El {
    let words = language.year();
    let open = Watched::new(false);
    let body = el("tbody").children_with(move || {
        let notation = year.state.notation();
        let answer = if open.get() { year.answer() } else { None };
        let Some(answer) = answer else { return Vec::new() };
        let choices = year.choices.get();
        let months = answer.months.iter().zip(language.months());
        months.map(|(month, name)| row(month, name, &choices, notation)).collect()
    });
    let heads = words.columns.map(|name| el("th").attr("scope", "col").text(name));
    let table = el("table").with(&[el("thead").child(&el("tr").with(&heads)), body]);
    let details = el("details").class("year-table").test_id("year-table").with(&[
        el("summary").text(words.as_table),
        el("p").class("hint").text(words.table_note),
        el("div")
            .class("scrolled")
            .attr("tabindex", "0")
            .attr("role", "region")
            .attr("aria-label", words.as_table)
            .child(&table),
    ]);
    super::on_toggle(&details, move |is_open| open.set(is_open));
    details
}

fn row(month: &Period, name: &str, choices: &YearChoices, notation: Notation) -> El {
    let cost = Costs::of(choices, &month.energy).heating;
    let cell = |text: &str| el("td").class("number").text(text);
    let hours = |count: u32| cell(&[&notation.count(f64::from(count)), "\u{a0}h"].concat());
    el("tr").with(&[
        el("th").attr("scope", "row").text(name),
        cell(&energy(month.energy.heat(), notation)),
        cell(&cost.map_or_else(|| "–".to_owned(), |cost| money(cost, choices, notation))),
        hours(month.frost_hours),
        hours(month.drip_hours),
        hours(month.too_warm_hours),
        hours(month.unmet_hours),
    ])
}
