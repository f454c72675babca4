//! How figures of fan, dampers and fresh air come about.

use inchwise_core::design::{Design, FanGiven, Field, OutdoorAirRule, PersonnelDoor};
use inchwise_core::evaluate::Evaluation;
use inchwise_core::heat_loss::{AIR_HEAT_CAPACITY, air_coefficient};
use inchwise_core::humidity::{FanPoint, FanRun, Humidity};
use inchwise_core::psychro::{MoistAir, hyland_wexler};
use inchwise_core::units::{Area, Density, Length, Pressure, Speed, VolumeFlow};
use inchwise_core::ventilation::{
    AirPath, ElementKind, FAN_RATING_DENSITY, OutdoorAirRate, PathFlow, dynamic_pressure,
    heat_capacity,
};

use super::asked::Working;
use super::damp_line::Figure;
use super::damp_working::{adds, handbook};
use crate::measure::Notation;

/// The working of a figure of air; nothing where there is no such figure now.
pub fn working(
    figure: Figure,
    evaluation: &Evaluation,
    damp: &Humidity,
    notation: Notation,
) -> Option<Working> {
    match figure {
        Figure::Occupants => occupants(evaluation, damp, notation),
        Figure::Warming => warming(evaluation, damp, notation),
        Figure::HotDay => hot_day(evaluation, damp, notation),
        _ => of_fan(figure, evaluation.checked.design(), damp.fan.run()?, notation),
    }
}

fn occupants(evaluation: &Evaluation, damp: &Humidity, notation: Notation) -> Option<Working> {
    let words = notation.language.workings();
    let design = evaluation.checked.design();
    let room = &evaluation.room;
    let all = notation.air_flow_finely(damp.need.occupants.volume_as(&damp.target));
    let (rate, source) = match damp.need.rule {
        OutdoorAirRule::Office => (OutdoorAirRate::OFFICE, words.office_source),
        OutdoorAirRule::Dwelling => (OutdoorAirRate::DWELLING, words.dwelling_source),
        OutdoorAirRule::AirChanges => {
            let changes = design.rule_air_changes.as_per_hour();
            let places = u32::from(changes.fract() != 0.0);
            let step = words.animals_step.with(&[
                &notation.number(changes, places),
                &notation.room_volume(room.volume),
                &all,
            ]);
            let source = words.animals_source.to_owned();
            return Some(Working { rule: words.animals, steps: vec![step], source });
        }
        OutdoorAirRule::None => return None,
    };
    let step = words.people_step.with(&[
        &notation.count(design.person_count),
        &notation.air_flow_finely(rate.per_person),
        &notation.area_finely(room.floor_area),
        &notation.air_by_area(rate.per_floor_area),
        &all,
    ]);
    Some(Working { rule: words.office, steps: vec![step], source: source.to_owned() })
}

fn warming(evaluation: &Evaluation, damp: &Humidity, notation: Notation) -> Option<Working> {
    let words = notation.language.workings();
    let design = evaluation.checked.design();
    let load = &evaluation.balance.as_ref().ok()?.load;
    let (room, outdoor) = (&damp.target, &damp.outdoor);
    let fan = damp.fan_air.as_ref()?;
    let added = damp.busy.air.less(damp.leakage);
    let difference = room.temperature() - outdoor.temperature();
    let whole = air_coefficient(added.dry_air()) * difference;
    let [brings, added] = [fan.adds, added].map(|flow| notation.dry_air(flow));
    let heat = notation.part_of_load(whole);
    let mut steps = vec![
        adds(damp, fan, notation),
        words.in_its_time.with(&[&brings, &notation.share_finely(damp.busy.duty.value()), &added]),
        words.warm_step.with(&[
            &added,
            &notation.air_heat_capacity(AIR_HEAT_CAPACITY.value()),
            &notation.temperature_difference(difference),
            &heat,
        ]),
    ];
    if let Some(recovered) = &damp.need.recovery {
        let taken = notation.percent(recovered.effectiveness.value());
        let left = notation.part_of_load(load.at_work.mechanical);
        steps.push(words.exchanger.with(&[&heat, &taken, &left]));
    }
    if let Some(held) = damp.need.recovery.filter(|recovered| recovered.held_by_frost) {
        steps.push(words.frost_limit.with(&[
            &notation.temperature(room.temperature()),
            &notation.temperature(design.recovery_frost_limit),
            &notation.temperature(outdoor.temperature()),
            &notation.percent(held.effectiveness.value()),
        ]));
    }
    Some(Working { rule: words.warming, steps, source: words.warming_source.to_owned() })
}

fn hot_day(evaluation: &Evaluation, damp: &Humidity, notation: Notation) -> Option<Working> {
    let words = notation.language.workings();
    let design = evaluation.checked.design();
    let place = design.place.place();
    let (outdoors, room) = (place.summer_design, design.too_warm);
    let watts = |field: Field| notation.field(field, design.get(field).unwrap_or_default());
    let gains = words.gains_step.with(&[
        &notation.count(design.person_count),
        &watts(Field::HeatOfPerson),
        &watts(Field::AnimalHeat),
        &watts(Field::EquipmentInUse),
        &watts(Field::EquipmentAlways),
        &notation.watts(damp.need.heat_gain),
    ]);
    let step = match &damp.need.heat {
        Ok(flow) => {
            let vapour = place.months[place.warmest_month()].vapour_pressure;
            let pressure = damp.outdoor.air_pressure();
            let most = hyland_wexler::saturation_pressure(outdoors).ok()?;
            let air = MoistAir::from_vapour_pressure(outdoors, vapour.min(most), pressure).ok()?;
            words.hot_step.with(&[
                &notation.part_of_load(damp.need.heat_gain),
                &notation.air_heat_capacity(heat_capacity(&air)),
                &notation.temperature_difference(room - outdoors),
                &notation.dry_air(*flow),
                &notation.air_flow_finely(flow.volume_as(&damp.target)),
            ])
        }
        Err(_) => {
            let [outdoors, room] = [outdoors, room].map(|it| notation.temperature(it));
            words.hot_cannot.with(&[&outdoors, &room])
        }
    };
    Some(Working { rule: words.hot_day, steps: vec![gains, step], source: handbook(notation) })
}

fn of_fan(figure: Figure, design: &Design, run: &FanRun, notation: Notation) -> Option<Working> {
    let words = notation.language.workings();
    let clean = &run.clean;
    let by_definition = words.by_definition.to_owned();
    let product =
        |first: &str, second: &str, third: &str| vec![words.product.with(&[first, second, third])];
    Some(match figure {
        Figure::Moves => meets(design, run, notation)?,
        Figure::Suction => {
            let (path, flow) = (run.system.intakes().first()?, clean.point.intakes.first()?);
            let density = clean.point.outdoor_density;
            let step = opening(words.intake, path, flow, density, notation)?;
            Working {
                rule: words.suction,
                steps: vec![step],
                source: words.meets_source.to_owned(),
            }
        }
        Figure::Pull if design.personnel_door == PersonnelDoor::None => return None,
        Figure::Pull => {
            let leaf = notation.area_finely(design.door_width * design.door_height);
            let suction = notation.pull_by_area(clean.suction());
            let steps = product(&suction, &leaf, &notation.force(clean.pull_on_door));
            Working { rule: words.pull, steps, source: by_definition }
        }
        Figure::IntakeSpeed => {
            let flow = clean.point.intakes.first()?.flow;
            let speed = (flow, design.damper_diameter, clean.intake_speed);
            let steps = vec![through(speed, notation)];
            Working { rule: words.speed, steps, source: words.rain_source.to_owned() }
        }
        Figure::ExhaustSpeed => {
            let flow = clean.point.exhausts.first()?.path.flow;
            let speed = (flow, design.exhaust_diameter, clean.exhaust_speed);
            Working {
                rule: words.speed,
                steps: vec![through(speed, notation)],
                source: by_definition,
            }
        }
        Figure::OpenDampers => {
            let stack = &run.open_dampers;
            let [outside, inside] = [clean.point.outdoor_density, clean.point.room_density]
                .map(|it| notation.density(it));
            let step = words.stack.with(&[
                &notation.length(design.damper_rise),
                &outside,
                &inside,
                &notation.small_pressure_finely(stack.pressure),
                &notation.air_flow_finely(stack.let_in),
            ]);
            let source = handbook(notation);
            Working { rule: words.open_dampers, steps: vec![step], source }
        }
        _ => return None,
    })
}

/// A flow through one damper of a diameter, over its area.
fn through((flow, diameter, speed): (VolumeFlow, Length, Speed), notation: Notation) -> String {
    let area: Area = diameter * diameter * (core::f64::consts::PI / 4.0);
    notation.language.workings().quotient.with(&[
        &notation.air_flow_a_second(flow),
        &notation.area_finest(area),
        &notation.air_speed_finely(speed),
    ])
}

fn meets(design: &Design, run: &FanRun, notation: Notation) -> Option<Working> {
    let words = notation.language.workings();
    let clean: &FanPoint = &run.clean;
    let point = &clean.point;
    let exhaust = point.exhausts.first()?;
    let (flow, pressure) = (exhaust.path.flow, exhaust.fan_pressure);
    let made = notation.small_pressure_finely(pressure);
    let moved = notation.air_flow_finely(flow);
    let fan = match design.fan_given {
        FanGiven::Label => words.fan_label.with(&[
            &notation.small_pressure_finely(design.fan_shut_off_pressure),
            &moved,
            &notation.air_flow_finely(design.fan_free_air_flow),
            &notation.density(point.room_density),
            &notation.density(FAN_RATING_DENSITY),
            &made,
        ]),
        FanGiven::Curve => words.fan_points.with(&[&moved, &made]),
    };
    let intake = point.intakes.first()?;
    let way_in = run.system.intakes().first()?;
    let way_out = &run.system.exhausts().first()?.path;
    let taken = |flow: &PathFlow| notation.small_pressure_finely(flow.pressure_drop());
    let steps = vec![
        fan,
        opening(words.intake, way_in, intake, point.outdoor_density, notation)?,
        opening(words.exhaust, way_out, &exhaust.path, point.room_density, notation)?,
        words.sum.with(&[&taken(intake), &taken(&exhaust.path), &made]),
    ];
    Some(Working { rule: words.meets, steps, source: words.meets_source.to_owned() })
}

/// What one opening takes: all its parts are of one area, so one speed.
fn opening(
    name: &str,
    path: &AirPath,
    flow: &PathFlow,
    density: Density,
    notation: Notation,
) -> Option<String> {
    let words = notation.language.workings();
    let speed = *flow.face_speeds.first()?;
    let dynamic: Pressure = dynamic_pressure(speed, density).ok()?;
    let loss = |value: f64| notation.number(value, 2);
    let parts: Vec<String> = path
        .elements()
        .iter()
        .map(|element| {
            let kind: ElementKind = element.kind();
            let loss = loss(element.coefficient().value());
            [notation.language.flow_element(kind), &loss].join("\u{a0}")
        })
        .collect();
    let together: f64 = path.elements().iter().map(|element| element.coefficient().value()).sum();
    Some(words.opening.with(&[
        name,
        &parts.join(" + "),
        &loss(together),
        &notation.small_pressure_finely(dynamic),
        &notation.air_speed_finely(speed),
        &notation.small_pressure_finely(flow.pressure_drop()),
    ]))
}
