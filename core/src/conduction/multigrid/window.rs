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
        let long = 4 * layout.halo + 2 * Layout::PIECE;
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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::conduction::multigrid::coloured::Coloured;
    use crate::conduction::network::Network;

    /// A network whose conductances all differ.
    fn network(counts: [usize; 3]) -> Network {
        let mut network = Network::empty(counts);
        for (d, joins) in network.between.iter_mut().enumerate() {
            for (n, join) in joins.iter_mut().enumerate() {
                *join = 1.0 + ((n * 7919 + d * 104_729) % 1000) as f64;
            }
        }
        network
    }

    #[test]
    fn a_moving_window_shows_what_an_array_of_all_would() {
        // Many pieces and many moves; fewer cells than a piece; and two dimensions.
        for counts in [[61, 47, 53], [5, 4, 3], [401, 90, 1]] {
            let network = network(counts);
            let matrix = Coloured::<f64>::new(&network, &network.diagonal());
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

            let mut window = Window::new(layout);
            let mut found = vec![0.0; layout.sizes[1]];
            // Twice, as what a pass leaves behind must not be seen by the next.
            for _ in 0..2 {
                found.fill(-1.0);
                for [_, middle, done] in layout.pieces() {
                    let room = window.room(layout, &middle);
                    matrix.sweep(0, &middle, &values, room, |_, sum| sum);
                    matrix.sweep(1, &done, window.values(), &mut found[done.clone()], |_, sum| sum);
                }
                assert_eq!(found, expected, "{counts:?}");
            }
        }
    }
}
