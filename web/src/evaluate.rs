//! The engine alone, without a page: JSON in, JSON out.

use inchwise_core::detail::DetailMemory;
use wasm_bindgen::prelude::wasm_bindgen;

/// Evaluates a design given as JSON, exactly as the native engine does.
#[wasm_bindgen]
pub fn evaluate(json: &str) -> String {
    inchwise_wire::evaluate_json(json, &mut DetailMemory::default())
}
