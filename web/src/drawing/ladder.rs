//! The ladder, drawn: three bars to one scale, and under each the sum in words.

use inchwise_core::design::Surface;
use inchwise_core::room::{Step, Taker};
use inchwise_core::units::Length;

use super::geometry::{BarRung, Direction, LadderBar, Point, Rect, all_open};
use super::paper::{figure, still_path};
use super::pattern::Patterns;
use crate::dom::{El, el, svg};
use crate::kept::Kept;
use crate::measure::{NO_BREAK_SPACE, Notation, plain};
use crate::state::State;
use crate::text::Language;

const NAME: &str = "ladder";
const PATTERNS: Patterns = Patterns { name: NAME };

/// What took each millimetre.
pub fn ladder(state: State, language: Language) -> El {
    let bars = Kept::new(move || state.look(|outcome| LadderBar::all(&outcome.good)));
    let patterns = svg("svg")
        .class("picture patterns")
        .attr("aria-hidden", "true")
        .child(&PATTERNS.defined(|| 1.6));
    let shown = el("div").children_with(move || {
        let notation = state.notation();
        bars.with(|bars| bars.iter().map(|bar| direction(bar, notation)).collect())
    });
    figure(NAME, "ladder-figure", language.drawing().ladder, &[patterns, shown])
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
    let rungs: Vec<El> = bar
        .rungs
        .iter()
        .flat_map(|rung| {
            let rect = Rect::new(rung.from, 0.0, rung.to, HEIGHT);
            if rung.step.taker == Taker::ClearRoom {
                broken(&rect)
            } else {
                vec![painted(rung.step.taker, &rect)]
            }
        })
        .collect();
    let figures: Vec<El> = bar.rungs.iter().filter_map(|rung| figure_in(rung, notation)).collect();
    let picture = svg("svg")
        .class("picture")
        .attr(
            "viewBox",
            &format!("0 0 {} {}", plain(LadderBar::WIDTH, 0, ""), plain(HEIGHT, 0, "")),
        )
        .attr("preserveAspectRatio", "none")
        .with(&rungs);
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
        el("span")
            .class(if clear { "label strong" } else { "label in-rung" })
            .style("left", &plain(x, 2, "%"))
            .style("top", "50%")
            .text(written)
    })
}

fn painted(taker: Taker, rect: &Rect) -> El {
    let rung = still_path(class(taker), &rect.path());
    match paint(taker) {
        Some(paint) => rung.attr("fill", &paint),
        None => rung,
    }
}

/// The clear room's rung with its break marks.
fn broken(rect: &Rect) -> Vec<El> {
    let (top, bottom) = (rect.top, rect.bottom);
    let line = |from: f64, to: f64, y: f64| [Point::new(from, y), Point::new(to, y)];
    let aside = 30.0;
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
    let (left, right) = (rect.left + aside, rect.right - aside);
    let edges = [
        line(rect.left, left, top),
        line(rect.left, left, bottom),
        line(right, rect.right, top),
        line(right, rect.right, bottom),
    ];
    let gap = 10.0;
    let breaks = [zigzag(left), zigzag(left + gap), zigzag(right - gap), zigzag(right)];
    vec![
        still_path("room", &rect.path()),
        still_path("rung-edge", &all_open(edges.iter().map(|line| &line[..]))),
        still_path("break", &all_open(breaks.iter().map(|line| &line[..]))),
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
fn sums(bar: &LadderBar, notation: Notation) -> El {
    let language = notation.language;
    let words = language.drawing();
    let surfaces: &[Surface] = match bar.direction {
        Direction::Length => &[Surface::FrontEnd, Surface::DoorEnd],
        Direction::Width => &[Surface::SideWall],
        Direction::Height => &[Surface::Ceiling, Surface::Floor],
    };
    let line =
        |side: &str, sum: El| el("li").child(&el("span").class("side").text(side)).child(&sum);
    let lines = surfaces.iter().map(|&surface| {
        let side = if surface == Surface::SideWall {
            words.each_side_wall
        } else {
            language.ladder_surface(surface)
        };
        line(side, sum(&steps_on(bar, surface), notation))
    });
    let clear = bar.rungs.iter().filter(|rung| rung.step.taker == Taker::ClearRoom);
    let clear =
        clear.map(|rung| line(words.clear, el("b").text(&notation.length(rung.step.taken))));
    el("ul").class("sums").with(&lines.chain(clear).collect::<Vec<_>>())
}

/// What one side takes, from the steel to the room.
fn steps_on(bar: &LadderBar, surface: Surface) -> Vec<Step> {
    let mut steps: Vec<Step> = bar
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

fn sum(steps: &[Step], notation: Notation) -> El {
    let language = notation.language;
    let total: Length = steps.iter().map(|step| step.taken).sum();
    let terms = el("span").class("terms");
    if steps.is_empty() {
        return terms.text(language.drawing().nothing);
    }
    let terms = steps.iter().enumerate().fold(terms, |terms, (index, step)| {
        let swatch = svg("svg")
            .class("picture swatch")
            .attr("viewBox", "0 0 24 24")
            .attr("aria-hidden", "true")
            .child(&painted(step.taker, &Rect::new(1.0, 1.0, 23.0, 23.0)));
        let figure = notation.length_bare(step.taken);
        let term = el("span")
            .class("term")
            .text(if index > 0 { "+ " } else { "" })
            .child(&swatch)
            .text(&format!("{figure} {}", language.taker(step.taker)));
        terms.child(&term).text(" ")
    });
    let total = el("b").text(&notation.length(total));
    terms.child(&el("span").class("term").text("= ").child(&total))
}
