//! The paper a drawing lies on: the picture, the labels over it, and what can be taken hold of.
//!
//! Labels and grips are ordinary text and elements placed over the picture by per cent, so that
//! they keep their size at every width while the picture keeps its scale. A drawing follows from
//! one shape; whenever that changes, every path of it is written anew and those that differ reach
//! the page.

use leptos::prelude::*;

use super::geometry::{Point, Rect, SpotMark, numbers, percent};
use super::pattern::Patterns;
use super::spot_mark::SpotMarks;
use crate::measure::Notation;
use crate::state::Planner;

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

    fn shown(self, paper: &Rect) -> AnyView {
        let (x, y) = paper.percent(self.at);
        let class = ["label ", self.class].concat();
        let inside = if self.figure.is_empty() {
            self.words.into_any()
        } else {
            view! { <b>{self.figure}</b> <span>{self.words}</span> }.into_any()
        };
        view! { <span class=class style:left=percent(x) style:top=percent(y)>{inside}</span> }
            .into_any()
    }
}

/// Writes one attribute of a picture from its shape.
type Write<S> = fn(&S) -> String;

/// One part of a picture.
enum Layer<S> {
    /// A path: its class, its paint, its data.
    Path(String, Option<String>, Write<S>),
    /// Paths that are moved together: classes and data, and where they stand.
    Group(&'static str, &'static [(&'static str, &'static str)], Write<S>),
}

/// The picture of a shape: which path is written how, in the order they cover one another.
pub struct Picture<S> {
    layers: Vec<Layer<S>>,
    patterns: Option<Patterns>,
}

impl<S> Picture<S> {
    /// An empty picture.
    pub const fn new() -> Self {
        Self { layers: Vec::new(), patterns: None }
    }

    /// A picture that may be painted with materials.
    pub const fn with(patterns: Patterns) -> Self {
        Self { layers: Vec::new(), patterns: Some(patterns) }
    }

    /// A path that keeps up.
    pub fn path(&mut self, class: &str, write: Write<S>) -> &mut Self {
        self.layers.push(Layer::Path(class.to_owned(), None, write));
        self
    }

    /// A path painted with a pattern.
    pub fn painted(&mut self, class: &str, paint: &str, write: Write<S>) -> &mut Self {
        self.layers.push(Layer::Path(class.to_owned(), Some(paint.to_owned()), write));
        self
    }

    /// A group of paths that stay as they are and are moved.
    pub fn group(
        &mut self,
        class: &'static str,
        paths: &'static [(&'static str, &'static str)],
        transform: Write<S>,
    ) -> &mut Self {
        self.layers.push(Layer::Group(class, paths, transform));
        self
    }
}

/// A drawing of a shape.
pub struct Drawing<S: Send + Sync + 'static> {
    /// Names it in classes, identities and tests.
    pub name: &'static str,
    /// Its title.
    pub title: &'static str,
    /// The shape.
    pub shape: Memo<S>,
    /// The shape's paper.
    pub paper: fn(&S) -> Rect,
    /// What is said of it to those who do not see it.
    pub told: fn(&S, Notation) -> String,
    /// The words over it.
    pub labels: fn(&S, Notation) -> Vec<Label>,
    /// Its picture.
    pub picture: Picture<S>,
    /// What lies under the picture.
    pub under: Option<AnyView>,
    /// Cold places on it.
    pub marks: Option<fn(&S, &[crate::state::Spot]) -> Vec<SpotMark>>,
    /// What can be taken hold of.
    pub grips: Vec<AnyView>,
}

impl<S: PartialEq + Send + Sync + 'static> Drawing<S> {
    /// A drawing with nothing to take hold of.
    pub fn plain(
        name: &'static str,
        title: &'static str,
        shape: Memo<S>,
        picture: Picture<S>,
    ) -> Self {
        Self {
            name,
            title,
            shape,
            paper: |_| Rect::new(0.0, 0.0, 1.0, 1.0),
            told: |_, _| String::new(),
            labels: |_, _| Vec::new(),
            picture,
            under: None,
            marks: None,
            grips: Vec::new(),
        }
    }

    /// The paper with everything on it, kept up.
    pub fn drawn(self, planner: Planner) -> AnyView {
        let Self { name, title, shape, paper, told, labels, picture, under, marks, grips } = self;
        let [titled, described] = ["-title", "-told"].map(|part| [name, part].concat());
        let (title_id, told_id) = (titled.clone(), described.clone());
        let size = Memo::new(move |_| shape.with(paper));
        let view_box = move || {
            let size = size.get();
            numbers(&[size.left, size.top, size.width(), size.height()])
        };
        let proportion = move || {
            let size = size.get();
            numbers(&[size.width() / size.height()])
        };
        let written = move || {
            let notation = planner.notation();
            shape.with(|shape| labels(shape, notation))
        };
        let labels = move || {
            let size = size.get();
            written().into_iter().map(|label| label.shown(&size)).collect_view()
        };
        let layers = picture.layers.into_iter().map(|layer| drawn_layer(layer, shape));
        let layers = layers.collect_view();
        let patterns = picture.patterns.map(|patterns| patterns.defined());
        let marked = marks.map(|marks| {
            let marks = Memo::new(move |_| {
                planner.spots.with(|spots| shape.with(|shape| marks(shape, spots)))
            });
            (SpotMarks { marks, size }.leads(), SpotMarks { marks, size }.buttons(planner))
        });
        let (leads, buttons) = marked.unzip();
        view! {
            <div class="paper" style:aspect-ratio=proportion style:--proportion=proportion>
                {under}
                <svg
                    class="picture"
                    viewBox=view_box
                    role="img"
                    aria-labelledby=titled
                    aria-describedby=described
                >
                    {leptos::svg::title().id(title_id).child(title)}
                    <desc id=told_id>
                        {move || {
                            let notation = planner.notation();
                            shape.with(|shape| told(shape, notation))
                        }}
                    </desc>
                    {patterns}
                    {layers}
                    {leads}
                </svg>
                <div class="labels" aria-hidden="true">{labels}</div>
                {buttons}
                {grips}
            </div>
        }
        .into_any()
    }
}

fn drawn_layer<S: Send + Sync + 'static>(layer: Layer<S>, shape: Memo<S>) -> AnyView {
    match layer {
        Layer::Path(class, paint, write) => {
            let rule = paint.is_some().then_some("evenodd");
            let data = move || shape.with(write);
            view! { <path class=class fill=paint fill-rule=rule d=data></path> }.into_any()
        }
        Layer::Group(class, paths, transform) => {
            let paths = paths
                .iter()
                .map(|&(class, data)| view! { <path class=class d=data></path> })
                .collect_view();
            let moved = move || shape.with(transform);
            view! { <g class=class transform=moved>{paths}</g> }.into_any()
        }
    }
}

/// A drawing under its title.
pub fn figure(name: &'static str, title: &'static str, parts: Vec<AnyView>) -> AnyView {
    let class = ["drawing-figure ", name, "-figure"].concat();
    view! {
        <figure class=class data-testid=name>
            <h3 class="drawing-title">{title}</h3>
            {parts}
        </figure>
    }
    .into_any()
}
