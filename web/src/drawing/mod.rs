//! The drawings: from an evaluation to pictures in millimetres.

mod casting;
mod corner;
mod corner_said;
mod corner_shape;
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
mod section;
mod spot_mark;
mod tint;
mod year_strip;

pub use corner::corner;
pub use fan_chart::fan_chart;
pub use grip::cost;
pub use humidity_chart::humidity_chart;
pub use ladder::ladder;
pub use moist_air::moist_air;
pub use moisture_balance::moisture_balance;
pub use plan::plan;
pub use section::section;
pub use year_strip::year_strip;
