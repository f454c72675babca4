//! The cases in wasm, for whoever has a clock to time them.
#![cfg(target_arch = "wasm32")]

mod cases;
mod evaluating;
#[path = "../year_bench/prepared.rs"]
mod prepared;

use evaluating::Evaluating;
use inchwise_core::conduction::{Accuracy, Environment, Problem, solve};
use prepared::Prepared;
use wasm_bindgen::prelude::wasm_bindgen;

enum Work {
    Field(Problem),
    Year(Box<Prepared>),
    Evaluation(Box<Evaluating>),
}

/// Something ready to be reckoned.
#[wasm_bindgen]
pub struct Case(Work);

#[wasm_bindgen]
impl Case {
    /// The case of a name, `year` and `evaluation` among them; `undefined` where there is none.
    pub fn named(name: &str) -> Option<Case> {
        if name == "year" {
            return Some(Case(Work::Year(Box::new(Prepared::new()))));
        }
        if name == "evaluation" {
            return Evaluating::new().map(|ready| Case(Work::Evaluation(Box::new(ready))));
        }
        cases::named(name).map(|problem| Case(Work::Field(problem)))
    }

    /// Solves it; iterations, relative residual and coupling, or nothing if it has no solution. Of a
    /// year: hours, the heat that was lost on its way, as a share, and a figure of heat and water. Of an
    /// evaluation: how many were made, nothing, and the heating load.
    pub fn solve(&mut self) -> Vec<f64> {
        match &mut self.0 {
            Work::Evaluation(ready) => vec![Evaluating::TIMES as f64, 0.0, ready.evaluate()],
            Work::Year(prepared) => {
                let Ok(outcome) = prepared.run() else { return Vec::new() };
                vec![outcome.hours.len() as f64, outcome.heat_off(), Prepared::figure(&outcome)]
            }
            Work::Field(problem) => match solve(problem, &Accuracy::default()) {
                Ok(solution) => vec![
                    solution.iterations() as f64,
                    solution.residual(),
                    solution.coupling(Environment(0), Environment(1)).value(),
                ],
                Err(_) => Vec::new(),
            },
        }
    }
}
