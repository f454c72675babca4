//! Build: framing, foam, floor, lining, openings and the measured box; at the end all that is to be
//! minded.

mod cautions;
mod summary;

use inchwise_core::caution::Caution;
use inchwise_core::design::{
    Field, FoamMeasure, FramePosition, LiningMaterial, PersonnelDoor, STOCK_MEMBER_DEPTHS, Wall,
};
use inchwise_core::units::Length;
use leptos::prelude::*;

use super::part::{Head, Minds, words};
use crate::state::Planner;
use crate::text::{Folds, Language};
use crate::ui::{Choice, Disclosure, NumberFields, Select, chooser};
use cautions::Cautions;
use summary::Summary;

const STUDS: &[Field] = &[Field::StudDepth];

const FRAMING: &[Field] = &[Field::StudStandOff, Field::StudSpacing, Field::StudSteelThickness];

const JOISTS: &[Field] = &[Field::JoistDepth];

const JOISTING: &[Field] = &[
    Field::JoistStandOff,
    Field::JoistSpacing,
    Field::JoistSteelThickness,
    Field::FlangeWidth,
    Field::BracketPad,
];

const FOAM: &[Field] = &[
    Field::SideWallFoam,
    Field::FrontEndFoam,
    Field::DoorEndFoam,
    Field::CeilingFoam,
    Field::FoamConductivity,
];

const FLOOR: &[Field] = &[
    Field::FloorFoamBetween,
    Field::FloorFoamUnder,
    Field::FloorFoamOver,
    Field::FloorDeck,
    Field::FloorLevelling,
];

const LINING: &[Field] = &[Field::LiningThickness];

const DOOR: &[Field] = &[Field::DoorWidth, Field::DoorHeight, Field::DoorTransmittance];

const WINDOWS: &[Field] = &[
    Field::WindowCount,
    Field::WindowWidth,
    Field::WindowHeight,
    Field::WindowTransmittance,
    Field::OpeningFrameFoam,
];

const MEASURED: &[Field] = &[
    Field::MeasuredLength,
    Field::MeasuredWidth,
    Field::MeasuredHeight,
    Field::MeasuredCastingFront,
    Field::MeasuredCastingDoor,
    Field::MeasuredCastingWidth,
    Field::MeasuredCastingHeight,
];

/// The numbers of the design that it holds.
pub const FIELDS: &[&[Field]] =
    &[STUDS, FRAMING, JOISTS, JOISTING, FOAM, FLOOR, LINING, DOOR, WINDOWS, MEASURED];

const POSITION: Choice = chooser!(
    "frame_position",
    frame_position,
    FramePosition,
    |language| language.folds().frame_position,
    |language, it| language.frame_position(it)
);

const MEASURE: Choice = chooser!(
    "foam_measure",
    foam_measure,
    FoamMeasure,
    |language| language.folds().foam_measure,
    |language, it| language.foam_measure(it)
);

const BOARD: Choice = chooser!(
    "lining_material",
    lining_material,
    LiningMaterial,
    |language| language.folds().lining_material,
    |language, it| language.lining_material(it)
);

const WHERE_DOOR: Choice = chooser!(
    "personnel_door",
    personnel_door,
    PersonnelDoor,
    |language| language.folds().personnel_door,
    |language, it| language.personnel_door(it)
);

const WHERE_WINDOWS: Choice = chooser!(
    "window_wall",
    window_wall,
    Wall,
    |language| language.folds().window_wall,
    |language, it| language.wall(it)
);

/// The sheet.
pub fn sheet(planner: Planner) -> AnyView {
    let heading = move |say: fn(&Folds) -> &'static str| {
        Signal::derive(move || say(planner.language.get().folds()).to_owned())
    };
    let note = move |say: fn(Language) -> &'static str| {
        view! { <p class="hint">{words(planner, say)}</p> }
    };
    let about = move || {
        planner.look(|it| planner.language.get().box_size(it.checked.design().box_size).to_owned())
    };
    view! {
        <Head about=Signal::derive(about)/>
        <Disclosure test_id="fold-framing" heading=heading(|folds| folds.framing) open=true>
            {note(|language| language.folds().framing_note)}
            <Minds cautions=&[Caution::FrameTouchesSteel]/>
            <NumberFields fields=STUDS/>
            <StockDepths field=Field::StudDepth/>
            <NumberFields fields=FRAMING/>
            <NumberFields fields=JOISTS/>
            <StockDepths field=Field::JoistDepth/>
            <NumberFields fields=JOISTING/>
            <Select choice=POSITION/>
            {note(|language| language.folds().frame_position_note)}
        </Disclosure>
        <Disclosure test_id="fold-foam" heading=heading(|folds| folds.foam)>
            <NumberFields fields=FOAM/>
            <Select choice=MEASURE/>
            <Minds cautions=&[Caution::ThinFoamForVapour, Caution::FoamInLifts, Caution::SprayFoam]/>
        </Disclosure>
        <Disclosure test_id="fold-floor" heading=heading(|folds| folds.floor)>
            {note(|language| language.folds().floor_note)}
            <NumberFields fields=FLOOR/>
            <Minds cautions=&[Caution::OldFloorAndPaint]/>
        </Disclosure>
        <Disclosure test_id="fold-lining" heading=heading(|folds| folds.lining)>
            <Select choice=BOARD/>
            <NumberFields fields=LINING/>
            <Minds cautions=&[Caution::ThermalBarrier]/>
        </Disclosure>
        <Disclosure test_id="fold-openings" heading=heading(|folds| folds.openings)>
            <Select choice=WHERE_DOOR/>
            <NumberFields fields=DOOR/>
            <Select choice=WHERE_WINDOWS/>
            <NumberFields fields=WINDOWS/>
            <Minds cautions=&[Caution::BareOpeningFrames, Caution::Structure, Caution::HotWork]/>
        </Disclosure>
        <Disclosure test_id="fold-measured" heading=heading(|folds| folds.measured)>
            {note(|language| language.folds().measured_note)}
            <NumberFields fields=MEASURED/>
        </Disclosure>
        <Summary/>
        <Cautions/>
    }
    .into_any()
}

/// The depths a frame's members are sold in, one touch each.
#[component]
fn StockDepths(field: Field) -> impl IntoView {
    let planner = Planner::here();
    let button = move |depth: Length| {
        let is_chosen =
            move || planner.design.with(|design| design.get(field)) == Some(depth.value());
        view! {
            <button
                type="button"
                class="stock-depth"
                aria-pressed=move || is_chosen().to_string()
                on:click=move |_| planner.choose(|it| it.set(field, Some(depth.value())))
            >
                {move || planner.notation().length(depth)}
            </button>
        }
    };
    let buttons = STOCK_MEMBER_DEPTHS.map(button).into_iter().collect_view();
    let name = move || {
        let language = planner.language.get();
        language.folds().stock_depths_of.with(&[language.field(field)])
    };
    view! {
        <div class="stock" role="group" aria-label=name>
            <span class="hint">{words(planner, |language| language.folds().stock_depths)}</span>
            {buttons}
        </div>
    }
}
