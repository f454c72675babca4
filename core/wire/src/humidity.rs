//! Humidity and air of a design as JSON: flows of air in kg/s of dry air and m³/h, moisture in g/h, humidities in
//! percent.

use inchwise_core::humidity::{
    AirNeed, BuildUpWater, ColdSpotWater, Fan, FanPoint, FanRun, Holding, Humidity, PlaceVerdict,
    RoomHumidity, RoomMonths, Verdict, WarmSeason,
};
use inchwise_core::moisture::MoistureRate;
use inchwise_core::psychro::MoistAir;
use inchwise_core::ventilation::{DryAirFlow, StackDirection, VentilationError};
use serde_json::{Value, json};

use crate::error::ventilation_error;

/// The whole stage.
pub(crate) fn humidity(humidity: &Humidity) -> Value {
    let room = &humidity.target;
    let sources = humidity.sources.each.iter().map(|source| {
        json!({
            "source": source.load.source().key(),
            "count": source.load.count(),
            "timing": source.timing.key(),
            "active_h_per_day_of_use": source.load.active().as_hours(),
            "takes_heat_of_the_room": source.takes_heat_of_the_room,
            "while_active": moisture_rate(source.load.while_active()),
        })
    });
    json!({
        "sources": sources.collect::<Vec<_>>(),
        "busy_source": moisture_rate(humidity.sources.busy),
        "day_source": moisture_rate(humidity.sources.day),
        "mean_source": moisture_rate(humidity.sources.mean),
        "outdoor": air(&humidity.outdoor),
        "target": air(room),
        "leakage": flow(humidity.leakage, room),
        "fan": fan(&humidity.fan, room),
        "fan_adds_to_leakage": humidity.fan_air.map(|fan| flow(fan.adds, room)),
        "busy": room_humidity(&humidity.busy, room),
        "day": room_humidity(&humidity.day, room),
        "mean": room_humidity(&humidity.mean, room),
        "need": need(&humidity.need, room),
        "months": months(&humidity.months),
        "verdict": verdict(&humidity.verdict),
        "cold_spot_water": cold_spot_water(&humidity.cold_spots),
        "warm_season": warm_season(&humidity.warm_season, room),
        "deferrals": humidity.deferrals.iter().map(|deferral| deferral.key()).collect::<Vec<_>>(),
    })
}

fn months(months: &RoomMonths) -> Value {
    let each = months.states.iter().zip(&months.humidity).map(|(state, humidity)| {
        json!({
            "outdoor_c": state.outdoor.as_celsius(),
            "outdoor_vapour_pa": state.outdoor_vapour.value(),
            "indoor_c": state.indoor.as_celsius(),
            "indoor_vapour_with_margin_pa": state.indoor_vapour.value(),
            "indoor_humidity_percent": humidity.as_percent(),
        })
    });
    json!({
        "each": each.collect::<Vec<_>>(),
        "critical_month": months.critical.map(|found| found.month + 1),
        "needed_factor": months.needed_factor().map(|factor| factor.value()),
    })
}

fn verdict(verdict: &Verdict) -> Value {
    let place = |place: &PlaceVerdict| {
        json!({
            "place": place.place.key(),
            "kind": place.kind.key(),
            "temperature_factor": place.temperature_factor.value(),
            "risk": place.risk.key(),
            "freezes": place.freezes,
        })
    };
    json!({
        "design_day_humidity_percent": verdict.design_day.as_percent(),
        "is_dry": verdict.is_dry(),
        "is_waiting": verdict.is_waiting,
        "places": verdict.places.iter().map(place).collect::<Vec<_>>(),
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

fn room_humidity(humidity: &RoomHumidity, room: &MoistAir) -> Value {
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
        "duty_percent": humidity.duty.as_percent(),
        "fan_flow": flow(humidity.fan_flow, room),
        "air": flow(humidity.air, room),
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
        "occupants_lack": flow(need.occupants_lack, room),
        "heat_gain_w": need.heat_gain.value(),
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

fn warm_season(season: &WarmSeason, room: &MoistAir) -> Value {
    json!({
        "warmest_month": air(&season.outdoor),
        "room": room_humidity(&season.room, room),
        "holds_up_to": season.holds_up_to.map(|outdoor| json!({
            "outdoor_c": outdoor.as_celsius(),
        })),
        "other_ways": season.other_ways.map(|ways| json!({
            "heat_to": ways.heat_to.map(|room| json!({ "room_c": room.as_celsius() })),
            "dehumidify_g_per_h": ways.dehumidify.as_grams_per_hour(),
        })),
    })
}

pub(crate) fn build_up(build_up: &BuildUpWater) -> Value {
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
