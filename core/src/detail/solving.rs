//! From a drawn detail to its extra loss and its coldest spot, one field at a time: the same for
//! every detail.

use super::detail::Detail;
use super::model::{DetailField, OUTDOORS, ROOM, Surfaces, accuracy, finish_of};
use super::picture::DampField;
use crate::conduction::{
    AdaptiveRefinement, ConductionError, Extreme, Problem, RefinementCriterion, Solution, solve,
};
use crate::envelope::SurfaceKind;
use crate::units::{
    HeatTransferCoefficient, Temperature, TemperatureDifference, TemperatureFactor,
};

/// The lowest surface temperature counts as found when halving the cells there moves it by less
/// than this at one kelvin between room and outdoors: 0.1 K at 50 K.
const SETTLED_WITHIN: TemperatureDifference = TemperatureDifference::new(0.002);

/// A detail that is being solved: with damp surfaces, refined at the coldest spot of each kind of
/// surface, for the temperature factors, then with ordinary ones for heat. A step solves one field, so
/// that whatever is more urgent waits for no longer than that.
#[derive(Clone, Debug)]
pub struct Solving {
    detail: Detail,
    run: AdaptiveRefinement,
    /// Kinds whose coldest spot is to be looked for when the run is done.
    kinds_left: Vec<SurfaceKind>,
    is_settled: bool,
    is_refined: bool,
    /// What plane layers, lines and the problem beside lose, once solved.
    flanking: Option<HeatTransferCoefficient>,
}

impl Solving {
    /// Begins with a detail's damp field, which may be that of any detail drawn alike
    /// ([`Detail::drawn`]).
    ///
    /// # Errors
    /// [`ConductionError::UnknownEnvironment`] if no surface looks into the room.
    pub fn new(detail: Detail, field: DampField) -> Result<Self, ConductionError> {
        let seen = field.solution.finishes(ROOM);
        let mut kinds_left = SurfaceKind::ALL.to_vec();
        kinds_left.retain(|&kind| seen.contains(&finish_of(kind)));
        let kind = kinds_left.pop().unwrap_or(SurfaceKind::Opaque);
        let problem = detail.problem(Surfaces::Damp);
        let run = refining_run(&detail, kind, problem, field.solution)?;
        Ok(Self { detail, run, kinds_left, is_settled: true, is_refined: false, flanking: None })
    }

    /// What is being solved.
    pub const fn detail(&self) -> &Detail {
        &self.detail
    }

    /// Halves the cells at the coldest spot once more, or turns to the next kind of surface.
    fn refine(&mut self) -> Result<(), ConductionError> {
        if self.run.refine()? {
            return Ok(());
        }
        let refined = self.run.current();
        self.is_settled &= refined.is_settled;
        match self.kinds_left.pop() {
            None => self.is_refined = true,
            Some(kind) => {
                let (problem, solution) = (refined.problem.clone(), refined.solution.clone());
                self.run = refining_run(&self.detail, kind, problem, solution)?;
            }
        }
        Ok(())
    }

    /// Solves the next field; the last gives the answer.
    ///
    /// # Errors
    /// What the solver reports.
    pub fn step(&mut self) -> Result<Option<DetailField>, ConductionError> {
        if !self.is_refined {
            self.refine()?;
            return Ok(None);
        }
        let model = self.detail.model();
        let flanking = match (self.flanking, model.flanking_problem()) {
            (Some(flanking), _) => flanking,
            (None, None) => model.flanking(),
            (None, Some(problem)) => {
                let beside = solve(&problem, &accuracy())?.coupling(ROOM, OUTDOORS);
                self.flanking = Some(model.flanking() + beside);
                return Ok(None);
            }
        };
        let damp = &self.run.current().solution;
        let lowest = damp.lowest_temperature_factor(ROOM)?;
        let lowest_of = |kind| damp.lowest_temperature_factor_of(ROOM, finish_of(kind));
        let heat = solve(&model.problem(Surfaces::Ordinary), &accuracy())?;
        let ordinary = heat.lowest_temperature_factor(ROOM)?.factor;
        let opaque = heat.lowest_temperature_factor_of(ROOM, finish_of(SurfaceKind::Opaque));
        let mark = |point| heat.weights_at(point)?.get(ROOM.0).copied().map(TemperatureFactor::new);
        Ok(Some(DetailField {
            coupling: heat.coupling(ROOM, OUTDOORS) * model.copies(),
            flanking: flanking * model.copies(),
            temperature_factor: lowest.factor,
            coldest_at: lowest.at,
            opaque: lowest_of(SurfaceKind::Opaque),
            frame_or_glazing: lowest_of(SurfaceKind::FrameOrGlazing),
            is_settled: self.is_settled,
            ordinary_temperature_factor: ordinary,
            ordinary_opaque_factor: opaque.map_or(ordinary, |spot| spot.factor),
            marks: model.points().into_iter().map(mark).collect(),
            cells: heat.cells(),
            iterations: heat.iterations(),
            residual: heat.residual().max(damp.residual()),
        }))
    }
}

/// The search for the coldest spot of one kind of surface.
fn refining_run(
    detail: &Detail,
    kind: SurfaceKind,
    problem: Problem,
    solution: Solution,
) -> Result<AdaptiveRefinement, ConductionError> {
    let refining = RefinementCriterion {
        environment: ROOM,
        finish: Some(finish_of(kind)),
        extreme: Extreme::Coldest,
        temperatures: vec![Temperature::celsius(1.0), Temperature::celsius(0.0)],
        tolerance: SETTLED_WITHIN,
        maximum_rounds: detail.model().rounds_of_refinement(),
    };
    AdaptiveRefinement::new(problem, solution, accuracy(), refining)
}

impl Detail {
    /// Solves the detail.
    ///
    /// # Errors
    /// What the solver reports.
    pub fn solve(&self) -> Result<DetailField, ConductionError> {
        let mut solving = Solving::new(*self, self.damp_field()?)?;
        loop {
            if let Some(field) = solving.step()? {
                return Ok(field);
            }
        }
    }
}
