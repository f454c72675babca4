//! Vary choices and see what follows. Calls only [`evaluate_with`].

use crate::design::{CheckedDesign, Design, EndWallTreatment};
use crate::detail::{DetailMemory, Effort};
use crate::evaluate::evaluate_with;
use crate::units::{Length, Power, Volume};

/// Room lost against heating load at one wall depth.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WallDepthPoint {
    /// Foam on side walls and both ends.
    pub depth: Length,
    /// Room lost.
    pub lost_volume: Volume,
    /// Design heating load.
    pub design_load: Power,
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

/// Room lost and heating load at one wall depth under one treatment; `None` where such a design
/// would not pass its check. Details that the effort leaves waiting are not in the load.
pub fn wall_depth_point(
    checked: &CheckedDesign,
    depth: Length,
    treatment: EndWallTreatment,
    memory: &mut DetailMemory,
    effort: Effort,
) -> Option<WallDepthPoint> {
    let varied = with_wall_depth(checked.design(), depth, treatment).check().ok()?;
    let evaluation = evaluate_with(&varied, memory, effort);
    Some(WallDepthPoint {
        depth,
        lost_volume: evaluation.room.lost_volume,
        design_load: evaluation.heat_loss.design_load,
    })
}
