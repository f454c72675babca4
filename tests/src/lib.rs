//! Helpers shared by the checks: closeness with a stated tolerance, and tables of outside truth.

mod table;
mod tolerance;

pub use table::{Row, Table};
pub use tolerance::{Tolerance, close_to};
