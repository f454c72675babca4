//! In which unit a choice about the year is written and read.

use inchwise_core::units::{Angle, HeatCapacity, MassFlow, Temperature, VolumeFlow};
use inchwise_core::year::{YearField, YearQuantity};

use super::{MINUS, NO_BREAK_SPACE, Notation, UnitSystem, plain_number, shortest};
use crate::text::Language;

/// Kilojoules in a joule.
const KILO: f64 = 1000.0;

/// The unit as it is written.
pub const fn unit_of_year(field: YearField, notation: Notation) -> &'static str {
    let metric = matches!(notation.units, UnitSystem::Metric);
    match field.range().quantity {
        YearQuantity::Temperature if metric => "°C",
        YearQuantity::TemperatureDifference if metric => "K",
        YearQuantity::Temperature | YearQuantity::TemperatureDifference => "°F",
        YearQuantity::Power => "W",
        YearQuantity::RelativeHumidity | YearQuantity::SolarShare => "%",
        YearQuantity::VolumeFlow if metric => "m³/h",
        YearQuantity::VolumeFlow => match notation.language {
            Language::English => "cfm",
            Language::French => "pi³/min",
        },
        YearQuantity::MassFlow => "g/h",
        YearQuantity::Angle => "°",
        YearQuantity::HeatCapacity => "kJ/K",
        YearQuantity::ElectricPotential => "V",
        YearQuantity::ElectricCurrent => "A",
        YearQuantity::Count => "",
        YearQuantity::PerUnit => match field {
            YearField::GridEmission => "kg",
            _ => "",
        },
    }
}

/// From SI to the unit written.
fn of_si(field: YearField, si: f64, units: UnitSystem) -> f64 {
    let metric = units == UnitSystem::Metric;
    match field.range().quantity {
        YearQuantity::Temperature if metric => si,
        YearQuantity::Temperature => Temperature::celsius(si).as_fahrenheit(),
        YearQuantity::TemperatureDifference if metric => si,
        YearQuantity::TemperatureDifference => si * 1.8,
        YearQuantity::RelativeHumidity | YearQuantity::SolarShare => si * 100.0,
        YearQuantity::VolumeFlow if metric => VolumeFlow::new(si).as_cubic_metres_per_hour(),
        YearQuantity::VolumeFlow => VolumeFlow::new(si).as_cubic_feet_per_minute(),
        YearQuantity::MassFlow => MassFlow::new(si).as_grams_per_hour(),
        YearQuantity::Angle => Angle::new(si).as_degrees(),
        YearQuantity::HeatCapacity => HeatCapacity::new(si).value() / KILO,
        YearQuantity::Power
        | YearQuantity::ElectricPotential
        | YearQuantity::ElectricCurrent
        | YearQuantity::Count
        | YearQuantity::PerUnit => si,
    }
}

/// From the unit written to SI.
fn to_si(field: YearField, value: f64, units: UnitSystem) -> f64 {
    let metric = units == UnitSystem::Metric;
    match field.range().quantity {
        YearQuantity::Temperature if metric => value,
        YearQuantity::Temperature => Temperature::fahrenheit(value).as_celsius(),
        YearQuantity::TemperatureDifference if metric => value,
        YearQuantity::TemperatureDifference => value / 1.8,
        YearQuantity::RelativeHumidity | YearQuantity::SolarShare => value / 100.0,
        YearQuantity::VolumeFlow if metric => VolumeFlow::cubic_metres_per_hour(value).value(),
        YearQuantity::VolumeFlow => VolumeFlow::cubic_feet_per_minute(value).value(),
        YearQuantity::MassFlow => MassFlow::grams_per_hour(value).value(),
        YearQuantity::Angle => Angle::degrees(value).value(),
        YearQuantity::HeatCapacity => value * KILO,
        YearQuantity::Power
        | YearQuantity::ElectricPotential
        | YearQuantity::ElectricCurrent
        | YearQuantity::Count
        | YearQuantity::PerUnit => value,
    }
}

/// A choice as it stands in its box.
pub fn written_of_year(field: YearField, si: f64, notation: Notation) -> String {
    let places = match field.range().quantity {
        YearQuantity::PerUnit => 3,
        YearQuantity::Temperature | YearQuantity::TemperatureDifference => 1,
        _ => 0,
    };
    let mut written = shortest(of_si(field, si, notation.units), places, notation.language);
    let unit = unit_of_year(field, notation);
    if !unit.is_empty() {
        if unit != "°" && (unit != "%" || notation.language == Language::French) {
            written.push(NO_BREAK_SPACE);
        }
        written.push_str(unit);
    }
    written
}

/// The SI number of what was typed, with or without its unit.
pub fn read_of_year(field: YearField, typed: &str, notation: Notation) -> Option<f64> {
    let value = number(typed, unit_of_year(field, notation), notation.language)?;
    let range = field.range();
    let si = to_si(field, value, notation.units);
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

    #[test]
    fn what_is_written_reads_back_within_its_range() {
        for units in [UnitSystem::Metric, UnitSystem::Imperial] {
            for language in Language::ALL {
                let notation = Notation { units, language };
                for &field in YearField::ALL {
                    let range = field.range();
                    let text = written_of_year(field, range.maximum, notation);
                    let back = read_of_year(field, &text, notation).expect("what was written");
                    let off = (back - range.maximum).abs() / range.maximum;
                    assert!(off < 0.02, "{field:?} {text}: {back}");
                    assert_eq!(read_of_year(field, "x", notation), None);
                    assert_eq!(read_of_year(field, "", notation), None);
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
