//! Warm-up and cool-down in closed form: the mass follows one exponential.

use super::network::{Drive, RoomNetwork, SteadyState};
use crate::units::{HeatCapacity, HeatTransferCoefficient, Power, Temperature, Time};

/// Which part of the room is asked about.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum RoomPart {
    /// The air, which follows the heater at once.
    Air,
    /// The inner surfaces.
    Surfaces,
}

impl RoomNetwork {
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
    /// at the start: [`RoomNetwork::warming`] until there. `None` if it never gets there.
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
        self.warming(heat, outdoor, from, part).until(to)
    }

    /// How long the room stays above a temperature once the heat is gone: [`RoomNetwork::cooling`] until there;
    /// `None` if it never falls so low. No sun, nobody in the room, and no heater
    /// that might go on without electricity ([`AtPowerCut`](super::AtPowerCut)).
    pub fn cool_down(
        &self,
        room: Temperature,
        outdoor: Temperature,
        to: Temperature,
        part: RoomPart,
    ) -> Option<Time> {
        self.cooling(room, outdoor, part).until(to)
    }

    /// How a part warms under a heat that stands still, all of the room at one temperature at the start.
    pub fn warming(
        &self,
        heat: Power,
        outdoor: Temperature,
        from: Temperature,
        part: RoomPart,
    ) -> Course {
        self.course(&only_heat(heat, outdoor), from.as_celsius(), part, true)
    }

    /// How a part cools without any heat, from the steady state at a room temperature.
    pub fn cooling(&self, room: Temperature, outdoor: Temperature, part: RoomPart) -> Course {
        let held = self.steady_loss() * (room - outdoor);
        let mass = self.steady(held, outdoor).mass.as_celsius();
        self.course(&only_heat(Power::ZERO, outdoor), mass, part, false)
    }

    fn course(&self, drive: &Drive, mass_from: f64, part: RoomPart, rises: bool) -> Course {
        let step = self.step(0.0, 3600.0);
        let of_part = |mass| {
            let [air, surface] = step.air_at(self, drive, mass);
            Temperature::celsius(match part {
                RoomPart::Air => air,
                RoomPart::Surfaces => surface,
            })
        };
        Course {
            capacity: HeatCapacity::new(self.capacity),
            loss: HeatTransferCoefficient::new(1.0 / step.per_loss),
            from: of_part(mass_from),
            towards: of_part(step.tends_to(self, drive)),
            rises,
        }
    }
}

/// How a part of the room moves while nothing that acts on it changes,
/// θ(t) = θ_end + (θ_0 − θ_end)·e^(−t/τ) with τ = C/H of the mass.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Course {
    /// Heat capacity C of the mass.
    pub capacity: HeatCapacity,
    /// H from the mass to outdoors, through the steel and through the room's air.
    pub loss: HeatTransferCoefficient,
    /// Where the part stands at the start θ_0; air follows the heater at once.
    pub from: Temperature,
    /// Where it tends to θ_end.
    pub towards: Temperature,
    /// Whether it is asked when it has risen to a temperature, or fallen to it.
    pub rises: bool,
}

impl Course {
    /// τ = C/H.
    pub fn time_constant(&self) -> Time {
        Time::new(self.capacity.value() / self.loss.value())
    }

    /// How long until it passes a temperature, τ·ln((θ_end − θ_0)/(θ_end − θ)); nothing where it starts
    /// beyond it, `None` if it never gets there.
    pub fn until(&self, to: Temperature) -> Option<Time> {
        let way = if self.rises { 1.0 } else { -1.0 };
        let [start, end, to] = [self.from, self.towards, to].map(Temperature::as_celsius);
        if way * (start - to) >= 0.0 {
            return Some(Time::ZERO);
        }
        if way * (end - to) <= 0.0 {
            return None;
        }
        Some(self.time_constant() * libm::log((end - start) / (end - to)))
    }
}

const fn only_heat(heat: Power, outdoor: Temperature) -> Drive {
    let outdoors = outdoor.as_celsius();
    Drive { to_air: heat.value(), to_surface: 0.0, to_mass: 0.0, outdoors, at_steel: outdoors }
}
