//! The temperature picture of a detail: factors and materials sampled on cut planes.

use super::detail::Detail;
use super::model::{ROOM, Span, Surfaces};
use crate::conduction::{Accuracy, Axis, ConductionError, Grid, Point, Solution, solve};
use crate::material::{GYPSUM_BOARD, PLYWOOD, RIGID_PLASTIC, STEEL};
use crate::units::{Length, Temperature, ThermalConductivity};

/// What fills a sample.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Filling {
    /// The room's air.
    Room,
    /// Outdoor air.
    Outdoors,
    /// Steel of sheet, rail, casting, stud or frame.
    Steel,
    /// Sprayed foam or foam board.
    Foam,
    /// Plywood or gypsum board.
    Board,
    /// A plastic pad.
    Plastic,
    /// Still air in a gap or hollow, or what stands for a door leaf or a pane.
    Other,
}

impl Filling {
    fn of(grid: &Grid, cell: usize, foam: ThermalConductivity) -> Self {
        match grid.conductivity(cell) {
            None if grid.air(cell) == Some(ROOM) => Self::Room,
            None => Self::Outdoors,
            Some(conductivity) if conductivity == foam => Self::Foam,
            Some(conductivity) if conductivity == STEEL.conductivity => Self::Steel,
            Some(conductivity) if conductivity == RIGID_PLASTIC.conductivity => Self::Plastic,
            Some(conductivity)
                if conductivity == PLYWOOD.conductivity
                    || conductivity == GYPSUM_BOARD.conductivity =>
            {
                Self::Board
            }
            Some(_) => Self::Other,
        }
    }
}

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
}

/// Samples of a field on a view, row by row from the low end of `down`, in each row from the low
/// end of `across`.
#[derive(Clone, Debug, PartialEq)]
pub struct Picture {
    /// What is looked at.
    pub view: View,
    /// Samples in a row.
    pub columns: usize,
    /// Rows.
    pub rows: usize,
    /// Temperature factor of every sample; 0 outdoors and 1 in the room's air.
    pub factors: Vec<f32>,
    /// What fills every sample.
    pub fillings: Vec<Filling>,
}

impl Detail {
    /// The windows that show a detail: one for a section, three cuts through a body.
    pub fn views(&self) -> Vec<View> {
        let metre_deep = Length::mm(500.0);
        let section =
            |across: Span, down: Span| vec![View { axis: Axis::Z, at: metre_deep, across, down }];
        let margin = Length::mm(150.0);
        match self {
            Self::FrameLine(slice) => section(
                [slice.web_at() - margin, slice.web_at() + margin],
                [-slice.build_up.sheet, slice.build_up.face()],
            ),
            Self::Edge(edge) => section(
                [edge.steel.x[0], edge.first.face() + margin],
                [edge.steel.y[0].min(-edge.second.sheet), edge.second.face() + margin],
            ),
            Self::FloorEdge(edge) => section(
                [-edge.rail.thickness, edge.wall.face() + margin],
                [-edge.rail.height, edge.floor.face() + margin],
            ),
            Self::FloorMember(slice) => {
                let floor = &slice.floor;
                let lowest = (floor.member_bottom() - floor.wrap).min(floor.foam_bottom());
                section([Length::ZERO, floor.member.spacing], [lowest, floor.face()])
            }
            Self::OpeningFrame(frame) => {
                section([-margin, margin + margin], [-frame.wall.sheet, frame.wall.face()])
            }
            Self::Corner(corner) => {
                let low = corner.casting.outside.map(|outside| -outside);
                let face = [corner.side.face(), corner.end.face(), corner.ceiling.face()];
                let middle = corner.casting.reach.map(|reach| reach / 2.0);
                let reach = [0, 1, 2].map(|n| {
                    let cover = corner.casting.cover.unwrap_or(Length::ZERO);
                    let board = corner.side.lining;
                    face[n].max(corner.casting.reach[n] + cover + board) + margin
                });
                three_cuts(middle, low, reach)
            }
            Self::BottomCorner(corner) => {
                let [x, y] = corner.casting.outside.map(|outside| -outside);
                let low = [x, y, corner.casting.bottom];
                let [reach_x, reach_y] = corner.casting.reach;
                let middle = [
                    reach_x / 2.0,
                    reach_y / 2.0,
                    (corner.casting.bottom + corner.casting.top) / 2.0,
                ];
                let high = [
                    corner.side.face().max(reach_x) + margin,
                    corner.end.face().max(reach_y) + margin,
                    corner.floor.face() + margin,
                ];
                three_cuts(middle, low, high)
            }
            Self::Bracket(bracket) => {
                let rail = bracket.edge.steel;
                let web = bracket.stud.web_at();
                let middle = [web - Length::mm(1.0), rail.x[1] + Length::mm(10.0), rail.y[1] / 2.0];
                let low = [web - margin, rail.x[0], rail.y[0]];
                let high = [
                    web + margin,
                    bracket.edge.first.face() + margin,
                    bracket.edge.second.face() + margin,
                ];
                three_cuts(middle, low, high)
            }
            Self::Sleeve(sleeve) => {
                let half = sleeve.diameter / 2.0;
                let face = sleeve.wall.face();
                let low = [Length::ZERO, -sleeve.wall.sheet, Length::ZERO];
                let high = [half + margin, face, half + margin];
                let middle = [Length::mm(1.0), face / 2.0, Length::mm(1.0)];
                three_cuts(middle, low, high)
            }
        }
    }

    /// Pictures of all views, `columns` samples wide, of the field with the surfaces that matter
    /// for damp.
    ///
    /// # Errors
    /// What the solver reports.
    pub fn pictures(&self, columns: usize) -> Result<Vec<Picture>, ConductionError> {
        let problem = self.problem(Surfaces::Damp);
        // A picture shows tenths of a kelvin: far less than the residual of a figure will do.
        let accuracy = Accuracy { relative_residual: 1e-6, ..Accuracy::default() };
        let solution = solve(&problem, &accuracy)?;
        self.views()
            .into_iter()
            .map(|view| picture(&solution, view, columns, problem.background))
            .collect()
    }
}

/// Cuts square to each axis at a point, within a block.
fn three_cuts(at: [Length; 3], low: [Length; 3], high: [Length; 3]) -> Vec<View> {
    let span = |n: usize| [low[n], high[n]];
    vec![
        View { axis: Axis::Z, at: at[2], across: span(0), down: span(1) },
        View { axis: Axis::Y, at: at[1], across: span(0), down: span(2) },
        View { axis: Axis::X, at: at[0], across: span(1), down: span(2) },
    ]
}

fn picture(
    solution: &Solution,
    view: View,
    columns: usize,
    foam: ThermalConductivity,
) -> Result<Picture, ConductionError> {
    let field =
        solution.with_temperatures(&[Temperature::celsius(1.0), Temperature::celsius(0.0)])?;
    let width = view.across[1] - view.across[0];
    let height = view.down[1] - view.down[0];
    let rows = ((height / width) * columns as f64).round().max(1.0) as usize;
    let mut factors = Vec::with_capacity(columns * rows);
    let mut fillings = Vec::with_capacity(columns * rows);
    for row in 0..rows {
        let down = view.down[0] + height * ((row as f64 + 0.5) / rows as f64);
        for column in 0..columns {
            let across = view.across[0] + width * ((column as f64 + 0.5) / columns as f64);
            let point = match view.axis {
                Axis::X => Point::new(view.at, across, down),
                Axis::Y => Point::new(across, view.at, down),
                Axis::Z => Point::new(across, down, view.at),
            };
            let filling = solution
                .grid()
                .cell_at(point)
                .map_or(Filling::Outdoors, |cell| Filling::of(solution.grid(), cell, foam));
            let factor = match filling {
                Filling::Room => 1.0,
                Filling::Outdoors => 0.0,
                _ => field.temperature_at(point).map_or(0.0, Temperature::as_celsius),
            };
            factors.push(factor as f32);
            fillings.push(filling);
        }
    }
    Ok(Picture { view, columns, rows, factors, fillings })
}
