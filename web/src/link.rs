//! The design as a short text for an address or an attribute:
//! `v=1&box=40_high_cube&side_wall_foam_mm=89`.
//!
//! The keys are those of the JSON form, each quantity's ending in its unit. Only what differs from
//! the default design is written, so a link says what was chosen and nothing else.

use inchwise_core::design::Design;
use inchwise_wire::{Unreadable, design_from_json, design_to_value};
use serde_json::Value;

/// The version this writes; links of other versions are refused rather than misread.
pub const VERSION: &str = "1";

/// Why a text is no design.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum NoDesign {
    /// It does not begin with `v=`.
    NoVersion,
    /// It is of a version that is not known here.
    OtherVersion(String),
    /// An entry without `=`.
    NoValue(String),
    /// The JSON form says why.
    Unreadable(Unreadable),
}

/// The design as a link; `v=1` alone for the default design.
pub fn link_of(design: &Design) -> String {
    let usual = design_to_value(&Design::default());
    let mut link = format!("v={VERSION}");
    if let Value::Object(entries) = design_to_value(design) {
        for (key, value) in &entries {
            let written = match value {
                _ if usual.get(key) == Some(value) => continue,
                Value::String(option) => option.clone(),
                Value::Number(number) => {
                    let number = number.to_string();
                    number.strip_suffix(".0").map_or(number.clone(), str::to_owned)
                }
                // A number that is not finite: there is nothing to hand on.
                _ => continue,
            };
            link.extend(["&", key, "=", &written]);
        }
    }
    link
}

/// Whether a text looks like a link, so that a page's own fragment is left alone.
pub fn is_link(text: &str) -> bool {
    text.starts_with("v=")
}

/// Reads a link. What is left out keeps its default.
///
/// # Errors
/// The first thing that cannot be read. Numbers out of range are read: the check speaks of them.
pub fn design_of_link(link: &str) -> Result<Design, NoDesign> {
    let (version, entries) = link.split_once('&').unwrap_or((link, ""));
    match version.strip_prefix("v=") {
        Some(VERSION) => {}
        Some(other) => return Err(NoDesign::OtherVersion(other.to_owned())),
        None => return Err(NoDesign::NoVersion),
    }
    // The JSON reader judges keys, values and repetitions; here the entries are only quoted.
    let mut json = String::from("{");
    for entry in entries.split('&').filter(|entry| !entry.is_empty()) {
        let (key, value) =
            entry.split_once('=').ok_or_else(|| NoDesign::NoValue(entry.to_owned()))?;
        if json.len() > 1 {
            json.push(',');
        }
        json.push_str(&Value::from(key).to_string());
        json.push(':');
        if serde_json::from_str::<Value>(value).is_ok_and(|value| value.is_number()) {
            json.push_str(value);
        } else {
            json.push_str(&Value::from(value).to_string());
        }
    }
    json.push('}');
    design_from_json(&json).map_err(NoDesign::Unreadable)
}

/// Reads a design in either form, JSON or link.
///
/// # Errors
/// The first thing that cannot be read.
pub fn design_of_text(text: &str) -> Result<Design, NoDesign> {
    let text = text.trim();
    if text.starts_with('{') {
        design_from_json(text).map_err(NoDesign::Unreadable)
    } else {
        design_of_link(text.strip_prefix('#').unwrap_or(text))
    }
}

#[cfg(test)]
mod tests {
    use inchwise_core::design::{EndWallTreatment, Field, PersonnelDoor};
    use inchwise_core::freight_box::BoxSize;
    use inchwise_core::units::Length;

    use super::*;
    use crate::measure::{Scale, UnitSystem};

    #[test]
    fn the_default_design_is_a_bare_version() {
        assert_eq!(link_of(&Design::default()), "v=1");
        assert_eq!(design_of_link("v=1"), Ok(Design::default()));
    }

    #[test]
    fn a_link_says_what_was_chosen_and_nothing_else() {
        let design = Design {
            box_size: BoxSize::FortyHighCube,
            side_wall_foam: Length::mm(89.0),
            end_wall_treatment: EndWallTreatment::DropCeiling,
            personnel_door: PersonnelDoor::None,
            measured_width: Some(Length::mm(2349.0)),
            ..Design::default()
        };
        let link = link_of(&design);
        assert_eq!(
            link,
            "v=1&box=40_high_cube&end_wall_treatment=drop_ceiling&measured_width_mm=2349&\
             personnel_door=none&side_wall_foam_mm=89"
        );
        assert_eq!(design_of_link(&link), Ok(design));
    }

    #[test]
    fn every_end_of_every_slider_survives_the_round_trip() {
        for &field in Field::ALL {
            for units in [UnitSystem::Metric, UnitSystem::Imperial] {
                let scale = Scale::of(field, units);
                for position in [scale.lowest, scale.lowest + 1, scale.highest] {
                    let mut design = Design::default();
                    design.set(field, Some(scale.si(position)));
                    let link = link_of(&design);
                    let back = design_of_link(&link).expect("own link");
                    assert_eq!(link_of(&back), link, "{field:?}");
                    let (si, there) = (design.get(field), back.get(field));
                    let off = si.unwrap_or(f64::NAN) - there.unwrap_or(f64::NAN);
                    // The JSON form keeps nine decimals of the written unit.
                    assert!(off.abs() < 1e-9, "{field:?} {si:?} {there:?}");
                }
            }
        }
    }

    #[test]
    fn both_forms_are_read() {
        let expected = Design { side_wall_foam: Length::mm(75.0), ..Design::default() };
        for text in [
            r#"{"side_wall_foam_mm": 75}"#,
            " v=1&side_wall_foam_mm=75 ",
            "#v=1&side_wall_foam_mm=75",
        ] {
            assert_eq!(design_of_text(text).as_ref(), Ok(&expected), "{text}");
        }
    }

    #[test]
    fn what_is_no_link_is_refused_with_its_reason() {
        let refused = |text: &str| design_of_text(text).expect_err(text);
        assert_eq!(refused(""), NoDesign::NoVersion);
        assert_eq!(refused("section-2"), NoDesign::NoVersion);
        assert_eq!(refused("v=2&box=x"), NoDesign::OtherVersion("2".to_owned()));
        assert_eq!(refused("v=1&box"), NoDesign::NoValue("box".to_owned()));
        let unreadable = |text: &str| matches!(refused(text), NoDesign::Unreadable(_));
        for text in [
            "v=1&box=60_standard",
            "v=1&colour=red",
            "v=1&stud_depth_mm=NaN",
            "v=1&stud_depth_mm=1e999",
            "v=1&stud_depth_mm=64&stud_depth_mm=89",
            "v=1&stud_depth_mm=\"}",
            "v=1&\"=1",
            "{",
            "{\"side_wall_foam_mm\": null}",
        ] {
            assert!(unreadable(text), "{text}");
        }
    }

    #[test]
    fn a_number_that_is_not_finite_is_not_handed_on() {
        let mut design = Design::default();
        design.set(Field::StudDepth, Some(f64::NAN));
        assert_eq!(link_of(&design), "v=1");
    }
}
