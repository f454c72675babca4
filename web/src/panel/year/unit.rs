//! In which unit a choice about the year is written and read.

use inchwise_core::year::{YearField, YearQuantity};

use crate::measure::{MINUS, NO_BREAK_SPACE, Notation, plain_number, shortest};
use crate::text::Language;

/// The unit as it is written. It is that of SI in both systems.
pub(super) const fn unit(field: YearField) -> &'static str {
    match field.range().quantity {
        YearQuantity::Power => "W",
        YearQuantity::ElectricPotential => "V",
        YearQuantity::ElectricCurrent => "A",
        YearQuantity::PerUnit => match field {
            YearField::GridEmission => "kg",
            _ => "",
        },
    }
}

/// A choice as it stands in its box.
pub(in crate::panel) fn written(field: YearField, si: f64, notation: Notation) -> String {
    let places = match field.range().quantity {
        YearQuantity::PerUnit => 3,
        _ => 0,
    };
    let mut written = shortest(si, places, notation.language);
    let unit = unit(field);
    if !unit.is_empty() {
        written.push(NO_BREAK_SPACE);
        written.push_str(unit);
    }
    written
}

/// The SI number of what was typed, with or without its unit.
pub(super) fn read(field: YearField, typed: &str, notation: Notation) -> Option<f64> {
    let si = number(typed, unit(field), notation.language)?;
    let range = field.range();
    // An end of the range, written and read again, is that end and not a rounding beyond it.
    let near = (range.maximum - range.minimum) * 1e-9;
    Some(if (si - range.maximum).abs() < near {
        range.maximum
    } else if (si - range.minimum).abs() < near {
        range.minimum
    } else {
        si
    })
}

/// The number of a text as people write it: marks of the language, its unit behind it.
pub(super) fn number(typed: &str, unit: &str, language: Language) -> Option<f64> {
    const LONGEST: usize = 60;
    if typed.len() > LONGEST {
        return None;
    }
    let typed = typed.trim();
    let typed = typed.strip_suffix(unit).unwrap_or(typed);
    let mut plain = String::new();
    for letter in typed.chars() {
        match letter {
            ',' if language == Language::French => plain.push('.'),
            ',' => {}
            MINUS => plain.push('-'),
            letter if letter.is_whitespace() => {}
            letter => plain.push(letter),
        }
    }
    plain_number(&plain)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::measure::UnitSystem;

    #[test]
    fn what_is_written_reads_back_within_its_range() {
        for units in [UnitSystem::Metric, UnitSystem::Imperial] {
            for language in Language::ALL {
                let notation = Notation { units, language };
                for &field in YearField::ALL {
                    let range = field.range();
                    let text = written(field, range.maximum, notation);
                    let back = read(field, &text, notation).expect("what was written");
                    let off = (back - range.maximum).abs() / range.maximum;
                    assert!(off < 0.02, "{field:?} {text}: {back}");
                    assert_eq!(read(field, "x", notation), None);
                    assert_eq!(read(field, "", notation), None);
                }
            }
        }
    }

    #[test]
    fn marks_are_those_of_the_language() {
        assert_eq!(number("3,000 W", "W", Language::English), Some(3000.0));
        assert_eq!(number("0,16", "", Language::French), Some(0.16));
        assert_eq!(number("\u{2212}27,5 °C", "°C", Language::French), Some(-27.5));
        assert_eq!(number("1e5", "", Language::English), None);
        assert_eq!(number(&"9".repeat(99), "", Language::English), None);
    }
}
