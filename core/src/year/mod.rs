//! The hours of a year in the room: temperature, humidity, heater, fan, frost and drip, energy.
//!
//! The second stage behind [`crate::evaluate`]: it takes an [`crate::evaluate::Evaluation`], the hours of a
//! place ([`Surroundings`]) and what heats it at what price ([`YearChoices`]).
//!
//! - hour by hour: [`run_year`] gives a [`YearOutcome`];
//! - whether it holds: [`HeaterCheck`], [`SupplyCheck`];
//! - what it costs: [`Costs`]; how warm summer gets: [`Summer`];
//! - what the figures rest on, to reckon them by hand: [`YearGrounds`];
//! - by months only, as a cross-check: [`monthly_heating`].

mod check;
mod choices;
mod coefficients;
mod cold_places;
mod cost;
mod envelope_heat;
mod error;
mod fan;
mod fan_duty;
mod fuel;
mod grounds;
mod heater;
mod model;
mod monthly;
mod outcome;
mod record;
mod run;
mod summer;
mod supply;
mod surroundings;
mod use_schedule;
mod vapour_balance;

pub use check::*;
pub use choices::*;
pub use cost::*;
pub use error::*;
pub use fuel::*;
pub use grounds::*;
pub use heater::*;
pub use model::YearModel;
pub use monthly::*;
pub use outcome::*;
pub use run::run_year;
pub use summer::*;
pub use supply::*;
pub use surroundings::*;
