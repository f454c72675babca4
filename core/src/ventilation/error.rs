//! Refusals: what about a fan, an opening or a need was out of range.

use core::fmt;

use crate::bounds::{Bounds, OutOfRange, bounded_quantities};
use crate::units::{HumidityRatio, Temperature, VolumeFlow};

bounded_quantities! {
    /// What an input means; the unit is that of the value in a refusal.
    ///
    /// Air densities are those between −60 °C and 60 °C, from sea level to 4000 m; flow and pressure
    /// of a fan those that a room of this kind could hold.
    VentilationQuantity {
        /// Volume flow of air, m³/s.
        VolumeFlow: "volume_flow", "m³/s", Bounds::between(0.0, 100.0);
        /// Mass flow of dry air, kg/s.
        DryAirFlow: "dry_air_flow", "kg/s", Bounds::between(0.0, 100.0);
        /// Volume flow of a fan, m³/s.
        FanFlow: "fan_flow", "m³/s", Bounds::between(0.0, 10.0);
        /// Pressure of a fan, Pa.
        FanPressure: "fan_pressure", "Pa", Bounds::between(0.0, 2000.0);
        /// Speed of a fan over the speed its curve was measured at.
        FanSpeed: "fan_speed", "", Bounds::between(0.1, 1.5);
        /// Loss coefficient of a flow element.
        LossCoefficient: "loss_coefficient", "", Bounds::above(0.0, 1000.0);
        /// Area of a flow element, m².
        Area: "area", "m²", Bounds::above(0.0, 10.0);
        /// Length of a duct, m.
        DuctLength: "duct_length", "m", Bounds::above(0.0, 100.0);
        /// Diameter of a duct, m.
        DuctDiameter: "duct_diameter", "m", Bounds::between(0.02, 3.0);
        /// Height between two openings, m.
        StackHeight: "stack_height", "m", Bounds::between(0.0, 20.0);
        /// Friction factor of a duct.
        FrictionFactor: "friction_factor", "", Bounds::above(0.0, 0.2);
        /// Free area over face area of a screen.
        FreeAreaRatio: "free_area_ratio", "", Bounds::between(0.1, 0.95);
        /// Part of the free area of a screen that dirt, lint or frost has closed.
        CloggedShare: "clogged_share", "", Bounds::below(0.0, 1.0);
        /// Density of air, kg/m³.
        AirDensity: "air_density", "kg/m³", Bounds::between(0.5, 1.9);
        /// Speed of air, m/s.
        Speed: "speed", "m/s", Bounds::between(0.0, 100.0);
        /// Rate at which moisture is given off, kg/s.
        MoistureSource: "moisture_source", "kg/s", Bounds::between(0.0, 1.0);
        /// Rate at which heat is given off, W.
        HeatGain: "heat_gain", "W", Bounds::between(0.0, 1e6);
        /// Effectiveness of a heat exchanger.
        Effectiveness: "effectiveness", "", Bounds::above(0.0, 1.0);
        /// Frost limit of a heat exchanger, °C.
        FrostLimit: "frost_limit", "°C", Bounds::between(-30.0, 15.0);
        /// Power drawn by a fan, W.
        FanPower: "fan_power", "W", Bounds::between(0.0, 10_000.0);
        /// Area of a floor, m².
        FloorArea: "floor_area", "m²", Bounds::between(0.0, 1000.0);
    }
}

/// Why an answer about ventilation is refused.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub enum VentilationError {
    /// An input outside the range its formula is stated for, or not a number.
    OutOfRange(OutOfRange<VentilationQuantity>),
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

impl VentilationError {
    /// Stable name of the refusal.
    pub const fn code(&self) -> &'static str {
        match self {
            Self::OutOfRange(refused) => refused.code(),
            Self::TooFewPoints { .. } => "too_few_points",
            Self::NoShutOffPressure => "no_shut_off_pressure",
            Self::FlowsNotRising { .. } => "flows_not_rising",
            Self::PressuresNotFalling { .. } => "pressures_not_falling",
            Self::EmptyPath => "empty_path",
            Self::NoWayIn => "no_way_in",
            Self::NoWayOut => "no_way_out",
            Self::BeyondCurve { .. } => "beyond_curve",
            Self::CannotHold { .. } => "outdoor_air_cannot_hold",
            Self::CannotCool { .. } => "outdoor_air_cannot_cool",
            Self::FanTooSmall { .. } => "fan_too_small",
            Self::NoSuchOpening { .. } => "no_such_opening",
        }
    }
}

impl fmt::Display for VentilationError {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        match *self {
            Self::OutOfRange(refused) => refused.fmt(out),
            Self::TooFewPoints { given } => {
                write!(out, "a fan curve needs 2 points or more, {given} given")
            }
            Self::NoShutOffPressure => {
                out.write_str("the first point of a fan curve must be at a flow of 0")
            }
            Self::FlowsNotRising { point } => {
                write!(out, "the flow of point {point} of a fan curve must exceed that before it")
            }
            Self::PressuresNotFalling { point } => write!(
                out,
                "the pressure of point {point} of a fan curve must be below that before it"
            ),
            Self::EmptyPath => out.write_str("an air path needs 1 element or more, 0 given"),
            Self::NoWayIn => out.write_str("no intake stands open"),
            Self::NoWayOut => out.write_str("no exhaust stands open"),
            Self::BeyondCurve { exhaust } => {
                write!(out, "the fan of exhaust {exhaust} would run past the end of its curve")
            }
            Self::CannotHold { room, outdoor } => write!(
                out,
                "outdoor humidity ratio of {} kg/kg must be below that of the room, {} kg/kg",
                outdoor.value(),
                room.value()
            ),
            Self::CannotCool { room, outdoor } => write!(
                out,
                "outdoor temperature of {} °C must be below that of the room, {} °C",
                outdoor.as_celsius(),
                room.as_celsius()
            ),
            Self::FanTooSmall { needed, moved } => write!(
                out,
                "the flow needed, {} m³/s, must be at most that of the fan, {} m³/s",
                needed.value(),
                moved.value()
            ),
            Self::NoSuchOpening { index } => write!(out, "there is no opening of index {index}"),
        }
    }
}

impl core::error::Error for VentilationError {}

impl From<OutOfRange<VentilationQuantity>> for VentilationError {
    fn from(refused: OutOfRange<VentilationQuantity>) -> Self {
        Self::OutOfRange(refused)
    }
}
