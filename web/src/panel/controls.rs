//! The first controls: units, box, wall foam, ceiling foam, treatment of the castings.

use inchwise_core::caution::Caution;
use inchwise_core::design::{Field, Surface};
use inchwise_core::evaluate::Evaluation;
use inchwise_core::freight_box::BoxSize;

use super::cautions::note;
use super::choice::{Choice, chooser, select};
use super::field::{Entry, field};
use super::figure::{Figure, figure};
use super::treatment::treatment;
use crate::dom::{El, el};
use crate::measure::{Notation, UnitSystem};
use crate::reactive::keep_up;
use crate::state::State;
use crate::text::Language;

/// The walls that the first foam control moves together.
const WALLS: &[Field] = &[Field::SideWallFoam, Field::FrontEndFoam, Field::DoorEndFoam];

/// The first controls.
pub fn controls(state: State, language: Language) -> El {
    let words = language.controls();
    let (chosen, choose) = chooser!(box_size, BoxSize);
    let boxes = Choice {
        label: words.box_size,
        key: "box",
        options: BoxSize::ALL.iter().map(|&b| (b.key(), language.box_size(b))).collect(),
        chosen,
        choose,
    };
    let walls = Entry { fields: WALLS, label: words.wall_foam, key: "wall_foam" };
    let ceiling = Entry::single(&[Field::CeilingFoam], language);
    let ceiling = ceiling.map(|ceiling| field(state, language, ceiling));
    let said = |write: Figure| el("p").class("remark").text_with(figure(state, write));
    // A form of its own: a browser that fills in forms looks through all fields of the page after
    // each change of one that belongs to none, out of sight or not.
    el("form").class("controls").attr("aria-label", words.title).with(&[
        el("div")
            .class("heading")
            .with(&[el("h3").text(words.title), units_switch(state, language)]),
        el("div").with(&[
            select(state, &boxes),
            el("p").class("hint").text_with(figure(state, bare_inside)),
        ]),
        el("div").test_id("control-wall-foam").with(&[
            field(state, language, walls),
            el("p").class("remark").text_with(move || walls_differ(state)),
            said(wall_past_frame),
            note(state, language, Caution::ThinFoamForVapour),
            note(state, language, Caution::SprayFoam),
        ]),
        el("div")
            .test_id("control-ceiling-foam")
            .with(ceiling.as_slice())
            .child(&said(ceiling_past_frame)),
        treatment(state, language),
        note(state, language, Caution::BareCastings),
        note(state, language, Caution::BareCastingsBehindLining),
    ])
}

fn units_switch(state: State, language: Language) -> El {
    let words = language.controls();
    let option = move |units: UnitSystem, name| {
        let button = el("input")
            .attr("type", "radio")
            .attr("name", "units")
            .attr("value", units.key())
            .test_id(&format!("units-{}", units.key()))
            .on("change", move |_| state.units.set(units));
        let shown = button.clone();
        keep_up(Box::new(move || {
            shown.property("checked", &(state.units.get() == units).into());
        }));
        el("label").with(&[button, el("span").text(name)])
    };
    el("fieldset").class("switch").test_id("units-switch").with(&[
        el("legend").text(words.units),
        option(UnitSystem::Metric, words.metric),
        option(UnitSystem::Imperial, words.imperial),
    ])
}

fn bare_inside(evaluation: &Evaluation, notation: Notation) -> String {
    let inside = notation.dimensions(&evaluation.room.bare);
    notation.language.controls().inside.with(&[&inside])
}

/// Whether the walls that move together stand at different depths now.
fn walls_differ(state: State) -> String {
    let notation = state.notation();
    let depths =
        state.chosen(|design| [design.side_wall_foam, design.front_end_foam, design.door_end_foam]);
    if depths.iter().all(|depth| *depth == depths[0]) {
        return String::new();
    }
    let [side, front, door] = depths.map(|depth| notation.length(depth));
    notation.language.controls().walls_differ.with(&[&side, &front, &door])
}

fn wall_past_frame(evaluation: &Evaluation, notation: Notation) -> String {
    past_frame(evaluation, Surface::SideWall, notation)
}

fn ceiling_past_frame(evaluation: &Evaluation, notation: Notation) -> String {
    past_frame(evaluation, Surface::Ceiling, notation)
}

/// Whether the foam costs room.
fn past_frame(evaluation: &Evaluation, surface: Surface, notation: Notation) -> String {
    let words = notation.language.controls();
    let stack = evaluation.checked.design().stack(surface);
    let past = stack.foam_past_frame();
    if past > inchwise_core::units::Length::ZERO {
        words.past_frame.with(&[&notation.length(past)])
    } else {
        words.within_frame.with(&[&notation.length(stack.frame_face())])
    }
}
