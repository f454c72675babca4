//! The ladder, drawn: three bars to one scale, and under each the sum in words.

use inchwise_core::design::Surface;
use inchwise_core::room::{LadderStep, Taker};
use inchwise_core::units::Length;
use leptos::prelude::*;

use super::geometry::{BarRung, Direction, LadderBar, Pen, Point, Rect, numbers, percent};
use super::paper::figure;
use super::pattern::Patterns;
use crate::measure::{NO_BREAK_SPACE, Notation};
use crate::state::Planner;

const NAME: &str = "ladder";
const PATTERNS: Patterns = Patterns { name: NAME, unit: 1.6 };

/// What took each millimetre.
pub fn ladder(planner: Planner) -> AnyView {
    let bars = Memo::new(move |_| planner.look(LadderBar::all));
    let shown = move || {
        let notation = planner.notation();
        bars.with(|bars| bars.iter().map(|bar| direction(bar, notation)).collect_view())
    };
    let patterns = view! {
        <svg class="picture patterns" aria-hidden="true">{PATTERNS.defined()}</svg>
    };
    let parts = vec![patterns.into_any(), view! { <div>{shown}</div> }.into_any()];
    figure(NAME, planner.language.get_untracked().drawing().ladder, parts)
}

fn direction(bar: &LadderBar, notation: Notation) -> AnyView {
    let language = notation.language;
    let steel_to_steel: Length = bar.rungs.iter().map(|rung| rung.step.taken).sum();
    let total = language.drawing().steel_to_steel.with(&[&notation.length(steel_to_steel)]);
    view! {
        <section class="direction">
            <h4>{language.direction(bar.direction)} {" "} <span class="muted">{total}</span></h4>
            {drawn(bar, notation)}
            {sums(bar, notation)}
        </section>
    }
    .into_any()
}

const HEIGHT: f64 = 84.0;

/// The least width of a digit's box on the narrowest page, in the bar's units: a bar of 300 px and
/// figures of 11 px.
const CHARACTER: f64 = 21.0;

fn drawn(bar: &LadderBar, notation: Notation) -> AnyView {
    let rung = |rung: &BarRung| {
        let rect = Rect::new(rung.from, 0.0, rung.to, HEIGHT);
        if rung.step.taker == Taker::ClearRoom {
            broken(&rect).into_any()
        } else {
            painted(rung.step.taker, &rect)
        }
    };
    let rungs = bar.rungs.iter().map(rung).collect_view();
    let figures = bar.rungs.iter().filter_map(|rung| figure_in(rung, notation)).collect_view();
    view! {
        <div class="ladder-bar" aria-hidden="true">
            <svg
                class="picture"
                viewBox=numbers(&[0.0, 0.0, LadderBar::WIDTH, HEIGHT])
                preserveAspectRatio="none"
            >
                {rungs}
            </svg>
            {figures}
        </div>
    }
    .into_any()
}

/// The figure of a rung, where it fits.
fn figure_in(rung: &BarRung, notation: Notation) -> Option<AnyView> {
    let clear = rung.step.taker == Taker::ClearRoom;
    let whole = notation.length(rung.step.taken);
    // On a narrow rung the number alone: its unit stands in the sum below.
    let written = match whole.split_once(NO_BREAK_SPACE) {
        Some((number, _)) if !clear => number,
        _ => &whole,
    };
    let fits = written.chars().count() as f64 * CHARACTER <= rung.to - rung.from;
    fits.then(|| {
        let x = (rung.from + rung.to) / 2.0 / LadderBar::WIDTH * 100.0;
        let class = if clear { "label strong" } else { "label in-rung" };
        let written = written.to_owned();
        view! { <span class=class style:left=percent(x) style:top="50%">{written}</span> }
            .into_any()
    })
}

fn path(class: &'static str, paint: Option<String>, pen: Pen) -> AnyView {
    view! { <path class=class fill=paint d=pen.done()></path> }.into_any()
}

fn painted(taker: Taker, rect: &Rect) -> AnyView {
    path(class(taker), paint(taker), Pen::new().rect(rect))
}

/// The clear room's rung with its break marks.
fn broken(rect: &Rect) -> Vec<AnyView> {
    const ASIDE: f64 = 30.0;
    const GAP: f64 = 10.0;
    let (top, bottom) = (rect.top, rect.bottom);
    let zigzag = |x: f64| {
        [
            Point::new(x + 6.0, top - 6.0),
            Point::new(x + 2.0, bottom * 0.38),
            Point::new(x - 9.0, bottom * 0.44),
            Point::new(x + 9.0, bottom * 0.56),
            Point::new(x - 2.0, bottom * 0.62),
            Point::new(x - 6.0, bottom + 6.0),
        ]
    };
    let (left, right) = (rect.left + ASIDE, rect.right - ASIDE);
    let edges = [top, bottom].iter().fold(Pen::new(), |pen, &y| {
        pen.between(rect.left, y, left, y).between(right, y, rect.right, y)
    });
    let breaks = [left, left + GAP, right - GAP, right]
        .iter()
        .fold(Pen::new(), |pen, &x| pen.line(&zigzag(x)));
    vec![
        path("room", None, Pen::new().rect(rect)),
        path("rung-edge", None, edges),
        path("break", None, breaks),
    ]
}

const fn class(taker: Taker) -> &'static str {
    match taker {
        Taker::StandOff => "rung stand-off",
        Taker::Frame => "rung frame",
        Taker::FoamPastFrame | Taker::FloorFoam => "rung foam",
        Taker::BroughtIn => "rung brought-in",
        Taker::Lining | Taker::FloorDeck => "rung board",
        Taker::Levelling => "rung coat",
        Taker::ClearRoom => "rung",
    }
}

fn paint(taker: Taker) -> Option<String> {
    match taker {
        Taker::FoamPastFrame | Taker::FloorFoam => Some(PATTERNS.foam()),
        Taker::Lining | Taker::FloorDeck => Some(PATTERNS.wood()),
        Taker::BroughtIn => Some(PATTERNS.lost()),
        Taker::StandOff | Taker::Frame | Taker::Levelling | Taker::ClearRoom => None,
    }
}

/// Each side's sum: 22 gap + 41 frame + 12 lining = 75 mm.
fn sums(bar: &LadderBar, notation: Notation) -> AnyView {
    let language = notation.language;
    let words = language.drawing();
    let surfaces: &[Surface] = match bar.direction {
        Direction::Length => &[Surface::FrontEnd, Surface::DoorEnd],
        Direction::Width => &[Surface::SideWall],
        Direction::Height => &[Surface::Ceiling, Surface::Floor],
    };
    let sides = surfaces.iter().map(|&surface| {
        let side = if surface == Surface::SideWall {
            words.each_side_wall
        } else {
            language.ladder_surface(surface)
        };
        let sum = sum(&steps_on(bar, surface), notation);
        view! { <li><span class="side">{side}</span> {sum}</li> }
    });
    let sides = sides.collect_view();
    let clear = bar.rungs.iter().filter(|rung| rung.step.taker == Taker::ClearRoom).map(|rung| {
        let clear = notation.length(rung.step.taken);
        view! { <li><span class="side">{words.clear}</span> <b>{clear}</b></li> }
    });
    let clear = clear.collect_view();
    view! { <ul class="sums">{sides} {clear}</ul> }.into_any()
}

/// What one side takes, from the steel to the room.
fn steps_on(bar: &LadderBar, surface: Surface) -> Vec<LadderStep> {
    let mut steps: Vec<LadderStep> = bar
        .rungs
        .iter()
        .map(|rung| rung.step)
        .filter(|step| step.surface == Some(surface))
        .collect();
    match surface {
        // Both side walls are on the bar.
        Surface::SideWall => steps.truncate(steps.len() / 2),
        Surface::DoorEnd | Surface::Floor => steps.reverse(),
        Surface::FrontEnd | Surface::Ceiling => {}
    }
    steps
}

fn sum(steps: &[LadderStep], notation: Notation) -> AnyView {
    let language = notation.language;
    let total: Length = steps.iter().map(|step| step.taken).sum();
    if steps.is_empty() {
        return view! { <span class="terms">{language.drawing().nothing}</span> }.into_any();
    }
    let terms = steps.iter().enumerate().map(|(index, step)| {
        let plus = if index == 0 { "" } else { "+ " };
        let taken = notation.length_bare(step.taken);
        view! {
            <span class="term">
                {plus}
                <svg class="picture swatch" viewBox="0 0 24 24" aria-hidden="true">
                    {painted(step.taker, &Rect::new(1.0, 1.0, 23.0, 23.0))}
                </svg>
                {taken} {" "} {language.taker(step.taker)} {" "}
            </span>
        }
    });
    let terms = terms.collect_view();
    let total = notation.length(total);
    view! {
        <span class="terms">{terms} <span class="term">{"= "} <b>{total}</b></span></span>
    }
    .into_any()
}
