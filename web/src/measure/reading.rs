//! What a person typed, as a number: `63 mm`, `6.3 cm`, `2 1/2"`, `1'-3½"`, `-27 °F`, `R-5.5`.
//!
//! Anything may stand in the text. What cannot be read is an error, never a guess and never a
//! panic.

use inchwise_core::design::{Field, Quantity};

use super::scale::{FieldUnit, is_sheet_thickness};
use super::{Notation, UnitSystem};
use crate::text::Language;

/// Why a text is no value.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Unread {
    /// Nothing was typed.
    Empty,
    /// No number could be made out.
    NotANumber,
    /// A number with a unit that does not belong here.
    UnknownUnit(String),
}

/// Nobody needs more characters for one value.
const LONGEST: usize = 40;

impl Notation {
    /// The SI number of what was typed for a field. A number without a unit is taken in the units
    /// shown.
    ///
    /// # Errors
    /// Why it could not be read. Whether it is allowed is asked later.
    pub fn read(self, field: Field, typed: &str) -> Result<f64, Unread> {
        let plain = plain_characters(typed);
        let plain = plain.trim();
        if plain.is_empty() {
            return Err(Unread::Empty);
        }
        if plain.chars().count() > LONGEST {
            return Err(Unread::NotANumber);
        }
        let mut scanner = Scanner { rest: plain, language: self.language };
        let si = match field.range().quantity {
            Quantity::Length => self.read_length(field, &mut scanner),
            quantity => self.read_single(quantity, &mut scanner),
        }?;
        if si.is_finite() { Ok(si) } else { Err(Unread::NotANumber) }
    }

    /// One or more terms of falling units of one system: `1 m 20 cm`, `1' 3 1/2"`.
    fn read_length(self, field: Field, scanner: &mut Scanner) -> Result<f64, Unread> {
        let negative = scanner.take_sign();
        let shown = match self.units {
            UnitSystem::Metric => MILLIMETRE,
            UnitSystem::Imperial if is_sheet_thickness(field) => MIL,
            UnitSystem::Imperial => INCH,
        };
        let mut total = 0.0;
        let mut last: Option<LengthUnit> = None;
        if scanner.rest.is_empty() {
            return Err(Unread::NotANumber);
        }
        while !scanner.rest.is_empty() {
            let number = scanner.take_number().ok_or(Unread::NotANumber)?;
            let word = scanner.take_length_word();
            let unit = match (word.as_str(), last) {
                ("", None) => shown,
                ("", Some(FOOT)) => INCH,
                ("", Some(_)) => return Err(Unread::NotANumber),
                (word, _) => {
                    length_unit(word).ok_or_else(|| Unread::UnknownUnit(word.to_owned()))?
                }
            };
            if last.is_some_and(|last| last.metric != unit.metric || last.rank <= unit.rank) {
                return Err(Unread::NotANumber);
            }
            total += number * unit.metres;
            // 63 mm is 63/1000 to the last bit, as the slider has it.
            if last.is_none() && unit == MILLIMETRE {
                total = FieldUnit::Millimetre.to_si(number);
            }
            last = Some(unit);
            scanner.skip_separator();
        }
        Ok(if negative { -total } else { total })
    }

    /// One number and a unit to the end of the text.
    fn read_single(self, quantity: Quantity, scanner: &mut Scanner) -> Result<f64, Unread> {
        let resistance = quantity != Quantity::Temperature && scanner.take_r_prefix();
        let negative = scanner.take_sign();
        let number = scanner.take_number().ok_or(Unread::NotANumber)?;
        let number = if negative { -number } else { number };
        let unit = bare_unit(scanner.rest);
        let metric = self.units == UnitSystem::Metric;
        let unit = match (quantity, unit.as_str()) {
            (Quantity::Temperature, "" | "°") if metric => FieldUnit::Celsius,
            (Quantity::Temperature, "" | "°") => FieldUnit::Fahrenheit,
            (Quantity::Temperature, "c" | "°c") => FieldUnit::Celsius,
            (Quantity::Temperature, "f" | "°f") => FieldUnit::Fahrenheit,
            (Quantity::ThermalConductivity, "" | "/in" | "perinch" | "/po") if resistance => {
                FieldUnit::RValuePerInch
            }
            (Quantity::ThermalConductivity, "") if !metric => FieldUnit::RValuePerInch,
            (Quantity::ThermalConductivity, "" | "w/mk") => FieldUnit::WattPerMetreKelvin,
            (Quantity::ThermalTransmittance, "") if resistance => {
                return Ok(FieldUnit::BtuPerHourSquareFootFahrenheit.to_si(1.0 / number));
            }
            (Quantity::ThermalTransmittance, "") if !metric => {
                FieldUnit::BtuPerHourSquareFootFahrenheit
            }
            (Quantity::ThermalTransmittance, "" | "w/m²k" | "w/m2k") => {
                FieldUnit::WattPerSquareMetreKelvin
            }
            (Quantity::ThermalTransmittance, "btu/hft²°f" | "btu/hft2f" | "btu/hpi²°f") => {
                FieldUnit::BtuPerHourSquareFootFahrenheit
            }
            (Quantity::AirChangeRate, "" | "/h" | "1/h" | "perhour" | "ach" | "parheure") => {
                FieldUnit::PerHour
            }
            (Quantity::Count, "") => FieldUnit::Piece,
            _ => simple_unit(quantity, unit.as_str(), metric)
                .ok_or_else(|| Unread::UnknownUnit(unit.clone()))?,
        };
        Ok(unit.to_si(number))
    }
}

/// The unit of a quantity that is written as one number with a plain unit.
fn simple_unit(quantity: Quantity, unit: &str, metric: bool) -> Option<FieldUnit> {
    Some(match (quantity, unit) {
        (Quantity::Share, "" | "%" | "percent") => FieldUnit::Percent,
        (Quantity::VolumeFlow, "m³/h" | "m3/h") => FieldUnit::CubicMetrePerHour,
        (Quantity::VolumeFlow, "cfm" | "ft³/min" | "ft3/min" | "pi³/min" | "pcm") => {
            FieldUnit::CubicFootPerMinute
        }
        (Quantity::VolumeFlow, "") if metric => FieldUnit::CubicMetrePerHour,
        (Quantity::VolumeFlow, "") => FieldUnit::CubicFootPerMinute,
        (Quantity::Pressure, "pa") => FieldUnit::Pascal,
        (Quantity::Pressure, "inwg" | "inwc" | "inh2o" | "\"" | "in" | "podeau" | "pod'eau") => {
            FieldUnit::InchOfWater
        }
        (Quantity::Pressure, "") if metric => FieldUnit::Pascal,
        (Quantity::Pressure, "") => FieldUnit::InchOfWater,
        (Quantity::Mass, "kg" | "l") => FieldUnit::Kilogram,
        (Quantity::Mass, "lb" | "lbs") => FieldUnit::Pound,
        (Quantity::Mass, "") if metric => FieldUnit::Kilogram,
        (Quantity::Mass, "") => FieldUnit::Pound,
        (Quantity::Area, "m²" | "m2") => FieldUnit::SquareMetre,
        (Quantity::Area, "ft²" | "ft2" | "sqft" | "pi²" | "pi2") => FieldUnit::SquareFoot,
        (Quantity::Area, "") if metric => FieldUnit::SquareMetre,
        (Quantity::Area, "") => FieldUnit::SquareFoot,
        (Quantity::Duration, "" | "h" | "hours" | "hour" | "heures" | "heure") => FieldUnit::Hour,
        (Quantity::Power, "" | "w") => FieldUnit::Watt,
        (Quantity::Power, "btu/h" | "btuh") => FieldUnit::BtuPerHour,
        (Quantity::Angle, "" | "°" | "degrees" | "degrés") => FieldUnit::Degree,
        (Quantity::HeatCapacity, "" | "kj/k") => FieldUnit::KilojoulePerKelvin,
        (Quantity::TemperatureDifference, "k" | "°c" | "c") => FieldUnit::Kelvin,
        (Quantity::TemperatureDifference, "°f" | "f") => FieldUnit::FahrenheitApart,
        (Quantity::TemperatureDifference, "") if metric => FieldUnit::Kelvin,
        (Quantity::TemperatureDifference, "") => FieldUnit::FahrenheitApart,
        _ => return None,
    })
}
/// Typographic characters as the keyboard's own, small letters throughout.
fn plain_characters(typed: &str) -> String {
    let mut plain = String::new();
    for character in typed.chars().take(4 * LONGEST) {
        match character {
            '\u{a0}' | '\u{202f}' | '\u{2009}' | '\u{2007}' | '\t' => plain.push(' '),
            '’' | '‘' | '′' | '´' | '`' => plain.push('\''),
            '”' | '“' | '″' => plain.push('"'),
            '−' | '–' | '—' | '‐' | '\u{2011}' => plain.push('-'),
            '⁄' | '∕' => plain.push('/'),
            '¼' => plain.push_str(" 1/4"),
            '½' => plain.push_str(" 1/2"),
            '¾' => plain.push_str(" 3/4"),
            '⅛' => plain.push_str(" 1/8"),
            '⅜' => plain.push_str(" 3/8"),
            '⅝' => plain.push_str(" 5/8"),
            '⅞' => plain.push_str(" 7/8"),
            _ => plain.push(character.to_ascii_lowercase()),
        }
    }
    plain.replace("''", "\"")
}

/// A unit without what is written between its letters.
fn bare_unit(text: &str) -> String {
    text.chars().filter(|c| !matches!(c, ' ' | '·' | '(' | ')' | '*' | '.' | '-')).collect()
}

/// A unit of length, and where it stands among those of its system.
#[derive(Clone, Copy, Debug, PartialEq)]
struct LengthUnit {
    metres: f64,
    metric: bool,
    rank: u8,
}

const MILLIMETRE: LengthUnit = LengthUnit { metres: 1e-3, metric: true, rank: 0 };
const CENTIMETRE: LengthUnit = LengthUnit { metres: 1e-2, metric: true, rank: 1 };
const METRE: LengthUnit = LengthUnit { metres: 1.0, metric: true, rank: 2 };
const MIL: LengthUnit = LengthUnit { metres: super::METRES_PER_MIL, metric: false, rank: 0 };
const INCH: LengthUnit = LengthUnit { metres: 0.0254, metric: false, rank: 1 };
const FOOT: LengthUnit = LengthUnit { metres: 0.3048, metric: false, rank: 2 };

fn length_unit(word: &str) -> Option<LengthUnit> {
    Some(match word {
        "mm" | "millimetre" | "millimetres" | "millimeter" | "millimeters" | "millimètre"
        | "millimètres" => MILLIMETRE,
        "cm" | "centimetre" | "centimetres" | "centimeter" | "centimeters" | "centimètre"
        | "centimètres" => CENTIMETRE,
        "m" | "metre" | "metres" | "meter" | "meters" | "mètre" | "mètres" => METRE,
        "mil" | "mils" | "thou" => MIL,
        "\"" | "in" | "inch" | "inches" | "po" | "pouce" | "pouces" => INCH,
        "'" | "ft" | "foot" | "feet" | "pi" | "pied" | "pieds" => FOOT,
        _ => return None,
    })
}

/// Walks over the text from left to right.
struct Scanner<'a> {
    rest: &'a str,
    language: Language,
}

impl Scanner<'_> {
    fn take(&mut self, prefix: char) -> bool {
        let stripped = self.rest.strip_prefix(prefix);
        self.rest = stripped.unwrap_or(self.rest);
        stripped.is_some()
    }

    fn skip_spaces(&mut self) {
        self.rest = self.rest.trim_start();
    }

    /// A sign in front; true for minus.
    fn take_sign(&mut self) -> bool {
        let negative = self.take('-');
        if !negative {
            self.take('+');
        }
        self.skip_spaces();
        negative
    }

    /// The R of an R-value with its hyphen.
    fn take_r_prefix(&mut self) -> bool {
        let there = self.take('r');
        if there {
            self.skip_spaces();
            self.take('-');
            self.skip_spaces();
        }
        there
    }

    /// Between feet and inches: spaces with a hyphen or comma among them.
    fn skip_separator(&mut self) {
        self.skip_spaces();
        if !self.take('-') {
            self.take(',');
        }
        self.skip_spaces();
    }

    fn take_digits(&mut self) -> &str {
        let end = self.rest.find(|c: char| !c.is_ascii_digit()).unwrap_or(self.rest.len());
        let (digits, rest) = self.rest.split_at(end);
        self.rest = rest;
        digits
    }

    /// A decimal number, a fraction, or a whole number with a fraction.
    fn take_number(&mut self) -> Option<f64> {
        let leading = self.take_digits().to_owned();
        let mut value = whole(&leading);
        while let Some(group) = self.take_group(&leading) {
            value = value * 1000.0 + group;
        }
        let decimals = self.take_decimals();
        match decimals {
            None if leading.is_empty() => None,
            None => self.take_fraction_after(value),
            Some(decimals) => Some(value + decimals),
        }
    }

    /// Three more digits behind a group mark, as in `2,134` or `2 134`.
    fn take_group(&mut self, leading: &str) -> Option<f64> {
        if leading.is_empty() || leading.len() > 3 || leading.starts_with('0') {
            return None;
        }
        let comma = self.language == Language::English;
        let after = self
            .rest
            .strip_prefix(' ')
            .or_else(|| if comma { self.rest.strip_prefix(',') } else { None })?;
        let digits = after.len() - after.trim_start_matches(|c: char| c.is_ascii_digit()).len();
        let (group, rest) = after.split_at(digits);
        if digits != 3 || rest.trim_start().starts_with('/') {
            return None;
        }
        self.rest = rest;
        Some(whole(group))
    }

    /// What stands behind the decimal mark.
    fn take_decimals(&mut self) -> Option<f64> {
        let after = self.rest.strip_prefix(['.', ','])?;
        if !after.starts_with(|c: char| c.is_ascii_digit()) {
            return None;
        }
        self.rest = after;
        let digits = self.take_digits();
        let unit = digits.chars().fold(1.0, |unit, _| unit * 10.0);
        Some(whole(digits) / unit)
    }

    /// `/4` behind a whole number, or ` 3/4` or `-3/4` behind it; or nothing.
    fn take_fraction_after(&mut self, value: f64) -> Option<f64> {
        let before = self.rest;
        if self.take_slash() {
            let denominator = whole(self.take_digits());
            return (denominator > 0.0).then(|| value / denominator);
        }
        self.skip_spaces();
        if self.rest.len() == before.len() {
            self.take('-');
        }
        let numerator = whole(self.take_digits());
        if self.take_slash() {
            let denominator = whole(self.take_digits());
            return (denominator > 0.0).then(|| value + numerator / denominator);
        }
        self.rest = before;
        Some(value)
    }

    /// The slash of a fraction; the one of `/h` has no digit behind it.
    fn take_slash(&mut self) -> bool {
        let after = self
            .rest
            .strip_prefix('/')
            .filter(|after| after.starts_with(|c: char| c.is_ascii_digit()));
        self.rest = after.unwrap_or(self.rest);
        after.is_some()
    }

    /// The unit behind a number: letters, or the marks of feet and inches.
    fn take_length_word(&mut self) -> String {
        self.skip_spaces();
        if self.take('\'') {
            return "'".to_owned();
        }
        if self.take('"') {
            return "\"".to_owned();
        }
        let ends = |c: char| c.is_ascii_digit() || matches!(c, ' ' | '-' | ',');
        let end = self.rest.find(ends).unwrap_or(self.rest.len());
        let (word, rest) = self.rest.split_at(end);
        self.rest = rest;
        word.trim_end_matches('.').to_owned()
    }
}

/// Digits as a number; as many as there are.
fn whole(digits: &str) -> f64 {
    digits.bytes().fold(0.0, |value, digit| value * 10.0 + f64::from(digit.wrapping_sub(b'0')))
}
