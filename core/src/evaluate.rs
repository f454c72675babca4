//! The one door: a checked design in, everything known about it out, every stage kept.

use crate::caution::{Caution, cautions};
use crate::design::{CheckedDesign, EndWallTreatment};
use crate::detail::{DetailMemory, FrameLineDetail, frame_line_details};
use crate::envelope::Envelope;
use crate::heat_loss::HeatLoss;
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
    /// The solved slices across studs and joists.
    pub frame_lines: Vec<FrameLineDetail>,
    /// Heat loss and design load.
    pub heat_loss: HeatLoss,
    /// Warnings.
    pub cautions: Vec<Caution>,
}

/// Evaluates a design. Fields that `memory` holds are not solved again.
pub fn evaluate(checked: &CheckedDesign, memory: &mut DetailMemory) -> Evaluation {
    let room = Room::of(checked);
    let envelope = Envelope::of(checked, &room.clear);
    let frame_lines = frame_line_details(checked, memory);
    let heat_loss = HeatLoss::of(checked.design(), &room, &envelope, &frame_lines);
    let cautions = cautions(checked, &room);
    Evaluation {
        checked: checked.clone(),
        rooms_by_treatment: rooms_by_treatment(checked),
        room,
        envelope,
        frame_lines,
        heat_loss,
        cautions,
    }
}
