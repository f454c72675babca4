//! What a room brings to its places, each by its own clause of ISO 13788:2012, reckoned by hand.

use inchwise_core::design::Design;
use inchwise_core::envelope::{Envelope, SurfaceKind, ThermalBridge};
use inchwise_core::humidity::{ColdSpots, Humidity, PlaceVerdict, SpotPlace};
use inchwise_core::moisture::SurfaceRisk;
use inchwise_core::psychro::latent_heat_of_vaporisation;
use inchwise_core::room::Room;
use inchwise_core::units::{AirChangeRate, Mass, Pressure, Temperature, TemperatureFactor};
use inchwise_tests::{Tolerance, close_to};

use crate::site::still_place;

/// Animals in a room with leaks alone; its places are a stud head of a factor and windows of another.
fn judged(months: [f64; 2], design_day: f64, kilograms: f64, stud: f64, windows: f64) -> Humidity {
    let design = Design {
        place: still_place(0.0, months[0], months[1]),
        outdoor_temperature: Temperature::celsius(design_day),
        person_count: 0.0,
        animal_mass: Mass::new(kilograms),
        air_changes: AirChangeRate::per_hour(1.0),
        ..Design::default()
    };
    let checked = design.check().expect("a lawful design");
    let room = Room::of(&checked);
    let envelope = Envelope::of(&checked, &room.clear);
    let known = [(SpotPlace::Detail(ThermalBridge::StudHead), stud), (SpotPlace::Windows, windows)];
    let known = known.map(|(place, factor)| (place, [TemperatureFactor::new(factor); 2]));
    let (indoor, outdoor) = (design.indoor_temperature, design.outdoor_temperature);
    let spots = ColdSpots::from_factors(indoor, outdoor, known, Vec::new());
    Humidity::of(&checked, &room, &envelope, &spots).expect("in range")
}

fn at(humidity: &Humidity, place: SpotPlace) -> PlaceVerdict {
    let found = humidity.verdict.places.iter().find(|it| it.place == place);
    *found.expect("a place that is known")
}

const STUD: SpotPlace = SpotPlace::Detail(ThermalBridge::StudHead);

/// The month's factor by hand: 100 kg of animals give 87 g/h to leaks of one change an hour (1.2 kg/m³, V from the room):
/// W = W_e + 87/(1.2·V) g/kg, p_i = p_e + 1.10·Δp, θ_si where 0.8·p_sat is p_i, f = (θ_si − θ_e)/(θ_i − θ_e).
#[test]
fn the_critical_month_asks_what_it_does_by_hand() {
    let humidity = judged([-10.0, 200.0], -12.0, 100.0, 0.9, 0.9);
    let checked = Design::default().check().expect("lawful");
    let volume = Room::of(&checked).volume.value();
    let outdoors = 621.945 * 200.0 / (101_325.0 - 200.0);
    let ratio = outdoors + 87.0 / (1.2 * volume);
    let stands = 101_325.0 * ratio / (621.945 + ratio);
    let with_margin: f64 = 200.0 + 1.10 * (stands - 200.0);
    let k = libm::log(with_margin / 0.8 / 610.5);
    let surface = if k >= 0.0 { 237.3 * k / (17.269 - k) } else { 265.5 * k / (21.875 - k) };
    let factor = (surface + 10.0) / 30.0;
    let found = humidity.verdict.needed_factor.expect("heated months");
    close_to("f", found.value(), factor, Tolerance::absolute(1e-4));
    assert_eq!(humidity.verdict.critical_month, Some(0), "all alike: the first");
    let state = humidity.months.states[0];
    close_to("p_i, Pa", state.indoor_vapour.value(), with_margin, Tolerance::relative(1e-4));
    assert_eq!(state.outdoor_vapour, Pressure::new(200.0));
    // A stud head just above stands it, one just below does not.
    let risk = |f: f64| at(&judged([-10.0, 200.0], -12.0, 100.0, f, 0.9), STUD).risk;
    assert_eq!(risk(factor + 1e-3), SurfaceRisk::None);
    assert_eq!(risk(factor - 1e-3), SurfaceRisk::Mould);
}

/// With -33 °C outdoors a stud head of 0.60 stands at -1.2 °C: 80 % there is 0.8·553 Pa, 18.9 % of the room's 2,337 Pa, and
/// 120 kg of animals bring the room over it. The months of +1 °C ask for less than 0.60. The design hour would say
/// mould; the months say none, and no water comes.
#[test]
fn mould_at_the_design_hour_alone_is_no_mould() {
    let humidity = judged([1.0, 300.0], -33.0, 120.0, 0.60, 0.9);
    let day = humidity.verdict.design_day;
    let spots = limits(0.60, -33.0);
    assert!(spots.mould < day && day < spots.drip, "{day:?} {spots:?}");
    let needed = humidity.verdict.needed_factor.expect("heated").value();
    assert!(needed < 0.60, "{needed}");
    assert_eq!(at(&humidity, STUD).risk, SurfaceRisk::None);
    assert!(humidity.verdict.is_dry());
}

/// The other way round: air of -30 °C is dry, but months of +8 °C and 1,000 Pa (93 %) leave the room so damp that
/// a stud head of 0.60 moulds, though the design hour would say nothing of it.
#[test]
fn mould_in_a_mild_damp_month_is_mould() {
    let humidity = judged([8.0, 1000.0], -30.0, 100.0, 0.60, 0.9);
    let day = humidity.verdict.design_day;
    let spots = limits(0.60, -30.0);
    assert!(humidity.verdict.needed_factor.expect("heated").value() > 0.60);
    assert!(day < spots.mould, "{day:?} {spots:?}");
    assert_eq!(at(&humidity, STUD).risk, SurfaceRisk::Mould);
    // Windows as cold never mould: they are judged by water on the coldest day.
    let cold = judged([8.0, 1000.0], -30.0, 100.0, 0.60, 0.60);
    let windows = at(&cold, SpotPlace::Windows);
    assert_eq!(windows.kind, SurfaceKind::FrameOrGlazing);
    assert_eq!(windows.risk, SurfaceRisk::None);
}

fn limits(factor: f64, outdoors: f64) -> inchwise_core::moisture::HumidityLimit {
    let indoor = Temperature::celsius(20.0);
    let surface = indoor - (indoor - Temperature::celsius(outdoors)) * (1.0 - factor);
    inchwise_core::moisture::HumidityLimit::at_surface(surface, indoor).expect("in range")
}

/// Latent heats of water: 2.5009 MJ/kg at 0 °C and 2.4535 at 20 °C (IAPWS-95, from memory; ASHRAE Fundamentals 2017, chapter
/// 1, table 3: 2,501.0 and 2,453.7 kJ/kg).
#[test]
fn water_evaporates_with_its_latent_heat() {
    for (celsius, expected) in [(0.0, 2.5009e6), (20.0, 2.4535e6)] {
        let found = latent_heat_of_vaporisation(celsius);
        close_to("J/kg", found, expected, Tolerance::relative(1e-3));
    }
}
