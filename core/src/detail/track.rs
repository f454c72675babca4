//! The steel tracks that studs stand in: one on the floor, one over their heads.

use super::model::Span;
use crate::design::{CheckedDesign, Surface};
use crate::units::Length;

/// Height of a track's flanges, 1-1/4 in (ASTM C645, from memory).
pub const TRACK_FLANGE: Length = Length::mm(31.75);
/// How far the head of a framed wall stays below the roof. Common practice, no source.
pub const HEAD_GAP: Length = Length::mm(10.0);

/// A U of sheet steel along a framed wall, of the studs' sheet and as wide as they are deep. Like them it
/// stands off the steel of the box, so that foam fills behind it.
///
/// Sections draw it as it runs between studs. A stud in it every spacing cools it there and stiffens its
/// lip to two sheets; the joint of the two is left out, as studs are left out of edges.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Track {
    /// From the sheet to its outer flange.
    pub stand_off: Length,
    /// Width of its web.
    pub web: Length,
    /// Its sheet thickness.
    pub thickness: Length,
}

impl Track {
    /// The track of a wall of a design; none where it has no frame.
    pub fn of(checked: &CheckedDesign, wall: Surface) -> Option<Self> {
        let stack = checked.design().stack(wall);
        stack.is_framed().then(|| Self {
            stand_off: stack.frame_stand_off(),
            web: stack.member,
            thickness: checked.design().stud_steel_thickness,
        })
    }

    /// From its outer face to its inner, into the room.
    pub fn depth(&self) -> Span {
        [self.stand_off, self.stand_off + self.web]
    }

    /// Web and both flanges: the depth into the room of each, and its extent along the wall's height from
    /// the back of the web at `back`, away from floor or roof.
    pub fn parts(&self, back: Length) -> [(Span, Span); 3] {
        let [outer, inner] = self.depth();
        let thin = self.thickness;
        let flanged = [back, back + TRACK_FLANGE];
        [
            ([outer, inner], [back, back + thin]),
            ([outer, outer + thin], flanged),
            ([inner - thin, inner], flanged),
        ]
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A 41 mm track of 0.84 mm sheet held 22 mm off: web 22 to 63 mm, flanges at both ends of it, all as
    /// high as 31.75 mm from the back of the web.
    #[test]
    fn a_track_is_a_u_that_opens_into_the_wall() {
        let mm = Length::mm;
        let track = Track { stand_off: mm(22.0), web: mm(41.0), thickness: mm(0.84) };
        let parts = track.parts(mm(10.0)).map(|(depth, height)| {
            [depth, height].map(|span| span.map(|at| (at.as_mm() * 1e6).round() / 1e6))
        });
        assert_eq!(
            parts,
            [
                [[22.0, 63.0], [10.0, 10.84]],
                [[22.0, 22.84], [10.0, 41.75]],
                [[62.16, 63.0], [10.0, 41.75]],
            ]
        );
    }
}
