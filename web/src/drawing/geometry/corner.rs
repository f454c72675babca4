//! A top corner casting and what is done about it, seen in one plane.

use inchwise_core::design::{EndWallTreatment, Surface};
use inchwise_core::evaluate::Evaluation;
use inchwise_core::room::CornerObstruction;

use super::shape::{Point, Rect};

/// How a casting is shown.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Showing {
    /// Cut, inside the build-up or its own cover.
    Cut,
    /// Cut, bare steel standing in the room.
    Bare,
    /// Behind a finished face: dashed.
    Behind,
}

/// Where a casting ends up.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Fate {
    /// In a foam-filled box of its own that stands in the room.
    Boxed,
    /// Behind an end wall that was brought in.
    BehindEndWall,
    /// Above a ceiling that was brought down.
    AboveCeiling,
    /// Inside the build-up as it is.
    WithinBuildUp,
    /// In the room as bare steel.
    Bare,
}

impl Fate {
    /// What becomes of the castings at the end where more of them is left standing.
    pub fn of(evaluation: &Evaluation) -> Self {
        let room = &evaluation.room;
        let corners = [room.front_corner, room.door_corner];
        let brought_in =
            |surface| evaluation.checked.design().stack(surface).brought_in.as_mm() > 0.0;
        if corners.iter().any(|corner| corner.bare_steel) {
            Self::Bare
        } else if corners.iter().any(CornerObstruction::stands_out) {
            Self::Boxed
        } else if brought_in(Surface::Ceiling) {
            Self::AboveCeiling
        } else if brought_in(Surface::FrontEnd) || brought_in(Surface::DoorEnd) {
            Self::BehindEndWall
        } else {
            Self::WithinBuildUp
        }
    }
}

/// One casting on the paper.
#[derive(Clone, Debug, PartialEq)]
pub struct Corner {
    /// The casting's steel.
    pub steel: Rect,
    /// How it is shown.
    pub showing: Showing,
    /// Foam and board round it, where its cover stands out of the finished faces.
    pub cover: Option<Cover>,
}

/// The box round a covered casting.
#[derive(Clone, Debug, PartialEq)]
pub struct Cover {
    /// From the steel planes to the back of the board.
    pub foam: Rect,
    /// The board, an L past the finished faces.
    pub board: Vec<Point>,
    /// What stands out of the finished faces.
    pub standing_out: Rect,
}

/// A casting in the plane of two directions, each measured from a steel plane into the room, mm.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CornerPlane {
    /// How long the fitting is in each direction.
    pub fitting: [f64; 2],
    /// How far it reaches past the steel planes.
    pub reach: [f64; 2],
    /// Where the finished faces lie.
    pub finished: [f64; 2],
    /// Foam between steel and board.
    pub cover: f64,
    /// Thickness of the board.
    pub board: f64,
}

/// Where a corner's two steel planes meet, and in which directions the room lies from there.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CornerPlace {
    /// The meeting point.
    pub at: Point,
    /// 1 where the room lies to the right, −1 to the left.
    pub right: f64,
    /// 1 where the room lies below on the paper, −1 above.
    pub down: f64,
}

impl CornerPlace {
    fn point(&self, across: f64, along: f64) -> Point {
        Point::new(self.at.x + self.right * across, self.at.y + self.down * along)
    }

    fn rect(&self, from: [f64; 2], to: [f64; 2]) -> Rect {
        let (a, b) = (self.point(from[0], from[1]), self.point(to[0], to[1]));
        Rect::new(a.x.min(b.x), a.y.min(b.y), a.x.max(b.x), a.y.max(b.y))
    }
}

impl CornerPlane {
    /// The casting at a place on the paper. `behind` tells for which treatment the casting lies
    /// behind a finished face in this view.
    pub fn at(
        &self,
        place: &CornerPlace,
        treatment: EndWallTreatment,
        behind: EndWallTreatment,
        obstruction: &CornerObstruction,
    ) -> Corner {
        let from = [self.reach[0] - self.fitting[0], self.reach[1] - self.fitting[1]];
        let covered = obstruction.stands_out() && !obstruction.bare_steel;
        Corner {
            steel: place.rect(from, self.reach),
            showing: if treatment == behind {
                Showing::Behind
            } else if obstruction.bare_steel {
                Showing::Bare
            } else {
                Showing::Cut
            },
            cover: covered.then(|| self.cover_at(place)),
        }
    }

    fn cover_at(&self, place: &CornerPlace) -> Cover {
        let inner = [self.reach[0] + self.cover, self.reach[1] + self.cover];
        let outer = [inner[0] + self.board, inner[1] + self.board];
        let [across, along] = self.finished;
        // A cover thinner than the lining leaves the wall's own board as its side.
        let (back_across, back_along) = (inner[0].max(across), inner[1].max(along));
        let board = [
            (outer[0], along),
            (outer[0], outer[1]),
            (across, outer[1]),
            (across, back_along),
            (back_across, back_along),
            (back_across, along),
        ];
        Cover {
            foam: place.rect([0.0, 0.0], inner),
            board: board.map(|(across, along)| place.point(across, along)).to_vec(),
            standing_out: place.rect(self.finished, outer),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use inchwise_core::design::Design;
    use inchwise_core::detail::FieldCache;
    use inchwise_core::evaluate::evaluate;
    use inchwise_core::room::corner_obstructions;
    use inchwise_core::units::Length;

    const PLANE: CornerPlane = CornerPlane {
        fitting: [162.0, 118.0],
        reach: [119.0, 90.0],
        finished: [75.0, 101.0],
        cover: 50.0,
        board: 12.0,
    };
    const TOP_RIGHT: CornerPlace =
        CornerPlace { at: Point::new(2352.0, 0.0), right: -1.0, down: 1.0 };

    #[test]
    fn what_stands_out_is_what_core_says() {
        let design = Design::default();
        let (front, _) = corner_obstructions(&design);
        let corner = PLANE.at(
            &TOP_RIGHT,
            EndWallTreatment::CoverCastings,
            EndWallTreatment::BuildOutEndWalls,
            &front,
        );
        let standing_out = corner.cover.unwrap().standing_out;
        assert!((standing_out.width() - front.size.width.as_mm()).abs() < 1e-9);
        assert!((standing_out.height() - front.size.height.as_mm()).abs() < 1e-9);
        assert_eq!(standing_out.right, 2352.0 - 75.0);
        assert_eq!(corner.steel, Rect::new(2233.0, -28.0, 2395.0, 90.0));
    }

    /// A ceiling so thin that castings stand below it.
    fn thin(treatment: EndWallTreatment) -> Design {
        Design {
            end_wall_treatment: treatment,
            joist_depth: Length::mm(41.0),
            ceiling_foam: Length::mm(50.0),
            ..Design::default()
        }
    }

    #[test]
    fn treatments_are_told_apart() {
        let shown = |treatment| {
            let (front, _) = corner_obstructions(&thin(treatment));
            PLANE.at(&TOP_RIGHT, treatment, EndWallTreatment::BuildOutEndWalls, &front)
        };
        assert_eq!(shown(EndWallTreatment::LeaveBare).showing, Showing::Bare);
        assert_eq!(shown(EndWallTreatment::LeaveBare).cover, None);
        assert_eq!(shown(EndWallTreatment::BuildOutEndWalls).showing, Showing::Behind);
        assert_eq!(shown(EndWallTreatment::DropCeiling).showing, Showing::Cut);
        assert!(shown(EndWallTreatment::CoverCastings).cover.is_some());
    }

    #[test]
    fn every_fate_has_its_design() {
        let fate = |design: Design| {
            let checked = design.check().unwrap();
            Fate::of(&evaluate(&checked, &mut FieldCache::default()))
        };
        assert_eq!(fate(thin(EndWallTreatment::CoverCastings)), Fate::Boxed);
        assert_eq!(fate(thin(EndWallTreatment::BuildOutEndWalls)), Fate::BehindEndWall);
        assert_eq!(fate(thin(EndWallTreatment::DropCeiling)), Fate::AboveCeiling);
        assert_eq!(fate(thin(EndWallTreatment::LeaveBare)), Fate::Bare);
        // Under a ceiling of 101 mm a casting that reaches 90 mm is hidden as it is.
        let bare = EndWallTreatment::LeaveBare;
        assert_eq!(
            fate(Design { end_wall_treatment: bare, ..Design::default() }),
            Fate::WithinBuildUp
        );
    }
}
