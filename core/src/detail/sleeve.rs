//! A damper's steel sleeve through the wall, closed by its blade at the outer skin.

use super::build_up::BuildUp;
use super::model::{CUT_DISTANCE, Drawing, Model, Span, Surfaces};
use crate::conduction::{Block, CellSizes, Point, Problem, Side, SurfaceResistances};
use crate::design::{CheckedDesign, SleeveEnd, Surface};
use crate::material::{RIGID_PLASTIC, STEEL};
use crate::units::{HeatTransferCoefficient, Length, ThermalConductivity};

/// Sheet of sleeve and blade. Common practice, no source.
const SLEEVE_SHEET: Length = Length::mm(1.0);

/// Wall of the plastic pipe that goes on from a recessed sleeve. Common practice, no source.
const PIPE_WALL: Length = Length::mm(3.0);
/// Foam closed round a recessed sleeve and its pipe, where the wall's own reaches less far. Common practice, no source.
pub const COLLAR: Length = Length::mm(25.0);

/// A quarter of the wall round a sleeve; x and z across the wall from the sleeve's axis, y the
/// depth into the room from the sheet. The round sleeve is drawn square with the same girth.
///
/// A sleeve through the lining takes heat from the room all along and carries it to the skin. A recessed one ends where
/// the studs begin, or flush with the sheet if they touch it; a plastic pipe of the same bore goes on to the room, and a
/// collar of foam closes round both from the sheet to the lining. Either way the room's air stands against the blade,
/// with foam on it or bare.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SleeveBody {
    /// The wall it goes through.
    pub wall: BuildUp,
    /// Inside diameter.
    pub diameter: Length,
    /// Where the steel ends, if before the lining's face.
    pub recessed_to: Option<Length>,
    /// Foam on the blade.
    pub blade_foam: Length,
}

impl SleeveBody {
    /// A sleeve of an inside diameter in a side wall of a design.
    pub fn of(checked: &CheckedDesign, diameter: Length) -> Self {
        let design = checked.design();
        let recessed_to = match design.sleeve_end {
            SleeveEnd::ThroughLining => None,
            SleeveEnd::Recessed => Some(design.stack(Surface::SideWall).frame_stand_off()),
        };
        let wall = BuildUp::of(checked, Surface::SideWall);
        Self { wall, diameter, recessed_to, blade_foam: design.damper_blade_foam }
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
        let mut round = |to: Length, depth: Span, conductivity| {
            drawing.fill_block([zero, to], depth, [zero, to], conductivity);
        };
        if let Some(end) = self.recessed_to {
            round(half + PIPE_WALL + COLLAR, [zero, wall.lining_back], wall.foam_conductivity);
            round(half + PIPE_WALL, [end, depth[1]], RIGID_PLASTIC.conductivity);
        }
        let steel = [depth[0], self.recessed_to.unwrap_or(depth[1])];
        round(outside, steel, STEEL.conductivity);
        let blade = -wall.sheet + SLEEVE_SHEET;
        let air = blade + self.blade_foam;
        round(half, [blade, air], wall.foam_conductivity);
        let inside = SurfaceResistances::uniform(surfaces.inside(wall.direction));
        drawing.bore_to_room([zero, half], [air, depth[1]], [zero, half], inside);
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
        self.wall.transmittance() * (self.cut() * self.cut())
    }

    fn copies(&self) -> f64 {
        4.0
    }

    fn rounds_of_refinement(&self) -> usize {
        2
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::design::Design;
    use crate::detail::{Detail, DetailField};

    fn solved(sleeve_end: SleeveEnd, blade_foam: f64) -> DetailField {
        let damper_blade_foam = Length::mm(blade_foam);
        let checked =
            Design { sleeve_end, damper_blade_foam, ..Design::default() }.check().unwrap();
        Detail::Sleeve(SleeveBody::of(&checked, Length::mm(200.0))).solve().unwrap()
    }

    /// The bare blade alone is π·0.2²/4 = 0.031 m² of sheet between 0.13 and 0.04 m²·K/W, 0.185 W/K; the square of the same
    /// girth is 0.1571² = 0.0247 m², 0.145. A recessed sleeve loses that and the little that 22 mm of steel take; one through
    /// the lining is a fin besides, and loses far more.
    #[test]
    fn a_recessed_sleeve_loses_little_but_what_its_blade_does() {
        let [through, recessed] =
            [SleeveEnd::ThroughLining, SleeveEnd::Recessed].map(|end| solved(end, 0.0));
        let chi = |field: &DetailField| field.point_transmittance().value();
        assert!(chi(&recessed) > 0.145 * 0.9 && chi(&recessed) < 0.145 * 1.8, "{}", chi(&recessed));
        assert!(chi(&through) > 1.3 * chi(&recessed), "{} {}", chi(&through), chi(&recessed));
        assert!(recessed.is_settled && through.is_settled);
    }

    /// Foam on the blade, 25 mm with R = 0.025/0.026, leaves 0.0247/(0.13 + 0.96 + 0.04) = 0.022 W/K of it, so that 0.12 W/K
    /// and more are saved. A bare blade has f = 0.04/(0.25 + 0.04) = 0.14 where its field is plane, and less in the angle of
    /// two cold faces, blade and sleeve, but not half; under foam the coldest is warmer than either.
    #[test]
    fn foam_on_the_blade_keeps_the_room_from_the_coldest_steel() {
        let [bare, foamed] = [0.0, 25.0].map(|foam| solved(SleeveEnd::Recessed, foam));
        let saved = bare.point_transmittance().value() - foamed.point_transmittance().value();
        assert!(saved > 0.11, "{saved}");
        let factor = |field: &DetailField| field.temperature_factor.value();
        let plane = 0.04 / 0.29;
        assert!(factor(&bare) < plane && factor(&bare) > 0.5 * plane, "{}", factor(&bare));
        assert!(factor(&foamed) > plane, "{}", factor(&foamed));
    }
}
