//! One evaluation of a design, no field solved: what a step of a slider costs.

use anyhow::{Context, Result};

use super::figures::shown;
use super::{bar, circumstances, document, ours};

/// How many turns each gets, and how many more before that are not counted.
const ROUNDS: usize = 25;
const WARMING: usize = 5;
/// The most an evaluation may take, ms.
const BAR: f64 = 1.0;

/// Measures and writes the block.
pub(crate) fn measure() -> Result<()> {
    let mut all = [("wasm in Node", ours::in_node()?), ("wasm in Chromium", ours::in_chromium()?)];
    let mut rows = Vec::new();
    for (title, program) in &mut all {
        let mut answers = Vec::new();
        for round in 0..WARMING + ROUNDS {
            let mut answer = program.ask("evaluation")?;
            let times = answer.iterations.context("It does not say how many it made.")?;
            answer.milliseconds /= f64::from(times);
            if round >= WARMING {
                answers.push(answer);
            }
        }
        let times = bar::times(&answers).context("No times.")?;
        println!("{title}: {} ms", shown(times.median));
        rows.push(bar::row(&format!("{title}, ms"), BAR, times.least, Some(times)));
    }
    let text = format!(
        "{} {}. {ROUNDS} rounds.\n\n{}",
        circumstances::machine_and_date()?,
        circumstances::versions()?,
        document::table(&bar::HEADING, &rows),
    );
    document::write("evaluation", &text)
}
