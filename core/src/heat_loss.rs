//! Heat-transfer coefficients by element and the design heating load.

use crate::design::{Design, Surface};
use crate::detail::{Outcome, PlacedDetail};
use crate::envelope::{Amount, Envelope, ThermalBridge};
use crate::room::Room;
use crate::units::{
    Density, HeatTransferCoefficient, Power, SpecificHeatCapacity, TemperatureDifference,
};

/// Air density at about 20 °C and sea level, 1.2 kg/m³: with [`AIR_HEAT_CAPACITY`] it makes the
/// 0.335 Wh/(m³·K) of EN 12831-1.
pub const AIR_DENSITY: Density = Density::new(1.2);

/// Specific heat capacity of air, 1005 J/(kg·K).
pub const AIR_HEAT_CAPACITY: SpecificHeatCapacity = SpecificHeatCapacity::new(1005.0);

/// A way that heat leaves the room.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Element {
    /// The plain area of a surface, between frame members.
    Plain(Surface),
    /// What a detail adds.
    Detail(ThermalBridge),
    /// The personnel door.
    PersonnelDoor,
    /// The windows.
    Windows,
    /// Outdoor air that leaks or is let in.
    Air,
}

impl Element {
    /// Stable name.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Plain(Surface::SideWall) => "side_walls",
            Self::Plain(Surface::FrontEnd) => "front_end",
            Self::Plain(Surface::DoorEnd) => "door_end",
            Self::Plain(Surface::Ceiling) => "ceiling",
            Self::Plain(Surface::Floor) => "floor",
            Self::Detail(place) => place.key(),
            Self::PersonnelDoor => "personnel_door",
            Self::Windows => "windows",
            Self::Air => "air",
        }
    }
}

/// What one element loses.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Loss {
    /// Which element.
    pub element: Element,
    /// Heat-transfer coefficient H, W/K.
    pub coefficient: HeatTransferCoefficient,
    /// Heat flow at the design temperatures, W.
    pub power: Power,
    /// Share of the whole, 0 to 1.
    pub share: f64,
}

/// Several losses together.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Together {
    /// How many.
    pub count: usize,
    /// Their heat flow, W.
    pub power: Power,
    /// Their share of the whole, 0 to 1.
    pub share: f64,
}

/// Why a part is missing from the sum. No allowance is invented for it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Reason {
    /// Its field is being solved aside.
    Waiting,
    /// Its field did not solve.
    DidNotSolve,
    /// No model of it exists.
    NotModelled,
}

/// A part that loses heat too and is not in the sum.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum NotCounted {
    /// A cold detail.
    Detail(ThermalBridge, Reason),
    /// The seals of the cargo doors, beyond the air changes stated.
    CargoDoorSeals,
    /// Brackets, screws and fixings through the foam other than the studs' brackets.
    OtherFixings,
}

impl NotCounted {
    /// Stable name.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Detail(place, _) => place.key(),
            Self::CargoDoorSeals => "cargo_door_seals",
            Self::OtherFixings => "other_fixings",
        }
    }

    /// Why it is missing.
    pub const fn reason(self) -> Reason {
        match self {
            Self::Detail(_, reason) => reason,
            Self::CargoDoorSeals | Self::OtherFixings => Reason::NotModelled,
        }
    }
}

/// The heat loss of the room.
#[derive(Clone, Debug, PartialEq)]
pub struct HeatLoss {
    /// Element by element, in a fixed order; elements that are not there are left out.
    pub losses: Vec<Loss>,
    /// Through the envelope, W/K.
    pub transmission: HeatTransferCoefficient,
    /// By air, W/K.
    pub air: HeatTransferCoefficient,
    /// Indoor less outdoor design temperature.
    pub temperature_difference: TemperatureDifference,
    /// Design heating load Φ = (H_T + H_V)·(θ_i − θ_e), W.
    pub design_load: Power,
    /// Parts left out.
    pub not_counted: Vec<NotCounted>,
}

impl HeatLoss {
    /// The losses of a design.
    ///
    /// H_T = Σ A·U + Σ l·ψ + Σ n·χ; H_V = ρ·c·n·V; Φ = (H_T + H_V)·(θ_i − θ_e) (EN 12831-1:2017, without
    /// the reheat allowance).
    pub fn of(design: &Design, room: &Room, envelope: &Envelope, details: &[PlacedDetail]) -> Self {
        let mut coefficients: Vec<(Element, HeatTransferCoefficient)> = envelope
            .plain
            .iter()
            .map(|plain| (Element::Plain(plain.surface), plain.transmittance * plain.area))
            .collect();
        let mut not_counted = vec![NotCounted::CargoDoorSeals, NotCounted::OtherFixings];
        for placed in details {
            match &placed.outcome {
                Outcome::Solved(field) => {
                    let coefficient = match placed.amount {
                        Amount::Metres(length) => field.linear_transmittance() * length,
                        Amount::Pieces(count) => field.point_transmittance().pieces(count),
                    };
                    coefficients.push((Element::Detail(placed.place), coefficient));
                }
                Outcome::Failed(_) => {
                    not_counted.push(NotCounted::Detail(placed.place, Reason::DidNotSolve));
                }
                Outcome::Waiting => {
                    not_counted.push(NotCounted::Detail(placed.place, Reason::Waiting));
                }
            }
        }
        coefficients.extend(
            [
                (Element::PersonnelDoor, envelope.personnel_door),
                (Element::Windows, envelope.windows),
            ]
            .map(|(element, openings)| (element, openings.transmittance * openings.area)),
        );
        let transmission = coefficients.iter().map(|&(_, coefficient)| coefficient).sum();
        let air = HeatTransferCoefficient::new(
            (design.air_changes * room.volume).value()
                * AIR_DENSITY.value()
                * AIR_HEAT_CAPACITY.value(),
        );
        coefficients.push((Element::Air, air));
        let temperature_difference = design.indoor_temperature - design.outdoor_temperature;
        let total = transmission + air;
        let losses = coefficients
            .into_iter()
            .filter(|&(_, coefficient)| coefficient != HeatTransferCoefficient::ZERO)
            .map(|(element, coefficient)| Loss {
                element,
                coefficient,
                power: coefficient * temperature_difference,
                share: coefficient / total,
            })
            .collect();
        Self {
            losses,
            transmission,
            air,
            temperature_difference,
            design_load: total * temperature_difference,
            not_counted,
        }
    }

    /// Whether parts are still being solved aside, so that the figures will move.
    pub fn is_waiting(&self) -> bool {
        self.not_counted.iter().any(|part| part.reason() == Reason::Waiting)
    }

    /// All losses below a share of the whole, together.
    pub fn below(&self, share: f64) -> Together {
        let below = || self.losses.iter().filter(|loss| loss.share < share);
        Together {
            count: below().count(),
            power: below().map(|loss| loss.power).sum(),
            share: below().map(|loss| loss.share).sum(),
        }
    }

    /// The same with what waits taken over from an earlier heat loss, until its own is known: a
    /// figure that is still being refined, and no gap. The list of parts left out stays.
    pub fn with_waiting_from(&self, earlier: &Self) -> Self {
        let mut filled = self.clone();
        let waiting = self.not_counted.iter().filter(|part| part.reason() == Reason::Waiting);
        for part in waiting {
            let NotCounted::Detail(place, _) = *part else { continue };
            let element = Element::Detail(place);
            let before = earlier.losses.iter().find(|loss| loss.element == element);
            if let Some(&loss) = before {
                filled.losses.push(loss);
                filled.transmission += loss.coefficient;
            }
        }
        let total = filled.total();
        for loss in &mut filled.losses {
            loss.power = loss.coefficient * self.temperature_difference;
            loss.share = loss.coefficient / total;
        }
        filled.design_load = total * self.temperature_difference;
        filled
    }

    /// H_T + H_V, W/K.
    pub fn total(&self) -> HeatTransferCoefficient {
        self.transmission + self.air
    }
}
