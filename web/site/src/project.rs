//! Where things are in this project.

use std::path::{Path, PathBuf};

/// The wasm target's name.
pub(crate) const WASM: &str = "wasm32-unknown-unknown";

/// The project's root folder.
pub(crate) fn root() -> PathBuf {
    let here = Path::new(env!("CARGO_MANIFEST_DIR"));
    here.ancestors().nth(2).unwrap_or(here).to_path_buf()
}

/// The deployable folder.
pub(crate) fn dist() -> PathBuf {
    root().join("dist")
}

/// The folder Cargo builds into, wherever the environment puts it.
pub(crate) fn target() -> PathBuf {
    match std::env::var_os("CARGO_TARGET_DIR") {
        Some(folder) => root().join(folder),
        None => root().join("target"),
    }
}

/// The real-browser checks.
pub(crate) fn browser_checks() -> PathBuf {
    root().join("tests/browser")
}
