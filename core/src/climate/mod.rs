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

pub use calendar::{
    DAYS_IN_MONTH, DAYS_IN_YEAR, FIRST_DAY_OF_MONTH, HOURS_IN_YEAR, days_of, hours_of, month_of_day,
};
pub use clearness::{Clearness, daily_clearness_at};
pub use degree_days::{degree_days_of_day, exceeded_for, heating_degree_days};
pub use error::{ClimateError, ClimateProblem, ClimateQuantity};
pub use generator::SplitMix64;
pub use hourly_sun::{diffuse_fraction, hourly_to_daily_ratio};
pub use not_reached::{NotReached, not_reached};
pub use place::{CheckedPlace, MOST_VAPOUR, MonthMeans, Place, mean_extraterrestrial_irradiation};
pub use reconstruct::{SEED, Spread, daily_standard_deviation, reconstruct};
pub use sol_air::{SKY_BEFORE_WINDOWS, SUNNY_SURFACE_COEFFICIENT, WHOLE_SKY, sol_air_temperature};
pub use sun_on_box::{BoxFace, GROUND_REFLECTANCE, SunOnBox};
pub use sun_position::{
    SOLAR_CONSTANT, SunDirection, daily_extraterrestrial_irradiation, declination,
    extraterrestrial_irradiance, sunset_hour_angle,
};
pub use varnholm::varnholm_flats;
pub use weather_year::{WeatherHour, WeatherYear};
