//! A small corner seen from the room, with the plane that a picture is cut along.

use inchwise_core::conduction::Axis;
use inchwise_core::detail::{Detail, View};

use leptos::prelude::*;

use super::geometry::{Pen, Point, numbers};

/// A block, mm along the three axes.
type Block = [[f64; 2]; 3];

/// What is drawn of a body.
struct Body {
    whole: Block,
    /// What the picture is about.
    thing: Option<Block>,
    rises: bool,
}

impl Body {
    /// The block that three views of a body look into.
    fn of(detail: &Detail, views: &[View]) -> Option<Self> {
        let view = |axis: Axis| views.iter().find(|view| view.axis == axis);
        let (along_x, along_y) = (view(Axis::Y)?, view(Axis::X)?);
        let mm = |span: [inchwise_core::units::Length; 2]| span.map(|at| at.as_mm());
        let whole = [mm(along_x.across), mm(along_y.across), mm(along_x.down)];
        let thing = match detail {
            Detail::Corner(corner) => {
                let cover = corner.casting.cover.map_or(0.0, |cover| cover.as_mm());
                Some(corner.casting.reach.map(|reach| [0.0, reach.as_mm() + cover]))
            }
            Detail::BottomCorner(corner) => {
                let [x, y] = corner.casting.reach.map(|reach| [0.0, reach.as_mm()]);
                Some([x, y, [corner.casting.bottom.as_mm(), corner.casting.top.as_mm()]])
            }
            Detail::Bracket(bracket) => {
                let stud = &bracket.stud;
                let web = stud.web_at();
                let x = [web, web + stud.flange].map(|at| at.as_mm());
                let y = [stud.stand_off, stud.stand_off + stud.member].map(|at| at.as_mm());
                Some([x, y, [10.0, whole[2][1]]])
            }
            Detail::Sleeve(sleeve) => {
                let half = sleeve.diameter.as_mm() / 2.0;
                Some([[0.0, half], [0.0, sleeve.wall.face().as_mm()], [0.0, half]])
            }
            _ => None,
        };
        Some(Self { whole, thing, rises: along_x.rises })
    }

    /// Seen from the room, so that all three axes come towards the eye.
    fn place(&self, [x, y, z]: [f64; 3]) -> Point {
        const ASIDE: f64 = 0.866;
        let down = if self.rises { 1.0 } else { -1.0 };
        Point::new(ASIDE * (x - y), down * (0.5 * (x + y) - z))
    }

    fn line(&self, pen: Pen, points: &[[f64; 3]]) -> Pen {
        let points: Vec<Point> = points.iter().map(|&at| self.place(at)).collect();
        pen.line(&points)
    }

    /// The corner's three edges.
    fn edges(&self) -> Pen {
        let [x, y, z] = self.whole.map(|[_, high]| high);
        let origin = [0.0; 3];
        let pen = self.line(Pen::new(), &[origin, [x, 0.0, 0.0]]);
        let pen = self.line(pen, &[origin, [0.0, y, 0.0]]);
        self.line(pen, &[origin, [0.0, 0.0, z]])
    }

    /// The three faces of a block that look into the room.
    fn block(&self, [[x0, x], [y0, y], [z0, z]]: Block) -> Pen {
        let pen = self.line(
            Pen::new(),
            &[
                [x, y0, z0],
                [x, y, z0],
                [x0, y, z0],
                [x0, y, z],
                [x0, y0, z],
                [x, y0, z],
                [x, y0, z0],
            ],
        );
        let pen = self.line(pen, &[[x, y, z], [x, y, z0]]);
        let pen = self.line(pen, &[[x, y, z], [x0, y, z]]);
        self.line(pen, &[[x, y, z], [x, y0, z]])
    }

    /// The plane of a view.
    fn plane(&self, view: &View) -> Vec<Point> {
        let at = view.at.as_mm();
        let [[_, x], [_, y], [_, z]] = self.whole;
        let corners = match view.axis {
            Axis::X => [[at, 0.0, 0.0], [at, y, 0.0], [at, y, z], [at, 0.0, z]],
            Axis::Y => [[0.0, at, 0.0], [x, at, 0.0], [x, at, z], [0.0, at, z]],
            Axis::Z => [[0.0, 0.0, at], [x, 0.0, at], [x, y, at], [0.0, y, at]],
        };
        corners.map(|corner| self.place(corner)).to_vec()
    }

    /// The paper that holds it all.
    fn paper(&self) -> [f64; 4] {
        let [x, y, z] = self.whole.map(|[_, high]| high);
        let ends =
            [[x, 0.0, 0.0], [0.0, y, 0.0], [0.0, 0.0, z], [x, y, 0.0], [x, 0.0, z], [0.0, y, z]];
        let places = ends.map(|at| self.place(at));
        let span = |along: fn(&Point) -> f64| {
            let (low, high) = (0.0_f64, 0.0_f64);
            places.iter().map(along).fold((low, high), |(l, h), at| (l.min(at), h.max(at)))
        };
        let ((left, right), (top, bottom)) = (span(|at| at.x), span(|at| at.y));
        let margin = (right - left) * 0.04;
        let (width, height) = (right - left, bottom - top);
        [left - margin, top - margin, width + 2.0 * margin, height + 2.0 * margin]
    }
}

/// The small drawing of where one of a body's views is cut, once it is seen.
pub fn isometric(number: usize, seen: impl Fn() -> Option<(Detail, Vec<View>)>) -> AnyView {
    let Some((detail, views)) = seen() else { return ().into_any() };
    let (Some(body), Some(view)) = (Body::of(&detail, &views), views.get(number)) else {
        return ().into_any();
    };
    let thing = body.thing.map_or_else(String::new, |block| body.block(block).done());
    let plane = Pen::new().outline(&body.plane(view)).done();
    view! {
        <svg class="picture isometric" aria-hidden="true" viewBox=numbers(&body.paper())>
            <path class="corner-edge" d=body.edges().done()></path>
            <path class="thing" d=thing></path>
            <path class="cut-plane" d=plane></path>
        </svg>
    }
    .into_any()
}
