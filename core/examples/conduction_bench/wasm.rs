//! The cases in wasm, for whoever has a clock to time them.
#![cfg(target_arch = "wasm32")]

mod cases;

use inchwise_core::conduction::{Accuracy, Environment, Problem, solve};
use wasm_bindgen::prelude::wasm_bindgen;

/// A problem ready to be solved.
#[wasm_bindgen]
pub struct Case(Problem);

#[wasm_bindgen]
impl Case {
    /// The case of a name; `undefined` where there is none.
    pub fn named(name: &str) -> Option<Case> {
        cases::named(name).map(Case)
    }

    /// Solves it; iterations, relative residual and coupling, or nothing if it has no solution.
    pub fn solve(&self) -> Vec<f64> {
        match solve(&self.0, &Accuracy::default()) {
            Ok(solution) => vec![
                solution.iterations() as f64,
                solution.residual(),
                solution.coupling(Environment(0), Environment(1)).value(),
            ],
            Err(_) => Vec::new(),
        }
    }
}
