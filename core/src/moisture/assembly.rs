//! The layers of a build-up as heat and vapour see them, from the inside out.

use super::error::{MoistureError, MoistureQuantity};
use super::vapour_control::STILL_AIR_PERMEABILITY;
use crate::bounds::BoundedQuantity;
use crate::material::Material;
use crate::psychro::PsychroError;
use crate::psychro::iso_13788::saturation_pressure;
use crate::units::{
    Length, Pressure, Temperature, ThermalResistance, VapourPermeance, VapourResistanceFactor,
};

/// Equivalent air thickness of an unventilated air layer of any thickness, 0.01 m
/// (ISO 13788:2012, clause 4, from memory): the air in it moves.
pub const AIR_LAYER_EQUIVALENT_THICKNESS: Length = Length::new(0.01);

/// Thermal resistance above which a layer is divided for the balance, 0.25 m²·K/W
/// (ISO 13788:2012, clause 6, from memory).
const DIVIDED_ABOVE: ThermalResistance = ThermalResistance::new(0.25);

/// One layer.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct VapourLayer {
    /// Thermal resistance R.
    pub resistance: ThermalResistance,
    /// Equivalent air thickness s_d = µ·d: still air that resists vapour as much.
    pub equivalent_air_thickness: Length,
}

impl VapourLayer {
    /// A layer with R and s_d = µ·d.
    pub fn new(
        thickness: Length,
        resistance: ThermalResistance,
        factor: VapourResistanceFactor,
    ) -> Self {
        Self { resistance, equivalent_air_thickness: thickness * factor.value() }
    }

    /// A layer of a material, R = d / λ.
    pub fn of_material(thickness: Length, material: &Material) -> Self {
        let resistance = thickness / material.conductivity;
        Self::new(thickness, resistance, material.vapour_resistance_factor)
    }

    /// Permeance W = δ₀ / s_d, none of a tight layer.
    pub fn permeance(&self) -> VapourPermeance {
        STILL_AIR_PERMEABILITY / self.equivalent_air_thickness
    }

    fn is_tight(&self) -> bool {
        self.equivalent_air_thickness.value() == f64::INFINITY
    }
}

/// A build-up: layers from inside to outside between two surfaces. Between the layers lie its
/// interfaces, where vapour may condense.
#[derive(Clone, Debug, PartialEq)]
pub struct Assembly {
    inside_surface: ThermalResistance,
    layers: Vec<VapourLayer>,
    outside_surface: ThermalResistance,
}

impl Assembly {
    /// A build-up. The outermost layer may be tight to vapour, as steel is (s_d without end).
    ///
    /// Range: surface and layer resistances from 0 to 1000 m²·K/W and more than 0 together, s_d
    /// from 1 µm to 100 km.
    ///
    /// # Errors
    /// Refuses a value out of range, a tight layer that is not outermost, or no layers.
    pub fn new(
        inside_surface: ThermalResistance,
        layers: Vec<VapourLayer>,
        outside_surface: ThermalResistance,
    ) -> Result<Self, MoistureError> {
        let Some(outermost) = layers.len().checked_sub(1) else {
            return Err(MoistureError::NoLayers);
        };
        let resistances = layers.iter().map(|layer| layer.resistance);
        for resistance in resistances.chain([inside_surface, outside_surface]) {
            MoistureQuantity::ThermalResistance.check(resistance.value())?;
        }
        for (index, layer) in layers.iter().enumerate() {
            if layer.is_tight() && index == outermost {
                continue;
            }
            if layer.is_tight() {
                return Err(MoistureError::TightLayerInside { layer: index });
            }
            let thickness = layer.equivalent_air_thickness.value();
            MoistureQuantity::EquivalentAirThickness.check(thickness)?;
        }
        let assembly = Self { inside_surface, layers, outside_surface };
        MoistureQuantity::TotalResistance.check(assembly.total_resistance().value())?;
        Ok(assembly)
    }

    /// The same build-up with every layer of more than 0.25 m²·K/W divided into equal parts of no
    /// more, so that water condensing within a layer is found too.
    pub fn divided(&self) -> Self {
        let layers = self
            .layers
            .iter()
            .flat_map(|layer| {
                let parts = (layer.resistance / DIVIDED_ABOVE).ceil().max(1.0);
                let part = VapourLayer {
                    resistance: layer.resistance / parts,
                    equivalent_air_thickness: layer.equivalent_air_thickness / parts,
                };
                core::iter::repeat_n(part, parts as usize)
            })
            .collect();
        Self { layers, ..self.clone() }
    }

    /// Its layers, from the inside.
    pub fn layers(&self) -> &[VapourLayer] {
        &self.layers
    }

    /// How many interfaces lie between the layers.
    pub fn interfaces(&self) -> usize {
        self.layers.len() - 1
    }

    /// Total thermal resistance R_tot.
    pub fn total_resistance(&self) -> ThermalResistance {
        let layers: ThermalResistance = self.layers.iter().map(|layer| layer.resistance).sum();
        self.inside_surface + layers + self.outside_surface
    }

    /// Temperature at every interface, from the inside,
    /// θ = θ_i − (R_si + Σ R)·(θ_i − θ_e) / R_tot (ISO 13788:2012, clause 6).
    pub fn interface_temperatures(
        &self,
        indoor: Temperature,
        outdoor: Temperature,
    ) -> Vec<Temperature> {
        let per_resistance = (indoor - outdoor) / self.total_resistance().value();
        self.layers[..self.interfaces()]
            .iter()
            .scan(self.inside_surface, |passed, layer| {
                *passed += layer.resistance;
                Some(indoor - per_resistance * passed.value())
            })
            .collect()
    }

    /// Saturation pressure at every interface, from the inside.
    ///
    /// # Errors
    /// Refuses a temperature out of range.
    pub fn interface_saturations(
        &self,
        indoor: Temperature,
        outdoor: Temperature,
    ) -> Result<Vec<Pressure>, PsychroError> {
        self.interface_temperatures(indoor, outdoor).into_iter().map(saturation_pressure).collect()
    }
}
