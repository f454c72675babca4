//! How what is bought, its cost and its carbon dioxide come about.

use inchwise_core::units::{Energy, Temperature, Time};
use inchwise_core::year::{Costs, EnergyByPurpose, EnergyCarrier, HEAT_PUMP_COLDEST, HeaterKind};

use super::super::figures::{bought as list_of_bought, dearest_month, money};
use super::Behind;
use crate::ui::Working;
use inchwise_link::day;

pub(super) fn bought(behind: &Behind<'_>) -> Working {
    let (notation, kind) = (behind.notation, behind.choices.heater);
    let words = notation.language.year_energy_workings();
    let kwh = |energy| notation.kilowatt_hours(energy);
    let energy = &behind.answer.year.energy;
    let mut steps = Vec::new();
    if energy.heater_input > Energy::ZERO {
        let performance = notation.number(energy.heater_heat / energy.heater_input, 3);
        let parts = [kwh(energy.heater_heat), performance, kwh(energy.heater_input)];
        steps.push(words.input.with(&parts.each_ref().map(String::as_str)));
    }
    if kind == HeaterKind::AirSourceHeatPump {
        steps.push(pump(behind));
    }
    let carrier = kind.carrier();
    if carrier != EnergyCarrier::Electricity {
        steps.push(words.units.with(&[
            &kwh(energy.heater_input),
            &notation.unit_energy(carrier.unit_energy(), notation.language.sold_by(carrier)),
            &notation.count(energy.heater_input / carrier.unit_energy()),
        ]));
    }
    if energy.heater_own > Energy::ZERO {
        let own = kind.own_electricity();
        let hours = Time::new(energy.heater_own.value() / own.value());
        let watts = notation.watts(own);
        steps.push(words.own.with(&[&watts, &notation.hours(hours), &kwh(energy.heater_own)]));
    }
    let costs = Costs::of(behind.choices, energy);
    let by_heater =
        if carrier == EnergyCarrier::Electricity { energy.heater_input } else { Energy::ZERO };
    let parts =
        [by_heater, energy.backup_heat, energy.heater_own, costs.electricity_for_heat].map(kwh);
    steps.push(words.electricity.with(&parts.each_ref().map(String::as_str)));
    let mut source = notation.language.source(kind.source()).to_owned();
    if carrier != EnergyCarrier::Electricity {
        source.push_str("; ");
        source.push_str(notation.language.source(carrier.source()));
    }
    Working { rule: words.bought, steps, source }
}

/// What a heat pump makes of a kilowatt hour, and what it would draw by the months' means.
fn pump(behind: &Behind<'_>) -> String {
    let (notation, kind) = (behind.notation, behind.choices.heater);
    let mild = Temperature::celsius(8.0);
    let performance = |outdoor| notation.number(kind.performance(outdoor), 2);
    let months = behind.answer.months.iter().zip(&behind.answer.grounds.months);
    let drawn: Energy = months
        .map(|(period, mean)| period.energy.heater_heat * (1.0 / kind.performance(mean.outdoors)))
        .sum();
    notation.language.year_energy_workings().pump.with(&[
        &performance(HEAT_PUMP_COLDEST),
        &notation.temperature(HEAT_PUMP_COLDEST),
        &performance(mild),
        &notation.temperature(mild),
        &notation.kilowatt_hours(drawn),
    ])
}

/// What is bought at its prices, step by step; nothing of what costs nothing or has no price.
fn priced(behind: &Behind<'_>, energy: &EnergyByPurpose) -> Vec<(String, f64)> {
    let (notation, choices) = (behind.notation, behind.choices);
    let words = notation.language.year_energy_workings();
    let costs = Costs::of(choices, energy);
    let carrier = choices.heater.carrier();
    let price = |price: f64| notation.price(price, choices.currency);
    let paid = |amount: f64| notation.paid(amount, choices.currency);
    let mut steps = Vec::new();
    let electricity = costs.electricity_for_heat.as_kilowatt_hours();
    if let Some(of) = choices.electricity_price.filter(|_| electricity > 0.0) {
        let cost = electricity * of;
        let amount = notation.kilowatt_hours(costs.electricity_for_heat);
        let said = words.priced.with(&[&amount, &price(of), &paid(cost)]);
        steps.push((said, cost));
    }
    if let Some(of) = choices.fuel_price.filter(|_| costs.fuel_units > 0.0) {
        let cost = costs.fuel_units * of;
        let unit = notation.language.sold_by(carrier);
        let amount = [&notation.number(costs.fuel_units, 1), "\u{a0}", unit].concat();
        steps.push((words.priced.with(&[&amount, &price(of), &paid(cost)]), cost));
    }
    steps
}

pub(super) fn cost(behind: &Behind<'_>) -> Working {
    let (notation, choices, answer) = (behind.notation, behind.choices, behind.answer);
    let words = notation.language.year_energy_workings();
    let costs = Costs::of(choices, &answer.year.energy);
    let (Some(heating), Some(date)) = (costs.heating, choices.prices_of) else {
        let bought = list_of_bought(&costs, choices, notation.language);
        let steps = vec![words.no_price.with(&[&bought])];
        let source = notation.language.workings().by_definition.to_owned();
        return Working { rule: words.cost, steps, source };
    };
    let paid = |amount: f64| notation.paid(amount, choices.currency);
    let parts = priced(behind, &answer.year.energy);
    let mut steps: Vec<String> = parts.iter().map(|(step, _)| step.clone()).collect();
    if let [(_, electricity), (_, fuel)] = parts[..] {
        let parts = [paid(electricity), paid(fuel), paid(heating)];
        steps.push(words.cost_sum.with(&parts.each_ref().map(String::as_str)));
    }
    steps.push(words.cost_month.with(&[&paid(heating), &paid(heating / 12.0)]));
    let (most, dearest) = dearest_month(&answer.months, choices);
    let energy = &answer.months[dearest].energy;
    steps.push(words.cost_dearest.with(&[
        notation.language.month(dearest),
        &notation.kilowatt_hours(energy.heat()),
        &money(most, choices, notation),
    ]));
    steps.extend(priced(behind, energy).into_iter().map(|(step, _)| step));
    Working { rule: words.cost, steps, source: words.price_source.with(&[&day(date)]) }
}

pub(super) fn carbon(behind: &Behind<'_>) -> Working {
    let (notation, choices) = (behind.notation, behind.choices);
    let words = notation.language.year_energy_workings();
    let energy = &behind.answer.year.energy;
    let costs = Costs::of(choices, energy);
    let electricity = costs.electricity_for_heat;
    let (mut steps, mut sources) = (Vec::new(), Vec::new());
    if let Some(emission) = choices.grid_emission {
        steps.push(emitted(behind, electricity, emission));
        sources.push(words.grid_source);
    } else if electricity > Energy::ZERO {
        steps.push(words.no_grid.with(&[&notation.kilowatt_hours(electricity)]));
        sources.push(words.grid_source);
    }
    let carrier = choices.heater.carrier();
    if let Some(emission) = carrier.emission() {
        let a_kilowatt_hour = emission * Energy::kilowatt_hours(1.0).value();
        steps.push(emitted(behind, energy.heater_input, a_kilowatt_hour));
        if carrier == EnergyCarrier::Wood {
            steps.push(words.wood_carbon.to_owned());
        }
        sources.push(words.fuel_source);
    }
    if steps.is_empty() {
        steps.push(emitted(behind, Energy::ZERO, 0.0));
        sources.push(words.grid_source);
    }
    Working { rule: words.carbon, steps, source: sources.join("; ") }
}

fn emitted(behind: &Behind<'_>, energy: Energy, a_kilowatt_hour: f64) -> String {
    let notation = behind.notation;
    let kilograms = |value: f64, places| [&notation.number(value, places), "\u{a0}kg"].concat();
    notation.language.year_energy_workings().emitted.with(&[
        &notation.kilowatt_hours(energy),
        &[&kilograms(a_kilowatt_hour, 3), "/kWh"].concat(),
        &kilograms(energy.as_kilowatt_hours() * a_kilowatt_hour, 1),
    ])
}
