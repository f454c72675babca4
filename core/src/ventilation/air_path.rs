//! A way through the wall: elements one after another, open or stuck shut.

use super::error::VentilationError;
use super::flow_element::FlowElement;
use crate::units::{CloggedShare, Density, Pressure, Speed, VolumeFlow};

/// Elements that the same air passes one after another.
#[derive(Clone, Debug, PartialEq)]
pub struct AirPath {
    elements: Vec<FlowElement>,
    shut: bool,
}

impl AirPath {
    /// An open path of one element or more, in any order.
    ///
    /// # Errors
    /// Refuses a path of none.
    pub fn new(elements: Vec<FlowElement>) -> Result<Self, VentilationError> {
        if elements.is_empty() {
            return Err(VentilationError::EmptyPath);
        }
        Ok(Self { elements, shut: false })
    }

    /// The path with its damper stuck shut: nothing passes.
    #[must_use]
    pub fn stuck_shut(self) -> Self {
        Self { shut: true, ..self }
    }

    /// Whether anything passes.
    pub fn is_shut(&self) -> bool {
        self.shut
    }

    /// The elements in order.
    pub fn elements(&self) -> &[FlowElement] {
        &self.elements
    }

    /// The path with a share of the free area of its screens closed.
    ///
    /// # Errors
    /// As [`FlowElement::clogged`].
    pub fn clogged(&self, share: CloggedShare) -> Result<Self, VentilationError> {
        let elements: Result<_, _> =
            self.elements.iter().map(|element| element.clogged(share)).collect();
        Ok(Self { elements: elements?, shut: self.shut })
    }

    /// Δp = resistance·m², Pa·s²/kg², over all elements.
    pub(super) fn resistance(&self, density: f64) -> f64 {
        self.elements.iter().map(|element| element.resistance(density)).sum()
    }

    /// What a flow through the path does at each element.
    pub(super) fn carrying(&self, flow: VolumeFlow, density: Density) -> PathFlow {
        let mass = flow.value() * density.value();
        let drop = |element: &FlowElement| {
            Pressure::new(element.resistance(density.value()) * mass * mass)
        };
        PathFlow {
            flow,
            face_speeds: self.elements.iter().map(|element| flow / element.area()).collect(),
            pressure_drops: self.elements.iter().map(drop).collect(),
        }
    }
}

/// What a flow through a path does at each of its elements, in their order.
#[derive(Clone, Debug, PartialEq)]
pub struct PathFlow {
    /// Flow through the path, m³/s of the air that passes.
    pub flow: VolumeFlow,
    /// Speed on each element's own area, m/s.
    pub face_speeds: Vec<Speed>,
    /// Pressure lost at each element, Pa.
    pub pressure_drops: Vec<Pressure>,
}

impl PathFlow {
    /// Pressure lost over the whole path, Pa.
    pub fn pressure_drop(&self) -> Pressure {
        self.pressure_drops.iter().copied().sum()
    }
}
