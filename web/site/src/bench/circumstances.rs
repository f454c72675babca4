//! Under what circumstances something was measured: machine, date, versions.

use std::fs;

use anyhow::Result;

use crate::{machine, program};

/// Machine and date in one sentence.
pub(crate) fn machine_and_date() -> Result<String> {
    let date = date()?;
    let cores = std::thread::available_parallelism().map_or(1, usize::from);
    Ok(format!("Measured on {}, {} ({cores} cores seen).", date, processor()))
}

/// Today.
pub(crate) fn date() -> Result<String> {
    let date = program::output(&mut program::command("date", &["+%Y-%m-%d"]))?;
    Ok(date.trim().to_owned())
}

/// Versions of everything that ran, by asking each.
pub(crate) fn versions() -> Result<String> {
    let chromium = machine::chromium()?;
    let ask = |name: &str| program::output(&mut program::command(name, &["--version"]));
    let rust = ask("rustc")?;
    let rust = rust.split_whitespace().take(2).collect::<Vec<_>>().join(" ");
    let browser = ask(&chromium.to_string_lossy())?;
    let browser = browser.split_whitespace().take(2).collect::<Vec<_>>().join(" ");
    Ok(format!("{rust}, Node {}, {browser}", ask("node")?.trim().trim_start_matches('v')))
}

/// What the processor calls itself.
fn processor() -> String {
    let text = fs::read_to_string("/proc/cpuinfo").unwrap_or_default();
    let name = text.lines().find_map(|line| line.strip_prefix("model name"));
    let name = name.and_then(|rest| rest.split_once(':')).map(|(_, name)| name.trim());
    name.unwrap_or(std::env::consts::ARCH).to_owned()
}
