//! What the planner knows: the visitor's choices, and everything that follows from them.
//!
//! One signal holds the design; the outcome is derived from it. Nothing writes a signal from an
//! effect.

use std::sync::Arc;

use inchwise_core::design::{Design, DesignError, Field};
use inchwise_core::detail::DetailMemory;
use inchwise_core::evaluate::{Evaluation, evaluate};
use leptos::prelude::*;

use crate::measure::UnitSystem;
use crate::text::Language;

/// What follows from the present choices.
#[derive(Clone)]
pub struct Outcome {
    /// The evaluation of the last design that passed its check.
    pub good: Arc<Evaluation>,
    /// What is wrong with the present choices; empty when `good` is theirs.
    pub errors: Vec<DesignError>,
}

/// The state of one planner on the page.
#[derive(Clone, Copy)]
pub struct State {
    /// The choices as given, lawful or not.
    pub design: RwSignal<Design>,
    /// Everything that follows.
    pub outcome: Memo<Outcome>,
    /// Metric or imperial.
    pub units: RwSignal<UnitSystem>,
    /// The language of every word.
    pub language: RwSignal<Language>,
    /// Solved fields, kept so that a change that does not touch them solves nothing.
    pub memory: StoredValue<DetailMemory>,
}

impl State {
    /// A planner that starts from a design; one that does not pass its check starts greyed over
    /// the default design.
    pub fn new(design: Design, units: UnitSystem, language: Language) -> Self {
        let memory = StoredValue::new(DetailMemory::default());
        let design = RwSignal::new(design);
        let outcome = Memo::new(move |last: Option<&Outcome>| {
            design.with(|choices| match choices.check() {
                Ok(checked) => memory
                    .try_update_value(|memory| Arc::new(evaluate(&checked, memory)))
                    .map_or_else(
                        || fallback(last, Vec::new()),
                        |good| Outcome { good, errors: Vec::new() },
                    ),
                Err(errors) => fallback(last, errors),
            })
        });
        Self {
            design,
            outcome,
            units: RwSignal::new(units),
            language: RwSignal::new(language),
            memory,
        }
    }

    /// Sets a numeric choice from its SI number; `None` takes back a measurement.
    pub fn put(self, field: Field, number: Option<f64>) {
        self.design.update(|design| design.set(field, number));
    }
}
