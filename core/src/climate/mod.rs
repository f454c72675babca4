//! What the weather of a place is like: twelve months of means, and the hours of a year.
//!
//! - what is known of a place: [`Place`], twelve [`MonthMeans`] with elevation, latitude and design
//!   temperatures; [`varnholm_flats`] is the invented default;
//! - its hours: [`reconstruct`] makes 8,760 of them from the months, the same ones each time,
//!   and [`not_reached`] tells what of the place they miss; [`WeatherYear::new`] takes measured ones;
//! - what the sun gives to roof and walls: [`SunOnBox`];
//! - sums of the year: [`heating_degree_days`], [`exceeded_for`].
//!
//! Hours are those of the sun's own time: the sun stands highest at noon. A year has 365 days.

mod calendar;
mod clearness;
mod daily;
mod degree_days;
mod error;
mod generator;
mod hourly_sun;
mod not_reached;
mod place;
mod reconstruct;
mod sol_air;
mod sun_on_box;
mod sun_position;
mod vapour;
mod varnholm;
mod weather_year;

pub use calendar::*;
pub use clearness::{Clearness, daily_clearness_at};
pub use degree_days::*;
pub use error::*;
pub use generator::SplitMix64;
pub use hourly_sun::{diffuse_fraction, hourly_to_daily_ratio};
pub use not_reached::*;
pub use place::*;
pub use reconstruct::*;
pub use sol_air::*;
pub use sun_on_box::*;
pub use sun_position::*;
pub use varnholm::varnholm_flats;
pub use weather_year::*;
