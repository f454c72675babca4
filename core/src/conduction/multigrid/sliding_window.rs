//! Values of colour 0 that a sweep makes and is done with a little later.
//!
//! They need not be kept for the whole grid: a window that moves with the sweep stays in the cache,
//! while an array of all would be written to memory and read back for nothing.

use core::ops::Range;

use super::red_black::{ColourView, Layout, Real};

/// The values near the cell that a sweep has reached.
pub(super) struct SlidingWindow<T> {
    entries: Vec<T>,
    /// Where the first entry stands in the array of the whole colour, halo included.
    first: usize,
}

impl<T: Real> SlidingWindow<T> {
    /// A window that serves a layout, and every layout with a shorter halo.
    pub fn new(layout: &Layout) -> Self {
        // Each move copies two halos, so the window is several of them long.
        let length = 4 * layout.halo + 2 * Layout::CHUNK;
        Self { entries: vec![T::default(); length.min(layout.colour_length())], first: 0 }
    }

    /// Where the values of a chunk of the sweep go, the one after the last or the first.
    pub fn slot(&mut self, layout: &Layout, chunk: &Range<usize>) -> &mut [T] {
        let Layout { halo, sizes, .. } = *layout;
        if chunk.start == 0 {
            self.first = 0;
            self.entries[..halo].fill(T::default());
        }
        let is_last = chunk.end == sizes[0];
        let (start, end) = (halo + chunk.start, halo + chunk.end);
        let needed = if is_last { end + halo } else { end };
        if needed - self.first > self.entries.len() {
            let kept = chunk.start.saturating_sub(halo);
            self.entries.copy_within(kept - self.first..start - self.first, 0);
            self.first = kept;
        }
        if is_last {
            self.entries[end - self.first..needed - self.first].fill(T::default());
        }
        &mut self.entries[start - self.first..end - self.first]
    }

    /// The values in the window.
    pub fn values(&self) -> ColourView<'_, T> {
        ColourView { entries: &self.entries, first: self.first }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::conduction::conductance_matrix::ConductanceMatrix;
    use crate::conduction::multigrid::red_black::RedBlackMatrix;

    /// A matrix whose conductances all differ.
    fn conductances(counts: [usize; 3]) -> ConductanceMatrix {
        let mut matrix = ConductanceMatrix::empty(counts);
        for (d, entries) in matrix.neighbour_conductance.iter_mut().enumerate() {
            for (n, entry) in entries.iter_mut().enumerate() {
                *entry = 1.0 + ((n * 7919 + d * 104_729) % 1000) as f64;
            }
        }
        matrix
    }

    #[test]
    fn a_moving_window_shows_what_an_array_of_all_would() {
        // Many pieces and many moves; fewer cells than a piece; and two dimensions.
        for counts in [[61, 47, 53], [5, 4, 3], [401, 90, 1]] {
            let conductances = conductances(counts);
            let matrix = RedBlackMatrix::<f64>::new(&conductances, &conductances.diagonal());
            let layout = &matrix.layout;
            let mut values = matrix.zeros();
            for (n, value) in values[layout.halo..][..layout.sizes[1]].iter_mut().enumerate() {
                *value = ((n * 31) % 97) as f64;
            }
            let mut all = matrix.zeros();
            let whole = 0..layout.sizes[0];
            matrix.sweep(0, &whole, &values, &mut all[layout.halo..][whole.clone()], |_, sum| sum);
            let mut expected = vec![0.0; layout.sizes[1]];
            matrix.sweep(1, &(0..layout.sizes[1]), &all, &mut expected, |_, sum| sum);

            let mut window = SlidingWindow::new(layout);
            let mut found = vec![0.0; layout.sizes[1]];
            // Twice, as what a sweep leaves behind must not be seen by the next.
            for _ in 0..2 {
                found.fill(-1.0);
                for [_, middle, done] in layout.chunks() {
                    let slot = window.slot(layout, &middle);
                    matrix.sweep(0, &middle, &values, slot, |_, sum| sum);
                    matrix.sweep(1, &done, window.values(), &mut found[done.clone()], |_, sum| sum);
                }
                assert_eq!(found, expected, "{counts:?}");
            }
        }
    }
}
