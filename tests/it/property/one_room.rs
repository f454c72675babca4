//! Every choice of use, air and site moves load, humidity and year in the direction it must, and none moves one of them
//! alone that should move several.

use std::sync::OnceLock;

use inchwise_core::climate::{CheckedPlace, SEED, Spread, reconstruct};
use inchwise_core::design::{Design, Field, OutdoorAirRule, RoomUse};
use inchwise_core::detail::{Effort, FieldCache};
use inchwise_core::evaluate::evaluate_with;
use inchwise_core::units::{
    AirChangeRate, Effectiveness, Length, Mass, Power, SolarShare, Temperature,
    TemperatureDifference,
};
use inchwise_core::year::{Surroundings, YearChoices, YearModel, run_year};
use proptest::prelude::*;

use super::design::lawful_design;

/// What more of a choice does to a figure.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Moves {
    Up,
    Down,
    /// Not at all.
    No,
    /// Up, down or not, as the room stands.
    Either,
}

use Moves::{Down, Either, No, Up};

/// Load at rest, load at work, humidity in the mean of a week, heat of the year.
type Row = (Field, [Moves; 4]);

/// Rooms that only leak. Water that dries takes more heat than what of it condenses gives back; breath, showers and flames
/// bring their vapour warm, and what of it condenses saves heat.
const LEAKING: [Row; 30] = [
    (Field::PersonCount, [No, No, Up, Down]),
    (Field::HeatOfPerson, [No, No, No, Down]),
    (Field::EquipmentInUse, [No, No, No, Down]),
    (Field::EquipmentAlways, [No, No, No, Down]),
    (Field::LaundryLoads, [No, Up, Up, Up]),
    (Field::Showers, [No, No, Up, Down]),
    (Field::PlantWater, [No, Up, Up, Up]),
    (Field::AnimalMass, [No, No, Up, Down]),
    (Field::AnimalHeat, [No, No, No, Down]),
    (Field::MoppedFloor, [No, Up, Up, Up]),
    (Field::HoseDowns, [No, Up, Up, Up]),
    (Field::UnventedPropane, [No, No, Up, Down]),
    (Field::UnventedKerosene, [No, No, Up, Down]),
    (Field::UsedUntil, [No, Either, Up, Either]),
    (Field::UsedDays, [No, Either, Up, Either]),
    (Field::Setback, [No, Up, No, Down]),
    (Field::ReheatTime, [No, Down, No, No]),
    (Field::Contents, [No, Either, No, Either]),
    (Field::AirChanges, [Up, Up, Down, Up]),
    (Field::IndoorTemperature, [Up, Either, Either, Up]),
    (Field::OutdoorTemperature, [Down, Down, Either, No]),
    (Field::FrontFaces, [No, No, No, Either]),
    (Field::Paint, [No, No, No, Down]),
    (Field::SunOnRoof, [No, No, No, Down]),
    (Field::WindowSun, [No, No, No, Down]),
    (Field::SunOnWindows, [No, No, No, Down]),
    (Field::WindowTransmittance, [Up, Up, Either, Up]),
    (Field::TargetHumidity, [No, No, No, No]),
    (Field::TooWarm, [No, No, No, No]),
    (Field::FanPower, [No, No, No, No]),
];

/// Rooms with a fan. What people bring needs more air, which warms as it dries.
const FANNED: [Row; 18] = [
    (Field::PersonCount, [No, Up, Either, Either]),
    (Field::LaundryLoads, [No, Up, Up, Up]),
    (Field::Showers, [No, Up, Up, Either]),
    (Field::PlantWater, [No, Up, Up, Up]),
    (Field::AnimalMass, [No, Up, Up, Either]),
    (Field::MoppedFloor, [No, Up, Up, Up]),
    (Field::HoseDowns, [No, Up, Up, Up]),
    (Field::UnventedPropane, [No, Up, Up, Either]),
    (Field::UnventedKerosene, [No, Up, Up, Either]),
    (Field::RuleAirChanges, [No, Up, Down, Either]),
    (Field::TargetHumidity, [No, Down, Up, Either]),
    (Field::AirChanges, [Up, Either, Down, Either]),
    (Field::HeatRecovery, [No, Down, No, Down]),
    (Field::RecoveryFrostLimit, [No, Up, No, Up]),
    (Field::FanCoolsAbove, [No, No, No, Down]),
    (Field::FanPower, [No, No, No, No]),
    (Field::OutdoorTemperature, [Down, Either, Either, Either]),
    (Field::HeatOfPerson, [No, No, No, Down]),
];

fn place() -> &'static CheckedPlace {
    static PLACE: OnceLock<CheckedPlace> = OnceLock::new();
    PLACE.get_or_init(CheckedPlace::default)
}

fn surroundings() -> &'static Surroundings {
    static SURROUNDINGS: OnceLock<Surroundings> = OnceLock::new();
    SURROUNDINGS.get_or_init(|| surroundings_of(place()))
}

fn surroundings_of(place: &CheckedPlace) -> Surroundings {
    let weather = reconstruct(place, Spread::DesignTemperatures, SEED);
    Surroundings::new(weather, Design::default().front_faces)
}

/// The four figures of a design, with plain areas and openings known and a heater that is always enough; `None` for one that
/// cannot be.
fn figures(design: &Design, surroundings: &Surroundings) -> Option<[f64; 4]> {
    let checked = design.check().ok()?;
    let evaluation = evaluate_with(&checked, &mut FieldCache::without_solver(), Effort::Known);
    let balance = evaluation.balance.as_ref().expect("in range");
    let choices = YearChoices { heater_limit: Power::new(30_000.0), ..YearChoices::default() };
    let choices = choices.check().expect("lawful choices");
    let turned = (design.front_faces != surroundings.front_faces())
        .then(|| surroundings.clone().turned(design.front_faces));
    let around = turned.as_ref().unwrap_or(surroundings);
    let model = YearModel::new(&evaluation, around, &choices).expect("a room in its surroundings");
    let heat = run_year(&model).year.energy.heat();
    let load = balance.load;
    Some([
        load.at_rest.total().value(),
        load.at_work.total().value(),
        balance.humidity.mean.ventilated().value(),
        heat.value(),
    ])
}

const FIGURES: [&str; 4] = ["load at rest", "load at work", "humidity", "heat of the year"];

/// What a figure may move against its direction beside a part of it: a kilowatt hour of the year.
const HAIR: [f64; 4] = [1e-9, 1e-9, 1e-12, 3.6e6];

/// Whether no figure goes against its direction, but for a part of it.
fn goes(before: [f64; 4], after: [f64; 4], moves: [Moves; 4], slack: f64) -> Result<(), String> {
    for n in 0..4 {
        let step = after[n] - before[n];
        let hair = if slack > 1e-9 { HAIR[n] } else { 0.0 };
        let least = slack * before[n].abs().max(after[n].abs()) + hair;
        let lawful = match moves[n] {
            Up => step >= -least,
            Down => step <= least,
            No => step.abs() <= least,
            Either => true,
        };
        if !lawful {
            return Err(format!("{} {:?}: {} to {}", FIGURES[n], moves[n], before[n], after[n]));
        }
    }
    Ok(())
}

fn raised(design: &Design, field: Field, share: f64) -> Design {
    let mut more = design.clone();
    let range = field.range();
    let now = design.get(field).expect("a chosen number");
    let number = now + share * (range.maximum - now);
    let whole = range.step == 1.0 && range.maximum <= 40.0;
    more.set(field, Some(if whole { number.ceil() } else { number }));
    more
}

/// The same with a twentieth of all that gives off moisture: tonnes a day in a box make a bath of it, in which heat goes round
/// from drying to condensing and back an hour late.
fn moderate(design: &mut Design) {
    for field in SOURCES {
        let number = design.get(field).expect("a chosen number");
        design.set(field, Some((number * 0.05).floor()));
    }
}

const SOURCES: [Field; 8] = [
    Field::LaundryLoads,
    Field::Showers,
    Field::PlantWater,
    Field::AnimalMass,
    Field::MoppedFloor,
    Field::HoseDowns,
    Field::UnventedPropane,
    Field::UnventedKerosene,
];

/// How far to raise a field, of the way to its maximum.
fn step_of(field: Field, share: f64) -> f64 {
    if SOURCES.contains(&field) { 0.05 * share } else { share }
}

/// A damp room that only leaks, with a setback and an hour of evening left to be used.
fn leaking() -> Design {
    Design {
        showers: 2.0,
        plant_water: Mass::new(4.0),
        animal_mass: Mass::new(20.0),
        setback: TemperatureDifference::new(4.0),
        sun_on_roof: SolarShare::new(0.5),
        sun_on_windows: SolarShare::new(0.5),
        ..Design::default()
    }
}

/// A kennel with three dampers and an exchanger that frost does not hold back yet.
fn fanned() -> Design {
    let mut design = Design { damper_count: 3.0, ..Design::default() };
    design.take_use(RoomUse::Animals);
    design.person_count = 1.0;
    design.outdoor_air_rule = OutdoorAirRule::AirChanges;
    design.rule_air_changes = AirChangeRate::per_hour(0.5);
    design.target_humidity = inchwise_core::units::RelativeHumidity::percent(40.0);
    design.heat_recovery = Effectiveness::new(0.55);
    design.recovery_frost_limit = Temperature::celsius(-10.0);
    design
}

/// On one room of each kind every choice moves all that it must, and nothing else.
#[test]
fn every_choice_moves_all_that_it_must() {
    for (base, table) in [(leaking(), &LEAKING[..]), (fanned(), &FANNED[..])] {
        let before = figures(&base, surroundings()).expect("a lawful design");
        for &(field, moves) in table {
            let more = raised(&base, field, 0.2);
            let after = figures(&more, surroundings()).unwrap_or_else(|| panic!("{field:?}"));
            if let Err(wrong) = goes(before, after, moves, 1e-12) {
                panic!("more {field:?}: {wrong}");
            }
            for n in 0..4 {
                let still = (after[n] - before[n]).abs() <= 1e-9 * before[n];
                let held = base.damper_count > 0.0 && n == 2;
                assert!(
                    matches!(moves[n], No | Either) || !still || held,
                    "more {field:?} leaves {} at {}",
                    FIGURES[n],
                    before[n]
                );
            }
        }
    }
}

/// Height makes air thinner: it carries less heat, and as much vapour, which goes by volume. Colder months take more heat and leave the load of the
/// design temperature alone.
#[test]
fn height_and_months_move_what_they_must() {
    let base = leaking();
    let with = |change: &dyn Fn(&mut inchwise_core::climate::Place)| {
        let mut place = place().place().clone();
        change(&mut place);
        let place = place.check().expect("a place");
        let around = surroundings_of(&place);
        figures(&Design { place, ..base.clone() }, &around).expect("a lawful design")
    };
    let before = with(&|_| {});
    let higher = with(&|place| place.elevation = Length::new(2000.0));
    goes(before, higher, [Down, Down, Either, Down], 0.0).unwrap();
    assert!((0..4).all(|n| higher[n] != before[n]), "{before:?} {higher:?}");
    let colder = with(&|place| {
        let more = TemperatureDifference::new(4.0);
        place.winter_design = place.winter_design - more;
        for month in &mut place.months {
            month.temperature = month.temperature - more;
            month.vapour_pressure = month.vapour_pressure * 0.7;
        }
    });
    goes(before, colder, [No, No, Either, Up], 1e-12).unwrap();
    assert!(colder[3] > 1.05 * before[3], "{before:?} {colder:?}");
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(192))]

    #[test]
    fn no_choice_moves_a_leaking_room_the_wrong_way(
        checked in lawful_design(), row in prop::sample::select(LEAKING.to_vec()), share in 0.05..1.0_f64,
    ) {
        let mut design = checked.design().clone();
        design.damper_count = 0.0;
        design.place = place().clone();
        moderate(&mut design);
        // So that a later end of use is a longer use.
        design.used_from = 0.0;
        let (field, moves) = row;
        let (Some(before), Some(after)) = (
            figures(&design, surroundings()),
            figures(&raised(&design, field, step_of(field, share)), surroundings()),
        ) else { return Ok(()) };
        if let Err(wrong) = goes(before, after, moves, 1e-6) {
            return Err(TestCaseError::fail(format!("more {field:?}: {wrong}")));
        }
    }

    #[test]
    fn no_choice_moves_a_fanned_room_the_wrong_way(
        checked in lawful_design(), row in prop::sample::select(FANNED.to_vec()), share in 0.05..1.0_f64,
    ) {
        let mut design = checked.design().clone();
        design.place = place().clone();
        moderate(&mut design);
        // So that a later end of use is a longer use.
        design.used_from = 0.0;
        design.damper_count = design.damper_count.max(design.exhaust_count + 1.0);
        if design.heat_recovery.value() == 0.0 {
            design.heat_recovery = Effectiveness::new(0.1);
        }
        let (field, moves) = row;
        let (Some(before), Some(after)) = (
            figures(&design, surroundings()),
            figures(&raised(&design, field, step_of(field, share)), surroundings()),
        ) else { return Ok(()) };
        // Hours in which the fan runs begin and end a little otherwise.
        if let Err(wrong) = goes(before, after, moves, 1e-4) {
            return Err(TestCaseError::fail(format!("more {field:?}: {wrong}")));
        }
    }
}
