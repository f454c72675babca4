//! Conjugate gradients on half the cells, preconditioned by a multigrid cycle on all of them.
//!
//! The cells are coloured like a chessboard. The cells of one colour are eliminated exactly, and
//! conjugate gradients in double precision run on the other. Each step is preconditioned by one
//! red-black multigrid cycle in single precision on networks that coarsen with the grid.

mod coarsen;
mod coloured;
mod cycle;
mod dense;
mod krylov;
mod sums;
mod window;

pub(super) use krylov::Solver;
