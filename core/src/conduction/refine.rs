//! Halving the cells at the coldest or warmest place of a surface until its temperature settles.

use super::error::ConductionError;
use super::geometry::Point;
use super::problem::{Environment, Finish, Problem, Refinement, RefinementPlace};
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
pub struct Refining {
    /// The environment whose surfaces are looked at.
    pub environment: Environment,
    /// Only surfaces of one finish, or all.
    pub finish: Option<Finish>,
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
pub struct RefiningStep {
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
pub struct Refined {
    /// The problem with the refinements that were added.
    pub problem: Problem,
    /// Its solution.
    pub solution: Solution,
    /// Every round, the coarsest first.
    pub history: Vec<RefiningStep>,
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
    refining: &Refining,
) -> Result<Refined, ConductionError> {
    let solution = solve(problem, accuracy)?;
    let mut run = RefiningRun::new(problem.clone(), solution, *accuracy, refining.clone())?;
    while run.halve()? {}
    Ok(run.done())
}

/// A refinement that is made round by round.
#[derive(Clone, Debug)]
pub struct RefiningRun {
    refined: Refined,
    accuracy: Accuracy,
    refining: Refining,
}

impl RefiningRun {
    /// Begins at a problem's solution.
    ///
    /// # Errors
    /// As [`Solution::with_temperatures`]; [`ConductionError::UnknownEnvironment`].
    pub fn new(
        problem: Problem,
        solution: Solution,
        accuracy: Accuracy,
        refining: Refining,
    ) -> Result<Self, ConductionError> {
        let mut first = look(&solution, &refining, Length::ZERO)?;
        first.size = width_at(&solution, first.at);
        let refined = Refined { problem, solution, history: vec![first], is_settled: false };
        Ok(Self { refined, accuracy, refining })
    }

    /// One round. Says whether another may still move the temperature.
    ///
    /// # Errors
    /// As [`solve`].
    pub fn halve(&mut self) -> Result<bool, ConductionError> {
        let history = &mut self.refined.history;
        if self.refined.is_settled || history.len() > self.refining.maximum_rounds {
            return Ok(false);
        }
        let last = history[history.len() - 1];
        let size = last.size / 2.0;
        let mut finer = self.refined.problem.clone();
        finer.cells.refinements.push(Refinement { place: RefinementPlace::Point(last.at), size });
        let solution = match solve(&finer, &self.accuracy) {
            Err(ConductionError::TooManyCells { .. }) => return Ok(false),
            outcome => outcome?,
        };
        let step = look(&solution, &self.refining, size)?;
        (self.refined.problem, self.refined.solution) = (finer, solution);
        history.push(step);
        let moved = (step.temperature - last.temperature).value().abs();
        self.refined.is_settled = moved < self.refining.tolerance.value();
        Ok(!self.refined.is_settled)
    }

    /// What came of it so far.
    pub const fn so_far(&self) -> &Refined {
        &self.refined
    }

    /// What came of it.
    pub fn done(self) -> Refined {
        self.refined
    }
}

fn look(
    solution: &Solution,
    refining: &Refining,
    size: Length,
) -> Result<RefiningStep, ConductionError> {
    let field = solution.with_temperatures(&refining.temperatures)?;
    let Refining { environment, finish, extreme, .. } = *refining;
    let spot = field.extreme_surface(environment, finish, extreme)?;
    Ok(RefiningStep { size, cells: solution.cells(), temperature: spot.temperature, at: spot.at })
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
