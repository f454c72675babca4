//! Other units, by exact definition. Conversions happen only at the edge, never of a rounded value.
//!
//! Inch 25.4 mm, foot 304.8 mm, pound 0.45359237 kg: international yard and pound agreement of
//! 1959, exact. The International Table British thermal unit is 1055.05585262 J, exact
//! (ISO 31-4:1992, annex).

use super::quantity::*;

/// Metres in an inch, exact.
pub const METRES_PER_INCH: f64 = 0.0254;
/// Metres in a foot, exact.
pub const METRES_PER_FOOT: f64 = 0.3048;
/// Joules in an International Table British thermal unit, exact.
pub const JOULES_PER_BTU: f64 = 1_055.055_852_62;
/// Kilograms in an avoirdupois pound, exact.
pub const KILOGRAMS_PER_POUND: f64 = 0.453_592_37;
/// Pascals in a conventional inch of water: 25.4 mm of 1000 kg/m³ under 9.80665 m/s².
pub const PASCALS_PER_INCH_OF_WATER: f64 = METRES_PER_INCH * 1000.0 * 9.806_65;
/// Kelvin in a Fahrenheit degree, exact.
pub const KELVIN_PER_FAHRENHEIT_DEGREE: f64 = 5.0 / 9.0;

impl Length {
    /// From millimetres.
    pub const fn mm(value: f64) -> Self {
        Self::new(value / 1000.0)
    }
    /// In millimetres.
    pub const fn as_mm(self) -> f64 {
        self.value() * 1000.0
    }
    /// From inches.
    pub const fn inches(value: f64) -> Self {
        Self::new(value * METRES_PER_INCH)
    }
    /// In inches.
    pub const fn as_inches(self) -> f64 {
        self.value() / METRES_PER_INCH
    }
    /// From feet.
    pub const fn feet(value: f64) -> Self {
        Self::new(value * METRES_PER_FOOT)
    }
    /// In feet.
    pub const fn as_feet(self) -> f64 {
        self.value() / METRES_PER_FOOT
    }
}

impl Area {
    /// In square feet.
    pub const fn as_square_feet(self) -> f64 {
        self.value() / (METRES_PER_FOOT * METRES_PER_FOOT)
    }
}

impl Volume {
    /// In litres.
    pub const fn as_litres(self) -> f64 {
        self.value() * 1000.0
    }
    /// In cubic feet.
    pub const fn as_cubic_feet(self) -> f64 {
        self.value() / (METRES_PER_FOOT * METRES_PER_FOOT * METRES_PER_FOOT)
    }
    /// In board feet: a square foot one inch thick, the measure foam is sold by.
    pub const fn as_board_feet(self) -> f64 {
        self.value() / (METRES_PER_FOOT * METRES_PER_FOOT * METRES_PER_INCH)
    }
}

impl Mass {
    /// In pounds.
    pub const fn as_pounds(self) -> f64 {
        self.value() / KILOGRAMS_PER_POUND
    }
}

impl Power {
    /// In British thermal units an hour.
    pub const fn as_btu_per_hour(self) -> f64 {
        self.value() * 3600.0 / JOULES_PER_BTU
    }
}

impl Energy {
    /// From kilowatt hours.
    pub const fn kilowatt_hours(value: f64) -> Self {
        Self::new(value * 3.6e6)
    }
    /// In kilowatt hours.
    pub const fn as_kilowatt_hours(self) -> f64 {
        self.value() / 3.6e6
    }
}

impl Irradiation {
    /// From kilowatt hours a square metre.
    pub const fn kilowatt_hours(value: f64) -> Self {
        Self::new(value * 3.6e6)
    }
    /// In kilowatt hours a square metre.
    pub const fn as_kilowatt_hours(self) -> f64 {
        self.value() / 3.6e6
    }
    /// From British thermal units a square foot.
    pub const fn btu_per_square_foot(value: f64) -> Self {
        Self::new(value * JOULES_PER_BTU / (METRES_PER_FOOT * METRES_PER_FOOT))
    }
    /// In British thermal units a square foot.
    pub const fn as_btu_per_square_foot(self) -> f64 {
        self.value() * (METRES_PER_FOOT * METRES_PER_FOOT) / JOULES_PER_BTU
    }
}

impl Angle {
    /// From degrees.
    pub const fn degrees(value: f64) -> Self {
        Self::new(value * core::f64::consts::PI / 180.0)
    }
    /// In degrees.
    pub const fn as_degrees(self) -> f64 {
        self.value() * 180.0 / core::f64::consts::PI
    }
}

impl Temperature {
    /// From degrees Fahrenheit.
    pub const fn fahrenheit(value: f64) -> Self {
        Self::celsius((value - 32.0) / 1.8)
    }
    /// In degrees Fahrenheit.
    pub const fn as_fahrenheit(self) -> f64 {
        self.as_celsius() * 1.8 + 32.0
    }
}

/// Watts per kelvin in one Btu/(h·°F).
const WATTS_PER_KELVIN_PER_BTU_HOUR_FAHRENHEIT: f64 = JOULES_PER_BTU / 3600.0 * 1.8;

impl ThermalTransmittance {
    /// In Btu/(h·ft²·°F).
    pub const fn as_btu_per_hour_square_foot_fahrenheit(self) -> f64 {
        self.value() * METRES_PER_FOOT * METRES_PER_FOOT / WATTS_PER_KELVIN_PER_BTU_HOUR_FAHRENHEIT
    }
}

impl ThermalResistance {
    /// In h·ft²·°F/Btu, the unit behind a trade R-value.
    pub const fn as_r_value(self) -> f64 {
        self.value() * WATTS_PER_KELVIN_PER_BTU_HOUR_FAHRENHEIT
            / (METRES_PER_FOOT * METRES_PER_FOOT)
    }
}

impl ThermalConductivity {
    /// The trade R-value of one inch, h·ft²·°F/Btu per inch.
    pub const fn as_r_value_per_inch(self) -> f64 {
        ThermalResistance::new(METRES_PER_INCH / self.value()).as_r_value()
    }
}

impl HeatTransferCoefficient {
    /// In Btu/(h·°F).
    pub const fn as_btu_per_hour_fahrenheit(self) -> f64 {
        self.value() / WATTS_PER_KELVIN_PER_BTU_HOUR_FAHRENHEIT
    }
}

impl Time {
    /// From days of 24 hours.
    pub const fn days(value: f64) -> Self {
        Self::new(value * 86_400.0)
    }
    /// From hours.
    pub const fn hours(value: f64) -> Self {
        Self::new(value * 3600.0)
    }
    /// In hours.
    pub const fn as_hours(self) -> f64 {
        self.value() / 3600.0
    }
}

impl AirChangeRate {
    /// From air changes an hour.
    pub const fn per_hour(value: f64) -> Self {
        Self::new(value / 3600.0)
    }
    /// In air changes an hour.
    pub const fn as_per_hour(self) -> f64 {
        self.value() * 3600.0
    }
}

impl VolumeFlow {
    /// From cubic metres an hour.
    pub const fn cubic_metres_per_hour(value: f64) -> Self {
        Self::new(value / 3600.0)
    }
    /// In cubic metres an hour.
    pub const fn as_cubic_metres_per_hour(self) -> f64 {
        self.value() * 3600.0
    }
    /// From cubic feet a minute.
    pub const fn cubic_feet_per_minute(value: f64) -> Self {
        Self::new(value * METRES_PER_FOOT * METRES_PER_FOOT * METRES_PER_FOOT / 60.0)
    }
    /// In cubic feet a minute.
    pub const fn as_cubic_feet_per_minute(self) -> f64 {
        self.value() * 60.0 / (METRES_PER_FOOT * METRES_PER_FOOT * METRES_PER_FOOT)
    }
}

impl Speed {
    /// From feet a minute.
    pub const fn feet_per_minute(value: f64) -> Self {
        Self::new(value * METRES_PER_FOOT / 60.0)
    }
    /// In feet a minute.
    pub const fn as_feet_per_minute(self) -> f64 {
        self.value() * 60.0 / METRES_PER_FOOT
    }
}

impl Pressure {
    /// From conventional inches of water.
    pub const fn inches_of_water(value: f64) -> Self {
        Self::new(value * PASCALS_PER_INCH_OF_WATER)
    }
    /// In conventional inches of water.
    pub const fn as_inches_of_water(self) -> f64 {
        self.value() / PASCALS_PER_INCH_OF_WATER
    }
}

impl VapourConcentration {
    /// From grams per cubic metre.
    pub const fn grams_per_cubic_metre(value: f64) -> Self {
        Self::new(value / 1000.0)
    }
    /// In grams per cubic metre.
    pub const fn as_grams_per_cubic_metre(self) -> f64 {
        self.value() * 1000.0
    }
}

impl MassFlow {
    /// From grams an hour.
    pub const fn grams_per_hour(value: f64) -> Self {
        Self::new(value / 3.6e6)
    }
    /// In grams an hour.
    pub const fn as_grams_per_hour(self) -> f64 {
        self.value() * 3.6e6
    }
}

impl MoistureFlux {
    /// In grams a square metre and hour.
    pub const fn as_grams_per_square_metre_hour(self) -> f64 {
        self.value() * 3.6e6
    }
}

impl SurfaceMoisture {
    /// In grams a square metre.
    pub const fn as_grams_per_square_metre(self) -> f64 {
        self.value() * 1000.0
    }
}

/// Kilograms in a grain, exact: 7000 to the pound.
const KILOGRAMS_PER_GRAIN: f64 = KILOGRAMS_PER_POUND / 7000.0;

/// Pascals in a conventional inch of mercury: 25.4 mm of 13595.1 kg/m³ under 9.80665 m/s².
const PASCALS_PER_INCH_OF_MERCURY: f64 = METRES_PER_INCH * 13_595.1 * 9.806_65;

impl Pressure {
    /// From conventional inches of mercury.
    pub const fn inches_of_mercury(value: f64) -> Self {
        Self::new(value * PASCALS_PER_INCH_OF_MERCURY)
    }
    /// In conventional inches of mercury.
    pub const fn as_inches_of_mercury(self) -> f64 {
        self.value() / PASCALS_PER_INCH_OF_MERCURY
    }
}

impl VapourPermeance {
    /// From nanograms a pascal, second and square metre.
    pub const fn nanograms_per_pascal_second_square_metre(value: f64) -> Self {
        Self::new(value * 1e-12)
    }
    /// In nanograms a pascal, second and square metre.
    pub const fn as_nanograms_per_pascal_second_square_metre(self) -> f64 {
        self.value() / 1e-12
    }
    /// In perms: grains an hour, square foot and inch of mercury.
    pub const fn as_perms(self) -> f64 {
        self.value() * PASCALS_PER_INCH_OF_MERCURY * 3600.0 * METRES_PER_FOOT * METRES_PER_FOOT
            / KILOGRAMS_PER_GRAIN
    }
}
