//! One grammar for what a visitor chose: the page's address, the element's attributes, and the
//! messages to the workers are all written in it.

// In wasm `#[test]` is the harness that runs under Node.
#[cfg(all(test, target_arch = "wasm32"))]
#[macro_use]
extern crate inchwise_tests;

mod design;
mod figure;
mod fragment;
mod number;
mod place;
mod year;

pub use design::*;
pub use figure::*;
pub use fragment::*;
pub use number::*;
pub use place::*;
pub use year::*;

/// No text longer than this, in bytes, is read: the longest that is written is a tenth of it.
pub const LONGEST: usize = 16_000;
