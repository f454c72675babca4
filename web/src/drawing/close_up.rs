//! The close-up of one stud, drawn.

use inchwise_core::design::Surface;
use inchwise_core::units::Length;
use leptos::prelude::*;

use super::geometry::{CloseUp, Part, Point, Rect, Rung, SetBy, all_open, closed, rects, spread};
use super::grip::{Grip, Towards};
use super::paper::{Paper, heading, label, together};
use super::pattern::Patterns;
use super::section::WALL_FOAM;
use crate::measure::Notation;
use crate::state::State;

const NAME: &str = "close-up";

/// The close-up with a grip on the foam's face, and below it what sets the lining.
pub fn close_up(state: State) -> AnyView {
    let shape = Memo::new(move |_| CloseUp::of(&state.good()));
    let size = Memo::new(move |_| shape.with(|shape| shape.paper));
    let words = move || state.language.get().drawing();
    let title = Signal::derive(move || words().close_up);
    let rule = Signal::derive(move || {
        let notation = state.notation();
        shape.with(|shape| rule(shape, notation))
    });
    let told = Signal::derive(move || {
        let notation = state.notation();
        let listed = |rungs: &[Rung]| {
            let named = rungs.iter().map(|rung| {
                format!(
                    "{} {}",
                    notation.language.part(rung.part),
                    notation.length(Length::mm(rung.thickness()))
                )
            });
            named.collect::<Vec<_>>().join(", ")
        };
        shape.with(|shape| {
            let chains = [listed(&shape.frame_chain), listed(&shape.foam_chain)];
            words().close_up_told.with(&[&chains[0], &chains[1], &rule.get()])
        })
    });
    let paper = Paper { name: NAME, size, title, told };
    let grip = Grip {
        state,
        key: "close-up",
        fields: WALL_FOAM,
        surface: Surface::SideWall,
        towards: Towards::Down,
        name: |words| words.wall_grip,
        paper: size,
        at: Box::new(move |foam| {
            shape.with(|shape| Point::new(shape.window.left + shape.window.width() * 0.76, foam))
        }),
        with_note: false,
    };
    let labels = move || {
        let notation = state.notation();
        shape.with(|shape| labels(shape, notation))
    };
    view! {
        <figure class="drawing-figure close-up-figure" data-testid=NAME>
            {heading(title)}
            {paper.drawn(move || shape.with(picture), labels, grip.drawn())}
            <figcaption>{move || rule.get()}</figcaption>
        </figure>
    }
    .into_any()
}

/// What sets the lining, in a sentence.
fn rule(shape: &CloseUp, notation: Notation) -> String {
    let words = notation.language.drawing();
    let mm = |value: f64| notation.length(Length::mm(value));
    let part =
        |part| shape.frame_chain.iter().find(|rung| rung.part == part).map_or(0.0, Rung::thickness);
    let (gap, stud) = (mm(part(Part::StandOff)), mm(part(Part::Stud)));
    let back = mm(shape.lining_back);
    let past = shape.face.past_frame();
    match shape.set_by {
        SetBy::Foam => words.set_by_foam.with(&[&back, &mm(past)]),
        SetBy::Frame if past > -0.5 => words.set_by_both.with(&[&back, &gap, &stud]),
        SetBy::Frame => words.set_by_frame.with(&[&back, &gap, &stud, &mm(-past)]),
    }
}

/// One side's chain of dimensions: where it lies, where its names lie, and which way they read.
struct Chain<'a> {
    rungs: &'a [Rung],
    /// The chain's line.
    at: f64,
    /// Where the leaders end.
    names: f64,
    class: &'static str,
}

impl<'a> Chain<'a> {
    fn both(shape: &'a CloseUp) -> [Self; 2] {
        let window = &shape.window;
        [
            Self {
                rungs: &shape.frame_chain,
                at: window.left - 12.0,
                names: window.left - 40.0,
                class: "before named",
            },
            Self {
                rungs: &shape.foam_chain,
                at: window.right + 12.0,
                names: window.right + 40.0,
                class: "after named",
            },
        ]
    }

    /// Where the names lie along the chain: two lines of text apart on the narrowest paper.
    fn places(&self, shape: &CloseUp) -> Vec<f64> {
        let wanted: Vec<f64> = self.rungs.iter().map(Rung::middle).collect();
        let room = shape.paper.height() / 7.0;
        spread(&wanted, room, shape.paper.top + room / 2.0, shape.paper.bottom - room / 2.0)
    }

    fn drawn(&self, shape: &CloseUp) -> AnyView {
        let (Some(first), Some(last)) = (self.rungs.first(), self.rungs.last()) else {
            return ().into_any();
        };
        let tick = 5.0;
        let mut lines = vec![vec![Point::new(self.at, first.from), Point::new(self.at, last.to)]];
        let ends = self.rungs.iter().map(|rung| rung.from).chain([last.to]);
        lines.extend(ends.map(|y| {
            vec![
                Point::new(self.at - tick, y + tick * 0.6),
                Point::new(self.at + tick, y - tick * 0.6),
            ]
        }));
        let towards = (self.names - self.at).signum();
        for (rung, name) in self.rungs.iter().zip(self.places(shape)) {
            lines.push(vec![
                Point::new(self.at + towards * 2.0, rung.middle()),
                Point::new(self.at + towards * 10.0, rung.middle()),
                Point::new(self.names - towards * 6.0, name),
                Point::new(self.names, name),
            ]);
        }
        view! { <path class="fine" d=all_open(lines.iter().map(|line| &line[..])) /> }.into_any()
    }
}

fn labels(shape: &CloseUp, notation: Notation) -> AnyView {
    let language = notation.language;
    let words = language.drawing();
    let (paper, window) = (&shape.paper, &shape.window);
    let mut labels = vec![
        label(
            paper,
            Point::new(window.left + 4.0, window.top + 12.0),
            "after small",
            words.outdoors,
        ),
        label(
            paper,
            Point::new(window.left + 4.0, window.bottom - 12.0),
            "after small",
            words.room,
        ),
        label(
            paper,
            Point::new(window.left + 4.0, shape.lining.bottom + 15.0),
            "after small marked",
            language.set_by(shape.set_by),
        ),
    ];
    for chain in Chain::both(shape) {
        for (rung, place) in chain.rungs.iter().zip(chain.places(shape)) {
            let (x, y) = paper.percent(Point::new(chain.names, place));
            let named = language.part(rung.part);
            let thickness = notation.length(Length::mm(rung.thickness()));
            labels.push(
                view! {
                    <span
                        class=format!("label {}", chain.class)
                        style:left=format!("{x:.2}%")
                        style:top=format!("{y:.2}%")
                    >
                        <b>{thickness}</b>
                        <span>{named}</span>
                    </span>
                }
                .into_any(),
            );
        }
    }
    together(labels)
}

fn picture(shape: &CloseUp) -> AnyView {
    let patterns = Patterns::of(NAME, shape.paper.width());
    let window = &shape.window;
    let lining = shape.lining;
    let room = Rect::new(window.left, lining.bottom, window.right, window.bottom);
    let face =
        [Point::new(window.left, shape.face.foam), Point::new(window.right, shape.face.foam)];
    let frame_face = [
        Point::new(window.left, shape.face.frame_face),
        Point::new(window.right, shape.face.frame_face),
    ];
    let stud = rects(&shape.stud);
    let chains = Chain::both(shape).iter().map(|chain| chain.drawn(shape)).collect();
    view! {
        {patterns.defined()}
        <path class="room" d=room.path() />
        <path class="foam" fill=patterns.foam() d=closed(&shape.foam) />
        <path class="sheet" d=closed(&shape.sheet) />
        <path class="board" fill=patterns.wood() d=lining.path() />
        <path class="stud-steel" d=stud />
        <path class="frame-face" d=all_open([&frame_face[..]]) />
        {breaks(shape)}
        {together(chains)}
        <path class="face" d=all_open([&face[..]]) />
    }
    .into_any()
}

/// The wall goes on past both sides: a break line on each.
fn breaks(shape: &CloseUp) -> AnyView {
    let window = &shape.window;
    let (top, bottom) = (
        -shape.frame_chain.first().map_or(0.0, |rung| -rung.from) - 12.0,
        shape.lining.bottom + 8.0,
    );
    let middle = (top + bottom) / 2.0;
    let line = |x: f64| {
        [
            Point::new(x, top),
            Point::new(x, middle - 9.0),
            Point::new(x - 5.0, middle - 4.0),
            Point::new(x + 5.0, middle + 4.0),
            Point::new(x, middle + 9.0),
            Point::new(x, bottom),
        ]
    };
    let lines = [line(window.left), line(window.right)];
    view! { <path class="break" d=all_open(lines.iter().map(|line| &line[..])) /> }.into_any()
}
