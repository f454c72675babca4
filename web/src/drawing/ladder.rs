//! The ladder, drawn: three bars to one scale, and under each the sum in words.

use inchwise_core::design::Surface;
use inchwise_core::room::{LadderStep, Taker};
use inchwise_core::units::Length;

use super::geometry::{BarRung, Direction, LadderBar, Pen, Point, Rect, numbers, percent};
use super::paper::figure;
use super::pattern::Patterns;
use crate::dom::{El, el, svg};
use crate::measure::{NO_BREAK_SPACE, Notation};
use crate::reactive::keep_up;
use crate::state::State;
use crate::text::Language;

const NAME: &str = "ladder";
const PATTERNS: Patterns = Patterns { name: NAME, unit: 1.6 };

/// What took each millimetre.
pub fn ladder(state: State, language: Language) -> El {
    let patterns =
        svg("svg").class("picture patterns").attr("aria-hidden", "true").child(&PATTERNS.defined());
    let shown = el("div");
    let filled = shown.clone();
    let mut last = None;
    keep_up(Box::new(move || {
        let notation = state.notation();
        let now = (state.look(|outcome| LadderBar::all(&outcome.good)), notation);
        if last.as_ref() != Some(&now) {
            let (bars, _) = &now;
            filled.refill(&bars.each_ref().map(|bar| direction(bar, notation)));
            last = Some(now);
        }
    }));
    figure(NAME, language.drawing().ladder, &[patterns, shown])
}

fn direction(bar: &LadderBar, notation: Notation) -> El {
    let language = notation.language;
    let steel_to_steel: Length = bar.rungs.iter().map(|rung| rung.step.taken).sum();
    let total = language.drawing().steel_to_steel.with(&[&notation.length(steel_to_steel)]);
    let title = el("h4")
        .text(language.direction(bar.direction))
        .text(" ")
        .child(&el("span").class("muted").text(&total));
    el("section").class("direction").with(&[title, drawn(bar, notation), sums(bar, notation)])
}

const HEIGHT: f64 = 84.0;

/// The least width of a digit's box on the narrowest page, in the bar's units: a bar of 300 px and
/// figures of 11 px.
const CHARACTER: f64 = 21.0;

fn drawn(bar: &LadderBar, notation: Notation) -> El {
    let mut picture = svg("svg")
        .class("picture")
        .attr("viewBox", &numbers(&[0.0, 0.0, LadderBar::WIDTH, HEIGHT]))
        .attr("preserveAspectRatio", "none");
    let mut figures = Vec::new();
    for rung in &bar.rungs {
        let rect = Rect::new(rung.from, 0.0, rung.to, HEIGHT);
        picture = if rung.step.taker == Taker::ClearRoom {
            picture.with(&broken(&rect))
        } else {
            picture.child(&painted(rung.step.taker, &rect))
        };
        figures.extend(figure_in(rung, notation));
    }
    el("div").class("ladder-bar").attr("aria-hidden", "true").child(&picture).with(&figures)
}

/// The figure of a rung, where it fits.
fn figure_in(rung: &BarRung, notation: Notation) -> Option<El> {
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
        let figure = el("span").class(if clear { "label strong" } else { "label in-rung" });
        figure.set_style("left", &percent(x));
        figure.set_style("top", "50%");
        figure.text(written)
    })
}

fn path(class: &str, pen: Pen) -> El {
    svg("path").class(class).attr("d", &pen.done())
}

fn painted(taker: Taker, rect: &Rect) -> El {
    let rung = path(class(taker), Pen::new().rect(rect));
    match paint(taker) {
        Some(paint) => rung.attr("fill", &paint),
        None => rung,
    }
}

/// The clear room's rung with its break marks.
fn broken(rect: &Rect) -> [El; 3] {
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
    [path("room", Pen::new().rect(rect)), path("rung-edge", edges), path("break", breaks)]
}

const fn class(taker: Taker) -> &'static str {
    match taker {
        Taker::StandOff => "rung stand-off",
        Taker::Frame => "rung frame",
        Taker::FoamPastFrame | Taker::LeafFoam | Taker::FloorFoam => "rung foam",
        Taker::BroughtIn => "rung brought-in",
        Taker::Lining | Taker::Panel | Taker::FloorDeck => "rung board",
        Taker::Levelling => "rung coat",
        Taker::ClearRoom => "rung",
    }
}

fn paint(taker: Taker) -> Option<String> {
    match taker {
        Taker::FoamPastFrame | Taker::LeafFoam | Taker::FloorFoam => Some(PATTERNS.foam()),
        Taker::Lining | Taker::FloorDeck => Some(PATTERNS.wood()),
        Taker::BroughtIn => Some(PATTERNS.lost()),
        Taker::StandOff | Taker::Frame | Taker::Panel | Taker::Levelling | Taker::ClearRoom => None,
    }
}

/// Each side's sum: 22 gap + 41 frame + 12 lining = 75 mm.
fn sums(bar: &LadderBar, notation: Notation) -> El {
    let language = notation.language;
    let words = language.drawing();
    let surfaces: &[Surface] = match bar.direction {
        Direction::Length => &[Surface::FrontEnd, Surface::DoorEnd],
        Direction::Width => &[Surface::SideWall],
        Direction::Height => &[Surface::Ceiling, Surface::Floor],
    };
    let line =
        |side: &str, sum: &El| el("li").child(&el("span").class("side").text(side)).child(sum);
    let mut list = el("ul").class("sums");
    for &surface in surfaces {
        let side = if surface == Surface::SideWall {
            words.each_side_wall
        } else {
            language.ladder_surface(surface)
        };
        list = list.child(&line(side, &sum(&steps_on(bar, surface), notation)));
    }
    for rung in bar.rungs.iter().filter(|rung| rung.step.taker == Taker::ClearRoom) {
        let clear = el("b").text(&notation.length(rung.step.taken));
        list = list.child(&line(words.clear, &clear));
    }
    list
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

fn sum(steps: &[LadderStep], notation: Notation) -> El {
    let language = notation.language;
    let total: Length = steps.iter().map(|step| step.taken).sum();
    let terms = el("span").class("terms");
    if steps.is_empty() {
        return terms.text(language.drawing().nothing);
    }
    let mut terms = terms;
    let mut plus = "";
    for step in steps {
        let swatch = svg("svg")
            .class("picture swatch")
            .attr("viewBox", "0 0 24 24")
            .attr("aria-hidden", "true")
            .child(&painted(step.taker, &Rect::new(1.0, 1.0, 23.0, 23.0)));
        let term = el("span")
            .class("term")
            .text(plus)
            .child(&swatch)
            .text(&notation.length_bare(step.taken))
            .text(" ")
            .text(language.taker(step.taker));
        terms = terms.child(&term).text(" ");
        plus = "+ ";
    }
    let total = el("b").text(&notation.length(total));
    terms.child(&el("span").class("term").text("= ").child(&total))
}
