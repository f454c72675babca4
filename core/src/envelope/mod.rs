//! What stands where: the plain areas with their layers, and how many metres or pieces of
//! each cold detail there are.

mod plain;
mod resistance;
mod thermal_bridge;

pub use plain::*;
pub use resistance::*;
pub use thermal_bridge::*;

use crate::design::{CheckedDesign, Design, FoamMeasure, PersonnelDoor, Surface, Wall};
use crate::freight_box::{Corrugation, Dimensions};
use crate::material::{CLOSED_CELL_FOAM, GYPSUM_BOARD, Material, PLYWOOD};
use crate::units::{Area, Length, ThermalConductivity, ThermalTransmittance};

/// A plain area: one surface, openings taken off, with its layers.
#[derive(Clone, Debug, PartialEq)]
pub struct PlainArea {
    /// Which surface.
    pub surface: Surface,
    /// Between the finished faces, openings taken off.
    pub area: Area,
    /// From the steel to the room.
    pub layers: Vec<Layer>,
    /// Thermal transmittance U between the frame members.
    pub transmittance: ThermalTransmittance,
}

/// Openings of one kind.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Openings {
    /// All together.
    pub area: Area,
    /// Thermal transmittance U, frame included.
    pub transmittance: ThermalTransmittance,
}

/// The whole envelope.
#[derive(Clone, Debug, PartialEq)]
pub struct Envelope {
    /// Side walls, front end, door end, ceiling, floor.
    pub plain: Vec<PlainArea>,
    /// The personnel door; no area where there is none.
    pub personnel_door: Openings,
    /// The windows; no area where there are none.
    pub windows: Openings,
    /// Every place where heat finds a way past the foam, with its metres or pieces.
    pub thermal_bridges: Vec<(ThermalBridge, Amount)>,
}

/// The board that lines the walls and ceiling.
pub fn lining_material(design: &Design) -> Material {
    match design.lining_material {
        crate::design::LiningMaterial::Plywood => PLYWOOD,
        crate::design::LiningMaterial::GypsumBoard => GYPSUM_BOARD,
    }
}

/// The sprayed foam, with the chosen conductivity.
pub fn foam_material(design: &Design) -> Material {
    Material { conductivity: design.foam_conductivity, ..CLOSED_CELL_FOAM }
}

/// The sheet behind a surface; the floor and the cargo doors are taken as flat.
pub fn corrugation(checked: &CheckedDesign, surface: Surface) -> Option<Corrugation> {
    let freight_box = checked.freight_box();
    match surface {
        Surface::SideWall => Some(freight_box.side_corrugation),
        Surface::FrontEnd => Some(freight_box.front_corrugation),
        Surface::Ceiling => Some(freight_box.roof_corrugation),
        Surface::DoorEnd | Surface::Floor => None,
    }
}

/// The sheet behind a surface where its waves count: where the foam is not measured as if the steel
/// were flat.
pub fn counted_waves(checked: &CheckedDesign, surface: Surface) -> Option<Corrugation> {
    let sheet = corrugation(checked, surface);
    sheet.filter(|_| checked.design().foam_measure != FoamMeasure::Flat)
}

/// Members on a run: one at each end and one at every full spacing between.
///
/// n = ⌊run / spacing⌋ + 2. Common practice, no source: sheets are laid from one end and the last
/// bay is the short one.
pub fn members_on(run: Length, spacing: Length) -> u32 {
    (run / spacing).floor() as u32 + 2
}

impl Envelope {
    /// The envelope of a design, in finished inside dimensions (ISO 13789, internal dimensions).
    pub fn of(checked: &CheckedDesign, clear: &Dimensions) -> Self {
        let design = checked.design();
        let door_area = if design.personnel_door == PersonnelDoor::None {
            Area::ZERO
        } else {
            design.door_width * design.door_height
        };
        let window_area = design.window_width * design.window_height * design.window_count;
        let openings_in = |wall: Wall| {
            let door =
                if design.personnel_door.wall() == Some(wall) { door_area } else { Area::ZERO };
            let windows = if design.window_wall == wall { window_area } else { Area::ZERO };
            door + windows
        };
        let end = clear.width * clear.height;
        let gross = |surface| match surface {
            Surface::SideWall => {
                clear.length * clear.height * 2.0
                    - openings_in(Wall::RightSide)
                    - openings_in(Wall::LeftSide)
            }
            Surface::FrontEnd => end - openings_in(Wall::FrontEnd),
            Surface::DoorEnd => end - openings_in(Wall::DoorEnd),
            Surface::Ceiling | Surface::Floor => clear.floor_area(),
        };
        let plain: Vec<PlainArea> = Surface::ALL
            .into_iter()
            .map(|surface| {
                let layers = layers(checked, surface);
                let transmittance = transmittance(checked, surface, &layers);
                PlainArea { surface, area: gross(surface), layers, transmittance }
            })
            .collect();
        let waves = plain.iter().filter_map(|plain| {
            let metres = plain.area / counted_waves(checked, plain.surface)?.pitch();
            Some((ThermalBridge::Waves(plain.surface), Amount::Metres(metres)))
        });
        let thermal_bridges =
            thermal_bridges(design, clear, checked.freight_box().floor_member.spacing, waves);
        Self {
            plain,
            personnel_door: Openings { area: door_area, transmittance: design.door_transmittance },
            windows: Openings { area: window_area, transmittance: design.window_transmittance },
            thermal_bridges,
        }
    }
}

/// The conductivity a still air layer behaves as, λ = d / R, W/(m·K).
pub fn air_layer_conductivity(thickness: Length, direction: HeatFlow) -> ThermalConductivity {
    thickness / air_layer_resistance(thickness, direction)
}
