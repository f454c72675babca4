//! Brief: what the room is for and where it stands. All else follows from it.

mod hours;
mod place;

use inchwise_core::caution::Caution;
use inchwise_core::design::{Field, RoomUse};
use inchwise_core::year::YearField;
use leptos::prelude::*;

use super::part::{Head, Minds, Part, words};
use crate::state::Planner;
use crate::ui::{Choice, Disclosure, Entry, NumberField, NumberFields, Select};
use hours::HoursOfOnesOwn;
use place::{PlaceFigures, PlaceSearch};

const TEMPERATURES: &[Field] = &[Field::IndoorTemperature, Field::OutdoorTemperature];

const PEOPLE: &[Field] = &[Field::PersonCount, Field::PersonTime];

const SOURCES: &[Field] = &[
    Field::LaundryLoads,
    Field::LaundryTime,
    Field::Showers,
    Field::PlantWater,
    Field::AnimalMass,
    Field::MoppedFloor,
    Field::HoseDowns,
    Field::UnventedPropane,
    Field::UnventedKerosene,
];

const AIR_OF_PLACE: &[Field] = &[
    Field::OutdoorHumidity,
    Field::ColdestMonth,
    Field::WarmestMonth,
    Field::WarmestMonthHumidity,
    Field::SteelSunRise,
    Field::SiteAltitude,
];

/// The numbers of the design that it holds.
pub const FIELDS: &[&[Field]] = &[TEMPERATURES, PEOPLE, SOURCES, AIR_OF_PLACE];

const WHEN: &[YearField] = &[
    YearField::UsedFrom,
    YearField::UsedUntil,
    YearField::UsedDays,
    YearField::Setback,
    YearField::People,
    YearField::HeatOfPerson,
    YearField::EquipmentInUse,
    YearField::EquipmentAlways,
    YearField::MoistureInUse,
    YearField::MoistureAlways,
    YearField::MoistureDrying,
    YearField::Contents,
];

const SUN: &[YearField] = &[
    YearField::FrontFaces,
    YearField::Paint,
    YearField::SunOnRoof,
    YearField::WindowSun,
    YearField::SunOnWindows,
];

/// The use, with all that it brings.
const USE: Choice = Choice {
    key: "room_use",
    label: |language| language.damp().room_use,
    options: |language| RoomUse::ALL.iter().map(|&it| (it.key(), language.room_use(it))).collect(),
    chosen: |inputs| inputs.design.room_use.key(),
    choose: |inputs, key| {
        if let Some(room_use) = RoomUse::from_key(key) {
            inputs.design.take_use(room_use);
        }
    },
};

/// Numbers of the year, one below the other.
pub fn of_year(fields: &'static [YearField]) -> impl IntoView {
    fields.iter().map(|&field| view! { <NumberField entry=Entry::Year(field)/> }).collect_view()
}

/// The sheet.
pub fn sheet(planner: Planner) -> AnyView {
    let heading = move |say: fn(crate::text::Language) -> &'static str| {
        Signal::derive(move || say(planner.language.get()).to_owned())
    };
    view! {
        <Head about=Signal::derive(move || planner.language.get().sheets().brief_told.to_owned())/>
        <Part test_id="part-place" heading=|language| language.sheets().place>
            <PlaceSearch/>
            <HoursOfOnesOwn/>
        </Part>
        <Part test_id="part-use" heading=|language| language.sheets().people>
            <Select choice=USE/>
            <p class="hint">{words(planner, |language| language.damp().use_note)}</p>
            <NumberFields fields=PEOPLE/>
            <Minds cautions=&[Caution::SleepersWayOut, Caution::WetUse]/>
        </Part>
        <Part test_id="part-temperatures" heading=|language| language.sheets().temperatures>
            <NumberFields fields=TEMPERATURES/>
        </Part>
        <Disclosure test_id="fold-sources" heading=heading(|language| language.sheets().sources)>
            <NumberFields fields=SOURCES/>
            <Minds cautions=&[Caution::UnventedFlame]/>
        </Disclosure>
        <Disclosure test_id="fold-when" heading=heading(|language| language.sheets().when)>
            {of_year(WHEN)}
            <p class="hint">{words(planner, |language| language.year_choices().drying_note)}</p>
        </Disclosure>
        <Disclosure test_id="fold-climate" heading=heading(|language| language.sheets().air_of_place)>
            <NumberFields fields=AIR_OF_PLACE/>
        </Disclosure>
        <Disclosure test_id="fold-sun" heading=heading(|language| language.sheets().sun)>
            {of_year(SUN)}
        </Disclosure>
        <PlaceFigures/>
    }
    .into_any()
}
