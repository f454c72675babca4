//! Moist surfaces and build-ups: how humid a room may be before a surface drips or moulds, how much
//! water a cold surface takes from the air, what people and things give off, and what diffuses into a
//! build-up. Formulas only; a design is put to them elsewhere.
//!
//! - when: [`HumidityLimit`] of a surface; [`limit_curve`] is that limit over the outdoor temperature;
//! - by what rule: [`NeededFactor`], [`FixedCriterion`], [`HumidityClass`] and [`critical_month`];
//! - how much: [`surface_flux`], never more than [`limited_by_source`], kept as frost by
//!   [`ColdSpellWater`];
//! - from what: [`MoistureLoad`], in a room whose cold surfaces are [`Sink`]s;
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
mod sink;
mod source_limit;
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
pub use sink::*;
pub use source_limit::*;
pub use surface_flux::*;
pub use vapour_control::*;
pub use vapour_profile::*;
