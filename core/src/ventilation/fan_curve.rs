//! What pressure a fan makes at a flow.

use super::error::{
    VentilationError, VentilationQuantity, check, check_not_negative, check_positive,
};
use super::monotone_curve::MonotoneCurve;
use crate::units::{Density, FanSpeed, Power, Pressure, VolumeFlow};
use core::ops::Bound;

/// Density of the air that fans are rated in, 1.2 kg/m³ (ISO 5801:2017, standard air).
pub const FAN_RATING_DENSITY: Density = Density::new(1.2);

/// Highest flow and pressure of a fan that a room of this kind could hold, m³/s and Pa.
const HIGHEST_FLOW: f64 = 10.0;
const HIGHEST_PRESSURE: f64 = 2000.0;

/// Static pressure that a fan makes over the flow it moves, in air of 1.2 kg/m³.
#[derive(Clone, Debug, PartialEq)]
pub struct FanCurve {
    shape: CurveShape,
}

#[derive(Clone, Debug, PartialEq)]
enum CurveShape {
    /// p = p_0·(1 − (q / q_0)²).
    Parabola {
        free_air_flow: f64,
        shut_off_pressure: f64,
    },
    Measured(MonotoneCurve),
}

impl FanCurve {
    /// From points of a maker's curve, flow rising from nothing, pressure falling; between them
    /// the curve is a monotone piecewise cubic, beyond the last it says nothing.
    ///
    /// Range: two points or more, to 10 m³/s and 2000 Pa.
    ///
    /// # Errors
    /// Refuses points out of range or out of order.
    pub fn from_points(points: &[(VolumeFlow, Pressure)]) -> Result<Self, VentilationError> {
        if points.len() < 2 {
            return Err(VentilationError::TooFewPoints { given: points.len() });
        }
        for (flow, pressure) in points {
            check_not_negative(VentilationQuantity::VolumeFlow, flow.value(), HIGHEST_FLOW)?;
            let highest = HIGHEST_PRESSURE;
            check_not_negative(VentilationQuantity::FanPressure, pressure.value(), highest)?;
        }
        if points[0].0 != VolumeFlow::ZERO {
            return Err(VentilationError::NoShutOffPressure);
        }
        for (index, pair) in points.windows(2).enumerate() {
            let point = index + 1;
            if pair[1].0 <= pair[0].0 {
                return Err(VentilationError::FlowsNotRising { point });
            }
            if pair[1].1 >= pair[0].1 {
                return Err(VentilationError::PressuresNotFalling { point });
            }
        }
        let (flows, pressures) = points.iter().map(|(q, p)| (q.value(), p.value())).unzip();
        Ok(Self { shape: CurveShape::Measured(MonotoneCurve::through(flows, pressures)) })
    }

    /// From the two figures on a small fan's label: free-air flow q_0, at no pressure, and
    /// shut-off pressure p_0, at no flow. Between them p = p_0·(1 − (q / q_0)²).
    ///
    /// Range: above nothing, to 10 m³/s and 2000 Pa. Source: common practice, no source.
    ///
    /// # Errors
    /// Refuses a figure out of range.
    pub fn from_free_air_and_shut_off(
        free_air_flow: VolumeFlow,
        shut_off_pressure: Pressure,
    ) -> Result<Self, VentilationError> {
        let flow =
            check_positive(VentilationQuantity::VolumeFlow, free_air_flow.value(), HIGHEST_FLOW)?;
        let pressure = check_positive(
            VentilationQuantity::FanPressure,
            shut_off_pressure.value(),
            HIGHEST_PRESSURE,
        )?;
        Ok(Self {
            shape: CurveShape::Parabola { free_air_flow: flow, shut_off_pressure: pressure },
        })
    }

    /// The same fan at part speed r: flow as r, pressure as r².
    ///
    /// Range: r from 0.1 to 1.5. Source: the fan laws, ISO 5801:2017.
    ///
    /// # Errors
    /// Refuses a speed out of range.
    pub fn at_speed(&self, speed: FanSpeed) -> Result<Self, VentilationError> {
        let r = check_speed(speed)?;
        let shape = match &self.shape {
            CurveShape::Parabola { free_air_flow, shut_off_pressure } => CurveShape::Parabola {
                free_air_flow: free_air_flow * r,
                shut_off_pressure: shut_off_pressure * r * r,
            },
            CurveShape::Measured(curve) => CurveShape::Measured(curve.scaled(r, r * r)),
        };
        Ok(Self { shape })
    }

    /// Pressure at a flow, Pa, in air of 1.2 kg/m³.
    ///
    /// Range: from no flow to [`FanCurve::last_flow`].
    ///
    /// # Errors
    /// Refuses a flow out of range.
    pub fn pressure_at(&self, flow: VolumeFlow) -> Result<Pressure, VentilationError> {
        let allowed = (Bound::Included(0.0), Bound::Included(self.last_flow().value()));
        let q = check(VentilationQuantity::VolumeFlow, flow.value(), allowed)?;
        Ok(Pressure::new(self.pascals_at(q)))
    }

    /// p in Pa at q in m³/s, which is on the curve.
    pub(super) fn pascals_at(&self, q: f64) -> f64 {
        match &self.shape {
            CurveShape::Parabola { free_air_flow, shut_off_pressure } => {
                let part = q / free_air_flow;
                shut_off_pressure * (1.0 - part * part)
            }
            CurveShape::Measured(curve) => curve.at(q),
        }
    }

    /// Pressure at no flow, Pa.
    pub fn shut_off_pressure(&self) -> Pressure {
        Pressure::new(self.pascals_at(0.0))
    }

    /// The last flow of the curve, m³/s; the free-air flow if the pressure there is nothing.
    pub fn last_flow(&self) -> VolumeFlow {
        VolumeFlow::new(match &self.shape {
            CurveShape::Parabola { free_air_flow, .. } => *free_air_flow,
            CurveShape::Measured(curve) => curve.ends().1,
        })
    }
}

/// Power that a fan draws at part speed r, r³ of the power at full speed, W; the losses of its
/// motor and drive fall less than that.
///
/// Range: r from 0.1 to 1.5, power from 0 to 10 kW. Source: the fan laws, ISO 5801:2017.
///
/// # Errors
/// Refuses an input out of range.
pub fn fan_power_at_speed(full: Power, speed: FanSpeed) -> Result<Power, VentilationError> {
    let r = check_speed(speed)?;
    check_not_negative(VentilationQuantity::FanPower, full.value(), 10_000.0)?;
    Ok(full * (r * r * r))
}

fn check_speed(speed: FanSpeed) -> Result<f64, VentilationError> {
    let allowed = (Bound::Included(0.1), Bound::Included(1.5));
    check(VentilationQuantity::FanSpeed, speed.value(), allowed)
}
