//! Everything else that can be chosen, folded under plain headings.

use inchwise_core::caution::Caution;
use inchwise_core::design::{Field, FoamMeasure, LiningMaterial, PersonnelDoor, Wall};
use leptos::prelude::*;

use super::cautions::{See, note};
use super::choice::{Choice, chooser, select};
use super::field::{Entry, field};
use crate::state::State;
use crate::text::Language;

const FRAMING: &[Field] = &[
    Field::StudDepth,
    Field::StudStandOff,
    Field::StudSpacing,
    Field::StudSteelThickness,
    Field::JoistDepth,
    Field::JoistStandOff,
    Field::JoistSpacing,
    Field::JoistSteelThickness,
    Field::FlangeWidth,
    Field::BracketPad,
];
const FOAM: &[Field] =
    &[Field::SideWallFoam, Field::FrontEndFoam, Field::DoorEndFoam, Field::FoamConductivity];
const FLOOR: &[Field] = &[
    Field::FloorFoamBetween,
    Field::FloorFoamUnder,
    Field::FloorFoamOver,
    Field::FloorDeck,
    Field::FloorLevelling,
];
const DOOR: &[Field] = &[Field::DoorWidth, Field::DoorHeight, Field::DoorTransmittance];
const WINDOWS: &[Field] =
    &[Field::WindowCount, Field::WindowWidth, Field::WindowHeight, Field::WindowTransmittance];
const OPENING_FRAMES: &[Field] =
    &[Field::OpeningFrameFoam, Field::DamperCount, Field::DamperDiameter];
const AIR: &[Field] = &[Field::IndoorTemperature, Field::OutdoorTemperature, Field::AirChanges];
const MEASURED: &[Field] = &[
    Field::MeasuredLength,
    Field::MeasuredWidth,
    Field::MeasuredHeight,
    Field::MeasuredCastingFront,
    Field::MeasuredCastingDoor,
    Field::MeasuredCastingWidth,
    Field::MeasuredCastingHeight,
];

/// Rows for a list of fields.
fn rows(state: State, language: Language, fields: &'static [Field]) -> Vec<AnyView> {
    fields
        .chunks(1)
        .filter_map(|single| Entry::single(single, language))
        .map(|entry| field(state, language, entry))
        .collect()
}

fn fold(key: &'static str, heading: &'static str, content: Vec<AnyView>) -> AnyView {
    view! {
        <details data-testid=format!("fold-{key}")>
            <summary><h3>{heading}</h3></summary>
            <div class="folded">{content}</div>
        </details>
    }
    .into_any()
}

fn words(text: &'static str) -> AnyView {
    view! { <p class="note">{text}</p> }.into_any()
}

/// The folded parts.
pub fn folds(state: State, language: Language, see: See) -> AnyView {
    let names = language.folds();
    let notes = move |cautions: &[Caution]| -> Vec<AnyView> {
        cautions.iter().map(|&caution| note(state, language, caution, see)).collect()
    };
    let join = |parts: Vec<Vec<AnyView>>| parts.into_iter().flatten().collect::<Vec<_>>();
    let framing = join(vec![
        vec![words(names.framing_note)],
        notes(&[Caution::FrameTouchesSteel]),
        rows(state, language, FRAMING),
    ]);
    let foam = join(vec![
        rows(state, language, FOAM),
        vec![select(state, foam_measure(language))],
        notes(&[Caution::ThinFoamForVapour, Caution::FoamInLifts, Caution::SprayFoam]),
    ]);
    let floor = join(vec![
        vec![words(names.floor_note)],
        rows(state, language, FLOOR),
        notes(&[Caution::OldFloorAndPaint]),
    ]);
    let lining = join(vec![
        vec![select(state, lining_material(language))],
        rows(state, language, &[Field::LiningThickness]),
        notes(&[Caution::ThermalBarrier]),
    ]);
    let castings =
        join(vec![rows(state, language, &[Field::CastingCover]), notes(&[Caution::BareCastings])]);
    let openings = join(vec![
        vec![select(state, personnel_door(language))],
        rows(state, language, DOOR),
        rows(state, language, WINDOWS),
        vec![select(state, window_wall(language))],
        rows(state, language, OPENING_FRAMES),
        notes(&[Caution::Structure, Caution::HotWork]),
    ]);
    let air = join(vec![
        rows(state, language, AIR),
        vec![words(names.air_note)],
        notes(&[Caution::SealedHeaters, Caution::Electrical]),
    ]);
    let measured = join(vec![vec![words(names.measured_note)], rows(state, language, MEASURED)]);
    view! {
        <div class="folds">
            {fold("framing", names.framing, framing)}
            {fold("foam", names.foam, foam)}
            {fold("floor", names.floor, floor)}
            {fold("lining", names.lining, lining)}
            {fold("castings", names.castings, castings)}
            {fold("openings", names.openings, openings)}
            {fold("air", names.air, air)}
            {fold("measured", names.measured, measured)}
        </div>
    }
    .into_any()
}

fn foam_measure(language: Language) -> Choice {
    let (chosen, choose) = chooser!(foam_measure, FoamMeasure);
    let options = FoamMeasure::ALL.iter().map(|&m| (m.key(), language.foam_measure(m))).collect();
    Choice { label: language.folds().foam_measure, key: "foam_measure", options, chosen, choose }
}

fn lining_material(language: Language) -> Choice {
    let (chosen, choose) = chooser!(lining_material, LiningMaterial);
    let options =
        LiningMaterial::ALL.iter().map(|&m| (m.key(), language.lining_material(m))).collect();
    let label = language.folds().lining_material;
    Choice { label, key: "lining_material", options, chosen, choose }
}

fn personnel_door(language: Language) -> Choice {
    let (chosen, choose) = chooser!(personnel_door, PersonnelDoor);
    let options = PersonnelDoor::ALL
        .iter()
        .map(|&door| (door.key(), language.personnel_door(door)))
        .collect();
    let label = language.folds().personnel_door;
    Choice { label, key: "personnel_door", options, chosen, choose }
}

fn window_wall(language: Language) -> Choice {
    let (chosen, choose) = chooser!(window_wall, Wall);
    let options = Wall::ALL.iter().map(|&wall| (wall.key(), language.wall(wall))).collect();
    Choice { label: language.folds().window_wall, key: "window_wall", options, chosen, choose }
}
