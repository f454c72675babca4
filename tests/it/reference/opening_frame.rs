//! The surfaces of a jamb against plane walls, far from it, worked by hand.

use inchwise_core::conduction::{Accuracy, Point, solve};
use inchwise_core::design::{CheckedDesign, Design, Surface, WindowSpacer};
use inchwise_core::detail::{
    Detail, Effort, FieldCache, FrameSlice, OUTDOORS, OpeningFrameSection, ROOM, Surfaces,
};
use inchwise_core::envelope::{Envelope, Opening, SurfaceKind, ThermalBridge};
use inchwise_core::humidity::{ColdSpots, SpotPlace};
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
    let jamb = OpeningFrameSection::of(&checked, Opening::Window);
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
        // The inner face of a pane of 24 mm in the middle of 44 mm.
        let panel = factor(-399.0, Length::mm(34.0));
        close_to("pane", panel, 1.0 - on_panel * 1.8, Tolerance::absolute(0.001));
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
    // The glass is as cold over the sill, whose one track moves it by less than it is settled to.
    close_to("window", factor(window).value(), edge.value(), Tolerance::absolute(0.0005));
    assert!(factor(window) <= edge);
}

/// ISO 10077-1:2017, annex G, from memory: ψ of the edge of low-emissivity double glazing in frames of wood or
/// plastic is 0.08 W/(m·K) with spacers of aluminium (table G.1), 0.05 to 0.06 with thermally improved ones
/// (table G.2). Here it is what the window alone, with no wall, loses more than its two plain parts, which
/// both have the stated U: ψ_g = L_2D − U·0.4 m.
#[test]
fn the_edge_of_the_glass_loses_what_the_tables_say() {
    for (spacer, tabulated) in [(WindowSpacer::Aluminium, 0.08), (WindowSpacer::WarmEdge, 0.05)] {
        let design = Design { window_spacer: spacer, ..Design::default() };
        let checked = design.check().expect("lawful");
        let window = OpeningFrameSection::of(&checked, Opening::Window);
        let problem = window.window_alone(Surfaces::Ordinary);
        let solution = solve(&problem, &Accuracy::default()).expect("a section");
        let edge = solution.coupling(ROOM, OUTDOORS).value() - 1.8 * 0.4;
        close_to(spacer.key(), edge, tabulated, Tolerance::absolute(0.015));
    }
}

/// The edge of the glass is in the stated U of the window, so what its installation loses does not
/// change with the spacer; how cold the glass gets does, and with the better spacer it is warmer. With
/// aluminium the inner face of the pane (34 mm in, the pane of 24 mm standing in the middle of 44) is coldest
/// at its edge, 110 mm from the tube; with the better one the frame may be colder, by the steel tube.
#[test]
fn a_spacer_moves_the_coldest_glass_and_not_the_installation() {
    let of = |spacer| {
        let design = Design { window_spacer: spacer, ..Design::default() };
        let checked = design.check().expect("lawful");
        let section = OpeningFrameSection::of(&checked, Opening::Window);
        let field = Detail::OpeningFrame(section).solve().expect("a section");
        assert!(field.is_settled);
        let glass = field.frame_or_glazing.expect("glass");
        if spacer == WindowSpacer::Aluminium {
            close_to("at the glass", glass.at.y.as_mm(), 34.0, Tolerance::absolute(0.5));
            close_to("at its edge", glass.at.x.as_mm(), -110.0, Tolerance::absolute(8.0));
        }
        (field.linear_transmittance().value(), glass.factor.value())
    };
    let (cold, warm) = (of(WindowSpacer::Aluminium), of(WindowSpacer::WarmEdge));
    close_to("installation", warm.0, cold.0, Tolerance::absolute(0.003));
    assert!(cold.1 + 0.02 < warm.1 && warm.1 < 1.0 - 0.13 * 1.8, "{cold:?} {warm:?}");
}

/// One member more beside the tube loses more (Rayleigh's monotonicity law). The first draws on the cold of
/// the tube too; the second, in its shade, adds less than a stud by itself.
#[test]
fn members_beside_the_tube_lose_something_and_less_than_studs_alone() {
    let checked = CheckedDesign::default();
    for opening in [Opening::PersonnelDoor, Opening::Window] {
        let [none, one, two] = [0, 1, 2].map(|count| {
            let section = OpeningFrameSection::of(&checked, opening).with_members(count);
            let field = Detail::OpeningFrame(section).solve().expect("a section");
            field.linear_transmittance().value()
        });
        let slice = FrameSlice::of(&checked, Surface::SideWall);
        let stud = Detail::FrameLine(slice).solve().expect("a section").linear_transmittance();
        for (less, more) in [(none, one), (one, two)] {
            assert!(more > less + 0.3 * stud.value(), "{none} {one} {two}, stud {stud:?}");
        }
        assert!(two < one + stud.value(), "{none} {one} {two}, stud {stud:?}");
        assert_eq!(OpeningFrameSection::of(&checked, opening).members.count, 2);
    }
}

/// What wall and door in the section would lose by themselves, by hand: side wall 1 + 0.075 m, the lining's face
/// lying 75 mm in, with its layers as above; door 0.4 m of U = 1.4.
#[test]
fn a_door_frame_is_judged_against_wall_and_leaf() {
    let checked = CheckedDesign::default();
    let section = OpeningFrameSection::of(&checked, Opening::PersonnelDoor);
    let field = Detail::OpeningFrame(section).solve().expect("a section");
    let wall = 0.13 + 0.0016 / 50.0 + 0.05 / 0.026 + 1.0 / (1.923 + 4.210) + 0.012 / 0.13 + 0.04;
    let by_hand = 1.075 / wall + 1.4 * 0.4;
    close_to("flanking", field.flanking.value(), by_hand, Tolerance::absolute(0.0005));
}
