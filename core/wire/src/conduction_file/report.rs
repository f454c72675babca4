//! What is told about a solved problem file.

use inchwise_core::conduction::{
    ConductionError, Environment, Field, Point, RefinedSolution, Solution, SurfaceSpot,
    refine_until, solve,
};
use inchwise_core::units::Length;
use serde::Serialize;

use super::file::LengthUnit;
use super::read::{FileError, ReadProblem, locate};

/// The answer to a problem file. Flows are in W and couplings in W/K, in two dimensions per metre of
/// depth; temperatures in °C; lengths in the unit of the file.
#[derive(Clone, Debug, Serialize)]
pub struct Report {
    /// Cells of the grid, air included.
    pub cells: usize,
    /// Cells along each axis.
    pub counts: [usize; 3],
    /// Iterations on all unit fields.
    pub iterations: usize,
    /// The largest relative residual left.
    pub relative_residual: f64,
    /// The sum of all flows over the flow put in.
    pub relative_imbalance: f64,
    /// One entry per environment.
    pub environments: Vec<EnvironmentReport>,
    /// One entry per pair of environments.
    pub couplings: Vec<CouplingReport>,
    /// One entry per probe.
    pub probes: Vec<ValueReport>,
    /// One entry per patch.
    pub patches: Vec<ValueReport>,
    /// The rounds of refinement, if any was asked for.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub refinement: Option<RefinementReport>,
}

/// What is told about an environment.
#[derive(Clone, Debug, Serialize)]
pub struct EnvironmentReport {
    /// Its name.
    pub name: String,
    /// Its temperature.
    pub temperature: f64,
    /// The heat that flows into it.
    pub flow_into: f64,
    /// The lowest temperature of a surface that looks into it.
    pub coldest_surface: SpotReport,
    /// The highest.
    pub warmest_surface: SpotReport,
}

/// A surface temperature and its place.
#[derive(Clone, Debug, Serialize)]
pub struct SpotReport {
    /// °C.
    pub temperature: f64,
    /// Where.
    pub at: Vec<f64>,
}

/// The thermal coupling of two environments.
#[derive(Clone, Debug, Serialize)]
pub struct CouplingReport {
    /// Their names.
    pub between: [String; 2],
    /// W/K.
    pub coupling: f64,
}

/// A temperature by name; none where there is no material or no such surface.
#[derive(Clone, Debug, Serialize)]
pub struct ValueReport {
    /// The name of the probe or patch.
    pub name: String,
    /// °C.
    pub temperature: Option<f64>,
}

/// The rounds of refinement.
#[derive(Clone, Debug, Serialize)]
pub struct RefinementReport {
    /// Whether the temperature settled.
    pub is_settled: bool,
    /// Every round, the coarsest first.
    pub rounds: Vec<RoundReport>,
}

/// A round of refinement.
#[derive(Clone, Debug, Serialize)]
pub struct RoundReport {
    /// The widest a cell was allowed to be at the place refined.
    pub size: f64,
    /// Cells of the grid.
    pub cells: usize,
    /// The extreme temperature found.
    pub temperature: f64,
    /// Where.
    pub at: Vec<f64>,
}

/// Why a problem file has no answer.
#[derive(Clone, Debug, PartialEq)]
pub struct RunError {
    /// What the solver said.
    pub cause: ConductionError,
    /// The part of the file it speaks of.
    pub place: FileError,
}

impl core::fmt::Display for RunError {
    fn fmt(&self, out: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        self.place.fmt(out)
    }
}

impl std::error::Error for RunError {}

impl From<ConductionError> for RunError {
    fn from(cause: ConductionError) -> Self {
        Self { place: locate(&cause), cause }
    }
}

/// Solves a problem file.
///
/// # Errors
/// [`RunError`]: what the solver said, and the part of the file it speaks of.
pub fn report(read: &ReadProblem) -> Result<Report, RunError> {
    let (solution, refined) = match &read.refining {
        None => (solve(&read.problem, &read.accuracy)?, None),
        Some(refining) => {
            let refined = refine_until(&read.problem, &read.accuracy, refining)?;
            let told = tell_refinement(read, &refined);
            (refined.solution, Some(told))
        }
    };
    let field = solution.with_temperatures(&read.temperatures)?;
    let mut environments = Vec::new();
    for n in 0..read.names.len() {
        environments.push(tell_environment(read, &field, n)?);
    }
    Ok(Report {
        cells: solution.cells(),
        counts: solution.grid().counts(),
        iterations: solution.iterations(),
        relative_residual: solution.residual(),
        relative_imbalance: field.balance().relative(),
        environments,
        couplings: tell_couplings(read, &solution),
        probes: tell_probes(read, &field),
        patches: tell_patches(read, &field),
        refinement: refined,
    })
}

fn tell_environment(
    read: &ReadProblem,
    field: &Field<'_>,
    n: usize,
) -> Result<EnvironmentReport, ConductionError> {
    let tell = |spot: SurfaceSpot| SpotReport {
        temperature: spot.temperature.as_celsius(),
        at: tell_point(read, spot.at),
    };
    Ok(EnvironmentReport {
        name: read.names[n].clone(),
        temperature: read.temperatures[n].as_celsius(),
        flow_into: field.flow_into(Environment(n)).value(),
        coldest_surface: tell(field.coldest_surface(Environment(n))?),
        warmest_surface: tell(field.warmest_surface(Environment(n))?),
    })
}

fn tell_couplings(read: &ReadProblem, solution: &Solution) -> Vec<CouplingReport> {
    let count = read.names.len();
    let pairs = (0..count).flat_map(|a| (a + 1..count).map(move |b| (a, b)));
    let tell = |(a, b): (usize, usize)| CouplingReport {
        between: [read.names[a].clone(), read.names[b].clone()],
        coupling: solution.coupling(Environment(a), Environment(b)).value(),
    };
    pairs.map(tell).collect()
}

fn tell_probes(read: &ReadProblem, field: &Field<'_>) -> Vec<ValueReport> {
    let tell = |(name, at, surface_of): &(String, Point, Option<Environment>)| {
        let temperature = match surface_of {
            None => field.temperature_at(*at),
            Some(environment) => field.surface_temperature_at(*environment, *at),
        };
        ValueReport { name: name.clone(), temperature: temperature.map(|t| t.as_celsius()) }
    };
    read.probes.iter().map(tell).collect()
}

fn tell_patches(read: &ReadProblem, field: &Field<'_>) -> Vec<ValueReport> {
    let patches = read.patches.iter().map(|(name, block, environment)| ValueReport {
        name: name.clone(),
        temperature: field.patch_mean(*environment, block).map(|t| t.as_celsius()),
    });
    patches.collect()
}

fn tell_refinement(read: &ReadProblem, refined: &RefinedSolution) -> RefinementReport {
    let rounds = refined.history.iter().map(|step| RoundReport {
        size: tell_length(read, step.size),
        cells: step.cells,
        temperature: step.temperature.as_celsius(),
        at: tell_point(read, step.at),
    });
    RefinementReport { is_settled: refined.is_settled, rounds: rounds.collect() }
}

const fn tell_length(read: &ReadProblem, length: Length) -> f64 {
    match read.lengths_in {
        LengthUnit::Metre => length.value(),
        LengthUnit::Millimetre => length.as_mm(),
    }
}

fn tell_point(read: &ReadProblem, point: Point) -> Vec<f64> {
    read.problem.axes().iter().map(|&axis| tell_length(read, point.along(axis))).collect()
}
