//! A window as it is drawn: its frame, a pane of two sheets of glass and the spacer between their edges.

use super::model::Drawing;
use crate::design::WindowSpacer;
use crate::envelope::OUTSIDE_SURFACE_RESISTANCE;
use crate::units::{Length, ThermalConductivity, ThermalResistance, ThermalTransmittance};

/// Depth of the frame of door or window. Common practice, no source.
pub(super) const INFILL_DEPTH: Length = Length::mm(44.0);
/// Seen width of fixed frame and sash together: the frames of the tables of ISO 10077-1:2017, annex H, from
/// memory. It is more than any packing and lining lap, so the glass lies bare.
const FRAME_WIDTH: Length = Length::mm(110.0);
/// How far the glass goes into its frame. Common practice, no source.
const REBATE: Length = Length::mm(15.0);
/// Thickness of one sheet of glass. Common practice, no source.
const GLASS: Length = Length::mm(4.0);
/// Between the two sheets. Common practice, no source.
const GAP: Length = Length::mm(16.0);
/// Soda-lime glass, λ = 1.0 W/(m·K) (ISO 10456:2007, table 3, from memory).
const GLASS_CONDUCTIVITY: ThermalConductivity = ThermalConductivity::new(1.0);
/// Height of the sealant outside the spacer. Common practice, no source.
const SEALANT_HEIGHT: Length = Length::mm(3.0);
/// Polysulphide sealant, λ = 0.40 W/(m·K) (ISO 10077-2:2017, annex D, from memory).
const SEALANT_CONDUCTIVITY: ThermalConductivity = ThermalConductivity::new(0.40);
/// Height of the spacer. Common practice, no source.
const SPACER_HEIGHT: Length = Length::mm(6.5);

impl WindowSpacer {
    /// What the spacer with its butyl behaves as, from one sheet of glass to the other.
    ///
    /// Aluminium: two walls of 0.38 mm in 6.5 mm of height, of 160 W/(m·K) (ISO 10456), are 18.7 W/(m·K), over
    /// 16 mm 0.00086 m²·K/W; in series with 0.25 mm of butyl of 0.20 W/(m·K) at either glass, 0.0025 m²·K/W:
    /// λ = 0.016 / 0.00336 = 4.8 W/(m·K). Warm edge: the equivalent conductivity that makers of plastic
    /// spacers declare for their box is about 0.35 W/(m·K) (from memory). Heights and thicknesses: common
    /// practice, no source.
    const fn conductivity(self) -> ThermalConductivity {
        ThermalConductivity::new(match self {
            Self::Aluminium => 4.8,
            Self::WarmEdge => 0.35,
        })
    }
}

/// Half a window, from its outer edge at x = 0 towards lesser x; y is the depth into the room from the sheet.
///
/// Both frame and pane are drawn with the stated U of the window: the frame as one solid, the pane as two
/// sheets of glass with a layer between that brings it to that U. Its edge loses more than that, which
/// the stated U of a window holds already; so what is drawn tells how cold the edge of the glass is, and a
/// section that it is part of takes the whole of its loss as flanking.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Glazing {
    /// U of the window.
    pub(super) transmittance: ThermalTransmittance,
    /// Between the sheets of glass.
    pub(super) spacer: WindowSpacer,
}

/// What a panel's own layers resist, of U with its surfaces.
pub(super) fn own_resistance(transmittance: ThermalTransmittance) -> ThermalResistance {
    let inside = crate::envelope::HeatFlow::Horizontal.inside_surface_resistance();
    transmittance.resistance() - (inside + OUTSIDE_SURFACE_RESISTANCE)
}

impl Glazing {
    /// Draws it from a cut through the pane at `left`.
    pub(super) fn draw(&self, drawing: &mut Drawing, left: Length) {
        let own = own_resistance(self.transmittance);
        let frame = INFILL_DEPTH / own;
        drawing.fill_frame([-FRAME_WIDTH, Length::ZERO], [Length::ZERO, INFILL_DEPTH], frame);
        let edge = -FRAME_WIDTH + REBATE;
        let [outer, inner] = self.pane();
        let gap = [outer + GLASS, inner - GLASS];
        let sheets = GLASS / GLASS_CONDUCTIVITY * 2.0;
        drawing.fill_frame([left, edge], [outer, inner], GLASS_CONDUCTIVITY);
        drawing.fill_frame([left, edge], gap, GAP / (own - sheets));
        let sealed = edge - SEALANT_HEIGHT;
        drawing.fill_frame([sealed, edge], gap, SEALANT_CONDUCTIVITY);
        drawing.fill_frame([sealed - SPACER_HEIGHT, sealed], gap, self.spacer.conductivity());
    }

    /// From the outer face of the pane to its inner, in the middle of the frame.
    pub(super) fn pane(&self) -> [Length; 2] {
        let thickness = GAP + GLASS * 2.0;
        let outer = (INFILL_DEPTH - thickness) / 2.0;
        [outer, outer + thickness]
    }
}
