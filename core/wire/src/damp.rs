//! Damp and air as JSON: flows of air in kg/s of dry air and m³/h, moisture in g/h, humidities in
//! percent.

use inchwise_core::damp::{
    AirNeed, BuildUpWater, ColdSpotWater, Damp, Fan, FanPoint, FanRun, Holding, Outlook,
    RoomHumidity,
};
use inchwise_core::moisture::{MoistureError, MoistureRate};
use inchwise_core::psychro::MoistAir;
use inchwise_core::ventilation::{DryAirFlow, StackDirection, VentilationError};
use serde_json::{Value, json};

use crate::error::{moisture_error, ventilation_error};

/// The whole stage, or what could not be reckoned.
pub fn damp(damp: Result<&Damp, MoistureError>) -> Value {
    match damp {
        Err(error) => json!({ "not_reckoned": moisture_error(&error) }),
        Ok(damp) => stage(damp),
    }
}

fn stage(damp: &Damp) -> Value {
    let room = &damp.target;
    let loads = damp.sources.loads.iter().map(|load| {
        json!({
            "source": load.source().key(),
            "count": load.count(),
            "active_h_per_day": load.active().as_hours(),
            "while_active": moisture_rate(load.while_active()),
        })
    });
    json!({
        "sources": loads.collect::<Vec<_>>(),
        "busy_source": moisture_rate(damp.sources.busy),
        "mean_source": moisture_rate(damp.sources.mean),
        "outdoor": air(&damp.outdoor),
        "target": air(room),
        "leakage": flow(damp.leakage, room),
        "fan": fan(&damp.fan, room),
        "busy": humidity(&damp.busy, room),
        "mean": humidity(&damp.mean, room),
        "need": need(&damp.need, room),
        "cold_spot_water": cold_spot_water(&damp.cold_spots),
        "outlook": outlook(&damp.outlook, room),
        "build_ups": damp.build_ups.iter().map(build_up).collect::<Vec<_>>(),
        "deferrals": damp.deferrals.iter().map(|deferral| deferral.key()).collect::<Vec<_>>(),
    })
}

fn moisture_rate(rate: MoistureRate) -> Value {
    json!({
        "least_g_per_h": rate.least.as_grams_per_hour(),
        "typical_g_per_h": rate.typical.as_grams_per_hour(),
        "most_g_per_h": rate.most.as_grams_per_hour(),
    })
}

fn air(air: &MoistAir) -> Value {
    json!({
        "temperature_c": air.temperature().as_celsius(),
        "relative_humidity_percent": air.relative_humidity().as_percent(),
        "humidity_ratio_g_per_kg": air.humidity_ratio().value() * 1000.0,
        "dew_point_c": air.dew_point().ok().map(|point| point.as_celsius()),
        "density_kg_per_m3": air.density().value(),
    })
}

fn flow(flow: DryAirFlow, room: &MoistAir) -> Value {
    json!({
        "dry_air_kg_per_s": flow.dry_air().value(),
        "as_room_air_m3_per_h": flow.volume_as(room).as_cubic_metres_per_hour(),
    })
}

fn need_or_error(need: &Result<DryAirFlow, VentilationError>, room: &MoistAir) -> Value {
    match need {
        Ok(needed) => flow(*needed, room),
        Err(error) => ventilation_error(error),
    }
}

fn fan(fan: &Fan, room: &MoistAir) -> Value {
    let Some(run) = fan.run() else { return Value::Null };
    json!({
        "clean": fan_point(&run.clean, room),
        "dirty": fan_point(&run.dirty, room),
        "exhaust_stuck": run.exhaust_stuck.as_ref().map(|point| fan_point(point, room)),
        "intake_stuck": run.intake_stuck.as_ref().map(|point| fan_point(point, room)),
        "open_dampers": open_dampers(run),
    })
}

fn fan_point(point: &FanPoint, room: &MoistAir) -> Value {
    json!({
        "moved": flow(point.moved, room),
        "exhausted_m3_per_h": point.exhausted().as_cubic_metres_per_hour(),
        "let_in_m3_per_h": point.point.let_in().as_cubic_metres_per_hour(),
        "room_suction_pa": point.suction().value(),
        "fan_pressure_pa": point
            .point
            .exhausts
            .iter()
            .map(|exhaust| exhaust.fan_pressure.value())
            .collect::<Vec<_>>(),
        "intake_face_m_per_s": point.intake_speed.value(),
        "exhaust_face_m_per_s": point.exhaust_speed.value(),
        "pull_on_door_n": point.pull_on_door.value(),
        "spills_flues": point.spills_flues(),
    })
}

fn open_dampers(run: &FanRun) -> Value {
    json!({
        "pressure_pa": run.open_dampers.pressure.value(),
        "let_in_m3_per_h": run.open_dampers.let_in.as_cubic_metres_per_hour(),
        "direction": match run.open_dampers.direction {
            StackDirection::Upward => "upward",
            StackDirection::Downward => "downward",
            StackDirection::Still => "still",
        },
        "heat_w": run.open_dampers_heat.value(),
    })
}

fn humidity(humidity: &RoomHumidity, room: &MoistAir) -> Value {
    let holding = match humidity.holding {
        Holding::Fan(duty) => {
            json!({ "by": humidity.holding.key(), "duty_percent": duty.as_percent() })
        }
        Holding::FanTooSmall { needed } | Holding::NoFan { needed } => {
            json!({ "by": humidity.holding.key(), "needed": flow(needed, room) })
        }
        Holding::Leakage | Holding::OutdoorTooDamp => json!({ "by": humidity.holding.key() }),
    };
    json!({
        "left_alone_percent": humidity.alone().as_percent(),
        "with_fan_percent": humidity.ventilated().as_percent(),
        "holding": holding,
        "fan_flow": flow(humidity.fan_flow, room),
    })
}

fn need(need: &AirNeed, room: &MoistAir) -> Value {
    json!({
        "occupants": flow(need.occupants, room),
        "occupants_by": need.rule.key(),
        "humidity": need_or_error(&need.humidity, room),
        "summer_heat": need_or_error(&need.heat, room),
        "fan_busy": flow(need.busy, room),
        "fan_mean": flow(need.mean, room),
        "busy_heat_w": need.busy_heat.value(),
        "mean_heat_w": need.mean_heat.value(),
        "heat_recovery": need.recovery.map(|recovered| json!({
            "effectiveness_percent": recovered.effectiveness.as_percent(),
            "held_by_frost": recovered.held_by_frost,
            "supply_c": recovered.supply.as_celsius(),
            "leaving_c": recovered.leaving.as_celsius(),
        })),
    })
}

fn cold_spot_water(water: &ColdSpotWater) -> Value {
    let places = water.places.iter().map(|place| {
        json!({
            "place": place.place.key(),
            "area_m2": place.area.value(),
            "rate_g_per_h": place.rate.as_grams_per_hour(),
            "is_frost": place.is_frost,
            "frost_kg": place.spell.frost.value(),
            "dripped_kg": place.spell.dripped.value(),
        })
    });
    json!({
        "room": air(&water.room),
        "source_g_per_h": water.source.as_grams_per_hour(),
        "carried_out_g_per_h": water.carried_out.as_grams_per_hour(),
        "could_take_g_per_h": water.could_take.as_grams_per_hour(),
        "condensing_g_per_h": water.condensing.rate.as_grams_per_hour(),
        "limit": water.condensing.limit.key(),
        "anywhere_g_per_h": water.anywhere.as_grams_per_hour(),
        "places": places.collect::<Vec<_>>(),
        "spell_days": water.spell.as_hours() / 24.0,
        "frost_kg": water.frost().value(),
        "released_at_thaw_l": water.released_at_thaw().as_litres(),
    })
}

fn outlook(outlook: &Outlook, room: &MoistAir) -> Value {
    json!({
        "warmest_month": air(&outlook.outdoor),
        "room": humidity(&outlook.room, room),
        "holds_up_to": outlook.holds_up_to.map(|outdoor| json!({
            "outdoor_c": outdoor.as_celsius(),
        })),
        "other_ways": outlook.other_ways.map(|ways| json!({
            "heat_to": ways.heat_to.map(|room| json!({ "room_c": room.as_celsius() })),
            "dehumidify_g_per_h": ways.dehumidify.as_grams_per_hour(),
        })),
    })
}

fn build_up(build_up: &BuildUpWater) -> Value {
    let months = build_up.year.months.iter().map(|month| {
        json!({
            "month": month.month + 1,
            "lying_g_per_m2": month.total().as_grams_per_square_metre(),
        })
    });
    json!({
        "surface": build_up.surface.key(),
        "foam_m": build_up.foam.value(),
        "least_foam_for_vapour_control_m": build_up.least_foam.value(),
        "controls_vapour": build_up.controls_vapour(),
        "months": months.collect::<Vec<_>>(),
        "peak_g_per_m2": build_up.peak().as_grams_per_square_metre(),
        "dries_out": build_up.year.dries_out(),
    })
}
