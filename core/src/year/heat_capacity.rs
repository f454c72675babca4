//! What warms and cools with the room: everything inside the foam.

use crate::design::{Design, Surface};
use crate::envelope::LayerKind;
use crate::envelope::{Amount, Envelope, ThermalBridge, lining_material};
use crate::heat_loss::{AIR_DENSITY, AIR_HEAT_CAPACITY};
use crate::material::{PLYWOOD, STEEL};
use crate::room::Room;
use crate::units::{Area, HeatCapacity, HeatTransferCoefficient, Volume};

/// Heat capacity inside the foam and the area it is spread over.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct InsideMass {
    /// C_m: lining, floor, studs and joists, air and contents.
    pub capacity: HeatCapacity,
    /// Effective mass area A_m = C²/Σ A·κ² over lining and floor (ISO 13790:2008, 12.2.2).
    pub area: Area,
    /// Conductance from the boards' faces to their middles, Σ A/(½·Σ d/λ).
    pub to_surface: HeatTransferCoefficient,
}

impl InsideMass {
    /// Of a design. Boards count whole up to the first foam layer (ISO 13786:2007, annex A): the lining, and
    /// of the floor what lies over its foam. Studs and joists count as the room does; foam and the
    /// steel skin do not.
    pub fn of(design: &Design, room: &Room, envelope: &Envelope, contents: HeatCapacity) -> Self {
        let lining = lining_material(design);
        let (mut sum, mut squares, mut to_surface) = (0.0, 0.0, 0.0);
        for plain in &envelope.plain {
            let mut resistance = 0.0;
            let per_area: f64 = plain
                .layers
                .iter()
                .rev()
                .take_while(|layer| !matches!(layer.kind, LayerKind::Foam | LayerKind::FloorFoam))
                .filter_map(|layer| {
                    let board = match layer.kind {
                        LayerKind::Lining => lining,
                        LayerKind::FloorPlywood | LayerKind::FloorDeck => PLYWOOD,
                        _ => return None,
                    };
                    resistance += layer.resistance.value();
                    let square_metre = board.density.value() * board.specific_heat_capacity.value();
                    Some(square_metre * layer.thickness.value())
                })
                .sum();
            sum += plain.area.value() * per_area;
            squares += plain.area.value() * per_area * per_area;
            to_surface += plain.area.value() / (0.5 * resistance);
        }
        let frame = frame_steel(design, envelope) * STEEL.density * STEEL.specific_heat_capacity;
        let air = room.volume * AIR_DENSITY * AIR_HEAT_CAPACITY;
        Self {
            capacity: HeatCapacity::new(sum) + frame + air + contents,
            area: Area::new(sum * sum / squares),
            to_surface: HeatTransferCoefficient::new(to_surface),
        }
    }
}

/// Steel of studs and joists: web and two flanges, as metres go.
fn frame_steel(design: &Design, envelope: &Envelope) -> Volume {
    envelope
        .thermal_bridges
        .iter()
        .filter_map(|&(place, amount)| {
            let (ThermalBridge::FrameLine(surface), Amount::Metres(length)) = (place, amount)
            else {
                return None;
            };
            let (web, sheet) = if surface == Surface::Ceiling {
                (design.joist_depth, design.joist_steel_thickness)
            } else {
                (design.stud_depth, design.stud_steel_thickness)
            };
            Some((web + design.flange_width * 2.0) * sheet * length)
        })
        .sum()
}
