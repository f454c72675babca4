//! What follows from a design, with the fields known so far.

use std::sync::Arc;

use inchwise_core::design::{CheckedDesign, Design, DesignError};
use inchwise_core::detail::{Effort, FieldCache};
use inchwise_core::evaluate::{Evaluation, evaluate_with};
use inchwise_core::freight_box::Dimensions;
use inchwise_core::units::{Power, Volume};

use super::Verdict;

/// What follows from the present design.
#[derive(Clone)]
pub struct Outcome {
    /// The evaluation of the last design that passed its check.
    pub good: Arc<Evaluation>,
    /// What is wrong with the present design; empty when `good` is its evaluation.
    pub errors: Vec<DesignError>,
}

impl PartialEq for Outcome {
    fn eq(&self, other: &Self) -> bool {
        Arc::ptr_eq(&self.good, &other.good) && self.errors == other.errors
    }
}

/// An evaluation with what is known; the rest waits.
pub fn known(checked: &CheckedDesign, memory: &mut FieldCache) -> Evaluation {
    evaluate_with(checked, memory, Effort::Known)
}

impl Outcome {
    /// What follows from a design; where it does not pass its check, from the one before.
    pub fn of(design: &Design, memory: &mut FieldCache, last: Option<&Self>) -> Self {
        let (checked, errors) = match design.check() {
            Ok(checked) => (checked, Vec::new()),
            Err(errors) => {
                let checked = last.map(|last| last.good.checked.clone()).unwrap_or_default();
                (checked, errors)
            }
        };
        Self { good: Arc::new(known(&checked, memory)), errors }
    }

    /// Whether every field of it is solved, so that every figure stands.
    pub fn is_whole(&self) -> bool {
        !self.good.heat_loss.is_waiting()
    }
}

/// The figures that a design is judged by first.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Headline {
    /// The clear room.
    pub clear: Dimensions,
    /// Room lost.
    pub lost: Volume,
    /// The same as a share of the bare box.
    pub lost_share: f64,
    /// The heating load and what becomes of damp, once every field is solved.
    pub solved: Option<(Power, Verdict)>,
}

impl Headline {
    /// The headline of an evaluation.
    pub fn of(evaluation: &Evaluation) -> Self {
        let room = &evaluation.room;
        let heat_loss = &evaluation.heat_loss;
        let solved = (!heat_loss.is_waiting())
            .then(|| Some((heat_loss.design_load, Verdict::of(evaluation)?)));
        Self {
            clear: room.clear,
            lost: room.lost_volume,
            lost_share: room.lost_share,
            solved: solved.flatten(),
        }
    }

    /// The load.
    pub fn load(&self) -> Option<Power> {
        self.solved.map(|(load, _)| load)
    }

    /// What becomes of damp.
    pub fn verdict(&self) -> Option<Verdict> {
        self.solved.map(|(_, verdict)| verdict)
    }
}
