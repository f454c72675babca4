//! The heat that the room needs at its design temperatures, part by part, at rest and at work.

use crate::design::Design;
use crate::heat_loss::{HeatLoss, air_coefficient};
use crate::humidity::Humidity;
use crate::psychro::latent_heat_of_vaporisation;
use crate::room_network::RoomNetwork;
use crate::units::{MassFlow, Power, SpecificEnthalpy, Temperature, Time};

/// Heat that a kilogram of water takes to evaporate at 20 °C ([`latent_heat_of_vaporisation`]).
pub const HEAT_OF_EVAPORATION: SpecificEnthalpy =
    SpecificEnthalpy::new(latent_heat_of_vaporisation(20.0));

/// What a heater is chosen larger by than the load, 15 %. Common practice, no source.
pub const HEATER_MARGIN: f64 = 1.15;

/// The parts of a heat load, W. The first four are those of EN 12831-1:2017; the last is no part of that
/// standard.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct LoadParts {
    /// Transmission Φ_T = H_T·(θ_i − θ_e).
    pub transmission: Power,
    /// Outdoor air that leaks in, of the ventilation Φ_V: m·c·(θ_i − θ_e).
    pub leakage: Power,
    /// Outdoor air that the fan brings beyond the leaks, of the ventilation Φ_V, after any heat exchanger:
    /// m·c·(1 − η)·(θ_i − θ_e).
    pub mechanical: Power,
    /// Reheat after a setback Φ_hu, beyond the steady loss.
    pub reheat: Power,
    /// Water that evaporates with heat of the room's air, as laundry and wet floors: m·r. Breath and showers
    /// bring their heat along and are not in it.
    pub drying: Power,
}

impl LoadParts {
    /// The load of the standard, Φ_T + Φ_V + Φ_hu.
    pub fn of_the_standard(&self) -> Power {
        self.transmission + self.leakage + self.mechanical + self.reheat
    }

    /// All that the heater must give, the heat of drying with it.
    pub fn total(&self) -> Power {
        self.of_the_standard() + self.drying
    }
}

/// The heat load of a room.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct HeatLoad {
    /// Room temperature θ_i.
    pub indoor: Temperature,
    /// Winter outdoor temperature θ_e.
    pub outdoor: Temperature,
    /// Fan off, nobody in the room.
    pub at_rest: LoadParts,
    /// The fan at the flow that the use needs in its busy hours.
    pub at_work: LoadParts,
}

impl HeatLoad {
    /// Of a design: its coefficients, then the flow that its use needs, then the load.
    ///
    /// Heat of people, equipment and sun is not taken off (EN 12831-1:2017). Leaks and a fan that only draws
    /// air out combine, they do not add ([`crate::humidity::FanAir`]).
    pub fn of(
        design: &Design,
        heat_loss: &HeatLoss,
        humidity: &Humidity,
        network: &RoomNetwork,
    ) -> Self {
        let (indoor, outdoor) = (design.indoor_temperature, design.outdoor_temperature);
        let difference = heat_loss.temperature_difference;
        let at_rest = LoadParts {
            transmission: heat_loss.transmission * difference,
            leakage: heat_loss.air * difference,
            ..LoadParts::default()
        };
        let added = humidity.busy.air.less(humidity.leakage).dry_air();
        let kept = humidity.need.recovery.map_or(0.0, |air| air.effectiveness.value());
        let at_work = LoadParts {
            mechanical: air_coefficient(added) * difference * (1.0 - kept),
            reheat: network.heat_to_reheat(
                indoor,
                design.setback,
                longest_rest(design),
                design.reheat_time,
                outdoor,
            ),
            drying: drying_heat(humidity.sources.busy_drying),
            ..at_rest
        };
        Self { indoor, outdoor, at_rest, at_work }
    }

    /// The greater of rest and work: what heater and supply are judged by.
    pub fn greatest(&self) -> Power {
        self.at_rest.total().max(self.at_work.total())
    }

    /// The heater to look for, [`HEATER_MARGIN`] over the load.
    pub fn recommended_heater(&self) -> Power {
        self.greatest() * HEATER_MARGIN
    }
}

/// What evaporating takes, m·r.
pub fn drying_heat(flow: MassFlow) -> Power {
    flow * HEAT_OF_EVAPORATION
}

/// The longest time in a week that the room is not used; all of a cold spell where it never is.
fn longest_rest(design: &Design) -> Time {
    if design.used_days == 0.0 {
        return Time::days(design.cold_spell_days);
    }
    Time::days(8.0 - design.used_days) - design.use_time()
}
