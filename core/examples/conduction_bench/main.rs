//! Times the conduction solver, from problem to solution, grid and set-up included:
//! `cargo run --release -p inchwise-core --example conduction_bench -- [--repeat N] [--only WORD]
//! [--matrices FOLDER]`, or `-- --serve` to solve cases as they are asked for (see `serve.rs`).
//!
//! Prints one line of tab-separated figures per case. With `--matrices` it writes each case's matrix
//! to a file (see `matrix.rs`) so that other solvers can be timed on the same.

mod cases;
mod matrix;
mod serve;

use std::path::PathBuf;
use std::process::ExitCode;
use std::time::Instant;

use inchwise_core::conduction::{Accuracy, Environment, Problem, assemble, solve};

struct Options {
    repeat: usize,
    only: String,
    matrices: Option<PathBuf>,
}

fn main() -> ExitCode {
    let serves = std::env::args().skip(1).eq(["--serve"]);
    let outcome = if serves { serve::run() } else { options().and_then(|o| run(&o)) };
    match outcome {
        Ok(()) => ExitCode::SUCCESS,
        Err(message) => {
            eprintln!("{message}");
            ExitCode::FAILURE
        }
    }
}

fn options() -> Result<Options, String> {
    let mut options = Options { repeat: 7, only: String::new(), matrices: None };
    let mut arguments = std::env::args().skip(1);
    while let Some(name) = arguments.next() {
        let value = arguments.next().ok_or(format!("{name} needs a value"))?;
        match name.as_str() {
            "--repeat" => options.repeat = value.parse().map_err(|_| "no number of repeats")?,
            "--only" => options.only = value,
            "--matrices" => options.matrices = Some(value.into()),
            _ => return Err(format!("{name} is unknown")),
        }
    }
    Ok(options)
}

fn run(options: &Options) -> Result<(), String> {
    println!("case\tcells\titerations\tresidual\tcoupling_w_per_k\tmin_ms\tmedian_ms\tmax_ms");
    for name in cases::NAMES.into_iter().filter(|name| name.contains(&options.only)) {
        let problem = cases::named(name).ok_or(format!("{name} is no case"))?;
        time(name, &problem, options.repeat)?;
        if let Some(folder) = &options.matrices {
            let balances = assemble(&problem).map_err(|error| format!("{error:?}"))?;
            let path = folder.join(format!("{name}.csr"));
            matrix::write(&balances, &path).map_err(|error| error.to_string())?;
        }
    }
    Ok(())
}

fn time(name: &str, problem: &Problem, repeat: usize) -> Result<(), String> {
    let mut times = Vec::new();
    let mut last = None;
    for _ in 0..repeat.max(1) {
        let start = Instant::now();
        let solution =
            solve(problem, &Accuracy::default()).map_err(|error| format!("{error:?}"))?;
        times.push(1000.0 * start.elapsed().as_secs_f64());
        last = Some(solution);
    }
    times.sort_by(f64::total_cmp);
    let Some(solution) = last else { return Ok(()) };
    println!(
        "{name}\t{}\t{}\t{:.1e}\t{:.8}\t{:.2}\t{:.2}\t{:.2}",
        solution.cells(),
        solution.iterations(),
        solution.residual(),
        solution.coupling(Environment(0), Environment(1)).value(),
        times[0],
        times[times.len() / 2],
        times[times.len() - 1],
    );
    Ok(())
}
