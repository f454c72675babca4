//! The cross-section, drawn.

use inchwise_core::design::{Design, Surface};
use inchwise_core::units::Length;

use super::casting::{self, WithCastings};
use super::dimension::{Tape, upright};
use super::geometry::{
    Corner, FIGURE_BODY, FIGURE_HEAD, FIGURE_HEIGHT, FIGURE_LINES, Fate, FloorLayers, Pen, Point,
    Rect, Section, numbers,
};
use super::grip::{Grip, Hold};
use super::paper::{Drawing, Label, Picture};
use super::pattern::Patterns;
use crate::measure::Notation;
use crate::state::Planner;
use crate::ui::{CEILING, Entry, Towards, WALLS};
use leptos::prelude::*;

const NAME: &str = "section";

/// The cross-section with its two grips, and the numbers of the cold places.
pub fn section(planner: Planner) -> AnyView {
    let wall = Grip {
        hand: "wall",
        entry: Entry::Design(WALLS),
        surface: Surface::SideWall,
        towards: Towards::Left,
        name: |words| words.wall_grip,
        hold: |design| {
            let bare = bare(design);
            Hold {
                paper: Section::paper_of(design),
                at: Point::new(bare.right, bare.bottom * 0.52),
            }
        },
        with_note: true,
    };
    let ceiling = Grip {
        hand: "ceiling",
        entry: Entry::Design(CEILING),
        surface: Surface::Ceiling,
        towards: Towards::Down,
        name: |words| words.ceiling_grip,
        hold: |design| {
            let bare = bare(design);
            Hold { paper: Section::paper_of(design), at: Point::new(bare.right * 0.7, bare.top) }
        },
        with_note: true,
    };
    let shape = Memo::new(move |_| Drawn {
        section: planner.look(Section::of),
        tall: planner.inputs.with(|inputs| inputs.own_height),
    });
    Drawing {
        paper: |drawn: &Drawn| drawn.section.paper,
        told: |drawn, notation| told(&drawn.section, notation),
        labels,
        marks: Some(|drawn, spots| drawn.section.spot_marks(spots)),
        grips: vec![wall.drawn(planner), ceiling.drawn(planner)],
        ..Drawing::plain(NAME, planner.language.get_untracked().drawing().section, shape, picture())
    }
    .drawn(planner)
}

/// The section, and how tall the person in it is.
#[derive(Clone, Debug, PartialEq)]
struct Drawn {
    section: Section,
    tall: Length,
}

impl std::ops::Deref for Drawn {
    type Target = Section;

    fn deref(&self) -> &Section {
        &self.section
    }
}

fn bare(design: &Design) -> Rect {
    Section::bare_of(&design.freight_box())
}

impl WithCastings for Drawn {
    fn castings(&self) -> &[Corner] {
        &self.section.castings
    }

    fn paper(&self) -> &Rect {
        &self.section.paper
    }
}

fn told(shape: &Section, notation: Notation) -> String {
    let language = notation.language;
    let mm = |value: f64| notation.length(Length::mm(value));
    language.drawing().section_told.with(&[
        &mm(shape.bare.width()),
        &mm(shape.bare.height()),
        &mm(shape.clear.width()),
        &mm(shape.clear.height()),
        &mm(shape.side_face.foam),
        &mm(shape.ceiling_face.foam),
        language.castings_told(shape.fate),
    ])
}

fn width_tape(shape: &Section) -> Tape {
    let at = shape.outside.bottom + 165.0;
    Tape::below(&shape.paper, &shape.outside, &shape.bare, &shape.clear, at)
}

fn height_tape(shape: &Section) -> Tape {
    let at = shape.outside.left - 128.0;
    Tape::beside(&shape.paper, &shape.outside, &shape.bare, &shape.clear, at)
}

fn labels(shape: &Drawn, notation: Notation) -> Vec<Label> {
    let words = notation.language.drawing();
    let (bare, clear) = (&shape.bare, &shape.clear);
    let mm = |value: f64| notation.length(Length::mm(value));
    let number = |value: f64| notation.length_bare(Length::mm(value));
    let (width, height) = (width_tape(shape), height_tape(shape));
    let (below, beside) = (width.middle(), height.middle());
    // Between the tape and the box.
    let aside = height.at + 62.0;
    let taken_above = clear.top - bare.top;
    let taken_below = bare.bottom - clear.bottom;
    let [_, name] = casting_leader(shape);
    let casting =
        if shape.fate == Fate::Bare { "after small casting alert" } else { "after small casting" };
    let mut labels = vec![
        Label::new(below.x, below.y, "on-line strong", mm(clear.width())),
        Label::new(beside.x, beside.y, "on-line upright strong", mm(clear.height())),
        Label::new(
            bare.left - 14.0,
            width.at,
            "before small roomy",
            number(clear.left - bare.left),
        ),
        Label::new(
            bare.right + 14.0,
            width.at,
            "after small roomy",
            number(bare.right - clear.right),
        ),
        Label::new(aside, bare.top + taken_above / 2.0, "upright small roomy", number(taken_above)),
        Label::new(
            aside,
            bare.bottom - taken_below / 2.0,
            "upright small roomy",
            number(taken_below),
        ),
        Label::new(
            shape.figure.x,
            shape.figure.y - shape.tall.as_mm() * 0.235,
            "small roomy",
            words.tall.with(&[&notation.length(shape.tall)]),
        ),
        Label::new(name.x, name.y, casting, notation.language.casting_label(shape.fate)),
    ];
    if let Some([top, bottom]) = shape.headroom {
        let bare = shape.fate == Fate::Bare;
        let phrase = if bare { words.under_castings } else { words.under_corners };
        let text = phrase.with(&[&mm(bottom.y - top.y)]);
        labels.push(Label::new(top.x, (top.y + bottom.y) / 2.0, "upright beside small", text));
    }
    labels
}

/// From the left casting, or what is round it, to its name.
fn casting_leader(shape: &Section) -> [Point; 2] {
    let corner = &shape.castings[0];
    let shown = corner.cover.as_ref().map_or(corner.steel, |cover| cover.standing_out);
    let name = Point::new(shape.clear.left + 150.0, shown.bottom.max(shape.clear.top) + 110.0);
    [Point::new(shown.right - 8.0, shown.bottom - 8.0), name]
}

fn picture() -> Picture<Drawn> {
    let patterns = Patterns { name: NAME, unit: 4.5 };
    let (foam, wood) = (patterns.foam(), patterns.wood());
    let mut picture = Picture::with(patterns);
    picture
        .path("room", |shape: &Drawn| Pen::new().rect(&shape.clear).done())
        .path("member", |shape| Pen::new().rect(&shape.floor.member).done())
        .painted("foam", &foam, |shape| Pen::new().rect(&under_floor(&shape.floor)).done())
        .path("beyond", |shape| flanges(&shape.floor, false))
        .path("beyond hidden", |shape| flanges(&shape.floor, true))
        .painted("foam", &foam, |shape| Pen::new().rect(&shape.floor.board).done())
        .painted("board", &wood, |shape| {
            Pen::new().rect(&shape.floor.plywood).rect(&shape.floor.deck).done()
        })
        .path("coat", |shape| Pen::new().rect(&shape.floor.levelling).done())
        .path("steel", |shape| Pen::new().rects(&shape.bottom_castings).done())
        .path("ground", |shape| ground(shape))
        .painted("foam", &foam, |shape| Pen::new().outline(&shape.foam).done())
        .path("member", |shape| Pen::new().rects(&shape.studs).rect(&shape.joist).done())
        .painted("board", &wood, |shape| Pen::new().outline(&shape.lining).done())
        .path("beyond", |shape| outer_flats(shape))
        .painted("steel hollow", "currentColor", |shape| rails(shape))
        .path("sheet-line", |shape| sheets(shape))
        .path("face", |shape| faces(shape));
    casting::draw(&mut picture, &patterns);
    picture
        .path("datum", |shape| Pen::new().rect(&shape.bare).done())
        .group("person", PERSON, |shape| {
            let scale = shape.tall.as_mm() / FIGURE_HEIGHT;
            [&placed(shape.figure), " scale(", &numbers(&[scale]), ")"].concat()
        })
        .path("fine", |shape| fine(shape))
        .painted("taken", &patterns.lost(), |shape| {
            height_tape(shape).taken(width_tape(shape).taken(Pen::new())).done()
        })
        .path("arrow-head", |shape| {
            height_tape(shape).heads(width_tape(shape).heads(Pen::new())).done()
        });
    picture
}

/// The person, standing on the origin.
const PERSON: &[(&str, &str)] =
    &[("", FIGURE_BODY), ("", FIGURE_HEAD), ("person-line", FIGURE_LINES)];

/// A transform that moves the origin to a point.
pub fn placed(at: Point) -> String {
    ["translate(", &numbers(&[at.x, at.y]), ")"].concat()
}

/// Both tapes' lines, headroom under the corner, and the leader to the casting's name.
fn fine(shape: &Section) -> String {
    let pen = height_tape(shape).fine(width_tape(shape).fine(Pen::new()));
    let pen = pen.line(&casting_leader(shape));
    match &shape.headroom {
        Some(ends) => upright(pen, ends, &shape.paper).done(),
        None => pen.done(),
    }
}

/// The foam faces that can be moved.
fn faces(shape: &Section) -> String {
    let [left, right] = [shape.bare.left, shape.bare.right];
    let (wall, top) = (shape.side_face.foam, shape.bare.top + shape.ceiling_face.foam);
    let bottom = shape.bare.bottom;
    Pen::new()
        .line(&[
            Point::new(left + wall, bottom),
            Point::new(left + wall, top),
            Point::new(right - wall, top),
            Point::new(right - wall, bottom),
        ])
        .done()
}

/// The sheets, cut along a crest.
fn sheets(shape: &Section) -> String {
    let (bare, rails) = (&shape.bare, &shape.rails);
    let (head, foot) = (rails[0].bottom, shape.floor.plywood.bottom);
    Pen::new()
        .between(bare.left, head, bare.left, foot)
        .between(bare.right, head, bare.right, foot)
        .between(rails[0].left, bare.top, rails[1].right, bare.top)
        .done()
}

/// The outer flats beyond the cut.
fn outer_flats(shape: &Section) -> String {
    let (bare, rails) = (&shape.bare, &shape.rails);
    let (head, foot) = (rails[0].bottom, shape.floor.plywood.bottom);
    let [side, roof] = shape.behind_crests;
    let (left, right, over) = (bare.left - side, bare.right + side, bare.top - roof);
    let half = rails[0].width() / 2.0;
    Pen::new()
        .between(left, head, left, foot)
        .between(right, head, right, foot)
        .between(rails[0].left + half, over, rails[1].right - half, over)
        .done()
}

/// The hollow top rails.
fn rails(shape: &Section) -> String {
    let steel = -shape.rail_steel;
    let [left, right] = shape.rails.map(|rail| rail.grown(steel, steel, steel, steel));
    Pen::new().rects(&shape.rails).rects(&[left, right]).done()
}

fn ground(shape: &Section) -> String {
    let outside = &shape.outside;
    Pen::new()
        .between(outside.left - 60.0, outside.bottom, outside.right + 60.0, outside.bottom)
        .done()
}

/// Foam under the plywood; a wrap hides the members' sides as well.
fn under_floor(floor: &FloorLayers) -> Rect {
    if floor.wrap.is_empty() {
        return floor.between;
    }
    let member = &floor.member;
    Rect::new(member.left, member.top, member.right, floor.wrap.bottom)
}

/// The flanges of a floor member, seen from its side: in sight, or hidden by a wrap.
fn flanges(floor: &FloorLayers, hidden: bool) -> String {
    if hidden == floor.wrap.is_empty() {
        return String::new();
    }
    let member = &floor.member;
    let steel = floor.member_steel;
    [member.top, member.top + steel, member.bottom - steel, member.bottom]
        .iter()
        .fold(Pen::new(), |pen, &y| pen.between(member.left, y, member.right, y))
        .done()
}
