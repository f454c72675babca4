//! How the opaque heat loss is spread over the faces of the box, for sun and sky.

use crate::climate::BoxFace;
use crate::design::{Design, Surface, Wall};
use crate::envelope::{End, Opening, ThermalBridge, surface_of};
use crate::heat_loss::{Element, HeatLoss};
use crate::units::HeatTransferCoefficient;

/// H of the opaque parts behind each face of [`BoxFace::ALL`], of the floor, and of the openings.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct EnvelopeHeat {
    /// By face, W/K.
    pub(super) faces: [f64; 5],
    /// Floor, W/K.
    pub(super) floor: f64,
    /// Windows, W/K.
    pub(super) windows: f64,
    /// Personnel door, W/K.
    pub(super) door: f64,
}

/// Where an element's steel lies: shares of roof, front end, door end, left side, right side, floor.
type Shares = [f64; 6];

const ROOF: Shares = [1.0, 0.0, 0.0, 0.0, 0.0, 0.0];
const FRONT: Shares = [0.0, 1.0, 0.0, 0.0, 0.0, 0.0];
const DOORS: Shares = [0.0, 0.0, 1.0, 0.0, 0.0, 0.0];
const SIDES: Shares = [0.0, 0.0, 0.0, 0.5, 0.5, 0.0];
const FLOOR: Shares = [0.0, 0.0, 0.0, 0.0, 0.0, 1.0];

const fn of_surface(surface: Surface) -> Shares {
    match surface {
        Surface::SideWall => SIDES,
        Surface::FrontEnd => FRONT,
        Surface::DoorEnd => DOORS,
        Surface::Ceiling => ROOF,
        Surface::Floor => FLOOR,
    }
}

const fn of_end(end: End) -> Shares {
    match end {
        End::Front => FRONT,
        End::Door => DOORS,
    }
}

/// An edge's steel faces both ways: half of it each.
fn halves(one: Shares, other: Shares) -> Shares {
    core::array::from_fn(|n| 0.5 * (one[n] + other[n]))
}

fn of_place(design: &Design, place: ThermalBridge) -> Shares {
    match place {
        ThermalBridge::FrameLine(surface) | ThermalBridge::Waves(surface) => of_surface(surface),
        ThermalBridge::RoofEdge(wall) => halves(of_surface(wall), ROOF),
        ThermalBridge::FloorEdge(wall) => halves(of_surface(wall), FLOOR),
        ThermalBridge::CornerPost(end) => halves(of_end(end), SIDES),
        ThermalBridge::StudHead | ThermalBridge::TopCasting(_) => ROOF,
        ThermalBridge::FloorMember | ThermalBridge::BottomCasting(_) => FLOOR,
        ThermalBridge::OpeningFrame(opening) => {
            let wall = match opening {
                Opening::PersonnelDoor => design.personnel_door.wall().unwrap_or_default(),
                Opening::Window => design.window_wall,
            };
            of_surface(surface_of(wall))
        }
        ThermalBridge::DamperSleeve | ThermalBridge::ExhaustSleeve => SIDES,
    }
}

/// The face that a wall's openings look out of.
pub(super) const fn face_of(wall: Wall) -> BoxFace {
    match wall {
        Wall::RightSide => BoxFace::RightSide,
        Wall::LeftSide => BoxFace::LeftSide,
        Wall::FrontEnd => BoxFace::FrontEnd,
        Wall::DoorEnd => BoxFace::DoorEnd,
    }
}

impl EnvelopeHeat {
    pub(super) fn of(design: &Design, heat_loss: &HeatLoss) -> Self {
        let mut shared = [0.0; 6];
        let mut windows = HeatTransferCoefficient::ZERO;
        let mut door = HeatTransferCoefficient::ZERO;
        for loss in &heat_loss.losses {
            let shares = match loss.element {
                Element::Plain(surface) => of_surface(surface),
                Element::Detail(place) => of_place(design, place),
                Element::PersonnelDoor => {
                    door += loss.coefficient;
                    continue;
                }
                Element::Windows => {
                    windows += loss.coefficient;
                    continue;
                }
                Element::Air => continue,
            };
            for (sum, share) in shared.iter_mut().zip(shares) {
                *sum += share * loss.coefficient.value();
            }
        }
        let [roof, front, doors, left, right, floor] = shared;
        Self {
            faces: [roof, front, doors, left, right],
            floor,
            windows: windows.value(),
            door: door.value(),
        }
    }

    /// Everything opaque, W/K.
    pub(super) fn opaque(&self) -> f64 {
        self.faces.iter().sum::<f64>() + self.floor
    }
}
