//! From a problem to the text of a problem file.

use inchwise_core::conduction::{
    AirRegion, Axis, Block, Dimensionality, Environment, Point, Problem, RefinementRegion, Shape,
    Side,
};
use inchwise_core::units::Length;
use serde_json::{Map, Value, json};

/// Writes a problem as a file that [`read_problem`](super::read_problem) takes, lengths in
/// millimetres to a billionth.
///
/// `environments` are the names and temperatures, °C, by number; `about` is what a reader should know.
pub fn write_problem(problem: &Problem, environments: &[(&str, f64)], about: &Value) -> String {
    let writer = Writer { dimensions: problem.dimensions, environments };
    let cells = &problem.cells;
    let paints = problem.paints.iter().map(|paint| {
        let mut entry = writer.shape(&paint.shape);
        entry.insert("conductivity".to_owned(), json!(paint.conductivity.value()));
        Value::Object(entry)
    });
    let exposed = problem.exposed.iter().map(|exposed| {
        json!({
            "side": side_name(exposed.side),
            "environment": writer.name(exposed.environment),
            "surface_resistance": exposed.surface_resistance.value(),
        })
    });
    let refinements = cells.refinements.iter().map(|refinement| {
        let size = millimetres(refinement.size);
        match &refinement.region {
            RefinementRegion::Point(point) => {
                json!({ "point": writer.point(*point), "size": size })
            }
            RefinementRegion::Plane { axis, at } => {
                let plane = json!({ "axis": axis_name(*axis), "at": millimetres(*at) });
                json!({ "plane": plane, "size": size })
            }
            RefinementRegion::Block(block) => json!({ "block": writer.block(block), "size": size }),
        }
    });
    let environments =
        environments.iter().map(|(name, celsius)| json!({ "name": name, "temperature": celsius }));
    let file = json!({
        "about": about,
        "dimensions": if problem.dimensions == Dimensionality::Two { 2 } else { 3 },
        "lengths_in": "mm",
        "domain": writer.block(&problem.domain),
        "background": problem.background.value(),
        "environments": environments.collect::<Vec<_>>(),
        "paints": paints.collect::<Vec<_>>(),
        "air": problem.air.iter().map(|region| writer.air(region)).collect::<Vec<_>>(),
        "exposed": exposed.collect::<Vec<_>>(),
        "cells": {
            "finest": millimetres(cells.finest),
            "coarsest": millimetres(cells.coarsest),
            "growth": cells.growth,
            "limit": cells.limit,
            "refinements": refinements.collect::<Vec<_>>(),
        },
    });
    format!("{file:#}\n")
}

/// Without the traces of binary fractions: 12.7 and not 12.700000000000001.
fn millimetres(length: Length) -> f64 {
    (length.value() * 1e12).round() / 1e9
}

const fn axis_name(axis: Axis) -> &'static str {
    match axis {
        Axis::X => "x",
        Axis::Y => "y",
        Axis::Z => "z",
    }
}

const fn side_name(side: Side) -> &'static str {
    match side {
        Side::XMinimum => "x_minimum",
        Side::XMaximum => "x_maximum",
        Side::YMinimum => "y_minimum",
        Side::YMaximum => "y_maximum",
        Side::ZMinimum => "z_minimum",
        Side::ZMaximum => "z_maximum",
    }
}

struct Writer<'a> {
    dimensions: Dimensionality,
    environments: &'a [(&'a str, f64)],
}

impl Writer<'_> {
    fn name(&self, environment: Environment) -> &str {
        self.environments.get(environment.0).map_or("unnamed", |(name, _)| name)
    }

    fn point(&self, at: Point) -> Vec<f64> {
        let axes = if self.dimensions == Dimensionality::Two { 2 } else { 3 };
        Axis::ALL[..axes].iter().map(|&axis| millimetres(at.along(axis))).collect()
    }

    fn block(&self, block: &Block) -> Value {
        json!({ "from": self.point(block.minimum), "to": self.point(block.maximum) })
    }

    fn shape(&self, shape: &Shape) -> Map<String, Value> {
        let (key, value) = match shape {
            Shape::Block(block) => ("block", self.block(block)),
            Shape::Prism { axis, outline, from, to } => {
                let corners = outline.iter().map(|corner| corner.map(millimetres));
                let mut prism = Map::new();
                prism.insert("outline".to_owned(), json!(corners.collect::<Vec<_>>()));
                if self.dimensions == Dimensionality::Three {
                    prism.insert("axis".to_owned(), json!(axis_name(*axis)));
                    prism.insert("from".to_owned(), json!(millimetres(*from)));
                    prism.insert("to".to_owned(), json!(millimetres(*to)));
                }
                ("prism", Value::Object(prism))
            }
        };
        Map::from_iter([(key.to_owned(), value)])
    }

    fn air(&self, region: &AirRegion) -> Value {
        let mut entry = self.shape(&region.shape);
        let resistance = |side| region.surface_resistance.of(side).value();
        let common = resistance(Side::XMinimum);
        let others = Side::ALL.into_iter().filter(|&side| resistance(side) != common);
        let others: Vec<Value> = others
            .map(|side| json!({ "side": side_name(side), "surface_resistance": resistance(side) }))
            .collect();
        entry.insert("environment".to_owned(), json!(self.name(region.environment)));
        entry.insert("surface_resistance".to_owned(), json!(common));
        if !others.is_empty() {
            entry.insert("surface_resistance_by_side".to_owned(), Value::Array(others));
        }
        Value::Object(entry)
    }
}
