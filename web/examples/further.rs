//! The further part of the page in wasm: loaded behind the first part (`planner.rs`), which stands
//! and works without it.

use inchwise_web::{Packed, Request};
use js_sys::{Array, Function};
use wasm_bindgen::JsValue;
use wasm_bindgen::prelude::wasm_bindgen;
use web_sys::{HtmlElement, Worker};

#[wasm_bindgen]
extern "C" {
    /// The handle of the first part, from the other wasm.
    pub type First;

    #[wasm_bindgen(method)]
    fn hear(this: &First, numbers: &[f64], texts: Array);
}

/// The further part of one planner.
#[wasm_bindgen]
pub struct Further(inchwise_web::Further);

#[wasm_bindgen]
impl Further {
    /// A further part for the block `root` of the first part, hearing the same worker;
    /// `load_places` gives a promise of the text of the table of places.
    #[wasm_bindgen(constructor)]
    pub fn new(root: HtmlElement, worker: Worker, first: First, load_places: Function) -> Self {
        Self(inchwise_web::Further::new(
            root,
            worker,
            load_places,
            Box::new(move |packed| {
                let texts = packed.texts.iter().map(|text| JsValue::from_str(text)).collect();
                first.hear(&packed.numbers, texts);
            }),
        ))
    }

    /// Takes over what was chosen in the first part.
    pub fn hear(&self, numbers: Vec<f64>, texts: Vec<String>) {
        self.0.hear(Packed { numbers, texts });
    }

    /// Notes what the worker was asked, and in which units its curve, if it was asked for one.
    pub fn note(&self, number: u32, design: Vec<f64>, imperial_curve: Option<bool>) {
        self.0.note(Request::new(number, design, imperial_curve));
    }

    /// Takes it out of the document and ends everything it started.
    pub fn unmount(self) {
        self.0.unmount();
    }
}
