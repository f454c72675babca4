//! Moist air: saturation, dew point, humidity ratio, wet bulb, enthalpy and density.
//!
//! Formulas only, nothing here has heard of a building. Two families of saturation formula stand
//! side by side and differ by up to 2 % in the cold, so a feature names the one it uses and stays
//! with it:
//!
//! - [`hyland_wexler`]: the ASHRAE formulas, for the state of air, ventilation and the year;
//! - [`iso_13788`]: the pair that the surface and interstitial moisture standard prescribes.
//!
//! Every input is checked against the range its formula is stated for and refused with a
//! [`PsychroError`] outside it; nothing is clamped.

mod atmosphere;
mod constants;
mod density;
mod enthalpy;
mod error;
mod humidity;
pub mod hyland_wexler;
pub mod iso_13788;
mod moist_air;
mod saturation_table;
mod wet_bulb;

pub use atmosphere::{STANDARD_PRESSURE, standard_pressure, standard_temperature};
pub use constants::{
    GAS_CONSTANT_OF_DRY_AIR, GAS_CONSTANT_OF_VAPOUR, HEAT_CAPACITY_OF_DRY_AIR,
    HEAT_CAPACITY_OF_VAPOUR, LATENT_HEAT_AT_ZERO, MOLAR_MASS_RATIO, latent_heat_of_vaporisation,
};
pub use density::{dry_air_density, moist_air_density, specific_volume};
pub use enthalpy::enthalpy;
pub use error::{AllowedRange, PsychroError, PsychroQuantity};
pub use humidity::{
    humidity_ratio, saturation_humidity_ratio, vapour_concentration,
    vapour_pressure_from_concentration, vapour_pressure_from_humidity_ratio,
};
pub use moist_air::MoistAir;
pub use saturation_table::SaturationTable;
pub use wet_bulb::{humidity_ratio_from_wet_bulb, wet_bulb};
