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
mod error;
mod field;
mod geometry;
mod grid;
mod lines;
mod mix;
mod multigrid;
mod network;
mod node;
mod paint;
mod problem;
mod refine;
mod section;
mod solution;
mod solve;

pub use assembled::{HeatBalances, assemble};
pub use error::{ConductionError, Place};
pub use field::{Balance, Field, SurfaceSpot};
pub use geometry::{Axis, Block, Point, Shape, Side};
pub use grid::Grid;
pub use problem::{
    AirRegion, CellSizes, Dimensions, Environment, ExposedSide, Finish, FinishedSurface, Paint,
    Problem, Refinement, RefinementPlace, SurfaceResistances,
};
pub use refine::{Extreme, Refined, Refining, RefiningRun, RefiningStep, refine_until};
pub use section::Section;
pub use solution::{FactorSpot, Solution};
pub use solve::{Accuracy, solve};
