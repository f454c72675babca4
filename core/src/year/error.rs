//! Refusals: why a year cannot be reckoned.

use core::fmt;

use super::check::{YearError, YearProblem, YearSubject};
use super::choices::YearQuantity;
use crate::bounds::{Figure, write_unit, write_words};
use crate::units::{Angle, Temperature};

/// A part of the network of the room.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum NetworkPart {
    /// H of everything opaque, W/K.
    Opaque,
    /// H of windows and doors, W/K.
    Openings,
    /// H of the air that leaks, W/K.
    Leaks,
    /// Heat capacity inside the foam, J/K.
    Capacity,
    /// Opaque inside area, m².
    OpaqueArea,
    /// H from the surfaces to the middle of the boards, W/K.
    MassToSurface,
    /// Effective mass area, m².
    MassArea,
    /// Inside area, openings and all, m².
    TotalArea,
}

/// Why a design, its surroundings and the choices about use make no year.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub enum YearModelError {
    /// A part of the network is not a finite number, is below nothing, or is nothing where something
    /// must be there.
    NoNetwork {
        /// Which part.
        part: NetworkPart,
        /// What it is, SI.
        given: f64,
    },
    /// The sun was reckoned for a box that faces otherwise than chosen.
    FacesOtherwise {
        /// The direction of the surroundings.
        surroundings: Angle,
        /// The direction chosen.
        chosen: Angle,
    },
    /// The choices were checked beside another set-point than the design's room temperature.
    CheckedForAnotherSetPoint {
        /// The set-point they were checked with.
        checked: Temperature,
        /// The design's.
        design: Temperature,
    },
}

impl NetworkPart {
    /// Stable name, and the unit of what is given.
    const fn key_and_unit(self) -> (&'static str, &'static str) {
        match self {
            Self::Opaque => ("opaque", "W/K"),
            Self::Openings => ("openings", "W/K"),
            Self::Leaks => ("leaks", "W/K"),
            Self::Capacity => ("capacity", "J/K"),
            Self::OpaqueArea => ("opaque_area", "m²"),
            Self::MassToSurface => ("mass_to_surface", "W/K"),
            Self::MassArea => ("mass_area", "m²"),
            Self::TotalArea => ("total_area", "m²"),
        }
    }

    /// Stable name.
    pub const fn key(self) -> &'static str {
        self.key_and_unit().0
    }
}

impl YearModelError {
    /// Stable name of what is wrong.
    pub const fn code(&self) -> &'static str {
        match self {
            Self::NoNetwork { .. } => "no_network",
            Self::FacesOtherwise { .. } => "faces_otherwise",
            Self::CheckedForAnotherSetPoint { .. } => "checked_for_another_set_point",
        }
    }
}

impl fmt::Display for YearModelError {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        match *self {
            Self::NoNetwork { part, given } => {
                let (key, unit) = part.key_and_unit();
                write_words(out, key)?;
                write!(out, " of {} {unit} must be finite and above 0", Figure(given))?;
                let may_be_nothing = matches!(part, NetworkPart::Openings | NetworkPart::Leaks);
                out.write_str(if may_be_nothing { ", or 0" } else { "" })
            }
            Self::FacesOtherwise { surroundings, chosen } => write!(
                out,
                "the sun was computed for a front end that faces {}°, not {}° as chosen",
                surroundings.as_degrees(),
                chosen.as_degrees()
            ),
            Self::CheckedForAnotherSetPoint { checked, design } => write!(
                out,
                "the choices were checked with a set point of {} °C, not {} °C as the design has",
                checked.as_celsius(),
                design.as_celsius()
            ),
        }
    }
}

impl core::error::Error for YearModelError {}

impl YearQuantity {
    /// The unit of the table, SI but °C.
    pub const fn unit(self) -> &'static str {
        match self {
            Self::Temperature => "°C",
            Self::TemperatureDifference => "K",
            Self::Power => "W",
            Self::VolumeFlow => "m³/s",
            Self::MassFlow => "kg/s",
            Self::Angle => "rad",
            Self::HeatCapacity => "J/K",
            Self::ElectricPotential => "V",
            Self::ElectricCurrent => "A",
            Self::RelativeHumidity | Self::SolarShare | Self::Count | Self::PerUnit => "",
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
            YearProblem::UsedUntilIsUsedFrom => "used_until_is_used_from",
            YearProblem::CoolsBelowSetPoint { .. } => "cools_below_set_point",
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
            YearProblem::UsedUntilIsUsedFrom => out.write_str(" must differ from used from"),
            YearProblem::CoolsBelowSetPoint { set_point } => {
                write!(out, " must be at least the set point, {} °C", set_point.as_celsius())
            }
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
    use super::*;
    use crate::year::{YearChoices, YearField};

    #[test]
    fn every_error_says_what_was_given_and_what_is_allowed() {
        let range = YearField::FanAbove.range();
        let beyond = YearChoices { fan_above: Temperature::celsius(500.0), ..Default::default() };
        let errors = beyond.check(Temperature::celsius(20.0)).unwrap_err();
        let said = format!(
            "fan above of 500 °C is out of range: it must be from {} to {} °C",
            range.minimum, range.maximum
        );
        assert_eq!((errors[0].code(), errors[0].to_string()), ("out_of_range", said));
        let late = YearChoices { used_until: 8.0, used_from: 8.0, ..Default::default() };
        let error = late.check(Temperature::celsius(20.0)).unwrap_err()[0];
        assert_eq!(error.code(), "used_until_is_used_from");
        assert_eq!(error.to_string(), "used until of 8 must differ from used from");
        let part = YearModelError::NoNetwork { part: NetworkPart::Leaks, given: -1.0 };
        assert_eq!(part.to_string(), "leaks of -1 W/K must be finite and above 0, or 0");
    }
}
