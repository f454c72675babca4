//! The threshold of the personnel door: the tube of its frame across the floor's edge.

use super::build_up::BuildUp;
use super::floor::FloorBuildUp;
use super::glazing::{INFILL_DEPTH, own_resistance};
use super::model::{CUT_DISTANCE, Drawing, Model, Surfaces};
use super::opening_frame::{FRAME_TUBE, FRAME_TUBE_THICKNESS};
use crate::conduction::{CellSizes, Problem, Side, SurfaceResistances};
use crate::design::{CheckedDesign, Surface};
use crate::envelope::{HeatFlow, air_layer_conductivity, surface_of};
use crate::freight_box::BottomRail;
use crate::material::{PLYWOOD, STEEL};
use crate::units::{HeatTransferCoefficient, Length, ThermalConductivity, ThermalTransmittance};

/// Height of the threshold's bar. Common practice, no source.
const BAR_HEIGHT: Length = Length::mm(20.0);
/// Hardwood, λ = 0.18 W/(m·K) (ISO 10456:2007, table 3, timber of 700 kg/m³, from memory). A bar of
/// aluminium without a thermal break would be colder by far.
const BAR_CONDUCTIVITY: ThermalConductivity = ThermalConductivity::new(0.18);

/// A section across the bottom of the door; x is the depth into the room from the wall's steel, y up from
/// the top of the plywood.
///
/// The lower tube of the door's steel frame stands on plywood and rail, its outer face in the wall's sheet;
/// where the floor is raised it is raised too, with foam under it, so that the floor comes no higher than the
/// tube. Foam is packed over its inner face like at the jambs, with a board of lining before it. On it lies a bar
/// of hardwood, as wide as tube, packing and board, and on that stands the leaf, a panel of the door's U. Bar
/// and leaf belong to the door ([`SurfaceKind::FrameOrGlazing`]).
///
/// The strip of wall under the leaf is part of the wall's plain area, and the floor's edge along the wall ends
/// at the door: ψ of the threshold takes its place there.
///
/// [`SurfaceKind::FrameOrGlazing`]: crate::envelope::SurfaceKind::FrameOrGlazing
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ThresholdSection {
    /// The wall that the door is in.
    pub wall: BuildUp,
    /// The floor.
    pub floor: FloorBuildUp,
    /// The channel under the wall.
    pub rail: BottomRail,
    /// U of the door.
    pub door: ThermalTransmittance,
    /// Foam packed over the tube's inner face.
    pub packing: Length,
}

impl ThresholdSection {
    /// The threshold of a design; of one without a door, that of a door in a side wall.
    pub fn of(checked: &CheckedDesign) -> Self {
        let design = checked.design();
        let wall = design.personnel_door.wall().map_or(Surface::SideWall, surface_of);
        Self {
            wall: BuildUp::of(checked, wall),
            floor: FloorBuildUp::of(checked),
            rail: checked.freight_box().bottom_rail,
            door: design.door_transmittance,
            packing: design.opening_frame_foam,
        }
    }

    /// The underside of the tube.
    fn tube_bottom(&self) -> Length {
        (self.floor.face() - FRAME_TUBE).max(Length::ZERO)
    }

    /// Where the leaf begins.
    pub fn leaf_bottom(&self) -> Length {
        self.tube_bottom() + FRAME_TUBE + BAR_HEIGHT
    }

    /// The inner edge of the bar.
    pub fn bar_end(&self) -> Length {
        FRAME_TUBE + self.packing + self.wall.lining
    }

    fn cut(&self) -> Length {
        CUT_DISTANCE + self.wall.face().max(self.floor.face()).max(self.bar_end())
    }

    fn draw_floor(&self, drawing: &mut Drawing) {
        let (floor, rail, cut) = (&self.floor, &self.rail, self.cut());
        let past = [Length::ZERO, cut];
        drawing.fill(past, [floor.foam_bottom(), -floor.plywood], floor.foam_conductivity);
        drawing.fill(past, [Length::ZERO, floor.over], floor.foam_conductivity);
        drawing.fill(past, [-floor.plywood, Length::ZERO], PLYWOOD.conductivity);
        drawing.fill([self.bar_end(), cut], [floor.over, floor.face()], PLYWOOD.conductivity);
        drawing.fill(
            [-rail.thickness, Length::ZERO],
            [-rail.height, Length::ZERO],
            STEEL.conductivity,
        );
        drawing.fill(
            [-rail.thickness, rail.lower_flange],
            [-rail.height, -rail.height + rail.thickness],
            STEEL.conductivity,
        );
    }

    fn draw_threshold(&self, drawing: &mut Drawing) {
        let (wall, zero) = (&self.wall, Length::ZERO);
        let (bottom, top) = (self.tube_bottom(), self.tube_bottom() + FRAME_TUBE);
        let packed = FRAME_TUBE + self.packing;
        drawing.fill([zero, self.bar_end()], [zero, bottom], wall.foam_conductivity);
        drawing.fill([FRAME_TUBE, packed], [zero, top], wall.foam_conductivity);
        drawing.fill([packed, self.bar_end()], [zero, top], wall.lining_conductivity);
        drawing.fill(wall.sheet_span(), [zero, bottom], STEEL.conductivity);
        drawing.fill([-wall.sheet, FRAME_TUBE], [bottom, top], STEEL.conductivity);
        let t = FRAME_TUBE_THICKNESS;
        drawing.fill(
            [t, FRAME_TUBE - t],
            [bottom + t, top - t],
            air_layer_conductivity(FRAME_TUBE - t * 2.0, HeatFlow::Horizontal),
        );
        drawing.fill_frame([zero, self.bar_end()], [top, top + BAR_HEIGHT], BAR_CONDUCTIVITY);
        let leaf = INFILL_DEPTH / own_resistance(self.door);
        drawing.fill_frame([zero, INFILL_DEPTH], [self.leaf_bottom(), self.cut()], leaf);
    }
}

impl Model for ThresholdSection {
    fn problem(&self, surfaces: Surfaces) -> Problem {
        let (wall, floor, rail) = (&self.wall, &self.floor, &self.rail);
        let (cut, zero) = (self.cut(), Length::ZERO);
        let lowest = (-rail.height).min(floor.foam_bottom());
        let outer = -rail.thickness.max(wall.sheet);
        let mut drawing = Drawing::section(
            [outer, cut],
            [lowest, cut],
            surfaces,
            CellSizes::new(Length::mm(2.0), Length::mm(60.0)),
        );
        self.draw_floor(&mut drawing);
        self.draw_threshold(&mut drawing);
        let inside = SurfaceResistances::uniform(surfaces.inside(wall.direction))
            .with(Side::YMaximum, surfaces.inside(HeatFlow::Downwards));
        drawing.room([INFILL_DEPTH, cut], [floor.face(), cut], inside);
        drawing.outdoors([outer, zero], [zero, cut]);
        drawing.outdoors([outer, cut], [lowest, floor.foam_bottom()]);
        drawing.expose_outdoors(Side::XMinimum);
        drawing.expose_outdoors(Side::YMinimum);
        drawing.finish()
    }

    fn foam(&self) -> ThermalConductivity {
        self.floor.foam_conductivity
    }

    /// Leaf above the bar, the strip of wall from the finished floor to it, the floor past the lining.
    fn flanking(&self) -> HeatTransferCoefficient {
        let (cut, metre) = (self.cut(), Length::new(1.0));
        self.door * ((cut - self.leaf_bottom()) * metre)
            + self.wall.transmittance() * ((self.leaf_bottom() - self.floor.face()) * metre)
            + self.floor.transmittance() * ((cut - self.wall.face()) * metre)
    }
}
