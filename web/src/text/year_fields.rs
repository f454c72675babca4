//! Names and units of the choices about the year.

use inchwise_core::year::YearField;

use super::Language;
use super::Language::{English, French};

impl Language {
    /// A choice about the year.
    pub const fn year_field(self, field: YearField) -> &'static str {
        use YearField as F;
        match (field, self) {
            (F::HeaterLimit, English) => "Most heat it gives",
            (F::HeaterLimit, French) => "Puissance maximale",
            (F::BackupLimit, English) => "Electric backup",
            (F::BackupLimit, French) => "Appoint électrique",
            (F::SupplyVoltage, English) => "Supply",
            (F::SupplyVoltage, French) => "Alimentation",
            (F::SupplyCurrent, English) => "Breaker",
            (F::SupplyCurrent, French) => "Disjoncteur",
            (F::ElectricityPrice, English) => "A kWh of electricity",
            (F::ElectricityPrice, French) => "Un kWh d’électricité",
            (F::FuelPrice, English) => "A litre or kilogram of fuel",
            (F::FuelPrice, French) => "Un litre ou kilogramme de combustible",
            (F::GridEmission, English) => "CO₂ of a kWh from the grid",
            (F::GridEmission, French) => "CO₂ d’un kWh du réseau",
        }
    }
}
