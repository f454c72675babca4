//! Values of colour 0 that a pass makes and is done with a little later.
//!
//! They need not be kept for the whole grid: a window that moves with the pass stays in the cache,
//! while an array of all would be written to memory and read back for nothing.

use core::ops::Range;

use super::coloured::{Layout, Real, Values};

/// The values near the place that a pass has reached.
pub(super) struct Window<T> {
    entries: Vec<T>,
    /// Where the first entry stands in the array of the whole colour, halo included.
    first: usize,
}

impl<T: Real> Window<T> {
    /// A window that serves a layout, and every layout with shorter reaches.
    pub fn new(layout: &Layout) -> Self {
        // Each move copies two halos, so the window is several of them long.
        let long = 8 * layout.halo + 4 * Layout::PIECE;
        Self { entries: vec![T::default(); long.min(layout.stride())], first: 0 }
    }

    /// Room for the values of a piece of the pass, the next to the last one's or the first.
    pub fn room(&mut self, layout: &Layout, piece: &Range<usize>) -> &mut [T] {
        let Layout { halo, sizes, .. } = *layout;
        if piece.start == 0 {
            self.first = 0;
            self.entries[..halo].fill(T::default());
        }
        let is_last = piece.end == sizes[0];
        let (start, end) = (halo + piece.start, halo + piece.end);
        let needed = if is_last { end + halo } else { end };
        if needed - self.first > self.entries.len() {
            let kept = piece.start.saturating_sub(halo);
            self.entries.copy_within(kept - self.first..start - self.first, 0);
            self.first = kept;
        }
        if is_last {
            self.entries[end - self.first..needed - self.first].fill(T::default());
        }
        &mut self.entries[start - self.first..end - self.first]
    }

    /// The values at hand.
    pub fn values(&self) -> Values<'_, T> {
        Values { entries: &self.entries, first: self.first }
    }
}
