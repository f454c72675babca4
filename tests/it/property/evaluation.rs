//! What must hold of an evaluation as a whole, and of its JSON form.

use inchwise_core::design::Design;
use inchwise_core::detail::{Effort, FieldCache, PlacedDetail};
use inchwise_core::envelope::ThermalBridge;
use inchwise_core::evaluate::evaluate_with;
use inchwise_core::units::Area;
use proptest::prelude::*;
use serde_json::Value;

use super::design::lawful_design;

proptest! {
    // Each case solves the sections of a design.
    #![proptest_config(ProptestConfig::with_cases(8))]

    #[test]
    fn every_place_of_a_design_is_a_spot_or_named_as_unknown(checked in lawful_design()) {
        let evaluation = evaluate_with(&checked, &mut FieldCache::default(), Effort::Sections);
        let spots = &evaluation.cold_spots;
        let openings = [&evaluation.envelope.personnel_door, &evaluation.envelope.windows]
            .iter()
            .filter(|openings| openings.area > Area::ZERO)
            .count();
        // The waves of a plain area show how cold it is itself.
        let is_spot = |placed: &&PlacedDetail| !matches!(placed.place, ThermalBridge::Waves(_));
        let details = evaluation.details.iter().filter(is_spot).count();
        let places = details + evaluation.envelope.plain.len() + openings;
        prop_assert_eq!(spots.spots.len() + spots.unknown.len(), places);
        prop_assert_eq!(spots.is_waiting(), evaluation.heat_loss.is_waiting());
        let mut keys: Vec<&str> = spots.spots.iter().map(|spot| spot.place.key()).collect();
        keys.sort_unstable();
        keys.dedup();
        prop_assert_eq!(keys.len(), spots.spots.len(), "every key once");
        for spot in &spots.spots {
            let range = 0.0..=1.0;
            prop_assert!(range.contains(&spot.limit.drip.value()), "{:?}", spot);
        }
    }
}

/// Whatever is shown as a number is one: no null stands where a figure was meant.
fn figures_are_numbers(value: &Value, path: &str) {
    match value {
        Value::Object(map) => {
            for (key, value) in map {
                let unit = ["_m", "_m2", "_m3", "_c", "_k", "_w", "_percent", "_factor", "share"];
                if unit.iter().any(|ending| key.ends_with(ending)) {
                    assert!(value.is_number() || value.is_array(), "{path}.{key} is {value}");
                }
                figures_are_numbers(value, &format!("{path}.{key}"));
            }
        }
        Value::Array(items) => {
            items.iter().for_each(|item| figures_are_numbers(item, path));
        }
        _ => {}
    }
}

#[test]
fn the_cold_spots_stand_in_the_json_coldest_first() {
    let checked = Design::default().check().expect("the default passes its check");
    let evaluation = evaluate_with(&checked, &mut FieldCache::default(), Effort::Sections);
    let json = inchwise_wire::evaluation(&evaluation);
    figures_are_numbers(&json, "evaluation");
    let spots = &json["cold_spots"];
    assert_eq!(spots["outdoor_temperature_c"], -33.0);
    assert_eq!(spots["is_waiting"], true, "castings wait to be solved aside");
    let list = spots["spots"].as_array().expect("a list of spots");
    assert!(list.len() > 10, "{} spots", list.len());
    let temperature = |spot: &Value| spot["surface_temperature_c"].as_f64().expect("a number");
    assert!(list.is_sorted_by_key(temperature), "coldest first");
    assert_eq!(spots["weakest"], list[0]["place"]);
    for spot in list {
        let limit = |kind: &str| spot["limit"][kind].as_f64().expect("a number");
        assert!(limit("mould_percent") < limit("drip_percent"), "{spot}");
    }
    let waiting = spots["unknown"].as_array().expect("a list of unknown spots");
    let names_casting = |spot: &Value| spot["place"] == "front_top_casting";
    assert!(waiting.iter().any(names_casting), "{waiting:?}");
}
