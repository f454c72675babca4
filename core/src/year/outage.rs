//! Warm-up and cool-down in closed form: the mass follows one exponential.

use super::network::{Drive, Network, SteadyState};
use crate::units::{Power, Temperature, Time};

/// Which part of the room is asked about.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum RoomPart {
    /// The air, which follows the heater at once.
    Air,
    /// The inner surfaces.
    Surfaces,
}

impl Network {
    /// The steady state with a heat to the air and no other gains.
    pub fn steady(&self, heat: Power, outdoor: Temperature) -> SteadyState {
        let step = self.step(0.0, 3600.0);
        let drive = only_heat(heat, outdoor);
        let mass = step.tends_to(self, &drive);
        let [air, surface] = step.air_at(self, &drive, mass);
        let [air, surface, mass] = [air, surface, mass].map(Temperature::celsius);
        SteadyState { air, surface, mass }
    }

    /// How long a heater takes to bring the room from one steady temperature to another, all of it cold
    /// at the start: t = τ·ln((θ_end − θ_0)/(θ_end − θ)), of the part asked about, τ = C/H of the mass.
    /// `None` if it never gets there.
    ///
    /// With one node it is the textbook t = −τ·ln(1 − H·Δθ/Φ).
    pub fn warm_up(
        &self,
        heat: Power,
        outdoor: Temperature,
        from: Temperature,
        to: Temperature,
        part: RoomPart,
    ) -> Option<Time> {
        self.time_until(&only_heat(heat, outdoor), from.as_celsius(), to.as_celsius(), part, 1.0)
    }

    /// How long the room stays above a temperature once the heat is gone, from the steady state
    /// at a room temperature; `None` if it never falls so low. No sun, nobody in the room, and no heater
    /// that might go on without electricity ([`AtPowerCut`](super::AtPowerCut)).
    pub fn cool_down(
        &self,
        room: Temperature,
        outdoor: Temperature,
        to: Temperature,
        part: RoomPart,
    ) -> Option<Time> {
        let held = self.steady_loss() * (room - outdoor);
        let mass = self.steady(held, outdoor).mass.as_celsius();
        self.time_until(&only_heat(Power::ZERO, outdoor), mass, to.as_celsius(), part, -1.0)
    }

    /// Time until a part passes a temperature upwards (`way` 1) or downwards (`way` −1).
    fn time_until(
        &self,
        drive: &Drive,
        mass_from: f64,
        to: f64,
        part: RoomPart,
        way: f64,
    ) -> Option<Time> {
        let step = self.step(0.0, 3600.0);
        let mass_end = step.tends_to(self, drive);
        let of_part = |mass| {
            let [air, surface] = step.air_at(self, drive, mass);
            match part {
                RoomPart::Air => air,
                RoomPart::Surfaces => surface,
            }
        };
        let (start, end) = (of_part(mass_from), of_part(mass_end));
        if way * (start - to) >= 0.0 {
            return Some(Time::ZERO);
        }
        if way * (end - to) <= 0.0 {
            return None;
        }
        let constant = self.capacity * step.per_loss;
        Some(Time::new(constant * libm::log((end - start) / (end - to))))
    }
}

const fn only_heat(heat: Power, outdoor: Temperature) -> Drive {
    let outdoors = outdoor.as_celsius();
    Drive { to_air: heat.value(), to_surface: 0.0, to_mass: 0.0, outdoors, at_steel: outdoors }
}
