//! The cross-section: width by height, seen towards the front end.
//!
//! x = 0 on the left wall's inner crests, y = 0 on the roof's inner plane. The sheets are cut
//! along a crest, the floor between two members; the castings at the far end are shown cut.

use inchwise_core::design::{EndWallTreatment, Stack, Surface};
use inchwise_core::evaluate::Evaluation;
use inchwise_core::freight_box::{CORNER_FITTING_HEIGHT, CORNER_FITTING_WIDTH, FreightBox};

use super::corner::{Corner, CornerPlace, CornerPlane};
use super::shape::{Point, Rect};

/// A foam face that can be moved, with what it passes on its way into the room, mm over the steel.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FoamFace {
    /// Where the foam ends.
    pub foam: f64,
    /// The frame's inner face as chosen: up to here foam costs no room.
    pub frame_face: f64,
    /// Where the lining ends and the room begins.
    pub finished: f64,
}

impl FoamFace {
    /// The face of a build-up.
    pub fn of(stack: &Stack) -> Self {
        Self {
            foam: stack.foam.as_mm(),
            frame_face: (stack.stand_off + stack.member).as_mm(),
            finished: stack.total().as_mm(),
        }
    }

    /// Foam past the frame's face; below zero while foam up to it is still free.
    pub fn past_frame(&self) -> f64 {
        self.foam - self.frame_face
    }
}

/// The layers of the floor from the room down; a layer that is not there is empty.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FloorLayers {
    /// Deck over the foam board.
    pub deck: Rect,
    /// Foam board over the plywood.
    pub board: Rect,
    /// Seal or levelling coat.
    pub levelling: Rect,
    /// The box's plywood.
    pub plywood: Rect,
    /// Foam between the members.
    pub between: Rect,
    /// A member, seen from its side.
    pub member: Rect,
    /// Thickness of the member's flanges.
    pub member_steel: f64,
    /// Foam wrapped under the members.
    pub wrap: Rect,
}

/// The cross-section of a box, mm.
#[derive(Clone, Debug, PartialEq)]
pub struct Section {
    /// The paper.
    pub paper: Rect,
    /// The box from outside.
    pub outside: Rect,
    /// Inside the bare steel.
    pub bare: Rect,
    /// The finished room.
    pub clear: Rect,
    /// How far the outer flats lie behind the crests: side walls, roof.
    pub behind_crests: [f64; 2],
    /// Foam on both side walls and under the roof, one outline.
    pub foam: Vec<Point>,
    /// The lining, one outline.
    pub lining: Vec<Point>,
    /// A stud on either wall, seen from its side.
    pub studs: [Rect; 2],
    /// A ceiling joist, seen from its side.
    pub joist: Rect,
    /// The top rails, hollow.
    pub rails: [Rect; 2],
    /// Wall thickness of the rails.
    pub rail_steel: f64,
    /// The castings at the front end.
    pub castings: [Corner; 2],
    /// The castings under the floor, beyond.
    pub bottom_castings: [Rect; 2],
    /// The floor.
    pub floor: FloorLayers,
    /// The side walls' foam face.
    pub side_face: FoamFace,
    /// The ceiling's foam face.
    pub ceiling_face: FoamFace,
    /// Headroom under a casting or its cover, from top to bottom, where one stands out.
    pub headroom: Option<[Point; 2]>,
    /// Where the figure stands.
    pub figure: Point,
}

/// A U along the left wall, the ceiling and the right wall, from one depth to another.
fn arch(bare: &Rect, floor: f64, outer: [f64; 2], inner: [f64; 2]) -> Vec<Point> {
    let ([ow, oc], [iw, ic]) = (outer, inner);
    [
        (bare.left + ow, floor),
        (bare.left + ow, bare.top + oc),
        (bare.right - ow, bare.top + oc),
        (bare.right - ow, floor),
        (bare.right - iw, floor),
        (bare.right - iw, bare.top + ic),
        (bare.left + iw, bare.top + ic),
        (bare.left + iw, floor),
    ]
    .map(|(x, y)| Point::new(x, y))
    .to_vec()
}

/// How much thicker the box is outside than inside: left and right, top, bottom.
fn recesses(freight_box: &FreightBox) -> (f64, f64, f64) {
    let nominal = freight_box.size.nominal();
    let side = (nominal.external.width - nominal.internal.width).as_mm() / 2.0;
    let top = (CORNER_FITTING_HEIGHT - nominal.casting.height).as_mm();
    let bottom = (nominal.external.height - nominal.internal.height).as_mm() - top;
    (side, top, bottom)
}

fn floor_layers(evaluation: &Evaluation, bare: &Rect) -> FloorLayers {
    let design = evaluation.checked.design();
    let freight_box = evaluation.checked.freight_box();
    let stack = design.stack(Surface::Floor);
    let row = |top: f64, thickness: f64| Rect::new(bare.left, top, bare.right, top + thickness);
    let over = |surface: f64, thickness: f64| row(surface - thickness, thickness);
    let levelling = over(bare.bottom, stack.levelling.as_mm());
    let board = over(levelling.top, stack.foam.as_mm());
    let deck = over(board.top, stack.lining.as_mm());
    let plywood = row(bare.bottom, freight_box.floor_plywood.as_mm());
    let member = row(plywood.bottom, freight_box.floor_member.depth.as_mm());
    FloorLayers {
        deck,
        board,
        levelling,
        plywood,
        between: row(plywood.bottom, design.floor_foam_between.as_mm()),
        member,
        member_steel: freight_box.floor_member.thickness.as_mm(),
        wrap: row(member.bottom, design.floor_foam_under.as_mm()),
    }
}

impl Section {
    /// Paper round the box for dimensions: left, top, right, bottom.
    const MARGINS: [f64; 4] = [225.0, 70.0, 70.0, 270.0];

    /// The cross-section of an evaluated design.
    pub fn of(evaluation: &Evaluation) -> Self {
        let design = evaluation.checked.design();
        let freight_box = evaluation.checked.freight_box();
        let internal = freight_box.internal;
        let bare = Rect::new(0.0, 0.0, internal.width.as_mm(), internal.height.as_mm());
        let (beside, above, below) = recesses(&freight_box);
        let outside = bare.grown(beside, above, beside, below);
        let wall = design.stack(Surface::SideWall);
        let ceiling = design.stack(Surface::Ceiling);
        let floor = design.stack(Surface::Floor);
        let [wall_back, ceiling_back] = [wall, ceiling].map(|stack| stack.lining_back().as_mm());
        let [wall_total, ceiling_total] = [wall, ceiling].map(|stack| stack.total().as_mm());
        let floor_top = bare.bottom - floor.total().as_mm();
        let clear = Rect::new(
            bare.left + wall_total,
            bare.top + ceiling_total,
            bare.right - wall_total,
            floor_top,
        );
        let foam = [wall.foam.as_mm(), ceiling.foam.as_mm()];
        let (stud_from, stud_depth) = (wall.frame_stand_off().as_mm(), wall.member.as_mm());
        let (joist_from, joist_depth) = (ceiling.frame_stand_off().as_mm(), ceiling.member.as_mm());
        let stud = |left: f64| Rect::new(left, joist_from, left + stud_depth, bare.bottom);
        let rail = freight_box.top_rail;
        let (rail_width, rail_height) = (rail.width.as_mm(), rail.height.as_mm());
        let rail_at = |left: f64| Rect::new(left, bare.top, left + rail_width, rail_height);

        let plane = CornerPlane {
            fitting: [CORNER_FITTING_WIDTH.as_mm(), CORNER_FITTING_HEIGHT.as_mm()],
            reach: [freight_box.casting.width.as_mm(), freight_box.casting.height.as_mm()],
            finished: [wall_total, ceiling_total],
            cover: design.casting_cover.as_mm(),
            board: design.lining_thickness.as_mm(),
        };
        let obstruction = evaluation.room.front_corner;
        let casting = |x: f64, right: f64| {
            let place = CornerPlace { at: Point::new(x, bare.top), right, down: 1.0 };
            let behind = EndWallTreatment::BuildOutEndWalls;
            plane.at(&place, design.end_wall_treatment, behind, &obstruction)
        };
        let bottom_casting = |left: f64| {
            let (width, height) = (CORNER_FITTING_WIDTH.as_mm(), CORNER_FITTING_HEIGHT.as_mm());
            Rect::new(left, outside.bottom - height, left + width, outside.bottom)
        };
        let headroom = obstruction.stands_out().then(|| {
            let x = clear.left + obstruction.size.width.as_mm() / 2.0;
            let top = clear.bottom - evaluation.room.headroom_under_corners.as_mm();
            [Point::new(x, top), Point::new(x, clear.bottom)]
        });
        let [left, top, right, bottom] = Self::MARGINS;
        Self {
            paper: outside.grown(left, top, right, bottom),
            outside,
            bare,
            clear,
            behind_crests: [freight_box.side_corrugation, freight_box.roof_corrugation]
                .map(|sheet| sheet.depth.as_mm()),
            foam: arch(&bare, bare.bottom, [0.0, 0.0], foam),
            lining: arch(
                &bare,
                bare.bottom,
                [wall_back, ceiling_back],
                [wall_total, ceiling_total],
            ),
            studs: [stud(bare.left + stud_from), stud(bare.right - stud_from - stud_depth)],
            joist: Rect::new(
                bare.left + wall_back,
                joist_from,
                bare.right - wall_back,
                joist_from + joist_depth,
            ),
            rails: [rail_at(outside.left), rail_at(outside.right - rail_width)],
            rail_steel: rail.thickness.as_mm(),
            castings: [casting(bare.left, 1.0), casting(bare.right, -1.0)],
            bottom_castings: [
                bottom_casting(outside.left),
                bottom_casting(outside.right - CORNER_FITTING_WIDTH.as_mm()),
            ],
            floor: floor_layers(evaluation, &bare),
            side_face: FoamFace::of(&wall),
            ceiling_face: FoamFace::of(&ceiling),
            headroom,
            figure: Point::new(bare.left + bare.width() * 0.33, clear.bottom),
        }
    }

    /// Where the right wall's foam face lies for a foam depth, mm.
    pub fn wall_face_at(&self, foam: f64) -> f64 {
        self.bare.right - foam
    }

    /// Where the ceiling's foam face lies for a foam depth, mm.
    pub fn ceiling_face_at(&self, foam: f64) -> f64 {
        self.bare.top + foam
    }
}

#[cfg(test)]
mod tests {
    use super::super::samples;
    use super::*;

    #[test]
    fn parts_and_room_sum_to_steel_to_steel() {
        for evaluation in samples::evaluations() {
            let section = Section::of(&evaluation);
            let room = &evaluation.room;
            assert!((section.clear.width() - room.clear.width.as_mm()).abs() < 1e-6);
            assert!((section.clear.height() - room.clear.height.as_mm()).abs() < 1e-6);
            let wall: f64 = room.width_ladder.iter().map(|step| step.taken.as_mm()).sum();
            assert!((section.bare.width() - wall).abs() < 1e-6);
            let height: f64 = room.height_ladder.iter().map(|step| step.taken.as_mm()).sum();
            assert!((section.bare.height() - height).abs() < 1e-6);
            // The lining's outline ends where the room begins.
            assert!((section.lining[7].x - section.clear.left).abs() < 1e-6);
            assert!((section.lining[6].y - section.clear.top).abs() < 1e-6);
        }
    }

    #[test]
    fn nothing_is_drawn_outside_the_box() {
        for evaluation in samples::evaluations() {
            let section = Section::of(&evaluation);
            let mut points: Vec<Point> = [section.foam.clone(), section.lining.clone()].concat();
            let floor = section.floor;
            let rects = [section.joist, floor.deck, floor.board, floor.plywood, floor.member]
                .into_iter()
                .chain(section.studs)
                .chain(section.rails)
                .chain(section.bottom_castings)
                .chain(section.castings.iter().map(|corner| corner.steel));
            points.extend(rects.flat_map(|rect| rect.corners()));
            for corner in &section.castings {
                points.extend(corner.cover.iter().flat_map(|cover| cover.board.clone()));
            }
            for point in points {
                assert!(section.outside.holds(point), "{point:?} outside {:?}", section.outside);
            }
            // Foam wrapped under the members hangs below the box, never off the paper.
            assert!(floor.wrap.bottom < section.paper.bottom);
        }
    }

    #[test]
    fn the_box_is_as_high_and_wide_outside_as_its_standard() {
        let section = Section::of(&samples::default_evaluation());
        // ISO 668 1CC: 2438 mm wide, 2591 mm high.
        assert!((section.outside.width() - 2438.0).abs() < 1e-9);
        assert!((section.outside.height() - 2591.0).abs() < 1e-9);
    }

    #[test]
    fn a_moved_face_and_its_depth_are_one() {
        let section = Section::of(&samples::default_evaluation());
        assert_eq!(section.wall_face_at(50.0), 2302.0);
        assert_eq!(section.bare.right - section.wall_face_at(87.0), 87.0);
        assert!((section.foam[5].x - section.wall_face_at(section.side_face.foam)).abs() < 1e-9);
        assert!((section.foam[5].y - section.ceiling_face_at(75.0)).abs() < 1e-9);
        // Stand-off 22 and stud 41 are 63: 13 mm of foam are still free.
        assert!((section.side_face.past_frame() + 13.0).abs() < 1e-9);
    }
}
