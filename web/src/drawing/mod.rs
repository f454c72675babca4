//! The drawings: from an evaluation to pictures in millimetres.

mod casting;
mod close_up;
mod depth_chart;
mod dimension;
pub mod geometry;
mod grip;
mod handle;
mod isometric;
mod ladder;
mod paper;
mod pattern;
mod plan;
mod pull;
mod section;
mod slot;
mod temperature;
mod tint;

pub use close_up::close_up;
pub use depth_chart::depth_chart;
pub use ladder::ladder;
pub use plan::plan;
pub use section::section;
pub use temperature::temperature;
