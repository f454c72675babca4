//! The paper a drawing lies on: the picture, the labels over it, and what can be taken hold of.
//!
//! Labels and grips are ordinary text and elements placed over the picture by per cent, so that
//! they keep their size at every width while the picture keeps its scale.

use super::geometry::{Point, Rect};
use crate::dom::{El, el, svg};
use crate::kept::Kept;
use crate::measure::plain;

/// A drawing: its name, its paper and its title.
#[derive(Clone, Copy)]
pub struct Paper {
    /// Names the drawing in classes, identities and tests.
    pub name: &'static str,
    /// The paper in the drawing's own units.
    pub size: Kept<Rect>,
    /// Its title.
    pub title: &'static str,
}

impl Paper {
    /// The paper with its picture, what is said of it, the labels over it and the grips.
    pub fn drawn(
        self,
        told: impl Fn() -> String + 'static,
        picture: &[El],
        labels: impl Fn() -> Vec<El> + 'static,
        grips: &[El],
    ) -> El {
        let Self { name, size, title } = self;
        let [titled, described] = ["title", "told"].map(|part| format!("{name}-{part}"));
        let picture = svg("svg")
            .class("picture")
            .attr("role", "img")
            .attr("aria-labelledby", &titled)
            .attr("aria-describedby", &described)
            .attr_with("viewBox", move || size.get().view_box())
            .child(&svg("title").attr("id", &titled).text(title))
            .child(&svg("desc").attr("id", &described).text_with(told))
            .with(picture);
        let labels = el("div").class("labels").attr("aria-hidden", "true").children_with(labels);
        let shape = move || {
            let paper = size.get();
            plain(paper.width(), 0, " / ") + &plain(paper.height(), 0, "")
        };
        el("div")
            .class("paper")
            .style_with("aspect-ratio", shape)
            .child(&picture)
            .child(&labels)
            .with(grips)
    }

    /// The drawing under its title.
    pub fn figure(self, class: &str, parts: &[El]) -> El {
        figure(self.name, class, self.title, parts)
    }
}

/// A drawing under its title.
pub fn figure(name: &str, class: &str, title: &str, parts: &[El]) -> El {
    el("figure")
        .class(&format!("drawing-figure {class}"))
        .test_id(name)
        .child(&el("h3").class("drawing-title").text(title))
        .with(parts)
}

/// A label over the picture; the class says how it sits about its point.
pub fn label(paper: &Rect, at: Point, class: &str, text: &str) -> El {
    placed(paper, at, class).text(text)
}

/// An empty label.
pub fn placed(paper: &Rect, at: Point, class: &str) -> El {
    let (x, y) = paper.percent(at);
    el("span")
        .class(&format!("label {class}"))
        .style("left", &plain(x, 2, "%"))
        .style("top", &plain(y, 2, "%"))
}

/// A path that keeps up.
pub fn path(class: &str, data: impl Fn() -> String + 'static) -> El {
    svg("path").class(class).attr_with("d", data)
}

/// A path that stays.
pub fn still_path(class: &str, data: &str) -> El {
    svg("path").class(class).attr("d", data)
}
