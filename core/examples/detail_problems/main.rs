//! Writes some of our details as problem files, for other solvers to answer:
//! `cargo run --release -p inchwise-core --example detail_problems -- FOLDER`.

mod chosen;

use std::path::Path;
use std::process::ExitCode;

fn main() -> ExitCode {
    let Some(folder) = std::env::args().nth(1) else {
        eprintln!("usage: detail_problems FOLDER");
        return ExitCode::from(2);
    };
    for (name, detail) in chosen::details() {
        for (file, text) in chosen::files(name, &detail) {
            let path = Path::new(&folder).join(file);
            if let Err(error) = std::fs::write(&path, text) {
                eprintln!("{}: {error}", path.display());
                return ExitCode::FAILURE;
            }
        }
    }
    ExitCode::SUCCESS
}
