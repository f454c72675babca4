//! A year of hours, heat and moisture coupled: ours beside the same loop in Python with NumPy.

use std::fs;

use anyhow::{Context, Result, bail};

use super::competitor::{Answer, Competitor};
use super::figures::shown;
use super::{bar, circumstances, document, ours};
use crate::{machine, program, project};

/// How many turns each gets, and how many more before that are not counted.
const ROUNDS: usize = 25;
const WARMING: usize = 5;
/// How closely the figure of heat and water must agree: the same sums in another order.
const AGREEMENT: f64 = 1e-9;

/// Measures and writes the block.
pub(crate) fn measure() -> Result<()> {
    let native = ours::native("year_bench")?;
    let folder = project::target().join("bench");
    fs::create_dir_all(&folder).context("The build folder cannot be made.")?;
    let described = folder.join("year.json");
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
    let heading = ["solver", "least ms", "median ms", "greatest ms"];
    let text = format!(
        "{} {}, Python and NumPy as pinned in `tests/bench/requirements.txt`. {ROUNDS} rounds in turn; \
         all find the same heat and water to {AGREEMENT:e}.\n\n{}\n{}",
        circumstances::machine_and_date()?,
        circumstances::versions()?,
        document::table(&heading, &rows),
        document::table(&bar::HEADING, &bars(&answers)),
    );
    document::write("year", &text)
}

fn rows(titles: &[&str], answers: &[Vec<Answer>]) -> Result<Vec<Vec<String>>> {
    let python = answers.last().context("Nobody answered.")?;
    let mut rows = Vec::new();
    for (title, answers) in titles.iter().zip(answers) {
        for (answer, other) in answers.iter().zip(python) {
            let apart = (answer.result / other.result - 1.0).abs();
            if apart.is_nan() || apart > AGREEMENT {
                bail!("{title}: {answer:?}, {apart:e} from Python.");
            }
        }
        let times = bar::times(answers).context("No times.")?;
        let mut row = vec![(*title).to_owned()];
        row.extend([times.least, times.median, times.greatest].map(shown));
        rows.push(row);
    }
    Ok(rows)
}

/// Two milliseconds, little more than natively, and twenty times faster than Python.
fn bars(answers: &[Vec<Answer>]) -> Vec<Vec<String>> {
    let [native, node, chromium, python] = answers else { return Vec::new() };
    let mut rows = Vec::new();
    for (host, answers) in [("Node", node), ("Chromium", chromium)] {
        let times = bar::times(answers);
        rows.extend(
            times.map(|times| {
                bar::row(&format!("wasm in {host}, ms"), 2.0, times.least, Some(times))
            }),
        );
        let what = |other: &str| format!("wasm in {host} / {other}");
        rows.extend(bar::of_times(&what("own native"), 1.4, answers, native));
        rows.extend(bar::of_times(&what("Python"), 0.05, answers, python));
    }
    rows
}
