//! The sheet as it waves, with the foam that fills its troughs or follows it.

use super::build_up::BuildUp;
use super::model::Drawing;
use crate::conduction::Side;
use crate::design::{CheckedDesign, FoamMeasure, FramePosition, Surface};
use crate::envelope::{air_layer_conductivity, counted_waves};
use crate::freight_box::Corrugation;
use crate::material::STEEL;
use crate::units::Length;

/// Waves drawn behind a member, which stands over the trough in their middle.
const BEHIND_A_MEMBER: u32 = 2;

/// The face of foam that follows the sheet is drawn in pieces of about this width: half of it moves the loss
/// of a wave by 0.2 % where 10 mm of foam follow a front end, and by less than 0.05 % with 50 mm.
const FACE_PIECE: Length = Length::mm(2.5);

/// A corner of an outline: along the wall, and from the inner crests' plane towards the room.
type Corner = [Length; 2];

/// Whole waves of a sheet, cut through the middle of troughs, where no heat crosses.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Waves {
    /// The sheet.
    pub sheet: Corrugation,
    /// Whether the foam keeps its depth square to the sheet; otherwise it fills the troughs and its
    /// face is a plane.
    pub foam_follows: bool,
    /// How many are drawn.
    pub count: u32,
}

impl Waves {
    /// One wave of a surface; `None` before a sheet without waves, or where they are to count for
    /// nothing.
    pub fn of(checked: &CheckedDesign, surface: Surface) -> Option<Self> {
        let foam_follows = checked.design().foam_measure == FoamMeasure::FollowingTheSteel;
        counted_waves(checked, surface).map(|sheet| Self { sheet, foam_follows, count: 1 })
    }

    /// What lies behind the members of a surface; `None` where they are reckoned over a flat sheet:
    /// on crests, or where there are no waves that count.
    pub fn behind_members(checked: &CheckedDesign, surface: Surface) -> Option<Self> {
        match checked.design().frame_position {
            FramePosition::OnCrests => None,
            FramePosition::OverTroughs => Self::of(checked, surface).map(Self::behind_a_member),
        }
    }

    /// As many as are drawn behind a member.
    #[must_use]
    pub fn behind_a_member(self) -> Self {
        Self { count: BEHIND_A_MEMBER, ..self }
    }

    /// The width that is drawn.
    pub fn width(&self) -> Length {
        self.sheet.pitch() * f64::from(self.count)
    }

    /// The outermost steel.
    pub fn bottom(&self) -> Length {
        -(self.sheet.depth + self.sheet.thickness)
    }

    /// Draws foam, still air and steel from the outermost steel to the back of the lining. Foam is drawn
    /// from the steel's outer face, so that no seam is left between the two.
    pub(super) fn draw(&self, drawing: &mut Drawing, build_up: &BuildUp) {
        let foam_to = if self.foam_follows { build_up.lining_back } else { build_up.foam };
        drawing.fill_outline(self.outer_face_and(foam_to), build_up.foam_conductivity);
        if self.foam_follows {
            self.draw_air_over_following_foam(drawing, build_up);
        } else {
            let along = [Length::ZERO, self.width()];
            drawing.fill(along, build_up.gap_span(), build_up.gap_conductivity());
        }
        drawing.fill_outline(self.steel(), STEEL.conductivity);
    }

    /// Gives what lies behind the sheet to outdoor air.
    pub(super) fn claim_outdoors(&self, drawing: &mut Drawing) {
        let below = self.bottom() - Length::mm(1.0);
        // The outline has the slopes of the steel's face; the block takes what lies on their line.
        drawing.outdoors([Length::ZERO, self.width()], [below, Length::ZERO]);
        drawing.outdoors_outline(self.outer_face_and(below));
        drawing.expose_outdoors(Side::YMinimum);
    }

    /// Draws the still air before foam that follows the sheet, which is deeper over troughs than
    /// over crests: in one strip for each flat and slope, that behaves as a layer as deep as the strip
    /// is at its deepest. Thinner layers let more heat through, so that is on the safe side.
    fn draw_air_over_following_foam(&self, drawing: &mut Drawing, build_up: &BuildUp) {
        let bends = self.bends();
        let back = build_up.lining_back;
        for [from, to] in bends.windows(2).filter_map(|pair| Some([pair.first()?, pair.last()?])) {
            let width = to[0] - from[0];
            let pieces = (width / FACE_PIECE).ceil() as u32;
            let face: Vec<Corner> = (0..=pieces)
                .map(|n| {
                    let x = from[0] + width * (f64::from(n) / f64::from(pieces));
                    [x, face_over(&bends, build_up.foam, x).min(back)]
                })
                .collect();
            let lowest = face.iter().fold(back, |lowest, corner| lowest.min(corner[1]));
            if lowest < back {
                let air = air_layer_conductivity(back - lowest, build_up.direction);
                let outline = face.into_iter().chain([[to[0], back], [from[0], back]]).collect();
                drawing.fill_outline(outline, air);
            }
        }
    }

    /// The bends of the sheet's inner face from cut to cut.
    fn bends(&self) -> Vec<Corner> {
        let sheet = &self.sheet;
        let (trough, crest) = (-sheet.depth, Length::ZERO);
        let half = sheet.outer_flat / 2.0;
        let mut bends = vec![[Length::ZERO, trough]];
        for wave in 0..self.count {
            let start = sheet.pitch() * f64::from(wave);
            for (x, y) in [
                (half, trough),
                (half + sheet.slope, crest),
                (half + sheet.slope + sheet.inner_flat, crest),
                (sheet.pitch() - half, trough),
            ] {
                bends.push([start + x, y]);
            }
        }
        bends.push([self.width(), trough]);
        bends
    }

    /// The sheet's steel.
    fn steel(&self) -> Vec<Corner> {
        let inner = self.bends();
        let outer = inner.iter().rev().map(|&corner| self.outwards(corner));
        inner.iter().copied().chain(outer).collect()
    }

    /// From the outer face of the steel to a level on either hand of it.
    fn outer_face_and(&self, level: Length) -> Vec<Corner> {
        let face = self.bends().into_iter().map(|corner| self.outwards(corner));
        face.chain([[self.width(), level], [Length::ZERO, level]]).collect()
    }

    fn outwards(&self, [x, y]: Corner) -> Corner {
        [x, y - self.sheet.thickness]
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
    fn whole_waves_are_cut_through_their_troughs() {
        for (sheet, count) in [(SIDE_WALL, 1_u32), (FRONT_END, 2), (ROOF, 3)] {
            let waves = Waves { sheet, foam_follows: false, count };
            let bends = waves.bends();
            assert_eq!(bends.len(), 2 + 4 * count as usize);
            let [first, .., last] = bends.as_slice() else { panic!("bends") };
            assert_eq!([first[1], last[1]], [-sheet.depth; 2]);
            assert_eq!([first[0], last[0]], [Length::ZERO, waves.width()]);
            assert!(bends.windows(2).all(|pair| pair[0][0] < pair[1][0]), "{bends:?}");
        }
    }

    /// Foam along a plane is as deep as it is; along a slope it is deeper across the wall by 1 / cos;
    /// and it is nowhere nearer to the sheet than its depth.
    #[test]
    fn foam_that_follows_keeps_its_depth_square_to_the_sheet() {
        let bends = Waves { sheet: SIDE_WALL, foam_follows: true, count: 1 }.bends();
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
