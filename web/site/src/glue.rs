//! The wasm-bindgen command line, called as a library so that Cargo.lock keeps it and the library
//! inside the wasm at one version.

use std::path::Path;

use anyhow::{Context, Result};

/// Writes a script of this name and the wasm it loads into `folder`. Of a wasm that was split, what
/// its parts look for is kept.
pub(crate) fn generate(wasm: &Path, folder: &Path, name: &str, is_split: bool) -> Result<()> {
    let mut arguments: Vec<&std::ffi::OsStr> = vec![
        "wasm-bindgen".as_ref(),
        wasm.as_ref(),
        "--target".as_ref(),
        "web".as_ref(),
        "--no-typescript".as_ref(),
        "--out-name".as_ref(),
        name.as_ref(),
        "--out-dir".as_ref(),
        folder.as_ref(),
    ];
    if is_split {
        arguments.push("--keep-lld-exports".as_ref());
    } else {
        arguments.push("--remove-name-section".as_ref());
        arguments.push("--remove-producers-section".as_ref());
    }
    wasm_bindgen_cli::wasm_bindgen::run_cli_with_args(arguments)
        .context("wasm-bindgen could not write the script that loads the wasm")
}

/// Runs a wasm test binary under Node.
pub(crate) fn run_tests(arguments: &[String]) -> Result<()> {
    let command = ["wasm-bindgen-test-runner".to_owned()];
    wasm_bindgen_cli::wasm_bindgen_test_runner::run_cli_with_args(
        command.iter().chain(arguments).cloned(),
    )
}
