//! What a cold spell leaves: frost that waits for the thaw, water that has dripped.

use super::error::{MoistureError, MoistureQuantity};
use crate::bounds::BoundedQuantity;
use crate::units::{Density, Mass, MassFlow, Time, Volume};

/// Density of melt water, kg/m³.
const WATER_DENSITY: Density = Density::new(1000.0);

/// Water that came to the cold surfaces over a spell.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ColdSpellWater {
    /// Held as frost until the first thaw, or until the heat is turned up; then it comes at once.
    pub frost: Mass,
    /// Dripped as it came.
    pub dripped: Mass,
}

impl ColdSpellWater {
    /// What condenses at a steady rate through a spell: kept on surfaces below 0 °C, dripping from
    /// others. m = rate·t.
    ///
    /// Range: rate from 0 to 1 kg/s, spell from 0 to 366 days.
    ///
    /// # Errors
    /// Refuses an input out of range.
    pub fn over(rate: MassFlow, is_frost: bool, spell: Time) -> Result<Self, MoistureError> {
        MoistureQuantity::CondensingRate.check(rate.value())?;
        MoistureQuantity::SpellLength.check(spell.value())?;
        let water = rate * spell;
        Ok(if is_frost {
            Self { frost: water, dripped: Mass::ZERO }
        } else {
            Self { frost: Mass::ZERO, dripped: water }
        })
    }

    /// The water that the frost melts to.
    pub fn released_at_thaw(&self) -> Volume {
        self.frost / WATER_DENSITY
    }
}
