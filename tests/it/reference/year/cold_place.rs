//! One cold place through a script of hours, reckoned beside the year from its own humidity.

use inchwise_core::climate::HOURS_IN_YEAR;
use inchwise_core::design::Design;
use inchwise_core::humidity::{ColdPlace, SpotPlace};
use inchwise_core::psychro::hyland_wexler::saturation_pressure;
use inchwise_core::units::{Area, Mass, Temperature, TemperatureFactor};
use inchwise_core::year::{SpotState, YearOutcome};
use inchwise_tests::{Tolerance, close_to};

use super::{ample, empty_room, evaluated, run, through};
use crate::site::still_place;

const FACTOR: f64 = 0.3;
const AREA: f64 = 1.5;

/// Weeks of the script, °C and Pa: it starts mild and dry; frost grows at -33 °C (surface -17.1), sublimes in dry air at
/// -10 (-1.0), grows again, melts at -8 (0.4 °C) and drips, water goes on condensing at -6 (1.8), then outdoors turns
/// mild (8 °C, surface 11.6) and what is left dries back. So on by turns.
const SCRIPT: [[f64; 2]; 8] = [
    [10.0, 300.0],
    [-33.0, 15.0],
    [-10.0, 5.0],
    [-33.0, 15.0],
    [-8.0, 310.0],
    [-6.0, 368.0],
    [8.0, 300.0],
    [2.0, 100.0],
];

fn week(hour: usize) -> [f64; 2] {
    SCRIPT[hour / 168 % SCRIPT.len()]
}

/// Little water given to plants, so that dry air outdoors lets frost sublime.
fn year() -> YearOutcome {
    let design = Design {
        plant_water: Mass::new(0.7),
        place: still_place(0.0, -10.0, 100.0),
        ..empty_room()
    };
    let mut evaluation = evaluated(&design);
    let balance = evaluation.balance.as_mut().expect("in range");
    balance.humidity.places = vec![ColdPlace {
        place: SpotPlace::Windows,
        factor: TemperatureFactor::new(FACTOR),
        area: Area::new(AREA),
    }];
    run(&evaluation, &through(week), &ample())
}

/// What lies on the place hour by hour, by hand: m = A·β/(R_v·T)·(p − p_sat(θ_s)·T/T_s)·3,600 s, β = 3.5/(1.2·1006·0.87^⅔)
/// m/s by the Lewis relation; it never gives more than lies there. Below 0 °C all is frost; above, the
/// frost melts and 0.1 kg/m² stays, the rest runs off.
#[test]
fn frost_grows_sublimes_melts_drips_and_dries_back() {
    let outcome = year();
    let saturated =
        |celsius: f64| saturation_pressure(Temperature::celsius(celsius)).unwrap().value();
    let beta = 3.5 / (1.2 * 1006.0 * libm::pow(0.87, 2.0 / 3.0));
    let conductance = AREA * beta / (461.524 * 293.15);
    let (mut frost, mut water) = (0.0_f64, 0.0_f64);
    let [mut condensed, mut frosted, mut dried, mut sublimed] = [0.0_f64; 4];
    let [mut ran_off, mut most_frost] = [0.0_f64; 2];
    let mut hours_of = [0_u32; 2];
    for (hour, of) in outcome.hours.iter().enumerate() {
        let [outdoors, _] = week(hour);
        close_to("held", f64::from(of.celsius), 20.0, Tolerance::absolute(0.02));
        let surface = outdoors + FACTOR * (f64::from(of.celsius) - outdoors);
        let pascals = f64::from(of.humidity) * saturated(f64::from(of.celsius));
        let balance = saturated(surface) * (273.15 + f64::from(of.celsius)) / (273.15 + surface);
        let lies = frost + water;
        let came = (conductance * (pascals - balance) * 3600.0).max(-lies);
        if came > 0.0 {
            if surface < 0.0 { frosted += came } else { condensed += came }
        } else {
            dried -= came;
            if surface < 0.0 {
                sublimed -= came
            }
        }
        let expected = if surface < 0.0 {
            frost = lies + came;
            water = 0.0;
            if came > 0.0 { SpotState::Frost } else { SpotState::Dry }
        } else {
            let thawed = frost > 0.0;
            water = lies + came;
            frost = 0.0;
            let off = (water - 0.1 * AREA).max(0.0);
            water -= off;
            ran_off += off;
            if thawed || came > 0.0 { SpotState::Drip } else { SpotState::Dry }
        };
        // A hair's breadth over nothing or under it is rounding of what is written down.
        if came.abs() > 1e-6 {
            assert_eq!(of.spot, expected, "hour {hour}: {came} kg");
        }
        match expected {
            SpotState::Frost => hours_of[0] += 1,
            SpotState::Drip => hours_of[1] += 1,
            SpotState::Dry => {}
        }
        most_frost = most_frost.max(frost);
    }
    assert!(sublimed > 0.1, "{sublimed} kg");
    let near = Tolerance::relative(1e-4).and(Tolerance::absolute(1e-5));
    let year = &outcome.year;
    close_to("frosted, kg", year.frosted.value(), frosted, near);
    close_to("condensed, kg", year.condensed.value(), condensed, near);
    close_to("dried back, kg", year.dried_back.value(), dried, near);
    close_to("ran off, kg", year.ran_off.value(), ran_off, near);
    close_to("most frost, kg", outcome.spots[0].most_frost.value(), most_frost, near);
    close_to("came, kg", outcome.spots[0].came.value(), frosted + condensed, near);
    assert!(frosted > 1.0 && condensed > 0.1 && dried > 0.1 && ran_off > 0.5, "{year:?}");
    assert!(
        year.frost_hours.abs_diff(hours_of[0]) <= 3 && year.drip_hours.abs_diff(hours_of[1]) <= 3
    );
    assert_eq!(outcome.hours.len(), HOURS_IN_YEAR);

    // All that came and did not go back was set free with the heat of vaporising, and what lies there as ice at the end with that
    // of melting too, of which three tenths come to the room (IAPWS: 2.5009 and 0.33343 MJ/kg, from memory).
    let net = frosted + condensed - dried;
    let expected = FACTOR * (net * 2.5009e6 + frost * 0.33343e6);
    close_to("given back, J", year.energy.condensing.value(), expected, Tolerance::relative(2e-3));
    assert!(outcome.heat_off().abs() < 1e-9 && outcome.water_off().abs() < 1e-9);
}
