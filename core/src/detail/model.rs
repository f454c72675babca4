//! What every drawn detail is, and what its field says of it.

use crate::conduction::{
    Accuracy, Axis, Block, CellSizes, Dimensionality, Environment, Point, Problem, Shape, Side,
    SurfaceResistances,
};
use crate::envelope::{DAMP_SURFACE_RESISTANCE, HeatFlow, OUTSIDE_SURFACE_RESISTANCE};
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
    /// 0.25 m²·K/W everywhere inside, for the risk of damp (ISO 13788).
    Damp,
}

impl Surfaces {
    /// The inside surface resistance where heat flows this way.
    pub const fn inside(self, direction: HeatFlow) -> ThermalResistance {
        match self {
            Self::Ordinary => direction.inside_surface_resistance(),
            Self::Damp => DAMP_SURFACE_RESISTANCE,
        }
    }
}

/// From one coordinate to another along one axis.
pub type Span = [Length; 2];

/// A problem being drawn. What comes to nothing is left out, so that a layer of no thickness
/// needs no special case.
pub struct Drawing {
    problem: Problem,
}

impl Drawing {
    /// A section of one material.
    pub fn section(x: Span, y: Span, background: ThermalConductivity, cells: CellSizes) -> Self {
        let domain = Block::flat(x[0], y[0], x[1], y[1]);
        Self { problem: Problem::new(domain, Dimensionality::Two, background, cells) }
    }

    /// A body of one material.
    pub fn body(domain: Block, background: ThermalConductivity, cells: CellSizes) -> Self {
        Self { problem: Problem::new(domain, Dimensionality::Three, background, cells) }
    }

    /// Fills a rectangle of a section.
    pub fn fill(&mut self, x: Span, y: Span, conductivity: ThermalConductivity) {
        if x[0] < x[1] && y[0] < y[1] {
            self.problem.paint(Block::flat(x[0], y[0], x[1], y[1]), conductivity);
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

    /// Gives a rectangle of a section to an environment.
    pub fn open(
        &mut self,
        x: Span,
        y: Span,
        environment: Environment,
        resistances: SurfaceResistances,
    ) {
        if x[0] < x[1] && y[0] < y[1] {
            self.problem.open_to(Block::flat(x[0], y[0], x[1], y[1]), environment, resistances);
        }
    }

    /// Gives a polygon of a section to an environment.
    pub fn open_outline(
        &mut self,
        outline: Vec<[Length; 2]>,
        environment: Environment,
        resistances: SurfaceResistances,
    ) {
        self.problem.open_to(prism(outline), environment, resistances);
    }

    /// Gives a block of a body to an environment.
    pub fn open_block(
        &mut self,
        x: Span,
        y: Span,
        z: Span,
        environment: Environment,
        resistances: SurfaceResistances,
    ) {
        if let Some(block) = block(x, y, z) {
            self.problem.open_to(block, environment, resistances);
        }
    }

    /// Exposes a side of the domain to outdoor air.
    pub fn expose_outdoors(&mut self, side: Side) {
        self.problem.expose(side, OUTDOORS, OUTSIDE_SURFACE_RESISTANCE);
    }

    /// The finished problem.
    pub fn finish(self) -> Problem {
        self.problem
    }
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
    /// f_Rsi on the lowest surface temperature, with the inside surface resistance 0.25 m²·K/W
    /// that ISO 13788 sets for the risk of damp.
    pub temperature_factor: TemperatureFactor,
    /// Where that lowest temperature is, in the model's own coordinates.
    pub coldest_at: Point,
    /// Whether halving the cells there moved it by less than 0.1 K at 50 K.
    pub is_settled: bool,
    /// The same factor with the ordinary surface resistances, on the unrefined grid.
    pub ordinary_temperature_factor: TemperatureFactor,
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
