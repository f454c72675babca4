//! The programs that time our own code, and those that time others', built and started.

use std::{fs, path::PathBuf};

use anyhow::{Context, Result};

use super::competitor::Competitor;
use crate::{glue, machine, program, project};

/// An example of the core, built as it is released: the path of its program.
pub(crate) fn native(example: &str) -> Result<PathBuf> {
    build(&["--release", "-p", "inchwise-core"], example)?;
    Ok(project::target().join("release/examples").join(example))
}

/// A program of another's library, built to be as fast as it can.
pub(crate) fn peer(example: &str) -> Result<PathBuf> {
    build(&["--profile", "peers", "-p", "inchwise-bench"], example)?;
    Ok(project::target().join("peers/examples").join(example))
}

/// Our code in wasm under Node.
pub(crate) fn in_node() -> Result<Competitor> {
    in_wasm("node")
}

/// Our code in wasm in a browser.
pub(crate) fn in_chromium() -> Result<Competitor> {
    machine::browser_packages()?;
    in_wasm("chromium")
}

fn in_wasm(host: &str) -> Result<Competitor> {
    machine::node()?;
    let mut command = program::command("node", &[]);
    command.arg(project::root().join("tests/bench/in_wasm.mjs")).arg(wasm()?).arg(host);
    command.env("INCHWISE_CHROMIUM", machine::chromium()?);
    Competitor::start(&format!("wasm in {host}"), &mut command)
}

fn build(what: &[&str], example: &str) -> Result<()> {
    let mut command = program::cargo(&["build", "--quiet"]);
    program::run(command.args(what).args(["--example", example]))
}

/// The folder with our code in wasm and the script that loads it.
fn wasm() -> Result<PathBuf> {
    machine::wasm_target()?;
    let name = "conduction_bench_wasm";
    build(&["--release", "-p", "inchwise-core", "--target", project::WASM], name)?;
    let folder = project::target().join("bench/wasm");
    fs::create_dir_all(&folder).context("The build folder cannot be made.")?;
    let built = project::target().join(project::WASM).join("release/examples");
    glue::generate(&built.join(format!("{name}.wasm")), &folder, "solver", false)?;
    // Without it Node takes the script for one of the older kind.
    fs::write(folder.join("package.json"), "{ \"type\": \"module\" }\n")
        .context("The build folder cannot be written.")?;
    Ok(folder)
}
