//! The planning calculator as a custom element.

mod app;
mod dom;
mod embed;
pub mod link;
pub mod measure;
mod outward;
mod panel;
pub mod state;
pub mod text;

pub use embed::{Handle, evaluate, mount};
