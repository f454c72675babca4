//! What a year adds to a design: heater, backup, supply and prices. One table gives meaning, allowed
//! range, step and default; use, air and site are the design's own.

use super::heater::HeaterKind;
use crate::choice_table::{Number, choice_table, numbers};
use crate::units::{ElectricCurrent, ElectricPotential, Power};

/// What kind of quantity a choice holds.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum YearQuantity {
    /// A power, W.
    Power,
    /// An electric potential, V.
    ElectricPotential,
    /// An electric current, A.
    ElectricCurrent,
    /// A price or an emission for one unit of what is bought.
    PerUnit,
}

/// What is allowed for one choice, in SI units; what has no default is not known until it is given.
pub type YearRange = crate::choice_table::ChoiceRange<YearQuantity>;

numbers!(YearQuantity {
    Power => Power,
    ElectricPotential => ElectricPotential,
    ElectricCurrent => ElectricCurrent,
} f64 => PerUnit, whole false);

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
    /// Every choice about the year as given. The default is an electric heater on a household socket.
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
