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

use inchwise_core::climate::{SEED, Spread, reconstruct, varnholm_flats};
use inchwise_core::design::CheckedDesign;
use inchwise_core::detail::{Effort, FieldCache};
use inchwise_core::evaluate::evaluate_with;
use inchwise_core::units::VolumeFlow;
use inchwise_core::year::{CheckedYearChoices, Surroundings, YearChoices, YearModel, run_year};

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
    let prepared = prepared::Prepared::new().ok_or("the year cannot be made")?;
    let described = prepared.described().map_err(|error| format!("{error:?}"))?;
    std::fs::write(path, described.to_string()).map_err(|error| error.to_string())
}

fn serve() -> Result<(), String> {
    let prepared = prepared::Prepared::new().ok_or("the year cannot be made")?;
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
    let Ok(place) = varnholm_flats().check() else { return };
    let evaluation =
        evaluate_with(&CheckedDesign::default(), &mut FieldCache::default(), Effort::Sections);
    let still = CheckedYearChoices::default();
    let fan = YearChoices {
        fan_flow: VolumeFlow::cubic_metres_per_hour(300.0),
        ..YearChoices::default()
    };
    let Ok(fan) = fan.check(still.set_point()) else { return };
    let made = || reconstruct(&place, Spread::DesignTemperatures, SEED);
    let prepared = || Surroundings::new(made(), still.choices().front_faces);
    let Ok(surroundings) = prepared() else { return };
    let year = |choices: &CheckedYearChoices| {
        drop(black_box(YearModel::new(&evaluation, &surroundings, choices).map(|m| run_year(&m))));
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
