//! Cold details as solved fields: each turns a part of the design into a heat-conduction problem
//! and the field into an extra loss (ψ) and a temperature factor f_Rsi.
//!
//! No detail takes its answer from a table, and none invents a constant that a material, a box or
//! a design could state.

mod frame_line;
mod memory;

pub use frame_line::*;
pub use memory::*;

use crate::conduction::ConductionError;
use crate::design::{CheckedDesign, Surface};

/// The slice across one frame member of a surface.
#[derive(Clone, Debug, PartialEq)]
pub struct FrameLineDetail {
    /// Which surface.
    pub surface: Surface,
    /// What was solved.
    pub slice: FrameSlice,
    /// What came out, or why nothing did.
    pub outcome: Result<FrameLineField, ConductionError>,
}

/// The slices across the frame members of all framed surfaces.
pub fn frame_line_details(
    checked: &CheckedDesign,
    memory: &mut DetailMemory,
) -> Vec<FrameLineDetail> {
    [Surface::SideWall, Surface::FrontEnd, Surface::DoorEnd, Surface::Ceiling]
        .into_iter()
        .map(|surface| {
            let slice = FrameSlice::of(checked, surface);
            FrameLineDetail { surface, slice, outcome: memory.frame_line(&slice) }
        })
        .collect()
}
