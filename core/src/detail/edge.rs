//! An inside edge where two surfaces meet: roof and wall at the top rail, wall and wall at the
//! corner post.

use super::build_up::BuildUp;
use super::model::{CUT_DISTANCE, Drawing, Model, Span, Surfaces};
use super::track::{HEAD_GAP, Track};
use crate::conduction::{CellSizes, Problem, Side, SurfaceResistances};
use crate::envelope::{HeatFlow, air_layer_conductivity};
use crate::material::STEEL;
use crate::units::{HeatTransferCoefficient, Length, ThermalConductivity};

/// The hollow steel section along an edge. Zero of each coordinate is the inner steel plane of
/// the surface it is measured from; the room lies on the positive side.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct EdgeSteel {
    /// From outside to inside of the first surface's plane.
    pub x: Span,
    /// From outside to inside of the second surface's plane.
    pub y: Span,
    /// Wall thickness of the section.
    pub thickness: Length,
}

impl EdgeSteel {
    /// The hollow inside.
    pub fn hollow(&self) -> (Span, Span) {
        let t = self.thickness;
        ([self.x[0] + t, self.x[1] - t], [self.y[0] + t, self.y[1] - t])
    }

    /// What the air in the hollow behaves as: still air over its smaller width.
    pub fn hollow_conductivity(&self) -> ThermalConductivity {
        let (x, y) = self.hollow();
        air_layer_conductivity((x[1] - x[0]).min(y[1] - y[0]), HeatFlow::Horizontal)
    }
}

/// A section across an edge; x is the depth into the room from the first surface's steel, y from
/// the second's.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct EdgeSection {
    /// The surface at x = 0.
    pub first: BuildUp,
    /// The surface at y = 0.
    pub second: BuildUp,
    /// The steel section along the edge.
    pub steel: EdgeSteel,
    /// The track over the studs of the first surface, where the second is a ceiling.
    pub track: Option<Track>,
}

impl EdgeSection {
    /// Where the domain is cut.
    fn cut(&self) -> Length {
        CUT_DISTANCE + self.first.face().max(self.second.face())
    }
}

impl Model for EdgeSection {
    fn problem(&self, surfaces: Surfaces) -> Problem {
        let (first, second, steel) = (&self.first, &self.second, &self.steel);
        let cut = self.cut();
        let (left, top) = (steel.x[0].min(-first.sheet), steel.y[0].min(-second.sheet));
        let mut drawing = Drawing::section(
            [left, cut],
            [top, cut],
            surfaces,
            CellSizes::new(Length::mm(2.0), Length::mm(60.0)),
        );
        let past = |from: Length| [from, cut];
        drawing.fill(first.foam_span(), past(Length::ZERO), first.foam_conductivity);
        drawing.fill(past(Length::ZERO), second.foam_span(), second.foam_conductivity);
        drawing.fill(first.gap_span(), past(second.foam), first.gap_conductivity());
        drawing.fill(past(first.foam), second.gap_span(), second.gap_conductivity());
        // Where a rail stands further in than the track, the track is cut out round it and touches it.
        for (x, y) in self.track.iter().flat_map(|track| track.parts(HEAD_GAP)) {
            drawing.fill(x, y, STEEL.conductivity);
        }
        drawing.fill(first.lining_span(), past(second.lining_back), first.lining_conductivity);
        drawing.fill(past(first.lining_back), second.lining_span(), second.lining_conductivity);
        drawing.fill(first.sheet_span(), past(-second.sheet), STEEL.conductivity);
        drawing.fill(past(-first.sheet), second.sheet_span(), STEEL.conductivity);
        let (hollow_x, hollow_y) = steel.hollow();
        drawing.fill(steel.x, steel.y, STEEL.conductivity);
        drawing.fill(hollow_x, hollow_y, steel.hollow_conductivity());
        let inside = SurfaceResistances::uniform(surfaces.inside(first.direction))
            .with(Side::YMaximum, surfaces.inside(second.direction));
        drawing.room(past(first.face()), past(second.face()), inside);
        drawing.outdoors([left, -first.sheet], [top, cut]);
        drawing.outdoors([left, cut], [top, -second.sheet]);
        drawing.expose_outdoors(Side::XMinimum);
        drawing.expose_outdoors(Side::YMinimum);
        drawing.finish()
    }

    fn foam(&self) -> ThermalConductivity {
        self.first.foam_conductivity
    }

    fn lining(&self) -> Option<ThermalConductivity> {
        Some(self.first.lining_conductivity)
    }

    fn flanking(&self) -> HeatTransferCoefficient {
        let cut = self.cut();
        let metre = Length::new(1.0);
        self.first.transmittance() * ((cut - self.second.face()) * metre)
            + self.second.transmittance() * ((cut - self.first.face()) * metre)
    }
}
