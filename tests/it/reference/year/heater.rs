//! Heaters, fuels and supply against published figures and plain counting.

use inchwise_core::design::Design;
use inchwise_core::units::{ElectricCurrent, ElectricPotential, Power, Temperature};
use inchwise_core::year::{
    EnergyCarrier, HeaterCheck, HeaterKind, SupplyCheck, YearChoices, largest_continuous_load,
};
use inchwise_tests::{Tolerance, close_to};

use super::{always, empty_room, evaluated, run, run_design, varnholm};

/// US Energy Information Administration: propane 91,452 and diesel 137,381 Btu a US gallon, 7.080 and
/// 10.636 kWh a litre; reporting coefficients 0.2145 (from memory) and 0.250 kg a kilowatt hour.
#[test]
fn heating_values_and_emissions_are_the_published_ones() {
    let unit = |carrier: EnergyCarrier| carrier.unit_energy().as_kilowatt_hours();
    close_to("propane, kWh/L", unit(EnergyCarrier::Propane), 7.080, Tolerance::absolute(0.0005));
    close_to("diesel, kWh/L", unit(EnergyCarrier::Diesel), 10.636, Tolerance::absolute(0.0005));
    let emission = |carrier: EnergyCarrier| carrier.emission().expect("a fuel") * 3.6e6;
    close_to("propane", emission(EnergyCarrier::Propane), 0.2145, Tolerance::absolute(0.0002));
    close_to("diesel", emission(EnergyCarrier::Diesel), 0.250, Tolerance::absolute(0.0005));
    assert_eq!(EnergyCarrier::Electricity.emission(), None, "the grid's is asked for");
}

/// 80 % of a breaker's rating: 1,440 W of 120 V 15 A, 3,840 W of 240 V 20 A (trade arithmetic).
#[test]
fn a_breaker_carries_four_fifths_for_long() {
    let load = |volts, amperes| {
        largest_continuous_load(ElectricPotential::new(volts), ElectricCurrent::new(amperes))
            .value()
    };
    close_to("120 V 15 A", load(120.0, 15.0), 1440.0, Tolerance::absolute(1e-9));
    close_to("240 V 20 A", load(240.0, 20.0), 3840.0, Tolerance::absolute(1e-9));
}

/// A thermostat switches a heater on whole: 3 kW draw 25 A of a 15 A circuit, however small the load (Ohm's
/// law); 240 V and 20 A carry it.
#[test]
fn a_heater_is_asked_for_whole() {
    let holds = |volts, amperes| {
        let choices = YearChoices {
            heater_limit: Power::new(3000.0),
            supply_voltage: ElectricPotential::new(volts),
            supply_current: ElectricCurrent::new(amperes),
            ..YearChoices::default()
        };
        SupplyCheck::of(&Design::default(), &choices, Temperature::celsius(-30.0)).holds()
    };
    assert!(!holds(120.0, 15.0));
    assert!(holds(240.0, 20.0));
}

/// Counting: eight hours a night over midnight on five days of the week, which begin on 261 days of a year
/// that starts with the first of them, are 2,088 hours; on every day 2,920.
#[test]
fn a_night_shift_has_its_hours() {
    let surroundings = always(-10.0, 200.0);
    for (used_days, hours) in [(5.0, 2088.0), (7.0, 2920.0)] {
        let design = Design {
            used_from: 20.0,
            used_until: 4.0,
            used_days,
            equipment_in_use: Power::new(100.0),
            ..empty_room()
        };
        let energy = run_design(&design, &surroundings).year.energy;
        let kilowatt_hours = energy.equipment.as_kilowatt_hours();
        close_to("kWh", kilowatt_hours, 0.1 * hours, Tolerance::relative(1e-9));
    }
}

/// A wood stove heats only while someone feeds it: none of its heat falls into the hours in which nobody is there,
/// the check of the heater does not count on it, and what is left alone is the electric backup.
#[test]
fn a_stove_is_not_counted_on_while_nobody_is_there() {
    let design = Design { used_from: 20.0, used_until: 4.0, ..Design::default() };
    let evaluation = evaluated(&design);
    let choices = YearChoices {
        heater: HeaterKind::WoodStove,
        heater_limit: Power::new(6000.0),
        backup_limit: Power::new(400.0),
        ..YearChoices::default()
    };
    let outcome = run(&evaluation, &always(-20.0, 90.0), &choices);
    let alone = outcome.hours.iter().enumerate().filter(|&(hour, _)| !design.is_used(hour));
    let most = alone.map(|(_, hour)| hour.heat).fold(0.0, f32::max);
    assert!(most <= 400.0, "{most} W with nobody there");
    assert!(outcome.greatest_heat > Power::new(400.0), "someone fed it");
    assert!(outcome.year.unmet_hours > 1000, "the room goes cold when left");
    let load = evaluation.balance.expect("in range").load;
    let check = HeaterCheck::of(&choices, &load);
    assert!(check.holds() && check.holds_only_attended());
    close_to("left alone, W", check.unattended.value(), 400.0, Tolerance::absolute(0.0));
}

/// Stoichiometry: 1.6 kg of water for each kilogram of propane burnt in the room; such flames are refused.
#[test]
fn flames_without_a_flue_are_refused_with_their_water() {
    for heater in HeaterKind::REFUSED {
        let choices = YearChoices { heater, ..YearChoices::default() };
        assert_eq!(choices.check().expect_err("refused").len(), 1);
    }
    let water = HeaterKind::UnventedPropane.water_to_room().expect("a flame in the room");
    close_to("kg of water", water, 1.63, Tolerance::absolute(0.01));
}

/// A heat pump for the cold draws two to three times less than an electric heater over a northern year: the trade
/// reckons 2.54 on a climate like this one (common practice, no source; within 15 %).
#[test]
fn a_heat_pump_has_the_seasonal_performance_of_the_trade() {
    let evaluation = evaluated(&Design::default());
    let choices = YearChoices {
        heater: HeaterKind::AirSourceHeatPump,
        heater_limit: Power::new(6000.0),
        ..YearChoices::default()
    };
    let energy = run(&evaluation, &varnholm(), &choices).year.energy;
    let seasonal = energy.heater_heat / energy.heater_input;
    close_to("seasonal performance", seasonal, 2.54, Tolerance::relative(0.15));
}
