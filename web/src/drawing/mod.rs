//! The drawings: from an evaluation to pictures in millimetres.

mod casting;
mod close_up;
mod depth_chart;
mod dimension;
mod fan_chart;
pub mod geometry;
mod grip;
mod handle;
mod humidity_chart;
mod isometric;
mod ladder;
mod moist_air;
mod moisture_balance;
mod paper;
mod pattern;
mod plan;
mod plot;
mod pull;
mod section;
mod slot;
mod temperature;
mod tint;
mod year_strip;

pub use close_up::close_up;
pub use depth_chart::depth_chart;
pub use fan_chart::fan_chart;
pub use humidity_chart::humidity_chart;
pub use ladder::ladder;
pub use moist_air::moist_air;
pub use moisture_balance::moisture_balance;
pub use plan::plan;
pub use section::section;
pub use temperature::temperature;
pub use year_strip::year_strip;
