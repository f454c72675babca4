//! Elements built by hand, kept up to date by the reactive graph.
//!
//! The macro that comes with the reactive graph makes a type, and so machine code, of every
//! fragment. Here every closure is boxed and every element is one type: the same page in a
//! fraction of the bytes, and of the time for one step of a slider.

use std::rc::Rc;
use std::time::Duration;

use wasm_bindgen::closure::Closure;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{
    Document, Element, Event, HtmlElement, HtmlInputElement, HtmlSelectElement,
    IntersectionObserver, IntersectionObserverEntry, ShadowRoot, Window,
};

use crate::reactive::{Watched, at_end, keep_up};

const SVG: &str = "http://www.w3.org/2000/svg";

/// The window the planner stands in.
pub fn window() -> Window {
    web_sys::window().expect("a planner stands on a page")
}

fn document() -> Document {
    window().document().expect("a planner stands on a page")
}

/// Listens to an event of the window for as long as the present scope stands.
pub fn listen_to_window(event: &'static str, hear: Box<dyn FnMut()>) {
    let listener = Closure::wrap(hear);
    let _ = window().add_event_listener_with_callback(event, listener.as_ref().unchecked_ref());
    at_end(Box::new(move || {
        let _ =
            window().remove_event_listener_with_callback(event, listener.as_ref().unchecked_ref());
    }));
}

/// Keeps a value saying whether an element is on the screen, for as long as the present scope
/// stands.
pub fn in_sight(element: &El, value: Watched<bool>) {
    let hear = Closure::<dyn FnMut(js_sys::Array)>::new(move |entries: js_sys::Array| {
        let last = entries.pop().dyn_into::<IntersectionObserverEntry>();
        let Ok(now) = last.map(|entry| entry.is_intersecting()) else { return };
        if value.with_untracked(|shown| *shown != now) {
            value.set(now);
        }
    });
    let Ok(observer) = IntersectionObserver::new(hear.as_ref().unchecked_ref()) else { return };
    observer.observe(&element.0);
    at_end(Box::new(move || {
        observer.disconnect();
        drop(hear);
    }));
}

/// An element of the document. A copy is the same element.
#[derive(Clone)]
pub struct El(Element);

/// A new HTML element.
pub fn el(tag: &str) -> El {
    El(document().create_element(tag).expect("the name of an element is lawful"))
}

/// A new SVG element.
pub fn svg(tag: &str) -> El {
    El(document().create_element_ns(Some(SVG), tag).expect("the name of an element is lawful"))
}

/// The number field or slider that an event happened to.
pub fn input_of(event: &Event) -> Option<HtmlInputElement> {
    event.current_target()?.dyn_into().ok()
}

/// The list that an event happened to.
pub fn select_of(event: &Event) -> Option<HtmlSelectElement> {
    event.current_target()?.dyn_into().ok()
}

impl El {
    /// The element itself.
    pub const fn element(&self) -> &Element {
        &self.0
    }

    /// The element as HTML.
    pub fn html(&self) -> &HtmlElement {
        self.0.unchecked_ref()
    }

    /// Its class.
    pub fn class(self, class: &str) -> Self {
        self.attr("class", class)
    }

    /// An attribute that stays.
    pub fn attr(self, name: &str, value: &str) -> Self {
        self.set(name, value);
        self
    }

    /// Sets an attribute.
    pub fn set(&self, name: &str, value: &str) {
        let _ = self.0.set_attribute(name, value);
    }

    /// Sets a style property. A strict policy allows this way to set it, and no other.
    pub fn set_style(&self, name: &str, value: &str) {
        let _ = self.html().style().set_property(name, value);
    }

    /// Sets an attribute without a value, or takes it away.
    pub fn flag(&self, name: &str, on: bool) {
        let _ = self.0.toggle_attribute_with_force(name, on);
    }

    /// The innermost element around it that matches.
    pub fn closest(&self, selector: &str) -> Option<Self> {
        self.0.closest(selector).ok().flatten().map(Self)
    }

    /// The first element within that matches.
    pub fn find(&self, selector: &str) -> Option<Self> {
        self.0.query_selector(selector).ok().flatten().map(Self)
    }

    /// Puts a class on or takes it off.
    pub fn toggle(&self, class: &str, on: bool) {
        let _ = self.0.class_list().toggle_with_force(class, on);
    }

    /// Sets a property, as `value` of an input, which its attribute does not move any more.
    pub fn property(&self, name: &str, value: &JsValue) {
        let _ = js_sys::Reflect::set(&self.0, &JsValue::from_str(name), value);
    }

    /// Sets the text and nothing but text.
    pub fn say(&self, text: &str) {
        self.0.set_text_content(Some(text));
    }

    /// The name for checks in a browser.
    pub fn test_id(self, id: &str) -> Self {
        self.attr("data-testid", id)
    }

    /// Adds words that stay.
    pub fn text(self, text: &str) -> Self {
        let _ = self.0.append_child(&document().create_text_node(text));
        self
    }

    /// Adds words that keep up.
    pub fn text_with(self, write: impl Fn() -> String + 'static) -> Self {
        self.boxed_text(Box::new(write))
    }

    fn boxed_text(self, write: Box<dyn Fn() -> String>) -> Self {
        let node = document().create_text_node("");
        let _ = self.0.append_child(&node);
        let mut last = String::new();
        keep_up(Box::new(move || {
            let now = write();
            if now != last {
                node.set_data(&now);
                last = now;
            }
        }));
        self
    }

    /// An attribute that keeps up.
    pub fn attr_with(self, name: &'static str, write: impl Fn() -> String + 'static) -> Self {
        self.boxed_attr(name, Box::new(write))
    }

    fn boxed_attr(self, name: &'static str, write: Box<dyn Fn() -> String>) -> Self {
        let element = self.clone();
        let mut last = None;
        keep_up(Box::new(move || {
            let now = write();
            if last.as_ref() != Some(&now) {
                element.set(name, &now);
                last = Some(now);
            }
        }));
        self
    }

    /// A class that comes and goes.
    pub fn class_with(self, class: &'static str, on: impl Fn() -> bool + 'static) -> Self {
        let element = self.clone();
        let on: Box<dyn Fn() -> bool> = Box::new(on);
        keep_up(Box::new(move || element.toggle(class, on())));
        self
    }

    /// Adds one element.
    pub fn child(self, child: &Self) -> Self {
        let _ = self.0.append_child(&child.0);
        self
    }

    /// Adds elements in their order.
    pub fn with(self, children: &[Self]) -> Self {
        for child in children {
            let _ = self.0.append_child(&child.0);
        }
        self
    }

    /// Puts one element in front of all others.
    pub fn prepend(&self, child: &Self) {
        let _ = self.0.insert_before(&child.0, self.0.first_child().as_ref());
    }

    /// Its children, made anew whenever what they read changes.
    pub fn children_with(self, make: impl Fn() -> Vec<Self> + 'static) -> Self {
        let element = self.clone();
        let make: Box<dyn Fn() -> Vec<Self>> = Box::new(make);
        keep_up(Box::new(move || element.refill(&make())));
        self
    }

    /// A list of pairs of texts that keeps up: each row an element of the first name, holding one
    /// of the second and one of the third. Rows that stay the same stay the same elements.
    pub fn rows_with(
        self,
        names: [&'static str; 3],
        pairs: impl Fn() -> Vec<[String; 2]> + 'static,
    ) -> Self {
        self.boxed_rows(names, Box::new(pairs))
    }

    fn boxed_rows(
        self,
        names: [&'static str; 3],
        pairs: Box<dyn Fn() -> Vec<[String; 2]>>,
    ) -> Self {
        let list = self.clone();
        let mut rows: Vec<([El; 2], [String; 2])> = Vec::new();
        keep_up(Box::new(move || {
            let pairs = pairs();
            while rows.len() > pairs.len() {
                rows.pop();
                list.drop_last();
            }
            for (index, pair) in pairs.into_iter().enumerate() {
                if rows.len() == index {
                    let cells = [el(names[1]), el(names[2])];
                    let _ = list.0.append_child(&el(names[0]).with(&cells).0);
                    rows.push((cells, Default::default()));
                }
                let (cells, shown) = &mut rows[index];
                for ((cell, shown), text) in cells.iter().zip(shown).zip(pair) {
                    if *shown != text {
                        cell.say(&text);
                        *shown = text;
                    }
                }
            }
        }));
        self
    }

    fn drop_last(&self) {
        if let Some(last) = self.0.last_element_child() {
            last.remove();
        }
    }

    /// Puts these children in place of the present ones.
    pub fn refill(&self, children: &[Self]) {
        let held = self.held();
        self.0.replace_children_with_node(&nodes(children));
        // A child that changed its place lost the keyboard on the way.
        if let Some(held) = held.filter(|held| self.0.contains(Some(held))) {
            let _ = held.unchecked_ref::<HtmlElement>().focus();
        }
    }

    /// Puts these children, most of them present, in this order. Whatever is moved loses the
    /// keyboard and may not get it back where it is now: the one that holds it stays, and the
    /// others are put around it.
    pub fn put_in_order(&self, children: &[Self]) {
        let held = self.held();
        let stays =
            held.and_then(|held| children.iter().position(|child| child.0.contains(Some(&held))));
        let Some(stays) = stays else { return self.refill(children) };
        let (before, after) = (nodes(&children[..stays]), nodes(&children[stays + 1..]));
        let stays = &children[stays].0;
        while let Some(other) = stays.previous_element_sibling().or(stays.next_element_sibling()) {
            other.remove();
        }
        let _ = stays.before_with_node(&before);
        let _ = stays.after_with_node(&after);
    }

    /// What holds the keyboard in the planner this stands in.
    fn held(&self) -> Option<Element> {
        let root = self.0.get_root_node().dyn_into::<ShadowRoot>().ok();
        root.and_then(|root| root.active_element())
    }

    /// Listens to an event.
    pub fn on(self, event: &'static str, listen: impl FnMut(Event) + 'static) -> Self {
        self.boxed_on(event, Box::new(listen))
    }

    fn boxed_on(self, event: &'static str, listen: Box<dyn FnMut(Event)>) -> Self {
        let listener = Closure::wrap(listen);
        let heard = listener.as_ref().unchecked_ref();
        let _ = self.0.add_event_listener_with_callback(event, heard);
        // What listens holds elements, and they hold it: neither would ever go by itself.
        let element = self.clone();
        at_end(Box::new(move || {
            let heard = listener.as_ref().unchecked_ref();
            let _ = element.0.remove_event_listener_with_callback(event, heard);
        }));
        self
    }
}

fn nodes(children: &[El]) -> js_sys::Array {
    children.iter().map(|child| &child.0).collect()
}

/// Something to be done once nothing has happened for a while; each new wish takes the place of
/// the one before. It ends with its scope.
#[derive(Clone, Copy)]
pub struct Waiting(Watched<Wish>);

#[derive(Default)]
struct Wish {
    act: Option<Box<dyn FnOnce()>>,
    /// When, ms.
    due: f64,
    /// The timer that runs.
    timer: Option<i32>,
}

impl Waiting {
    /// Nothing waits yet.
    pub fn new() -> Self {
        let waiting = Self(Watched::new(Wish::default()));
        at_end(Box::new(move || {
            if let Some(Some(timer)) = waiting.0.update_untracked(|wish| wish.timer.take()) {
                window().clear_timeout_with_handle(timer);
            }
        }));
        waiting
    }

    /// Does it after so long, unless another wish comes first. While one timer runs no other is
    /// set: it finds out by itself that it rang too early.
    pub fn after(self, rest: Duration, act: Box<dyn FnOnce()>) {
        let rest = rest.as_secs_f64() * 1000.0;
        let idle = self.0.update_untracked(|wish| {
            wish.act = Some(act);
            wish.due = js_sys::Date::now() + rest;
            wish.timer.is_none()
        });
        if idle == Some(true) {
            self.set_timer(rest);
        }
    }

    fn set_timer(self, rest: f64) {
        let ring = Closure::once_into_js(move || self.ring());
        let timer = window().set_timeout_with_callback_and_timeout_and_arguments_0(
            ring.unchecked_ref(),
            rest.ceil() as i32,
        );
        self.0.update_untracked(|wish| wish.timer = timer.ok());
    }

    fn ring(self) {
        let now = js_sys::Date::now();
        let due = self.0.update_untracked(|wish| {
            wish.timer = None;
            let early = wish.due - now;
            if early > 1.0 { Err(early) } else { Ok(wish.act.take()) }
        });
        match due {
            Some(Err(early)) => self.set_timer(early),
            Some(Ok(Some(act))) => act(),
            Some(Ok(None)) | None => {}
        }
    }
}

/// Something done at most once in so long, however often it is asked for: at once, and once more
/// after the pause if it was asked for meanwhile.
#[derive(Clone, Copy)]
pub struct Pace(Watched<Beat>);

struct Beat {
    rest: Duration,
    act: Rc<dyn Fn()>,
    /// Whether the pause runs.
    pausing: bool,
    /// Whether it was asked for during the pause.
    asked: bool,
    waiting: Waiting,
}

impl Pace {
    /// A pace for what is done.
    pub fn new(rest: Duration, act: Box<dyn Fn()>) -> Self {
        let waiting = Waiting::new();
        Self(Watched::new(Beat { rest, act: act.into(), pausing: false, asked: false, waiting }))
    }

    /// Asks for it.
    pub fn call(self) {
        let now = self.0.update_untracked(|beat| {
            beat.asked = true;
            !std::mem::replace(&mut beat.pausing, true)
        });
        if now == Some(true) {
            self.beat();
        }
    }

    fn beat(self) {
        let act = self.0.update_untracked(|beat| {
            beat.pausing = beat.asked;
            std::mem::take(&mut beat.asked).then(|| (Rc::clone(&beat.act), beat.rest, beat.waiting))
        });
        if let Some(Some((act, rest, waiting))) = act {
            act();
            waiting.after(rest, Box::new(move || self.beat()));
        }
    }
}
