//! What can be wrong with a problem or with its solution.

use super::geometry::Side;
use crate::units::{ThermalConductivity, ThermalResistance};

/// Which part of a problem an error speaks of; numbers count from 0 in the order given.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ProblemPart {
    /// The whole domain.
    Domain,
    /// The background material.
    Background,
    /// A paint, by its number.
    Paint(usize),
    /// An air region, by its number.
    Air(usize),
    /// An exposed side of the domain, by its number.
    Exposed(usize),
    /// A refinement, by its number.
    Refinement(usize),
}

/// Why a problem has no solution, or why none was reached.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub enum ConductionError {
    /// No conducting face looks into any environment: the temperature is undetermined. (A body apart
    /// from the others always touches the air that parts it from them.)
    NoBoundary,
    /// The air fills the whole domain.
    Empty,
    /// A conductivity that is not a finite number.
    NonFiniteConductivity {
        /// Whose.
        part: ProblemPart,
    },
    /// A conductivity of zero or less.
    NonPositiveConductivity {
        /// Whose.
        part: ProblemPart,
        /// The value given.
        conductivity: ThermalConductivity,
    },
    /// A block or outline that is empty, inside out, not finite, or (in two dimensions) drawn along
    /// another axis than z.
    BadBlock {
        /// Whose.
        part: ProblemPart,
    },
    /// A surface resistance below zero or not finite.
    BadSurfaceResistance {
        /// Whose.
        part: ProblemPart,
        /// The value given.
        resistance: ThermalResistance,
    },
    /// A side of the domain that was exposed before, or a z side of a problem in two dimensions.
    BadSide {
        /// Whose.
        part: ProblemPart,
        /// The side.
        side: Side,
    },
    /// An environment number beyond what is counted for, [`Environment::LIMIT`].
    ///
    /// [`Environment::LIMIT`]: super::Environment::LIMIT
    BadEnvironment {
        /// Whose.
        part: ProblemPart,
    },
    /// Cell sizes that are not finite and above zero, a finest above the coarsest, or a growth
    /// outside 1.01 to 4.
    BadCellSizes,
    /// The target cell size of a refinement that is not finite and above zero, or its region is not
    /// finite.
    BadRefinement {
        /// Which.
        part: ProblemPart,
    },
    /// The grid would need more cells than the problem allows.
    TooManyCells {
        /// Cells needed; at least so many where one axis alone needs too many.
        cells: usize,
        /// Cells allowed.
        limit: usize,
    },
    /// The required residual was not reached.
    NotConverged {
        /// The relative residual that was reached.
        residual: f64,
        /// The iterations spent.
        iterations: usize,
    },
    /// Not one temperature per environment.
    WrongTemperatureCount {
        /// Environments of the problem.
        wanted: usize,
        /// Temperatures given.
        given: usize,
    },
    /// A temperature that is not a finite number.
    NonFiniteTemperature {
        /// The environment's number.
        environment: usize,
    },
    /// An environment that no conducting face looks into.
    UnknownEnvironment {
        /// The environment's number.
        environment: usize,
    },
}
