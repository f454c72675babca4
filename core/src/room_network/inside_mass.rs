//! What warms and cools with the room: everything inside the foam.

use crate::design::{Design, Surface};
use crate::envelope::LayerKind;
use crate::envelope::{Amount, Envelope, ThermalBridge, lining_material};
use crate::heat_loss::{AIR_DENSITY, AIR_HEAT_CAPACITY};
use crate::material::{PLYWOOD, REINFORCED_PLASTIC, STEEL};
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
                        LayerKind::Panel => REINFORCED_PLASTIC,
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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::Length;

    /// A square metre of 2.3 mm panel holds 1500 kg/m³ · 0.0023 m · 1200 J/(kg·K) = 4140 J/K: so much more for each
    /// square metre of walls and ceiling, none for the floor, less 1.2 · 1006 J/K for each cubic metre of room it takes,
    /// and for the steel of studs and joists that are no shorter than they were by more than a thousandth.
    #[test]
    fn a_panel_warms_and_cools_with_the_room() {
        let of = |panel: f64| {
            let design = Design { panel_thickness: Length::mm(panel), ..Design::default() };
            let checked = design.check().unwrap();
            let room = Room::of(&checked);
            let envelope = Envelope::of(&checked, &room.clear);
            let mass = InsideMass::of(&design, &room, &envelope, HeatCapacity::ZERO);
            let lined = envelope.plain.iter().filter(|plain| plain.surface != Surface::Floor);
            (mass.capacity.value(), lined.map(|plain| plain.area.value()).sum::<f64>())
        };
        let ((bare, _), (with_panel, lined)) = (of(0.0), of(2.3));
        let panel = 4140.0 * lined;
        let added = with_panel - bare;
        assert!(added < panel && added > panel - 0.004 * bare, "{added} of {panel}");
    }
}
