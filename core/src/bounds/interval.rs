//! The values that a quantity may have.

use core::fmt;
use core::ops::{Bound, RangeBounds};

use super::words::Figure;

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

    /// From a minimum that is allowed to below a value that is not.
    pub const fn below(minimum: f64, excluded: f64) -> Self {
        Self { minimum: Bound::Included(minimum), maximum: Bound::Excluded(excluded) }
    }

    /// Above a value and below another, neither of them allowed.
    pub const fn strictly_between(minimum: f64, maximum: f64) -> Self {
        Self { minimum: Bound::Excluded(minimum), maximum: Bound::Excluded(maximum) }
    }

    /// From a minimum that is allowed upwards, short of infinity.
    pub const fn at_least(minimum: f64) -> Self {
        Self::below(minimum, f64::INFINITY)
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
    /// As `at least 3`, `from 0 to 1`, `above 0 and up to 30`, `from 0 to below 1`, `above 0 and below 1`.
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        if *self == Self::at_least(self.minimum()) {
            return write!(out, "at least {}", Figure(self.minimum()));
        }
        let (minimum, maximum) = (Figure(self.minimum()), Figure(self.maximum()));
        match (self.minimum, self.maximum) {
            (Bound::Included(_), Bound::Included(_)) => write!(out, "from {minimum} to {maximum}"),
            (Bound::Included(_), _) => write!(out, "from {minimum} to below {maximum}"),
            (_, Bound::Included(_)) => write!(out, "above {minimum} and up to {maximum}"),
            _ => write!(out, "above {minimum} and below {maximum}"),
        }
    }
}
