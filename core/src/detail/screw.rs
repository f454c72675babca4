//! A long steel screw from the room through lining and foam into the sheet.

use super::build_up::BuildUp;
use super::model::{CUT_DISTANCE, Drawing, Model, Surfaces};
use crate::conduction::{Block, CellSizes, Point, Problem, Side, SurfaceResistances};
use crate::design::{CheckedDesign, Surface};
use crate::material::STEEL;
use crate::units::{HeatTransferCoefficient, Length, ThermalConductivity};

/// Diameter of the shank, that of a self-drilling screw ST 4.8 (ISO 15480, from memory).
pub const SHANK_DIAMETER: Length = Length::mm(4.8);
/// Diameter of the head. Common practice, no source.
pub const HEAD_DIAMETER: Length = Length::mm(11.0);
/// Thickness of the head, which lies on the lining. Common practice, no source.
const HEAD_THICKNESS: Length = Length::mm(2.0);

/// A quarter of the wall round a screw; x and z across the wall from its axis, y the depth into the room
/// from the sheet. Shank and head are drawn square with the same cross-section: what a screw conducts goes
/// with that, and the foam round it takes next to nothing from it.
///
/// It ends in the sheet, the coldest steel that it can reach; one that ends in a stud's outer flange loses
/// less. A screw of the lining into the stud's inner flange crosses no foam and is none of these.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ScrewBody {
    /// The wall it goes through.
    pub wall: BuildUp,
}

impl ScrewBody {
    /// A screw in a side wall of a design.
    pub fn of(checked: &CheckedDesign) -> Self {
        Self { wall: BuildUp::of(checked, Surface::SideWall) }
    }

    fn cut() -> Length {
        CUT_DISTANCE / 2.0
    }
}

/// Half the side of the square with the cross-section of a circle: d·√π / 4.
fn half_side(diameter: Length) -> Length {
    diameter * (core::f64::consts::PI.sqrt() / 4.0)
}

impl Model for ScrewBody {
    fn problem(&self, surfaces: Surfaces) -> Problem {
        let wall = &self.wall;
        let (zero, cut) = (Length::ZERO, Self::cut());
        let all = [zero, cut];
        let face = wall.face();
        let over_head = face + HEAD_THICKNESS;
        let domain =
            Block::new(Point::new(zero, -wall.sheet, zero), Point::new(cut, over_head, cut));
        let mut cells = CellSizes::new(Length::mm(0.8), Length::mm(60.0));
        cells.growth = 1.5;
        let mut drawing = Drawing::body(domain, surfaces, cells);
        drawing.fill_block(all, wall.foam_span(), all, wall.foam_conductivity);
        drawing.fill_block(all, wall.gap_span(), all, wall.gap_conductivity());
        drawing.fill_block(all, wall.lining_span(), all, wall.lining_conductivity);
        drawing.fill_block(all, wall.sheet_span(), all, STEEL.conductivity);
        for (diameter, depth) in
            [(SHANK_DIAMETER, [-wall.sheet, face]), (HEAD_DIAMETER, [face, over_head])]
        {
            let square = [zero, half_side(diameter)];
            drawing.fill_block(square, depth, square, STEEL.conductivity);
        }
        let inside = SurfaceResistances::uniform(surfaces.inside(wall.direction));
        drawing.room_block(all, [face, over_head], all, inside);
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
        self.wall.transmittance() * (Self::cut() * Self::cut())
    }

    fn copies(&self) -> f64 {
        4.0
    }

    fn rounds_of_refinement(&self) -> usize {
        4
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::detail::Detail;

    /// Modified Bessel functions of the second kind, `K_n(x)` = ∫₀^∞ exp(−x·cosh t)·cosh(n·t) dt.
    fn bessel_k(n: f64, x: f64) -> f64 {
        let step = 1e-3;
        let at = |t: f64| libm::exp(-x * libm::cosh(t)) * libm::cosh(n * t);
        step * (0.5 * at(0.0) + (1..12_000).map(|k| at(f64::from(k) * step)).sum::<f64>())
    }

    /// A wide sheet round a rod is an annular fin: G = 2π·λ·t·(m·r)·K₁(m·r)/K₀(m·r), m = √(h/(λ·t)).
    fn annular_fin(conductivity: f64, thickness: f64, h: f64, radius: f64) -> f64 {
        let mr = (h / (conductivity * thickness)).sqrt() * radius;
        let ratio = bessel_k(1.0, mr) / bessel_k(0.0, mr);
        2.0 * core::f64::consts::PI * conductivity * thickness * mr * ratio
    }

    /// Between two sheets of steel, 1.6 mm outdoors and 1 mm in the room, with 60 mm of foam, the screw is a rod
    /// between two annular fins, G = 1/(1/G₁ + d/(λ·A) + 1/G₂); each fin gives heat to the air and, through the foam,
    /// to the other side. The rod stands between sheets that without it differ by R_foam/R_tot of the whole, and by
    /// reciprocity its flow counts in the room by the same share: χ = G·(R_foam/R_tot)².
    #[test]
    fn a_screw_between_two_sheets_is_a_rod_between_two_annular_fins() {
        let mm = Length::mm;
        let of_default = ScrewBody::of(&CheckedDesign::default()).wall;
        let wall = BuildUp {
            sheet: mm(1.6),
            foam: mm(60.0),
            lining_back: mm(60.0),
            lining: mm(1.0),
            foam_conductivity: ThermalConductivity::new(0.026),
            lining_conductivity: STEEL.conductivity,
            ..of_default
        };
        let field = Detail::Screw(ScrewBody { wall }).solve().unwrap();
        let foam = 0.060 / 0.026;
        let radius = 0.0024;
        let room = annular_fin(50.0, 0.001, 1.0 / 0.13 + 1.0 / foam, radius);
        let outdoors = annular_fin(50.0, 0.0016, 1.0 / 0.04 + 1.0 / foam, radius);
        let rod = 50.0 * core::f64::consts::PI * radius * radius / 0.060;
        let through = 1.0 / (1.0 / room + 1.0 / rod + 1.0 / outdoors);
        let share = foam / (0.13 + 0.04 + foam);
        let expected = through * share * share;
        let chi = field.point_transmittance().value();
        assert!((chi / expected - 1.0).abs() < 0.05, "{chi} and {expected}");
    }

    /// ISO 6946:2017 annex F (from memory) takes for a fastener right through the insulation χ = 0.8·λ·A/d·(R₁/R_tot)²,
    /// in which the lining and the air at the head hold nothing back. Here they do, so no screw loses more than without
    /// the 0.8; and they hold back no more than three quarters of it.
    #[test]
    fn a_screw_through_the_wall_loses_less_than_the_fastener_of_the_standard() {
        let body = ScrewBody::of(&CheckedDesign::default());
        let field = Detail::Screw(body).solve().unwrap();
        let total = body.wall.transmittance().resistance().value();
        let (depth, foam) = (body.wall.foam.value(), body.wall.foam / body.wall.foam_conductivity);
        let section = core::f64::consts::PI / 4.0 * 0.0048 * 0.0048;
        let share = foam.value() / total;
        let most = 50.0 * section / depth * share * share;
        let chi = field.point_transmittance().value();
        assert!(chi < most && chi > 0.25 * most, "{chi} of {most}");
        assert!(field.is_settled);
        // Its head is far colder than the plain lining.
        assert!(field.temperature_factor.value() < 0.75, "{:?}", field.temperature_factor);
    }
}
