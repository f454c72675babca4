//! The temperature factor of a place from three thermometers, and the humidity it stands: what was
//! built, read on site.
//!
//! Inside air, outside air and the surface give f = (θ_si − θ_e) / (θ_i − θ_e) (ISO 10211:2017). The
//! surface resistances in it are those that really were there, the ordinary ones of a free wall. So
//! it is compared with a field solved with ordinary resistances,
//! [`crate::detail::DetailField::ordinary_temperature_factor`]; a verdict on damp is taken with
//! 0.25 m²·K/W (ISO 13788) and lies lower than what is read on the same place.
//!
//! What a thermometer must do to be believed is common practice, no source: the surface probe is
//! held under tape or paste and shaded; bare or galvanised steel shows an infrared thermometer the
//! room's own reflection and needs matt tape first; the inside air is read a hand's breadth off the
//! place, not at the thermostat.

mod factor;
mod log;
mod refusal;
mod settling;
mod taken;

pub use factor::*;
pub use log::*;
pub use refusal::*;
pub use settling::*;
pub use taken::*;
