//! Refusals that come together: every value of a list that cannot stand.

use core::fmt;

use super::interval::Bounds;
use super::quantity::{BoundedQuantity, OutOfRange};
use super::words::{Figure, write_unit, write_words};

/// A value that was refused, and which of a list it is.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Refusal<Q> {
    /// What it is.
    pub quantity: Q,
    /// Which of the list, from 0; `None` of a value that stands alone.
    pub index: Option<usize>,
    /// Its value, in the unit of the quantity.
    pub given: f64,
    /// The values allowed, with the others as they were.
    pub allowed: Bounds,
}

impl<Q: BoundedQuantity> fmt::Display for Refusal<Q> {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        write_words(out, self.quantity.key())?;
        if let Some(index) = self.index {
            write!(out, " of index {index}")?;
        }
        write!(out, " of {}", Figure(self.given))?;
        write_unit(out, self.quantity.unit())?;
        write!(out, " is out of range: it must be {}", self.allowed)?;
        write_unit(out, self.quantity.unit())
    }
}

/// Every value that was refused, together: at least one, in the order they were found.
#[derive(Clone, Debug, PartialEq)]
pub struct Refused<Q> {
    /// Each of them.
    pub refusals: Vec<Refusal<Q>>,
}

impl<Q> Refused<Q> {
    /// Stable name of the refusal.
    pub const fn code(&self) -> &'static str {
        "out_of_range"
    }
}

impl<Q: BoundedQuantity> fmt::Display for Refused<Q> {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        for (n, refusal) in self.refusals.iter().enumerate() {
            out.write_str(if n > 0 { "; " } else { "" })?;
            refusal.fmt(out)?;
        }
        Ok(())
    }
}

impl<Q: BoundedQuantity + fmt::Debug> core::error::Error for Refused<Q> {}

impl<Q> From<OutOfRange<Q>> for Refused<Q> {
    fn from(refused: OutOfRange<Q>) -> Self {
        let OutOfRange { quantity, given, allowed } = refused;
        Self { refusals: vec![Refusal { quantity, index: None, given, allowed }] }
    }
}

/// Checks value after value and keeps what is refused.
pub(crate) struct Refusals<Q> {
    found: Vec<Refusal<Q>>,
}

impl<Q: BoundedQuantity> Refusals<Q> {
    /// Nothing refused so far.
    pub const fn new() -> Self {
        Self { found: Vec::new() }
    }

    /// Whether a value stands within the bounds of the table; if not it is refused.
    pub fn holds(&mut self, quantity: Q, index: Option<usize>, given: f64) -> bool {
        self.holds_within(quantity, index, given, quantity.bounds())
    }

    /// Whether a value stands within bounds that the other values set; if not it is refused.
    pub fn holds_within(
        &mut self,
        quantity: Q,
        index: Option<usize>,
        given: f64,
        allowed: Bounds,
    ) -> bool {
        let holds = allowed.contains(given);
        if !holds {
            self.found.push(Refusal { quantity, index, given, allowed });
        }
        holds
    }

    /// Whether nothing was refused.
    pub const fn are_none(&self) -> bool {
        self.found.is_empty()
    }

    /// All that was refused.
    pub fn into_error(self) -> Refused<Q> {
        Refused { refusals: self.found }
    }

    /// Nothing refused, or all that was.
    pub fn finish(self) -> Result<(), Refused<Q>> {
        if self.are_none() { Ok(()) } else { Err(self.into_error()) }
    }
}
