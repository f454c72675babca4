//! The cross-section, drawn.

use inchwise_core::design::{Field, Surface};
use inchwise_core::units::Length;

use super::casting::{Corners, castings};
use super::dimension::{Tape, tapes, upright};
use super::geometry::{
    FIGURE_BODY, FIGURE_HEAD, FIGURE_HEIGHT, FIGURE_LINES, Fate, FloorLayers, Point, Rect, Section,
    all_closed, all_open, closed, rects,
};
use super::grip::{Grip, Towards};
use super::paper::{Paper, label, path, still_path};
use super::pattern::{Patterns, unit_of};
use crate::dom::{El, svg};
use crate::kept::Kept;
use crate::measure::Notation;
use crate::state::State;
use crate::text::Language;

/// The choices that the wall foam sets together.
pub const WALL_FOAM: &[Field] = &[Field::SideWallFoam, Field::FrontEndFoam, Field::DoorEndFoam];

const NAME: &str = "section";

/// The cross-section with its two grips.
pub fn section(state: State, language: Language) -> El {
    let shape = Kept::new(move || state.look(|outcome| Section::of(&outcome.good)));
    let size = Kept::new(move || shape.with(|shape| shape.paper));
    let fate = Kept::new(move || state.look(|outcome| Fate::of(&outcome.good)));
    let words = language.drawing();
    let told = move || {
        let notation = state.notation();
        state.look(|outcome| {
            let design = outcome.good.checked.design();
            let room = &outcome.good.room;
            words.section_told.with(&[
                &notation.length(room.bare.width),
                &notation.length(room.bare.height),
                &notation.length(room.clear.width),
                &notation.length(room.clear.height),
                &notation.length(design.side_wall_foam),
                &notation.length(design.ceiling_foam),
                language.castings_told(fate.get()),
            ])
        })
    };
    let labels = move || {
        let notation = state.notation();
        shape.with(|shape| labels(shape, notation, fate.get()))
    };
    let paper = Paper { name: NAME, size, title: words.section };
    let drawn = paper.drawn(told, &picture(shape, size), labels, &grips(state, shape, size));
    paper.figure("section-figure", &[drawn])
}

fn grips(state: State, shape: Kept<Section>, size: Kept<Rect>) -> [El; 2] {
    let wall = Grip {
        state,
        key: "wall",
        fields: WALL_FOAM,
        surface: Surface::SideWall,
        towards: Towards::Left,
        name: |words| words.wall_grip,
        paper: size,
        at: Box::new(move |foam| {
            shape.with(|shape| Point::new(shape.wall_face_at(foam), shape.bare.height() * 0.52))
        }),
        with_note: true,
    };
    let ceiling = Grip {
        state,
        key: "ceiling",
        fields: &[Field::CeilingFoam],
        surface: Surface::Ceiling,
        towards: Towards::Down,
        name: |words| words.ceiling_grip,
        paper: size,
        at: Box::new(move |foam| {
            shape.with(|shape| Point::new(shape.bare.width() * 0.7, shape.ceiling_face_at(foam)))
        }),
        with_note: true,
    };
    [wall.drawn(), ceiling.drawn()]
}

fn unit(shape: &Section) -> f64 {
    unit_of(shape.paper.width())
}

fn width_tape(shape: &Section) -> Tape {
    Tape {
        upright: false,
        at: shape.outside.bottom + 165.0,
        ends: [shape.bare.left, shape.clear.left, shape.clear.right, shape.bare.right],
        from: shape.outside.bottom + 20.0,
        unit: unit(shape),
    }
}

fn height_tape(shape: &Section) -> Tape {
    Tape {
        upright: true,
        at: shape.outside.left - 128.0,
        ends: [shape.bare.top, shape.clear.top, shape.clear.bottom, shape.bare.bottom],
        from: shape.outside.left - 20.0,
        unit: unit(shape),
    }
}

fn labels(shape: &Section, notation: Notation, fate: Fate) -> Vec<El> {
    let words = notation.language.drawing();
    let (bare, clear) = (&shape.bare, &shape.clear);
    let put = |x: f64, y: f64, class: &str, text: &str| {
        label(&shape.paper, Point::new(x, y), class, text)
    };
    let mm = |value: f64| notation.length(Length::mm(value));
    let number = |value: f64| notation.length_bare(Length::mm(value));
    let (width, height) = (width_tape(shape), height_tape(shape));
    let beside = height.at + 62.0;
    let mut labels = vec![
        label(&shape.paper, width.middle(), "on-line strong", &mm(clear.width())),
        label(&shape.paper, height.middle(), "on-line upright strong", &mm(clear.height())),
        put(bare.left - 14.0, width.at, "before small roomy", &number(clear.left - bare.left)),
        put(bare.right + 14.0, width.at, "after small roomy", &number(bare.right - clear.right)),
        put(
            beside,
            (bare.top + clear.top) / 2.0,
            "upright small roomy",
            &number(clear.top - bare.top),
        ),
        put(
            beside,
            (clear.bottom + bare.bottom) / 2.0,
            "upright small roomy",
            &number(bare.bottom - clear.bottom),
        ),
        put(
            shape.figure.x,
            shape.figure.y - 420.0,
            "small roomy",
            &words.tall.with(&[&mm(FIGURE_HEIGHT)]),
        ),
    ];
    if let Some([top, bottom]) = shape.headroom {
        let phrase = if fate == Fate::Bare { words.under_castings } else { words.under_corners };
        let text = phrase.with(&[&mm(bottom.y - top.y)]);
        labels.push(put(top.x, (top.y + bottom.y) / 2.0, "upright beside small", &text));
    }
    let class =
        if fate == Fate::Bare { "after small casting alert" } else { "after small casting" };
    let [_, name] = casting_leader(shape);
    labels.push(put(name.x, name.y, class, notation.language.casting_label(fate)));
    labels
}

/// From the left casting, or what is round it, to its name.
fn casting_leader(shape: &Section) -> [Point; 2] {
    let corner = &shape.castings[0];
    let shown = corner.cover.as_ref().map_or(corner.steel, |cover| cover.standing_out);
    let name = Point::new(shape.clear.left + 150.0, shown.bottom.max(shape.clear.top) + 110.0);
    [Point::new(shown.right - 8.0, shown.bottom - 8.0), name]
}

fn picture(shape: Kept<Section>, size: Kept<Rect>) -> Vec<El> {
    let patterns = Patterns { name: NAME };
    let all = |draw: fn(&Section) -> String| move || shape.with(draw);
    let wrapped = move || shape.with(|shape| !shape.floor.wrap.is_empty());
    let tapes_of = Kept::new(move || shape.with(|shape| [width_tape(shape), height_tape(shape)]));
    let corners = Kept::new(move || {
        shape.with(|shape| Corners { corners: shape.castings.to_vec(), unit: unit(shape) })
    });
    let person = svg("g")
        .class("person")
        .attr_with("transform", all(|shape| shape.figure.translated()))
        .child(&still_path("", FIGURE_BODY))
        .child(&still_path("", FIGURE_HEAD))
        .child(&still_path("person-line", FIGURE_LINES));
    let mut picture = vec![
        patterns.defined(move || unit_of(size.get().width())),
        path("room", all(|shape| shape.clear.path())),
        path("member", all(|shape| shape.floor.member.path())),
        path("foam", all(|shape| rects(&[under_floor(&shape.floor)])))
            .attr("fill", &patterns.foam()),
        path("beyond", all(|shape| flanges(&shape.floor))).class_with("hidden", wrapped),
        path("foam", all(|shape| rects(&[shape.floor.board]))).attr("fill", &patterns.foam()),
        path("board", all(|shape| rects(&[shape.floor.plywood, shape.floor.deck])))
            .attr("fill", &patterns.wood()),
        path("coat", all(|shape| rects(&[shape.floor.levelling]))),
        path("steel", all(|shape| rects(&shape.bottom_castings))),
        path("ground", all(ground)),
        path("foam", all(|shape| closed(&shape.foam))).attr("fill", &patterns.foam()),
        path("member", all(|shape| rects(&[shape.studs[0], shape.studs[1], shape.joist]))),
        path("board", all(|shape| closed(&shape.lining))).attr("fill", &patterns.wood()),
        path("beyond", all(outer_flats)),
        path("steel hollow", all(rails)).attr("fill-rule", "evenodd"),
        path("sheet-line", all(sheets)),
        path("face", all(faces)),
    ];
    picture.extend(castings(corners, &patterns));
    picture.extend([path("datum", all(|shape| shape.bare.path())), person]);
    picture.extend(tapes(tapes_of, &patterns));
    picture.push(path("fine", all(fine)));
    picture
}

/// Headroom under the corner, and the leader to the casting's name.
fn fine(shape: &Section) -> String {
    let headroom = shape.headroom.map(|ends| upright(&ends, unit(shape))).unwrap_or_default();
    headroom + &all_open([&casting_leader(shape)[..]])
}

/// The foam faces that can be moved.
fn faces(shape: &Section) -> String {
    let right = shape.wall_face_at(shape.side_face.foam);
    let left = shape.bare.left + shape.side_face.foam;
    let top = shape.ceiling_face_at(shape.ceiling_face.foam);
    let bottom = shape.bare.bottom;
    all_open([&[
        Point::new(left, bottom),
        Point::new(left, top),
        Point::new(right, top),
        Point::new(right, bottom),
    ][..]])
}

/// The sheets, cut along a crest.
fn sheets(shape: &Section) -> String {
    let (bare, rail) = (&shape.bare, &shape.rails[0]);
    let foot = shape.floor.plywood.bottom;
    let wall = |x: f64| [Point::new(x, rail.bottom), Point::new(x, foot)];
    let roof = [Point::new(rail.left, bare.top), Point::new(shape.rails[1].right, bare.top)];
    all_open([wall(bare.left), wall(bare.right), roof].iter().map(|line| &line[..]))
}

/// The outer flats beyond the cut.
fn outer_flats(shape: &Section) -> String {
    let (bare, rail) = (&shape.bare, &shape.rails[0]);
    let foot = shape.floor.plywood.bottom;
    let [side, roof] = shape.behind_crests;
    let half = rail.width() / 2.0;
    let wall = |x: f64| [Point::new(x, rail.bottom), Point::new(x, foot)];
    let over = [
        Point::new(rail.left + half, bare.top - roof),
        Point::new(shape.rails[1].right - half, bare.top - roof),
    ];
    all_open([wall(bare.left - side), wall(bare.right + side), over].iter().map(|line| &line[..]))
}

/// The hollow top rails.
fn rails(shape: &Section) -> String {
    let steel = shape.rail_steel;
    let hollow: Vec<[Point; 4]> = shape
        .rails
        .iter()
        .flat_map(|rail| [rail.corners(), rail.grown(-steel, -steel, -steel, -steel).corners()])
        .collect();
    all_closed(hollow.iter().map(|outline| &outline[..]))
}

fn ground(shape: &Section) -> String {
    let outside = &shape.outside;
    all_open([&[
        Point::new(outside.left - 60.0, outside.bottom),
        Point::new(outside.right + 60.0, outside.bottom),
    ][..]])
}

/// Foam under the plywood; a wrap hides the members' sides as well.
fn under_floor(floor: &FloorLayers) -> Rect {
    if floor.wrap.is_empty() {
        return floor.between;
    }
    let member = &floor.member;
    Rect::new(member.left, member.top, member.right, floor.wrap.bottom)
}

/// The flanges of a floor member, seen from its side.
fn flanges(floor: &FloorLayers) -> String {
    let member = &floor.member;
    let edges = [
        member.top,
        member.top + floor.member_steel,
        member.bottom - floor.member_steel,
        member.bottom,
    ];
    let lines = edges.map(|y| [Point::new(member.left, y), Point::new(member.right, y)]);
    all_open(lines.iter().map(|line| &line[..]))
}
