//! Refusals: why a year cannot be reckoned.

use core::fmt;

use super::check::{YearError, YearProblem, YearSubject};
use super::choices::YearQuantity;
use crate::bounds::{Figure, write_unit, write_words};
use crate::evaluate::NotReckoned;
use crate::units::Angle;

/// Why a design and its surroundings make no year.
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub enum YearModelError {
    /// Air and heat of the design itself were not reckoned.
    NoBalance(NotReckoned),
    /// The sun was reckoned for a box that faces otherwise than chosen.
    FacesOtherwise {
        /// The direction of the surroundings.
        surroundings: Angle,
        /// The direction chosen.
        chosen: Angle,
    },
}

impl From<NotReckoned> for YearModelError {
    fn from(error: NotReckoned) -> Self {
        Self::NoBalance(error)
    }
}

impl YearModelError {
    /// Stable name of what is wrong.
    pub const fn code(&self) -> &'static str {
        match self {
            Self::NoBalance(error) => error.code(),
            Self::FacesOtherwise { .. } => "faces_otherwise",
        }
    }
}

impl fmt::Display for YearModelError {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::NoBalance(error) => error.fmt(out),
            Self::FacesOtherwise { surroundings, chosen } => write!(
                out,
                "the sun was computed for a front end that faces {}°, not {}° as chosen",
                surroundings.as_degrees(),
                chosen.as_degrees()
            ),
        }
    }
}

impl core::error::Error for YearModelError {}

impl YearQuantity {
    /// The unit of the table, SI but °C.
    pub const fn unit(self) -> &'static str {
        match self {
            Self::Power => "W",
            Self::ElectricPotential => "V",
            Self::ElectricCurrent => "A",
            Self::PerUnit => "",
        }
    }
}

impl YearSubject {
    /// Stable name.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Field(field) => field.range().key,
            Self::Heater => "heater",
            Self::Currency => "currency",
            Self::PricesOf => "prices_of",
        }
    }

    const fn unit(self) -> &'static str {
        match self {
            Self::Field(field) => field.range().quantity.unit(),
            Self::Heater | Self::Currency | Self::PricesOf => "",
        }
    }
}

impl YearError {
    /// Stable name of what is wrong.
    pub const fn code(&self) -> &'static str {
        match self.problem {
            YearProblem::ByItself(problem) => problem.code(),
            YearProblem::UnventedFlame { .. } => "unvented_flame",
            YearProblem::PriceWithoutDate => "price_without_date",
            YearProblem::NoSuchDay => "no_such_day",
            YearProblem::NotACurrency => "not_a_currency",
        }
    }
}

impl fmt::Display for YearError {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        let (key, unit) = (self.subject.key(), self.subject.unit());
        if let YearProblem::ByItself(problem) = self.problem {
            return problem.write(out, key, self.given, unit);
        }
        write_words(out, key)?;
        if matches!(self.subject, YearSubject::Field(_)) {
            write!(out, " of {}", Figure(self.given))?;
            write_unit(out, unit)?;
        }
        match self.problem {
            YearProblem::ByItself(_) => Ok(()),
            YearProblem::UnventedFlame { water_per_fuel } => write!(
                out,
                " has a flame without a flue, which gives {water_per_fuel} kg of water to the room \
                 for each kg of fuel"
            ),
            YearProblem::PriceWithoutDate => {
                out.write_str(" must be given with a price or emission")
            }
            YearProblem::NoSuchDay => out.write_str(" is no day of the calendar"),
            YearProblem::NotACurrency => out.write_str(" must be three capital letters"),
        }
    }
}

impl core::error::Error for YearError {}

#[cfg(test)]
mod tests {
    use crate::units::Power;
    use crate::year::{YearChoices, YearField};

    #[test]
    fn every_error_says_what_was_given_and_what_is_allowed() {
        let range = YearField::HeaterLimit.range();
        let beyond = YearChoices { heater_limit: Power::new(5e5), ..Default::default() };
        let errors = beyond.check().unwrap_err();
        let said = format!(
            "heater limit of 500000 W is out of range: it must be from {} to {} W",
            range.minimum, range.maximum
        );
        assert_eq!((errors[0].code(), errors[0].to_string()), ("out_of_range", said));
        let undated = YearChoices { fuel_price: Some(1.0), ..Default::default() };
        let error = undated.check().unwrap_err()[0];
        assert_eq!(error.code(), "price_without_date");
        assert_eq!(error.to_string(), "prices of must be given with a price or emission");
    }
}
