//! The slice across a stud or a ceiling joist: sheet, foam, C-section, air gap, lining.

use super::build_up::BuildUp;
use super::model::{Drawing, Model, Surfaces};
use super::waves::Waves;
use crate::conduction::{CellSizes, Point, Problem, Side};
use crate::design::{CheckedDesign, Surface};
use crate::material::STEEL;
use crate::units::{HeatTransferCoefficient, Length, ThermalConductivity};

/// Everything the field across one frame member depends on, and nothing else.
///
/// A member that may stand anywhere is taken to stand on a crest, and the sheet as flat at its inner
/// crests. There the web stands in the middle of one spacing, so that the cut sides lie where no heat
/// crosses. Over a trough the sheet is drawn as it waves ([`Waves`]), the middle of the flanges over
/// that of the trough, and ψ is what the section loses more than without the member.
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
    /// From one member to the next as drawn: over a trough two waves, whatever the spacing chosen.
    pub spacing: Length,
    /// The waves behind it, where it stands over a trough.
    pub waves: Option<Waves>,
}

/// Number of the mark in the middle of the inner flange.
pub const INNER_FLANGE: usize = 0;
/// Number of the mark in the middle of the outer flange.
pub const OUTER_FLANGE: usize = 1;

impl FrameSlice {
    /// The slice of a framed surface of a design.
    pub fn of(checked: &CheckedDesign, surface: Surface) -> Self {
        let on_a_crest = Self::on_a_crest(checked, surface);
        Waves::behind_members(checked, surface).map_or(on_a_crest, |waves| on_a_crest.over(waves))
    }

    /// The same with its member over a trough of such waves.
    #[must_use]
    pub fn over(self, waves: Waves) -> Self {
        let waves = waves.behind_a_member();
        Self { spacing: waves.width(), waves: Some(waves), ..self }
    }

    /// The same if its members stood on crests, the sheet flat.
    pub fn on_a_crest(checked: &CheckedDesign, surface: Surface) -> Self {
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
            waves: None,
        }
    }

    /// Where the web stands along the slice.
    pub fn web_at(&self) -> Length {
        match &self.waves {
            None => self.spacing / 2.0,
            Some(_) => (self.spacing - self.flange) / 2.0,
        }
    }

    /// The outermost steel.
    pub fn bottom(&self) -> Length {
        self.waves.map_or(-self.build_up.sheet, |waves| waves.bottom())
    }

    fn draw_layers(&self, drawing: &mut Drawing) {
        let build_up = &self.build_up;
        let along = [Length::ZERO, self.spacing];
        match &self.waves {
            Some(waves) => waves.draw(drawing, build_up),
            None => {
                drawing.fill(along, build_up.foam_span(), build_up.foam_conductivity);
                drawing.fill(along, build_up.gap_span(), build_up.gap_conductivity());
                drawing.fill(along, build_up.sheet_span(), STEEL.conductivity);
            }
        }
        drawing.fill(along, build_up.lining_span(), build_up.lining_conductivity);
    }

    fn draw_member(&self, drawing: &mut Drawing) {
        let (web, thin) = (self.web_at(), self.steel_thickness);
        let (outer, inner) = (self.stand_off, self.stand_off + self.member);
        let flange = [web, web + self.flange];
        drawing.fill([web, web + thin], [outer, inner], STEEL.conductivity);
        drawing.fill(flange, [outer, outer + thin], STEEL.conductivity);
        drawing.fill(flange, [inner - thin, inner], STEEL.conductivity);
    }

    /// The section with its member or without.
    fn section(&self, surfaces: Surfaces, with_member: bool) -> Problem {
        let build_up = &self.build_up;
        let cells = CellSizes::new(Length::mm(1.0), Length::mm(16.0));
        let (along, across) = ([Length::ZERO, self.spacing], [self.bottom(), build_up.face()]);
        let mut drawing = Drawing::section(along, across, surfaces, cells);
        self.draw_layers(&mut drawing);
        if with_member {
            self.draw_member(&mut drawing);
        }
        match &self.waves {
            Some(waves) => waves.claim_outdoors(&mut drawing),
            None => drawing.expose_outdoors(Side::YMinimum),
        }
        drawing.expose_room(Side::YMaximum, build_up.direction);
        drawing.finish()
    }
}

impl Model for FrameSlice {
    /// x along the wall, y from outdoors to the room, y = 0 on the sheet's inner face.
    fn problem(&self, surfaces: Surfaces) -> Problem {
        self.section(surfaces, true)
    }

    fn foam(&self) -> ThermalConductivity {
        self.build_up.foam_conductivity
    }

    fn lining(&self) -> Option<ThermalConductivity> {
        Some(self.build_up.lining_conductivity)
    }

    fn flanking(&self) -> HeatTransferCoefficient {
        match self.waves {
            None => self.build_up.transmittance() * (self.spacing * Length::new(1.0)),
            Some(_) => HeatTransferCoefficient::ZERO,
        }
    }

    fn flanking_problem(&self) -> Option<Problem> {
        self.waves.map(|_| self.section(Surfaces::Ordinary, false))
    }

    fn points(&self) -> Vec<Point> {
        let middle = self.web_at() + self.flange / 2.0;
        let half = self.steel_thickness / 2.0;
        [self.stand_off + self.member - half, self.stand_off + half]
            .map(|depth| Point::new(middle, depth, Length::mm(500.0)))
            .to_vec()
    }
}
