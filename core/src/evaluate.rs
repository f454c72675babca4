//! The one door: a checked design in, everything known about it out, every stage kept.

use std::sync::OnceLock;

use crate::caution::{Caution, cautions};
use crate::damp::Damp;
use crate::design::{CheckedDesign, EndWallTreatment};
use crate::detail::{Effort, FieldCache, PlacedDetail, details};
use crate::envelope::Envelope;
use crate::heat_loss::HeatLoss;
use crate::moisture::{ColdSpots, MoistureError};
use crate::room::{Room, rooms_by_treatment};

/// All that follows from a design.
#[derive(Clone, Debug)]
pub struct Evaluation {
    /// The design it follows from.
    pub checked: CheckedDesign,
    /// The room that is left.
    pub room: Room,
    /// The room under each lawful treatment of the castings, the chosen one included.
    pub rooms_by_treatment: Vec<(EndWallTreatment, Room)>,
    /// What stands where.
    pub envelope: Envelope,
    /// The cold details, each with its field.
    pub details: Vec<PlacedDetail>,
    /// Heat loss and design load.
    pub heat_loss: HeatLoss,
    /// Every place with the humidity it stands, coldest first.
    pub cold_spots: ColdSpots,
    /// Warnings.
    pub cautions: Vec<Caution>,
    /// Damp and air, once asked for.
    damp: OnceLock<Result<Damp, MoistureError>>,
}

impl Evaluation {
    /// Damp and air: what the use gives off, what carries it out and where the rest lands. It is
    /// reckoned when it is first asked for, so that whoever shows none of it carries none of it.
    ///
    /// # Errors
    /// Names the state that a formula does not reach; a checked design has none.
    pub fn damp(&self) -> Result<&Damp, MoistureError> {
        self.damp
            .get_or_init(|| Damp::of(&self.checked, &self.room, &self.envelope, &self.cold_spots))
            .as_ref()
            .map_err(Clone::clone)
    }
}

/// Evaluates a design, every detail solved. Fields that `cache` holds are not solved again.
pub fn evaluate(checked: &CheckedDesign, cache: &mut FieldCache) -> Evaluation {
    evaluate_with(checked, cache, Effort::All)
}

/// Evaluates a design with the details that the effort allows; others wait, and are listed as not
/// counted until they are known.
pub fn evaluate_with(
    checked: &CheckedDesign,
    cache: &mut FieldCache,
    effort: Effort,
) -> Evaluation {
    let room = Room::of(checked);
    let envelope = Envelope::of(checked, &room.clear);
    let details = details(checked, &envelope, cache, effort);
    let heat_loss = HeatLoss::of(checked.design(), &room, &envelope, &details);
    let cold_spots = ColdSpots::of(checked.design(), &envelope, &details);
    let cautions = cautions(checked, &room);
    Evaluation {
        checked: checked.clone(),
        rooms_by_treatment: rooms_by_treatment(checked),
        room,
        envelope,
        details,
        heat_loss,
        cold_spots,
        cautions,
        damp: OnceLock::new(),
    }
}

#[cfg(test)]
mod tests {
    use super::evaluate_with;
    use crate::design::CheckedDesign;
    use crate::detail::{Effort, FieldCache};

    #[test]
    fn what_waits_is_taken_over_and_nothing_else_moves() {
        let checked = CheckedDesign::default();
        let with =
            |cache: &mut FieldCache, effort| evaluate_with(&checked, cache, effort).heat_loss;
        let solved = with(&mut FieldCache::default(), Effort::Sections);
        let bare = with(&mut FieldCache::without_solver(), Effort::Sections);
        assert!(bare.design_load < solved.design_load, "sections lose heat");
        let filled = bare.with_waiting_from(&solved);
        let off = (filled.design_load - solved.design_load).value().abs();
        assert!(off < 1e-9, "same design, same load: off by {off} W");
        assert_eq!(filled.losses.len(), solved.losses.len());
        let shares: f64 = filled.losses.iter().map(|loss| loss.share).sum();
        assert!((shares - 1.0).abs() < 1e-12, "shares of the whole: {shares}");
        assert_eq!(filled.not_counted, bare.not_counted, "it still says what waits");
        assert_eq!(bare.with_waiting_from(&bare), bare, "nothing earlier, nothing taken over");
    }
}
