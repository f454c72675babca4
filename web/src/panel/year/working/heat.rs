//! How the heat of a year and of its coldest day come about.

use inchwise_core::climate::hours_of;
use inchwise_core::units::{Energy, Time};
use inchwise_core::year::gain_utilisation;

use super::super::super::asked::Working;
use super::super::figures::most_of;
use super::super::place_unit::degree_days;
use super::{Behind, parts_of};
use crate::measure::UnitSystem;

/// A month by the monthly method, the fan's air counted as it was hour by hour.
struct Month {
    lasting: Time,
    lost: Energy,
    fan: Energy,
    gained: Energy,
    time_constant: Time,
    utilisation: f64,
    needed: Energy,
}

impl Month {
    fn of(behind: &Behind<'_>, month: usize) -> Self {
        let (grounds, period) = (&behind.answer.grounds, &behind.answer.months[month]);
        let mean = &grounds.months[month];
        let lasting = Time::hours(hours_of(month).len() as f64);
        let lost = grounds.loss * (mean.set_point - mean.outdoors) * lasting;
        let (fan, gained) = (period.energy.by_fan, mean.gains() * lasting);
        let time_constant = Time::new(grounds.capacity.value() / grounds.loss.value());
        let all = lost + fan;
        let utilisation =
            if all > Energy::ZERO { gain_utilisation(gained / all, time_constant) } else { 0.0 };
        let needed = if all > Energy::ZERO { all - gained * utilisation } else { Energy::ZERO };
        Self { lasting, lost, fan, gained, time_constant, utilisation, needed }
    }

    fn steps(&self, behind: &Behind<'_>, month: usize) -> Vec<String> {
        let notation = behind.notation;
        let words = notation.language.year_energy_workings();
        let kwh = |energy| notation.kilowatt_hours(energy);
        let grounds = &behind.answer.grounds;
        let mean = &grounds.months[month];
        let mut steps = vec![words.month_lost.with(&[
            notation.language.month(month),
            &notation.coefficient(grounds.loss),
            &behind.tenth(mean.set_point),
            &behind.tenth(mean.outdoors),
            &notation.count(self.lasting.as_hours()),
            &notation.parts_of_a_kilowatt_hour(),
            &kwh(self.lost),
        ])];
        let all = self.lost + self.fan;
        if self.fan != Energy::ZERO {
            steps.push(words.month_fan.with(&[&kwh(self.lost), &kwh(self.fan), &kwh(all)]));
        }
        let gained = parts_of(mean).map(|part| kwh(part * self.lasting));
        steps.push(words.month_gained.with(&gained.each_ref().map(String::as_str)));
        if self.gained > Energy::ZERO {
            let gamma = notation.number(self.gained / all, 3);
            let tau = notation.hours(self.time_constant);
            let a = notation.number(1.0 + self.time_constant.as_hours() / 15.0, 2);
            let eta = notation.number(self.utilisation, 3);
            steps.push(words.gains_over_losses.with(&[&kwh(self.gained), &kwh(all), &gamma]));
            let capacity = notation.heat_capacity(grounds.capacity);
            let loss = notation.coefficient(grounds.loss);
            steps.push(words.time_constant.with(&[&capacity, &loss, &tau]));
            steps.push(words.exponent.with(&[&tau, &notation.hours(Time::hours(15.0)), &a]));
            steps.push(words.utilisation.with(&[&gamma, &a, &eta]));
        }
        steps.push(words.month_needed.with(&[
            &kwh(all),
            &notation.number(self.utilisation, 3),
            &kwh(self.gained),
            &kwh(self.needed),
        ]));
        steps
    }
}

pub(super) fn heat(behind: &Behind<'_>) -> Working {
    let notation = behind.notation;
    let words = notation.language.year_energy_workings();
    let kwh = |energy| notation.kilowatt_hours(energy);
    let energy = &behind.answer.year.energy;
    let kept = energy.gained() - energy.lost();
    let parts = [
        energy.through_envelope,
        energy.through_openings,
        energy.by_leaks,
        energy.by_fan,
        kept,
        energy.people,
        energy.equipment,
        energy.sun,
        energy.heat(),
        energy.by_drying,
        energy.condensing,
    ];
    let parts = parts.map(kwh);
    let mut steps = vec![words.balance.with(&parts.each_ref().map(String::as_str))];
    steps.push(loss_here(behind));
    let days = behind.answer.degree_days;
    // A degree day is of kelvins in both.
    let lost = behind.answer.grounds.loss.value()
        * days[usize::from(notation.units == UnitSystem::Imperial)]
        * 86_400.0;
    let (days, base) = degree_days(days, notation);
    steps.push(words.degree_days.with(&[
        &notation.coefficient(behind.answer.grounds.loss),
        &days,
        &notation.parts_of_a_kilowatt_hour(),
        &kwh(Energy::new(lost)),
        &base,
    ]));
    steps.push(behind.sun_rule());
    if energy.heat() > Energy::ZERO {
        steps.extend(by_months(behind));
    }
    Working { rule: words.heat, steps, source: words.heat_source.to_owned() }
}

/// The loss of the table, and its air.
fn loss_here(behind: &Behind<'_>) -> String {
    let (notation, grounds) = (behind.notation, &behind.answer.grounds);
    notation.language.year_energy_workings().loss_here.with(&[
        &notation.coefficient(grounds.loss - grounds.leaks),
        &notation.coefficient(grounds.leaks),
        &notation.coefficient(grounds.loss),
    ])
}

fn by_months(behind: &Behind<'_>) -> Vec<String> {
    let notation = behind.notation;
    let words = notation.language.year_energy_workings();
    let kwh = |energy| notation.kilowatt_hours(energy);
    let months: Vec<Month> = (0..12).map(|month| Month::of(behind, month)).collect();
    let most = most_of(&behind.answer.months, |period| period.energy.heat().value());
    let mut steps = months[most].steps(behind, most);
    let list = months.iter().enumerate().filter(|(_, month)| month.needed > Energy::ZERO);
    let list = list.map(|(number, month)| {
        [notation.language.month(number), "\u{a0}", &kwh(month.needed)].concat()
    });
    let sum: Energy = months.iter().map(|month| month.needed).sum();
    steps.push(words.months_sum.with(&[&list.collect::<Vec<_>>().join(" + "), &kwh(sum)]));
    let hourly = behind.answer.year.energy.heat();
    steps.push(words.months_apart.with(&[
        &kwh(sum),
        &notation.percent(sum / hourly),
        &kwh(hourly),
    ]));
    let unmet = behind.answer.year.unmet_hours;
    if unmet > 0 {
        steps.push(words.months_unmet.with(&[&notation.count(f64::from(unmet))]));
    }
    steps
}

pub(super) fn coldest_day(behind: &Behind<'_>) -> Working {
    let notation = behind.notation;
    let words = notation.language.year_energy_workings();
    let answer = behind.answer;
    let grounds = &answer.grounds;
    let mean = &grounds.on_coldest_day;
    let steady = grounds.loss * (mean.set_point - mean.outdoors) - mean.gains();
    let steps = vec![
        words.day_heat.with(&[
            &behind.day(grounds.coldest_day),
            &notation.kilowatt_hours(answer.coldest_day * Time::days(1.0)),
            &notation.parts_of_a_kilowatt_hour(),
            &behind.power(answer.coldest_day),
        ]),
        behind.gains_of(mean),
        words.day_steady.with(&[
            &notation.coefficient(grounds.loss),
            &behind.tenth(mean.set_point),
            &behind.tenth(mean.outdoors),
            &behind.power(mean.gains()),
            &behind.power(steady),
        ]),
        words.day_apart.with(&[&behind.power(answer.coldest_day), &behind.power(steady)]),
    ];
    Working { rule: words.coldest_day, steps, source: words.hours_source.to_owned() }
}
