//! A table of numeric choices: one row gives meaning, allowed range, step and default, and struct,
//! field names, ranges, getter and setter follow from it.

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

/// The quantities of a table, one of which counts whole things.
pub trait Quantities: PartialEq {
    /// A whole number.
    const COUNT: Self;
}

impl<Q: Quantities> ChoiceRange<Q> {
    /// What is wrong with a number that was given.
    pub(crate) fn problem(&self, given: f64) -> Option<RangeProblem> {
        if !given.is_finite() {
            Some(RangeProblem::NotFinite)
        } else if !(self.minimum <= given && given <= self.maximum) {
            Some(RangeProblem::OutOfRange { minimum: self.minimum, maximum: self.maximum })
        } else if self.quantity == Q::COUNT && given.fract() != 0.0 {
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

/// Which type holds which quantity of a table. Temperatures count in °C, and `f64` is a count.
macro_rules! numbers {
    ($Quantity:ident { $($Type:ident => $variant:ident),+ $(,)? }) => {
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
            const COUNT: Self = $Quantity::Count;
        }

        impl $crate::choice_table::Number<$Quantity> for $crate::units::Temperature {
            const QUANTITY: $Quantity = $Quantity::Temperature;
            fn to_number(self) -> f64 {
                self.as_celsius()
            }
            fn from_number(number: f64) -> Self {
                Self::celsius(number)
            }
        }

        impl $crate::choice_table::Number<$Quantity> for f64 {
            const QUANTITY: $Quantity = $Quantity::Count;
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
