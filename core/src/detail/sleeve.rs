//! A damper's steel sleeve through the wall, closed by its blade at the outer skin.

use super::build_up::BuildUp;
use super::model::{CUT_DISTANCE, Drawing, Model, Surfaces};
use crate::conduction::{Block, CellSizes, Point, Problem, Side, SurfaceResistances};
use crate::design::{CheckedDesign, Surface};
use crate::material::STEEL;
use crate::units::{HeatTransferCoefficient, Length, ThermalConductivity};

/// Sheet of sleeve and blade. Common practice, no source.
const SLEEVE_SHEET: Length = Length::mm(1.0);

/// A quarter of the wall round a sleeve; x and z across the wall from the sleeve's axis, y the
/// depth into the room from the sheet. The round sleeve is drawn square with the same girth.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SleeveBody {
    /// The wall it goes through.
    pub wall: BuildUp,
    /// Inside diameter.
    pub diameter: Length,
}

impl SleeveBody {
    /// A sleeve of an inside diameter in a side wall of a design.
    pub fn of(checked: &CheckedDesign, diameter: Length) -> Self {
        Self { wall: BuildUp::of(checked, Surface::SideWall), diameter }
    }

    /// Half the side of the square of the same girth: π·d / 8.
    fn half_side(&self) -> Length {
        self.diameter * (core::f64::consts::PI / 8.0)
    }

    fn cut(&self) -> Length {
        CUT_DISTANCE / 2.0 + self.half_side()
    }
}

impl Model for SleeveBody {
    fn problem(&self, surfaces: Surfaces) -> Problem {
        let wall = &self.wall;
        let (zero, cut, half) = (Length::ZERO, self.cut(), self.half_side());
        let outside = half + SLEEVE_SHEET;
        let all = [zero, cut];
        let depth = [-wall.sheet, wall.face()];
        let domain = Block::new(Point::new(zero, depth[0], zero), Point::new(cut, depth[1], cut));
        let mut cells = CellSizes::new(Length::mm(4.0), Length::mm(60.0));
        cells.growth = 1.5;
        let mut drawing = Drawing::body(domain, surfaces, cells);
        drawing.fill_block(all, wall.foam_span(), all, wall.foam_conductivity);
        drawing.fill_block(all, wall.gap_span(), all, wall.gap_conductivity());
        drawing.fill_block(all, wall.lining_span(), all, wall.lining_conductivity);
        drawing.fill_block(all, wall.sheet_span(), all, STEEL.conductivity);
        drawing.fill_block([zero, outside], depth, [zero, outside], STEEL.conductivity);
        let inside = SurfaceResistances::uniform(surfaces.inside(wall.direction));
        let blade = -wall.sheet + SLEEVE_SHEET;
        drawing.bore_to_room([zero, half], [blade, depth[1]], [zero, half], inside);
        drawing.expose_outdoors(Side::YMinimum);
        drawing.expose_room(Side::YMaximum, wall.direction);
        drawing.finish()
    }

    fn foam(&self) -> ThermalConductivity {
        self.wall.foam_conductivity
    }

    fn flanking(&self) -> HeatTransferCoefficient {
        self.wall.transmittance() * (self.cut() * self.cut())
    }

    fn copies(&self) -> f64 {
        4.0
    }

    fn rounds_of_refinement(&self) -> usize {
        2
    }
}
