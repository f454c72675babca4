//! How figures of damp come about: the formula in words, the numbers in it, and its source.

use inchwise_core::design::Surface;
use inchwise_core::evaluate::Evaluation;
use inchwise_core::humidity::{
    BuildUpWater, ColdSpot, FanAir, Humidity, StandingRoom, conductance_onto_surface,
};
use inchwise_core::moisture::{
    Emission, LEWIS_NUMBER, MoistureLoad, STILL_CORNER_COEFFICIENT, SurfaceRisk,
    VAPOUR_CONTROL_PERMEANCE, mass_transfer_coefficient, surface_temperature,
};
use inchwise_core::psychro::iso_13788::saturation_pressure;
use inchwise_core::psychro::{MoistAir, hyland_wexler, vapour_concentration};
use inchwise_core::source::Source;
use inchwise_core::units::{FanSpeed, HumidityRatio, MassFlow, Power, VapourConcentration};
use inchwise_core::ventilation::{DryAirFlow, fan_power_at_speed, flow_to_hold};

use super::air_working;
use super::asked::Working;
use super::damp::worst_place;
use super::damp_line::Figure;
use crate::measure::Notation;

/// The working of a figure; nothing where there is no such figure now.
pub fn working(
    figure: Figure,
    evaluation: &Evaluation,
    damp: &Humidity,
    notation: Notation,
) -> Option<Working> {
    match figure {
        Figure::Gives => Some(gives(damp, notation)),
        Figure::Alone => alone(damp, notation),
        Figure::Holding => holding(damp, notation),
        Figure::Weakest => {
            let worst = worst_place(damp)?;
            let spots = &evaluation.cold_spots.spots;
            let spot = spots.iter().find(|spot| spot.place == worst.place)?;
            let mut working = limit(evaluation, spot, notation)?;
            if worst.risk == SurfaceRisk::Mould {
                working.steps.extend(mould(damp, spot, notation));
            }
            Some(working)
        }
        Figure::Next => limit(evaluation, evaluation.cold_spots.next_weakest()?, notation),
        Figure::Mild => mild(evaluation, damp, notation),
        Figure::Balance => Some(balance(damp, notation)),
        Figure::Spell => spell(evaluation, damp, notation),
        Figure::Inside(surface) => inside(evaluation, surface, notation),
        _ => air_working::working(figure, evaluation, damp, notation),
    }
}

pub(super) fn handbook(notation: Notation) -> String {
    notation.language.source(Source::AshraeFundamentals2017).to_owned()
}

fn gives(damp: &Humidity, notation: Notation) -> Working {
    let words = notation.language.workings();
    let mut steps: Vec<String> =
        damp.sources.each.iter().map(|source| given_by(&source.load, notation)).collect();
    let flows = [damp.sources.busy, damp.sources.day, damp.sources.mean]
        .map(|rate| notation.moisture_flow(rate.typical));
    steps.push(words.gives_together.with(&flows.each_ref().map(String::as_str)));
    let mut sources: Vec<&str> = Vec::new();
    for one in &damp.sources.each {
        let source = notation.language.source(one.load.source().source());
        if !sources.contains(&source) {
            sources.push(source);
        }
    }
    Working { rule: words.gives, steps, source: sources.join("; ") }
}

fn given_by(load: &MoistureLoad, notation: Notation) -> String {
    let words = notation.language.workings();
    let places = u32::from(load.count() != load.count().round());
    let count = notation.number(load.count(), places);
    // What comes each time is told by its mass, what flows by its flow.
    let [least, usual, most] = match load.source().emission() {
        Emission::WhileThere(flows) => {
            flows.map(|flow| notation.moisture_flow(flow * load.count()))
        }
        Emission::EachTime(masses) => masses.map(|mass| notation.water(mass * load.count())),
    };
    let source = notation.language.source(load.source().source());
    let what = notation.language.moisture_source(load.source());
    words.gives_step.with(&[&count, what, &usual, &least, &most, source])
}

/// What vapour it has, of what air that warm can hold.
fn of_saturation(air: &MoistAir, notation: Notation) -> String {
    notation.language.workings().of_saturation.with(&[
        &notation.vapour_pressure(air.vapour_pressure()),
        &notation.vapour_pressure(air.saturation_pressure()),
        &notation.temperature(air.temperature()),
        &notation.percent(air.relative_humidity().value()),
    ])
}

/// Water outdoors and what is given off over the air that passes.
fn added(source: MassFlow, flow: DryAirFlow, damp: &Humidity, notation: Notation) -> String {
    let outdoors = damp.outdoor.humidity_ratio();
    let comes_to = HumidityRatio::new(outdoors.value() + source / flow.dry_air());
    notation.language.workings().alone_step.with(&[
        &notation.humidity_ratio(outdoors),
        &notation.moisture_finely(source),
        &notation.dry_air(flow),
        &notation.humidity_ratio(comes_to),
    ])
}

fn came_to(room: &StandingRoom, notation: Notation) -> String {
    let words = notation.language.workings();
    if !room.is_saturated() {
        return of_saturation(&room.air, notation);
    }
    words.soaked.with(&[
        &notation.temperature(room.air.temperature()),
        &notation.humidity_ratio(room.air.humidity_ratio()),
        &notation.moisture_flow(room.over),
    ])
}

/// What is left of a source once cold places took their part; no step where they take nothing.
fn left_by_places(source: MassFlow, taken: MassFlow, notation: Notation) -> Option<String> {
    let words = notation.language.workings();
    let parts = [source, taken, source - taken].map(|flow| notation.moisture_finely(flow));
    let step = words.onto_places.with(&parts.each_ref().map(String::as_str));
    (taken > MassFlow::ZERO).then_some(step)
}

fn alone(damp: &Humidity, notation: Notation) -> Option<Working> {
    let words = notation.language.workings();
    let room = &damp.busy.left_alone;
    let source = damp.sources.busy.typical;
    let taken: MassFlow = room.taken.iter().copied().sum();
    let mut steps: Vec<String> = left_by_places(source, taken, notation).into_iter().collect();
    if damp.leakage.dry_air() > MassFlow::ZERO && !room.is_saturated() {
        steps.push(added(source - taken, damp.leakage, damp, notation));
    }
    steps.push(came_to(room, notation));
    Some(Working { rule: words.alone, steps, source: handbook(notation) })
}

/// What cold places take from a room at its target, Σ A·β/(R_v·T_room)·(p − p_sat(θ_s)·T_room/T_s).
fn taken_at_target(damp: &Humidity) -> Option<MassFlow> {
    let (indoor, outdoor) = (damp.target.temperature(), damp.outdoor.temperature());
    let onto = conductance_onto_surface(indoor).ok()?;
    let mut taken = 0.0;
    for place in &damp.places {
        let surface = surface_temperature(place.factor, indoor, outdoor);
        let saturation = hyland_wexler::saturation_pressure(surface).ok()?;
        let balance = saturation * (indoor.as_kelvin() / surface.as_kelvin());
        let over = (damp.target.vapour_pressure() - balance).value();
        taken += onto * place.area.value() * over.max(0.0);
    }
    Some(MassFlow::new(taken))
}

fn holding(damp: &Humidity, notation: Notation) -> Option<Working> {
    let words = notation.language.workings();
    let source = damp.sources.busy.typical;
    let taken = taken_at_target(damp)?.min(source);
    let (held, outdoors) = (damp.target.humidity_ratio(), damp.outdoor.humidity_ratio());
    let [held_said, outdoors_said] = [held, outdoors].map(|ratio| notation.humidity_ratio(ratio));
    let mut steps: Vec<String> = left_by_places(source, taken, notation).into_iter().collect();
    let needed = flow_to_hold(source - taken, &damp.target, &damp.outdoor).ok();
    match needed {
        Some(needed) => steps.push(words.needs.with(&[
            &notation.moisture_finely(source - taken),
            &held_said,
            &outdoors_said,
            &notation.dry_air(needed),
            &notation.air_flow_finely(needed.volume_as(&damp.target)),
        ])),
        None => steps.push(words.cannot.with(&[&outdoors_said, &held_said])),
    }
    if let Some(fan) = &damp.fan_air {
        steps.push(adds(damp, fan, notation));
        steps.extend(duties(damp, fan, needed, notation));
    }
    steps.push(came_to(&damp.busy.with_fan, notation));
    Some(Working { rule: words.holding, steps, source: handbook(notation) })
}

/// What a fan adds beside the leaks.
pub(super) fn adds(damp: &Humidity, fan: &FanAir, notation: Notation) -> String {
    let words = notation.language.workings();
    let [leaks, moves, adds] =
        [damp.leakage, fan.moves, fan.adds].map(|flow| notation.dry_air(flow));
    // An exchanger leaves the leaks as they are.
    if damp.need.recovery.is_some() {
        words.adds_all.with(&[&adds])
    } else {
        words.adds.with(&[&leaks, &moves, &adds])
    }
}

/// How long the fan runs in the busy hours, for the humidity or for those inside.
fn duties(
    damp: &Humidity,
    fan: &FanAir,
    needed: Option<DryAirFlow>,
    notation: Notation,
) -> Vec<String> {
    let words = notation.language.workings();
    let duty = damp.busy.duty.value();
    let share = notation.percent(duty);
    let mut steps = Vec::new();
    let for_humidity = needed.map(|needed| fan.duty_to_add(needed.less(damp.leakage)));
    let for_them = fan.duty_to_move(damp.need.occupants);
    let is = |reckoned: f64| (reckoned - duty).abs() < 1e-6;
    if duty > 0.0 && is(for_them) {
        let flow = notation.dry_air(damp.need.occupants);
        steps.push(words.duty_for_them.with(&[&flow, &notation.dry_air(fan.moves), &share]));
    } else if let Some(needed) = needed.filter(|_| duty > 0.0 && for_humidity.is_some_and(is)) {
        steps.push(words.duty.with(&[
            &notation.dry_air(needed),
            &notation.dry_air(damp.leakage),
            &notation.dry_air(fan.adds),
            &share,
        ]));
    } else if duty == 1.0 {
        steps.push(words.without_pause.to_owned());
    }
    // Below the speeds the fan laws are used for, a fan is run by pauses.
    if let Ok(power) = fan_power_at_speed(Power::new(1.0), FanSpeed::new(duty)) {
        let pressure = notation.percent(duty * duty);
        let power = notation.number(power.value() * 100.0, 1);
        steps.push(words.part_speed.with(&[&share, &pressure, &[&power, "%"].concat()]));
    }
    steps
}

/// What the critical month asks of a surface, and what this one has.
fn mould(damp: &Humidity, spot: &ColdSpot, notation: Notation) -> Option<String> {
    let words = notation.language.workings();
    let critical = damp.months.critical?;
    let state = &damp.months.states[critical.month];
    Some(words.critical.with(&[
        notation.language.month(critical.month),
        &notation.vapour_pressure(state.indoor_vapour),
        &notation.temperature_to_a_tenth(critical.surface),
        &notation.temperature_to_a_tenth(state.outdoor),
        &notation.temperature_to_a_tenth(state.indoor),
        &notation.number(critical.factor.value(), 3),
        &notation.number(spot.temperature_factor.value(), 3),
    ]))
}

fn limit(evaluation: &Evaluation, spot: &ColdSpot, notation: Notation) -> Option<Working> {
    let words = notation.language.workings();
    let spots = &evaluation.cold_spots;
    let surface = notation.temperature_finely(spot.surface_temperature);
    let at_surface = saturation_pressure(spot.surface_temperature).ok()?;
    let at_room = saturation_pressure(spots.indoor).ok()?;
    let language = notation.language;
    let steps = vec![
        words.surface.with(&[
            &notation.temperature(spots.outdoor),
            &notation.number(spot.temperature_factor.value(), 3),
            &notation.temperature_difference(spots.indoor - spots.outdoor),
            &surface,
        ]),
        words.limits.with(&[
            &notation.vapour_pressure(at_surface),
            &notation.vapour_pressure(at_room),
            &notation.percent(spot.limit.drip.value()),
            &notation.percent(spot.limit.mould.value()),
        ]),
    ];
    let sources = [Source::Iso10211, Source::Iso13788].map(|source| language.source(source));
    Some(Working { rule: words.limit, steps, source: sources.join("; ") })
}

fn mild(evaluation: &Evaluation, damp: &Humidity, notation: Notation) -> Option<Working> {
    let words = notation.language.workings();
    let design = evaluation.checked.design();
    let source = damp.sources.busy.typical;
    let none = DryAirFlow::new(MassFlow::ZERO).ok()?;
    let all = damp.leakage.plus(damp.fan_air.map_or(none, |fan| fan.adds)).ok()?;
    let place = design.place.place();
    let coldest = place.months[place.coldest_month()].relative_humidity().ok()?;
    let mut steps = Vec::new();
    if let Some(outdoor) = damp.warm_season.holds_up_to {
        let left = damp.target.humidity_ratio().value() - source / all.dry_air();
        steps.push(words.may_bring.with(&[
            &notation.humidity_ratio(damp.target.humidity_ratio()),
            &notation.moisture_finely(source),
            &notation.dry_air(all),
            &notation.humidity_ratio(HumidityRatio::new(left)),
            &notation.percent(coldest.value()),
            &notation.temperature_finely(outdoor),
        ]));
    }
    if let Some(ways) = damp.warm_season.other_ways {
        let warm = &damp.warm_season.outdoor;
        let indoor = design.indoor_temperature.max(warm.temperature());
        let held =
            hyland_wexler::saturation_pressure(indoor).ok()? * design.target_humidity.value();
        let held = MoistAir::from_vapour_pressure(indoor, held, warm.air_pressure()).ok()?;
        steps.push(words.dehumidify.with(&[
            &notation.moisture_finely(source),
            &notation.dry_air(damp.leakage),
            &notation.humidity_ratio(warm.humidity_ratio()),
            &notation.humidity_ratio(held.humidity_ratio()),
            &notation.moisture_finely(ways.dehumidify),
        ]));
    }
    if steps.is_empty() {
        // No air passes, or what is given off is more than air this dry could take.
        steps.push(words.held_at.with(&[&notation.percent(damp.busy.ventilated().value())]));
    }
    Some(Working { rule: words.mild, steps, source: handbook(notation) })
}

fn balance(damp: &Humidity, notation: Notation) -> Working {
    let words = notation.language.workings();
    let water = &damp.cold_spots;
    let lands = water.condensing.rate + water.anywhere;
    let mut steps = Vec::new();
    let carried = water.room.humidity_ratio().value() - damp.outdoor.humidity_ratio().value();
    let air = MassFlow::new(water.carried_out.value() / carried);
    if let (true, Ok(air)) = (carried > 0.0, DryAirFlow::new(air)) {
        steps.push(words.carried.with(&[
            &notation.dry_air(air),
            &notation.humidity_ratio(water.room.humidity_ratio()),
            &notation.humidity_ratio(damp.outdoor.humidity_ratio()),
            &notation.moisture_finely(water.carried_out),
        ]));
    }
    steps.push(words.lands_in_all.with(&[
        &notation.moisture_finely(water.source),
        &notation.moisture_finely(water.carried_out),
        &notation.moisture_finely(lands),
    ]));
    steps.push(of_saturation(&water.room, notation));
    Working { rule: words.balance, steps, source: handbook(notation) }
}

fn spell(evaluation: &Evaluation, damp: &Humidity, notation: Notation) -> Option<Working> {
    let words = notation.language.workings();
    let water = &damp.cold_spots;
    let source = words.spell_source.to_owned();
    if !water.places.iter().any(|place| place.is_frost) {
        let dew_point = notation.temperature_finely(water.room.dew_point().ok()?);
        let coldest = damp.places.first()?;
        let (indoor, outdoor) = (water.room.temperature(), damp.outdoor.temperature());
        let coldest = surface_temperature(coldest.factor, indoor, outdoor);
        let coldest = notation.temperature_finely(coldest);
        let steps = vec![words.dew_point.with(&[&dew_point, &coldest])];
        return Some(Working { rule: words.spell, steps, source });
    }
    let beta = mass_transfer_coefficient(STILL_CORNER_COEFFICIENT).ok()?;
    let slowed = notation.speed_an_hour(beta);
    let mut steps = vec![words.transfer.with(&[
        &[&notation.number(STILL_CORNER_COEFFICIENT.value(), 1), "W/m²K"].join("\u{a0}"),
        &notation.number(LEWIS_NUMBER, 2),
        &slowed,
    ])];
    let held = notation.vapour_concentration(water.room.vapour_concentration());
    for place in water.places.iter().filter(|place| place.is_frost) {
        let Some(cold) = damp.places.iter().find(|cold| cold.place == place.place) else {
            continue;
        };
        let (indoor, outdoor) = (water.room.temperature(), damp.outdoor.temperature());
        let surface = surface_temperature(cold.factor, indoor, outdoor);
        let at_surface: VapourConcentration = hyland_wexler::saturation_pressure(surface)
            .and_then(|pressure| vapour_concentration(surface, pressure))
            .ok()?;
        steps.push(words.lands.with(&[
            &notation.language.spot(place.place),
            &notation.area_finest(place.area),
            &slowed,
            &held,
            &notation.vapour_concentration(at_surface),
            &notation.moisture_finely(place.rate),
        ]));
    }
    steps.push(words.days.with(&[
        &notation.moisture_finely(water.frosting()),
        &notation.count(evaluation.checked.design().cold_spell_days),
        &notation.number(notation.parts_of_a_mass(), 0),
        &notation.water(water.frost()),
    ]));
    Some(Working { rule: words.spell, steps, source })
}

fn inside(evaluation: &Evaluation, surface: Surface, notation: Notation) -> Option<Working> {
    let words = notation.language.workings();
    let build_ups = evaluation.build_ups().ok()?;
    let build_up: &BuildUpWater = build_ups.iter().find(|one| one.surface == surface)?;
    let still_air = notation.metres(build_up.equivalent_air_thickness);
    let foam = notation.length(build_up.foam);
    let mut steps = vec![words.still_air.with(&[&still_air, &foam])];
    if let Some(wettest) = &build_up.wettest {
        steps.push(words.month.with(&[
            notation.language.month(wettest.month),
            &notation.vapour_pressure(wettest.indoor_vapour),
            &notation.vapour_pressure(wettest.steel_saturation),
            &still_air,
            &notation.surface_moisture_finely(wettest.gained),
        ]));
        let ends = build_up.year.months.iter().map(|month| {
            let name = notation.language.month(month.month);
            [name, &notation.surface_moisture_finely(month.total())].join("\u{a0}")
        });
        steps.push(words.month_ends.with(&[&ends.collect::<Vec<_>>().join(", ")]));
    }
    let permeance = VAPOUR_CONTROL_PERMEANCE.as_nanograms_per_pascal_second_square_metre();
    let permeance = [&notation.number(permeance, 0), "ng/(Pa·s·m²)"].join("\u{a0}");
    steps.push(words.control.with(&[&permeance, &notation.length(build_up.least_foam)]));
    let language = notation.language;
    let sources = [Source::Iso13788, Source::NationalBuildingCodeOfCanada2020];
    let sources = sources.map(|source| language.source(source)).join("; ");
    Some(Working { rule: words.inside, steps, source: sources })
}
