//! The design as a short text for an address or an attribute:
//! `v=1&box=40_high_cube&side_wall_foam_mm=89`.
//!
//! The keys are those of the JSON form, each quantity's ending in its unit. Only what differs from
//! the default design is written, so a link says what was chosen and nothing else. Figures of the place
//! stand under their path in the JSON form, `place.elevation_m=420` or `place.months.0.temperature_c=-15.2`.

use inchwise_core::climate::{CheckedPlace, Place};
use inchwise_core::design::{
    DamperScreen, Design, DoorEndFinish, EndWallTreatment, FanGiven, Field, FloorRecesses,
    FoamMeasure, FramePosition, LiningMaterial, OutdoorAirRule, PersonnelDoor, RoomUse, SleeveEnd,
    Wall, WeatherCover, WindowSpacer,
};
use inchwise_core::freight_box::BoxSize;
use inchwise_wire::{FormerDesign, FormerKey, field_key, former_design_key, from_si, to_si};

use crate::figure::Figure;
use crate::measure::{plain_number, plain_text};

/// The version this writes; links of other versions are refused rather than misread.
pub const VERSION: &str = "1";

/// The link of the default design.
pub const BARE: &str = "v=1";

/// Why a text is no design.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum NoDesign {
    /// It does not begin with `v=`.
    NoVersion,
    /// It is of a version that is not known here.
    OtherVersion(String),
    /// An entry without `=`.
    NoValue(String),
    /// A key that no choice has.
    UnknownKey(String),
    /// A key that stands twice.
    RepeatedKey(String),
    /// A value that its key cannot take.
    BadValue(String),
}

impl NoDesign {
    /// What is wrong, in a few plain words for whoever wrote the page.
    pub fn said(&self) -> String {
        let (fault, what) = match self {
            Self::NoVersion => ("it does not begin with v=1", ""),
            Self::OtherVersion(version) => ("unknown version ", version.as_str()),
            Self::NoValue(entry) => ("no value in ", entry.as_str()),
            Self::UnknownKey(key) => ("unknown key ", key.as_str()),
            Self::RepeatedKey(key) => ("twice ", key.as_str()),
            Self::BadValue(key) => ("not a value of ", key.as_str()),
        };
        [fault, what].concat()
    }
}

/// The named options of a design by key, as text.
fn options(design: &Design) -> [(&'static str, &'static str); 16] {
    [
        ("box", design.box_size.key()),
        ("end_wall_treatment", design.end_wall_treatment.key()),
        ("foam_measure", design.foam_measure.key()),
        ("frame_position", design.frame_position.key()),
        ("lining_material", design.lining_material.key()),
        ("personnel_door", design.personnel_door.key()),
        ("window_wall", design.window_wall.key()),
        ("room_use", design.room_use.key()),
        ("outdoor_air_rule", design.outdoor_air_rule.key()),
        ("floor_recesses", design.floor_recesses.key()),
        ("door_end_finish", design.door_end_finish.key()),
        ("window_spacer", design.window_spacer.key()),
        ("sleeve_end", design.sleeve_end.key()),
        ("weather_cover", design.weather_cover.key()),
        ("damper_screen", design.damper_screen.key()),
        ("fan_given", design.fan_given.key()),
    ]
}

/// Every choice of a design but its place by key, as text; what is not finite or not measured is left out.
pub fn entries(design: &Design) -> Vec<(String, String)> {
    let options = options(design).map(|(key, option)| (key.to_owned(), option.to_owned()));
    let numbers = Field::ALL.iter().filter_map(|&field| {
        let written = from_si(field.range().quantity, design.get(field)?);
        Some((field_key(field), plain_text(written)?))
    });
    options.into_iter().chain(numbers).collect()
}

/// Every figure of a place by its path in the JSON form, as text.
pub fn place_entries(place: &Place) -> Vec<(String, String)> {
    let written = |figure: Figure| Some((figure.path(), plain_text(figure.of(place))?));
    Figure::all().filter_map(written).collect()
}

/// The design as a link; `v=1` alone for the default design.
pub fn link_of(design: &Design) -> String {
    let usual = place_entries(Design::default().place.place());
    let chosen = place_entries(design.place.place());
    let mut link = link_without_place(design);
    extend(&mut link, chosen, &usual);
    link
}

/// The design as a link that says nothing of its place, whose name stands elsewhere.
pub fn link_without_place(design: &Design) -> String {
    let mut link = format!("v={VERSION}");
    extend(&mut link, entries(design), &entries(&Design::default()));
    link
}

fn extend(link: &mut String, chosen: Vec<(String, String)>, usual: &[(String, String)]) {
    for entry in chosen {
        if !usual.contains(&entry) {
            link.extend(["&", &entry.0, "=", &entry.1]);
        }
    }
}

/// The design and the year of an address's fragment, parted by a semicolon; `None` for a fragment
/// that is the page's own.
pub fn fragment_of(hash: &str) -> Option<(&str, &str)> {
    let text = hash.trim_start_matches('#');
    text.starts_with("v=").then(|| text.split_once(';').unwrap_or((text, "")))
}

/// Reads a link, with or without its `#`. What is left out keeps its default.
///
/// # Errors
/// As [`design_of_link_at`].
pub fn design_of_link(text: &str) -> Result<Design, NoDesign> {
    design_of_link_at(text, &CheckedPlace::default())
}

/// Reads a link, with or without its `#`, that may say nothing of where the box stands. What else is left out keeps its
/// default. Keys of earlier links are read as what they say now.
///
/// # Errors
/// The first thing that cannot be read. Numbers out of range are read: the check speaks of them. A place has
/// to be one that can be.
pub fn design_of_link_at(text: &str, place: &CheckedPlace) -> Result<Design, NoDesign> {
    let link = text.trim();
    let link = link.strip_prefix('#').unwrap_or(link);
    let (version, entries) = link.split_once('&').unwrap_or((link, ""));
    match version.strip_prefix("v=") {
        Some(VERSION) => {}
        Some(other) => return Err(NoDesign::OtherVersion(other.to_owned())),
        None => return Err(NoDesign::NoVersion),
    }
    let mut design = Design { place: place.clone(), ..Design::default() };
    let mut place = place.place().clone();
    let mut former = FormerDesign::default();
    let mut seen: Vec<&str> = Vec::new();
    for entry in entries.split('&').filter(|entry| !entry.is_empty()) {
        let (key, value) =
            entry.split_once('=').ok_or_else(|| NoDesign::NoValue(entry.to_owned()))?;
        if seen.contains(&key) {
            return Err(NoDesign::RepeatedKey(key.to_owned()));
        }
        seen.push(key);
        let bad = || NoDesign::BadValue(key.to_owned());
        if let Some(figure) = Figure::from_path(key) {
            figure.set(&mut place, plain_number(value).ok_or_else(bad)?);
        } else if let Some(meant) = former_design_key(key) {
            let written = plain_number(value).ok_or_else(bad)?;
            if let FormerKey::Is(number) = meant {
                former.take(number, written);
            }
        } else {
            put(&mut design, key, value)?;
        }
    }
    if place != *design.place.place() {
        design.place = place.check().map_err(|_| NoDesign::BadValue("place".to_owned()))?;
    }
    former.put_into(&mut design);
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
        "outdoor_air_rule" => {
            design.outdoor_air_rule = OutdoorAirRule::from_key(value).ok_or_else(bad)?;
        }
        "floor_recesses" => {
            design.floor_recesses = FloorRecesses::from_key(value).ok_or_else(bad)?;
        }
        "door_end_finish" => {
            design.door_end_finish = DoorEndFinish::from_key(value).ok_or_else(bad)?;
        }
        "window_spacer" => {
            design.window_spacer = WindowSpacer::from_key(value).ok_or_else(bad)?;
        }
        "sleeve_end" => design.sleeve_end = SleeveEnd::from_key(value).ok_or_else(bad)?,
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
                .ok_or_else(|| NoDesign::UnknownKey(key.to_owned()))?;
            let written = plain_number(value).ok_or_else(bad)?;
            design.set(field, Some(to_si(field.range().quantity, written)));
        }
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use inchwise_core::climate::varnholm_flats;
    use inchwise_core::design::{EndWallTreatment, Field, PersonnelDoor};
    use inchwise_core::freight_box::BoxSize;
    use inchwise_core::units::{Length, Temperature};

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
                    // A link keeps nine decimals of the written unit.
                    assert!(off.abs() < 1e-9, "{field:?} {si:?} {there:?}");
                }
            }
        }
    }

    #[test]
    fn a_link_is_read_with_and_without_its_mark() {
        let expected = Design { side_wall_foam: Length::mm(75.0), ..Design::default() };
        for text in [" v=1&side_wall_foam_mm=75 ", "#v=1&side_wall_foam_mm=75"] {
            assert_eq!(design_of_link(text).as_ref(), Ok(&expected), "{text}");
        }
    }

    #[test]
    fn a_fragment_holds_a_design_and_a_year_or_is_the_pages_own() {
        assert_eq!(fragment_of("#v=1&a=2"), Some(("v=1&a=2", "")));
        assert_eq!(fragment_of("#v=1;b=3&c=;d"), Some(("v=1", "b=3&c=;d")));
        assert_eq!(fragment_of("#section-2"), None);
        assert_eq!(fragment_of(""), None);
    }

    #[test]
    fn a_place_goes_along_where_it_is_not_named_elsewhere() {
        let place = Place { elevation: Length::new(1200.5), ..varnholm_flats() };
        let design = Design { place: place.check().expect("it can be"), ..Design::default() };
        let link = link_of(&design);
        assert_eq!(link, "v=1&place.elevation_m=1200.5");
        assert_eq!(link_without_place(&design), "v=1");
        assert_eq!(design_of_link(&link).as_ref(), Ok(&design));
        assert_eq!(design_of_link_at("v=1", &design.place).as_ref(), Ok(&design));
        let warmer = design_of_link("v=1&place.months.0.temperature_c=-3").expect("a link");
        assert_eq!(warmer.place.place().months[0].temperature, Temperature::celsius(-3.0));
        let absurd = design_of_link("v=1&place.latitude_degrees=99");
        assert_eq!(absurd, Err(NoDesign::BadValue("place".to_owned())));
    }

    #[test]
    fn earlier_links_open() {
        let text = "v=1&room_use=sleeping&person_time_h=10&site_altitude_mm=1500000\
                    &steel_sun_rise_k=3&coldest_month_c=-20&heat_gain_w=500";
        let design = design_of_link(text).expect("a link");
        assert_eq!([design.used_from, design.used_until], [8.0, 18.0]);
        let place = design.place.place();
        assert_eq!(place.elevation, Length::new(1500.0));
        assert!((place.months[0].temperature.as_celsius() + 20.0).abs() < 1e-12);
        assert!(!link_of(&design).contains("person_time"), "written anew, it is of today");
        let bad = design_of_link("v=1&heat_gain_w=much");
        assert_eq!(bad, Err(NoDesign::BadValue("heat_gain_w".to_owned())));
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
        assert_eq!(refused("v=1&colour=red"), NoDesign::UnknownKey("colour".to_owned()));
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
