//! The year's choices as text, in the attribute `year` and at the end of a link:
//! `heater=air_source_heat_pump&electricity_price=0.16&place=Yellowknife%2C%20NT%2C%20CA`.
//!
//! Keys are those of the table of choices, numbers in SI; `currency` and `prices_of=2026-01-31`
//! beside them. `place` is a name of the table of places, nothing for the invented one; behind it
//! stand those of its figures that are given otherwise: `winter_design=-38`, `temperature_1=-27`
//! for January, in °C, K, Pa, kWh/m² a day, m and degrees. An empty value takes back a price.
//!
//! What earlier texts say of people, hours of use, fan and sun is taken over into the design.

use inchwise_core::climate::{CheckedPlace, Place};
use inchwise_core::design::Field;
use inchwise_core::year::{HeaterKind, PriceDate, YearChoices, YearField, YearSubject};
use inchwise_wire::{FormerKey, former_year_key};

use super::place::{ChosenPlace, place_errors};
use crate::figure::Figure;
use crate::measure::{plain_number, plain_text};

/// The place that a text asks for.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct PlaceWish {
    /// Its name; nothing for the invented one.
    pub name: String,
    /// The figures that are given otherwise.
    pub changes: Vec<(Figure, f64)>,
}

/// What a text says of the year.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct YearText {
    /// The choices, which pass their check.
    pub choices: YearChoices,
    /// The place.
    pub place: PlaceWish,
    /// What it says of the design, as earlier years did.
    pub of_design: Vec<OfDesign>,
    /// The keys whose value could not be used.
    pub unused: Vec<String>,
}

/// A number of the design that an earlier year held.
#[derive(Clone, Debug, PartialEq)]
pub struct OfDesign {
    /// Its key there.
    pub key: String,
    /// What it is now.
    pub field: Field,
    /// The number.
    pub si: f64,
}

impl YearText {
    /// Reads a text upon what stands without it. What cannot be read, or cannot be, stays as it was and
    /// is named, and so is what is not used any more.
    pub fn read(text: &str, without: &Self) -> Self {
        let mut read = Self { unused: Vec::new(), ..without.clone() };
        let mut figures = Vec::new();
        for entry in text.split('&').filter(|entry| !entry.is_empty()) {
            let (key, value) = entry.split_once('=').unwrap_or((entry, ""));
            let value = decoded(value);
            if let Some(meant) = former_year_key(key) {
                match (meant, plain_number(&value)) {
                    (FormerKey::Is(field), Some(si)) => read.say_of_design(key, field, si),
                    _ => read.unused.push(key.to_owned()),
                }
                continue;
            }
            let taken = match (key, Figure::from_key(key)) {
                ("place", _) => {
                    read.place = PlaceWish { name: value.trim().to_owned(), changes: Vec::new() };
                    Some(())
                }
                (_, Some(figure)) => plain_number(&value).map(|value| {
                    figures.push((figure, value));
                }),
                _ => put(&mut read.choices, key, &value),
            };
            if taken.is_none() {
                read.unused.push(key.to_owned());
            }
        }
        read.place.changes.retain(|(known, _)| !figures.iter().any(|(figure, _)| figure == known));
        read.place.changes.extend(figures);
        read.take_back(&without.choices);
        read
    }

    /// The same at a place of which figures alone are told.
    #[must_use]
    pub fn at(&self, place: &CheckedPlace) -> Self {
        Self { place: PlaceWish::of(&ChosenPlace::told(place)), ..self.clone() }
    }

    fn say_of_design(&mut self, key: &str, field: Field, si: f64) {
        let range = field.range();
        self.of_design.retain(|known| known.field != field);
        let si = end_or_itself([range.minimum, range.maximum], si);
        self.of_design.push(OfDesign { key: key.to_owned(), field, si });
    }

    /// Takes back choices that do not pass their check.
    fn take_back(&mut self, usual: &YearChoices) {
        let Err(errors) = self.choices.check() else { return };
        for error in errors {
            let key = match error.subject {
                YearSubject::Field(field) => {
                    self.choices.set(field, usual.get(field));
                    field.range().key
                }
                YearSubject::Heater => {
                    self.choices.heater = usual.heater;
                    "heater"
                }
                YearSubject::Currency => {
                    self.choices.currency = usual.currency;
                    "currency"
                }
                YearSubject::PricesOf => {
                    self.choices.prices_of = usual.prices_of;
                    "prices_of"
                }
            };
            if !self.unused.iter().any(|known| known == key) {
                self.unused.push(key.to_owned());
            }
        }
        // What does not go with what stands goes altogether.
        if self.choices.check().is_err() {
            self.choices = usual.clone();
        }
    }

    /// The text that says what is chosen otherwise than here, and nothing else.
    pub fn otherwise(&self, choices: &YearChoices, place: &PlaceWish) -> String {
        let usual = entries(&self.choices);
        let chosen = entries(choices).into_iter().filter(|entry| !usual.contains(entry));
        let mut parts: Vec<String> =
            chosen.map(|(key, value)| [key, "=", &value].concat()).collect();
        if *place != self.place {
            parts.push(["place=", &encoded(&place.name)].concat());
            let changes = place.changes.iter().filter_map(|&(figure, value)| {
                Some([&figure.key(), "=", &plain_text(value)?].concat())
            });
            parts.extend(changes);
        }
        parts.join("&")
    }
}

impl PlaceWish {
    /// The wish that leads to a place.
    pub fn of(place: &ChosenPlace) -> Self {
        let changes = Figure::all()
            .filter(|figure| figure.of(&place.place) != figure.of(&place.unchanged))
            .map(|figure| (figure, figure.of(&place.place)));
        Self { name: place.name.clone(), changes: changes.collect() }
    }

    /// Makes its changes; those that cannot be are not made, and named.
    pub fn change(&self, place: &mut Place) -> Vec<String> {
        let mut changed = place.clone();
        for (figure, value) in &self.changes {
            figure.set(&mut changed, *value);
        }
        let errors = place_errors(&changed, false);
        if errors.is_empty() {
            *place = changed;
            return Vec::new();
        }
        self.changes.iter().map(|(figure, _)| figure.key()).collect()
    }
}

/// Every choice by key, as text.
fn entries(choices: &YearChoices) -> Vec<(&'static str, String)> {
    let currency = String::from_utf8_lossy(&choices.currency).into_owned();
    let mut entries = vec![
        ("heater", choices.heater.key().to_owned()),
        ("currency", currency),
        ("prices_of", choices.prices_of.map_or(String::new(), day)),
    ];
    entries.extend(YearField::ALL.iter().filter_map(|&field| {
        let written = match choices.get(field) {
            Some(value) => plain_text(value)?,
            None => String::new(),
        };
        Some((field.range().key, written))
    }));
    entries
}

fn put(choices: &mut YearChoices, key: &str, value: &str) -> Option<()> {
    match key {
        "heater" => choices.heater = HeaterKind::from_key(value)?,
        "currency" => choices.currency = value.as_bytes().try_into().ok()?,
        "prices_of" if value.is_empty() => choices.prices_of = None,
        "prices_of" => choices.prices_of = Some(date_of(value)?),
        _ => {
            let field = YearField::from_key(key)?;
            let number = match value {
                "" if field.range().default.is_none() => None,
                value => {
                    let range = field.range();
                    Some(end_or_itself([range.minimum, range.maximum], plain_number(value)?))
                }
            };
            choices.set(field, number);
        }
    }
    Some(())
}

/// An end of the range for a number that is that end but for its last written digit.
fn end_or_itself(ends: [f64; 2], number: f64) -> f64 {
    let near = (ends[1] - ends[0]) * 1e-6;
    ends.into_iter().find(|end| (number - end).abs() < near).unwrap_or(number)
}

/// A day written `2026-01-31`.
pub fn date_of(text: &str) -> Option<PriceDate> {
    let parts: Vec<&str> = text.trim().split('-').collect();
    let &[year, month, day] = &parts[..] else { return None };
    Some(PriceDate { year: year.parse().ok()?, month: month.parse().ok()?, day: day.parse().ok()? })
}

/// A day as `2026-01-31`.
pub fn day(date: PriceDate) -> String {
    let two = |number: u8| {
        if number < 10 { ["0", &number.to_string()].concat() } else { number.to_string() }
    };
    [&date.year.to_string(), "-", &two(date.month), "-", &two(date.day)].concat()
}

/// A name as a link holds it: letters and digits, every other byte as `%` and two digits.
fn encoded(name: &str) -> String {
    let mut text = String::new();
    for byte in name.bytes() {
        if byte.is_ascii_alphanumeric() {
            text.push(char::from(byte));
        } else {
            text.push('%');
            for half in [byte >> 4, byte & 15] {
                text.push(char::from(b"0123456789ABCDEF"[usize::from(half)]));
            }
        }
    }
    text
}

/// The text that was encoded; what is not stays as it is.
fn decoded(text: &str) -> String {
    let bytes = text.as_bytes();
    let mut plain = Vec::with_capacity(bytes.len());
    let mut at = 0;
    while let Some(&byte) = bytes.get(at) {
        let half = |offset: usize| char::from(*bytes.get(at + offset)?).to_digit(16);
        match (byte, half(1), half(2)) {
            (b'%', Some(high), Some(low)) => {
                plain.push((high * 16 + low) as u8);
                at += 3;
            }
            _ => {
                plain.push(byte);
                at += 1;
            }
        }
    }
    String::from_utf8_lossy(&plain).into_owned()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::year::PlaceKind;
    use inchwise_core::climate::{ClimateQuantity, varnholm_flats};
    use inchwise_core::units::{Power, TemperatureDifference};

    fn read(text: &str, without: &YearText) -> YearText {
        YearText::read(text, without)
    }

    fn usual() -> YearText {
        let text = "currency=XTS&prices_of=2026-11-02&electricity_price=0.16";
        let back = read(text, &YearText::default());
        assert_eq!(back.unused, [""; 0]);
        back
    }

    #[test]
    fn what_is_as_usual_is_not_said() {
        let usual = usual();
        assert_eq!(usual.otherwise(&usual.choices, &PlaceWish::default()), "");
        assert_eq!(PlaceWish::of(&ChosenPlace::default()), PlaceWish::default());
        assert_eq!(read("", &usual), usual);
    }

    #[test]
    fn what_is_chosen_comes_back() {
        let usual = usual();
        let mut choices = YearChoices {
            heater: HeaterKind::VentedDiesel,
            prices_of: None,
            electricity_price: None,
            ..usual.choices.clone()
        };
        choices.heater_limit = Power::new(2500.0);
        let kind = PlaceKind::Table(TemperatureDifference::new(1.0));
        let mut place = ChosenPlace::new("Luleå, SE".to_owned(), kind, varnholm_flats());
        let winter = Figure { quantity: ClimateQuantity::WinterDesign, month: 0 };
        winter.set(&mut place.place, -30.25);
        let wish = PlaceWish::of(&place);
        let text = usual.otherwise(&choices, &wish);
        assert!(text.ends_with("&place=Lule%C3%A5%2C%20SE&winter_design=-30.25"), "{text}");
        let back = read(&text, &usual);
        assert_eq!(back.place, wish);
        assert_eq!((back.unused.len(), back.choices.prices_of), (0, None));
        assert_eq!(back.otherwise(&choices, &wish), "", "{text}");
        let mut found = place.unchanged.clone();
        assert!(back.place.change(&mut found).is_empty());
        assert_eq!(found, place.place);
    }

    #[test]
    fn what_cannot_be_is_named_and_stays_as_usual() {
        let usual = usual();
        for text in [
            "heater=unvented_propane",
            "heater=sun",
            "heater_limit=99999999",
            "heater_limit=NaN",
            "currency=xts",
            "currency=EURO",
            "prices_of=2026-02-30",
            "prices_of=",
            "temperature_1=cold",
            "nonsense",
            "%=%",
        ] {
            let back = read(text, &usual);
            assert_eq!(back.choices, usual.choices, "{text}");
            assert_eq!(back.unused.len(), 1, "{text}: {:?}", back.unused);
            assert!(text.starts_with(back.unused[0].as_str()), "{text}: {:?}", back.unused);
        }
        let wish = read("place=&latitude=-91", &usual).place;
        let mut place = varnholm_flats();
        assert_eq!(wish.change(&mut place), ["latitude"]);
        assert_eq!(place, varnholm_flats());
    }

    #[test]
    fn what_an_earlier_year_said_of_the_room_is_of_the_design() {
        let back = read(
            "people=3&fan_over=0.55&moisture_in_use=0.0001&people=4&used_until=soon",
            &usual(),
        );
        let said: Vec<_> = back.of_design.iter().map(|said| (said.field, said.si)).collect();
        assert_eq!(said, [(Field::TargetHumidity, 0.55), (Field::PersonCount, 4.0)]);
        assert_eq!(back.unused, ["moisture_in_use", "used_until"]);
        assert_eq!(back.choices, usual().choices);
    }

    #[test]
    fn both_ends_of_every_choice_come_back() {
        for &field in YearField::ALL {
            let range = field.range();
            for end in [range.minimum, range.maximum] {
                let mut choices = usual().choices;
                choices.set(field, Some(end));
                let text = usual().otherwise(&choices, &PlaceWish::default());
                let back = read(&text, &usual());
                assert!(back.unused.is_empty(), "{text}: {:?}", back.unused);
                assert_eq!(back.choices.get(field), Some(end), "{text}");
            }
        }
    }

    #[test]
    fn names_come_back_whatever_letters_they_have() {
        for name in ["", "Luleå, SE", "A&B=C;#%", "日本"] {
            assert_eq!(decoded(&encoded(name)), name);
            assert!(encoded(name).bytes().all(|b| b.is_ascii_alphanumeric() || b == b'%'));
        }
        assert_eq!(decoded("100%"), "100%");
        assert_eq!(decoded("%é1"), "%é1");
    }
}
