//! Cold details as solved fields: each turns a part of the design into a heat-conduction problem
//! and the field into an extra loss (ψ of a line, χ of a piece) and a temperature factor f_Rsi.
//!
//! No detail takes its answer from a table, and none invents a constant that a material, a box or
//! a design could state.

mod bottom_corner;
mod bracket;
mod build_up;
mod corner;
#[expect(clippy::module_inception, reason = "the room keeps details, each is a Detail")]
mod detail;
mod edge;
mod field_cache;
mod floor;
mod floor_edge;
mod floor_member;
mod frame_line;
mod model;
mod opening_frame;
mod picture;
mod set;
mod sleeve;
mod solving;
mod view;
mod wave_section;
mod waves;

pub use bottom_corner::*;
pub use bracket::*;
pub use build_up::*;
pub use corner::*;
pub use detail::*;
pub use edge::*;
pub use field_cache::*;
pub use floor::*;
pub use floor_edge::*;
pub use floor_member::*;
pub use frame_line::*;
pub use model::*;
pub use opening_frame::*;
pub use picture::*;
pub use set::*;
pub use sleeve::*;
pub use solving::*;
pub use view::*;
pub use wave_section::*;
pub use waves::*;
