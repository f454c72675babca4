//! Plain build-ups against ISO 6946: surface and air-layer resistances, layers in series.

use inchwise_core::conduction::{
    Accuracy, Block, CellSizes, Dimensionality, Environment, Problem, Side, solve,
};
use inchwise_core::envelope::{
    HeatFlow, OUTSIDE_SURFACE_RESISTANCE, air_layer_resistance, series_resistance,
};
use inchwise_core::units::{Length, ThermalConductivity, ThermalResistance};
use inchwise_tests::{Row, Table, Tolerance, close_to};

fn direction(row: &Row) -> HeatFlow {
    match row.text("heat_flow") {
        "up" => HeatFlow::Upwards,
        "horizontal" => HeatFlow::Horizontal,
        "down" => HeatFlow::Downwards,
        other => panic!("heat does not flow {other:?}"),
    }
}

#[test]
fn inside_surfaces_resist_as_the_standard_says() {
    let table = Table::read(include_str!(
        "../../reference/envelope/iso_6946_inside_surface_resistance.tsv"
    ));
    for row in table.rows() {
        let resistance = direction(&row).inside_surface_resistance().value();
        row.close_to("table_m2_k_per_w", resistance);
        // The two decimals of the convention are those of its own annex formula.
        let formula = row.number("formula_m2_k_per_w");
        close_to("the convention", resistance, formula, Tolerance::absolute(0.005));
    }
}

#[test]
fn the_outside_surface_is_that_of_four_metres_a_second() {
    let table = Table::read(include_str!(
        "../../reference/envelope/iso_6946_outside_surface_resistance.tsv"
    ));
    table.row("4").close_to("table_m2_k_per_w", OUTSIDE_SURFACE_RESISTANCE.value());
}

#[test]
fn air_layers_resist_as_the_standard_says() {
    let table = Table::read(include_str!("../../reference/envelope/iso_6946_air_layer.tsv"));
    for row in table.rows() {
        let thickness = Length::mm(row.number("thickness_mm"));
        let resistance = air_layer_resistance(thickness, direction(&row)).value();
        row.close_to("table_m2_k_per_w", resistance);
        row.close_to("formula_m2_k_per_w", resistance);
    }
}

/// What is left of an air layer's conductance once the convection the standard gives it (1.25
/// W/(m²·K) horizontally) is taken off is E·h_r0 at 10 °C, of a table of its own.
#[test]
fn an_air_layer_radiates_as_a_black_body_at_ten_degrees() {
    let table =
        Table::read(include_str!("../../reference/envelope/iso_6946_black_body_coefficient.tsv"));
    let layer = air_layer_resistance(Length::mm(50.0), HeatFlow::Horizontal);
    let exchange = 1.0 / (1.0 / 0.9 + 1.0 / 0.9 - 1.0);
    let black_body = (1.0 / layer.value() - 1.25) / exchange;
    table.row("10").close_to("table_w_per_m2_k", black_body);
    table.row("10").close_to("formula_w_per_m2_k", black_body);
}

/// Layers of a row of the table of series walls, from inside out.
fn layers(row: &Row) -> Vec<ThermalResistance> {
    (1..=3)
        .filter_map(|n| {
            let thickness = row.number_if_given(&format!("layer_{n}_mm"))?;
            let conductivity = row.number(&format!("layer_{n}_w_per_m_k"));
            Some(Length::mm(thickness) / ThermalConductivity::new(conductivity))
        })
        .collect()
}

fn surfaces(row: &Row) -> [ThermalResistance; 2] {
    ["inside_surface_m2_k_per_w", "outside_surface_m2_k_per_w"]
        .map(|column| ThermalResistance::new(row.number(column)))
}

#[test]
fn layers_in_series_are_the_worked_walls() {
    let table = Table::read(include_str!("../../reference/envelope/series_walls.tsv"));
    for row in table.rows() {
        let [inside, outside] = surfaces(&row);
        let resistance = series_resistance(inside, layers(&row), outside);
        row.close_to("resistance_m2_k_per_w", resistance.value());
        row.close_to("transmittance_w_per_m2_k", resistance.transmittance().value());
    }
}

#[test]
fn temperature_falls_through_the_layers_as_worked() {
    let walls = Table::read(include_str!("../../reference/envelope/series_walls.tsv"));
    let wall = walls.row("profile");
    let [inside, outside] = surfaces(&wall);
    let layers = layers(&wall);
    let total = series_resistance(inside, layers.iter().copied(), outside);
    // The last stands for no outside surface: what is left is the outside air.
    let falls = [ThermalResistance::ZERO, inside].into_iter().chain(layers).chain([outside]);
    let table = Table::read(include_str!("../../reference/envelope/temperature_profile.tsv"));
    let mut passed = ThermalResistance::ZERO;
    let rows: Vec<_> = table.rows().collect();
    assert_eq!(rows.len(), falls.clone().count());
    for (row, fall) in rows.iter().zip(falls) {
        passed += fall;
        row.close_to("temperature_c", 20.0 - 40.0 * (passed / total));
    }
}

/// A sheet fed along a line loses heat off one face: what the room does to a steel skin that meets
/// a bare member.
///
/// The closed form takes the sheet as of one temperature through its thickness; at a Biot number
/// h·t/k of 0.001 that is worth less than the 0.2 % allowed for the grid.
#[test]
fn a_sheet_that_a_line_heats_is_a_fin() {
    const LINE: Environment = Environment(0);
    const AIR: Environment = Environment(1);
    let table = Table::read(include_str!("../../reference/conduction/sheet_metal_fin.tsv"));
    for row in table.rows() {
        let thickness = Length::mm(row.number("thickness_mm"));
        let decay = Length::mm(row.number("decay_length_mm"));
        let half_length = row.number_if_given("half_length_mm").map_or(decay * 12.0, Length::mm);
        let conductivity = ThermalConductivity::new(row.number("conductivity_w_per_m_k"));
        let cells = CellSizes { growth: 1.1, ..CellSizes::new(Length::mm(0.5), Length::mm(2.0)) };
        let sheet = Block::flat(Length::ZERO, Length::ZERO, half_length, thickness);
        let mut problem = Problem::new(sheet, Dimensionality::Two, conductivity, cells);
        let coefficient = row.number("surface_coefficient_w_per_m2_k");
        problem.expose(Side::XMinimum, LINE, ThermalResistance::ZERO);
        problem.expose(Side::YMaximum, AIR, ThermalResistance::new(1.0 / coefficient));
        let solution = solve(&problem, &Accuracy::default()).expect("a sheet solves");
        close_to(
            "conductance of the line, both ways",
            2.0 * solution.coupling(LINE, AIR).value(),
            row.number("line_conductance_w_per_m_k"),
            Tolerance::relative(0.002),
        );
    }
}
