//! What must hold for any input, tried on many.

mod design;
mod heat_loss;
mod psychro;
mod room;
