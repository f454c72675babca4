//! Everything else that can be chosen, folded under plain headings.

use inchwise_core::caution::Caution;
use inchwise_core::design::{
    DamperScreen, DoorEndFinish, FanGiven, Field, FloorRecesses, FoamMeasure, FramePosition,
    LiningMaterial, OutdoorAirRule, PersonnelDoor, SleeveEnd, Wall, WeatherCover, WindowSpacer,
};

use super::cautions::note;
use super::choice::{Choice, chooser, select};
use super::field::{Entry, field};
use super::stock::stock_depths;
use crate::dom::{El, el};
use crate::reactive::Watched;
use crate::state::State;
use crate::text::{Folds, Language};

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
const FOAM_FAULTS: &[Field] =
    &[Field::ScrewsThrough, Field::ThinFoamDepth, Field::ThinFoamWidth, Field::ThinFoamLength];
const FLOOR: &[Field] = &[
    Field::FloorFoamBetween,
    Field::FloorFoamUnder,
    Field::FloorFoamOver,
    Field::FloorDeck,
    Field::FloorLevelling,
    Field::FloorDrains,
];
const DOOR: &[Field] = &[Field::DoorWidth, Field::DoorHeight, Field::DoorTransmittance];
const WINDOWS: &[Field] =
    &[Field::WindowCount, Field::WindowWidth, Field::WindowHeight, Field::WindowTransmittance];
const OPENING_FRAMES: &[Field] = &[Field::OpeningFrameFoam];
const AIR: &[Field] = &[Field::IndoorTemperature, Field::OutdoorTemperature, Field::AirChanges];
const COLD_SPELL: &[Field] = &[Field::ColdSpellDays];
const SUN: &[Field] = &[
    Field::TooWarm,
    Field::Paint,
    Field::SunOnRoof,
    Field::WindowSun,
    Field::SunOnWindows,
    Field::FrontFaces,
];
const HOURS: &[Field] = &[
    Field::UsedFrom,
    Field::UsedUntil,
    Field::UsedDays,
    Field::Setback,
    Field::ReheatTime,
    Field::Contents,
];
const ROOM_USE: &[Field] = &[
    Field::TargetHumidity,
    Field::PersonCount,
    Field::HeatOfPerson,
    Field::EquipmentInUse,
    Field::EquipmentAlways,
    Field::LaundryLoads,
    Field::LaundryTime,
    Field::Showers,
    Field::PlantWater,
    Field::AnimalMass,
    Field::AnimalHeat,
    Field::MoppedFloor,
    Field::HoseDowns,
    Field::UnventedPropane,
    Field::UnventedKerosene,
];
pub(super) const DAMPERS: &[Field] = &[
    Field::DamperCount,
    Field::ExhaustCount,
    Field::DamperDiameter,
    Field::ExhaustDiameter,
    Field::DuctLength,
    Field::DamperRise,
    Field::DamperBladeFoam,
];
pub(super) const SCREENS: &[Field] = &[Field::ScreenFreeArea, Field::ScreenClogged];
pub(super) const FAN: &[Field] = &[Field::FanFreeAirFlow, Field::FanShutOffPressure];
pub(super) const FAN_POINTS: &[Field] = &[
    Field::FanFirstFlow,
    Field::FanFirstPressure,
    Field::FanSecondFlow,
    Field::FanSecondPressure,
    Field::FanThirdFlow,
    Field::FanThirdPressure,
];
pub(super) const RECOVERY: &[Field] = &[Field::HeatRecovery, Field::RecoveryFrostLimit];
pub(super) const FAN_RUN: &[Field] = &[Field::FanPower, Field::FanCoolsAbove];
const AIR_RULE: &[Field] = &[Field::RuleAirChanges];
const MEASURED: &[Field] = &[
    Field::MeasuredLength,
    Field::MeasuredWidth,
    Field::MeasuredHeight,
    Field::MeasuredCastingFront,
    Field::MeasuredCastingDoor,
    Field::MeasuredCastingWidth,
    Field::MeasuredCastingHeight,
];

/// What is folded away, in the order it is shown.
#[derive(Clone, Copy)]
enum Part {
    Words(&'static str),
    Fields(&'static [Field]),
    Choice(fn(Language) -> Choice),
    Minds(&'static [Caution]),
}

/// The folded parts: name, heading, content.
type Fold = (&'static str, fn(&Folds) -> &'static str, &'static [fn(&Folds) -> Part]);

const FOLDS: [Fold; 11] = [
    (
        "framing",
        |words| words.framing,
        &[
            |words| Part::Words(words.framing_note),
            |_| Part::Minds(&[Caution::FrameTouchesSteel]),
            |_| Part::Fields(FRAMING),
            |_| Part::Choice(frame_position),
            |words| Part::Words(words.frame_position_note),
        ],
    ),
    (
        "foam",
        |words| words.foam,
        &[
            |_| Part::Fields(FOAM),
            |_| Part::Choice(foam_measure),
            |_| Part::Choice(door_end_finish),
            |_| Part::Fields(FOAM_FAULTS),
            |_| {
                Part::Minds(&[Caution::ThinFoamForVapour, Caution::FoamInLifts, Caution::SprayFoam])
            },
        ],
    ),
    (
        "floor",
        |words| words.floor,
        &[
            |words| Part::Words(words.floor_note),
            |_| Part::Fields(FLOOR),
            |_| Part::Choice(floor_recesses),
            |_| Part::Minds(&[Caution::OldFloorAndPaint]),
        ],
    ),
    (
        "lining",
        |words| words.lining,
        &[
            |_| Part::Choice(lining_material),
            |_| Part::Fields(&[Field::LiningThickness, Field::PanelThickness]),
            |_| Part::Minds(&[Caution::ThermalBarrier]),
        ],
    ),
    (
        "castings",
        |words| words.castings,
        &[
            |_| Part::Fields(&[Field::CastingCover]),
            |_| Part::Minds(&[Caution::BareCastings, Caution::BareCastingsBehindLining]),
        ],
    ),
    (
        "openings",
        |words| words.openings,
        &[
            |_| Part::Choice(personnel_door),
            |_| Part::Fields(DOOR),
            |_| Part::Fields(WINDOWS),
            |_| Part::Choice(window_wall),
            |_| Part::Choice(window_spacer),
            |_| Part::Fields(OPENING_FRAMES),
            |_| Part::Minds(&[Caution::BareOpeningFrames, Caution::Structure, Caution::HotWork]),
        ],
    ),
    (
        "air",
        |words| words.air,
        &[
            |_| Part::Fields(AIR),
            |words| Part::Words(words.air_note),
            |_| Part::Fields(COLD_SPELL),
            |words| Part::Words(words.place_note),
            |_| Part::Minds(&[Caution::SealedHeaters, Caution::Electrical]),
        ],
    ),
    (
        "use",
        |words| words.room_use,
        &[
            |_| Part::Fields(ROOM_USE),
            |words| Part::Words(words.drying_note),
            |_| Part::Fields(HOURS),
            |_| Part::Choice(outdoor_air_rule),
            |_| Part::Fields(AIR_RULE),
            |_| Part::Minds(&[Caution::UnventedFlame, Caution::WetUse, Caution::SleepersWayOut]),
        ],
    ),
    (
        "ventilation",
        |words| words.ventilation,
        &[
            |_| Part::Fields(DAMPERS),
            |_| Part::Choice(sleeve_end),
            |_| Part::Choice(weather_cover),
            |_| Part::Choice(damper_screen),
            |_| Part::Fields(SCREENS),
            |_| Part::Choice(fan_given),
            |_| Part::Fields(FAN),
            |words| Part::Words(words.fan_note),
            |_| Part::Fields(FAN_POINTS),
            |_| Part::Fields(RECOVERY),
            |_| Part::Fields(FAN_RUN),
            |_| Part::Minds(&[Caution::SuctionAndFlues]),
        ],
    ),
    ("sun", |words| words.sun, &[|_| Part::Fields(SUN)]),
    (
        "measured",
        |words| words.measured,
        &[|words| Part::Words(words.measured_note), |_| Part::Fields(MEASURED)],
    ),
];

impl Part {
    fn shown(self, state: State, language: Language) -> Vec<El> {
        match self {
            Self::Words(words) => vec![el("p").class("remark").text(words)],
            Self::Choice(choice) => vec![select(state, &choice(language))],
            Self::Minds(cautions) => {
                cautions.iter().map(|&caution| note(state, language, caution)).collect()
            }
            Self::Fields(fields) => fields
                .chunks(1)
                .filter_map(|single| Entry::single(single, language))
                .flat_map(|entry| {
                    let stock = stock_depths(state, language, entry.fields[0]);
                    [Some(field(state, language, entry)), stock].into_iter().flatten()
                })
                .collect(),
        }
    }
}

/// The folded parts. What is inside is made when it is first opened.
pub fn folds(state: State, language: Language) -> El {
    let words = language.folds();
    let folds: Vec<El> = FOLDS
        .iter()
        .map(|&(key, heading, parts)| {
            let opened = Watched::new(false);
            let content = el("div").class("folded").children_with(move || {
                let parts = if opened.get() { parts } else { &[] };
                parts.iter().flat_map(|part| part(words).shown(state, language)).collect()
            });
            el("details")
                .test_id(&format!("fold-{key}"))
                .on("toggle", move |_| {
                    if !opened.get_untracked() {
                        opened.set(true);
                    }
                })
                .with(&[el("summary").child(&el("h3").text(heading(words))), content])
        })
        .collect();
    el("form").class("folds").with(&folds)
}

fn foam_measure(language: Language) -> Choice {
    let (chosen, choose) = chooser!(foam_measure, FoamMeasure);
    let options = FoamMeasure::ALL.iter().map(|&m| (m.key(), language.foam_measure(m))).collect();
    Choice { label: language.folds().foam_measure, key: "foam_measure", options, chosen, choose }
}

fn frame_position(language: Language) -> Choice {
    let (chosen, choose) = chooser!(frame_position, FramePosition);
    let options =
        FramePosition::ALL.iter().map(|&p| (p.key(), language.frame_position(p))).collect();
    let label = language.folds().frame_position;
    Choice { label, key: "frame_position", options, chosen, choose }
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

fn outdoor_air_rule(language: Language) -> Choice {
    let (chosen, choose) = chooser!(outdoor_air_rule, OutdoorAirRule);
    let options = OutdoorAirRule::ALL
        .iter()
        .map(|&rule| (rule.key(), language.outdoor_air_rule(rule)))
        .collect();
    let label = language.folds().outdoor_air_rule;
    Choice { label, key: "outdoor_air_rule", options, chosen, choose }
}

fn floor_recesses(language: Language) -> Choice {
    let (chosen, choose) = chooser!(floor_recesses, FloorRecesses);
    let options =
        FloorRecesses::ALL.iter().map(|&one| (one.key(), language.floor_recesses(one))).collect();
    let label = language.folds().floor_recesses;
    Choice { label, key: "floor_recesses", options, chosen, choose }
}

fn door_end_finish(language: Language) -> Choice {
    let (chosen, choose) = chooser!(door_end_finish, DoorEndFinish);
    let options =
        DoorEndFinish::ALL.iter().map(|&one| (one.key(), language.door_end_finish(one))).collect();
    let label = language.folds().door_end_finish;
    Choice { label, key: "door_end_finish", options, chosen, choose }
}

fn window_spacer(language: Language) -> Choice {
    let (chosen, choose) = chooser!(window_spacer, WindowSpacer);
    let options =
        WindowSpacer::ALL.iter().map(|&one| (one.key(), language.window_spacer(one))).collect();
    let label = language.folds().window_spacer;
    Choice { label, key: "window_spacer", options, chosen, choose }
}

fn sleeve_end(language: Language) -> Choice {
    let (chosen, choose) = chooser!(sleeve_end, SleeveEnd);
    let options = SleeveEnd::ALL.iter().map(|&one| (one.key(), language.sleeve_end(one))).collect();
    Choice { label: language.folds().sleeve_end, key: "sleeve_end", options, chosen, choose }
}

fn weather_cover(language: Language) -> Choice {
    let (chosen, choose) = chooser!(weather_cover, WeatherCover);
    let options = WeatherCover::ALL
        .iter()
        .map(|&cover| (cover.key(), language.weather_cover(cover)))
        .collect();
    let label = language.folds().weather_cover;
    Choice { label, key: "weather_cover", options, chosen, choose }
}

fn damper_screen(language: Language) -> Choice {
    let (chosen, choose) = chooser!(damper_screen, DamperScreen);
    let options =
        DamperScreen::ALL.iter().map(|&one| (one.key(), language.damper_screen(one))).collect();
    let label = language.folds().damper_screen;
    Choice { label, key: "damper_screen", options, chosen, choose }
}

fn fan_given(language: Language) -> Choice {
    let (chosen, choose) = chooser!(fan_given, FanGiven);
    let options = FanGiven::ALL.iter().map(|&one| (one.key(), language.fan_given(one))).collect();
    Choice { label: language.folds().fan_given, key: "fan_given", options, chosen, choose }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// What the first controls hold.
    const FIRST: [Field; 1] = [Field::CeilingFoam];

    #[test]
    fn every_number_stands_once_in_the_controls() {
        let words = Language::English.folds();
        let folded =
            FOLDS.iter().flat_map(|(_, _, parts)| parts.iter()).flat_map(|part| {
                match part(words) {
                    Part::Fields(fields) => fields,
                    _ => &[],
                }
            });
        let shown: Vec<Field> = FIRST.iter().chain(folded).copied().collect();
        for &field in Field::ALL {
            let times = shown.iter().filter(|&&one| one == field).count();
            assert_eq!(times, 1, "{field:?}");
        }
    }
}
