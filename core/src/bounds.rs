//! Bounds of quantities. A room lists in one table what its formulas are stated for, and from that
//! table come the check, the sentence for a developer and the stable code of a refusal.

use core::fmt;
use core::ops::{Bound, RangeBounds};

/// The values allowed, in the unit of their quantity; each end belongs to them or not.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Bounds {
    minimum: Bound<f64>,
    maximum: Bound<f64>,
}

impl Bounds {
    /// From a minimum to a maximum, both allowed.
    pub const fn between(minimum: f64, maximum: f64) -> Self {
        Self { minimum: Bound::Included(minimum), maximum: Bound::Included(maximum) }
    }

    /// Above a value that is not allowed itself, up to a maximum that is.
    pub const fn above(excluded: f64, maximum: f64) -> Self {
        Self { minimum: Bound::Excluded(excluded), maximum: Bound::Included(maximum) }
    }

    /// From a minimum that is allowed to below a value that is not; that may be infinity.
    pub const fn below(minimum: f64, excluded: f64) -> Self {
        Self { minimum: Bound::Included(minimum), maximum: Bound::Excluded(excluded) }
    }

    /// Above a value and below another, neither of them allowed.
    pub const fn strictly_between(minimum: f64, maximum: f64) -> Self {
        Self { minimum: Bound::Excluded(minimum), maximum: Bound::Excluded(maximum) }
    }

    /// Whether a value is allowed. What is not a number never is.
    pub fn contains(&self, value: f64) -> bool {
        (self.minimum, self.maximum).contains(&value)
    }

    /// The lower end, whether or not it is allowed itself.
    pub const fn minimum(&self) -> f64 {
        end(self.minimum)
    }

    /// The upper end, whether or not it is allowed itself.
    pub const fn maximum(&self) -> f64 {
        end(self.maximum)
    }
}

const fn end(bound: Bound<f64>) -> f64 {
    match bound {
        Bound::Included(value) | Bound::Excluded(value) => value,
        Bound::Unbounded => f64::INFINITY,
    }
}

impl fmt::Display for Bounds {
    /// As `from 0 to 1`, `above 0 and up to 30`, `from 0 to below 1`, `above 0 and below 1`.
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        let (minimum, maximum) = (Figure(self.minimum()), Figure(self.maximum()));
        match (self.minimum, self.maximum) {
            (Bound::Included(_), Bound::Included(_)) => write!(out, "from {minimum} to {maximum}"),
            (Bound::Included(_), _) => write!(out, "from {minimum} to below {maximum}"),
            (_, Bound::Included(_)) => write!(out, "above {minimum} and up to {maximum}"),
            _ => write!(out, "above {minimum} and below {maximum}"),
        }
    }
}

/// A quantity that stands in a table of bounds.
pub trait BoundedQuantity: Copy {
    /// Stable name on the wire, words joined by underscores.
    fn key(self) -> &'static str;

    /// The unit its values are given in; empty for a pure number.
    fn unit(self) -> &'static str;

    /// The values its formulas are stated for.
    fn bounds(self) -> Bounds;

    /// Passes a value inside the bounds of the table.
    ///
    /// # Errors
    /// Refuses a value outside them, or not a number.
    fn check(self, given: f64) -> Result<f64, OutOfRange<Self>> {
        self.check_within(given, self.bounds())
    }

    /// Passes a value inside bounds that this formula or the other inputs set.
    ///
    /// # Errors
    /// Refuses a value outside them, or not a number.
    fn check_within(self, given: f64, allowed: Bounds) -> Result<f64, OutOfRange<Self>> {
        if allowed.contains(given) {
            Ok(given)
        } else {
            Err(OutOfRange { quantity: self, given, allowed })
        }
    }
}

/// A value outside the range its formula is stated for, or not a number.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct OutOfRange<Q> {
    /// What was refused.
    pub quantity: Q,
    /// Its value, in the unit of the quantity.
    pub given: f64,
    /// The values allowed, with the other inputs as they were.
    pub allowed: Bounds,
}

impl<Q> OutOfRange<Q> {
    /// Stable name of the refusal.
    pub const fn code(&self) -> &'static str {
        "out_of_range"
    }
}

impl<Q: BoundedQuantity> fmt::Display for OutOfRange<Q> {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        write_words(out, self.quantity.key())?;
        write!(out, " of {}", Figure(self.given))?;
        write_unit(out, self.quantity.unit())?;
        write!(out, " is out of range: it must be {}", self.allowed)?;
        write_unit(out, self.quantity.unit())
    }
}

impl<Q: BoundedQuantity + fmt::Debug> core::error::Error for OutOfRange<Q> {}

/// A number as a developer reads it: with a power of ten where it is very small or very great.
pub(crate) struct Figure(pub f64);

impl fmt::Display for Figure {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        let size = self.0.abs();
        if size.is_finite() && size != 0.0 && !(1e-4..1e9).contains(&size) {
            write!(out, "{:e}", self.0)
        } else {
            write!(out, "{}", self.0)
        }
    }
}

/// Writes a key as words.
pub(crate) fn write_words(out: &mut fmt::Formatter<'_>, key: &str) -> fmt::Result {
    for (n, word) in key.split('_').enumerate() {
        out.write_str(if n > 0 { " " } else { "" })?;
        out.write_str(word)?;
    }
    Ok(())
}

/// Writes a unit after a number, if there is one.
pub(crate) fn write_unit(out: &mut fmt::Formatter<'_>, unit: &str) -> fmt::Result {
    out.write_str(if unit.is_empty() { "" } else { " " })?;
    out.write_str(unit)
}

/// Makes of a table the enum of its quantities, each with key, unit and bounds.
macro_rules! bounded_quantities {
    (
        $(#[$enum_doc:meta])*
        $Quantity:ident {
            $($(#[$doc:meta])* $name:ident: $key:literal, $unit:literal, $bounds:expr;)+
        }
    ) => {
        $(#[$enum_doc])*
        #[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
        #[non_exhaustive]
        pub enum $Quantity {
            $($(#[$doc])* $name,)+
        }

        impl $Quantity {
            /// Every quantity of the table.
            pub const ALL: &'static [Self] = &[$(Self::$name,)+];
        }

        impl $crate::bounds::BoundedQuantity for $Quantity {
            fn key(self) -> &'static str {
                match self {
                    $(Self::$name => $key,)+
                }
            }

            fn unit(self) -> &'static str {
                match self {
                    $(Self::$name => $unit,)+
                }
            }

            fn bounds(self) -> $crate::bounds::Bounds {
                match self {
                    $(Self::$name => $bounds,)+
                }
            }
        }
    };
}
pub(crate) use bounded_quantities;

#[cfg(test)]
mod tests {
    use super::*;

    bounded_quantities! {
        /// What a test asks about.
        Asked {
            /// With a unit.
            AirPressure: "air_pressure", "Pa", Bounds::between(20_000.0, 200_000.0);
            /// Without.
            Effectiveness: "effectiveness", "", Bounds::above(0.0, 1.0);
        }
    }

    #[test]
    fn a_table_names_all_its_quantities() {
        let keys: Vec<_> = Asked::ALL.iter().map(|asked| asked.key()).collect();
        assert_eq!(keys, ["air_pressure", "effectiveness"]);
    }

    #[test]
    fn a_value_is_passed_or_refused_with_what_is_allowed() {
        assert_eq!(Asked::AirPressure.check(20_000.0), Ok(20_000.0));
        let refused = Asked::AirPressure.check(5.0).unwrap_err();
        assert_eq!((refused.given, refused.code()), (5.0, "out_of_range"));
        let said = "air pressure of 5 Pa is out of range: it must be from 20000 to 200000 Pa";
        assert_eq!(refused.to_string(), said);
        let refused = Asked::Effectiveness.check(0.0).unwrap_err();
        let said = "effectiveness of 0 is out of range: it must be above 0 and up to 1";
        assert_eq!(refused.to_string(), said);
        let tighter = Bounds::strictly_between(0.2, 0.5);
        let refused = Asked::Effectiveness.check_within(0.5, tighter).unwrap_err();
        assert!(refused.to_string().ends_with("it must be above 0.2 and below 0.5"));
        assert_eq!(Bounds::between(1e-18, 0.001).to_string(), "from 1e-18 to 0.001");
    }

    #[test]
    fn ends_belong_to_what_is_allowed_or_not_and_no_number_never_does() {
        let all = [
            Bounds::between(0.0, 1.0),
            Bounds::above(0.0, 1.0),
            Bounds::below(0.0, 1.0),
            Bounds::strictly_between(0.0, 1.0),
        ];
        let contain = |value: f64| all.map(|bounds| bounds.contains(value));
        assert_eq!(contain(0.0), [true, false, true, false]);
        assert_eq!(contain(1.0), [true, true, false, false]);
        assert_eq!(contain(0.5), [true; 4]);
        assert_eq!(contain(f64::NAN), [false; 4]);
        assert!(all.iter().all(|bounds| (bounds.minimum(), bounds.maximum()) == (0.0, 1.0)));
        assert_eq!(all[2].to_string(), "from 0 to below 1");
    }
}
