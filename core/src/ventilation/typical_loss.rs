//! Loss coefficients to plan with until the maker of a part states its own.

use super::flow_element::ElementKind;
use crate::source::Source;
use crate::units::LossCoefficient;

/// What a kind of element loses, clean, on its face speed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TypicalLoss {
    /// The least that is met with.
    pub low: LossCoefficient,
    /// What to plan with.
    pub typical: LossCoefficient,
    /// The most that is met with.
    pub high: LossCoefficient,
    /// Where the figures come from.
    pub source: Source,
}

impl TypicalLoss {
    const fn recalled(low: f64, typical: f64, high: f64) -> Self {
        Self {
            low: LossCoefficient::new(low),
            typical: LossCoefficient::new(typical),
            high: LossCoefficient::new(high),
            source: Source::FromMemory,
        }
    }
}

/// What a kind of element loses, with its range; nothing for duct and bend, whose loss depends on
/// their make.
///
/// The damper is one with blades in a wall: its figure counts the air's way in and out again, as
/// makers chart it; the same damper inside a duct loses 0.2 to 0.6.
pub fn typical_loss(kind: ElementKind) -> Option<TypicalLoss> {
    Some(match kind {
        // From a bell mouth to a pipe end that stands out from the wall.
        ElementKind::Entry => TypicalLoss::recalled(0.03, 0.5, 1.0),
        ElementKind::Hood => TypicalLoss::recalled(1.0, 1.5, 3.0),
        ElementKind::Louvre => TypicalLoss::recalled(2.0, 4.5, 10.0),
        ElementKind::Grille => TypicalLoss::recalled(1.0, 1.5, 2.0),
        // From a wide bird screen to a fine insect screen.
        ElementKind::Screen => TypicalLoss::recalled(0.2, 1.0, 2.0),
        ElementKind::Damper => {
            TypicalLoss { source: Source::CommonPractice, ..TypicalLoss::recalled(2.0, 2.1, 2.2) }
        }
        ElementKind::Shutter => TypicalLoss::recalled(1.0, 2.5, 5.0),
        ElementKind::Exit => TypicalLoss::recalled(1.0, 1.0, 1.0),
        ElementKind::Duct | ElementKind::Bend => return None,
    })
}
