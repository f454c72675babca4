//! Writing dist, the folder a host copies to its own site: every address in it is relative, so it
//! works at any depth.
//!
//! The element's script keeps one name for ever. Everything it loads sits in a folder named after
//! its own content, so a copy kept by a cache can never mix two builds.

use std::{
    fs,
    hash::{DefaultHasher, Hasher},
    path::Path,
};

use anyhow::{Context, Result, bail};

use crate::{
    fallback, glue, machine, program, project, split,
    weight::{self, Weight},
};

/// The element's script: the one address a host page writes.
const SHIM: &str = "embed.js";

/// The layers of the element's style sheet, in the order in which later ones win.
const STYLES: [&str; 11] = [
    "colours", "words", "bench", "answer", "drawing", "controls", "sheet", "fields", "pictures",
    "widths", "print",
];

/// The folder of the element's style, and the name of its sheet.
const PLANNER: &str = "planner";

/// The solver alone: loaded by the worker, behind the page.
const SOLVER: &str = "solver";

/// The engine alone, JSON in and JSON out: loaded when a page first asks it.
pub(crate) const ENGINE: &str = "engine";

/// The table of places: loaded when a visitor first searches it.
const PLACES: &str = "places.txt";

/// The folder of the versions.
const VERSIONS: &str = "element";

/// Where the script names its version; the build fills it in.
const VERSION_MARK: &str = "__VERSION__";

/// How a build is made.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Kind {
    /// What a host gets.
    Shipped,
    /// Large and slow, in half a minute.
    Quick,
}

/// Builds dist and prints what it weighs.
pub(crate) fn build_and_weigh() -> Result<Weight> {
    build(Kind::Shipped)?;
    weight::report()
}

/// Builds dist.
pub(crate) fn build(kind: Kind) -> Result<()> {
    machine::wasm_target()?;
    let (page, worker) = compile(kind)?;

    // Everything is made beside dist first, so that a failure leaves the last good one standing.
    let root = project::root();
    let fresh = project::target().join("site");
    empty(&fresh)?;
    let parts = fresh.join(VERSIONS).join("fresh");
    empty(&parts)?;
    let planner = page.join("inchwise_web.wasm");
    match kind {
        Kind::Shipped => {
            println!("Cutting the sheets apart.");
            let whole = split::split(&planner, &parts, PLANNER)?;
            glue::generate(&whole, &parts, PLANNER, true)?;
            fs::remove_file(&whole).context("The build folder is stuck.")?;
            split::strip_all(&parts)?;
        }
        Kind::Quick => glue::generate(&planner, &parts, PLANNER, false)?,
    }
    glue::generate(&worker.join("inchwise_worker.wasm"), &parts, SOLVER, false)?;
    glue::generate(&worker.join("inchwise_engine.wasm"), &parts, ENGINE, false)?;
    let styles = root.join("style");
    join(&styles.join(PLANNER), &STYLES.map(|part| format!("{part}.css")), &parts)?;
    // The hand-written scripts go beside the wasm: all of them but the element's own.
    for name in files(&root.join("web"), |name| name.ends_with(".js") && name != SHIM)? {
        copy(&root.join("web").join(&name), &parts.join(&name))?;
    }

    copy(&root.join("web").join(PLACES), &parts.join(PLACES))?;

    let version = version(&parts)?;
    move_to(&parts, &fresh.join(VERSIONS).join(&version))?;
    let shim = read(&root.join("web").join(SHIM))?;
    write(&fresh.join(SHIM), &filled(&shim, VERSION_MARK, &version)?)?;

    let page = read(&root.join("index.html"))?;
    write(&fresh.join("index.html"), &filled(&page, fallback::MARK, &fallback::block()?)?)?;
    for name in files(&styles, |_| true)? {
        copy(&root.join("style").join(&name), &fresh.join("style").join(&name))?;
    }

    let dist = project::dist();
    if dist.exists() {
        fs::remove_dir_all(&dist).context("The old dist folder could not be removed.")?;
    }
    move_to(&fresh, &dist)
}

/// Compiles the planner, and the worker with the engine; gives the folders they lie in.
fn compile(kind: Kind) -> Result<(std::path::PathBuf, std::path::PathBuf)> {
    let of_profile = |name| project::target().join(project::WASM).join(name);
    let planner = ["rustc", "--package", "inchwise-web", "--lib", "--crate-type", "cdylib"];
    let aside = ["build", "--package", "inchwise-worker", "--package", "inchwise-engine", "--lib"];
    match kind {
        Kind::Shipped => {
            println!("Compiling the planner.");
            let split = ["--profile", "page", "--features", "split"];
            // Only the planner itself is linked so that it can be cut.
            let relocations = ["--", "-Clink-args=--emit-relocs"];
            to_wasm(&[&planner[..], &split].concat(), &relocations)?;
            println!("Compiling the solver.");
            to_wasm(&[&aside[..], &["--release"]].concat(), &[])?;
            Ok((of_profile("page"), of_profile("release")))
        }
        Kind::Quick => {
            println!("Compiling the planner and the solver, quickly.");
            to_wasm(&planner, &[])?;
            to_wasm(&aside, &[])?;
            Ok((of_profile("debug"), of_profile("debug")))
        }
    }
}

/// Compiles something to wasm.
fn to_wasm(words: &[&str], for_compiler: &[&str]) -> Result<()> {
    // Panic messages carry source paths; these keep the builder's own folders out of them.
    let home = std::env::var("CARGO_HOME")
        .or_else(|_| std::env::var("HOME").map(|home| format!("{home}/.cargo")))
        .unwrap_or_default();
    let flags = format!("target.{}.rustflags=['--remap-path-prefix={home}=cargo']", project::WASM);
    let mut command = program::cargo(words);
    command.args(["--target", project::WASM, "--config", &flags]).args(for_compiler);
    program::run(&mut command).context("The planner did not compile to wasm.")
}

/// Whether a file of dist is part of the element rather than of the page around it.
pub(crate) fn belongs_to_element(name: &str) -> bool {
    name == SHIM || is_versioned(name)
}

/// Whether a file of the element is only loaded when a page asks the engine itself.
pub(crate) fn is_engine(name: &str) -> bool {
    is_part(name, ENGINE)
}

/// Whether a file of the element is a sheet's, or what several share: loaded when one is opened.
pub(crate) fn is_sheet(name: &str) -> bool {
    let file = name.rsplit('/').next().unwrap_or_default();
    file.ends_with(".wasm") && !file.ends_with("_bg.wasm") || is_part(name, "planner_parts")
}

/// Whether a file of the element is loaded by the worker, when the page already stands.
pub(crate) fn is_solver(name: &str) -> bool {
    is_part(name, SOLVER) || is_part(name, "worker")
}

/// Whether a file of the element is only loaded when a visitor searches for a place.
pub(crate) fn is_places(name: &str) -> bool {
    is_part(name, "places")
}

fn is_part(name: &str, part: &str) -> bool {
    name.rsplit('/').next().is_some_and(|file| file.starts_with(part))
}

/// Whether a file's address changes whenever its content does.
pub(crate) fn is_versioned(name: &str) -> bool {
    name.split('/').next() == Some(VERSIONS)
}

/// The names of all files below `folder`, relative to `base`, in order.
pub(crate) fn list(base: &Path, folder: &Path, names: &mut Vec<String>) -> Result<()> {
    let entries = fs::read_dir(folder)
        .with_context(|| format!("{} cannot be read. Run `cargo site build`.", folder.display()))?;
    let mut paths: Vec<_> = entries.flatten().map(|entry| entry.path()).collect();
    paths.sort();
    for path in paths {
        if path.is_dir() {
            list(base, &path, names)?;
        } else if let Ok(relative) = path.strip_prefix(base) {
            names.push(relative.to_string_lossy().replace('\\', "/"));
        }
    }
    Ok(())
}

/// The names of the files right in `folder` that are `wanted`.
fn files(folder: &Path, wanted: impl Fn(&str) -> bool) -> Result<Vec<String>> {
    let mut names = Vec::new();
    list(folder, folder, &mut names)?;
    names.retain(|name| !name.contains('/') && wanted(name));
    Ok(names)
}

/// Joins style sheets of a folder to one of the folder's name in `to`.
fn join(folder: &Path, names: &[String], to: &Path) -> Result<()> {
    let known = files(folder, |_| true)?;
    if let Some(stray) = known.iter().find(|name| !names.contains(name)) {
        bail!("{stray} stands in {} and has no place in the order.", folder.display());
    }
    let sheets = names.iter().map(|name| read(&folder.join(name))).collect::<Result<Vec<_>>>()?;
    let name = folder.file_name().unwrap_or_default();
    write(&to.join(name).with_extension("css"), &lean(&sheets.join("\n")))
}

/// A style sheet without comments, indents and empty lines, which no browser reads.
fn lean(sheet: &str) -> String {
    let mut rest = sheet;
    let mut bare = String::new();
    while let Some((before, after)) = rest.split_once("/*") {
        bare.push_str(before);
        rest = after.split_once("*/").map_or("", |(_, after)| after);
    }
    bare.push_str(rest);
    let lines = bare.lines().map(str::trim).filter(|line| !line.is_empty());
    lines.flat_map(|line| [line, "\n"]).collect()
}

/// A name for what a folder holds: equal contents have equal names.
fn version(folder: &Path) -> Result<String> {
    let mut names = Vec::new();
    list(folder, folder, &mut names)?;
    let mut hasher = DefaultHasher::new();
    for name in &names {
        let bytes =
            fs::read(folder.join(name)).with_context(|| format!("{name} is unreadable."))?;
        hasher.write(name.as_bytes());
        hasher.write(&bytes);
    }
    Ok(format!("{:016x}", hasher.finish()))
}

/// The text with its one mark replaced; an error if the mark is not there exactly once.
fn filled(text: &str, mark: &str, content: &str) -> Result<String> {
    match text.matches(mark).count() {
        1 => Ok(text.replace(mark, content)),
        count => {
            bail!("The mark {mark} should stand exactly once in its file; it stands {count}x.")
        }
    }
}

fn empty(folder: &Path) -> Result<()> {
    if folder.exists() {
        fs::remove_dir_all(folder).with_context(|| format!("{} is stuck.", folder.display()))?;
    }
    fs::create_dir_all(folder).with_context(|| format!("{} cannot be made.", folder.display()))
}

fn read(file: &Path) -> Result<String> {
    fs::read_to_string(file).with_context(|| format!("{} cannot be read.", file.display()))
}

fn write(file: &Path, text: &str) -> Result<()> {
    fs::write(file, text).with_context(|| format!("{} cannot be written.", file.display()))
}

fn copy(from: &Path, to: &Path) -> Result<()> {
    if let Some(folder) = to.parent() {
        fs::create_dir_all(folder).with_context(|| format!("{} is stuck.", folder.display()))?;
    }
    fs::copy(from, to).with_context(|| format!("{} cannot be copied.", from.display()))?;
    Ok(())
}

fn move_to(from: &Path, to: &Path) -> Result<()> {
    // Renaming fails across file systems, where the build folder may live on another disk.
    if fs::rename(from, to).is_ok() {
        return Ok(());
    }
    let mut names = Vec::new();
    list(from, from, &mut names)?;
    names.iter().try_for_each(|name| copy(&from.join(name), &to.join(name)))
}

#[cfg(test)]
mod tests {
    use super::{belongs_to_element, filled, is_versioned, lean};

    #[test]
    fn a_style_sheet_loses_only_what_no_browser_reads() {
        assert_eq!(lean("/* a */\na {\n  b: c; /* d\n e */\n}\n\nf { }"), "a {\nb: c;\n}\nf { }\n");
    }

    #[test]
    fn a_mark_is_filled_once_or_not_at_all() {
        assert_eq!(filled("a MARK b", "MARK", "x").unwrap(), "a x b");
        assert!(filled("a b", "MARK", "x").is_err());
        assert!(filled("MARK MARK", "MARK", "x").is_err());
    }

    #[test]
    fn only_the_version_folder_is_versioned() {
        assert!(is_versioned("element/0123/planner.js"));
        assert!(!is_versioned("embed.js"));
        assert!(belongs_to_element("embed.js"));
        assert!(!belongs_to_element("style/shop.css"));
    }
}
