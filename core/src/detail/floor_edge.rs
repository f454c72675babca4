//! The edge between floor and wall, at the bottom rail.

use super::build_up::BuildUp;
use super::floor::FloorBuildUp;
use super::model::{CUT_DISTANCE, Drawing, Model, Surfaces};
use super::track::Track;
use crate::conduction::{CellSizes, Problem, Side, SurfaceResistances};
use crate::design::{CheckedDesign, Surface};
use crate::envelope::HeatFlow;
use crate::freight_box::BottomRail;
use crate::material::{PLYWOOD, STEEL};
use crate::units::{HeatTransferCoefficient, Length, ThermalConductivity};

/// A section across the bottom of a wall, between two floor members; x is the depth into the room
/// from the wall's steel, y up from the top of the plywood.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FloorEdgeSection {
    /// The wall.
    pub wall: BuildUp,
    /// The floor.
    pub floor: FloorBuildUp,
    /// The channel that both end on.
    pub rail: BottomRail,
    /// The track that the wall's studs stand in, on the plywood. The floor's own build-up ends at the
    /// back of the wall's lining.
    pub track: Option<Track>,
}

impl FloorEdgeSection {
    /// The section at the foot of a wall of a design.
    pub fn of(checked: &CheckedDesign, wall: Surface) -> Self {
        Self {
            wall: BuildUp::of(checked, wall),
            floor: FloorBuildUp::of(checked),
            rail: checked.freight_box().bottom_rail,
            track: Track::of(checked, wall),
        }
    }

    fn cut(&self) -> Length {
        CUT_DISTANCE + self.wall.face().max(self.floor.face())
    }
}

impl Model for FloorEdgeSection {
    fn problem(&self, surfaces: Surfaces) -> Problem {
        let (wall, floor, rail) = (&self.wall, &self.floor, &self.rail);
        let cut = self.cut();
        let zero = Length::ZERO;
        let lowest = (-rail.height).min(floor.foam_bottom());
        let mut drawing = Drawing::section(
            [-rail.thickness, cut],
            [lowest, cut],
            surfaces,
            CellSizes::new(Length::mm(2.0), Length::mm(60.0)),
        );
        let past = |from: Length| [from, cut];
        let foam = floor.foam_conductivity;
        drawing.fill(wall.foam_span(), past(zero), wall.foam_conductivity);
        let indoors = past(wall.lining_back);
        drawing.fill(indoors, [zero, floor.over], foam);
        drawing.fill(past(zero), [floor.foam_bottom(), -floor.plywood], foam);
        drawing.fill(wall.gap_span(), past(zero), wall.gap_conductivity());
        drawing.fill(past(zero), [-floor.plywood, zero], PLYWOOD.conductivity);
        drawing.fill(indoors, [floor.over, floor.face()], PLYWOOD.conductivity);
        for (x, y) in self.track.iter().flat_map(|track| track.parts(zero)) {
            drawing.fill(x, y, STEEL.conductivity);
        }
        drawing.fill(wall.lining_span(), past(floor.face()), wall.lining_conductivity);
        drawing.fill(wall.sheet_span(), past(zero), STEEL.conductivity);
        drawing.fill([-rail.thickness, zero], [-rail.height, zero], STEEL.conductivity);
        drawing.fill(
            [-rail.thickness, rail.lower_flange],
            [-rail.height, -rail.height + rail.thickness],
            STEEL.conductivity,
        );
        let inside = SurfaceResistances::uniform(surfaces.inside(wall.direction))
            .with(Side::YMaximum, surfaces.inside(HeatFlow::Downwards));
        drawing.room(past(wall.face()), past(floor.face()), inside);
        drawing.outdoors([-rail.thickness, -wall.sheet], past(zero));
        drawing.outdoors(past(-rail.thickness), [lowest, floor.foam_bottom()]);
        drawing.expose_outdoors(Side::XMinimum);
        drawing.expose_outdoors(Side::YMinimum);
        drawing.finish()
    }

    fn foam(&self) -> ThermalConductivity {
        self.floor.foam_conductivity
    }

    fn lining(&self) -> Option<ThermalConductivity> {
        Some(self.wall.lining_conductivity)
    }

    fn flanking(&self) -> HeatTransferCoefficient {
        let cut = self.cut();
        let metre = Length::new(1.0);
        self.wall.transmittance() * ((cut - self.floor.face()) * metre)
            + self.floor.transmittance() * ((cut - self.wall.face()) * metre)
    }
}
