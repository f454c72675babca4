//! What every plain plot draws: its grid, its figures and its legend.

use inchwise_core::units::Temperature;
use leptos::prelude::*;

use super::geometry::{Pen, Plane, Point, Rect};
use super::paper::{Drawing, Label, Picture};
use crate::measure::{Notation, UnitSystem, decimal};
use crate::state::Planner;

/// A chart: everything it shows at once, and how it is drawn and told.
pub trait Plotted: Clone + PartialEq + Send + Sync + 'static {
    /// Names it in classes, identities and tests.
    const NAME: &'static str;

    /// The chart as it stands; whoever asks is told when it changes.
    fn of(planner: Planner) -> Self;

    /// Its paper.
    fn paper(&self) -> Rect;

    /// What is said of it to those who do not see it.
    fn told(&self, notation: Notation) -> String;

    /// The words over it.
    fn labels(&self, notation: Notation) -> Vec<Label>;

    /// Its lines and areas.
    fn picture() -> Picture<Self>;

    /// The chart under its title, keeping up.
    fn drawn(planner: Planner, title: &'static str) -> AnyView {
        let shape = Memo::new(move |_| Self::of(planner));
        Drawing {
            paper: Self::paper,
            told: Self::told,
            labels: Self::labels,
            ..Drawing::plain(Self::NAME, title, shape, Self::picture())
        }
        .drawn(planner)
    }
}

/// A temperature in the degrees of an axis.
pub const fn degrees(temperature: Temperature, units: UnitSystem) -> f64 {
    match units {
        UnitSystem::Metric => temperature.as_celsius(),
        UnitSystem::Imperial => temperature.as_fahrenheit(),
    }
}

/// Lines at every tick of both axes.
pub fn grid(plane: &Plane) -> String {
    let plot = &plane.plot;
    let mut pen = Pen::new();
    for tick in plane.up.ticks() {
        let y = plane.at(plane.across.low, tick).y;
        pen = pen.between(plot.left, y, plot.right, y);
    }
    for tick in plane.across.ticks() {
        let x = plane.at(tick, plane.up.low).x;
        pen = pen.between(x, plot.top, x, plot.bottom);
    }
    pen.done()
}

/// Figures along both axes, and what they are.
pub fn axis_labels(plane: &Plane, across: String, up: String, notation: Notation) -> Vec<Label> {
    let plot = &plane.plot;
    let places = |step: f64| if step < 1.0 { 2 } else { 0 };
    let written = |value: f64, step: f64| decimal(value, places(step), notation.language);
    let mut labels = Vec::new();
    for tick in plane.across.ticks() {
        let x = plane.at(tick, plane.up.low).x;
        let figure = written(tick, plane.across.step);
        labels.push(Label::new(x, plot.bottom + 28.0, "tick", figure));
    }
    for tick in plane.up.ticks() {
        let y = plane.at(plane.across.low, tick).y;
        labels.push(Label::new(plot.left - 12.0, y, "before tick", written(tick, plane.up.step)));
    }
    labels.push(Label::new(plot.right, plot.bottom + 74.0, "before small", across));
    labels.push(Label::new(plane.paper.left, plot.top - 36.0, "after small", up));
    labels
}

/// A ring round a place.
pub fn ring(at: Point, radius: f64) -> String {
    let half =
        |pen: Pen, across: f64| pen.command('a', &[radius, radius, 0.0, 0.0, 1.0, across, 0.0]);
    let pen = Pen::new().command('M', &[at.x - radius, at.y]);
    half(half(pen, 2.0 * radius), -2.0 * radius).done()
}

/// Samples of lines or marks, each with its name: told apart by their form, not by colour alone.
pub fn legend(samples: &[(&'static str, &'static str, &'static str)]) -> AnyView {
    let items = samples
        .iter()
        .map(|&(class, path, name)| {
            view! {
                <li>
                    <svg class="picture sample" viewBox="0 0 44 16" aria-hidden="true">
                        <path class=class d=path></path>
                    </svg>
                    <span>{name}</span>
                </li>
            }
        })
        .collect_view();
    view! { <ul class="legend">{items}</ul> }.into_any()
}

/// A sample of a line.
pub const LINE: &str = "M0 8H44";
