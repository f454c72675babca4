//! Solved slices across studs against an independent solution.

use inchwise_core::detail::{BuildUp, Detail, DetailField, FrameSlice, INNER_FLANGE};
use inchwise_core::envelope::HeatFlow;
use inchwise_core::units::{Length, ThermalConductivity};
use inchwise_tests::{Table, Tolerance, close_to};

fn slice(stand_off: f64, stud: f64, spacing: f64) -> FrameSlice {
    let face = Length::mm(stand_off + stud);
    FrameSlice {
        build_up: BuildUp {
            direction: HeatFlow::Horizontal,
            sheet: Length::mm(2.0),
            foam: face,
            lining_back: face,
            lining: Length::mm(12.7),
            foam_conductivity: ThermalConductivity::new(0.026),
            lining_conductivity: ThermalConductivity::new(0.16),
        },
        stand_off: Length::mm(stand_off),
        member: Length::mm(stud),
        flange: Length::mm(31.8),
        steel_thickness: Length::mm(0.84),
        spacing: Length::mm(spacing),
        waves: None,
    }
}

fn transmittance(field: &DetailField, spacing: f64) -> f64 {
    field.coupling.value() / Length::mm(spacing).value()
}

#[test]
fn stud_walls_lose_and_cool_as_an_independent_solution_says() {
    let table = Table::read(include_str!("../../reference/detail/stud_walls.tsv"));
    for row in table.rows() {
        let slice = slice(row.number("stand_off_mm"), row.number("stud_mm"), 406.0);
        let field = Detail::FrameLine(slice).solve().expect("an ordinary stud wall solves");
        row.close_to("transmittance", transmittance(&field, 406.0));
        row.close_to("linear_transmittance", field.linear_transmittance().value());
        let factor = field.ordinary_temperature_factor.value();
        row.close_to("lowest_surface_c", -20.0 + 40.0 * factor);
    }
}

/// ISO 10211: ψ belongs to the line, not to how many lines there are.
#[test]
fn linear_transmittance_does_not_depend_on_the_spacing() {
    for stand_off in [0.0, 25.0] {
        let at = |spacing| {
            Detail::FrameLine(slice(stand_off, 63.5, spacing))
                .solve()
                .expect("an ordinary stud wall solves")
                .linear_transmittance()
                .value()
        };
        close_to("psi at 610 against 406 mm", at(610.0), at(406.0), Tolerance::relative(0.01));
    }
}

/// A stud that touches the sheet roughly doubles the wall's loss and freezes its own inner flange;
/// an inch of foam behind it recovers nearly all. Common practice, no source.
#[test]
fn foam_behind_the_stud_recovers_nearly_all() {
    let field = |stand_off| {
        Detail::FrameLine(slice(stand_off, 63.5, 406.0))
            .solve()
            .expect("an ordinary stud wall solves")
    };
    let (touching, held_off) = (field(0.0), field(25.0));
    let ratio = |field: &DetailField| field.coupling / field.flanking;
    assert!(ratio(&touching) > 1.9, "touching: {}", ratio(&touching));
    assert!(ratio(&held_off) < 1.35, "held off: {}", ratio(&held_off));
    let flange = touching.marks[INNER_FLANGE].expect("the flange is in the field").value();
    assert!(-30.0 + 50.0 * flange < 0.0, "inner flange at 20/-30 C: factor {flange}");
}
