//! Every check, in the order that finds the cheap failures first.

use std::{path::Path, process::Command, time::Instant};

use anyhow::{Result, bail};

use crate::{
    bundle, machine, measured_years,
    program::{self, cargo},
    project, same_bits,
    tally::Tally,
};

/// The packages that run natively.
const NATIVE: [&str; 7] = [
    "inchwise-core",
    "inchwise-wire",
    "inchwise-link",
    "inchwise-protocol",
    "inchwise-worker",
    "inchwise-tests",
    "inchwise-site",
];

/// The packages whose tests also run in wasm.
const BOTH: [&str; 6] = [
    "inchwise-core",
    "inchwise-wire",
    "inchwise-link",
    "inchwise-protocol",
    "inchwise-worker",
    "inchwise-tests",
];

/// One check or one harness of them; the error is for what could not even start.
type Step = fn() -> Result<Tally>;

/// Runs every check, stopping at the first that fails.
pub(crate) fn run() -> Result<()> {
    let steps: [(&str, Step); 12] = [
        ("Formatting", formatting),
        ("Lints, native", lints_native),
        ("Lints, wasm", lints_wasm),
        ("Tests, native", tests_native),
        ("Tests, wasm", tests_wasm),
        ("Tests of the planner, wasm", tests_web),
        ("Release build", release_build),
        ("Same bits natively and in wasm", same_bits::check),
        ("Made years against measured ones", measured_years::check),
        ("Real browser", browser),
        ("Weight", weight),
        ("CPU of a slider step, a report", slider_cpu),
    ];
    let start = Instant::now();
    let mut total = Tally::default();
    for (index, (name, step)) in steps.iter().enumerate() {
        println!("\n== {}/{} {name} ==", index + 1, steps.len());
        let started = Instant::now();
        let tally = step().unwrap_or_else(|failure| {
            println!("{failure:#}");
            Tally::ONE_FAILED
        });
        total += tally;
        println!("-- {name}: {tally}, {} s", started.elapsed().as_secs());
        if tally.failed > 0 {
            println!("\nStopped at: {name}\n{total}");
            bail!("{name} failed.");
        }
    }
    println!("\nAll checks passed in {} s.\n{total}", start.elapsed().as_secs());
    Ok(())
}

fn formatting() -> Result<Tally> {
    machine::formatter_and_linter()?;
    program::run(&mut cargo(&["fmt", "--all", "--check"]))?;
    Ok(Tally::ONE_PASSED)
}

fn lints_native() -> Result<Tally> {
    lint(&[], &[&NATIVE[..], &["inchwise-bench"]].concat())
}

fn lints_wasm() -> Result<Tally> {
    machine::wasm_target()?;
    lint(&["--target", project::WASM], &["inchwise-web"])
}

fn lint(target: &[&str], packages: &[&str]) -> Result<Tally> {
    let mut command = cargo(&["clippy", "--all-targets"]);
    command.args(target).args(packages.iter().flat_map(|name| ["--package", name]));
    program::run(command.args(["--", "-D", "warnings"]))?;
    Ok(Tally::ONE_PASSED)
}

fn tests_native() -> Result<Tally> {
    let mut command = cargo(&["test"]);
    command.args(NATIVE.iter().flat_map(|name| ["--package", name]));
    program::count_tests(&mut command)
}

fn tests_wasm() -> Result<Tally> {
    machine::node()?;
    in_wasm(&BOTH)
}

fn tests_web() -> Result<Tally> {
    in_wasm(&["inchwise-web"])
}

fn in_wasm(packages: &[&str]) -> Result<Tally> {
    // The runner is this very program, so Cargo need not be asked to build it again for each test.
    let runner = std::env::current_exe()?;
    let mut command = cargo(&["test", "--tests", "--target", project::WASM]);
    command
        .args(packages.iter().flat_map(|name| ["--package", name]))
        .env("CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_RUNNER", format!("{} runner", runner.display()));
    let tally = program::count_tests(&mut command)?;
    if tally == Tally::default() {
        // An ordinary `#[test]` is no test in wasm, and would go missing without a word.
        bail!("No test ran: does lib.rs take `#[test]` from inchwise_tests in wasm?");
    }
    Ok(tally)
}

fn release_build() -> Result<Tally> {
    bundle::build(bundle::Kind::Shipped)?;
    Ok(Tally::ONE_PASSED)
}

fn browser() -> Result<Tally> {
    machine::node()?;
    machine::browser_packages()?;
    let chromium = machine::chromium()?;
    let folder = project::browser_checks();
    let mut names = Vec::new();
    bundle::list(&folder, &folder.join("journeys"), &mut names)?;
    names.retain(|name| name.ends_with(".test.mjs"));
    let mut command = in_browser(&["--test", "--test-concurrency=1"], &chromium)?;
    program::count_tests(command.args(&names))
}

/// Prints what a slider step costs the page's thread. Never a failure: speed on a busy machine is
/// for people to judge.
fn slider_cpu() -> Result<Tally> {
    if let Err(failure) = program::run(&mut in_browser(&["cpu.mjs"], &machine::chromium()?)?) {
        println!("Nothing was measured: {failure:#}");
    }
    Ok(Tally::default())
}

/// Node on the browser checks, told which browser and which server to start.
fn in_browser(arguments: &[&str], chromium: &Path) -> Result<Command> {
    let mut command = program::command("node", arguments);
    command
        .current_dir(project::browser_checks())
        .env("INCHWISE_CHROMIUM", chromium)
        .env("INCHWISE_SITE", std::env::current_exe()?);
    Ok(command)
}

fn weight() -> Result<Tally> {
    crate::weight::report()?.check()?;
    Ok(Tally::ONE_PASSED)
}
