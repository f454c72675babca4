//! What a year costs and sends up the chimney, from prices that were given.

use super::choices::YearChoices;
use super::fuel::EnergyCarrier;
use super::outcome::EnergyByPurpose;
use crate::units::{Energy, Mass};

/// What a month or a year took, by what is bought.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Costs {
    /// Electricity for heat: heater, backup, and the heater's own fan.
    pub electricity_for_heat: Energy,
    /// Electricity for fan and equipment.
    pub electricity_for_other: Energy,
    /// Units of fuel: litres or kilograms; nothing for an electric heater.
    pub fuel_units: f64,
    /// Price of all heating; `None` while a price that it takes is not given.
    pub heating: Option<f64>,
    /// Price of fan and equipment; `None` while the price of electricity is not given.
    pub other: Option<f64>,
    /// Carbon dioxide of heating; `None` while the grid's emission is needed and not given.
    pub carbon_dioxide: Option<Mass>,
}

impl Costs {
    /// Of an energy balance, by the prices given.
    pub fn of(choices: &YearChoices, energy: &EnergyByPurpose) -> Self {
        let carrier = choices.heater.carrier();
        let electric = carrier == EnergyCarrier::Electricity;
        let fuel = if electric { Energy::ZERO } else { energy.heater_input };
        let drawn = if electric { energy.heater_input } else { Energy::ZERO };
        let for_heat = drawn + energy.backup_heat + energy.heater_own;
        let for_other = energy.fan + energy.equipment;
        let fuel_units = fuel / carrier.unit_energy();
        let at_price = |electricity: Energy| {
            let price = choices.electricity_price;
            priced(electricity.as_kilowatt_hours(), price)
        };
        let heating =
            at_price(for_heat).zip(priced(fuel_units, choices.fuel_price)).map(|(a, b)| a + b);
        let fumes = fuel.value() * carrier.emission().unwrap_or(0.0);
        let carbon_dioxide = priced(for_heat.as_kilowatt_hours(), choices.grid_emission)
            .map(|from_grid| Mass::new(from_grid + fumes));
        Self {
            electricity_for_heat: for_heat,
            electricity_for_other: for_other,
            fuel_units,
            heating,
            other: at_price(for_other),
            carbon_dioxide,
        }
    }
}

/// An amount at a price; nothing costs nothing whatever the price.
fn priced(amount: f64, price: Option<f64>) -> Option<f64> {
    if amount == 0.0 { Some(0.0) } else { price.map(|price| amount * price) }
}
