//! Fan and humidity against balances of heat and water.

use inchwise_core::design::Design;
use inchwise_core::units::{
    Mass, Power, Pressure, RelativeHumidity, SolarShare, Temperature, TemperatureDifference,
    VolumeFlow,
};
use inchwise_core::year::purge_flow;
use inchwise_tests::{Tolerance, close_to};

use super::{always, empty_room, evaluated, run_design};
use crate::site::still_place;

/// Carrying off a kilowatt: 995 m³/h at 3 K and 597 m³/h at 5 K (0.335 Wh/(m³·K), trade arithmetic).
#[test]
fn flow_that_carries_off_a_kilowatt() {
    for (rise, expected) in [(3.0, 995.0), (5.0, 597.0)] {
        let flow =
            purge_flow(Power::new(1000.0), TemperatureDifference::new(rise)).expect("a rise");
        close_to("m³/h", flow.as_cubic_metres_per_hour(), expected, Tolerance::absolute(1.0));
    }
    assert_eq!(purge_flow(Power::new(1000.0), TemperatureDifference::ZERO), None);
}

/// A room that gives off no moisture comes to the vapour of outdoor air, and with a source G to
/// p_e + G·p/(0.622·m) over it (mass balance of water, ASHRAE Fundamentals 2017, chapter 1).
#[test]
fn the_humidity_of_a_steady_room_is_that_of_its_mass_balance() {
    let place = still_place(0.0, 10.0, 800.0);
    let surroundings = always(10.0, 800.0);
    let design = |grams: f64| Design {
        plant_water: Mass::new(grams * 24.0 / 1000.0),
        place: place.clone(),
        ..empty_room()
    };
    let humid = |grams: f64| {
        let outcome = run_design(&design(grams), &surroundings);
        let last = outcome.hours.last().expect("an hour");
        f64::from(last.humidity) * 2338.8
    };
    close_to("dry room, Pa", humid(0.0), 800.0, Tolerance::relative(1e-3));
    let dry_air = evaluated(&design(0.0)).heat_loss.air.value() / 1006.0;
    let ratio = 0.621_945 * 800.0 / (101_325.0 - 800.0) + 0.02 / 3600.0 / dry_air;
    let expected = 101_325.0 * ratio / (0.621_945 + ratio);
    // Little enough that the windows stay dry.
    close_to("20 g/h, Pa", humid(20.0), expected, Tolerance::relative(2e-3));
}

/// A fan holds the room at what it is set to, neither over it nor under, however strong it is.
#[test]
fn a_fan_cools_to_its_set_point_and_no_further() {
    for flow in [300.0, 3000.0] {
        let design = Design {
            damper_count: 3.0,
            fan_free_air_flow: VolumeFlow::cubic_metres_per_hour(flow),
            fan_shut_off_pressure: Pressure::new(600.0),
            fan_cools_above: Temperature::celsius(23.0),
            equipment_always: Power::new(900.0),
            sun_on_windows: SolarShare::new(0.0),
            ..empty_room()
        };
        let outcome = run_design(&design, &always(15.0, 800.0));
        let (coldest, warmest) = (outcome.coldest.as_celsius(), outcome.warmest.as_celsius());
        close_to("coldest", coldest, 23.0, Tolerance::absolute(0.01));
        close_to("warmest", warmest, 23.0, Tolerance::absolute(0.01));
        assert!(outcome.year.fan_hours > 10.0);
    }
}

/// A fan that compares absolute humidity does nothing where outdoor air is damper than the room.
#[test]
fn the_fan_does_not_dry_with_damper_air() {
    let design = Design {
        indoor_temperature: Temperature::celsius(12.0),
        damper_count: 3.0,
        fan_cools_above: Temperature::celsius(45.0),
        target_humidity: RelativeHumidity::percent(60.0),
        ..empty_room()
    };
    // 11 °C and saturated: 94 % at 12 °C, over the humidistat, and nothing drier to be had.
    let damp = run_design(&design, &always(11.0, 1313.0));
    assert_eq!(damp.year.fan_hours, 0.0);
    let wet = Design { plant_water: Mass::new(7.2), ..design };
    let helped = run_design(&wet, &always(5.0, 600.0));
    let last = helped.hours.last().expect("an hour");
    close_to("held at the humidistat", f64::from(last.humidity), 0.6, Tolerance::absolute(0.01));
    assert!(helped.year.fan_hours > 100.0);
}
