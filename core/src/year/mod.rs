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

pub use check::{CheckedYearChoices, YearError, YearProblem, YearSubject};
pub use choices::{PriceDate, YearChoices, YearField, YearQuantity, YearRange};
pub use cost::Costs;
pub use error::YearModelError;
pub use fuel::EnergyCarrier;
pub use grounds::{MeanHour, YearGrounds};
pub use heater::{AtPowerCut, HEAT_PUMP_COLDEST, HeaterCheck, HeaterKind};
pub use model::YearModel;
pub use monthly::{gain_utilisation, monthly_heating};
pub use outcome::{EnergyByPurpose, Period, RoomHour, SpotHours, SpotState, YearOutcome};
pub use run::run_year;
pub use summer::{LIGHT_PAINT, SHADED, Summer, SummerCase, purge_flow};
pub use supply::{CONTINUOUS_SHARE, CONTINUOUS_SHARE_SOURCE, SupplyCheck, largest_continuous_load};
pub use surroundings::Surroundings;
