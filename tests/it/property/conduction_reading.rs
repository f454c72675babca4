//! What is read from a field agrees however it is asked for, and faults are named.

use inchwise_core::conduction::*;
use inchwise_core::units::*;
use inchwise_tests::{Tolerance, close_to};

const ROOM: Environment = Environment(0);
const OUTDOORS: Environment = Environment(1);

fn resistances(value: f64) -> SurfaceResistances {
    SurfaceResistances::uniform(ThermalResistance::new(value))
}

/// The corner of two foamed walls, seen from a room into which it opens.
fn foam_corner(finest: f64) -> Problem {
    let cells = CellSizes::new(Length::mm(finest), Length::mm(40.0));
    let domain = Block::metres([0.0; 3], [0.4, 0.4, 1.0]);
    let foam = ThermalConductivity::new(0.026);
    let mut corner = Problem::new(domain, Dimensionality::Two, foam, cells);
    corner.open_to(Block::metres([0.05, 0.05, 0.0], [0.4, 0.4, 1.0]), ROOM, resistances(0.13));
    corner.expose(Side::XMinimum, OUTDOORS, ThermalResistance::new(0.04));
    corner.expose(Side::YMinimum, OUTDOORS, ThermalResistance::new(0.04));
    corner
}

#[test]
fn refining_settles_on_what_a_fine_grid_says() {
    let refining = RefinementCriterion {
        environment: ROOM,
        extreme: Extreme::Coldest,
        temperatures: [20.0, -20.0].map(Temperature::celsius).to_vec(),
        tolerance: TemperatureDifference::new(0.02),
        maximum_rounds: 10,
    };
    let accuracy = Accuracy::default();
    let refined = refine_until(&foam_corner(20.0), &accuracy, &refining).unwrap();
    assert!(refined.is_settled && refined.history.len() >= 3, "{:?}", refined.history);
    for pair in refined.history.windows(2) {
        close_to("size", pair[1].size / pair[0].size, 0.5, Tolerance::absolute(1e-12));
        assert!(pair[1].cells > pair[0].cells);
    }
    let last = refined.history.last().unwrap();
    close_to("x", last.at.x.as_mm(), 50.0, Tolerance::absolute(1e-9));
    close_to("y", last.at.y.as_mm(), 50.0, Tolerance::absolute(1e-9));

    let fine = solve(&foam_corner(0.2), &accuracy).unwrap();
    let field = fine.with_temperatures(&refining.temperatures).unwrap();
    let expected = field.coldest_surface(ROOM).unwrap().temperature.as_celsius();
    close_to("coldest", last.temperature.as_celsius(), expected, Tolerance::absolute(0.05));

    let factor = fine.lowest_temperature_factor(ROOM).unwrap().factor.value();
    close_to("factor", -20.0 + 40.0 * factor, expected, Tolerance::absolute(1e-9));
}

#[test]
fn refining_says_when_it_did_not_settle() {
    let mut refining = RefinementCriterion {
        environment: ROOM,
        extreme: Extreme::Coldest,
        temperatures: [1.0, 0.0].map(Temperature::celsius).to_vec(),
        tolerance: TemperatureDifference::new(1e-12),
        maximum_rounds: 2,
    };
    let corner = foam_corner(20.0);
    let refined = refine_until(&corner, &Accuracy::default(), &refining).unwrap();
    assert!(!refined.is_settled);
    assert_eq!(refined.history.len(), 3);
    refining.environment = Environment(7);
    let fault = refine_until(&corner, &Accuracy::default(), &refining).unwrap_err();
    assert_eq!(fault, ConductionError::UnknownEnvironment { environment: 7 });
}

/// A wall of one material, 0.1 m thick, λ = 0.5, between 20 and −10 °C: R = 0.13 + 0.2 + 0.04.
fn wall() -> Solution {
    let cells = CellSizes::new(Length::mm(4.0), Length::mm(30.0));
    let domain = Block::metres([0.0; 3], [0.1, 0.5, 0.3]);
    let concrete = ThermalConductivity::new(0.5);
    let mut wall = Problem::new(domain, Dimensionality::Three, concrete, cells);
    wall.expose(Side::XMinimum, ROOM, ThermalResistance::new(0.13));
    wall.expose(Side::XMaximum, OUTDOORS, ThermalResistance::new(0.04));
    let accuracy = Accuracy { relative_residual: 1e-12, maximum_iterations: 100 };
    solve(&wall, &accuracy).expect("a plain wall solves")
}

#[test]
fn every_way_of_reading_a_plain_wall_agrees() {
    let solution = wall();
    let field = solution.with_temperatures(&[20.0, -10.0].map(Temperature::celsius)).unwrap();
    let near = Tolerance::absolute(1e-8);
    let (flux, area) = (30.0 / 0.37, 0.15);
    close_to("flow", field.flow_into(OUTDOORS).value(), flux * area, near);
    close_to("flow back", field.flow_into(ROOM).value(), -flux * area, near);
    let surface = 20.0 - flux * 0.13;
    let middle_of_wall = Point::metres(0.0, 0.21, 0.17);
    let at_surface = field.surface_temperature_at(ROOM, middle_of_wall).unwrap();
    close_to("surface", at_surface.as_celsius(), surface, near);
    close_to("point", field.temperature_at(middle_of_wall).unwrap().as_celsius(), surface, near);
    let patch = Block::metres([0.0, 0.1, 0.1], [0.01, 0.2, 0.2]);
    close_to("patch", field.patch_mean(ROOM, &patch).unwrap().as_celsius(), surface, near);
    close_to(
        "factor",
        solution.surface_weights_at(ROOM, middle_of_wall).unwrap()[0],
        1.0 - 0.13 / 0.37,
        near,
    );
    // No room surface on the outdoor face, in a block that holds none, or outside the wall.
    assert_eq!(field.surface_temperature_at(ROOM, Point::metres(0.1, 0.2, 0.2)), None);
    let inside = Block::metres([0.02, 0.1, 0.1], [0.05, 0.2, 0.2]);
    assert_eq!(field.patch_mean(ROOM, &inside), None);
    assert_eq!(field.temperature_at(Point::metres(0.2, 0.2, 0.2)), None);

    let section = Section { axis: Axis::Y, at: Length::new(0.25) };
    let samples = field.sample(section, 10, 3);
    assert_eq!(samples.len(), 30);
    for (n, sample) in samples.iter().enumerate() {
        let depth = 0.01 * ((n % 10) as f64 + 0.5);
        let expected = 20.0 - flux * (0.13 + depth / 0.5);
        close_to("sample", sample.unwrap().as_celsius(), expected, near);
    }
}

#[test]
fn air_regions_may_have_a_resistance_for_each_direction() {
    let cells = CellSizes::new(Length::mm(10.0), Length::mm(20.0));
    let domain = Block::metres([0.0; 3], [0.1, 0.1, 0.5]);
    let wood = ThermalConductivity::new(0.13);
    let mut room = Problem::new(domain, Dimensionality::Three, wood, cells);
    // The floor looks up into the air, the ceiling down.
    let by_direction = resistances(0.13)
        .with(Side::ZMaximum, ThermalResistance::new(0.17))
        .with(Side::ZMinimum, ThermalResistance::new(0.10));
    room.open_to(Block::metres([-1.0, -1.0, 0.1], [1.0, 1.0, 0.4]), ROOM, by_direction);
    room.expose(Side::ZMinimum, OUTDOORS, ThermalResistance::new(0.04));
    let solution = solve(&room, &Accuracy::default()).unwrap();
    // The ceiling is tied to the room alone: it takes the room's temperature and passes no heat.
    let expected = 0.01 / (0.17 + 0.1 / 0.13 + 0.04);
    close_to(
        "floor",
        solution.coupling(ROOM, OUTDOORS).value(),
        expected,
        Tolerance::relative(1e-9),
    );
    let ceiling = solution.weights_at(Point::metres(0.05, 0.05, 0.45)).unwrap();
    close_to("ceiling", ceiling[0], 1.0, Tolerance::absolute(1e-9));
}

fn fault_of(change: impl Fn(&mut Problem)) -> ConductionError {
    let mut problem = foam_corner(10.0);
    change(&mut problem);
    solve(&problem, &Accuracy::default()).expect_err("a fault")
}

#[test]
fn faults_are_named_with_their_place() {
    use ConductionError as Fault;
    let block = Block::metres([0.1, 0.1, 0.0], [0.2, 0.2, 1.0]);
    let steel = ThermalConductivity::new(50.0);

    assert_eq!(fault_of(|p| (p.air, p.exposed) = (vec![], vec![])), Fault::NoBoundary);
    let all = Block::metres([-1.0; 3], [2.0; 3]);
    assert_eq!(fault_of(|p| p.open_to(all, ROOM, resistances(0.1))), Fault::Empty);
    assert!(matches!(
        fault_of(|p| p.background = ThermalConductivity::new(f64::NAN)),
        Fault::NonFiniteConductivity { part: ProblemPart::Background }
    ));
    assert!(matches!(
        fault_of(|p| p.paint(block, ThermalConductivity::ZERO)),
        Fault::NonPositiveConductivity { part: ProblemPart::Paint(0), .. }
    ));
    let upside_down = Block::new(block.maximum, block.minimum);
    let fault = fault_of(|p| {
        p.paint(block, steel);
        p.paint(upside_down, steel);
    });
    assert_eq!(fault, Fault::BadBlock { part: ProblemPart::Paint(1) });
    assert_eq!(fault_of(|p| p.domain = upside_down), Fault::BadBlock { part: ProblemPart::Domain });
    assert!(matches!(
        fault_of(|p| p.exposed[1].surface_resistance = ThermalResistance::new(-0.1)),
        Fault::BadSurfaceResistance { part: ProblemPart::Exposed(1), .. }
    ));
    let twice = fault_of(|p| p.expose(Side::XMinimum, ROOM, ThermalResistance::ZERO));
    assert_eq!(twice, Fault::BadSide { part: ProblemPart::Exposed(2), side: Side::XMinimum });
    let into_the_page = fault_of(|p| p.expose(Side::ZMinimum, ROOM, ThermalResistance::ZERO));
    assert_eq!(
        into_the_page,
        Fault::BadSide { part: ProblemPart::Exposed(2), side: Side::ZMinimum }
    );
    assert_eq!(fault_of(|p| p.cells.growth = 1.0), Fault::BadCellSizes);
    assert_eq!(fault_of(|p| p.cells.finest = Length::new(f64::NAN)), Fault::BadCellSizes);
    let fault = fault_of(|p| {
        let region = RefinementRegion::Plane { axis: Axis::X, at: Length::ZERO };
        p.cells.refinements.push(Refinement { region, size: Length::ZERO });
    });
    assert_eq!(fault, Fault::BadRefinement { part: ProblemPart::Refinement(0) });
    assert!(matches!(
        fault_of(|p| p.cells.limit = 100),
        Fault::TooManyCells { cells, limit: 100 } if cells > 100
    ));
    let crumb = Length::new(1e-12);
    let fault = fault_of(|p| (p.cells.finest, p.cells.coarsest) = (crumb, crumb));
    assert!(matches!(fault, Fault::TooManyCells { .. }));
    assert!(matches!(
        fault_of(|p| p.open_to(block, Environment(900), resistances(0.1))),
        Fault::BadEnvironment { part: ProblemPart::Air(1) }
    ));
}

#[test]
fn temperatures_are_checked() {
    let solution = wall();
    let one = solution.with_temperatures(&[Temperature::celsius(1.0)]).unwrap_err();
    assert_eq!(one, ConductionError::WrongTemperatureCount { wanted: 2, given: 1 });
    let bad = [0.0, f64::NAN].map(Temperature::celsius);
    let fault = solution.with_temperatures(&bad).unwrap_err();
    assert_eq!(fault, ConductionError::NonFiniteTemperature { environment: 1 });
}
