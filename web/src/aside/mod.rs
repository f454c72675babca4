//! Fields solved aside, in a worker, so that the page never waits for one.
//!
//! The page posts its design as plain numbers; the worker answers with solved fields one by one,
//! nearest need first. A newer design takes the place of an older one between two fields. A field
//! is keyed on what it depends on, so an answer that comes late is still right for its detail.

mod message;
mod pack;
mod page;
mod solver;

pub use page::{Aside, CurvePoints};
pub use solver::AsideSolver;
