//! Whether the steps of a working come to what they say.

use inchwise_core::climate::{Place, varnholm_flats};
use inchwise_core::design::{Design, PersonnelDoor, RoomUse, Surface};
use inchwise_core::detail::FieldCache;
use inchwise_core::evaluate::{Evaluation, evaluate};
use inchwise_core::humidity::Humidity;
use inchwise_core::units::{
    AirChangeRate, Effectiveness, Length, Mass, RelativeHumidity, Temperature,
    TemperatureDifference,
};

use super::damp_line::Figure;
use super::damp_working::working;
use crate::measure::{Notation, UnitSystem};
use crate::text::Language;

const FIGURES: [Figure; 18] = [
    Figure::Gives,
    Figure::Alone,
    Figure::Holding,
    Figure::Weakest,
    Figure::Next,
    Figure::Mild,
    Figure::Balance,
    Figure::Spell,
    Figure::Occupants,
    Figure::Warming,
    Figure::HotDay,
    Figure::OpenDampers,
    Figure::Moves,
    Figure::Suction,
    Figure::Pull,
    Figure::IntakeSpeed,
    Figure::ExhaustSpeed,
    Figure::Inside(Surface::SideWall),
];

/// A formula as it is printed, its words and units passed over.
struct Formula<'a> {
    rest: &'a str,
}

impl Formula<'_> {
    /// The next sign or figure; nothing at the end.
    fn peek(&mut self) -> Option<char> {
        let starts = |c: char| c.is_ascii_digit() || "()+−×÷√".contains(c);
        self.rest = &self.rest[self.rest.find(starts).unwrap_or(self.rest.len())..];
        self.rest.chars().next()
    }

    fn take(&mut self, sign: char) -> bool {
        let found = self.peek() == Some(sign);
        if found {
            self.rest = &self.rest[sign.len_utf8()..];
        }
        found
    }

    /// A factor with its power.
    fn factor(&mut self) -> f64 {
        let base = self.bare_factor();
        if self.rest.starts_with('^') {
            self.rest = &self.rest[1..];
            return libm::pow(base, self.bare_factor());
        }
        base
    }

    fn bare_factor(&mut self) -> f64 {
        let before = self.rest;
        if self.take('−') {
            return -self.factor();
        }
        if self.take('√') {
            return self.bare_factor().sqrt();
        }
        if self.take('(') {
            let words = &before[..before.len() - self.rest.len() - 1];
            let inner = self.sum();
            assert!(self.take(')'), "an open bracket before {:?}", self.rest);
            if words.ends_with("ln") {
                return libm::log(inner);
            }
            // Only a bracket is squared: a unit's exponent goes with its unit.
            if self.rest.starts_with('²') {
                self.rest = &self.rest['²'.len_utf8()..];
                return inner * inner;
            }
            return inner;
        }
        self.peek();
        let is_digit = |c: char| c.is_ascii_digit() || c == '.' || c == ',';
        let end = self.rest.find(|c| !is_digit(c)).unwrap_or(self.rest.len());
        let number: f64 = self.rest[..end].replace(',', "").parse().expect("a number");
        let scale = if self.rest[end..].starts_with('%') { 0.01 } else { 1.0 };
        // Past the unit, which may hold an exponent of its own.
        let past = self.rest[end..].find([' ', '(', ')', '^']).map_or(self.rest.len(), |n| end + n);
        self.rest = &self.rest[past..];
        number * scale
    }

    fn product(&mut self) -> f64 {
        let mut value = self.factor();
        loop {
            if self.take('×') {
                value *= self.factor();
            } else if self.take('÷') {
                value /= self.factor();
            } else {
                return value;
            }
        }
    }

    fn sum(&mut self) -> f64 {
        let mut value = self.product();
        loop {
            if self.take('+') {
                value += self.product();
            } else if self.take('−') {
                value -= self.product();
            } else {
                return value;
            }
        }
    }
}

/// What stands before and after the equals sign, and the last place of the figure after it.
pub(super) fn both_sides(step: &str) -> Option<(f64, f64, f64)> {
    // Powers of ten, odd powers and formulas of two steps are not read here.
    if step.contains("·10") || step.contains(['⅔', ';']) || step.matches(" = ").count() != 1 {
        return None;
    }
    let (before, after) = step.split_once(" = ")?;
    let before = before.rsplit_once(": ").map_or(before, |(_, formula)| formula);
    let said = Formula { rest: after }.factor();
    let digits: String = after.chars().take_while(|c| "−0123456789.,".contains(*c)).collect();
    let is_percent = after[digits.len()..].starts_with('%');
    let places = digits.split_once('.').map_or(0, |(_, places)| places.len());
    let scale = if is_percent { 0.01 } else { 1.0 };
    let reckoned = Formula { rest: before }.sum();
    Some((reckoned, said, (0..places).fold(scale, |place, _| place / 10.0)))
}

fn holds(evaluation: &Evaluation, damp: &Humidity, units: UnitSystem) -> usize {
    let notation = Notation { units, language: Language::English };
    let mut read = 0;
    for figure in FIGURES {
        let Some(working) = working(figure, evaluation, damp, notation) else { continue };
        assert!(!working.source.is_empty() && !working.steps.is_empty(), "{figure:?}");
        for step in &working.steps {
            assert!(!step.contains("NaN") && !step.contains('{'), "{step}");
            let Some((reckoned, said, place)) = both_sides(step) else { continue };
            read += 1;
            // The factors are rounded too; heat in Btu/h is written to ten.
            let step_of_heat = if step.ends_with("Btu/h") { 10.0 } else { 0.0 };
            let allowed = 0.02 * said.abs() + place.max(step_of_heat);
            let off = (reckoned - said).abs();
            assert!(off <= allowed, "{step} comes to {reckoned}");
        }
    }
    read
}

#[test]
fn every_step_comes_to_what_it_says() {
    let busy = {
        let mut design = Design { damper_count: 3.0, ..Design::default() };
        design.take_use(RoomUse::LaundryAndDrying);
        design.unvented_kerosene = Mass::new(1.0);
        design.damper_rise = Length::mm(1500.0);
        design.heat_recovery = Effectiveness::new(0.7);
        design
    };
    // A laundry with an exhaust fan beside its leaks, and a setback.
    let drying = {
        let mut design = Design { damper_count: 3.0, ..Design::default() };
        design.take_use(RoomUse::LaundryAndDrying);
        design.setback = TemperatureDifference::new(4.0);
        design
    };
    // Little air and much breath: soaked, with or without what cold places take.
    let soaked = {
        let mut design = Design { air_changes: AirChangeRate::per_hour(0.05), ..Design::default() };
        design.take_use(RoomUse::Growing);
        design
    };
    let damp_summer = Design {
        damper_count: 3.0,
        personnel_door: PersonnelDoor::None,
        target_humidity: RelativeHumidity::new(0.2),
        place: warm_july().check().expect("a place"),
        ..Design::default()
    };
    for design in [Design::default(), busy, drying, soaked, damp_summer] {
        let checked = design.check().expect("a lawful design");
        let evaluation = evaluate(&checked, &mut FieldCache::default());
        let damp = &evaluation.balance.as_ref().expect("in range").humidity;
        for units in [UnitSystem::Metric, UnitSystem::Imperial] {
            let read = holds(&evaluation, damp, units);
            assert!(read >= 9, "only {read} steps were read");
        }
    }
}

/// The invented place with a July of 25 °C.
fn warm_july() -> Place {
    let mut place = varnholm_flats();
    place.months[6].temperature = Temperature::celsius(25.0);
    place
}

#[test]
fn formulas_are_read_as_they_are_printed() {
    // A unit stands behind a space that does not break.
    let value = |text: &str| Formula { rest: &text.replace('_', "\u{a0}") }.sum();
    assert_eq!(value("2 × (3_m² − 1_m²) ÷ 4_kg/h"), 1.0);
    assert_eq!(value("−33_°C + 0.5 × 50_K"), -8.0);
    assert_eq!(value("√(3_kg × 3_kg + 4_kg × 4_kg) − 3_kg"), 2.0);
    assert_eq!(value("2 × (1_Wh/m³K + 3)^2 − 8^(1 ÷ 3)"), 30.0);
    assert!(
        (value("3_h × ln((5_K − 1_K) ÷ (3_K − 1_K))") - 3.0 * core::f64::consts::LN_2).abs()
            < 1e-12
    );
    assert_eq!(value("70_Pa × (1 − (450_m³/h ÷ 900_m³/h)²) × 1.2_kg/m³ ÷ 1.2_kg/m³"), 52.5);
}
