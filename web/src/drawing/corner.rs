//! The temperature picture of the cold place that is looked at, drawn.

use std::sync::Arc;

use inchwise_core::detail::View;
use inchwise_core::envelope::ThermalBridge;
use leptos::html::Canvas;
use leptos::prelude::*;

use super::corner_said::{labels, said, told};
use super::corner_shape::{Shown, cut, looked_at, seen_of, shown, views_to_come};
use super::geometry::{Pen, Rect, Run, TemperaturePicture};
use super::handle::{Handle, handles, walls_of_openings};
use super::isometric::isometric;
use super::paper::{Drawing, Picture};
use super::pattern::{Patterns, unit_of};
use super::tint;
use crate::state::Planner;

const NAME: &str = "temperature";

/// The picture of the place that is looked at, made anew when that is another.
pub fn corner(planner: Planner) -> AnyView {
    let parts = move || {
        planner.language.track();
        planner.looked_at.get().map(|place| parts(planner, place))
    };
    view! { <div class="temperature-figure" data-testid=NAME>{parts}</div> }.into_any()
}

fn parts(planner: Planner, place: ThermalBridge) -> AnyView {
    let [door, window] = untrack(|| planner.look(|it| walls_of_openings(it.checked.design())));
    let held: Arc<[Handle]> = handles(place, door, window).into();
    let shows = looked_at(planner, place);
    let grips = held.iter().map(|handle| handle.drawn(planner, shows)).collect();
    let shape = shown(planner, place, held);
    let canvas = NodeRef::<Canvas>::new();
    Effect::new(move |_| {
        let (Some(sheet), Some(seen)) = (canvas.get(), seen_of(planner, place)) else { return };
        if let Some(picture) = cut(&seen, planner.view.cut.get()) {
            tint::lay(&sheet, picture);
        }
    });
    let name = untrack(|| planner.language.get().place(place));
    let drawing = Drawing {
        paper: Shown::paper,
        told,
        labels,
        under: Some(view! { <canvas node_ref=canvas aria-hidden="true"></canvas> }.into_any()),
        grips,
        ..Drawing::plain(NAME, name, shape, picture())
    };
    let caption = move || {
        let notation = planner.notation();
        shape.with(|shown| said(shown, notation))
    };
    let refining = move || {
        let is_fresh = shape.with(|shown| shown.is_fresh);
        if is_fresh { "" } else { planner.language.get().bench().working }
    };
    view! {
        <p class="spot-name">
            <b>{name}</b> {" "}
            <span class="hint" role="status">{refining}</span>
        </p>
        {cuts(planner, place)}
        {drawing.drawn(planner)}
        <p class="remark">{caption}</p>
    }
    .into_any()
}

/// Which of a body's cuts: each with a small drawing of where it is.
fn cuts(planner: Planner, place: ThermalBridge) -> AnyView {
    let checked = untrack(|| planner.look(|evaluation| evaluation.checked.clone()));
    let views = views_to_come(&checked, place);
    if views.len() < 2 {
        return ().into_any();
    }
    let option = move |(number, view): (usize, &View)| {
        let axis = view.axis;
        let seen = move || {
            let seen = seen_of(planner, place)?;
            let views: Vec<View> = seen.pictures.iter().map(|picture| picture.view).collect();
            Some((seen.detail, views))
        };
        view! {
            <label>
                <input
                    type="radio"
                    name="cut"
                    data-testid=["cut-", &number.to_string()].concat()
                    prop:checked=move || planner.view.cut.get() == number
                    on:change=move |_| planner.view.cut.set(number)
                />
                {move || isometric(number, seen)}
                <span>{planner.language.get_untracked().cut(place, axis)}</span>
            </label>
        }
    };
    let options = views.iter().enumerate().map(option).collect_view();
    view! {
        <fieldset class="cuts">
            <legend class="spoken">{planner.language.get_untracked().spots().cuts}</legend>
            {options}
        </fieldset>
    }
    .into_any()
}

fn rects(of: &Shown, which: fn(&TemperaturePicture) -> &Vec<Rect>) -> String {
    of.shapes.as_deref().map_or_else(String::new, |shapes| Pen::new().rects(which(shapes)).done())
}

fn runs(of: &Shown, which: fn(&TemperaturePicture) -> &Vec<Run>) -> String {
    let draw = |shapes: &TemperaturePicture| {
        which(shapes).iter().fold(Pen::new(), |pen, run| pen.line(run)).done()
    };
    of.shapes.as_deref().map_or_else(String::new, draw)
}

fn isotherms(of: &Shown, main: bool) -> String {
    let draw = |shapes: &TemperaturePicture| {
        let lines = shapes.isotherms.iter().filter(|isotherm| isotherm.is_main == main);
        let lines = lines.flat_map(|isotherm| &isotherm.lines);
        lines.fold(Pen::new(), |pen, line| pen.line(line)).done()
    };
    of.shapes.as_deref().map_or_else(String::new, draw)
}

fn dew_line(of: &Shown) -> String {
    let draw = |shapes: &TemperaturePicture| {
        shapes.dew.iter().fold(Pen::new(), |pen, line| pen.line(line)).done()
    };
    of.shapes.as_deref().map_or_else(String::new, draw)
}

/// A ring with a cross through it on the coldest place.
fn mark(of: &Shown) -> String {
    let draw = |shapes: &TemperaturePicture| {
        let at = shapes.coldest?;
        let unit = unit_of(&shapes.paper);
        let (ring, arm) = (9.0 * unit, 15.0 * unit);
        let pen = Pen::new()
            .command('M', &[at.x - ring, at.y])
            .command('a', &[ring, ring, 0.0, 0.0, 1.0, 2.0 * ring, 0.0])
            .command('a', &[ring, ring, 0.0, 0.0, 1.0, -2.0 * ring, 0.0])
            .between(at.x - arm, at.y, at.x + arm, at.y)
            .between(at.x, at.y - arm, at.x, at.y + arm);
        Some(pen.done())
    };
    of.shapes.as_deref().and_then(draw).unwrap_or_default()
}

fn picture() -> Picture<Shown> {
    let patterns = Patterns { name: NAME, unit: 0.55 };
    let mut picture = Picture::with(patterns);
    picture
        .path("room", |shown: &Shown| rects(shown, |shapes| &shapes.room))
        .painted("stipple", &patterns.foam(), |shown| rects(shown, |shapes| &shapes.foam))
        .painted("hatch", &patterns.wood(), |shown| rects(shown, |shapes| &shapes.board))
        .painted("pad", &patterns.lost(), |shown| rects(shown, |shapes| &shapes.plastic))
        .path("isotherm fine-isotherm", |shown| isotherms(shown, false))
        .path("isotherm main-isotherm", |shown| isotherms(shown, true))
        .path("dew-line", dew_line)
        .path("steel", |shown| rects(shown, |shapes| &shapes.steel))
        .path("material-edge", |shown| runs(shown, |shapes| &shapes.edges))
        .path("wet-edge", |shown| runs(shown, |shapes| &shapes.wet))
        .path("mark-halo", mark)
        .path("coldest-mark", mark);
    picture
}
