//! The flow at which what the fans make is what the openings take.

use super::air_path::{AirPath, PathFlow};
use super::error::{VentilationError, VentilationQuantity};
use super::fan_curve::FAN_RATING_DENSITY;
use super::system::{Exhaust, VentilationSystem};
use crate::bounds::BoundedQuantity;
use crate::root_finding::root_between;
use crate::units::{Area, Density, Force, MassFlow, Pressure, VolumeFlow};

/// How near the suction of the room is found, Pa, and the flow of a fan, m³/s.
const SUCTION_ACCURACY: f64 = 1e-9;
const FLOW_ACCURACY: f64 = 1e-12;

/// The state in which a system settles.
#[derive(Clone, Debug, PartialEq)]
pub struct OperatingPoint {
    /// How far the room is drawn below outdoors, Pa.
    pub room_suction: Pressure,
    /// What each intake carries, as outdoor air.
    pub intakes: Vec<PathFlow>,
    /// What each exhaust carries, as room air.
    pub exhausts: Vec<ExhaustFlow>,
    /// Density of outdoor air, kg/m³.
    pub outdoor_density: Density,
    /// Density of room air, kg/m³.
    pub room_density: Density,
}

/// What one exhaust carries.
#[derive(Clone, Debug, PartialEq)]
pub struct ExhaustFlow {
    /// Pressure the fan makes in the air it moves, Pa.
    pub fan_pressure: Pressure,
    /// The flow and what it does at each element; nothing flows where the damper is shut or the
    /// room draws harder than the fan.
    pub path: PathFlow,
}

impl OperatingPoint {
    /// All that the fans draw out of the room, m³/s of room air.
    pub fn exhausted(&self) -> VolumeFlow {
        self.exhausts.iter().map(|exhaust| exhaust.path.flow).sum()
    }

    /// All that the intakes let in, m³/s of outdoor air; colder and denser, so fewer.
    pub fn let_in(&self) -> VolumeFlow {
        self.intakes.iter().map(|intake| intake.flow).sum()
    }

    /// Mass of air that passes through the room, kg/s.
    pub fn mass_flow(&self) -> MassFlow {
        self.exhausted() * self.room_density
    }

    /// Force of the suction on a door leaf of an area, N; at a handle across from the hinges it
    /// takes half of it to open the door.
    pub fn pull_on_door(&self, leaf: Area) -> Force {
        self.room_suction * leaf
    }
}

impl VentilationSystem {
    /// Where the system settles with outdoor and room air of the given densities.
    ///
    /// The room is drawn to the suction s at which the mass let in is the mass drawn out. An intake
    /// lets in m = √(s / R), R = Σ ζ / (2·ρ·A²) over its elements; a fan moves the flow at which its
    /// pressure, as ρ_room / 1.2 of its curve, is s and the losses of its path. The suction is
    /// found to 10⁻⁹ Pa. Left out: wind, stack effect and leaks; give a leak as an intake.
    ///
    /// Range: densities from 0.5 to 1.9 kg/m³.
    ///
    /// # Errors
    /// Refuses a density out of range, a system with every intake or every exhaust shut, and a
    /// point beyond the end of a fan's curve.
    pub fn operating_point(
        &self,
        outdoor: Density,
        room: Density,
    ) -> Result<OperatingPoint, VentilationError> {
        let (rho_outdoor, rho_room) = (
            VentilationQuantity::AirDensity.check(outdoor.value())?,
            VentilationQuantity::AirDensity.check(room.value())?,
        );
        let open = |path: &AirPath| !path.is_shut();
        if !self.intakes().iter().any(open) {
            return Err(VentilationError::NoWayIn);
        }
        let strongest = self
            .exhausts()
            .iter()
            .filter(|exhaust| open(&exhaust.path))
            .map(|exhaust| fan_pascals(exhaust, 0.0, rho_room))
            .fold(0.0, f64::max);
        if strongest == 0.0 {
            return Err(VentilationError::NoWayOut);
        }

        let let_in = |suction: f64| -> f64 {
            let paths = self.intakes().iter().filter(|path| open(path));
            paths.map(|path| (suction / path.resistance(rho_outdoor)).sqrt()).sum()
        };
        let drawn_out = |suction: f64| -> f64 {
            let flows = self.exhausts().iter().map(|fan| fan_flow(fan, suction, rho_room));
            rho_room * flows.sum::<f64>()
        };
        let suction = root_between(|s| let_in(s) - drawn_out(s), 0.0, strongest, SUCTION_ACCURACY)
            // With no suction nothing comes in, with the strongest nothing goes out.
            .ok_or(VentilationError::NoWayOut)?;

        let intakes = self.intakes().iter().map(|path| {
            let mass =
                if open(path) { (suction / path.resistance(rho_outdoor)).sqrt() } else { 0.0 };
            path.carrying(MassFlow::new(mass) / outdoor, outdoor)
        });
        let exhausts = self.exhausts().iter().enumerate().map(|(index, exhaust)| {
            let flow = fan_flow(exhaust, suction, rho_room);
            if flow >= exhaust.fan.last_flow().value()
                && excess(exhaust, flow, suction, rho_room) > 0.0
            {
                return Err(VentilationError::BeyondCurve { exhaust: index });
            }
            Ok(ExhaustFlow {
                fan_pressure: Pressure::new(fan_pascals(exhaust, flow, rho_room)),
                path: exhaust.path.carrying(VolumeFlow::new(flow), room),
            })
        });
        Ok(OperatingPoint {
            room_suction: Pressure::new(suction),
            intakes: intakes.collect(),
            exhausts: exhausts.collect::<Result<_, _>>()?,
            outdoor_density: outdoor,
            room_density: room,
        })
    }
}

/// Pressure a fan makes at a flow in air of a density, Pa.
fn fan_pascals(exhaust: &Exhaust, flow: f64, density: f64) -> f64 {
    exhaust.fan.pascals_at(flow) * density / FAN_RATING_DENSITY.value()
}

/// Pressure a fan has left at a flow, once room and path have taken theirs, Pa.
fn excess(exhaust: &Exhaust, flow: f64, suction: f64, density: f64) -> f64 {
    let mass = flow * density;
    fan_pascals(exhaust, flow, density) - suction - exhaust.path.resistance(density) * mass * mass
}

/// Flow of a fan from a room under a suction, m³/s; its last flow if pressure is left even there.
fn fan_flow(exhaust: &Exhaust, suction: f64, density: f64) -> f64 {
    let last = exhaust.fan.last_flow().value();
    if exhaust.path.is_shut() || excess(exhaust, 0.0, suction, density) <= 0.0 {
        return 0.0;
    }
    root_between(|flow| excess(exhaust, flow, suction, density), 0.0, last, FLOW_ACCURACY)
        .unwrap_or(last)
}
