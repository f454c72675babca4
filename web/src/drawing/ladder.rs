//! The ladder, drawn: three bars to one scale, and under each the sum in words.

use inchwise_core::design::Surface;
use inchwise_core::room::{Step, Taker};
use inchwise_core::units::Length;
use leptos::prelude::*;

use super::geometry::{Direction, LadderBar, Point, Rect, all_open};
use super::paper::{heading, together};
use super::pattern::Patterns;
use crate::measure::Notation;
use crate::state::State;

const NAME: &str = "ladder";

/// What took each millimetre.
pub fn ladder(state: State) -> AnyView {
    let bars = Memo::new(move |_| LadderBar::all(&state.good()));
    let title = Signal::derive(move || state.language.get().drawing().ladder);
    let patterns = Patterns { name: NAME, unit: 1.6 };
    let shown = move || {
        let notation = state.notation();
        bars.with(|bars| {
            together(bars.iter().map(|bar| direction(bar, notation, &patterns)).collect())
        })
    };
    view! {
        <figure class="drawing-figure ladder-figure" data-testid=NAME>
            {heading(title)}
            <svg class="picture patterns" aria-hidden="true" width="0" height="0">
                {patterns.defined()}
            </svg>
            {shown}
        </figure>
    }
    .into_any()
}

fn direction(bar: &LadderBar, notation: Notation, patterns: &Patterns) -> AnyView {
    let language = notation.language;
    let steel_to_steel: Length = bar.rungs.iter().map(|rung| rung.step.taken).sum();
    let total = language.drawing().steel_to_steel.with(&[&notation.length(steel_to_steel)]);
    view! {
        <section class="direction">
            <h4>
                {language.direction(bar.direction)}
                " "
                <span class="muted">{total}</span>
            </h4>
            {drawn(bar, notation, patterns)}
            {sums(bar, notation, patterns)}
        </section>
    }
    .into_any()
}

const HEIGHT: f64 = 84.0;

/// The least width of a digit's box on the narrowest page, in the bar's units: a bar of 300 px and
/// figures of 11 px.
const CHARACTER: f64 = 21.0;

fn drawn(bar: &LadderBar, notation: Notation, patterns: &Patterns) -> AnyView {
    let rungs = bar.rungs.iter().map(|rung| {
        let rect = Rect::new(rung.from, 0.0, rung.to, HEIGHT);
        if rung.step.taker == Taker::ClearRoom {
            broken(&rect)
        } else {
            let fill = paint(rung.step.taker, patterns);
            view! { <path class=class(rung.step.taker) fill=fill d=rect.path() /> }.into_any()
        }
    });
    let figures = bar.rungs.iter().filter_map(|rung| {
        let clear = rung.step.taker == Taker::ClearRoom;
        let written = if clear {
            notation.length(rung.step.taken)
        } else {
            notation.length_bare(rung.step.taken)
        };
        let fits = written.chars().count() as f64 * CHARACTER <= rung.to - rung.from;
        fits.then(|| {
            let x = (rung.from + rung.to) / 2.0 / LadderBar::WIDTH * 100.0;
            let class = if clear { "label strong" } else { "label in-rung" };
            view! {
                <span class=class style:left=format!("{x:.2}%") style:top="50%">{written}</span>
            }
            .into_any()
        })
    });
    view! {
        <div class="bar" aria-hidden="true">
            <svg
                class="picture"
                viewBox=format!("0 0 {} {HEIGHT}", LadderBar::WIDTH)
                preserveAspectRatio="none"
            >
                {together(rungs.collect())}
            </svg>
            {together(figures.collect())}
        </div>
    }
    .into_any()
}

/// The clear room's rung with its break marks.
fn broken(rect: &Rect) -> AnyView {
    let (top, bottom) = (rect.top, rect.bottom);
    let line = |from: f64, to: f64, y: f64| [Point::new(from, y), Point::new(to, y)];
    let quarter = rect.width() * 0.16;
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
    let (left, right) = (rect.left + quarter, rect.right - quarter);
    let edges = [
        line(rect.left, left, top),
        line(rect.left, left, bottom),
        line(right, rect.right, top),
        line(right, rect.right, bottom),
    ];
    let gap = 10.0;
    let breaks = [zigzag(left), zigzag(left + gap), zigzag(right - gap), zigzag(right)];
    view! {
        <path class="room" d=rect.path() />
        <path class="rung-edge" d=all_open(edges.iter().map(|line| &line[..])) />
        <path class="break" d=all_open(breaks.iter().map(|line| &line[..])) />
    }
    .into_any()
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

fn paint(taker: Taker, patterns: &Patterns) -> Option<String> {
    match taker {
        Taker::FoamPastFrame | Taker::FloorFoam => Some(patterns.foam()),
        Taker::Lining | Taker::FloorDeck => Some(patterns.wood()),
        Taker::BroughtIn => Some(patterns.lost()),
        Taker::StandOff | Taker::Frame | Taker::Levelling | Taker::ClearRoom => None,
    }
}

/// Each side's sum: 22 gap + 41 frame + 12 lining = 75 mm.
fn sums(bar: &LadderBar, notation: Notation, patterns: &Patterns) -> AnyView {
    let language = notation.language;
    let surfaces: &[Surface] = match bar.direction {
        Direction::Length => &[Surface::FrontEnd, Surface::DoorEnd],
        Direction::Width => &[Surface::SideWall],
        Direction::Height => &[Surface::Ceiling, Surface::Floor],
    };
    let lines = surfaces.iter().map(|&surface| {
        let named = if surface == Surface::SideWall {
            language.drawing().each_side_wall
        } else {
            language.ladder_surface(surface)
        };
        let mut steps: Vec<Step> = bar
            .rungs
            .iter()
            .map(|rung| rung.step)
            .filter(|step| step.surface == Some(surface))
            .collect();
        if surface == Surface::SideWall {
            steps.truncate(steps.len() / 2);
        }
        view! {
            <li>
                <span class="side">{named}</span>
                {sum(&steps, notation, patterns)}
            </li>
        }
        .into_any()
    });
    let clear = bar.rungs.iter().find(|rung| rung.step.taker == Taker::ClearRoom).map(|rung| {
        view! {
            <li class="clear">
                <span class="side">{language.drawing().clear}</span>
                <b>{notation.length(rung.step.taken)}</b>
            </li>
        }
    });
    view! {
        <ul class="sums">
            {together(lines.collect())}
            {clear}
        </ul>
    }
    .into_any()
}

fn sum(steps: &[Step], notation: Notation, patterns: &Patterns) -> AnyView {
    let language = notation.language;
    let total: Length = steps.iter().map(|step| step.taken).sum();
    if steps.is_empty() {
        return view! { <span>{language.drawing().nothing}</span> }.into_any();
    }
    let terms = steps.iter().enumerate().map(|(index, step)| {
        let plus = (index > 0).then_some("+ ");
        let swatch = view! {
            <svg class="picture swatch" viewBox="0 0 24 24" aria-hidden="true">
                <rect
                    class=class(step.taker)
                    fill=paint(step.taker, patterns)
                    x="1"
                    y="1"
                    width="22"
                    height="22"
                />
            </svg>
        };
        view! {
            <span class="term">
                {plus}
                {swatch}
                {notation.length_bare(step.taken)}
                " "
                {language.taker(step.taker)}
            </span>
            " "
        }
        .into_any()
    });
    view! {
        <span class="terms">
            {together(terms.collect())}
            <span class="term">"= " <b>{notation.length(total)}</b></span>
        </span>
    }
    .into_any()
}
