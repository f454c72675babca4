//! Sun on the steel against the handbook's sol-air temperature.

use inchwise_core::climate::{BoxFace, HOURS_IN_YEAR, SunOnBox, WeatherHour, WeatherYear};
use inchwise_core::design::{CheckedDesign, Surface, Wall};
use inchwise_core::detail::{Effort, FieldCache};
use inchwise_core::evaluate::{Evaluation, evaluate_with};
use inchwise_core::heat_loss::Element;
use inchwise_core::units::{
    Angle, Irradiance, Length, Pressure, SolarShare, SurfaceCoefficient, Temperature,
    TemperatureDifference,
};
use inchwise_core::year::{
    SUNNY_SURFACE_COEFFICIENT, Surroundings, YearChoices, sol_air_temperature,
};
use inchwise_tests::{Tolerance, close_to};

use super::{empty_room, run};

/// Sol-air temperature: a/h_o of 0.052 m²·K/W and 900 W/m² at 35 °C give 81.8 °C upright and 77.9 °C level (read in an
/// encyclopedia's table after ASHRAE); α 0.7, h_o 17 give 72.06 °C.
#[test]
fn sol_air_temperatures() {
    let at = |absorptance: f64, outside: f64, sky: f64| {
        sol_air_temperature(
            Temperature::celsius(35.0),
            Irradiance::new(900.0),
            SolarShare::new(absorptance),
            SurfaceCoefficient::new(outside),
            TemperatureDifference::new(sky),
        )
        .as_celsius()
    };
    close_to("dark wall", at(0.052 * 17.0, 17.0, 0.0), 81.8, Tolerance::absolute(1e-9));
    close_to("dark roof", at(0.052 * 17.0, 17.0, 3.9), 77.9, Tolerance::absolute(1e-9));
    close_to("light wall", at(0.026 * 17.0, 17.0, 0.0), 58.4, Tolerance::absolute(0.5));
    close_to("middle wall", at(0.7, 17.0, 0.0), 72.06, Tolerance::absolute(0.005));
}

/// Surface coefficient outdoors of walls, 22.7 W/(m²·K) in summer and 34.0 in winter (ASHRAE Fundamentals 2017, chapter 26,
/// table 10, as quoted by mypdh.engineer, Interior and exterior surface heat transfer coefficients); as resistances
/// 0.044 m²·K/W at 3.4 m/s and 0.030 at 6.7 m/s (from memory).
#[test]
fn steel_in_the_sun_has_the_summer_film() {
    let coefficient = SUNNY_SURFACE_COEFFICIENT.value();
    close_to("W/(m²·K)", coefficient, 22.7, Tolerance::absolute(1e-9));
    close_to("m²·K/W", 1.0 / coefficient, 0.044, Tolerance::absolute(0.0005));
}

/// The default design at -20 °C under 200 W/m² day and night.
fn under_an_even_sky() -> (Evaluation, Surroundings) {
    let design = CheckedDesign::default();
    let evaluation = evaluate_with(&design, &mut FieldCache::default(), Effort::Known);
    let hour = WeatherHour {
        temperature: Temperature::celsius(-20.0),
        vapour_pressure: Pressure::new(90.0),
        global_horizontal_irradiance: Irradiance::new(200.0),
    };
    let year = WeatherYear::new(Length::new(0.0), Angle::degrees(50.0), &[hour; HOURS_IN_YEAR]);
    let faces = YearChoices::default().front_faces;
    let surroundings = Surroundings::new(year.expect("a year"), faces).expect("an elevation");
    (evaluation, surroundings)
}

/// A roof under 200 W/m² day and night, so cold that the heater never rests: shading half of it costs what its sol-air
/// temperature falls by, U·A·α·100/h_o through the year (ASHRAE Fundamentals 2017, chapter 18).
#[test]
fn sun_on_the_roof_comes_through_by_its_sol_air_temperature() {
    let (evaluation, surroundings) = under_an_even_sky();
    let heat = |share: f64| {
        let choices = YearChoices {
            sun_on_roof: SolarShare::new(share),
            sun_on_windows: SolarShare::new(0.0),
            paint: SolarShare::new(0.7),
            ..empty_room()
        };
        run(&evaluation, &surroundings, &choices).year.energy.heat().as_kilowatt_hours()
    };
    let plain = &evaluation.envelope.plain;
    let roof = plain.iter().find(|plain| plain.surface == Surface::Ceiling).expect("a ceiling");
    let through = (roof.transmittance * roof.area).value();
    let expected = through * 0.7 * 100.0 / 22.7 * 8.76;
    close_to("kWh", heat(0.5) - heat(1.0), expected, Tolerance::relative(1e-6));
}

/// A personnel door painted dark in place of light lets in U·A·Δα·I/h_o more (as above), its room held all the while.
#[test]
fn sun_on_the_door_comes_through_by_its_sol_air_temperature() {
    let (evaluation, surroundings) = under_an_even_sky();
    let lost = |paint: f64| {
        let choices = YearChoices { paint: SolarShare::new(paint), ..empty_room() };
        run(&evaluation, &surroundings, &choices).year.energy.through_openings
    };
    let losses = &evaluation.heat_loss.losses;
    let door = losses.iter().find(|loss| loss.element == Element::PersonnelDoor).expect("a door");
    let face = match evaluation.checked.design().personnel_door.wall().expect("a door in a wall") {
        Wall::RightSide => BoxFace::RightSide,
        Wall::LeftSide => BoxFace::LeftSide,
        Wall::FrontEnd => BoxFace::FrontEnd,
        Wall::DoorEnd => BoxFace::DoorEnd,
    };
    let sun = SunOnBox::of(surroundings.weather(), surroundings.front_faces());
    let falls: f64 =
        (0..HOURS_IN_YEAR).filter_map(|hour| sun.on(face, hour)).map(Irradiance::value).sum();
    assert!(falls > 1e5, "{falls}");
    let expected = door.coefficient.value() * 0.8 / 22.7 * falls / 1000.0;
    let less = lost(0.1) - lost(0.9);
    close_to("kWh", less.as_kilowatt_hours(), expected, Tolerance::relative(1e-6));
}
