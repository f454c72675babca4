//! How long a build-up takes to follow the air on either side of it.

use crate::design::Design;
use crate::envelope::{
    HeatFlow, Layer, LayerKind, OUTSIDE_SURFACE_RESISTANCE, PlainArea, foam_material,
    lining_material,
};
use crate::material::{Material, PLYWOOD, STEEL};
use crate::units::{ThermalResistance, Time};

/// How many time constants outdoors, room and sun must have stood before a place is read.
///
/// After three, exp(−3) = 5 % of an earlier step is left. Common practice, no source: wait as long
/// as the build-up takes to follow.
pub const SETTLING_TIME_CONSTANTS: f64 = 3.0;

/// A layer that resists and stores heat.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct StoringLayer {
    /// Thermal resistance R, m²·K/W; 0 of a sheet that is as warm on both sides.
    pub resistance: ThermalResistance,
    /// Heat capacity of a square metre, ρ·c·d, J/(m²·K); 0 of still air.
    pub capacity_per_area: f64,
}

impl StoringLayer {
    /// A layer of an envelope, of a material.
    pub fn of(layer: &Layer, material: &Material) -> Self {
        let per_volume = material.density.value() * material.specific_heat_capacity.value();
        Self {
            resistance: layer.resistance,
            capacity_per_area: per_volume * layer.thickness.value(),
        }
    }
}

/// Time constant of a build-up between two airs, the layers in order from either side, s.
///
/// τ = Σ c·(A·B + (A + B)·R/2 + R²/6) / R_tot over the layers, c the capacity and R the resistance of
/// a layer, A and B the resistances from its two faces to the airs beyond them: the sum of all time
/// constants of the build-up, so no less than the greatest (open-circuit time constants, ∫ c(x)·
/// R(x)·(R_tot − R(x)) / R_tot dx). For an outdoor temperature that changes by r an hour and has done
/// so for long, the inside surface lags (1 − f)·r·τ behind what it would be, exactly where no layer
/// stores heat within it; behind a changing room it lags less than f·r·τ.
///
/// One-dimensional: a post, casting or other body of steel takes longer than the wall beside it, and
/// its time constant is for whoever reads it to state. Range: resistances and capacities of 0 or more,
/// R_tot above 0; otherwise the result is not finite or below 0, and [`super::PlaceReadings`] refuses it.
pub fn time_constant(
    inside_surface: ThermalResistance,
    layers: &[StoringLayer],
    outside_surface: ThermalResistance,
) -> Time {
    let within: ThermalResistance = layers.iter().map(|layer| layer.resistance).sum();
    let total = (inside_surface + within + outside_surface).value();
    let mut before = inside_surface.value();
    let mut sum = 0.0;
    for layer in layers {
        let resistance = layer.resistance.value();
        let after = total - before - resistance;
        let mean_product =
            before * after + (before + after) * resistance / 2.0 + resistance * resistance / 6.0;
        sum += layer.capacity_per_area * mean_product / total;
        before += resistance;
    }
    Time::new(sum)
}

/// Time constant of a plain area with the surface resistances of ISO 6946, by [`time_constant`].
/// Still air stores nothing.
pub fn plain_time_constant(design: &Design, plain: &PlainArea) -> Time {
    let storing = |layer: &Layer| {
        let material = match layer.kind {
            LayerKind::AirGap => {
                return StoringLayer { resistance: layer.resistance, capacity_per_area: 0.0 };
            }
            LayerKind::SteelSheet => STEEL,
            LayerKind::Foam | LayerKind::FloorFoam => foam_material(design),
            LayerKind::Lining => lining_material(design),
            LayerKind::FloorPlywood | LayerKind::FloorDeck => PLYWOOD,
        };
        StoringLayer::of(layer, &material)
    };
    let layers: Vec<StoringLayer> = plain.layers.iter().rev().map(storing).collect();
    let inside = HeatFlow::through(plain.surface).inside_surface_resistance();
    time_constant(inside, &layers, OUTSIDE_SURFACE_RESISTANCE)
}
