//! The plain areas between frame members: layers and thermal transmittance.

use super::{
    HeatFlow, OUTSIDE_SURFACE_RESISTANCE, air_layer_resistance, corrugation, counted_waves,
    foam_material, lining_material,
};
use crate::design::{CheckedDesign, FoamMeasure, Surface};
use crate::freight_box::Corrugation;
use crate::material::{PLYWOOD, STEEL};
use crate::units::{Length, ThermalConductivity, ThermalResistance, ThermalTransmittance};

/// What a layer is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum LayerKind {
    /// The box's sheet.
    SteelSheet,
    /// Sprayed foam.
    Foam,
    /// Still air.
    AirGap,
    /// Lining board.
    Lining,
    /// The box's plywood floor.
    FloorPlywood,
    /// Foam board over the floor.
    FloorFoam,
    /// Deck over the floor's foam board.
    FloorDeck,
}

impl LayerKind {
    /// Stable name.
    pub const fn key(self) -> &'static str {
        match self {
            Self::SteelSheet => "steel_sheet",
            Self::Foam => "foam",
            Self::AirGap => "air_gap",
            Self::Lining => "lining",
            Self::FloorPlywood => "floor_plywood",
            Self::FloorFoam => "floor_foam",
            Self::FloorDeck => "floor_deck",
        }
    }
}

/// One layer of a plain area.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Layer {
    /// What it is.
    pub kind: LayerKind,
    /// How thick, over the inner crests for foam.
    pub thickness: Length,
    /// R = d / λ, or the air layer's resistance.
    pub resistance: ThermalResistance,
}

fn solid(kind: LayerKind, thickness: Length, conductivity: ThermalConductivity) -> Layer {
    Layer { kind, thickness, resistance: thickness / conductivity }
}

/// The layers from outdoors to the room, those of no thickness left out.
pub fn layers(checked: &CheckedDesign, surface: Surface) -> Vec<Layer> {
    let design = checked.design();
    let freight_box = checked.freight_box();
    let stack = design.stack(surface);
    let foam = foam_material(design).conductivity;
    let mut layers = Vec::new();
    if surface == Surface::Floor {
        layers.extend([
            solid(LayerKind::Foam, design.floor_foam_between, foam),
            solid(LayerKind::FloorPlywood, freight_box.floor_plywood, PLYWOOD.conductivity),
            solid(LayerKind::FloorFoam, design.floor_foam_over, foam),
            solid(LayerKind::FloorDeck, stack.lining, PLYWOOD.conductivity),
        ]);
    } else {
        let sheet = corrugation(checked, surface)
            .map_or(Length::mm(2.0), |corrugation| corrugation.thickness);
        layers.push(solid(LayerKind::SteelSheet, sheet, STEEL.conductivity));
        layers.push(solid(LayerKind::Foam, design.stack(surface).foam, foam));
        let gap = stack.air_gap();
        if gap > Length::ZERO {
            let resistance = air_layer_resistance(gap, HeatFlow::through(surface));
            layers.push(Layer { kind: LayerKind::AirGap, thickness: gap, resistance });
        }
        layers.push(solid(LayerKind::Lining, stack.lining, lining_material(design).conductivity));
    }
    layers.retain(|layer| layer.thickness > Length::ZERO);
    layers
}

/// Total thermal resistance of plane layers with their surfaces.
///
/// R_tot = R_si + Σ R + R_se (ISO 6946:2017, 6.7.1.1).
pub fn series_resistance(
    inside_surface: ThermalResistance,
    layers: impl IntoIterator<Item = ThermalResistance>,
    outside_surface: ThermalResistance,
) -> ThermalResistance {
    inside_surface + layers.into_iter().sum() + outside_surface
}

/// Thermal transmittance U of a plain area, frame members apart.
///
/// Flat reckoning: U = 1 / R_tot. Flush over the ribs: the troughs add foam that varies along
/// the wave; U is the mean of 1 / (R_tot + t/λ) over the wave, t the trough's depth, which on a
/// slope integrates to ln(1 + R₁/R₀) / R₁ as for tapered layers (ISO 6946:2017 annex E; the slopes are
/// steeper than the 5 % it is meant for, so heat that runs sideways along the steel is left out).
/// Following the steel: the foam's area grows with the developed length, so its resistance is
/// divided by that ratio. What a solved wave loses more than either is a detail of its own
/// ([`super::ThermalBridge::Waves`]).
pub fn transmittance(
    checked: &CheckedDesign,
    surface: Surface,
    layers: &[Layer],
) -> ThermalTransmittance {
    let direction = HeatFlow::through(surface);
    let total = series_resistance(
        direction.inside_surface_resistance(),
        layers.iter().map(|layer| layer.resistance),
        OUTSIDE_SURFACE_RESISTANCE,
    );
    let design = checked.design();
    match (design.foam_measure, counted_waves(checked, surface)) {
        (FoamMeasure::Flat, _) | (_, None) => total.transmittance(),
        (FoamMeasure::FollowingTheSteel, Some(sheet)) => {
            let foam: ThermalResistance = layers
                .iter()
                .filter(|layer| layer.kind == LayerKind::Foam)
                .map(|layer| layer.resistance)
                .sum();
            (total - foam + foam / sheet.developed_ratio()).transmittance()
        }
        (FoamMeasure::FlushOverTheRibs, Some(sheet)) => {
            over_filled_troughs(total, &sheet, design.foam_conductivity)
        }
    }
}

/// The mean transmittance over one wave whose troughs are filled.
fn over_filled_troughs(
    over_crest: ThermalResistance,
    sheet: &Corrugation,
    foam: ThermalConductivity,
) -> ThermalTransmittance {
    let trough = sheet.depth / foam;
    let crest = over_crest.transmittance();
    let bottom = (over_crest + trough).transmittance();
    let slope = ThermalTransmittance::new(libm::log1p(trough / over_crest) / trough.value());
    let share = |width: Length| width / sheet.pitch();
    crest * share(sheet.inner_flat)
        + bottom * share(sheet.outer_flat)
        + slope * share(sheet.slope * 2.0)
}
