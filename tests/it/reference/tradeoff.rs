//! Remedies as the trade knows them. Common practice, no source, unless said otherwise.

use inchwise_core::design::{Design, EndWallTreatment, Field, PersonnelDoor, RoomUse, Surface};
use inchwise_core::detail::FieldCache;
use inchwise_core::envelope::{End, ThermalBridge};
use inchwise_core::evaluate::evaluate;
use inchwise_core::humidity::SpotPlace;
use inchwise_core::moisture::SurfaceRisk;
use inchwise_core::tradeoff::{
    PlaceRemedies, Remedy, StepKind, WhyNot, least_that_dries, remedies, remedies_for, steps_of,
};
use inchwise_core::units::{Length, ThermalTransmittance};
use inchwise_tests::{Tolerance, close_to};

/// A design whose use is another.
fn used_for(room_use: RoomUse) -> Design {
    let mut design = Design::default();
    design.take_use(room_use);
    design
}

fn tried_at(design: &Design, place: SpotPlace) -> PlaceRemedies {
    let mut cache = FieldCache::default();
    let evaluation = evaluate(&design.check().expect("lawful"), &mut cache);
    let found = remedies_for(&evaluation, place, &mut cache);
    found.expect("a cache that solves").remove(0)
}

fn tried(design: &Design, bridge: ThermalBridge) -> PlaceRemedies {
    tried_at(design, SpotPlace::Detail(bridge))
}

fn offered(tried: &PlaceRemedies, kind: StepKind) -> Option<&Remedy> {
    tried.offered.iter().find(|remedy| remedy.step.kind == kind)
}

/// By how much a step moves the temperature factor of the place, offered or not.
fn rise(tried: &PlaceRemedies, kind: StepKind) -> f64 {
    let not = tried.not_offered.iter().find(|one| one.step.kind == kind);
    let after = match (offered(tried, kind), not.map(|one| &one.why)) {
        (Some(remedy), _) => remedy.place.after,
        (None, Some(WhyNot::DoesNotHelp(after))) => *after,
        (None, other) => panic!("{}: {other:?}", kind.key()),
    };
    after.temperature_factor.value() - tried.place.temperature_factor.value()
}

/// Castings before depth: bare steel that stands in the room is not warmed by the walls beside it, but by a cover, which
/// takes less room than hiding it.
#[test]
fn bare_castings_are_covered_before_walls_get_deeper() {
    let design =
        Design { end_wall_treatment: EndWallTreatment::LeaveBare, ..used_for(RoomUse::Office) };
    let casting = tried(&design, ThermalBridge::TopCasting(End::Front));
    let cover = rise(&casting, StepKind::CoverCastings);
    assert!(cover > 0.1, "a cover raises it by {cover}");
    for wall in [StepKind::DeepenSideWallFoam, StepKind::DeepenFrontEndFoam] {
        let foam = rise(&casting, wall);
        assert!(foam < cover / 10.0, "an inch of foam beside it raises it by {foam}");
    }
    let takes = |remedy: &Remedy| remedy.room.after.lost_volume - remedy.room.before.lost_volume;
    for kind in [StepKind::BuildOutEndWalls, StepKind::DropCeiling] {
        let hidden = offered(&casting, kind).expect("hiding it helps as well");
        assert!(takes(hidden) > takes(&casting.offered[0]) * 10.0, "{} takes room", kind.key());
    }
    assert_eq!(casting.offered[0].step.kind, StepKind::CoverCastings, "it takes the least room");
}

/// A stud that touches the steel is held off, or moved over a trough, before the foam between it and the next gets
/// deeper: foam within the frame's depth does not come between stud and steel.
#[test]
fn a_stud_on_the_steel_is_held_off_before_its_wall_gets_deeper() {
    let design = Design {
        stud_stand_off: Length::ZERO,
        stud_depth: Length::mm(92.0),
        side_wall_foam: Length::mm(50.0),
        ..used_for(RoomUse::Office)
    };
    let stud = tried(&design, ThermalBridge::FrameLine(Surface::SideWall));
    let held_off = rise(&stud, StepKind::HoldStudsOff);
    let deeper = rise(&stud, StepKind::DeepenSideWallFoam);
    assert!(held_off > 4.0 * deeper, "held off {held_off}, deeper {deeper}");
    for kind in [StepKind::HoldStudsOff, StepKind::MoveFrameOverTroughs] {
        assert!(offered(&stud, kind).is_some(), "{} is not offered", kind.key());
    }
}

/// Floor members pass the foam between them: foam round them helps, more foam between them hardly does.
#[test]
fn floor_members_are_wrapped() {
    let member = tried(&used_for(RoomUse::Office), ThermalBridge::FloorMember);
    let wrap = rise(&member, StepKind::WrapFloorMembers);
    let between = rise(&member, StepKind::FoamBetweenFloorMembers);
    assert!(wrap > 5.0 * between, "wrapped {wrap}, more between {between}");
    assert!(offered(&member, StepKind::WrapFloorMembers).is_some());
    assert!(offered(&member, StepKind::HoldStudsOff).is_none(), "studs do not stand on it");
}

/// A bottom casting hangs below the floor in the open: foam under the floor does not reach it.
#[test]
fn foam_under_the_floor_is_not_offered_for_the_bottom_castings() {
    let casting = tried(&used_for(RoomUse::Office), ThermalBridge::BottomCasting(End::Front));
    assert!(casting.place.surface_temperature.as_celsius() < 0.0, "it is in frost");
    let wrap = rise(&casting, StepKind::WrapFloorMembers);
    assert!(wrap.abs() < 0.002, "wrapping the floor raises it by {wrap}");
    for kind in [StepKind::WrapFloorMembers, StepKind::PadBrackets, StepKind::BetterWindows] {
        assert!(offered(&casting, kind).is_none(), "{} is offered", kind.key());
    }
}

/// A laundry needs a fan; sealing its leaks makes it damper. A fan's sleeves are steel from outdoors to the room.
#[test]
fn a_laundry_is_offered_a_fan_and_not_fewer_leaks() {
    let frame = tried(&used_for(RoomUse::LaundryAndDrying), ThermalBridge::StudHead);
    let fan = offered(&frame, StepKind::FitFan).expect("a fan helps");
    assert!(fan.room.after.design_day < fan.room.before.design_day);
    assert!(fan.room.after.load_at_work > fan.room.before.load_at_work, "its air is to be warmed");
    let sleeves =
        [ThermalBridge::DamperSleeve, ThermalBridge::ExhaustSleeve].map(SpotPlace::Detail);
    assert!(fan.worse.iter().all(|place| sleeves.contains(&place.place)), "{:?}", fan.worse);
    assert!(offered(&frame, StepKind::SealLeaks).is_none());
}

/// A window drips at the edge of its glass: a warm spacer helps it, and better windows do.
#[test]
fn windows_are_made_better() {
    let windows = tried_at(&used_for(RoomUse::LaundryAndDrying), SpotPlace::Windows);
    for kind in [StepKind::BetterWindows, StepKind::WarmGlassEdge] {
        assert!(offered(&windows, kind).is_some(), "{} is not offered", kind.key());
    }
}

/// A window far better than its steel frame is coldest at its edge, below 1 - 0.13 U of its mean: there it is tried, and
/// what does not touch it leaves it as it is.
#[test]
fn a_good_window_is_tried_at_its_edge() {
    let design = Design {
        window_transmittance: ThermalTransmittance::new(0.6),
        ..used_for(RoomUse::LaundryAndDrying)
    };
    let windows = tried_at(&design, SpotPlace::Windows);
    let factor = windows.place.temperature_factor.value();
    assert!(factor < 1.0 - 0.13 * 0.6 - 0.01, "it is at {factor}");
    for kind in [StepKind::DeepenCeilingFoam, StepKind::BetterDoor, StepKind::WrapFloorMembers] {
        assert_eq!(rise(&windows, kind), 0.0, "{}", kind.key());
    }
}

/// The next fan of 1300 m3/h after one of 900 with 70 Pa and 50 W, by the fan laws: n = 13/9, 70·n² = 146.05 Pa,
/// 50·n³ = 150.69 W.
#[test]
fn a_bigger_fan_follows_the_fan_laws() {
    let design = Design { damper_count: 3.0, ..Design::default() };
    let steps = steps_of(&design);
    let bigger = steps.iter().find(|step| step.kind == StepKind::BiggerFan).expect("one is sold");
    let with = bigger.taken_by(&design);
    close_to(
        "flow, m3/h",
        with.fan_free_air_flow.as_cubic_metres_per_hour(),
        1300.0,
        Tolerance::absolute(1e-6),
    );
    close_to("pressure, Pa", with.fan_shut_off_pressure.value(), 146.05, Tolerance::absolute(0.01));
    close_to("power, W", with.fan_power.value(), 150.69, Tolerance::absolute(0.01));
}

/// What goes beyond a range is told, and the other end wall may still be foamed.
#[test]
fn a_step_beyond_its_range_is_told_as_unlawful() {
    let design = Design { side_wall_foam: Length::mm(190.0), ..used_for(RoomUse::Office) };
    let stud = tried(&design, ThermalBridge::FrameLine(Surface::SideWall));
    let deeper = stud.not_offered.iter().find(|one| one.step.kind == StepKind::DeepenSideWallFoam);
    match deeper.map(|one| &one.why) {
        Some(WhyNot::Unlawful(errors)) => assert_eq!(errors[0].field, Field::SideWallFoam),
        other => panic!("215 mm of foam: {other:?}"),
    }
}

/// A dry store has one weakest place and no risk; its remedies are for that place. It needs nothing.
#[test]
fn a_dry_store_is_told_its_weakest_place_and_needs_nothing() {
    let mut cache = FieldCache::default();
    let design = Design { personnel_door: PersonnelDoor::None, ..used_for(RoomUse::Store) };
    let evaluation = evaluate(&design.check().expect("lawful"), &mut cache);
    let found = remedies(&evaluation, &mut cache).expect("a cache that solves");
    let weakest = evaluation.cold_spots.weakest().expect("a coldest place").place;
    assert_eq!(found.iter().map(|one| one.place.place).collect::<Vec<_>>(), [weakest]);
    assert_eq!(found[0].place.risk, SurfaceRisk::None);
    assert!(!found[0].offered.is_empty());
    let least = least_that_dries(&evaluation, &mut cache).expect("a cache that solves");
    assert!(least.dries() && least.steps.is_empty());
}

/// Two people asleep wet some places of a room without a personnel door at -33 °C. Steps on its surfaces dry them without
/// a fan, none does alone, and none can be left out.
#[test]
fn a_bedroom_is_dried_by_a_few_steps_of_which_none_can_be_left_out() {
    let design = Design { personnel_door: PersonnelDoor::None, ..used_for(RoomUse::Sleeping) };
    let mut cache = FieldCache::default();
    let evaluation = evaluate(&design.check().expect("lawful"), &mut cache);
    let least = least_that_dries(&evaluation, &mut cache).expect("a cache that solves");
    assert!(least.room.before.at_risk() > 1, "{} places", least.room.before.at_risk());
    assert!(least.dries(), "{:?} stay at risk", least.remaining);
    assert!(least.steps.len() > 1, "{:?}", least.steps);
    let all = least.steps.iter().fold(design.clone(), |design, step| step.taken_by(&design));
    assert_eq!(&all, least.checked.design(), "the steps make the design");
    for step in steps_of(&design) {
        let Ok(with) = step.taken_by(&design).check() else { continue };
        let evaluation = evaluate(&with, &mut cache);
        let dry = evaluation.balance.expect("air").humidity.verdict.is_dry();
        assert!(!dry, "{} dries it alone", step.kind.key());
    }
    assert!(least.steps.iter().all(|step| !step.kind.acts_on_air()), "{:?}", least.steps);
    for without in &least.steps {
        let others = least.steps.iter().filter(|step| *step != without);
        let fewer = others.fold(design.clone(), |design, step| step.taken_by(&design));
        let evaluation = evaluate(&fewer.check().expect("lawful"), &mut cache);
        let dry = evaluation.balance.expect("air").humidity.verdict.is_dry();
        assert!(!dry, "it is dry without {}", without.kind.key());
    }
}

/// A kennel's fan brings sleeves that nothing of the list warms: the nearest is said, and what stays.
#[test]
fn what_nothing_dries_is_said() {
    let mut cache = FieldCache::default();
    let evaluation = evaluate(&used_for(RoomUse::Animals).check().expect("lawful"), &mut cache);
    let least = least_that_dries(&evaluation, &mut cache).expect("a cache that solves");
    assert_eq!(least.dries(), least.remaining.is_empty());
    assert!(least.steps.iter().any(|step| step.kind == StepKind::FitFan), "{:?}", least.steps);
    assert!(least.room.after.at_risk() < least.room.before.at_risk() / 4);
    assert_eq!(least.remaining.len(), least.room.after.at_risk());
}
