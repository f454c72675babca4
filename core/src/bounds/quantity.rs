//! A table of quantities with their bounds, and the refusal of one value.

use core::fmt;

use super::interval::Bounds;
use super::refusals::Refusal;

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
        let Self { quantity, given, allowed } = *self;
        Refusal { quantity, index: None, given, allowed }.fmt(out)
    }
}

impl<Q: BoundedQuantity + fmt::Debug> core::error::Error for OutOfRange<Q> {}

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
