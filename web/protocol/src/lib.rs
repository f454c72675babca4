//! What the page and its workers say to one another.
//!
//! A message is a value of [`ToWorker`] or [`FromWorker`]; the numbers of a picture travel beside
//! it as one array, handed over and not copied. A worker knows nothing but what it is told: what
//! it answers never depends on what it solved before.

// In wasm `#[test]` is the harness that runs under Node.
#[cfg(all(test, target_arch = "wasm32"))]
#[macro_use]
extern crate inchwise_tests;

mod field;
mod picture;

pub use field::*;
pub use picture::*;

use serde::{Deserialize, Serialize};

/// One detail of a design.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Wish {
    /// By this the answer is known.
    pub request: u32,
    /// The design, as a link writes it.
    pub design: String,
    /// The place, by its number in the envelope's list.
    pub place: usize,
    /// What the sections lose that a body is judged against, W/(m·K), in the order they are asked
    /// for. Where one is missing, that section is what is wished for.
    pub lines: Vec<f64>,
}

/// What the page says.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub enum ToWorker {
    /// Solve this in place of whatever is being worked on.
    Solve(Wish),
    /// Make pictures of a place, then go on.
    Picture(Wish),
    /// Nothing is wished for any more.
    Rest,
}

/// What a worker says.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub enum FromWorker {
    /// It stands and waits.
    Ready,
    /// It is still at it: one field of several is solved.
    Busy {
        /// Which wish.
        request: u32,
    },
    /// A detail is solved.
    Solved {
        /// Which wish.
        request: u32,
        /// Its field.
        field: FieldNumbers,
    },
    /// A detail cannot be solved.
    Failed {
        /// Which wish.
        request: u32,
        /// The relative residual that was reached; none where it failed otherwise.
        residual: Option<f64>,
    },
    /// Pictures of a place; their numbers come beside.
    Pictured {
        /// Which wish.
        request: u32,
        /// The coldest of the room's surface, not yet refined there.
        coldest: Coldest,
        /// What the numbers are of.
        pictures: Vec<PictureHead>,
    },
}

impl FromWorker {
    /// The wish that it answers.
    pub const fn request(&self) -> Option<u32> {
        match self {
            Self::Ready => None,
            Self::Busy { request }
            | Self::Solved { request, .. }
            | Self::Failed { request, .. }
            | Self::Pictured { request, .. } => Some(*request),
        }
    }
}
