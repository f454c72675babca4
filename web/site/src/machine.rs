//! What the build and the checks need on the machine, installed when it is missing.

use std::path::{Path, PathBuf};

use anyhow::{Context, Result, bail};

use crate::{program, project};

/// The compiler's part for wasm.
pub(crate) fn wasm_target() -> Result<()> {
    let list = program::output(&mut program::command("rustup", &["target", "list", "--installed"]));
    match list {
        Ok(list) if list.lines().any(|line| line == project::WASM) => Ok(()),
        Ok(_) => program::run(&mut program::command("rustup", &["target", "add", project::WASM]))
            .context("The compiler's part for wasm could not be added."),
        // Without rustup the compiler came some other way: let Cargo say what it lacks.
        Err(_) => Ok(()),
    }
}

/// The formatter and the linter.
pub(crate) fn formatter_and_linter() -> Result<()> {
    for (subcommand, component) in [("fmt", "rustfmt"), ("clippy", "clippy")] {
        if !program::succeeds(&mut program::cargo(&[subcommand, "--version"])) {
            program::run(&mut program::command("rustup", &["component", "add", component]))
                .with_context(|| format!("{component} is missing and could not be added."))?;
        }
    }
    Ok(())
}

/// Node, which runs the wasm tests and drives the browser.
pub(crate) fn node() -> Result<()> {
    for name in ["node", "npm"] {
        if !program::succeeds(&mut program::command(name, &["--version"])) {
            bail!("{name} is missing. Install Node 20 or newer (it brings npm), then try again.");
        }
    }
    Ok(())
}

/// The browser's path: the one named by `INCHWISE_CHROMIUM`, or the system's, installed by apt if
/// there is none.
pub(crate) fn chromium() -> Result<PathBuf> {
    if let Some(path) = std::env::var_os("INCHWISE_CHROMIUM") {
        return Ok(path.into());
    }
    let path = Path::new("/usr/bin/chromium");
    if !path.exists() {
        println!("Chromium is missing; installing it.");
        for arguments in [&["update", "-q"][..], &["install", "-q", "-y", "chromium"]] {
            apt_get(arguments).context(
                "Chromium is missing and apt-get could not install it. Install it by hand, or \
                 name a browser with INCHWISE_CHROMIUM=/path/to/chromium.",
            )?;
        }
    }
    Ok(path.to_path_buf())
}

fn apt_get(arguments: &[&str]) -> Result<()> {
    let root = program::output(&mut program::command("id", &["-u"]))?.trim() == "0";
    let mut command = if root {
        program::command("apt-get", arguments)
    } else {
        program::command("sudo", &[&["apt-get"], arguments].concat())
    };
    program::run(command.env("DEBIAN_FRONTEND", "noninteractive"))
}

/// The packages the browser checks are written with, exactly as locked.
pub(crate) fn browser_packages() -> Result<()> {
    let folder = project::browser_checks();
    let changed = |name: &str| folder.join(name).metadata().and_then(|file| file.modified()).ok();
    if changed("node_modules/.package-lock.json") >= changed("package-lock.json") {
        return Ok(());
    }
    program::run(
        program::command("npm", &["ci", "--no-audit", "--no-fund"])
            .current_dir(&folder)
            .env("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1"),
    )
    .context("The packages of tests/browser could not be installed.")
}

/// A Python with the packages of the benchmark, in an environment of its own: the path of its program.
pub(crate) fn python_packages() -> Result<PathBuf> {
    let wanted = project::root().join("tests/bench/requirements.txt");
    let folder = project::target().join("bench/python");
    let (python, note) = (folder.join("bin/python"), folder.join("installed.txt"));
    let wanted_text = std::fs::read_to_string(&wanted).context("No list of Python packages.")?;
    if std::fs::read_to_string(&note).is_ok_and(|installed| installed == wanted_text) {
        return Ok(python);
    }
    program::run(program::command("python3", &["-m", "venv"]).arg(&folder))
        .context("Python 3 with its module venv is needed (Debian: python3-venv).")?;
    let mut install = program::command(&python.to_string_lossy(), &["-m", "pip", "install"]);
    program::run(install.args(["--quiet", "--disable-pip-version-check", "-r"]).arg(&wanted))
        .context("The Python packages of the benchmark could not be installed.")?;
    std::fs::write(&note, wanted_text).context("The build folder cannot be written.")?;
    Ok(python)
}
