//! The plan, drawn.

use inchwise_core::design::{Design, Field, Surface};
use inchwise_core::units::Length;

use super::casting::{self, WithCastings};
use super::dimension::Tape;
use super::geometry::{
    Corner, DrawnDamper, FIGURE_CROWN, FIGURE_SHOULDERS, OpeningKind, Pen, Plan, Point, Rect, Swing,
};
use super::grip::{Grip, Hold};
use super::paper::{Drawing, Label, Picture};
use super::pattern::Patterns;
use super::section::placed;
use crate::measure::Notation;
use crate::state::Planner;
use crate::ui::{Entry, Towards};
use leptos::prelude::*;

const NAME: &str = "plan";

/// Past this length, mm, a box on a narrow page is too small for the form of each stud.
const LONG: f64 = 8000.0;

/// The plan with a grip on either end wall, not level with one another, so that they clear one
/// another in a short box.
pub fn plan(planner: Planner) -> AnyView {
    let front = Grip {
        hand: "front-end",
        entry: Entry::Design(&[Field::FrontEndFoam]),
        surface: Surface::FrontEnd,
        towards: Towards::Right,
        name: |words| words.front_grip,
        hold: |design| hold(design, 0.0, 0.4),
        with_note: false,
    };
    let door = Grip {
        hand: "door-end",
        entry: Entry::Design(&[Field::DoorEndFoam]),
        surface: Surface::DoorEnd,
        towards: Towards::Left,
        name: |words| words.door_grip,
        hold: |design| hold(design, 1.0, 0.6),
        with_note: false,
    };
    let shape = Memo::new(move |_| planner.look(Plan::of));
    let drawn = Drawing {
        paper: |shape: &Plan| shape.paper,
        told,
        labels,
        marks: Some(|shape, spots| shape.spot_marks(spots)),
        grips: vec![front.drawn(planner), door.drawn(planner)],
        ..Drawing::plain(NAME, planner.language.get_untracked().drawing().plan, shape, picture())
    }
    .drawn(planner);
    let is_long = move || shape.with(|shape| shape.bare.width() > LONG);
    view! { <div class="plan-paper" class:long=is_long>{drawn}</div> }.into_any()
}

/// On an end wall's steel, so far along and across the box.
fn hold(design: &Design, along: f64, across: f64) -> Hold {
    let bare = Plan::bare_of(&design.freight_box());
    Hold {
        paper: Plan::paper_of(design),
        at: Point::new(bare.width() * along, bare.height() * across),
    }
}

impl WithCastings for Plan {
    fn castings(&self) -> &[Corner] {
        &self.castings
    }

    fn paper(&self) -> &Rect {
        &self.paper
    }
}

fn told(shape: &Plan, notation: Notation) -> String {
    let language = notation.language;
    let mm = |value: f64| notation.length(Length::mm(value));
    language.drawing().plan_told.with(&[
        &mm(shape.bare.width()),
        &mm(shape.bare.height()),
        &mm(shape.clear.width()),
        &mm(shape.clear.height()),
        &mm(shape.front_face.foam),
        &mm(shape.side_face.foam),
        &mm(shape.door_face.foam),
        language.castings_told(shape.fate),
    ])
}

fn length_tape(shape: &Plan) -> Tape {
    let at = (shape.outside.bottom + shape.paper.bottom) / 2.0;
    Tape::below(&shape.paper, &shape.outside, &shape.bare, &shape.clear, at)
}

fn width_tape(shape: &Plan) -> Tape {
    let at = (shape.outside.left + shape.paper.left) / 2.0;
    Tape::beside(&shape.paper, &shape.outside, &shape.bare, &shape.clear, at)
}

fn labels(shape: &Plan, notation: Notation) -> Vec<Label> {
    let words = notation.language.drawing();
    let clear = &shape.clear;
    let mm = |value: f64| notation.length(Length::mm(value));
    let (length, width) = (length_tape(shape).middle(), width_tape(shape).middle());
    let inwards = clear.width() * 0.03;
    let front = clear.left + inwards;
    let doors = clear.right - inwards;
    vec![
        Label::new(length.x, length.y, "on-line strong", mm(clear.width())),
        Label::new(width.x, width.y, "on-line upright strong", mm(clear.height())),
        Label::new(front, length.y, "after small roomy on-line", words.front_end),
        Label::new(doors, length.y, "before small roomy on-line", words.cargo_doors),
    ]
    .into_iter()
    .chain(shape.dampers.iter().map(|damper| {
        let (at, name) = if damper.is_exhaust {
            (damper.way[0], words.exhaust)
        } else {
            (damper.way[1], words.intake)
        };
        // Above its arrow where the air goes out, below it where it comes in.
        let past = if damper.is_exhaust { -90.0 } else { 90.0 };
        Label::new(at.x, at.y + past, "small", name)
    }))
    .collect()
}

fn picture() -> Picture<Plan> {
    let patterns = Patterns { name: NAME, unit: 8.0 };
    let mut picture = Picture::with(patterns);
    picture
        .path("room", |shape: &Plan| Pen::new().rect(&shape.clear).done())
        .painted("foam", &patterns.foam(), |shape| {
            Pen::new().outline(&shape.foam_outside).outline(&shape.foam_inside).done()
        })
        .path("stud fine-only", |shape| {
            shape.studs.iter().fold(Pen::new(), |pen, stud| pen.line(stud)).done()
        })
        .path("stud coarse-only", |shape| {
            shape.studs.iter().fold(Pen::new(), |pen, stud| pen.line(&stud[1..3])).done()
        })
        .painted("board", &patterns.wood(), |shape| Pen::new().rects(&shape.lining).done())
        .path("sheet-line", |shape| {
            shape.sheets.iter().fold(Pen::new(), |pen, line| pen.line(line)).done()
        })
        .path("steel-outline", |shape| Pen::new().rects(&shape.cargo_doors).done())
        .path("face", |shape| {
            let [front, door] = &shape.end_faces;
            Pen::new().line(front).line(door).done()
        });
    casting::draw(&mut picture, &patterns);
    picture
        .path("hole", |shape| {
            shape.openings.iter().fold(Pen::new(), |pen, opening| pen.rect(&opening.hole)).done()
        })
        .path("hole", |shape| {
            shape.dampers.iter().fold(Pen::new(), |pen, damper| pen.rect(&damper.hole)).done()
        })
        .path("blade", |shape| shape.dampers.iter().fold(Pen::new(), blades).done())
        .path("airway", |shape| shape.dampers.iter().fold(Pen::new(), airway).done())
        .painted("foam", &patterns.foam(), |shape| {
            shape
                .openings
                .iter()
                .fold(Pen::new(), |pen, opening| pen.rects(&opening.packing))
                .done()
        })
        .path("steel", |shape| {
            shape.openings.iter().fold(Pen::new(), |pen, opening| pen.rects(&opening.jambs)).done()
        })
        .path("swing", |shape| {
            let swings = shape.openings.iter().filter_map(|opening| opening.swing.as_ref());
            swings.fold(Pen::new(), swing).done()
        })
        .path("leaf", |shape| lines(shape, OpeningKind::Door))
        .path("glass", |shape| lines(shape, OpeningKind::Window))
        .group("person", &[("", FIGURE_SHOULDERS), ("", FIGURE_CROWN)], |shape| {
            placed(shape.figure)
        })
        .path("fine", |shape| width_tape(shape).fine(length_tape(shape).fine(Pen::new())).done())
        .painted("taken", &patterns.lost(), |shape| {
            width_tape(shape).taken(length_tape(shape).taken(Pen::new())).done()
        })
        .path("arrow-head", |shape| {
            width_tape(shape).heads(length_tape(shape).heads(Pen::new())).done()
        });
    picture
}

/// The leaves of doors, or the glass of windows.
fn lines(shape: &Plan, kind: OpeningKind) -> String {
    let mut pen = Pen::new();
    for opening in shape.openings.iter().filter(|opening| opening.kind == kind) {
        for line in &opening.lines {
            pen = pen.line(line);
        }
    }
    pen.done()
}

/// The blade of a damper, aslant; a cross where a fan stands.
fn blades(pen: Pen, damper: &DrawnDamper) -> Pen {
    let hole = &damper.hole;
    let pen = pen.between(hole.left, hole.top, hole.right, hole.bottom);
    if damper.is_exhaust { pen.between(hole.left, hole.bottom, hole.right, hole.top) } else { pen }
}

/// An arrow the way the air goes, downwards on the paper.
fn airway(pen: Pen, damper: &DrawnDamper) -> Pen {
    const HEAD: f64 = 70.0;
    let [from, to] = damper.way;
    let side = |across: f64| Point::new(to.x + across, to.y - HEAD);
    pen.line(&[from, to]).line(&[side(-HEAD * 0.6), to, side(HEAD * 0.6)])
}

/// The path that a door's edge takes.
fn swing(pen: Pen, swing: &Swing) -> Pen {
    let (shut, open, radius) = (swing.shut, swing.open, swing.radius);
    let turn = f64::from(u8::from(swing.clockwise));
    pen.command('M', &[shut.x, shut.y])
        .command('A', &[radius, radius, 0.0, 0.0, turn, open.x, open.y])
}
