//! How figures of damp come about: the formula in words, the numbers in it, and its source.

use inchwise_core::damp::{BuildUpWater, Damp, Holding};
use inchwise_core::design::Surface;
use inchwise_core::evaluate::Evaluation;
use inchwise_core::moisture::{
    ColdSpot, Emission, LEWIS_NUMBER, MoistureLoad, STILL_CORNER_COEFFICIENT, SteadyRoom,
    VAPOUR_CONTROL_PERMEANCE, mass_transfer_coefficient,
};
use inchwise_core::psychro::iso_13788::saturation_pressure;
use inchwise_core::psychro::{
    MoistAir, hyland_wexler, saturation_humidity_ratio, vapour_concentration,
};
use inchwise_core::source::Source;
use inchwise_core::units::{FanSpeed, HumidityRatio, MassFlow, Power, VapourConcentration};
use inchwise_core::ventilation::{DryAirFlow, fan_power_at_speed};

use super::air_working;
use super::said::Figure;
use crate::measure::Notation;
use crate::ui::Working;

/// The working of a figure; nothing where there is no such figure now.
pub fn working(
    figure: Figure,
    evaluation: &Evaluation,
    damp: &Damp,
    notation: Notation,
) -> Option<Working> {
    match figure {
        Figure::Gives => Some(gives(damp, notation)),
        Figure::Alone => alone(damp, notation),
        Figure::Holding => Some(holding(damp, notation)),
        Figure::Weakest => limit(evaluation, evaluation.cold_spots.weakest()?, notation),
        Figure::Next => limit(evaluation, evaluation.cold_spots.next_weakest()?, notation),
        Figure::Mild => mild(evaluation, damp, notation),
        Figure::Balance => Some(balance(damp, notation)),
        Figure::Spell => spell(evaluation, damp, notation),
        Figure::Inside(surface) => inside(damp, surface, notation),
        _ => air_working::working(figure, evaluation, damp, notation),
    }
}

pub(super) fn handbook(notation: Notation) -> String {
    notation.language.source(Source::AshraeFundamentals2017).to_owned()
}

fn gives(damp: &Damp, notation: Notation) -> Working {
    let words = notation.language.workings();
    let mut steps: Vec<String> =
        damp.sources.loads.iter().map(|load| given_by(load, notation)).collect();
    let busy = notation.moisture_flow(damp.sources.busy.typical);
    let mean = notation.moisture_flow(damp.sources.mean.typical);
    steps.push(words.gives_together.with(&[&busy, &mean]));
    let mut sources: Vec<&str> = Vec::new();
    for load in &damp.sources.loads {
        let source = notation.language.source(load.source().source());
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
fn added(source: MassFlow, flow: DryAirFlow, damp: &Damp, notation: Notation) -> String {
    let outdoors = damp.outdoor.humidity_ratio();
    let comes_to = HumidityRatio::new(outdoors.value() + source / flow.dry_air());
    notation.language.workings().alone_step.with(&[
        &notation.humidity_ratio(outdoors),
        &notation.moisture_finely(source),
        &notation.dry_air(flow),
        &notation.humidity_ratio(comes_to),
    ])
}

fn came_to(room: &SteadyRoom, damp: &Damp, notation: Notation) -> Option<String> {
    let words = notation.language.workings();
    Some(match room {
        SteadyRoom::Holds(air) => of_saturation(air, notation),
        SteadyRoom::Saturated { condensing } => {
            let (indoor, pressure) = (damp.target.temperature(), damp.target.air_pressure());
            let most = saturation_humidity_ratio(indoor, pressure).ok()?;
            words.soaked.with(&[
                &notation.temperature(indoor),
                &notation.humidity_ratio(most),
                &notation.moisture_flow(*condensing),
            ])
        }
    })
}

fn alone(damp: &Damp, notation: Notation) -> Option<Working> {
    let words = notation.language.workings();
    let mut steps = Vec::new();
    if damp.leakage.dry_air() > MassFlow::ZERO {
        steps.push(added(damp.sources.busy.typical, damp.leakage, damp, notation));
    }
    steps.push(came_to(&damp.busy.left_alone, damp, notation)?);
    Some(Working { rule: words.alone, steps, source: handbook(notation) })
}

fn holding(damp: &Damp, notation: Notation) -> Working {
    let words = notation.language.workings();
    let source = damp.sources.busy.typical;
    let (held, outdoors) = (damp.target.humidity_ratio(), damp.outdoor.humidity_ratio());
    let [held, outdoors] = [held, outdoors].map(|ratio| notation.humidity_ratio(ratio));
    let mut steps = Vec::new();
    match &damp.need.humidity {
        Ok(needed) => steps.push(words.needs.with(&[
            &notation.moisture_finely(source),
            &held,
            &outdoors,
            &notation.dry_air(*needed),
            &notation.air_flow_finely(needed.volume_as(&damp.target)),
        ])),
        Err(_) => steps.push(words.cannot.with(&[&outdoors, &held])),
    }
    if let (Holding::Fan(duty), Ok(needed), Some(moves)) =
        (damp.busy.holding, &damp.need.humidity, damp.fan.moves())
    {
        let share = notation.percent(duty.value());
        steps.push(words.duty.with(&[
            &notation.dry_air(*needed),
            &notation.dry_air(damp.leakage),
            &notation.dry_air(moves),
            &share,
        ]));
        // Below the speeds the fan laws are used for, a fan is run by pauses.
        if let Ok(power) = fan_power_at_speed(Power::new(1.0), FanSpeed::new(duty.value())) {
            let pressure = notation.percent(duty.value() * duty.value());
            let power = notation.number(power.value() * 100.0, 1);
            steps.push(words.part_speed.with(&[&share, &pressure, &[&power, "%"].concat()]));
        }
    }
    if let SteadyRoom::Holds(air) = &damp.busy.with_fan {
        steps.push(of_saturation(air, notation));
    }
    Working { rule: words.holding, steps, source: handbook(notation) }
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

fn mild(evaluation: &Evaluation, damp: &Damp, notation: Notation) -> Option<Working> {
    let words = notation.language.workings();
    let design = evaluation.checked.design();
    let source = damp.sources.busy.typical;
    let none = DryAirFlow::new(MassFlow::ZERO).ok()?;
    let all = damp.leakage.plus(damp.fan.moves().unwrap_or(none)).ok()?;
    let mut steps = Vec::new();
    if let Some(outdoor) = damp.outlook.holds_up_to {
        let left = damp.target.humidity_ratio().value() - source / all.dry_air();
        steps.push(words.may_bring.with(&[
            &notation.humidity_ratio(damp.target.humidity_ratio()),
            &notation.moisture_finely(source),
            &notation.dry_air(all),
            &notation.humidity_ratio(HumidityRatio::new(left)),
            &notation.percent(design.outdoor_humidity.value()),
            &notation.temperature_finely(outdoor),
        ]));
    }
    if let Some(ways) = damp.outlook.other_ways {
        let warm = &damp.outlook.outdoor;
        let indoor = design.indoor_temperature.max(design.warmest_month);
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

fn balance(damp: &Damp, notation: Notation) -> Working {
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

fn spell(evaluation: &Evaluation, damp: &Damp, notation: Notation) -> Option<Working> {
    let words = notation.language.workings();
    let water = &damp.cold_spots;
    let source = words.spell_source.to_owned();
    if !water.places.iter().any(|place| place.is_frost) {
        let dew_point = notation.temperature_finely(water.room.dew_point().ok()?);
        let coldest = evaluation.cold_spots.weakest()?;
        let coldest = notation.temperature_finely(coldest.surface_temperature);
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
        let spots = &evaluation.cold_spots.spots;
        let Some(spot) = spots.iter().find(|spot| spot.place == place.place) else { continue };
        let at_surface: VapourConcentration =
            hyland_wexler::saturation_pressure(spot.surface_temperature)
                .and_then(|pressure| vapour_concentration(spot.surface_temperature, pressure))
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

fn inside(damp: &Damp, surface: Surface, notation: Notation) -> Option<Working> {
    let words = notation.language.workings();
    let build_up: &BuildUpWater = damp.build_ups.iter().find(|one| one.surface == surface)?;
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
