//! The cargo doors where foam is sprayed into their leaves: leaf against header or post, leaf against leaf.

use super::build_up::BuildUp;
use super::edge::EdgeSteel;
use super::model::{CUT_DISTANCE, Drawing, Model, Span, Surfaces};
use crate::conduction::{CellSizes, Problem, Side, SurfaceResistances};
use crate::design::{CheckedDesign, Surface};
use crate::envelope::{HeatFlow, air_layer_conductivity};
use crate::material::{RIGID_PLASTIC, STEEL};
use crate::units::{HeatTransferCoefficient, Length, ThermalConductivity};

/// Gap between a leaf and what it closes against, and so the width of the gasket. Common practice, no source.
pub const LEAF_GAP: Length = Length::mm(10.0);
/// How far the gasket reaches outwards from the leaf's sheet. Common practice, no source.
pub const GASKET_DEPTH: Length = Length::mm(30.0);
/// EPDM, λ = 0.25 W/(m·K) (ISO 10456:2007, table 3, from memory).
pub const GASKET_CONDUCTIVITY: ThermalConductivity = ThermalConductivity::new(0.25);
/// Thickness of the plastic flashing that closes cut edges of foam. Common practice, no source.
pub const FLASHING: Length = Length::mm(2.0);

/// What the still air in the gap beside a leaf behaves as: heat runs along the gap, from its mouth to the
/// gasket, so as a layer as deep as the leaf is (ISO 6946 annex D). That is on the safe side: in a narrow slot
/// radiation sees less, by ISO 10077-2 about 0.25 W/(m·K) in a slot of 10 mm, 62 mm deep, for 0.34 here.
pub(super) fn gap_air(leaf: &BuildUp) -> ThermalConductivity {
    air_layer_conductivity(leaf.face(), HeatFlow::Horizontal)
}

/// A section across the upper or hinge edge of a leaf with foam in it; x is the depth into the room from the
/// leaf's sheet, y from the steel of the surface beside: down from the roof's, or away from the side wall's.
///
/// The frame of the box (header or post) ends flush with the leaf's sheet and stands `frame.y[1]` past the
/// surface beside. The leaf begins a gap further; its foam, lining and edge swing out with it, so they touch
/// nothing: the build-up of the surface beside is cut out round them, a gap wide, the cut edges closed with
/// flashing. Where the frame stands further out than that build-up, its inner face has foam packed over it as
/// the frames of openings have, with a board of lining, the return, and flashing under it. The gasket lies
/// in the gap outside the leaf's sheet: there the steel is bare to the gap's air. The leaf's own hollow frame,
/// hinges and bars stand outside the sheet and are left out.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LeafEdgeSection {
    /// The leaf.
    pub leaf: BuildUp,
    /// Ceiling or side wall.
    pub beside: BuildUp,
    /// Header or post.
    pub frame: EdgeSteel,
    /// Foam packed over the frame's inner face.
    pub packing: Length,
}

impl LeafEdgeSection {
    /// The edge beside a surface of a design.
    pub fn of(checked: &CheckedDesign, beside: Surface, frame: EdgeSteel) -> Self {
        Self {
            leaf: BuildUp::of(checked, Surface::DoorEnd),
            beside: BuildUp::of(checked, beside),
            frame,
            packing: checked.design().opening_frame_foam,
        }
    }

    fn cut(&self) -> Length {
        CUT_DISTANCE + self.leaf.face().max(self.beside.face()).max(self.frame.y[1])
    }

    /// Where the leaf's edge lies.
    pub fn leaf_begins(&self) -> Length {
        self.frame.y[1] + LEAF_GAP
    }

    fn draw_beside(&self, drawing: &mut Drawing) {
        let (leaf, beside, frame) = (&self.leaf, &self.beside, &self.frame);
        let (zero, past) = (Length::ZERO, [Length::ZERO, self.cut()]);
        drawing.fill(past, beside.foam_span(), beside.foam_conductivity);
        drawing.fill(past, beside.gap_span(), beside.gap_conductivity());
        drawing.fill(past, beside.lining_span(), beside.lining_conductivity);
        let end = frame.y[1];
        if end > beside.face() {
            // The return over the frame's inner face.
            let [foam, board] = [self.packing, self.packing + beside.lining];
            drawing.fill([zero, foam], [beside.lining_back, end], beside.foam_conductivity);
            drawing.fill([foam, board], [beside.lining_back, end], beside.lining_conductivity);
            drawing.fill([zero, board], [end - FLASHING, end], RIGID_PLASTIC.conductivity);
        } else {
            // The leaf stands in the build-up beside it.
            let clear = leaf.face() + LEAF_GAP;
            let closed = [clear, clear + FLASHING];
            drawing.fill(closed, [end, beside.face()], RIGID_PLASTIC.conductivity);
            let over_frame = (end - FLASHING).max(zero);
            drawing.fill([zero, clear], [over_frame, end], RIGID_PLASTIC.conductivity);
            drawing.fill([zero, clear], [end, beside.face()], gap_air(leaf));
        }
    }

    fn draw_leaf_and_frame(&self, drawing: &mut Drawing) {
        let (leaf, frame) = (&self.leaf, &self.frame);
        let (end, begins) = (frame.y[1], self.leaf_begins());
        let down = [begins, self.cut()];
        drawing.fill([Length::ZERO, leaf.face()], [end, begins], gap_air(leaf));
        draw_leaf(drawing, leaf, down, Lies::AlongY);
        let (hollow_x, hollow_y) = frame.hollow();
        drawing.fill(frame.x, frame.y, STEEL.conductivity);
        drawing.fill(hollow_x, hollow_y, frame.hollow_conductivity());
        drawing.fill([-GASKET_DEPTH, Length::ZERO], [end, begins], GASKET_CONDUCTIVITY);
    }
}

/// Along which axis of a section a leaf lies.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Lies {
    /// Its depth is y.
    AlongX,
    /// Its depth is x.
    AlongY,
}

/// Sheet, foam and lining of a leaf over a stretch of it.
pub(super) fn draw_leaf(drawing: &mut Drawing, leaf: &BuildUp, along: Span, lies: Lies) {
    for (deep, conductivity) in [
        (leaf.foam_span(), leaf.foam_conductivity),
        (leaf.gap_span(), leaf.gap_conductivity()),
        (leaf.lining_span(), leaf.lining_conductivity),
        (leaf.sheet_span(), STEEL.conductivity),
    ] {
        match lies {
            Lies::AlongX => drawing.fill(along, deep, conductivity),
            Lies::AlongY => drawing.fill(deep, along, conductivity),
        }
    }
}

impl Model for LeafEdgeSection {
    fn problem(&self, surfaces: Surfaces) -> Problem {
        let (leaf, beside, frame) = (&self.leaf, &self.beside, &self.frame);
        let (cut, zero) = (self.cut(), Length::ZERO);
        let (left, top) = (frame.x[0], frame.y[0].min(-beside.sheet));
        let mut drawing = Drawing::section(
            [left, cut],
            [top, cut],
            surfaces,
            CellSizes::new(Length::mm(2.0), Length::mm(60.0)),
        );
        self.draw_beside(&mut drawing);
        drawing.fill([left, cut], beside.sheet_span(), STEEL.conductivity);
        self.draw_leaf_and_frame(&mut drawing);
        let inside = SurfaceResistances::uniform(surfaces.inside(leaf.direction))
            .with(Side::YMaximum, surfaces.inside(beside.direction));
        drawing.room([zero, cut], [beside.face().min(frame.y[1]), cut], inside);
        drawing.outdoors([left, zero], [top, cut]);
        drawing.outdoors([left, cut], [top, -beside.sheet]);
        drawing.expose_outdoors(Side::XMinimum);
        drawing.expose_outdoors(Side::YMinimum);
        drawing.finish()
    }

    fn foam(&self) -> ThermalConductivity {
        self.leaf.foam_conductivity
    }

    fn flanking(&self) -> HeatTransferCoefficient {
        let (cut, metre) = (self.cut(), Length::new(1.0));
        self.leaf.transmittance() * ((cut - self.beside.face()) * metre)
            + self.beside.transmittance() * ((cut - self.leaf.face()) * metre)
    }
}

/// Half a section across the line where the two leaves meet; x runs along the leaf from the middle of the
/// gap between them, y is the depth into the room from their sheet. Gap and gasket as at the other edges.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LeafMeetingSection {
    /// A leaf.
    pub leaf: BuildUp,
}

impl LeafMeetingSection {
    /// That of a design.
    pub fn of(checked: &CheckedDesign) -> Self {
        Self { leaf: BuildUp::of(checked, Surface::DoorEnd) }
    }

    fn cut(&self) -> Length {
        CUT_DISTANCE / 2.0 + self.leaf.face()
    }
}

impl Model for LeafMeetingSection {
    fn problem(&self, surfaces: Surfaces) -> Problem {
        let (leaf, cut, zero) = (&self.leaf, self.cut(), Length::ZERO);
        let half = LEAF_GAP / 2.0;
        let mut drawing = Drawing::section(
            [zero, cut],
            [-GASKET_DEPTH, leaf.face()],
            surfaces,
            CellSizes::new(Length::mm(2.0), Length::mm(60.0)),
        );
        draw_leaf(&mut drawing, leaf, [half, cut], Lies::AlongX);
        drawing.fill([zero, half], [zero, leaf.face()], gap_air(leaf));
        drawing.fill([zero, half], [-GASKET_DEPTH, zero], GASKET_CONDUCTIVITY);
        drawing.outdoors([zero, cut], [-GASKET_DEPTH, zero]);
        drawing.expose_outdoors(Side::YMinimum);
        drawing.expose_room(Side::YMaximum, leaf.direction);
        drawing.finish()
    }

    fn foam(&self) -> ThermalConductivity {
        self.leaf.foam_conductivity
    }

    fn flanking(&self) -> HeatTransferCoefficient {
        self.leaf.transmittance() * (self.cut() * Length::new(1.0))
    }

    fn copies(&self) -> f64 {
        2.0
    }
}

/// Width of the battens that carry the lining of a leaf. Common practice, no source.
pub const BATTEN_WIDTH: Length = Length::mm(45.0);

/// The slice across a batten of softwood in a leaf's foam, as deep as the foam, with the lining on it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BattenSlice {
    /// The leaf.
    pub leaf: BuildUp,
    /// From one batten to the next.
    pub spacing: Length,
}

impl BattenSlice {
    /// That of a design; battens stand as far apart as studs.
    pub fn of(checked: &CheckedDesign) -> Self {
        let leaf = BuildUp::of(checked, Surface::DoorEnd);
        Self { leaf, spacing: checked.design().stud_spacing }
    }
}

impl Model for BattenSlice {
    fn problem(&self, surfaces: Surfaces) -> Problem {
        let leaf = &self.leaf;
        let along = [Length::ZERO, self.spacing];
        let mut drawing = Drawing::section(
            along,
            [-leaf.sheet, leaf.face()],
            surfaces,
            CellSizes::new(Length::mm(1.5), Length::mm(16.0)),
        );
        draw_leaf(&mut drawing, leaf, along, Lies::AlongX);
        let middle = self.spacing / 2.0;
        let batten = [middle - BATTEN_WIDTH / 2.0, middle + BATTEN_WIDTH / 2.0];
        let deep = [Length::ZERO, leaf.lining_back];
        drawing.fill(batten, deep, crate::material::SOFTWOOD.conductivity);
        drawing.expose_outdoors(Side::YMinimum);
        drawing.expose_room(Side::YMaximum, leaf.direction);
        drawing.finish()
    }

    fn foam(&self) -> ThermalConductivity {
        self.leaf.foam_conductivity
    }

    fn flanking(&self) -> HeatTransferCoefficient {
        self.leaf.transmittance() * (self.spacing * Length::new(1.0))
    }
}
