//! A place read with three thermometers, against arithmetic by hand, a wall of ISO 6946 and a wall
//! followed through time.

use inchwise_core::design::{Design, LiningMaterial, Surface};
use inchwise_core::envelope::{Envelope, Layer, LayerKind};
use inchwise_core::reading::*;
use inchwise_core::room::Room;
use inchwise_core::units::*;
use inchwise_tests::{Tolerance, close_to};

fn thermometer(celsius: f64, uncertainty: f64, drift: f64) -> ThermometerReading {
    ThermometerReading {
        temperature: Temperature::celsius(celsius),
        uncertainty: TemperatureDifference::new(uncertainty),
        drift_per_hour: TemperatureDifference::new(drift),
    }
}

/// 20 °C inside, −10 °C outside, 14 °C on the surface, each ± 0.5 K, all three drifting.
fn winter_morning() -> PlaceReadings {
    PlaceReadings {
        inside: thermometer(20.0, 0.5, 0.2),
        outside: thermometer(-10.0, 0.5, -1.0),
        surface: thermometer(14.0, 0.5, 0.3),
        time_constant: Time::hours(0.5),
        steady_for: Time::hours(1.5),
        since_sun: Time::hours(12.0),
    }
}

fn celsius(value: f64) -> Temperature {
    Temperature::celsius(value)
}

/// By hand: f = (14 + 10) / (20 + 10) = 0.8. Inside 0.8·0.5/30 = 0.013333, outside 0.2·0.5/30 =
/// 0.003333, surface 0.5/30 = 0.016667; in quadrature 0.5·√(0.64 + 0.04 + 1)/30 = 0.5·1.296148/30 =
/// 0.0216025. Drift: 0.5 h · max(0.3, 0.8·0.2 + 0.2·1.0 = 0.36) = 0.18 K, /30 = 0.006. Half the band is
/// 0.0276025.
#[test]
fn a_factor_and_its_band_are_those_worked_by_hand() {
    let measured = winter_morning().factor().unwrap();
    let exact = Tolerance::absolute(1e-6);
    close_to("factor", measured.factor.value(), 0.8, exact);
    close_to("inside", measured.parts.inside.value(), 0.013_333, exact);
    close_to("outside", measured.parts.outside.value(), 0.003_333, exact);
    close_to("surface", measured.parts.surface.value(), 0.016_667, exact);
    close_to("drift", measured.parts.drift.value(), 0.006, exact);
    close_to("least", measured.least.value(), 0.8 - 0.027_602_5, exact);
    close_to("most", measured.most.value(), 0.8 + 0.027_602_5, exact);
    assert_eq!(measured.doubts, []);
}

/// The surface's own drift decides where it is more than what the airs' make: 0.5 h · 0.9 K/h = 0.45 K,
/// /30 = 0.015.
#[test]
fn a_surface_that_moves_faster_than_the_airs_is_not_settled() {
    let mut readings = winter_morning();
    readings.surface.drift_per_hour = TemperatureDifference::new(-0.9);
    let drift = readings.factor().unwrap().parts.drift;
    close_to("drift", drift.value(), 0.015, Tolerance::absolute(1e-12));
}

/// Worst cases by hand, one thermometer at a time: 14.5 °C on the surface gives 24.5/30 = 0.816667;
/// 20.5 °C inside 24/30.5 = 0.786885; −9.5 °C outside 23.5/29.5 = 0.796610. First order is within
/// 0.0003 of each.
#[test]
fn each_part_of_the_band_is_what_that_thermometer_does() {
    let parts = winter_morning().factor().unwrap().parts;
    let near = Tolerance::absolute(0.0003);
    close_to("surface", parts.surface.value(), 0.816_667 - 0.8, near);
    close_to("inside", parts.inside.value(), 0.8 - 0.786_885, near);
    close_to("outside", parts.outside.value(), 0.8 - 0.796_610, near);
}

/// At 20 °C and −5 °C the surface is at −5 + 0.8·25 = 15 °C. Steam tables (IAPWS-95 by CoolProp, in
/// psychro/saturated_vapour.tsv): 1705.79 Pa at 15 °C, 2339.32 Pa at 20 °C, ratio 0.72918; ·0.8 =
/// 0.58335. ISO 13788's formula is within 0.1 % of either.
#[test]
fn the_humidity_it_stands_is_that_of_steam_tables() {
    let at = winter_morning().factor().unwrap().at(celsius(20.0), celsius(-5.0)).unwrap();
    close_to("surface", at.read.surface.as_celsius(), 15.0, Tolerance::absolute(1e-9));
    close_to("drip", at.read.limit.drip.value(), 0.729_18, Tolerance::relative(1e-3));
    close_to("mould", at.read.limit.mould.value(), 0.583_35, Tolerance::relative(1e-3));
    // −5 + (0.8 ∓ 0.0276025)·25.
    close_to("least", at.least.surface.as_celsius(), 14.309_94, Tolerance::absolute(1e-4));
    close_to("most", at.most.surface.as_celsius(), 15.690_06, Tolerance::absolute(1e-4));
}

/// At 20 °C and −5 °C 0.05 of a factor is 1.25 K, of which (0.05 − 0.0276025)·25 = 0.55994 K lie beyond
/// the band.
#[test]
fn a_prediction_is_met_or_missed_by_so_many_kelvin() {
    let measured = winter_morning().factor().unwrap();
    let against = |predicted| {
        let predicted = TemperatureFactor::new(predicted);
        measured.against(predicted, celsius(20.0), celsius(-5.0)).unwrap()
    };
    let exact = Tolerance::absolute(1e-4);
    for (predicted, standing, warmer_by, beyond) in [
        (0.75, Standing::Warmer, 1.25, 0.559_94),
        (0.78, Standing::AsPredicted, 0.5, 0.0),
        (0.82, Standing::AsPredicted, -0.5, 0.0),
        (0.85, Standing::Colder, -1.25, -0.559_94),
    ] {
        let comparison = against(predicted);
        assert_eq!(comparison.standing, standing, "{predicted}");
        close_to("warmer by", comparison.warmer_by.value(), warmer_by, exact);
        close_to("beyond", comparison.beyond_band.value(), beyond, exact);
    }
}

/// A wall of 50 mm foam of 0.026, board of 0.10 and the surfaces of ISO 6946: R is 2.193077 in all
/// (0.13 + 0.10 + 1.923077 + 0.04), so 30 K put 20 − 30·0.13/2.193077 = 18.2217 °C on
/// its face and the ordinary factor is 0.940723. With 0.25 inside, R = 2.313077 and the factor of a damp
/// verdict is 0.891919.
#[test]
fn a_field_reading_is_compared_with_ordinary_surface_resistances() {
    let readings = PlaceReadings {
        inside: thermometer(20.0, 0.2, 0.0),
        outside: thermometer(-10.0, 0.2, 0.0),
        surface: thermometer(18.2217, 0.2, 0.0),
        ..winter_morning()
    };
    let measured = readings.factor().unwrap();
    let against = |factor| {
        let factor = TemperatureFactor::new(factor);
        measured.against(factor, celsius(21.0), celsius(-25.0)).unwrap()
    };
    let ordinary = against(0.940_723);
    assert_eq!(ordinary.standing, Standing::AsPredicted);
    close_to("ordinary", ordinary.warmer_by.value(), 0.0, Tolerance::absolute(1e-3));
    let of_damp = against(0.891_919);
    assert_eq!(of_damp.standing, Standing::Warmer);
    // (0.940723 − 0.891919)·46.
    close_to("of damp", of_damp.warmer_by.value(), 2.245, Tolerance::absolute(2e-3));
}

/// A log of four rows an hour apart, worked by hand: surface 14.0, 14.4, 14.4, 14.8. Mean 14.4; hours
/// from the middle −1.5, −0.5, 0.5, 1.5, off the mean −0.4, 0, 0, 0.4: Σ = 1.2, Σ of squares of hours 5,
/// drift 0.24 K/h; left of the line −0.04, 0.12, −0.12, 0.04, squares 0.032, s = √(0.032/2) =
/// 0.1264911 K; with ± 0.5 K √(0.25 + 0.016) = 0.5157519 K.
#[test]
fn a_log_is_read_as_its_mean_drift_and_scatter() {
    let row = |hour: f64, surface: f64| LogRow {
        at: Time::hours(hour),
        inside: celsius(20.0),
        outside: celsius(-10.0 - hour),
        surface: celsius(surface),
    };
    let rows = [row(0.0, 14.0), row(1.0, 14.4), row(2.0, 14.4), row(3.0, 14.8)];
    let half = TemperatureDifference::new(0.5);
    let terms = LogTerms {
        inside_uncertainty: half,
        outside_uncertainty: half,
        surface_uncertainty: half,
        time_constant: Time::hours(0.5),
        since_sun: Time::hours(12.0),
    };
    let readings = PlaceReadings::of_log(&rows, &terms).unwrap();
    let exact = Tolerance::absolute(1e-7);
    close_to("mean", readings.surface.temperature.as_celsius(), 14.4, exact);
    close_to("drift", readings.surface.drift_per_hour.value(), 0.24, exact);
    close_to("scatter", readings.surface.uncertainty.value(), 0.515_751_9, exact);
    close_to("outside", readings.outside.temperature.as_celsius(), -11.5, exact);
    close_to("outside's drift", readings.outside.drift_per_hour.value(), -1.0, exact);
    close_to("outside's scatter", readings.outside.uncertainty.value(), 0.5, exact);
    close_to("length", readings.steady_for.as_hours(), 3.0, exact);
}

const fn resistance(value: f64) -> ThermalResistance {
    ThermalResistance::new(value)
}

/// A single lump between 0.13 and 0.04: C·(R₁·R₂)/(R₁ + R₂) = 10 000·0.0052/0.17 = 305.88 s. A slab
/// between two faces that are held: its time constants L²/(α·n²·π²) sum to L²/(6·α), for α =
/// λ/(ρ·c); 0.1 m of 1 W/(m·K) and 2·10⁶ J/(m³·K): 0.01/(6·5·10⁻⁷) = 3333.3 s (Carslaw and Jaeger,
/// Conduction of Heat in Solids, 3.3; Σ 1/n² = π²/6).
#[test]
fn time_constants_are_those_of_lump_and_slab() {
    let lump = StoringLayer { resistance: resistance(0.0), capacity_per_area: 10_000.0 };
    let of_lump = time_constant(resistance(0.13), &[lump], resistance(0.04));
    close_to("lump", of_lump.value(), 305.882_353, Tolerance::relative(1e-8));
    let slab = StoringLayer { resistance: resistance(0.1), capacity_per_area: 200_000.0 };
    let of_slab = time_constant(resistance(0.0), &[slab], resistance(0.0));
    close_to("slab", of_slab.value(), 3_333.333_333, Tolerance::relative(1e-8));
}

/// 12 mm plywood, 50 mm foam, 2 mm steel, from the inside, in slices of (resistance, capacity).
fn slices() -> (Vec<(f64, f64)>, Vec<StoringLayer>) {
    let layers = [
        (0.012 / 0.13, 0.012 * 500.0 * 1600.0, 12),
        (0.05 / 0.026, 0.05 * 32.0 * 1400.0, 50),
        (0.002 / 50.0, 0.002 * 7800.0 * 450.0, 1),
    ];
    let cut = layers
        .iter()
        .flat_map(|&(r, c, n)| vec![(r / f64::from(n), c / f64::from(n)); n as usize])
        .collect();
    let whole = layers
        .iter()
        .map(|&(r, c, _)| StoringLayer { resistance: resistance(r), capacity_per_area: c });
    (cut, whole.collect())
}

/// How far the inside face lies behind where it would settle after 12 hours in which room and
/// outdoors change by so many kelvin an hour: slices balanced implicitly, 10 s a step, by elimination.
fn lag_in_ramp(room_per_hour: f64, outdoors_per_hour: f64) -> f64 {
    const STEP: f64 = 10.0;
    let (slices, _) = slices();
    let n = slices.len();
    let between = |a: usize, b: usize| 1.0 / (slices[a].0 / 2.0 + slices[b].0 / 2.0);
    let inner = 1.0 / (0.13 + slices[0].0 / 2.0);
    let outer = 1.0 / (0.04 + slices[n - 1].0 / 2.0);
    let total = 0.17 + slices.iter().map(|slice| slice.0).sum::<f64>();
    // Everything is counted from a room and outdoors that stood at 0.
    let mut at = vec![0.0; n];
    let (mut room, mut outdoors) = (0.0, 0.0);
    for step in 1..=4320 {
        let hours = f64::from(step) * STEP / 3600.0;
        (room, outdoors) = (room_per_hour * hours, outdoors_per_hour * hours);
        let (mut over, mut right) = (vec![0.0; n], vec![0.0; n]);
        for k in 0..n {
            let store = slices[k].1 / STEP;
            let (before, from_before) =
                if k == 0 { (inner, room) } else { (between(k - 1, k), 0.0) };
            let (after, from_after) =
                if k == n - 1 { (outer, outdoors) } else { (between(k, k + 1), 0.0) };
            let mut diagonal = store + before + after;
            let mut source = store * at[k] + before * from_before + after * from_after;
            if k > 0 {
                diagonal -= before * over[k - 1];
                source += before * right[k - 1];
            }
            over[k] = if k == n - 1 { 0.0 } else { after / diagonal };
            right[k] = source / diagonal;
        }
        for k in (0..n).rev() {
            at[k] = right[k] + if k == n - 1 { 0.0 } else { over[k] * at[k + 1] };
        }
    }
    let face = room - (room - at[0]) * inner * 0.13;
    let settled = room - (room - outdoors) * 0.13 / total;
    settled - face
}

/// What the drift adds to the band is what a wall followed through time lags: exact for outdoors,
/// (1 − f)·r·τ; for the room no more than f·r·τ.
#[test]
fn the_lag_in_a_ramp_is_that_of_a_wall_followed_through_time() {
    let (_, layers) = slices();
    let hours = time_constant(resistance(0.13), &layers, resistance(0.04)).as_hours();
    let total = 0.17 + layers.iter().map(|layer| layer.resistance.value()).sum::<f64>();
    let factor = 1.0 - 0.13 / total;
    // By hand: plywood 1552, foam 899, steel 276 s.
    close_to("time constant", hours * 3600.0, 2727.0, Tolerance::absolute(5.0));
    let outdoors = lag_in_ramp(0.0, -2.0);
    close_to("lag", outdoors, (1.0 - factor) * -2.0 * hours, Tolerance::relative(5e-3));
    let room = lag_in_ramp(1.0, 0.0);
    assert!(room > 0.0 && room < factor * hours, "{room}");
}

/// Every plain area of the default design, with ρ·c of its layers typed from ISO 10456 (foam: common
/// practice, no source), still air storing nothing, and the inside surfaces of ISO 6946.
#[test]
fn a_plain_area_brings_its_own_time_constant() {
    for lining_material in [LiningMaterial::Plywood, LiningMaterial::GypsumBoard] {
        let checked = Design { lining_material, ..Design::default() }.check().unwrap();
        let board = match lining_material {
            LiningMaterial::Plywood => 500.0 * 1600.0,
            LiningMaterial::GypsumBoard => 900.0 * 1000.0,
        };
        let envelope = Envelope::of(&checked, &Room::of(&checked).clear);
        for plain in &envelope.plain {
            let storing = |layer: &Layer| {
                let per_volume = match layer.kind {
                    LayerKind::SteelSheet => 7800.0 * 450.0,
                    LayerKind::Foam | LayerKind::FloorFoam => 32.0 * 1400.0,
                    LayerKind::AirGap => 0.0,
                    LayerKind::Lining => board,
                    LayerKind::FloorPlywood | LayerKind::FloorDeck => 500.0 * 1600.0,
                };
                let capacity_per_area = per_volume * layer.thickness.value();
                StoringLayer { resistance: layer.resistance, capacity_per_area }
            };
            // From outside this time: the sum is the same from either side.
            let from_outside: Vec<StoringLayer> = plain.layers.iter().map(storing).collect();
            let inside = match plain.surface {
                Surface::Ceiling => 0.10,
                Surface::Floor => 0.17,
                _ => 0.13,
            };
            let expected = time_constant(resistance(0.04), &from_outside, resistance(inside));
            let own = plain_time_constant(checked.design(), plain);
            let name = format!("{:?}", plain.surface);
            close_to(&name, own.value(), expected.value(), Tolerance::relative(1e-12));
        }
    }
}

/// Common practice, no source: 10 K is the least, and from 15 K nobody objects.
#[test]
fn readings_that_are_not_worth_a_factor_are_refused_or_doubted() {
    let with_outside = |outside: f64, surface: f64| {
        let outside = thermometer(outside, 0.2, 0.0);
        PlaceReadings { outside, surface: thermometer(surface, 0.2, 0.0), ..winter_morning() }
            .factor()
    };
    let fields = |error: ReadingError| -> Vec<ReadingField> {
        error.refusals.iter().map(|refusal| refusal.field).collect()
    };
    assert_eq!(fields(with_outside(10.1, 18.0).unwrap_err()), [ReadingField::Difference]);
    assert_eq!(with_outside(9.9, 18.0).unwrap().doubts, [ReadingDoubt::DifferenceBelowUsual]);
    assert_eq!(with_outside(4.9, 18.0).unwrap().doubts, []);
    assert_eq!(fields(with_outside(25.0, 22.0).unwrap_err()), [ReadingField::Difference]);
    // Three time constants of half an hour, and 5 % of an earlier step is left.
    let standing = |hours| PlaceReadings { steady_for: Time::hours(hours), ..winter_morning() };
    assert_eq!(fields(standing(1.49).factor().unwrap_err()), [ReadingField::SteadyFor]);
    let shaded = |hours| PlaceReadings { since_sun: Time::hours(hours), ..winter_morning() };
    assert_eq!(fields(shaded(1.49).factor().unwrap_err()), [ReadingField::SinceSun]);
}
