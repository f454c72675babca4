//! How warm the room gets, and what would help.

use super::check::CheckedYearChoices;
use super::error::YearModelError;
use super::fan::FanOfYear;
use super::model::YearModel;
use super::outcome::YearOutcome;
use super::run::run_year;
use super::surroundings::Surroundings;
use crate::evaluate::Evaluation;
use crate::heat_loss::{AIR_DENSITY, AIR_HEAT_CAPACITY};
use crate::units::{Power, SolarShare, Temperature, TemperatureDifference, VolumeFlow};

/// Absorptance of light paint, 0.3 (common practice, no source).
pub const LIGHT_PAINT: SolarShare = SolarShare::new(0.3);

/// Share of the sun that a fly roof and awnings let by, 0.1 (common practice, no source).
pub const SHADED: SolarShare = SolarShare::new(0.1);

/// One way of meeting the summer.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SummerCase {
    /// Highest room temperature of an hour.
    pub warmest: Temperature,
    /// Hours in which the room was too warm.
    pub too_warm_hours: u32,
}

/// The summer as chosen and otherwise.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Summer {
    /// As chosen.
    pub as_chosen: SummerCase,
    /// With the fan off all summer.
    pub without_fan: SummerCase,
    /// With the paint as light as [`LIGHT_PAINT`] or, if it is lighter, as chosen.
    pub light_paint: SummerCase,
    /// With roof and windows shaded as by [`SHADED`] or, if they get less, as chosen.
    pub shaded: SummerCase,
}

impl Summer {
    /// Beside a year as chosen, runs it otherwise: once for each case that differs.
    ///
    /// # Errors
    /// Those of [`YearModel::new`].
    pub fn of(
        as_chosen: &YearOutcome,
        evaluation: &Evaluation,
        surroundings: &Surroundings,
        checked: &CheckedYearChoices,
    ) -> Result<Self, YearModelError> {
        let as_chosen = SummerCase::of(as_chosen);
        let design = evaluation.checked.design();
        let with = |differs: bool, change: &dyn Fn(&mut YearModel)| -> Result<_, YearModelError> {
            if !differs {
                return Ok(as_chosen);
            }
            let mut model = YearModel::new(evaluation, surroundings, checked)?;
            change(&mut model);
            Ok(SummerCase::of(&run_year(&model)))
        };
        let lighter = (LIGHT_PAINT.value() / design.paint.value()).min(1.0);
        let on_roof = (SHADED.value() / design.sun_on_roof.value()).min(1.0);
        let on_windows = (SHADED.value() / design.sun_on_windows.value()).min(1.0);
        Ok(Self {
            as_chosen,
            without_fan: with(design.damper_count > 0.0, &|model| {
                model.fan = FanOfYear::default()
            })?,
            light_paint: with(lighter < 1.0, &|model| model.with_paint(lighter))?,
            shaded: with(on_roof < 1.0 || on_windows < 1.0, &|model| {
                model.with_shade(on_roof, on_windows);
            })?,
        })
    }
}

impl SummerCase {
    fn of(outcome: &YearOutcome) -> Self {
        Self { warmest: outcome.warmest, too_warm_hours: outcome.year.too_warm_hours }
    }
}

/// Flow of outdoor air that carries off a gain while the room stays a few kelvin over outdoors,
/// q = Φ/(ρ·c·Δθ); `None` for no rise. Air as at sea level, 1.2 kg/m³ and 1005 J/(kg·K).
pub fn purge_flow(gain: Power, rise: TemperatureDifference) -> Option<VolumeFlow> {
    let carried = AIR_DENSITY.value() * AIR_HEAT_CAPACITY.value() * rise.value();
    (carried > 0.0).then(|| VolumeFlow::new(gain.value() / carried))
}
