//! The planning calculator as a custom element.

// In wasm `#[test]` is the harness that runs under Node.
#[cfg(all(test, target_arch = "wasm32"))]
#[macro_use]
extern crate inchwise_tests;

mod embed;
mod placeholder;

pub use embed::{Handle, mount};
