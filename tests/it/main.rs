//! One test binary for every check of the whole. Write `#[test]`: natively it is the usual one, in
//! wasm the line below gives it the meaning that runs under Node. A check that reads files at run
//! time belongs under `#[cfg(not(target_arch = "wasm32"))]`; prefer `include_str!`.

#[cfg(target_arch = "wasm32")]
#[macro_use]
extern crate inchwise_tests;

mod property;
mod reference;
mod site;
#[cfg(not(target_arch = "wasm32"))]
mod tidy;
