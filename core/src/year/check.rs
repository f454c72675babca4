//! Which choices about a year can stand, and what is wrong with those that cannot.

use super::choices::{PriceDate, YearChoices, YearField};
use crate::choice_table::RangeProblem;
use crate::design::Design;
use crate::units::Temperature;

/// What is wrong with a choice. Numbers are SI.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub enum YearProblem {
    /// The number by itself.
    ByItself(RangeProblem),
    /// The room is used until the hour from which it is used: no hour or all of them.
    UsedUntilIsUsedFrom,
    /// The fan would cool a room that the heater still warms.
    CoolsBelowSetPoint {
        /// The temperature the heater holds.
        set_point: Temperature,
    },
    /// A flame without a flue gives its water and its fumes to the room.
    UnventedFlame {
        /// Kilograms of water for each kilogram of fuel.
        water_per_fuel: f64,
    },
    /// A price or emission without the day it is of.
    PriceWithoutDate,
    /// No such day.
    NoSuchDay,
    /// Not three capital letters.
    NotACurrency,
}

/// Which choice an error is about.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum YearSubject {
    /// A numeric choice.
    Field(YearField),
    /// The heater.
    Heater,
    /// The currency.
    Currency,
    /// The day the prices are of.
    PricesOf,
}

/// One choice that cannot stand.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct YearError {
    /// Which choice.
    pub subject: YearSubject,
    /// What was given, SI; 0 for what is not a number.
    pub given: f64,
    /// What is wrong with it.
    pub problem: YearProblem,
}

/// Choices that can stand beside a set-point.
#[derive(Clone, Debug, PartialEq)]
pub struct CheckedYearChoices {
    choices: YearChoices,
    set_point: Temperature,
}

impl Default for CheckedYearChoices {
    /// The default choices in the default design, which a test holds to their own check.
    fn default() -> Self {
        Self { choices: YearChoices::default(), set_point: Design::default().indoor_temperature }
    }
}

impl CheckedYearChoices {
    /// The choices.
    pub fn choices(&self) -> &YearChoices {
        &self.choices
    }

    /// The set-point they were checked with.
    pub fn set_point(&self) -> Temperature {
        self.set_point
    }

    /// The same with something changed that stays inside its range.
    pub(super) fn with(&self, change: impl FnOnce(&mut YearChoices)) -> Self {
        let mut changed = self.clone();
        change(&mut changed.choices);
        changed
    }
}

impl PriceDate {
    fn exists(self) -> bool {
        let leap = self.year.is_multiple_of(4)
            && (!self.year.is_multiple_of(100) || self.year.is_multiple_of(400));
        let last = match self.month {
            2 if leap => 29,
            2 => 28,
            4 | 6 | 9 | 11 => 30,
            _ => 31,
        };
        (1900..=2200).contains(&self.year)
            && (1..=12).contains(&self.month)
            && (1..=last).contains(&self.day)
    }
}

impl YearChoices {
    /// Checks every choice beside the temperature that the heater holds, which is the design's room
    /// temperature.
    ///
    /// # Errors
    /// Every choice that cannot stand.
    pub fn check(&self, set_point: Temperature) -> Result<CheckedYearChoices, Vec<YearError>> {
        let mut errors = self.beyond_range(|field, given, problem| YearError {
            subject: YearSubject::Field(field),
            given,
            problem: YearProblem::ByItself(problem),
        });
        let mut report = |subject, given, problem| {
            errors.push(YearError { subject, given, problem });
        };
        if self.used_until == self.used_from {
            report(
                YearSubject::Field(YearField::UsedUntil),
                self.used_until,
                YearProblem::UsedUntilIsUsedFrom,
            );
        }
        // Without a fan nothing cools.
        if self.fan_flow.value() > 0.0 && self.fan_above < set_point {
            report(
                YearSubject::Field(YearField::FanAbove),
                self.fan_above.as_celsius(),
                YearProblem::CoolsBelowSetPoint { set_point },
            );
        }
        if let Some(water_per_fuel) = self.heater.water_to_room() {
            report(YearSubject::Heater, 0.0, YearProblem::UnventedFlame { water_per_fuel });
        }
        if !self.currency.iter().all(u8::is_ascii_uppercase) {
            report(YearSubject::Currency, 0.0, YearProblem::NotACurrency);
        }
        let priced = [self.electricity_price, self.fuel_price, self.grid_emission];
        match self.prices_of {
            None if priced.iter().any(Option::is_some) => {
                report(YearSubject::PricesOf, 0.0, YearProblem::PriceWithoutDate);
            }
            Some(date) if !date.exists() => {
                report(YearSubject::PricesOf, 0.0, YearProblem::NoSuchDay);
            }
            _ => {}
        }
        if errors.is_empty() {
            Ok(CheckedYearChoices { choices: self.clone(), set_point })
        } else {
            Err(errors)
        }
    }
}

#[cfg(test)]
mod tests {
    use super::super::heater::HeaterKind;
    use super::*;
    use crate::units::{SolarShare, VolumeFlow};

    const SET_POINT: Temperature = Temperature::celsius(20.0);

    #[test]
    fn the_default_choices_pass_their_own_check() {
        let checked = YearChoices::default().check(Design::default().indoor_temperature);
        assert_eq!(checked, Ok(CheckedYearChoices::default()));
    }

    #[test]
    fn all_errors_come_together() {
        let wrong = YearChoices {
            heater: HeaterKind::UnventedPropane,
            used_from: 8.0,
            used_until: 8.0,
            people: 1.5,
            paint: SolarShare::new(f64::NAN),
            fan_flow: VolumeFlow::cubic_metres_per_hour(100.0),
            fan_above: Temperature::celsius(19.5),
            electricity_price: Some(0.2),
            currency: *b"xts",
            ..YearChoices::default()
        };
        let errors = wrong.check(SET_POINT).expect_err("nothing of it can stand");
        assert_eq!(errors.len(), 7, "{errors:?}");
        let dated = |day| YearChoices {
            prices_of: Some(PriceDate { year: 2026, month: 2, day }),
            ..YearChoices::default()
        };
        assert!(dated(28).check(SET_POINT).is_ok());
        assert!(dated(29).check(SET_POINT).is_err(), "2026 is no leap year");
    }

    #[test]
    fn a_fan_may_not_cool_below_what_the_heater_holds() {
        let fan = |flow, above| YearChoices {
            fan_flow: VolumeFlow::cubic_metres_per_hour(flow),
            fan_above: Temperature::celsius(above),
            ..YearChoices::default()
        };
        let errors = fan(100.0, 19.5).check(SET_POINT).expect_err("they work against each other");
        let expected = YearError {
            subject: YearSubject::Field(YearField::FanAbove),
            given: 19.5,
            problem: YearProblem::CoolsBelowSetPoint { set_point: SET_POINT },
        };
        assert_eq!(errors, [expected]);
        assert!(fan(100.0, 20.0).check(SET_POINT).is_ok(), "it cools from the set-point on");
        assert!(fan(0.0, 19.5).check(SET_POINT).is_ok(), "no fan, nothing to refuse");
    }

    #[test]
    fn a_room_may_be_used_over_midnight() {
        let used =
            |used_from, used_until| YearChoices { used_from, used_until, ..YearChoices::default() };
        assert!(used(20.0, 4.0).check(SET_POINT).is_ok());
        assert!(used(0.0, 24.0).check(SET_POINT).is_ok());
        let errors = used(6.0, 6.0).check(SET_POINT).expect_err("no hour or all of them");
        assert_eq!(errors[0].problem, YearProblem::UsedUntilIsUsedFrom);
    }
}
