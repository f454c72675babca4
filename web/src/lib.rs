//! The planning calculator as a custom element.

mod embed;
mod evaluate;
mod placeholder;

pub use embed::{Handle, mount};
pub use evaluate::evaluate;
