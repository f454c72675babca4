//! The parts of the page that are not drawings. Each is a skin over the state: it writes figures
//! and passes choices on, and reckons nothing.

mod announcer;
mod answer;
mod cautions;
mod choice;
mod controls;
mod damp;
mod damp_table;
mod drip;
mod fault;
mod field;
mod figure;
mod fold;
mod losses;
mod reckoning;
mod spots;
mod stock;
mod summary;
mod treatment;
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
pub use year::year;
