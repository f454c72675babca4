//! The plan, drawn.

use inchwise_core::design::{Field, Surface};
use inchwise_core::units::Length;

use super::casting::{Corners, castings};
use super::dimension::{Tape, tapes};
use super::geometry::{
    FIGURE_CROWN, FIGURE_SHOULDERS, Fate, OpeningKind, Plan, Point, Rect, Swing, all_closed,
    all_open, rects,
};
use super::grip::{Grip, Towards};
use super::paper::{Paper, label, path, still_path};
use super::pattern::{Patterns, unit_of};
use crate::dom::{El, svg};
use crate::kept::Kept;
use crate::measure::{Notation, plain};
use crate::state::State;
use crate::text::Language;

const NAME: &str = "plan";

/// Past this length, mm, a box on a narrow page is too small for the form of each stud.
const LONG: f64 = 8000.0;

/// The plan with a grip on either end wall.
pub fn plan(state: State, language: Language) -> El {
    let shape = Kept::new(move || state.look(|outcome| Plan::of(&outcome.good)));
    let size = Kept::new(move || shape.with(|shape| shape.paper));
    let words = language.drawing();
    let told = move || {
        let notation = state.notation();
        state.look(|outcome| {
            let good = &outcome.good;
            let (design, room) = (good.checked.design(), &good.room);
            words.plan_told.with(&[
                &notation.length(room.bare.length),
                &notation.length(room.bare.width),
                &notation.length(room.clear.length),
                &notation.length(room.clear.width),
                &notation.length(design.front_end_foam),
                &notation.length(design.side_wall_foam),
                &notation.length(design.door_end_foam),
                language.castings_told(Fate::of(good)),
            ])
        })
    };
    let labels = move || {
        let notation = state.notation();
        shape.with(|shape| labels(shape, notation))
    };
    let paper = Paper { name: NAME, size, title: words.plan };
    let drawn = paper.drawn(told, &picture(shape, size), labels, &grips(state, shape, size));
    paper
        .figure("plan-figure", &[drawn])
        .class_with("long", move || shape.with(|shape| shape.bare.width() > LONG))
}

fn grips(state: State, shape: Kept<Plan>, size: Kept<Rect>) -> [El; 2] {
    // Not level with one another, so that they clear one another in a short box.
    let on_end = move |x: fn(&Plan, f64) -> f64, share: f64| {
        move |foam| shape.with(|shape| Point::new(x(shape, foam), shape.bare.height() * share))
    };
    let front = Grip {
        state,
        key: "front-end",
        fields: &[Field::FrontEndFoam],
        surface: Surface::FrontEnd,
        towards: Towards::Right,
        name: |words| words.front_grip,
        paper: size,
        at: Box::new(on_end(Plan::front_face_at, 0.4)),
        with_note: false,
    };
    let door = Grip {
        state,
        key: "door-end",
        fields: &[Field::DoorEndFoam],
        surface: Surface::DoorEnd,
        towards: Towards::Left,
        name: |words| words.door_grip,
        paper: size,
        at: Box::new(on_end(Plan::door_face_at, 0.6)),
        with_note: false,
    };
    [front.drawn(), door.drawn()]
}

fn unit(shape: &Plan) -> f64 {
    unit_of(shape.paper.width())
}

fn length_tape(shape: &Plan) -> Tape {
    Tape {
        upright: false,
        at: (shape.outside.bottom + shape.paper.bottom) / 2.0,
        ends: [shape.bare.left, shape.clear.left, shape.clear.right, shape.bare.right],
        from: shape.outside.bottom + 20.0,
        unit: unit(shape),
    }
}

fn width_tape(shape: &Plan) -> Tape {
    Tape {
        upright: true,
        at: (shape.outside.left + shape.paper.left) / 2.0,
        ends: [shape.bare.top, shape.clear.top, shape.clear.bottom, shape.bare.bottom],
        from: shape.outside.left - 20.0,
        unit: unit(shape),
    }
}

fn labels(shape: &Plan, notation: Notation) -> Vec<El> {
    let words = notation.language.drawing();
    let (paper, clear) = (&shape.paper, &shape.clear);
    let mm = |value: f64| notation.length(Length::mm(value));
    let (length, width) = (length_tape(shape), width_tape(shape));
    let inwards = clear.width() * 0.03;
    let front = Point::new(clear.left + inwards, length.at);
    let doors = Point::new(clear.right - inwards, length.at);
    vec![
        label(paper, length.middle(), "on-line strong", &mm(clear.width())),
        label(paper, width.middle(), "on-line upright strong", &mm(clear.height())),
        label(paper, front, "after small roomy on-line", words.front_end),
        label(paper, doors, "before small roomy on-line", words.cargo_doors),
    ]
}

fn picture(shape: Kept<Plan>, size: Kept<Rect>) -> Vec<El> {
    let patterns = Patterns { name: NAME };
    let all = |draw: fn(&Plan) -> String| move || shape.with(draw);
    let tapes_of = Kept::new(move || shape.with(|shape| [length_tape(shape), width_tape(shape)]));
    let corners = Kept::new(move || {
        shape.with(|shape| Corners { corners: shape.castings.clone(), unit: unit(shape) })
    });
    let person = svg("g")
        .class("person")
        .attr_with("transform", all(|shape| shape.figure.translated()))
        .child(&still_path("", FIGURE_SHOULDERS))
        .child(&still_path("", FIGURE_CROWN));
    let mut picture = vec![
        patterns.defined(move || unit_of(size.get().width())),
        path("room", all(|shape| shape.clear.path())),
        path("foam", all(|shape| all_closed([&shape.foam_outside[..], &shape.foam_inside[..]])))
            .attr("fill", &patterns.foam())
            .attr("fill-rule", "evenodd"),
        path("stud fine-only", all(|shape| all_open(shape.studs.iter().map(|stud| &stud[..])))),
        path("stud coarse-only", all(|shape| all_open(shape.studs.iter().map(|stud| &stud[1..3])))),
        path("board", all(|shape| rects(&shape.lining)))
            .attr("fill", &patterns.wood())
            .attr("fill-rule", "evenodd"),
        path("sheet-line", all(|shape| all_open(shape.sheets.iter().map(|line| &line[..])))),
        path("steel-outline", all(|shape| rects(&shape.cargo_doors))),
        path("face", all(|shape| all_open(shape.end_faces.iter().map(|line| &line[..])))),
    ];
    picture.extend(castings(corners, &patterns));
    picture.extend([
        path("hole", all(|shape| rects(shape.openings.iter().map(|opening| &opening.hole)))),
        path("swing", all(swings)),
        path("leaf", all(|shape| lines(shape, OpeningKind::Door))),
        path("glass", all(|shape| lines(shape, OpeningKind::Window))),
        person,
    ]);
    picture.extend(tapes(tapes_of, &patterns));
    picture
}

/// The leaves of doors, or the glass of windows.
fn lines(shape: &Plan, kind: OpeningKind) -> String {
    let of_kind = shape.openings.iter().filter(|opening| opening.kind == kind);
    all_open(of_kind.flat_map(|opening| &opening.lines).map(|line| &line[..]))
}

/// The paths that doors' edges take.
fn swings(shape: &Plan) -> String {
    let arc = |swing: &Swing| {
        let (shut, open, radius) = (swing.shut, swing.open, swing.radius);
        let turn = u8::from(swing.clockwise);
        let radius = plain(radius, 1, " ");
        format!("M{}A{radius}{radius}0 0 {turn} {}", shut.written(), open.written())
    };
    shape.openings.iter().filter_map(|opening| opening.swing.as_ref()).map(arc).collect()
}
