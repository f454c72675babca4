//! Sizes of the standard boxes against ISO 668, ISO 1496-1, ISO 1161 and makers' sheets.

use inchwise_core::freight_box::{
    BoxSize, CORNER_FITTING_HEIGHT, CORNER_FITTING_LENGTH, CORNER_FITTING_WIDTH, FRONT_END,
    FreightBox, ROOF, SIDE_WALL,
};
use inchwise_tests::{Row, Table};

fn freight_box(row: &Row<'_>) -> FreightBox {
    let key = row.text("box");
    BoxSize::from_key(key).unwrap_or_else(|| panic!("no box is called {key}")).nominal()
}

#[test]
fn outside_dimensions_are_those_of_iso_668() {
    let table = Table::read(include_str!("../../reference/freight_box/external.tsv"));
    assert_eq!(table.rows().len(), BoxSize::ALL.len(), "a row for every box");
    for row in table.rows() {
        let external = freight_box(&row).external;
        row.close_to("length_mm", external.length.as_mm());
        row.close_to("width_mm", external.width.as_mm());
        row.close_to("height_mm", external.height.as_mm());
    }
}

#[test]
fn inside_dimensions_are_at_least_those_of_iso_1496() {
    let table = Table::read(include_str!("../../reference/freight_box/internal_least.tsv"));
    for row in table.rows() {
        let internal = freight_box(&row).internal;
        for (column, has) in [
            ("length_mm", internal.length),
            ("width_mm", internal.width),
            ("height_mm", internal.height),
        ] {
            let least = row.number(column);
            assert!(has.as_mm() >= least, "{column} of {}: {has:?} < {least}", row.text("box"));
        }
    }
}

#[test]
fn inside_dimensions_and_doors_are_those_of_common_boxes() {
    let table = Table::read(include_str!("../../reference/freight_box/internal.tsv"));
    for row in table.rows() {
        let freight_box = freight_box(&row);
        row.close_to("length_mm", freight_box.internal.length.as_mm());
        row.close_to("width_mm", freight_box.internal.width.as_mm());
        row.close_to("height_mm", freight_box.internal.height.as_mm());
        row.close_to("door_height_mm", freight_box.door_opening_height.as_mm());
    }
}

#[test]
fn corrugation_closes_its_pitch_and_fills_as_worked_by_hand() {
    let table = Table::read(include_str!("../../reference/freight_box/corrugation.tsv"));
    for (name, sheet) in [("side_wall", SIDE_WALL), ("front_end", FRONT_END), ("roof", ROOF)] {
        let row = table.row(name);
        row.close_to("pitch_mm", sheet.pitch().as_mm());
        row.close_to("developed", sheet.developed_ratio());
        row.close_to("trough_mm", sheet.mean_trough().as_mm());
    }
}

/// ISO 1161: a corner fitting is 178 × 162 × 118 mm.
#[test]
fn corner_fitting_is_that_of_iso_1161() {
    let size = [CORNER_FITTING_LENGTH, CORNER_FITTING_WIDTH, CORNER_FITTING_HEIGHT];
    assert_eq!(size.map(|length| length.as_mm().round() as i32), [178, 162, 118]);
}

/// A fitting stands in the room by what the walls leave of it: never more than its own size, and
/// always some, or there would be nothing to treat.
#[test]
fn castings_stand_in_every_box_by_less_than_their_size() {
    for size in BoxSize::ALL {
        let casting = size.nominal().casting;
        for (reach, fitting) in [
            (casting.front_length, CORNER_FITTING_LENGTH),
            (casting.door_length, CORNER_FITTING_LENGTH),
            (casting.width, CORNER_FITTING_WIDTH),
            (casting.height, CORNER_FITTING_HEIGHT),
        ] {
            assert!(0.0 < reach.value() && reach < fitting, "{size:?}: {reach:?} of {fitting:?}");
        }
    }
}
