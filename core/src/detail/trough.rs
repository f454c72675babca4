//! The sheet as it waves under a member that stands over a trough.

use crate::design::{CheckedDesign, FoamMeasure, FramePosition, Surface};
use crate::envelope::corrugation;
use crate::freight_box::Corrugation;
use crate::units::Length;

/// Waves drawn, the member over the trough in their middle; they are cut through the middle of troughs,
/// where no heat crosses.
const WAVES: f64 = 2.0;

/// Pieces that a wave's foam face is drawn in where it follows the sheet.
const PIECES: usize = 24;

/// A corner of an outline: along the wall, and from the inner crests' plane towards the room.
type Corner = [Length; 2];

/// The corrugation behind a member that stands over a trough.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Trough {
    /// The sheet.
    pub sheet: Corrugation,
    /// Whether the foam keeps its depth square to the sheet; otherwise it fills the troughs and its
    /// face is a plane.
    pub foam_follows: bool,
}

impl Trough {
    /// What lies behind the members of a surface; `None` where they are reckoned over a flat sheet:
    /// on crests, before a sheet without waves, or where the waves are to count for nothing.
    pub fn of(checked: &CheckedDesign, surface: Surface) -> Option<Self> {
        let design = checked.design();
        let foam_follows = match design.foam_measure {
            FoamMeasure::Flat => return None,
            FoamMeasure::FollowingTheSteel => true,
            FoamMeasure::FlushOverTheRibs => false,
        };
        match design.frame_position {
            FramePosition::OnCrests => None,
            FramePosition::OverTroughs => {
                corrugation(checked, surface).map(|sheet| Self { sheet, foam_follows })
            }
        }
    }

    /// The width that is drawn.
    pub fn width(&self) -> Length {
        self.sheet.pitch() * WAVES
    }

    /// The outermost steel.
    pub fn bottom(&self) -> Length {
        -(self.sheet.depth + self.sheet.thickness)
    }

    /// The bends of the sheet's inner face from cut to cut.
    fn bends(&self) -> Vec<Corner> {
        let sheet = &self.sheet;
        let (trough, crest) = (-sheet.depth, Length::ZERO);
        let half = sheet.outer_flat / 2.0;
        let mut bends = vec![[Length::ZERO, trough]];
        let mut start = Length::ZERO;
        while start + sheet.slope < self.width() {
            for (x, y) in [
                (half, trough),
                (half + sheet.slope, crest),
                (half + sheet.slope + sheet.inner_flat, crest),
                (sheet.pitch() - half, trough),
            ] {
                bends.push([start + x, y]);
            }
            start += sheet.pitch();
        }
        bends.push([self.width(), trough]);
        bends
    }

    /// The sheet's steel.
    pub fn steel(&self) -> Vec<Corner> {
        let inner = self.bends();
        let outer = inner.iter().rev().map(|&corner| self.outwards(corner));
        inner.iter().copied().chain(outer).collect()
    }

    /// The outdoor air behind the sheet, down to a level.
    pub fn outdoors(&self, level: Length) -> Vec<Corner> {
        let face = self.bends().into_iter().map(|corner| self.outwards(corner));
        face.chain([[self.width(), level], [Length::ZERO, level]]).collect()
    }

    fn outwards(&self, [x, y]: Corner) -> Corner {
        [x, y - self.sheet.thickness]
    }

    /// The still air between foam of this depth that follows the sheet and a lining.
    pub fn air_over(&self, foam: Length, lining_back: Length) -> Vec<Corner> {
        let pieces = PIECES * WAVES as usize;
        let bends = self.bends();
        let face = (0..=pieces).map(|n| {
            let x = self.width() * (n as f64 / pieces as f64);
            [x, face_over(&bends, foam, x).min(lining_back)]
        });
        face.chain([[self.width(), lining_back], [Length::ZERO, lining_back]]).collect()
    }

    /// How deep the deepest still air is between that foam and a lining.
    pub fn deepest_air(&self, foam: Length, lining_back: Length) -> Length {
        lining_back - face_over(&self.bends(), foam, self.width() / 2.0).min(lining_back)
    }
}

/// Where the face of foam lies that keeps its depth square to a sheet: the greatest of
/// h(t) + √(d² − (x − t)²) over the sheet, h its height at t and d the depth. It is reached where
/// the sheet is square to the way there, or at a bend.
fn face_over(bends: &[Corner], depth: Length, x: Length) -> Length {
    let (d, x) = (depth.value(), x.value());
    let point = |corner: Corner| [corner[0].value(), corner[1].value()];
    let reached_from = |[t, h]: [f64; 2]| {
        let room = d * d - (x - t) * (x - t);
        (room >= 0.0).then(|| h + room.sqrt())
    };
    let at_bends = bends.iter().filter_map(|&bend| reached_from(point(bend)));
    let at_flats = bends.windows(2).filter_map(|pair| {
        let [[t0, h0], [t1, h1]] = [point(pair[0]), point(pair[1])];
        let rise = (h1 - h0) / (t1 - t0);
        let t = x + rise * d / (1.0 + rise * rise).sqrt();
        (t0..=t1).contains(&t).then(|| reached_from([t, h0 + rise * (t - t0)])).flatten()
    });
    Length::new(at_bends.chain(at_flats).fold(f64::NEG_INFINITY, f64::max))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::freight_box::{FRONT_END, ROOF, SIDE_WALL};

    #[test]
    fn two_whole_waves_are_cut_through_their_troughs() {
        for sheet in [SIDE_WALL, FRONT_END, ROOF] {
            let trough = Trough { sheet, foam_follows: false };
            let bends = trough.bends();
            assert_eq!(bends.len(), 10);
            let [first, .., last] = bends.as_slice() else { panic!("ten bends") };
            assert_eq!([first[1], last[1]], [-sheet.depth; 2]);
            assert_eq!([first[0], last[0]], [Length::ZERO, trough.width()]);
            assert!(bends.windows(2).all(|pair| pair[0][0] < pair[1][0]), "{bends:?}");
        }
    }

    /// Foam along a plane is as deep as it is; along a slope it is deeper across the wall by 1 / cos;
    /// and it is nowhere nearer to the sheet than its depth.
    #[test]
    fn foam_that_follows_keeps_its_depth_square_to_the_sheet() {
        let bends = Trough { sheet: SIDE_WALL, foam_follows: true }.bends();
        let depth = Length::mm(20.0);
        let over = |mm: f64| face_over(&bends, depth, Length::mm(mm)).as_mm();
        assert!((over(0.0) + 16.0).abs() < 1e-9, "the trough's middle: {}", over(0.0));
        assert!((over(139.0) - 20.0).abs() < 1e-9, "the crest's middle: {}", over(139.0));
        let (slope, rise) = (SIDE_WALL.slope.as_mm(), SIDE_WALL.depth.as_mm());
        let on_slope = -rise / 2.0 + 20.0 * (libm::hypot(slope, rise) / slope);
        let middle = SIDE_WALL.outer_flat.as_mm() / 2.0 + slope / 2.0;
        assert!((over(middle) - on_slope).abs() < 1e-9, "{} {on_slope}", over(middle));
    }
}
