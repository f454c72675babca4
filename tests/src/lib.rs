//! Helpers shared by the checks: closeness with a stated tolerance, and tables of outside truth.

mod table;
mod tolerance;

pub use table::{Row, Table};
pub use tolerance::{Tolerance, close_to};

/// In wasm the ordinary test harness has no console and no way to report, so `#[test]` becomes the
/// harness that runs under Node. The test binary takes this name with `#[macro_use]`, and a check
/// is written once, as `#[test]`, for both machines.
#[cfg(target_arch = "wasm32")]
pub use wasm_bindgen_test::wasm_bindgen_test as test;
