//! Steady heat conduction in two and three dimensions.
//!
//! A [`Problem`] is a block of materials with air on some of its faces. [`solve`] lays a graded
//! rectilinear grid over it, balances the heat of every cell (cell-centred finite volumes, harmonic
//! conductances between cells, surface resistances folded into the face) and answers with a
//! [`Solution`]: one unit field per environment, from which every set of temperatures follows by
//! superposition as a [`Field`].
//!
//! The method meets the conditions of ISO 10211:2017 (steady state, constant properties, surface
//! resistances, superposition, temperature weights, coupling coefficients).

mod assembled;
mod boundary;
mod conductance_matrix;
mod cut_cells;
mod error;
mod field;
mod geometry;
mod grading;
mod grid;
mod interpolation;
mod multigrid;
mod problem;
mod rasterise;
mod refine;
mod section;
mod solution;
mod solve;

pub use assembled::{AssembledSystem, assemble};
pub use error::{ConductionError, ProblemPart};
pub use field::{Field, HeatBalance, SurfaceSpot};
pub use geometry::{Axis, Block, Point, Shape, Side};
pub use grid::Grid;
pub use problem::{
    AirRegion, CellSizes, Dimensionality, Environment, ExposedSide, Paint, Problem, Refinement,
    RefinementRegion, SurfaceResistances,
};
pub use refine::{
    AdaptiveRefinement, Extreme, RefinedSolution, RefinementCriterion, RefinementRound,
    refine_until,
};
pub use section::Section;
pub use solution::{FactorSpot, Solution};
pub use solve::{Accuracy, solve};
