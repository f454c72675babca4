//! The conduction solver beside other people's, on the same matrices to the same residual.
//!
//! All take turns, one solve each, round after round, so that a busy moment of the machine falls on
//! none of them alone. A method that has had its share of time sits the later rounds out.

use std::{collections::HashMap, fs, path::PathBuf};

use anyhow::{Context, Result, bail};

use super::competitor::{Answer, Competitor};
use super::figures::{Spread, shown};
use super::{bar, circumstances, document, ours};
use crate::{machine, program, project};

/// How many turns each gets at most.
const ROUNDS: usize = 15;
/// Turns that are not counted: the first solves compile what is used and fill what is kept.
const WARMING: usize = 2;
/// A method that has spent this much on one case, in milliseconds, gets no further turn at it.
const SHARE: f64 = 12_000.0;
/// How closely all must agree on a case's thermal coupling: they solve the same equations.
const AGREEMENT: f64 = 1e-6;

/// Native programs keep the memory they have freed for their next turn, as wasm does: whether the
/// system hands out the same pages again is not the solver's doing.
const KEEP_MEMORY: &str =
    "glibc.malloc.mmap_threshold=4294967295:glibc.malloc.trim_threshold=4294967295";

/// Who solves, and through which program.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Method {
    Native,
    Node,
    Chromium,
    RugeStueben,
    SmoothedAggregation,
    SuperLu,
    Cholesky,
}

use Method::*;

impl Method {
    fn title(self) -> &'static str {
        match self {
            Native => "ours, native",
            Node => "ours, wasm in Node",
            Chromium => "ours, wasm in Chromium",
            RugeStueben => "PyAMG, Ruge-Stüben with CG",
            SmoothedAggregation => "PyAMG, smoothed aggregation with CG",
            SuperLu => "SciPy, SuperLU",
            Cholesky => "faer, sparse Cholesky",
        }
    }

    fn is_ours(self) -> bool {
        matches!(self, Native | Node | Chromium)
    }

    /// What a Python program calls it.
    fn key(self) -> Option<&'static str> {
        match self {
            RugeStueben => Some("ruge_stueben"),
            SmoothedAggregation => Some("smoothed_aggregation"),
            SuperLu => Some("superlu"),
            Native | Node | Chromium | Cholesky => None,
        }
    }
}

/// Which methods meet on which case. The direct methods need tens of seconds and gigabytes for the
/// larger bodies.
const CASES: [(&str, &str, &[Method]); 5] = [
    (
        "wall_20k",
        "framed wall, 2D",
        &[Native, Node, Chromium, Cholesky, SuperLu, RugeStueben, SmoothedAggregation],
    ),
    (
        "corner_30k",
        "steel corner, 3D",
        &[Native, Node, Chromium, Cholesky, SuperLu, RugeStueben, SmoothedAggregation],
    ),
    (
        "corner_120k",
        "steel corner, 3D",
        &[Native, Node, Chromium, Cholesky, RugeStueben, SmoothedAggregation],
    ),
    ("corner_500k", "steel corner, 3D", &[Native, Node, Chromium, RugeStueben]),
    ("corner_1m", "steel corner, 3D", &[Native, Node, Chromium, RugeStueben]),
];

/// All answers of one method on one case.
struct Record {
    case: &'static str,
    cells: usize,
    method: Method,
    answers: Vec<Answer>,
}

/// Measures and writes the block.
pub(crate) fn measure() -> Result<()> {
    let mut programs = Programs::start()?;
    let mut records: Vec<Record> = CASES
        .iter()
        .flat_map(|&(case, _, methods)| methods.iter().map(move |&method| (case, method)))
        .map(|(case, method)| {
            let cells = programs.cells.get(case).copied().unwrap_or(0);
            Record { case, cells, method, answers: Vec::new() }
        })
        .collect();
    for record in &records {
        for _ in 0..WARMING {
            if record.method.is_ours() {
                programs.solve(record.method, record.case)?;
            }
        }
    }
    for round in 0..ROUNDS {
        println!("round {} of {ROUNDS}", round + 1);
        for record in &mut records {
            let spent: f64 = record.answers.iter().map(|answer| answer.milliseconds).sum();
            if spent < SHARE {
                record.answers.push(programs.solve(record.method, record.case)?);
            }
        }
    }
    agree(&records)?;
    let text = format!(
        "{} {}. NumPy, SciPy and PyAMG as pinned in `tests/bench/requirements.txt`, faer in its \
         `Cargo.toml`. One thread each, relative residual 1e-8 at most; our time runs from problem to \
         solution, grid and balances included, that of the others from matrix to answer. \
         Native programs keep freed memory for their next turn, as wasm does. At most \
         {ROUNDS} rounds in turn; a ratio is taken within each round.\n\n{}\n{}",
        circumstances::machine_and_date()?,
        circumstances::versions()?,
        times(&records)?,
        bars(&records)?,
    );
    document::write("speed", &text)
}

/// The programs that solve.
struct Programs {
    /// How many cells each case has.
    cells: HashMap<String, usize>,
    native: Competitor,
    node: Competitor,
    chromium: Competitor,
    python: Competitor,
    cholesky: Competitor,
}

impl Programs {
    fn start() -> Result<Self> {
        let python = machine::python_packages()?;
        let matrices = project::target().join("bench/matrices");
        fs::create_dir_all(&matrices).context("The build folder cannot be made.")?;

        let native = ours::native("conduction_bench")?;
        let cholesky = ours::peer("cholesky")?;
        let mut export = program::command(&native.to_string_lossy(), &["--repeat", "1"]);
        let exported = program::output(export.arg("--matrices").arg(&matrices))?;
        let cells = exported.lines().filter_map(|line| {
            let mut figures = line.split('\t');
            Some((figures.next()?.to_owned(), figures.next()?.parse().ok()?))
        });
        let peers = project::root().join("tests/bench/peers.py");
        let run = |program: PathBuf| {
            let mut command = program::command(&program.to_string_lossy(), &[]);
            command.env("GLIBC_TUNABLES", KEEP_MEMORY);
            command
        };
        Ok(Self {
            cells: cells.collect(),
            native: Competitor::start("our solver", run(native).arg("--serve"))?,
            node: ours::in_node()?,
            chromium: ours::in_chromium()?,
            python: Competitor::start("Python", run(python).arg(peers).arg(&matrices))?,
            cholesky: Competitor::start("Cholesky", run(cholesky).arg(&matrices))?,
        })
    }

    fn solve(&mut self, method: Method, case: &str) -> Result<Answer> {
        match method {
            Native => self.native.ask(case),
            Node => self.node.ask(case),
            Chromium => self.chromium.ask(case),
            Cholesky => self.cholesky.ask(case),
            RugeStueben | SmoothedAggregation | SuperLu => {
                self.python.ask(&format!("{} {case}", method.key().unwrap_or_default()))
            }
        }
    }
}

/// An error unless all found the same coupling, to the residual asked for.
fn agree(records: &[Record]) -> Result<()> {
    for record in records {
        let of_native = find(records, record.case, Native)?.answers[0].result;
        for answer in &record.answers {
            let apart = (answer.result / of_native - 1.0).abs();
            if apart.is_nan() || apart > AGREEMENT || answer.residual > 1.01e-8 {
                let title = record.method.title();
                bail!("{title} on {}: {answer:?}, {apart:e} from ours.", record.case);
            }
        }
    }
    Ok(())
}

fn find<'a>(records: &'a [Record], case: &str, method: Method) -> Result<&'a Record> {
    let found = records.iter().find(|record| record.case == case && record.method == method);
    found
        .filter(|record| !record.answers.is_empty())
        .with_context(|| format!("Nothing was measured of {} on {case}.", method.title()))
}

/// How many cells of a case conduct: the rows of its matrix, told at the file's beginning.
fn unknowns(case: &str) -> Result<u64> {
    let path = project::target().join(format!("bench/matrices/{case}.csr"));
    let file = fs::read(path).with_context(|| format!("The matrix of {case} is missing."))?;
    let count = file.first_chunk::<8>().context("The matrix is cut off.")?;
    Ok(u64::from_le_bytes(*count))
}

fn spread(record: &Record) -> Result<Spread> {
    bar::times(&record.answers).context("No times.")
}

fn times(records: &[Record]) -> Result<String> {
    let mut rows = Vec::new();
    for record in records {
        let title = CASES.iter().find(|(case, ..)| *case == record.case).map_or("", |case| case.1);
        let times = spread(record)?;
        let iterations = record.answers[0].iterations;
        rows.push(vec![
            title.to_owned(),
            format!("{} ({})", record.cells, unknowns(record.case)?),
            record.method.title().to_owned(),
            iterations.map_or_else(|| "direct".to_owned(), |count| count.to_string()),
            shown(times.least),
            shown(times.median),
            shown(times.greatest),
            record.answers.len().to_string(),
        ]);
    }
    let heading = [
        "case",
        "cells (in matter)",
        "solver",
        "iterations",
        "least ms",
        "median ms",
        "greatest ms",
        "rounds",
    ];
    Ok(document::table(&heading, &rows))
}

/// The ratios that have a bar.
fn bars(records: &[Record]) -> Result<String> {
    let mut rows = Vec::new();
    for (what, case, ours, other, bar) in [
        ("3D 120k, wasm in Node / PyAMG", "corner_120k", Node, RugeStueben, 0.10),
        ("3D 120k, wasm in Chromium / PyAMG", "corner_120k", Chromium, RugeStueben, 0.10),
        ("3D 120k, wasm in Node / own native", "corner_120k", Node, Native, 1.3),
        ("3D 120k, wasm in Chromium / own native", "corner_120k", Chromium, Native, 1.3),
        ("2D 20k, wasm in Node / sparse Cholesky", "wall_20k", Node, Cholesky, 0.35),
        ("2D 20k, wasm in Chromium / sparse Cholesky", "wall_20k", Chromium, Cholesky, 0.35),
    ] {
        let (ours, other) = (find(records, case, ours)?, find(records, case, other)?);
        rows.extend(bar::of_times(what, bar, &ours.answers, &other.answers));
    }
    for (host, method) in [("native", Native), ("wasm in Chromium", Chromium)] {
        let (small, large) =
            (find(records, "corner_30k", method)?, find(records, "corner_1m", method)?);
        let pairs = large.answers.iter().zip(&small.answers);
        let more = large.cells as f64 / small.cells as f64;
        let ratios = Spread::of(pairs.map(|(a, b)| a.milliseconds / b.milliseconds / more));
        let of_least = spread(large)?.least / spread(small)?.least / more;
        let what = format!("time per cell, 1M / 30k cells, {host}");
        rows.push(bar::row(&what, 1.5, of_least, ratios));
    }
    let iterations = find(records, "corner_120k", Native)?.answers[0].iterations;
    let iterations = iterations.map_or(f64::NAN, f64::from);
    rows.push(bar::row("3D 120k, iterations", 25.0, iterations, None));
    Ok(document::table(&bar::HEADING, &rows))
}
