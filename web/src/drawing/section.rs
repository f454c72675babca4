//! The cross-section, drawn.

use inchwise_core::design::{Field, Surface};
use inchwise_core::units::Length;
use leptos::prelude::*;

use super::dimension::{Tape, between};
use super::geometry::{
    Corner, FIGURE_BODY, FIGURE_HEAD, FIGURE_HEIGHT, FIGURE_LINES, Fate, FloorLayers, Point, Rect,
    Section, Showing, all_closed, all_open, closed, rects,
};
use super::grip::{Grip, Towards};
use super::paper::{Paper, heading, label, together};
use super::pattern::Patterns;
use crate::measure::Notation;
use crate::state::State;

/// The choices that the wall foam sets together.
pub const WALL_FOAM: &[Field] = &[Field::SideWallFoam, Field::FrontEndFoam, Field::DoorEndFoam];

const NAME: &str = "section";

/// The cross-section with its two grips.
pub fn section(state: State) -> AnyView {
    let shape = Memo::new(move |_| Section::of(&state.good()));
    let size = Memo::new(move |_| shape.with(|shape| shape.paper));
    let words = move || state.language.get().drawing();
    let title = Signal::derive(move || words().section);
    let fate = Memo::new(move |_| Fate::of(&state.good()));
    let told = Signal::derive(move || {
        let (notation, good) = (state.notation(), state.good());
        let design = good.checked.design();
        let room = &good.room;
        words().section_told.with(&[
            &notation.length(room.bare.width),
            &notation.length(room.bare.height),
            &notation.length(room.clear.width),
            &notation.length(room.clear.height),
            &notation.length(design.side_wall_foam),
            &notation.length(design.ceiling_foam),
            state.language.get().castings_told(fate.get()),
        ])
    });
    let paper = Paper { name: NAME, size, title, told };
    let grips = together(vec![
        Grip {
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
        }
        .drawn(),
        Grip {
            state,
            key: "ceiling",
            fields: &[Field::CeilingFoam],
            surface: Surface::Ceiling,
            towards: Towards::Down,
            name: |words| words.ceiling_grip,
            paper: size,
            at: Box::new(move |foam| {
                shape.with(|shape| {
                    Point::new(shape.bare.width() * 0.62, shape.ceiling_face_at(foam))
                })
            }),
            with_note: true,
        }
        .drawn(),
    ]);
    let labels = move || {
        let notation = state.notation();
        shape.with(|shape| labels(shape, notation, fate.get()))
    };
    view! {
        <figure class="drawing-figure section-figure" data-testid=NAME>
            {heading(title)}
            {paper.drawn(move || shape.with(picture), labels, grips)}
        </figure>
    }
    .into_any()
}

fn width_tape(shape: &Section) -> Tape {
    Tape {
        upright: false,
        at: shape.outside.bottom + 165.0,
        ends: [shape.bare.left, shape.clear.left, shape.clear.right, shape.bare.right],
        from: shape.outside.bottom + 20.0,
    }
}

fn height_tape(shape: &Section) -> Tape {
    Tape {
        upright: true,
        at: shape.outside.left - 128.0,
        ends: [shape.bare.top, shape.clear.top, shape.clear.bottom, shape.bare.bottom],
        from: shape.outside.left - 20.0,
    }
}

fn labels(shape: &Section, notation: Notation, fate: Fate) -> AnyView {
    let words = notation.language.drawing();
    let paper = &shape.paper;
    let mm = |value: f64| notation.length(Length::mm(value));
    let mut labels = vec![
        label(paper, width_tape(shape).middle(), "on-line strong", mm(shape.clear.width())),
        label(
            paper,
            height_tape(shape).middle(),
            "on-line upright strong",
            mm(shape.clear.height()),
        ),
        label(
            paper,
            Point::new(shape.figure.x, shape.figure.y - 420.0),
            "small roomy on-figure",
            words.tall.with(&[&mm(FIGURE_HEIGHT)]),
        ),
    ];
    if let Some([top, bottom]) = shape.headroom {
        let phrase = if fate == Fate::Bare { words.under_castings } else { words.under_corners };
        let middle = Point::new(top.x, (top.y + bottom.y) / 2.0);
        labels.push(label(
            paper,
            middle,
            "upright beside small",
            phrase.with(&[&mm(bottom.y - top.y)]),
        ));
    }
    let corner = &shape.castings[0];
    let under = corner
        .cover
        .as_ref()
        .map_or(corner.steel.bottom.max(shape.clear.top), |cover| cover.standing_out.bottom);
    let class = if fate == Fate::Bare { "after small alert" } else { "after small" };
    labels.push(label(
        paper,
        Point::new(shape.clear.left + 90.0, under + 75.0),
        class,
        notation.language.casting_label(fate),
    ));
    together(labels)
}

fn picture(shape: &Section) -> AnyView {
    let patterns = Patterns::of(NAME, shape.paper.width());
    view! {
        {patterns.defined()}
        <path class="room" d=shape.clear.path() />
        {floor(&shape.floor, &patterns)}
        {bottom_castings(shape)}
        <path class="foam" fill=patterns.foam() d=closed(&shape.foam) />
        {frame(shape)}
        <path class="board" fill=patterns.wood() d=closed(&shape.lining) />
        {skin(shape)}
        {together(shape.castings.iter().map(|corner| casting(corner, &patterns)).collect())}
        <path class="datum" d=shape.bare.path() />
        {figure(shape)}
        {width_tape(shape).drawn(&patterns)}
        {height_tape(shape).drawn(&patterns)}
        {shape.headroom.map(|ends| between(&ends, &patterns))}
        {faces(shape)}
    }
    .into_any()
}

/// The foam faces that can be moved.
fn faces(shape: &Section) -> AnyView {
    let x = shape.wall_face_at(shape.side_face.foam);
    let y = shape.ceiling_face_at(shape.ceiling_face.foam);
    let [left, right] = [shape.bare.left + shape.side_face.foam, x];
    let lines = [
        [Point::new(left, y), Point::new(left, shape.bare.bottom)],
        [Point::new(left, y), Point::new(right, y)],
        [Point::new(right, y), Point::new(right, shape.bare.bottom)],
    ];
    view! { <path class="face" d=all_open(lines.iter().map(|line| &line[..])) /> }.into_any()
}

/// Studs and joists from the side: seen in the air gap, dimmed where foam stands before them.
fn frame(shape: &Section) -> AnyView {
    let members = [shape.studs[0], shape.studs[1], shape.joist];
    view! { <path class="member" d=rects(&members) /> }.into_any()
}

/// The sheets cut along a crest, the outer flats beyond, and the hollow top rails.
fn skin(shape: &Section) -> AnyView {
    let bare = &shape.bare;
    let [side, roof] = shape.behind_crests;
    let rail = shape.rails[0];
    let foot = shape.floor.plywood.bottom;
    let cut = [
        [Point::new(bare.left, rail.bottom), Point::new(bare.left, foot)],
        [Point::new(bare.right, rail.bottom), Point::new(bare.right, foot)],
        [Point::new(rail.left, bare.top), Point::new(shape.rails[1].right, bare.top)],
    ];
    let beyond = [
        [Point::new(bare.left - side, rail.bottom), Point::new(bare.left - side, foot)],
        [Point::new(bare.right + side, rail.bottom), Point::new(bare.right + side, foot)],
        [
            Point::new(rail.left + 30.0, bare.top - roof),
            Point::new(shape.rails[1].right - 30.0, bare.top - roof),
        ],
    ];
    let steel = shape.rail_steel;
    let hollow: Vec<[Point; 4]> = shape
        .rails
        .iter()
        .flat_map(|rail| [rail.corners(), rail.grown(-steel, -steel, -steel, -steel).corners()])
        .collect();
    view! {
        <path class="beyond" d=all_open(beyond.iter().map(|line| &line[..])) />
        <path
            class="steel hollow"
            fill-rule="evenodd"
            d=all_closed(hollow.iter().map(|outline| &outline[..]))
        />
        <path class="sheet-line" d=all_open(cut.iter().map(|line| &line[..])) />
    }
    .into_any()
}

fn bottom_castings(shape: &Section) -> AnyView {
    let ground = [
        Point::new(shape.outside.left - 60.0, shape.outside.bottom),
        Point::new(shape.outside.right + 60.0, shape.outside.bottom),
    ];
    view! {
        <path
            class="steel"
            d=rects(&shape.bottom_castings)
        />
        <path class="ground" d=all_open([&ground[..]]) />
    }
    .into_any()
}

fn floor(floor: &FloorLayers, patterns: &Patterns) -> AnyView {
    let member = floor.member;
    let wrapped = !floor.wrap.is_empty();
    // A wrap hides the members' sides as well.
    let foam_under = if wrapped {
        Rect::new(member.left, member.top, member.right, floor.wrap.bottom)
    } else {
        floor.between
    };
    let flange = |y: f64| [Point::new(member.left, y), Point::new(member.right, y)];
    let flanges = [
        flange(member.top),
        flange(member.top + floor.member_steel),
        flange(member.bottom - floor.member_steel),
        flange(member.bottom),
    ];
    let woods = [floor.plywood, floor.deck];
    let woods = woods.iter().filter(|wood| !wood.is_empty()).map(Rect::path).collect::<String>();
    let board = (!floor.board.is_empty()).then(|| {
        view! { <path class="foam" fill=patterns.foam() d=floor.board.path() /> }
    });
    view! {
        <path class="member" d=member.path() />
        <path class="foam" fill=patterns.foam() d=foam_under.path() />
        <path
            class=if wrapped { "beyond hidden" } else { "beyond" }
            d=all_open(flanges.iter().map(|line| &line[..]))
        />
        {board}
        <path class="board" fill=patterns.wood() d=woods />
        <path class="coat" d=floor.levelling.path() />
    }
    .into_any()
}

/// A casting with what is done about it.
pub fn casting(corner: &Corner, patterns: &Patterns) -> AnyView {
    let cover = corner.cover.as_ref().map(|cover| {
        view! {
            <path class="foam" fill=patterns.foam() d=cover.foam.path() />
            <path class="board" fill=patterns.wood() d=closed(&cover.board) />
        }
    });
    let class = match corner.showing {
        Showing::Cut => "steel",
        Showing::Bare => "steel bare",
        Showing::Behind => "steel-outline hidden",
    };
    let mark = (corner.showing == Showing::Bare).then(|| bare_mark(corner, patterns));
    view! {
        {cover}
        <path class=class d=corner.steel.path() />
        {mark}
    }
    .into_any()
}

/// A drop that hangs from bare steel.
fn bare_mark(corner: &Corner, patterns: &Patterns) -> AnyView {
    let centre = corner.steel.centre();
    let size = patterns.unit * 13.0;
    let place = format!("translate({:.1} {:.1}) scale({size:.2})", centre.x, centre.y);
    view! {
        <g class="drop" transform=place>
            <path d="M0-1C0.5-0.3 0.75 0.1 0.75 0.45A0.75 0.75 0 0 1-0.75 0.45C-0.75 0.1-0.5-0.3 0-1Z" />
        </g>
    }
    .into_any()
}

fn figure(shape: &Section) -> AnyView {
    let place = format!("translate({:.1} {:.1})", shape.figure.x, shape.figure.y);
    view! {
        <g class="figure" transform=place>
            <path d=FIGURE_BODY />
            <path d=FIGURE_HEAD />
            <path class="figure-line" d=FIGURE_LINES />
        </g>
    }
    .into_any()
}
