//! The temperature picture of a detail: factors and materials on cut planes.
//!
//! A picture stands on the lines of the grid the field was solved on, so that a flange of a
//! millimetre is as thick in it as in the field, and a surface lies where it is.

use super::detail::Detail;
use super::model::{ROOM, Surfaces, accuracy_to_look_at};
use super::view::View;
use crate::conduction::{
    Axis, ConductionError, FactorSpot, Grid, Point, Problem, Section, Side, Solution, solve,
};
use crate::material::{GYPSUM_BOARD, PLYWOOD, RIGID_PLASTIC, STEEL};
use crate::units::{Length, Temperature, TemperatureFactor, ThermalConductivity};

/// What fills a cell of a picture.
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
    /// All of them.
    pub const ALL: &[Self] = &[
        Self::Room,
        Self::Outdoors,
        Self::Steel,
        Self::Foam,
        Self::Board,
        Self::Plastic,
        Self::Other,
    ];

    /// Whether heat is conducted here; a picture has no temperature in the air.
    pub const fn is_solid(self) -> bool {
        !matches!(self, Self::Room | Self::Outdoors)
    }

    /// What a conductivity in a section or body over this foam is that of.
    fn of(conductivity: ThermalConductivity, foam: ThermalConductivity) -> Self {
        if conductivity == foam {
            Self::Foam
        } else if conductivity == STEEL.conductivity {
            Self::Steel
        } else if conductivity == RIGID_PLASTIC.conductivity {
            Self::Plastic
        } else if [PLYWOOD, GYPSUM_BOARD].map(|board| board.conductivity).contains(&conductivity) {
            Self::Board
        } else {
            Self::Other
        }
    }
}

/// A field on a view, between lines that need not be evenly spaced.
#[derive(Clone, Debug, PartialEq)]
pub struct Picture {
    /// What is looked at.
    pub view: View,
    /// Lines along `view.across`, rising, from its one end to its other.
    pub across: Vec<Length>,
    /// Lines along `view.down`, rising.
    pub down: Vec<Length>,
    /// Temperature factor where lines cross, row by row of `down`: 0 as cold as outdoors, 1 as warm
    /// as the room; that of the surface where a material ends. `None` in air.
    pub factors: Vec<Option<f32>>,
    /// What fills the cells between the lines, row by row: one fewer each way than there are lines.
    pub fillings: Vec<Filling>,
}

/// The field of a detail with the surfaces that matter for damp, on the grid it is drawn on.
#[derive(Clone, Debug)]
pub struct DampField {
    detail: Detail,
    problem: Problem,
    pub(super) solution: Solution,
}

impl Detail {
    /// Solves the field that pictures show and that a temperature factor is first looked for in.
    ///
    /// # Errors
    /// What the solver reports.
    pub fn damp_field(&self) -> Result<DampField, ConductionError> {
        let problem = self.problem(Surfaces::Damp);
        let solution = solve(&problem, &accuracy_to_look_at())?;
        Ok(DampField { detail: *self, problem, solution })
    }

    /// Pictures of all views; see [`DampField::pictures`].
    ///
    /// # Errors
    /// What the solver reports.
    pub fn pictures(&self, columns: usize) -> Result<Vec<Picture>, ConductionError> {
        self.damp_field()?.pictures(columns)
    }
}

impl DampField {
    /// The detail it is the field of.
    pub const fn detail(&self) -> &Detail {
        &self.detail
    }

    /// The coldest place of the room's surface on this grid, which is not yet refined there.
    ///
    /// # Errors
    /// [`ConductionError::UnknownEnvironment`] if no surface looks into the room.
    pub fn coldest(&self) -> Result<FactorSpot, ConductionError> {
        self.solution.lowest_temperature_factor(ROOM)
    }

    /// Pictures of all views. Lines are those of the grid, and enough between them that the wider
    /// side of a view has at least so many.
    ///
    /// # Errors
    /// What the solver reports.
    pub fn pictures(&self, columns: usize) -> Result<Vec<Picture>, ConductionError> {
        let views = self.detail.views(self.coldest()?.at);
        views.into_iter().map(|view| self.picture(view, columns)).collect()
    }

    fn picture(&self, view: View, columns: usize) -> Result<Picture, ConductionError> {
        let solution = &self.solution;
        let grid = solution.grid();
        let [p, q] = view.axis.others();
        let width = view.across[1] - view.across[0];
        let height = view.down[1] - view.down[0];
        let widest = width.max(height) / columns.max(1) as f64;
        let across = lines_between(grid, p, view.across, widest);
        let down = lines_between(grid, q, view.down, widest);
        let field =
            solution.with_temperatures(&[Temperature::celsius(1.0), Temperature::celsius(0.0)])?;
        let section = Section { axis: view.axis, at: view.at };
        let factors = field
            .sample_crossings(section, &across, &down)
            .into_iter()
            .map(|value| value.map(|value| value.as_celsius() as f32))
            .collect();
        let mut fillings = Vec::with_capacity((across.len() - 1) * (down.len() - 1));
        for rows in down.windows(2) {
            for columns in across.windows(2) {
                let [x, y] = [columns, rows].map(|pair| (pair[0] + pair[1]) / 2.0);
                let point = view.point(x, y);
                fillings.push(
                    grid.cell_at(point)
                        .map_or_else(|| self.beyond(point), |cell| self.within(grid, cell, point)),
                );
            }
        }
        Ok(Picture { view, across, down, factors, fillings })
    }

    /// What fills a cell at a point: where a sloping edge cuts it, the material on that hand.
    fn within(&self, grid: &Grid, cell: usize, point: Point) -> Filling {
        match grid.air(cell) {
            Some(ROOM) => Filling::Room,
            Some(_) => Filling::Outdoors,
            None => Filling::of(self.problem.conductivity_at(point), self.problem.background),
        }
    }

    /// What is beyond the end of the domain.
    fn beyond(&self, point: Point) -> Filling {
        let is_past = |side: Side| {
            let lines = || self.solution.grid().lines(side.axis());
            let at = point.along(side.axis());
            if side.is_maximum() {
                lines().last().is_some_and(|last| at > last)
            } else {
                lines().next().is_some_and(|first| at < first)
            }
        };
        match self.problem.exposed.iter().find(|exposed| is_past(exposed.side)) {
            Some(exposed) if exposed.environment == ROOM => Filling::Room,
            _ => Filling::Outdoors,
        }
    }
}

impl Picture {
    /// The factor where a column and a row of lines cross; `None` in air.
    pub fn factor(&self, column: usize, row: usize) -> Option<TemperatureFactor> {
        let factor = *self.factors.get(row * self.across.len() + column)?;
        factor.map(|factor| TemperatureFactor::new(f64::from(factor)))
    }

    /// What fills the cell past a column and a row of lines.
    pub fn filling(&self, column: usize, row: usize) -> Option<Filling> {
        let cells = self.across.len() - 1;
        (column < cells).then(|| self.fillings.get(row * cells + column).copied()).flatten()
    }
}

impl View {
    /// The point of the model at a place of the view.
    pub const fn point(&self, across: Length, down: Length) -> Point {
        match self.axis {
            Axis::X => Point::new(self.at, across, down),
            Axis::Y => Point::new(across, self.at, down),
            Axis::Z => Point::new(across, down, self.at),
        }
    }
}

/// The grid's lines within a span and the span's ends, with lines between them so that none is
/// further than `widest` from the next.
fn lines_between(grid: &Grid, axis: Axis, span: [Length; 2], widest: Length) -> Vec<Length> {
    // Nearer to an end than this a line is that end.
    let apart = widest / 1000.0;
    let within = |line: &Length| *line > span[0] + apart && *line < span[1] - apart;
    let own = grid.lines(axis).filter(within);
    let mut lines = vec![span[0]];
    for next in own.chain([span[1]]) {
        let last = lines[lines.len() - 1];
        let parts = ((next - last) / widest).ceil().max(1.0);
        let mut part = 1.0;
        while part < parts {
            lines.push(last + (next - last) * (part / parts));
            part += 1.0;
        }
        lines.push(next);
    }
    lines
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::design::{CheckedDesign, Design, EndWallTreatment, Surface};
    use crate::detail::{FrameSlice, drawn_detail};
    use crate::envelope::{Envelope, ThermalBridge};
    use crate::room::Room;

    fn every_detail(design: Design) -> Vec<(ThermalBridge, Detail)> {
        let checked = design.check().unwrap();
        let places = Envelope::of(&checked, &Room::of(&checked).clear).thermal_bridges;
        places
            .iter()
            .filter_map(|&(place, _)| Some((place, drawn_detail(&checked, place)?)))
            .collect()
    }

    #[test]
    fn a_picture_holds_what_the_wall_is_made_of() {
        let slice = FrameSlice::of(&CheckedDesign::default(), Surface::SideWall);
        let pictures = Detail::FrameLine(slice).pictures(120).unwrap();
        let [picture] = pictures.as_slice() else { panic!("one section") };
        assert_eq!(picture.factors.len(), picture.across.len() * picture.down.len());
        // Steel along the web, in the row of cells half way between the flanges.
        let web = slice.web_at() + slice.steel_thickness / 2.0;
        let middle = slice.stand_off + slice.member / 2.0;
        let before = |lines: &[Length], at| lines.iter().filter(|line| **line <= at).count() - 1;
        let (column, row) = (before(&picture.across, web), before(&picture.down, middle));
        assert_eq!(picture.filling(column, row), Some(Filling::Steel));
        assert_eq!(picture.filling(column - 1, row), Some(Filling::Foam));
        let thick = picture.across[column + 1] - picture.across[column];
        assert!((thick - slice.steel_thickness).value().abs() < 1e-9, "as thick as it is");
    }

    #[test]
    fn factors_stay_between_outdoors_and_room_and_stand_on_every_solid_cell() {
        let bare = Design { end_wall_treatment: EndWallTreatment::LeaveBare, ..Design::default() };
        for design in [Design::default(), bare] {
            for (place, detail) in every_detail(design) {
                for picture in detail.pictures(60).unwrap() {
                    let known = picture.factors.iter().flatten();
                    let off = known.filter(|factor| !(-1e-5..=1.0 + 1e-5).contains(*factor));
                    assert_eq!(off.count(), 0, "{}", place.key());
                    let (columns, rows) = (picture.across.len() - 1, picture.down.len() - 1);
                    for (row, column) in (0..rows).flat_map(|r| (0..columns).map(move |c| (r, c))) {
                        let solid = picture.filling(column, row).is_some_and(Filling::is_solid);
                        let corners = [(0, 0), (1, 0), (0, 1), (1, 1)];
                        let all = corners
                            .iter()
                            .all(|(c, r)| picture.factor(column + c, row + r).is_some());
                        assert!(all || !solid, "{}: {column}, {row}", place.key());
                    }
                }
            }
        }
    }

    #[test]
    fn the_first_view_shows_both_sides_of_the_steel_and_the_coldest_place() {
        for (place, detail) in every_detail(Design::default()) {
            let field = detail.damp_field().unwrap();
            let coldest = field.coldest().unwrap();
            let picture = field.pictures(60).unwrap().swap_remove(0);
            let spread = |keep: fn(f32, f32) -> f32, from| {
                picture.factors.iter().flatten().copied().fold(from, keep)
            };
            let (low, high) = (spread(f32::min, f32::MAX), spread(f32::max, f32::MIN));
            assert!(low < 0.45 && high > 0.6, "{}: {low} to {high}", place.key());
            let [p, q] = picture.view.axis.others();
            let within = |span: [Length; 2], at: Length| span[0] <= at && at <= span[1];
            assert!(within(picture.view.across, coldest.at.along(p)), "{}", place.key());
            assert!(within(picture.view.down, coldest.at.along(q)), "{}", place.key());
        }
    }
}
