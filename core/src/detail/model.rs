//! What every drawn detail is, and what its field says of it.

use crate::conduction::{
    Accuracy, Axis, Block, CellSizes, Dimensionality, Environment, FactorSpot, Finish,
    FinishedSurface, Point, Problem, Shape, Side, SurfaceResistances,
};
use crate::envelope::{HeatFlow, OUTSIDE_SURFACE_RESISTANCE, SurfaceKind};
use crate::units::{
    HeatTransferCoefficient, Length, LinearThermalTransmittance, PointThermalTransmittance,
    TemperatureFactor, ThermalConductivity, ThermalResistance,
};

/// The room's air.
pub const ROOM: Environment = Environment(0);
/// Outdoor air.
pub const OUTDOORS: Environment = Environment(1);

/// How far a detail is cut from its middle: ISO 10211:2017 asks at least 1 m, or three times the
/// thickness of the element beside it.
pub const CUT_DISTANCE: Length = Length::mm(1000.0);

/// Relative residual at which a field is taken as solved: heat flows then err by less than a
/// millionth.
const RESIDUAL: f64 = 1e-8;

/// Relative residual of a field that is looked at, and refined before it gives a figure:
/// temperatures then err by far less than a refinement moves them.
const RESIDUAL_TO_LOOK_AT: f64 = 1e-6;

/// How closely a field is solved that gives figures.
pub(super) fn accuracy() -> Accuracy {
    Accuracy { relative_residual: RESIDUAL, ..Accuracy::default() }
}

/// How closely a field is solved that is looked at.
pub(super) fn accuracy_to_look_at() -> Accuracy {
    Accuracy { relative_residual: RESIDUAL_TO_LOOK_AT, ..Accuracy::default() }
}

/// The surface resistances of a model's faces.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Surfaces {
    /// By direction of the heat flow, for heat (ISO 6946).
    Ordinary,
    /// For the risk of damp, by kind of surface (ISO 13788): 0.25 m²·K/W on opaque ones, 0.13 on
    /// frames, leaves and glazing.
    Damp,
}

impl Surfaces {
    /// The inside surface resistance of an opaque surface where heat flows this way.
    pub const fn inside(self, direction: HeatFlow) -> ThermalResistance {
        match self {
            Self::Ordinary => direction.inside_surface_resistance(),
            Self::Damp => SurfaceKind::Opaque.damp_surface_resistance(),
        }
    }
}

/// From one coordinate to another along one axis.
pub type Span = [Length; 2];

/// A problem being drawn. It begins as air that belongs to nobody: only what is solid is filled, and
/// the rest is given to the room or to outdoor air in shapes as coarse as will do, for what is solid
/// wins over them. A place that is neither does not solve
/// ([`ConductionError::Unclaimed`](crate::conduction::ConductionError::Unclaimed)). What comes to
/// nothing is left out, so that a layer of no thickness needs no special case.
pub struct Drawing {
    problem: Problem,
    surfaces: Surfaces,
}

impl Drawing {
    /// An empty section.
    pub const fn section(x: Span, y: Span, surfaces: Surfaces, cells: CellSizes) -> Self {
        let domain = Block::flat(x[0], y[0], x[1], y[1]);
        Self { problem: Problem::empty(domain, Dimensionality::Two, cells), surfaces }
    }

    /// An empty body.
    pub const fn body(domain: Block, surfaces: Surfaces, cells: CellSizes) -> Self {
        Self { problem: Problem::empty(domain, Dimensionality::Three, cells), surfaces }
    }

    /// Fills a rectangle of a section.
    pub fn fill(&mut self, x: Span, y: Span, conductivity: ThermalConductivity) {
        if let Some(shape) = rectangle(x, y) {
            self.problem.paint(shape, conductivity);
        }
    }

    /// Fills a rectangle of a section with what belongs to a window or door: its frame, leaf or
    /// glazing, whose faces have a resistance of their own for damp ([`SurfaceKind::FrameOrGlazing`]).
    pub fn fill_frame(&mut self, x: Span, y: Span, conductivity: ThermalConductivity) {
        if let Some(shape) = rectangle(x, y) {
            self.problem.paint_finished(shape, conductivity, FRAME_OR_GLAZING);
        }
    }

    /// Fills a polygon of a section.
    pub fn fill_outline(&mut self, outline: Vec<[Length; 2]>, conductivity: ThermalConductivity) {
        self.problem.paint(prism(outline), conductivity);
    }

    /// Fills a block of a body.
    pub fn fill_block(&mut self, x: Span, y: Span, z: Span, conductivity: ThermalConductivity) {
        if let Some(block) = block(x, y, z) {
            self.problem.paint(block, conductivity);
        }
    }

    /// Gives what is not filled in a rectangle of a section to the room.
    pub fn room(&mut self, x: Span, y: Span, resistances: SurfaceResistances) {
        if let Some(shape) = rectangle(x, y) {
            self.problem.surround(shape, ROOM, resistances);
        }
    }

    /// Gives what is not filled in a block of a body to the room.
    pub fn room_block(&mut self, x: Span, y: Span, z: Span, resistances: SurfaceResistances) {
        if let Some(block) = block(x, y, z) {
            self.problem.surround(block, ROOM, resistances);
        }
    }

    /// Gives what is not filled in a rectangle of a section to outdoor air.
    pub fn outdoors(&mut self, x: Span, y: Span) {
        if let Some(shape) = rectangle(x, y) {
            self.problem.surround(shape, OUTDOORS, OUTSIDE);
        }
    }

    /// Gives what is not filled in a polygon of a section to outdoor air.
    pub fn outdoors_outline(&mut self, outline: Vec<[Length; 2]>) {
        self.problem.surround(prism(outline), OUTDOORS, OUTSIDE);
    }

    /// Gives what is not filled in a block of a body to outdoor air.
    pub fn outdoors_block(&mut self, x: Span, y: Span, z: Span) {
        if let Some(block) = block(x, y, z) {
            self.problem.surround(block, OUTDOORS, OUTSIDE);
        }
    }

    /// Cuts a block out of all that is filled in a body, for the room's air.
    pub fn bore_to_room(&mut self, x: Span, y: Span, z: Span, resistances: SurfaceResistances) {
        if let Some(block) = block(x, y, z) {
            self.problem.open_to(block, ROOM, resistances);
        }
    }

    /// Cuts a block out of all that is filled in a body, for outdoor air.
    pub fn bore_to_outdoors(&mut self, x: Span, y: Span, z: Span) {
        if let Some(block) = block(x, y, z) {
            self.problem.open_to(block, OUTDOORS, OUTSIDE);
        }
    }

    /// Exposes a side of the domain to outdoor air.
    pub fn expose_outdoors(&mut self, side: Side) {
        self.problem.expose(side, OUTDOORS, OUTSIDE_SURFACE_RESISTANCE);
    }

    /// Exposes a side of the domain to the room, heat flowing in this direction.
    pub fn expose_room(&mut self, side: Side, direction: HeatFlow) {
        self.problem.expose(side, ROOM, self.surfaces.inside(direction));
    }

    /// The finished problem.
    pub fn finish(mut self) -> Problem {
        let has_frame = self.problem.paints.iter().any(|paint| paint.finish == FRAME_OR_GLAZING);
        if has_frame && self.surfaces == Surfaces::Damp {
            let resistance = SurfaceKind::FrameOrGlazing.damp_surface_resistance();
            self.problem.finishes.push(FinishedSurface {
                finish: FRAME_OR_GLAZING,
                environment: ROOM,
                surface_resistance: SurfaceResistances::uniform(resistance),
            });
        }
        self.problem
    }
}

/// What belongs to a window or door, as the solver knows it; everything else is ordinary.
const FRAME_OR_GLAZING: Finish = Finish(1);

/// The finish that surfaces of a kind have in a drawing.
pub(super) const fn finish_of(kind: SurfaceKind) -> Finish {
    match kind {
        SurfaceKind::Opaque => Finish::ORDINARY,
        SurfaceKind::FrameOrGlazing => FRAME_OR_GLAZING,
    }
}

fn rectangle(x: Span, y: Span) -> Option<Block> {
    (x[0] < x[1] && y[0] < y[1]).then(|| Block::flat(x[0], y[0], x[1], y[1]))
}

fn prism(outline: Vec<[Length; 2]>) -> Shape {
    Shape::Prism { axis: Axis::Z, outline, from: Length::ZERO, to: Length::new(1.0) }
}

fn block(x: Span, y: Span, z: Span) -> Option<Block> {
    let holds = x[0] < x[1] && y[0] < y[1] && z[0] < z[1];
    holds.then(|| Block::new(Point::new(x[0], y[0], z[0]), Point::new(x[1], y[1], z[1])))
}

/// Outdoor surface resistances, whichever way a face looks.
pub const OUTSIDE: SurfaceResistances = SurfaceResistances::uniform(OUTSIDE_SURFACE_RESISTANCE);

/// What a field says about a detail.
#[derive(Clone, Debug, PartialEq)]
pub struct DetailField {
    /// Thermal coupling of room and outdoors through the whole model: W/K, or W/(m·K) of a
    /// section.
    pub coupling: HeatTransferCoefficient,
    /// What the plain areas (and, of a body, the lines) in the model would lose by themselves.
    pub flanking: HeatTransferCoefficient,
    /// f_Rsi on the lowest surface temperature, with the inside surface resistances that ISO 13788
    /// sets for the risk of damp.
    pub temperature_factor: TemperatureFactor,
    /// Where that lowest temperature is, in the model's own coordinates.
    pub coldest_at: Point,
    /// The lowest factor of opaque faces, where there are any.
    pub opaque: Option<FactorSpot>,
    /// The lowest factor of faces of frame, leaf or glazing, where there are any.
    pub frame_or_glazing: Option<FactorSpot>,
    /// Whether halving the cells at the lowest of each kind moved it by less than 0.1 K at 50 K.
    pub is_settled: bool,
    /// The same factor with the ordinary surface resistances, on the unrefined grid.
    pub ordinary_temperature_factor: TemperatureFactor,
    /// The same on opaque faces alone, or of all where there is none.
    pub ordinary_opaque_factor: TemperatureFactor,
    /// Temperature factors at the model's own points of interest, ordinary surface resistances;
    /// `None` for a point that lies in no material.
    pub marks: Vec<Option<TemperatureFactor>>,
    /// Cells of the grid of the heat-flow solution.
    pub cells: usize,
    /// Iterations of the heat-flow solution.
    pub iterations: usize,
    /// The largest relative residual of all solutions.
    pub residual: f64,
}

impl DetailField {
    /// The lowest factor of one kind of surface, and where; `None` where the detail has none of it.
    pub const fn lowest_of(&self, kind: SurfaceKind) -> Option<FactorSpot> {
        match kind {
            SurfaceKind::Opaque => self.opaque,
            SurfaceKind::FrameOrGlazing => self.frame_or_glazing,
        }
    }

    /// The extra loss: coupling less flanking.
    fn extra(&self) -> HeatTransferCoefficient {
        self.coupling - self.flanking
    }

    /// ψ of a section: L_2D − Σ U·l (ISO 10211:2017).
    pub fn linear_transmittance(&self) -> LinearThermalTransmittance {
        self.extra() / Length::new(1.0)
    }

    /// χ of a body: L_3D − Σ ψ·l − Σ U·A (ISO 10211:2017).
    pub fn point_transmittance(&self) -> PointThermalTransmittance {
        PointThermalTransmittance::new(self.extra().value())
    }
}

/// A detail that can be drawn.
pub trait Model {
    /// The problem with the given surfaces.
    fn problem(&self, surfaces: Surfaces) -> Problem;

    /// The conductivity of its foam, which a picture tells from other materials.
    fn foam(&self) -> ThermalConductivity;

    /// The conductivity of its lining, which a picture shows as board though a panel be part of it.
    fn lining(&self) -> Option<ThermalConductivity> {
        None
    }

    /// What the plane layers and lines in the model would lose by themselves.
    fn flanking(&self) -> HeatTransferCoefficient;

    /// The model without what is judged, where what is beside that are no plane layers: what it
    /// loses, solved, counts as flanking as well.
    fn flanking_problem(&self) -> Option<Problem> {
        None
    }

    /// Points whose temperature is of interest.
    fn points(&self) -> Vec<Point> {
        Vec::new()
    }

    /// How many of what is drawn make one whole piece: 4 where a quarter is drawn.
    fn copies(&self) -> f64 {
        1.0
    }

    /// How often the cells at the coldest spot are halved at most.
    fn rounds_of_refinement(&self) -> usize {
        6
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::conduction::Grid;
    use crate::design::{
        Design, EndWallTreatment, Field, FloorRecesses, FoamMeasure, FramePosition, PersonnelDoor,
        Quantity, SleeveEnd,
    };
    use crate::detail::drawn_detail;
    use crate::envelope::Envelope;
    use crate::freight_box::BoxSize;
    use crate::room::Room;

    /// A number below 1 and the next state (D. E. Knuth, MMIX's linear congruential generator).
    fn next(state: &mut u64) -> f64 {
        *state =
            state.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        f64::from((*state >> 32) as u32) / 4_294_967_296.0
    }

    /// Every length of the table anywhere in its range, every option that moves a drawing, and some of all that is
    /// counted.
    fn design(state: &mut u64) -> Design {
        let mut one = |count: usize| (next(state) * count as f64) as usize;
        let mut design = Design {
            box_size: BoxSize::ALL[one(BoxSize::ALL.len())],
            end_wall_treatment: EndWallTreatment::ALL[one(EndWallTreatment::ALL.len())],
            foam_measure: FoamMeasure::ALL[one(FoamMeasure::ALL.len())],
            frame_position: FramePosition::ALL[one(FramePosition::ALL.len())],
            floor_recesses: FloorRecesses::ALL[one(FloorRecesses::ALL.len())],
            sleeve_end: SleeveEnd::ALL[one(SleeveEnd::ALL.len())],
            screws_through: 10.0,
            floor_drains: 1.0,
            damper_count: 3.0,
            ..Design::default()
        };
        for &field in Field::ALL {
            let range = field.range();
            if range.quantity == Quantity::Length && range.default.is_some() {
                let number = range.minimum + next(state) * (range.maximum - range.minimum);
                design.set(field, Some(number));
            }
        }
        design.thin_foam_depth = design.side_wall_foam * (0.99 * next(state));
        design.thin_foam_length = Length::new(2.0);
        design
    }

    /// What is not solid is the room's or outdoor air in every detail of any design: no sliver was forgotten.
    #[test]
    fn every_cell_of_every_drawing_is_solid_or_claimed() {
        let mut state = 20_240_229;
        let mut places_seen = 0;
        for _ in 0..60 {
            let mut design = design(&mut state);
            if design.check().is_err() {
                design.personnel_door = PersonnelDoor::None;
                design.window_count = 0.0;
            }
            let checked = design.check().unwrap();
            for (place, _) in Envelope::of(&checked, &Room::of(&checked).clear).thermal_bridges {
                let detail = drawn_detail(&checked, place).unwrap();
                for surfaces in [Surfaces::Ordinary, Surfaces::Damp] {
                    let grid = Grid::new(&detail.problem(surfaces));
                    assert!(grid.is_ok(), "{}: {:?} in {design:?}", place.key(), grid.err());
                }
                places_seen += 1;
            }
        }
        assert!(places_seen > 60 * 22, "{places_seen}");
    }
}
