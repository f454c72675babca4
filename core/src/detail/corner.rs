//! The top corner of the box in three dimensions: side wall, end wall and ceiling meet, and a
//! corner casting pokes through them.

use super::build_up::BuildUp;
use super::edge::{EdgeSection, EdgeSteel};
use super::model::{CUT_DISTANCE, Drawing, Model, Span, Surfaces};
use super::track::{HEAD_GAP, Track};
use crate::conduction::{Block, CellSizes, Point, Problem, Side, SurfaceResistances};
use crate::material::STEEL;
use crate::units::{
    HeatTransferCoefficient, Length, LinearThermalTransmittance, ThermalConductivity,
};

/// A corner casting and the foam that covers it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Casting {
    /// How far it reaches into the room past the planes of side wall, end and roof.
    pub reach: [Length; 3],
    /// How far it stands out past those planes.
    pub outside: [Length; 3],
    /// Foam between its steel and the lining; `None` where it is left bare.
    pub cover: Option<Length>,
}

/// The corner: x is the depth into the room from the side wall's steel, y from the end's, z down
/// from the roof's.
///
/// The casting is drawn solid: it is so much better a conductor than what surrounds it that solid
/// or hollow comes to the same.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CornerBody {
    /// The surface at x = 0.
    pub side: BuildUp,
    /// The surface at y = 0.
    pub end: BuildUp,
    /// The surface at z = 0.
    pub ceiling: BuildUp,
    /// The casting in the corner.
    pub casting: Casting,
    /// Rail along y, in x and z.
    pub side_rail: EdgeSteel,
    /// Rail along x, in y and z.
    pub end_rail: EdgeSteel,
    /// Post along z, in x and y.
    pub post: EdgeSteel,
    /// Track over the studs of the side wall, along y, and of the end, along x. Both end before the
    /// casting, as far from it as its cover or as they stand off the box's steel.
    pub tracks: [Option<Track>; 2],
    /// ψ of the three edges along x, y and z, as their own sections give it.
    pub edge_transmittance: [LinearThermalTransmittance; 3],
}

impl CornerBody {
    /// The section of the edge between side wall and ceiling, along y.
    pub fn side_edge(&self) -> EdgeSection {
        let track = self.tracks[0];
        EdgeSection { first: self.side, second: self.ceiling, steel: self.side_rail, track }
    }

    /// The section of the edge between end and ceiling, along x.
    pub fn end_edge(&self) -> EdgeSection {
        let track = self.tracks[1];
        EdgeSection { first: self.end, second: self.ceiling, steel: self.end_rail, track }
    }

    /// The section of the edge between side wall and end, along z.
    pub fn post_edge(&self) -> EdgeSection {
        EdgeSection { first: self.side, second: self.end, steel: self.post, track: None }
    }

    fn build_ups(&self) -> [&BuildUp; 3] {
        [&self.side, &self.end, &self.ceiling]
    }

    fn faces(&self) -> [Length; 3] {
        self.build_ups().map(BuildUp::face)
    }

    fn cut(&self) -> Length {
        let [side, end, ceiling] = self.faces();
        CUT_DISTANCE + side.max(end).max(ceiling)
    }

    /// From outside of the steel to the cut, along each axis.
    fn low(&self) -> [Length; 3] {
        self.casting.outside.map(|outside| -outside)
    }

    /// Reach of the casting with its cover, along each axis.
    fn covered(&self) -> [Length; 3] {
        let cover = self.casting.cover.unwrap_or(Length::ZERO);
        self.casting.reach.map(|reach| reach + cover)
    }

    /// How far what covers the casting, its board included, stands into the room; nothing where
    /// any direction hides it behind the lining.
    fn block_in_room(&self) -> Option<[Length; 3]> {
        let board = if self.casting.cover.is_some() { self.side.lining } else { Length::ZERO };
        let reach = self.covered().map(|covered| covered + board);
        let faces = self.faces();
        let stands_out = reach.iter().zip(faces).all(|(&reach, face)| reach > face);
        stands_out.then_some(reach)
    }

    fn draw_build_ups(&self, drawing: &mut Drawing) {
        let [side, end, ceiling] = self.build_ups();
        let cut = self.cut();
        let past = |from: Length| [from, cut];
        let all = past(Length::ZERO);
        drawing.fill_block(side.foam_span(), all, all, side.foam_conductivity);
        drawing.fill_block(all, end.foam_span(), all, end.foam_conductivity);
        drawing.fill_block(all, all, ceiling.foam_span(), ceiling.foam_conductivity);
        drawing.fill_block(
            side.gap_span(),
            past(end.foam),
            past(ceiling.foam),
            side.gap_conductivity(),
        );
        drawing.fill_block(
            past(side.foam),
            end.gap_span(),
            past(ceiling.foam),
            end.gap_conductivity(),
        );
        drawing.fill_block(
            past(side.foam),
            past(end.foam),
            ceiling.gap_span(),
            ceiling.gap_conductivity(),
        );
        self.draw_tracks(drawing);
        if self.casting.cover.is_some() {
            self.draw_cover(drawing);
        }
        let (x, y, z) = (past(side.lining_back), past(end.lining_back), past(ceiling.lining_back));
        drawing.fill_block(side.lining_span(), y, z, side.lining_conductivity);
        drawing.fill_block(x, end.lining_span(), z, end.lining_conductivity);
        drawing.fill_block(x, y, ceiling.lining_span(), ceiling.lining_conductivity);
        if let (Some(_), Some(block)) = (self.casting.cover, self.block_in_room()) {
            drawing.fill_block(
                [side.lining_back, block[0]],
                [end.lining_back, block[1]],
                [ceiling.lining_back, block[2]],
                side.lining_conductivity,
            );
            self.draw_cover(drawing);
        }
        // Sheets meet where neither rail nor post stands over the seam: rails of the door end do not.
        let [x, y, z] = self.build_ups().map(|build_up| past(-build_up.sheet));
        drawing.fill_block(side.sheet_span(), y, z, STEEL.conductivity);
        drawing.fill_block(x, end.sheet_span(), z, STEEL.conductivity);
        drawing.fill_block(x, y, ceiling.sheet_span(), STEEL.conductivity);
    }

    fn draw_tracks(&self, drawing: &mut Drawing) {
        let [side, end] = self.tracks;
        let cut = self.cut();
        let cover = self.casting.cover.unwrap_or(Length::ZERO);
        let [reach_x, reach_y, reach_z] = self.casting.reach;
        // Where a track begins along its wall: past the casting if that stands in its way.
        let begins = |track: Track, across: Length, along: Length, other: Length| {
            let clear = cover.max(track.stand_off);
            let meets = track.stand_off < across + clear && HEAD_GAP < reach_z + clear;
            if meets { (along + clear).max(other) } else { other }
        };
        // Where the other wall has no track, one runs on to the back of its lining.
        let to_end = end.map_or(self.end.lining_back, |track| track.stand_off);
        let to_side = side.map_or(self.side.lining_back, |track| track.stand_off);
        if let Some(side) = side {
            let along_y = [begins(side, reach_x, reach_y, to_end), cut];
            for (x, z) in side.parts(HEAD_GAP) {
                drawing.fill_block(x, along_y, z, STEEL.conductivity);
            }
        }
        if let Some(end) = end {
            let along_x = [begins(end, reach_y, reach_x, to_side), cut];
            for (y, z) in end.parts(HEAD_GAP) {
                drawing.fill_block(along_x, y, z, STEEL.conductivity);
            }
        }
    }

    fn draw_cover(&self, drawing: &mut Drawing) {
        let [x, y, z] = self.covered().map(|covered| [Length::ZERO, covered]);
        drawing.fill_block(x, y, z, self.side.foam_conductivity);
    }

    fn draw_steel(&self, drawing: &mut Drawing) {
        let [low_x, low_y, low_z] = self.low();
        let cut = self.cut();
        let hollow_section =
            |drawing: &mut Drawing, steel: &EdgeSteel, place: &dyn Fn(Span, Span) -> [Span; 3]| {
                let [x, y, z] = place(steel.x, steel.y);
                drawing.fill_block(x, y, z, STEEL.conductivity);
                let (first, second) = steel.hollow();
                let [x, y, z] = place(first, second);
                drawing.fill_block(x, y, z, steel.hollow_conductivity());
            };
        hollow_section(drawing, &self.side_rail, &|x, z| [x, [low_y, cut], z]);
        hollow_section(drawing, &self.end_rail, &|y, z| [[low_x, cut], y, z]);
        hollow_section(drawing, &self.post, &|x, y| [x, y, [low_z, cut]]);
        let [x, y, z] = [0, 1, 2].map(|n| [self.low()[n], self.casting.reach[n]]);
        drawing.fill_block(x, y, z, STEEL.conductivity);
    }

    /// Outdoor air outside the sheets, and the room's past the faces.
    fn claim_air(&self, drawing: &mut Drawing, surfaces: Surfaces) {
        let [side, end, ceiling] = self.build_ups().map(|build_up| -build_up.sheet);
        let [low_x, low_y, low_z] = self.low();
        let cut = self.cut();
        let (all_x, all_y, all_z) = ([low_x, cut], [low_y, cut], [low_z, cut]);
        drawing.outdoors_block([low_x, side], all_y, all_z);
        drawing.outdoors_block(all_x, [low_y, end], all_z);
        drawing.outdoors_block(all_x, all_y, [low_z, ceiling]);
        let inside = SurfaceResistances::uniform(surfaces.inside(self.side.direction))
            .with(Side::ZMaximum, surfaces.inside(self.ceiling.direction));
        let [x, y, z] = self.faces().map(|face| [face, cut]);
        drawing.room_block(x, y, z, inside);
    }
}

impl Model for CornerBody {
    fn problem(&self, surfaces: Surfaces) -> Problem {
        let [low_x, low_y, low_z] = self.low();
        let cut = self.cut();
        let domain = Block::new(Point::new(low_x, low_y, low_z), Point::new(cut, cut, cut));
        let mut cells = CellSizes::new(Length::mm(6.0), Length::mm(120.0));
        cells.growth = 1.5;
        let mut drawing = Drawing::body(domain, surfaces, cells);
        self.draw_build_ups(&mut drawing);
        self.draw_steel(&mut drawing);
        self.claim_air(&mut drawing, surfaces);
        drawing.expose_outdoors(Side::XMinimum);
        drawing.expose_outdoors(Side::YMinimum);
        drawing.expose_outdoors(Side::ZMinimum);
        drawing.finish()
    }

    fn foam(&self) -> ThermalConductivity {
        self.side.foam_conductivity
    }

    fn lining(&self) -> Option<ThermalConductivity> {
        Some(self.side.lining_conductivity)
    }

    fn flanking(&self) -> HeatTransferCoefficient {
        let cut = self.cut();
        let [x, y, z] = self.faces().map(|face| cut - face);
        let [along_x, along_y, along_z] = self.edge_transmittance;
        self.side.transmittance() * (y * z)
            + self.end.transmittance() * (x * z)
            + self.ceiling.transmittance() * (x * y)
            + along_x * x
            + along_y * y
            + along_z * z
    }

    fn rounds_of_refinement(&self) -> usize {
        3
    }
}
