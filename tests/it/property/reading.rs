//! What must hold of a place that was read, whatever was read.

use inchwise_core::reading::*;
use inchwise_core::units::*;
use inchwise_tests::{Tolerance, close_to};
use proptest::prelude::*;

use super::anything;

fn thermometer([celsius, uncertainty, drift]: [f64; 3]) -> ThermometerReading {
    ThermometerReading {
        temperature: Temperature::celsius(celsius),
        uncertainty: TemperatureDifference::new(uncertainty),
        drift_per_hour: TemperatureDifference::new(drift),
    }
}

/// Readings of a place of factor `factor`, uncertainties and drifts of inside, outside, surface.
fn place(
    factor: f64,
    outside: f64,
    difference: f64,
    uncertainties: [f64; 3],
    drifts: [f64; 3],
) -> PlaceReadings {
    let temperatures = [outside + difference, outside, outside + factor * difference];
    let [inside, outside, surface] =
        [0, 1, 2].map(|n| thermometer([temperatures[n], uncertainties[n], drifts[n]]));
    PlaceReadings {
        inside,
        outside,
        surface,
        time_constant: Time::hours(0.5),
        steady_for: Time::hours(2.0),
        since_sun: Time::hours(2.0),
    }
}

fn same(name: &str, one: &MeasuredFactor, other: &MeasuredFactor) {
    let exact = Tolerance::absolute(1e-9);
    close_to(name, one.factor.value(), other.factor.value(), exact);
    close_to(name, one.least.value(), other.least.value(), exact);
    close_to(name, one.most.value(), other.most.value(), exact);
}

prop_compose! {
    fn uncertainties()(all in prop::array::uniform3(0.05..0.4)) -> [f64; 3] { all }
}
prop_compose! {
    fn drifts()(all in prop::array::uniform3(-0.5..0.5)) -> [f64; 3] { all }
}

proptest! {
    /// A factor knows no zero of the scale and no size of the degree: both scales give the same.
    #[test]
    fn a_factor_feels_neither_shift_nor_scale(
        factor in 0.0..1.0, outside in -30.0..-5.0, difference in 12.0..30.0,
        shift in -10.0..10.0, scale in 1.0..1.8,
        uncertainties in uncertainties(), drifts in drifts(),
    ) {
        let plain = place(factor, outside, difference, uncertainties, drifts).factor().unwrap();
        close_to("factor", plain.factor.value(), factor, Tolerance::absolute(1e-9));
        let shifted =
            place(factor, outside + shift, difference, uncertainties, drifts).factor().unwrap();
        same("shifted", &plain, &shifted);
        let [wide, fast] = [uncertainties, drifts].map(|all| all.map(|one| one * scale));
        let scaled = place(factor, outside, difference * scale, wide, fast).factor().unwrap();
        same("scaled", &plain, &scaled);
    }

    #[test]
    fn a_larger_difference_narrows_the_band(
        factor in 0.0..1.0, outside in -30.0..-5.0, difference in 10.0..20.0, more in 0.1..20.0,
        uncertainties in uncertainties(), drifts in drifts(),
    ) {
        let near = place(factor, outside, difference, uncertainties, drifts).factor();
        let far = place(factor, outside, difference + more, uncertainties, drifts).factor();
        // Close to the least difference the band may be too wide for a factor.
        if let Ok(near) = near {
            prop_assert!(far.unwrap().half_band() < near.half_band());
        }
    }

    #[test]
    fn the_band_holds_the_factor_and_its_limits(
        factor in 0.0..1.0, outside in -30.0..-5.0, difference in 12.0..30.0,
        indoor in 5.0..30.0, outdoor in -40.0..3.0, predicted in 0.0..1.0,
        uncertainties in uncertainties(), drifts in drifts(),
    ) {
        let measured = place(factor, outside, difference, uncertainties, drifts).factor().unwrap();
        prop_assert!(measured.least < measured.factor && measured.factor < measured.most);
        let [indoor, outdoor] = [indoor, outdoor].map(Temperature::celsius);
        let at = measured.at(indoor, outdoor).unwrap();
        prop_assert!(at.least.limit.drip < at.read.limit.drip);
        prop_assert!(at.read.limit.mould < at.most.limit.mould);
        let against = measured.against(TemperatureFactor::new(predicted), indoor, outdoor).unwrap();
        let zero = TemperatureDifference::ZERO;
        prop_assert_eq!(against.standing == Standing::Warmer, against.beyond_band > zero);
        prop_assert_eq!(against.standing == Standing::Colder, against.beyond_band < zero);
        if against.standing != Standing::AsPredicted {
            prop_assert!(against.beyond_band / against.warmer_by < 1.0);
        }
    }

    /// Three thermometers that are off at will by no more than they say stay within the band of all of
    /// them at once, √3 times the quadrature, but for the second order.
    #[test]
    fn thermometers_that_are_off_stay_near_the_band(
        factor in 0.0..1.0, difference in 15.0..40.0, uncertainties in uncertainties(),
        off in prop::array::uniform3(-1.0..1.0),
    ) {
        let honest = place(factor, -15.0, difference, uncertainties, [0.0; 3]);
        let mut read = honest;
        let move_by = |n: usize| TemperatureDifference::new(off[n] * uncertainties[n]);
        read.inside.temperature = read.inside.temperature + move_by(0);
        read.outside.temperature = read.outside.temperature + move_by(1);
        read.surface.temperature = read.surface.temperature + move_by(2);
        let Ok(read) = read.factor() else { return Ok(()) };
        let half = honest.factor().unwrap().half_band().value();
        prop_assert!((read.factor.value() - factor).abs() <= half * 3_f64.sqrt() * 1.06);
    }

    /// A log off a straight line in time is that line.
    #[test]
    fn a_log_of_a_line_is_the_line(
        start in -20.0..10.0, drift in -0.5..0.5, begin in 0.0..100.0,
        gaps in prop::collection::vec(0.1..1.0, 2..20),
    ) {
        let mut hour = 0.0;
        let mut rows = Vec::new();
        for gap in std::iter::once(0.0).chain(gaps) {
            hour += gap;
            let at = Temperature::celsius(start + drift * hour);
            rows.push(LogRow { at: Time::hours(begin + hour), inside: at, outside: at, surface: at });
        }
        let tenth = TemperatureDifference::new(0.1);
        let terms = LogTerms {
            inside_uncertainty: tenth,
            outside_uncertainty: tenth,
            surface_uncertainty: tenth,
            time_constant: Time::hours(0.5),
            since_sun: Time::hours(5.0),
        };
        let read = PlaceReadings::of_log(&rows, &terms).unwrap();
        close_to("drift", read.surface.drift_per_hour.value(), drift, Tolerance::absolute(1e-6));
        close_to("scatter", read.surface.uncertainty.value(), 0.1, Tolerance::absolute(1e-6));
        close_to("length", read.steady_for.as_hours(), hour, Tolerance::absolute(1e-9));
    }

    /// Whatever is typed: a factor of numbers, or refusals each of which lies out of its own range.
    #[test]
    fn anything_typed_is_read_or_refused(
        inside in prop::array::uniform3(anything()), outside in prop::array::uniform3(anything()),
        surface in prop::array::uniform3(anything()), times in prop::array::uniform3(anything()),
        indoor in anything(), outdoor in anything(), predicted in anything(),
    ) {
        let readings = PlaceReadings {
            inside: thermometer(inside),
            outside: thermometer(outside),
            surface: thermometer(surface),
            time_constant: Time::hours(times[0]),
            steady_for: Time::hours(times[1]),
            since_sun: Time::hours(times[2]),
        };
        let refused = |error: ReadingError| {
            assert!(!error.refusals.is_empty() && !error.to_string().is_empty());
            for refusal in error.refusals {
                assert!(!refusal.allowed.contains(&refusal.given), "{refusal}");
                assert!(refusal.allowed.start() <= refusal.allowed.end(), "{refusal}");
            }
        };
        match readings.factor() {
            Ok(measured) => prop_assert!(measured.least.value() <= measured.most.value()),
            Err(error) => refused(error),
        }
        let sound = place(0.8, -10.0, 30.0, [0.3; 3], [0.0; 3]).factor().unwrap();
        let [indoor, outdoor] = [indoor, outdoor].map(Temperature::celsius);
        match sound.at(indoor, outdoor) {
            Ok(at) => prop_assert!(at.read.limit.drip.value().is_finite()),
            Err(error) => refused(error),
        }
        match sound.against(TemperatureFactor::new(predicted), indoor, outdoor) {
            Ok(comparison) => prop_assert!(comparison.warmer_by.is_finite()),
            Err(error) => refused(error),
        }
    }
}
