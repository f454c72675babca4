//! The slice across a stud or a ceiling joist: sheet, foam, C-section, air gap, lining.

use super::build_up::BuildUp;
use super::model::{Drawing, Model, ROOM, Surfaces};
use crate::conduction::{CellSizes, Point, Problem, Side};
use crate::design::{CheckedDesign, Surface};
use crate::material::STEEL;
use crate::units::{HeatTransferCoefficient, Length};

/// Everything the field across one frame member depends on, and nothing else.
///
/// The sheet is taken as flat at its inner crests: a stud stands off the crests, and the troughs
/// behind it would only help. The web stands in the middle of one spacing, so that the cut sides
/// lie where no heat crosses.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FrameSlice {
    /// The surface it crosses.
    pub build_up: BuildUp,
    /// From the sheet to the member's outer flange.
    pub stand_off: Length,
    /// Depth of the member's web.
    pub member: Length,
    /// Width of its flanges.
    pub flange: Length,
    /// Its sheet thickness.
    pub steel_thickness: Length,
    /// From one member to the next.
    pub spacing: Length,
}

/// Number of the mark in the middle of the inner flange.
pub const INNER_FLANGE: usize = 0;
/// Number of the mark in the middle of the outer flange.
pub const OUTER_FLANGE: usize = 1;

impl FrameSlice {
    /// The slice of a framed surface of a design.
    pub fn of(checked: &CheckedDesign, surface: Surface) -> Self {
        let design = checked.design();
        let stack = design.stack(surface);
        let (steel_thickness, spacing) = if surface == Surface::Ceiling {
            (design.joist_steel_thickness, design.joist_spacing)
        } else {
            (design.stud_steel_thickness, design.stud_spacing)
        };
        Self {
            build_up: BuildUp::of(checked, surface),
            stand_off: stack.frame_stand_off(),
            member: stack.member,
            flange: design.flange_width,
            steel_thickness,
            spacing,
        }
    }

    /// Where the web stands along the slice.
    pub fn web_at(&self) -> Length {
        self.spacing / 2.0
    }
}

impl Model for FrameSlice {
    /// x along the wall, y from outdoors to the room, y = 0 on the sheet's inner face.
    fn problem(&self, surfaces: Surfaces) -> Problem {
        let build_up = &self.build_up;
        let along = [Length::ZERO, self.spacing];
        let mut drawing = Drawing::section(
            along,
            [-build_up.sheet, build_up.face()],
            build_up.foam_conductivity,
            CellSizes::new(Length::mm(1.0), Length::mm(16.0)),
        );
        drawing.fill(along, build_up.sheet_span(), STEEL.conductivity);
        drawing.fill(along, build_up.gap_span(), build_up.gap_conductivity());
        drawing.fill(along, build_up.lining_span(), build_up.lining_conductivity);
        let (web, thin) = (self.web_at(), self.steel_thickness);
        let (outer, inner) = (self.stand_off, self.stand_off + self.member);
        let flange = [web, web + self.flange];
        drawing.fill([web, web + thin], [outer, inner], STEEL.conductivity);
        drawing.fill(flange, [outer, outer + thin], STEEL.conductivity);
        drawing.fill(flange, [inner - thin, inner], STEEL.conductivity);
        drawing.expose_outdoors(Side::YMinimum);
        let mut problem = drawing.finish();
        problem.expose(Side::YMaximum, ROOM, surfaces.inside(build_up.direction));
        problem
    }

    fn flanking(&self) -> HeatTransferCoefficient {
        self.build_up.transmittance() * (self.spacing * Length::new(1.0))
    }

    fn points(&self) -> Vec<Point> {
        let middle = self.web_at() + self.flange / 2.0;
        let half = self.steel_thickness / 2.0;
        [self.stand_off + self.member - half, self.stand_off + half]
            .map(|depth| Point::new(middle, depth, Length::mm(500.0)))
            .to_vec()
    }
}
