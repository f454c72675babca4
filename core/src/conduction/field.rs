//! A solution at chosen temperatures: what can be read from it.

use super::error::ConductionError;
use super::geometry::{Block, Point, Side};
use super::grid::Grid;
use super::interpolation::{Interpolator, Node};
use super::problem::Environment;
use super::section::{Section, sample_crossings, sample_section};
use super::solution::Solution;
use crate::units::{Length, Power, Temperature};

/// A surface temperature and where it holds.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SurfaceSpot {
    /// The temperature of the surface.
    pub temperature: Temperature,
    /// Where.
    pub at: Point,
}

/// How well the heat of a field is balanced.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct HeatBalance {
    /// The sum of all flows through the surfaces; zero in an exact solution.
    pub imbalance: Power,
    /// The sum of the flows that go into an environment.
    pub throughput: Power,
}

impl HeatBalance {
    /// The imbalance as a share of the throughput; zero when no heat flows.
    pub fn relative(&self) -> f64 {
        if self.throughput > Power::ZERO {
            self.imbalance.value().abs() / self.throughput.value()
        } else {
            0.0
        }
    }
}

/// The temperatures of a solved problem at chosen temperatures of its environments.
#[derive(Clone, Debug)]
pub struct Field<'a> {
    solution: &'a Solution,
    environments: Vec<f64>,
    cells: Vec<f64>,
}

impl<'a> Field<'a> {
    pub(super) const fn new(
        solution: &'a Solution,
        environments: Vec<f64>,
        cells: Vec<f64>,
    ) -> Self {
        Self { solution, environments, cells }
    }

    /// The solution this field was read from.
    pub const fn solution(&self) -> &'a Solution {
        self.solution
    }

    /// The grid of the field.
    pub const fn grid(&self) -> &'a Grid {
        self.solution.grid()
    }

    /// The temperature at the centre of a cell; none where it is air.
    pub fn cell_temperature(&self, cell: usize) -> Option<Temperature> {
        (!self.grid().is_air(cell)).then(|| Temperature::celsius(self.cells[cell]))
    }

    /// The temperature at a point of the material, its surfaces included; none in air or outside
    /// the domain.
    ///
    /// Between cell centres, values are weighted by conductivity over distance, so the kink at the
    /// face of a material is kept (ISO 10211:2017 leaves interpolation to the method).
    pub fn temperature_at(&self, point: Point) -> Option<Temperature> {
        value_at(self.interpolator(), point).map(Temperature::celsius)
    }

    /// The temperature of the surface at a point of a face that looks into an environment; none
    /// where there is no such face.
    pub fn surface_temperature_at(
        &self,
        environment: Environment,
        point: Point,
    ) -> Option<Temperature> {
        surface_value_at(self.interpolator(), environment, point).map(Temperature::celsius)
    }

    /// The lowest temperature on the surfaces that look into an environment, corners and edges
    /// included.
    ///
    /// # Errors
    /// [`ConductionError::UnknownEnvironment`] if nothing looks into it.
    pub fn coldest_surface(
        &self,
        environment: Environment,
    ) -> Result<SurfaceSpot, ConductionError> {
        self.extreme_surface(environment, |a, b| a < b)
    }

    /// The highest temperature on the surfaces that look into an environment, corners and edges
    /// included.
    ///
    /// # Errors
    /// [`ConductionError::UnknownEnvironment`] if nothing looks into it.
    pub fn warmest_surface(
        &self,
        environment: Environment,
    ) -> Result<SurfaceSpot, ConductionError> {
        self.extreme_surface(environment, |a, b| a > b)
    }

    fn extreme_surface(
        &self,
        environment: Environment,
        is_better: fn(f64, f64) -> bool,
    ) -> Result<SurfaceSpot, ConductionError> {
        self.solution.check_boundary(environment)?;
        extreme_on_surface(self.interpolator(), environment, is_better)
            .map(|(value, at)| SurfaceSpot { temperature: Temperature::celsius(value), at })
            .ok_or(ConductionError::UnknownEnvironment { environment: environment.0 })
    }

    /// The mean temperature, by area, of the surfaces that look into an environment and lie in a
    /// block; none if the block holds none of them.
    pub fn patch_mean(&self, environment: Environment, patch: &Block) -> Option<Temperature> {
        let grid = self.grid();
        let (low, high) = (patch.minimum.array(), patch.maximum.array());
        let (mut area, mut sum) = (0.0, 0.0);
        for face in self.solution.boundary.faces() {
            if face.environment as usize != environment.0 {
                continue;
            }
            let indices = grid.indices(face.cell as usize);
            let d = face.side.axis().index();
            let mut part = 1.0;
            for axis in grid.axes() {
                let e = axis.index();
                let (from, to) = (grid.line(e, indices[e]), grid.line(e, indices[e] + 1));
                if e == d {
                    let at = if face.side.is_maximum() { to } else { from };
                    let tolerance = 1e-9 * (to - from);
                    if at < low[e] - tolerance || at > high[e] + tolerance {
                        part = 0.0;
                    }
                } else {
                    part *= (to.min(high[e]) - from.max(low[e])).max(0.0);
                }
            }
            if part > 0.0 {
                let value =
                    self.interpolator().value(face_node(indices, face.side)).unwrap_or_default();
                area += part;
                sum += part * value;
            }
        }
        (area > 0.0).then(|| Temperature::celsius(sum / area))
    }

    /// The heat that flows out of the material into an environment, W (in two dimensions W/m).
    /// Negative where the environment gives heat. By the coupling coefficients.
    pub fn flow_into(&self, environment: Environment) -> Power {
        let Some(&own) = self.environments.get(environment.0) else { return Power::ZERO };
        let flows = self.environments.iter().enumerate().map(|(n, other)| {
            self.solution.coupling(environment, Environment(n)).value() * (other - own)
        });
        Power::new(flows.sum())
    }

    /// The balance of the flows through all surfaces, summed face by face from the field itself.
    pub fn balance(&self) -> HeatBalance {
        let mut flows = vec![0.0; self.environments.len()];
        for face in self.solution.boundary.faces() {
            let n = face.environment as usize;
            flows[n] += face.conductance * (self.cells[face.cell as usize] - self.environments[n]);
        }
        HeatBalance {
            imbalance: Power::new(flows.iter().sum()),
            throughput: Power::new(flows.iter().filter(|&&flow| flow > 0.0).sum()),
        }
    }

    /// Temperatures at the middles of `width` × `height` rectangles that tile a section of the
    /// domain: row by row, the first row at the low end of the second axis of the section. None in
    /// air.
    pub fn sample(
        &self,
        section: Section,
        width: usize,
        height: usize,
    ) -> Vec<Option<Temperature>> {
        sample_section(self.interpolator(), section, width, height)
            .into_iter()
            .map(|value| value.map(Temperature::celsius))
            .collect()
    }

    /// Temperatures where lines across a section cross: row by row of `down`, in each row along
    /// `across`. On the surface of a material it is that of the surface; none in air and outside
    /// the domain.
    pub fn sample_crossings(
        &self,
        section: Section,
        across: &[Length],
        down: &[Length],
    ) -> Vec<Option<Temperature>> {
        let metres = |lines: &[Length]| -> Vec<f64> { lines.iter().map(|at| at.value()).collect() };
        sample_crossings(self.interpolator(), section, &metres(across), &metres(down))
            .into_iter()
            .map(|value| value.map(Temperature::celsius))
            .collect()
    }

    const fn interpolator(&self) -> Interpolator<'_> {
        self.solution.interpolator(self.cells.as_slice(), self.environments.as_slice())
    }
}

/// The node in the middle of a face.
fn face_node(indices: [usize; 3], side: Side) -> Node {
    let mut node = indices.map(|n| 2 * n + 1);
    let d = side.axis().index();
    node[d] = if side.is_maximum() { node[d] + 1 } else { node[d] - 1 };
    node
}

/// The cells that hold a point, on lines those of both hands.
fn cells_around(grid: &Grid, point: Point) -> Vec<[usize; 3]> {
    let at = point.array();
    let mut candidates = vec![[0; 3]];
    for axis in grid.axes() {
        let d = axis.index();
        candidates = grid
            .cells_at(d, at[d])
            .flat_map(|n| {
                candidates.iter().map(move |indices| {
                    let mut indices = *indices;
                    indices[d] = n;
                    indices
                })
            })
            .collect();
    }
    candidates
}

/// The value at a point of the material.
pub(super) fn value_at(interpolator: Interpolator<'_>, point: Point) -> Option<f64> {
    let candidates = cells_around(interpolator.grid, point);
    let solid = candidates
        .into_iter()
        .find(|&indices| !interpolator.grid.is_air(interpolator.grid.cell(indices)))?;
    interpolator.value_in_cell(solid, point.array())
}

/// The value at a point of a surface that looks into an environment.
pub(super) fn surface_value_at(
    interpolator: Interpolator<'_>,
    environment: Environment,
    point: Point,
) -> Option<f64> {
    let grid = interpolator.grid;
    let at = point.array();
    for indices in cells_around(grid, point) {
        let cell = grid.cell(indices);
        for side in Side::ALL {
            let d = side.axis().index();
            let plane = grid.line(d, indices[d] + usize::from(side.is_maximum()));
            let is_on_plane = (at[d] - plane).abs() <= 1e-6 * grid.width(d, indices[d]);
            let face = interpolator.boundary.face(cell, side);
            if is_on_plane && face.is_some_and(|face| face.environment as usize == environment.0) {
                return interpolator.value_in_cell(indices, at);
            }
        }
    }
    None
}

/// The extreme value on the surfaces that look into an environment: at the middles, edges and
/// corners of their faces, between which the value is linear along each axis.
pub(super) fn extreme_on_surface(
    interpolator: Interpolator<'_>,
    environment: Environment,
    is_better: fn(f64, f64) -> bool,
) -> Option<(f64, Point)> {
    let grid = interpolator.grid;
    let mut best: Option<(f64, Node)> = None;
    for face in interpolator.boundary.faces() {
        if face.environment as usize != environment.0 {
            continue;
        }
        let middle = face_node(grid.indices(face.cell as usize), face.side);
        let steps = [0, 1, 2].map(|d| {
            let runs = d != face.side.axis().index() && d < grid.axes().len();
            if runs { 0..3_usize } else { 1..2 }
        });
        for c in steps[2].clone() {
            for b in steps[1].clone() {
                for a in steps[0].clone() {
                    let node = [middle[0] + a - 1, middle[1] + b - 1, middle[2] + c - 1];
                    let Some(value) = interpolator.value(node) else { continue };
                    if best.is_none_or(|(current, _)| is_better(value, current)) {
                        best = Some((value, node));
                    }
                }
            }
        }
    }
    best.map(|(value, node)| (value, interpolator.point(node)))
}
