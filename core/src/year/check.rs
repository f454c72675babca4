//! Which choices about a year can stand, and what is wrong with those that cannot.

use super::choices::{PriceDate, YearChoices, YearField};
use crate::choice_table::RangeProblem;

/// What is wrong with a choice. Numbers are SI.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub enum YearProblem {
    /// The number by itself.
    ByItself(RangeProblem),
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

/// Choices that can stand.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct CheckedYearChoices(YearChoices);

impl CheckedYearChoices {
    /// The choices.
    pub fn choices(&self) -> &YearChoices {
        &self.0
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
    /// Checks every choice.
    ///
    /// # Errors
    /// Every choice that cannot stand.
    pub fn check(&self) -> Result<CheckedYearChoices, Vec<YearError>> {
        let mut errors = self.beyond_range(|field, given, problem| YearError {
            subject: YearSubject::Field(field),
            given,
            problem: YearProblem::ByItself(problem),
        });
        let mut report = |subject, given, problem| {
            errors.push(YearError { subject, given, problem });
        };
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
        if errors.is_empty() { Ok(CheckedYearChoices(self.clone())) } else { Err(errors) }
    }
}

#[cfg(test)]
mod tests {
    use super::super::heater::HeaterKind;
    use super::*;
    use crate::units::Power;

    #[test]
    fn the_default_choices_pass_their_own_check() {
        assert_eq!(YearChoices::default().check(), Ok(CheckedYearChoices::default()));
    }

    #[test]
    fn all_errors_come_together() {
        let wrong = YearChoices {
            heater: HeaterKind::UnventedPropane,
            heater_limit: Power::new(f64::NAN),
            backup_limit: Power::new(-1.0),
            electricity_price: Some(0.2),
            currency: *b"xts",
            ..YearChoices::default()
        };
        let errors = wrong.check().expect_err("nothing of it can stand");
        assert_eq!(errors.len(), 5, "{errors:?}");
        let dated = |day| YearChoices {
            prices_of: Some(PriceDate { year: 2026, month: 2, day }),
            ..YearChoices::default()
        };
        assert!(dated(28).check().is_ok());
        assert!(dated(29).check().is_err(), "2026 is no leap year");
    }
}
