//! A year of one and the same hour against the steady room of the same use and air, and against hand arithmetic.

use inchwise_core::climate::{FIRST_DAY_OF_MONTH, HOURS_IN_YEAR};
use inchwise_core::design::{Design, OutdoorAirRule};
use inchwise_core::units::{
    AirChangeRate, Effectiveness, Energy, Mass, MassFlow, Power, RelativeHumidity, Temperature,
};
use inchwise_core::year::{YearModel, run_year};
use inchwise_tests::{Tolerance, close_to};

use super::{always, ample, empty_room, evaluated, lawful, modelled};
use crate::site::still_place;

/// Heat of vaporising, J/kg: 2.5009e6 at 0 °C, 2.4535e6 at 20 °C, straight between; of melting 0.33343e6 (IAPWS-95 and
/// IAPWS 2006 for ice, from memory).
fn vaporising(celsius: f64) -> f64 {
    2.5009e6 - 2370.0 * celsius
}

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
    let case =
        |name, height, outdoors, pascals, design| Case { name, height, outdoors, pascals, design };
    vec![
        case("empty, dry", 0.0, -20.0, 60.0, always_used.clone()),
        case("kennel, leaks alone, wet", 0.0, -20.0, 60.0, kennel.clone()),
        case("kennel, fan by humidity, wet", 0.0, -20.0, 60.0, fan(&kennel)),
        case("kennel, exchanger, wet", 0.0, -33.0, 15.0, exchanger(&kennel)),
        case("kennel, ten changes", 0.0, -33.0, 15.0, rule(fan(&kennel))),
        case("kennel, ten changes and exchanger", 1500.0, -10.0, 200.0, rule(exchanger(&kennel))),
        case("plants, leaks alone, wet", 420.0, -5.0, 300.0, growing.clone()),
        case("plants, fan", 1500.0, 2.0, 600.0, fan(&growing)),
        case("plants, exchanger", 0.0, 8.0, 900.0, exchanger(&growing)),
        case("two people, leaks alone, wet", 0.0, 5.0, 700.0, sleeping.clone()),
        case("two people, fan", 420.0, -15.0, 120.0, fan(&sleeping)),
        case(
            "drenched, wet",
            0.0,
            5.0,
            870.0,
            Design {
                air_changes: AirChangeRate::per_hour(0.05),
                plant_water: Mass::new(60.0),
                ..growing.clone()
            },
        ),
        case(
            "drenched in frost, wet",
            0.0,
            -30.0,
            30.0,
            Design {
                air_changes: AirChangeRate::per_hour(0.05),
                plant_water: Mass::new(100.0),
                ..growing.clone()
            },
        ),
        case("two people, exchanger", 420.0, -25.0, 50.0, exchanger(&sleeping)),
    ]
}

/// Humidity, water on cold places and heat are those of the steady room within 1 % (in truth within a thousandth), by
/// hand from its flows: H·Δθ of envelope and leaks, what the sky draws, fan air m·c·Δθ·(1 − η), drying m·r, less people
/// and animals, less of every cold place its temperature factor's part of the heat that condensing and freezing set free.
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
        let december = run_year(&model).months[11];
        let hours = (HOURS_IN_YEAR - FIRST_DAY_OF_MONTH[11] * 24) as f64;
        let watts = |energy: Energy| energy.value() / hours / 3600.0;
        let within = Tolerance::relative(1e-3);

        let humidity = &evaluation.balance.as_ref().expect("in range").humidity;
        let steady = &humidity.mean;
        close_to(name, december.mean_humidity, steady.ventilated().value(), within);
        close_to(
            name,
            december.fan_hours / hours,
            steady.duty.value(),
            within.and(Tolerance::absolute(1e-9)),
        );
        let taken: MassFlow = steady.with_fan.taken.iter().copied().sum();
        let landed = december.condensed + december.frosted + december.water_on_lining;
        let grams = (taken + steady.with_fan.over).as_grams_per_hour();
        close_to(
            name,
            landed.value() / hours * 1000.0,
            grams,
            within.and(Tolerance::absolute(1e-3)),
        );
        let is_wet = name.contains("wet");
        assert_eq!(grams > 0.0, is_wet, "{name}: {grams} g/h");

        let difference = 20.0 - outdoors;
        let fan_air = (steady.air.dry_air() - humidity.leakage.dry_air()).value() * 1006.0;
        let kept = humidity.need.recovery.map_or(0.0, |air| air.effectiveness.value());
        // 2,454 kJ a kilogram at 20 °C.
        let drying = design.plant_water.value() / 86_400.0 * 2.454e6;
        let gains =
            design.animal_heat.value() + design.heat_of_person.value() * design.person_count;
        let mut released = steady.with_fan.over.value() * vaporising(20.0);
        for (place, rate) in humidity.places.iter().zip(&steady.with_fan.taken) {
            let factor = place.factor.value();
            let surface = outdoors + factor * difference;
            let each = if surface < 0.0 { vaporising(0.0) + MELTING } else { vaporising(surface) };
            released += factor * rate.value() * each;
        }
        close_to(
            name,
            watts(december.energy.condensing),
            released,
            within.and(Tolerance::absolute(0.01)),
        );
        close_to(name, watts(december.energy.by_drying), drying, within);
        let lost = evaluation.heat_loss.total().value() * difference
            + fan_air * (1.0 - kept) * difference
            + model.sky_loss().value();
        let expected = lost + drying + radiant_lost(&model) * gains - gains - released;
        close_to(name, watts(december.energy.heat()), expected, within);
    }
}

/// The part of gains that goes out without warming the air: half of them falls as heat radiation on surfaces and mass (ISO
/// 13790:2008, annex C), each of which gives it to the held air and to outdoors as their conductances divide it.
fn radiant_lost(model: &YearModel<'_>) -> f64 {
    let coefficients = model.coefficients();
    let of = |name| coefficients.iter().find(|(other, _)| *other == name).expect("a coefficient").1;
    let [air, inside, out] =
        ["surface_to_air", "mass_to_surface", "mass_to_outdoors"].map(|name| 1.0 / of(name));
    let whole = air + inside + out;
    0.5 * (of("onto_mass") * (air + inside) + (1.0 - of("onto_mass")) * air) / whole
}
