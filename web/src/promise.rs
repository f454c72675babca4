//! Hears what a promise comes to.

use std::cell::RefCell;
use std::rc::Rc;

use js_sys::{Function, Reflect};
use wasm_bindgen::closure::Closure;
use wasm_bindgen::{JsCast, JsValue};

/// What a promise comes to: its value, or why there is none.
pub type Settled = Result<JsValue, JsValue>;

/// Once a promise is settled, hears what it came to. What is no promise fails at once.
pub fn settled(promise: &JsValue, hear: Box<dyn FnOnce(Settled)>) {
    let hear = Rc::new(RefCell::new(Some(hear)));
    let tell = move |outcome: Settled| {
        let hear = hear.borrow_mut().take();
        if let Some(hear) = hear {
            hear(outcome);
        }
    };
    let then = Reflect::get(promise, &"then".into()).ok();
    let Some(then) = then.and_then(|then| then.dyn_into::<Function>().ok()) else {
        tell(Err(promise.clone()));
        return;
    };
    // Of the two one is called and freed; the other stays, an empty shell.
    let fail = tell.clone();
    let there = Closure::once_into_js(move |value: JsValue| tell(Ok(value)));
    let failed = Closure::once_into_js(move |reason: JsValue| fail(Err(reason)));
    let _ = then.call2(promise, &there, &failed);
}
