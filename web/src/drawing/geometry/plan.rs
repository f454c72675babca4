//! The plan: length by width, cut above the floor; the corners are shown at the height of the
//! castings.
//!
//! x = 0 on the front end's inner crests, the cargo doors to the right; y = 0 on the inner crests
//! of the right side wall (looking in through the cargo doors), so that the left one lies below.

use inchwise_core::design::{Design, EndWallTreatment, Surface, Wall};
use inchwise_core::detail::FRAME_TUBE;
use inchwise_core::envelope::frame_members;
use inchwise_core::evaluate::Evaluation;
use inchwise_core::freight_box::{CORNER_FITTING_LENGTH, CORNER_FITTING_WIDTH, FreightBox};

use super::corner::{Corner, CornerPlace, CornerPlane, Fate};
use super::damper::{DrawnDamper, dampers};
use super::frame::{Lie, c_section, members_along};
use super::opening::{DrawnOpening, Opening, OpeningKind, Swing, openings_on};
use super::section::FoamFace;
use super::shape::{Point, Rect};
use super::sheet::Wave;

/// The plan of a box, mm.
#[derive(Clone, Debug, PartialEq)]
pub struct Plan {
    /// The paper.
    pub paper: Rect,
    /// The box from outside.
    pub outside: Rect,
    /// Inside the bare steel.
    pub bare: Rect,
    /// The finished room.
    pub clear: Rect,
    /// The sheets of both side walls and the front end, each a line along its inner face.
    pub sheets: Vec<Vec<Point>>,
    /// The two leaves of the cargo doors, shut.
    pub cargo_doors: [Rect; 2],
    /// The foam's outer edge: the sheet.
    pub foam_outside: Vec<Point>,
    /// The foam's inner face.
    pub foam_inside: Vec<Point>,
    /// The foam's inner face on the front end and on the door end.
    pub end_faces: [Vec<Point>; 2],
    /// Back and face of the lining.
    pub lining: [Rect; 2],
    /// Every stud's section as an open line.
    pub studs: Vec<[Point; 4]>,
    /// The castings: front end first.
    pub castings: Vec<Corner>,
    /// What became of them.
    pub fate: Fate,
    /// The dampers: intakes first.
    pub dampers: Vec<DrawnDamper>,
    /// Door and windows.
    pub openings: Vec<DrawnOpening>,
    /// The front end's foam face.
    pub front_face: FoamFace,
    /// The door end's foam face.
    pub door_face: FoamFace,
    /// The side walls' foam face.
    pub side_face: FoamFace,
    /// Where the figure stands.
    pub figure: Point,
}

/// One wall of the plan: where it lies, and the span of the finished wall along it.
struct WallRun {
    wall: Wall,
    surface: Surface,
    lie: Lie,
    from: f64,
    to: f64,
    /// How far a hole in it reaches outwards.
    outwards: f64,
}

impl Plan {
    /// The plan of an evaluated design.
    pub fn of(evaluation: &Evaluation) -> Self {
        let design = evaluation.checked.design();
        let freight_box = evaluation.checked.freight_box();
        let bare = Self::bare_of(&freight_box);
        let outside = Self::outside_of(&freight_box);

        let total = |surface| design.stack(surface).total().as_mm();
        let back = |surface| design.stack(surface).lining_back().as_mm();
        let inset = |depth: &dyn Fn(Surface) -> f64| {
            Rect::new(
                bare.left + depth(Surface::FrontEnd),
                bare.top + depth(Surface::SideWall),
                bare.right - depth(Surface::DoorEnd),
                bare.bottom - depth(Surface::SideWall),
            )
        };
        let clear = inset(&total);
        let runs = wall_runs(&bare, &clear, &outside);
        let side_wave = Wave::between(&freight_box.side_corrugation, bare.left, bare.right);
        let front_wave = Wave::between(&freight_box.front_corrugation, bare.top, bare.bottom);
        let sheets = sheets(&bare, &side_wave, &front_wave);
        let foam_inside = foam_faces(design, &bare, &side_wave, &front_wave);
        let [right_side, left_side, front_face] = &foam_inside;
        let door_face = right_side.last().into_iter().chain(left_side.first()).copied().collect();
        let front_face = front_face.clone();
        Self {
            paper: Self::paper_of(design),
            outside,
            bare,
            clear,
            foam_outside: foam_outside(&bare, &sheets),
            foam_inside: foam_inside.concat(),
            end_faces: [front_face, door_face],
            sheets,
            cargo_doors: cargo_doors(&bare, &outside),
            lining: [inset(&back), clear],
            studs: runs.iter().flat_map(|run| studs(evaluation, run)).collect(),
            castings: castings(evaluation, &bare),
            fate: Fate::of(evaluation),
            dampers: dampers(design, &clear, &outside),
            openings: runs.iter().flat_map(|run| openings(design, run)).collect(),
            front_face: FoamFace::of(&design.stack(Surface::FrontEnd)),
            door_face: FoamFace::of(&design.stack(Surface::DoorEnd)),
            side_face: FoamFace::of(&design.stack(Surface::SideWall)),
            figure: Point::new(bare.width() * 0.5, bare.height() * 0.62),
        }
    }

    /// Inside the bare steel.
    pub fn bare_of(freight_box: &FreightBox) -> Rect {
        let internal = freight_box.internal;
        Rect::new(0.0, 0.0, internal.length.as_mm(), internal.width.as_mm())
    }

    fn outside_of(freight_box: &FreightBox) -> Rect {
        let nominal = freight_box.size.nominal();
        let front = (CORNER_FITTING_LENGTH - nominal.casting.front_length).as_mm();
        let door = (CORNER_FITTING_LENGTH - nominal.casting.door_length).as_mm();
        let side = (nominal.external.width - nominal.internal.width).as_mm() / 2.0;
        Self::bare_of(freight_box).grown(front, side, door, side)
    }

    /// The paper, which depends on the box alone.
    pub fn paper_of(design: &Design) -> Rect {
        let outside = Self::outside_of(&design.freight_box());
        let margin = outside.width() * 0.068;
        outside.grown(margin, margin * 0.4, margin * 0.3, margin * 1.05)
    }
}

/// The four walls. The cargo doors stay whole behind an opening in the door end's framed wall.
fn wall_runs(bare: &Rect, clear: &Rect, outside: &Rect) -> [WallRun; 4] {
    let side = |wall, lie| WallRun {
        wall,
        surface: Surface::SideWall,
        lie,
        from: clear.left,
        to: clear.right,
        outwards: bare.top - outside.top,
    };
    let end = |wall, surface, lie, outwards| WallRun {
        wall,
        surface,
        lie,
        from: clear.top,
        to: clear.bottom,
        outwards,
    };
    [
        side(Wall::RightSide, Lie::Top),
        side(Wall::LeftSide, Lie::Bottom(bare.bottom)),
        end(Wall::FrontEnd, Surface::FrontEnd, Lie::Left, bare.left - outside.left),
        end(Wall::DoorEnd, Surface::DoorEnd, Lie::Right(bare.right), 0.0),
    ]
}

/// The right side wall, the left side wall, the front end.
fn sheets(bare: &Rect, side: &Wave, front: &Wave) -> Vec<Vec<Point>> {
    let line = |lie: Lie, wave: &Wave, from, to| {
        let outwards: Vec<(f64, f64)> =
            wave.bends(from, to).into_iter().map(|(along, behind)| (along, -behind)).collect();
        lie.line(&outwards)
    };
    vec![
        line(Lie::Top, side, bare.left, bare.right),
        line(Lie::Bottom(bare.bottom), side, bare.left, bare.right),
        line(Lie::Left, front, bare.top, bare.bottom),
    ]
}

/// Clockwise from the front end's corner with the right side wall.
fn foam_outside(bare: &Rect, sheets: &[Vec<Point>]) -> Vec<Point> {
    let [right_side, left_side, front] = sheets else { return bare.corners().to_vec() };
    let back = |line: &[Point]| line.iter().rev().copied().collect::<Vec<_>>();
    [right_side.clone(), back(left_side), back(front)].concat()
}

/// The foam faces of the right side wall, the left side wall and the front end, clockwise, each cut
/// off where it meets its neighbours.
fn foam_faces(design: &Design, bare: &Rect, side: &Wave, front: &Wave) -> [Vec<Point>; 3] {
    let foam = |surface| design.stack(surface).foam.as_mm();
    let (wall, front_foam) = (foam(Surface::SideWall), foam(Surface::FrontEnd));
    let door_foam = foam(Surface::DoorEnd);
    let (left, right) = (bare.left + front_foam, bare.right - door_foam);
    let (top, bottom) = (bare.top + wall, bare.bottom - wall);
    let measure = design.foam_measure;
    let along_side = side.foam_face(wall, measure, left, right);
    let along_front = front.foam_face(front_foam, measure, top, bottom);
    let back = |line: Vec<Point>| line.into_iter().rev().collect::<Vec<_>>();
    [
        Lie::Top.line(&along_side),
        back(Lie::Bottom(bare.bottom).line(&along_side)),
        back(Lie::Left.line(&along_front)),
    ]
}

/// Two leaves that meet in the middle, as thick as half of what the doors stand out.
fn cargo_doors(bare: &Rect, outside: &Rect) -> [Rect; 2] {
    let thickness = (outside.right - bare.right) * 0.5;
    let middle = bare.centre().y;
    let seam = 8.0;
    let (left, right) = (bare.right, bare.right + thickness);
    [
        Rect::new(left, bare.top, right, middle - seam),
        Rect::new(left, middle + seam, right, bare.bottom),
    ]
}

fn studs(evaluation: &Evaluation, run: &WallRun) -> Vec<[Point; 4]> {
    let design = evaluation.checked.design();
    let stack = design.stack(run.surface);
    // Side walls are counted together.
    let walls = if run.surface == Surface::SideWall { 2 } else { 1 };
    let count = frame_members(design, &evaluation.room.clear, run.surface) / walls;
    let (stand_off, depth) = (stack.frame_stand_off().as_mm(), stack.member.as_mm());
    let flange = design.flange_width.as_mm();
    members_along(run.to - run.from, design.stud_spacing.as_mm(), count)
        .iter()
        .map(|member| c_section(run.lie, run.from, member, stand_off, depth, flange))
        .collect()
}

fn castings(evaluation: &Evaluation, bare: &Rect) -> Vec<Corner> {
    let design = evaluation.checked.design();
    let total = |surface| design.stack(surface).total().as_mm();
    let reach = evaluation.checked.freight_box().casting;
    let corner = |reach_along: f64, end: Surface, x: f64, right: f64, y: f64, down: f64| {
        let room = &evaluation.room;
        let obstruction =
            if end == Surface::FrontEnd { room.front_corner } else { room.door_corner };
        let plane = CornerPlane {
            fitting: [CORNER_FITTING_LENGTH.as_mm(), CORNER_FITTING_WIDTH.as_mm()],
            reach: [reach_along, reach.width.as_mm()],
            finished: [total(end), total(Surface::SideWall)],
            cover: design.casting_cover.as_mm(),
            board: design.lining_thickness.as_mm(),
        };
        let place = CornerPlace { at: Point::new(x, y), right, down };
        let behind = EndWallTreatment::DropCeiling;
        plane.at(&place, design.end_wall_treatment, behind, &obstruction)
    };
    let ends = [
        (reach.front_length.as_mm(), Surface::FrontEnd, bare.left, 1.0),
        (reach.door_length.as_mm(), Surface::DoorEnd, bare.right, -1.0),
    ];
    ends.into_iter()
        .flat_map(|(along, end, x, right)| {
            [(bare.top, 1.0), (bare.bottom, -1.0)]
                .map(|(y, down)| corner(along, end, x, right, y, down))
        })
        .collect()
}

fn openings(design: &Design, run: &WallRun) -> Vec<DrawnOpening> {
    let outside = run.outwards;
    let depth = design.stack(run.surface).total().as_mm();
    let (tube, packed) = (FRAME_TUBE.as_mm(), design.opening_frame_foam.as_mm());
    let drawn = |opening: &Opening| {
        let (from, to) = (run.from + opening.from, run.from + opening.to);
        let rect = |from, to, least, most| {
            let (a, b) = (run.lie.point(from, least), run.lie.point(to, most));
            Rect::new(a.x.min(b.x), a.y.min(b.y), a.x.max(b.x), a.y.max(b.y))
        };
        let hole = rect(from, to, -outside, depth);
        let jambs = [rect(from - tube, from, 0.0, tube), rect(to, to + tube, 0.0, tube)];
        let packing = [
            rect(from - tube, from + packed, tube, tube + packed),
            rect(to - packed, to + tube, tube, tube + packed),
        ];
        let line = |depth| [run.lie.point(from, depth), run.lie.point(to, depth)];
        match opening.kind {
            OpeningKind::Window => DrawnOpening {
                kind: opening.kind,
                hole,
                jambs,
                packing,
                lines: vec![line(-outside * 0.4), line(0.0), line(depth)],
                swing: None,
            },
            // Hung on the jamb nearer the cargo doors or the left side, opening into the room.
            OpeningKind::Door => {
                let (hinge, shut) = (run.lie.point(to, depth), run.lie.point(from, depth));
                let open = run.lie.point(to, depth + (to - from));
                let turn = (shut.x - hinge.x) * (open.y - hinge.y)
                    - (shut.y - hinge.y) * (open.x - hinge.x);
                DrawnOpening {
                    kind: opening.kind,
                    hole,
                    jambs,
                    packing,
                    lines: vec![[hinge, open]],
                    swing: Some(Swing { radius: to - from, shut, open, clockwise: turn > 0.0 }),
                }
            }
        }
    };
    openings_on(design, run.wall, run.to - run.from).iter().map(drawn).collect()
}

#[cfg(test)]
mod tests {
    use super::super::samples;
    use super::*;
    use inchwise_core::design::PersonnelDoor;
    use inchwise_core::detail::FieldCache;
    use inchwise_core::evaluate::evaluate;
    use inchwise_core::units::Length;

    #[test]
    fn parts_and_room_sum_to_steel_to_steel() {
        for evaluation in samples::evaluations() {
            let plan = Plan::of(&evaluation);
            let room = &evaluation.room;
            assert!((plan.clear.width() - room.clear.length.as_mm()).abs() < 1e-6);
            assert!((plan.clear.height() - room.clear.width.as_mm()).abs() < 1e-6);
            let length: f64 = room.length_ladder.iter().map(|step| step.taken.as_mm()).sum();
            assert!((plan.bare.width() - length).abs() < 1e-6);
        }
    }

    #[test]
    fn nothing_is_drawn_outside_the_box() {
        for evaluation in samples::evaluations() {
            let plan = Plan::of(&evaluation);
            let points = plan
                .sheets
                .concat()
                .into_iter()
                .chain(plan.foam_inside.iter().copied())
                .chain(plan.studs.iter().flatten().copied())
                .chain(plan.cargo_doors.iter().flat_map(Rect::corners))
                .chain(plan.castings.iter().flat_map(|corner| corner.steel.corners()))
                .chain(
                    plan.castings
                        .iter()
                        .filter_map(|corner| corner.cover.as_ref())
                        .flat_map(|cover| cover.board.iter().copied()),
                );
            for point in points {
                assert!(plan.outside.holds(point), "{point:?} outside {:?}", plan.outside);
            }
        }
    }

    #[test]
    fn there_are_as_many_studs_as_the_envelope_counts() {
        for evaluation in samples::evaluations() {
            let design = evaluation.checked.design();
            let walls = [Surface::SideWall, Surface::FrontEnd, Surface::DoorEnd];
            let counted: u32 =
                walls.iter().map(|&wall| frame_members(design, &evaluation.room.clear, wall)).sum();
            assert_eq!(Plan::of(&evaluation).studs.len(), counted as usize);
        }
    }

    #[test]
    fn the_box_is_as_long_outside_as_its_standard() {
        let plan = Plan::of(&samples::default_evaluation());
        // ISO 668 1CC: 6058 mm long, 2438 mm wide.
        assert!((plan.outside.width() - 6058.0).abs() < 1e-9);
        assert!((plan.outside.height() - 2438.0).abs() < 1e-9);
    }

    #[test]
    fn tubes_stand_beside_the_clear_opening_and_packing_hides_them_from_the_room() {
        let design = Design { opening_frame_foam: Length::mm(25.0), ..Design::default() };
        let plan = Plan::of(&evaluate(&design.check().unwrap(), &mut FieldCache::default()));
        assert_eq!(plan.openings.len(), 2);
        for opening in &plan.openings {
            let [before, after] = opening.jambs;
            assert!((before.right - opening.hole.left).abs() < 1e-9);
            assert!((after.left - opening.hole.right).abs() < 1e-9);
            for (tube, packing) in opening.jambs.iter().zip(&opening.packing) {
                assert!((tube.width() - 50.0).abs() < 1e-9 && (tube.height() - 50.0).abs() < 1e-9);
                assert!((packing.width() - 75.0).abs() < 1e-9);
                assert!((packing.height() - 25.0).abs() < 1e-9);
            }
        }
    }

    #[test]
    fn the_door_swings_into_the_room_on_every_wall() {
        for &door in PersonnelDoor::ALL {
            let design = Design { personnel_door: door, ..Design::default() };
            let checked = design.check().unwrap();
            let plan = Plan::of(&evaluate(&checked, &mut FieldCache::default()));
            let swings: Vec<Swing> =
                plan.openings.iter().filter_map(|opening| opening.swing).collect();
            assert_eq!(swings.len(), usize::from(door != PersonnelDoor::None));
            for swing in swings {
                assert!(plan.clear.holds(swing.open), "{door:?}: {swing:?}");
                assert!(plan.clear.holds(swing.shut), "{door:?}: {swing:?}");
            }
        }
    }
}
