//! Conjugate gradients on half the cells, preconditioned by a multigrid cycle on all of them.
//!
//! The cells are coloured like a chessboard. The cells of one colour are eliminated exactly, and
//! conjugate gradients in double precision run on the other. Each step is preconditioned by one
//! red-black multigrid cycle in single precision on matrices that coarsen with the grid.

mod coarsen;
mod conjugate_gradients;
mod dense;
mod dot_product;
mod red_black;
mod sliding_window;
mod v_cycle;

pub(super) use conjugate_gradients::ConjugateGradients;
