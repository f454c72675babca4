//! Whether every body of a problem is tied to an environment.

use super::boundary::Boundary;
use super::error::ConductionError;
use super::grid::Grid;

/// A run of conducting cells in a row.
struct Run {
    from: usize,
    to: usize,
}

/// Checks that no temperature is left undetermined.
///
/// Joins runs of conducting cells that touch in neighbouring rows, then looks for a body without a
/// boundary face.
///
/// # Errors
/// [`ConductionError::NoBoundary`], [`ConductionError::FloatingRegion`].
pub(super) fn check_tied(grid: &Grid, boundary: &Boundary) -> Result<(), ConductionError> {
    if boundary.faces().is_empty() {
        return Err(ConductionError::NoBoundary);
    }
    let [nx, ny, nz] = grid.counts();
    let mut runs: Vec<Run> = Vec::new();
    // The runs of each row.
    let mut starts = vec![0];
    for row in 0..ny * nz {
        let mut i = 0;
        while i < nx {
            if grid.is_air(row * nx + i) {
                i += 1;
                continue;
            }
            let from = i;
            while i < nx && !grid.is_air(row * nx + i) {
                i += 1;
            }
            runs.push(Run { from, to: i });
        }
        starts.push(runs.len());
    }
    let mut bodies = Bodies { parents: (0..runs.len()).collect() };
    for k in 0..nz {
        for j in 0..ny {
            let row = k * ny + j;
            if j + 1 < ny {
                bodies.join_rows(
                    &runs,
                    starts[row]..starts[row + 1],
                    starts[row + 1]..starts[row + 2],
                );
            }
            if k + 1 < nz {
                let above = row + ny;
                bodies.join_rows(
                    &runs,
                    starts[row]..starts[row + 1],
                    starts[above]..starts[above + 1],
                );
            }
        }
    }
    let mut tied = vec![false; runs.len()];
    for face in boundary.faces() {
        let (row, i) = (face.cell as usize / nx, face.cell as usize % nx);
        let of_row = &runs[starts[row]..starts[row + 1]];
        let run = starts[row] + of_row.partition_point(|run| run.to <= i);
        tied[bodies.root(run)] = true;
    }
    for row in 0..ny * nz {
        for run in starts[row]..starts[row + 1] {
            if !tied[bodies.root(run)] {
                let at = grid.centre(row * nx + runs[run].from);
                return Err(ConductionError::FloatingRegion { at });
            }
        }
    }
    Ok(())
}

/// Which runs belong to the same body.
struct Bodies {
    parents: Vec<usize>,
}

impl Bodies {
    fn root(&mut self, mut run: usize) -> usize {
        while self.parents[run] != run {
            self.parents[run] = self.parents[self.parents[run]];
            run = self.parents[run];
        }
        run
    }

    fn join_rows(
        &mut self,
        runs: &[Run],
        mut lower: core::ops::Range<usize>,
        mut upper: core::ops::Range<usize>,
    ) {
        while !lower.is_empty() && !upper.is_empty() {
            let (a, b) = (&runs[lower.start], &runs[upper.start]);
            if a.from < b.to && b.from < a.to {
                let (a, b) = (self.root(lower.start), self.root(upper.start));
                self.parents[a.max(b)] = a.min(b);
            }
            if a.to <= b.to {
                lower.start += 1;
            } else {
                upper.start += 1;
            }
        }
    }
}
