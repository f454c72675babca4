//! The JSON form of a design and of its evaluation: a mirror at the edge of the core.
//!
//! A design is one flat object. Every key is optional; what is left out keeps its default, so `{}`
//! is the default design. Keys of quantities end in their unit. An evaluation is written in SI
//! units, every key of a quantity ending in its unit.

pub mod conduction_file;
mod damp;
mod design;
mod evaluation;
mod hourly_file;
mod moisture;
mod place_table;
mod unit;

pub use damp::*;
pub use design::*;
pub use evaluation::*;
pub use hourly_file::*;
pub use moisture::*;
pub use place_table::*;
pub use unit::*;

use inchwise_core::detail::FieldCache;

/// Evaluates a design given as JSON and answers in JSON: `{"evaluation": …}`, `{"errors": […]}`
/// for a design that does not pass its check, or `{"unreadable": …}` for a text that is no design.
pub fn evaluate_json(text: &str, cache: &mut FieldCache) -> String {
    let answer = match design_from_json(text) {
        Err(fault) => unreadable(&fault),
        Ok(design) => match design.check() {
            Err(errors) => error_report(&errors),
            Ok(checked) => {
                serde_json::json!({
                    "evaluation": evaluation(&inchwise_core::evaluate::evaluate(&checked, cache)),
                })
            }
        },
    };
    format!("{answer:#}")
}
