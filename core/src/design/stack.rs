//! What stands between the steel and the room on each surface, and so where the lining face lies.

use super::choice::{DoorEndFinish, EndWallTreatment};
use super::field::Design;
use crate::freight_box::FreightBox;
use crate::units::Length;

/// A surface of the room that is built up alike all over.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Surface {
    /// Both long walls.
    SideWall,
    /// The end opposite the cargo doors.
    FrontEnd,
    /// The framed wall behind the cargo doors, or the foam in their leaves.
    DoorEnd,
    /// Under the roof.
    Ceiling,
    /// On the plywood floor.
    Floor,
}

impl Surface {
    /// Every surface.
    pub const ALL: [Self; 5] =
        [Self::SideWall, Self::FrontEnd, Self::DoorEnd, Self::Ceiling, Self::Floor];

    /// Stable name.
    pub const fn key(self) -> &'static str {
        match self {
            Self::SideWall => "side_wall",
            Self::FrontEnd => "front_end",
            Self::DoorEnd => "door_end",
            Self::Ceiling => "ceiling",
            Self::Floor => "floor",
        }
    }
}

/// Depths that light steel studs and joists are commonly sold in: 1-5/8, 2-1/2 and 3-5/8 in as
/// rolled to whole millimetres (ASTM C645 web depths, from memory). Any other may be typed.
pub const STOCK_MEMBER_DEPTHS: [Length; 3] = [Length::mm(41.0), Length::mm(64.0), Length::mm(92.0)];

/// The build-up of one surface, measured from the innermost steel plane towards the room.
///
/// The inner face of the build-up, behind the lining, lies at the deeper of frame and foam: foam
/// up to the frame's face costs no room.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stack {
    /// Foam depth over the inner crests.
    pub foam: Length,
    /// From the steel to the outer flange of the frame, as chosen. Zero on the floor and in door leaves.
    pub stand_off: Length,
    /// Depth of the stud or joist. Zero on the floor, and in door leaves, whose battens are as deep as the foam.
    pub member: Length,
    /// How far the surface, frame and all, is brought in past frame and foam to hide castings.
    pub brought_in: Length,
    /// Board thickness over it.
    pub lining: Length,
    /// Wipeable panel over the board; zero on the floor.
    pub panel: Length,
    /// Levelling coat under everything; floor only.
    pub levelling: Length,
}

impl Stack {
    /// Whether it has a frame of steel.
    pub fn is_framed(&self) -> bool {
        self.member > Length::ZERO
    }

    /// From the steel to the frame's inner face: foam up to here costs no room.
    pub fn frame_face(&self) -> Length {
        self.stand_off + self.member
    }

    /// The deeper of frame and foam.
    fn deeper(&self) -> Length {
        self.frame_face().max(self.foam)
    }

    /// Where the lining's back lies.
    pub fn lining_back(&self) -> Length {
        self.levelling + self.deeper() + self.brought_in
    }

    /// From the steel to the outer flange of the frame as it ends up: a surface that is brought
    /// in takes its frame along, so that the lining stays on the frame.
    pub fn frame_stand_off(&self) -> Length {
        if self.brought_in > Length::ZERO {
            self.deeper() + self.brought_in - self.member
        } else {
            self.stand_off
        }
    }

    /// Still air between foam and lining.
    pub fn air_gap(&self) -> Length {
        self.deeper() + self.brought_in - self.foam
    }

    /// Foam that goes past the frame's face and so costs room.
    pub fn foam_past_frame(&self) -> Length {
        (self.foam - self.stand_off - self.member).max(Length::ZERO)
    }

    /// Everything from the steel to the room.
    pub fn total(&self) -> Length {
        self.lining_back() + self.lining + self.panel
    }
}

/// The build-up of a framed surface whose castings must be hidden behind `hidden_depth`, if any.
fn framed(
    foam: Length,
    stand_off: Length,
    member: Length,
    [lining, panel]: [Length; 2],
    hidden_depth: Option<Length>,
) -> Stack {
    let deeper = (stand_off + member).max(foam);
    let brought_in = (hidden_depth.unwrap_or(Length::ZERO) - deeper).max(Length::ZERO);
    Stack { foam, stand_off, member, brought_in, lining, panel, levelling: Length::ZERO }
}

impl Design {
    /// The box chosen, with measured dimensions where there are any.
    pub fn freight_box(&self) -> FreightBox {
        let mut freight_box = self.box_size.nominal();
        let put = |place: &mut Length, measured: Option<Length>| {
            if let Some(length) = measured {
                *place = length;
            }
        };
        put(&mut freight_box.internal.length, self.measured_length);
        put(&mut freight_box.internal.width, self.measured_width);
        put(&mut freight_box.internal.height, self.measured_height);
        put(&mut freight_box.casting.front_length, self.measured_casting_front);
        put(&mut freight_box.casting.door_length, self.measured_casting_door);
        put(&mut freight_box.casting.width, self.measured_casting_width);
        put(&mut freight_box.casting.height, self.measured_casting_height);
        freight_box
    }

    /// The build-up of a surface.
    pub fn stack(&self, surface: Surface) -> Stack {
        let casting = self.freight_box().casting;
        let built_out = self.end_wall_treatment == EndWallTreatment::BuildOutEndWalls;
        let dropped = self.end_wall_treatment == EndWallTreatment::DropCeiling;
        let boards = [self.lining_thickness, self.panel_thickness];
        let wall = |foam, hidden_depth| {
            framed(foam, self.stud_stand_off, self.stud_depth, boards, hidden_depth)
        };
        match surface {
            Surface::SideWall => wall(self.side_wall_foam, None),
            Surface::FrontEnd => wall(
                self.front_end_foam,
                built_out.then_some(casting.front_length + self.casting_cover),
            ),
            // Leaves swing, so nothing brings their lining in; the castings keep their own cover.
            Surface::DoorEnd if self.door_end_finish == DoorEndFinish::FoamedLeaves => {
                framed(self.door_end_foam, Length::ZERO, Length::ZERO, boards, None)
            }
            Surface::DoorEnd => wall(
                self.door_end_foam,
                built_out.then_some(casting.door_length + self.casting_cover),
            ),
            Surface::Ceiling => framed(
                self.ceiling_foam,
                self.joist_stand_off,
                self.joist_depth,
                boards,
                dropped.then_some(casting.height + self.casting_cover),
            ),
            Surface::Floor => Stack {
                foam: self.floor_foam_over,
                stand_off: Length::ZERO,
                member: Length::ZERO,
                brought_in: Length::ZERO,
                lining: if self.floor_foam_over > Length::ZERO {
                    self.floor_deck
                } else {
                    Length::ZERO
                },
                panel: Length::ZERO,
                levelling: self.floor_levelling,
            },
        }
    }
}
