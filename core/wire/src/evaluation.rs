//! An evaluation as JSON, every stage of it, in SI units.

use inchwise_core::caution::Caution;
use inchwise_core::detail::{DetailField, Outcome, PlacedDetail};
use inchwise_core::envelope::{Amount, Envelope};
use inchwise_core::evaluate::Evaluation;
use inchwise_core::freight_box::{Dimensions, FreightBox};
use inchwise_core::heat_loss::{HeatLoss, NotCounted, Reason};
use inchwise_core::room::{CornerObstruction, LadderStep, Room};
use serde_json::{Value, json};

use crate::damp::damp;
use crate::design::design_to_value;
use crate::moisture::cold_spots;

/// Every stage of an evaluation.
pub fn evaluation(evaluation: &Evaluation) -> Value {
    json!({
        "design": design_to_value(evaluation.checked.design()),
        "freight_box": freight_box(&evaluation.checked.freight_box()),
        "room": room(&evaluation.room),
        "rooms_by_treatment": evaluation
            .rooms_by_treatment
            .iter()
            .map(|(treatment, left)| json!({ "treatment": treatment.key(), "room": room(left) }))
            .collect::<Vec<_>>(),
        "envelope": envelope(&evaluation.envelope),
        "details": evaluation.details.iter().map(placed_detail).collect::<Vec<_>>(),
        "heat_loss": heat_loss(&evaluation.heat_loss),
        "cold_spots": cold_spots(&evaluation.cold_spots),
        "damp": damp(evaluation.damp()),
        "cautions": evaluation.cautions.iter().map(caution).collect::<Vec<_>>(),
    })
}

fn dimensions(size: &Dimensions) -> Value {
    json!({
        "length_m": size.length.value(),
        "width_m": size.width.value(),
        "height_m": size.height.value(),
    })
}

fn freight_box(freight_box: &FreightBox) -> Value {
    json!({
        "size": freight_box.size.key(),
        "external": dimensions(&freight_box.external),
        "internal": dimensions(&freight_box.internal),
        "door_opening_width_m": freight_box.door_opening_width.value(),
        "door_opening_height_m": freight_box.door_opening_height.value(),
        "tare_kg": freight_box.tare.value(),
        "casting": {
            "front_length_m": freight_box.casting.front_length.value(),
            "door_length_m": freight_box.casting.door_length.value(),
            "width_m": freight_box.casting.width.value(),
            "height_m": freight_box.casting.height.value(),
        },
    })
}

fn ladder(steps: &[LadderStep]) -> Vec<Value> {
    let step = |step: &LadderStep| {
        json!({
            "surface": step.surface.map(|surface| surface.key()),
            "taker": step.taker.key(),
            "taken_m": step.taken.value(),
        })
    };
    steps.iter().map(step).collect()
}

fn corner(obstruction: &CornerObstruction) -> Value {
    json!({
        "size": dimensions(&obstruction.size),
        "volume_m3": obstruction.volume().value(),
        "bare_steel": obstruction.bare_steel,
    })
}

fn room(room: &Room) -> Value {
    json!({
        "bare": dimensions(&room.bare),
        "clear": dimensions(&room.clear),
        "floor_area_m2": room.floor_area.value(),
        "volume_m3": room.volume.value(),
        "lost_volume_m3": room.lost_volume.value(),
        "lost_share": room.lost_share,
        "length_ladder": ladder(&room.length_ladder),
        "width_ladder": ladder(&room.width_ladder),
        "height_ladder": ladder(&room.height_ladder),
        "front_corner": corner(&room.front_corner),
        "door_corner": corner(&room.door_corner),
        "headroom_under_corners_m": room.headroom_under_corners.value(),
        "headroom_under_header_m": room.headroom_under_header.value(),
        "castings_hidden_from": {
            "front_end_m": room.castings_hidden_from.front_end.value(),
            "door_end_m": room.castings_hidden_from.door_end.value(),
            "side_wall_m": room.castings_hidden_from.side_wall.value(),
            "ceiling_m": room.castings_hidden_from.ceiling.value(),
            "hidden_already": room.castings_hidden_from.hidden_already,
        },
    })
}

fn envelope(envelope: &Envelope) -> Value {
    let plain: Vec<Value> = envelope
        .plain
        .iter()
        .map(|plain| {
            let layers: Vec<Value> = plain
                .layers
                .iter()
                .map(|layer| {
                    json!({
                        "kind": layer.kind.key(),
                        "thickness_m": layer.thickness.value(),
                        "resistance_m2_k_per_w": layer.resistance.value(),
                    })
                })
                .collect();
            json!({
                "surface": plain.surface.key(),
                "area_m2": plain.area.value(),
                "transmittance_w_per_m2_k": plain.transmittance.value(),
                "layers": layers,
            })
        })
        .collect();
    json!({
        "plain": plain,
        "personnel_door_area_m2": envelope.personnel_door.area.value(),
        "window_area_m2": envelope.windows.area.value(),
    })
}

fn placed_detail(placed: &PlacedDetail) -> Value {
    let amount = match placed.amount {
        Amount::Metres(length) => json!({ "metres": length.value() }),
        Amount::Pieces(count) => json!({ "pieces": count }),
    };
    let outcome = match &placed.outcome {
        Outcome::Solved(field) => detail_field(field, placed.amount),
        Outcome::Failed(error) => json!({ "did_not_solve": format!("{error:?}") }),
        Outcome::Waiting => json!("waiting"),
    };
    json!({ "place": placed.place.key(), "amount": amount, "field": outcome })
}

fn detail_field(field: &DetailField, amount: Amount) -> Value {
    let mut value = json!({
        "coupling": field.coupling.value(),
        "flanking": field.flanking.value(),
        "temperature_factor": field.temperature_factor.value(),
        "ordinary_temperature_factor": field.ordinary_temperature_factor.value(),
        "coldest_at_m": [
            field.coldest_at.x.value(), field.coldest_at.y.value(), field.coldest_at.z.value(),
        ],
        "is_settled": field.is_settled,
        "marks": field
            .marks
            .iter()
            .map(|mark| mark.map(|factor| factor.value()))
            .collect::<Vec<_>>(),
        "cells": field.cells,
        "iterations": field.iterations,
        "residual": field.residual,
    });
    match amount {
        Amount::Metres(_) => {
            value["linear_transmittance_w_per_m_k"] = json!(field.linear_transmittance().value());
        }
        Amount::Pieces(_) => {
            value["point_transmittance_w_per_k"] = json!(field.point_transmittance().value());
        }
    }
    value
}

fn heat_loss(heat_loss: &HeatLoss) -> Value {
    let losses: Vec<Value> = heat_loss
        .losses
        .iter()
        .map(|loss| {
            json!({
                "element": loss.element.key(),
                "coefficient_w_per_k": loss.coefficient.value(),
                "power_w": loss.power.value(),
                "share": loss.share,
            })
        })
        .collect();
    json!({
        "losses": losses,
        "transmission_w_per_k": heat_loss.transmission.value(),
        "air_w_per_k": heat_loss.air.value(),
        "total_w_per_k": heat_loss.total().value(),
        "temperature_difference_k": heat_loss.temperature_difference.value(),
        "design_load_w": heat_loss.design_load.value(),
        "design_load_btu_per_h": heat_loss.design_load.as_btu_per_hour(),
        "not_counted": heat_loss.not_counted.iter().map(not_counted).collect::<Vec<_>>(),
    })
}

fn not_counted(part: &NotCounted) -> Value {
    let reason = match part.reason() {
        Reason::Waiting => "waiting",
        Reason::DidNotSolve => "did_not_solve",
        Reason::NotModelled => "not_modelled",
    };
    json!({ "part": part.key(), "reason": reason })
}

fn caution(caution: &Caution) -> Value {
    match caution {
        Caution::BelowRoomMinimum(minimum) => json!({
            "caution": caution.key(),
            "minimum": minimum.key(),
            "least_m": minimum.least().value(),
        }),
        _ => json!({ "caution": caution.key() }),
    }
}
