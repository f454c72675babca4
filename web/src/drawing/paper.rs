//! The paper a drawing lies on: the picture, the labels over it, and what can be taken hold of.
//!
//! Labels and grips are ordinary text and elements placed over the picture by per cent, so that
//! they keep their size at every width while the picture keeps its scale. A drawing follows from
//! one shape; whenever that changes, every path of it is written anew and those that differ reach
//! the page.

use super::geometry::{Point, Rect, numbers, percent};
use super::slot::Slot;
use crate::dom::{El, el, svg};
use crate::measure::Notation;
use crate::reactive::keep_up;
use crate::state::State;

/// Words over the picture.
#[derive(Clone, Debug, PartialEq)]
pub struct Label {
    /// Where.
    pub at: Point,
    /// How it sits about its point, and what it is.
    pub class: &'static str,
    /// A figure in bold in front.
    pub figure: String,
    /// The words.
    pub words: String,
}

impl Label {
    /// Plain words.
    pub fn new(x: f64, y: f64, class: &'static str, words: impl Into<String>) -> Self {
        Self { at: Point::new(x, y), class, figure: String::new(), words: words.into() }
    }

    fn is_like(&self, other: &Self) -> bool {
        self.class == other.class && self.figure.is_empty() == other.figure.is_empty()
    }
}

/// A label on the page.
struct LabelSlot {
    like: Label,
    element: El,
    left: Slot,
    top: Slot,
    figure: Option<Slot>,
    words: Slot,
}

impl LabelSlot {
    fn new(label: &Label) -> Self {
        let element = el("span").class(&["label ", label.class].concat());
        let (figure, words) = if label.figure.is_empty() {
            (None, element.clone())
        } else {
            let (figure, words) = (el("b"), el("span"));
            element.clone().with(&[figure.clone(), words.clone()]);
            (Some(Slot::text(figure)), words)
        };
        Self {
            like: label.clone(),
            left: Slot::style(element.clone(), "left"),
            top: Slot::style(element.clone(), "top"),
            figure,
            words: Slot::text(words),
            element,
        }
    }

    fn show(&mut self, paper: &Rect, label: Label) {
        let (x, y) = paper.percent(label.at);
        self.left.write(percent(x));
        self.top.write(percent(y));
        if let Some(figure) = &mut self.figure {
            figure.write(label.figure);
        }
        self.words.write(label.words);
    }
}

/// Writes one attribute of a picture from its shape.
type Write<S> = fn(&S) -> String;

/// The picture of a shape: which path is written how.
pub struct Picture<S> {
    /// The elements in the order they cover one another.
    pub elements: Vec<El>,
    slots: Vec<(Slot, Write<S>)>,
}

impl<S> Picture<S> {
    /// An empty picture.
    pub const fn new() -> Self {
        Self { elements: Vec::new(), slots: Vec::new() }
    }

    /// A path that keeps up.
    pub fn path(&mut self, class: &str, write: Write<S>) -> &mut Self {
        self.attribute(&svg("path").class(class), "d", write)
    }

    /// A path painted with a pattern.
    pub fn painted(&mut self, class: &str, paint: &str, write: Write<S>) -> &mut Self {
        let path = svg("path").class(class).attr("fill", paint).attr("fill-rule", "evenodd");
        self.attribute(&path, "d", write)
    }

    /// An element with one attribute that keeps up.
    pub fn attribute(&mut self, element: &El, name: &'static str, write: Write<S>) -> &mut Self {
        self.slots.push((Slot::attribute(element.clone(), name), write));
        self.elements.push(element.clone());
        self
    }

    fn show(&mut self, shape: &S) {
        for (slot, write) in &mut self.slots {
            slot.write(write(shape));
        }
    }
}

/// A drawing of a shape.
pub struct Drawing<S: 'static> {
    /// Names it in classes, identities and tests.
    pub name: &'static str,
    /// Its title.
    pub title: &'static str,
    /// The shape; whoever asks is told when it changes.
    pub shape: Box<dyn Fn() -> S>,
    /// The shape's paper.
    pub paper: fn(&S) -> Rect,
    /// What is said of it to those who do not see it.
    pub told: fn(&S, Notation) -> String,
    /// The words over it.
    pub labels: fn(&S, Notation) -> Vec<Label>,
    /// Its picture.
    pub picture: Picture<S>,
    /// What can be taken hold of.
    pub grips: Vec<El>,
}

/// What every drawing has, whatever its shape.
struct Sheet {
    paper: El,
    labels: El,
    size: Slot,
    proportion: Slot,
    told: Slot,
    label_slots: Vec<LabelSlot>,
}

impl Sheet {
    fn new(name: &str, title: &str, elements: &[El], grips: &[El]) -> Self {
        let [titled, described] = ["-title", "-told"].map(|part| [name, part].concat());
        let told = svg("desc").attr("id", &described);
        let picture = svg("svg")
            .class("picture")
            .attr("role", "img")
            .attr("aria-labelledby", &titled)
            .attr("aria-describedby", &described)
            .child(&svg("title").attr("id", &titled).text(title))
            .child(&told)
            .with(elements);
        let labels = el("div").class("labels").attr("aria-hidden", "true");
        let paper = el("div").class("paper").child(&picture).child(&labels).with(grips);
        Self {
            labels,
            size: Slot::attribute(picture, "viewBox"),
            proportion: Slot::style(paper.clone(), "aspect-ratio"),
            told: Slot::text(told),
            label_slots: Vec::new(),
            paper,
        }
    }

    fn show(&mut self, size: Rect, told: String, labels: Vec<Label>) {
        self.size.write(numbers(&[size.left, size.top, size.width(), size.height()]));
        self.proportion.write(numbers(&[size.width() / size.height()]));
        self.told.write(told);
        let fits = self.label_slots.len() == labels.len()
            && self.label_slots.iter().zip(&labels).all(|(slot, label)| slot.like.is_like(label));
        if !fits {
            self.label_slots = labels.iter().map(LabelSlot::new).collect();
            let drawn: Vec<El> = self.label_slots.iter().map(|slot| slot.element.clone()).collect();
            self.labels.refill(&drawn);
        }
        for (slot, label) in self.label_slots.iter_mut().zip(labels) {
            slot.show(&size, label);
        }
    }
}

impl<S> Drawing<S> {
    /// The paper with everything on it, kept up.
    pub fn drawn(self, state: State) -> El {
        let Self { name, title, shape, paper, told, labels, mut picture, grips } = self;
        let mut sheet = Sheet::new(name, title, &picture.elements, &grips);
        let whole = sheet.paper.clone();
        keep_up(Box::new(move || {
            let (shape, notation) = (shape(), state.notation());
            picture.show(&shape);
            let told = told(&shape, notation);
            sheet.show(paper(&shape), told, labels(&shape, notation));
        }));
        whole
    }
}

/// A drawing under its title.
pub fn figure(name: &str, title: &str, parts: &[El]) -> El {
    let class = ["drawing-figure ", name, "-figure"].concat();
    el("figure")
        .class(&class)
        .test_id(name)
        .child(&el("h3").class("drawing-title").text(title))
        .with(parts)
}
