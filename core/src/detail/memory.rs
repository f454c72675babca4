//! What was solved before, so that a change of climate or comfort never solves again.

use super::frame_line::{FrameLineField, FrameSlice, solve_frame_slice};
use crate::conduction::ConductionError;

/// A small memory of solved slices, keyed on exactly what their fields depend on.
///
/// The oldest is forgotten when it is full. It holds results, so it changes how fast an answer
/// comes and never the answer.
#[derive(Clone, Debug, Default)]
pub struct DetailMemory {
    frame_lines: Vec<(FrameSlice, Result<FrameLineField, ConductionError>)>,
    solves: usize,
}

impl DetailMemory {
    /// How many slices it holds at most.
    const CAPACITY: usize = 256;

    /// The field of a slice, solved unless it is remembered.
    ///
    /// # Errors
    /// What the solver reports.
    pub fn frame_line(&mut self, slice: &FrameSlice) -> Result<FrameLineField, ConductionError> {
        if let Some((_, outcome)) = self.frame_lines.iter().find(|(known, _)| known == slice) {
            return outcome.clone();
        }
        let outcome = solve_frame_slice(slice);
        self.solves += 1;
        if self.frame_lines.len() == Self::CAPACITY {
            drop(self.frame_lines.remove(0));
        }
        self.frame_lines.push((*slice, outcome.clone()));
        outcome
    }

    /// How many slices were solved so far.
    pub const fn solves(&self) -> usize {
        self.solves
    }
}
