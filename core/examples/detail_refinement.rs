//! How far each detail stands from what it would be on an endlessly fine grid: the default design,
//! `cargo run --release -p inchwise-core --example detail_refinement`.
//!
//! Prints a line of tab-separated figures per detail and grid: the product's own first, as it is solved
//! live, then the same with all cells made smaller. The value extrapolated from the last two grids takes
//! their difference to fall in proportion to the cells, which overstates what is left.

use std::process::ExitCode;

use inchwise_core::conduction::{
    Accuracy, ConductionError, Extreme, Problem, Refining, refine_until, solve,
};
use inchwise_core::design::{CheckedDesign, Surface};
use inchwise_core::detail::{
    Detail, DetailMemory, Effort, OUTDOORS, ROOM, Surfaces, placed_detail,
};
use inchwise_core::envelope::{Amount, End, Opening, Place};
use inchwise_core::units::{Temperature, TemperatureDifference};

const PLACES: [(&str, Place); 14] = [
    ("stud", Place::FrameLine(Surface::SideWall)),
    ("joist", Place::FrameLine(Surface::Ceiling)),
    ("wave, side wall", Place::Waves(Surface::SideWall)),
    ("wave, front end", Place::Waves(Surface::FrontEnd)),
    ("wave, roof", Place::Waves(Surface::Ceiling)),
    ("roof edge", Place::RoofEdge(Surface::SideWall)),
    ("corner post", Place::CornerPost(End::Front)),
    ("foot of a wall", Place::FloorEdge(Surface::SideWall)),
    ("floor member", Place::FloorMember),
    ("window frame", Place::OpeningFrame(Opening::Window)),
    ("top casting", Place::TopCasting(End::Front)),
    ("bottom casting", Place::BottomCasting(End::Front)),
    ("bracket", Place::StudHead),
    ("damper sleeve", Place::DamperSleeve),
];

/// What one grid gives.
struct Step {
    cells: usize,
    coupling: f64,
    factor: f64,
}

/// The problem with all cells smaller by a factor; they grow away from faces more gently too.
fn finer(mut problem: Problem, by: f64) -> Problem {
    let cells = &mut problem.cells;
    (cells.finest, cells.coarsest) = (cells.finest / by, cells.coarsest / by);
    cells.growth = 1.0 + (cells.growth - 1.0) / by;
    cells.limit = 8_000_000;
    problem
}

fn step(detail: &Detail, by: f64) -> Result<Step, ConductionError> {
    let accuracy = Accuracy::default();
    let heat = solve(&finer(detail.problem(Surfaces::Ordinary), by), &accuracy)?;
    let refining = Refining {
        environment: ROOM,
        finish: None,
        extreme: Extreme::Coldest,
        temperatures: vec![Temperature::celsius(1.0), Temperature::celsius(0.0)],
        tolerance: TemperatureDifference::new(0.0004),
        maximum_rounds: if detail.is_body() { 3 } else { 6 },
    };
    let damp = refine_until(&finer(detail.problem(Surfaces::Damp), by), &accuracy, &refining)?;
    Ok(Step {
        cells: heat.cells(),
        coupling: heat.coupling(ROOM, OUTDOORS).value(),
        factor: damp.solution.lowest_temperature_factor(ROOM)?.factor.value(),
    })
}

fn steps(detail: &Detail) -> Result<[Step; 3], ConductionError> {
    let ratio = if detail.is_body() { core::f64::consts::SQRT_2 } else { 2.0 };
    let mut first = step(detail, 1.0)?;
    // As the product solves it, with its own rounds of refinement.
    first.factor = detail.solve()?.temperature_factor.value();
    Ok([first, step(detail, ratio)?, step(detail, ratio * ratio)?])
}

fn study(name: &str, place: Place) -> Result<(), String> {
    let (checked, mut memory) = (CheckedDesign::default(), DetailMemory::default());
    let placed = placed_detail(&checked, place, Amount::Pieces(1.0), &mut memory, Effort::Sections);
    let detail = placed.detail.ok_or(format!("{name}: {:?}", placed.outcome))?;
    let steps = steps(&detail).map_err(|error| format!("{name}: {error:?}"))?;
    // The error falls with the cells: what is left is the last difference over (ratio − 1).
    let left = if detail.is_body() { core::f64::consts::SQRT_2 } else { 2.0 } - 1.0;
    let limit = |of: fn(&Step) -> f64| of(&steps[2]) + (of(&steps[2]) - of(&steps[1])) / left;
    let (coupling, factor) = (limit(|step| step.coupling), limit(|step| step.factor));
    for step in &steps {
        println!(
            "{name}\t{}\t{:.5}\t{:+.2}\t{:.4}\t{:+.3}",
            step.cells,
            step.coupling,
            100.0 * (step.coupling / coupling - 1.0),
            step.factor,
            50.0 * (step.factor - factor),
        );
    }
    Ok(())
}

fn main() -> ExitCode {
    println!("detail\tcells\tcoupling\tpercent_from_limit\tlowest_factor\tkelvin_from_limit");
    for (name, place) in PLACES {
        if let Err(message) = study(name, place) {
            eprintln!("{message}");
            return ExitCode::FAILURE;
        }
    }
    ExitCode::SUCCESS
}
