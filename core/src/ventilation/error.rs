//! Refusals: what about a fan, an opening or a need was out of range.

use core::ops::{Bound, RangeBounds};

pub use crate::psychro::AllowedRange;
use crate::units::{HumidityRatio, Temperature, VolumeFlow};

/// What an input means; the unit is that of the value in a refusal.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum VentilationQuantity {
    /// Volume flow of air, m³/s.
    VolumeFlow,
    /// Mass flow of dry air, kg/s.
    DryAirFlow,
    /// Pressure of a fan, Pa.
    FanPressure,
    /// Speed of a fan over the speed its curve was measured at.
    FanSpeed,
    /// Loss coefficient of a flow element.
    LossCoefficient,
    /// Area of a flow element, m².
    Area,
    /// Length of a duct or height between two openings, m.
    Length,
    /// Friction factor of a duct.
    FrictionFactor,
    /// Free area over face area of a screen.
    FreeAreaRatio,
    /// Part of the free area of a screen that dirt, lint or frost has closed.
    CloggedShare,
    /// Density of air, kg/m³.
    AirDensity,
    /// Speed of air, m/s.
    Speed,
    /// Rate at which moisture is given off, kg/s.
    MoistureSource,
    /// Rate at which heat is given off, W.
    HeatGain,
    /// Effectiveness of a heat exchanger.
    Effectiveness,
    /// Frost limit of a heat exchanger, °C.
    FrostLimit,
    /// Power drawn by a fan, W.
    FanPower,
}

/// Why an answer about ventilation is refused.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub enum VentilationError {
    /// An input outside the range its formula is stated for, or not a number.
    OutOfRange {
        /// The input refused.
        quantity: VentilationQuantity,
        /// Its value, in the unit of the quantity.
        given: f64,
        /// The values allowed.
        allowed: AllowedRange,
    },
    /// A fan curve needs two points or more.
    TooFewPoints {
        /// How many there were.
        given: usize,
    },
    /// A fan curve starts at no flow, with the shut-off pressure.
    NoShutOffPressure,
    /// The flows of a fan curve must rise from point to point.
    FlowsNotRising {
        /// Index of the first point that does not.
        point: usize,
    },
    /// The pressures of a fan curve must fall from point to point; where a real curve dips and
    /// rises again the fan may hunt between two flows.
    PressuresNotFalling {
        /// Index of the first point that does not.
        point: usize,
    },
    /// A path of no elements resists nothing.
    EmptyPath,
    /// No intake stands open.
    NoWayIn,
    /// No exhaust stands open.
    NoWayOut,
    /// The fan would run past the last point of its curve, where the curve says nothing.
    BeyondCurve {
        /// Index of the exhaust.
        exhaust: usize,
    },
    /// Outdoor air cannot hold the room at a humidity, being no drier than the room is to be.
    CannotHold {
        /// Humidity ratio the room was to be held at.
        room: HumidityRatio,
        /// Humidity ratio of outdoor air, as much or more.
        outdoor: HumidityRatio,
    },
    /// Outdoor air cannot cool the room, being no colder than the room is to be.
    CannotCool {
        /// Temperature the room was to be held at.
        room: Temperature,
        /// Temperature of outdoor air, as high or higher.
        outdoor: Temperature,
    },
    /// Even running without a pause a fan moves less than is needed.
    FanTooSmall {
        /// Flow needed.
        needed: VolumeFlow,
        /// Flow of the fan at its operating point.
        moved: VolumeFlow,
    },
    /// No opening has that index.
    NoSuchOpening {
        /// The index asked for.
        index: usize,
    },
}

/// Passes a value inside its range, refuses one outside it; a NaN is inside no range.
pub(super) fn check(
    quantity: VentilationQuantity,
    given: f64,
    allowed: AllowedRange,
) -> Result<f64, VentilationError> {
    if allowed.contains(&given) {
        Ok(given)
    } else {
        Err(VentilationError::OutOfRange { quantity, given, allowed })
    }
}

/// Passes a value above nothing and up to a highest.
pub(super) fn check_positive(
    quantity: VentilationQuantity,
    given: f64,
    highest: f64,
) -> Result<f64, VentilationError> {
    check(quantity, given, (Bound::Excluded(0.0), Bound::Included(highest)))
}

/// Passes a value from nothing up to a highest.
pub(super) fn check_not_negative(
    quantity: VentilationQuantity,
    given: f64,
    highest: f64,
) -> Result<f64, VentilationError> {
    check(quantity, given, (Bound::Included(0.0), Bound::Included(highest)))
}

/// Passes an air density that occurs between −60 °C and 60 °C, from sea level to 4000 m, kg/m³.
pub(super) fn check_density(given: f64) -> Result<f64, VentilationError> {
    // A hot room at 6,000 m, and the cold end of the lowest land.
    let allowed = (Bound::Included(0.5), Bound::Included(1.9));
    check(VentilationQuantity::AirDensity, given, allowed)
}
