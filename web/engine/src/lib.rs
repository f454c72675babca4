//! The engine alone in wasm, JSON in and JSON out: what the check of same bits compares with the
//! native engine. It stays out of the planner, whose page should not pay for reading JSON.

use inchwise_core::detail::FieldCache;
use wasm_bindgen::prelude::wasm_bindgen;

/// Evaluates a design given as JSON, exactly as the native example of this name does.
#[wasm_bindgen]
pub fn evaluate(json: &str) -> String {
    inchwise_wire::evaluate_json(json, &mut FieldCache::default())
}
