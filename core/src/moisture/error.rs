//! Refusals: what about a surface, a source or a build-up was out of range.

use core::ops::{Bound, RangeBounds};

use crate::psychro::{AllowedRange, PsychroError};
use crate::ventilation::VentilationError;

/// What an input means; the unit is that of the value in a refusal.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum MoistureQuantity {
    /// Outdoor temperature, °C.
    OutdoorTemperature,
    /// Convective heat-transfer coefficient, W/(m²·K).
    SurfaceCoefficient,
    /// Rate of moisture, kg/s.
    MoistureFlow,
    /// How long something lasts, s.
    Duration,
    /// How many persons, loads, plants, kilograms of animal and the like.
    Count,
    /// Thermal resistance of a layer or surface, m²·K/W.
    ThermalResistance,
    /// Thickness of still air that resists vapour as much as a layer does, m.
    EquivalentAirThickness,
    /// Water vapour permeability, kg/(m·s·Pa).
    VapourPermeability,
    /// Water vapour permeance, kg/(m²·s·Pa).
    VapourPermeance,
    /// Partial pressure of water vapour, Pa.
    VapourPressure,
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
    OutOfRange {
        /// The input refused.
        quantity: MoistureQuantity,
        /// Its value, in the unit of the quantity.
        given: f64,
        /// The values allowed.
        allowed: AllowedRange,
    },
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

/// Passes a value inside its range, refuses one outside it; a NaN is inside no range.
pub(super) fn check(
    quantity: MoistureQuantity,
    given: f64,
    allowed: AllowedRange,
) -> Result<f64, MoistureError> {
    if allowed.contains(&given) {
        Ok(given)
    } else {
        Err(MoistureError::OutOfRange { quantity, given, allowed })
    }
}

/// Passes a value above nothing and up to a highest.
pub(super) fn check_positive(
    quantity: MoistureQuantity,
    given: f64,
    highest: f64,
) -> Result<f64, MoistureError> {
    check(quantity, given, (Bound::Excluded(0.0), Bound::Included(highest)))
}

/// Passes a value from nothing up to a highest.
pub(super) fn check_not_negative(
    quantity: MoistureQuantity,
    given: f64,
    highest: f64,
) -> Result<f64, MoistureError> {
    check(quantity, given, (Bound::Included(0.0), Bound::Included(highest)))
}
