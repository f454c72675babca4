//! Solves cases as they are asked for, so that several solvers can take turns.

use std::io::{BufRead, Write};
use std::time::Instant;

use inchwise_core::conduction::{Accuracy, Environment, solve};

use crate::cases;

/// Reads the name of a case per line and answers, tab-separated: milliseconds from problem to solution,
/// iterations, relative residual, coupling.
pub fn run() -> Result<(), String> {
    for line in std::io::stdin().lock().lines() {
        let name = line.map_err(|error| error.to_string())?;
        let problem = cases::named(&name).ok_or(format!("{name} is no case"))?;
        let start = Instant::now();
        let solution =
            solve(&problem, &Accuracy::default()).map_err(|error| format!("{error:?}"))?;
        let elapsed = 1000.0 * start.elapsed().as_secs_f64();
        println!(
            "{elapsed}\t{}\t{:e}\t{}",
            solution.iterations(),
            solution.residual(),
            solution.coupling(Environment(0), Environment(1)).value(),
        );
        std::io::stdout().flush().map_err(|error| error.to_string())?;
    }
    Ok(())
}
