//! Whole uses reckoned by hand: moisture, flow, humidity and load of a kennel, a shower, a laundry, an office and a store.

use inchwise_core::design::{Design, RoomUse};
use inchwise_core::detail::{Effort, FieldCache};
use inchwise_core::evaluate::{Balance, Evaluation, evaluate_with};
use inchwise_core::humidity::Holding;
use inchwise_core::units::{AirChangeRate, RelativeHumidity, Temperature};
use inchwise_tests::{Tolerance, close_to};

use crate::site::still_place;

/// Two parts in a hundred, as the arithmetic below is rounded.
const WITHIN: Tolerance = Tolerance::relative(0.02);

/// Saturation over water at 20 °C and over ice at -33 °C, Pa (ASHRAE Fundamentals 2017, chapter 1, table 3: 2.3389 kPa and
/// 0.0277 kPa).
const SATURATED: f64 = 2338.8;

/// In a place at sea level whose air holds 80 % at -15 °C, and at -33 °C too.
fn used(room_use: RoomUse, dampers: f64) -> Design {
    let mut design = Design {
        damper_count: dampers,
        place: still_place(0.0, -15.0, 0.8 * 165.3),
        outdoor_temperature: Temperature::celsius(-33.0),
        ..Design::default()
    };
    design.take_use(room_use);
    design
}

fn evaluated(design: &Design) -> (Evaluation, Balance) {
    let checked = design.check().expect("a lawful design");
    let evaluation = evaluate_with(&checked, &mut FieldCache::without_solver(), Effort::Known);
    let balance = evaluation.balance.clone().expect("in range");
    (evaluation, balance)
}

/// Grams of vapour in a kilogram of dry air at sea level, 621.945·p/(101,325 − p).
fn ratio(pascals: f64) -> f64 {
    621.945 * pascals / (101_325.0 - pascals)
}

/// Pascals of so many grams.
fn pascals(ratio: f64) -> f64 {
    101_325.0 * ratio / (621.945 + ratio)
}

/// Outdoor air of -33 °C and 80 %: 0.8·27.7 Pa = 22.2 Pa, 0.136 g/kg.
const OUTDOORS: f64 = 0.136;

/// Kilograms of dry air an hour that leak into a room of so many cubic metres: 0.3 changes of 1.2 kg/m³.
fn leaks(volume: f64) -> f64 {
    0.3 * 1.2 * volume
}

/// 150 kg of dogs breathe 0.87 g/h a kilogram, 130.5 g/h, and 13 m² of floor mopped daily bring 13·10.764·0.03 pints of
/// 473.2 g, 1,986 g a day, in six hours 331.1 g/h. Ten changes an hour at 20 °C and 60 % (0.8421 m³/kg) for
/// the animals hold far less than 60 %: with the leaks √(a² + b²) kg/h of air carry 461.6 g/h at busy hours.
#[test]
fn kennel() {
    let design = used(RoomUse::Animals, 3.0);
    let (evaluation, Balance { humidity, load, .. }) = evaluated(&design);
    let volume = evaluation.room.volume.value();
    let busy = humidity.sources.busy.typical.as_grams_per_hour();
    close_to("busy, g/h", busy, 130.5 + 331.1, WITHIN);
    let day = humidity.sources.day.typical.as_grams_per_hour();
    close_to("day, g/h", day, 130.5 + 1986.4 / 24.0, WITHIN);
    let fan = 10.0 * volume / 0.8421;
    let moves = humidity.need.busy.dry_air().as_grams_per_hour() / 1000.0;
    close_to("fan, kg/h", moves, fan, WITHIN);
    let air = (fan * fan + leaks(volume) * leaks(volume)).sqrt();
    let stands = OUTDOORS + 461.6 / air;
    let humid = humidity.busy.ventilated().value();
    close_to("busy humidity", humid, pascals(stands) / SATURATED, WITHIN);
    // 1,006 J/(kg·K) through 53 K.
    let heat = air / 3600.0 * 1006.0 * 53.0;
    close_to("air, W", (load.at_work.mechanical + load.at_work.leakage).value(), heat, WITHIN);
    // 331.1 g/h with 2,454 kJ/kg.
    close_to("drying, W", load.at_work.drying.value(), 331.1 / 3.6e6 * 2.454e6, WITHIN);
    // 2.6 W a kilogram.
    close_to("gain, W", humidity.need.heat_gain.value(), 390.0, WITHIN);
}

/// A workshop of two (90 g/h each) with four showers of half a US pint, 946 g in two hours: 653 g/h. What lands on windows
/// and door: the fan holds 40 %, at which they stay dry but for what is colder than 6 °C.
#[test]
fn shower() {
    let design = Design { showers: 4.0, ..used(RoomUse::Workshop, 3.0) };
    let (evaluation, Balance { humidity, load, .. }) = evaluated(&design);
    let busy = humidity.sources.busy.typical.as_grams_per_hour();
    close_to("busy, g/h", busy, 2.0 * 90.0 + 4.0 * 236.6 / 2.0, WITHIN);
    let day = humidity.sources.day.typical.as_grams_per_hour();
    close_to("day, g/h", day, (180.0 * 9.0 + 946.4) / 24.0, WITHIN);
    // 653 g/h less what windows take, carried by (W_40% − W_e): 935.5 Pa are 5.796 g/kg.
    let windows = by_hand_onto_openings(&evaluation, 935.5);
    let air = (653.2 - windows) / (ratio(935.5) - OUTDOORS);
    let all = humidity.busy.air.dry_air().as_grams_per_hour() / 1000.0;
    close_to("air, kg/h", all, air, WITHIN);
    assert!(matches!(humidity.busy.holding, Holding::Fan(_)));
    close_to("held", humidity.busy.ventilated().value(), 0.40, Tolerance::absolute(1e-6));
    let heat = all / 3600.0 * 1006.0 * 53.0;
    close_to("air, W", (load.at_work.mechanical + load.at_work.leakage).value(), heat, WITHIN);
    assert_eq!(load.at_work.drying.value(), 0.0, "showers bring their heat");
}

/// What door and windows take of a room's vapour, g/h: A·β/(R_v·T)·(p − p_sat(θ_s)·T/T_s), β = 3.5/(1,207·0.87^⅔) =
/// 3.182 mm/s by the Lewis relation, R_v 461.5 J/(kg·K); θ_s = -33 + (1 − 0.13·U)·53: of U 1.8 7.598 °C and 1,044.8 Pa, of
/// U 1.4 10.354 °C and 1,257.2 Pa (ASHRAE table, between whole degrees).
fn by_hand_onto_openings(evaluation: &Evaluation, vapour: f64) -> f64 {
    let envelope = &evaluation.envelope;
    let conductance = 3.182e-3 / (461.5 * 293.15);
    let rows = [
        (envelope.windows.area.value(), 7.598, 1044.8),
        (envelope.personnel_door.area.value(), 10.354, 1257.2),
    ];
    rows.map(|(area, celsius, saturated)| {
        let balance = saturated * 293.15 / (273.15 + celsius);
        area * conductance * (vapour - balance).max(0.0) * 3.6e6
    })
    .iter()
    .sum()
}

/// A person at work (90 g/h) and three loads of 5.45 US pints that dry in twelve hours, 644.8 g/h, with leaks of 0.8
/// changes alone: windows and door take what leaks do not carry. The vapour at which the two sides balance by hand.
#[test]
fn laundry() {
    let design = Design {
        air_changes: AirChangeRate::per_hour(0.8),
        ..used(RoomUse::LaundryAndDrying, 0.0)
    };
    let (evaluation, Balance { humidity, load, .. }) = evaluated(&design);
    let volume = evaluation.room.volume.value();
    // Four hours of a person and the loads, over the day.
    let day = (90.0 * 4.0 + 3.0 * 5.45 * 473.18) / 24.0;
    close_to("day, g/h", humidity.sources.day.typical.as_grams_per_hour(), day, WITHIN);
    let left = |vapour: f64| {
        let carried = leaks(volume) * 0.8 / 0.3 * (ratio(vapour) - OUTDOORS);
        day - carried - by_hand_onto_openings(&evaluation, vapour)
    };
    let (mut low, mut high) = (22.0, SATURATED);
    for _ in 0..60 {
        let middle = 0.5 * (low + high);
        if left(middle) > 0.0 { low = middle } else { high = middle }
    }
    // The plain walls are of 15 °C or more and dry below 70 %.
    assert!(low < 0.7 * SATURATED, "{low} Pa");
    let stands = humidity.day.alone().value();
    close_to("day humidity", stands, low / SATURATED, WITHIN);
    let landed: f64 = humidity.day.left_alone.taken.iter().map(|it| it.as_grams_per_hour()).sum();
    close_to("landed, g/h", landed, by_hand_onto_openings(&evaluation, low), WITHIN);
    close_to("drying, W", load.at_work.drying.value(), 439.6, WITHIN);
    assert_eq!(load.at_work.mechanical.value(), 0.0);
}

/// Two at desks, 100 g/h for nine hours of five days. Office rule: 5 cfm a person and 0.06 cfm a square foot, 2.360 L/s
/// and 0.3048 L/s a square metre (ASHRAE 62.1, from memory), while they are there.
#[test]
fn office() {
    let design = used(RoomUse::Office, 3.0);
    let (evaluation, Balance { humidity, load, .. }) = evaluated(&design);
    let volume = evaluation.room.volume.value();
    let mean = humidity.sources.mean.typical.as_grams_per_hour();
    close_to("mean, g/h", mean, 100.0 * 45.0 / 168.0, WITHIN);
    let litres = 2.0 * 2.360 + 0.3048 * evaluation.room.floor_area.value();
    // At 20 °C and 40 %: W 5.796 g/kg, v = 287.042·293.15·1.00932/101,325 = 0.8382 m³/kg.
    let fan = litres * 3.6 / 0.8382;
    let busy = humidity.need.busy.dry_air().as_grams_per_hour() / 1000.0;
    close_to("fan, kg/h", busy, fan, WITHIN);
    let full = humidity.fan_air.expect("a fan").moves.dry_air().as_grams_per_hour() / 1000.0;
    let leaked = leaks(volume);
    let added = fan / full * ((full * full + leaked * leaked).sqrt() - leaked);
    let stands = OUTDOORS + 100.0 / (leaked + added);
    let humid = humidity.busy.ventilated().value();
    close_to("busy humidity", humid, pascals(stands) / SATURATED, WITHIN);
    // In the mean of a week the fan runs 45 of 168 hours.
    let stands = OUTDOORS + 26.79 / (leaked + added * 45.0 / 168.0);
    let humid = humidity.mean.ventilated().value();
    close_to("mean humidity", humid, pascals(stands) / SATURATED, WITHIN);
    close_to("fan, W", load.at_work.mechanical.value(), added / 3600.0 * 1006.0 * 53.0, WITHIN);
    // Two of 75 W and 100 W of equipment.
    close_to("gain, W", humidity.need.heat_gain.value(), 250.0, WITHIN);
}

/// Nothing is given off: the room stands at outdoor air warmed up, 22.2 of 2,338.8 Pa, and the load at work is that at rest.
#[test]
fn store() {
    let (_, Balance { humidity, load, .. }) = evaluated(&used(RoomUse::Store, 3.0));
    assert!(humidity.sources.each.is_empty());
    close_to("humidity", humidity.mean.ventilated().value(), 22.2 / 2338.8, WITHIN);
    assert_eq!(humidity.need.busy.dry_air().value(), 0.0);
    assert_eq!(load.at_work, load.at_rest);
    assert_eq!(RelativeHumidity::percent(50.0), humidity.target.relative_humidity());
}
