//! What can be chosen about a year: use, heater, air, sun, supply and prices. One table gives
//! meaning, allowed range, step and default; the set-point is the design's own room temperature.

use super::heater::HeaterKind;
use crate::choice_table::{Number, choice_table, numbers};
use crate::units::{
    Angle, ElectricCurrent, ElectricPotential, HeatCapacity, MassFlow, Power, RelativeHumidity,
    SolarShare, Temperature, TemperatureDifference, VolumeFlow,
};

/// What kind of quantity a choice holds.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum YearQuantity {
    /// A temperature, °C.
    Temperature,
    /// A temperature difference, K.
    TemperatureDifference,
    /// A power, W.
    Power,
    /// A relative humidity, 0 to 1.
    RelativeHumidity,
    /// A flow of air, m³/s inside.
    VolumeFlow,
    /// A rate of moisture, kg/s inside.
    MassFlow,
    /// A share of the sun, 0 to 1.
    SolarShare,
    /// A compass direction, rad inside.
    Angle,
    /// A heat capacity, J/K.
    HeatCapacity,
    /// An electric potential, V.
    ElectricPotential,
    /// An electric current, A.
    ElectricCurrent,
    /// A whole number.
    Count,
    /// A price or an emission for one unit of what is bought.
    PerUnit,
}

/// What is allowed for one choice, in SI units; what has no default is not known until it is given.
pub type YearRange = crate::choice_table::ChoiceRange<YearQuantity>;

numbers!(YearQuantity {
    TemperatureDifference => TemperatureDifference,
    Power => Power,
    RelativeHumidity => RelativeHumidity,
    VolumeFlow => VolumeFlow,
    MassFlow => MassFlow,
    SolarShare => SolarShare,
    Angle => Angle,
    HeatCapacity => HeatCapacity,
    ElectricPotential => ElectricPotential,
    ElectricCurrent => ElectricCurrent,
});

/// Cubic metres an hour to the table's SI.
const fn m3_h(value: f64) -> f64 {
    VolumeFlow::cubic_metres_per_hour(value).value()
}

/// Grams an hour to the table's SI.
const fn g_h(value: f64) -> f64 {
    MassFlow::grams_per_hour(value).value()
}

/// Degrees to the table's SI.
const fn degrees(value: f64) -> f64 {
    Angle::degrees(value).value()
}

/// The day that prices are of.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct PriceDate {
    /// Year.
    pub year: u16,
    /// Month, 1 to 12.
    pub month: u8,
    /// Day, 1 to 31.
    pub day: u8,
}

choice_table! {
    /// Every choice about the year as given. The default is a workshop used on working days,
    /// heated all the time by an electric heater.
    choices YearChoices, field YearField, quantity YearQuantity;
    options {
        /// What heats.
        heater: HeaterKind = HeaterKind::default();
        /// The currency of the prices, by its three-letter code; XTS is the code for tests.
        currency: [u8; 3] = *b"XTS";
        /// The day the prices are of; needed once a price or emission is given.
        prices_of: Option<PriceDate> = None;
    }
    chosen {
        /// Most heat the heater gives; of a heat pump at +8 °C outdoors.
        heater_limit: Power, HeaterLimit, 0.0, 30_000.0, 100.0, 3000.0;
        /// Most heat of an electric heater that helps when the other cannot.
        backup_limit: Power, BackupLimit, 0.0, 30_000.0, 100.0, 0.0;
        /// How far the set-point is lowered while the room is not used.
        setback: TemperatureDifference, Setback, 0.0, 30.0, 0.5, 0.0;
        /// The hour from which the room is used.
        used_from: f64, UsedFrom, 0.0, 23.0, 1.0, 8.0;
        /// The hour until which the room is used; before the first, it is of the next day.
        used_until: f64, UsedUntil, 1.0, 24.0, 1.0, 17.0;
        /// Days of the week on which the room is used.
        used_days: f64, UsedDays, 0.0, 7.0, 1.0, 5.0;
        /// People in the room while it is used.
        people: f64, People, 0.0, 20.0, 1.0, 2.0;
        /// Dry heat of one person; seated at light work 75 W (ASHRAE Fundamentals 2017, chapter 18, from memory).
        heat_of_person: Power, HeatOfPerson, 0.0, 300.0, 5.0, 75.0;
        /// Electric equipment and light while the room is used.
        equipment_in_use: Power, EquipmentInUse, 0.0, 10_000.0, 10.0, 100.0;
        /// Electric equipment that always runs.
        equipment_always: Power, EquipmentAlways, 0.0, 10_000.0, 10.0, 0.0;
        /// Moisture given to the air while the room is used, people included.
        moisture_in_use: MassFlow, MoistureInUse, 0.0, g_h(20_000.0), g_h(10.0), g_h(180.0);
        /// Moisture always given to the air.
        moisture_always: MassFlow, MoistureAlways, 0.0, g_h(20_000.0), g_h(10.0), 0.0;
        /// Moisture beside these of water that dries in the room, as laundry does, always and however cold and damp the
        /// air: the room gives the heat for it.
        moisture_drying: MassFlow, MoistureDrying, 0.0, g_h(1000.0), g_h(10.0), 0.0;
        /// What the fan moves at most; 0 is no fan.
        fan_flow: VolumeFlow, FanFlow, 0.0, m3_h(3000.0), m3_h(10.0), 0.0;
        /// What the fan draws at full flow.
        fan_power: Power, FanPower, 0.0, 2000.0, 5.0, 50.0;
        /// Room temperature above which the fan cools, if outdoors is colder.
        fan_above: Temperature, FanAbove, 5.0, 45.0, 0.5, 25.0;
        /// Room humidity above which the fan dries, if outdoor air holds less vapour.
        fan_over: RelativeHumidity, FanOver, 0.2, 0.95, 0.01, 0.6;
        /// Room temperature above which an hour counts as too warm.
        too_warm: Temperature, TooWarm, 20.0, 45.0, 0.5, 28.0;
        /// Absorptance of the outside paint for the sun: 0.3 light, 0.6 middle, 0.9 dark.
        paint: SolarShare, Paint, 0.1, 0.95, 0.05, 0.6;
        /// Share of the sun that reaches the roof; less under a fly roof.
        sun_on_roof: SolarShare, SunOnRoof, 0.0, 1.0, 0.05, 1.0;
        /// Share of the sun on the windows that comes in, glass and frame together.
        window_sun: SolarShare, WindowSun, 0.0, 0.9, 0.05, 0.45;
        /// Share of the sun that reaches the windows; less under an awning.
        sun_on_windows: SolarShare, SunOnWindows, 0.0, 1.0, 0.05, 1.0;
        /// Compass direction that the end opposite the cargo doors faces, clockwise from north.
        front_faces: Angle, FrontFaces, 0.0, degrees(360.0), degrees(5.0), degrees(270.0);
        /// Heat capacity of what stands in the room.
        contents: HeatCapacity, Contents, 0.0, 1e7, 1e4, 180e3;
        /// Voltage of the supply.
        supply_voltage: ElectricPotential, SupplyVoltage, 100.0, 480.0, 1.0, 120.0;
        /// Rating of the supply's breaker.
        supply_current: ElectricCurrent, SupplyCurrent, 5.0, 200.0, 1.0, 15.0;
    }
    asked f64 as PerUnit {
        /// Price of a kilowatt hour of electricity.
        electricity_price: ElectricityPrice, 0.0, 1000.0, 0.01;
        /// Price of the heater's fuel: a litre of propane or diesel, a kilogram of wood.
        fuel_price: FuelPrice, 0.0, 1000.0, 0.01;
        /// Carbon dioxide of a kilowatt hour of electricity from the grid, kg.
        grid_emission: GridEmission, 0.0, 2.0, 0.01;
    }
}
