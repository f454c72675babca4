//! Cold spots as JSON. Humidities are percent, temperatures °C.

use inchwise_core::humidity::{ColdSpot, ColdSpots, UnknownSpot};
use inchwise_core::moisture::HumidityLimit;
use serde_json::{Value, json};

/// Every place with what it stands, coldest first, and those nothing is known of yet.
pub fn cold_spots(spots: &ColdSpots) -> Value {
    let place = |spot: Option<&ColdSpot>| spot.map(|spot| spot.place.key());
    json!({
        "indoor_temperature_c": spots.indoor.as_celsius(),
        "outdoor_temperature_c": spots.outdoor.as_celsius(),
        "spots": spots.spots.iter().map(cold_spot).collect::<Vec<_>>(),
        "unknown": spots.unknown.iter().map(unknown_spot).collect::<Vec<_>>(),
        "is_waiting": spots.is_waiting(),
        "weakest": place(spots.weakest()),
        "next_weakest": place(spots.next_weakest()),
    })
}

fn cold_spot(spot: &ColdSpot) -> Value {
    json!({
        "place": spot.place.key(),
        "kind": spot.kind.key(),
        "temperature_factor": spot.temperature_factor.value(),
        "ordinary_temperature_factor": spot.ordinary_factor.value(),
        "surface_temperature_c": spot.surface_temperature.as_celsius(),
        "frosts": spot.frosts(),
        "limit": humidity_limit(&spot.limit),
    })
}

fn humidity_limit(limit: &HumidityLimit) -> Value {
    json!({
        "drip_percent": limit.drip.as_percent(),
        "mould_percent": limit.mould.as_percent(),
    })
}

fn unknown_spot(spot: &UnknownSpot) -> Value {
    json!({ "place": spot.place.key(), "reason": spot.reason.key() })
}
