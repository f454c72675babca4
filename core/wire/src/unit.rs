//! The unit a field is written in, and the way to and from SI.

use inchwise_core::design::{Field, Quantity};

/// The ending that names the unit in a key; empty for a plain number.
pub const fn key_suffix(quantity: Quantity) -> &'static str {
    match quantity {
        Quantity::Length => "_mm",
        Quantity::Temperature => "_c",
        Quantity::ThermalConductivity => "_w_per_m_k",
        Quantity::ThermalTransmittance => "_w_per_m2_k",
        Quantity::AirChangeRate => "_per_h",
        Quantity::Count => "",
        Quantity::Share => "_percent",
        Quantity::VolumeFlow => "_m3_per_h",
        Quantity::Pressure => "_pa",
        Quantity::Mass => "_kg",
        Quantity::Area => "_m2",
        Quantity::Duration => "_h",
        Quantity::Power => "_w",
        Quantity::TemperatureDifference => "_k",
        Quantity::Angle => "_degrees",
        Quantity::HeatCapacity => "_kj_per_k",
    }
}

/// How many of the written unit make one SI unit.
const fn per_si(quantity: Quantity) -> f64 {
    match quantity {
        Quantity::Length => 1000.0,
        Quantity::AirChangeRate | Quantity::VolumeFlow => 3600.0,
        Quantity::Share => 100.0,
        Quantity::Duration => 1.0 / 3600.0,
        Quantity::Angle => 180.0 / core::f64::consts::PI,
        Quantity::HeatCapacity => 1e-3,
        Quantity::Temperature
        | Quantity::ThermalConductivity
        | Quantity::ThermalTransmittance
        | Quantity::Count
        | Quantity::Pressure
        | Quantity::Mass
        | Quantity::Area
        | Quantity::Power
        | Quantity::TemperatureDifference => 1.0,
    }
}

/// From a written number to SI.
pub fn to_si(quantity: Quantity, written: f64) -> f64 {
    written / per_si(quantity)
}

/// From SI to the written number, to twelve digits: enough to come back to the same design.
pub fn from_si(quantity: Quantity, si: f64) -> f64 {
    let written = si * per_si(quantity);
    let rounded = (written * 1e9).round() / 1e9;
    if rounded.is_finite() { rounded } else { written }
}

/// The key of a field with its unit, as `stud_depth_mm`.
pub fn field_key(field: Field) -> String {
    let range = field.range();
    format!("{}{}", range.key, key_suffix(range.quantity))
}
