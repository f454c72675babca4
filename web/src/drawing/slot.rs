//! One attribute, style or text of the page that is written only when it changes.

use crate::dom::El;

/// What is written.
#[derive(Clone, Copy)]
enum Kind {
    Attribute(&'static str),
    Style(&'static str),
    Text,
}

/// A place that keeps up.
pub struct Slot {
    element: El,
    kind: Kind,
    last: Option<String>,
}

impl Slot {
    /// An attribute.
    pub const fn attribute(element: El, name: &'static str) -> Self {
        Self { element, kind: Kind::Attribute(name), last: None }
    }

    /// A style property.
    pub const fn style(element: El, name: &'static str) -> Self {
        Self { element, kind: Kind::Style(name), last: None }
    }

    /// All the text of an element.
    pub const fn text(element: El) -> Self {
        Self { element, kind: Kind::Text, last: None }
    }

    /// Writes, unless the same stands there already.
    pub fn write(&mut self, now: String) {
        if self.last.as_ref() == Some(&now) {
            return;
        }
        match self.kind {
            Kind::Attribute(name) => self.element.set(name, &now),
            Kind::Style(name) => self.element.set_style(name, &now),
            Kind::Text => self.element.say(&now),
        }
        self.last = Some(now);
    }
}
