//! The head of a stud, held to the top rail by a bracket, with or without a plastic pad.

use super::edge::EdgeSection;
use super::frame_line::FrameSlice;
use super::model::{Drawing, Model, Surfaces};
use super::track::HEAD_GAP;
use crate::conduction::{Block, CellSizes, Point, Problem, Side, SurfaceResistances};
use crate::material::{RIGID_PLASTIC, STEEL};
use crate::units::{
    HeatTransferCoefficient, Length, LinearThermalTransmittance, ThermalConductivity,
};

/// Width of a bracket along the stud, and of its foot. Common practice, no source.
pub const BRACKET_WIDTH: Length = Length::mm(50.0);
/// Thickness of a bracket. Common practice, no source.
pub const BRACKET_THICKNESS: Length = Length::mm(3.0);
/// How far a bracket laps the stud's web. Common practice, no source.
pub const BRACKET_LAP: Length = Length::mm(40.0);

/// One spacing of the edge between wall and roof, with a stud and its bracket; x along the wall,
/// y the depth into the room from the wall's steel, z down from the roof's.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BracketBody {
    /// The edge it stands in.
    pub edge: EdgeSection,
    /// The stud, before the flat sheet of the edge whatever it stands over: what the bracket adds is
    /// judged against the same stud.
    pub stud: FrameSlice,
    /// Thickness of the pad; zero for steel on steel.
    pub pad: Length,
    /// ψ of the edge and of the stud, as their own sections give them.
    pub line_transmittance: [LinearThermalTransmittance; 2],
}

/// One spacing of the edge between wall and roof, in the axes of [`BracketBody`], for what stands or hangs in it.
#[derive(Clone, Copy, Debug)]
pub(super) struct RailCut<'a> {
    /// The edge.
    pub(super) edge: &'a EdgeSection,
    /// How much of it along the wall.
    pub(super) spacing: Length,
}

impl RailCut<'_> {
    /// Where the domain is cut, into the room and down the wall.
    pub(super) fn cut(&self) -> Length {
        Length::mm(600.0) + self.edge.first.face().max(self.edge.second.face())
    }

    fn draw_surfaces(&self, drawing: &mut Drawing) {
        let (wall, ceiling, rail) = (&self.edge.first, &self.edge.second, &self.edge.steel);
        let along = [Length::ZERO, self.spacing];
        let cut = self.cut();
        let past = |from: Length| [from, cut];
        let mut fill = |y, z, conductivity| drawing.fill_block(along, y, z, conductivity);
        fill(wall.foam_span(), past(Length::ZERO), wall.foam_conductivity);
        fill(past(Length::ZERO), ceiling.foam_span(), ceiling.foam_conductivity);
        fill(wall.gap_span(), past(ceiling.foam), wall.gap_conductivity());
        fill(past(wall.foam), ceiling.gap_span(), ceiling.gap_conductivity());
        for (y, z) in self.edge.track.iter().flat_map(|track| track.parts(HEAD_GAP)) {
            fill(y, z, STEEL.conductivity);
        }
        fill(wall.lining_span(), past(ceiling.lining_back), wall.lining_conductivity);
        fill(past(wall.lining_back), ceiling.lining_span(), ceiling.lining_conductivity);
        fill(wall.sheet_span(), past(-ceiling.sheet), STEEL.conductivity);
        fill(past(-wall.sheet), ceiling.sheet_span(), STEEL.conductivity);
        let (hollow_y, hollow_z) = rail.hollow();
        fill(rail.x, rail.y, STEEL.conductivity);
        fill(hollow_y, hollow_z, rail.hollow_conductivity());
    }

    /// The problem of the edge with what `draw` adds to it.
    pub(super) fn problem(&self, surfaces: Surfaces, draw: impl FnOnce(&mut Drawing)) -> Problem {
        let (wall, ceiling, rail) = (&self.edge.first, &self.edge.second, &self.edge.steel);
        let along = [Length::ZERO, self.spacing];
        let cut = self.cut();
        let past = |from: Length| [from, cut];
        let domain =
            Block::new(Point::new(along[0], rail.x[0], rail.y[0]), Point::new(along[1], cut, cut));
        let mut cells = CellSizes::new(Length::mm(4.0), Length::mm(90.0));
        cells.growth = 1.6;
        let mut drawing = Drawing::body(domain, surfaces, cells);
        self.draw_surfaces(&mut drawing);
        draw(&mut drawing);
        let inside = SurfaceResistances::uniform(surfaces.inside(wall.direction))
            .with(Side::ZMaximum, surfaces.inside(ceiling.direction));
        drawing.room_block(along, past(wall.face()), past(ceiling.face()), inside);
        drawing.outdoors_block(along, [rail.x[0], -wall.sheet], [rail.y[0], cut]);
        drawing.expose_outdoors(Side::YMinimum);
        drawing.expose_outdoors(Side::ZMinimum);
        drawing.finish()
    }

    /// What wall, ceiling and edge, with ψ of its own, lose by themselves.
    pub(super) fn flanking(&self, edge: LinearThermalTransmittance) -> HeatTransferCoefficient {
        let (wall, ceiling) = (&self.edge.first, &self.edge.second);
        let (down, into) = (self.cut() - ceiling.face(), self.cut() - wall.face());
        wall.transmittance() * (self.spacing * down)
            + ceiling.transmittance() * (self.spacing * into)
            + edge * self.spacing
    }
}

impl BracketBody {
    const fn rail_cut(&self) -> RailCut<'_> {
        RailCut { edge: &self.edge, spacing: self.stud.spacing }
    }

    fn draw_stud_and_bracket(&self, drawing: &mut Drawing) {
        let (stud, rail) = (&self.stud, &self.edge.steel);
        let steel = STEEL.conductivity;
        let (web, thin) = (stud.web_at(), stud.steel_thickness);
        let (outer, inner) = (stud.stand_off, stud.stand_off + stud.member);
        let flange = [web, web + stud.flange];
        let down = [HEAD_GAP, self.rail_cut().cut()];
        drawing.fill_block([web, web + thin], [outer, inner], down, steel);
        drawing.fill_block(flange, [outer, outer + thin], down, steel);
        drawing.fill_block(flange, [inner - thin, inner], down, steel);
        let foot = rail.x[1] + self.pad;
        let foot_inner = foot + BRACKET_THICKNESS;
        let middle = rail.y[1] / 2.0;
        let high = [middle - BRACKET_WIDTH / 2.0, middle + BRACKET_WIDTH / 2.0];
        let foot_along = [web - BRACKET_WIDTH, web];
        drawing.fill_block(foot_along, [rail.x[1], foot], high, RIGID_PLASTIC.conductivity);
        drawing.fill_block(foot_along, [foot, foot_inner], high, steel);
        let lap = (outer.max(foot) + BRACKET_LAP).min(inner).max(foot_inner);
        drawing.fill_block([web - BRACKET_THICKNESS, web], [foot, lap], high, steel);
    }
}

impl Model for BracketBody {
    fn problem(&self, surfaces: Surfaces) -> Problem {
        self.rail_cut().problem(surfaces, |drawing| self.draw_stud_and_bracket(drawing))
    }

    fn foam(&self) -> ThermalConductivity {
        self.edge.first.foam_conductivity
    }

    fn lining(&self) -> Option<ThermalConductivity> {
        Some(self.edge.first.lining_conductivity)
    }

    fn flanking(&self) -> HeatTransferCoefficient {
        let [edge, stud] = self.line_transmittance;
        let down = self.rail_cut().cut() - self.edge.second.face();
        self.rail_cut().flanking(edge) + stud * down
    }

    fn rounds_of_refinement(&self) -> usize {
        2
    }
}
