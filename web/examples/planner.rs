//! The first part of the page in wasm: what `web/embed.js` loads when the element nears the screen.

use inchwise_web::{Packed, Planner, Request};
use js_sys::Array;
use wasm_bindgen::JsValue;
use wasm_bindgen::prelude::wasm_bindgen;
use web_sys::{HtmlElement, Worker};

#[wasm_bindgen]
extern "C" {
    /// The handle of the further part (`further.rs`), from the other wasm.
    pub type Further;

    #[wasm_bindgen(method)]
    fn hear(this: &Further, numbers: &[f64], texts: Array);

    #[wasm_bindgen(method)]
    fn note(this: &Further, number: u32, design: &[f64], curve: Option<bool>);
}

/// One planner on the page.
#[wasm_bindgen]
pub struct Handle(Planner);

/// Puts a planner into `root`; see `Planner::mount`.
#[wasm_bindgen]
pub fn mount(root: HtmlElement, host: HtmlElement, worker: Worker) -> Handle {
    Handle(Planner::mount(&root, host, worker))
}

#[wasm_bindgen]
impl Handle {
    /// The block for the further part.
    pub fn further(&self) -> HtmlElement {
        self.0.further()
    }

    /// Tells the further part everything from now on.
    pub fn follow(&self, further: Further) {
        let noted: Further = JsValue::from(&further).into();
        self.0.follow(
            Box::new(move |packed| {
                let texts = packed.texts.iter().map(|text| JsValue::from_str(text)).collect();
                further.hear(&packed.numbers, texts);
            }),
            Box::new(move |request: &Request| {
                noted.note(request.number, &request.design, request.imperial_curve());
            }),
        );
    }

    /// Takes over what was chosen in the further part.
    pub fn hear(&self, numbers: Vec<f64>, texts: Vec<String>) {
        self.0.hear(Packed { numbers, texts });
    }

    /// An attribute of the host changed; `None` says it was removed.
    pub fn set(&self, attribute: &str, value: Option<String>) {
        self.0.set(attribute, value.as_deref());
    }

    /// The design as it stands, lawful or not: an object with the keys of the JSON form.
    pub fn design(&self) -> JsValue {
        self.0.design()
    }

    /// Takes the planner out of the document and ends everything it started.
    pub fn unmount(self) {
        self.0.unmount();
    }
}
