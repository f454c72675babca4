//! Where the cold places of the list lie on the drawings.

use inchwise_core::design::Surface;
use inchwise_core::envelope::{End, Opening, ThermalBridge};
use inchwise_core::moisture::SpotPlace;

use super::opening::OpeningKind;
use super::plan::Plan;
use super::section::Section;
use super::shape::{Point, Rect};
use crate::state::Spot;

/// A number on a drawing.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SpotMark {
    /// The number.
    pub number: usize,
    /// What it stands for.
    pub spot: SpotPlace,
    /// The place itself.
    pub place: Point,
    /// Where the number stands.
    pub at: Point,
}

/// The numbers of those places that a drawing shows. `find` gives a place, and which way its number
/// stands from it; numbers that would stand on one another step aside.
fn marks(
    spots: &[Spot],
    paper: &Rect,
    find: impl Fn(SpotPlace) -> Option<(Point, Point)>,
) -> Vec<SpotMark> {
    let apart = paper.width() / 15.0;
    let mut marks: Vec<SpotMark> = Vec::new();
    for (number, spot) in spots.iter().filter_map(|spot| Some((spot.number?, spot.place))) {
        let Some((place, way)) = find(spot) else { continue };
        let mut at = Point::new(place.x + way.x * apart, place.y + way.y * apart);
        let near =
            |at: Point| marks.iter().any(|mark| (mark.at.x - at.x).hypot(mark.at.y - at.y) < apart);
        for _ in 0..4 {
            if near(at) {
                // Aside, across the way it stands.
                at = Point::new(at.x + way.y.abs() * apart, at.y - way.x.abs() * apart);
            }
        }
        // What would stand off the paper stands at its edge.
        let edge = apart * 0.5;
        let at = Point::new(
            at.x.max(paper.left + edge).min(paper.right - edge),
            at.y.max(paper.top + edge).min(paper.bottom - edge),
        );
        marks.push(SpotMark { number, spot, place, at });
    }
    marks
}

/// Into the room, from its right side: outside there is no room for a number.
const IN: Point = Point::new(-1.3, 0.0);
const IN_UP: Point = Point::new(-1.5, -1.7);
const IN_DOWN: Point = Point::new(-1.2, 1.2);

const IN_CEILING: Point = Point::new(0.0, 1.2);
const IN_FLOOR: Point = Point::new(0.0, -1.2);

const LEFT: Point = Point::new(-1.4, 0.0);
const RIGHT: Point = Point::new(1.4, 0.0);
const UP: Point = Point::new(0.0, -1.2);
const DOWN: Point = Point::new(0.0, 1.2);

impl Section {
    /// The numbers of the cold places that the section shows.
    pub fn spot_marks(&self, spots: &[Spot]) -> Vec<SpotMark> {
        let clear = &self.clear;
        let inside = |x: f64, y: f64| Point::new(x, y);
        let right_foot = inside(clear.right, clear.bottom);
        marks(spots, &self.paper, |spot| {
            Some(match spot {
                SpotPlace::Detail(place) => match place {
                    ThermalBridge::TopCasting(_) => (inside(clear.right, clear.top), IN_DOWN),
                    ThermalBridge::BottomCasting(_) => (self.bottom_castings[1].centre(), IN_UP),
                    ThermalBridge::RoofEdge(Surface::SideWall) | ThermalBridge::StudHead => {
                        (inside(clear.right, clear.top + 30.0), IN_DOWN)
                    }
                    ThermalBridge::FloorEdge(Surface::SideWall) => (right_foot, IN_UP),
                    ThermalBridge::FloorMember | ThermalBridge::FrameLine(Surface::Floor) => {
                        (inside(clear.centre().x, clear.bottom), IN_FLOOR)
                    }
                    ThermalBridge::FrameLine(Surface::SideWall)
                    | ThermalBridge::Waves(Surface::SideWall) => {
                        (inside(clear.right, clear.centre().y + 500.0), IN)
                    }
                    ThermalBridge::FrameLine(Surface::Ceiling)
                    | ThermalBridge::Waves(Surface::Ceiling) => {
                        (inside(clear.centre().x - 300.0, clear.top), IN_CEILING)
                    }
                    _ => return None,
                },
                SpotPlace::Plain(Surface::SideWall) => {
                    (inside(clear.right, clear.centre().y + 700.0), IN)
                }
                SpotPlace::Plain(Surface::Ceiling) => {
                    (inside(clear.centre().x - 500.0, clear.top), IN_CEILING)
                }
                SpotPlace::Plain(Surface::Floor) => {
                    (inside(clear.centre().x + 300.0, clear.bottom), IN_FLOOR)
                }
                _ => return None,
            })
        })
    }
}

impl Plan {
    /// The numbers of the cold places that the plan shows.
    pub fn spot_marks(&self, spots: &[Spot]) -> Vec<SpotMark> {
        let clear = &self.clear;
        let of_opening = |kind: OpeningKind| {
            let opening = self.openings.iter().find(|opening| opening.kind == kind)?;
            let at = opening.hole.centre();
            let middle = clear.centre();
            let way = if at.x < clear.left {
                LEFT
            } else if at.x > clear.right {
                RIGHT
            } else if at.y < middle.y {
                UP
            } else {
                DOWN
            };
            Some((at, way))
        };
        let end = |end: End| match end {
            End::Front => (clear.left, LEFT),
            End::Door => (clear.right, RIGHT),
        };
        let middle = clear.centre();
        marks(spots, &self.paper, |spot| {
            Some(match spot {
                SpotPlace::Detail(place) => match place {
                    ThermalBridge::TopCasting(at)
                    | ThermalBridge::BottomCasting(at)
                    | ThermalBridge::CornerPost(at) => {
                        let (x, way) = end(at);
                        (Point::new(x, clear.top), way)
                    }
                    ThermalBridge::RoofEdge(Surface::FrontEnd)
                    | ThermalBridge::FloorEdge(Surface::FrontEnd)
                    | ThermalBridge::FrameLine(Surface::FrontEnd)
                    | ThermalBridge::Waves(Surface::FrontEnd) => {
                        (Point::new(clear.left, middle.y), LEFT)
                    }
                    ThermalBridge::RoofEdge(Surface::DoorEnd)
                    | ThermalBridge::FloorEdge(Surface::DoorEnd)
                    | ThermalBridge::FrameLine(Surface::DoorEnd) => {
                        (Point::new(clear.right, middle.y), RIGHT)
                    }
                    ThermalBridge::RoofEdge(_)
                    | ThermalBridge::FloorEdge(_)
                    | ThermalBridge::FrameLine(Surface::SideWall) => {
                        (Point::new(middle.x, clear.top), UP)
                    }
                    ThermalBridge::OpeningFrame(Opening::PersonnelDoor) => {
                        of_opening(OpeningKind::Door)?
                    }
                    ThermalBridge::OpeningFrame(Opening::Window) => {
                        of_opening(OpeningKind::Window)?
                    }
                    ThermalBridge::DamperSleeve | ThermalBridge::ExhaustSleeve => {
                        let is_exhaust = place == ThermalBridge::ExhaustSleeve;
                        let damper = self.dampers.iter().find(|it| it.is_exhaust == is_exhaust)?;
                        (damper.hole.centre(), LEFT)
                    }
                    _ => return None,
                },
                SpotPlace::PersonnelDoor => of_opening(OpeningKind::Door)?,
                SpotPlace::Windows => of_opening(OpeningKind::Window)?,
                SpotPlace::Plain(_) => return None,
            })
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::state::spots_of;
    use inchwise_core::design::CheckedDesign;
    use inchwise_core::detail::FieldCache;
    use inchwise_core::evaluate::evaluate;

    #[test]
    fn numbers_stand_apart_and_on_the_paper() {
        let evaluation = evaluate(&CheckedDesign::default(), &mut FieldCache::default());
        let spots = spots_of(&evaluation);
        let section = Section::of(&evaluation);
        let plan = Plan::of(&evaluation);
        for (marks, paper) in
            [(section.spot_marks(&spots), section.paper), (plan.spot_marks(&spots), plan.paper)]
        {
            assert!(!marks.is_empty());
            for (index, mark) in marks.iter().enumerate() {
                assert!(paper.holds(mark.at), "{mark:?} is off {paper:?}");
                let stacked = marks[..index].iter().any(|other| {
                    (other.at.x - mark.at.x).hypot(other.at.y - mark.at.y) < paper.width() / 20.0
                });
                assert!(!stacked, "{mark:?}");
            }
        }
    }
}
