//! The sill under the cargo doors, with a framed wall before them or with foam in their leaves.

use super::build_up::BuildUp;
use super::cargo_door::{
    FLASHING, GASKET_CONDUCTIVITY, GASKET_DEPTH, LEAF_GAP, Lies, draw_leaf, gap_air,
};
use super::edge::EdgeSteel;
use super::floor::FloorBuildUp;
use super::model::{CUT_DISTANCE, Drawing, Model, Surfaces};
use super::track::Track;
use crate::conduction::{CellSizes, Problem, Side, SurfaceResistances};
use crate::design::{CheckedDesign, Surface};
use crate::envelope::HeatFlow;
use crate::material::{PLYWOOD, RIGID_PLASTIC, STEEL};
use crate::units::{HeatTransferCoefficient, Length, ThermalConductivity};

/// A section across the bottom of the cargo doors; x is the depth into the room from the doors' sheet, y up
/// from the top of the plywood.
///
/// The sill is a hollow beam of the box outside the doors' plane, its top level with the plywood, which ends
/// on it. The leaf's sheet begins a gap above it, with the gasket outside.
/// Before a framed wall the doors stay shut: its foam goes down to the plywood and its track lies there, and
/// a plastic flashing on sill and plywood, as far as the track, sheds what comes in past the gasket.
/// Foam in the leaves swings out with them: it begins a gap above the finished floor, which runs under it to
/// the doors' plane and is closed there by the flashing, stood on edge.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CargoSillSection {
    /// Framed wall or leaf.
    pub wall: BuildUp,
    /// The floor.
    pub floor: FloorBuildUp,
    /// The sill, in x and y.
    pub sill: EdgeSteel,
    /// The framed wall's track; none where the foam is in the leaves.
    pub track: Option<Track>,
}

impl CargoSillSection {
    /// That of a design, on the given sill.
    pub fn of(checked: &CheckedDesign, sill: EdgeSteel) -> Self {
        Self {
            wall: BuildUp::of(checked, Surface::DoorEnd),
            floor: FloorBuildUp::of(checked),
            sill,
            track: Track::of(checked, Surface::DoorEnd),
        }
    }

    fn cut(&self) -> Length {
        CUT_DISTANCE + self.wall.face().max(self.floor.face())
    }

    /// Where the foam of a leaf begins.
    pub fn leaf_foam_begins(&self) -> Length {
        self.floor.face() + LEAF_GAP
    }

    fn draw_framed_wall(&self, drawing: &mut Drawing, track: &Track) {
        let (wall, floor, cut, zero) = (&self.wall, &self.floor, self.cut(), Length::ZERO);
        let indoors = [wall.lining_back, cut];
        drawing.fill(wall.foam_span(), [zero, cut], wall.foam_conductivity);
        drawing.fill(wall.gap_span(), [zero, cut], wall.gap_conductivity());
        drawing.fill(indoors, [zero, floor.over], floor.foam_conductivity);
        drawing.fill(indoors, [floor.over, floor.face()], PLYWOOD.conductivity);
        drawing.fill([zero, track.stand_off], [zero, FLASHING], RIGID_PLASTIC.conductivity);
        for (x, y) in track.parts(zero) {
            drawing.fill(x, y, STEEL.conductivity);
        }
        drawing.fill(wall.lining_span(), [floor.face(), cut], wall.lining_conductivity);
    }

    fn draw_foamed_leaf(&self, drawing: &mut Drawing) {
        let (wall, floor, cut, zero) = (&self.wall, &self.floor, self.cut(), Length::ZERO);
        drawing.fill([zero, cut], [zero, floor.over], floor.foam_conductivity);
        drawing.fill([zero, cut], [floor.over, floor.face()], PLYWOOD.conductivity);
        drawing.fill([zero, FLASHING], [zero, floor.face()], RIGID_PLASTIC.conductivity);
        let begins = self.leaf_foam_begins();
        drawing.fill([zero, wall.face()], [floor.face(), begins], gap_air(wall));
        draw_leaf(drawing, wall, [begins, cut], Lies::AlongY);
    }
}

impl Model for CargoSillSection {
    fn problem(&self, surfaces: Surfaces) -> Problem {
        let (wall, floor, sill) = (&self.wall, &self.floor, &self.sill);
        let (cut, zero) = (self.cut(), Length::ZERO);
        let lowest = sill.y[0].min(floor.foam_bottom());
        let left = sill.x[0];
        let mut drawing = Drawing::section(
            [left, cut],
            [lowest, cut],
            surfaces,
            CellSizes::new(Length::mm(2.0), Length::mm(60.0)),
        );
        let past = [zero, cut];
        drawing.fill(past, [floor.foam_bottom(), -floor.plywood], floor.foam_conductivity);
        drawing.fill(past, [-floor.plywood, zero], PLYWOOD.conductivity);
        match &self.track {
            Some(track) => self.draw_framed_wall(&mut drawing, track),
            None => self.draw_foamed_leaf(&mut drawing),
        }
        let (hollow_x, hollow_y) = sill.hollow();
        drawing.fill(sill.x, sill.y, STEEL.conductivity);
        drawing.fill(hollow_x, hollow_y, sill.hollow_conductivity());
        drawing.fill(wall.sheet_span(), [LEAF_GAP, cut], STEEL.conductivity);
        drawing.fill([-GASKET_DEPTH, zero], [zero, LEAF_GAP], GASKET_CONDUCTIVITY);
        let inside = SurfaceResistances::uniform(surfaces.inside(wall.direction))
            .with(Side::YMaximum, surfaces.inside(HeatFlow::Downwards));
        drawing.room([zero, cut], [floor.face(), cut], inside);
        drawing.outdoors([left, zero], [lowest, cut]);
        drawing.outdoors([left, cut], [lowest, floor.foam_bottom()]);
        drawing.expose_outdoors(Side::XMinimum);
        drawing.expose_outdoors(Side::YMinimum);
        drawing.finish()
    }

    fn foam(&self) -> ThermalConductivity {
        self.floor.foam_conductivity
    }

    fn flanking(&self) -> HeatTransferCoefficient {
        let (cut, metre) = (self.cut(), Length::new(1.0));
        self.wall.transmittance() * ((cut - self.floor.face()) * metre)
            + self.floor.transmittance() * ((cut - self.wall.face()) * metre)
    }
}
