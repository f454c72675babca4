//! A year ready to run: the default design in the invented place, with every field solved and the default
//! heater.

use inchwise_core::climate::{SEED, Spread, SunOnBox, reconstruct};
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
    /// Solves and makes everything that stays the same from run to run.
    pub fn new() -> Self {
        let design = CheckedDesign::default();
        let evaluation = evaluate_with(&design, &mut FieldCache::default(), Effort::All);
        let choices = CheckedYearChoices::default();
        let weather = reconstruct(&design.design().place, Spread::DesignTemperatures, SEED);
        let surroundings = Surroundings::new(weather, design.design().front_faces);
        Self { evaluation, surroundings, choices }
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
        Ok(serde_json::json!({
            "coefficients": coefficients.collect::<std::collections::BTreeMap<_, _>>(),
            "places": model.cold_places(),
            "hours_of_use": model.hours_of_use(),
            "choices": {
                "heater_limit": choices.heater_limit.value(),
                "backup_limit": choices.backup_limit.value(),
                "too_warm": self.evaluation.checked.design().too_warm.as_celsius(),
            },
            "celsius": weather.celsius(),
            "vapour_pascals": weather.vapour_pascals(),
            "sun": SunOnBox::of(weather, self.surroundings.front_faces()).hours(),
        }))
    }
}
