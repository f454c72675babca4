//! Refusals: what about a surface, a source or a build-up was out of range.

use core::fmt;

use super::vapour_control::STILL_AIR_PERMEABILITY;
use crate::bounds::{Bounds, OutOfRange, bounded_quantities};
use crate::psychro::PsychroError;
use crate::ventilation::VentilationError;

bounded_quantities! {
    /// What an input means; the unit is that of the value in a refusal.
    MoistureQuantity {
        /// Outdoor temperature, °C.
        OutdoorTemperature: "outdoor_temperature", "°C", Bounds::between(-60.0, 100.0);
        /// Convective heat-transfer coefficient, W/(m²·K).
        SurfaceCoefficient: "surface_coefficient", "W/(m²·K)", Bounds::above(0.0, 30.0);
        /// Rate at which moisture is given off, kg/s.
        MoistureSource: "moisture_source", "kg/s", Bounds::between(0.0, 1.0);
        /// Rate of moisture either way, kg/s.
        MoistureFlow: "moisture_flow", "kg/s", Bounds::between(-1.0, 1.0);
        /// Rate at which water condenses, kg/s.
        CondensingRate: "condensing_rate", "kg/s", Bounds::between(0.0, 1.0);
        /// Part of a day that a source is there, s.
        ActiveTime: "active_time", "s", Bounds::between(60.0, 86_400.0);
        /// How long a cold spell lasts, s: to 366 days.
        SpellLength: "spell_length", "s", Bounds::between(0.0, 366.0 * 86_400.0);
        /// How many persons, loads, plants, kilograms of animal and the like.
        Count: "count", "", Bounds::between(0.0, 10_000.0);
        /// Thermal resistance of a layer or surface, m²·K/W.
        ThermalResistance: "thermal_resistance", "m²·K/W", Bounds::between(0.0, 1000.0);
        /// Thermal resistance of all layers and surfaces together, m²·K/W.
        TotalResistance: "total_resistance", "m²·K/W", Bounds::strictly_between(0.0, f64::INFINITY);
        /// Thickness of still air that resists vapour as much as a layer does, m.
        EquivalentAirThickness: "equivalent_air_thickness", "m", Bounds::between(1e-6, 1e5);
        /// Water vapour permeability, kg/(m·s·Pa): at most that of still air.
        VapourPermeability: "vapour_permeability", "kg/(m·s·Pa)",
            Bounds::above(0.0, STILL_AIR_PERMEABILITY.value());
        /// Water vapour permeance, kg/(m²·s·Pa).
        VapourPermeance: "vapour_permeance", "kg/(m²·s·Pa)", Bounds::between(1e-18, 1e-6);
        /// Partial pressure of water vapour, Pa.
        VapourPressure: "vapour_pressure", "Pa", Bounds::between(0.0, 110_000.0);
    }
}

/// Why an answer about damp is refused.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub enum MoistureError {
    /// A state of air out of the range of its formula.
    Air(PsychroError),
    /// A flow of air, or what it carries, out of range.
    Flow(VentilationError),
    /// An input outside the range its formula is stated for, or not a number.
    OutOfRange(OutOfRange<MoistureQuantity>),
    /// A build-up needs a layer at least.
    NoLayers,
    /// Only the outermost layer may be tight to vapour; another needs a thickness of still air,
    /// however great.
    TightLayerInside {
        /// Index of the layer, from the inside.
        layer: usize,
    },
    /// No interface of the build-up has that index.
    NoSuchInterface {
        /// The index asked for.
        index: usize,
    },
    /// The highest humidity class has no upper limit: its humidity must be stated.
    OpenEndedClass,
    /// In no month is it colder outdoors than in the room.
    NoHeatingMonth,
}

impl From<PsychroError> for MoistureError {
    fn from(error: PsychroError) -> Self {
        Self::Air(error)
    }
}

impl From<VentilationError> for MoistureError {
    fn from(error: VentilationError) -> Self {
        Self::Flow(error)
    }
}

impl From<OutOfRange<MoistureQuantity>> for MoistureError {
    fn from(refused: OutOfRange<MoistureQuantity>) -> Self {
        Self::OutOfRange(refused)
    }
}

impl MoistureError {
    /// Stable name of the refusal.
    pub const fn code(&self) -> &'static str {
        match self {
            Self::Air(refused) => refused.code(),
            Self::Flow(refused) => refused.code(),
            Self::OutOfRange(refused) => refused.code(),
            Self::NoLayers => "no_layers",
            Self::TightLayerInside { .. } => "tight_layer_inside",
            Self::NoSuchInterface { .. } => "no_such_interface",
            Self::OpenEndedClass => "open_ended_class",
            Self::NoHeatingMonth => "no_heating_month",
        }
    }
}

impl fmt::Display for MoistureError {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        match *self {
            Self::Air(refused) => refused.fmt(out),
            Self::Flow(refused) => refused.fmt(out),
            Self::OutOfRange(refused) => refused.fmt(out),
            Self::NoLayers => out.write_str("a build-up needs 1 layer or more, 0 given"),
            Self::TightLayerInside { layer } => {
                write!(out, "layer {layer} is tight to vapour, which only the outermost may be")
            }
            Self::NoSuchInterface { index } => {
                write!(out, "the build-up has no interface of index {index}")
            }
            Self::OpenEndedClass => {
                out.write_str("the highest humidity class has no upper limit: state the humidity")
            }
            Self::NoHeatingMonth => {
                out.write_str("in no month is it colder outdoors than in the room")
            }
        }
    }
}

impl core::error::Error for MoistureError {
    fn source(&self) -> Option<&(dyn core::error::Error + 'static)> {
        match self {
            Self::Air(refused) => Some(refused),
            Self::Flow(refused) => Some(refused),
            Self::OutOfRange(refused) => Some(refused),
            _ => None,
        }
    }
}
