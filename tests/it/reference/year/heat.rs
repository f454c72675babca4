//! Heat of a year against closed forms and the monthly method.

use inchwise_core::climate::{BoxFace, SunOnBox, hours_of};
use inchwise_core::design::{Design, RoomUse, Surface};
use inchwise_core::evaluate::Evaluation;
use inchwise_core::heat_loss::Element;
use inchwise_core::units::{
    Energy, HeatCapacity, HeatTransferCoefficient, Irradiance, Mass, Power, Temperature,
    TemperatureDifference, Time,
};
use inchwise_core::year::{
    HeaterKind, RoomHour, Surroundings, YearChoices, gain_utilisation, monthly_heating, run_year,
};
use inchwise_tests::{Tolerance, close_to};

use super::{always, ample, empty_room, evaluated, lawful, modelled, run, run_design, varnholm};

/// E = 24·H·HDD: 80 W/K and 3,500 K·d are 6,720 kWh (plain arithmetic, as handbooks print it).
#[test]
fn degree_days_times_loss_is_energy() {
    let heat: Energy = (0..365)
        .map(|_| {
            monthly_heating(
                HeatTransferCoefficient::new(80.0),
                HeatCapacity::new(1e6),
                Temperature::celsius(18.0),
                Temperature::celsius(18.0 - 3500.0 / 365.0),
                Time::days(1.0),
                Energy::ZERO,
            )
        })
        .sum();
    close_to("kWh", heat.as_kilowatt_hours(), 6720.0, Tolerance::relative(1e-9));
}

/// ISO 13790, monthly method: η over γ for a = 2, 3 and 5 (formula from memory, arithmetic by hand).
#[test]
fn gain_utilisation_is_that_of_the_monthly_method() {
    let rows = [
        (15.0, [0.96774, 0.85714, 0.66667, 0.52632, 0.42857]),
        (30.0, [0.99359, 0.93333, 0.75, 0.58462, 0.46667]),
        (60.0, [0.99974, 0.98413, 0.83333, 0.63459, 0.49206]),
    ];
    for (hours, expected) in rows {
        for (gamma, eta) in [0.2, 0.5, 1.0, 1.5, 2.0].into_iter().zip(expected) {
            let got = gain_utilisation(gamma, Time::hours(hours));
            close_to("η", got, eta, Tolerance::absolute(1e-5));
        }
    }
}

/// Without gains and in weather that stands still a year takes H·Δθ·8,760 h, and what the sky draws.
#[test]
fn without_gains_a_year_is_loss_times_hours() {
    let evaluation = evaluated(&empty_room());
    let total = evaluation.heat_loss.total().value();
    let surroundings = always(-10.0, 200.0);
    let checked = lawful(&ample());
    let model = modelled(&evaluation, &surroundings, &checked);
    let outcome = run_year(&model);
    let expected = (total * 30.0 + model.sky_loss().value()) * 8.76;
    let heat = outcome.year.energy.heat().as_kilowatt_hours();
    close_to("kWh", heat, expected, Tolerance::relative(1e-9));
    let colder = run(&evaluation, &always(-20.0, 90.0), &ample()).year.energy.heat();
    let more = colder.as_kilowatt_hours() - heat;
    close_to("ten kelvin more, kWh", more, total * 10.0 * 8.76, Tolerance::relative(1e-9));
    assert_eq!(outcome.year.unmet_hours, 0);
}

/// The sky before an upright window: ½·0.04·5·0.837·11 = 0.9207 K off what is outdoors, before a painted door with 0.9 in
/// place of 0.837 0.99 K (ISO 13790:2008, 11.3.5, from memory); a steady room loses U·A times that more.
#[test]
fn the_sky_draws_heat_through_openings() {
    let evaluation = evaluated(&empty_room());
    let outcome = run(&evaluation, &always(-10.0, 200.0), &ample());
    let of = |element| {
        let loss = evaluation.heat_loss.losses.iter().find(|loss| loss.element == element);
        loss.map_or(0.0, |loss| loss.coefficient.value())
    };
    let (windows, door) = (of(Element::Windows), of(Element::PersonnelDoor));
    assert!(windows > 0.5 && door > 0.5, "{windows} {door}");
    let expected = (windows * 30.9207 + door * 30.99) * 8.76;
    let lost = outcome.year.energy.through_openings.as_kilowatt_hours();
    close_to("kWh", lost, expected, Tolerance::relative(1e-9));
}

/// A kilogram of water dries with 2,454 kJ at 20 °C (ASHRAE Fundamentals 2017, chapter 1, table 3), 0.682 kWh; the
/// heater gives it, and the air is as damp as with the same moisture from animals that give off no heat.
#[test]
fn what_dries_in_the_room_takes_its_heat() {
    let surroundings = always(-10.0, 200.0);
    let breathed =
        run_design(&Design { animal_mass: Mass::new(100.0), ..empty_room() }, &surroundings);
    // 0.87 g/h for each kilogram of animal.
    let water = Mass::new(0.87 * 100.0 * 24.0 / 1000.0);
    let dried = run_design(&Design { plant_water: water, ..empty_room() }, &surroundings);
    let more = dried.year.energy.heat() - breathed.year.energy.heat();
    let expected = 0.087 * 8760.0 * 2454.0 / 3600.0;
    close_to("kWh", more.as_kilowatt_hours(), expected, Tolerance::relative(1e-3));
    let given = dried.water_given.value();
    close_to("kg", given, 0.087 * 8760.0, Tolerance::relative(1e-9));
    close_to("breathed, kg", breathed.water_given.value(), given, Tolerance::relative(1e-9));
    assert!(dried.heat_off().abs() < 1e-9, "{:e}", dried.heat_off());
}

/// Heat that came in went out or stayed, water likewise, for every use, with every device running: frost and the heat
/// of condensing, freezing, melting and drying with it.
#[test]
fn the_balances_close() {
    let surroundings = varnholm();
    for &room_use in RoomUse::ALL {
        for (n, heater) in HeaterKind::LAWFUL.into_iter().enumerate() {
            let mut design = Design { damper_count: 3.0 * (n % 2) as f64, ..Design::default() };
            design.take_use(room_use);
            design.setback = TemperatureDifference::new(5.0);
            design.showers = 2.0;
            let choices = YearChoices {
                heater,
                heater_limit: Power::new(2000.0),
                backup_limit: Power::new(500.0),
                ..YearChoices::default()
            };
            let outcome = run(&evaluated(&design), &surroundings, &choices);
            let off = [outcome.heat_off(), outcome.water_off()];
            assert!(off.iter().all(|off| off.abs() < 1e-9), "{room_use:?} {heater:?}: {off:?}");
            let landed = outcome.year.condensed + outcome.year.frosted;
            assert!(!room_use.is_wet() || landed > Mass::ZERO, "{room_use:?} {heater:?}");
            let months: Energy = outcome.months.iter().map(|month| month.energy.heat()).sum();
            let year = outcome.year.energy.heat().value();
            close_to("months", months.value(), year, Tolerance::relative(1e-12));
            let is_number = |hour: &RoomHour| hour.celsius.is_finite() && hour.humidity.is_finite();
            assert!(outcome.hours.iter().all(is_number));
        }
    }
}

/// The monthly method of ISO 13790 on the same months, gains and losses: within 5 % of the hours
/// over the year (stated band; the standard's own comparisons lie within about 10 %).
#[test]
fn the_months_come_to_what_the_hours_do() {
    let evaluation = evaluated(&Design::default());
    let surroundings = varnholm();
    let choices = YearChoices { heater_limit: Power::new(10_000.0), ..YearChoices::default() };
    let checked = lawful(&choices);
    let model = modelled(&evaluation, &surroundings, &checked);
    let outcome = run_year(&model);
    let loss = model.network().steady_loss();
    let capacity = HeatCapacity::new(1.2e6);
    let means = surroundings.weather().month_means();
    let by_months: Energy = (0..12)
        .map(|month| {
            let lasting = Time::hours(hours_of(month).len() as f64);
            let energy = &outcome.months[month].energy;
            let steel_sun = steel_sun(&evaluation, &surroundings, month);
            let gains = energy.people + energy.equipment + energy.sun + steel_sun
                - model.sky_loss() * lasting;
            let outdoors = means[month].temperature;
            monthly_heating(loss, capacity, Temperature::celsius(20.0), outdoors, lasting, gains)
        })
        .sum();
    let hourly = outcome.year.energy.heat();
    close_to("months over hours", by_months / hourly, 1.0, Tolerance::absolute(0.05));
}

/// Sun taken in by the steel that comes through to the room: U·A·α·I/h_o (ASHRAE Fundamentals 2017, chapter 18), from
/// the plain areas alone.
fn steel_sun(evaluation: &Evaluation, surroundings: &Surroundings, month: usize) -> Energy {
    let design = evaluation.checked.design();
    let sun = SunOnBox::of(surroundings.weather(), design.front_faces);
    let plain = |surface| {
        let area = evaluation.envelope.plain.iter().find(|plain| plain.surface == surface);
        area.map_or(0.0, |plain| (plain.transmittance * plain.area).value())
    };
    let faces = [
        (BoxFace::Roof, plain(Surface::Ceiling)),
        (BoxFace::FrontEnd, plain(Surface::FrontEnd)),
        (BoxFace::DoorEnd, plain(Surface::DoorEnd)),
        (BoxFace::LeftSide, plain(Surface::SideWall) / 2.0),
        (BoxFace::RightSide, plain(Surface::SideWall) / 2.0),
    ];
    let watt_hours: f64 = faces
        .iter()
        .map(|&(face, loss)| {
            let falls: f64 =
                hours_of(month).map(|hour| sun.on(face, hour).map_or(0.0, Irradiance::value)).sum();
            loss / 22.7 * design.paint.value() * falls
        })
        .sum();
    Energy::kilowatt_hours(watt_hours / 1000.0)
}
