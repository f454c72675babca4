//! Foam of uneven depth against arithmetic by hand and the envelope's own formula.

use inchwise_core::depth_grid::*;
use inchwise_core::design::{Design, FoamMeasure, Surface};
use inchwise_core::envelope::{Envelope, HeatFlow, LayerKind};
use inchwise_core::room::Room;
use inchwise_core::units::*;
use inchwise_tests::{Tolerance, close_to};

/// Foam of 0.026, 12 mm plywood of R 0.10, the surfaces of ISO 6946: 0.27 m²·K/W beside the foam.
fn wall(lining: Lining) -> FoamedWall {
    FoamedWall::new(
        ThermalResistance::new(0.13),
        ThermalResistance::new(0.10),
        ThermalResistance::new(0.04),
        ThermalConductivity::new(0.026),
        lining,
    )
    .expect("a lawful wall")
}

fn grid(millimetres: &[f64], area: f64) -> DepthGrid {
    let depths: Vec<Length> = millimetres.iter().copied().map(Length::mm).collect();
    DepthGrid::of_equal_areas(&depths, Area::new(area)).expect("lawful probes")
}

/// Half at 25 mm and half at 75 mm, by hand:
/// 25 mm: 0.27 + 0.025/0.026 = 0.27 + 0.961538 = 1.231538, U 0.811993;
/// 75 mm: 0.27 + 2.884615 = 3.154615, U 0.316996; their mean 0.564494.
/// 50 mm: 0.27 + 1.923077 = 2.193077, U 0.455980. Ratio 1.23798: 24 % more, over 10 m² 1.085 W/K.
/// Both faces of the foam of one temperature: foam loses (1.04 + 0.346667)/2 = 0.693333, R 1.442308,
/// with 0.27 1.712308, U 0.584007.
/// Behind 25 mm, 0.25 inside: 0.25 + 0.10 + 0.961538 + 0.04 = 1.351538, f = 1 − 0.25/1.351538 = 0.815026.
#[test]
fn uneven_foam_loses_a_quarter_more_than_its_mean() {
    let grid = grid(&[25.0, 75.0], 10.0);
    let outcome = wall(Lining::OnFoam).over(&grid, Length::mm(50.0)).unwrap();
    let exact = Tolerance::absolute(1e-6);
    close_to("mean depth", outcome.mean_depth.as_mm(), 50.0, exact);
    close_to("U", outcome.transmittance.value(), 0.564_494, exact);
    close_to("U of the mean", outcome.at_mean_depth.value(), 0.455_980, exact);
    close_to("U of the least", outcome.at_least_depth.value(), 0.811_993, exact);
    close_to("isothermal", outcome.isothermal_transmittance.value(), 0.584_007, exact);
    close_to("excess", outcome.excess_loss.value(), 1.085_14, Tolerance::absolute(1e-5));
    close_to("share", outcome.excess_share(), 0.237_98, Tolerance::absolute(1e-5));
    close_to("loss", outcome.loss.value(), 5.644_94, Tolerance::absolute(1e-5));
    close_to("factor", outcome.least_factor.value(), 0.815_026, exact);
    assert_eq!((outcome.below_required, outcome.to_cut_back), (1, 0));
    close_to("below", outcome.area_below.value(), 5.0, exact);
}

/// A quarter of the wall at 25 mm: mean depth 62.5 mm, U = 0.25·0.811993 + 0.75·0.316996 = 0.440745.
#[test]
fn a_probe_counts_by_its_area() {
    let probe = |depth, area| Probe { depth: Length::mm(depth), area: Area::new(area) };
    let grid = DepthGrid::new(vec![probe(25.0, 0.5), probe(75.0, 1.5)]).unwrap();
    let outcome = wall(Lining::OnFoam).over(&grid, Length::mm(25.0)).unwrap();
    close_to("mean depth", outcome.mean_depth.as_mm(), 62.5, Tolerance::absolute(1e-9));
    close_to("U", outcome.transmittance.value(), 0.440_745, Tolerance::absolute(1e-6));
    // What is required is enough.
    assert_eq!(outcome.below_required, 0);
    close_to("largest", outcome.largest_probe_area.value(), 1.5, Tolerance::absolute(1e-12));
    assert!(!outcome.is_dense);
}

/// A lining on a frame plane of 64 mm, by hand. 50 mm of foam leave 14 mm of still air: ISO 6946 annex D,
/// h_a = 0.025/0.014 = 1.785714, E·h_r0 = 4.212526 (0.818182 · 4·5.67e-8·283.15³), R 0.166716; in all
/// 0.27 + 1.923077 + 0.166716 = 2.359793, U 0.423766. 64 mm: 2.731538, U 0.366094; so 80 mm, cut back.
/// Mean of what stays 59.3333 mm, gap 4.66667 mm, h_a 5.357143, R 0.104497; 0.27 + 2.282051 + 0.104497 =
/// 2.656548, U 0.376428. Mean U (0.423766 + 2·0.366094)/3 = 0.385318.
#[test]
fn shallow_foam_behind_a_frame_plane_leaves_still_air() {
    let plane = Lining::AtPlane { back: Length::mm(64.0), heat_flow: HeatFlow::Horizontal };
    let grid = grid(&[50.0, 64.0, 80.0], 3.0);
    let outcome = wall(plane).over(&grid, Length::mm(51.0)).unwrap();
    let exact = Tolerance::absolute(2e-6);
    close_to("mean depth", outcome.mean_depth.as_mm(), 59.333_333, exact);
    close_to("U of the least", outcome.at_least_depth.value(), 0.423_766, exact);
    close_to("U", outcome.transmittance.value(), 0.385_318, exact);
    close_to("U of the mean", outcome.at_mean_depth.value(), 0.376_428, exact);
    assert_eq!((outcome.to_cut_back, outcome.below_required), (1, 1));
    // 1 − 0.25/(0.25 + 0.10 + 1.923077 + 0.166716 + 0.04) = 1 − 0.25/2.479793.
    close_to("factor", outcome.least_factor.value(), 0.899_185, exact);
}

/// A bare spot of steel: U = 1/0.27 without a lining's gap, and no number is lost on it.
#[test]
fn a_missed_spot_is_bare() {
    let outcome = wall(Lining::OnFoam).over(&grid(&[0.0, 50.0], 2.0), Length::mm(50.0)).unwrap();
    close_to("U", outcome.at_least_depth.value(), 3.703_704, Tolerance::absolute(1e-6));
    // Faces of one temperature are short-circuited by it.
    let isothermal = outcome.isothermal_transmittance.value();
    close_to("isothermal", isothermal, 3.703_704, Tolerance::absolute(1e-6));
}

/// Common practice, no source: one probe a square metre.
#[test]
fn a_probe_a_square_metre_is_dense() {
    assert!(grid(&[50.0; 12], 12.0).is_dense());
    assert!(!grid(&[50.0; 12], 12.5).is_dense());
}

/// A grid of the depth that was designed is worth what the envelope says, whichever way the foam is
/// measured and whatever stands in front of it.
#[test]
fn even_foam_is_worth_what_the_envelope_says() {
    let mut compared = 0;
    for &foam_measure in FoamMeasure::ALL {
        for side_wall_foam in [Length::mm(40.0), Length::mm(60.0), Length::mm(120.0)] {
            let design = Design { foam_measure, side_wall_foam, ..Design::default() };
            let checked = design.check().expect("a lawful design");
            let envelope = Envelope::of(&checked, &Room::of(&checked).clear);
            for plain in &envelope.plain {
                let Some(foam) = plain.layers.iter().find(|layer| layer.kind == LayerKind::Foam)
                else {
                    continue;
                };
                let wall = FoamedWall::of_plain_area(&checked, plain);
                let name = format!("{foam_measure:?} {:?}", plain.surface);
                let expected = plain.transmittance.value();
                let even = wall.transmittance(foam.thickness).value();
                close_to(&name, even, expected, Tolerance::relative(1e-12));
                // Deeper foam on the floor only: no lining stands in its way there.
                let deeper = wall.transmittance(foam.thickness + Length::mm(1.0)).value();
                assert!(deeper <= even * (1.0 + 1e-12), "{name}");
                compared += usize::from(plain.surface != Surface::Floor);
            }
        }
    }
    assert!(compared >= 27, "{compared}");
}

/// A sprayed side wall over filled troughs, as wide as it is deep: crest 70, slopes 2·68, trough 72 of
/// 278 mm, 36 mm deep; λ 0.026, lining at 64 mm. Foam of 64 mm by hand, over the crest 2.461538,
/// the trough's 1.384615 more: 1/2.461538 = 0.406250 over 70/278, 1/3.846154 = 0.260000 over 72/278,
/// ln(1 + 1.384615/2.461538)/1.384615 = 0.446287/1.384615 = 0.322318 over 136/278; in all 0.102293 +
/// 0.067338 + 0.157681 = 0.327313, R 3.055180. The layers beside it are read from the envelope.
#[test]
fn filled_troughs_count_in_both_bounds() {
    let design = Design {
        foam_measure: FoamMeasure::FlushOverTheRibs,
        foam_conductivity: ThermalConductivity::new(0.026),
        side_wall_foam: Length::mm(64.0),
        stud_stand_off: Length::ZERO,
        stud_depth: Length::mm(64.0),
        ..Design::default()
    };
    let checked = design.check().expect("a lawful design");
    let envelope = Envelope::of(&checked, &Room::of(&checked).clear);
    let plain = &envelope.plain[0];
    assert_eq!(plain.surface, Surface::SideWall);
    let others: f64 = plain
        .layers
        .iter()
        .filter(|layer| layer.kind != LayerKind::Foam)
        .map(|layer| layer.resistance.value())
        .sum();
    let outcome = FoamedWall::of_plain_area(&checked, plain)
        .over(&grid(&[64.0, 64.0], 2.0), Length::mm(64.0))
        .unwrap();
    let expected = 1.0 / (0.13 + others + 3.055_180 + 0.04);
    let isothermal = outcome.isothermal_transmittance.value();
    close_to("isothermal", isothermal, expected, Tolerance::relative(1e-5));
    assert_eq!((outcome.below_required, outcome.to_cut_back), (0, 0));
}
