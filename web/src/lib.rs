//! The planning calculator as a custom element.

// In wasm `#[test]` is the harness that runs under Node.
#[cfg(all(test, target_arch = "wasm32"))]
#[macro_use]
extern crate inchwise_tests;

mod app;
mod bench;
pub mod drawing;
mod host;
pub mod measure;
pub mod sheets;
pub mod state;
pub mod text;
pub mod ui;

pub use host::{Handle, mount};
