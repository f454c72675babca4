//! Our details as solved live against finite elements on another mesh.

use inchwise_core::detail::Detail;
use inchwise_tests::Table;

#[path = "../../../core/examples/detail_problems/chosen.rs"]
mod chosen;

fn stored(name: &str) -> &'static str {
    match name {
        "stud_heat.json" => include_str!("../../reference/detail/stud_heat.json"),
        "stud_damp.json" => include_str!("../../reference/detail/stud_damp.json"),
        "stud_over_trough_heat.json" => {
            include_str!("../../reference/detail/stud_over_trough_heat.json")
        }
        "stud_over_trough_damp.json" => {
            include_str!("../../reference/detail/stud_over_trough_damp.json")
        }
        "front_end_wave_heat.json" => {
            include_str!("../../reference/detail/front_end_wave_heat.json")
        }
        "front_end_wave_damp.json" => {
            include_str!("../../reference/detail/front_end_wave_damp.json")
        }
        "floor_edge_heat.json" => include_str!("../../reference/detail/floor_edge_heat.json"),
        "floor_edge_damp.json" => include_str!("../../reference/detail/floor_edge_damp.json"),
        "top_casting_heat.json" => include_str!("../../reference/detail/top_casting_heat.json"),
        "top_casting_damp.json" => include_str!("../../reference/detail/top_casting_damp.json"),
        other => panic!("{other} is no file of a detail"),
    }
}

/// Elements answer what the files say: a detail drawn otherwise since is another problem.
#[test]
fn the_problem_files_are_our_details_as_drawn() {
    let details = chosen::details();
    assert_eq!(details.len(), 5);
    for (name, detail) in details {
        for (file, text) in chosen::files(name, &detail) {
            assert!(text == stored(&file), "{file} is old: run `cargo site bench elements`");
        }
    }
}

fn solved_as_elements_say(name: &str) {
    let table = Table::read(include_str!("../../reference/detail/finite_elements.tsv"));
    let (row, details) = (table.row(name), chosen::details());
    let detail: Option<&Detail> =
        details.iter().find(|(other, _)| *other == name).map(|(_, detail)| detail);
    let field = detail.expect("one of the details").solve().expect("a detail that solves");
    row.close_to("coupling", field.coupling.value());
    let [room, outdoors] = chosen::TEMPERATURES;
    let lowest = outdoors + (room - outdoors) * field.temperature_factor.value();
    row.close_to("lowest_surface_c", lowest);
}

#[test]
fn a_stud_loses_and_cools_as_finite_elements_say() {
    solved_as_elements_say("stud");
}

#[test]
fn a_stud_over_a_trough_loses_and_cools_as_finite_elements_say() {
    solved_as_elements_say("stud_over_trough");
}

#[test]
fn a_wave_with_foam_that_follows_it_loses_and_cools_as_finite_elements_say() {
    solved_as_elements_say("front_end_wave");
}

#[test]
fn the_foot_of_a_wall_loses_and_cools_as_finite_elements_say() {
    solved_as_elements_say("floor_edge");
}

#[test]
fn a_covered_casting_loses_and_cools_as_finite_elements_say() {
    solved_as_elements_say("top_casting");
}
