//! What can be wrong with a problem or with its solution.

use core::fmt;

use super::geometry::{Point, Side};
use super::problem::Environment;
use crate::bounds::Figure;
use crate::units::{ThermalConductivity, ThermalResistance};

/// Which part of a problem an error speaks of; numbers count from 0 in the order given.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ProblemPart {
    /// The whole domain.
    Domain,
    /// The background material.
    Background,
    /// Air that surrounds what is painted, by its number.
    Surroundings(usize),
    /// A paint, by its number.
    Paint(usize),
    /// Surfaces of a finish, by their number.
    Finish(usize),
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
    /// A cell that is neither painted nor given to any air, in a problem without a background.
    Unclaimed {
        /// Its centre.
        at: Point,
    },
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

impl ConductionError {
    /// Stable name of what is wrong.
    pub const fn code(&self) -> &'static str {
        match self {
            Self::NoBoundary => "no_boundary",
            Self::Empty => "empty",
            Self::Unclaimed { .. } => "unclaimed_cell",
            Self::NonFiniteConductivity { .. } => "non_finite_conductivity",
            Self::NonPositiveConductivity { .. } => "non_positive_conductivity",
            Self::BadBlock { .. } => "bad_block",
            Self::BadSurfaceResistance { .. } => "bad_surface_resistance",
            Self::BadSide { .. } => "bad_side",
            Self::BadEnvironment { .. } => "bad_environment",
            Self::BadCellSizes => "bad_cell_sizes",
            Self::BadRefinement { .. } => "bad_refinement",
            Self::TooManyCells { .. } => "too_many_cells",
            Self::NotConverged { .. } => "not_converged",
            Self::WrongTemperatureCount { .. } => "wrong_temperature_count",
            Self::NonFiniteTemperature { .. } => "non_finite_temperature",
            Self::UnknownEnvironment { .. } => "unknown_environment",
        }
    }
}

impl fmt::Display for ProblemPart {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Domain => out.write_str("domain"),
            Self::Background => out.write_str("background"),
            Self::Surroundings(n) => write!(out, "surrounding air {n}"),
            Self::Paint(n) => write!(out, "paint {n}"),
            Self::Finish(n) => write!(out, "surfaces of finish {n}"),
            Self::Air(n) => write!(out, "air region {n}"),
            Self::Exposed(n) => write!(out, "exposed side {n}"),
            Self::Refinement(n) => write!(out, "refinement {n}"),
        }
    }
}

impl fmt::Display for ConductionError {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        match *self {
            Self::NoBoundary => out.write_str("no conducting face looks into any environment"),
            Self::Empty => out.write_str("air fills the whole domain"),
            Self::Unclaimed { at } => write!(
                out,
                "the cell at {}, {}, {} m is neither painted nor given to any air",
                Figure(at.x.value()),
                Figure(at.y.value()),
                Figure(at.z.value())
            ),
            Self::NonFiniteConductivity { part } => {
                write!(out, "the conductivity of {part} must be a finite number")
            }
            Self::NonPositiveConductivity { part, conductivity } => write!(
                out,
                "the conductivity of {part}, {} W/(m·K), must be above 0",
                Figure(conductivity.value())
            ),
            Self::BadBlock { part } => write!(
                out,
                "the shape of {part} must be finite and not empty, its ends in order, and drawn \
                 along z in two dimensions"
            ),
            Self::BadSurfaceResistance { part, resistance } => write!(
                out,
                "the surface resistance of {part}, {} m²·K/W, must be finite and at least 0",
                Figure(resistance.value())
            ),
            Self::BadSide { part, side } => write!(
                out,
                "{part} names the side {side:?}, which is exposed already or has no face in two \
                 dimensions"
            ),
            Self::BadEnvironment { part } => write!(
                out,
                "the environment of {part} must be from 0 to below {}",
                Environment::LIMIT
            ),
            Self::BadCellSizes => out.write_str(
                "cell sizes must be finite and above 0, the finest at most the coarsest, and the \
                 growth from 1.01 to 4",
            ),
            Self::BadRefinement { part } => {
                write!(out, "the size of {part} must be finite and above 0, and its region finite")
            }
            Self::TooManyCells { cells, limit } => {
                write!(out, "the grid needs {cells} cells or more and may have {limit}")
            }
            Self::NotConverged { residual, iterations } => write!(
                out,
                "the relative residual is still {} after {iterations} iterations",
                Figure(residual)
            ),
            Self::WrongTemperatureCount { wanted, given } => {
                write!(out, "{wanted} temperatures needed, one per environment, {given} given")
            }
            Self::NonFiniteTemperature { environment } => {
                write!(out, "the temperature of environment {environment} must be a finite number")
            }
            Self::UnknownEnvironment { environment } => {
                write!(out, "no conducting face looks into environment {environment}")
            }
        }
    }
}

impl core::error::Error for ConductionError {}
