//! One thing that air has to pass: a hood, a damper, a screen, a length of duct.

use super::error::{
    VentilationError, VentilationQuantity, check, check_density, check_not_negative, check_positive,
};
use crate::units::*;
use core::f64::consts::PI;
use core::ops::Bound;

/// What an element is. The loss is in its coefficient; the kind names it in an explanation and
/// tells which elements dirt closes.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum ElementKind {
    /// Where air enters.
    Entry,
    /// Rain hood.
    Hood,
    /// Weather louvre.
    Louvre,
    /// Grille on the room side.
    Grille,
    /// Screen against birds or insects.
    Screen,
    /// Damper with blades, standing open.
    Damper,
    /// Shutter that the flow itself opens.
    Shutter,
    /// Straight length of duct.
    Duct,
    /// Bend of a duct.
    Bend,
    /// Where air leaves.
    Exit,
}

/// A loss of pressure Δp = ζ·ρ·v² / 2 with v = q / A, the coefficient ζ and the speed v both on
/// the element's own area A.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FlowElement {
    kind: ElementKind,
    loss: PressureLoss,
    area: Area,
}

#[derive(Clone, Copy, Debug, PartialEq)]
enum PressureLoss {
    Coefficient(f64),
    Screen { free_area: f64 },
}

/// Least and greatest free-area ratio that the screen formula is used for.
const FREE_AREA: (Bound<f64>, Bound<f64>) = (Bound::Included(0.1), Bound::Included(0.95));

/// Largest face of an element, m².
const LARGEST_AREA: f64 = 10.0;

impl FlowElement {
    /// An element of a known loss coefficient ζ on its own area.
    ///
    /// Range: ζ above 0 and to 1000, area above 0 and to 10 m².
    ///
    /// # Errors
    /// Refuses an input out of range.
    pub fn new(
        kind: ElementKind,
        coefficient: LossCoefficient,
        area: Area,
    ) -> Result<Self, VentilationError> {
        let coefficient =
            check_positive(VentilationQuantity::LossCoefficient, coefficient.value(), 1000.0)?;
        check_positive(VentilationQuantity::Area, area.value(), LARGEST_AREA)?;
        Ok(Self { kind, loss: PressureLoss::Coefficient(coefficient), area })
    }

    /// A screen of a free-area ratio, by [`screen_loss`], on its face area.
    ///
    /// Range: ratio from 0.1 to 0.95, area above 0 and to 10 m².
    ///
    /// # Errors
    /// Refuses an input out of range.
    pub fn screen(free_area: FreeAreaRatio, face: Area) -> Result<Self, VentilationError> {
        let free_area = check(VentilationQuantity::FreeAreaRatio, free_area.value(), FREE_AREA)?;
        check_positive(VentilationQuantity::Area, face.value(), LARGEST_AREA)?;
        Ok(Self { kind: ElementKind::Screen, loss: PressureLoss::Screen { free_area }, area: face })
    }

    /// A straight round duct, ζ = f·L / D (Darcy and Weisbach). The friction factor f is about
    /// 0.02 in smooth sheet metal, 0.03 to 0.08 in flexible duct (common practice, no source).
    ///
    /// Range: length above 0 and to 100 m, diameter from 0.02 m to 3 m, f above 0 and to 0.2.
    /// Source: ASHRAE Handbook of Fundamentals 2017, chapter 21, Darcy equation.
    ///
    /// # Errors
    /// Refuses an input out of range.
    pub fn duct(
        length: Length,
        diameter: Length,
        friction: FrictionFactor,
    ) -> Result<Self, VentilationError> {
        let long = check_positive(VentilationQuantity::Length, length.value(), 100.0)?;
        let allowed = (Bound::Included(0.02), Bound::Included(3.0));
        let wide = check(VentilationQuantity::Length, diameter.value(), allowed)?;
        let friction = check_positive(VentilationQuantity::FrictionFactor, friction.value(), 0.2)?;
        let area = Area::new(PI / 4.0 * wide * wide);
        Ok(Self {
            kind: ElementKind::Duct,
            loss: PressureLoss::Coefficient(friction * long / wide),
            area,
        })
    }

    /// What the element is.
    pub fn kind(&self) -> ElementKind {
        self.kind
    }

    /// The area that coefficient and speed are stated on.
    pub fn area(&self) -> Area {
        self.area
    }

    /// The loss coefficient ζ on the element's own area.
    pub fn coefficient(&self) -> LossCoefficient {
        match self.loss {
            PressureLoss::Coefficient(coefficient) => LossCoefficient::new(coefficient),
            PressureLoss::Screen { free_area } => {
                LossCoefficient::new(screen_coefficient(free_area))
            }
        }
    }

    /// The element with a share of its free area closed by dirt, lint or frost, if it is a screen
    /// of known free area; anything else as it was.
    ///
    /// Range: share from 0 to below 1, what stays free from 0.1.
    ///
    /// # Errors
    /// Refuses a share out of range, or a screen closed further than the formula holds.
    pub fn clogged(&self, share: CloggedShare) -> Result<Self, VentilationError> {
        let allowed = (Bound::Included(0.0), Bound::Excluded(1.0));
        let share = check(VentilationQuantity::CloggedShare, share.value(), allowed)?;
        match self.loss {
            PressureLoss::Screen { free_area } => {
                Self::screen(FreeAreaRatio::new(free_area * (1.0 - share)), self.area)
            }
            PressureLoss::Coefficient(_) => Ok(*self),
        }
    }

    /// Δp = resistance·m² with m the mass flow, Pa·s²/kg²: ζ / (2·ρ·A²).
    pub(super) fn resistance(&self, density: f64) -> f64 {
        let area = self.area.value();
        self.coefficient().value() / (2.0 * density * area * area)
    }
}

fn screen_coefficient(free_area: f64) -> f64 {
    let narrowing = 1.0 / free_area - 1.0;
    1.3 * (1.0 - free_area) + narrowing * narrowing
}

/// Loss coefficient of a screen of round wire on the speed at its face,
/// ζ = 1.3·(1 − f) + (1/f − 1)² with f the free-area ratio.
///
/// Range: f from 0.1 to 0.95, clean, wire Reynolds number above about 1000; slower air loses more.
/// Source: I. E. Idelchik, Handbook of Hydraulic Resistance, screens (from memory).
///
/// # Errors
/// Refuses a ratio out of range.
pub fn screen_loss(free_area: FreeAreaRatio) -> Result<LossCoefficient, VentilationError> {
    let free_area = check(VentilationQuantity::FreeAreaRatio, free_area.value(), FREE_AREA)?;
    Ok(LossCoefficient::new(screen_coefficient(free_area)))
}

/// Dynamic pressure ρ·v² / 2, Pa.
///
/// Range: v from 0 to 100 m/s, ρ from 0.6 to 1.8 kg/m³.
///
/// # Errors
/// Refuses an input out of range.
pub fn dynamic_pressure(speed: Speed, density: Density) -> Result<Pressure, VentilationError> {
    let v = check_not_negative(VentilationQuantity::Speed, speed.value(), 100.0)?;
    let rho = check_density(density.value())?;
    Ok(Pressure::new(0.5 * rho * v * v))
}
