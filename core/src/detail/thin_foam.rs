//! A spot where the foam was sprayed too thin, or missed.

use super::build_up::BuildUp;
use super::model::{CUT_DISTANCE, Drawing, Model, Surfaces};
use crate::conduction::{CellSizes, Problem, Side};
use crate::design::{CheckedDesign, Surface};
use crate::material::STEEL;
use crate::units::{HeatTransferCoefficient, Length, ThermalConductivity};

/// Half a section across a long patch of thin foam; x along the wall from the middle of the patch, y the depth
/// into the room from the sheet. The lining stays where it is, and still air stands where foam is missing, as one
/// layer as deep as it is on either side of the step. Its ends are left out: a patch is taken to be long.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ThinFoamSection {
    /// The wall as it should be.
    pub wall: BuildUp,
    /// Foam within the patch.
    pub depth: Length,
    /// Width of the patch.
    pub width: Length,
}

impl ThinFoamSection {
    /// The patch on a side wall of a design.
    pub fn of(checked: &CheckedDesign) -> Self {
        let design = checked.design();
        let wall = BuildUp::of(checked, Surface::SideWall);
        Self { wall, depth: design.thin_foam_depth, width: design.thin_foam_width }
    }

    /// The wall as it is within the patch.
    pub fn patch(&self) -> BuildUp {
        BuildUp { foam: self.depth, ..self.wall }
    }

    fn cut(&self) -> Length {
        self.width / 2.0 + CUT_DISTANCE
    }
}

impl Model for ThinFoamSection {
    fn problem(&self, surfaces: Surfaces) -> Problem {
        let (wall, patch) = (&self.wall, self.patch());
        let half = self.width / 2.0;
        let all = [Length::ZERO, self.cut()];
        let mut drawing = Drawing::section(
            all,
            [-wall.sheet, wall.face()],
            surfaces,
            CellSizes::new(Length::mm(1.0), Length::mm(60.0)),
        );
        for (build_up, along) in [(&patch, [Length::ZERO, half]), (wall, [half, self.cut()])] {
            drawing.fill(along, build_up.foam_span(), build_up.foam_conductivity);
            drawing.fill(along, build_up.gap_span(), build_up.gap_conductivity());
        }
        drawing.fill(all, wall.lining_span(), wall.lining_conductivity);
        drawing.fill(all, wall.sheet_span(), STEEL.conductivity);
        drawing.expose_outdoors(Side::YMinimum);
        drawing.expose_room(Side::YMaximum, wall.direction);
        drawing.finish()
    }

    fn foam(&self) -> ThermalConductivity {
        self.wall.foam_conductivity
    }

    fn lining(&self) -> Option<ThermalConductivity> {
        Some(self.wall.lining_conductivity)
    }

    fn flanking(&self) -> HeatTransferCoefficient {
        self.wall.transmittance() * (self.cut() * Length::new(1.0))
    }

    fn copies(&self) -> f64 {
        2.0
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::detail::{Detail, DetailField};
    use crate::envelope::{DAMP_SURFACE_RESISTANCE, OUTSIDE_SURFACE_RESISTANCE};

    fn solved(depth: f64, width: f64) -> (ThinFoamSection, DetailField) {
        let wall = BuildUp::of(&CheckedDesign::default(), Surface::SideWall);
        let section = ThinFoamSection { wall, depth: Length::mm(depth), width: Length::mm(width) };
        (section, Detail::ThinFoam(section).solve().unwrap())
    }

    /// A patch that is wider by 400 mm loses as much more as those 400 mm do as a plain wall: ψ(w₂) − ψ(w₁) =
    /// (U_patch − U_wall)·(w₂ − w₁). By hand, air of 13 mm 0.163 and of 53 mm 0.18 m²·K/W: 1/(0.13 + 10/26 + 0.18 + 0.092 + 0.04)
    /// = 1.21, 1/(0.13 + 50/26 + 0.163 + 0.092 + 0.04) = 0.43 W/(m²·K).
    #[test]
    fn a_wider_patch_loses_as_much_more_as_the_thinner_wall_does() {
        let ((section, narrow), (_, wide)) = (solved(10.0, 400.0), solved(10.0, 800.0));
        let psi = |field: &DetailField| field.linear_transmittance().value();
        let more = section.patch().transmittance().value() - section.wall.transmittance().value();
        assert!((more - 0.78).abs() < 0.01, "{more} W/(m²·K)");
        let gained = psi(&wide) - psi(&narrow);
        assert!((gained / (more * 0.4) - 1.0).abs() < 0.005, "{gained} and {}", more * 0.4);
        // At its edges steel and lining spread the heat, so that it loses somewhat more than its area alone.
        let edges = psi(&narrow) - more * 0.4;
        assert!(edges > 0.0 && edges < 0.1 * psi(&narrow), "{edges} of {}", psi(&narrow));
        assert!(narrow.is_settled && wide.is_settled);
    }

    /// In the middle of a wide patch without foam the wall is plane: f = 1 − 0.25/(0.25 + R + 0.04), R of still air, 12 mm
    /// of plywood (0.012/0.13) and the sheet.
    #[test]
    fn the_middle_of_a_wide_patch_is_as_cold_as_a_plane_wall() {
        let (section, field) = solved(0.0, 1000.0);
        let patch = section.patch();
        let gap = patch.lining_back / patch.gap_conductivity();
        let within = gap.value() + 0.012 / 0.13 + patch.sheet.value() / 50.0;
        let (inside, outside) =
            (DAMP_SURFACE_RESISTANCE.value(), OUTSIDE_SURFACE_RESISTANCE.value());
        let expected = 1.0 - inside / (inside + within + outside);
        let factor = field.temperature_factor.value();
        assert!((factor - expected).abs() < 0.002, "{factor} and {expected}");
    }
}
