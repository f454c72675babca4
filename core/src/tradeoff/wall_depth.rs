//! Room against heat along the depth of the walls.

use crate::design::{CheckedDesign, Design, EndWallTreatment};
use crate::detail::{Effort, FieldCache, Outcome};
use crate::evaluate::{Evaluation, evaluate_with};
use crate::heat_loss::{Element, Loss};
use crate::units::{Length, Power, Volume};

/// Room lost against heat lost at one wall depth.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WallDepthPoint {
    /// Foam on side walls and both ends.
    pub depth: Length,
    /// Room lost.
    pub lost_volume: Volume,
    /// Heat lost at the design temperatures with the fan off, castings, stud heads and damper sleeves apart.
    pub loss: Power,
}

/// The design with one foam depth on side walls and both ends, and one treatment.
pub fn with_wall_depth(design: &Design, depth: Length, treatment: EndWallTreatment) -> Design {
    Design {
        side_wall_foam: depth,
        front_end_foam: depth,
        door_end_foam: depth,
        end_wall_treatment: treatment,
        ..design.clone()
    }
}

/// Room lost and heat lost of an evaluation, castings, stud heads and damper sleeves apart:
/// they hardly change along the depths, and take far longer to solve than all else. `None` while
/// a section is still waiting.
pub fn point_of(evaluation: &Evaluation) -> Option<WallDepthPoint> {
    let sections_wait = evaluation
        .details
        .iter()
        .any(|placed| !placed.place.takes_a_body() && placed.outcome == Outcome::Waiting);
    let counts = |loss: &&Loss| match loss.element {
        Element::Detail(place) => !place.takes_a_body(),
        _ => true,
    };
    let losses = &evaluation.heat_loss.losses;
    (!sections_wait).then(|| WallDepthPoint {
        depth: evaluation.checked.design().side_wall_foam,
        lost_volume: evaluation.room.lost_volume,
        loss: losses.iter().filter(counts).map(|loss| loss.power).sum(),
    })
}

/// [`point_of`] the design with one wall depth and one treatment; `None` where such a design would
/// not pass its check.
pub fn wall_depth_point(
    checked: &CheckedDesign,
    depth: Length,
    treatment: EndWallTreatment,
    cache: &mut FieldCache,
) -> Option<WallDepthPoint> {
    let varied = with_wall_depth(checked.design(), depth, treatment).check().ok()?;
    point_of(&evaluate_with(&varied, cache, Effort::Sections))
}
