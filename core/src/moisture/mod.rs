//! Damp: how humid the room may be before a surface drips or moulds, how much water a cold surface
//! takes from the air, what a use gives off, and what diffuses into the build-up.
//!
//! - where: [`ColdSpots`] orders every place by its temperature factor, each with its
//!   [`HumidityLimit`]; [`limit_curve`] is that limit over the outdoor temperature;
//! - by what rule: [`NeededFactor`], [`FixedCriterion`], [`HumidityClass`] and [`critical_month`];
//! - how much: [`surface_flux`], never more than [`limited_by_source`], kept as frost by
//!   [`ColdSpellWater`];
//! - from what: [`loads`], the [`MoistureLoad`]s of a design, and the [`SteadyRoom`] they come to;
//! - inside the build-up: [`Assembly`] with [`monthly_balance`] and [`block_climate`], and
//!   [`least_depth_for_vapour_control`].
//!
//! Whatever ISO 13788 defines is reckoned by its own saturation formulas
//! ([`crate::psychro::iso_13788`]); rates onto surfaces and states of the room's air by the ASHRAE
//! ones ([`crate::psychro::hyland_wexler`]).

mod assembly;
mod balance;
mod block_climate;
mod cold_spell;
mod critical_month;
mod emission;
mod error;
mod humidity_class;
mod limit;
mod month;
mod needed_factor;
mod remedy;
mod room_use;
mod source_limit;
mod spot;
mod steady_room;
mod surface_flux;
mod vapour_control;
mod vapour_profile;

pub use assembly::*;
pub use balance::*;
pub use block_climate::*;
pub use cold_spell::*;
pub use critical_month::*;
pub use emission::*;
pub use error::{MoistureError, MoistureQuantity};
pub use humidity_class::*;
pub use limit::*;
pub use month::*;
pub use needed_factor::*;
pub use remedy::*;
pub use room_use::*;
pub use source_limit::*;
pub use spot::*;
pub use steady_room::*;
pub use surface_flux::*;
pub use vapour_control::*;
pub use vapour_profile::*;
