//! A design to and from one flat JSON object.

use inchwise_core::design::{
    DamperScreen, Design, DesignError, DoorEndFinish, EndWallTreatment, FanGiven, Field,
    FloorRecesses, FoamMeasure, FramePosition, LiningMaterial, OutdoorAirRule, PersonnelDoor,
    RoomUse, SleeveEnd, Wall, WeatherCover, WindowSpacer,
};
use inchwise_core::freight_box::BoxSize;
use inchwise_core::year::YearChoices;
use serde::de::{Deserializer, MapAccess, Visitor};
use serde_json::{Map, Value, json};

use crate::error::{climate_error, design_error};
use crate::former_keys::{FormerDesign, FormerKey, former_design_key};
use crate::place::{NoPlace, place_from_value, place_to_value};
use crate::unit::{field_key, from_si, to_si};
use crate::year::choices_from_value;

/// Why a text is no design.
#[derive(Clone, Debug, PartialEq)]
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
    /// A place that is none.
    NoPlace(NoPlace),
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
    let (design, year) = design_and_year_from_json(text)?;
    match year {
        None => Ok(design),
        Some(_) => Err(Unreadable::UnknownKey(YEAR.to_owned())),
    }
}

/// The key under which what heats a room stands beside its design.
const YEAR: &str = "year";

/// Reads a design with what heats it, which stands under `year`; `None` where nothing does.
///
/// # Errors
/// As [`design_from_json`].
pub fn design_and_year_from_json(text: &str) -> Result<(Design, Option<YearChoices>), Unreadable> {
    if text.len() > LONGEST_DESIGN {
        return Err(Unreadable::TooLong { limit: LONGEST_DESIGN });
    }
    let Entries(entries) = serde_json::from_str(text)
        .map_err(|error| Unreadable::NotAnObject { reason: error.to_string() })?;
    let mut design = Design::default();
    let mut year = None;
    let mut former = FormerDesign::default();
    for (n, (key, value)) in entries.iter().enumerate() {
        if entries[..n].iter().any(|(earlier, _)| earlier == key) {
            return Err(Unreadable::RepeatedKey(key.clone()));
        }
        if key == YEAR {
            year = Some(choices_from_value(value)?);
        } else if let Some(meant) = former_design_key(key) {
            let written = value.as_f64().ok_or_else(|| Unreadable::NotANumber(key.clone()))?;
            if let FormerKey::Is(number) = meant {
                former.take(number, written);
            }
        } else if !put_option(&mut design, key, value)? {
            put_number(&mut design, key, value)?;
        }
    }
    former.put_into(&mut design);
    Ok((design, year))
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
        "floor_recesses" => {
            option!(floor_recesses, FloorRecesses, FloorRecesses::ALL.iter().copied());
        }
        "sleeve_end" => option!(sleeve_end, SleeveEnd, SleeveEnd::ALL.iter().copied()),
        "lining_material" => {
            option!(lining_material, LiningMaterial, LiningMaterial::ALL.iter().copied());
        }
        "personnel_door" => {
            option!(personnel_door, PersonnelDoor, PersonnelDoor::ALL.iter().copied());
        }
        "window_wall" => option!(window_wall, Wall, Wall::ALL.iter().copied()),
        "door_end_finish" => {
            option!(door_end_finish, DoorEndFinish, DoorEndFinish::ALL.iter().copied());
        }
        "window_spacer" => option!(window_spacer, WindowSpacer, WindowSpacer::ALL.iter().copied()),
        "room_use" => option!(room_use, RoomUse, RoomUse::ALL.iter().copied()),
        "outdoor_air_rule" => {
            option!(outdoor_air_rule, OutdoorAirRule, OutdoorAirRule::ALL.iter().copied());
        }
        "place" => design.place = place_from_value(value).map_err(Unreadable::NoPlace)?,
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
    put("floor_recesses", design.floor_recesses.key());
    put("sleeve_end", design.sleeve_end.key());
    put("lining_material", design.lining_material.key());
    put("personnel_door", design.personnel_door.key());
    put("window_wall", design.window_wall.key());
    put("door_end_finish", design.door_end_finish.key());
    put("window_spacer", design.window_spacer.key());
    put("room_use", design.room_use.key());
    put("outdoor_air_rule", design.outdoor_air_rule.key());
    put("weather_cover", design.weather_cover.key());
    put("damper_screen", design.damper_screen.key());
    put("fan_given", design.fan_given.key());
    map.insert("place".to_owned(), place_to_value(design.place.place()));
    for &field in Field::ALL {
        if let Some(number) = design.get(field) {
            map.insert(field_key(field), json!(from_si(field.range().quantity, number)));
        }
    }
    Value::Object(map)
}

/// Every error of a design, in the units its keys name.
pub fn error_report(errors: &[DesignError]) -> Vec<Value> {
    errors.iter().map(design_error).collect()
}

/// Why a text could not be read.
pub fn unreadable(fault: &Unreadable) -> Value {
    let fault = match fault {
        Unreadable::NotAnObject { reason } => json!({ "code": "not_an_object", "reason": reason }),
        Unreadable::TooLong { limit } => json!({ "code": "too_long", "limit_bytes": limit }),
        Unreadable::UnknownKey(key) => json!({ "code": "unknown_key", "key": key }),
        Unreadable::RepeatedKey(key) => json!({ "code": "repeated_key", "key": key }),
        Unreadable::NotANumber(key) => json!({ "code": "not_a_number", "key": key }),
        Unreadable::UnknownOption { key, options } => {
            json!({ "code": "unknown_option", "key": key, "options": options })
        }
        Unreadable::NoPlace(NoPlace::NotANumber(path)) => {
            json!({ "code": "not_a_number", "key": format!("place.{path}") })
        }
        Unreadable::NoPlace(NoPlace::Refused(errors)) => {
            let figures: Vec<Value> = errors.iter().map(climate_error).collect();
            json!({ "code": "no_place", "figures": figures })
        }
    };
    json!({ "unreadable": fault })
}
