//! The heart of Inchwise: what foam depth, framing and end-wall treatment do to the room, the
//! heating load and the cold spots of an insulated steel freight box.
//!
//! Pure calculation: no input or output, clock, globals, randomness, locale, prose or wire format.
//! Quantities are types ([`units`]), SI inside. Data flows one way, each room looking only at
//! the rooms declared above it.

// In wasm `#[test]` is the harness that runs under Node.
#[cfg(all(test, target_arch = "wasm32"))]
#[macro_use]
extern crate inchwise_tests;

pub mod units;

pub mod source;

pub mod choice_table;

pub mod conduction;
mod extremes;
mod root_finding;

pub mod material;
pub mod psychro;

pub mod climate;

pub mod freight_box;

pub mod design;

pub mod room;

pub mod envelope;

pub mod detail;

pub mod heat_loss;

pub mod ventilation;

pub mod moisture;

pub mod reading;

pub mod depth_grid;

pub mod damp;

pub mod caution;

pub mod evaluate;

pub mod tradeoff;

pub mod year;
