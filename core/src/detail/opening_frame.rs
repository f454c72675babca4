//! The jamb of a door or window: a welded steel frame in the cut edge of the wall, with the studs beside it.

use super::build_up::BuildUp;
use super::glazing::{Glazing, INFILL_DEPTH, own_resistance};
use super::model::{CUT_DISTANCE, Drawing, Model, Surfaces};
use crate::conduction::{CellSizes, Problem, Side, SurfaceResistances};
use crate::design::{CheckedDesign, Surface, WindowSpacer};
use crate::envelope::{HeatFlow, Opening, air_layer_conductivity, surface_of};
use crate::material::STEEL;
use crate::units::{HeatTransferCoefficient, Length, ThermalConductivity, ThermalTransmittance};

/// Side of the square steel tube that frames a cut opening.
///
/// Common practice, no source.
pub const FRAME_TUBE: Length = Length::mm(50.0);
/// Wall thickness of that tube. Common practice, no source.
pub const FRAME_TUBE_THICKNESS: Length = Length::mm(3.0);

/// The members of the wall's frame beside the tube of an opening: jack and king stud at a jamb, the two of
/// the header at the head, the sill track under a window; in a section all look alike.
///
/// Channels of the wall's studs, webs towards the opening, one before the other. They stand off the tube
/// as they do off all steel of the box, so that foam fills between; screwed to it they would lose more.
/// Common practice, no source.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct MembersBeside {
    /// How many.
    pub count: u32,
    /// From the tube to the first.
    pub off_tube: Length,
    /// From the sheet to their outer flange.
    pub stand_off: Length,
    /// Depth of their web.
    pub depth: Length,
    /// Width of their flanges.
    pub flange: Length,
    /// Their sheet thickness.
    pub thickness: Length,
}

impl MembersBeside {
    /// Those of a wall of a design.
    pub fn of(checked: &CheckedDesign, wall: Surface, count: u32) -> Self {
        let design = checked.design();
        let stack = design.stack(wall);
        Self {
            count,
            off_tube: design.stud_stand_off,
            stand_off: stack.frame_stand_off(),
            depth: stack.member,
            flange: design.flange_width,
            thickness: design.stud_steel_thickness,
        }
    }

    /// Draws them before a tube that ends at `tube`.
    fn draw(&self, drawing: &mut Drawing, tube: Length) {
        let thin = self.thickness;
        let [outer, inner] = [self.stand_off, self.stand_off + self.depth];
        for n in 0..self.count {
            let web = tube + self.off_tube + self.flange * f64::from(n);
            let flange = [web, web + self.flange];
            drawing.fill([web, web + thin], [outer, inner], STEEL.conductivity);
            drawing.fill(flange, [outer, outer + thin], STEEL.conductivity);
            drawing.fill(flange, [inner - thin, inner], STEEL.conductivity);
        }
    }
}

/// A section across one jamb, head or sill; x runs along the wall from the clear opening, y is the depth into
/// the room from the sheet. A door is a panel of the stated U that ends on the tube, a window frame and pane of
/// that U with the spacer at the edge of the glass; ψ is what is lost more than by wall and door, or window alone:
/// that of its installation (ISO 10077-1 leaves it to the building).
///
/// For damp, what belongs to door or window has the surface resistance of frames and
/// glazing, and is judged as they are ([`SurfaceKind::FrameOrGlazing`]). The steel tube, lining and
/// reveal are opaque: the tube is part of the wall, hidden behind foam and lining, and where it is bare
/// it lies back in the corner of the reveal where air hardly moves and mould is looked for.
///
/// [`SurfaceKind::FrameOrGlazing`]: crate::envelope::SurfaceKind::FrameOrGlazing
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct OpeningFrameSection {
    /// The wall it is cut into.
    pub wall: BuildUp,
    /// U of door or window, its own frame included.
    pub opening: ThermalTransmittance,
    /// The spacer of a window's glass; none of a door.
    pub spacer: Option<WindowSpacer>,
    /// Foam packed over the tube wherever it faces the room: over its inner face, and back along
    /// the reveal to the frame of door or window, which it laps.
    pub packing: Length,
    /// The wall's frame beside the tube.
    pub members: MembersBeside,
}

impl OpeningFrameSection {
    /// The jamb, and the head, of an opening of a design: two members beside the tube. Of a door that is
    /// not there it is that of one in a side wall.
    pub fn of(checked: &CheckedDesign, opening: Opening) -> Self {
        let design = checked.design();
        let (wall, transmittance) = match opening {
            Opening::PersonnelDoor => (design.personnel_door.wall(), design.door_transmittance),
            Opening::Window => (Some(design.window_wall), design.window_transmittance),
        };
        let wall = wall.map_or(Surface::SideWall, surface_of);
        Self {
            wall: BuildUp::of(checked, wall),
            opening: transmittance,
            spacer: (opening == Opening::Window).then_some(design.window_spacer),
            packing: design.opening_frame_foam,
            members: MembersBeside::of(checked, wall, 2),
        }
    }

    /// The same with other members beside the tube: one track at a sill.
    #[must_use]
    pub fn with_members(mut self, count: u32) -> Self {
        self.members.count = count;
        self
    }

    /// The deepest face of lining: the wall's own, or where it is carried out over the packing.
    pub fn face(&self) -> Length {
        self.wall.face().max(FRAME_TUBE + self.packing + self.wall.lining)
    }

    fn cut(&self) -> Length {
        CUT_DISTANCE + self.wall.face()
    }

    /// Draws door or window, and gives a depth in the middle of it: what is not drawn beyond is the room's,
    /// and on the hither side outdoor air.
    fn draw_infill(&self, drawing: &mut Drawing) -> Length {
        let left = -self.panel_length();
        match self.spacer {
            None => {
                let panel = INFILL_DEPTH / own_resistance(self.opening);
                drawing.fill_frame([left, Length::ZERO], [Length::ZERO, INFILL_DEPTH], panel);
            }
            Some(spacer) => {
                Glazing { transmittance: self.opening, spacer }.draw(drawing, left);
            }
        }
        INFILL_DEPTH / 2.0
    }

    /// The door or window without the wall, no heat crossing where it ends.
    pub fn window_alone(&self, surfaces: Surfaces) -> Problem {
        let across = [-self.panel_length(), Length::ZERO];
        let deep = [Length::ZERO, INFILL_DEPTH];
        let mut drawing = Drawing::section(across, deep, surfaces, cells());
        let middle = self.draw_infill(&mut drawing);
        let inside = SurfaceResistances::uniform(surfaces.inside(self.wall.direction));
        drawing.room(across, [middle, INFILL_DEPTH], inside);
        drawing.outdoors(across, [Length::ZERO, middle]);
        drawing.expose_outdoors(Side::YMinimum);
        drawing.expose_room(Side::YMaximum, self.wall.direction);
        drawing.finish()
    }

    /// Half an opening's width of panel is enough for its field to run straight.
    fn panel_length(&self) -> Length {
        Length::mm(400.0)
    }
}

/// Of a jamb, with or without its wall.
const fn cells() -> CellSizes {
    CellSizes::new(Length::mm(1.5), Length::mm(60.0))
}

impl Model for OpeningFrameSection {
    fn problem(&self, surfaces: Surfaces) -> Problem {
        let wall = &self.wall;
        let (cut, left) = (self.cut(), -self.panel_length());
        let zero = Length::ZERO;
        let tube = [zero, FRAME_TUBE];
        let reveal = -self.packing - wall.lining;
        let inner = FRAME_TUBE + self.packing;
        let face = self.face();
        let mut drawing = Drawing::section([left, cut], [-wall.sheet, face], surfaces, cells());
        // Where the packing goes past the wall's own lining, the lining is carried out over it.
        let past_tube = [FRAME_TUBE, cut];
        let back = wall.lining_back.max(inner);
        drawing.fill(past_tube, wall.foam_span(), wall.foam_conductivity);
        drawing.fill(tube, [FRAME_TUBE, inner], wall.foam_conductivity);
        drawing.fill([-self.packing, zero], [INFILL_DEPTH, back], wall.foam_conductivity);
        drawing.fill(past_tube, wall.gap_span(), wall.gap_conductivity());
        let over_tube = [inner, back];
        if over_tube[0] < over_tube[1] {
            let still_air = air_layer_conductivity(over_tube[1] - over_tube[0], wall.direction);
            drawing.fill(tube, over_tube, still_air);
        }
        self.members.draw(&mut drawing, FRAME_TUBE);
        drawing.fill([reveal, FRAME_TUBE], [back, back + wall.lining], wall.lining_conductivity);
        drawing.fill(past_tube, wall.lining_span(), wall.lining_conductivity);
        drawing.fill([reveal, -self.packing], [INFILL_DEPTH, back], wall.lining_conductivity);
        drawing.fill([zero, cut], wall.sheet_span(), STEEL.conductivity);
        drawing.fill(tube, [-wall.sheet, FRAME_TUBE], STEEL.conductivity);
        let hollow = FRAME_TUBE - FRAME_TUBE_THICKNESS * 2.0;
        let inside_tube = [FRAME_TUBE_THICKNESS, FRAME_TUBE - FRAME_TUBE_THICKNESS];
        drawing.fill(
            inside_tube,
            inside_tube,
            air_layer_conductivity(hollow, HeatFlow::Horizontal),
        );
        let middle = self.draw_infill(&mut drawing);
        let inside = SurfaceResistances::uniform(surfaces.inside(wall.direction));
        drawing.room([left, reveal], [middle, face], inside);
        drawing.room([FRAME_TUBE, cut], [wall.face(), face], inside);
        drawing.outdoors([left, zero], [-wall.sheet, middle]);
        drawing.expose_outdoors(Side::YMinimum);
        drawing.expose_room(Side::YMaximum, wall.direction);
        drawing.finish()
    }

    fn foam(&self) -> ThermalConductivity {
        self.wall.foam_conductivity
    }

    fn lining(&self) -> Option<ThermalConductivity> {
        Some(self.wall.lining_conductivity)
    }

    fn flanking(&self) -> HeatTransferCoefficient {
        let metre = Length::new(1.0);
        let wall = self.wall.transmittance() * (self.cut() * metre);
        match self.spacer {
            None => wall + self.opening * (self.panel_length() * metre),
            Some(_) => wall,
        }
    }

    /// The window alone, no heat crossing its outer edge.
    fn flanking_problem(&self) -> Option<Problem> {
        self.spacer.map(|_| self.window_alone(Surfaces::Ordinary))
    }
}
