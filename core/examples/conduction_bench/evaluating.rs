//! A design with a fan, evaluated over and over with every section known, as a slider does.

use inchwise_core::design::{CheckedDesign, Design};
use inchwise_core::detail::{Effort, FieldCache};
use inchwise_core::evaluate::evaluate_with;

/// What an evaluation needs.
pub struct Evaluating {
    design: CheckedDesign,
    cache: FieldCache,
}

impl Evaluating {
    /// How many make one timing: one is too short for a browser's clock.
    pub const TIMES: usize = 100;

    /// Solves all sections; nothing if the design is unlawful.
    pub fn new() -> Option<Self> {
        let design = Design { damper_count: 3.0, ..Design::default() }.check().ok()?;
        let mut cache = FieldCache::default();
        evaluate_with(&design, &mut cache, Effort::Sections);
        Some(Self { design, cache })
    }

    /// Evaluates it so many times; the heating load, so that nothing is left out as unused.
    pub fn evaluate(&mut self) -> f64 {
        let load = |cache: &mut FieldCache| {
            let evaluation = evaluate_with(&self.design, cache, Effort::Known);
            assert!(evaluation.damp().is_ok(), "damp and air belong to an evaluation");
            evaluation.heat_loss.design_load.value()
        };
        (0..Self::TIMES).map(|_| load(&mut self.cache)).fold(0.0, f64::max)
    }
}
