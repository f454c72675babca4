fn main() {
    let mut a = std::env::args();
    a.next(); a.next();
    let args = std::iter::once("runner".to_string()).chain(a);
    if let Err(e) = wasm_bindgen_cli::wasm_bindgen_test_runner::run_cli_with_args(args) { eprintln!("{e:?}"); std::process::exit(1) }
}
