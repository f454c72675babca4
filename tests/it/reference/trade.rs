//! What the trade takes for granted. Common practice, no source, unless said otherwise.

use inchwise_core::caution::{Caution, cautions};
use inchwise_core::design::{Design, EndWallTreatment, Surface};
use inchwise_core::detail::{Effort, FieldCache};
use inchwise_core::envelope::{Opening, ThermalBridge};
use inchwise_core::evaluate::evaluate_with;
use inchwise_core::freight_box::BoxSize;
use inchwise_core::room::Room;
use inchwise_core::units::Length;
use inchwise_tests::{Tolerance, close_to};

fn room(design: &Design) -> Room {
    Room::of(&design.check().expect("an ordinary build passes its check"))
}

/// A 1-5/8 in stud held 7/8 in off the steel puts its inner face 2-1/2 in from the ribs.
#[test]
fn a_small_stud_held_off_ends_two_and_a_half_inches_in() {
    let design = Design {
        stud_depth: Length::inches(1.625),
        stud_stand_off: Length::inches(0.875),
        side_wall_foam: Length::inches(2.0),
        ..Design::default()
    };
    let stack = design.stack(Surface::SideWall);
    close_to("lining back, in", stack.lining_back().as_inches(), 2.5, Tolerance::absolute(1e-9));
    close_to("air gap, in", stack.air_gap().as_inches(), 0.5, Tolerance::absolute(1e-9));
}

/// A 2-1/2 in ceiling joist with 1 in above it leaves 3-1/2 in, room for 3 in of foam.
#[test]
fn a_ceiling_joist_an_inch_down_leaves_room_for_three_inches_of_foam() {
    let design = Design {
        joist_depth: Length::inches(2.5),
        joist_stand_off: Length::inches(1.0),
        ceiling_foam: Length::inches(3.0),
        ..Design::default()
    };
    let stack = design.stack(Surface::Ceiling);
    close_to(
        "lining back of the ceiling, in",
        stack.lining_back().as_inches(),
        3.5,
        Tolerance::absolute(1e-9),
    );
    assert_eq!(stack.foam_past_frame(), Length::ZERO, "three inches stay within the frame");
}

/// Two inches of wall foam and three of ceiling foam are an ordinary cold-country choice.
#[test]
fn the_default_is_an_ordinary_cold_country_choice() {
    let design = Design::default();
    close_to("wall foam, in", design.side_wall_foam.as_inches(), 2.0, Tolerance::absolute(0.05));
    close_to("ceiling foam, in", design.ceiling_foam.as_inches(), 3.0, Tolerance::absolute(0.05));
    assert!(design.check().is_ok(), "the default design passes its check");
}

/// Six inches off one end wall and two inches off the ceiling of a 20 ft box cost about the same
/// volume (within a quarter).
#[test]
fn an_end_wall_and_a_ceiling_cost_about_the_same() {
    let base = Design { floor_levelling: Length::ZERO, ..Design::default() };
    let lost = |design: &Design| room(design).lost_volume.as_litres();
    // Foam past the frame's face takes room millimetre for millimetre: three inches, twice.
    let past_frame = Length::mm(63.0);
    let three_inches = Design { front_end_foam: past_frame + Length::inches(3.0), ..base.clone() };
    let end = (lost(&three_inches) - lost(&base)) * 2.0;
    let ceiling = Design { ceiling_foam: Length::mm(89.0) + Length::inches(2.0), ..base.clone() };
    let ceiling = lost(&ceiling) - lost(&base);
    close_to("ceiling over end wall, litres", ceiling / end, 1.0, Tolerance::absolute(0.25));
}

/// Covering the castings instead of dropping the ceiling gains about two inches of height in a
/// 20 ft box with thin ceiling foam.
#[test]
fn covering_the_castings_gains_about_two_inches_of_height() {
    let height = |treatment| {
        room(&Design { end_wall_treatment: treatment, ..Design::default() }).clear.height
    };
    let gain = height(EndWallTreatment::CoverCastings) - height(EndWallTreatment::DropCeiling);
    close_to("height gained, in", gain.as_inches(), 2.0, Tolerance::absolute(0.5));
}

/// Covers cost next to nothing in room where building out or dropping costs hundreds of litres.
#[test]
fn covers_cost_litres_where_the_others_cost_hundreds() {
    let lost = |treatment| {
        let design = Design { end_wall_treatment: treatment, ..Design::default() };
        room(&design).lost_volume.as_litres()
    };
    let bare = lost(EndWallTreatment::LeaveBare);
    let cover = lost(EndWallTreatment::CoverCastings) - bare;
    assert!(0.0 < cover && cover < 5.0, "four covers: {cover} L");
    for treatment in [EndWallTreatment::BuildOutEndWalls, EndWallTreatment::DropCeiling] {
        let cost = lost(treatment) - bare;
        assert!(cost > 300.0, "{treatment:?}: {cost} L");
    }
}

/// Once walls and ceiling are deep enough nothing is left to hide, and the three treatments leave
/// the same room.
#[test]
fn treatments_come_to_the_same_room_when_nothing_is_left_to_hide() {
    let deep = Design {
        box_size: BoxSize::TwentyHighCube,
        side_wall_foam: Length::mm(120.0),
        front_end_foam: Length::mm(170.0),
        door_end_foam: Length::mm(170.0),
        ceiling_foam: Length::mm(150.0),
        ..Design::default()
    };
    let rooms = EndWallTreatment::ALL
        .iter()
        .map(|&end_wall_treatment| room(&Design { end_wall_treatment, ..deep.clone() }));
    for room in rooms {
        assert!(room.castings_hidden_from.hidden_already, "deep enough: {room:?}");
        assert_eq!(room.volume, room.clear.volume(), "nothing stands in the corners");
        close_to(
            "clear height, mm",
            room.clear.height.as_mm(),
            2698.0 - 150.0 - 12.0 - 3.0,
            Tolerance::absolute(1e-6),
        );
    }
}

/// The clear sizes a workshop's worked example comes to: 20 ft box, frame face at 89 mm, 100 mm
/// of ceiling foam, 12 mm lining, 3 mm on the floor. Common practice, no source; plain arithmetic.
#[test]
fn the_worked_clear_size_is_met_to_the_millimetre() {
    let design = Design {
        stud_depth: Length::mm(64.0),
        stud_stand_off: Length::mm(25.0),
        side_wall_foam: Length::mm(89.0),
        front_end_foam: Length::mm(89.0),
        door_end_foam: Length::mm(89.0),
        ceiling_foam: Length::mm(100.0),
        ..Design::default()
    };
    let clear = room(&design).clear;
    let size = [clear.length, clear.width, clear.height].map(|length| length.as_mm().round());
    assert_eq!(size, [5696.0, 2150.0, 2278.0]);
}

/// A steel frame welded into the skin is packed over its face and back along the reveal: bare it frosts
/// before a window pane does, and every bit of packing warms it. Common practice, no source.
#[test]
fn a_packed_opening_frame_is_warmer_than_a_bare_one() {
    let at = |millimetres: f64| {
        let design = Design { opening_frame_foam: Length::mm(millimetres), ..Design::default() };
        let checked = design.check().expect("a lawful design");
        let evaluation = evaluate_with(&checked, &mut FieldCache::default(), Effort::Sections);
        let is_warned = cautions(&checked, &evaluation.room).contains(&Caution::BareOpeningFrames);
        assert_eq!(is_warned, millimetres == 0.0);
        let window = ThermalBridge::OpeningFrame(Opening::Window);
        let placed = evaluation.details.iter().find(|placed| placed.place == window);
        let field = placed.and_then(|placed| placed.field()).expect("a section that solves");
        field.temperature_factor.value()
    };
    let factors = [0.0, 10.0, 25.0, 40.0].map(at);
    assert!(factors.is_sorted_by(|colder, warmer| colder < warmer), "{factors:?}");
    // The pane itself, of U 1.8, has 1 − 0.13·1.8.
    assert!(factors[0] < 0.5 && factors[3] < 1.0 - 0.13 * 1.8, "{factors:?}");
}
