//! The close-up of one stud, drawn.

use inchwise_core::design::Surface;
use inchwise_core::units::Length;

use super::geometry::{CloseUp, Part, Pen, Point, Rect, Rung, SetBy, spread};
use super::grip::{Grip, Hold};
use super::paper::{Drawing, Label, Picture, figure};
use super::pattern::Patterns;
use super::pull::Towards;
use super::section::WALL_FOAM;
use crate::dom::{El, el};
use crate::measure::Notation;
use crate::state::State;
use crate::text::Language;

const NAME: &str = "close-up";

/// Where the grip lies across the drawn wall; the word beside the lining starts past it.
const GRIP: f64 = 0.16;

/// The close-up with a grip on the foam's face, and below it what sets the lining.
pub fn close_up(state: State, language: Language) -> El {
    let title = language.drawing().close_up;
    let grip = Grip {
        key: "close-up",
        fields: WALL_FOAM,
        surface: Surface::SideWall,
        towards: Towards::Down,
        name: |words| words.wall_grip,
        hold: |design| {
            let window = CloseUp::window_of(&design.stack(Surface::SideWall));
            let at = Point::new(window.left + window.width() * GRIP, 0.0);
            Hold { paper: CloseUp::paper_of(design), at }
        },
        with_note: false,
    };
    let shape = move || state.look(|outcome| CloseUp::of(&outcome.good));
    let drawing = Drawing {
        name: NAME,
        title,
        shape: Box::new(shape),
        paper: |shape| shape.paper,
        told,
        labels,
        picture: picture(),
        grips: vec![grip.drawn(state)],
    };
    let rule = el("figcaption").text_with(move || rule(&shape(), state.notation()));
    figure(NAME, title, &[drawing.drawn(state), rule])
}

fn told(shape: &CloseUp, notation: Notation) -> String {
    let [frame, foam] =
        [&shape.frame_chain, &shape.foam_chain].map(|rungs| listed(rungs, notation));
    let rule = rule(shape, notation);
    notation.language.drawing().close_up_told.with(&[&frame, &foam, &rule])
}

/// Rungs by name and thickness.
fn listed(rungs: &[Rung], notation: Notation) -> String {
    let mut listed = String::new();
    for rung in rungs {
        if !listed.is_empty() {
            listed.push_str(", ");
        }
        listed.push_str(notation.language.part(rung.part));
        listed.push(' ');
        listed.push_str(&notation.length(Length::mm(rung.thickness())));
    }
    listed
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
    on_the_right: bool,
}

impl<'a> Chain<'a> {
    fn both(shape: &'a CloseUp) -> [Self; 2] {
        let window = &shape.window;
        [
            Self {
                rungs: &shape.frame_chain,
                at: window.left - 12.0,
                names: window.left - 40.0,
                on_the_right: false,
            },
            Self {
                rungs: &shape.foam_chain,
                at: window.right + 12.0,
                names: window.right + 40.0,
                on_the_right: true,
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
    fn line(&self, pen: Pen) -> Pen {
        const ACROSS: f64 = 5.0;
        const UP: f64 = 3.0;
        let (Some(first), Some(last)) = (self.rungs.first(), self.rungs.last()) else {
            return pen;
        };
        let stroke =
            |pen: Pen, y: f64| pen.between(self.at - ACROSS, y + UP, self.at + ACROSS, y - UP);
        let pen = pen.between(self.at, first.from, self.at, last.to);
        let pen = self.rungs.iter().fold(pen, |pen, rung| stroke(pen, rung.from));
        stroke(pen, last.to)
    }

    /// From each rung to its name.
    fn leaders(&self, shape: &CloseUp, apart: Apart, mut pen: Pen) -> Pen {
        let towards = (self.names - self.at).signum();
        for (rung, name) in self.rungs.iter().zip(self.places(shape, apart)) {
            pen = pen.line(&[
                Point::new(self.at + towards * 2.0, rung.middle()),
                Point::new(self.at + towards * 10.0, rung.middle()),
                Point::new(self.names - towards * 6.0, name),
                Point::new(self.names, name),
            ]);
        }
        pen
    }

    /// The names.
    fn labels(&self, shape: &CloseUp, apart: Apart, notation: Notation, labels: &mut Vec<Label>) {
        for (rung, place) in self.rungs.iter().zip(self.places(shape, apart)) {
            let class = match (apart, self.on_the_right) {
                (Apart::Tight, false) => "before named tight",
                (Apart::Tight, true) => "after named tight",
                (Apart::Roomy, false) => "before named roomy",
                (Apart::Roomy, true) => "after named roomy",
            };
            let mut label = Label::new(self.names, place, class, notation.language.part(rung.part));
            label.figure = notation.length(Length::mm(rung.thickness()));
            labels.push(label);
        }
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
}

fn labels(shape: &CloseUp, notation: Notation) -> Vec<Label> {
    let language = notation.language;
    let words = language.drawing();
    let window = &shape.window;
    let left = window.left + 4.0;
    let past_grip = window.left + window.width() * (GRIP + 0.05);
    let beside_lining = shape.lining.bottom + 15.0;
    let set_by = language.set_by(shape.set_by);
    let mut labels = vec![
        Label::new(left, window.top + 12.0, "after small", words.outdoors),
        Label::new(left, window.bottom - 12.0, "after small", words.room),
        Label::new(past_grip, beside_lining, "after small marked", set_by),
    ];
    for chain in Chain::both(shape) {
        for apart in Apart::BOTH {
            chain.labels(shape, apart, notation, &mut labels);
        }
    }
    labels
}

fn leaders(shape: &CloseUp, apart: Apart) -> String {
    let chains = Chain::both(shape);
    chains.iter().fold(Pen::new(), |pen, chain| chain.leaders(shape, apart, pen)).done()
}

fn picture() -> Picture<CloseUp> {
    let patterns = Patterns { name: NAME, unit: 1.0 };
    let mut picture = Picture::new();
    picture.elements.push(patterns.defined());
    picture
        .path("room", |shape: &CloseUp| Pen::new().rect(&room(shape)).done())
        .painted("foam", &patterns.foam(), |shape| Pen::new().outline(&shape.foam).done())
        .path("sheet-cut", |shape| Pen::new().outline(&shape.sheet).done())
        .painted("board", &patterns.wood(), |shape| Pen::new().rect(&shape.lining).done())
        .path("stud-steel", |shape| {
            shape.stud.iter().fold(Pen::new(), |pen, steel| pen.outline(&steel.corners())).done()
        })
        .path("frame-face", |shape| {
            let (window, depth) = (&shape.window, shape.face.frame_face);
            Pen::new().between(window.left, depth, window.right, depth).done()
        })
        .path("break", breaks)
        .path("fine", |shape| {
            Chain::both(shape).iter().fold(Pen::new(), |pen, chain| chain.line(pen)).done()
        })
        .path("fine tight", |shape| leaders(shape, Apart::Tight))
        .path("fine roomy", |shape| leaders(shape, Apart::Roomy))
        .path("face", |shape| Pen::new().line(&shape.foam_face).done());
    picture
}

fn room(shape: &CloseUp) -> Rect {
    let window = &shape.window;
    Rect::new(window.left, shape.lining.bottom, window.right, window.bottom)
}

/// The wall goes on past both sides: a break line on each.
fn breaks(shape: &CloseUp) -> String {
    let window = &shape.window;
    let outermost = shape.frame_chain.first().map_or(0.0, |rung| rung.from);
    let (top, bottom) = (outermost - 12.0, shape.lining.bottom + 8.0);
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
    Pen::new().line(&line(window.left)).line(&line(window.right)).done()
}
