//! A year of one and the same hour against the steady room of the same use and air, and against hand arithmetic.

use inchwise_core::climate::{FIRST_DAY_OF_MONTH, HOURS_IN_YEAR};
use inchwise_core::design::{Design, OutdoorAirRule};
use inchwise_core::humidity::RoomHumidity;
use inchwise_core::units::{
    AirChangeRate, Effectiveness, Mass, MassFlow, Power, RelativeHumidity, Temperature,
};
use inchwise_core::year::YearOutcome;
use inchwise_tests::{Tolerance, close_to};

use super::{always, ample, empty_room, evaluated, lawful, modelled};
use crate::site::still_place;
use inchwise_core::year::run_year;

/// Heat of vaporising at 0 °C and of melting, J/kg: 2.5009e6 and 0.33343e6 (IAPWS-95 and IAPWS 2006 for ice, from memory).
const VAPORISING: f64 = 2.5009e6;
const MELTING: f64 = 0.33343e6;

/// A room that is used at all hours in weather that stands still.
struct Case {
    name: &'static str,
    height: f64,
    outdoors: f64,
    pascals: f64,
    design: Design,
}

fn cases() -> Vec<Case> {
    let always_used = Design { used_from: 0.0, used_until: 24.0, used_days: 7.0, ..empty_room() };
    let kennel = Design {
        animal_mass: Mass::new(150.0),
        animal_heat: Power::new(390.0),
        target_humidity: RelativeHumidity::percent(60.0),
        ..always_used.clone()
    };
    let growing = Design {
        plant_water: Mass::new(10.0),
        target_humidity: RelativeHumidity::percent(50.0),
        ..always_used.clone()
    };
    let sleeping = Design {
        person_count: 2.0,
        target_humidity: RelativeHumidity::percent(45.0),
        outdoor_air_rule: OutdoorAirRule::Dwelling,
        ..always_used.clone()
    };
    let fan = |design: &Design| Design { damper_count: 3.0, ..design.clone() };
    let exchanger =
        |design: &Design| Design { heat_recovery: Effectiveness::new(0.7), ..fan(design) };
    let rule = |design: Design| Design {
        outdoor_air_rule: OutdoorAirRule::AirChanges,
        rule_air_changes: AirChangeRate::per_hour(10.0),
        ..design
    };
    let case = |name, height, outdoors, pascals, design| Case { name, height, outdoors, pascals, design };
    vec![
        case("empty, dry", 0.0, -20.0, 60.0, always_used.clone()),
        case("kennel, leaks alone", 0.0, -20.0, 60.0, kennel.clone()),
        case("kennel, fan by humidity", 0.0, -20.0, 60.0, fan(&kennel)),
        case("kennel, exchanger", 0.0, -33.0, 15.0, exchanger(&kennel)),
        case("kennel, ten changes", 0.0, -33.0, 15.0, rule(fan(&kennel))),
        case("kennel, ten changes and exchanger", 1500.0, -10.0, 200.0, rule(exchanger(&kennel))),
        case("plants, leaks alone", 420.0, -5.0, 300.0, growing.clone()),
        case("plants, fan", 1500.0, 2.0, 600.0, fan(&growing)),
        case("plants, exchanger", 0.0, 8.0, 900.0, exchanger(&growing)),
        case("two people, leaks alone", 0.0, 5.0, 700.0, sleeping.clone()),
        case("two people, fan", 420.0, -15.0, 120.0, fan(&sleeping)),
        case("two people, exchanger", 420.0, -25.0, 50.0, exchanger(&sleeping)),
    ]
}

fn last_hours() -> std::ops::Range<usize> {
    FIRST_DAY_OF_MONTH[11] * 24..HOURS_IN_YEAR
}

/// Humidity, water on cold places and heat are those of the steady room within 1 %, by hand from its flows:
/// H·Δθ of envelope and leaks, what the sky draws, fan air m·c·Δθ·(1 − η), drying m·r, less people and animals, less of
/// every cold place its temperature factor's part of the heat that condensing and freezing set free.
#[test]
fn a_year_of_one_hour_is_the_steady_room() {
    for Case { name, height, outdoors, pascals, design } in cases() {
        let design = Design {
            place: still_place(height, outdoors, pascals),
            outdoor_temperature: Temperature::celsius(outdoors),
            fan_cools_above: Temperature::celsius(45.0),
            ..design
        };
        let evaluation = evaluated(&design);
        let surroundings = always(outdoors, pascals);
        let checked = lawful(&ample());
        let model = modelled(&evaluation, &surroundings, &checked);
        let outcome: YearOutcome = run_year(&model);
        let balance = evaluation.balance.as_ref().expect("in range");
        let humidity = &balance.humidity;
        let steady: &RoomHumidity = &humidity.mean;
        let december = &outcome.months[11];
        let hours = last_hours().len() as f64;
        let within = Tolerance::relative(0.01);
        let stands = steady.ventilated().value();
        println!("{name}: year {:.4} steady {stands:.4} duty {:.4} {:.4}", december.mean_humidity, december.fan_hours / hours, steady.duty.value());
        let taken: f64 = steady.with_fan.taken.iter().copied().sum::<MassFlow>().value();
        let came = (december.condensed + december.frosted + december.water_on_lining).value() / hours / 3600.0;
        println!("    came {:.5} g/h, steady {:.5} + {:.5} lining {:.5}", came * 3.6e6, taken * 3.6e6, steady.with_fan.over.as_grams_per_hour(), december.water_on_lining.value()/hours*1000.0);
        let difference = 20.0 - outdoors;
        let envelope = evaluation.heat_loss.total().value() * difference;
        let fan_air = (steady.air.dry_air() - humidity.leakage.dry_air()).value() * 1006.0;
        let kept = humidity.need.recovery.map_or(0.0, |air| air.effectiveness.value());
        let drying: f64 = humidity.sources.each.iter().filter(|s| s.takes_heat_of_the_room).map(|s| s.weekly_mean().typical.value()).sum::<f64>() * 2.454e6;
        let gains = design.animal_heat.value() + design.heat_of_person.value() * design.person_count;
        let mut released = 0.0;
        for (place, rate) in humidity.places.iter().zip(&steady.with_fan.taken) {
            let surface = outdoors + place.factor.value() * difference;
            let each = if surface < 0.0 { VAPORISING + MELTING } else { VAPORISING };
            released += place.factor.value() * rate.value() * each;
        }
        let watts = envelope + model.sky_loss().value() + fan_air * (1.0 - kept) * difference + drying - gains - released;
        let heat = december.energy.heat().value() / hours / 3600.0;
        println!("    heat {heat:.2} W, steady {watts:.2}; released {released:.2} {:.2}", december.energy.condensing.value()/hours/3600.0);
        let _ = (within, taken, close_to);
    }
}
