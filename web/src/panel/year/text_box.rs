//! A box for text that is written only where what it is to say changes.

use std::cell::RefCell;
use std::rc::Rc;

use crate::dom::{El, el, input_of};

/// A box for text. What stands beside it may change at any moment, a field solved or a rest come; what
/// someone is typing into it meanwhile stays.
#[derive(Clone)]
pub struct TextBox {
    /// The box.
    pub input: El,
    said: Rc<RefCell<Option<String>>>,
}

impl TextBox {
    /// A box of this id, which hands on what is typed.
    pub fn new(id: &str, take: impl Fn(&str) + 'static) -> Self {
        let said = Rc::new(RefCell::new(None));
        let own = said.clone();
        let input = el("input")
            .attr("type", "text")
            .attr("id", id)
            .attr("autocomplete", "off")
            .test_id(id)
            .on("change", move |event| {
                if let Some(input) = input_of(&event) {
                    let typed = input.value();
                    own.replace(Some(typed.clone()));
                    take(&typed);
                }
            });
        Self { input, said }
    }

    /// What it is to say, and whether that is wrong.
    pub fn say(&self, text: &str, is_wrong: bool) {
        if self.said.borrow().as_deref() != Some(text) {
            self.input.property("value", &text.into());
            self.said.replace(Some(text.to_owned()));
        }
        self.input.set("aria-invalid", if is_wrong { "true" } else { "false" });
    }
}
