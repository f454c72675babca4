//! The jamb of a door or window: a welded steel frame in the cut edge of the wall.

use super::build_up::BuildUp;
use super::model::{CUT_DISTANCE, Drawing, Model, Surfaces};
use crate::conduction::{CellSizes, Problem, Side, SurfaceResistances};
use crate::design::{CheckedDesign, Surface};
use crate::envelope::{HeatFlow, OUTSIDE_SURFACE_RESISTANCE, air_layer_conductivity};
use crate::material::STEEL;
use crate::units::{HeatTransferCoefficient, Length, ThermalConductivity, ThermalTransmittance};

/// Side of the square steel tube that frames a cut opening.
///
/// Common practice, no source.
pub const FRAME_TUBE: Length = Length::mm(50.0);
/// Wall thickness of that tube. Common practice, no source.
pub const FRAME_TUBE_THICKNESS: Length = Length::mm(3.0);
/// Thickness of the equivalent panel that stands for a door leaf or a glazed sash.
const PANEL: Length = Length::mm(44.0);

/// A section across one jamb; x runs along the wall from the clear opening, y is the depth into
/// the room from the sheet. The door or window is a panel of the stated U that ends on the tube.
///
/// For damp, what belongs to door or window, here the panel, has the surface resistance of frames and
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
    /// Foam packed over the tube wherever it faces the room: over its inner face, and back along
    /// the reveal to the frame of door or window, which it laps.
    pub packing: Length,
}

impl OpeningFrameSection {
    /// The jamb in a wall of a design.
    pub fn of(checked: &CheckedDesign, wall: Surface, opening: ThermalTransmittance) -> Self {
        let packing = checked.design().opening_frame_foam;
        Self { wall: BuildUp::of(checked, wall), opening, packing }
    }

    /// The deepest face of lining: the wall's own, or where it is carried out over the packing.
    pub fn face(&self) -> Length {
        self.wall.face().max(FRAME_TUBE + self.packing + self.wall.lining)
    }

    fn cut(&self) -> Length {
        CUT_DISTANCE + self.wall.face()
    }

    /// Half an opening's width of panel is enough for its field to run straight.
    fn panel_length(&self) -> Length {
        Length::mm(400.0)
    }
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
        let mut drawing = Drawing::section(
            [left, cut],
            [-wall.sheet, face],
            surfaces,
            CellSizes::new(Length::mm(1.5), Length::mm(60.0)),
        );
        // Where the packing goes past the wall's own lining, the lining is carried out over it.
        let past_tube = [FRAME_TUBE, cut];
        let back = wall.lining_back.max(inner);
        drawing.fill(past_tube, wall.foam_span(), wall.foam_conductivity);
        drawing.fill(tube, [FRAME_TUBE, inner], wall.foam_conductivity);
        drawing.fill([-self.packing, zero], [PANEL, back], wall.foam_conductivity);
        drawing.fill(past_tube, wall.gap_span(), wall.gap_conductivity());
        let over_tube = [inner, back];
        if over_tube[0] < over_tube[1] {
            let still_air = air_layer_conductivity(over_tube[1] - over_tube[0], wall.direction);
            drawing.fill(tube, over_tube, still_air);
        }
        drawing.fill([reveal, FRAME_TUBE], [back, back + wall.lining], wall.lining_conductivity);
        drawing.fill(past_tube, wall.lining_span(), wall.lining_conductivity);
        drawing.fill([reveal, -self.packing], [PANEL, back], wall.lining_conductivity);
        drawing.fill([zero, cut], wall.sheet_span(), STEEL.conductivity);
        drawing.fill(tube, [-wall.sheet, FRAME_TUBE], STEEL.conductivity);
        let hollow = FRAME_TUBE - FRAME_TUBE_THICKNESS * 2.0;
        let inside_tube = [FRAME_TUBE_THICKNESS, FRAME_TUBE - FRAME_TUBE_THICKNESS];
        drawing.fill(
            inside_tube,
            inside_tube,
            air_layer_conductivity(hollow, HeatFlow::Horizontal),
        );
        let surfaces_of_panel =
            wall.direction.inside_surface_resistance() + OUTSIDE_SURFACE_RESISTANCE;
        let panel = PANEL / (self.opening.resistance() - surfaces_of_panel);
        drawing.fill_frame([left, zero], [zero, PANEL], panel);
        let inside = SurfaceResistances::uniform(surfaces.inside(wall.direction));
        drawing.room([left, reveal], [PANEL, face], inside);
        drawing.room([FRAME_TUBE, cut], [wall.face(), face], inside);
        drawing.outdoors([left, zero], [-wall.sheet, zero]);
        drawing.expose_outdoors(Side::YMinimum);
        drawing.expose_room(Side::YMaximum, wall.direction);
        drawing.finish()
    }

    fn foam(&self) -> ThermalConductivity {
        self.wall.foam_conductivity
    }

    fn flanking(&self) -> HeatTransferCoefficient {
        let metre = Length::new(1.0);
        self.wall.transmittance() * (self.cut() * metre)
            + self.opening * (self.panel_length() * metre)
    }
}
