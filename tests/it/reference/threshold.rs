//! The door's threshold: what it is judged against by hand, and whose place it takes.

use inchwise_core::design::{CheckedDesign, Design, PersonnelDoor, Surface};
use inchwise_core::detail::{Detail, Effort, FieldCache, ThresholdSection, details};
use inchwise_core::envelope::{Amount, Envelope, Opening, ThermalBridge};
use inchwise_core::humidity::{ColdSpots, SpotPlace};
use inchwise_core::room::Room;
use inchwise_core::units::{Length, TemperatureFactor};
use inchwise_tests::{Tolerance, close_to};

fn metres(design: &Design, place: ThermalBridge) -> Option<f64> {
    let checked = design.check().expect("lawful");
    let envelope = Envelope::of(&checked, &Room::of(&checked).clear);
    let of_place = envelope.thermal_bridges.iter().find(|&&(of, _)| of == place);
    of_place.map(|(_, amount)| match amount {
        Amount::Metres(length) => length.value(),
        Amount::Pieces(_) => panic!("a line"),
    })
}

/// Default: clear length 5898 − 2·75 = 5748, clear width 2352 − 2·75 = 2202 mm, door 910 mm. The threshold takes
/// the place of the floor's edge along the wall of the door, and of no other.
#[test]
fn the_floor_edge_ends_at_the_threshold() {
    let along = |door| {
        let design = Design { personnel_door: door, ..Design::default() };
        [
            ThermalBridge::DoorThreshold,
            ThermalBridge::FloorEdge(Surface::SideWall),
            ThermalBridge::FloorEdge(Surface::FrontEnd),
        ]
        .map(|place| metres(&design, place).map(|metres| (metres * 1e6).round() / 1e6))
    };
    assert_eq!(along(PersonnelDoor::RightSide), [Some(0.91), Some(10.586), Some(2.202)]);
    assert_eq!(along(PersonnelDoor::FrontEnd), [Some(0.91), Some(11.496), Some(1.292)]);
    assert_eq!(along(PersonnelDoor::None), [None, Some(11.496), Some(2.202)]);
}

/// By hand: the cut lies 1 m past the bar's end at 50 + 25 + 12 = 87 mm, the leaf begins on a tube of 50 and a bar of
/// 20 mm. Leaf 1.087 − 0.07 m of U = 1.4; wall 0.07 m, its layers 50 mm of foam, 13 of still air, 12 of plywood; floor
/// past the wall's 75 mm, 75 mm of foam under 28 of plywood, R_si = 0.17.
#[test]
fn a_threshold_is_judged_against_leaf_wall_and_floor() {
    let checked = CheckedDesign::default();
    let field = Detail::Threshold(ThresholdSection::of(&checked)).solve().expect("a section");
    let wall = 0.13 + 0.0016 / 50.0 + 0.05 / 0.026 + 1.0 / (1.923 + 4.210) + 0.012 / 0.13 + 0.04;
    let floor = 0.17 + 0.075 / 0.026 + 0.028 / 0.13 + 0.04;
    let by_hand = 1.4 * 1.017 + 0.07 / wall + (1.087 - 0.075) / floor;
    close_to("flanking", field.flanking.value(), by_hand, Tolerance::absolute(0.0005));
    assert!(field.is_settled && field.linear_transmittance().value() > 0.0);
}

/// On a raised floor the leaf stands as high over the deck as it does over bare plywood once the deck
/// reaches the tube: 100 + 18 mm of floor, and 20 mm of bar on a tube that ends level with it.
#[test]
fn a_raised_floor_lifts_the_threshold() {
    let mut design = Design { floor_foam_over: Length::mm(100.0), ..Design::default() };
    let section = ThresholdSection::of(&design.check().expect("lawful"));
    close_to("leaf", section.leaf_bottom().as_mm(), 138.0, Tolerance::absolute(1e-9));
    let raised = Detail::Threshold(section).solve().expect("a section");
    design.floor_foam_over = Length::ZERO;
    let section = ThresholdSection::of(&design.check().expect("lawful"));
    close_to("leaf", section.leaf_bottom().as_mm(), 70.0, Tolerance::absolute(1e-9));
    let low = Detail::Threshold(section).solve().expect("a section");
    assert!(raised.coupling < low.coupling, "foam over the floor keeps heat in");
}

/// The door is judged where its own surfaces are coldest: at the threshold's bar, which lies on the steel
/// tube, and not at the jamb, whose leaf is warmer.
#[test]
fn a_door_is_judged_at_its_threshold() {
    let checked = CheckedDesign::default();
    let envelope = Envelope::of(&checked, &Room::of(&checked).clear);
    let details = details(&checked, &envelope, &mut FieldCache::default(), Effort::Sections);
    let own = |place| -> TemperatureFactor {
        let placed = details.iter().find(|placed| placed.place == place).expect("there");
        placed.field().expect("a section").frame_or_glazing.expect("door").factor
    };
    let jamb = own(ThermalBridge::OpeningFrame(Opening::PersonnelDoor));
    let threshold = own(ThermalBridge::DoorThreshold);
    assert!(threshold < jamb, "{threshold:?} {jamb:?}");
    let spots = ColdSpots::of(checked.design(), &envelope, &details);
    let door = spots.spots.iter().find(|spot| spot.place == SpotPlace::PersonnelDoor);
    assert_eq!(door.expect("a door").temperature_factor, threshold);
}
