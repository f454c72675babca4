//! Measures what a test must not: speed beside other people's solvers, and how far our grids and
//! another discretisation lie from one another. Writes every figure it finds into DEVELOPERS.md itself.

mod bar;
mod circumstances;
mod competitor;
mod document;
mod evaluation;
mod figures;
mod ours;
mod speed;
mod studies;
mod year;

use anyhow::{Result, bail};

/// Measures one thing and writes its block.
type Measure = fn() -> Result<()>;

/// What can be measured by itself.
const PARTS: [(&str, Measure); 6] = [
    ("speed", speed::measure),
    ("evaluation", evaluation::measure),
    ("year", year::measure),
    ("refinement", studies::refinement),
    ("corrugation", studies::corrugation),
    ("elements", studies::elements),
];

/// Measures the parts named, or all of them.
pub(crate) fn run(names: &[String]) -> Result<()> {
    let known = |name: &String| PARTS.iter().any(|(part, _)| part == name);
    if let Some(stranger) = names.iter().find(|name| !known(name)) {
        let parts = PARTS.map(|(part, _)| part).join(", ");
        bail!("`{stranger}` is nothing to measure; there are: {parts}.");
    }
    for (part, measure) in PARTS {
        if names.is_empty() || names.iter().any(|name| name == part) {
            println!("\n== {part} ==");
            measure()?;
        }
    }
    Ok(())
}
