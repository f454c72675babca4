//! The parts of the page that are not drawings. Each is a skin over the state: it writes figures
//! and passes choices on, and reckons nothing.

mod air_working;
mod announcer;
mod answer;
mod asked;
mod cautions;
mod choice;
mod controls;
mod damp;
mod damp_line;
mod damp_table;
mod damp_working;
mod drip;
mod fault;
mod field;
mod figure;
mod fold;
mod how;
mod losses;
mod reckoning;
mod spots;
mod stock;
mod summary;
mod treatment;
#[cfg(test)]
mod working_tests;
mod year;

pub use announcer::announcer;
pub use answer::{answer, facts};
pub use cautions::cautions;
pub use controls::controls;
pub use damp::damp;
pub use fold::folds;
pub use losses::losses;
pub use spots::spots;
pub use summary::summary;
pub use year::{year, yearly};
