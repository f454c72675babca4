//! The published schema of problem files against the files and the reader: one names what the other
//! takes.

use inchwise_wire::conduction_file::{FileError, read_problem, report};
use serde_json::{Value, json};

fn schema() -> Value {
    serde_json::from_str(include_str!("../../../core/wire/conduction.schema.json")).expect("JSON")
}

/// What a value breaks of a schema, by path: the part of JSON Schema 2020-12 that ours uses.
fn broken(root: &Value, schema: &Value, value: &Value, path: &str) -> Vec<String> {
    let mut found = Vec::new();
    if let Some(name) = schema["$ref"].as_str() {
        let name = name.strip_prefix("#/$defs/").expect("a local definition");
        return broken(root, &root["$defs"][name], value, path);
    }
    let is_type = match schema["type"].as_str() {
        None => true,
        Some("object") => value.is_object(),
        Some("array") => value.is_array(),
        Some("string") => value.is_string(),
        Some("number") => value.is_number(),
        Some("integer") => value.is_u64(),
        Some(other) => panic!("{other} is not looked at"),
    };
    if !is_type {
        found.push(format!("{path} is no {}", schema["type"]));
    }
    if schema["enum"].as_array().is_some_and(|allowed| !allowed.contains(value)) {
        found.push(format!("{path} is none of {}", schema["enum"]));
    }
    let number = value.as_f64().unwrap_or(f64::NAN);
    let is_below = |key: &str| schema[key].as_f64().is_some_and(|bound| number < bound);
    let is_at = |key: &str| schema[key].as_f64().is_some_and(|bound| number <= bound);
    let is_above = |key: &str| schema[key].as_f64().is_some_and(|bound| number > bound);
    if is_below("minimum") || is_at("exclusiveMinimum") || is_above("maximum") {
        found.push(format!("{path} is out of range"));
    }
    if let Some(items) = value.as_array() {
        let bound = |key: &str, default: u64| schema[key].as_u64().unwrap_or(default) as usize;
        if !(bound("minItems", 0)..=bound("maxItems", u64::MAX)).contains(&items.len()) {
            found.push(format!("{path} has {} entries", items.len()));
        }
        for (n, item) in items.iter().enumerate() {
            found.extend(broken(root, &schema["items"], item, &format!("{path}[{n}]")));
        }
    }
    if let Some(entries) = value.as_object() {
        for name in schema["required"].as_array().into_iter().flatten() {
            if !entries.contains_key(name.as_str().expect("a name")) {
                found.push(format!("{path} lacks {name}"));
            }
        }
        for (name, entry) in entries {
            match &schema["properties"][name] {
                Value::Null if schema["additionalProperties"] == json!(false) => {
                    found.push(format!("{path}.{name} is unknown"));
                }
                property => found.extend(broken(root, property, entry, &format!("{path}.{name}"))),
            }
        }
        if let Some(choices) = schema["oneOf"].as_array() {
            let takes = |choice: &&Value| broken(root, choice, value, path).is_empty();
            if choices.iter().filter(takes).count() != 1 {
                found.push(format!("{path} fits not one choice"));
            }
        }
    }
    found
}

fn check(file: &Value) -> Vec<String> {
    let schema = schema();
    broken(&schema, &schema, file, "file")
}

/// A bar in two dimensions that uses every part of the format.
fn full() -> Value {
    json!({
        "$schema": "conduction.schema.json",
        "about": { "title": "Everything at once" },
        "dimensions": 2,
        "lengths_in": "mm",
        "domain": { "from": [0, 0], "to": [100, 60] },
        "background": 0.03,
        "environments": [
            { "name": "inside", "temperature": 20 },
            { "name": "outside", "temperature": -10.5 },
        ],
        "paints": [
            { "name": "bar", "block": { "from": [0, 20], "to": [100, 30] }, "conductivity": 50 },
            {
                "prism": { "axis": "z", "outline": [[0, 0], [30, 0], [0, 30]] },
                "conductivity": 0.2, "finish": 1,
            },
        ],
        "surroundings": [{
            "block": { "from": [90, 0], "to": [100, 30] },
            "environment": "inside",
            "surface_resistance": 0.25,
        }],
        "finishes": [{
            "finish": 1,
            "environment": "outside",
            "surface_resistance": 0.06,
            "surface_resistance_by_side": [{ "side": "x_minimum", "surface_resistance": 0.05 }],
        }],
        "air": [{
            "block": { "from": [60, 30], "to": [100, 60] },
            "environment": "inside",
            "surface_resistance": 0.13,
            "surface_resistance_by_side": [{ "side": "y_maximum", "surface_resistance": 0.17 }],
        }],
        "exposed": [{ "side": "x_minimum", "environment": "outside", "surface_resistance": 0.04 }],
        "cells": {
            "finest": 4, "coarsest": 10, "growth": 1.4, "limit": 50000,
            "refinements": [
                { "point": [60, 30], "size": 2 },
                { "plane": { "axis": "x", "at": 80 }, "size": 3 },
                { "block": { "from": [0, 0], "to": [10, 10] }, "size": 2 },
            ],
        },
        "accuracy": { "relative_residual": 1e-9, "maximum_iterations": 200 },
        "probes": [
            { "name": "middle", "at": [50, 25] },
            { "name": "on the bar", "at": [80, 30], "surface_of": "inside" },
            { "name": "nowhere", "at": [90, 50] },
        ],
        "patches": [{
            "name": "bar top",
            "block": { "from": [60, 29], "to": [100, 31] },
            "environment": "inside",
        }],
        "refine": {
            "environment": "inside", "extreme": "coldest", "tolerance": 0.5, "maximum_rounds": 4,
        },
    })
}

#[test]
fn the_reference_cases_fit_the_schema() {
    for text in [
        include_str!("../../reference/conduction/iso_10211_case_1.json"),
        include_str!("../../reference/conduction/iso_10211_case_2.json"),
        include_str!("../../reference/conduction/iso_10211_case_3.json"),
        include_str!("../../reference/conduction/iso_10211_case_4.json"),
    ] {
        assert_eq!(check(&serde_json::from_str(text).unwrap()), Vec::<String>::new());
    }
}

#[test]
fn a_file_that_uses_everything_fits_and_solves() {
    let file = full();
    assert_eq!(check(&file), Vec::<String>::new());
    let schema = schema();
    for name in schema["properties"].as_object().unwrap().keys() {
        assert!(file.get(name).is_some(), "{name} is published but not tried");
    }
    let read = read_problem(&file.to_string()).unwrap();
    let told = serde_json::to_value(report(&read).unwrap()).unwrap();
    assert!(told["refinement"]["rounds"].as_array().unwrap().len() > 1);
    let inside = told["environments"][0]["flow_into"].as_f64().unwrap();
    assert!(inside < 0.0 && told["probes"][2]["temperature"].is_null());
    let [probe, patch] = [&told["probes"][1], &told["patches"][0]];
    for value in [probe, patch] {
        let celsius = value["temperature"].as_f64().unwrap();
        assert!(celsius > -10.5 && celsius < 20.0, "{value}");
    }
}

/// Writes a value at a path such as `/paints/0/block`.
fn with(path: &str, value: Value) -> String {
    let mut file = full();
    *file.pointer_mut(path).expect("a part of the file") = value;
    file.to_string()
}

#[test]
fn faults_of_meaning_name_their_path() {
    for (path, value, place, word) in [
        ("/dimensions", json!(4), "dimensions", "neither 2 nor 3"),
        ("/domain/from", json!([0, 0, 0]), "domain.from", "2 coordinates expected, 3 given"),
        ("/domain/to", json!([0, 60]), "domain", "inside out"),
        ("/background", json!(0), "background", "not above zero"),
        ("/paints/0/conductivity", json!(-2), "paints[0].conductivity", "-2 W/(m·K)"),
        ("/paints/0/block/to", json!([1]), "paints[0].block.to", "1 given"),
        ("/paints/0/block/to", json!([-1, 25]), "paints[0].block or .prism", "inside out"),
        ("/paints/0/block", json!(null), "paints[0]", "either a block or a prism"),
        ("/paints/1/prism/axis", json!("x"), "paints[1].prism", "no axis but z"),
        ("/paints/1/prism/outline", json!([[0, 0], [1, 1]]), "paints[1].block or .prism", "three"),
        ("/air/0/environment", json!("attic"), "air[0].environment", "`attic` is not declared"),
        ("/air/0/surface_resistance", json!(-1), "air[0].surface_resistance", "below zero"),
        ("/surroundings/0/environment", json!("x"), "surroundings[0].environment", "not declared"),
        ("/surroundings/0/block/to", json!([1]), "surroundings[0].block.to", "1 given"),
        ("/finishes/0/environment", json!("x"), "finishes[0].environment", "not declared"),
        ("/finishes/0/surface_resistance", json!(-1), "finishes[0].surface_resistance", "below"),
        ("/exposed/0/side", json!("z_minimum"), "exposed[0].side", "z side in two dimensions"),
        ("/environments/1/name", json!("inside"), "environments[1].name", "named before"),
        ("/cells/finest", json!(0), "cells", "above zero"),
        ("/cells/refinements/1/size", json!(0), "cells.refinements[1]", "above zero"),
        ("/probes/0/at", json!([1, 2, 3]), "probes[0].at", "2 coordinates"),
        ("/probes/1/surface_of", json!("x"), "probes[1].environment", "not declared"),
        ("/refine/tolerance", json!(0), "refine.tolerance", "above zero"),
        ("/exposed", json!([]), "environments[1]", "no air or exposed side"),
    ] {
        match read_problem(&with(path, value.clone())) {
            Err(FileError::Meaning { path, message }) => {
                assert_eq!(path, place, "{message}");
                assert!(message.contains(word), "{message}");
            }
            other => panic!("{path} = {value}: {other:?}"),
        }
    }
}

#[test]
fn faults_of_form_name_line_and_column() {
    let text = serde_json::to_string_pretty(&full()).unwrap();
    let misspelt = text.replace("\"coarsest\"", "\"coarsets\"");
    let line = 1 + misspelt.lines().position(|line| line.contains("coarsets")).unwrap();
    match read_problem(&misspelt) {
        Err(FileError::Form { line: found, column, message }) => {
            assert_eq!(found, line);
            assert!(column > 1);
            assert!(message.contains("unknown field `coarsets`"), "{message}");
            assert!(!message.contains("at line"), "{message}");
        }
        other => panic!("{other:?}"),
    }
    let cut = read_problem(&text[..text.len() / 2]).unwrap_err();
    assert!(matches!(cut, FileError::Form { .. }), "{cut:?}");
    let missing = read_problem("{}").unwrap_err().to_string();
    assert!(missing.starts_with("line 1, column ") && missing.contains("missing field"));
}

/// What only solving shows is told by path as well.
#[test]
fn faults_of_solving_name_their_path() {
    let read = read_problem(&with("/cells/limit", json!(10))).unwrap();
    let fault = report(&read).unwrap_err().to_string();
    assert!(fault.starts_with("cells.limit: ") && fault.ends_with("10 allowed"), "{fault}");
    let read = read_problem(&with("/accuracy/maximum_iterations", json!(1))).unwrap();
    let fault = report(&read).unwrap_err().to_string();
    assert!(fault.starts_with("accuracy: a relative residual of "), "{fault}");
}

#[test]
fn the_schema_refuses_what_it_should() {
    for (path, value) in [
        ("/dimensions", json!(4)),
        ("/lengths_in", json!("ft")),
        ("/paints/0/conductivity", json!(0)),
        ("/paints/0/block", json!({ "from": [0, 0] })),
        ("/paints/0/block/from", json!([1])),
        ("/air/0", json!({ "environment": "inside", "surface_resistance": 0.1 })),
        ("/cells/growth", json!(1)),
        ("/refine/extreme", json!("coolest")),
        ("/about", json!(null)),
    ] {
        let file: Value = serde_json::from_str(&with(path, value)).unwrap();
        assert_eq!(check(&file).is_empty(), path == "/about", "{path}");
    }
}
