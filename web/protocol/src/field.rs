//! A solved field as plain numbers with names.

use inchwise_core::conduction::Point;
use inchwise_core::detail::DetailField;
use inchwise_core::units::{HeatTransferCoefficient, TemperatureFactor};
use serde::{Deserialize, Serialize};

/// What is known of a detail: a mirror of [`DetailField`], whose words hold here.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct FieldNumbers {
    coupling: f64,
    flanking: f64,
    temperature_factor: f64,
    coldest_at: [f64; 3],
    is_settled: bool,
    ordinary_temperature_factor: f64,
    marks: Vec<Option<f64>>,
    cells: u32,
    iterations: u32,
    residual: f64,
}

impl From<&DetailField> for FieldNumbers {
    fn from(field: &DetailField) -> Self {
        let at = field.coldest_at;
        Self {
            coupling: field.coupling.value(),
            flanking: field.flanking.value(),
            temperature_factor: field.temperature_factor.value(),
            coldest_at: [at.x.value(), at.y.value(), at.z.value()],
            is_settled: field.is_settled,
            ordinary_temperature_factor: field.ordinary_temperature_factor.value(),
            marks: field.marks.iter().map(|mark| mark.map(TemperatureFactor::value)).collect(),
            cells: field.cells as u32,
            iterations: field.iterations as u32,
            residual: field.residual,
        }
    }
}

impl From<FieldNumbers> for DetailField {
    fn from(numbers: FieldNumbers) -> Self {
        let [x, y, z] = numbers.coldest_at;
        Self {
            coupling: HeatTransferCoefficient::new(numbers.coupling),
            flanking: HeatTransferCoefficient::new(numbers.flanking),
            temperature_factor: TemperatureFactor::new(numbers.temperature_factor),
            coldest_at: Point::metres(x, y, z),
            is_settled: numbers.is_settled,
            ordinary_temperature_factor: TemperatureFactor::new(
                numbers.ordinary_temperature_factor,
            ),
            marks: numbers.marks.into_iter().map(|mark| mark.map(TemperatureFactor::new)).collect(),
            cells: numbers.cells as usize,
            iterations: numbers.iterations as usize,
            residual: numbers.residual,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_field_comes_back_bit_for_bit() {
        let field = DetailField {
            coupling: HeatTransferCoefficient::new(0.1 + 0.2),
            flanking: HeatTransferCoefficient::new(0.25),
            temperature_factor: TemperatureFactor::new(0.7),
            coldest_at: Point::metres(0.1, 0.2, 0.3),
            is_settled: true,
            ordinary_temperature_factor: TemperatureFactor::new(0.8),
            marks: vec![Some(TemperatureFactor::new(0.5)), None],
            cells: 123_456,
            iterations: 17,
            residual: 1e-9,
        };
        assert_eq!(DetailField::from(FieldNumbers::from(&field)), field);
    }
}
