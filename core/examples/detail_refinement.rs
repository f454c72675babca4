//! How far each detail stands from what it would be on an endlessly fine grid: the default design,
//! `cargo run --release -p inchwise-core --example detail_refinement`.
//!
//! Prints a line of tab-separated figures per detail and grid: the product's own first, as it is solved
//! live, then the same with all cells made smaller. The value extrapolated from the last two grids takes
//! their difference to fall in proportion to the cells, which overstates what is left.

use std::process::ExitCode;

use inchwise_core::conduction::{
    Accuracy, ConductionError, Extreme, Problem, RefinementCriterion, refine_until, solve,
};
use inchwise_core::design::{CheckedDesign, Surface};
use inchwise_core::detail::{Detail, Effort, FieldCache, OUTDOORS, ROOM, Surfaces, placed_detail};
use inchwise_core::envelope::{Amount, End, Opening, ThermalBridge};
use inchwise_core::units::{Temperature, TemperatureDifference};

const PLACES: [(&str, ThermalBridge); 14] = [
    ("stud", ThermalBridge::FrameLine(Surface::SideWall)),
    ("joist", ThermalBridge::FrameLine(Surface::Ceiling)),
    ("wave, side wall", ThermalBridge::Waves(Surface::SideWall)),
    ("wave, front end", ThermalBridge::Waves(Surface::FrontEnd)),
    ("wave, roof", ThermalBridge::Waves(Surface::Ceiling)),
    ("roof edge", ThermalBridge::RoofEdge(Surface::SideWall)),
    ("corner post", ThermalBridge::CornerPost(End::Front)),
    ("foot of a wall", ThermalBridge::FloorEdge(Surface::SideWall)),
    ("floor member", ThermalBridge::FloorMember),
    ("window frame", ThermalBridge::OpeningFrame(Opening::Window)),
    ("top casting", ThermalBridge::TopCasting(End::Front)),
    ("bottom casting", ThermalBridge::BottomCasting(End::Front)),
    ("bracket", ThermalBridge::StudHead),
    ("damper sleeve", ThermalBridge::DamperSleeve),
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
    let refining = RefinementCriterion {
        environment: ROOM,
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

fn study(name: &str, place: ThermalBridge) -> Result<(), String> {
    let (checked, mut cache) = (CheckedDesign::default(), FieldCache::default());
    let placed = placed_detail(&checked, place, Amount::Pieces(1.0), &mut cache, Effort::Sections);
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
