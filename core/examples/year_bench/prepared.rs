//! A year ready to run: the default design in the invented place, with sections solved and the default
//! choices about use.

use inchwise_core::climate::{SEED, Spread, SunOnBox, reconstruct, varnholm_flats};
use inchwise_core::design::CheckedDesign;
use inchwise_core::detail::{Effort, FieldCache};
use inchwise_core::evaluate::{Evaluation, evaluate_with};
use inchwise_core::year::{
    CheckedYearChoices, Surroundings, YearModel, YearModelError, YearOutcome, run_year,
};

/// What a run needs.
pub struct Prepared {
    evaluation: Evaluation,
    surroundings: Surroundings,
    choices: CheckedYearChoices,
}

impl Prepared {
    /// Solves and makes everything that stays the same from run to run; nothing if the place is unlawful.
    pub fn new() -> Option<Self> {
        let place = varnholm_flats().check().ok()?;
        let design = CheckedDesign::default();
        let evaluation = evaluate_with(&design, &mut FieldCache::default(), Effort::Sections);
        let choices = CheckedYearChoices::default();
        let weather = reconstruct(&place, Spread::DesignTemperatures, SEED);
        let surroundings = Surroundings::new(weather, choices.choices().front_faces).ok()?;
        Some(Self { evaluation, surroundings, choices })
    }

    /// Runs the year, model and all.
    pub fn run(&self) -> Result<YearOutcome, YearModelError> {
        let model = YearModel::new(&self.evaluation, &self.surroundings, &self.choices)?;
        Ok(run_year(&model))
    }

    /// A figure that heat and moisture of every hour go into, kWh + kg: heat given by the heater, and
    /// water carried off by air.
    pub fn figure(outcome: &YearOutcome) -> f64 {
        outcome.year.energy.heater_heat.value() / 3.6e6 + outcome.water_by_air.value()
    }

    /// Everything the loop reckons with, for a program elsewhere that runs the same.
    #[cfg_attr(
        target_arch = "wasm32",
        allow(dead_code, reason = "one of two programs writes files")
    )]
    pub fn described(&self) -> Result<serde_json::Value, YearModelError> {
        let model = YearModel::new(&self.evaluation, &self.surroundings, &self.choices)?;
        let (weather, choices) = (self.surroundings.weather(), self.choices.choices());
        let coefficients = model.coefficients().into_iter();
        let spots = self.evaluation.cold_spots.spots.iter();
        Ok(serde_json::json!({
            "coefficients": coefficients.collect::<std::collections::BTreeMap<_, _>>(),
            "factors": spots.map(|spot| spot.temperature_factor.value()).collect::<Vec<_>>(),
            "choices": {
                "heater_limit": choices.heater_limit.value(),
                "backup_limit": choices.backup_limit.value(),
                "setback": choices.setback.value(),
                "used_from": choices.used_from,
                "used_until": choices.used_until,
                "used_days": choices.used_days,
                "heat_of_people": choices.people * choices.heat_of_person.value(),
                "equipment_in_use": choices.equipment_in_use.value(),
                "equipment_always": choices.equipment_always.value(),
                "moisture_in_use": choices.moisture_in_use.value(),
                "moisture_always": choices.moisture_always.value(),
                "moisture_drying": choices.moisture_drying.value(),
                "too_warm": choices.too_warm.as_celsius(),
            },
            "celsius": weather.celsius(),
            "vapour_pascals": weather.vapour_pascals(),
            "sun": SunOnBox::of(weather, self.surroundings.front_faces()).hours(),
        }))
    }
}
