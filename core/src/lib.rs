//! The heart of Inchwise: what foam depth, framing and end-wall treatment do to the room, the
//! heating load and the cold spots of an insulated steel freight box.
//!
//! Pure calculation: no input or output, clock, globals, randomness, locale, prose or wire format.
//! Quantities are types ([`units`]), SI inside. Data flows one way, each room looking only at
//! the rooms declared above it.

pub mod units;

pub mod source;

mod root_finding;

pub mod psychro;
