//! What must hold of uneven foam, whatever was probed.

use inchwise_core::depth_grid::*;
use inchwise_core::design::{Design, FoamMeasure};
use inchwise_core::envelope::{Envelope, HeatFlow};
use inchwise_core::room::Room;
use inchwise_core::units::*;
use inchwise_tests::{Tolerance, close_to};
use proptest::prelude::*;
use proptest::sample::select;

use super::anything;

fn lining() -> impl Strategy<Value = Lining> {
    let heat_flow = select(vec![HeatFlow::Upwards, HeatFlow::Horizontal, HeatFlow::Downwards]);
    prop_oneof![
        Just(Lining::OnFoam),
        (0.02..0.2, heat_flow)
            .prop_map(|(back, heat_flow)| Lining::AtPlane { back: Length::new(back), heat_flow }),
    ]
}

/// A flat wall, or the side wall of a design whose foam is measured one way or another.
fn wall() -> impl Strategy<Value = FoamedWall> {
    let flat =
        (0.0..0.3, 0.01..1.0, 0.02..0.05, lining()).prop_map(|(inside, other, foam, lining)| {
            FoamedWall::new(
                ThermalResistance::new(inside),
                ThermalResistance::new(other),
                ThermalResistance::new(0.04),
                ThermalConductivity::new(foam),
                lining,
            )
            .expect("a lawful wall")
        });
    let designed = select(FoamMeasure::ALL.to_vec()).prop_map(|foam_measure| {
        let checked = Design { foam_measure, ..Design::default() }.check().expect("lawful");
        let envelope = Envelope::of(&checked, &Room::of(&checked).clear);
        FoamedWall::of_plain_area(&checked, &envelope.plain[0])
    });
    prop_oneof![flat, designed]
}

prop_compose! {
    fn probes()(all in prop::collection::vec((0.0..0.2, 0.05..3.0), 1..30)) -> Vec<Probe> {
        all.into_iter()
            .map(|(depth, area)| Probe { depth: Length::new(depth), area: Area::new(area) })
            .collect()
    }
}

fn over(wall: &FoamedWall, probes: &[Probe]) -> GridOutcome {
    let grid = DepthGrid::new(probes.to_vec()).expect("lawful probes");
    wall.over(&grid, Length::mm(50.0)).expect("a lawful depth")
}

proptest! {
    /// U is convex in the depth, with troughs, gap and all.
    #[test]
    fn uneven_foam_never_loses_less(wall in wall(), probes in probes()) {
        let outcome = over(&wall, &probes);
        prop_assert!(outcome.excess_loss.value() >= -1e-12 * outcome.loss.value());
        let slack = 1.0 + 1e-12;
        prop_assert!(
            outcome.transmittance.value() <= outcome.isothermal_transmittance.value() * slack
        );
        prop_assert!(outcome.transmittance.is_finite());
        prop_assert!(outcome.least_depth <= outcome.mean_depth);
    }

    #[test]
    fn the_order_of_the_probes_is_nothing(
        wall in wall(), (probes, shuffled) in probes().prop_flat_map(|probes| {
            (Just(probes.clone()), Just(probes).prop_shuffle())
        }),
    ) {
        let (one, other) = (over(&wall, &probes), over(&wall, &shuffled));
        let exact = Tolerance::relative(1e-12);
        close_to("U", other.transmittance.value(), one.transmittance.value(), exact);
        close_to("mean", other.mean_depth.value(), one.mean_depth.value(), exact.and(Tolerance::absolute(1e-15)));
        close_to("loss", other.loss.value(), one.loss.value(), exact);
        prop_assert_eq!(other.least_depth, one.least_depth);
        prop_assert_eq!(other.below_required, one.below_required);
        prop_assert_eq!(other.to_cut_back, one.to_cut_back);
    }

    /// Two probes of half a patch say what one says of it.
    #[test]
    fn a_patch_may_be_probed_twice(wall in wall(), probes in probes()) {
        let halved: Vec<Probe> = probes
            .iter()
            .flat_map(|probe| [Probe { area: probe.area / 2.0, ..*probe }; 2])
            .collect();
        let (once, twice) = (over(&wall, &probes), over(&wall, &halved));
        let exact = Tolerance::relative(1e-11);
        close_to("U", twice.transmittance.value(), once.transmittance.value(), exact);
        close_to("area", twice.area.value(), once.area.value(), exact);
        prop_assert_eq!(twice.below_required, 2 * once.below_required);
    }

    #[test]
    fn even_foam_has_no_excess(wall in wall(), depth in 0.0..0.2, count in 1..20_usize) {
        let even = Probe { depth: Length::new(depth), area: Area::new(0.7) };
        let outcome = over(&wall, &vec![even; count]);
        close_to("excess", outcome.excess_share(), 0.0, Tolerance::absolute(1e-9));
        close_to("least", outcome.at_least_depth.value(), outcome.transmittance.value(), Tolerance::relative(1e-9));
    }

    /// Further off the same mean on both sides loses more.
    #[test]
    fn the_more_uneven_the_more_it_loses(
        wall in wall(), middle in 0.02..0.06, off in 0.001..0.01, further in 0.001..0.01,
    ) {
        let spread = |off: f64| {
            let probe = |depth| Probe { depth: Length::new(depth), area: Area::new(1.0) };
            let outcome = over(&wall, &[probe(middle - off), probe(middle + off)]);
            (outcome.excess_loss, outcome.to_cut_back)
        };
        let ((near, _), (far, cut)) = (spread(off), spread(off + further));
        // What is cut back no longer has the same mean.
        if cut == 0 {
            prop_assert!(far.value() >= near.value() - 1e-12);
        }
    }

    #[test]
    fn anything_typed_is_reckoned_or_refused(
        layers in prop::array::uniform5(anything()), required in anything(),
        probes in prop::collection::vec((anything(), anything()), 0..5), area in anything(),
    ) {
        let refused = |error: DepthError| {
            assert!(!error.refusals.is_empty() && !error.to_string().is_empty());
            for refusal in error.refusals {
                assert!(!refusal.allowed.contains(&refusal.given), "{refusal}");
            }
        };
        let made = FoamedWall::new(
            ThermalResistance::new(layers[0]),
            ThermalResistance::new(layers[1]),
            ThermalResistance::new(layers[2]),
            ThermalConductivity::new(layers[3]),
            Lining::AtPlane { back: Length::new(layers[4]), heat_flow: HeatFlow::Horizontal },
        );
        if let Err(error) = made {
            refused(error);
        }
        let depths: Vec<Length> = probes.iter().map(|&(depth, _)| Length::new(depth)).collect();
        let own = probes.iter().map(|&(depth, area)| Probe {
            depth: Length::new(depth),
            area: Area::new(area),
        });
        for grid in [DepthGrid::new(own.collect()), DepthGrid::of_equal_areas(&depths, Area::new(area))] {
            match grid {
                Err(error) => refused(error),
                Ok(grid) => {
                    let wall = FoamedWall::new(
                        ThermalResistance::new(0.13),
                        ThermalResistance::new(0.1),
                        ThermalResistance::new(0.04),
                        ThermalConductivity::new(0.026),
                        Lining::OnFoam,
                    )
                    .unwrap();
                    match wall.over(&grid, Length::new(required)) {
                        Err(error) => refused(error),
                        Ok(outcome) => prop_assert!(outcome.loss.is_finite()),
                    }
                }
            }
        }
    }
}
