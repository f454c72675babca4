//! The worker's side: what is wished for, solved piece by piece. A piece is never longer than one
//! field, so that a newer wish waits for no longer than that.

use inchwise_core::conduction::{ConductionError, FactorSpot};
use inchwise_core::design::CheckedDesign;
use inchwise_core::detail::{
    DampField, Detail, Outcome, Picture, Solving, detail_at, drawn_detail,
};
use inchwise_core::envelope::{Envelope, ThermalBridge};
use inchwise_core::room::Room;
use inchwise_core::units::LinearThermalTransmittance;
use inchwise_link::design_of_link;
use inchwise_protocol::{FieldNumbers, FromWorker, ToWorker, Wish, pack_pictures};

/// Lines across the wider side of a picture: between two of them an isotherm runs straight.
const COLUMNS: usize = 80;

/// A message, and the numbers beside it.
#[derive(Clone, Debug, PartialEq)]
pub struct Answer {
    /// The message.
    pub message: FromWorker,
    /// Numbers of pictures.
    pub numbers: Option<Vec<f64>>,
}

/// Solves what the page wishes for, one piece a step.
#[derive(Default)]
pub struct Solver {
    wish: Option<(u32, Detail)>,
    picture: Option<(u32, Detail)>,
    /// What is half solved.
    solving: Option<Solving>,
    /// The field of the last pictures: where the figures of its detail begin.
    seen: Option<DampField>,
    /// Wishes that name nothing that can be solved.
    refused: Option<u32>,
}

/// The design of a wish and the place in it.
fn opened(wish: &Wish) -> Option<(CheckedDesign, ThermalBridge)> {
    let checked = design_of_link(&wish.design).ok()?.check().ok()?;
    let places = Envelope::of(&checked, &Room::of(&checked).clear).thermal_bridges;
    let &(place, _) = places.get(wish.place)?;
    Some((checked, place))
}

/// The detail that is wished for: the first section that nothing is said of, else the place's own.
fn wished(wish: &Wish) -> Option<Detail> {
    let (checked, place) = opened(wish)?;
    let mut known = wish.lines.iter();
    let mut lacking = None;
    let mut line = |section: &Detail| match known.next() {
        Some(&transmittance) => Ok(LinearThermalTransmittance::new(transmittance)),
        None => {
            lacking = Some(*section);
            Err(Outcome::Waiting)
        }
    };
    detail_at(&checked, place, &mut line).ok().or(lacking)
}

impl Solver {
    /// Takes a message of the page.
    pub fn take(&mut self, message: ToWorker) {
        match message {
            ToWorker::Solve(wish) => match wished(&wish) {
                Some(detail) => self.wish = Some((wish.request, detail)),
                None => self.refused = Some(wish.request),
            },
            ToWorker::Picture(wish) => {
                let drawn =
                    opened(&wish).and_then(|(checked, place)| drawn_detail(&checked, place));
                match drawn {
                    Some(detail) => self.picture = Some((wish.request, detail)),
                    None => self.refused = Some(wish.request),
                }
            }
            ToWorker::Rest => (self.wish, self.picture) = (None, None),
        }
    }

    /// Works on for one piece and says what came of it; `None` once there is nothing to do.
    pub fn step(&mut self) -> Option<Answer> {
        let plain = |message| Some(Answer { message, numbers: None });
        if let Some(request) = self.refused.take() {
            return plain(FromWorker::Failed { request, residual: None });
        }
        if let Some((request, detail)) = self.picture.take() {
            let Ok((coldest, pictures)) = self.pictures(&detail) else {
                // The figures of the place fail for the same reason, and say so.
                return plain(FromWorker::Failed { request, residual: None });
            };
            let (heads, numbers) = pack_pictures(&pictures);
            let message =
                FromWorker::Pictured { request, coldest: (&coldest).into(), pictures: heads };
            return Some(Answer { message, numbers: Some(numbers) });
        }
        let (request, detail) = self.wish?;
        let message = match self.solve_on(detail) {
            Ok(None) => FromWorker::Busy { request },
            Ok(Some(field)) => FromWorker::Solved { request, field },
            Err(error) => FromWorker::Failed { request, residual: residual_of(&error) },
        };
        if !matches!(message, FromWorker::Busy { .. }) {
            self.wish = None;
        }
        plain(message)
    }

    /// One field more of a detail; what was half solved of another is let go.
    fn solve_on(&mut self, detail: Detail) -> Result<Option<FieldNumbers>, ConductionError> {
        let half = self.solving.take().filter(|solving| *solving.detail() == detail);
        let Some(mut solving) = half else {
            self.solving = Some(Solving::new(detail, self.damp_field(&detail)?)?);
            return Ok(None);
        };
        if let Some(field) = solving.step()? {
            return Ok(Some((&field).into()));
        }
        self.solving = Some(solving);
        Ok(None)
    }

    /// The first field of a detail: that of its pictures, if those were made last.
    fn damp_field(&mut self, detail: &Detail) -> Result<DampField, ConductionError> {
        match self.seen.take_if(|seen| *seen.detail() == detail.drawn()) {
            Some(field) => Ok(field),
            None => detail.damp_field(),
        }
    }

    fn pictures(&mut self, detail: &Detail) -> Result<(FactorSpot, Vec<Picture>), ConductionError> {
        let field = self.damp_field(detail)?;
        let made = (field.coldest()?, field.pictures(COLUMNS)?);
        self.seen = Some(field);
        Ok(made)
    }
}

const fn residual_of(error: &ConductionError) -> Option<f64> {
    match error {
        ConductionError::NotConverged { residual, .. } => Some(*residual),
        _ => None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use inchwise_core::design::Design;
    use inchwise_core::detail::{DetailField, Effort, FieldCache, placed_detail};
    use inchwise_core::units::Length;
    use inchwise_link::link_of;

    fn wish(request: u32, place: usize, lines: &[f64]) -> Wish {
        Wish { request, design: link_of(&Design::default()), place, lines: lines.to_vec() }
    }

    fn places() -> Vec<(ThermalBridge, inchwise_core::envelope::Amount)> {
        let checked = CheckedDesign::default();
        Envelope::of(&checked, &Room::of(&checked).clear).thermal_bridges
    }

    fn number_of(wanted: impl Fn(&ThermalBridge) -> bool) -> usize {
        places().iter().position(|(place, _)| wanted(place)).expect("it stands")
    }

    fn solved(solver: &mut Solver) -> FieldNumbers {
        loop {
            match solver.step().expect("there is work").message {
                FromWorker::Busy { .. } => {}
                FromWorker::Solved { field, .. } => return field,
                other => panic!("{other:?}"),
            }
        }
    }

    #[test]
    fn a_body_is_solved_section_by_section_and_is_the_engines() {
        let number = number_of(|place| matches!(place, ThermalBridge::StudHead));
        let mut memory = FieldCache::default();
        let (place, amount) = places()[number];
        let checked = CheckedDesign::default();
        let engine = placed_detail(&checked, place, amount, &mut memory, Effort::All);
        let mut solver = Solver::default();
        let mut lines = Vec::new();
        for _ in 0..2 {
            solver.take(ToWorker::Solve(wish(1, number, &lines)));
            let field: DetailField = solved(&mut solver).into();
            lines.push(field.linear_transmittance().value());
        }
        solver.take(ToWorker::Solve(wish(2, number, &lines)));
        assert_eq!(engine.field(), Some(&solved(&mut solver).into()));
        assert_eq!(solver.step(), None);
    }

    #[test]
    fn the_newest_wish_wins_and_pictures_come_between() {
        let edge = number_of(|place| matches!(place, ThermalBridge::RoofEdge(_)));
        let mut solver = Solver::default();
        solver.take(ToWorker::Solve(wish(1, edge, &[])));
        solver.step();
        solver.take(ToWorker::Solve(wish(2, edge + 1, &[])));
        solver.take(ToWorker::Picture(wish(3, edge + 1, &[])));
        let pictured = solver.step().expect("there is work");
        assert_eq!(pictured.message.request(), Some(3));
        assert!(pictured.numbers.is_some_and(|numbers| numbers.len() > 1000));
        assert_eq!(solver.step().and_then(|answer| answer.message.request()), Some(2));
        solver.take(ToWorker::Rest);
        assert_eq!(solver.step(), None);
    }

    #[test]
    fn what_cannot_be_is_refused_by_its_number() {
        let mut solver = Solver::default();
        let odd = Design { stud_depth: Length::mm(9000.0), ..Design::default() };
        solver.take(ToWorker::Solve(Wish { design: link_of(&odd), ..wish(7, 0, &[]) }));
        let refused = FromWorker::Failed { request: 7, residual: None };
        assert_eq!(solver.step().map(|answer| answer.message), Some(refused));
    }
}
