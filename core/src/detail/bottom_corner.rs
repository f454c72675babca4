//! The bottom corner of the box in three dimensions: side wall, end wall and floor meet over a
//! corner casting that the box stands on.

use super::build_up::BuildUp;
use super::floor::FloorBuildUp;
use super::floor_edge::FloorEdgeSection;
use super::model::{CUT_DISTANCE, Drawing, Model, Surfaces};
use super::track::Track;
use crate::conduction::{Block, CellSizes, Point, Problem, Side, SurfaceResistances};
use crate::envelope::HeatFlow;
use crate::freight_box::BottomRail;
use crate::material::{PLYWOOD, STEEL};
use crate::units::{
    HeatTransferCoefficient, Length, LinearThermalTransmittance, ThermalConductivity,
};

/// A casting under the floor.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BottomCasting {
    /// How far it reaches in from the planes of side wall and end.
    pub reach: [Length; 2],
    /// How far it stands out past those planes.
    pub outside: [Length; 2],
    /// Its underside and its top, measured up from the top of the plywood.
    pub bottom: Length,
    /// See `bottom`.
    pub top: Length,
}

/// The corner; x is the depth into the room from the side wall's steel, y from the end's, z up
/// from the plywood's top. Floor members are left out: they have a detail of their own. The post
/// over the casting is drawn solid: outside the foam, solid or hollow comes to the same.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BottomCornerBody {
    /// The surface at x = 0.
    pub side: BuildUp,
    /// The surface at y = 0.
    pub end: BuildUp,
    /// The floor.
    pub floor: FloorBuildUp,
    /// Channel along both walls.
    pub rail: BottomRail,
    /// The casting.
    pub casting: BottomCasting,
    /// Track under the studs of the side wall, along y, and of the end, along x; they meet in the corner.
    pub tracks: [Option<Track>; 2],
    /// ψ of the edges along x (end and floor), y (side and floor) and z (side and end).
    pub edge_transmittance: [LinearThermalTransmittance; 3],
}

impl BottomCornerBody {
    /// The section of the edge between side wall and floor, along y.
    pub fn side_edge(&self) -> FloorEdgeSection {
        let [track, _] = self.tracks;
        FloorEdgeSection { wall: self.side, floor: self.floor, rail: self.rail, track }
    }

    /// The section of the edge between end and floor, along x.
    pub fn end_edge(&self) -> FloorEdgeSection {
        let [_, track] = self.tracks;
        FloorEdgeSection { wall: self.end, floor: self.floor, rail: self.rail, track }
    }

    fn cut(&self) -> Length {
        CUT_DISTANCE + self.side.face().max(self.end.face()).max(self.floor.face())
    }

    fn draw_inside(&self, drawing: &mut Drawing) {
        let (side, end, floor) = (&self.side, &self.end, &self.floor);
        let (zero, cut) = (Length::ZERO, self.cut());
        let past = |from: Length| [from, cut];
        let (all, foam) = (past(zero), floor.foam_conductivity);
        let (in_x, in_y) = (past(side.lining_back), past(end.lining_back));
        drawing.fill_block(side.foam_span(), all, all, foam);
        drawing.fill_block(all, end.foam_span(), all, foam);
        drawing.fill_block(all, all, [floor.foam_bottom(), -floor.plywood], foam);
        drawing.fill_block(in_x, in_y, [zero, floor.over], foam);
        drawing.fill_block(side.gap_span(), past(end.foam), all, side.gap_conductivity());
        drawing.fill_block(past(side.foam), end.gap_span(), all, end.gap_conductivity());
        drawing.fill_block(all, all, [-floor.plywood, zero], PLYWOOD.conductivity);
        drawing.fill_block(in_x, in_y, [floor.over, floor.face()], PLYWOOD.conductivity);
        let [of_side, of_end] = self.tracks;
        // Where the other wall has no track, one runs on to the back of its lining.
        let to_end = of_end.map_or(end.lining_back, |track| track.stand_off);
        let to_side = of_side.map_or(side.lining_back, |track| track.stand_off);
        for (x, z) in of_side.iter().flat_map(|track| track.parts(zero)) {
            drawing.fill_block(x, past(to_end), z, STEEL.conductivity);
        }
        for (y, z) in of_end.iter().flat_map(|track| track.parts(zero)) {
            drawing.fill_block(past(to_side), y, z, STEEL.conductivity);
        }
        let above = past(floor.face());
        drawing.fill_block(
            side.lining_span(),
            past(end.lining_back),
            above,
            side.lining_conductivity,
        );
        drawing.fill_block(
            past(side.lining_back),
            end.lining_span(),
            above,
            end.lining_conductivity,
        );
    }

    fn draw_steel(&self, drawing: &mut Drawing) {
        let (side, end, rail, casting) = (&self.side, &self.end, &self.rail, &self.casting);
        let (zero, cut) = (Length::ZERO, self.cut());
        let steel = STEEL.conductivity;
        let up = [zero, cut];
        drawing.fill_block(side.sheet_span(), up, up, steel);
        drawing.fill_block(up, end.sheet_span(), up, steel);
        let web = [-rail.thickness, zero];
        let high = [-rail.height, zero];
        let foot = [-rail.height, -rail.height + rail.thickness];
        drawing.fill_block(web, up, high, steel);
        drawing.fill_block(up, web, high, steel);
        drawing.fill_block([zero, rail.lower_flange], up, foot, steel);
        drawing.fill_block(up, [zero, rail.lower_flange], foot, steel);
        drawing.fill_block(
            [-casting.outside[0], casting.reach[0]],
            [-casting.outside[1], casting.reach[1]],
            [casting.bottom, casting.top],
            steel,
        );
        drawing.fill_block(
            [-casting.outside[0], zero],
            [-casting.outside[1], zero],
            [casting.top, cut],
            steel,
        );
    }
}

impl Model for BottomCornerBody {
    fn problem(&self, surfaces: Surfaces) -> Problem {
        let (side, end, floor) = (&self.side, &self.end, &self.floor);
        let cut = self.cut();
        let [low_x, low_y] = self.casting.outside.map(|outside| -outside);
        let low_z = self.casting.bottom.min(floor.foam_bottom());
        let domain = Block::new(Point::new(low_x, low_y, low_z), Point::new(cut, cut, cut));
        let mut cells = CellSizes::new(Length::mm(6.0), Length::mm(120.0));
        cells.growth = 1.5;
        let mut drawing = Drawing::body(domain, surfaces, cells);
        self.draw_inside(&mut drawing);
        self.draw_steel(&mut drawing);
        let (all_x, all_y, all_z) = ([low_x, cut], [low_y, cut], [low_z, cut]);
        drawing.outdoors_block([low_x, -side.sheet], all_y, all_z);
        drawing.outdoors_block(all_x, [low_y, -end.sheet], all_z);
        drawing.outdoors_block(all_x, all_y, [low_z, floor.foam_bottom()]);
        let inside = SurfaceResistances::uniform(surfaces.inside(side.direction))
            .with(Side::ZMaximum, surfaces.inside(HeatFlow::Downwards));
        drawing.room_block([side.face(), cut], [end.face(), cut], [floor.face(), cut], inside);
        for side in [Side::XMinimum, Side::YMinimum, Side::ZMinimum] {
            drawing.expose_outdoors(side);
        }
        drawing.finish()
    }

    fn foam(&self) -> ThermalConductivity {
        self.floor.foam_conductivity
    }

    fn lining(&self) -> Option<ThermalConductivity> {
        Some(self.side.lining_conductivity)
    }

    fn flanking(&self) -> HeatTransferCoefficient {
        let cut = self.cut();
        let [x, y, z] =
            [self.side.face(), self.end.face(), self.floor.face()].map(|face| cut - face);
        let [along_x, along_y, along_z] = self.edge_transmittance;
        self.side.transmittance() * (y * z)
            + self.end.transmittance() * (x * z)
            + self.floor.transmittance() * (x * y)
            + along_x * x
            + along_y * y
            + along_z * z
    }

    fn rounds_of_refinement(&self) -> usize {
        3
    }
}
