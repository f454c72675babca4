//! In which units the figures of a place are written and read.

use inchwise_aside::DEGREE_DAY_BASES;
use inchwise_core::climate::ClimateQuantity;
use inchwise_core::units::{Irradiation, Length, Pressure, Temperature, TemperatureDifference};

use super::unit::number;
use crate::measure::{NO_BREAK_SPACE, Notation, UnitSystem, decimal, shortest, to_nearest};
use crate::text::Language;

use ClimateQuantity as Q;

/// Fahrenheit degrees in a kelvin, exact.
const FAHRENHEIT_DEGREES: f64 = 1.8;

/// The unit of a figure of a place as it is shown now.
#[derive(Clone, Copy, Debug)]
pub(super) struct PlaceUnit {
    /// What the figure is.
    pub(super) quantity: ClimateQuantity,
    /// How figures are written.
    pub(super) notation: Notation,
}

impl PlaceUnit {
    const fn is_metric(self) -> bool {
        matches!(self.notation.units, UnitSystem::Metric)
    }

    /// Its name.
    pub(super) const fn name(self) -> &'static str {
        match (self.quantity, self.notation.units, self.notation.language) {
            (Q::Temperature | Q::WinterDesign | Q::SummerDesign, UnitSystem::Metric, _) => "°C",
            (Q::DailyRange, UnitSystem::Metric, _) => "K",
            (
                Q::Temperature | Q::WinterDesign | Q::SummerDesign | Q::DailyRange,
                UnitSystem::Imperial,
                _,
            ) => "°F",
            (Q::VapourPressure, UnitSystem::Metric, _) => "Pa",
            (Q::VapourPressure, UnitSystem::Imperial, Language::English) => "inHg",
            (Q::VapourPressure, UnitSystem::Imperial, Language::French) => "po Hg",
            (Q::DailyGlobalIrradiation, UnitSystem::Metric, _) => "kWh/m²",
            (Q::DailyGlobalIrradiation, UnitSystem::Imperial, Language::English) => "Btu/ft²",
            (Q::DailyGlobalIrradiation, UnitSystem::Imperial, Language::French) => "Btu/pi²",
            (Q::Elevation, UnitSystem::Metric, _) => "m",
            (Q::Elevation, UnitSystem::Imperial, Language::English) => "ft",
            (Q::Elevation, UnitSystem::Imperial, Language::French) => "pi",
            _ => "°",
        }
    }

    /// Decimals that are worth writing.
    const fn places(self) -> u32 {
        match (self.quantity, self.is_metric()) {
            (Q::VapourPressure, false) => 3,
            (Q::VapourPressure | Q::Elevation, true)
            | (Q::DailyGlobalIrradiation | Q::Elevation, false) => 0,
            (Q::DailyGlobalIrradiation, true) | (Q::Latitude, _) => 2,
            _ => 1,
        }
    }

    /// From the figure's own unit to the one that is written.
    fn of_own(self, own: f64) -> f64 {
        if self.is_metric() {
            return own;
        }
        match self.quantity {
            Q::Temperature | Q::WinterDesign | Q::SummerDesign => {
                Temperature::celsius(own).as_fahrenheit()
            }
            Q::DailyRange => TemperatureDifference::new(own).value() * FAHRENHEIT_DEGREES,
            Q::VapourPressure => Pressure::new(own).as_inches_of_mercury(),
            Q::DailyGlobalIrradiation => Irradiation::kilowatt_hours(own).as_btu_per_square_foot(),
            Q::Elevation => Length::new(own).as_feet(),
            _ => own,
        }
    }

    /// From the written unit to the figure's own.
    fn to_own(self, written: f64) -> f64 {
        if self.is_metric() {
            return written;
        }
        match self.quantity {
            Q::Temperature | Q::WinterDesign | Q::SummerDesign => {
                Temperature::fahrenheit(written).as_celsius()
            }
            Q::DailyRange => written / FAHRENHEIT_DEGREES,
            Q::VapourPressure => Pressure::inches_of_mercury(written).value(),
            Q::DailyGlobalIrradiation => {
                Irradiation::btu_per_square_foot(written).as_kilowatt_hours()
            }
            Q::Elevation => Length::feet(written).value(),
            _ => written,
        }
    }

    /// A figure as it stands in its box, whose label names the unit.
    pub(super) fn written(self, own: f64) -> String {
        shortest(self.of_own(own), self.places(), self.notation.language)
    }

    /// The figure of what was typed, with or without its unit.
    pub(super) fn read(self, typed: &str) -> Option<f64> {
        number(typed, self.name(), self.notation.language).map(|written| self.to_own(written))
    }
}

/// Degree days to their base, as the trade of these units counts them, and the base.
pub(super) fn degree_days([celsius, fahrenheit]: [f64; 2], notation: Notation) -> (String, String) {
    let language = notation.language;
    let (days, unit, base, mark) = match notation.units {
        UnitSystem::Metric => (celsius, "K·d", DEGREE_DAY_BASES[0].as_celsius(), "°C"),
        UnitSystem::Imperial => {
            (fahrenheit * FAHRENHEIT_DEGREES, "°F·d", DEGREE_DAY_BASES[1].as_fahrenheit(), "°F")
        }
    };
    let with = |mut figure: String, unit: &str| {
        figure.push(NO_BREAK_SPACE);
        figure.push_str(unit);
        figure
    };
    (with(to_nearest(days, 10.0, language), unit), with(decimal(base, 0, language), mark))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::figure::Figure;
    use inchwise_core::climate::varnholm_flats;

    #[test]
    fn what_is_written_reads_back_to_its_last_digit() {
        let place = varnholm_flats();
        for units in [UnitSystem::Metric, UnitSystem::Imperial] {
            for language in Language::ALL {
                for figure in Figure::all() {
                    let unit = PlaceUnit {
                        quantity: figure.quantity,
                        notation: Notation { units, language },
                    };
                    let text = unit.written(figure.of(&place));
                    let back = unit.read(&text).expect("what was written");
                    assert_eq!(unit.written(back), text, "{figure:?} {units:?}");
                    let with_unit = [&text, "\u{a0}", unit.name()].concat();
                    assert_eq!(unit.read(&with_unit), Some(back), "{with_unit}");
                }
            }
        }
    }

    #[test]
    fn imperial_figures_are_those_of_the_trade() {
        let notation = Notation { units: UnitSystem::Imperial, language: Language::English };
        let written = |quantity, own| PlaceUnit { quantity, notation }.written(own);
        assert_eq!(written(Q::Temperature, -40.0), "\u{2212}40");
        assert_eq!(written(Q::DailyRange, 10.0), "18");
        assert_eq!(written(Q::VapourPressure, 1000.0), "0.295");
        assert_eq!(written(Q::DailyGlobalIrradiation, 5.0), "1,585");
        assert_eq!(written(Q::Elevation, 304.8), "1,000");
        let (days, base) = degree_days([0.0, 5000.0], notation);
        assert_eq!((days.as_str(), base.as_str()), ("9,000\u{a0}°F·d", "65\u{a0}°F"));
    }
}
