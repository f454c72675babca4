//! How the figures inside a working are written: finer than those that stand for themselves, so
//! that the reader's own sum comes out.

use inchwise_core::units::{
    Area, Density, Energy, HeatCapacity, HeatTransferCoefficient, HumidityRatio, Length, Mass,
    MassFlow, Power, Pressure, SpecificHeatCapacity, Speed, SurfaceMoisture, Temperature,
    TemperatureDifference, Time, VapourConcentration, VolumeFlow,
};
use inchwise_core::ventilation::DryAirFlow;

use super::Notation;
use super::air::{GRAMS_PER_SQUARE_METRE_IN_OUNCE_PER_SQUARE_FOOT, NEWTONS_PER_POUND_FORCE};
use super::decimal::decimal;

/// Grains in a pound, exact.
const GRAINS_PER_POUND: f64 = 7000.0;
/// Grams in a pound, exact.
const GRAMS_PER_POUND: f64 = 453.592_37;
/// Grains in a gram.
const GRAINS_PER_GRAM: f64 = GRAINS_PER_POUND / GRAMS_PER_POUND;
/// Pascals in an inch of mercury at 0 °C.
const PASCALS_PER_INCH_OF_MERCURY: f64 = 3386.389;
/// British thermal units (of the international table) in a kilowatt hour.
const BTU_PER_KILOWATT_HOUR: f64 = 3412.142;
/// Cubic feet in a cubic metre.
const CUBIC_FEET: f64 = 35.314_667;

impl Notation {
    /// A number of so many decimals, without a unit.
    pub fn number(self, value: f64, places: u32) -> String {
        decimal(value, places, self.language)
    }

    /// Water in air: g/kg or grains a pound.
    pub fn humidity_ratio(self, ratio: HumidityRatio) -> String {
        if self.is_metric() {
            return self.figure(ratio.value() * 1000.0, 2, "g/kg");
        }
        self.figure(ratio.value() * GRAINS_PER_POUND, 1, "gr/lb")
    }

    /// A flow of moisture beside [`Self::humidity_ratio`]: g/h or grains an hour.
    pub fn moisture_finely(self, flow: MassFlow) -> String {
        let grams = flow.as_grams_per_hour();
        if self.is_metric() {
            return self.figure(grams, 1, "g/h");
        }
        self.figure(grams * GRAINS_PER_GRAM, 0, "gr/h")
    }

    /// Grams in a kilogram, or grains in a pound.
    pub const fn parts_of_a_mass(self) -> f64 {
        if self.is_metric() { 1000.0 } else { GRAINS_PER_POUND }
    }

    /// A flow of dry air by its mass: kg/h or lb/h.
    pub fn dry_air(self, flow: DryAirFlow) -> String {
        let grams = flow.dry_air().as_grams_per_hour();
        let (value, unit) = if self.is_metric() {
            (grams / 1000.0, "kg/h")
        } else {
            (grams / GRAMS_PER_POUND, "lb/h")
        };
        self.figure(value, if value < 100.0 { 2 } else { 0 }, unit)
    }

    /// A pressure of vapour: Pa or inches of mercury.
    pub fn vapour_pressure(self, pressure: Pressure) -> String {
        if self.is_metric() {
            return self.figure(pressure.value(), 0, "Pa");
        }
        self.figure(pressure.value() / PASCALS_PER_INCH_OF_MERCURY, 4, "inHg")
    }

    /// Vapour in a volume: g/m³ or grains a cubic foot.
    pub fn vapour_concentration(self, concentration: VapourConcentration) -> String {
        let grams = concentration.as_grams_per_cubic_metre();
        if self.is_metric() {
            return self.figure(grams, 2, "g/m³");
        }
        self.figure(grams * GRAINS_PER_GRAM / CUBIC_FEET, 3, self.per_cubic_foot("gr"))
    }

    /// A density of air: kg/m³ or lb/ft³.
    pub fn density(self, density: Density) -> String {
        if self.is_metric() {
            return self.figure(density.value(), 3, "kg/m³");
        }
        let pounds = density.value() * 1000.0 / GRAMS_PER_POUND / CUBIC_FEET;
        self.figure(pounds, 4, self.per_cubic_foot("lb"))
    }

    fn per_cubic_foot(self, what: &'static str) -> &'static str {
        use crate::text::Language::{English, French};
        match (what, self.language) {
            ("gr", English) => "gr/ft³",
            ("gr", French) => "gr/pi³",
            (_, English) => "lb/ft³",
            (_, French) => "lb/pi³",
        }
    }

    /// The area of a small opening: to a ten-thousandth of a square metre or a thousandth of a square
    /// foot.
    pub fn area_finest(self, area: Area) -> String {
        if self.is_metric() {
            return self.figure(area.value(), 4, "m²");
        }
        self.figure(area.as_square_feet(), 3, if self.is_english() { "ft²" } else { "pi²" })
    }

    /// A slow speed, of vapour to a surface: m/h or ft/h.
    pub fn speed_an_hour(self, speed: Speed) -> String {
        let an_hour = Length::new(speed.value() * 3600.0);
        if self.is_metric() {
            return self.figure(an_hour.value(), 2, "m/h");
        }
        self.figure(an_hour.as_feet(), 1, if self.is_english() { "ft/h" } else { "pi/h" })
    }

    /// The speed of air to a hundredth of a metre a second or a foot a minute.
    pub fn air_speed_finely(self, speed: Speed) -> String {
        if self.is_metric() {
            return self.figure(speed.value(), 2, "m/s");
        }
        let unit = if self.is_english() { "ft/min" } else { "pi/min" };
        self.figure(speed.as_feet_per_minute(), 0, unit)
    }

    /// A flow of air to a tenth.
    pub fn air_flow_finely(self, flow: VolumeFlow) -> String {
        let value = if self.is_metric() {
            flow.as_cubic_metres_per_hour()
        } else {
            flow.as_cubic_feet_per_minute()
        };
        self.figure(value, 1, self.air_flow_unit())
    }

    /// A flow of air beside an area and a speed: m³/s, or cubic feet a minute.
    pub fn air_flow_a_second(self, flow: VolumeFlow) -> String {
        if self.is_metric() {
            return self.figure(flow.value(), 4, "m³/s");
        }
        self.air_flow_finely(flow)
    }

    /// A pressure beside an area and a force: Pa, or pounds a square foot.
    pub fn pull_by_area(self, pressure: Pressure) -> String {
        if self.is_metric() {
            return self.small_pressure_finely(pressure);
        }
        let unit = if self.is_english() { "lbf/ft²" } else { "lbf/pi²" };
        let square_feet = Area::new(1.0).as_square_feet();
        self.figure(pressure.value() / NEWTONS_PER_POUND_FORCE / square_feet, 3, unit)
    }

    /// A small pressure to a hundredth of a pascal or a ten-thousandth of an inch of water.
    pub fn small_pressure_finely(self, pressure: Pressure) -> String {
        if self.is_metric() {
            return self.figure(pressure.value(), 2, "Pa");
        }
        let unit = self.unit_name(super::FieldUnit::InchOfWater);
        self.figure(pressure.as_inches_of_water(), 4, unit)
    }

    /// Water on a surface to a tenth of a gram, or a thousandth of an ounce.
    pub fn surface_moisture_finely(self, water: SurfaceMoisture) -> String {
        let grams = water.as_grams_per_square_metre();
        if self.is_metric() {
            return self.figure(grams, 1, "g/m²");
        }
        let unit = if self.is_english() { "oz/ft²" } else { "oz/pi²" };
        self.figure(grams / GRAMS_PER_SQUARE_METRE_IN_OUNCE_PER_SQUARE_FOOT, 3, unit)
    }

    /// A flow of air by area, as rules for rooms have it: m³/h a square metre or cfm a square foot.
    pub fn air_by_area(self, rate: Speed) -> String {
        if self.is_metric() {
            return self.figure(rate.value() * 3600.0, 2, "m³/h·m²");
        }
        let unit = if self.is_english() { "cfm/ft²" } else { "pcm/pi²" };
        self.figure(rate.as_feet_per_minute(), 2, unit)
    }

    /// A length in metres to a hundredth, or feet to a tenth: of air, not of a thing.
    pub fn metres(self, length: Length) -> String {
        if self.is_metric() {
            return self.figure(length.value(), 2, "m");
        }
        self.figure(length.as_feet(), 1, if self.is_english() { "ft" } else { "pi" })
    }

    /// What it takes to warm a mass of air with its vapour by a degree: Wh/(kg·K) or Btu/(lb·°F).
    pub fn air_heat_capacity(self, joules_per_kilogram_kelvin: f64) -> String {
        if self.is_metric() {
            return self.figure(joules_per_kilogram_kelvin / 3600.0, 4, "Wh/kgK");
        }
        let unit = if self.is_english() { "Btu/lb·°F" } else { "BTU/lb·°F" };
        self.figure(joules_per_kilogram_kelvin / 4186.8, 4, unit)
    }

    /// Water of a month or a year: kilograms or pounds to a hundredth.
    pub fn water_finely(self, water: Mass) -> String {
        if self.is_metric() {
            self.figure(water.value(), 2, "kg")
        } else {
            self.figure(water.as_pounds(), 2, "lb")
        }
    }

    /// A share to a hundredth of a per cent.
    pub fn share_finely(self, share: f64) -> String {
        [&self.number(share * 100.0, 2), "%"].concat()
    }

    /// Energy to a kilowatt hour, a little of it to a tenth.
    pub fn kilowatt_hours(self, energy: Energy) -> String {
        let value = energy.as_kilowatt_hours();
        let is_little = (0.05..100.0).contains(&value.abs());
        self.figure(value, u32::from(is_little), "kWh")
    }

    /// How many watts, or Btu an hour, make a kilowatt hour in an hour.
    pub fn parts_of_a_kilowatt_hour(self) -> String {
        self.number(if self.is_metric() { 1000.0 } else { BTU_PER_KILOWATT_HOUR }, 0)
    }

    /// A temperature to a tenth of a degree in both systems.
    pub fn temperature_to_a_tenth(self, temperature: Temperature) -> String {
        if self.is_metric() {
            return self.temperature_finely(temperature);
        }
        self.figure(temperature.as_fahrenheit(), 1, "°F")
    }

    /// A difference of temperatures to a tenth of a degree in both systems.
    pub fn difference_to_a_tenth(self, difference: TemperatureDifference) -> String {
        if self.is_metric() {
            return self.figure(difference.value(), 1, "K");
        }
        self.figure(difference.value() * 1.8, 1, "°F")
    }

    /// A heat capacity beside a loss and hours: Wh/K or Btu/°F.
    pub fn heat_capacity(self, capacity: HeatCapacity) -> String {
        if self.is_metric() {
            return self.figure(capacity.value() / 3600.0, 1, "Wh/K");
        }
        // Held for an hour, a capacity is the loss that would empty it.
        let hourly = HeatTransferCoefficient::new(capacity.value() / 3600.0);
        let unit = if self.is_english() { "Btu/°F" } else { "BTU/°F" };
        self.figure(hourly.as_btu_per_hour_fahrenheit(), 1, unit)
    }

    /// Watts as they stand on what is plugged in, in both systems.
    pub fn watts(self, power: Power) -> String {
        self.figure(power.value(), 0, "W")
    }

    /// What a unit of fuel holds: kWh for a litre or a kilogram.
    pub fn unit_energy(self, energy: Energy, unit: &str) -> String {
        [&self.figure(energy.as_kilowatt_hours(), 2, "kWh"), "/", unit].concat()
    }

    /// A price of one unit, as finely as it was given.
    pub fn price(self, amount: f64, currency: [u8; 3]) -> String {
        let digits = super::decimal::shortest(amount, 4, self.language);
        [&digits, "\u{a0}", &String::from_utf8_lossy(&currency)].concat()
    }

    /// A sum of money to a hundredth.
    pub fn paid(self, amount: f64, currency: [u8; 3]) -> String {
        self.figure(amount, 2, &String::from_utf8_lossy(&currency))
    }

    /// Hours to a tenth.
    pub fn hours(self, time: Time) -> String {
        self.figure(time.as_hours(), 1, "h")
    }

    /// What a flow of air takes for each degree: Wh/m³K, or Btu/h for each cfm and °F.
    pub fn air_takes(self, density: Density, capacity: SpecificHeatCapacity) -> String {
        let joules = density.value() * capacity.value();
        if self.is_metric() {
            return self.figure(joules / 3600.0, 3, "Wh/m³K");
        }
        let loss =
            HeatTransferCoefficient::new(joules * VolumeFlow::cubic_feet_per_minute(1.0).value());
        let unit = if self.is_english() { "Btu/h·cfm·°F" } else { "BTU/h·pcm·°F" };
        self.figure(loss.as_btu_per_hour_fahrenheit(), 3, unit)
    }

    /// Water for each unit of vapour pressure: g/h for a pascal, grains an hour for an inch of mercury.
    pub fn water_a_pressure(self, kilograms_per_second_pascal: f64) -> String {
        let grams = kilograms_per_second_pascal * 3.6e6;
        if self.is_metric() {
            return self.figure(grams, 4, "g/h·Pa");
        }
        self.figure(grams * GRAINS_PER_GRAM * PASCALS_PER_INCH_OF_MERCURY, 0, "gr/h·inHg")
    }

    fn is_english(self) -> bool {
        self.language == crate::text::Language::English
    }
}
