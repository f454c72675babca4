//! The bench: the answer, the drawing and the four controls, seen together at every width.

mod answer;
mod controls;
mod delta;
mod drawings;
mod on_paper;
mod steps;
mod treatment;

pub use answer::{Answer, verdict_words};
pub use controls::{Chips, Controls};
pub use delta::{changes, damp_short};
pub use drawings::Drawings;
pub use on_paper::OnPaper;
pub use steps::{Steps, step_by, step_words};
