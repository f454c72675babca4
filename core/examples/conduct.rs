//! Solves a problem file and prints flows, surface extremes and probes as JSON:
//! `cargo run --release -p inchwise-core --example conduct -- FILE`.
//!
//! The format is described by `core/wire/conduction.schema.json`.

use std::process::ExitCode;

use inchwise_wire::conduction_file::{read_problem, report};

fn main() -> ExitCode {
    let mut arguments = std::env::args().skip(1);
    let (Some(path), None) = (arguments.next(), arguments.next()) else {
        eprintln!("usage: conduct FILE");
        return ExitCode::from(2);
    };
    match answer(&path) {
        Ok(answer) => {
            println!("{answer}");
            ExitCode::SUCCESS
        }
        Err(message) => {
            eprintln!("{path}: {message}");
            ExitCode::FAILURE
        }
    }
}

fn answer(path: &str) -> Result<String, String> {
    let text = std::fs::read_to_string(path).map_err(|error| error.to_string())?;
    let problem = read_problem(&text).map_err(|error| error.to_string())?;
    let report = report(&problem).map_err(|error| error.to_string())?;
    serde_json::to_string_pretty(&report).map_err(|error| error.to_string())
}
