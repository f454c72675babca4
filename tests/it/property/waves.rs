//! What must hold of the waves of any design's sheets.

use inchwise_core::design::{CheckedDesign, Design, FoamMeasure, FramePosition, Surface};
use inchwise_core::detail::{Detail, Effort, FieldCache, FrameSlice, WaveSection, Waves};
use inchwise_core::envelope::{
    Amount, OUTSIDE_SURFACE_RESISTANCE, ThermalBridge, air_layer_conductivity,
    air_layer_resistance, counted_waves,
};
use inchwise_core::evaluate::evaluate_with;
use inchwise_core::freight_box::Corrugation;
use inchwise_core::material::STEEL;
use inchwise_core::units::Length;
use proptest::prelude::*;
use proptest::sample::select;

use super::design::lawful_design;

/// What the grid of a wave's section may be off, of its loss.
const GRID: f64 = 0.004;

/// Pieces of a wave that the bounds are summed over.
const PIECES: usize = 500;

const WAVING: [Surface; 3] = [Surface::SideWall, Surface::FrontEnd, Surface::Ceiling];

/// Where the sheet's inner face lies, m, x from the middle of a trough.
fn inner_face(sheet: &Corrugation, x: f64) -> f64 {
    let pitch = sheet.pitch().value();
    let from_trough = (x - pitch * (x / pitch).round()).abs();
    let up = (from_trough - sheet.outer_flat.value() / 2.0) / sheet.slope.value();
    sheet.depth.value() * (up.clamp(0.0, 1.0) - 1.0)
}

/// The least and the most that a wave can lose, W/(m²·K), from the two limits of conduction: heat that
/// may not flow aside (strips square to the wall), and planes along the wall that heat spreads over
/// freely, the sheet one of them.
fn limits(wave: &WaveSection) -> [f64; 2] {
    let (build_up, sheet) = (&wave.build_up, &wave.waves.sheet);
    let pitch = sheet.pitch().value();
    let (back, foam) = (build_up.lining_back.value(), build_up.foam.value());
    let foam_conductivity = build_up.foam_conductivity.value();
    let at = |n: usize| (n as f64 + 0.5) / PIECES as f64;
    let foam_face = |x: f64| {
        if !wave.waves.foam_follows {
            return foam;
        }
        // No nearer to any point of the sheet than its depth.
        let reached = (0..=PIECES).map(|n| {
            let aside = foam * (2.0 * n as f64 / PIECES as f64 - 1.0);
            inner_face(sheet, x + aside) + (foam * foam - aside * aside).max(0.0).sqrt()
        });
        reached.fold(f64::NEG_INFINITY, f64::max).min(back)
    };
    let faces: Vec<f64> = (0..PIECES).map(|n| foam_face(pitch * at(n))).collect();
    let inside = build_up.direction.inside_surface_resistance().value()
        + (build_up.lining / build_up.lining_conductivity).value();
    let outside = OUTSIDE_SURFACE_RESISTANCE.value();
    let (slope, rise) = (sheet.slope.value(), sheet.depth.value());
    let cosine = slope / (slope * slope + rise * rise).sqrt();
    let strip = |n: usize| {
        let face = faces[n];
        let (x, gap) = (pitch * at(n), Length::new(back - face));
        let inner = inner_face(sheet, x);
        let air = if gap > Length::ZERO {
            air_layer_resistance(gap, build_up.direction).value()
        } else {
            0.0
        };
        let is_slope = inner < 0.0 && inner > -rise;
        let film = if is_slope { outside * cosine } else { outside };
        let steel = (sheet.thickness / STEEL.conductivity).value();
        1.0 / (inside + air + (face - inner) / foam_conductivity + steel + film)
    };
    let least = (0..PIECES).map(strip).sum::<f64>() / PIECES as f64;
    let deepest = back - faces.iter().copied().fold(back, f64::min);
    let air = if deepest > 0.0 {
        air_layer_conductivity(Length::new(deepest), build_up.direction).value()
    } else {
        foam_conductivity
    };
    let plane = |n: usize| {
        let behind = faces.iter().filter(|&&face| face > back * at(n)).count() as f64;
        let share = behind / PIECES as f64;
        back / PIECES as f64
            / (share * foam_conductivity + (1.0 - share) * air.max(foam_conductivity))
    };
    let across = (0..PIECES).map(plane).sum::<f64>();
    [least, 1.0 / (inside + across + outside / sheet.developed_ratio())]
}

fn solved(wave: WaveSection) -> f64 {
    let field = Detail::Wave(wave).solve().expect("a lawful wave");
    field.coupling.value() / wave.waves.width().value()
}

fn measured(checked: &CheckedDesign, measure: FoamMeasure) -> CheckedDesign {
    let mut design = checked.design().clone();
    design.foam_measure = measure;
    design.check().expect("a measure has no range")
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(16))]

    #[test]
    fn a_wave_loses_between_the_two_limits_of_conduction(
        checked in lawful_design(),
        surface in select(WAVING.to_vec()),
        measure in select(vec![FoamMeasure::FlushOverTheRibs, FoamMeasure::FollowingTheSteel]),
    ) {
        let wave = WaveSection::of(&measured(&checked, measure), surface);
        let (loss, [least, most]) = (solved(wave), limits(&wave));
        prop_assert!(loss > least * (1.0 - GRID), "{loss} below {least}: {wave:?}");
        prop_assert!(loss < most * (1.0 + GRID), "{loss} above {most}: {wave:?}");
    }

    /// A sheet without waves loses what its plane layers do, however its foam is measured.
    #[test]
    fn a_wave_without_depth_loses_nothing_more(
        checked in lawful_design(),
        surface in select(WAVING.to_vec()),
        foam_follows in any::<bool>(),
    ) {
        let wave = WaveSection::of(&measured(&checked, FoamMeasure::Flat), surface);
        let more_by = |depth: f64| {
            let sheet = Corrugation { depth: Length::mm(depth), ..wave.waves.sheet };
            let waves = Waves { sheet, foam_follows, ..wave.waves };
            solved(WaveSection { waves, ..wave }) / wave.plain.value() - 1.0
        };
        let plane = wave.plain / wave.build_up.transmittance();
        prop_assert!((plane - 1.0).abs() < 1e-12, "{plane}");
        let (none, little) = (more_by(0.0), more_by(0.05));
        prop_assert!(none.abs() < 1e-6, "{none}");
        prop_assert!(little.abs() < 0.005, "{little}");
    }

    /// ψ of a member over a trough is over the wall that ψ of the waves makes of the plain area, so the
    /// two together are the wall with its members as drawn, and nothing is counted twice.
    #[test]
    fn members_over_troughs_stand_on_the_same_waves(
        checked in lawful_design(),
        surface in select(WAVING.to_vec()),
        measure in select(vec![FoamMeasure::FlushOverTheRibs, FoamMeasure::FollowingTheSteel]),
    ) {
        let mut design = measured(&checked, measure).design().clone();
        design.frame_position = FramePosition::OverTroughs;
        let checked = design.check().expect("a position has no range");
        let slice = FrameSlice::of(&checked, surface);
        let member = Detail::FrameLine(slice).solve().expect("a lawful section");
        let without = member.flanking.value() / slice.spacing.value();
        let wave = solved(WaveSection::of(&checked, surface));
        // The same drawing, but for pieces of the foam's face that may not be as wide.
        prop_assert!((without / wave - 1.0).abs() < 0.002, "{without} and {wave}");
    }
}

/// Waves are counted wherever the foam is not measured as if there were none.
#[test]
fn a_plain_area_holds_as_many_metres_of_waves_as_its_area_over_the_pitch() {
    let checked = Design::default().check().expect("the default passes its check");
    for &measure in FoamMeasure::ALL {
        let checked = measured(&checked, measure);
        let evaluation = evaluate_with(&checked, &mut FieldCache::default(), Effort::Known);
        let mut waving = Vec::new();
        for &(place, amount) in &evaluation.envelope.thermal_bridges {
            let (ThermalBridge::Waves(surface), Amount::Metres(length)) = (place, amount) else {
                continue;
            };
            let plain = evaluation.envelope.plain.iter().find(|plain| plain.surface == surface);
            let area = plain.expect("every surface has a plain area").area.value();
            let pitch = counted_waves(&checked, surface).expect("waves").pitch();
            assert!(((length * pitch).value() / area - 1.0).abs() < 1e-12, "{surface:?}");
            waving.push(surface);
        }
        let all: &[Surface] = if measure == FoamMeasure::Flat { &[] } else { &WAVING };
        assert_eq!(waving, all, "{measure:?}");
    }
}
