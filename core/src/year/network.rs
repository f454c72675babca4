//! The room as five resistances and one heat capacity.
//!
//! The network of ISO 13790:2008, annex C, put in series so that its steady loss is the heat loss
//! of the evaluation to the last digit:
//!
//! ```text
//!                    leaks, fan, windows, door
//!            air ------------------------------------ outdoor air
//!             |  surfaces
//!          surface --- mass --- outdoors as the steel feels it
//! ```
//!
//! Unlike the annex, windows and door join the air, because their U already holds their inside
//! surface, the surface resistance is that of ISO 6946 in place of 3.45 W/(m²·K), and mass and surface
//! are joined by half of the lining itself in place of 9.1 W/(m²·K), which is meant for thick walls. Within an hour the
//! inputs stand still and the mass follows its exponential exactly, so that any length of step
//! keeps the balance of heat; the annex steps by Crank and Nicolson.

use super::error::{NetworkPart, YearModelError};
use crate::units::{Area, HeatCapacity, HeatTransferCoefficient, Temperature};

/// Conductance from surface to air for a square metre, 1/0.13 W/(m²·K) (ISO 6946:2017 table 7,
/// walls).
const SURFACE_TO_AIR: f64 = 1.0 / 0.13;

/// Most of the opaque resistance that surface and mass may stand for; the rest is outside them.
const MOST_INSIDE: f64 = 0.5;

/// Five conductances and a heat capacity.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RoomNetwork {
    pub(super) surface_to_air: f64,
    pub(super) mass_to_surface: f64,
    pub(super) mass_to_outdoors: f64,
    pub(super) openings: f64,
    pub(super) leaks: f64,
    pub(super) capacity: f64,
    /// Share of radiant gains that falls on mass, A_m / A_t; the rest on surfaces.
    pub(super) onto_mass: f64,
}

/// What a network is made of.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct NetworkParts {
    /// H of everything opaque, from air to outdoors, W/K.
    pub opaque: HeatTransferCoefficient,
    /// H of windows and doors, W/K.
    pub openings: HeatTransferCoefficient,
    /// H of the air that leaks or is always let in, W/K.
    pub leaks: HeatTransferCoefficient,
    /// Heat capacity inside the foam C_m.
    pub capacity: HeatCapacity,
    /// Opaque inside area.
    pub opaque_area: Area,
    /// H from the surfaces to the middle of the boards that hold the heat, W/K.
    pub mass_to_surface: HeatTransferCoefficient,
    /// Effective mass area A_m.
    pub mass_area: Area,
    /// Inside area, openings and all, A_t.
    pub total_area: Area,
}

impl NetworkParts {
    fn check(&self) -> Result<(), YearModelError> {
        use NetworkPart as P;
        let parts = [
            (P::Opaque, self.opaque.value()),
            (P::Capacity, self.capacity.value()),
            (P::OpaqueArea, self.opaque_area.value()),
            (P::MassToSurface, self.mass_to_surface.value()),
            (P::MassArea, self.mass_area.value()),
            (P::TotalArea, self.total_area.value()),
            (P::Openings, self.openings.value()),
            (P::Leaks, self.leaks.value()),
        ];
        let may_be_nothing = |part| matches!(part, P::Openings | P::Leaks);
        let stands = |&(part, given): &(NetworkPart, f64)| {
            given.is_finite() && (given > 0.0 || given == 0.0 && may_be_nothing(part))
        };
        match parts.into_iter().find(|part| !stands(part)) {
            Some((part, given)) => Err(YearModelError::NoNetwork { part, given }),
            None => Ok(()),
        }
    }
}

impl RoomNetwork {
    /// From its parts: H_is = A/0.13, H_ms as given, and H_em such that the three in series are the
    /// opaque H. Where H is so great that surface and mass alone would be more than half of its
    /// resistance, both are shrunk to half.
    ///
    /// # Errors
    /// Refuses a part that is no finite number or below nothing; openings and leaks may be nothing,
    /// the others not.
    pub fn new(parts: &NetworkParts) -> Result<Self, YearModelError> {
        parts.check()?;
        let opaque = parts.opaque.value();
        let inside = [
            1.0 / (SURFACE_TO_AIR * parts.opaque_area.value()),
            1.0 / parts.mass_to_surface.value(),
        ];
        let shrink = (MOST_INSIDE / opaque / (inside[0] + inside[1])).min(1.0);
        let [surface, mass] = inside.map(|resistance| resistance * shrink);
        Ok(Self {
            surface_to_air: 1.0 / surface,
            mass_to_surface: 1.0 / mass,
            mass_to_outdoors: 1.0 / (1.0 / opaque - surface - mass),
            openings: parts.openings.value(),
            leaks: parts.leaks.value(),
            capacity: parts.capacity.value(),
            onto_mass: (parts.mass_area / parts.total_area).min(1.0),
        })
    }

    /// A network of one node, for comparison with the textbook formula: surface and mass all but
    /// joined to the air.
    ///
    /// # Errors
    /// Refuses a loss or a capacity that is no finite number above nothing.
    pub fn one_node(
        loss: HeatTransferCoefficient,
        capacity: HeatCapacity,
    ) -> Result<Self, YearModelError> {
        let parts =
            [(NetworkPart::Opaque, loss.value()), (NetworkPart::Capacity, capacity.value())];
        for (part, given) in parts {
            if !(given.is_finite() && given > 0.0) {
                return Err(YearModelError::NoNetwork { part, given });
            }
        }
        let joined = loss.value() * 1e9;
        Ok(Self {
            surface_to_air: joined,
            mass_to_surface: joined,
            mass_to_outdoors: loss.value(),
            openings: 0.0,
            leaks: 0.0,
            capacity: capacity.value(),
            onto_mass: 0.0,
        })
    }

    /// Steady loss of the air, W/K: everything opaque, openings and leaks.
    pub fn steady_loss(&self) -> HeatTransferCoefficient {
        let opaque = 1.0
            / (1.0 / self.surface_to_air
                + 1.0 / self.mass_to_surface
                + 1.0 / self.mass_to_outdoors);
        HeatTransferCoefficient::new(opaque + self.openings + self.leaks)
    }

    /// How the network answers over a step of seconds with some more air let in, W/K.
    pub(super) fn step(&self, more_air: f64, seconds: f64) -> NetworkStep {
        let direct = self.leaks + self.openings + more_air;
        let per_air = 1.0 / (direct + self.surface_to_air);
        let pull = self.surface_to_air * per_air;
        let per_surface = 1.0 / (self.mass_to_surface + direct * pull);
        let to_surface = self.mass_to_surface * per_surface;
        let loss = to_surface * direct * pull + self.mass_to_outdoors;
        let x = loss * seconds / self.capacity;
        let decay = libm::exp(-x);
        // (1 − e^−x)/x without cancellation.
        let mean = if x > 1e-6 { (1.0 - decay) / x } else { 1.0 - 0.5 * x };
        let per_loss = 1.0 / loss;
        let tends_to = to_surface * pull * per_loss;
        let of_mass = (1.0 - mean) * tends_to;
        let of_surface = pull * per_surface + to_surface * of_mass;
        let per_watt = Temperatures {
            air: per_air + pull * of_surface,
            surface: of_surface,
            mass: of_mass,
            mass_after: (1.0 - decay) * tends_to,
        };
        NetworkStep {
            direct,
            per_air,
            pull,
            per_surface,
            to_surface,
            per_loss,
            decay,
            mean,
            per_watt,
        }
    }
}

/// The answer of a network over one step.
#[derive(Clone, Copy, Debug)]
pub(super) struct NetworkStep {
    /// Conductance from air straight to outdoors.
    pub(super) direct: f64,
    per_air: f64,
    pull: f64,
    per_surface: f64,
    to_surface: f64,
    pub(super) per_loss: f64,
    decay: f64,
    mean: f64,
    /// What each watt to the air throughout the step adds.
    pub(super) per_watt: Temperatures,
}

/// What acts on the room through a step, W and °C.
#[derive(Clone, Copy, Debug)]
pub(super) struct Drive {
    /// Heat to the air.
    pub(super) to_air: f64,
    /// Heat to the surfaces.
    pub(super) to_surface: f64,
    /// Heat to the mass.
    pub(super) to_mass: f64,
    /// Outdoor air.
    pub(super) outdoors: f64,
    /// Outdoors as the steel feels it.
    pub(super) at_steel: f64,
}

/// Temperatures through a step, °C.
#[derive(Clone, Copy, Debug)]
pub(super) struct Temperatures {
    /// Mean of the air.
    pub(super) air: f64,
    /// Mean of the surfaces.
    pub(super) surface: f64,
    /// Mean of the mass.
    pub(super) mass: f64,
    /// The mass at the end.
    pub(super) mass_after: f64,
}

impl NetworkStep {
    /// Where the mass tends to.
    pub(super) fn tends_to(&self, network: &RoomNetwork, drive: &Drive) -> f64 {
        let air = drive.to_air + self.direct * drive.outdoors;
        let through_surface = self.to_surface * (drive.to_surface + self.pull * air);
        let outdoors = network.mass_to_outdoors * drive.at_steel;
        (through_surface + outdoors + drive.to_mass) * self.per_loss
    }

    /// The air while the mass is at a temperature.
    pub(super) fn air_at(&self, network: &RoomNetwork, drive: &Drive, mass: f64) -> [f64; 2] {
        let air = drive.to_air + self.direct * drive.outdoors;
        let surface = self.per_surface
            * (drive.to_surface + network.mass_to_surface * mass + self.pull * air);
        [self.per_air * air + self.pull * surface, surface]
    }

    /// Temperatures through the step from the mass at its start.
    pub(super) fn go(
        &self,
        network: &RoomNetwork,
        drive: &Drive,
        mass_before: f64,
    ) -> Temperatures {
        let tends_to = self.tends_to(network, drive);
        let off = mass_before - tends_to;
        let mass = tends_to + off * self.mean;
        let [air, surface] = self.air_at(network, drive, mass);
        Temperatures { air, surface, mass, mass_after: tends_to + off * self.decay }
    }

    /// The same with so many more watts to the air.
    pub(super) fn heated(&self, free: &Temperatures, heat: f64) -> Temperatures {
        Temperatures {
            air: free.air + heat * self.per_watt.air,
            surface: free.surface + heat * self.per_watt.surface,
            mass: free.mass + heat * self.per_watt.mass,
            mass_after: free.mass_after + heat * self.per_watt.mass_after,
        }
    }
}

/// The state a network comes to in the end.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SteadyState {
    /// Air.
    pub air: Temperature,
    /// Inner surfaces.
    pub surface: Temperature,
    /// Mass.
    pub mass: Temperature,
}

#[cfg(test)]
mod tests {
    use super::*;

    const DRIVE: Drive = Drive {
        to_air: 800.0,
        to_surface: 150.0,
        to_mass: 250.0,
        outdoors: -20.0,
        at_steel: -17.0,
    };

    fn room() -> RoomNetwork {
        RoomNetwork {
            surface_to_air: 500.0,
            mass_to_surface: 450.0,
            mass_to_outdoors: 28.0,
            openings: 4.5,
            leaks: 3.0,
            capacity: 1.2e6,
            onto_mass: 0.8,
        }
    }

    /// The closed form of one capacity: θ = θ_∞ + (θ_0 − θ_∞)·e^(−t·H/C), in hourly steps, to 0.1 % and far
    /// closer.
    #[test]
    fn hourly_steps_follow_the_closed_form_of_one_capacity() {
        let network =
            RoomNetwork::one_node(HeatTransferCoefficient::new(31.5), HeatCapacity::new(1.43e6))
                .expect("a room");
        let step = network.step(0.0, 3600.0);
        let drive = Drive {
            to_air: 2000.0,
            to_surface: 0.0,
            to_mass: 0.0,
            outdoors: -20.0,
            at_steel: -20.0,
        };
        let mut mass = -20.0;
        for hour in 1..=48 {
            mass = step.go(&network, &drive, mass).mass_after;
            let rise = 2000.0 / 31.5 * -libm::expm1(-f64::from(hour) * 3600.0 * 31.5 / 1.43e6);
            assert!(((mass + 20.0) / rise - 1.0).abs() < 1e-6, "hour {hour}: {mass}");
        }
    }

    /// Hourly steps against Euler's method in steps of a tenth of a second.
    #[test]
    fn an_hour_is_that_of_a_thousand_small_steps() {
        let network = room();
        let step = network.step(10.0, 3600.0);
        let whole = step.go(&network, &DRIVE, 5.0);
        let small = network.step(10.0, 0.1);
        let (mut mass, mut air_sum) = (5.0, 0.0);
        for _ in 0..36_000 {
            let [air, surface] = small.air_at(&network, &DRIVE, mass);
            let flow = network.mass_to_surface * (surface - mass)
                + network.mass_to_outdoors * (DRIVE.at_steel - mass)
                + DRIVE.to_mass;
            mass += flow * 0.1 / network.capacity;
            air_sum += air;
        }
        assert!((whole.mass_after - mass).abs() < 1e-4, "{} {mass}", whole.mass_after);
        let air = air_sum / 36_000.0;
        assert!((whole.air - air).abs() < 1e-3, "{} {air}", whole.air);
    }

    #[test]
    fn a_part_that_cannot_be_is_named() {
        let parts = NetworkParts {
            opaque: HeatTransferCoefficient::new(25.0),
            openings: HeatTransferCoefficient::ZERO,
            leaks: HeatTransferCoefficient::ZERO,
            capacity: HeatCapacity::new(1.2e6),
            opaque_area: Area::new(60.0),
            mass_to_surface: HeatTransferCoefficient::new(450.0),
            mass_area: Area::new(50.0),
            total_area: Area::new(62.0),
        };
        assert!(RoomNetwork::new(&parts).is_ok(), "no openings and no leaks");
        let refused = |parts: NetworkParts| match RoomNetwork::new(&parts) {
            Err(YearModelError::NoNetwork { part, .. }) => Some(part),
            _ => None,
        };
        let no_loss = NetworkParts { opaque: HeatTransferCoefficient::ZERO, ..parts };
        assert_eq!(refused(no_loss), Some(NetworkPart::Opaque));
        let bare = HeatTransferCoefficient::new(f64::INFINITY);
        let no_boards = NetworkParts { mass_to_surface: bare, ..parts };
        assert_eq!(refused(no_boards), Some(NetworkPart::MassToSurface));
        let gains = NetworkParts { leaks: HeatTransferCoefficient::new(-1.0), ..parts };
        assert_eq!(refused(gains), Some(NetworkPart::Leaks));
        let light = NetworkParts { capacity: HeatCapacity::new(f64::NAN), ..parts };
        assert_eq!(refused(light), Some(NetworkPart::Capacity));
        let no_loss = RoomNetwork::one_node(HeatTransferCoefficient::ZERO, HeatCapacity::new(1.0));
        assert!(no_loss.is_err());
    }

    /// Heat to the air goes where the network says, to the last digit.
    #[test]
    fn a_step_keeps_the_heat() {
        let network = room();
        let step = network.step(0.0, 3600.0);
        let room = step.go(&network, &DRIVE, 5.0);
        let gained = DRIVE.to_air + DRIVE.to_surface + DRIVE.to_mass;
        let lost = step.direct * (room.air - DRIVE.outdoors)
            + network.mass_to_outdoors * (room.mass - DRIVE.at_steel);
        let stored = network.capacity * (room.mass_after - 5.0) / 3600.0;
        assert!((gained - lost - stored).abs() < 1e-9, "{gained} {lost} {stored}");
        let more = Drive { to_air: DRIVE.to_air + 1000.0, ..DRIVE };
        let (whole, added) = (step.go(&network, &more, 5.0), step.heated(&room, 1000.0));
        for (whole, added) in [
            (whole.air, added.air),
            (whole.surface, added.surface),
            (whole.mass, added.mass),
            (whole.mass_after, added.mass_after),
        ] {
            assert!((whole - added).abs() < 1e-12, "{whole} {added}");
        }
    }
}
