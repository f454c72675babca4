//! Builds, serves and checks the demo site: `cargo site build`, `cargo site serve`,
//! `cargo site check`. Each installs what it needs.

mod bench;
mod bundle;
mod check;
mod fallback;
mod glue;
mod machine;
mod measured_years;
mod mime;
mod program;
mod project;
mod same_bits;
mod serve;
mod split;
mod squeeze;
mod tally;
mod weight;

use std::process::ExitCode;

use anyhow::{Result, bail};

const USAGE: &str = "\
Usage: cargo site COMMAND

  build                   write the deployable folder dist/ and weigh it
  serve                   build, then serve dist/ on this machine
        --port N          listen on port N (8080 unless told; 0 takes any free one)
        --under PATH      serve below a sub-path such as /shop/planner/
        --no-build        serve dist/ as it stands
        --quick           build in half a minute, large and slow: for working on the page
  check                   run every check, stopping at the first that fails
  bench [PART ...]        measure speed and accuracy, and write the figures into DEVELOPERS.md
  years                   compare made years with measured ones, fetched from PyPI
  runner FILE ...         run a wasm test binary under Node (cargo test calls this)
";

fn main() -> ExitCode {
    let arguments: Vec<String> = std::env::args().skip(1).collect();
    match run(&arguments) {
        Ok(()) => ExitCode::SUCCESS,
        Err(failure) => {
            eprintln!("\n{failure:#}");
            ExitCode::FAILURE
        }
    }
}

fn run(arguments: &[String]) -> Result<()> {
    let (command, rest) = match arguments.split_first() {
        Some((command, rest)) => (command.as_str(), rest),
        None => ("help", arguments),
    };
    match (command, rest) {
        ("build", []) => bundle::build_and_weigh().map(|_| ()),
        ("serve", options) => {
            let options = serve::Options::parse(options)?;
            match options.build {
                serve::Build::None => {}
                serve::Build::Shipped => drop(bundle::build_and_weigh()?),
                serve::Build::Quick => bundle::build(bundle::Kind::Quick)?,
            }
            serve::run(&options)
        }
        ("check", []) => check::run(),
        ("bench", parts) => bench::run(parts),
        ("years", []) => measured_years::check().map(|_| ()),
        ("runner", test) => glue::run_tests(test),
        ("help" | "--help" | "-h", _) => {
            print!("{USAGE}");
            Ok(())
        }
        (command, rest) => bail!("I do not know `{command} {}`.\n\n{USAGE}", rest.join(" ")),
    }
}
