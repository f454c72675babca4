//! One test binary for every check of the whole.

#[cfg(not(target_arch = "wasm32"))]
mod property;
mod reference;
#[cfg(not(target_arch = "wasm32"))]
mod tidy;
