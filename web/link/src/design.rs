//! The design as a short text for an address or an attribute:
//! `v=1&box=40_high_cube&side_wall_foam_mm=89`.
//!
//! The keys are those of the JSON form, each quantity's ending in its unit. Only what differs from
//! the default design is written, so a link says what was chosen and nothing else.

use inchwise_core::design::{
    DamperScreen, Design, EndWallTreatment, FanGiven, Field, FoamMeasure, FramePosition,
    LiningMaterial, PersonnelDoor, RoomUse, Wall, WeatherCover,
};
use inchwise_core::freight_box::BoxSize;
use inchwise_wire::{field_key, from_si, to_si};

use crate::{LONGEST, plain_number, plain_text};

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
    /// A key that no choice has. It is not repeated: what a stranger wrote has no place on the page.
    UnknownKey,
    /// Longer than anything that is read.
    TooLong,
    /// A key that stands twice.
    RepeatedKey(String),
    /// A value that its key cannot take.
    BadValue(String),
}

/// Letters of what was written that are repeated at most.
const ECHOED: usize = 40;

/// The beginning of a text, short enough to be repeated.
pub fn cut(text: &str) -> &str {
    text.char_indices().nth(ECHOED).map_or(text, |(end, _)| &text[..end])
}

impl NoDesign {
    /// What is wrong, in a few plain words for whoever wrote the page.
    pub fn said(&self) -> String {
        let (fault, what) = match self {
            Self::NoVersion => ("it does not begin with v=1", ""),
            Self::OtherVersion(version) => ("unknown version ", version.as_str()),
            Self::NoValue(entry) => ("no value in ", entry.as_str()),
            Self::UnknownKey => ("a key that no choice has", ""),
            Self::TooLong => ("it is too long", ""),
            Self::RepeatedKey(key) => ("twice ", key.as_str()),
            Self::BadValue(key) => ("not a value of ", key.as_str()),
        };
        [fault, cut(what)].concat()
    }
}

/// The named options of a design by key, as text.
fn options(design: &Design) -> [(&'static str, &'static str); 11] {
    [
        ("box", design.box_size.key()),
        ("end_wall_treatment", design.end_wall_treatment.key()),
        ("foam_measure", design.foam_measure.key()),
        ("frame_position", design.frame_position.key()),
        ("lining_material", design.lining_material.key()),
        ("personnel_door", design.personnel_door.key()),
        ("window_wall", design.window_wall.key()),
        ("room_use", design.room_use.key()),
        ("weather_cover", design.weather_cover.key()),
        ("damper_screen", design.damper_screen.key()),
        ("fan_given", design.fan_given.key()),
    ]
}

/// Every choice of a design by key, as text; what is not finite or not measured is left out.
pub fn entries(design: &Design) -> Vec<(String, String)> {
    let options = options(design).map(|(key, option)| (key.to_owned(), option.to_owned()));
    let numbers = Field::ALL.iter().filter_map(|&field| {
        let written = from_si(field.range().quantity, design.get(field)?);
        Some((field_key(field), plain_text(written)?))
    });
    options.into_iter().chain(numbers).collect()
}

/// The design as a link; `v=1` alone for the default design.
pub fn link_of(design: &Design) -> String {
    let usual = entries(&Design::default());
    let mut link = format!("v={VERSION}");
    for entry in entries(design) {
        if !usual.contains(&entry) {
            link.extend(["&", &entry.0, "=", &entry.1]);
        }
    }
    link
}

/// Reads a link, with or without its `#`. What is left out keeps its default.
///
/// # Errors
/// The first thing that cannot be read. Numbers out of range are read: the check speaks of them.
pub fn design_of_link(text: &str) -> Result<Design, NoDesign> {
    if text.len() > LONGEST {
        return Err(NoDesign::TooLong);
    }
    let link = text.trim();
    let link = link.strip_prefix('#').unwrap_or(link);
    let (version, entries) = link.split_once('&').unwrap_or((link, ""));
    match version.strip_prefix("v=") {
        Some(VERSION) => {}
        Some(other) => return Err(NoDesign::OtherVersion(other.to_owned())),
        None => return Err(NoDesign::NoVersion),
    }
    let mut design = Design::default();
    let mut seen: Vec<&str> = Vec::new();
    for entry in entries.split('&').filter(|entry| !entry.is_empty()) {
        let (key, value) =
            entry.split_once('=').ok_or_else(|| NoDesign::NoValue(entry.to_owned()))?;
        if seen.contains(&key) {
            return Err(NoDesign::RepeatedKey(key.to_owned()));
        }
        seen.push(key);
        put(&mut design, key, value)?;
    }
    Ok(design)
}

fn put(design: &mut Design, key: &str, value: &str) -> Result<(), NoDesign> {
    let bad = || NoDesign::BadValue(key.to_owned());
    match key {
        "box" => design.box_size = BoxSize::from_key(value).ok_or_else(bad)?,
        "end_wall_treatment" => {
            design.end_wall_treatment = EndWallTreatment::from_key(value).ok_or_else(bad)?;
        }
        "foam_measure" => design.foam_measure = FoamMeasure::from_key(value).ok_or_else(bad)?,
        "frame_position" => {
            design.frame_position = FramePosition::from_key(value).ok_or_else(bad)?;
        }
        "lining_material" => {
            design.lining_material = LiningMaterial::from_key(value).ok_or_else(bad)?;
        }
        "personnel_door" => {
            design.personnel_door = PersonnelDoor::from_key(value).ok_or_else(bad)?;
        }
        "window_wall" => design.window_wall = Wall::from_key(value).ok_or_else(bad)?,
        "room_use" => design.room_use = RoomUse::from_key(value).ok_or_else(bad)?,
        "weather_cover" => {
            design.weather_cover = WeatherCover::from_key(value).ok_or_else(bad)?;
        }
        "damper_screen" => {
            design.damper_screen = DamperScreen::from_key(value).ok_or_else(bad)?;
        }
        "fan_given" => design.fan_given = FanGiven::from_key(value).ok_or_else(bad)?,
        _ => {
            let field = Field::ALL
                .iter()
                .copied()
                .find(|&field| field_key(field) == key)
                .ok_or(NoDesign::UnknownKey)?;
            let written = plain_number(value).ok_or_else(bad)?;
            design.set(field, Some(to_si(field.range().quantity, written)));
        }
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use inchwise_core::design::{EndWallTreatment, Field, PersonnelDoor};
    use inchwise_core::freight_box::BoxSize;
    use inchwise_core::units::Length;

    use super::*;

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
            frame_position: FramePosition::OverTroughs,
            measured_width: Some(Length::mm(2349.0)),
            ..Design::default()
        };
        let link = link_of(&design);
        assert_eq!(
            link,
            "v=1&box=40_high_cube&end_wall_treatment=drop_ceiling&\
             frame_position=over_troughs&personnel_door=none&\
             side_wall_foam_mm=89&measured_width_mm=2349"
        );
        assert_eq!(design_of_link(&link), Ok(design));
    }

    #[test]
    fn both_ends_of_every_choice_survive_the_round_trip() {
        for &field in Field::ALL {
            let range = field.range();
            for si in [range.minimum, range.minimum + range.step, range.maximum] {
                let mut design = Design::default();
                design.set(field, Some(si));
                let link = link_of(&design);
                let back = design_of_link(&link).expect("own link");
                assert_eq!(link_of(&back), link, "{field:?}");
                let there = back.get(field).unwrap_or(f64::NAN);
                // A link keeps nine decimals of the written unit.
                assert!((si - there).abs() < 1e-9, "{field:?} {si} {there}");
            }
        }
    }

    #[test]
    fn a_megabyte_is_refused_unread() {
        let endless = ["v=1&", &"a=1&".repeat(250_000)].concat();
        assert_eq!(design_of_link(&endless), Err(NoDesign::TooLong));
    }

    #[test]
    fn a_link_is_read_with_and_without_its_mark() {
        let expected = Design { side_wall_foam: Length::mm(75.0), ..Design::default() };
        for text in [" v=1&side_wall_foam_mm=75 ", "#v=1&side_wall_foam_mm=75"] {
            assert_eq!(design_of_link(text).as_ref(), Ok(&expected), "{text}");
        }
    }

    #[test]
    fn what_is_no_link_is_refused_with_its_reason() {
        let refused = |text: &str| design_of_link(text).expect_err(text);
        assert_eq!(refused(""), NoDesign::NoVersion);
        assert_eq!(refused("section-2"), NoDesign::NoVersion);
        assert_eq!(refused("v=2&box=x"), NoDesign::OtherVersion("2".to_owned()));
        assert_eq!(refused("v=1&box"), NoDesign::NoValue("box".to_owned()));
        let bad = |key: &str| NoDesign::BadValue(key.to_owned());
        assert_eq!(refused("v=1&box=60_standard"), bad("box"));
        assert_eq!(refused("v=1&colour=red"), NoDesign::UnknownKey);
        for value in ["NaN", "inf", "1e9", "", "-", "+4", "4mm", "0x10", "\"}", "1.2.3", "."] {
            assert_eq!(
                refused(&format!("v=1&stud_depth_mm={value}")),
                bad("stud_depth_mm"),
                "{value}"
            );
        }
        assert_eq!(
            refused("v=1&stud_depth_mm=64&stud_depth_mm=89"),
            NoDesign::RepeatedKey("stud_depth_mm".to_owned())
        );
        let endless = format!("v=1&stud_depth_mm={}", "9".repeat(400));
        assert_eq!(refused(&endless), bad("stud_depth_mm"));
    }

    #[test]
    fn a_number_that_is_not_finite_is_not_handed_on() {
        let mut design = Design::default();
        design.set(Field::StudDepth, Some(f64::NAN));
        assert_eq!(link_of(&design), "v=1");
    }
}
