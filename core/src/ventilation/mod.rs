//! Air through the room: what fans and openings move, and how much outdoor air a purpose needs.
//!
//! Formulas and their types only. What a design has for openings is told to them in losses and
//! areas; the state of air comes from [`crate::psychro`].
//!
//! - what moves: [`FanCurve`] against a [`VentilationSystem`] of [`AirPath`]s gives an
//!   [`OperatingPoint`]; warmth alone gives a [`StackFlow`];
//! - what is needed: [`flow_to_hold`], [`flow_to_carry_heat`], [`OutdoorAirRate`], as
//!   [`DryAirFlow`], which is the same on both sides of the wall;
//! - what it costs: [`duty`], [`heat_to_warm`], [`HeatRecovery`].

mod air_path;
mod cost;
mod error;
mod fan_curve;
mod flow_element;
mod heat_recovery;
mod monotone_curve;
mod need;
mod operating_point;
mod stack;
mod system;
mod typical_loss;

pub use air_path::{AirPath, PathFlow};
pub use cost::{duty, heat_to_warm};
pub use error::{VentilationError, VentilationQuantity};
pub use fan_curve::{FAN_RATING_DENSITY, FanCurve, fan_power_at_speed};
pub use flow_element::{ElementKind, FlowElement, dynamic_pressure, screen_loss};
pub use heat_recovery::{HeatRecovery, RecoveredAir};
pub use need::{
    DryAirFlow, OutdoorAirRate, flow_to_carry_heat, flow_to_hold, heat_capacity,
    steady_humidity_ratio,
};
pub use operating_point::{ExhaustFlow, OperatingPoint};
pub use stack::{StackDirection, StackFlow, stack_flow, stack_pressure};
pub use system::{Exhaust, VentilationSystem};
pub use typical_loss::{TypicalLoss, typical_loss};
