//! A year of hours, heat and moisture coupled: ours beside the same loop in Python with NumPy.

use anyhow::{Context, Result, bail};

use super::competitor::{Answer, Competitor};
use super::figures::{Spread, shown};
use super::{circumstances, document, ours};
use crate::{machine, program, project};

/// How many turns each gets, and how many more before that are not counted.
const ROUNDS: usize = 25;
const WARMING: usize = 5;
/// How closely the figure of heat and water must agree: the same sums in another order.
const AGREEMENT: f64 = 1e-9;

/// Measures and writes the block.
pub(crate) fn measure() -> Result<()> {
    let native = ours::native("year_bench")?;
    let described = project::target().join("bench/year.json");
    let run = |path: &std::path::Path| program::command(&path.to_string_lossy(), &[]);
    program::run(run(&native).arg("--describe").arg(&described))?;
    let python = machine::python_packages()?;
    let script = project::root().join("tests/bench/year.py");
    let mut all = [
        ("ours, native", Competitor::start("our year", run(&native).arg("--serve"))?),
        ("ours, wasm in Node", ours::in_node()?),
        ("ours, wasm in Chromium", ours::in_chromium()?),
        (
            "Python with NumPy",
            Competitor::start("the year in Python", run(&python).arg(script).arg(described))?,
        ),
    ];
    let mut answers = vec![Vec::new(); all.len()];
    for round in 0..WARMING + ROUNDS {
        for ((_, program), answers) in all.iter_mut().zip(&mut answers) {
            let answer = program.ask("year")?;
            if round >= WARMING {
                answers.push(answer);
            }
        }
    }
    let rows = rows(&all.map(|(title, _)| title), &answers)?;
    let heading =
        ["solver", "least ms", "median ms", "greatest ms", "Python / this, least times", "median"];
    let text = format!(
        "{} {}, Python and NumPy as pinned in `tests/bench/requirements.txt`. {ROUNDS} rounds in turn; \
         all find the same heat and water to {AGREEMENT:e}.\n\n{}",
        circumstances::machine_and_date()?,
        circumstances::versions()?,
        document::table(&heading, &rows),
    );
    document::write("year", &text)
}

fn rows(titles: &[&str], answers: &[Vec<Answer>]) -> Result<Vec<Vec<String>>> {
    let python = answers.last().context("Nobody answered.")?;
    let times = |answers: &[Answer]| {
        Spread::of(answers.iter().map(|answer| answer.milliseconds)).context("No times.")
    };
    let mut rows = Vec::new();
    for (title, answers) in titles.iter().zip(answers) {
        for (answer, other) in answers.iter().zip(python) {
            let apart = (answer.result / other.result - 1.0).abs();
            if apart.is_nan() || apart > AGREEMENT {
                bail!("{title}: {answer:?}, {apart:e} from Python.");
            }
        }
        let ratios = answers.iter().zip(python).map(|(a, p)| p.milliseconds / a.milliseconds);
        let ratio = Spread::of(ratios).context("No times.")?;
        let own = times(answers)?;
        rows.push(vec![
            (*title).to_owned(),
            shown(own.least),
            shown(own.median),
            shown(own.greatest),
            shown(times(python)?.least / own.least),
            shown(ratio.median),
        ]);
    }
    Ok(rows)
}
