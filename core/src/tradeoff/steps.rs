//! Which steps a workshop could take next from a design.
//!
//! What is bought and built comes in steps: foam by the inch, spacers, pads and boards of stock depth, doors, windows
//! and fans as they are sold. All of these are common practice, no source.

use super::{Change, Step, StepKind};
use crate::design::{
    Design, EndWallTreatment, FanGiven, Field, FloorRecesses, FramePosition, PersonnelDoor,
    SleeveEnd, WindowSpacer,
};
use crate::units::{AirChangeRate, Length, VolumeFlow};

/// Covers over castings.
const COVERS: [f64; 3] = [mm(25.0), mm(50.0), mm(75.0)];
/// Spacers that hold studs and joists off the steel.
const STAND_OFFS: [f64; 4] = [mm(12.0), mm(25.0), mm(38.0), mm(50.0)];
/// Plastic pads under brackets.
const PADS: [f64; 2] = [mm(6.0), mm(12.0)];
/// Foam between floor members, up to their full depth.
const BETWEEN_MEMBERS: [f64; 4] = [mm(50.0), mm(75.0), mm(100.0), mm(122.0)];
/// Foam under the floor members and foam boards over the floor.
const UNDER_AND_OVER: [f64; 2] = [mm(25.0), mm(50.0)];
/// Packing round the frames of openings.
const PACKING: [f64; 2] = [mm(25.0), mm(40.0)];
/// Foam on the blades of dampers.
const BLADES: [f64; 2] = [mm(12.0), mm(25.0)];
/// What is sprayed more, about an inch, mm.
const MORE_FOAM: f64 = 25.0;
/// Doors as they are sold, W/(m²·K): plain steel leaf with foam, better, with a thermal break.
const DOORS: [f64; 3] = [1.8, 1.4, 1.0];
/// Windows as they are sold, W/(m²·K): two panes, two with a coating and gas, three.
const WINDOWS: [f64; 4] = [2.8, 1.8, 1.2, 0.8];
/// Fans as they are sold, by their free-air flow.
const FANS: [f64; 7] =
    [flow(450.0), flow(650.0), flow(900.0), flow(1300.0), flow(1800.0), flow(2600.0), flow(3600.0)];
/// Heat exchangers as they are sold.
const EXCHANGERS: [f64; 3] = [0.6, 0.75, 0.85];
/// Leaks, from those of a box with loose doors to those of one that was sealed and tested.
const LEAKS: [f64; 5] =
    [per_hour(2.0), per_hour(1.0), per_hour(0.5), per_hour(0.3), per_hour(0.15)];
/// What a controller is set to. People ask for no drier room than the last.
const TARGETS: [f64; 9] = [0.7, 0.65, 0.6, 0.55, 0.5, 0.45, 0.4, 0.35, 0.3];
/// Dampers that a fan is fitted with: two intakes and one exhaust.
const DAMPERS: f64 = 3.0;

const fn mm(value: f64) -> f64 {
    Length::mm(value).value()
}

const fn per_hour(value: f64) -> f64 {
    AirChangeRate::per_hour(value).value()
}

const fn flow(value: f64) -> f64 {
    VolumeFlow::cubic_metres_per_hour(value).value()
}

/// A number set to another.
const fn number(field: Field, after: f64) -> Change {
    Change::Number { field, before: after, after }
}

/// The next rung above what a design has, further off than half a step of its slider.
fn next_above(design: &Design, field: Field, rungs: &[f64]) -> Option<Change> {
    let above = design.get(field)? + field.range().step / 2.0;
    rungs.iter().copied().filter(|&rung| rung > above).reduce(f64::min).map(|to| number(field, to))
}

/// The next rung below.
fn next_below(design: &Design, field: Field, rungs: &[f64]) -> Option<Change> {
    let below = design.get(field)? - field.range().step / 2.0;
    rungs.iter().copied().filter(|&rung| rung < below).reduce(f64::max).map(|to| number(field, to))
}

/// A depth more, to a tenth of a millimetre, so that depths reached on different ways are the same.
fn deeper(design: &Design, field: Field) -> Option<Change> {
    let tenths = (Length::new(design.get(field)?).as_mm() * 10.0).round();
    Some(number(field, mm(tenths / 10.0 + MORE_FOAM)))
}

/// The steps that stand open to a design, in the order of [`StepKind::ALL`], lawful or not; one of each kind at most.
pub fn steps_of(design: &Design) -> Vec<Step> {
    StepKind::ALL
        .iter()
        .filter_map(|&kind| Step::new(kind, design, changes(kind, design)))
        .collect()
}

/// What a kind of step changes; nothing where it is not open to the design.
fn changes(kind: StepKind, design: &Design) -> Vec<Change> {
    let one = match kind {
        StepKind::CoverCastings
        | StepKind::DeepenCastingCover
        | StepKind::BuildOutEndWalls
        | StepKind::DropCeiling => casting_change(kind, design),
        StepKind::HoldStudsOff => next_above(design, Field::StudStandOff, &STAND_OFFS),
        StepKind::HoldJoistsOff => next_above(design, Field::JoistStandOff, &STAND_OFFS),
        StepKind::MoveFrameOverTroughs => Some(Change::FramePosition {
            before: design.frame_position,
            after: FramePosition::OverTroughs,
        }),
        StepKind::PadBrackets => next_above(design, Field::BracketPad, &PADS),
        StepKind::FoamBetweenFloorMembers => {
            next_above(design, Field::FloorFoamBetween, &BETWEEN_MEMBERS)
        }
        StepKind::WrapFloorMembers => next_above(design, Field::FloorFoamUnder, &UNDER_AND_OVER),
        StepKind::BoardOverFloor => next_above(design, Field::FloorFoamOver, &UNDER_AND_OVER),
        StepKind::PackOpeningFrames => has_openings(design)
            .then(|| next_above(design, Field::OpeningFrameFoam, &PACKING))
            .flatten(),
        StepKind::DeepenSideWallFoam => deeper(design, Field::SideWallFoam),
        StepKind::DeepenFrontEndFoam => deeper(design, Field::FrontEndFoam),
        StepKind::DeepenDoorEndFoam => deeper(design, Field::DoorEndFoam),
        StepKind::DeepenCeilingFoam => deeper(design, Field::CeilingFoam),
        StepKind::BetterDoor => (design.personnel_door != PersonnelDoor::None)
            .then(|| next_below(design, Field::DoorTransmittance, &DOORS))
            .flatten(),
        StepKind::BetterWindows => (design.window_count > 0.0)
            .then(|| next_below(design, Field::WindowTransmittance, &WINDOWS))
            .flatten(),
        StepKind::FillFloorRecesses => {
            let before = design.floor_recesses;
            (before == FloorRecesses::KeptFree)
                .then_some(Change::FloorRecesses { before, after: FloorRecesses::Filled })
        }
        StepKind::MakeFoamWhole => Some(number(Field::ThinFoamLength, 0.0)),
        StepKind::LeaveOutScrews => Some(number(Field::ScrewsThrough, 0.0)),
        StepKind::WarmGlassEdge => (design.window_count > 0.0).then_some(Change::WindowSpacer {
            before: design.window_spacer,
            after: WindowSpacer::WarmEdge,
        }),
        StepKind::RecessSleeves => has_fan(design)
            .then_some(Change::SleeveEnd { before: design.sleeve_end, after: SleeveEnd::Recessed }),
        StepKind::FoamDamperBlades => {
            has_fan(design).then(|| next_above(design, Field::DamperBladeFoam, &BLADES)).flatten()
        }
        StepKind::FitFan => return fitted_fan(design),
        StepKind::BiggerFan => return bigger_fan(design),
        StepKind::FitHeatExchanger => {
            has_fan(design).then(|| next_above(design, Field::HeatRecovery, &EXCHANGERS)).flatten()
        }
        StepKind::SealLeaks => next_below(design, Field::AirChanges, &LEAKS),
        StepKind::LowerTargetHumidity => {
            has_fan(design).then(|| next_below(design, Field::TargetHumidity, &TARGETS)).flatten()
        }
    };
    one.into_iter().collect()
}

fn has_fan(design: &Design) -> bool {
    design.damper_count > 0.0
}

fn has_openings(design: &Design) -> bool {
    design.personnel_door != PersonnelDoor::None || design.window_count > 0.0
}

/// Castings are covered where they are bare, and covered deeper, or hidden by one of two ways, where they are not hidden
/// yet.
fn casting_change(kind: StepKind, design: &Design) -> Option<Change> {
    let before = design.end_wall_treatment;
    let is_bare = before == EndWallTreatment::LeaveBare;
    let is_hidden =
        matches!(before, EndWallTreatment::BuildOutEndWalls | EndWallTreatment::DropCeiling);
    let treated = |after| Some(Change::EndWallTreatment { before, after });
    match kind {
        StepKind::CoverCastings if is_bare => treated(EndWallTreatment::CoverCastings),
        StepKind::BuildOutEndWalls if !is_hidden => treated(EndWallTreatment::BuildOutEndWalls),
        StepKind::DropCeiling if !is_hidden => treated(EndWallTreatment::DropCeiling),
        StepKind::DeepenCastingCover if !is_bare => {
            next_above(design, Field::CastingCover, &COVERS)
        }
        _ => None,
    }
}

/// Dampers and the default fan, where there are none.
fn fitted_fan(design: &Design) -> Vec<Change> {
    if has_fan(design) {
        return Vec::new();
    }
    let usual = |field: Field| field.range().default.map(|value| number(field, value));
    let fan = [
        Field::ExhaustCount,
        Field::DamperDiameter,
        Field::ExhaustDiameter,
        Field::FanFreeAirFlow,
        Field::FanShutOffPressure,
        Field::FanPower,
    ];
    let mut changes = vec![number(Field::DamperCount, DAMPERS)];
    changes.push(Change::FanGiven { before: design.fan_given, after: FanGiven::Label });
    changes.extend(fan.into_iter().filter_map(usual));
    // A fan that cools a room below what it is heated to would be refused.
    if design.fan_cools_above < design.indoor_temperature {
        changes.push(number(Field::FanCoolsAbove, design.indoor_temperature.as_celsius()));
    }
    changes
}

/// The next fan of more flow. Of like fans pressure goes with the square of the flow, power with its cube (fan laws, as
/// in ASHRAE Handbook of HVAC Systems and Equipment, chapter on fans, from memory).
fn bigger_fan(design: &Design) -> Vec<Change> {
    let faster = has_fan(design).then(|| next_above(design, Field::FanFreeAirFlow, &FANS));
    let Some(Some(Change::Number { after, .. })) = faster else {
        return Vec::new();
    };
    let ratio = after / design.fan_free_air_flow.value();
    let points: &[Field] = match design.fan_given {
        FanGiven::Label => &[],
        FanGiven::Curve => &[
            Field::FanFirstFlow,
            Field::FanFirstPressure,
            Field::FanSecondFlow,
            Field::FanSecondPressure,
            Field::FanThirdFlow,
            Field::FanThirdPressure,
        ],
    };
    let grown = |&field: &Field| {
        let by = match field {
            Field::FanPower => ratio * ratio * ratio,
            Field::FanShutOffPressure
            | Field::FanFirstPressure
            | Field::FanSecondPressure
            | Field::FanThirdPressure => ratio * ratio,
            _ => ratio,
        };
        design.get(field).map(|value| number(field, value * by))
    };
    let whole = [Field::FanShutOffPressure, Field::FanPower];
    let mut changes = vec![number(Field::FanFreeAirFlow, after)];
    changes.extend(whole.iter().chain(points).filter_map(grown));
    changes
}

#[cfg(test)]
mod tests {
    use super::{Change, StepKind, steps_of};
    use crate::design::{Design, EndWallTreatment, Field, FramePosition, PersonnelDoor};
    use crate::units::Length;

    fn rung(design: &Design, kind: StepKind) -> Option<f64> {
        let steps = steps_of(design);
        let step = steps.iter().find(|step| step.kind == kind)?;
        match step.changes[..] {
            [Change::Number { after, .. }, ..] => Some(after),
            _ => None,
        }
    }

    #[test]
    fn a_rung_is_the_next_that_is_worth_a_step() {
        let at = |stand_off| {
            let design = Design { stud_stand_off: Length::mm(stand_off), ..Design::default() };
            rung(&design, StepKind::HoldStudsOff)
        };
        assert_eq!(at(0.0), Some(Length::mm(12.0).value()));
        assert_eq!(at(12.0), Some(Length::mm(25.0).value()));
        assert_eq!(at(24.8), Some(Length::mm(38.0).value()), "0.2 mm are no step");
        assert_eq!(at(50.0), None);
        let mut foam = Design::default();
        for depth in [75.0, 100.0, 125.0] {
            let deeper = rung(&foam, StepKind::DeepenSideWallFoam).expect("it has no end");
            assert_eq!(deeper, Length::mm(depth).value());
            foam.set(Field::SideWallFoam, Some(deeper));
        }
        let window =
            Design { window_transmittance: crate::units::ThermalTransmittance::new(1.2), ..foam };
        assert_eq!(rung(&window, StepKind::BetterWindows), Some(0.8));
    }

    #[test]
    fn only_what_is_there_is_changed() {
        let open = |design: &Design| -> Vec<StepKind> {
            steps_of(design).into_iter().map(|step| step.kind).collect()
        };
        let bare = Design {
            end_wall_treatment: EndWallTreatment::LeaveBare,
            personnel_door: PersonnelDoor::None,
            window_count: 0.0,
            frame_position: FramePosition::OverTroughs,
            ..Design::default()
        };
        let kinds = open(&bare);
        for absent in [
            StepKind::DeepenCastingCover,
            StepKind::PackOpeningFrames,
            StepKind::BetterDoor,
            StepKind::BetterWindows,
            StepKind::BiggerFan,
            StepKind::FitHeatExchanger,
            StepKind::LowerTargetHumidity,
            StepKind::MoveFrameOverTroughs,
        ] {
            assert!(!kinds.contains(&absent), "{}", absent.key());
        }
        assert!(kinds.contains(&StepKind::CoverCastings) && kinds.contains(&StepKind::FitFan));
        let with_fan = open(&Design { damper_count: 3.0, ..Design::default() });
        assert!(with_fan.contains(&StepKind::BiggerFan) && !with_fan.contains(&StepKind::FitFan));
        assert!(kinds.is_sorted_by_key(|kind| StepKind::ALL.iter().position(|one| one == kind)));
    }

    #[test]
    fn a_fan_fits_a_room_that_is_warmer_than_it_cools_to() {
        let mut design = Design::default();
        design.set(Field::IndoorTemperature, Some(28.0));
        let steps = steps_of(&design);
        let fan = steps.iter().find(|step| step.kind == StepKind::FitFan).expect("none is there");
        assert!(fan.taken_by(&design).check().is_ok());
    }

    #[test]
    fn keys_are_told_apart() {
        let mut keys = StepKind::ALL.map(StepKind::key).to_vec();
        keys.sort_unstable();
        keys.dedup();
        assert_eq!(keys.len(), StepKind::ALL.len());
    }
}
