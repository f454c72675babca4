//! A figure that tells how it comes about once it is asked.

use wasm_bindgen::JsCast;

use crate::dom::{El, el};
use crate::reactive::{Watched, keep_up};

/// What is open of a panel. It goes with what is asked about, not with the row that shows it.
pub type Open<K> = Watched<Vec<K>>;

/// A disclosure under its summary. What it holds is made while it is open, and kept up.
pub fn disclosure<K: Copy + PartialEq + 'static>(
    key: K,
    open: Open<K>,
    summary: El,
    content: impl Fn() -> Vec<El> + 'static,
) -> El {
    let is_open = move || open.with(|open| open.contains(&key));
    let how = el("div")
        .class("working")
        .children_with(move || if is_open() { content() } else { Vec::new() });
    let details = el("details").with(&[summary, how]).on("toggle", move |event| {
        let target = event.current_target().and_then(|target| target.dyn_into().ok());
        let now = target.is_some_and(|target: web_sys::Element| target.has_attribute("open"));
        if open.with_untracked(|open| open.contains(&key)) == now {
            return;
        }
        open.update(|open| {
            if now {
                open.push(key);
            } else {
                open.retain(|other| *other != key);
            }
        });
    });
    let opened = details.clone();
    keep_up(Box::new(move || opened.flag("open", is_open())));
    details
}
