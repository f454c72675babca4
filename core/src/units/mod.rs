//! Quantities as types, so that a thickness cannot be passed for a conductivity.
//!
//! Every quantity holds one `f64` in its SI unit (temperature in degrees Celsius). Other units
//! exist only in named constructors and readers. Only products that mean something are defined.

mod convert;
mod quantity;

pub use convert::*;
pub use quantity::*;
