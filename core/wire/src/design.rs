//! A design to and from one flat JSON object.

use inchwise_core::choice_table::RangeProblem;
use inchwise_core::design::{
    DamperScreen, Design, DesignError, DesignProblem, EndWallTreatment, FanGiven, Field,
    FoamMeasure, FramePosition, LiningMaterial, PersonnelDoor, RoomUse, Wall, WeatherCover,
};
use inchwise_core::freight_box::BoxSize;
use serde::de::{Deserializer, MapAccess, Visitor};
use serde_json::{Map, Value, json};

use crate::unit::{field_key, from_si, to_si};

/// Why a text is no design.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Unreadable {
    /// Not JSON, or not one object.
    NotAnObject {
        /// What the reader says, with line and column.
        reason: String,
    },
    /// A text longer than any design.
    TooLong {
        /// The longest that is read, bytes.
        limit: usize,
    },
    /// A key that no choice has.
    UnknownKey(String),
    /// A key that stands twice.
    RepeatedKey(String),
    /// A value that is not a number, or for a measured dimension neither number nor null.
    NotANumber(String),
    /// A value that is none of the options.
    UnknownOption {
        /// Whose.
        key: String,
        /// What may stand there.
        options: Vec<&'static str>,
    },
}

/// The longest text that is read as a design.
pub const LONGEST_DESIGN: usize = 64 * 1024;

/// The entries of an object in the order they stand, so that a repeated key is seen.
struct Entries(Vec<(String, Value)>);

impl<'de> serde::Deserialize<'de> for Entries {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        struct EntryVisitor;
        impl<'de> Visitor<'de> for EntryVisitor {
            type Value = Entries;
            fn expecting(&self, formatter: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
                formatter.write_str("one object of choices")
            }
            fn visit_map<A: MapAccess<'de>>(self, mut map: A) -> Result<Entries, A::Error> {
                let mut entries = Vec::new();
                while let Some(entry) = map.next_entry()? {
                    entries.push(entry);
                }
                Ok(Entries(entries))
            }
        }
        deserializer.deserialize_map(EntryVisitor)
    }
}

/// Reads a design. What is left out keeps its default.
///
/// # Errors
/// The first thing that cannot be read. Numbers out of range are read: [`Design::check`] speaks
/// of them.
pub fn design_from_json(text: &str) -> Result<Design, Unreadable> {
    if text.len() > LONGEST_DESIGN {
        return Err(Unreadable::TooLong { limit: LONGEST_DESIGN });
    }
    let Entries(entries) = serde_json::from_str(text)
        .map_err(|error| Unreadable::NotAnObject { reason: error.to_string() })?;
    let mut design = Design::default();
    for (n, (key, value)) in entries.iter().enumerate() {
        if entries[..n].iter().any(|(earlier, _)| earlier == key) {
            return Err(Unreadable::RepeatedKey(key.clone()));
        }
        if !put_option(&mut design, key, value)? {
            put_number(&mut design, key, value)?;
        }
    }
    Ok(design)
}

/// Sets the named option of this key; false where the key is none of them.
fn put_option(design: &mut Design, key: &str, value: &Value) -> Result<bool, Unreadable> {
    fn chosen<T: Copy>(
        key: &str,
        value: &Value,
        from_key: impl Fn(&str) -> Option<T>,
        options: impl Iterator<Item = &'static str>,
    ) -> Result<T, Unreadable> {
        value.as_str().and_then(from_key).ok_or_else(|| Unreadable::UnknownOption {
            key: key.to_owned(),
            options: options.collect(),
        })
    }
    macro_rules! option {
        ($place:ident, $options:ty, $all:expr) => {{
            let all = $all.into_iter().map(|option| option.key());
            design.$place = chosen(key, value, <$options>::from_key, all)?;
        }};
    }
    match key {
        "box" => option!(box_size, BoxSize, BoxSize::ALL),
        "end_wall_treatment" => {
            option!(end_wall_treatment, EndWallTreatment, EndWallTreatment::ALL.iter().copied());
        }
        "foam_measure" => option!(foam_measure, FoamMeasure, FoamMeasure::ALL.iter().copied()),
        "frame_position" => {
            option!(frame_position, FramePosition, FramePosition::ALL.iter().copied());
        }
        "lining_material" => {
            option!(lining_material, LiningMaterial, LiningMaterial::ALL.iter().copied());
        }
        "personnel_door" => {
            option!(personnel_door, PersonnelDoor, PersonnelDoor::ALL.iter().copied());
        }
        "window_wall" => option!(window_wall, Wall, Wall::ALL.iter().copied()),
        "room_use" => option!(room_use, RoomUse, RoomUse::ALL.iter().copied()),
        "weather_cover" => option!(weather_cover, WeatherCover, WeatherCover::ALL.iter().copied()),
        "damper_screen" => option!(damper_screen, DamperScreen, DamperScreen::ALL.iter().copied()),
        "fan_given" => option!(fan_given, FanGiven, FanGiven::ALL.iter().copied()),
        _ => return Ok(false),
    }
    Ok(true)
}

fn put_number(design: &mut Design, key: &str, value: &Value) -> Result<(), Unreadable> {
    let field = Field::ALL
        .iter()
        .copied()
        .find(|&field| field_key(field) == key)
        .ok_or_else(|| Unreadable::UnknownKey(key.to_owned()))?;
    let range = field.range();
    let number = match value {
        Value::Null if range.default.is_none() => None,
        _ => {
            let written = value.as_f64().ok_or_else(|| Unreadable::NotANumber(key.to_owned()))?;
            Some(to_si(range.quantity, written))
        }
    };
    design.set(field, number);
    Ok(())
}

/// Writes a design in full; measurements not taken are left out.
pub fn design_to_value(design: &Design) -> Value {
    let mut map = Map::new();
    let mut put = |key: &str, option: &str| map.insert(key.to_owned(), json!(option));
    put("box", design.box_size.key());
    put("end_wall_treatment", design.end_wall_treatment.key());
    put("foam_measure", design.foam_measure.key());
    put("frame_position", design.frame_position.key());
    put("lining_material", design.lining_material.key());
    put("personnel_door", design.personnel_door.key());
    put("window_wall", design.window_wall.key());
    put("room_use", design.room_use.key());
    put("weather_cover", design.weather_cover.key());
    put("damper_screen", design.damper_screen.key());
    put("fan_given", design.fan_given.key());
    for &field in Field::ALL {
        if let Some(number) = design.get(field) {
            map.insert(field_key(field), json!(from_si(field.range().quantity, number)));
        }
    }
    Value::Object(map)
}

/// Every error of a design, in the units its keys name.
pub fn error_report(errors: &[DesignError]) -> Value {
    let reports: Vec<Value> = errors.iter().map(one_error).collect();
    json!({ "errors": reports })
}

fn one_error(error: &DesignError) -> Value {
    let quantity = error.field.range().quantity;
    let written = |si: f64| json!(from_si(quantity, si));
    let problem = match error.problem {
        DesignProblem::ByItself(RangeProblem::NotFinite) => json!({ "kind": "not_finite" }),
        DesignProblem::ByItself(RangeProblem::NotWhole) => json!({ "kind": "not_whole" }),
        DesignProblem::ByItself(RangeProblem::OutOfRange { minimum, maximum }) => json!({
            "kind": "out_of_range", "minimum": written(minimum), "maximum": written(maximum),
        }),
        DesignProblem::DoesNotFit { needs, has, clashes_with } => json!({
            "kind": "does_not_fit", "needs": written(needs), "has": written(has),
            "short_by": written(needs - has), "clashes_with": field_key(clashes_with),
        }),
        DesignProblem::NotColderThanRoom { maximum } => json!({
            "kind": "not_colder_than_room", "maximum": written(maximum),
        }),
        DesignProblem::FarFromNominal { nominal, tolerance } => json!({
            "kind": "far_from_nominal", "nominal": written(nominal),
            "tolerance": written(tolerance),
        }),
        DesignProblem::MustExceed { field, than } => json!({
            "kind": "must_exceed", "field": field_key(field), "than": written(than),
        }),
        DesignProblem::MustBeBelow { field, than } => json!({
            "kind": "must_be_below", "field": field_key(field), "than": written(than),
        }),
        DesignProblem::SourceWithoutAir => json!({ "kind": "source_without_air" }),
    };
    let given = if error.given.is_finite() { written(error.given) } else { Value::Null };
    json!({ "field": field_key(error.field), "given": given, "problem": problem })
}

/// Why a text could not be read.
pub fn unreadable(fault: &Unreadable) -> Value {
    let fault = match fault {
        Unreadable::NotAnObject { reason } => json!({ "kind": "not_an_object", "reason": reason }),
        Unreadable::TooLong { limit } => json!({ "kind": "too_long", "limit_bytes": limit }),
        Unreadable::UnknownKey(key) => json!({ "kind": "unknown_key", "key": key }),
        Unreadable::RepeatedKey(key) => json!({ "kind": "repeated_key", "key": key }),
        Unreadable::NotANumber(key) => json!({ "kind": "not_a_number", "key": key }),
        Unreadable::UnknownOption { key, options } => {
            json!({ "kind": "unknown_option", "key": key, "options": options })
        }
    };
    json!({ "unreadable": fault })
}
