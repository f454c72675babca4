//! Numbers as a link writes them: digits, at most one point, a minus in front.

/// Decimals that are written at most.
const PLACES: u32 = 9;

/// A number as a link writes it: `-33`, `0.026`, at most nine decimals, no groups. `None` for one
/// that is not finite or beyond 10⁹.
pub fn plain_text(value: f64) -> Option<String> {
    const LARGEST: f64 = 1e9;
    if !value.is_finite() || value.abs() > LARGEST {
        return None;
    }
    let one = 10_u64.pow(PLACES);
    // Whole and decimals apart, so that large numbers keep theirs.
    let mut whole = value.abs().trunc() as u64;
    let mut decimals = (value.abs().fract() * one as f64).round() as u64;
    if decimals == one {
        (whole, decimals) = (whole + 1, 0);
    }
    let mut written = String::new();
    if value < 0.0 && (whole, decimals) != (0, 0) {
        written.push('-');
    }
    written.push_str(&whole.to_string());
    if decimals > 0 {
        written.push('.');
        let digits = (one + decimals).to_string();
        written.push_str(digits[1..].trim_end_matches('0'));
    }
    Some(written)
}

/// The number of a text that a link may hold: digits, at most one point, a minus in front.
pub fn plain_number(text: &str) -> Option<f64> {
    const LONGEST: usize = 30;
    let (negative, digits) = text.strip_prefix('-').map_or((false, text), |rest| (true, rest));
    let (whole, decimals) = digits.split_once('.').unwrap_or((digits, ""));
    let all_digits = whole.bytes().chain(decimals.bytes()).all(|c| c.is_ascii_digit());
    if whole.is_empty() || !all_digits || text.len() > LONGEST {
        return None;
    }
    let of_digits = |digits: &str| {
        digits.bytes().fold(0.0, |value, digit| value * 10.0 + f64::from(digit - b'0'))
    };
    let scale = decimals.bytes().fold(1.0, |scale, _| scale * 10.0);
    // One division of whole numbers: 0.026 comes back to the last bit.
    let value = (of_digits(whole) * scale + of_digits(decimals)) / scale;
    Some(if negative { -value } else { value })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_are_written_as_short_as_they_are() {
        for (value, text) in
            [(-33.0, "-33"), (0.026, "0.026"), (0.0, "0"), (-0.0, "0"), (1e9, "1000000000")]
        {
            assert_eq!(plain_text(value).as_deref(), Some(text));
            assert_eq!(plain_number(text), Some(value));
        }
        assert_eq!(plain_text(1.0 / 3.0).as_deref(), Some("0.333333333"));
        assert_eq!(plain_text(0.999_999_999_9).as_deref(), Some("1"));
        assert_eq!((plain_text(f64::NAN), plain_text(1.1e9)), (None, None));
    }
}
