//! Intakes side by side and exhausts with their fans, on one room.

use super::air_path::AirPath;
use super::error::VentilationError;
use super::fan_curve::FanCurve;
use crate::units::{CloggedShare, FanSpeed};

/// A fan that blows out of the room through a path.
#[derive(Clone, Debug, PartialEq)]
pub struct Exhaust {
    /// What the fan works against, apart from the room.
    pub path: AirPath,
    /// The fan.
    pub fan: FanCurve,
}

/// The openings of a room: air comes in by the intakes because the exhausts draw it.
#[derive(Clone, Debug, PartialEq)]
pub struct VentilationSystem {
    intakes: Vec<AirPath>,
    exhausts: Vec<Exhaust>,
}

impl VentilationSystem {
    /// A system of one intake or more and one exhaust or more.
    ///
    /// # Errors
    /// Refuses a system without a way in or a way out.
    pub fn new(intakes: Vec<AirPath>, exhausts: Vec<Exhaust>) -> Result<Self, VentilationError> {
        if intakes.is_empty() {
            return Err(VentilationError::NoWayIn);
        }
        if exhausts.is_empty() {
            return Err(VentilationError::NoWayOut);
        }
        Ok(Self { intakes, exhausts })
    }

    /// The intakes in order.
    pub fn intakes(&self) -> &[AirPath] {
        &self.intakes
    }

    /// The exhausts in order.
    pub fn exhausts(&self) -> &[Exhaust] {
        &self.exhausts
    }

    /// The system with one intake's damper stuck shut.
    ///
    /// # Errors
    /// Refuses an index that no intake has.
    pub fn with_intake_shut(&self, index: usize) -> Result<Self, VentilationError> {
        let mut changed = self.clone();
        let intake =
            changed.intakes.get_mut(index).ok_or(VentilationError::NoSuchOpening { index })?;
        *intake = intake.clone().stuck_shut();
        Ok(changed)
    }

    /// The system with one exhaust's damper stuck shut, its fan turning in vain.
    ///
    /// # Errors
    /// Refuses an index that no exhaust has.
    pub fn with_exhaust_shut(&self, index: usize) -> Result<Self, VentilationError> {
        let mut changed = self.clone();
        let exhaust =
            changed.exhausts.get_mut(index).ok_or(VentilationError::NoSuchOpening { index })?;
        exhaust.path = exhaust.path.clone().stuck_shut();
        Ok(changed)
    }

    /// The system with a share of the free area of every screen closed by dirt, lint or frost.
    ///
    /// # Errors
    /// As [`super::FlowElement::clogged`].
    pub fn clogged(&self, share: CloggedShare) -> Result<Self, VentilationError> {
        let intakes: Result<_, _> =
            self.intakes.iter().map(|intake| intake.clogged(share)).collect();
        let exhausts: Result<_, VentilationError> = self
            .exhausts
            .iter()
            .map(|exhaust| {
                let path = exhaust.path.clogged(share)?;
                Ok(Exhaust { path, fan: exhaust.fan.clone() })
            })
            .collect();
        Ok(Self { intakes: intakes?, exhausts: exhausts? })
    }

    /// The system with every fan at a speed.
    ///
    /// # Errors
    /// As [`FanCurve::at_speed`].
    pub fn at_speed(&self, speed: FanSpeed) -> Result<Self, VentilationError> {
        let exhausts: Result<_, VentilationError> = self
            .exhausts
            .iter()
            .map(|exhaust| {
                let fan = exhaust.fan.at_speed(speed)?;
                Ok(Exhaust { path: exhaust.path.clone(), fan })
            })
            .collect();
        Ok(Self { intakes: self.intakes.clone(), exhausts: exhausts? })
    }
}
