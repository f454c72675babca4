//! Fields solved aside, in a worker, so that the page never waits for one.
//!
//! The page posts its design as plain numbers; the worker answers with solved fields one by one,
//! nearest need first. A newer design takes the place of an older one between two fields. A field
//! is keyed on what it depends on, so an answer that comes late is still right for its detail.
//!
//! Page and worker are two wasm modules of one build: the page's knows fields and never solves
//! one, so that the solver need not be there before the page can be used.

// In wasm `#[test]` is the harness that runs under Node.
#[cfg(all(test, target_arch = "wasm32"))]
#[macro_use]
extern crate inchwise_tests;

mod climate;
mod message;
mod pack;
mod pack_picture;
mod solver;
mod year;
mod year_grounds;
mod year_job;

pub use climate::pack_hours;
pub use message::*;
pub use pack::*;
pub use pack_picture::*;
pub use solver::*;
pub use year::*;
