//! The JSON form of a design and of its evaluation: a mirror at the edge of the core.
//!
//! A design is one flat object. Every key is optional; what is left out keeps its default, so `{}`
//! is the default design. Keys of quantities end in their unit. An evaluation is written in SI
//! units, every key of a quantity ending in its unit.

mod cold_spots;
pub mod conduction_file;
mod design;
mod error;
mod evaluation;
mod former_keys;
mod hourly_file;
mod humidity;
mod place;
mod place_table;
mod unit;
mod year;

pub use design::{
    LONGEST_DESIGN, Unreadable, design_and_year_from_json, design_from_json, design_to_value,
    error_report, unreadable,
};
pub use error::{
    climate_error, conduction_error, design_error, moisture_error, not_reckoned, ventilation_error,
    year_error,
};
pub use evaluation::evaluation;
pub use former_keys::*;
pub use hourly_file::{HourlyFileError, read_hours};
pub use place::{NoPlace, place_from_value, place_to_value};
pub use place_table::{NamedPlace, NotAPlace, PlaceTable};
pub use unit::{field_key, from_si, key_suffix, to_si};
pub use year::year;

use inchwise_core::detail::FieldCache;

/// Evaluates a design given as JSON and answers in JSON: `{"evaluation": …}` with the year under `year`,
/// `{"errors": […]}` for a design or a heater that does not pass its check, or `{"unreadable": …}` for a text
/// that is no design.
pub fn evaluate_json(text: &str, cache: &mut FieldCache) -> String {
    let answer = match design_and_year_from_json(text) {
        Err(fault) => unreadable(&fault),
        Ok((design, choices)) => match (design.check(), choices.unwrap_or_default().check()) {
            (Ok(checked), Ok(choices)) => {
                let found = inchwise_core::evaluate::evaluate(&checked, cache);
                let mut written = evaluation(&found);
                written["year"] = match year(&found, &choices) {
                    Ok(year) => year,
                    Err(error) => serde_json::json!({ "not_reckoned": { "code": error.code() } }),
                };
                serde_json::json!({ "evaluation": written })
            }
            (design, choices) => {
                let mut errors = error_report(&design.err().unwrap_or_default());
                errors.extend(choices.err().unwrap_or_default().iter().map(year_error));
                serde_json::json!({ "errors": errors })
            }
        },
    };
    format!("{answer:#}")
}
