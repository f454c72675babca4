//! The solver in wasm, as a worker runs it: messages in, one piece of work a step, messages out.

// In wasm `#[test]` is the harness that runs under Node.
#[cfg(all(test, target_arch = "wasm32"))]
#[macro_use]
extern crate inchwise_tests;

mod solver;

pub use solver::{Answer, Solver};

use js_sys::{Array, Float64Array};
use serde::Serialize;
use serde_wasm_bindgen::Serializer;
use wasm_bindgen::JsValue;
use wasm_bindgen::prelude::wasm_bindgen;

/// A solver that hears and speaks in messages.
#[wasm_bindgen]
#[derive(Default)]
pub struct Worker(Solver);

#[wasm_bindgen]
impl Worker {
    /// A worker that was told nothing yet.
    #[wasm_bindgen(constructor)]
    pub fn new() -> Self {
        Self::default()
    }

    /// Takes a message of the page; what is none is let go.
    pub fn hear(&mut self, message: JsValue) {
        if let Ok(message) = serde_wasm_bindgen::from_value(message) {
            self.0.take(message);
        }
    }

    /// Works on for one piece and gives what is to be said: a message, and an array beside it if it
    /// has one; nothing once there is nothing to do.
    pub fn step(&mut self) -> Option<Array> {
        let Answer { message, numbers } = self.0.step()?;
        // A message is made of numbers and names: all of it can be written.
        let said = message.serialize(&Serializer::json_compatible()).unwrap_or(JsValue::NULL);
        let beside = numbers.map(|numbers| JsValue::from(Float64Array::from(&*numbers)));
        Some([said].into_iter().chain(beside).collect())
    }
}
