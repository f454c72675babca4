//! The hours of a year in the room: temperature, humidity, heater, fan, frost and drip, energy.
//!
//! The second stage behind [`crate::evaluate`]: it takes an [`crate::evaluate::Evaluation`], the hours of a
//! place ([`Surroundings`]) and the choices about use, heater and air ([`YearChoices`]).
//!
//! - hour by hour: [`run_year`] gives a [`YearOutcome`];
//! - in closed form: [`RoomNetwork::warm_up`] and [`RoomNetwork::cool_down`];
//! - whether it holds: [`HeaterCheck`], [`SupplyCheck`];
//! - what it costs: [`Costs`]; how warm summer gets: [`Summer`];
//! - what the figures rest on, to reckon them by hand: [`YearGrounds`];
//! - by months only, as a cross-check: [`monthly_heating`].

mod check;
mod choices;
mod coefficients;
mod cost;
mod envelope_heat;
mod error;
mod fuel;
mod grounds;
mod heat_capacity;
mod heater;
mod model;
mod monthly;
mod network;
mod outage;
mod outcome;
mod run;
mod sol_air;
mod summer;
mod supply;
mod surroundings;
mod use_hours;
mod vapour_balance;

pub use check::*;
pub use choices::*;
pub use cost::*;
pub use error::*;
pub use fuel::*;
pub use grounds::*;
pub use heat_capacity::*;
pub use heater::*;
pub use model::YearModel;
pub use monthly::*;
pub use network::*;
pub use outage::{Course, RoomPart};
pub use outcome::*;
pub use run::run_year;
pub use sol_air::*;
pub use summer::*;
pub use supply::*;
pub use surroundings::*;
