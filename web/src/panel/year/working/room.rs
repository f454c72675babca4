//! How it comes about whether heater and supply hold, and how the room cools and warms.

use inchwise_aside::{COOLED_TO, WARM_ENOUGH};
use inchwise_core::room_network::Course;
use inchwise_core::units::Temperature;
use inchwise_core::year::{CONTINUOUS_SHARE, EnergyCarrier, HeaterCheck, HeaterKind};

use super::super::super::asked::Working;
use super::Behind;
use crate::text::Phrase;

pub(super) fn heater(behind: &Behind<'_>) -> Working {
    let (notation, choices) = (behind.notation, behind.choices);
    let words = notation.language.year_room_workings();
    let design = behind.design();
    let outdoor = design.outdoor_temperature;
    let check = &behind.answer.heater;
    let kind = choices.heater;
    let mut steps = vec![
        needed(behind),
        words.given.with(&[
            &behind.power(choices.heater_limit),
            &notation.percent(kind.capacity_share(outdoor)),
            &behind.power(choices.backup_limit),
            &behind.power(check.capacity),
        ]),
        words.to_spare.with(&[
            &behind.power(check.capacity),
            &behind.power(check.needed),
            &behind.power(check.capacity - check.needed),
        ]),
    ];
    if kind.needs_someone() {
        let unattended = notation.load(check.unattended);
        steps.push(notation.language.year_verdicts().unattended.with(&[&unattended]));
    }
    let source = words.heater_source.with(&[notation.language.source(kind.source())]);
    Working { rule: words.heater, steps, source }
}

/// The greater of the load at rest and at work, part by part.
fn needed(behind: &Behind<'_>) -> String {
    let notation = behind.notation;
    let words = notation.language.year_room_workings();
    let heat_loss = &behind.evaluation.heat_loss;
    let load = behind.evaluation.balance.as_ref().map(|balance| balance.load);
    let parts = load.map(|load| {
        if load.at_work.total() >= load.at_rest.total() { load.at_work } else { load.at_rest }
    });
    let parts = parts.unwrap_or_default();
    words.needed.with(&[
        &notation.coefficient(heat_loss.transmission + heat_loss.air),
        &notation.temperature_difference(heat_loss.temperature_difference),
        &behind.power(parts.mechanical),
        &behind.power(parts.reheat),
        &behind.power(parts.drying),
        &behind.power(behind.answer.heater.needed),
    ])
}

pub(super) fn supply(behind: &Behind<'_>) -> Working {
    let (notation, choices) = (behind.notation, behind.choices);
    let words = notation.language.year_room_workings();
    let outdoor = behind.evaluation.checked.design().outdoor_temperature;
    let (kind, check) = (choices.heater, &behind.answer.supply);
    let unit = |value: f64, unit: &str| [&notation.count(value), "\u{a0}", unit].concat();
    let mut steps = vec![words.carried.with(&[
        &unit(choices.supply_voltage.value(), "V"),
        &unit(choices.supply_current.value(), "A"),
        &notation.percent(CONTINUOUS_SHARE),
        &notation.watts(check.largest),
    ])];
    let heater = check.for_heat - choices.backup_limit;
    if kind.carrier() == EnergyCarrier::Electricity {
        steps.push(words.drawn.with(&[
            &notation.watts(choices.heater_limit),
            &notation.percent(kind.capacity_share(outdoor)),
            &notation.number(kind.performance(outdoor), 2),
            &notation.temperature(outdoor),
            &notation.watts(heater),
        ]));
    }
    let design = behind.design();
    let equipment = design.equipment_always + design.equipment_in_use;
    let fan = check.for_other - equipment;
    let parts = [
        heater,
        choices.backup_limit,
        fan,
        design.equipment_always,
        design.equipment_in_use,
        check.asked(),
    ];
    let parts = parts.map(|part| notation.watts(part));
    steps.push(words.asked.with(&parts.each_ref().map(String::as_str)));
    Working { rule: words.supply, steps, source: words.supply_source.to_owned() }
}

pub(super) fn unmet(behind: &Behind<'_>) -> Working {
    let notation = behind.notation;
    let words = notation.language.year_room_workings();
    let grounds = &behind.answer.grounds;
    let mut steps = Vec::new();
    // What a heat pump gives goes by the temperature that is asked for.
    if behind.choices.heater != HeaterKind::AirSourceHeatPump {
        let indoor = behind.evaluation.checked.design().indoor_temperature;
        let capacity = behind.answer.heater.capacity;
        let down_to = indoor - capacity / grounds.loss;
        steps.push(words.down_to.with(&[
            &behind.tenth(indoor),
            &behind.power(capacity),
            &notation.coefficient(grounds.loss),
            &behind.tenth(down_to),
        ]));
    }
    let (short, unmet) = (grounds.short_hours, behind.answer.year.unmet_hours);
    let hours = |count: u32| notation.count(f64::from(count));
    steps.push(if short >= unmet {
        words.bridged.with(&[&hours(short), &hours(unmet), &hours(short - unmet)])
    } else {
        words.lagging.with(&[&hours(unmet), &hours(short), &hours(unmet - short)])
    });
    Working { rule: words.unmet, steps, source: words.unmet_source.to_owned() }
}

impl Behind<'_> {
    fn constant(&self, course: &Course) -> String {
        let notation = self.notation;
        notation.language.year_room_workings().constant.with(&[
            &notation.heat_capacity(course.capacity),
            &notation.coefficient(course.loss),
            &notation.hours(course.time_constant()),
        ])
    }

    /// How long until a temperature, from the two ends of a course.
    fn until(&self, course: &Course, to: Temperature, what: Phrase) -> String {
        let notation = self.notation;
        let words = notation.language.year_room_workings();
        let what = what.with(&[&notation.temperature(to)]);
        let [from, end, asked] = [course.from, course.towards, to].map(|it| self.tenth(it));
        let Some(time) = course.until(to) else { return words.not_reached.with(&[&what, &end]) };
        if time.value() == 0.0 {
            return words.at_once.with(&[&what, &from]);
        }
        let constant = notation.hours(course.time_constant());
        // Both differences are written the way round in which they are above nothing.
        let [one, other, third, fourth] =
            if course.rises { [&end, &from, &end, &asked] } else { [&from, &end, &asked, &end] };
        let took = notation.hours(time);
        words.until.with(&[&what, &constant, one, other, third, fourth, &took])
    }
}

pub(super) fn power_cut(behind: &Behind<'_>) -> Working {
    let words = behind.notation.language.year_room_workings();
    let [cooling, ..] = &behind.answer.courses;
    let mut steps = vec![behind.constant(cooling)];
    steps.extend(COOLED_TO.map(|to| behind.until(cooling, to, words.to)));
    Working { rule: words.power_cut, steps, source: words.course_source.to_owned() }
}

pub(super) fn warm_up(behind: &Behind<'_>) -> Working {
    let notation = behind.notation;
    let words = notation.language.year_room_workings();
    let [_, air, walls] = &behind.answer.courses;
    let needed = behind.answer.heater.needed;
    let capacity = HeaterCheck::at(behind.choices, needed, behind.winter).capacity;
    let to = behind.evaluation.checked.design().indoor_temperature - WARM_ENOUGH;
    let steps = vec![
        words.tends.with(&[
            &behind.tenth(behind.winter),
            &behind.power(capacity),
            &notation.coefficient(behind.answer.grounds.loss),
            &behind.tenth(air.towards),
        ]),
        behind.constant(air),
        behind.until(air, to, words.air_to),
        behind.until(walls, to, words.walls_to),
    ];
    Working { rule: words.warm_up, steps, source: words.course_source.to_owned() }
}
