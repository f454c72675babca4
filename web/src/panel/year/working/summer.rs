//! How the warmest hour and the hours that are too warm come about.

use inchwise_core::heat_loss::{AIR_DENSITY, AIR_HEAT_CAPACITY};
use inchwise_core::units::{Power, TemperatureDifference};
use inchwise_core::year::{LIGHT_PAINT, SHADED, purge_flow};

use super::super::super::asked::Working;
use super::Behind;

/// How far over outdoors a room is let get while air carries its gains off (common practice, no source).
const PURGE_RISE: TemperatureDifference = TemperatureDifference::new(3.0);

pub(super) fn summer(behind: &Behind<'_>) -> Working {
    let (notation, design) = (behind.notation, behind.design());
    let words = notation.language.year_room_workings();
    let grounds = &behind.answer.grounds;
    let mean = &grounds.on_warmest_day;
    let loss = notation.coefficient(grounds.loss);
    let (outdoors, gains) = (behind.tenth(mean.outdoors), behind.power(mean.gains()));
    let mut steps = vec![
        [&behind.day(grounds.warmest_day), ". ", &behind.gains_of(mean)].concat(),
        behind.sun_rule(),
        words.stands_at.with(&[
            &outdoors,
            &gains,
            &loss,
            &behind.tenth(mean.stands_at(grounds.loss)),
        ]),
    ];
    if grounds.fan.value() > 0.0 {
        steps.push(words.blown_at.with(&[
            &outdoors,
            &gains,
            &loss,
            &notation.coefficient(grounds.fan),
            &behind.tenth(mean.stands_at(grounds.loss + grounds.fan)),
        ]));
    }
    let warmest = behind.answer.summer.as_chosen.warmest;
    steps.push(words.the_day.with(&[&behind.tenth(mean.room), &behind.tenth(warmest)]));
    let cooler = |less: Power| {
        let cooler = less / grounds.loss;
        words.cooler.with(&[&behind.power(less), &loss, &notation.difference_to_a_tenth(cooler)])
    };
    if design.paint > LIGHT_PAINT {
        let light = mean.sun_on_steel * (LIGHT_PAINT.value() / design.paint.value());
        steps.push(words.lighter.with(&[
            &behind.power(mean.sun_on_steel),
            &notation.number(LIGHT_PAINT.value(), 2),
            &notation.number(design.paint.value(), 2),
            &behind.power(light),
        ]));
        steps.push(cooler(mean.sun_on_steel - light));
    }
    if design.sun_on_windows > SHADED && mean.sun > Power::ZERO {
        let shade = mean.sun * (SHADED.value() / design.sun_on_windows.value());
        steps.push(words.shaded.with(&[
            &behind.power(mean.sun),
            &notation.number(SHADED.value(), 2),
            &notation.number(design.sun_on_windows.value(), 2),
            &behind.power(shade),
        ]));
        steps.push(cooler(mean.sun - shade));
    }
    Working { rule: words.summer, steps, source: words.summer_source.to_owned() }
}

pub(super) fn too_warm(behind: &Behind<'_>) -> Working {
    let notation = behind.notation;
    let words = notation.language.year_room_workings();
    let (answer, grounds) = (behind.answer, &behind.answer.grounds);
    let hours = |count: u32| [&notation.count(f64::from(count)), "\u{a0}h"].concat();
    let months = answer.months.iter().enumerate();
    let list = months.filter(|(_, period)| period.too_warm_hours > 0).map(|(month, period)| {
        [notation.language.month(month), "\u{a0}", &hours(period.too_warm_hours)].concat()
    });
    let list: Vec<String> = list.collect();
    let mut steps = Vec::new();
    if !list.is_empty() {
        let all = hours(answer.year.too_warm_hours);
        steps.push(words.warm_months.with(&[&list.join(" + "), &all]));
    }
    let days = notation.count(f64::from(grounds.warm_days));
    let limit = notation.temperature(behind.design().too_warm);
    steps.push(words.warm_days.with(&[&days, &limit]));
    let gains = grounds.on_warmest_day.gains();
    if let Some(flow) = purge_flow(gains, PURGE_RISE).filter(|_| gains > Power::ZERO) {
        steps.push(words.purge.with(&[
            &behind.power(gains),
            &notation.air_takes(AIR_DENSITY, AIR_HEAT_CAPACITY),
            &notation.difference_to_a_tenth(PURGE_RISE),
            &notation.air_flow_finely(flow),
        ]));
    }
    Working { rule: words.too_warm, steps, source: words.too_warm_source.to_owned() }
}
