//! The paper a drawing lies on: the picture, the labels over it, and what can be taken hold of.
//!
//! Labels and grips are ordinary text and elements placed over the picture by per cent, so that
//! they keep their size at every width while the picture keeps its scale.

use leptos::prelude::*;

use super::geometry::{Point, Rect};

/// A drawing: its name, its paper, and what is said of it.
#[derive(Clone, Copy)]
pub struct Paper {
    /// Names the drawing in classes, identities and tests.
    pub name: &'static str,
    /// The paper in the drawing's own units.
    pub size: Memo<Rect>,
    /// Its title.
    pub title: Signal<&'static str>,
    /// The drawing in words.
    pub told: Signal<String>,
}

impl Paper {
    /// The paper with its picture, the labels over it and the grips.
    pub fn drawn(
        self,
        picture: impl Fn() -> AnyView + Send + 'static,
        labels: impl Fn() -> AnyView + Send + 'static,
        grips: AnyView,
    ) -> AnyView {
        let Self { name, size, title, told } = self;
        let identity = |part: &str| format!("{name}-{part}");
        let (title_identity, told_identity) = (identity("title"), identity("told"));
        let described = format!("{title_identity} {told_identity}");
        view! {
            <div
                class="paper"
                style:aspect-ratio=move || {
                    let paper = size.get();
                    format!("{:.0} / {:.0}", paper.width(), paper.height())
                }
            >
                <svg
                    class="picture"
                    viewBox=move || size.get().view_box()
                    role="img"
                    aria-labelledby=described
                >
                    <title id=title_identity>{move || title.get()}</title>
                    <desc id=told_identity>{move || told.get()}</desc>
                    {picture}
                </svg>
                <div class="labels" aria-hidden="true">
                    {labels}
                </div>
                {grips}
            </div>
        }
        .into_any()
    }
}

/// The title over a drawing.
pub fn heading(title: Signal<&'static str>) -> AnyView {
    view! { <h3 class="drawing-title">{move || title.get()}</h3> }.into_any()
}

/// A label over the picture; the class says how it sits about its point.
pub fn label(paper: &Rect, at: Point, class: &'static str, text: impl Into<String>) -> AnyView {
    let (x, y) = paper.percent(at);
    let text: String = text.into();
    view! {
        <span class=format!("label {class}") style:left=format!("{x:.2}%") style:top=format!("{y:.2}%")>
            {text}
        </span>
    }
    .into_any()
}

/// Views one after the other.
pub fn together(views: Vec<AnyView>) -> AnyView {
    views.into_iter().collect_view().into_any()
}
