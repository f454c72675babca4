//! Words about what heats, and what is bought for it.

use inchwise_core::year::{AtPowerCut, EnergyCarrier, HeaterKind};

use super::Language::{English, French};
use super::{Language, Phrase};

impl Language {
    /// What heats.
    pub const fn heater(self, heater: HeaterKind) -> &'static str {
        match (heater, self) {
            (HeaterKind::ElectricResistance, English) => "Electric heater",
            (HeaterKind::ElectricResistance, French) => "Chauffage électrique",
            (HeaterKind::AirSourceHeatPump, English) => "Air-source heat pump",
            (HeaterKind::AirSourceHeatPump, French) => "Thermopompe à air",
            (HeaterKind::DirectVentPropane, English) => "Propane, sealed and vented",
            (HeaterKind::DirectVentPropane, French) => "Propane, étanche à évacuation",
            (HeaterKind::VentedDiesel, English) => "Diesel, vented",
            (HeaterKind::VentedDiesel, French) => "Diesel, à évacuation",
            (HeaterKind::WoodStove, English) => "Wood stove, while tended",
            (HeaterKind::WoodStove, French) => "Poêle à bois, surveillé",
            (HeaterKind::UnventedPropane, English) => "Propane without a flue",
            (HeaterKind::UnventedPropane, French) => "Propane sans conduit",
            (HeaterKind::UnventedKerosene, English) => "Kerosene without a flue",
            (HeaterKind::UnventedKerosene, French) => "Kérosène sans conduit",
        }
    }

    /// What is bought, with its unit: {0} of it.
    pub const fn bought(self, carrier: EnergyCarrier) -> Phrase {
        Phrase(match (carrier, self) {
            (EnergyCarrier::Electricity, English) => "{0}\u{a0}kWh of electricity",
            (EnergyCarrier::Electricity, French) => "{0}\u{a0}kWh d’électricité",
            (EnergyCarrier::Propane, English) => "{0}\u{a0}L of propane",
            (EnergyCarrier::Propane, French) => "{0}\u{a0}L de propane",
            (EnergyCarrier::Diesel, English) => "{0}\u{a0}L of diesel",
            (EnergyCarrier::Diesel, French) => "{0}\u{a0}L de diesel",
            (EnergyCarrier::Wood, English) => "{0}\u{a0}kg of wood",
            (EnergyCarrier::Wood, French) => "{0}\u{a0}kg de bois",
        })
    }

    /// By what a carrier is sold.
    pub const fn sold_by(self, carrier: EnergyCarrier) -> &'static str {
        match carrier {
            EnergyCarrier::Electricity => "kWh",
            EnergyCarrier::Propane | EnergyCarrier::Diesel => "L",
            EnergyCarrier::Wood => "kg",
        }
    }

    /// What a heater does at a power cut, and that the cooling told beside it does not count on it.
    pub const fn at_power_cut(self, does: AtPowerCut) -> &'static str {
        match (does, self) {
            (AtPowerCut::Stops, English) => "The heater stops with the power.",
            (AtPowerCut::Stops, French) => "Le chauffage s’arrête avec le courant.",
            (AtPowerCut::DependsOnBuild, English) => {
                "Reckoned with the heater off: one with an electric fan or igniter stops with the \
                 power, one with a standing pilot and no fan may go on. Ask its maker."
            }
            (AtPowerCut::DependsOnBuild, French) => {
                "Calculé chauffage éteint : un appareil à ventilateur ou allumage électrique \
                 s’arrête avec le courant, un appareil à veilleuse sans ventilateur peut \
                 continuer. Demandez au fabricant."
            }
            (AtPowerCut::StopsWithItsBattery, English) => {
                "The heater’s fan, pump and igniter stop with the power; a battery of its own is \
                 not counted."
            }
            (AtPowerCut::StopsWithItsBattery, French) => {
                "Ventilateur, pompe et allumage s’arrêtent avec le courant; une batterie propre \
                 n’est pas comptée."
            }
            (AtPowerCut::GoesOnWhileFed, English) => {
                "The stove is not counted: it goes on only while someone feeds it."
            }
            (AtPowerCut::GoesOnWhileFed, French) => {
                "Le poêle n’est pas compté : il ne continue que si quelqu’un le charge."
            }
        }
    }
}
