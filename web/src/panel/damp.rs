//! Damp and air: what the use does to the room, what carries it out and where the rest lands.

use inchwise_core::design::RoomUse;
use inchwise_core::evaluate::Evaluation;
use inchwise_core::humidity::{
    BuildUpWater, FASTEST_INTAKE, FanPoint, FanRun, Holding, Humidity, PlaceVerdict, RoomHumidity,
};
use inchwise_core::moisture::SurfaceRisk;
use inchwise_core::units::{Mass, MassFlow, Power};

use super::choice::{Choice, select};
use super::damp_line::{Figure, Line, lines};
use super::damp_table::table;
use super::how::Open;
use crate::dom::{El, el};
use crate::drawing;
use crate::measure::Notation;
use crate::reactive::Watched;
use crate::state::State;
use crate::text::Language;

/// The whole panel.
pub fn damp(state: State, language: Language) -> El {
    let words = language.damp();
    let part = |parts: &[El]| el("div").class("damp-part").with(parts);
    let open: Open<Figure> = Watched::new(Vec::new());
    let said = |test_id, write| lines(state, open, test_id, write);
    el("section").class("damp").test_id("damp").attr("aria-label", words.title).with(&[
        el("h3").text(words.title),
        part(&[
            select(state, &room_use(language)),
            el("p").class("hint").text(words.use_note),
            said("damp-room", room),
        ]),
        part(&[drawing::humidity_chart(state, language)]),
        part(&[drawing::moist_air(state, language)]),
        part(&[
            drawing::moisture_balance(state, language),
            said("damp-spell", spell),
            el("p").class("remark").text(words.estimate),
        ]),
        part(&[drawing::fan_chart(state, language), table(state, open), said("damp-air", air)]),
        part(&[el("h4").text(words.inside), said("damp-inside", inside)]),
        part(&[
            el("h4").text(words.ask).class_with("unasked", move || nothing_to_ask(state)),
            el("ul").class("said").test_id("damp-ask").rows_with(["li", "b", "span"], move || {
                let notation = state.notation();
                state.look(|outcome| {
                    outcome.balance().map(|it| ask(&it.humidity, notation)).unwrap_or_default()
                })
            }),
        ]),
    ])
}

/// The use, with all that it brings.
pub fn room_use(language: Language) -> Choice {
    Choice {
        label: language.damp().room_use,
        key: "room_use",
        options: RoomUse::ALL.iter().map(|&one| (one.key(), language.room_use(one))).collect(),
        chosen: |design| design.room_use.key(),
        choose: |design, key| {
            if let Some(room_use) = RoomUse::from_key(key) {
                design.take_use(room_use);
            }
        },
    }
}

fn line(figure: Figure, label: &str, said: String) -> Line {
    Line { figure, label: label.to_owned(), said: [" ", &said].concat() }
}

/// A sentence that needs no label.
const fn bare(figure: Figure, said: String) -> Line {
    Line { figure, label: String::new(), said }
}

/// What the use does to the room in winter, and what holds it.
fn room(evaluation: &Evaluation, damp: &Humidity, notation: Notation) -> Vec<Line> {
    let words = notation.language.damp();
    let design = evaluation.checked.design();
    let cold = notation.temperature(design.outdoor_temperature);
    let held = notation.percent(design.target_humidity.value());
    let source = damp.sources.busy.typical;
    let gives = if source > MassFlow::ZERO {
        let a_day = notation.water_a_day(damp.sources.day.typical);
        words.gives_said.with(&[&notation.moisture_flow(source), &a_day])
    } else {
        words.gives_nothing.to_owned()
    };
    let leakage = notation.air_flow(damp.leakage.volume_as(&damp.target));
    let alone = damp.busy.alone().value();
    let is_soaked = damp.busy.left_alone.is_saturated();
    let phrase = if is_soaked { words.alone_soaked } else { words.alone_said };
    let mut lines = vec![
        line(Figure::Gives, words.gives, gives),
        line(Figure::Alone, words.alone, phrase.with(&[&notation.percent(alone), &leakage, &cold])),
        line(Figure::Holding, &words.holding.with(&[&held]), holding(&damp.busy, damp, notation)),
    ];
    if let Some(worst) = worst_place(damp) {
        let spot = notation.language.spot(worst.place);
        let phrase = match worst.risk {
            SurfaceRisk::None => words.verdict_dry,
            SurfaceRisk::Mould => words.verdict_mould,
            SurfaceRisk::Drip if worst.freezes => words.verdict_frost,
            SurfaceRisk::Drip => words.verdict_drip,
        };
        let stands = notation.percent(damp.verdict.design_day.value());
        lines.push(line(Figure::Weakest, words.verdict, phrase.with(&[&spot, &stands])));
    }
    if let Some(next) = evaluation.cold_spots.next_weakest() {
        let limit = notation.percent(next.limit.drip.value().min(1.0));
        let said = words.next_said.with(&[&notation.language.spot(next.place), &limit]);
        lines.push(line(Figure::Next, words.next, said));
    }
    lines.push(line(Figure::Mild, words.mild, mild(damp, &held, notation)));
    lines
}

/// The place that most happens to, or where nothing does the coldest.
pub(super) fn worst_place(damp: &Humidity) -> Option<&PlaceVerdict> {
    damp.verdict.at_risk().next().or(damp.verdict.places.first())
}

fn holding(room: &RoomHumidity, damp: &Humidity, notation: Notation) -> String {
    let words = notation.language.damp();
    let flow = |needed: inchwise_core::ventilation::DryAirFlow| {
        notation.air_flow(needed.volume_as(&damp.target))
    };
    match room.holding {
        Holding::Leakage => words.by_leaks.to_owned(),
        Holding::Fan(_) => words.by_fan.with(&[&notation.percent(room.duty.value())]),
        Holding::FanTooSmall { needed } => {
            let comes_to = notation.percent(room.ventilated().value());
            words.fan_too_small.with(&[&flow(needed), &comes_to])
        }
        Holding::NoFan { needed } => words.no_fan.with(&[&flow(needed)]),
        Holding::OutdoorTooDamp => words.too_damp.to_owned(),
    }
}

/// Until when outdoor air holds the room, and what does where it cannot.
fn mild(damp: &Humidity, held: &str, notation: Notation) -> String {
    let words = notation.language.damp();
    let Some(ways) = damp.warm_season.other_ways else { return words.mild_always.with(&[held]) };
    let until = match damp.warm_season.holds_up_to {
        Some(outdoor) => words.mild_said.with(&[held, &notation.temperature(outdoor)]),
        None => words.mild_never.with(&[held]),
    };
    let dehumidify = words.other_ways.with(&[&notation.water_a_day(ways.dehumidify)]);
    // Nobody heats a room past this to dry it.
    const TOO_HOT: f64 = 35.0;
    let heat = ways.heat_to.filter(|room| room.as_celsius() <= TOO_HOT);
    let heat = heat.map(|room| words.heat_to.with(&[&notation.temperature(room)]));
    [until, dehumidify, heat.unwrap_or_default()].concat()
}

/// What a cold spell leaves on the cold spots.
fn spell(evaluation: &Evaluation, damp: &Humidity, notation: Notation) -> Vec<Line> {
    let words = notation.language.damp();
    let design = evaluation.checked.design();
    let water = &damp.cold_spots;
    if water.source == MassFlow::ZERO {
        return Vec::new();
    }
    let settles = notation.percent(water.room.relative_humidity().value());
    let mut lines =
        vec![line(Figure::Balance, words.settles, words.settles_said.with(&[&settles]))];
    let most = water
        .places
        .iter()
        .filter(|place| place.is_frost)
        .reduce(|most, next| if next.rate > most.rate { next } else { most });
    let Some(most) = most.filter(|_| water.frost() > Mass::ZERO) else {
        lines.push(bare(Figure::Spell, words.spell_dry.to_owned()));
        return lines;
    };
    lines.push(bare(
        Figure::Spell,
        words.spell.with(&[
            &notation.count(design.cold_spell_days),
            &notation.temperature(design.outdoor_temperature),
            &notation.water(water.frost()),
            &notation.language.spot(most.place),
            &notation.melt_water(water.released_at_thaw()),
        ]),
    ));
    if water.could_take > water.condensing.rate {
        let could = notation.moisture_flow(water.could_take);
        let rate = notation.moisture_flow(water.condensing.rate);
        let limited = words.limited.with(&[&could, &rate]);
        if let Some(settles) = lines.first_mut() {
            settles.said.push_str(&limited);
        }
    }
    lines
}

/// Air for those inside and for a hot day, what warming it takes, and what the fan must not do.
fn air(evaluation: &Evaluation, damp: &Humidity, notation: Notation) -> Vec<Line> {
    let words = notation.language.air_words();
    let design = evaluation.checked.design();
    let need = &damp.need;
    let mut lines = Vec::new();
    if need.occupants.dry_air() > MassFlow::ZERO {
        let flow = notation.air_flow(need.occupants.volume_as(&damp.target));
        let lack = need.occupants_lack;
        let lacks = notation.air_flow(lack.volume_as(&damp.target));
        let phrase = match damp.fan.run() {
            None => words.people_no_fan,
            Some(_) if lack.dry_air() > MassFlow::ZERO => words.people_lack,
            Some(_) => words.people_said,
        };
        lines.push(line(Figure::Occupants, words.people, phrase.with(&[&flow, &lacks])));
    }
    let warming = evaluation.balance.as_ref().map_or(Power::ZERO, |it| it.load.at_work.mechanical);
    if warming > Power::ZERO {
        let mut said = words
            .heat_said
            .with(&[&notation.load(warming), &notation.temperature(design.outdoor_temperature)]);
        if let Some(recovered) = need.recovery.filter(|recovered| recovered.held_by_frost) {
            let left = notation.percent(recovered.effectiveness.value());
            said.push_str(&words.heat_frost.with(&[&left]));
        }
        lines.push(line(Figure::Warming, words.heat, said));
    }
    let hot = match &need.heat {
        Ok(flow) => {
            let flow = notation.air_flow(flow.volume_as(&damp.target));
            words.hot_day_said.with(&[&flow, &notation.load(need.heat_gain)])
        }
        Err(_) => words.hot_day_cannot.to_owned(),
    };
    lines.push(line(Figure::HotDay, words.hot_day, hot));
    if let Some(run) = damp.fan.run() {
        lines.extend(fan_minds(run, notation));
    }
    lines
}

fn fan_minds(run: &FanRun, notation: Notation) -> Vec<Line> {
    let words = notation.language.air_words();
    let mut lines = Vec::new();
    let points: [Option<&FanPoint>; 2] = [Some(&run.clean), run.intake_stuck.as_ref()];
    if points.into_iter().flatten().any(|point| point.intake_speed > FASTEST_INTAKE) {
        let limit = notation.air_speed(FASTEST_INTAKE);
        lines.push(bare(Figure::IntakeSpeed, words.too_fast.with(&[&limit])));
    }
    if run.open_dampers_heat > Power::ZERO {
        let flow = notation.air_flow(run.open_dampers.let_in);
        let said = words.open_dampers.with(&[&flow, &notation.load(run.open_dampers_heat)]);
        lines.push(bare(Figure::OpenDampers, said));
    }
    lines
}

/// What gathers at the steel through the year; surfaces of which the same is said, together under the
/// first.
fn inside(evaluation: &Evaluation, _: &Humidity, notation: Notation) -> Vec<Line> {
    let mut lines: Vec<Line> = Vec::new();
    for build_up in evaluation.build_ups().unwrap_or_default() {
        let name = notation.language.surface(build_up.surface);
        let said = gathers(build_up, notation);
        match lines.iter_mut().find(|line| line.said == said) {
            Some(line) => line.label.extend([", ", name]),
            None => {
                let figure = Figure::Inside(build_up.surface);
                lines.push(Line { figure, label: name.to_owned(), said });
            }
        }
    }
    for line in &mut lines {
        line.label.push(':');
    }
    lines
}

fn gathers(build_up: &BuildUpWater, notation: Notation) -> String {
    let words = notation.language.damp();
    let mut said = match build_up.year.peak() {
        None => words.never_wet.to_owned(),
        Some(peak) => {
            let phrase = if build_up.year.dries_out() { words.dries } else { words.stays_wet };
            let month = notation.language.month(peak.month);
            phrase.with(&[&notation.surface_moisture(peak.total()), month])
        }
    };
    let phrase = if build_up.controls_vapour() { words.deep_enough } else { words.thin };
    said.push_str(&phrase.with(&[&notation.length(build_up.least_foam)]));
    said
}

fn nothing_to_ask(state: State) -> bool {
    state.look(|outcome| outcome.balance().is_some_and(|it| it.humidity.deferrals.is_empty()))
}

fn ask(damp: &Humidity, notation: Notation) -> Vec<[String; 2]> {
    let asked = damp.deferrals.iter();
    asked.map(|&one| [String::new(), notation.language.deferral(one).to_owned()]).collect()
}
