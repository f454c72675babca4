//! No surface takes more water than there is.

use super::error::{MoistureError, MoistureQuantity};
use crate::bounds::BoundedQuantity;
use crate::units::MassFlow;

/// What holds condensing to its rate.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum CondensingLimit {
    /// No surface is below the dew point: nothing condenses.
    NoColdSurface,
    /// Air carries off all the moisture that comes: nothing condenses for long.
    CarriedOff,
    /// How fast the cold surfaces take water.
    Surfaces,
    /// How much moisture there is.
    Source,
}

impl CondensingLimit {
    /// Stable name.
    pub const fn key(self) -> &'static str {
        match self {
            Self::NoColdSurface => "no_cold_surface",
            Self::CarriedOff => "carried_off",
            Self::Surfaces => "surfaces",
            Self::Source => "source",
        }
    }
}

/// Water that condenses in a room that keeps its humidity.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Condensing {
    /// How fast, kg/s.
    pub rate: MassFlow,
    /// What holds it there.
    pub limit: CondensingLimit,
}

/// Water that condenses: the lesser of what the cold surfaces could take and what the source G
/// gives beyond what air carries out, G − m·(W_room − W_outdoor).
///
/// `potential` is the sum of flux times area over the cold surfaces, below 0 where they would
/// rather dry; `carried_out` is below 0 where outdoor air is damper than the room and brings
/// moisture in. Range: G from 0 to 1 kg/s, the others from −1 kg/s to 1 kg/s. Steady state, nothing
/// stored in air or lining. Mass balance of water.
///
/// # Errors
/// Refuses an input out of range.
pub fn limited_by_source(
    potential: MassFlow,
    source: MassFlow,
    carried_out: MassFlow,
) -> Result<Condensing, MoistureError> {
    MoistureQuantity::MoistureSource.check(source.value())?;
    for flow in [potential, carried_out] {
        MoistureQuantity::MoistureFlow.check(flow.value())?;
    }
    let left = source - carried_out;
    let (rate, limit) = if potential <= MassFlow::ZERO {
        (MassFlow::ZERO, CondensingLimit::NoColdSurface)
    } else if left <= MassFlow::ZERO {
        (MassFlow::ZERO, CondensingLimit::CarriedOff)
    } else if potential <= left {
        (potential, CondensingLimit::Surfaces)
    } else {
        (left, CondensingLimit::Source)
    };
    Ok(Condensing { rate, limit })
}
