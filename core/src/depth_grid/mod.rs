//! What a wall is worth as it was sprayed: its transmittance and loss from a grid of probed foam
//! depths.
//!
//! Foam of uneven depth loses more than even foam of the same mean, because U falls ever slower with
//! depth: thin places lose more than thick ones save.

mod build_up;
mod outcome;
mod probes;
mod refusal;

pub use build_up::*;
pub use outcome::*;
pub use probes::*;
pub use refusal::*;
