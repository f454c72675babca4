//! The planning calculator as a custom element.

pub mod drawing;
mod embed;
pub mod measure;
mod placeholder;
pub mod state;
pub mod text;

pub use embed::{Handle, mount};
