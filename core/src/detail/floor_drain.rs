//! A floor drain: a steel pipe down through the floor, plugged where it meets the room.

use super::floor::FloorBuildUp;
use super::model::{CUT_DISTANCE, Drawing, Model, Surfaces};
use crate::conduction::{Block, CellSizes, Point, Problem, Side, SurfaceResistances};
use crate::design::CheckedDesign;
use crate::envelope::HeatFlow;
use crate::material::{PLYWOOD, STEEL};
use crate::units::{HeatTransferCoefficient, Length, ThermalConductivity};

/// Outside diameter of the pipe, that of 2 in steel pipe (EN 10255, from memory).
pub const PIPE_DIAMETER: Length = Length::mm(60.3);
/// Its wall (EN 10255, medium, from memory).
const PIPE_WALL: Length = Length::mm(3.6);
/// Side of the square plate that it is welded to, which lies on the finished floor. Common practice, no source.
pub const DRAIN_PLATE: Length = Length::mm(150.0);
/// Thickness of plate and plug. Common practice, no source.
const DRAIN_PLATE_THICKNESS: Length = Length::mm(3.0);
/// How far the pipe stands out below foam and members. Common practice, no source.
const BELOW_FLOOR: Length = Length::mm(50.0);

/// A quarter of the floor round a drain; x and z along and across the box from its axis, y up from the plywood's top.
///
/// The pipe is open to outdoor air below and shut by a steel plug level with its plate, for a trap of water would
/// freeze. It is drawn square with the same girth. Floor members are left out: it is put between them.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FloorDrainBody {
    /// The floor it goes through.
    pub floor: FloorBuildUp,
}

impl FloorDrainBody {
    /// A drain in the floor of a design.
    pub fn of(checked: &CheckedDesign) -> Self {
        Self { floor: FloorBuildUp::of(checked) }
    }

    /// Half the outer side of the square of the same girth: π·d / 8.
    fn half_side() -> Length {
        PIPE_DIAMETER * (core::f64::consts::PI / 8.0)
    }

    fn cut() -> Length {
        CUT_DISTANCE / 2.0 + Self::half_side()
    }

    /// Where the pipe ends.
    pub fn bottom(&self) -> Length {
        self.floor.foam_bottom().min(self.floor.member_bottom()) - BELOW_FLOOR
    }

    /// Top of plate and plug.
    pub fn top(&self) -> Length {
        self.floor.face() + DRAIN_PLATE_THICKNESS
    }
}

impl Model for FloorDrainBody {
    fn problem(&self, surfaces: Surfaces) -> Problem {
        let floor = &self.floor;
        let (zero, cut, outside) = (Length::ZERO, Self::cut(), Self::half_side());
        let all = [zero, cut];
        let (bottom, face, top) = (self.bottom(), floor.face(), self.top());
        let domain = Block::new(Point::new(zero, bottom, zero), Point::new(cut, top, cut));
        let mut cells = CellSizes::new(Length::mm(3.0), Length::mm(60.0));
        cells.growth = 1.5;
        let mut drawing = Drawing::body(domain, surfaces, cells);
        let foam = floor.foam_conductivity;
        drawing.fill_block(all, [floor.foam_bottom(), -floor.plywood], all, foam);
        drawing.fill_block(all, [-floor.plywood, zero], all, PLYWOOD.conductivity);
        drawing.fill_block(all, [zero, floor.over], all, foam);
        drawing.fill_block(all, [floor.over, face], all, PLYWOOD.conductivity);
        let pipe = [zero, outside];
        drawing.fill_block(pipe, [bottom, face], pipe, STEEL.conductivity);
        let plate = [zero, DRAIN_PLATE / 2.0];
        drawing.fill_block(plate, [face, top], plate, STEEL.conductivity);
        let bore = [zero, outside - PIPE_WALL];
        drawing.bore_to_outdoors(bore, [bottom, face], bore);
        let inside = surfaces.inside(HeatFlow::Downwards);
        drawing.room_block(all, [face, top], all, SurfaceResistances::uniform(inside));
        drawing.outdoors_block(all, [bottom, floor.foam_bottom()], all);
        drawing.expose_outdoors(Side::YMinimum);
        drawing.expose_room(Side::YMaximum, HeatFlow::Downwards);
        drawing.finish()
    }

    fn foam(&self) -> ThermalConductivity {
        self.floor.foam_conductivity
    }

    fn flanking(&self) -> HeatTransferCoefficient {
        self.floor.transmittance() * (Self::cut() * Self::cut())
    }

    fn copies(&self) -> f64 {
        4.0
    }

    fn rounds_of_refinement(&self) -> usize {
        3
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::detail::Detail;

    /// The plate takes heat from the room over 0.15² m² through 0.17 m²·K/W, 0.132 W/K. Its pipe gives it off inside over a
    /// girth of 8·(π·60.3/8 − 3.6) = 161 mm, and outside, over one of 189 mm, from the foam's underside on. Steel of
    /// λ·t = 50·0.0036 with h = 25 W/(m²·K) is a fin of √(h·P·λ·A) = √(25·0.161·50·0.00063) = 0.36 W/K, long enough to count
    /// whole; the plug's own underside adds 25·0.040² = 0.04. In series 1/(1/0.132 + 1/0.40) = 0.099 W/K; the floor that it
    /// stands for, 0.30 W/(m²·K) · 0.0225 m² = 0.007, comes off. What the floor beside the plate gives to it and the pipe's
    /// outer face move that by less than a third.
    #[test]
    fn a_drain_loses_what_its_plate_takes_and_its_pipe_gives_off() {
        let field = Detail::FloorDrain(FloorDrainBody::of(&CheckedDesign::default()));
        let field = field.solve().unwrap();
        let chi = field.point_transmittance().value();
        assert!(chi > 0.092 * 0.67 && chi < 0.092 * 1.33, "{chi}");
        assert!(field.is_settled);
        // The plug is cold steel: f = 0.04/(0.04 + 0.25) = 0.14 where nothing warms it from aside.
        let factor = field.temperature_factor.value();
        assert!(factor > 0.05 && factor < 0.3, "{factor}");
    }
}
