//! The build-up of one framed surface as the details see it.

use super::model::Span;
use crate::design::{CheckedDesign, Surface};
use crate::envelope::{
    HeatFlow, OUTSIDE_SURFACE_RESISTANCE, air_layer_conductivity, corrugation, series_resistance,
};
use crate::material::STEEL;
use crate::units::{Length, ThermalConductivity, ThermalResistance, ThermalTransmittance};

/// Sheet of the cargo doors, which are not corrugated like the walls (makers' sheets: 2 mm).
const DOOR_SHEET: Length = Length::mm(2.0);

/// Sheet, foam, still air, lining: measured from the innermost steel plane towards the room.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BuildUp {
    /// Which way the heat flows.
    pub direction: HeatFlow,
    /// Thickness of the sheet, outside the plane.
    pub sheet: Length,
    /// Depth of foam.
    pub foam: Length,
    /// Where the back of the lining lies.
    pub lining_back: Length,
    /// Thickness of the lining.
    pub lining: Length,
    /// Conductivity of the foam.
    pub foam_conductivity: ThermalConductivity,
    /// Conductivity of the lining.
    pub lining_conductivity: ThermalConductivity,
}

impl BuildUp {
    /// The build-up of a framed surface of a design.
    pub fn of(checked: &CheckedDesign, surface: Surface) -> Self {
        let design = checked.design();
        let stack = design.stack(surface);
        Self {
            direction: HeatFlow::through(surface),
            sheet: corrugation(checked, surface).map_or(DOOR_SHEET, |sheet| sheet.thickness),
            foam: stack.foam,
            lining_back: stack.lining_back(),
            lining: stack.lining,
            foam_conductivity: crate::envelope::foam_material(design).conductivity,
            lining_conductivity: crate::envelope::lining_material(design).conductivity,
        }
    }

    /// Where the finished face lies.
    pub fn face(&self) -> Length {
        self.lining_back + self.lining
    }

    /// The sheet.
    pub fn sheet_span(&self) -> Span {
        [-self.sheet, Length::ZERO]
    }

    /// The foam.
    pub fn foam_span(&self) -> Span {
        [Length::ZERO, self.foam]
    }

    /// The still air between foam and lining; empty where foam reaches the lining.
    pub fn gap_span(&self) -> Span {
        [self.foam, self.lining_back]
    }

    /// The lining.
    pub fn lining_span(&self) -> Span {
        [self.lining_back, self.face()]
    }

    /// What the still air behaves as; the foam's own where there is none.
    pub fn gap_conductivity(&self) -> ThermalConductivity {
        let gap = self.lining_back - self.foam;
        if gap > Length::ZERO {
            air_layer_conductivity(gap, self.direction)
        } else {
            self.foam_conductivity
        }
    }

    /// U of the plain build-up over a flat sheet.
    pub fn transmittance(&self) -> ThermalTransmittance {
        let layers: [ThermalResistance; 4] = [
            self.sheet / STEEL.conductivity,
            self.foam / self.foam_conductivity,
            (self.lining_back - self.foam) / self.gap_conductivity(),
            self.lining / self.lining_conductivity,
        ];
        series_resistance(
            self.direction.inside_surface_resistance(),
            layers,
            OUTSIDE_SURFACE_RESISTANCE,
        )
        .transmittance()
    }
}
