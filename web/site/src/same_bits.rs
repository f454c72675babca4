//! The engine must give the same bits natively and in wasm: each design is evaluated by both, and
//! what they print is compared byte for byte.

use std::{
    fs,
    path::{Path, PathBuf},
};

use anyhow::{Context, Result, bail};

use crate::{bundle, program, project, tally::Tally};

/// The designs both machines evaluate.
const DESIGNS: &str = "tests/designs";

/// Evaluates every design twice and compares.
pub(crate) fn check() -> Result<Tally> {
    let wasm = Wasm::shipped()?;
    let folder = project::root().join(DESIGNS);
    let mut names = Vec::new();
    bundle::list(&folder, &folder, &mut names)?;
    names.retain(|name| name.ends_with(".json"));
    if names.is_empty() {
        bail!("{DESIGNS} holds no designs to compare.");
    }
    let mut tally = Tally::default();
    for name in &names {
        let design = folder.join(name);
        match difference(&native(&design)?, &wasm.evaluate(&design)?) {
            None => tally += Tally::ONE_PASSED,
            Some(difference) => {
                println!("{DESIGNS}/{name}: {difference}");
                tally += Tally::ONE_FAILED;
            }
        }
    }
    Ok(tally)
}

fn native(design: &Path) -> Result<String> {
    let mut command =
        program::cargo(&["run", "-q", "-p", "inchwise-core", "--example", "evaluate", "--"]);
    program::output(command.arg(design))
}

/// The engine compiled to wasm as the planner's is, to be loaded in Node.
struct Wasm {
    script: PathBuf,
    folder: PathBuf,
}

impl Wasm {
    /// What dist ships, beside a note for Node: without it Node takes the script for one of the
    /// older kind.
    fn shipped() -> Result<Self> {
        let folder = project::target().join("same-bits");
        fs::create_dir_all(&folder).context("The build folder cannot be made.")?;
        let dist = project::dist();
        let mut names = Vec::new();
        bundle::list(&dist, &dist, &mut names)?;
        for name in names.iter().filter(|name| bundle::is_engine(name)) {
            let file = Path::new(name).file_name().context("A file of dist has no name.")?;
            fs::copy(dist.join(name), folder.join(file))
                .with_context(|| format!("dist/{name} cannot be copied."))?;
        }
        fs::write(folder.join("package.json"), "{ \"type\": \"module\" }\n")
            .context("The build folder cannot be written.")?;
        Ok(Self { script: project::root().join("web/site/same_bits.mjs"), folder })
    }

    fn evaluate(&self, design: &Path) -> Result<String> {
        let mut command = program::command("node", &[]);
        command.arg(&self.script).arg(&self.folder).arg(design);
        program::output(&mut command)
    }
}

/// Where two texts part, in words; nothing when they are the same.
fn difference(native: &str, wasm: &str) -> Option<String> {
    let (native, wasm) = (native.trim_end(), wasm.trim_end());
    if native == wasm {
        return None;
    }
    let common = native.bytes().zip(wasm.bytes()).take_while(|(a, b)| a == b).count();
    let around = |text: &str| {
        let bytes = text.as_bytes();
        let part = &bytes[common.saturating_sub(60)..bytes.len().min(common + 40)];
        String::from_utf8_lossy(part).into_owned()
    };
    Some(format!(
        "the answers part at byte {common}\n  native ...{}\n  wasm   ...{}",
        around(native),
        around(wasm)
    ))
}

#[cfg(test)]
mod tests {
    use super::difference;

    #[test]
    fn equal_answers_do_not_differ() {
        assert_eq!(difference("{\"a\":1}\n", "{\"a\":1}"), None);
    }

    #[test]
    fn the_place_of_the_difference_is_named() {
        let words = difference("{\"a\":1.5}", "{\"a\":1.4}").unwrap();
        assert!(words.contains("part at byte 7"));
        assert!(difference("{}", "").unwrap().contains("part at byte 0"));
    }
}
