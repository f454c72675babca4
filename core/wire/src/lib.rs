//! The JSON form of a design and of its evaluation: a mirror at the edge of the core.

pub mod conduction_file;
