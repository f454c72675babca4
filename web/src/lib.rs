//! The planning calculator as a custom element.

// In wasm `#[test]` is the harness that runs under Node.
#[cfg(all(test, target_arch = "wasm32"))]
#[macro_use]
extern crate inchwise_tests;

mod address;
mod app;
mod aside;
mod choices;
mod dom;
pub mod drawing;
mod figure;
mod first;
mod further;
mod heights;
mod ledger;
mod line;
pub mod link;
pub mod measure;
mod outward;
mod panel;
mod promise;
mod reactive;
mod sight;
pub mod state;
pub mod text;
mod year;

pub use choices::Packed;
pub use first::Planner;
pub use further::Further;
pub use ledger::Request;
