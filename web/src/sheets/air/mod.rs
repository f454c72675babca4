//! Air: how humid the use makes the room, what carries the moisture out, and what that takes.

mod air_working;
mod damp_working;
mod fan_table;
mod said;
#[cfg(test)]
mod working_tests;

#[cfg(test)]
pub use working_tests::both_sides;

use inchwise_core::caution::Caution;
use inchwise_core::damp::Damp;
use inchwise_core::design::{DamperScreen, FanGiven, Field, WeatherCover};
use inchwise_core::evaluate::Evaluation;
use inchwise_core::year::YearField;
use leptos::prelude::*;

use super::part::{Head, Minds, Part, words};
use crate::drawing;
use crate::measure::Notation;
use crate::state::Planner;
use crate::ui::{
    Choice, Disclosure, Entry, NumberField, NumberFields, SaidList, Select, Working, chooser,
};
use fan_table::FanTable;
use said::{Figure, Line};

const HELD: &[Field] = &[Field::TargetHumidity, Field::AirChanges];

const DAMPERS: &[Field] = &[
    Field::DamperCount,
    Field::ExhaustCount,
    Field::DamperDiameter,
    Field::ExhaustDiameter,
    Field::DuctLength,
    Field::DamperRise,
];

const SCREENS: &[Field] = &[Field::ScreenFreeArea, Field::ScreenClogged];

const FAN: &[Field] = &[Field::FanFreeAirFlow, Field::FanShutOffPressure];

const FAN_POINTS: &[Field] = &[
    Field::FanFirstFlow,
    Field::FanFirstPressure,
    Field::FanSecondFlow,
    Field::FanSecondPressure,
    Field::FanThirdFlow,
    Field::FanThirdPressure,
];

const RECOVERY: &[Field] = &[Field::HeatRecovery, Field::RecoveryFrostLimit];

const HOT_DAY: &[Field] =
    &[Field::HeatGain, Field::SummerOutdoorTemperature, Field::SummerRoomTemperature];

/// The numbers of the design that it holds.
pub const FIELDS: &[&[Field]] = &[HELD, DAMPERS, SCREENS, FAN, FAN_POINTS, RECOVERY, HOT_DAY];

const COOLING: &[YearField] =
    &[YearField::FanFlow, YearField::FanPower, YearField::FanAbove, YearField::FanOver];

const COVER: Choice = chooser!(
    "weather_cover",
    weather_cover,
    WeatherCover,
    |language| language.folds().weather_cover,
    |language, it| language.weather_cover(it)
);

const SCREEN: Choice = chooser!(
    "damper_screen",
    damper_screen,
    DamperScreen,
    |language| language.folds().damper_screen,
    |language, it| language.damper_screen(it)
);

const GIVEN: Choice = chooser!(
    "fan_given",
    fan_given,
    FanGiven,
    |language| language.folds().fan_given,
    |language, it| language.fan_given(it)
);

/// How a figure of damp and air comes about.
fn how(planner: Planner, figure: Figure) -> Option<Working> {
    let notation = planner.notation();
    planner.look(|evaluation| {
        damp_working::working(figure, evaluation, evaluation.damp().ok()?, notation)
    })
}

/// Sentences that keep up. Those about cold places wait until every field is solved.
fn lines(
    planner: Planner,
    write: fn(&Evaluation, &Damp, Notation) -> Vec<Line>,
    of_places: bool,
) -> Memo<Vec<Line>> {
    Memo::new(move |_| {
        if of_places && !planner.is_whole() {
            return Vec::new();
        }
        let notation = planner.notation();
        planner.look(|evaluation| {
            let damp = evaluation.damp();
            damp.map(|damp| write(evaluation, damp, notation)).unwrap_or_default()
        })
    })
}

/// The sheet.
pub fn sheet(planner: Planner) -> AnyView {
    let heading = move |say: fn(crate::text::Language) -> &'static str| {
        Signal::derive(move || say(planner.language.get()).to_owned())
    };
    let has_dampers = Memo::new(move |_| planner.design.with(|it| it.damper_count > 0.0));
    let by_curve = Memo::new(move |_| planner.design.with(|it| it.fan_given == FanGiven::Curve));
    let room = lines(planner, said::room, true);
    let spell = lines(planner, said::spell, true);
    let air = lines(planner, said::air, false);
    let inside = lines(planner, said::inside, false);
    let asks = move || {
        let language = planner.language.get();
        planner.look(|evaluation| {
            let asked = evaluation.damp().map(|damp| damp.deferrals).unwrap_or_default();
            asked.iter().map(|&it| view! { <li>{language.deferral(it)}</li> }).collect_view()
        })
    };
    let has_asks =
        move || planner.look(|it| it.damp().is_ok_and(|damp| !damp.deferrals.is_empty()));
    view! {
        <Head about=Signal::derive(move || planner.language.get().sheets().air_told.to_owned())/>
        <SaidList test_id="damp-room" rows=room working=how/>
        <NumberFields fields=HELD/>
        <p class="hint">{words(planner, |language| language.folds().air_note)}</p>
        {move || {
            planner.language.track();
            drawing::humidity_chart(planner)
        }}
        <Part test_id="fan" heading=|language| language.folds().ventilation>
            <NumberFields fields=DAMPERS/>
            {move || has_dampers.get().then(|| view! {
                <Select choice=COVER/>
                <Select choice=SCREEN/>
                <NumberFields fields=SCREENS/>
                <Select choice=GIVEN/>
                <p class="hint">{words(planner, |language| language.folds().fan_note)}</p>
                {move || if by_curve.get() {
                    view! { <NumberFields fields=FAN_POINTS/> }.into_any()
                } else {
                    view! { <NumberFields fields=FAN/> }.into_any()
                }}
                <NumberFields fields=RECOVERY/>
            })}
            <FanTable how/>
            {move || {
                planner.language.track();
                drawing::fan_chart(planner)
            }}
            <SaidList test_id="damp-air" rows=air working=how/>
            <Minds cautions=&[Caution::SuctionAndFlues]/>
        </Part>
        <Disclosure test_id="fold-spell" heading=heading(|language| language.damp_pictures().balance)>
            {move || {
                planner.language.track();
                drawing::moisture_balance(planner)
            }}
            <SaidList test_id="damp-spell" rows=spell working=how/>
            <p class="hint">{words(planner, |language| language.damp().estimate)}</p>
        </Disclosure>
        <Disclosure test_id="fold-moist-air" heading=heading(|language| language.damp_pictures().moist_air)>
            {move || {
                planner.language.track();
                drawing::moist_air(planner)
            }}
        </Disclosure>
        <Disclosure test_id="fold-inside" heading=heading(|language| language.damp().inside)>
            <SaidList test_id="damp-inside" rows=inside working=how/>
        </Disclosure>
        <Disclosure test_id="fold-hot-day" heading=heading(|language| language.sheets().cooling)>
            <NumberFields fields=HOT_DAY/>
            {COOLING.iter().map(|&it| view! { <NumberField entry=Entry::Year(it)/> }).collect_view()}
        </Disclosure>
        {move || has_asks().then(|| view! {
            <section class="part" data-testid="damp-ask">
                <h3>{words(planner, |language| language.damp().ask)}</h3>
                <ul>{asks}</ul>
            </section>
        })}
    }
    .into_any()
}
