//! What is bought to heat with: heating values and emissions.

use crate::source::Source;
use crate::units::{Energy, JOULES_PER_BTU};

/// An energy that is bought.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum EnergyCarrier {
    /// Electricity, by the kilowatt hour.
    Electricity,
    /// Propane, by the litre of liquid.
    Propane,
    /// Diesel or light heating oil, by the litre.
    Diesel,
    /// Air-dry wood of 20 % water, by the kilogram.
    Wood,
}

/// Litres in a US gallon of 231 cubic inches, exact.
const LITRES_PER_GALLON: f64 = 3.785_411_784;

impl EnergyCarrier {
    /// Stable name.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Electricity => "electricity",
            Self::Propane => "propane",
            Self::Diesel => "diesel",
            Self::Wood => "wood",
        }
    }

    /// Energy of one unit as it is sold, gross (water of the fumes condensed): a kilowatt hour, a
    /// litre or a kilogram.
    ///
    /// Propane 91 452 Btu and diesel 137 381 Btu a US gallon: US Energy Information
    /// Administration, units and calculators. Wood of 20 % water 16.2 MJ/kg: from memory.
    pub const fn unit_energy(self) -> Energy {
        match self {
            Self::Electricity => Energy::kilowatt_hours(1.0),
            Self::Propane => Energy::new(91_452.0 * JOULES_PER_BTU / LITRES_PER_GALLON),
            Self::Diesel => Energy::new(137_381.0 * JOULES_PER_BTU / LITRES_PER_GALLON),
            Self::Wood => Energy::new(16.2e6),
        }
    }

    /// Where its heating value comes from.
    pub const fn source(self) -> Source {
        match self {
            Self::Electricity | Self::Propane | Self::Diesel => {
                Source::EnergyInformationAdministration
            }
            Self::Wood => Source::FromMemory,
        }
    }

    /// Carbon dioxide in the fumes, kg for each joule of gross energy; `None` for electricity, whose
    /// emission is asked for.
    ///
    /// Propane 62.87 (from memory), distillate 73.16, wood 93.80 kg (from memory; it was taken from the air as the tree
    /// grew) a million Btu: coefficients of US greenhouse-gas reporting.
    pub const fn emission(self) -> Option<f64> {
        const MILLION_BTU: f64 = 1e6 * JOULES_PER_BTU;
        match self {
            Self::Electricity => None,
            Self::Propane => Some(62.87 / MILLION_BTU),
            Self::Diesel => Some(73.16 / MILLION_BTU),
            Self::Wood => Some(93.80 / MILLION_BTU),
        }
    }
}
