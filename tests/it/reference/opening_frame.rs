//! The surfaces of a jamb against plane walls, far from it, worked by hand.

use inchwise_core::conduction::{Accuracy, Point, solve};
use inchwise_core::design::{CheckedDesign, Surface};
use inchwise_core::detail::{Detail, Effort, FieldCache, OpeningFrameSection, ROOM, Surfaces};
use inchwise_core::envelope::{Envelope, Opening, SurfaceKind, ThermalBridge};
use inchwise_core::moisture::{ColdSpots, SpotPlace};
use inchwise_core::room::Room;
use inchwise_core::units::{Length, TemperatureFactor};
use inchwise_tests::{Tolerance, close_to};

/// ISO 13788:2012 (from memory): R_si 0.13 for frames and glazing, 0.25 for opaque surfaces; ISO 6946 for
/// heat: 0.13 for both. Default window U = 1.8: its own resistance is 1/1.8 − 0.13 − 0.04 = 0.385556, so
/// f = 1 − 0.13 / (0.13 + 0.385556 + 0.04) = 1 − 0.13·1.8 = 0.766. With 0.25 on it f were 0.6299.
/// Default side wall: 50 mm of foam at 0.026 = 1.923077, 13 mm of still air 1/(0.025/0.013 + 4.212) =
/// 0.163 (ISO 6946 annex D: 0.025/d = 1.923, E·h_r0 = 4.210), 12 mm of plywood; f = 1 − R_si / R_tot.
#[test]
fn far_from_a_jamb_its_surfaces_are_those_of_plane_walls() {
    let checked = CheckedDesign::default();
    let window = checked.design().window_transmittance;
    let jamb = OpeningFrameSection::of(&checked, Surface::SideWall, window);
    let wall = jamb.wall;
    let of_layers = 0.05 / 0.026
        + 1.0 / (1.923 + 4.210)
        + wall.lining.value() / wall.lining_conductivity.value();
    for (surfaces, on_panel, on_wall) in
        [(Surfaces::Damp, 0.13, 0.25), (Surfaces::Ordinary, 0.13, 0.13)]
    {
        let problem = Detail::OpeningFrame(jamb).problem(surfaces);
        let solution = solve(&problem, &Accuracy::default()).expect("a section");
        let factor = |x: f64, y: Length| {
            let at = Point::new(Length::mm(x), y, Length::mm(500.0));
            solution.surface_weights_at(ROOM, at).expect("a face of the room")[ROOM.0]
        };
        let panel = factor(-399.0, Length::mm(44.0));
        close_to("panel", panel, 1.0 - on_panel * 1.8, Tolerance::absolute(0.001));
        let plane = 1.0 - on_wall / (on_wall + of_layers + 0.04);
        close_to("wall", factor(1050.0, wall.face()), plane, Tolerance::absolute(0.001));
    }
}

/// Two verdicts, two places: the detail round a window stands for tube, lining and reveal, the window for
/// what belongs to it, at its edge where that is colder than 1 − 0.13·U.
#[test]
fn lining_and_window_are_two_cold_spots() {
    let checked = CheckedDesign::default();
    let envelope = Envelope::of(&checked, &Room::of(&checked).clear);
    let mut memory = FieldCache::default();
    let details =
        inchwise_core::detail::details(&checked, &envelope, &mut memory, Effort::Sections);
    let of_window = ThermalBridge::OpeningFrame(Opening::Window);
    let placed = details.iter().find(|placed| placed.place == of_window).expect("a window");
    let field = placed.field().expect("a section that solves");
    let spots = ColdSpots::of(checked.design(), &envelope, &details);
    let factor = |place| -> TemperatureFactor {
        let spot = spots.spots.iter().find(|spot| spot.place == place).expect("a spot");
        spot.temperature_factor
    };
    let [lining, window] = [SpotPlace::Detail(of_window), SpotPlace::Windows];
    assert_eq!(lining.surface_kind(), SurfaceKind::Opaque);
    assert_eq!(window.surface_kind(), SurfaceKind::FrameOrGlazing);
    assert_eq!(factor(lining), field.opaque.expect("lining").factor);
    let edge = field.frame_or_glazing.expect("a sash").factor;
    assert!(edge < TemperatureFactor::new(0.766), "{edge:?} is colder than the mean");
    assert_eq!(factor(window), edge);
}
