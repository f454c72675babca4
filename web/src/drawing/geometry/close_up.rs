//! A horizontal cut through one stud of the side wall, large.
//!
//! x runs along the wall with x = 0 on the stud's outer web face, y from outdoors into the room with
//! y = 0 on the sheet's inner crests: the axes of the field that is solved across this stud, which
//! a picture of temperatures can share.

use inchwise_core::design::{Design, Field, FramePosition, Stack, Surface};
use inchwise_core::detail::FrameSlice;
use inchwise_core::evaluate::Evaluation;
use inchwise_core::units::Length;

use super::frame::Lie;
use super::section::FoamFace;
use super::shape::{Point, Rect};
use super::sheet::Wave;

/// What a thickness belongs to.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Part {
    /// Depth of the sheet's waves.
    Corrugation,
    /// From the crests to the stud.
    StandOff,
    /// The stud.
    Stud,
    /// The foam over the crests.
    Foam,
    /// Still air behind the lining.
    AirGap,
    /// The lining board.
    Lining,
}

/// A named thickness, mm over the crests.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Rung {
    /// What it is.
    pub part: Part,
    /// Where it starts.
    pub from: f64,
    /// Where it ends.
    pub to: f64,
}

impl Rung {
    /// Its middle.
    pub fn middle(&self) -> f64 {
        (self.from + self.to) / 2.0
    }

    /// How thick it is.
    pub fn thickness(&self) -> f64 {
        self.to - self.from
    }
}

/// Which of the two decides where the lining lies.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum SetBy {
    /// The frame stands deeper than the foam.
    Frame,
    /// The foam goes past the frame.
    Foam,
}

/// The close-up of one stud, mm.
#[derive(Clone, Debug, PartialEq)]
pub struct CloseUp {
    /// The paper.
    pub paper: Rect,
    /// The part of the wall that is drawn.
    pub window: Rect,
    /// The sheet: its inner face, then back along its outer face.
    pub sheet: Vec<Point>,
    /// The foam, sheet to face.
    pub foam: Vec<Point>,
    /// The foam's inner face.
    pub foam_face: Vec<Point>,
    /// The stud's steel.
    pub stud: [Rect; 3],
    /// The lining.
    pub lining: Rect,
    /// Sheet, stand-off and stud, from outdoors inwards.
    pub frame_chain: Vec<Rung>,
    /// Foam, air gap and lining.
    pub foam_chain: Vec<Rung>,
    /// The foam's face.
    pub face: FoamFace,
    /// What decides where the lining lies.
    pub set_by: SetBy,
    /// Where the lining's back lies.
    pub lining_back: f64,
}

impl CloseUp {
    /// Wall drawn before the web and past it: a crest or a trough, and both its slopes.
    const ALONG: [f64; 2] = [-102.0, 134.0];
    /// Outdoors drawn behind the sheet.
    const OUTDOORS: f64 = 66.0;
    /// Room drawn past the deepest lining.
    const ROOM: f64 = 62.0;
    /// Paper for names on either side.
    const NAMES: f64 = 176.0;

    /// The close-up of an evaluated design's side wall.
    pub fn of(evaluation: &Evaluation) -> Self {
        let checked = &evaluation.checked;
        let design = checked.design();
        let stack = design.stack(Surface::SideWall);
        let slice = FrameSlice::of(checked, Surface::SideWall);
        let window = Self::window_of(&stack);
        let (left, right) = (window.left, window.right);
        let sheet = checked.freight_box().side_corrugation;
        let crest = match design.frame_position {
            FramePosition::OnCrests => slice.flange,
            FramePosition::OverTroughs => slice.flange + sheet.pitch(),
        };
        let wave = Wave::about_crest(&sheet, crest.as_mm() / 2.0, 2);
        let inner: Vec<Point> =
            wave.bends(left, right).iter().map(|&(x, behind)| Point::new(x, -behind)).collect();
        let outer = inner.iter().rev().map(|point| Point::new(point.x, point.y - wave.thickness));
        let face = wave.foam_face(stack.foam.as_mm(), design.foam_measure, left, right);
        let foam_face = Lie::Top.line(&face);
        let foam = inner.iter().chain(foam_face.iter().rev()).copied().collect();
        let lining_back = stack.lining_back().as_mm();
        Self {
            paper: Self::paper_of(design),
            window,
            sheet: inner.iter().copied().chain(outer).collect(),
            foam,
            foam_face,
            stud: stud(&slice),
            lining: Rect::new(left, lining_back, right, lining_back + stack.lining.as_mm()),
            frame_chain: frame_chain(&stack, wave.depth),
            foam_chain: foam_chain(&stack),
            face: FoamFace::of(&stack),
            set_by: if stack.foam > stack.stand_off + stack.member {
                SetBy::Foam
            } else {
                SetBy::Frame
            },
            lining_back,
        }
    }

    /// The part of the wall that is drawn: past the deepest foam allowed, or the frame. It does not
    /// follow the foam chosen, so that the paper keeps its shape while the foam is moved.
    pub fn window_of(stack: &Stack) -> Rect {
        let frame = stack.stand_off + stack.member;
        let deepest_foam = Length::new(Field::SideWallFoam.range().maximum);
        let depth = (frame.max(deepest_foam) + stack.lining).as_mm();
        let [left, right] = Self::ALONG;
        Rect::new(left, -Self::OUTDOORS, right, depth + Self::ROOM)
    }

    /// The paper, which does not follow the foam either.
    pub fn paper_of(design: &Design) -> Rect {
        let window = Self::window_of(&design.stack(Surface::SideWall));
        window.grown(Self::NAMES, 4.0, Self::NAMES, 4.0)
    }
}

/// Web and both flanges.
fn stud(slice: &FrameSlice) -> [Rect; 3] {
    let thin = slice.steel_thickness.as_mm();
    let flange = slice.flange.as_mm();
    let outer = slice.stand_off.as_mm();
    let inner = outer + slice.member.as_mm();
    [
        Rect::new(0.0, outer, thin, inner),
        Rect::new(0.0, outer, flange, outer + thin),
        Rect::new(0.0, inner - thin, flange, inner),
    ]
}

/// Rungs one after the other from a depth on, those of no thickness left out.
fn chain(from: f64, parts: &[(Part, f64)]) -> Vec<Rung> {
    let mut at = from;
    parts
        .iter()
        .map(|&(part, thickness)| {
            let rung = Rung { part, from: at, to: at + thickness };
            at = rung.to;
            rung
        })
        .filter(|rung| rung.thickness() > 1e-6)
        .collect()
}

fn frame_chain(stack: &Stack, corrugation: f64) -> Vec<Rung> {
    chain(
        -corrugation,
        &[
            (Part::Corrugation, corrugation),
            (Part::StandOff, stack.frame_stand_off().as_mm()),
            (Part::Stud, stack.member.as_mm()),
        ],
    )
}

fn foam_chain(stack: &Stack) -> Vec<Rung> {
    chain(
        0.0,
        &[
            (Part::Foam, stack.foam.as_mm()),
            (Part::AirGap, stack.air_gap().as_mm()),
            (Part::Lining, stack.lining.as_mm()),
        ],
    )
}

#[cfg(test)]
mod tests {
    use super::super::samples;
    use super::*;
    use inchwise_core::detail::FieldCache;
    use inchwise_core::evaluate::evaluate;

    #[test]
    fn the_foam_s_chain_ends_where_the_room_begins() {
        for evaluation in samples::evaluations() {
            let close_up = CloseUp::of(&evaluation);
            let total = evaluation.checked.design().stack(Surface::SideWall).total().as_mm();
            let sum: f64 = close_up.foam_chain.iter().map(Rung::thickness).sum();
            assert!((sum - total).abs() < 1e-9);
            assert!((close_up.lining.bottom - total).abs() < 1e-9);
            assert!(close_up.lining.bottom < close_up.window.bottom);
        }
    }

    #[test]
    fn what_sets_the_lining_is_named() {
        let with_foam = |mm: f64| {
            let design = Design { side_wall_foam: Length::mm(mm), ..Design::default() };
            let checked = design.check().unwrap();
            CloseUp::of(&evaluate(&checked, &mut FieldCache::default()))
        };
        let shallow = with_foam(50.0);
        assert_eq!((shallow.set_by, shallow.lining_back), (SetBy::Frame, 63.0));
        assert_eq!(shallow.foam_chain.len(), 3);
        // Stand-off 22 and stud 41: foam up to 63 mm costs no room.
        let flush = with_foam(63.0);
        assert_eq!(flush.set_by, SetBy::Frame);
        assert!((flush.lining_back - 63.0).abs() < 1e-9);
        let deep = with_foam(75.0);
        assert_eq!((deep.set_by, deep.lining_back), (SetBy::Foam, 75.0));
        assert_eq!(deep.paper, shallow.paper, "the paper keeps its shape");
    }

    #[test]
    fn the_stud_stands_where_its_field_is_solved() {
        let evaluation = samples::default_evaluation();
        let close_up = CloseUp::of(&evaluation);
        let slice = FrameSlice::of(&evaluation.checked, Surface::SideWall);
        assert!((close_up.stud[0].top - slice.stand_off.as_mm()).abs() < 1e-9);
        let inner = (slice.stand_off + slice.member).as_mm();
        assert!((close_up.stud[2].bottom - inner).abs() < 1e-9);
    }
}
