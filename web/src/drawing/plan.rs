//! The plan, drawn.

use inchwise_core::design::{Field, Surface};
use inchwise_core::units::Length;
use leptos::prelude::*;

use super::dimension::Tape;
use super::geometry::{
    DrawnOpening, FIGURE_CROWN, FIGURE_SHOULDERS, Fate, OpeningKind, Plan, Point, all_closed,
    all_open, rects,
};
use super::grip::{Grip, Towards};
use super::paper::{Paper, heading, label, together};
use super::pattern::Patterns;
use super::section::casting;
use crate::measure::Notation;
use crate::state::State;

const NAME: &str = "plan";

/// The plan with a grip on either end wall.
pub fn plan(state: State) -> AnyView {
    let shape = Memo::new(move |_| Plan::of(&state.good()));
    let size = Memo::new(move |_| shape.with(|shape| shape.paper));
    let words = move || state.language.get().drawing();
    let title = Signal::derive(move || words().plan);
    let told = Signal::derive(move || {
        let (notation, good) = (state.notation(), state.good());
        let design = good.checked.design();
        let room = &good.room;
        words().plan_told.with(&[
            &notation.length(room.bare.length),
            &notation.length(room.bare.width),
            &notation.length(room.clear.length),
            &notation.length(room.clear.width),
            &notation.length(design.front_end_foam),
            &notation.length(design.side_wall_foam),
            &notation.length(design.door_end_foam),
            state.language.get().castings_told(Fate::of(&good)),
        ])
    });
    let paper = Paper { name: NAME, size, title, told };
    let middle = move |x: fn(&Plan, f64) -> f64| {
        move |foam| shape.with(|shape| Point::new(x(shape, foam), shape.bare.centre().y))
    };
    let grips = together(vec![
        Grip {
            state,
            key: "front-end",
            fields: &[Field::FrontEndFoam],
            surface: Surface::FrontEnd,
            towards: Towards::Right,
            name: |words| words.front_grip,
            paper: size,
            at: Box::new(middle(Plan::front_face_at)),
            with_note: false,
        }
        .drawn(),
        Grip {
            state,
            key: "door-end",
            fields: &[Field::DoorEndFoam],
            surface: Surface::DoorEnd,
            towards: Towards::Left,
            name: |words| words.door_grip,
            paper: size,
            at: Box::new(middle(Plan::door_face_at)),
            with_note: false,
        }
        .drawn(),
    ]);
    let labels = move || {
        let notation = state.notation();
        shape.with(|shape| labels(shape, notation))
    };
    // A long box on a narrow page is too small for the form of each stud.
    let class = move || {
        let long = shape.with(|shape| shape.bare.width() > 8000.0);
        if long { "drawing-figure plan-figure long" } else { "drawing-figure plan-figure" }
    };
    view! {
        <figure class=class data-testid=NAME>
            {heading(title)}
            {paper.drawn(move || shape.with(picture), labels, grips)}
        </figure>
    }
    .into_any()
}

fn length_tape(shape: &Plan) -> Tape {
    Tape {
        upright: false,
        at: (shape.outside.bottom + shape.paper.bottom) / 2.0,
        ends: [shape.bare.left, shape.clear.left, shape.clear.right, shape.bare.right],
        from: shape.outside.bottom + 20.0,
    }
}

fn width_tape(shape: &Plan) -> Tape {
    Tape {
        upright: true,
        at: (shape.outside.left + shape.paper.left) / 2.0,
        ends: [shape.bare.top, shape.clear.top, shape.clear.bottom, shape.bare.bottom],
        from: shape.outside.left - 20.0,
    }
}

fn labels(shape: &Plan, notation: Notation) -> AnyView {
    let words = notation.language.drawing();
    let paper = &shape.paper;
    let mm = |value: f64| notation.length(Length::mm(value));
    let below = (shape.outside.bottom + shape.paper.bottom) / 2.0;
    together(vec![
        label(paper, length_tape(shape).middle(), "on-line strong", mm(shape.clear.width())),
        label(
            paper,
            width_tape(shape).middle(),
            "on-line upright strong",
            mm(shape.clear.height()),
        ),
        label(
            paper,
            Point::new(shape.clear.left + shape.clear.width() * 0.03, below),
            "after small roomy on-line",
            words.front_end,
        ),
        label(
            paper,
            Point::new(shape.clear.right - shape.clear.width() * 0.03, below),
            "before small roomy on-line",
            words.cargo_doors,
        ),
    ])
}

fn picture(shape: &Plan) -> AnyView {
    let patterns = Patterns::of(NAME, shape.paper.width());
    let foam = all_closed([&shape.foam_outside[..], &shape.foam_inside[..]]);
    let [back, face] = shape.lining;
    let lining = [back.corners(), face.corners()];
    let studs = all_open(shape.studs.iter().map(|stud| &stud[..]));
    let webs = all_open(shape.studs.iter().map(|stud| &stud[1..3]));
    view! {
        {patterns.defined()}
        <path class="room" d=shape.clear.path() />
        <path class="foam" fill=patterns.foam() fill-rule="evenodd" d=foam />
        <path class="stud fine-only" d=studs />
        <path class="stud coarse-only" d=webs />
        <path
            class="board"
            fill=patterns.wood()
            fill-rule="evenodd"
            d=all_closed(lining.iter().map(|outline| &outline[..]))
        />
        <path class="sheet-line" d=all_open(shape.sheets.iter().map(|line| &line[..])) />
        <path class="steel-outline" d=rects(&shape.cargo_doors) />
        {together(shape.castings.iter().map(|corner| casting(corner, &patterns)).collect())}
        {together(shape.openings.iter().map(opening).collect())}
        {figure(shape)}
        {length_tape(shape).drawn(&patterns)}
        {width_tape(shape).drawn(&patterns)}
        {faces(shape)}
    }
    .into_any()
}

/// The foam faces that can be moved: both ends.
fn faces(shape: &Plan) -> AnyView {
    let (front, door) =
        (shape.front_face_at(shape.front_face.foam), shape.door_face_at(shape.door_face.foam));
    let (top, bottom) =
        (shape.bare.top + shape.side_face.foam, shape.bare.bottom - shape.side_face.foam);
    let lines = [front, door].map(|x| [Point::new(x, top), Point::new(x, bottom)]);
    view! { <path class="face" d=all_open(lines.iter().map(|line| &line[..])) /> }.into_any()
}

fn opening(opening: &DrawnOpening) -> AnyView {
    let swing = opening.swing.map(|swing| {
        let turn = u8::from(swing.clockwise);
        let (shut, open, radius) = (swing.shut, swing.open, swing.radius);
        let arc = format!(
            "M{:.1} {:.1}A{radius:.1} {radius:.1} 0 0 {turn} {:.1} {:.1}",
            shut.x, shut.y, open.x, open.y
        );
        view! { <path class="swing" d=arc /> }
    });
    let class = match opening.kind {
        OpeningKind::Door => "leaf",
        OpeningKind::Window => "glass",
    };
    view! {
        <path class="hole" d=opening.hole.path() />
        {swing}
        <path class=class d=all_open(opening.lines.iter().map(|line| &line[..])) />
    }
    .into_any()
}

fn figure(shape: &Plan) -> AnyView {
    let place = format!("translate({:.1} {:.1})", shape.figure.x, shape.figure.y);
    view! {
        <g class="figure" transform=place>
            <path d=FIGURE_SHOULDERS />
            <path d=FIGURE_CROWN />
        </g>
    }
    .into_any()
}
