//! What a refusal of a design says to a developer: a stable code and a sentence.

use core::fmt;

use super::check::{DesignError, DesignProblem};
use super::field::{Field, Quantity};
use crate::bounds::{Figure, write_unit, write_words};

impl Quantity {
    /// The unit of the table, SI but °C.
    pub const fn unit(self) -> &'static str {
        match self {
            Self::Length => "m",
            Self::Temperature => "°C",
            Self::ThermalConductivity => "W/(m·K)",
            Self::ThermalTransmittance => "W/(m²·K)",
            Self::AirChangeRate => "1/s",
            Self::Count | Self::Share => "",
            Self::VolumeFlow => "m³/s",
            Self::Pressure => "Pa",
            Self::Mass => "kg",
            Self::Area => "m²",
            Self::Duration => "s",
            Self::Power => "W",
            Self::TemperatureDifference => "K",
            Self::Angle => "rad",
            Self::HeatCapacity => "J/K",
        }
    }
}

impl DesignError {
    /// Stable name of what is wrong.
    pub const fn code(&self) -> &'static str {
        match self.problem {
            DesignProblem::ByItself(problem) => problem.code(),
            DesignProblem::DoesNotFit { .. } => "does_not_fit",
            DesignProblem::NotColderThanRoom { .. } => "not_colder_than_room",
            DesignProblem::FarFromNominal { .. } => "far_from_nominal",
            DesignProblem::MustExceed { .. } => "must_exceed",
            DesignProblem::MustBeBelow { .. } => "must_be_below",
            DesignProblem::MustNotBeBelow { .. } => "must_not_be_below",
            DesignProblem::NoWallThere => "no_wall_there",
            DesignProblem::UsedUntilIsUsedFrom => "used_until_is_used_from",
            DesignProblem::SourceWithoutAir => "source_without_air",
        }
    }
}

/// A number of the table with its unit.
struct InUnit(f64, Quantity);

impl fmt::Display for InUnit {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        Figure(self.0).fmt(out)?;
        write_unit(out, self.1.unit())
    }
}

/// A field by its key, as words.
struct Named(Field);

impl fmt::Display for Named {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        write_words(out, self.0.range().key)
    }
}

impl fmt::Display for DesignError {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        let quantity = self.field.range().quantity;
        let in_unit = |number: f64| InUnit(number, quantity);
        if let DesignProblem::ByItself(problem) = self.problem {
            return problem.write(out, self.field.range().key, self.given, quantity.unit());
        }
        write!(out, "{} of {}", Named(self.field), in_unit(self.given))?;
        match self.problem {
            DesignProblem::ByItself(_) => Ok(()),
            DesignProblem::DoesNotFit { needs, has, clashes_with } => write!(
                out,
                " does not fit: {} needed, {} there; {} could give way",
                in_unit(needs),
                in_unit(has),
                Named(clashes_with)
            ),
            DesignProblem::NotColderThanRoom { maximum } => {
                write!(out, " must be at most {}, below the room", in_unit(maximum))
            }
            DesignProblem::FarFromNominal { nominal, tolerance } => {
                write!(out, " must be within {} of {}", in_unit(tolerance), in_unit(nominal))
            }
            DesignProblem::MustExceed { field, than } => {
                write!(out, " must exceed {}, {}", Named(field), in_unit(than))
            }
            DesignProblem::MustBeBelow { field, than } => {
                write!(out, " must be below {}, {}", Named(field), in_unit(than))
            }
            DesignProblem::MustNotBeBelow { field, than } => {
                write!(out, " must be at least {}, {}", Named(field), in_unit(than))
            }
            DesignProblem::NoWallThere => out.write_str(
                " has no wall: foam in the leaves of the cargo doors takes no framed wall",
            ),
            DesignProblem::UsedUntilIsUsedFrom => out.write_str(" must differ from used from"),
            DesignProblem::SourceWithoutAir => out.write_str(
                " is too little: something gives off moisture and no air carries it out",
            ),
        }
    }
}

impl core::error::Error for DesignError {}

#[cfg(test)]
mod tests {
    use crate::design::Design;
    use crate::units::{Length, Temperature};

    #[test]
    fn every_error_says_what_was_given_and_what_is_allowed() {
        let said = |change: fn(&mut Design)| {
            let mut design = Design::default();
            change(&mut design);
            let errors = design.check().unwrap_err();
            (errors[0].code(), errors[0].to_string())
        };
        assert_eq!(
            said(|design| design.door_width = Length::new(9.0)),
            (
                "out_of_range",
                "door width of 9 m is out of range: it must be from 0.6 to 1.2 m".to_owned()
            )
        );
        assert_eq!(
            said(|design| design.window_count = 1.5),
            ("not_whole", "window count of 1.5 must be a whole number".to_owned())
        );
        assert_eq!(
            said(|design| design.indoor_temperature = Temperature::celsius(f64::NAN)),
            ("not_finite", "indoor temperature must be a finite number, NaN given".to_owned())
        );
        assert_eq!(
            said(|design| {
                design.indoor_temperature = Temperature::celsius(10.0);
                design.outdoor_temperature = Temperature::celsius(9.5);
            }),
            (
                "not_colder_than_room",
                "outdoor temperature of 9.5 °C must be at most 9 °C, below the room".to_owned()
            )
        );
    }
}
