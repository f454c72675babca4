//! The slice across a steel member under the floor.

use super::floor::FloorBuildUp;
use super::model::{Drawing, Model, Surfaces};
use crate::conduction::{CellSizes, Point, Problem, Side};
use crate::design::CheckedDesign;
use crate::envelope::HeatFlow;
use crate::material::{PLYWOOD, STEEL};
use crate::units::{HeatTransferCoefficient, Length, ThermalConductivity};

/// Everything the field across one floor member depends on.
///
/// The member is a C with its web in the middle of one spacing. A wrap covers every face of the
/// member below the foam and fills the C.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FloorMemberSlice {
    /// The floor it carries.
    pub floor: FloorBuildUp,
}

/// Number of the mark on the plywood over the member's web.
pub const OVER_MEMBER: usize = 0;

impl FloorMemberSlice {
    /// The slice of a design.
    pub fn of(checked: &CheckedDesign) -> Self {
        Self { floor: FloorBuildUp::of(checked) }
    }

    fn web_at(&self) -> Length {
        (self.floor.member.spacing - self.floor.member.flange) / 2.0
    }
}

impl Model for FloorMemberSlice {
    /// x along the box, y up, y = 0 on the plywood's top.
    fn problem(&self, surfaces: Surfaces) -> Problem {
        let floor = &self.floor;
        let member = floor.member;
        let along = [Length::ZERO, member.spacing];
        let (top, bottom) = (-floor.plywood, floor.member_bottom());
        let lowest = (bottom - floor.wrap).min(floor.foam_bottom());
        let mut drawing = Drawing::section(
            along,
            [lowest, floor.face()],
            surfaces,
            CellSizes::new(Length::mm(1.5), Length::mm(16.0)),
        );
        let (foam, wrap) = (floor.foam_conductivity, floor.wrap);
        drawing.fill(along, [floor.foam_bottom(), top], foam);
        drawing.fill(along, [Length::ZERO, floor.over], foam);
        if wrap > Length::ZERO {
            let wrapped = [self.web_at() - wrap, self.web_at() + member.flange + wrap];
            drawing.fill(wrapped, [lowest, floor.foam_bottom()], foam);
        }
        drawing.fill(along, [top, Length::ZERO], PLYWOOD.conductivity);
        drawing.fill(along, [floor.over, floor.face()], PLYWOOD.conductivity);
        let (web, thin) = (self.web_at(), member.thickness);
        let flange = [web, web + member.flange];
        drawing.fill([web, web + thin], [bottom, top], STEEL.conductivity);
        drawing.fill(flange, [top - thin, top], STEEL.conductivity);
        drawing.fill(flange, [bottom, bottom + thin], STEEL.conductivity);
        drawing.outdoors(along, [lowest, floor.foam_bottom()]);
        drawing.expose_outdoors(Side::YMinimum);
        drawing.expose_room(Side::YMaximum, HeatFlow::Downwards);
        drawing.finish()
    }

    fn foam(&self) -> ThermalConductivity {
        self.floor.foam_conductivity
    }

    fn flanking(&self) -> HeatTransferCoefficient {
        self.floor.transmittance() * (self.floor.member.spacing * Length::new(1.0))
    }

    fn points(&self) -> Vec<Point> {
        let over = self.web_at() + self.floor.member.thickness / 2.0;
        vec![Point::new(over, -self.floor.plywood / 2.0, Length::mm(500.0))]
    }
}
