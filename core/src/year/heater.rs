//! What heats the room: how much it can, at what outdoor temperature, and what it draws.

use super::choices::YearChoices;
use super::fuel::EnergyCarrier;
use crate::source::Source;
use crate::units::{Power, Temperature};

/// What heats.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Default)]
pub enum HeaterKind {
    /// An electric heater.
    #[default]
    ElectricResistance,
    /// A heat pump that takes its heat from outdoor air.
    AirSourceHeatPump,
    /// A propane heater that takes its air from outdoors and sends its fumes there.
    DirectVentPropane,
    /// A diesel air heater with its fumes led out.
    VentedDiesel,
    /// A wood stove with a chimney. It burns only while someone is there to feed it.
    WoodStove,
    /// A propane flame without a flue; refused.
    UnventedPropane,
    /// A kerosene flame without a flue; refused.
    UnventedKerosene,
}

/// What a heater does when the electric supply fails.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum AtPowerCut {
    /// It stops.
    Stops,
    /// It stops if it has an electric fan or igniter; one with a standing pilot and a flue that draws by
    /// itself goes on.
    DependsOnBuild,
    /// It stops, unless a battery of its own feeds fan, pump and igniter, and then for as long as
    /// that lasts.
    StopsWithItsBattery,
    /// It goes on while someone feeds it.
    GoesOnWhileFed,
}

/// Outdoor temperature, °C; coefficient of performance; capacity over that at +8 °C, of a heat pump made for
/// the cold, defrosting included. Middle of what the trade states for such machines; a particular one
/// differs by a quarter. Common practice, no source.
const HEAT_PUMP: [[f64; 3]; 7] = [
    [-30.0, 1.50, 0.50],
    [-25.0, 1.75, 0.58],
    [-20.0, 2.05, 0.66],
    [-15.0, 2.40, 0.75],
    [-8.0, 2.85, 0.85],
    [0.0, 3.40, 0.95],
    [8.0, 4.00, 1.00],
];

/// Coldest at which a heat pump runs.
pub const HEAT_PUMP_COLDEST: Temperature = Temperature::celsius(HEAT_PUMP[0][0]);

impl HeaterKind {
    /// Every kind that is not refused, in the order shown.
    pub const LAWFUL: [Self; 5] = [
        Self::ElectricResistance,
        Self::AirSourceHeatPump,
        Self::DirectVentPropane,
        Self::VentedDiesel,
        Self::WoodStove,
    ];

    /// The kinds that are refused.
    pub const REFUSED: [Self; 2] = [Self::UnventedPropane, Self::UnventedKerosene];

    /// Stable name.
    pub const fn key(self) -> &'static str {
        match self {
            Self::ElectricResistance => "electric_resistance",
            Self::AirSourceHeatPump => "air_source_heat_pump",
            Self::DirectVentPropane => "direct_vent_propane",
            Self::VentedDiesel => "vented_diesel",
            Self::WoodStove => "wood_stove",
            Self::UnventedPropane => "unvented_propane",
            Self::UnventedKerosene => "unvented_kerosene",
        }
    }

    /// The kind of this name, refused ones included.
    pub fn from_key(key: &str) -> Option<Self> {
        Self::LAWFUL.into_iter().chain(Self::REFUSED).find(|kind| kind.key() == key)
    }

    /// Water that a flame without a flue gives to the room, kg for each kg of fuel; `None` where
    /// the fumes go outdoors. C₃H₈ + 5 O₂ → 4 H₂O: 72.06 / 44.10; kerosene as C₁₂H₂₆: 234.2 / 170.3.
    pub const fn water_to_room(self) -> Option<f64> {
        match self {
            Self::UnventedPropane => Some(72.06 / 44.10),
            Self::UnventedKerosene => Some(234.2 / 170.3),
            _ => None,
        }
    }

    /// What it burns or draws.
    pub const fn carrier(self) -> EnergyCarrier {
        match self {
            Self::ElectricResistance | Self::AirSourceHeatPump => EnergyCarrier::Electricity,
            Self::DirectVentPropane | Self::UnventedPropane => EnergyCarrier::Propane,
            Self::VentedDiesel | Self::UnventedKerosene => EnergyCarrier::Diesel,
            Self::WoodStove => EnergyCarrier::Wood,
        }
    }

    /// Heat given over energy drawn, gross, at an outdoor temperature: 1 for electricity, the
    /// coefficient of performance of a heat pump, straight between its points and level beyond
    /// them; flames by the middle of what makers state (from memory: propane 0.78 to 0.92, diesel 0.75 to 0.85,
    /// wood 0.6 to 0.75).
    pub fn performance(self, outdoor: Temperature) -> f64 {
        match self {
            Self::ElectricResistance => 1.0,
            Self::AirSourceHeatPump => heat_pump(outdoor.as_celsius())[0],
            Self::DirectVentPropane | Self::UnventedPropane => 0.85,
            Self::VentedDiesel | Self::UnventedKerosene => 0.80,
            Self::WoodStove => 0.675,
        }
    }

    /// Heat it can give at an outdoor temperature over its limit. A heat pump gives less in the
    /// cold and nothing below [`HEAT_PUMP_COLDEST`].
    pub fn capacity_share(self, outdoor: Temperature) -> f64 {
        match self {
            Self::AirSourceHeatPump if outdoor < HEAT_PUMP_COLDEST => 0.0,
            Self::AirSourceHeatPump => heat_pump(outdoor.as_celsius())[1],
            _ => 1.0,
        }
    }

    /// Least heat while it burns, over its limit: a wood fire cannot be turned down further (from
    /// memory). Others run part of the hour.
    pub const fn least_share(self) -> f64 {
        match self {
            Self::WoodStove => 0.4,
            _ => 0.0,
        }
    }

    /// Whether someone must be there for it to heat.
    pub const fn needs_someone(self) -> bool {
        matches!(self, Self::WoodStove)
    }

    /// What it does when the electric supply fails. Common practice, no source.
    ///
    /// [`RoomNetwork::cool_down`](super::RoomNetwork::cool_down) counts on none of them.
    pub const fn at_power_cut(self) -> AtPowerCut {
        match self {
            Self::ElectricResistance | Self::AirSourceHeatPump => AtPowerCut::Stops,
            Self::DirectVentPropane | Self::UnventedPropane => AtPowerCut::DependsOnBuild,
            Self::VentedDiesel | Self::UnventedKerosene => AtPowerCut::StopsWithItsBattery,
            Self::WoodStove => AtPowerCut::GoesOnWhileFed,
        }
    }

    /// Electricity it draws beside its fuel while it gives heat: fan and pump of a diesel heater,
    /// about 2 A at 12 V (from memory: 0.7 to 3.3 A running). A propane heater is reckoned as one
    /// without a fan, which draws none.
    pub const fn own_electricity(self) -> Power {
        match self {
            Self::VentedDiesel => Power::new(25.0),
            _ => Power::ZERO,
        }
    }

    /// Where its figures come from.
    pub const fn source(self) -> Source {
        match self {
            Self::ElectricResistance | Self::AirSourceHeatPump => Source::CommonPractice,
            _ => Source::FromMemory,
        }
    }
}

/// Coefficient of performance and capacity share, straight between the points, level beyond.
fn heat_pump(celsius: f64) -> [f64; 2] {
    let last = HEAT_PUMP.len() - 1;
    let after = HEAT_PUMP.iter().position(|point| celsius < point[0]);
    match after {
        Some(0) => [HEAT_PUMP[0][1], HEAT_PUMP[0][2]],
        None => [HEAT_PUMP[last][1], HEAT_PUMP[last][2]],
        Some(at) => {
            let [left, right] = [HEAT_PUMP[at - 1], HEAT_PUMP[at]];
            let x = (celsius - left[0]) / (right[0] - left[0]);
            [1, 2].map(|column| left[column] + x * (right[column] - left[column]))
        }
    }
}

/// Whether a heater can hold the room at the design temperatures.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct HeaterCheck {
    /// Heat that heater and backup can give at the outdoor design temperature, a stove fed.
    pub capacity: Power,
    /// The part of it that the backup gives.
    pub backup: Power,
    /// The part of it that is given with nobody there.
    pub unattended: Power,
    /// What is needed.
    pub design_load: Power,
}

impl HeaterCheck {
    /// Of a heater and the design load at an outdoor temperature.
    pub fn of(choices: &YearChoices, design_load: Power, outdoor: Temperature) -> Self {
        let main = choices.heater_limit * choices.heater.capacity_share(outdoor);
        let backup = choices.backup_limit;
        let alone = if choices.heater.needs_someone() { Power::ZERO } else { main };
        Self { capacity: main + backup, backup, unattended: alone + backup, design_load }
    }

    /// Whether it holds the room, if someone feeds what has to be fed.
    pub fn holds(&self) -> bool {
        self.capacity >= self.design_load
    }

    /// Whether it holds the room only while someone is there.
    pub fn holds_only_attended(&self) -> bool {
        self.holds() && self.unattended < self.design_load
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn check(heater: HeaterKind, backup: f64) -> HeaterCheck {
        let choices = YearChoices {
            heater,
            heater_limit: Power::new(5000.0),
            backup_limit: Power::new(backup),
            ..YearChoices::default()
        };
        HeaterCheck::of(&choices, Power::new(2000.0), Temperature::celsius(-20.0))
    }

    #[test]
    fn a_stove_left_alone_is_its_backup() {
        for heater in HeaterKind::LAWFUL {
            let alone = check(heater, 1000.0);
            let stove = heater == HeaterKind::WoodStove;
            assert!(alone.holds(), "{heater:?}");
            assert_eq!(alone.holds_only_attended(), stove, "{heater:?}");
            let expected = if stove { alone.backup } else { alone.capacity };
            assert_eq!(alone.unattended, expected, "{heater:?}");
        }
        assert!(!check(HeaterKind::WoodStove, 2000.0).holds_only_attended());
    }
}
