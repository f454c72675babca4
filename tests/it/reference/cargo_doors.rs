//! The end with the cargo doors in both its finishes, by hand.

use inchwise_core::design::{
    CheckedDesign, Design, DoorEndFinish, EndWallTreatment, PersonnelDoor, Surface, Wall,
};
use inchwise_core::detail::{BattenSlice, Detail, DetailField, LeafMeetingSection, drawn_detail};
use inchwise_core::envelope::{Amount, End, Envelope, ThermalBridge};
use inchwise_core::heat_loss::NotCounted;
use inchwise_core::room::{LadderStep, Room, Taker};
use inchwise_core::units::Length;
use inchwise_tests::{Tolerance, close_to};

fn finished(door_end_finish: DoorEndFinish) -> CheckedDesign {
    let design = Design { door_end_finish, ..Design::default() };
    design.check().expect("lawful")
}

fn field(checked: &CheckedDesign, place: ThermalBridge) -> DetailField {
    let field = drawn_detail(checked, place).expect("a detail").solve().expect("a section");
    assert!(field.is_settled, "{place:?}");
    field
}

/// Leaf: 50 mm of foam and 12 of plywood, 62 mm; framed wall: 22 + 41 + 12 = 75. Clear length 5898 − 75 − 62 = 5761 and
/// 5748. End walls built out hide castings behind the front end's lining only: a leaf swings.
#[test]
fn foam_in_the_leaves_takes_less_room() {
    let [framed, leaves] = [DoorEndFinish::FramedWall, DoorEndFinish::FoamedLeaves].map(|finish| {
        let checked = finished(finish);
        (Room::of(&checked), checked)
    });
    let length = |room: &Room| (room.clear.length.as_mm() * 1e6).round() / 1e6;
    assert_eq!([length(&framed.0), length(&leaves.0)], [5748.0, 5761.0]);
    let last = |room: &Room| {
        let rungs = room.length_ladder.iter().rev();
        rungs.take_while(|step| step.taker != Taker::ClearRoom).copied().collect::<Vec<_>>()
    };
    let rung =
        |taker, mm| LadderStep { surface: Some(Surface::DoorEnd), taker, taken: Length::mm(mm) };
    assert_eq!(last(&leaves.0), [rung(Taker::LeafFoam, 50.0), rung(Taker::Lining, 12.0)]);
    assert_eq!(last(&framed.0).first(), Some(&rung(Taker::StandOff, 22.0)));
    let mut design = leaves.1.design().clone();
    design.end_wall_treatment = EndWallTreatment::BuildOutEndWalls;
    assert_eq!(design.stack(Surface::DoorEnd).total(), Length::mm(62.0));
    let room = Room::of(&design.check().expect("lawful"));
    assert!(!room.front_corner.stands_out() && room.door_corner.stands_out());
    assert_eq!(room.headroom_under_header, leaves.0.headroom_under_header);
}

/// Clear width 2352 − 150 = 2202, height 2289 mm, ⌊2202 / 406⌋ + 2 = 7 battens or studs; bodies: 2·16 + 7 + 7 heads of
/// studs, 7 fewer without the framed wall. Each edge of the end is there once.
#[test]
fn metres_of_the_door_end_are_those_by_hand() {
    let amounts = |finish| {
        let checked = finished(finish);
        let envelope = Envelope::of(&checked, &Room::of(&checked).clear);
        [
            ThermalBridge::CargoDoorHeader,
            ThermalBridge::CargoDoorSill,
            ThermalBridge::CargoDoorHinges,
            ThermalBridge::CargoDoorMeeting,
            ThermalBridge::CargoDoorBatten,
            ThermalBridge::CornerPost(End::Door),
            ThermalBridge::FrameLine(Surface::DoorEnd),
            ThermalBridge::RoofEdge(Surface::DoorEnd),
            ThermalBridge::FloorEdge(Surface::DoorEnd),
            ThermalBridge::StudHead,
        ]
        .map(|place| {
            let of_place = |&&(of, _): &&(ThermalBridge, Amount)| of == place;
            let mut there = envelope.thermal_bridges.iter().filter(of_place);
            let amount = there.next().map_or(0.0, |(_, amount)| match amount {
                Amount::Metres(length) => (length.as_mm() * 1e3).round() / 1e3,
                Amount::Pieces(count) => *count,
            });
            assert!(there.next().is_none(), "{place:?} twice");
            amount
        })
    };
    let framed = [2202.0, 2202.0, 0.0, 0.0, 0.0, 4578.0, 16023.0, 0.0, 0.0, 46.0];
    let leaves = [2202.0, 2202.0, 4578.0, 2289.0, 16023.0, 0.0, 0.0, 0.0, 0.0, 39.0];
    assert_eq!(amounts(DoorEndFinish::FramedWall), framed);
    assert_eq!(amounts(DoorEndFinish::FoamedLeaves), leaves);
}

/// What the plain areas of each section lose, by hand. Cut 1 m past the deepest face: under the header of an
/// 8 ft 6 in box, 113 mm, of the ceiling, 101 mm, or the wall. U: leaf 50 mm of foam and 12 of plywood, framed wall with 13 mm
/// of still air as well, ceiling 75 mm of foam, 14 of still air upwards (h_a = 1.95 + 4.21) and plywood, floor 75 mm of
/// foam and 28 of plywood.
#[test]
fn header_and_sill_are_judged_against_their_plain_areas() {
    let outside = 0.04 + 0.002 / 50.0;
    let leaf = 1.0 / (0.13 + 0.05 / 0.026 + 0.012 / 0.13 + outside);
    let air = 1.0 / (1.923 + 4.210);
    let framed = 1.0 / (0.13 + 0.05 / 0.026 + air + 0.012 / 0.13 + outside);
    let ceiling = 1.0 / (0.10 + 0.075 / 0.026 + 1.0 / (1.95 + 4.21) + 0.012 / 0.13 + outside);
    let floor = 1.0 / (0.17 + 0.075 / 0.026 + 0.028 / 0.13 + 0.04);
    for (finish, wall, depth, header_cut) in [
        (DoorEndFinish::FramedWall, framed, 0.075, 1.101),
        (DoorEndFinish::FoamedLeaves, leaf, 0.062, 1.113),
    ] {
        let checked = finished(finish);
        let header = field(&checked, ThermalBridge::CargoDoorHeader);
        let by_hand = wall * (header_cut - 0.101) + ceiling * (header_cut - depth);
        close_to("header", header.flanking.value(), by_hand, Tolerance::absolute(0.0005));
        let sill = field(&checked, ThermalBridge::CargoDoorSill);
        let by_hand = wall * (1.0 + depth) + floor;
        close_to("sill", sill.flanking.value(), by_hand, Tolerance::absolute(0.0005));
        for field in [header, sill] {
            assert!(field.linear_transmittance().value() > 0.0);
        }
    }
}

/// Cutting a body into strips that no heat passes between loses less than the body, layers that heat spreads
/// in freely lose more (Rayleigh). Batten of 45 mm in 406: strips 0.045·(1 / (0.17 + 0.05/0.13 + 0.012/0.13) − U),
/// layers 0.406·(1 / (0.17 + 0.05/λ + 0.012/0.13) − U) with λ the mean of both. Gap of 10 mm: a strip of 62 mm of still air,
/// R = 1 / (1.25 + 4.21), and 30 mm of gasket of 0.25.
#[test]
fn batten_and_gap_lose_what_strips_and_layers_bound() {
    let checked = finished(DoorEndFinish::FoamedLeaves);
    let (surfaces, board) = (0.17 + 0.002 / 50.0, 0.012 / 0.13);
    let plain = 1.0 / (surfaces + 0.05 / 0.026 + board);
    let batten = Detail::Batten(BattenSlice::of(&checked)).solve().expect("a section");
    let loss = batten.linear_transmittance().value();
    let strips = 0.045 * (1.0 / (surfaces + 0.05 / 0.13 + board) - plain);
    let mean = (0.045 * 0.13 + 0.361 * 0.026) / 0.406;
    let layers = 0.406 * (1.0 / (surfaces + 0.05 / mean + board) - plain);
    assert!(strips < loss && loss < layers, "{strips} {loss} {layers}");
    let meeting = LeafMeetingSection::of(&checked);
    let loss = Detail::LeafMeeting(meeting).solve().expect("a section").linear_transmittance();
    let strip = 1.0 / (0.17 + 1.0 / (1.25 + 4.21) + 0.03 / 0.25);
    assert!(loss.value() > 0.01 * (strip - plain), "{loss:?}");
    // Not even the whole of the gap open to the room as far as the gasket, its leaves of bare steel 62 mm wide on
    // either hand, could take more than the air of the room gives them: 2·62 mm and the gap at 1 / 0.13.
    assert!(loss.value() < (0.124 + 0.01) / 0.13, "{loss:?}");
}

/// The header before a framed wall lies behind foam; over leaves that open it is bare to the gap, and colder:
/// so are the posts.
#[test]
fn leaves_that_open_leave_steel_bare_to_their_gaps() {
    let [framed, leaves] = [DoorEndFinish::FramedWall, DoorEndFinish::FoamedLeaves].map(finished);
    for (shut, opens) in [
        (ThermalBridge::CargoDoorHeader, ThermalBridge::CargoDoorHeader),
        (ThermalBridge::CornerPost(End::Door), ThermalBridge::CargoDoorHinges),
    ] {
        let (shut, opens) = (field(&framed, shut), field(&leaves, opens));
        assert!(opens.temperature_factor < shut.temperature_factor, "{opens:?} {shut:?}");
        assert!(opens.linear_transmittance() > shut.linear_transmittance());
    }
}

#[test]
fn leaves_take_no_door_or_window_and_their_fittings_are_named() {
    let mut design = finished(DoorEndFinish::FoamedLeaves).design().clone();
    let evaluation = inchwise_core::evaluate::evaluate_with(
        &design.check().expect("lawful"),
        &mut inchwise_core::detail::FieldCache::default(),
        inchwise_core::detail::Effort::Known,
    );
    assert!(evaluation.heat_loss.not_counted.contains(&NotCounted::CargoDoorFittings));
    design.personnel_door = PersonnelDoor::DoorEnd;
    design.window_wall = Wall::DoorEnd;
    let errors = design.check().expect_err("no wall to stand in");
    let codes: Vec<_> = errors.iter().map(|error| error.code()).collect();
    assert_eq!(codes, ["no_wall_there"; 2]);
    design.door_end_finish = DoorEndFinish::FramedWall;
    design.window_wall = Wall::LeftSide;
    assert!(design.check().is_ok());
}
