//! The windows through which a detail is looked at.

use super::cargo_door::GASKET_DEPTH;
use super::detail::Detail;
use super::floor_drain::DRAIN_PLATE;
use super::model::Span;
use crate::conduction::{Axis, Point};
use crate::units::Length;

/// A window on a cut plane.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct View {
    /// The axis the plane is square to.
    pub axis: Axis,
    /// Where the plane stands along it.
    pub at: Length,
    /// Along the first of the two other axes.
    pub across: Span,
    /// Along the second of the two other axes.
    pub down: Span,
    /// Whether that second axis points up in the finished room.
    pub rises: bool,
}

impl Detail {
    /// Whether the last axis that is drawn points up in the finished room.
    const fn rises(&self) -> bool {
        matches!(
            self,
            Self::FloorEdge(_)
                | Self::FloorMember(_)
                | Self::FloorRecess(_)
                | Self::Threshold(_)
                | Self::CargoSill(_)
                | Self::BottomCorner(_)
        )
    }

    /// The windows that show a detail: one for a section; for a body three cuts, which go through
    /// the coldest place of its field where that is a casting's.
    pub fn views(&self, coldest: Point) -> Vec<View> {
        let metre_deep = Length::mm(500.0);
        let section = |across: Span, down: Span| {
            let rises = self.rises();
            vec![View { axis: Axis::Z, at: metre_deep, across, down, rises }]
        };
        // Air shown on either hand of the steel and the lining, and of an edge past its faces.
        let (outdoors, room) = (Length::mm(20.0), Length::mm(44.0));
        let margin = Length::mm(150.0);
        match self {
            Self::FrameLine(slice) => {
                // Over a trough as far as both slopes and something of the crests.
                let beside = slice
                    .waves
                    .map_or(Length::mm(90.0), |waves| (waves.sheet.pitch() - slice.flange) / 2.0);
                section(
                    [slice.web_at() - beside, slice.web_at() + slice.flange + beside],
                    [slice.bottom() - outdoors, slice.build_up.face() + room],
                )
            }
            Self::Wave(wave) => section(
                [Length::ZERO, wave.waves.width()],
                [wave.waves.bottom() - outdoors, wave.build_up.face() + room],
            ),
            Self::Edge(edge) => section(
                [edge.steel.x[0] - outdoors, edge.first.face() + margin],
                [edge.steel.y[0].min(-edge.second.sheet) - outdoors, edge.second.face() + margin],
            ),
            Self::FloorEdge(edge) => section(
                [-edge.rail.thickness - outdoors, edge.wall.face() + margin],
                [-edge.rail.height - outdoors, edge.floor.face() + margin],
            ),
            Self::FloorMember(slice) => {
                let floor = &slice.floor;
                let lowest = (floor.member_bottom() - floor.wrap).min(floor.foam_bottom());
                section(
                    [Length::ZERO, floor.member.spacing],
                    [lowest - margin / 2.0, floor.face() + room],
                )
            }
            Self::OpeningFrame(frame) => section(
                [-margin * 1.1, margin * 1.2],
                [-frame.wall.sheet - outdoors, frame.face() + room],
            ),
            Self::Threshold(threshold) => section(
                [-threshold.rail.thickness - outdoors, threshold.bar_end() + margin],
                [-threshold.rail.height - outdoors, threshold.leaf_bottom() + margin],
            ),
            Self::LeafEdge(edge) => section(
                [edge.frame.x[0] - outdoors, edge.leaf.face() + margin],
                [
                    edge.frame.y[0].min(-edge.beside.sheet) - outdoors,
                    edge.beside.face().max(edge.leaf_begins()) + margin,
                ],
            ),
            Self::LeafMeeting(meeting) => section(
                [Length::ZERO, margin],
                [-GASKET_DEPTH - outdoors, meeting.leaf.face() + room],
            ),
            Self::Batten(batten) => section(
                [batten.spacing / 2.0 - margin, batten.spacing / 2.0 + margin],
                [-batten.leaf.sheet - outdoors, batten.leaf.face() + room],
            ),
            Self::CargoSill(sill) => section(
                [sill.sill.x[0] - outdoors, sill.wall.face() + margin],
                [sill.sill.y[0] - outdoors, sill.floor.face() + margin],
            ),
            Self::Corner(corner) => {
                let low = corner.casting.outside.map(|outside| -outside - outdoors);
                let face = [corner.side.face(), corner.end.face(), corner.ceiling.face()];
                let cover = corner.casting.cover.map_or(Length::ZERO, |it| it + corner.side.lining);
                let reach = corner.casting.reach;
                let high = [0, 1, 2].map(|n| face[n].max(reach[n] + cover) + margin);
                cuts(self.rises(), through_casting(coldest, [reach[0], reach[1]]), low, high)
            }
            Self::BottomCorner(corner) => {
                let [x, y] = corner.casting.outside.map(|outside| -outside - outdoors);
                let low = [x, y, corner.casting.bottom - outdoors];
                let reach = corner.casting.reach;
                let high = [
                    corner.side.face().max(reach[0]) + margin,
                    corner.end.face().max(reach[1]) + margin,
                    corner.floor.face() + margin,
                ];
                cuts(self.rises(), through_casting(coldest, reach), low, high)
            }
            Self::Bracket(bracket) => {
                let rail = bracket.edge.steel;
                let web = bracket.stud.web_at();
                let middle = [web - Length::mm(1.0), rail.x[1] + Length::mm(10.0), rail.y[1] / 2.0];
                let low = [web - margin, rail.x[0] - outdoors, rail.y[0] - outdoors];
                let high = [
                    web + margin,
                    bracket.edge.first.face() + margin,
                    bracket.edge.second.face() + margin,
                ];
                along_the_wall_first(cuts(self.rises(), middle, low, high))
            }
            Self::ThinFoam(spot) => section(
                [Length::ZERO, spot.width / 2.0 + margin],
                [-spot.wall.sheet - outdoors, spot.wall.face() + room],
            ),
            Self::FloorRecess(across) => section(
                [Length::ZERO, across.recess.width / 2.0 + margin],
                [across.lowest() - margin / 2.0, across.floor.face() + room],
            ),
            Self::JoistEnd(end) => {
                let rail = end.edge.steel;
                let web = end.joist.web_at();
                let middle = [web - Length::mm(1.0), rail.x[1] + Length::mm(10.0), rail.y[1] / 2.0];
                let low = [web - margin, rail.x[0] - outdoors, rail.y[0] - outdoors];
                let high =
                    [web + margin, end.edge.first.face() + margin, end.edge.second.face() + margin];
                along_the_wall_first(cuts(self.rises(), middle, low, high))
            }
            Self::FloorDrain(drain) => {
                let across = DRAIN_PLATE / 2.0 + margin;
                let low = [Length::ZERO, drain.bottom() - outdoors, Length::ZERO];
                let middle = [Length::mm(1.0), drain.floor.face() / 2.0, Length::mm(1.0)];
                let high = [across, drain.top() + room, across];
                cuts(self.rises(), middle, low, high)
            }
            Self::Screw(screw) => {
                let face = screw.wall.face();
                let across = Length::mm(90.0);
                let low = [Length::ZERO, -screw.wall.sheet - outdoors, Length::ZERO];
                let middle = [Length::mm(0.5), face / 2.0, Length::mm(0.5)];
                let high = [across, face + room, across];
                along_the_wall_first(cuts(self.rises(), middle, low, high))
            }
            Self::Sleeve(sleeve) => {
                let half = sleeve.diameter / 2.0;
                let face = sleeve.wall.face();
                let low = [Length::ZERO, -sleeve.wall.sheet - outdoors, Length::ZERO];
                let high = [half + margin, face + room, half + margin];
                let middle = [Length::mm(1.0), face / 2.0, Length::mm(1.0)];
                along_the_wall_first(cuts(self.rises(), middle, low, high))
            }
        }
    }
}

/// Just in front of the coldest place, so that it lies on the edge of what is cut, but never past
/// the casting's steel: that is to be seen too.
fn through_casting(coldest: Point, reach: [Length; 2]) -> [Length; 3] {
    let before = Length::mm(1.0);
    let within = Length::mm(10.0);
    [
        (coldest.x + before).min(reach[0] - within),
        (coldest.y + before).min(reach[1] - within),
        coldest.z + before,
    ]
}

/// Cuts square to each axis at a point, within a block: the upright ones first.
fn cuts(rises: bool, at: [Length; 3], low: [Length; 3], high: [Length; 3]) -> Vec<View> {
    let span = |n: usize| [low[n], high[n]];
    vec![
        View { axis: Axis::Y, at: at[1], across: span(0), down: span(2), rises },
        View { axis: Axis::X, at: at[0], across: span(1), down: span(2), rises },
        View { axis: Axis::Z, at: at[2], across: span(0), down: span(1), rises: false },
    ]
}

/// What stands in one wall shows most in the upright cut across it.
fn along_the_wall_first(mut views: Vec<View>) -> Vec<View> {
    views.rotate_left(1);
    views
}
