//! What is to be solved: materials, the air around and inside them, and how fine the grid is.

use super::error::{ConductionError, ProblemPart};
use super::geometry::{Axis, Block, Point, Shape, Side};
use crate::units::{Length, ThermalConductivity, ThermalResistance};

/// How many directions heat may flow in.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Dimensionality {
    /// A section: flows are those of one metre of depth, W/m.
    Two,
    /// A body: flows are in W.
    Three,
}

/// The number of an environment: a body of air with one temperature. Count from 0 without gaps.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct Environment(pub usize);

impl Environment {
    /// The most environments one problem may have.
    pub const LIMIT: usize = 64;
}

/// Fills a shape with a material.
#[derive(Clone, Debug, PartialEq)]
pub struct Paint {
    /// What is filled.
    pub shape: Shape,
    /// With which conductivity λ.
    pub conductivity: ThermalConductivity,
}

/// Surface resistances by the direction the surface of the material looks in.
///
/// Air exchanges heat differently with a ceiling, a wall and a floor (ISO 6946:2017, table 7), so
/// each of the six directions has its own value. A resistance of zero holds the surface at the
/// temperature of the air.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SurfaceResistances([ThermalResistance; 6]);

impl SurfaceResistances {
    /// The same resistance whichever way the surface looks.
    pub const fn uniform(resistance: ThermalResistance) -> Self {
        Self([resistance; 6])
    }

    /// With another resistance for surfaces looking in one direction. The upper face of a floor is
    /// [`Side::ZMaximum`] when z points up, the underside of a ceiling [`Side::ZMinimum`].
    #[must_use]
    pub const fn with(mut self, side: Side, resistance: ThermalResistance) -> Self {
        self.0[side.index()] = resistance;
        self
    }

    /// The resistance of a surface looking in one direction.
    pub const fn of(&self, side: Side) -> ThermalResistance {
        self.0[side.index()]
    }
}

/// A part of the domain that is air: its cells are taken out, and every conducting face that looks
/// into it exchanges heat with the environment. Air wins over paints, later air over earlier.
#[derive(Clone, Debug, PartialEq)]
pub struct AirRegion {
    /// What is air.
    pub shape: Shape,
    /// The environment it belongs to.
    pub environment: Environment,
    /// The resistances of the surfaces that look into it.
    pub surface_resistance: SurfaceResistances,
}

/// A side of the domain that looks into an environment; the other sides pass no heat.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ExposedSide {
    /// Which side.
    pub side: Side,
    /// The environment beyond.
    pub environment: Environment,
    /// The surface resistance; zero holds the side at the temperature of the environment.
    pub surface_resistance: ThermalResistance,
}

/// Where the grid is refined.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum RefinementRegion {
    /// At a point, along every axis.
    Point(Point),
    /// At a plane square to an axis.
    Plane {
        /// The axis the plane is square to.
        axis: Axis,
        /// Where it stands along the axis.
        at: Length,
    },
    /// Throughout a block, along every axis.
    Block(Block),
}

/// Smaller cells somewhere. A grid line is laid on it unless another stands within half the target
/// size.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Refinement {
    /// Where.
    pub region: RefinementRegion,
    /// How wide the cells there may be at most.
    pub size: Length,
}

/// How fine the grid is.
///
/// Every face of a block and every level edge of a prism carries a grid line, beside which cells are
/// `finest` wide; away from it they grow by `growth` from one to the next until `coarsest`. A layer
/// thinner than the target size is one cell thick.
#[derive(Clone, Debug, PartialEq)]
pub struct CellSizes {
    /// The target cell width beside every face of a material.
    pub finest: Length,
    /// The widest a cell may become.
    pub coarsest: Length,
    /// How much wider than its neighbour a cell may be: a ratio of 1.01 to 4; about 1.3 serves.
    pub growth: f64,
    /// Smaller cells at chosen places.
    pub refinements: Vec<Refinement>,
    /// The most cells the grid may have.
    pub limit: usize,
}

impl CellSizes {
    /// With a growth of 1.3, no refinements, and two million cells allowed.
    pub const fn new(finest: Length, coarsest: Length) -> Self {
        Self { finest, coarsest, growth: 1.3, refinements: Vec::new(), limit: 2_000_000 }
    }
}

/// A steady heat-conduction problem. Temperatures are no part of it: see
/// [`Solution::with_temperatures`](super::Solution::with_temperatures).
#[derive(Clone, Debug, PartialEq)]
pub struct Problem {
    /// The block that is looked at.
    pub domain: Block,
    /// Whether it is a section or a body.
    pub dimensions: Dimensionality,
    /// The conductivity where nothing is painted.
    pub background: ThermalConductivity,
    /// The materials; later paints win.
    pub paints: Vec<Paint>,
    /// The air inside the domain.
    pub air: Vec<AirRegion>,
    /// The sides of the domain that look into an environment.
    pub exposed: Vec<ExposedSide>,
    /// How fine the grid is.
    pub cells: CellSizes,
}

impl Problem {
    /// A domain of one material that nothing touches yet.
    pub const fn new(
        domain: Block,
        dimensions: Dimensionality,
        background: ThermalConductivity,
        cells: CellSizes,
    ) -> Self {
        Self {
            domain,
            dimensions,
            background,
            paints: Vec::new(),
            air: Vec::new(),
            exposed: Vec::new(),
            cells,
        }
    }

    /// Fills a shape with a material, over what was painted before.
    pub fn paint(&mut self, shape: impl Into<Shape>, conductivity: ThermalConductivity) {
        self.paints.push(Paint { shape: shape.into(), conductivity });
    }

    /// Takes a shape out of the domain and gives it to an environment.
    pub fn open_to(
        &mut self,
        shape: impl Into<Shape>,
        environment: Environment,
        surface_resistance: SurfaceResistances,
    ) {
        self.air.push(AirRegion { shape: shape.into(), environment, surface_resistance });
    }

    /// Exposes a side of the domain to an environment.
    pub fn expose(
        &mut self,
        side: Side,
        environment: Environment,
        surface_resistance: ThermalResistance,
    ) {
        self.exposed.push(ExposedSide { side, environment, surface_resistance });
    }

    /// The axes heat flows along.
    pub const fn axes(&self) -> &'static [Axis] {
        match self.dimensions {
            Dimensionality::Two => &[Axis::X, Axis::Y],
            Dimensionality::Three => &Axis::ALL,
        }
    }

    /// The conductivity of what is painted at a point, whether or not the air has it.
    pub fn conductivity_at(&self, point: Point) -> ThermalConductivity {
        let (at, axes) = (point.array(), self.axes());
        let painted = self.paints.iter().rev().find(|paint| paint.shape.contains(at, axes));
        painted.map_or(self.background, |paint| paint.conductivity)
    }

    /// How many environments the problem speaks of: one more than the highest number.
    pub fn environments(&self) -> usize {
        let of_air = self.air.iter().map(|region| region.environment.0 + 1);
        let of_sides = self.exposed.iter().map(|exposed| exposed.environment.0 + 1);
        of_air.chain(of_sides).max().unwrap_or(0)
    }

    /// Whether the problem can be gridded and solved at all.
    ///
    /// # Errors
    /// The first fault found, with its part.
    pub fn check(&self) -> Result<(), ConductionError> {
        if !self.domain.is_valid(&Axis::ALL) {
            return Err(ConductionError::BadBlock { part: ProblemPart::Domain });
        }
        check_conductivity(ProblemPart::Background, self.background)?;
        for (n, paint) in self.paints.iter().enumerate() {
            check_conductivity(ProblemPart::Paint(n), paint.conductivity)?;
            self.check_shape(ProblemPart::Paint(n), &paint.shape)?;
        }
        for (n, region) in self.air.iter().enumerate() {
            let part = ProblemPart::Air(n);
            self.check_shape(part, &region.shape)?;
            check_environment(part, region.environment)?;
            for side in Side::ALL {
                check_resistance(part, region.surface_resistance.of(side))?;
            }
        }
        for (n, exposed) in self.exposed.iter().enumerate() {
            let (part, side) = (ProblemPart::Exposed(n), exposed.side);
            check_environment(part, exposed.environment)?;
            check_resistance(part, exposed.surface_resistance)?;
            let repeated = self.exposed[..n].iter().any(|earlier| earlier.side == side);
            if repeated || !self.axes().contains(&side.axis()) {
                return Err(ConductionError::BadSide { part, side });
            }
        }
        self.check_cells()
    }

    fn check_shape(&self, part: ProblemPart, shape: &Shape) -> Result<(), ConductionError> {
        if shape.is_valid(self.axes()) { Ok(()) } else { Err(ConductionError::BadBlock { part }) }
    }

    fn check_cells(&self) -> Result<(), ConductionError> {
        let is_size = |size: Length| size.is_finite() && size > Length::ZERO;
        let CellSizes { finest, coarsest, growth, .. } = self.cells;
        let growth_is_valid = (1.01..=4.0).contains(&growth);
        if !is_size(finest) || !is_size(coarsest) || finest > coarsest || !growth_is_valid {
            return Err(ConductionError::BadCellSizes);
        }
        for (n, refinement) in self.cells.refinements.iter().enumerate() {
            let is_placed = match refinement.region {
                RefinementRegion::Point(at) => at.array().iter().all(|value| value.is_finite()),
                RefinementRegion::Plane { at, .. } => at.is_finite(),
                RefinementRegion::Block(block) => block.is_valid(self.axes()),
            };
            if !is_placed || !is_size(refinement.size) {
                return Err(ConductionError::BadRefinement { part: ProblemPart::Refinement(n) });
            }
        }
        Ok(())
    }
}

fn check_conductivity(
    part: ProblemPart,
    value: ThermalConductivity,
) -> Result<(), ConductionError> {
    if !value.is_finite() {
        return Err(ConductionError::NonFiniteConductivity { part });
    }
    if value <= ThermalConductivity::ZERO {
        return Err(ConductionError::NonPositiveConductivity { part, conductivity: value });
    }
    Ok(())
}

fn check_resistance(part: ProblemPart, value: ThermalResistance) -> Result<(), ConductionError> {
    if !value.is_finite() || value < ThermalResistance::ZERO {
        return Err(ConductionError::BadSurfaceResistance { part, resistance: value });
    }
    Ok(())
}

fn check_environment(part: ProblemPart, environment: Environment) -> Result<(), ConductionError> {
    if environment.0 >= Environment::LIMIT {
        return Err(ConductionError::BadEnvironment { part });
    }
    Ok(())
}
