//! The seam between the custom element (`web/embed.js`) and the planner: everything the page's
//! script may ask of the wasm.

use std::{any::Any, cell::RefCell, rc::Rc};

use wasm_bindgen::prelude::wasm_bindgen;
use web_sys::HtmlElement;

use crate::placeholder::{Planner, State};

/// One planner on the page. The script keeps it for as long as its element stays in the document.
#[wasm_bindgen]
pub struct Handle {
    state: Option<State>,
    mounted: Box<dyn Any>,
}

/// Puts a planner into `root`, an empty block inside the shadow root of `host`. Attributes already
/// on the host are read here; later changes arrive through [`Handle::set`].
#[wasm_bindgen]
pub fn mount(root: HtmlElement, host: HtmlElement) -> Handle {
    // Signals belong to the mount that made them, so they are made inside its closure and handed
    // out, and end with it.
    let made = Rc::new(RefCell::new(None));
    let handed_out = Rc::clone(&made);
    let mounted = leptos::mount::mount_to(root, move || {
        let state = State::from_host(&host);
        handed_out.replace(Some(state));
        Planner(state)
    });
    Handle { state: made.take(), mounted: Box::new(mounted) }
}

#[wasm_bindgen]
impl Handle {
    /// An attribute of the host changed; `None` says it was removed. Unknown names do nothing.
    pub fn set(&self, attribute: &str, value: Option<String>) {
        if let Some(state) = self.state {
            state.set(attribute, value);
        }
    }

    /// Takes the planner out of the document and ends everything it started.
    pub fn unmount(self) {
        drop(self.mounted);
    }
}
