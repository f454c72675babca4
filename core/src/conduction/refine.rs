//! Halving the cells at the coldest or warmest place of a surface until its temperature settles.

use super::error::ConductionError;
use super::geometry::Point;
use super::problem::{Environment, Problem, Refinement, RefinementRegion};
use super::solution::Solution;
use super::solve::{Accuracy, solve};
use crate::units::{Length, Temperature, TemperatureDifference};

/// Which end of the temperature range of a surface is looked for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Extreme {
    /// The lowest surface temperature.
    Coldest,
    /// The highest surface temperature.
    Warmest,
}

/// What is to be settled, and how closely.
#[derive(Clone, Debug, PartialEq)]
pub struct RefinementCriterion {
    /// The environment whose surfaces are looked at.
    pub environment: Environment,
    /// Which end of their temperatures.
    pub extreme: Extreme,
    /// A temperature per environment. With two environments 0 and 1 °C give the temperature factor.
    pub temperatures: Vec<Temperature>,
    /// Settled when halving the cells moves the temperature by less than this.
    pub tolerance: TemperatureDifference,
    /// The most rounds of halving.
    pub maximum_rounds: usize,
}

/// One round of refinement.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RefinementRound {
    /// The widest a cell was allowed to be at the place refined; in the first round, the widest one
    /// at the place found.
    pub size: Length,
    /// The cells of the grid.
    pub cells: usize,
    /// The extreme temperature found.
    pub temperature: Temperature,
    /// Where it was found.
    pub at: Point,
}

/// A solution refined at its extreme place.
#[derive(Clone, Debug)]
pub struct RefinedSolution {
    /// The problem with the refinements that were added.
    pub problem: Problem,
    /// Its solution.
    pub solution: Solution,
    /// Every round, the coarsest first.
    pub history: Vec<RefinementRound>,
    /// Whether the last halving moved the temperature by less than the tolerance. False when the
    /// rounds or the cells allowed ran out first.
    pub is_settled: bool,
}

/// Solves a problem, then halves the cells around the extreme place of a surface until its
/// temperature moves by less than a tolerance.
///
/// # Errors
/// As [`solve`] and [`Solution::with_temperatures`]; [`ConductionError::UnknownEnvironment`].
pub fn refine_until(
    problem: &Problem,
    accuracy: &Accuracy,
    criterion: &RefinementCriterion,
) -> Result<RefinedSolution, ConductionError> {
    let solution = solve(problem, accuracy)?;
    let mut run = AdaptiveRefinement::new(problem.clone(), solution, *accuracy, criterion.clone())?;
    while run.refine()? {}
    Ok(run.finish())
}

/// A refinement that is made round by round.
#[derive(Clone, Debug)]
pub struct AdaptiveRefinement {
    refined: RefinedSolution,
    accuracy: Accuracy,
    criterion: RefinementCriterion,
}

impl AdaptiveRefinement {
    /// Begins at a problem's solution.
    ///
    /// # Errors
    /// As [`Solution::with_temperatures`]; [`ConductionError::UnknownEnvironment`].
    pub fn new(
        problem: Problem,
        solution: Solution,
        accuracy: Accuracy,
        criterion: RefinementCriterion,
    ) -> Result<Self, ConductionError> {
        let mut first = find_extreme(&solution, &criterion, Length::ZERO)?;
        first.size = width_at(&solution, first.at);
        let refined =
            RefinedSolution { problem, solution, history: vec![first], is_settled: false };
        Ok(Self { refined, accuracy, criterion })
    }

    /// One round. Says whether another may still move the temperature.
    ///
    /// # Errors
    /// As [`solve`].
    pub fn refine(&mut self) -> Result<bool, ConductionError> {
        let history = &mut self.refined.history;
        if self.refined.is_settled || history.len() > self.criterion.maximum_rounds {
            return Ok(false);
        }
        let last = history[history.len() - 1];
        let size = last.size / 2.0;
        let mut finer = self.refined.problem.clone();
        finer.cells.refinements.push(Refinement { region: RefinementRegion::Point(last.at), size });
        let solution = match solve(&finer, &self.accuracy) {
            Err(ConductionError::TooManyCells { .. }) => return Ok(false),
            outcome => outcome?,
        };
        let round = find_extreme(&solution, &self.criterion, size)?;
        (self.refined.problem, self.refined.solution) = (finer, solution);
        history.push(round);
        let moved = (round.temperature - last.temperature).value().abs();
        self.refined.is_settled = moved < self.criterion.tolerance.value();
        Ok(!self.refined.is_settled)
    }

    /// The refined solution so far.
    pub const fn current(&self) -> &RefinedSolution {
        &self.refined
    }

    /// The refined solution.
    pub fn finish(self) -> RefinedSolution {
        self.refined
    }
}

/// The extreme temperature of a solution, as a round that allowed cells of a size.
fn find_extreme(
    solution: &Solution,
    criterion: &RefinementCriterion,
    size: Length,
) -> Result<RefinementRound, ConductionError> {
    let field = solution.with_temperatures(&criterion.temperatures)?;
    let spot = match criterion.extreme {
        Extreme::Coldest => field.coldest_surface(criterion.environment)?,
        Extreme::Warmest => field.warmest_surface(criterion.environment)?,
    };
    Ok(RefinementRound {
        size,
        cells: solution.cells(),
        temperature: spot.temperature,
        at: spot.at,
    })
}

/// The widest a cell is around a point, over all axes.
fn width_at(solution: &Solution, point: Point) -> Length {
    let grid = solution.grid();
    let at = point.array();
    let mut widest = 0.0_f64;
    for axis in grid.axes() {
        let d = axis.index();
        for n in grid.cells_at(d, at[d]) {
            widest = widest.max(grid.width(d, n));
        }
    }
    Length::new(widest)
}
