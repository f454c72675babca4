//! The ladder: what took each millimetre between steel and steel.

use crate::design::{Design, Stack, Surface};
use crate::units::Length;

/// What takes room.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Taker {
    /// The gap between steel and frame.
    StandOff,
    /// The studs or joists.
    Frame,
    /// Foam past the frame's inner face.
    FoamPastFrame,
    /// A surface brought in to hide the castings.
    BroughtIn,
    /// The lining board.
    Lining,
    /// Seal or levelling coat.
    Levelling,
    /// Foam board over the floor.
    FloorFoam,
    /// Deck over the floor's foam board.
    FloorDeck,
    /// The room itself.
    ClearRoom,
}

impl Taker {
    /// Stable name.
    pub const fn key(self) -> &'static str {
        match self {
            Self::StandOff => "stand_off",
            Self::Frame => "frame",
            Self::FoamPastFrame => "foam_past_frame",
            Self::BroughtIn => "brought_in",
            Self::Lining => "lining",
            Self::Levelling => "levelling",
            Self::FloorFoam => "floor_foam",
            Self::FloorDeck => "floor_deck",
            Self::ClearRoom => "clear_room",
        }
    }
}

/// One rung: so much of one direction was taken by this, on this surface.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LadderStep {
    /// On which surface; `None` for the room itself.
    pub surface: Option<Surface>,
    /// What took it.
    pub taker: Taker,
    /// How much.
    pub taken: Length,
}

/// The rungs of a framed surface from the steel inwards, empty ones left out.
fn framed_steps(surface: Surface, stack: &Stack) -> Vec<LadderStep> {
    let steps = [
        (Taker::StandOff, stack.stand_off),
        (Taker::Frame, stack.member),
        (Taker::FoamPastFrame, stack.foam_past_frame()),
        (Taker::BroughtIn, stack.brought_in),
        (Taker::Lining, stack.lining),
    ];
    keep_taken(surface, &steps)
}

fn floor_steps(stack: &Stack) -> Vec<LadderStep> {
    keep_taken(
        Surface::Floor,
        &[
            (Taker::Levelling, stack.levelling),
            (Taker::FloorFoam, stack.foam),
            (Taker::FloorDeck, stack.lining),
        ],
    )
}

fn keep_taken(surface: Surface, steps: &[(Taker, Length)]) -> Vec<LadderStep> {
    // Less than a tenth of a micrometre is rounding, not a rung.
    const NOTHING: f64 = 1e-7;
    steps
        .iter()
        .filter(|(_, taken)| taken.value() > NOTHING)
        .map(|&(taker, taken)| LadderStep { surface: Some(surface), taker, taken })
        .collect()
}

/// One surface's rungs, the clear room, then the other surface's rungs in reverse.
fn between(first: Vec<LadderStep>, clear: Length, mut second: Vec<LadderStep>) -> Vec<LadderStep> {
    second.reverse();
    let room = LadderStep { surface: None, taker: Taker::ClearRoom, taken: clear };
    first.into_iter().chain([room]).chain(second).collect()
}

/// From the front end to the cargo doors.
pub fn length_ladder(design: &Design) -> Vec<LadderStep> {
    let steps = |surface| framed_steps(surface, &design.stack(surface));
    between(steps(Surface::FrontEnd), design.clear_dimensions().length, steps(Surface::DoorEnd))
}

/// From one side wall to the other.
pub fn width_ladder(design: &Design) -> Vec<LadderStep> {
    let steps = framed_steps(Surface::SideWall, &design.stack(Surface::SideWall));
    between(steps.clone(), design.clear_dimensions().width, steps)
}

/// From the roof to the floor.
pub fn height_ladder(design: &Design) -> Vec<LadderStep> {
    between(
        framed_steps(Surface::Ceiling, &design.stack(Surface::Ceiling)),
        design.clear_dimensions().height,
        floor_steps(&design.stack(Surface::Floor)),
    )
}
