//! A table of numeric choices: one row gives meaning, allowed range, step and default, and struct,
//! field names, ranges, getter and setter follow from it.

use core::fmt;

use crate::bounds::{Bounds, Figure, write_unit, write_words};

/// What is allowed for one choice, in SI units.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ChoiceRange<Q> {
    /// Stable name in links and files, without a unit.
    pub key: &'static str,
    /// The quantity it holds.
    pub quantity: Q,
    /// Smallest allowed value.
    pub minimum: f64,
    /// Largest allowed value.
    pub maximum: f64,
    /// The step of its slider.
    pub step: f64,
    /// The default; `None` where nothing stands until it is given.
    pub default: Option<f64>,
}

/// What is wrong with a number by itself. Numbers are SI.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum RangeProblem {
    /// Not a finite number.
    NotFinite,
    /// Outside the allowed range.
    OutOfRange {
        /// Smallest allowed.
        minimum: f64,
        /// Largest allowed.
        maximum: f64,
    },
    /// Must be a whole number.
    NotWhole,
}

impl RangeProblem {
    /// Stable name of what is wrong.
    pub const fn code(self) -> &'static str {
        match self {
            Self::NotFinite => "not_finite",
            Self::OutOfRange { .. } => "out_of_range",
            Self::NotWhole => "not_whole",
        }
    }

    /// Writes the sentence for a developer about the choice of a key.
    pub(crate) fn write(
        self,
        out: &mut fmt::Formatter<'_>,
        key: &str,
        given: f64,
        unit: &str,
    ) -> fmt::Result {
        write_words(out, key)?;
        match self {
            Self::NotFinite => write!(out, " must be a finite number, {given} given"),
            Self::NotWhole => write!(out, " of {given} must be a whole number"),
            Self::OutOfRange { minimum, maximum } => {
                write!(out, " of {}", Figure(given))?;
                write_unit(out, unit)?;
                let allowed = Bounds::between(minimum, maximum);
                write!(out, " is out of range: it must be {allowed}")?;
                write_unit(out, unit)
            }
        }
    }
}

/// The quantities of a table.
pub trait Quantities {
    /// Whether it counts whole things.
    fn is_count(&self) -> bool;
}

impl<Q: Quantities> ChoiceRange<Q> {
    /// What is wrong with a number that was given.
    pub(crate) fn problem(&self, given: f64) -> Option<RangeProblem> {
        if !given.is_finite() {
            Some(RangeProblem::NotFinite)
        } else if !(self.minimum <= given && given <= self.maximum) {
            Some(RangeProblem::OutOfRange { minimum: self.minimum, maximum: self.maximum })
        } else if self.quantity.is_count() && given.fract() != 0.0 {
            Some(RangeProblem::NotWhole)
        } else {
            None
        }
    }
}

/// A choice of one of the quantities of a table, to and from its SI number.
pub(crate) trait Number<Q>: Copy {
    /// What kind of quantity it holds.
    const QUANTITY: Q;
    /// Its number.
    fn to_number(self) -> f64;
    /// From its number.
    fn from_number(number: f64) -> Self;
}

/// Which type holds which quantity of a table, and which a bare number does: one that counts whole things, or
/// not.
macro_rules! numbers {
    ($Quantity:ident { $($Type:ident => $variant:ident),+ $(,)? } f64 => $bare:ident, whole $whole:literal) => {
        $(impl $crate::choice_table::Number<$Quantity> for $Type {
            const QUANTITY: $Quantity = $Quantity::$variant;
            fn to_number(self) -> f64 {
                self.value()
            }
            fn from_number(number: f64) -> Self {
                Self::new(number)
            }
        })+

        impl $crate::choice_table::Quantities for $Quantity {
            fn is_count(&self) -> bool {
                $whole && *self == Self::$bare
            }
        }

        impl $crate::choice_table::Number<$Quantity> for f64 {
            const QUANTITY: $Quantity = $Quantity::$bare;
            fn to_number(self) -> f64 {
                self
            }
            fn from_number(number: f64) -> Self {
                number
            }
        }
    };
}
pub(crate) use numbers;

/// Lets a table hold temperatures, which count in °C.
macro_rules! temperatures {
    ($Quantity:ident) => {
        impl $crate::choice_table::Number<$Quantity> for $crate::units::Temperature {
            const QUANTITY: $Quantity = $Quantity::Temperature;
            fn to_number(self) -> f64 {
                self.as_celsius()
            }
            fn from_number(number: f64) -> Self {
                Self::celsius(number)
            }
        }
    };
}
pub(crate) use temperatures;

/// Makes of a table the struct of all choices with its default, and the enum that names the numeric
/// ones. `options` are choices that are no numbers, `chosen` those with a default, and `asked` those
/// that stand only once they are given.
macro_rules! choice_table {
    (
        $(#[$choices_doc:meta])*
        choices $Choices:ident, field $Field:ident, quantity $Quantity:ident;
        options { $($(#[$o_doc:meta])* $o_name:ident: $o_type:ty = $o_default:expr;)+ }
        chosen { $($(#[$doc:meta])* $name:ident: $type:ident, $field:ident, $minimum:expr, $maximum:expr, $step:expr, $default:expr;)+ }
        asked $a_type:ident as $a_quantity:ident { $($(#[$a_doc:meta])* $a_name:ident: $a_field:ident, $a_minimum:expr, $a_maximum:expr, $a_step:expr;)+ }
    ) => {
        $(#[$choices_doc])*
        #[derive(Clone, Debug, PartialEq)]
        pub struct $Choices {
            $($(#[$o_doc])* pub $o_name: $o_type,)+
            $($(#[$doc])* pub $name: $type,)+
            $($(#[$a_doc])* pub $a_name: Option<$a_type>,)+
        }

        impl Default for $Choices {
            fn default() -> Self {
                Self {
                    $($o_name: $o_default,)+
                    $($name: <$type as Number<$Quantity>>::from_number($default),)+
                    $($a_name: None,)+
                }
            }
        }

        /// Names a numeric choice.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
        pub enum $Field {
            $($(#[$doc])* $field,)+
            $($(#[$a_doc])* $a_field,)+
        }

        impl $Field {
            /// Every numeric choice.
            pub const ALL: &'static [Self] = &[$(Self::$field,)+ $(Self::$a_field,)+];

            /// What is allowed for each, in the same order.
            const RANGES: &[$crate::choice_table::ChoiceRange<$Quantity>] = &[
                $($crate::choice_table::ChoiceRange {
                    key: stringify!($name),
                    quantity: <$type as Number<$Quantity>>::QUANTITY,
                    minimum: $minimum,
                    maximum: $maximum,
                    step: $step,
                    default: Some($default),
                },)+
                $($crate::choice_table::ChoiceRange {
                    key: stringify!($a_name),
                    quantity: $Quantity::$a_quantity,
                    minimum: $a_minimum,
                    maximum: $a_maximum,
                    step: $a_step,
                    default: None,
                },)+
            ];

            /// What is allowed for it.
            pub const fn range(self) -> $crate::choice_table::ChoiceRange<$Quantity> {
                Self::RANGES[self as usize]
            }

            /// The field of this name.
            pub fn from_key(key: &str) -> Option<Self> {
                Self::ALL.iter().copied().find(|field| field.range().key == key)
            }
        }

        impl $Choices {
            /// The SI number of a choice; `None` for one that stands only once it is given.
            pub fn get(&self, field: $Field) -> Option<f64> {
                match field {
                    $($Field::$field => Some(Number::<$Quantity>::to_number(self.$name)),)+
                    $($Field::$a_field => self.$a_name.map(Number::<$Quantity>::to_number),)+
                }
            }

            /// An error for each numeric choice that cannot stand by itself, in the order of the table, made of
            /// which it is, what was given, and what is wrong with it.
            pub(crate) fn beyond_range<E>(
                &self,
                error: impl Fn($Field, f64, $crate::choice_table::RangeProblem) -> E,
            ) -> Vec<E> {
                let check = |&field: &$Field| {
                    let given = self.get(field)?;
                    Some(error(field, given, field.range().problem(given)?))
                };
                $Field::ALL.iter().filter_map(check).collect()
            }

            /// Sets a choice from its SI number, lawful or not; `None` takes back one that stands only
            /// once it is given, and leaves any other as it is.
            pub fn set(&mut self, field: $Field, number: Option<f64>) {
                match field {
                    $($Field::$field => if let Some(number) = number {
                        self.$name = Number::<$Quantity>::from_number(number);
                    },)+
                    $($Field::$a_field => {
                        self.$a_name = number.map(Number::<$Quantity>::from_number);
                    })+
                }
            }
        }
    };
}
pub(crate) use choice_table;
