//! The room as five resistances and one heat capacity: how it warms up and cools down, and what it
//! takes to be warm again after a setback.
//!
//! - what stores heat: [`InsideMass`];
//! - the network: [`RoomNetwork`], from [`NetworkParts`] or from a design's heat loss;
//! - closed forms: [`Course`], [`RoomNetwork::warm_up`], [`RoomNetwork::cool_down`],
//!   [`RoomNetwork::heat_to_reheat`].

mod course;
mod error;
mod inside_mass;
mod network;
mod reheat;

pub use course::{Course, RoomPart};
pub use error::{NetworkPart, RoomNetworkError};
pub use inside_mass::InsideMass;
pub(crate) use network::{Drive, NetworkStep};
pub use network::{NetworkParts, RoomNetwork, SteadyState};
