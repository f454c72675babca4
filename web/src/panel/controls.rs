//! The first controls: units, box, wall foam, ceiling foam, treatment of the castings.

use inchwise_core::caution::Caution;
use inchwise_core::design::{Field, Surface};
use inchwise_core::evaluate::Evaluation;
use inchwise_core::freight_box::BoxSize;
use leptos::prelude::*;

use super::cautions::{See, note};
use super::choice::{Choice, chooser, select};
use super::field::{Entry, field};
use super::figure::figure;
use super::treatment::treatment;
use crate::measure::{Notation, UnitSystem};
use crate::state::State;
use crate::text::Language;

/// The walls that the first foam control moves together.
const WALLS: &[Field] = &[Field::SideWallFoam, Field::FrontEndFoam, Field::DoorEndFoam];

/// The first controls.
pub fn controls(state: State, language: Language, see: See) -> AnyView {
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
    view! {
        <section class="controls" aria-label=words.title>
            <div class="heading">
                <h3>{words.title}</h3>
                {units_switch(state, language)}
            </div>
            <div>
                {select(state, boxes)}
                <p class="hint">{figure(state, bare_inside)}</p>
            </div>
            <div data-testid="control-wall-foam">
                {field(state, language, walls)}
                <p class="note">{move || walls_differ(state)}</p>
                <p class="note">{figure(state, wall_past_frame)}</p>
                {note(state, language, Caution::ThinFoamForVapour, see)}
                {note(state, language, Caution::SprayFoam, see)}
            </div>
            <div data-testid="control-ceiling-foam">
                {ceiling.map(|ceiling| field(state, language, ceiling))}
                <p class="note">{figure(state, ceiling_past_frame)}</p>
            </div>
            {treatment(state, language)}
            {note(state, language, Caution::BareCastings, see)}
        </section>
    }
    .into_any()
}

fn units_switch(state: State, language: Language) -> AnyView {
    let words = language.controls();
    let option = move |units: UnitSystem, name| {
        view! {
            <label>
                <input
                    type="radio"
                    name="units"
                    value=units.key()
                    data-testid=format!("units-{}", units.key())
                    prop:checked=move || state.units.get() == units
                    on:change=move |_| state.units.set(units)
                />
                <span>{name}</span>
            </label>
        }
    };
    view! {
        <fieldset class="switch" data-testid="units-switch">
            <legend>{words.units}</legend>
            {option(UnitSystem::Metric, words.metric)}
            {option(UnitSystem::Imperial, words.imperial)}
        </fieldset>
    }
    .into_any()
}

fn bare_inside(evaluation: &Evaluation, notation: Notation) -> String {
    let inside = notation.dimensions(&evaluation.room.bare);
    notation.language.controls().inside.with(&[&inside])
}

/// Whether the walls that move together stand at different depths now.
fn walls_differ(state: State) -> String {
    let notation = state.notation();
    let depths = state
        .design
        .with(|design| [design.side_wall_foam, design.front_end_foam, design.door_end_foam]);
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
