//! The planning calculator as a custom element.
