//! The shape of a problem file, field by field as it is written.

use serde::Deserialize;
use serde::de::IgnoredAny;

/// A problem file as written, before its meaning is checked.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ProblemFile {
    /// Where the schema is found; for editors.
    #[serde(rename = "$schema")]
    _schema: Option<IgnoredAny>,
    /// Anything worth saying about the problem: title, source, expected values. Not looked at.
    #[serde(rename = "about")]
    _about: Option<IgnoredAny>,
    /// 2 or 3.
    pub dimensions: u8,
    /// The unit of every length in the file.
    pub lengths_in: LengthUnit,
    /// The block that is looked at.
    pub domain: BlockEntry,
    /// The conductivity where nothing is painted; without it every place must be painted or air.
    pub background: Option<f64>,
    /// The environments, in the order of their numbers.
    pub environments: Vec<EnvironmentEntry>,
    /// The air that what is painted stands in.
    #[serde(default)]
    pub surroundings: Vec<AirEntry>,
    /// The materials; later ones win.
    #[serde(default)]
    pub paints: Vec<PaintEntry>,
    /// Surfaces with resistances of their own.
    #[serde(default)]
    pub finishes: Vec<FinishEntry>,
    /// The air cut out of what is painted.
    #[serde(default)]
    pub air: Vec<AirEntry>,
    /// Sides of the domain that look into an environment.
    #[serde(default)]
    pub exposed: Vec<ExposedEntry>,
    /// How fine the grid is.
    pub cells: CellsEntry,
    /// How closely the heat balance is to be met.
    pub accuracy: Option<AccuracyEntry>,
    /// Points to report.
    #[serde(default)]
    pub probes: Vec<ProbeEntry>,
    /// Surface patches to report.
    #[serde(default)]
    pub patches: Vec<PatchEntry>,
    /// Whether to refine at an extreme surface temperature until it settles.
    pub refine: Option<RefineEntry>,
}

/// A unit of length.
#[derive(Clone, Copy, Debug, Deserialize, PartialEq, Eq)]
#[serde(rename_all = "snake_case")]
pub enum LengthUnit {
    /// Metre.
    #[serde(rename = "m")]
    Metre,
    /// Millimetre.
    #[serde(rename = "mm")]
    Millimetre,
}

/// Two opposite corners, each of as many coordinates as the problem has dimensions.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct BlockEntry {
    /// The smallest coordinates.
    pub from: Vec<f64>,
    /// The largest coordinates.
    pub to: Vec<f64>,
}

/// A polygon drawn out along an axis.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct PrismEntry {
    /// The axis; z, and may be left out, in two dimensions.
    pub axis: Option<AxisName>,
    /// The corners along the two other axes.
    pub outline: Vec<[f64; 2]>,
    /// Where it begins; not in two dimensions.
    pub from: Option<f64>,
    /// Where it ends; not in two dimensions.
    pub to: Option<f64>,
}

/// An axis by its letter.
#[derive(Clone, Copy, Debug, Deserialize, PartialEq, Eq)]
#[serde(rename_all = "snake_case")]
pub enum AxisName {
    /// The first axis.
    X,
    /// The second axis.
    Y,
    /// The third axis.
    Z,
}

/// A side by its name.
#[derive(Clone, Copy, Debug, Deserialize, PartialEq, Eq)]
#[serde(rename_all = "snake_case")]
pub enum SideName {
    /// Looking down x.
    XMinimum,
    /// Looking up x.
    XMaximum,
    /// Looking down y.
    YMinimum,
    /// Looking up y.
    YMaximum,
    /// Looking down z.
    ZMinimum,
    /// Looking up z.
    ZMaximum,
}

/// An environment and its temperature, °C.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct EnvironmentEntry {
    /// The name it goes by in the file and in the report.
    pub name: String,
    /// °C.
    pub temperature: f64,
}

/// A material in a shape: either a block or a prism.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct PaintEntry {
    /// A note for the reader; not looked at.
    #[serde(rename = "name")]
    _name: Option<String>,
    /// A box.
    pub block: Option<BlockEntry>,
    /// A polygon drawn out.
    pub prism: Option<PrismEntry>,
    /// W/(m·K).
    pub conductivity: f64,
    /// The number of the finish of its faces; 0 where it is left out.
    #[serde(default)]
    pub finish: usize,
}

/// The resistances of surfaces of one finish that look into one environment.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct FinishEntry {
    /// Its number.
    pub finish: usize,
    /// The environment's name.
    pub environment: String,
    /// m²·K/W, for surfaces whichever way they look.
    pub surface_resistance: f64,
    /// m²·K/W, for surfaces that look in one direction.
    #[serde(default)]
    pub surface_resistance_by_side: Vec<SideResistanceEntry>,
}

/// Air in a shape: either a block or a prism.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct AirEntry {
    /// A box.
    pub block: Option<BlockEntry>,
    /// A polygon drawn out.
    pub prism: Option<PrismEntry>,
    /// The environment's name.
    pub environment: String,
    /// m²·K/W, for surfaces whichever way they look.
    pub surface_resistance: f64,
    /// m²·K/W, for surfaces that look in one direction.
    #[serde(default)]
    pub surface_resistance_by_side: Vec<SideResistanceEntry>,
}

/// The surface resistance of surfaces that look in one direction.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct SideResistanceEntry {
    /// The side of the material.
    pub side: SideName,
    /// m²·K/W.
    pub surface_resistance: f64,
}

/// A side of the domain that looks into an environment.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ExposedEntry {
    /// Which side.
    pub side: SideName,
    /// The environment's name.
    pub environment: String,
    /// m²·K/W; zero holds the side at the temperature of the environment.
    pub surface_resistance: f64,
}

/// How fine the grid is.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CellsEntry {
    /// The cell width wished beside every face.
    pub finest: f64,
    /// The widest a cell may become.
    pub coarsest: f64,
    /// How much wider than its neighbour a cell may be.
    pub growth: Option<f64>,
    /// The most cells allowed.
    pub limit: Option<usize>,
    /// Smaller cells at chosen places.
    #[serde(default)]
    pub refinements: Vec<RefinementEntry>,
}

/// A wish for smaller cells at a point, at a plane or throughout a block.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct RefinementEntry {
    /// At a point.
    pub point: Option<Vec<f64>>,
    /// At a plane.
    pub plane: Option<PlaneEntry>,
    /// Throughout a block.
    pub block: Option<BlockEntry>,
    /// How wide cells there may be.
    pub size: f64,
}

/// A plane square to an axis.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct PlaneEntry {
    /// The axis.
    pub axis: AxisName,
    /// Where along it.
    pub at: f64,
}

/// How closely the heat balance is to be met.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct AccuracyEntry {
    /// What is left over, as a share of the heat put in.
    pub relative_residual: Option<f64>,
    /// The most iterations per unit field.
    pub maximum_iterations: Option<usize>,
}

/// A point to report: inside the material, or on a surface that looks into an environment.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ProbeEntry {
    /// The name it goes by in the report.
    pub name: String,
    /// Where.
    pub at: Vec<f64>,
    /// The environment whose surface is meant.
    pub surface_of: Option<String>,
}

/// A part of the surfaces that look into an environment, whose mean is to be reported.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct PatchEntry {
    /// The name it goes by in the report.
    pub name: String,
    /// The block that holds the surfaces.
    pub block: BlockEntry,
    /// The environment's name.
    pub environment: String,
}

/// Refine at the extreme temperature of a surface until it settles.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct RefineEntry {
    /// The environment's name.
    pub environment: String,
    /// Which end.
    pub extreme: ExtremeName,
    /// K.
    pub tolerance: f64,
    /// The most rounds of halving.
    pub maximum_rounds: usize,
}

/// Which end of the temperature range is meant.
#[derive(Clone, Copy, Debug, Deserialize, PartialEq, Eq)]
#[serde(rename_all = "snake_case")]
pub enum ExtremeName {
    /// The lowest.
    Coldest,
    /// The highest.
    Warmest,
}
