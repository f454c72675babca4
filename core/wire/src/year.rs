//! A year in the room as JSON, and what is chosen about it: keys of the table of choices, numbers in SI.

use inchwise_core::climate::{SEED, Spread, reconstruct};
use inchwise_core::evaluate::Evaluation;
use inchwise_core::year::{
    CheckedYearChoices, Costs, EnergyByPurpose, HeaterCheck, HeaterKind, Period, PriceDate,
    SpotHours, Summer, SummerCase, SupplyCheck, Surroundings, YearChoices, YearField, YearModel,
    YearModelError, YearOutcome, run_year,
};
use serde_json::{Map, Value, json};

use crate::design::Unreadable;

/// Reads what heats a room. What is left out keeps its default.
///
/// # Errors
/// The first thing that cannot be read.
pub(crate) fn choices_from_value(value: &Value) -> Result<YearChoices, Unreadable> {
    let Some(entries) = value.as_object() else {
        return Err(Unreadable::NotAnObject { reason: "year is no object".to_owned() });
    };
    let mut choices = YearChoices::default();
    for (key, value) in entries {
        let named = || format!("year.{key}");
        let text = || value.as_str().ok_or_else(|| Unreadable::NotANumber(named()));
        match key.as_str() {
            "heater" => {
                choices.heater =
                    HeaterKind::from_key(text()?).ok_or_else(|| Unreadable::UnknownOption {
                        key: named(),
                        options: HeaterKind::LAWFUL.iter().map(|kind| kind.key()).collect(),
                    })?;
            }
            "currency" => {
                let letters = <[u8; 3]>::try_from(text()?.as_bytes());
                choices.currency = letters.map_err(|_| Unreadable::NotANumber(named()))?;
            }
            "prices_of" => {
                let date = date(text()?).ok_or_else(|| Unreadable::NotANumber(named()))?;
                choices.prices_of = Some(date);
            }
            _ => {
                let field =
                    YearField::from_key(key).ok_or_else(|| Unreadable::UnknownKey(named()))?;
                let number = value.as_f64().ok_or_else(|| Unreadable::NotANumber(named()))?;
                choices.set(field, Some(number));
            }
        }
    }
    Ok(choices)
}

/// A day as `2026-01-31`.
fn date(text: &str) -> Option<PriceDate> {
    let mut parts = text.split('-');
    let date = PriceDate {
        year: parts.next()?.parse().ok()?,
        month: parts.next()?.parse().ok()?,
        day: parts.next()?.parse().ok()?,
    };
    parts.next().is_none().then_some(date)
}

/// The year of a design at its own place, hours made from its months.
///
/// # Errors
/// As [`YearModel::new`]; none for a checked design.
pub fn year(
    evaluation: &Evaluation,
    checked: &CheckedYearChoices,
) -> Result<Value, YearModelError> {
    let design = evaluation.checked.design();
    let weather = reconstruct(&design.place, Spread::DesignTemperatures, SEED);
    let surroundings = Surroundings::new(weather, design.front_faces);
    let model = YearModel::new(evaluation, &surroundings, checked)?;
    let outcome = run_year(&model);
    let summer = Summer::of(&outcome, evaluation, &surroundings, checked)?;
    let balance = evaluation.balance.as_ref().map_err(Clone::clone)?;
    Ok(outcome_to_value(
        &outcome,
        &summer,
        &HeaterCheck::of(checked.choices(), &balance.load),
        &SupplyCheck::of(design, checked.choices(), design.outdoor_temperature),
        checked.choices(),
    ))
}

fn outcome_to_value(
    outcome: &YearOutcome,
    summer: &Summer,
    heater: &HeaterCheck,
    supply: &SupplyCheck,
    choices: &YearChoices,
) -> Value {
    let case = |case: &SummerCase| json!({ "warmest_c": case.warmest.as_celsius(), "too_warm_hours": case.too_warm_hours });
    let costs = Costs::of(choices, &outcome.year.energy);
    json!({
        "year": period(&outcome.year),
        "months": outcome.months.iter().map(period).collect::<Vec<_>>(),
        "greatest_heat_w": outcome.greatest_heat.value(),
        "coldest_day_w": outcome.coldest_day.value(),
        "warmest_c": outcome.warmest.as_celsius(),
        "coldest_c": outcome.coldest.as_celsius(),
        "places": outcome.spots.iter().map(place).collect::<Vec<_>>(),
        "coldest_place": outcome.coldest_spot.map(|place| place.key()),
        "water_given_kg": outcome.water_given.value(),
        "water_by_air_kg": outcome.water_by_air.value(),
        "is_waiting": outcome.is_waiting,
        "heater": {
            "kind": choices.heater.key(),
            "capacity_w": heater.capacity.value(),
            "needed_w": heater.needed.value(),
            "holds": heater.holds(),
            "holds_only_attended": heater.holds_only_attended(),
        },
        "supply": {
            "largest_continuous_w": supply.largest.value(),
            "asked_w": supply.asked().value(),
            "holds": supply.holds(),
        },
        "summer": {
            "as_chosen": case(&summer.as_chosen),
            "without_fan": case(&summer.without_fan),
            "light_paint": case(&summer.light_paint),
            "shaded": case(&summer.shaded),
        },
        "costs": {
            "heating": costs.heating,
            "other": costs.other,
            "fuel_units": costs.fuel_units,
            "carbon_dioxide_kg": costs.carbon_dioxide.map(|mass| mass.value()),
        },
    })
}

fn period(period: &Period) -> Value {
    json!({
        "mean_temperature_c": period.mean_celsius,
        "mean_humidity_percent": period.mean_humidity * 100.0,
        "energy_kwh": energy(&period.energy),
        "unmet_hours": period.unmet_hours,
        "too_warm_hours": period.too_warm_hours,
        "drip_hours": period.drip_hours,
        "frost_hours": period.frost_hours,
        "fan_hours": period.fan_hours,
        "condensed_kg": period.condensed.value(),
        "frosted_kg": period.frosted.value(),
        "dried_back_kg": period.dried_back.value(),
        "ran_off_kg": period.ran_off.value(),
        "water_on_lining_kg": period.water_on_lining.value(),
    })
}

fn energy(energy: &EnergyByPurpose) -> Value {
    let parts = [
        ("heater_heat", energy.heater_heat),
        ("backup_heat", energy.backup_heat),
        ("heater_input", energy.heater_input),
        ("heater_own", energy.heater_own),
        ("fan", energy.fan),
        ("equipment", energy.equipment),
        ("people_and_animals", energy.people),
        ("sun", energy.sun),
        ("condensing", energy.condensing),
        ("through_envelope", energy.through_envelope),
        ("through_openings", energy.through_openings),
        ("by_leaks", energy.by_leaks),
        ("by_fan", energy.by_fan),
        ("by_drying", energy.by_drying),
    ];
    let written = |(key, energy): (&str, inchwise_core::units::Energy)| {
        (key.to_owned(), json!(energy.as_kilowatt_hours()))
    };
    Value::Object(parts.into_iter().map(written).collect::<Map<_, _>>())
}

fn place(place: &SpotHours) -> Value {
    json!({
        "place": place.place.key(),
        "temperature_factor": place.temperature_factor.value(),
        "drip_hours": place.drip,
        "frost_hours": place.frost,
        "came_kg": place.came.value(),
        "ran_off_kg": place.ran_off.value(),
        "most_frost_kg": place.most_frost.value(),
    })
}
