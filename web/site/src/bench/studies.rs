//! Studies that programs of the engine make by themselves, put into DEVELOPERS.md as they print them.

use anyhow::{Context, Result};

use super::{circumstances, document};
use crate::{machine, program, project};

/// What refining the grid changes in each detail.
pub(crate) fn refinement() -> Result<()> {
    let table = printed_by("detail_refinement")?;
    let heading = [
        "detail",
        "cells",
        "coupling, W/K or W/(m·K)",
        "% from the limit",
        "lowest factor",
        "K at 50 K from the limit",
    ];
    write("refinement", &heading, &table)
}

/// What the details of studs and joists leave out of the sheet's waves.
pub(crate) fn corrugation() -> Result<()> {
    let table = printed_by("corrugation")?;
    let heading = [
        "member",
        "stand-off, mm",
        "stands over a",
        "cells",
        "ψ of the detail",
        "ψ, sheet as it is, fine",
        "U of the wall, %",
        "lowest temperature, K at 50 K",
    ];
    write("corrugation", &heading, &table)
}

/// Asks finite elements about some of our details and keeps the answers with the reference tables.
pub(crate) fn elements() -> Result<()> {
    let python = machine::python_packages()?;
    let folder = project::root().join("tests/reference/detail");
    let mut draw = example("detail_problems");
    program::run(draw.arg("--").arg(&folder))?;
    let mut solve = program::command(&python.to_string_lossy(), &[]);
    program::run(solve.arg(folder.join("make_table.py")))
}

fn example(name: &str) -> std::process::Command {
    program::cargo(&["run", "--quiet", "--release", "-p", "inchwise-core", "--example", name])
}

/// The rows below the heading that an example prints.
fn printed_by(name: &str) -> Result<Vec<Vec<String>>> {
    let text = program::output(&mut example(name))?;
    let rows = text.lines().skip(1).map(|line| line.split('\t').map(str::to_owned).collect());
    let rows: Vec<Vec<String>> = rows.collect();
    rows.first().with_context(|| format!("{name} printed no figures."))?;
    Ok(rows)
}

fn write(block: &str, heading: &[&str], rows: &[Vec<String>]) -> Result<()> {
    let date = circumstances::date()?;
    let table = document::table(heading, rows);
    document::write(block, &format!("Worked on {date}.\n\n{table}"))
}
