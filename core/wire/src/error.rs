//! Refusals as JSON: `code` is stable and says what is wrong; beside it stand what was refused, what
//! was given and what is allowed. A number that is not finite is null.

use inchwise_core::bounds::{BoundedQuantity, OutOfRange};
use inchwise_core::choice_table::RangeProblem;
use inchwise_core::climate::ClimateError;
use inchwise_core::conduction::ConductionError;
use inchwise_core::design::{DesignError, DesignProblem};
use inchwise_core::evaluate::NotReckoned;
use inchwise_core::moisture::MoistureError;
use inchwise_core::ventilation::VentilationError;
use inchwise_core::year::{YearError, YearProblem};
use serde_json::{Value, json};

use crate::unit::{field_key, from_si};

/// `of` with the entries of `more`, both objects.
fn with(mut of: Value, more: Value) -> Value {
    if let (Value::Object(of), Value::Object(more)) = (&mut of, more) {
        of.extend(more);
    }
    of
}

/// One error of a design, in the unit that the key of its field names.
pub fn design_error(error: &DesignError) -> Value {
    let quantity = error.field.range().quantity;
    let written = |si: f64| json!(from_si(quantity, si));
    let more = match error.problem {
        DesignProblem::ByItself(RangeProblem::NotFinite | RangeProblem::NotWhole)
        | DesignProblem::NoWallThere
        | DesignProblem::UsedUntilIsUsedFrom
        | DesignProblem::SourceWithoutAir => json!({}),
        DesignProblem::ByItself(RangeProblem::OutOfRange { minimum, maximum }) => {
            json!({ "minimum": written(minimum), "maximum": written(maximum) })
        }
        DesignProblem::DoesNotFit { needs, has, clashes_with } => json!({
            "needs": written(needs), "has": written(has), "short_by": written(needs - has),
            "clashes_with": field_key(clashes_with),
        }),
        DesignProblem::NotColderThanRoom { maximum } => json!({ "maximum": written(maximum) }),
        DesignProblem::FarFromNominal { nominal, tolerance } => {
            json!({ "nominal": written(nominal), "tolerance": written(tolerance) })
        }
        DesignProblem::MustExceed { field, than }
        | DesignProblem::MustBeBelow { field, than }
        | DesignProblem::MustNotBeBelow { field, than } => {
            json!({ "other_field": field_key(field), "than": written(than) })
        }
    };
    let given = if error.given.is_finite() { written(error.given) } else { Value::Null };
    with(json!({ "code": error.code(), "field": field_key(error.field), "given": given }), more)
}

/// One choice about a year that cannot stand, SI but °C.
pub fn year_error(error: &YearError) -> Value {
    let more = match error.problem {
        YearProblem::ByItself(RangeProblem::OutOfRange { minimum, maximum }) => {
            json!({ "minimum": minimum, "maximum": maximum })
        }
        _ => json!({}),
    };
    let field = format!("year.{}", error.subject.key());
    let given = error.given.is_finite().then_some(error.given);
    with(json!({ "code": error.code(), "field": field, "given": given }), more)
}

/// One figure of a place that cannot be, in the unit of its quantity.
pub fn climate_error(error: &ClimateError) -> Value {
    json!({
        "code": error.code(),
        "quantity": error.quantity.key(),
        "unit": error.quantity.unit(),
        "month": error.index.map(|index| index + 1),
        "given": error.given.is_finite().then_some(error.given),
        "minimum": error.quantity.bounds().minimum(),
        "maximum": error.quantity.bounds().maximum(),
    })
}

/// Why air and heat of a design were not reckoned.
pub fn not_reckoned(error: &NotReckoned) -> Value {
    match error {
        NotReckoned::Air(error) => moisture_error(error),
        NotReckoned::Network(error) => json!({
            "code": error.code(), "part": error.part.key(), "given": error.given, "above": 0.0,
        }),
    }
}

/// Why a detail did not solve.
pub fn conduction_error(error: &ConductionError) -> Value {
    use ConductionError as E;
    let more = match *error {
        E::NonFiniteConductivity { part }
        | E::BadBlock { part }
        | E::BadSide { part, .. }
        | E::BadEnvironment { part }
        | E::BadRefinement { part } => json!({ "part": part.to_string() }),
        E::NonPositiveConductivity { part, conductivity } => {
            json!({ "part": part.to_string(), "given": conductivity.value(), "above": 0.0 })
        }
        E::BadSurfaceResistance { part, resistance } => {
            json!({ "part": part.to_string(), "given": resistance.value(), "minimum": 0.0 })
        }
        E::TooManyCells { cells, limit } => json!({ "given": cells, "maximum": limit }),
        E::NotConverged { residual, iterations } => {
            json!({ "relative_residual": residual, "iterations": iterations })
        }
        E::WrongTemperatureCount { wanted, given } => json!({ "given": given, "needed": wanted }),
        E::NonFiniteTemperature { environment } | E::UnknownEnvironment { environment } => {
            json!({ "environment": environment })
        }
        _ => json!({}),
    };
    with(json!({ "code": error.code() }), more)
}

/// Why an answer about damp is refused.
pub fn moisture_error(error: &MoistureError) -> Value {
    let more = match error {
        MoistureError::Air(refused) => return out_of_range(refused),
        MoistureError::Flow(refused) => return ventilation_error(refused),
        MoistureError::OutOfRange(refused) => return out_of_range(refused),
        MoistureError::TightLayerInside { layer } => json!({ "layer": layer }),
        MoistureError::NoSuchInterface { index } => json!({ "index": index }),
        _ => json!({}),
    };
    with(json!({ "code": error.code() }), more)
}

/// Why an answer about ventilation is refused.
pub fn ventilation_error(error: &VentilationError) -> Value {
    use VentilationError as E;
    let more = match error {
        E::OutOfRange(refused) => return out_of_range(refused),
        E::TooFewPoints { given } => json!({ "given": given, "minimum": 2 }),
        E::FlowsNotRising { point } | E::PressuresNotFalling { point } => json!({ "point": point }),
        E::BeyondCurve { exhaust } => json!({ "exhaust": exhaust }),
        E::CannotHold { room, outdoor } => json!({
            "quantity": "outdoor_humidity_ratio", "unit": "kg/kg",
            "given": outdoor.value(), "below": room.value(),
        }),
        E::CannotCool { room, outdoor } => json!({
            "quantity": "outdoor_temperature", "unit": "°C",
            "given": outdoor.as_celsius(), "below": room.as_celsius(),
        }),
        E::FanTooSmall { needed, moved } => json!({
            "quantity": "volume_flow", "unit": "m³/s",
            "given": needed.value(), "maximum": moved.value(),
        }),
        E::NoSuchOpening { index } => json!({ "index": index }),
        _ => json!({}),
    };
    with(json!({ "code": error.code() }), more)
}

fn out_of_range<Q: BoundedQuantity>(refused: &OutOfRange<Q>) -> Value {
    json!({
        "code": refused.code(),
        "quantity": refused.quantity.key(),
        "unit": refused.quantity.unit(),
        "given": refused.given,
        "minimum": refused.allowed.minimum(),
        "maximum": refused.allowed.maximum(),
    })
}

#[cfg(test)]
mod tests {
    use inchwise_core::design::Design;
    use inchwise_core::moisture::MoistureLoad;
    use inchwise_core::moisture::MoistureSource;
    use inchwise_core::units::{Length, Temperature, Time};

    use super::*;

    fn first(change: impl FnOnce(&mut Design)) -> Value {
        let mut design = Design::default();
        change(&mut design);
        design_error(&design.check().unwrap_err()[0])
    }

    #[test]
    fn an_error_of_a_design_travels_with_code_field_and_what_is_allowed() {
        let too_wide = first(|design| design.door_width = Length::mm(9000.0));
        let expected = json!({
            "code": "out_of_range", "field": "door_width_mm", "given": 9000.0,
            "minimum": 600.0, "maximum": 1200.0,
        });
        assert_eq!(too_wide, expected);
        let no_number = first(|design| design.outdoor_temperature = Temperature::celsius(f64::NAN));
        let expected =
            json!({ "code": "not_finite", "field": "outdoor_temperature_c", "given": null });
        assert_eq!(no_number, expected);
    }

    #[test]
    fn a_refusal_of_a_formula_travels_with_its_quantity() {
        let source = MoistureSource::ALL[0];
        let refused = MoistureLoad::new(source, 1e6, Time::hours(8.0)).unwrap_err();
        let expected = json!({
            "code": "out_of_range", "quantity": "count", "unit": "", "given": 1e6,
            "minimum": 0.0, "maximum": 10_000.0,
        });
        assert_eq!(moisture_error(&refused), expected);
        let spent = ConductionError::NotConverged { residual: 0.5, iterations: 500 };
        let expected =
            json!({ "code": "not_converged", "relative_residual": 0.5, "iterations": 500 });
        assert_eq!(conduction_error(&spent), expected);
    }
}
