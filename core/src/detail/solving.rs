//! From a drawn detail to its extra loss and its coldest spot, one field at a time: the same for
//! every detail.

use super::detail::Detail;
use super::model::{DetailField, OUTDOORS, ROOM, Surfaces, accuracy};
use super::picture::DampField;
use crate::conduction::{AdaptiveRefinement, ConductionError, Extreme, RefinementCriterion, solve};
use crate::units::{
    HeatTransferCoefficient, Temperature, TemperatureDifference, TemperatureFactor,
};

/// The lowest surface temperature counts as found when halving the cells there moves it by less
/// than this at one kelvin between room and outdoors: 0.1 K at 50 K.
const SETTLED_WITHIN: TemperatureDifference = TemperatureDifference::new(0.002);

/// A detail that is being solved: with damp surfaces, refined at the coldest spot, for the
/// temperature factor, then with ordinary ones for heat. A step solves one field, so that whatever
/// is more urgent waits for no longer than that.
#[derive(Clone, Debug)]
pub struct Solving {
    detail: Detail,
    run: AdaptiveRefinement,
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
        let refining = RefinementCriterion {
            environment: ROOM,
            extreme: Extreme::Coldest,
            temperatures: vec![Temperature::celsius(1.0), Temperature::celsius(0.0)],
            tolerance: SETTLED_WITHIN,
            maximum_rounds: detail.model().rounds_of_refinement(),
        };
        let problem = detail.problem(Surfaces::Damp);
        let run = AdaptiveRefinement::new(problem, field.solution, accuracy(), refining)?;
        Ok(Self { detail, run, is_refined: false, flanking: None })
    }

    /// What is being solved.
    pub const fn detail(&self) -> &Detail {
        &self.detail
    }

    /// Solves the next field; the last gives the answer.
    ///
    /// # Errors
    /// What the solver reports.
    pub fn step(&mut self) -> Result<Option<DetailField>, ConductionError> {
        if !self.is_refined {
            self.is_refined = !self.run.refine()?;
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
        let refined = self.run.current();
        let damp = &refined.solution;
        let lowest = damp.lowest_temperature_factor(ROOM)?;
        let heat = solve(&model.problem(Surfaces::Ordinary), &accuracy())?;
        let mark = |point| heat.weights_at(point)?.get(ROOM.0).copied().map(TemperatureFactor::new);
        Ok(Some(DetailField {
            coupling: heat.coupling(ROOM, OUTDOORS) * model.copies(),
            flanking: flanking * model.copies(),
            temperature_factor: lowest.factor,
            coldest_at: lowest.at,
            is_settled: refined.is_settled,
            ordinary_temperature_factor: heat.lowest_temperature_factor(ROOM)?.factor,
            marks: model.points().into_iter().map(mark).collect(),
            cells: heat.cells(),
            iterations: heat.iterations(),
            residual: heat.residual().max(damp.residual()),
        }))
    }
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
