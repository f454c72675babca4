//! The build-up of one framed surface as the details see it.

use super::model::Span;
use crate::design::{CheckedDesign, Stack, Surface};
use crate::envelope::{
    HeatFlow, OUTSIDE_SURFACE_RESISTANCE, air_layer_conductivity, corrugation, lining_material,
    series_resistance,
};
use crate::material::{REINFORCED_PLASTIC, STEEL};
use crate::units::{Length, ThermalConductivity, ThermalResistance, ThermalTransmittance};

/// Sheet of the cargo doors, which are not corrugated like the walls (makers' sheets: 2 mm).
const DOOR_SHEET: Length = Length::mm(2.0);

/// Sheet, foam, still air, lining: measured from the innermost steel plane towards the room.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BuildUp {
    /// Which way the heat flows.
    pub direction: HeatFlow,
    /// Thickness of the sheet, outside the plane.
    pub sheet: Length,
    /// Depth of foam.
    pub foam: Length,
    /// Where the back of the lining lies.
    pub lining_back: Length,
    /// Thickness of the lining, a wipeable panel over its board included.
    pub lining: Length,
    /// Conductivity of the foam.
    pub foam_conductivity: ThermalConductivity,
    /// Conductivity of the lining: board and panel are drawn as one that resists as both do in series,
    /// R = Σ d/λ. Across it that is exact; along it conducts less than the two by a few hundredths.
    pub lining_conductivity: ThermalConductivity,
}

/// What board and panel conduct as one.
fn lining_conductivity(stack: &Stack, board: ThermalConductivity) -> ThermalConductivity {
    if stack.panel > Length::ZERO {
        let resistance = stack.lining / board + stack.panel / REINFORCED_PLASTIC.conductivity;
        (stack.lining + stack.panel) / resistance
    } else {
        board
    }
}

impl BuildUp {
    /// The build-up of a framed surface of a design.
    pub fn of(checked: &CheckedDesign, surface: Surface) -> Self {
        let design = checked.design();
        let stack = design.stack(surface);
        Self {
            direction: HeatFlow::through(surface),
            sheet: corrugation(checked, surface).map_or(DOOR_SHEET, |sheet| sheet.thickness),
            foam: stack.foam,
            lining_back: stack.lining_back(),
            lining: stack.lining + stack.panel,
            foam_conductivity: crate::envelope::foam_material(design).conductivity,
            lining_conductivity: lining_conductivity(&stack, lining_material(design).conductivity),
        }
    }

    /// Where the finished face lies.
    pub fn face(&self) -> Length {
        self.lining_back + self.lining
    }

    /// The sheet.
    pub fn sheet_span(&self) -> Span {
        [-self.sheet, Length::ZERO]
    }

    /// The foam.
    pub fn foam_span(&self) -> Span {
        [Length::ZERO, self.foam]
    }

    /// The still air between foam and lining; empty where foam reaches the lining.
    pub fn gap_span(&self) -> Span {
        [self.foam, self.lining_back]
    }

    /// The lining.
    pub fn lining_span(&self) -> Span {
        [self.lining_back, self.face()]
    }

    /// What the still air behaves as; the foam's own where there is none.
    pub fn gap_conductivity(&self) -> ThermalConductivity {
        let gap = self.lining_back - self.foam;
        if gap > Length::ZERO {
            air_layer_conductivity(gap, self.direction)
        } else {
            self.foam_conductivity
        }
    }

    /// U of the plain build-up over a flat sheet.
    pub fn transmittance(&self) -> ThermalTransmittance {
        let layers: [ThermalResistance; 4] = [
            self.sheet / STEEL.conductivity,
            self.foam / self.foam_conductivity,
            (self.lining_back - self.foam) / self.gap_conductivity(),
            self.lining / self.lining_conductivity,
        ];
        series_resistance(
            self.direction.inside_surface_resistance(),
            layers,
            OUTSIDE_SURFACE_RESISTANCE,
        )
        .transmittance()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::conduction::{Accuracy, Block, Problem, solve};
    use crate::design::Design;
    use crate::detail::{Detail, FrameSlice, OUTDOORS, ROOM, Surfaces};
    use crate::material::PLYWOOD;

    fn with_panel(thickness: f64) -> CheckedDesign {
        let design = Design { panel_thickness: Length::mm(thickness), ..Design::default() };
        design.check().unwrap()
    }

    /// 1.6 mm of steel, 50 mm of foam, 13 mm of air, 12 mm of plywood, 2.3 mm of panel: R = 0.13 + 0.000032 + 0.05/0.026
    /// + R_g + 0.012/0.13 + 0.0023/0.19 + 0.04, so that the panel adds 0.012105 m²·K/W and nothing else moves.
    #[test]
    fn a_panel_adds_its_own_resistance_to_a_build_up() {
        let resistance = |thickness| {
            BuildUp::of(&with_panel(thickness), Surface::SideWall).transmittance().resistance()
        };
        let added = (resistance(2.3) - resistance(0.0)).value();
        assert!((added - 0.0023 / 0.19).abs() < 1e-9, "{added}");
    }

    /// Board and panel as two layers before a stud, where heat also runs along the lining: loss and coldest spot are
    /// those of the one that stands for both, within 0.2 % and 0.05 K at 50 K.
    #[test]
    fn board_and_panel_drawn_as_one_conduct_as_the_two_do() {
        let slice = FrameSlice::of(&with_panel(2.3), Surface::SideWall);
        let as_one = Detail::FrameLine(slice).problem(Surfaces::Damp);
        let mut as_two = as_one.clone();
        let [back, face] = slice.build_up.lining_span();
        let board_to = back + Length::mm(12.0);
        let mut paint = |from, to, conductivity| {
            as_two.paint(Block::flat(Length::ZERO, from, slice.spacing, to), conductivity);
        };
        paint(back, board_to, PLYWOOD.conductivity);
        paint(board_to, face, REINFORCED_PLASTIC.conductivity);
        let solved = |problem: &Problem| {
            let solution = solve(problem, &Accuracy::default()).unwrap();
            let lowest = solution.lowest_temperature_factor(ROOM).unwrap().factor.value();
            (solution.coupling(ROOM, OUTDOORS).value(), lowest)
        };
        let ((loss_of_one, factor_of_one), (loss, factor)) = (solved(&as_one), solved(&as_two));
        assert!((loss_of_one / loss - 1.0).abs() < 0.002, "{loss_of_one} {loss}");
        assert!((factor_of_one - factor).abs() < 0.001, "{factor_of_one} {factor}");
    }
}
