//! The unit fields of a problem and the couplings that follow from them.

use super::boundary::Boundary;
use super::error::ConductionError;
use super::field::Field;
use super::geometry::Point;
use super::grid::Grid;
use super::interpolation::Interpolator;
use super::problem::Environment;
use crate::units::{HeatTransferCoefficient, Temperature, TemperatureFactor};

/// A temperature factor and where it holds.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FactorSpot {
    /// The factor.
    pub factor: TemperatureFactor,
    /// Where.
    pub at: Point,
}

/// A solved problem: for each environment the field it raises when it alone is at 1 and all others
/// are at 0. Every set of temperatures follows by superposition.
#[derive(Clone, Debug)]
pub struct Solution {
    pub(super) grid: Grid,
    pub(super) boundary: Boundary,
    /// Empty for the remainder and for environments nothing looks into.
    unit_fields: Vec<Vec<f64>>,
    /// The environment whose unit field is 1 less all others.
    remainder: usize,
    /// Row by row, W/K.
    couplings: Vec<f64>,
    has_boundary: Vec<bool>,
    iterations: usize,
    residual: f64,
}

impl Solution {
    pub(super) fn new(
        grid: Grid,
        boundary: Boundary,
        unit_fields: Vec<Vec<f64>>,
        residual_fields: &[Vec<f64>],
        remainder: usize,
        iterations: usize,
        residual: f64,
    ) -> Self {
        let mut has_boundary = vec![false; unit_fields.len()];
        for face in boundary.faces() {
            has_boundary[face.environment as usize] = true;
        }
        let couplings = coupling_coefficients(&boundary, &unit_fields, residual_fields, remainder);
        Self {
            grid,
            boundary,
            unit_fields,
            remainder,
            couplings,
            has_boundary,
            iterations,
            residual,
        }
    }

    /// The grid the problem was solved on.
    pub const fn grid(&self) -> &Grid {
        &self.grid
    }

    /// The number of cells, air included.
    pub fn cells(&self) -> usize {
        self.grid.cells()
    }

    /// The number of environments.
    pub fn environments(&self) -> usize {
        self.unit_fields.len()
    }

    /// The iterations spent on all unit fields.
    pub const fn iterations(&self) -> usize {
        self.iterations
    }

    /// The largest relative residual left in a unit field.
    pub const fn residual(&self) -> f64 {
        self.residual
    }

    /// The thermal coupling coefficient L of two environments, W/K (in two dimensions per metre of
    /// depth): the heat that flows from one into the other per kelvin between them (ISO 10211:2017,
    /// clause 9). Zero between an environment and itself, or one that nothing looks into.
    ///
    /// Evaluated as the energy product of the two unit fields, whose error is the square of the
    /// fields', so that L(a, b) = L(b, a) and all heat is accounted for.
    pub fn coupling(&self, a: Environment, b: Environment) -> HeatTransferCoefficient {
        let n = self.environments();
        if a.0 >= n || b.0 >= n {
            return HeatTransferCoefficient::ZERO;
        }
        HeatTransferCoefficient::new(self.couplings[a.0 * n + b.0])
    }

    /// The weight g of every environment in the temperature at a point of the material:
    /// θ = Σ gₙ·θₙ with Σ gₙ = 1 (ISO 10211:2017, clause 9). None in air or outside the domain.
    pub fn weights_at(&self, point: Point) -> Option<Vec<f64>> {
        self.interpolation_weights(|interpolator| super::field::value_at(interpolator, point))
    }

    /// The weights of the environments in the temperature of a surface that looks into one of them.
    /// None where there is no such surface.
    pub fn surface_weights_at(&self, environment: Environment, point: Point) -> Option<Vec<f64>> {
        self.interpolation_weights(|interpolator| {
            super::field::surface_value_at(interpolator, environment, point)
        })
    }

    /// The lowest weight of an environment anywhere on the surfaces that look into it. With two
    /// environments this is f_Rsi at the coldest place, whichever temperatures are chosen.
    ///
    /// # Errors
    /// [`ConductionError::UnknownEnvironment`] if nothing looks into it.
    pub fn lowest_temperature_factor(
        &self,
        environment: Environment,
    ) -> Result<FactorSpot, ConductionError> {
        self.check_boundary(environment)?;
        let values = self.unit_values(environment.0);
        let field = self.superpose(&values);
        let interpolator = self.interpolator(&field, &values);
        super::field::extreme_on_surface(interpolator, environment, |a, b| a < b)
            .map(|(factor, at)| FactorSpot { factor: TemperatureFactor::new(factor), at })
            .ok_or(ConductionError::UnknownEnvironment { environment: environment.0 })
    }

    /// The field at given temperatures, one per environment in the order of their numbers.
    ///
    /// # Errors
    /// [`ConductionError::WrongTemperatureCount`], [`ConductionError::NonFiniteTemperature`].
    pub fn with_temperatures(
        &self,
        temperatures: &[Temperature],
    ) -> Result<Field<'_>, ConductionError> {
        let (wanted, given) = (self.environments(), temperatures.len());
        if wanted != given {
            return Err(ConductionError::WrongTemperatureCount { wanted, given });
        }
        if let Some(environment) = temperatures.iter().position(|t| !t.is_finite()) {
            return Err(ConductionError::NonFiniteTemperature { environment });
        }
        let values: Vec<f64> = temperatures.iter().map(|t| t.as_celsius()).collect();
        let cells = self.superpose(&values);
        Ok(Field::new(self, values, cells))
    }

    pub(super) fn check_boundary(&self, environment: Environment) -> Result<(), ConductionError> {
        match self.has_boundary.get(environment.0) {
            Some(true) => Ok(()),
            _ => Err(ConductionError::UnknownEnvironment { environment: environment.0 }),
        }
    }

    pub(super) const fn interpolator<'a>(
        &'a self,
        cells: &'a [f64],
        environments: &'a [f64],
    ) -> Interpolator<'a> {
        Interpolator { grid: &self.grid, boundary: &self.boundary, cells, environments }
    }

    fn unit_values(&self, environment: usize) -> Vec<f64> {
        (0..self.environments()).map(|n| f64::from(u8::from(n == environment))).collect()
    }

    fn interpolation_weights(
        &self,
        read: impl Fn(Interpolator<'_>) -> Option<f64>,
    ) -> Option<Vec<f64>> {
        let mut weights = vec![0.0; self.environments()];
        let mut rest = 1.0;
        for n in (0..weights.len()).filter(|&n| n != self.remainder) {
            let values = self.unit_values(n);
            if self.unit_fields[n].is_empty() {
                continue;
            }
            weights[n] = read(self.interpolator(&self.unit_fields[n], &values))?;
            rest -= weights[n];
        }
        if weights.len() == 1 || self.unit_fields.iter().all(Vec::is_empty) {
            read(self.interpolator(&vec![1.0; self.cells()], &vec![1.0; weights.len()]))?;
        }
        weights[self.remainder] = rest;
        Some(weights)
    }

    /// The field at given values of the environments.
    fn superpose(&self, values: &[f64]) -> Vec<f64> {
        let base = values[self.remainder];
        let mut cells = vec![base; self.cells()];
        for (unit_field, value) in self.unit_fields.iter().zip(values) {
            for (cell, unit) in cells.iter_mut().zip(unit_field) {
                *cell += unit * (value - base);
            }
        }
        cells
    }
}

/// The coupling coefficients of all pairs, row by row.
///
/// With u the unit fields as solved, b their right-hand sides and r = b − A·u their residuals, the
/// energy product of fields i and j is L = bᵢ·uⱼ + uᵢ·rⱼ.
fn coupling_coefficients(
    boundary: &Boundary,
    unit_fields: &[Vec<f64>],
    residual_fields: &[Vec<f64>],
    remainder: usize,
) -> Vec<f64> {
    let n = unit_fields.len();
    let mut couplings = vec![0.0; n * n];
    // The heat each environment takes from each solved unit field.
    for face in boundary.faces() {
        for (j, unit_field) in unit_fields.iter().enumerate().filter(|(_, u)| !u.is_empty()) {
            couplings[face.environment as usize * n + j] +=
                face.conductance * unit_field[face.cell as usize];
        }
    }
    for i in (0..n).filter(|&i| !unit_fields[i].is_empty()) {
        for j in (0..n).filter(|&j| j != i && !unit_fields[j].is_empty()) {
            let correction: f64 =
                unit_fields[i].iter().zip(&residual_fields[j]).map(|(u, r)| u * r).sum();
            couplings[i * n + j] += correction;
        }
    }
    // Whatever an environment exchanges with all others together goes to the remainder's account:
    // what it puts in, less what its own field gives back to it, less what the others take.
    let mut inputs = vec![0.0; n];
    for face in boundary.faces() {
        inputs[face.environment as usize] += face.conductance;
    }
    for i in (0..n).filter(|&i| i != remainder && !unit_fields[i].is_empty()) {
        let own_correction: f64 =
            unit_fields[i].iter().zip(&residual_fields[i]).map(|(u, r)| u * r).sum();
        let own = couplings[i * n + i] + own_correction;
        let mut to_others = 0.0;
        for j in (0..n).filter(|&j| j != i && j != remainder && !unit_fields[j].is_empty()) {
            let mean = 0.5 * (couplings[i * n + j] + couplings[j * n + i]);
            to_others += mean;
        }
        let to_remainder = inputs[i] - own - to_others;
        couplings[i * n + remainder] = to_remainder;
        couplings[remainder * n + i] = to_remainder;
    }
    for i in 0..n {
        couplings[i * n + i] = 0.0;
        for j in 0..i {
            let mean = 0.5 * (couplings[i * n + j] + couplings[j * n + i]);
            couplings[i * n + j] = mean;
            couplings[j * n + i] = mean;
        }
    }
    couplings
}
