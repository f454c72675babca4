//! Prints the evaluation of a design: `cargo run --release -p inchwise-core --example evaluate --
//! DESIGN.json`; without a file, of the default design.

use std::process::ExitCode;

use inchwise_core::detail::FieldCache;
use inchwise_wire::evaluate_json;

fn main() -> ExitCode {
    let text = match std::env::args().nth(1) {
        None => "{}".to_owned(),
        Some(path) => match std::fs::read_to_string(&path) {
            Ok(text) => text,
            Err(error) => {
                eprintln!("cannot read {path}: {error}");
                return ExitCode::FAILURE;
            }
        },
    };
    let answer = evaluate_json(&text, &mut FieldCache::default());
    println!("{answer}");
    if answer.starts_with("{\n  \"evaluation\"") { ExitCode::SUCCESS } else { ExitCode::FAILURE }
}
