//! Times a year: `cargo run --release -p inchwise-core --example year_bench`. Prints JSON, milliseconds,
//! the best of many rounds and their median.
//!
//! `-- --describe FILE` writes all that the loop reckons with, so that another program can run the same;
//! `-- --serve` runs a year for every line it reads and answers, tab-separated: milliseconds, hours,
//! the heat of the year that was lost on its way, as a share, and a figure of heat and water.

mod prepared;

use std::hint::black_box;
use std::io::{BufRead, Write};
use std::process::ExitCode;
use std::time::Instant;

use inchwise_core::climate::{SEED, Spread, reconstruct};
use inchwise_core::design::Design;
use inchwise_core::detail::FieldCache;
use inchwise_core::evaluate::{Evaluation, evaluate};
use inchwise_core::year::{CheckedYearChoices, Surroundings, YearModel, run_year};

/// Best and median of many rounds, ms.
fn time(rounds: usize, mut work: impl FnMut()) -> [f64; 2] {
    let mut times: Vec<f64> = (0..rounds)
        .map(|_| {
            let start = Instant::now();
            work();
            start.elapsed().as_secs_f64() * 1e3
        })
        .collect();
    times.sort_by(f64::total_cmp);
    [times[0], times[rounds / 2]]
}

fn main() -> ExitCode {
    let arguments: Vec<String> = std::env::args().skip(1).collect();
    let arguments: Vec<&str> = arguments.iter().map(String::as_str).collect();
    let outcome = match arguments.as_slice() {
        [] => {
            time_all();
            Ok(())
        }
        ["--serve"] => serve(),
        ["--describe", path] => describe(path),
        _ => Err("usage: year_bench [--serve | --describe FILE]".to_owned()),
    };
    match outcome {
        Ok(()) => ExitCode::SUCCESS,
        Err(message) => {
            eprintln!("{message}");
            ExitCode::FAILURE
        }
    }
}

fn describe(path: &str) -> Result<(), String> {
    let prepared = prepared::Prepared::new();
    let described = prepared.described().map_err(|error| format!("{error:?}"))?;
    std::fs::write(path, described.to_string()).map_err(|error| error.to_string())
}

fn serve() -> Result<(), String> {
    let prepared = prepared::Prepared::new();
    for line in std::io::stdin().lock().lines() {
        drop(line.map_err(|error| error.to_string())?);
        let start = Instant::now();
        let outcome = prepared.run().map_err(|error| format!("{error:?}"))?;
        let elapsed = 1000.0 * start.elapsed().as_secs_f64();
        println!(
            "{elapsed}\t{}\t{:e}\t{}",
            outcome.hours.len(),
            outcome.heat_off(),
            prepared::Prepared::figure(&outcome),
        );
        std::io::stdout().flush().map_err(|error| error.to_string())?;
    }
    Ok(())
}

fn time_all() {
    let still = Design::default();
    let fan = Design { damper_count: 3.0, ..still.clone() };
    let mut cache = FieldCache::default();
    let mut evaluated =
        |design: &Design| design.check().ok().map(|checked| evaluate(&checked, &mut cache));
    let (Some(still), Some(fan)) = (evaluated(&still), evaluated(&fan)) else { return };
    let design = still.checked.design();
    let made = || reconstruct(&design.place, Spread::DesignTemperatures, SEED);
    let prepared = || Surroundings::new(made(), design.front_faces);
    let surroundings = prepared();
    let choices = CheckedYearChoices::default();
    let year = |evaluation: &Evaluation| {
        let model = YearModel::new(evaluation, &surroundings, &choices);
        drop(black_box(model.map(|model| run_year(&model))));
    };
    let rows = [
        ("year", time(200, || year(&still))),
        ("year_with_fan", time(200, || year(&fan))),
        ("reconstruct", time(30, || drop(black_box(made())))),
        ("surroundings", time(30, || drop(black_box(prepared())))),
    ];
    let lines: Vec<String> = rows
        .iter()
        .map(|(name, [best, median])| {
            format!("  \"{name}_ms\": {{ \"best\": {best:.4}, \"median\": {median:.4} }}")
        })
        .collect();
    println!("{{\n{}\n}}", lines.join(",\n"));
}
