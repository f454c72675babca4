//! How air and moisture are written.

use inchwise_core::units::{
    Force, Mass, MassFlow, Pressure, Speed, SurfaceMoisture, Volume, VolumeFlow,
};

use super::decimal::{NO_BREAK_SPACE, decimal, to_nearest};
use super::{FieldUnit, Notation, UnitSystem};
use crate::text::Language;

/// Newtons in a pound-force, exact to the digits shown.
pub(super) const NEWTONS_PER_POUND_FORCE: f64 = 4.448_222;
/// Grams a square metre in an ounce a square foot.
pub(super) const GRAMS_PER_SQUARE_METRE_IN_OUNCE_PER_SQUARE_FOOT: f64 = 305.151_7;

impl Notation {
    /// A number with its unit behind a space that does not break.
    pub(super) fn figure(self, value: f64, places: u32, unit: &str) -> String {
        self.beside(decimal(value, places, self.language), unit)
    }

    fn beside(self, mut number: String, unit: &str) -> String {
        number.push(NO_BREAK_SPACE);
        number.push_str(unit);
        number
    }

    /// To whole steps of ten from a hundred on.
    fn about(self, value: f64, unit: &str) -> String {
        if value.abs() < 100.0 {
            return self.figure(value, 0, unit);
        }
        self.beside(to_nearest(value, 10.0, self.language), unit)
    }

    pub(super) const fn is_metric(self) -> bool {
        matches!(self.units, UnitSystem::Metric)
    }

    /// A flow of moisture: g/h, or lb/h to two decimals.
    pub fn moisture_flow(self, flow: MassFlow) -> String {
        if self.is_metric() {
            return self.about(flow.as_grams_per_hour(), "g/h");
        }
        let pounds = Mass::new(flow.as_grams_per_hour() / 1000.0).as_pounds();
        self.figure(pounds, 2, "lb/h")
    }

    /// So much water a day, in litres or pounds.
    pub fn water_a_day(self, flow: MassFlow) -> String {
        self.water(Mass::new(flow.as_grams_per_hour() * 24.0 / 1000.0))
    }

    /// A mass of water or frost: kg or lb, below ten to a tenth.
    pub fn water(self, water: Mass) -> String {
        let (value, unit) =
            if self.is_metric() { (water.value(), "kg") } else { (water.as_pounds(), "lb") };
        self.figure(value, u32::from(value.abs() < 10.0), unit)
    }

    /// Melt water: L or US gallons, below ten to a tenth.
    pub fn melt_water(self, volume: Volume) -> String {
        let gallon = match self.language {
            Language::English => "US gal",
            Language::French => "gal US",
        };
        let (value, unit) = if self.is_metric() {
            (volume.as_litres(), "L")
        } else {
            (volume.as_litres() / 3.785_412, gallon)
        };
        self.figure(value, u32::from(value.abs() < 10.0), unit)
    }

    /// A flow of air: m³/h or cubic feet a minute.
    pub fn air_flow(self, flow: VolumeFlow) -> String {
        let unit = self.air_flow_unit();
        if self.is_metric() {
            self.about(flow.as_cubic_metres_per_hour(), unit)
        } else {
            self.about(flow.as_cubic_feet_per_minute(), unit)
        }
    }

    /// The unit of a flow of air.
    pub const fn air_flow_unit(self) -> &'static str {
        self.unit_name(if self.is_metric() {
            FieldUnit::CubicMetrePerHour
        } else {
            FieldUnit::CubicFootPerMinute
        })
    }

    /// The speed of air: m/s to a tenth, or feet a minute to ten.
    pub fn air_speed(self, speed: Speed) -> String {
        if self.is_metric() {
            return self.figure(speed.value(), 1, "m/s");
        }
        let unit = match self.language {
            Language::English => "ft/min",
            Language::French => "pi/min",
        };
        self.beside(to_nearest(speed.as_feet_per_minute(), 10.0, self.language), unit)
    }

    /// A small pressure: Pa, or inches of water to two decimals.
    pub fn small_pressure(self, pressure: Pressure) -> String {
        if self.is_metric() {
            self.figure(pressure.value(), 0, "Pa")
        } else {
            let unit = self.unit_name(FieldUnit::InchOfWater);
            self.figure(pressure.as_inches_of_water(), 2, unit)
        }
    }

    /// A force: N, or pounds.
    pub fn force(self, force: Force) -> String {
        if self.is_metric() {
            self.figure(force.value(), 0, "N")
        } else {
            self.figure(force.value() / NEWTONS_PER_POUND_FORCE, 0, "lbf")
        }
    }

    /// Water on a surface: g/m² to ten, or ounces a square foot to a tenth.
    pub fn surface_moisture(self, water: SurfaceMoisture) -> String {
        let grams = water.as_grams_per_square_metre();
        if self.is_metric() {
            return self.about(grams, "g/m²");
        }
        let unit = match self.language {
            Language::English => "oz/ft²",
            Language::French => "oz/pi²",
        };
        self.figure(grams / GRAMS_PER_SQUARE_METRE_IN_OUNCE_PER_SQUARE_FOOT, 1, unit)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn written(units: UnitSystem) -> [String; 4] {
        let notation = Notation { units, language: Language::English };
        [
            notation.moisture_flow(MassFlow::grams_per_hour(183.0)),
            notation.air_flow(VolumeFlow::cubic_metres_per_hour(545.0)),
            notation.small_pressure(Pressure::new(24.9)),
            notation.force(Force::new(43.0)),
        ]
        .map(|text| text.replace('\u{a0}', " "))
    }

    #[test]
    fn each_system_has_its_own_rounding() {
        assert_eq!(written(UnitSystem::Metric), ["180 g/h", "550 m³/h", "25 Pa", "43 N"]);
        assert_eq!(
            written(UnitSystem::Imperial),
            ["0.40 lb/h", "320 cfm", "0.10 in w.g.", "10 lbf"]
        );
    }
}
