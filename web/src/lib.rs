//! The planning calculator as a custom element.

mod embed;
mod placeholder;

pub use embed::{Handle, mount};
