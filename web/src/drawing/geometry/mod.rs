//! The pure geometry of the drawings, in millimetres: no words, no document, no signals.
//!
//! Every shape follows from an evaluation alone, so that a drawing can be checked without a
//! browser.

mod cells;
mod chart;
mod close_up;
mod corner;
mod damper;
mod figure;
mod frame;
mod isotherm;
mod ladder;
mod opening;
mod pen;
mod plan;
mod plane;
#[cfg(test)]
mod samples;
mod section;
mod shape;
mod sheet;
mod spot_mark;
mod spread;
mod temperature;
mod ticks;
mod window;
mod year;

pub use cells::Run;
pub use chart::*;
pub use close_up::*;
pub use corner::*;
pub use damper::*;
pub use figure::*;
pub use frame::*;
pub use isotherm::*;
pub use ladder::*;
pub use opening::*;
pub use pen::*;
pub use plan::*;
pub use plane::*;
pub use section::*;
pub use shape::*;
pub use sheet::*;
pub use spot_mark::*;
pub use spread::*;
pub use temperature::*;
pub use ticks::*;
pub use window::*;
pub use year::*;
