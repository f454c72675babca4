//! From the text of a problem file to a problem.

use core::fmt;

use inchwise_core::conduction::{
    Accuracy, Axis, Block, CellSizes, ConductionError, Dimensionality, Environment, ExposedSide,
    Extreme, Point, Problem, ProblemPart, Refinement, RefinementCriterion, RefinementRegion, Shape,
    Side, SurfaceResistances,
};
use inchwise_core::units::{
    Length, Temperature, TemperatureDifference, ThermalConductivity, ThermalResistance,
};

use super::file::{
    AxisName, BlockEntry, ExtremeName, LengthUnit, PrismEntry, ProblemFile, RefinementEntry,
    SideName,
};

/// What is wrong with a problem file.
#[derive(Clone, Debug, PartialEq)]
pub enum FileError {
    /// It is not JSON, or not of the shape the schema describes.
    Form {
        /// Counted from 1.
        line: usize,
        /// Counted from 1.
        column: usize,
        /// What was found and what was expected.
        message: String,
    },
    /// It has the right shape but no lawful meaning.
    Meaning {
        /// Such as `paints[3].block`.
        path: String,
        /// What is wrong there.
        message: String,
    },
}

impl fmt::Display for FileError {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Form { line, column, message } => {
                write!(out, "line {line}, column {column}: {message}")
            }
            Self::Meaning { path, message } => write!(out, "{path}: {message}"),
        }
    }
}

impl std::error::Error for FileError {}

/// A problem file made ready to be solved.
#[derive(Clone, Debug)]
pub struct ReadProblem {
    /// The problem.
    pub problem: Problem,
    /// The names of the environments, by number.
    pub names: Vec<String>,
    /// Their temperatures.
    pub temperatures: Vec<Temperature>,
    /// How closely to solve.
    pub accuracy: Accuracy,
    /// Points to report: name, place, and the environment if a surface is meant.
    pub probes: Vec<(String, Point, Option<Environment>)>,
    /// Surface patches to report.
    pub patches: Vec<(String, Block, Environment)>,
    /// What to refine for, if anything.
    pub refining: Option<RefinementCriterion>,
    /// The unit lengths are reported in.
    pub lengths_in: LengthUnit,
}

/// Reads a problem file.
///
/// # Errors
/// [`FileError`], with the place.
pub fn read_problem(text: &str) -> Result<ReadProblem, FileError> {
    let file: ProblemFile = serde_json::from_str(text).map_err(|error| {
        // The place is told apart, so it need not stand in the message.
        let message = error.to_string();
        let message = message.split(" at line ").next().unwrap_or(&message).to_owned();
        FileError::Form { line: error.line(), column: error.column(), message }
    })?;
    Reader::new(&file)?.read()
}

/// What a fault of the problem means for the file it was read from.
pub(super) fn locate(error: &ConductionError) -> FileError {
    let (path, message) = match *error {
        ConductionError::NonFiniteConductivity { part } => {
            (conductivity_path(part), "not a finite number".to_owned())
        }
        ConductionError::NonPositiveConductivity { part, conductivity } => {
            let value = conductivity.value();
            (conductivity_path(part), format!("{value} W/(m·K) is not above zero"))
        }
        ConductionError::BadBlock { part } => (
            shape_path(part),
            "empty, inside out or not finite: `from` must lie below `to` along every axis, and an \
             outline needs three corners that span an area"
                .to_owned(),
        ),
        ConductionError::BadSurfaceResistance { part, resistance } => {
            let value = resistance.value();
            let path = format!("{}.surface_resistance", entry_path(part));
            (path, format!("{value} m²·K/W is below zero or not finite"))
        }
        ConductionError::BadSide { part, .. } => {
            let path = format!("{}.side", entry_path(part));
            (path, "exposed before, or a z side in two dimensions".to_owned())
        }
        ConductionError::BadEnvironment { part } => {
            (format!("{}.environment", entry_path(part)), "too many environments".to_owned())
        }
        ConductionError::BadCellSizes => (
            "cells".to_owned(),
            "sizes must be above zero, the finest not above the coarsest, growth from 1.01 to 4"
                .to_owned(),
        ),
        ConductionError::BadRefinement { part } => {
            (entry_path(part), "a size must be above zero and a part finite".to_owned())
        }
        ConductionError::TooManyCells { cells, limit } => {
            ("cells.limit".to_owned(), format!("{cells} cells needed, {limit} allowed"))
        }
        ConductionError::NoBoundary => {
            ("environments".to_owned(), "no material touches any of them".to_owned())
        }
        ConductionError::Empty => ("air".to_owned(), "the air fills the whole domain".to_owned()),
        ConductionError::NotConverged { residual, iterations } => (
            "accuracy".to_owned(),
            format!("a relative residual of {residual:e} was reached in {iterations} iterations"),
        ),
        ConductionError::NonFiniteTemperature { environment } => {
            let path = format!("environments[{environment}].temperature");
            (path, "not a finite number".to_owned())
        }
        ConductionError::UnknownEnvironment { environment } => {
            let path = format!("environments[{environment}]");
            (path, "no material touches it".to_owned())
        }
        ref other => ("environments".to_owned(), format!("{other:?}")),
    };
    FileError::Meaning { path, message }
}

fn entry_path(part: ProblemPart) -> String {
    match part {
        ProblemPart::Domain => "domain".to_owned(),
        ProblemPart::Background => "background".to_owned(),
        ProblemPart::Paint(n) => format!("paints[{n}]"),
        ProblemPart::Air(n) => format!("air[{n}]"),
        ProblemPart::Exposed(n) => format!("exposed[{n}]"),
        ProblemPart::Refinement(n) => format!("cells.refinements[{n}]"),
    }
}

fn conductivity_path(part: ProblemPart) -> String {
    match part {
        ProblemPart::Background => entry_path(part),
        _ => format!("{}.conductivity", entry_path(part)),
    }
}

fn shape_path(part: ProblemPart) -> String {
    match part {
        ProblemPart::Domain => entry_path(part),
        _ => format!("{}.block or .prism", entry_path(part)),
    }
}

fn fault<T>(path: impl Into<String>, message: impl Into<String>) -> Result<T, FileError> {
    Err(FileError::Meaning { path: path.into(), message: message.into() })
}

struct Reader<'a> {
    file: &'a ProblemFile,
    dimensions: Dimensionality,
}

impl<'a> Reader<'a> {
    fn new(file: &'a ProblemFile) -> Result<Self, FileError> {
        let dimensions = match file.dimensions {
            2 => Dimensionality::Two,
            3 => Dimensionality::Three,
            other => return fault("dimensions", format!("{other} is neither 2 nor 3")),
        };
        Ok(Self { file, dimensions })
    }

    fn read(&self) -> Result<ReadProblem, FileError> {
        let file = self.file;
        for (n, entry) in file.environments.iter().enumerate() {
            if file.environments[..n].iter().any(|earlier| earlier.name == entry.name) {
                return fault(format!("environments[{n}].name"), "named before");
            }
        }
        let domain = self.block(&file.domain, "domain")?;
        let background = ThermalConductivity::new(file.background);
        let mut problem = Problem::new(domain, self.dimensions, background, self.cells()?);
        for (n, entry) in file.paints.iter().enumerate() {
            let shape = self.shape(&entry.block, &entry.prism, &format!("paints[{n}]"))?;
            problem.paint(shape, ThermalConductivity::new(entry.conductivity));
        }
        for (n, entry) in file.air.iter().enumerate() {
            let path = format!("air[{n}]");
            let shape = self.shape(&entry.block, &entry.prism, &path)?;
            let environment = self.environment(&entry.environment, &path)?;
            let resistance = ThermalResistance::new(entry.surface_resistance);
            let mut resistances = SurfaceResistances::uniform(resistance);
            for of_side in &entry.surface_resistance_by_side {
                let resistance = ThermalResistance::new(of_side.surface_resistance);
                resistances = resistances.with(side(of_side.side), resistance);
            }
            problem.open_to(shape, environment, resistances);
        }
        for (n, entry) in file.exposed.iter().enumerate() {
            let environment = self.environment(&entry.environment, &format!("exposed[{n}]"))?;
            let surface_resistance = ThermalResistance::new(entry.surface_resistance);
            let side = side(entry.side);
            problem.exposed.push(ExposedSide { side, environment, surface_resistance });
        }
        problem.check().map_err(|error| locate(&error))?;
        let unused = (problem.environments()..file.environments.len()).next();
        if let Some(n) = unused {
            return fault(format!("environments[{n}]"), "no air or exposed side speaks of it");
        }
        let celsius = file.environments.iter().map(|entry| entry.temperature);
        Ok(ReadProblem {
            problem,
            names: file.environments.iter().map(|entry| entry.name.clone()).collect(),
            temperatures: celsius.map(Temperature::celsius).collect(),
            accuracy: self.accuracy(),
            probes: self.probes()?,
            patches: self.patches()?,
            refining: self.refining()?,
            lengths_in: file.lengths_in,
        })
    }

    fn length(&self, value: f64) -> Length {
        match self.file.lengths_in {
            LengthUnit::Metre => Length::new(value),
            LengthUnit::Millimetre => Length::mm(value),
        }
    }

    fn point(&self, values: &[f64], path: &str) -> Result<Point, FileError> {
        match (self.dimensions, values) {
            (Dimensionality::Two, &[x, y]) => {
                Ok(Point::new(self.length(x), self.length(y), Length::ZERO))
            }
            (Dimensionality::Three, &[x, y, z]) => {
                Ok(Point::new(self.length(x), self.length(y), self.length(z)))
            }
            _ => {
                let (wanted, given) = (self.file.dimensions, values.len());
                fault(path, format!("{wanted} coordinates expected, {given} given"))
            }
        }
    }

    fn block(&self, entry: &BlockEntry, path: &str) -> Result<Block, FileError> {
        let minimum = self.point(&entry.from, &format!("{path}.from"))?;
        let mut maximum = self.point(&entry.to, &format!("{path}.to"))?;
        if self.dimensions == Dimensionality::Two {
            maximum.z = Length::new(1.0);
        }
        Ok(Block::new(minimum, maximum))
    }

    fn shape(
        &self,
        block: &Option<BlockEntry>,
        prism: &Option<PrismEntry>,
        path: &str,
    ) -> Result<Shape, FileError> {
        match (block, prism) {
            (Some(block), None) => Ok(self.block(block, &format!("{path}.block"))?.into()),
            (None, Some(prism)) => self.prism(prism, &format!("{path}.prism")),
            _ => fault(path, "either a block or a prism expected"),
        }
    }

    fn prism(&self, entry: &PrismEntry, path: &str) -> Result<Shape, FileError> {
        let outline = entry.outline.iter().map(|corner| corner.map(|value| self.length(value)));
        let outline = outline.collect();
        let ends = (entry.axis, entry.from, entry.to);
        let (axis, from, to) = match (self.dimensions, ends) {
            (Dimensionality::Two, (None | Some(AxisName::Z), None, None)) => {
                (Axis::Z, Length::ZERO, Length::new(1.0))
            }
            (Dimensionality::Two, _) => {
                return fault(path, "in two dimensions a prism has no axis but z and no ends");
            }
            (Dimensionality::Three, (Some(along), Some(from), Some(to))) => {
                (axis(along), self.length(from), self.length(to))
            }
            (Dimensionality::Three, _) => {
                return fault(path, "in three dimensions a prism has an axis, `from` and `to`");
            }
        };
        Ok(Shape::Prism { axis, outline, from, to })
    }

    fn environment(&self, name: &str, path: &str) -> Result<Environment, FileError> {
        match self.file.environments.iter().position(|entry| entry.name == name) {
            Some(n) => Ok(Environment(n)),
            None => fault(format!("{path}.environment"), format!("`{name}` is not declared")),
        }
    }

    fn cells(&self) -> Result<CellSizes, FileError> {
        let entry = &self.file.cells;
        let mut cells = CellSizes::new(self.length(entry.finest), self.length(entry.coarsest));
        cells.growth = entry.growth.unwrap_or(cells.growth);
        cells.limit = entry.limit.unwrap_or(cells.limit);
        for (n, refinement) in entry.refinements.iter().enumerate() {
            let path = format!("cells.refinements[{n}]");
            let region = self.refinement_region(refinement, &path)?;
            cells.refinements.push(Refinement { region, size: self.length(refinement.size) });
        }
        Ok(cells)
    }

    fn refinement_region(
        &self,
        entry: &RefinementEntry,
        path: &str,
    ) -> Result<RefinementRegion, FileError> {
        match (&entry.point, &entry.plane, &entry.block) {
            (Some(point), None, None) => {
                Ok(RefinementRegion::Point(self.point(point, &format!("{path}.point"))?))
            }
            (None, Some(plane), None) => {
                Ok(RefinementRegion::Plane { axis: axis(plane.axis), at: self.length(plane.at) })
            }
            (None, None, Some(block)) => {
                Ok(RefinementRegion::Block(self.block(block, &format!("{path}.block"))?))
            }
            _ => fault(path, "one of a point, a plane or a block expected"),
        }
    }

    fn accuracy(&self) -> Accuracy {
        let mut accuracy = Accuracy::default();
        if let Some(entry) = &self.file.accuracy {
            let residual = entry.relative_residual;
            accuracy.relative_residual = residual.unwrap_or(accuracy.relative_residual);
            let iterations = entry.maximum_iterations;
            accuracy.maximum_iterations = iterations.unwrap_or(accuracy.maximum_iterations);
        }
        accuracy
    }

    fn probes(&self) -> Result<Vec<(String, Point, Option<Environment>)>, FileError> {
        let read = |(n, entry): (usize, &super::file::ProbeEntry)| {
            let at = self.point(&entry.at, &format!("probes[{n}].at"))?;
            let surface_of = match &entry.surface_of {
                None => None,
                Some(name) => Some(self.environment(name, &format!("probes[{n}]"))?),
            };
            Ok((entry.name.clone(), at, surface_of))
        };
        self.file.probes.iter().enumerate().map(read).collect()
    }

    fn patches(&self) -> Result<Vec<(String, Block, Environment)>, FileError> {
        let read = |(n, entry): (usize, &super::file::PatchEntry)| {
            let path = format!("patches[{n}]");
            let block = self.block(&entry.block, &format!("{path}.block"))?;
            Ok((entry.name.clone(), block, self.environment(&entry.environment, &path)?))
        };
        self.file.patches.iter().enumerate().map(read).collect()
    }

    fn refining(&self) -> Result<Option<RefinementCriterion>, FileError> {
        let Some(entry) = &self.file.refine else { return Ok(None) };
        if entry.tolerance.is_nan() || entry.tolerance <= 0.0 {
            return fault("refine.tolerance", "must be above zero");
        }
        let celsius = self.file.environments.iter().map(|entry| entry.temperature);
        Ok(Some(RefinementCriterion {
            environment: self.environment(&entry.environment, "refine")?,
            extreme: match entry.extreme {
                ExtremeName::Coldest => Extreme::Coldest,
                ExtremeName::Warmest => Extreme::Warmest,
            },
            temperatures: celsius.map(Temperature::celsius).collect(),
            tolerance: TemperatureDifference::new(entry.tolerance),
            maximum_rounds: entry.maximum_rounds,
        }))
    }
}

const fn axis(name: AxisName) -> Axis {
    match name {
        AxisName::X => Axis::X,
        AxisName::Y => Axis::Y,
        AxisName::Z => Axis::Z,
    }
}

const fn side(name: SideName) -> Side {
    match name {
        SideName::XMinimum => Side::XMinimum,
        SideName::XMaximum => Side::XMaximum,
        SideName::YMinimum => Side::YMinimum,
        SideName::YMaximum => Side::YMaximum,
        SideName::ZMinimum => Side::ZMinimum,
        SideName::ZMaximum => Side::ZMaximum,
    }
}
