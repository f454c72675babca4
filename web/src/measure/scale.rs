//! The unit, step and nudge in which a field's slider and buttons move.

use inchwise_core::design::{Field, Quantity};
use inchwise_core::units::{
    AirChangeRate, Angle, Area, Length, METRES_PER_INCH, Mass, Power, Pressure, Temperature,
    TemperatureDifference, ThermalConductivity, ThermalTransmittance, Time, VolumeFlow,
};

use super::decimal::{NO_BREAK_SPACE, decimal, shortest};
use super::{Notation, UnitSystem};
use crate::text::Language;

/// Metres in a mil, a thousandth of an inch, exact.
pub const METRES_PER_MIL: f64 = METRES_PER_INCH / 1000.0;

/// The unit a field is moved in.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum FieldUnit {
    /// Millimetres.
    Millimetre,
    /// Inches.
    Inch,
    /// Thousandths of an inch.
    Mil,
    /// Degrees Celsius.
    Celsius,
    /// Degrees Fahrenheit.
    Fahrenheit,
    /// W/(m·K).
    WattPerMetreKelvin,
    /// Trade R-value of an inch; runs against the conductivity.
    RValuePerInch,
    /// W/(m²·K).
    WattPerSquareMetreKelvin,
    /// Btu/(h·ft²·°F).
    BtuPerHourSquareFootFahrenheit,
    /// Air changes an hour.
    PerHour,
    /// Pieces.
    Piece,
    /// Per cent.
    Percent,
    /// Cubic metres an hour.
    CubicMetrePerHour,
    /// Cubic feet a minute.
    CubicFootPerMinute,
    /// Pascals.
    Pascal,
    /// Inches of water.
    InchOfWater,
    /// Kilograms.
    Kilogram,
    /// Pounds.
    Pound,
    /// Square metres.
    SquareMetre,
    /// Square feet.
    SquareFoot,
    /// Hours.
    Hour,
    /// Watts.
    Watt,
    /// British thermal units an hour.
    BtuPerHour,
    /// Kelvins of a difference.
    Kelvin,
    /// Degrees Fahrenheit of a difference.
    FahrenheitApart,
    /// Degrees of the compass.
    Degree,
    /// Kilojoules a kelvin.
    KilojoulePerKelvin,
}

impl FieldUnit {
    /// How many of it make one SI unit, where the two differ by nothing else.
    fn in_one(self) -> f64 {
        match self {
            Self::Percent => 100.0,
            Self::CubicMetrePerHour => VolumeFlow::new(1.0).as_cubic_metres_per_hour(),
            Self::CubicFootPerMinute => VolumeFlow::new(1.0).as_cubic_feet_per_minute(),
            Self::InchOfWater => Pressure::new(1.0).as_inches_of_water(),
            Self::Pound => Mass::new(1.0).as_pounds(),
            Self::SquareFoot => Area::new(1.0).as_square_feet(),
            Self::Hour => Time::new(1.0).as_hours(),
            Self::BtuPerHour => Power::new(1.0).as_btu_per_hour(),
            Self::FahrenheitApart => 1.8,
            _ => 1.0,
        }
    }

    /// From the SI number.
    pub fn of_si(self, si: f64) -> f64 {
        match self {
            Self::Millimetre => Length::new(si).as_mm(),
            Self::Inch => Length::new(si).as_inches(),
            Self::Mil => si / METRES_PER_MIL,
            Self::Celsius | Self::Piece => si,
            Self::WattPerMetreKelvin | Self::WattPerSquareMetreKelvin => si,
            Self::Fahrenheit => Temperature::celsius(si).as_fahrenheit(),
            Self::RValuePerInch => ThermalConductivity::new(si).as_r_value_per_inch(),
            Self::BtuPerHourSquareFootFahrenheit => {
                ThermalTransmittance::new(si).as_btu_per_hour_square_foot_fahrenheit()
            }
            Self::PerHour => AirChangeRate::new(si).as_per_hour(),
            Self::Degree => Angle::new(si).as_degrees(),
            Self::KilojoulePerKelvin => si / 1000.0,
            linear => si * linear.in_one(),
        }
    }

    /// To the SI number.
    pub fn to_si(self, value: f64) -> f64 {
        match self {
            Self::Millimetre => Length::mm(value).value(),
            Self::Inch => Length::inches(value).value(),
            Self::Mil => value * METRES_PER_MIL,
            Self::Celsius | Self::Piece => value,
            Self::WattPerMetreKelvin | Self::WattPerSquareMetreKelvin => value,
            Self::Fahrenheit => Temperature::fahrenheit(value).as_celsius(),
            // The R-value of an inch is a constant over the conductivity, so it undoes itself.
            Self::RValuePerInch => ThermalConductivity::new(value).as_r_value_per_inch(),
            Self::BtuPerHourSquareFootFahrenheit => {
                let one = ThermalTransmittance::new(1.0).as_btu_per_hour_square_foot_fahrenheit();
                value / one
            }
            Self::PerHour => AirChangeRate::per_hour(value).value(),
            Self::Degree => Angle::degrees(value).value(),
            Self::KilojoulePerKelvin => value * 1000.0,
            linear => value / linear.in_one(),
        }
    }
}

/// How a field moves in one system of units. Positions are whole steps from zero of the unit, so
/// that slider, buttons and keys all land on the same values.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Scale {
    /// The unit.
    pub unit: FieldUnit,
    /// One step, in the unit.
    pub step: f64,
    /// What the − and + buttons move, in steps.
    pub nudge: i64,
    /// The lowest allowed position.
    pub lowest: i64,
    /// The highest allowed position.
    pub highest: i64,
}

/// Whether a length is the thickness of a sheet, written to a hundredth of a millimetre.
pub const fn is_sheet_thickness(field: Field) -> bool {
    matches!(field, Field::StudSteelThickness | Field::JoistSteelThickness | Field::PanelThickness)
}

impl Scale {
    /// The scale of a field.
    pub fn of(field: Field, units: UnitSystem) -> Self {
        let range = field.range();
        let metric = units == UnitSystem::Metric;
        let wide = range.maximum - range.minimum >= 0.08;
        let (unit, step, nudge) = match range.quantity {
            Quantity::Length if is_sheet_thickness(field) => {
                if metric {
                    (FieldUnit::Millimetre, 0.01, 10)
                } else {
                    (FieldUnit::Mil, 1.0, 5)
                }
            }
            Quantity::Length => {
                let step = Length::new(range.step).as_mm();
                match (metric, wide) {
                    (true, true) => (FieldUnit::Millimetre, step, (25.0 / step).ceil() as i64),
                    (true, false) => (FieldUnit::Millimetre, step, 3),
                    (false, true) => (FieldUnit::Inch, 0.125, 8),
                    (false, false) => (FieldUnit::Inch, 0.125, 1),
                }
            }
            Quantity::Temperature if metric => (FieldUnit::Celsius, range.step, 2),
            Quantity::Temperature => (FieldUnit::Fahrenheit, 1.0, 2),
            Quantity::ThermalConductivity if metric => (FieldUnit::WattPerMetreKelvin, 0.001, 1),
            Quantity::ThermalConductivity => (FieldUnit::RValuePerInch, 0.1, 1),
            Quantity::ThermalTransmittance if metric => {
                (FieldUnit::WattPerSquareMetreKelvin, range.step, 1)
            }
            Quantity::ThermalTransmittance => (FieldUnit::BtuPerHourSquareFootFahrenheit, 0.01, 2),
            Quantity::AirChangeRate => (FieldUnit::PerHour, 0.05, 2),
            Quantity::Count => (FieldUnit::Piece, 1.0, 1),
            Quantity::Share => (FieldUnit::Percent, 1.0, 5),
            Quantity::Duration => (FieldUnit::Hour, FieldUnit::Hour.of_si(range.step), 2),
            Quantity::VolumeFlow if metric => (FieldUnit::CubicMetrePerHour, 5.0, 10),
            Quantity::VolumeFlow => (FieldUnit::CubicFootPerMinute, 5.0, 5),
            Quantity::Pressure if metric => (FieldUnit::Pascal, range.step, 5),
            Quantity::Pressure => (FieldUnit::InchOfWater, 0.01, 2),
            Quantity::Mass if metric => (FieldUnit::Kilogram, range.step, 5),
            Quantity::Mass => (FieldUnit::Pound, 1.0, 10),
            Quantity::Area if metric => (FieldUnit::SquareMetre, range.step, 1),
            Quantity::Area => (FieldUnit::SquareFoot, 10.0, 1),
            // Of people and appliances, in watts everywhere.
            Quantity::Power => (FieldUnit::Watt, range.step, 5),
            Quantity::Angle => (FieldUnit::Degree, 5.0, 9),
            Quantity::HeatCapacity => (FieldUnit::KilojoulePerKelvin, 10.0, 5),
            Quantity::TemperatureDifference if metric => (FieldUnit::Kelvin, range.step, 2),
            Quantity::TemperatureDifference => (FieldUnit::FahrenheitApart, 1.0, 2),
        };
        // A rounding error must not push the end of the range off the scale.
        const HAIR: f64 = 1e-6;
        let ends = [range.minimum, range.maximum].map(|end| unit.of_si(end) / step);
        let lowest = (ends[0].min(ends[1]) - HAIR).ceil() as i64;
        let highest = (ends[0].max(ends[1]) + HAIR).floor() as i64;
        Self { unit, step, nudge, lowest, highest }
    }

    /// The position nearest to an SI number, allowed or not.
    pub fn position(&self, si: f64) -> i64 {
        (self.unit.of_si(si) / self.step).round() as i64
    }

    /// The SI number at a position.
    pub fn si(&self, position: i64) -> f64 {
        // Steps such as 0.01 are no binary fractions: shave what multiplying leaves behind.
        let value = (position as f64 * self.step * 1e6).round() / 1e6;
        self.unit.to_si(value)
    }

    /// So many steps on from an SI number, on a whole step, at the end of the range at the latest.
    pub fn moved(&self, si: f64, steps: i64) -> f64 {
        let position = self.position(si).saturating_add(steps);
        self.si(position.clamp(self.lowest, self.highest))
    }
}

impl Notation {
    /// A field's value as it stands in its box: as [`Notation::field`] has it, but for long units,
    /// which stand beside the box with the range.
    pub fn field_box(self, field: Field, si: f64) -> String {
        let unit = Scale::of(field, self.units).unit;
        let places = match unit {
            FieldUnit::WattPerMetreKelvin => 3,
            FieldUnit::WattPerSquareMetreKelvin => 2,
            FieldUnit::BtuPerHourSquareFootFahrenheit => 2,
            _ => return self.field(field, si),
        };
        decimal(unit.of_si(si), places, self.language)
    }

    /// A field's value, unit and all.
    pub fn field(self, field: Field, si: f64) -> String {
        match field.range().quantity {
            Quantity::Length if is_sheet_thickness(field) => self.sheet_thickness(Length::new(si)),
            Quantity::Length => self.length(Length::new(si)),
            Quantity::Temperature => self.temperature(Temperature::celsius(si)),
            Quantity::ThermalConductivity => self.conductivity(ThermalConductivity::new(si)),
            Quantity::ThermalTransmittance => self.transmittance(ThermalTransmittance::new(si), 2),
            Quantity::AirChangeRate => {
                let value = AirChangeRate::new(si).as_per_hour();
                let mut written = shortest(value, 2, self.language);
                written.extend([NO_BREAK_SPACE, '/', 'h']);
                written
            }
            Quantity::Count => decimal(si, if si.fract() == 0.0 { 0 } else { 2 }, self.language),
            Quantity::Share => self.percent(si),
            Quantity::TemperatureDifference => {
                self.temperature_difference(TemperatureDifference::new(si))
            }
            _ => {
                let unit = Scale::of(field, self.units).unit;
                let mut written = shortest(unit.of_si(si), 2, self.language);
                if unit != FieldUnit::Degree {
                    written.push(NO_BREAK_SPACE);
                }
                written.push_str(self.unit_name(unit));
                written
            }
        }
    }
}

impl Notation {
    /// A unit as it is written behind a number; nothing for those that are written otherwise.
    pub const fn unit_name(self, unit: FieldUnit) -> &'static str {
        let english = matches!(self.language, Language::English);
        match unit {
            FieldUnit::Millimetre => "mm",
            FieldUnit::Mil => "mil",
            FieldUnit::Celsius | FieldUnit::Kelvin => "K",
            FieldUnit::Fahrenheit | FieldUnit::FahrenheitApart => "°F",
            FieldUnit::WattPerMetreKelvin => "W/mK",
            FieldUnit::WattPerSquareMetreKelvin => "W/m²K",
            FieldUnit::PerHour => "/h",
            FieldUnit::BtuPerHourSquareFootFahrenheit => self.transmittance_unit(),
            FieldUnit::Percent => "%",
            FieldUnit::CubicMetrePerHour => "m³/h",
            FieldUnit::CubicFootPerMinute if english => "cfm",
            FieldUnit::CubicFootPerMinute => "pi³/min",
            FieldUnit::Pascal => "Pa",
            FieldUnit::InchOfWater if english => "in w.g.",
            FieldUnit::InchOfWater => "po d’eau",
            FieldUnit::Kilogram => "kg",
            FieldUnit::Pound => "lb",
            FieldUnit::SquareMetre => "m²",
            FieldUnit::SquareFoot if english => "ft²",
            FieldUnit::SquareFoot => "pi²",
            FieldUnit::Hour => "h",
            FieldUnit::Watt => "W",
            FieldUnit::BtuPerHour => self.btu(),
            FieldUnit::Degree => "°",
            FieldUnit::KilojoulePerKelvin => "kJ/K",
            FieldUnit::Inch | FieldUnit::RValuePerInch | FieldUnit::Piece => "",
        }
    }

    /// How far a nudge moves: `25`, or spoken with its unit `25 mm`.
    pub fn nudge(self, scale: &Scale, with_unit: bool) -> String {
        let value = scale.nudge as f64 * scale.step;
        if with_unit && scale.unit == FieldUnit::Inch {
            return self.length(Length::inches(value));
        }
        let mut written = match scale.unit {
            FieldUnit::Inch => super::notation::eighths((value * 8.0).round() as i64),
            _ => shortest(value, 3, self.language),
        };
        let unit = self.unit_name(scale.unit);
        if with_unit && !unit.is_empty() {
            written.push(NO_BREAK_SPACE);
            written.push_str(unit);
        }
        written
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const SYSTEMS: [UnitSystem; 2] = [UnitSystem::Metric, UnitSystem::Imperial];

    #[test]
    fn every_position_of_every_scale_is_allowed() {
        for &field in Field::ALL {
            let range = field.range();
            for units in SYSTEMS {
                let scale = Scale::of(field, units);
                assert!(scale.lowest < scale.highest, "{field:?}");
                for position in scale.lowest..=scale.highest {
                    let si = scale.si(position);
                    assert!(
                        range.minimum <= si && si <= range.maximum,
                        "{field:?} {units:?} {position}: {si}"
                    );
                    assert_eq!(scale.position(si), position, "{field:?} {units:?}");
                }
            }
        }
    }

    #[test]
    fn a_millimetre_on_the_slider_is_the_millimetre_that_is_typed() {
        let scale = Scale::of(Field::SideWallFoam, UnitSystem::Metric);
        assert_eq!(scale.si(63), Length::mm(63.0).value());
        assert_eq!(scale.moved(scale.si(50), scale.nudge), Length::mm(75.0).value());
    }

    #[test]
    fn a_nudge_in_inches_lands_on_an_eighth_and_stops_at_the_end() {
        let scale = Scale::of(Field::SideWallFoam, UnitSystem::Imperial);
        assert_eq!(scale.moved(Length::mm(50.0).value(), scale.nudge), Length::inches(3.0).value());
        assert_eq!(scale.moved(Length::mm(199.0).value(), scale.nudge), scale.si(scale.highest));
    }
}
