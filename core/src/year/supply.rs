//! Whether the electric supply carries heater, fan and equipment.

use super::choices::YearChoices;
use super::fuel::EnergyCarrier;
use crate::design::Design;
use crate::source::Source;
use crate::units::{ElectricCurrent, ElectricPotential, Power, Temperature};

/// Share of a breaker's rating that a load of three hours or more may take: 80 %.
/// Source: National Electrical Code 2020, 210.20(A), Canadian Electrical Code 8-104 (from memory): the
/// breaker is rated 125 % of the continuous load.
pub const CONTINUOUS_SHARE: f64 = 0.8;

/// Where [`CONTINUOUS_SHARE`] comes from.
pub const CONTINUOUS_SHARE_SOURCE: Source = Source::FromMemory;

/// The largest continuous load of a supply, 0.8·V·A.
pub fn largest_continuous_load(voltage: ElectricPotential, rating: ElectricCurrent) -> Power {
    voltage * rating * CONTINUOUS_SHARE
}

/// What the supply is asked for, against what it carries: heaters at full load, for a thermostat
/// switches a heater on whole however little is missing.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SupplyCheck {
    /// The largest continuous load.
    pub largest: Power,
    /// Electricity for heat: the heater and the backup at full load, and the heater's own fan.
    pub for_heat: Power,
    /// Electricity for fan and equipment.
    pub for_other: Power,
}

impl SupplyCheck {
    /// At an outdoor temperature, which decides what a heat pump draws.
    pub fn of(design: &Design, choices: &YearChoices, outdoor: Temperature) -> Self {
        let kind = choices.heater;
        let main = choices.heater_limit * kind.capacity_share(outdoor);
        let backup = choices.backup_limit;
        let drawn = if kind.carrier() == EnergyCarrier::Electricity {
            main / kind.performance(outdoor)
        } else if main > Power::ZERO {
            kind.own_electricity()
        } else {
            Power::ZERO
        };
        let fans = design.exhaust_count.min(design.damper_count);
        Self {
            largest: largest_continuous_load(choices.supply_voltage, choices.supply_current),
            for_heat: drawn + backup,
            for_other: design.fan_power * fans + design.equipment_always + design.equipment_in_use,
        }
    }

    /// Everything together.
    pub fn asked(&self) -> Power {
        self.for_heat + self.for_other
    }

    /// Whether the supply carries it.
    pub fn holds(&self) -> bool {
        self.asked() <= self.largest
    }
}
