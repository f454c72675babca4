//! Problem files of the conduction solver: JSON in, a problem with named environments out, a
//! report of its solution as JSON, and the way back from a problem to a file.
//!
//! The format is described by `conduction.schema.json` beside this package. Lengths are in the
//! file's own unit (`"lengths_in"`), conductivities in W/(m·K), surface resistances in m²·K/W,
//! temperatures in °C.

mod file;
mod read;
mod report;
mod write;

pub use file::LengthUnit;
pub use read::{FileError, ReadProblem, read_problem};
pub use report::{Report, RunError, report};
pub use write::write_problem;
