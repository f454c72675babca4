//! What is cut into the walls, and the framing that it brings and takes away.

use super::surface_of;
use crate::design::{Design, Surface};
use crate::units::Length;

/// What is cut into a wall.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Opening {
    /// The personnel door.
    PersonnelDoor,
    /// A window.
    Window,
}

/// Openings of one kind in one wall, each framed by a steel tube, two king studs, two jack studs and a
/// header of two members; a window by a sill track as well.
///
/// Kings run from floor track to head track, jacks from floor track to header, one of each at either jamb.
/// Common practice of light steel framing, no source.
///
/// No metre of them counts twice. Beside the tube two members stand at each jamb (jack and king) and over
/// the head (the header), one at the sill (its track): they are drawn in the section of the opening's frame
/// and so in its ψ. Kings above and below the opening and jacks below it stand in the wall like any stud:
/// they count as frame lines of the wall. The studs that the spacing would have put where the opening is
/// are cut out over its height, and what is left of them above and below counts on as the cripples that
/// stand there: w / s of them a width w, s the spacing, in the mean over wherever the opening falls.
/// The ends of header and sill over the jacks and the height of tube and header themselves are left out.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CutOpening {
    /// What it is.
    pub opening: Opening,
    /// The wall it is in.
    pub wall: Surface,
    /// Clear width.
    pub width: Length,
    /// Clear height.
    pub height: Length,
    /// How many of them.
    pub count: f64,
}

/// The openings of a design, those that are there.
pub fn cut_openings(design: &Design) -> Vec<CutOpening> {
    let door = design.personnel_door.wall().map(|wall| CutOpening {
        opening: Opening::PersonnelDoor,
        wall: surface_of(wall),
        width: design.door_width,
        height: design.door_height,
        count: 1.0,
    });
    let windows = CutOpening {
        opening: Opening::Window,
        wall: surface_of(design.window_wall),
        width: design.window_width,
        height: design.window_height,
        count: design.window_count,
    };
    door.into_iter().chain((windows.count > 0.0).then_some(windows)).collect()
}

impl CutOpening {
    /// Metres of both jambs and the head of all of them.
    pub fn jambs_and_head(&self) -> Length {
        (self.width + self.height * 2.0) * self.count
    }

    /// Metres of sill or threshold of all of them.
    pub fn foot(&self) -> Length {
        self.width * self.count
    }

    /// Metres of frame line that they add to a wall of a height H, its studs a spacing s apart; below zero
    /// where they take away more.
    ///
    /// l = n·[2·(H − h) + 2·b − h·w / s] with h and w the opening's height and width and b the height of
    /// its foot over the floor: none of a door; a window stands in the middle of the wall's height, for want
    /// of a height of its sill, b = (H − h) / 2.
    pub fn frame_line(&self, wall_height: Length, spacing: Length) -> Length {
        let rest = wall_height - self.height;
        let kings = rest * 2.0;
        let jacks = match self.opening {
            Opening::PersonnelDoor => Length::ZERO,
            Opening::Window => rest,
        };
        let cut_out = self.height * (self.width / spacing);
        (kings + jacks - cut_out) * self.count
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Default: clear height 2393 − (25 + 64 + 12) − 3 = 2289 mm, studs 406 mm apart. Door 910 × 2030: kings go
    /// on over it for 2·259 = 518 mm, 910 / 406 studs are cut out over 2030 mm, 4550 mm: −4032 mm. Window
    /// 1000 × 1000: kings 2·1289 = 2578, jacks under it 2·(1289 / 2) = 1289, cut out 1000·1000 / 406 = 2463.05:
    /// +1403.95 mm. Frame: 910 + 2·2030 = 4970 mm of the door, 3000 mm of the window and 1000 of its sill.
    #[test]
    fn metres_of_the_default_openings_are_those_by_hand() {
        let design = Design::default();
        let height = design.clear_dimensions().height;
        let openings = cut_openings(&design);
        let figures = openings.iter().map(|opening| {
            [
                opening.frame_line(height, design.stud_spacing),
                opening.jambs_and_head(),
                opening.foot(),
            ]
            .map(|length| (length.as_mm() * 100.0).round() / 100.0)
        });
        let figures: Vec<_> = figures.collect();
        assert_eq!(figures, [[-4032.0, 4970.0, 910.0], [1403.95, 3000.0, 1000.0]]);
    }

    /// An opening as high as its wall leaves nothing of kings over it nor of the studs in its way.
    #[test]
    fn a_slit_over_the_whole_height_only_takes_away() {
        let opening = CutOpening {
            opening: Opening::Window,
            wall: Surface::FrontEnd,
            width: Length::mm(406.0),
            height: Length::mm(2289.0),
            count: 2.0,
        };
        let added = opening.frame_line(Length::mm(2289.0), Length::mm(406.0));
        assert!((added.as_mm() + 2.0 * 2289.0).abs() < 1e-9, "{added:?}");
    }
}
