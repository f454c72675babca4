//! Decimal digits by hand: a few hundred bytes where the standard float formatting is many kB.

use crate::text::Language;

/// Between a number and its unit, and not to be broken across lines.
pub const NO_BREAK_SPACE: char = '\u{a0}';
/// Between groups of three digits in French.
const NARROW_NO_BREAK_SPACE: char = '\u{202f}';
/// In front of a negative number.
pub const MINUS: char = '\u{2212}';

/// What stands for a number that is not there.
const NO_NUMBER: &str = "\u{2013}";

impl Language {
    /// Between whole and tenths.
    const fn decimal_mark(self) -> char {
        match self {
            Self::English => '.',
            Self::French => ',',
        }
    }

    /// Between groups of three digits.
    const fn group_mark(self) -> char {
        match self {
            Self::English => ',',
            Self::French => NARROW_NO_BREAK_SPACE,
        }
    }
}

/// The digits of a number: whether it is below zero, its whole part, and its decimals as a whole
/// number with the unit of their first digit; nothing for one that is not finite or too large.
struct Digits {
    below_zero: bool,
    whole: u64,
    decimals: u64,
    first: u64,
}

impl Digits {
    /// Beyond this a scaled number does not fit.
    const LARGEST: f64 = 1e19;

    /// Rounded to so many decimals (at most 9), halves away from zero.
    fn of(value: f64, places: u32) -> Option<Self> {
        let unit = 10_u64.pow(places.min(9));
        let scaled = (value.abs() * unit as f64).round();
        if !scaled.is_finite() || scaled >= Self::LARGEST {
            return None;
        }
        let scaled = scaled as u64;
        Some(Self {
            below_zero: value < 0.0 && scaled > 0,
            whole: scaled / unit,
            decimals: scaled % unit,
            first: unit / 10,
        })
    }

    fn push_decimals(&self, written: &mut String, mark: char) {
        if self.first > 0 {
            written.push(mark);
        }
        let mut unit = self.first;
        while unit > 0 {
            push_digit(written, self.decimals / unit);
            unit /= 10;
        }
    }
}

/// A number with so many decimals (at most 9), halves away from zero, whole digits in groups of
/// three. A number that is not finite or has more than 19 digits is written as a dash.
pub fn decimal(value: f64, places: u32, language: Language) -> String {
    let Some(digits) = Digits::of(value, places) else { return NO_NUMBER.to_owned() };
    let mut written = String::new();
    if digits.below_zero {
        written.push(MINUS);
    }
    push_whole(&mut written, digits.whole, Some(language.group_mark()));
    digits.push_decimals(&mut written, language.decimal_mark());
    written
}

/// Adds a number as style sheets and drawings take it: a point, no groups. One that is not finite
/// is written as nothing at all, 0.
pub fn push_plain(written: &mut String, value: f64, places: u32) {
    let zero = Digits { below_zero: false, whole: 0, decimals: 0, first: 0 };
    let digits = Digits::of(value, places).unwrap_or(zero);
    if digits.below_zero {
        written.push('-');
    }
    push_whole(written, digits.whole, None);
    digits.push_decimals(written, '.');
}

/// A number as style sheets and drawings take it, with a unit behind it.
pub fn plain(value: f64, places: u32, unit: &str) -> String {
    let mut written = String::new();
    push_plain(&mut written, value, places);
    written.push_str(unit);
    written
}

/// A number to the nearest multiple of a step of whole units, as 1,580 to the nearest 10.
pub fn to_nearest(value: f64, step: f64, language: Language) -> String {
    decimal((value / step).round() * step, 0, language)
}

/// A number with at most so many decimals, zeros at the end left out.
pub fn shortest(value: f64, places: u32, language: Language) -> String {
    let mut written = decimal(value, places, language);
    if places > 0 && written != NO_NUMBER {
        let kept = written.trim_end_matches('0').trim_end_matches(language.decimal_mark()).len();
        written.truncate(kept);
    }
    written
}

fn push_digit(written: &mut String, digit: u64) {
    written.push(char::from(b'0' + (digit % 10) as u8));
}

fn push_whole(written: &mut String, whole: u64, group_mark: Option<char>) {
    let mut digits = 1;
    let mut unit = 1_u64;
    // Multiplying is many times cheaper than dividing, and drawings write thousands of numbers.
    while let Some(next) = unit.checked_mul(10).filter(|&next| next <= whole) {
        unit = next;
        digits += 1;
    }
    while digits > 0 {
        push_digit(written, whole / unit);
        unit = (unit / 10).max(1);
        digits -= 1;
        if digits > 0 && digits % 3 == 0 {
            written.extend(group_mark);
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn english_groups_by_commas_and_french_by_narrow_spaces() {
        assert_eq!(decimal(1583.4, 0, Language::English), "1,583");
        assert_eq!(decimal(1583.4, 1, Language::French), "1\u{202f}583,4");
        assert_eq!(decimal(12_345_678.0, 0, Language::English), "12,345,678");
        assert_eq!(decimal(999.5, 0, Language::English), "1,000");
    }

    #[test]
    fn halves_go_away_from_zero_and_nothing_is_minus_zero() {
        assert_eq!(decimal(0.125, 2, Language::English), "0.13");
        assert_eq!(decimal(-2.5, 0, Language::English), "\u{2212}3");
        assert_eq!(decimal(-0.4, 0, Language::English), "0");
        assert_eq!(decimal(0.007, 3, Language::English), "0.007");
    }

    #[test]
    fn trailing_zeros_go_but_whole_zeros_stay() {
        assert_eq!(shortest(20.0, 1, Language::English), "20");
        assert_eq!(shortest(20.5, 1, Language::French), "20,5");
        assert_eq!(shortest(0.0, 2, Language::English), "0");
        assert_eq!(to_nearest(1_583.4, 10.0, Language::English), "1,580");
    }

    #[test]
    fn style_sheets_get_plain_digits() {
        assert_eq!(plain(-1234.567, 2, "%"), "-1234.57%");
        assert_eq!(plain(0.04, 1, ""), "0.0");
        assert_eq!(plain(f64::NAN, 1, ""), "0");
        assert_eq!(plain(40.0, 0, "px"), "40px");
    }

    #[test]
    fn no_number_is_a_dash_and_never_nan() {
        for value in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY, 1e300] {
            assert_eq!(decimal(value, 2, Language::English), NO_NUMBER);
            assert_eq!(shortest(value, 2, Language::English), NO_NUMBER);
        }
    }
}
