//! What a visitor downloads, squeezed as a host would send it, against the bar we set.

use std::{fs, path::Path};

use anyhow::{Context, Result, bail};

use crate::{bundle, mime, project, squeeze};

/// What the first load of the element should weigh at most, in bytes after brotli.
const BAR: usize = 170_000;

/// What the table of places should weigh at most, in bytes after brotli.
const PLACES_BAR: usize = 80_000;

/// What one build weighs.
pub(crate) struct Weight {
    first_load: usize,
}

impl Weight {
    /// An error when the first load is over the bar.
    pub(crate) fn check(&self) -> Result<()> {
        if self.first_load > BAR {
            bail!(
                "The first load of the element weighs {} after brotli, over the bar of {}.",
                kilobytes(self.first_load),
                kilobytes(BAR)
            );
        }
        Ok(())
    }
}

/// Weighs dist and prints the table. The element's first load is its script and the folder of its
/// version but for the further part, the solver, which the worker loads once the page stands, and
/// the engine by itself; those and the page around it are weighed beside it.
pub(crate) fn report() -> Result<Weight> {
    let dist = project::dist();
    let mut names = Vec::new();
    bundle::list(&dist, &dist, &mut names)?;
    let (element, page): (Vec<_>, Vec<_>) =
        names.iter().partition(|name| bundle::belongs_to_element(name));
    let (engine, element): (Vec<_>, Vec<_>) =
        element.into_iter().partition(|name| bundle::is_engine(name));
    let (solver, element): (Vec<_>, Vec<_>) =
        element.into_iter().partition(|name| bundle::is_solver(name));

    let (places, element): (Vec<_>, Vec<_>) =
        element.into_iter().partition(|name| bundle::is_places(name));
    let (further, element): (Vec<_>, Vec<_>) =
        element.into_iter().partition(|name| bundle::is_further(name));

    println!("\n{:<44} {:>10} {:>10}", "file", "raw", "brotli");
    let first_load = rows(&dist, &element)?;
    println!("{:<44} {:>10} {:>10}", "first load of the element", "", kilobytes(first_load));
    println!("{:<44} {:>10} {:>10}\n", "the bar", "", kilobytes(BAR));
    let further = rows(&dist, &further)?;
    println!("{:<44} {:>10} {:>10}\n", "the further part, behind it", "", kilobytes(further));
    let solver = rows(&dist, &solver)?;
    println!("{:<44} {:>10} {:>10}\n", "the solver, behind the page", "", kilobytes(solver));
    let places = rows(&dist, &places)?;
    println!("{:<44} {:>10} {:>10}\n", "the table of places, when searched", "", kilobytes(places));
    if places > PLACES_BAR {
        bail!("The table of places is over its bar of {}.", kilobytes(PLACES_BAR));
    }
    let engine = rows(&dist, &engine)?;
    println!("{:<44} {:>10} {:>10}\n", "the engine alone, when asked", "", kilobytes(engine));
    let page = rows(&dist, &page)?;
    println!("{:<44} {:>10} {:>10}\n", "the demo page around it", "", kilobytes(page));
    Ok(Weight { first_load })
}

fn rows(dist: &Path, names: &[&String]) -> Result<usize> {
    let mut total = 0;
    for name in names {
        let bytes =
            fs::read(dist.join(name)).with_context(|| format!("dist/{name} cannot be read."))?;
        let squeezed =
            if mime::of(name).compresses { squeeze::squeeze(&bytes).len() } else { bytes.len() };
        println!("{name:<44} {:>10} {:>10}", kilobytes(bytes.len()), kilobytes(squeezed));
        total += squeezed;
    }
    Ok(total)
}

fn kilobytes(bytes: usize) -> String {
    format!("{}.{:02} kB", bytes / 1000, bytes % 1000 / 10)
}
