//! How each quantity is written: how fine, and with which unit.

use inchwise_core::freight_box::Dimensions;
use inchwise_core::units::{
    Area, HeatTransferCoefficient, Length, LinearThermalTransmittance, PointThermalTransmittance,
    Power, Temperature, TemperatureDifference, ThermalConductivity, ThermalResistance,
    ThermalTransmittance, Volume,
};

use super::decimal::{MINUS, NO_BREAK_SPACE, decimal, shortest, to_nearest};
use super::{METRES_PER_MIL, UnitSystem};
use crate::text::Language;

/// In which units and in which language's digits figures are written.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Notation {
    /// Metric or imperial.
    pub units: UnitSystem,
    /// Whose digits and marks.
    pub language: Language,
}

/// Lengths below this are written in inches alone, as the trade says 16 in and 24 in.
const INCHES_ALONE_BELOW: i64 = 25 * 8;

/// A number and its unit, kept on one line.
fn with_unit(mut number: String, unit: &str) -> String {
    number.push(NO_BREAK_SPACE);
    number.push_str(unit);
    number
}

/// Whole eighths, as `3⅜`; nothing in front of the fraction where there are no wholes.
pub(super) fn eighths(count: i64) -> String {
    const FRACTIONS: [&str; 8] = ["", "⅛", "¼", "⅜", "½", "⅝", "¾", "⅞"];
    let (whole, part) = (count / 8, (count % 8) as usize);
    let mut written = String::new();
    if whole > 0 || part == 0 {
        written.push_str(&decimal(whole as f64, 0, Language::English));
    }
    written.push_str(FRACTIONS[part]);
    written
}

impl Notation {
    const fn metric(self) -> bool {
        matches!(self.units, UnitSystem::Metric)
    }

    fn digits(self, value: f64, places: u32) -> String {
        decimal(value, places, self.language)
    }

    /// The word for inches.
    pub const fn inch(self) -> &'static str {
        match self.language {
            Language::English => "in",
            Language::French => "po",
        }
    }

    /// A length to the millimetre or to the nearest ⅛ in: `2,134 mm`, `2½ in`, `7′ 0⅝″`.
    pub fn length(self, length: Length) -> String {
        if self.metric() { with_unit(self.length_bare(length), "mm") } else { self.inches(length) }
    }

    /// The same without `mm`, for where the unit stands once beside several.
    pub fn length_bare(self, length: Length) -> String {
        if self.metric() { self.digits(length.as_mm(), 0) } else { self.inches(length) }
    }

    fn inches(self, length: Length) -> String {
        let inches = length.as_inches();
        if !inches.is_finite() || inches.abs() > 1e12 {
            return self.digits(f64::NAN, 0);
        }
        let count = (inches.abs() * 8.0).round() as i64;
        let mut written = String::new();
        if inches < 0.0 && count > 0 {
            written.push(MINUS);
        }
        if count < INCHES_ALONE_BELOW {
            written.push_str(&with_unit(eighths(count), self.inch()));
        } else {
            written.push_str(&self.digits((count / 96) as f64, 0));
            written.push('′');
            written.push(NO_BREAK_SPACE);
            written.push_str(&eighths(count % 96));
            written.push('″');
        }
        written
    }

    /// A change of length with its sign: `+25 mm`, `−1 in`.
    pub fn length_change(self, length: Length) -> String {
        self.signed(self.length(length))
    }

    fn signed(self, written: String) -> String {
        let nothing = written.starts_with('0') && !written.contains(['.', ',']);
        if written.starts_with(MINUS) || nothing { written } else { format!("+{written}") }
    }

    /// Length × width × height.
    pub fn dimensions(self, size: &Dimensions) -> String {
        let sides = [size.length, size.width, size.height].map(|side| self.length_bare(side));
        let joined = sides.join("\u{a0}× ");
        if self.metric() { with_unit(joined, "mm") } else { joined }
    }

    /// Sheet thickness: mm to two decimals, or mils (thousandths of an inch).
    pub fn sheet_thickness(self, thickness: Length) -> String {
        if self.metric() {
            with_unit(self.digits(thickness.as_mm(), 2), "mm")
        } else {
            with_unit(self.digits(thickness.value() / METRES_PER_MIL, 0), "mil")
        }
    }

    /// A volume of room: to 10 L, below 10 L to a tenth; or cubic feet, below one in cubic inches.
    pub fn volume(self, volume: Volume) -> String {
        if self.metric() {
            let litres = volume.as_litres();
            let number = if litres.abs() < 10.0 {
                self.digits(litres, 1)
            } else {
                to_nearest(litres, 10.0, self.language)
            };
            return with_unit(number, "L");
        }
        let feet = volume.as_cubic_feet();
        if feet.abs() >= 1.0 {
            with_unit(self.digits(feet, 0), self.cubic_foot())
        } else {
            with_unit(self.digits(feet * 1728.0, 0), self.cubic_inch())
        }
    }

    const fn cubic_foot(self) -> &'static str {
        match self.language {
            Language::English => "ft³",
            Language::French => "pi³",
        }
    }

    const fn cubic_inch(self) -> &'static str {
        match self.language {
            Language::English => "in³",
            Language::French => "po³",
        }
    }

    const fn square_foot(self) -> &'static str {
        match self.language {
            Language::English => "ft²",
            Language::French => "pi²",
        }
    }

    /// An area: to 0.1 m² or to a square foot.
    pub fn area(self, area: Area) -> String {
        if self.metric() {
            with_unit(self.digits(area.value(), 1), "m²")
        } else {
            with_unit(self.digits(area.as_square_feet(), 0), self.square_foot())
        }
    }

    /// An area fine enough to reckon with: two decimals of a square metre, a tenth of a square foot.
    pub fn area_finely(self, area: Area) -> String {
        if self.metric() {
            with_unit(self.digits(area.value(), 2), "m²")
        } else {
            with_unit(self.digits(area.as_square_feet(), 1), self.square_foot())
        }
    }

    /// The volume of the room: to 0.1 m³ or a cubic foot.
    pub fn room_volume(self, volume: Volume) -> String {
        if self.metric() {
            with_unit(self.digits(volume.value(), 1), "m³")
        } else {
            with_unit(self.digits(volume.as_cubic_feet(), 0), self.cubic_foot())
        }
    }

    /// A run of something: to 0.1 m or 1 ft.
    pub fn run(self, length: Length) -> String {
        if self.metric() {
            with_unit(self.digits(length.value(), 1), "m")
        } else {
            let foot = match self.language {
                Language::English => "ft",
                Language::French => "pi",
            };
            with_unit(self.digits(length.as_feet(), 0), foot)
        }
    }

    /// A heating load or loss: to 10 W or to 100 Btu/h.
    pub fn load(self, power: Power) -> String {
        if self.metric() {
            with_unit(to_nearest(power.value(), 10.0, self.language), "W")
        } else {
            with_unit(to_nearest(power.as_btu_per_hour(), 100.0, self.language), self.btu())
        }
    }

    /// A part of the load: to 1 W or to 10 Btu/h, so that small parts do not vanish.
    pub fn part_of_load(self, power: Power) -> String {
        if self.metric() {
            with_unit(self.digits(power.value(), 0), "W")
        } else {
            with_unit(to_nearest(power.as_btu_per_hour(), 10.0, self.language), self.btu())
        }
    }

    /// The name of a British thermal unit an hour.
    pub const fn btu(self) -> &'static str {
        match self.language {
            Language::English => "Btu/h",
            Language::French => "BTU/h",
        }
    }

    /// A share in whole per cent.
    pub fn percent(self, share: f64) -> String {
        let mut written = self.digits(share * 100.0, 0);
        if self.language == Language::French {
            written.push(NO_BREAK_SPACE);
        }
        written.push('%');
        written
    }

    /// Thermal transmittance U with so many decimals.
    pub fn transmittance(self, transmittance: ThermalTransmittance, places: u32) -> String {
        if self.metric() {
            with_unit(self.digits(transmittance.value(), places), "W/m²K")
        } else {
            let value = transmittance.as_btu_per_hour_square_foot_fahrenheit();
            with_unit(self.digits(value, places), self.transmittance_unit())
        }
    }

    /// The unit of U.
    pub const fn transmittance_unit(self) -> &'static str {
        match (self.units, self.language) {
            (UnitSystem::Metric, _) => "W/m²K",
            (UnitSystem::Imperial, Language::English) => "Btu/h·ft²·°F",
            (UnitSystem::Imperial, Language::French) => "BTU/h·pi²·°F",
        }
    }

    /// Linear thermal transmittance ψ, three decimals.
    pub fn linear_transmittance(self, transmittance: LinearThermalTransmittance) -> String {
        if self.metric() {
            return with_unit(self.digits(transmittance.value(), 3), "W/mK");
        }
        // ψ over one metre, as a coefficient: W/K to Btu/(h·°F), then a metre to a foot.
        let per_metre = transmittance * Length::new(1.0);
        let per_foot = per_metre.as_btu_per_hour_fahrenheit() / Length::new(1.0).as_feet();
        let unit = match self.language {
            Language::English => "Btu/h·ft·°F",
            Language::French => "BTU/h·pi·°F",
        };
        with_unit(self.digits(per_foot, 3), unit)
    }

    /// χ of one piece, to a thousandth.
    pub fn point_transmittance(self, transmittance: PointThermalTransmittance) -> String {
        let one = HeatTransferCoefficient::new(transmittance.value());
        match self.units {
            UnitSystem::Metric => with_unit(self.digits(one.value(), 3), "W/K"),
            UnitSystem::Imperial => {
                let unit = format!("{}/°F", self.btu());
                with_unit(self.digits(one.as_btu_per_hour_fahrenheit(), 3), &unit)
            }
        }
    }

    /// A thermal resistance: m²K/W to two decimals, or as the trade says `R-12`.
    pub fn resistance(self, resistance: ThermalResistance) -> String {
        if self.metric() {
            return with_unit(self.digits(resistance.value(), 2), "m²K/W");
        }
        let value = resistance.as_r_value();
        let places = u32::from(value < 9.95);
        format!("R-{}", shortest(value, places, self.language))
    }

    /// Conductivity of a material, or its R-value an inch.
    pub fn conductivity(self, conductivity: ThermalConductivity) -> String {
        if self.metric() {
            return with_unit(self.digits(conductivity.value(), 3), "W/mK");
        }
        let value = self.digits(conductivity.as_r_value_per_inch(), 1);
        format!("R-{value}/{}", self.inch())
    }

    /// Heat-transfer coefficient H, W/K to a tenth or Btu/(h·°F) to a tenth.
    pub fn coefficient(self, coefficient: HeatTransferCoefficient) -> String {
        if self.metric() {
            with_unit(self.digits(coefficient.value(), 1), "W/K")
        } else {
            let unit = match self.language {
                Language::English => "Btu/h·°F",
                Language::French => "BTU/h·°F",
            };
            with_unit(self.digits(coefficient.as_btu_per_hour_fahrenheit(), 1), unit)
        }
    }

    /// A temperature, halves shown where there are any; or whole degrees Fahrenheit.
    pub fn temperature(self, temperature: Temperature) -> String {
        if self.metric() {
            with_unit(shortest(temperature.as_celsius(), 1, self.language), "°C")
        } else {
            with_unit(self.digits(temperature.as_fahrenheit(), 0), "°F")
        }
    }

    /// A temperature to a tenth of a degree Celsius, or whole degrees Fahrenheit.
    pub fn temperature_finely(self, temperature: Temperature) -> String {
        if self.metric() {
            with_unit(self.digits(temperature.as_celsius(), 1), "°C")
        } else {
            self.temperature(temperature)
        }
    }

    /// A whole number of degrees, of a scale that is said elsewhere.
    pub fn degrees(self, temperature: Temperature) -> String {
        let degrees =
            if self.metric() { temperature.as_celsius() } else { temperature.as_fahrenheit() };
        let mut written = shortest(degrees, 1, self.language);
        written.push('°');
        written
    }

    /// A difference of temperatures.
    pub fn temperature_difference(self, difference: TemperatureDifference) -> String {
        if self.metric() {
            with_unit(shortest(difference.value(), 1, self.language), "K")
        } else {
            with_unit(self.digits(difference.value() * 1.8, 0), "°F")
        }
    }

    /// A plain count.
    pub fn count(self, count: f64) -> String {
        self.digits(count, 0)
    }
}
