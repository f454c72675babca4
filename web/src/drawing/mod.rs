//! The drawings: from an evaluation to pictures in millimetres.

mod casting;
mod close_up;
mod depth_chart;
mod dimension;
pub mod geometry;
mod grip;
mod ladder;
mod paper;
mod pattern;
mod plan;
mod section;
mod slot;
mod year_strip;

pub use close_up::close_up;
pub use depth_chart::depth_chart;
pub use ladder::ladder;
pub use plan::plan;
pub use section::section;
pub use year_strip::year_strip;
