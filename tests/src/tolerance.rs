//! How near a value must come to what was expected.

use std::fmt;

/// A difference that is allowed: an absolute part and a part of the expected value, summed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Tolerance {
    absolute: f64,
    relative: f64,
}

impl Tolerance {
    /// A difference in the unit of the value.
    pub const fn absolute(difference: f64) -> Self {
        Self { absolute: difference, relative: 0.0 }
    }

    /// A difference as a part of the expected value.
    pub const fn relative(part: f64) -> Self {
        Self { absolute: 0.0, relative: part }
    }

    /// The two allowed differences together.
    #[must_use]
    pub const fn and(self, other: Self) -> Self {
        Self { absolute: self.absolute + other.absolute, relative: self.relative + other.relative }
    }

    /// Reads `0.02 absolute`, `1e-4 relative` or both in a row.
    pub(crate) fn parse(words: &str) -> Result<Self, String> {
        let words: Vec<&str> = words.split_whitespace().collect();
        if words.is_empty() || !words.len().is_multiple_of(2) {
            return Err(format!("a tolerance is pairs of number and kind, not {words:?}"));
        }
        let mut total = Self::absolute(0.0);
        for pair in words.chunks(2) {
            let size: f64 = pair[0].parse().map_err(|_| format!("{:?} is no number", pair[0]))?;
            // A tolerance must admit rounding and refuse something.
            if !(size > 0.0 && size.is_finite()) {
                return Err(format!("{size} is no tolerance"));
            }
            total = total.and(match pair[1] {
                "absolute" => Self::absolute(size),
                "relative" => Self::relative(size),
                kind => return Err(format!("{kind:?} is neither absolute nor relative")),
            });
        }
        Ok(total)
    }

    /// The difference allowed from an expected value.
    pub fn width(self, expected: f64) -> f64 {
        self.absolute + self.relative * expected.abs()
    }

    /// Whether a value is near enough; NaN never is.
    pub fn admits(self, actual: f64, expected: f64) -> bool {
        (actual - expected).abs() <= self.width(expected)
    }
}

impl fmt::Display for Tolerance {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        match (self.absolute > 0.0, self.relative > 0.0) {
            (true, true) => write!(out, "{} and {} of it", self.absolute, self.relative),
            (true, false) => write!(out, "{}", self.absolute),
            (false, _) => write!(out, "{} of it", self.relative),
        }
    }
}

/// Fails, naming the quantity, unless the value is near enough to the expected one.
#[track_caller]
pub fn close_to(name: &str, actual: f64, expected: f64, tolerance: Tolerance) {
    assert!(
        tolerance.admits(actual, expected),
        "{}",
        difference(name, actual, expected, tolerance)
    );
}

/// A sentence that says how far off a value is.
pub(crate) fn difference(name: &str, actual: f64, expected: f64, tolerance: Tolerance) -> String {
    format!(
        "{name} is {actual}, expected {expected} within {tolerance}: off by {:e}, {:.2} times too far",
        actual - expected,
        (actual - expected).abs() / tolerance.width(expected)
    )
}

#[cfg(test)]
mod tests {
    use super::{Tolerance, close_to};

    #[test]
    fn admits_up_to_its_width_and_no_further() {
        let half = Tolerance::absolute(0.5);
        assert!(half.admits(10.5, 10.0) && half.admits(9.5, 10.0));
        assert!(!half.admits(10.51, 10.0) && !half.admits(9.49, 10.0));
        let tenth = Tolerance::relative(0.125);
        assert!(tenth.admits(-9.0, -8.0) && !tenth.admits(-9.01, -8.0));
        assert!(half.and(tenth).admits(9.5, 8.0) && !half.and(tenth).admits(9.51, 8.0));
    }

    #[test]
    fn never_admits_what_is_not_a_number() {
        let wide = Tolerance::absolute(1e300);
        assert!(!wide.admits(f64::NAN, 0.0) && !wide.admits(0.0, f64::NAN));
        assert!(!wide.admits(f64::INFINITY, 0.0));
    }

    #[test]
    fn reads_its_written_form() {
        let both = Tolerance::absolute(30.0).and(Tolerance::relative(0.004));
        assert_eq!(Tolerance::parse("0.004 relative 30 absolute"), Ok(both));
        for bad in ["", "3", "0 absolute", "x relative", "1 about", "inf absolute"] {
            assert!(Tolerance::parse(bad).is_err(), "{bad:?}");
        }
    }

    #[test]
    #[should_panic(expected = "dew point is 9.3, expected 9.2 within 0.05")]
    fn says_what_is_off() {
        close_to("dew point", 9.3, 9.2, Tolerance::absolute(0.05));
    }
}
