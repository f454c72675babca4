//! The close-up of one stud, drawn.

use inchwise_core::design::Surface;
use inchwise_core::units::Length;

use super::geometry::{
    CloseUp, Part, Point, Rect, Rung, SetBy, all_open, closed, open, rects, spread,
};
use super::grip::{Grip, Towards};
use super::paper::{Paper, label, path, placed};
use super::pattern::{Patterns, unit_of};
use super::section::WALL_FOAM;
use crate::dom::{El, el};
use crate::kept::Kept;
use crate::measure::Notation;
use crate::state::State;
use crate::text::Language;

const NAME: &str = "close-up";

/// Where the grip lies across the drawn wall; the word beside the lining starts past it.
const GRIP: f64 = 0.16;

/// The close-up with a grip on the foam's face, and below it what sets the lining.
pub fn close_up(state: State, language: Language) -> El {
    let shape = Kept::new(move || state.look(|outcome| CloseUp::of(&outcome.good)));
    let size = Kept::new(move || shape.with(|shape| shape.paper));
    let words = language.drawing();
    let rule = move || {
        let notation = state.notation();
        shape.with(|shape| rule(shape, notation))
    };
    let told = move || {
        let notation = state.notation();
        let chains = shape.with(|shape| {
            [&shape.frame_chain, &shape.foam_chain].map(|rungs| listed(rungs, notation))
        });
        words.close_up_told.with(&[&chains[0], &chains[1], &rule()])
    };
    let labels = move || {
        let notation = state.notation();
        shape.with(|shape| labels(shape, notation))
    };
    let grip = Grip {
        state,
        key: "close-up",
        fields: WALL_FOAM,
        surface: Surface::SideWall,
        towards: Towards::Down,
        name: |words| words.wall_grip,
        paper: size,
        at: Box::new(move |foam| {
            let window = shape.with(|shape| shape.window);
            Point::new(window.left + window.width() * GRIP, foam)
        }),
        with_note: false,
    };
    let paper = Paper { name: NAME, size, title: words.close_up };
    let drawn = paper.drawn(told, &picture(shape, size), labels, &[grip.drawn()]);
    paper.figure("close-up-figure", &[drawn, el("figcaption").text_with(rule)])
}

/// Rungs by name and thickness.
fn listed(rungs: &[Rung], notation: Notation) -> String {
    let named = rungs.iter().map(|rung| {
        let thickness = notation.length(Length::mm(rung.thickness()));
        format!("{} {thickness}", notation.language.part(rung.part))
    });
    named.collect::<Vec<_>>().join(", ")
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

    /// Where the names lie along the chain.
    fn places(&self, shape: &CloseUp, apart: Apart) -> Vec<f64> {
        let wanted: Vec<f64> = self.rungs.iter().map(Rung::middle).collect();
        let room = shape.paper.height() * apart.share();
        spread(&wanted, room, shape.paper.top + room / 2.0, shape.paper.bottom - room / 2.0)
    }

    /// The chain's line with a stroke at each end of a rung.
    fn line(&self) -> String {
        let (Some(first), Some(last)) = (self.rungs.first(), self.rungs.last()) else {
            return String::new();
        };
        let tick = 5.0;
        let mut lines = vec![[Point::new(self.at, first.from), Point::new(self.at, last.to)]];
        let ends = self.rungs.iter().map(|rung| rung.from).chain([last.to]);
        lines.extend(ends.map(|y| {
            let (across, up) = (tick, tick * 0.6);
            [Point::new(self.at - across, y + up), Point::new(self.at + across, y - up)]
        }));
        all_open(lines.iter().map(|line| &line[..]))
    }

    /// From each rung to its name.
    fn leaders(&self, shape: &CloseUp, apart: Apart) -> String {
        let towards = (self.names - self.at).signum();
        let lines: Vec<[Point; 4]> = self
            .rungs
            .iter()
            .zip(self.places(shape, apart))
            .map(|(rung, name)| {
                [
                    Point::new(self.at + towards * 2.0, rung.middle()),
                    Point::new(self.at + towards * 10.0, rung.middle()),
                    Point::new(self.names - towards * 6.0, name),
                    Point::new(self.names, name),
                ]
            })
            .collect();
        all_open(lines.iter().map(|line| &line[..]))
    }

    /// The names.
    fn labels(&self, shape: &CloseUp, apart: Apart, notation: Notation) -> Vec<El> {
        let places = self.places(shape, apart);
        let named = self.rungs.iter().zip(places).map(|(rung, place)| {
            let class = format!("{} {}", self.class, apart.class());
            placed(&shape.paper, Point::new(self.names, place), &class)
                .child(&el("b").text(&notation.length(Length::mm(rung.thickness()))))
                .child(&el("span").text(notation.language.part(rung.part)))
        });
        named.collect()
    }
}

/// How far apart names lie: two lines of text take more of a small drawing than of a large one.
#[derive(Clone, Copy)]
enum Apart {
    /// On a narrow page.
    Tight,
    /// On a wide one.
    Roomy,
}

impl Apart {
    const BOTH: [Self; 2] = [Self::Tight, Self::Roomy];

    /// Share of the drawing's height from one name to the next.
    const fn share(self) -> f64 {
        match self {
            Self::Tight => 0.18,
            Self::Roomy => 0.125,
        }
    }

    /// Shown only where it fits.
    const fn class(self) -> &'static str {
        match self {
            Self::Tight => "tight",
            Self::Roomy => "roomy",
        }
    }
}

fn labels(shape: &CloseUp, notation: Notation) -> Vec<El> {
    let language = notation.language;
    let words = language.drawing();
    let window = &shape.window;
    let put = |y: f64, class: &str, text: &str| {
        label(&shape.paper, Point::new(window.left + 4.0, y), class, text)
    };
    let mut labels = vec![
        put(window.top + 12.0, "after small", words.outdoors),
        put(window.bottom - 12.0, "after small", words.room),
    ];
    let beside_lining =
        Point::new(window.left + window.width() * (GRIP + 0.05), shape.lining.bottom + 15.0);
    let set_by = language.set_by(shape.set_by);
    labels.push(label(&shape.paper, beside_lining, "after small marked", set_by));
    for chain in Chain::both(shape) {
        for apart in Apart::BOTH {
            labels.extend(chain.labels(shape, apart, notation));
        }
    }
    labels
}

fn picture(shape: Kept<CloseUp>, size: Kept<Rect>) -> Vec<El> {
    let patterns = Patterns { name: NAME };
    let all = |draw: fn(&CloseUp) -> String| move || shape.with(draw);
    let chains = |draw: fn(&Chain, &CloseUp) -> String| {
        move || shape.with(|shape| Chain::both(shape).iter().map(|one| draw(one, shape)).collect())
    };
    vec![
        patterns.defined(move || unit_of(size.get().width())),
        path("room", all(|shape| room(shape).path())),
        path("foam", all(|shape| closed(&shape.foam))).attr("fill", &patterns.foam()),
        path("sheet-cut", all(|shape| closed(&shape.sheet))),
        path("board", all(|shape| rects(&[shape.lining]))).attr("fill", &patterns.wood()),
        path("stud-steel", all(|shape| rects(&shape.stud))),
        path("frame-face", all(|shape| level(shape, shape.face.frame_face))),
        path("break", all(breaks)),
        path("fine", chains(|chain, _| chain.line())),
        path("fine tight", chains(|chain, shape| chain.leaders(shape, Apart::Tight))),
        path("fine roomy", chains(|chain, shape| chain.leaders(shape, Apart::Roomy))),
        path("face", all(|shape| open(&shape.foam_face))),
    ]
}

fn room(shape: &CloseUp) -> Rect {
    let window = &shape.window;
    Rect::new(window.left, shape.lining.bottom, window.right, window.bottom)
}

/// A line across the window.
fn level(shape: &CloseUp, depth: f64) -> String {
    open(&[Point::new(shape.window.left, depth), Point::new(shape.window.right, depth)])
}

/// The wall goes on past both sides: a break line on each.
fn breaks(shape: &CloseUp) -> String {
    let window = &shape.window;
    let outermost = shape.frame_chain.first().map_or(0.0, |rung| rung.from);
    let (top, bottom) = (outermost - 12.0, shape.lining.bottom + 8.0);
    let middle = (top + bottom) / 2.0;
    let line = |x: f64| {
        [(0.0, top), (0.0, middle - 9.0), (-5.0, middle - 4.0), (5.0, middle + 4.0)]
            .into_iter()
            .chain([(0.0, middle + 9.0), (0.0, bottom)])
            .map(|(aside, y)| Point::new(x + aside, y))
            .collect::<Vec<_>>()
    };
    let lines = [line(window.left), line(window.right)];
    all_open(lines.iter().map(|line| &line[..]))
}
