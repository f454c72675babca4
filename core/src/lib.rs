//! The heart of Inchwise: what foam depth, framing and end-wall treatment do to the room, the
//! heating load and the cold spots of an insulated steel freight box.
//!
//! ```
//! use inchwise_core::{climate::*, design::Design, detail::FieldCache, evaluate::evaluate, year::*};
//!
//! let checked = Design::default().check().expect("every choice is in its range, and all fit together");
//! let evaluation = evaluate(&checked, &mut FieldCache::default());
//! let balance = evaluation.balance.as_ref().expect("a checked design has one");
//! println!("load at work {:.0} W", balance.load.at_work.total().value());
//! println!("coldest place {}", evaluation.cold_spots.weakest().map_or("-", |spot| spot.place.key()));
//! let hours = reconstruct(&checked.design().place, Spread::DesignTemperatures, SEED);
//! let around = Surroundings::new(hours, checked.design().front_faces);
//! let year = run_year(&YearModel::new(&evaluation, &around, &CheckedYearChoices::default()).expect("it runs"));
//! println!("heat of a year {:.0} kWh", year.year.energy.heat().as_kilowatt_hours());
//! ```
//!
//! Pure calculation: no input or output, clock, globals, randomness, locale, prose or wire format.
//! Quantities are types ([`units`]), SI inside. Data flows one way, each room looking only at
//! the rooms declared above it.

// In wasm `#[test]` is the harness that runs under Node.
#[cfg(all(test, target_arch = "wasm32"))]
#[macro_use]
extern crate inchwise_tests;

pub mod units;

pub mod bounds;

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

pub mod humidity;

pub mod room_network;

pub mod heat_load;

pub mod caution;

pub mod evaluate;

pub mod tradeoff;

pub mod year;
