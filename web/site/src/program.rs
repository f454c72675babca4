//! Running other programs, and saying in plain words when one fails.

use std::{
    io::{BufRead, BufReader},
    process::{Command, Stdio},
};

use anyhow::{Context, Result, bail};

use crate::{project, tally::Tally};

/// A command that starts in the project's root.
pub(crate) fn command(program: &str, arguments: &[&str]) -> Command {
    let mut command = Command::new(program);
    command.args(arguments).current_dir(project::root());
    command
}

/// The Cargo that started us, or the one on the path.
pub(crate) fn cargo(arguments: &[&str]) -> Command {
    let program = std::env::var("CARGO").unwrap_or_else(|_| "cargo".to_owned());
    command(&program, arguments)
}

/// Runs to the end; an error unless it succeeds.
pub(crate) fn run(command: &mut Command) -> Result<()> {
    let name = shown(command);
    let status = command.status().with_context(|| not_started(&name))?;
    if !status.success() {
        bail!("`{name}` failed ({status}); its own words stand above.");
    }
    Ok(())
}

/// Whether it starts and succeeds, in silence.
pub(crate) fn succeeds(command: &mut Command) -> bool {
    let silent = command.stdin(Stdio::null()).stdout(Stdio::null()).stderr(Stdio::null());
    silent.status().is_ok_and(|status| status.success())
}

/// Runs to the end and returns what it printed.
pub(crate) fn output(command: &mut Command) -> Result<String> {
    let name = shown(command);
    let output = command.stderr(Stdio::inherit()).output().with_context(|| not_started(&name))?;
    if !output.status.success() {
        bail!("`{name}` failed ({}); its own words stand above.", output.status);
    }
    String::from_utf8(output.stdout).with_context(|| format!("`{name}` printed no readable text"))
}

/// Runs a test harness, showing every line as it comes and counting what passed and failed.
pub(crate) fn count_tests(command: &mut Command) -> Result<Tally> {
    let name = shown(command);
    let mut child = command.stdout(Stdio::piped()).spawn().with_context(|| not_started(&name))?;
    let mut tally = Tally::default();
    if let Some(output) = child.stdout.take() {
        for line in BufReader::new(output).lines() {
            let line = line.with_context(|| format!("`{name}` printed no readable text"))?;
            println!("{line}");
            tally.read(&line);
        }
    }
    let status = child.wait().with_context(|| format!("`{name}` was lost"))?;
    if !status.success() {
        // A harness that cannot even be built counts nothing, and is still a failure.
        tally.failed = tally.failed.max(1);
    }
    Ok(tally)
}

fn shown(command: &Command) -> String {
    let program = command.get_program().to_string_lossy();
    let program = program.rsplit('/').next().unwrap_or(&program);
    let arguments = command.get_args().map(|argument| argument.to_string_lossy());
    std::iter::once(program.into()).chain(arguments).collect::<Vec<_>>().join(" ")
}

fn not_started(name: &str) -> String {
    let program = name.split(' ').next().unwrap_or(name);
    format!("`{name}` did not start. Is {program} installed and on the path?")
}
