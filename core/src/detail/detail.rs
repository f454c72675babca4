//! Which detail stands at a place, and what it depends on.

use super::bottom_corner::{BottomCasting, BottomCornerBody};
use super::bracket::BracketBody;
use super::build_up::BuildUp;
use super::corner::{Casting, CornerBody};
use super::edge::{EdgeSection, EdgeSteel};
use super::floor::FloorBuildUp;
use super::floor_edge::FloorEdgeSection;
use super::floor_member::FloorMemberSlice;
use super::frame_line::FrameSlice;
use super::model::{Model, Surfaces};
use super::opening_frame::OpeningFrameSection;
use super::set::Outcome;
use super::sleeve::SleeveBody;
use super::wave_section::WaveSection;
use crate::conduction::{Dimensionality, Problem};
use crate::design::{CheckedDesign, EndWallTreatment, Surface};
use crate::envelope::{End, Opening, ThermalBridge, surface_of};
use crate::freight_box::CORNER_FITTING_HEIGHT;
use crate::units::{Length, LinearThermalTransmittance};

/// A detail with everything its field depends on, and nothing else.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Detail {
    /// A stud or joist.
    FrameLine(FrameSlice),
    /// A wave of the sheet.
    Wave(WaveSection),
    /// An inside edge of two surfaces.
    Edge(EdgeSection),
    /// The foot of a wall.
    FloorEdge(FloorEdgeSection),
    /// A floor member.
    FloorMember(FloorMemberSlice),
    /// A jamb.
    OpeningFrame(OpeningFrameSection),
    /// A top corner with its casting.
    Corner(CornerBody),
    /// A bottom corner with its casting.
    BottomCorner(BottomCornerBody),
    /// A bracket at the top rail.
    Bracket(BracketBody),
    /// A damper's sleeve.
    Sleeve(SleeveBody),
}

impl Detail {
    pub(super) fn model(&self) -> &dyn Model {
        match self {
            Self::FrameLine(model) => model,
            Self::Wave(model) => model,
            Self::Edge(model) => model,
            Self::FloorEdge(model) => model,
            Self::FloorMember(model) => model,
            Self::OpeningFrame(model) => model,
            Self::Corner(model) => model,
            Self::BottomCorner(model) => model,
            Self::Bracket(model) => model,
            Self::Sleeve(model) => model,
        }
    }

    /// The conduction problem, for a picture of its field.
    pub fn problem(&self, surfaces: Surfaces) -> Problem {
        self.model().problem(surfaces)
    }

    /// Whether it is a body in three dimensions, which takes far longer to solve than a section.
    pub fn is_body(&self) -> bool {
        match self {
            Self::Corner(_) | Self::BottomCorner(_) | Self::Bracket(_) | Self::Sleeve(_) => true,
            Self::FrameLine(_)
            | Self::Wave(_)
            | Self::Edge(_)
            | Self::FloorEdge(_)
            | Self::FloorMember(_)
            | Self::OpeningFrame(_) => false,
        }
    }

    /// In how many dimensions heat flows.
    pub fn dimensions(&self) -> Dimensionality {
        if self.is_body() { Dimensionality::Three } else { Dimensionality::Two }
    }

    /// The detail as drawn, without what its figures are judged against: two details that are
    /// drawn alike have one field, whatever their edges lose.
    #[must_use]
    pub const fn drawn(mut self) -> Self {
        const NOTHING: LinearThermalTransmittance = LinearThermalTransmittance::ZERO;
        match &mut self {
            Self::Corner(corner) => corner.edge_transmittance = [NOTHING; 3],
            Self::BottomCorner(corner) => corner.edge_transmittance = [NOTHING; 3],
            Self::Bracket(bracket) => bracket.line_transmittance = [NOTHING; 2],
            Self::FrameLine(_)
            | Self::Wave(_)
            | Self::Edge(_)
            | Self::FloorEdge(_)
            | Self::FloorMember(_)
            | Self::OpeningFrame(_)
            | Self::Sleeve(_) => {}
        }
        self
    }
}

/// The hollow rail along the top of a wall: x across the wall, y down from the roof's plane.
fn top_rail(checked: &CheckedDesign, recess: Length, roof_sheet: Length) -> EdgeSteel {
    let freight_box = checked.freight_box();
    let rail = freight_box.top_rail;
    let outer = freight_box.rail_clearance - recess;
    EdgeSteel {
        x: [outer, outer + rail.width],
        y: [-roof_sheet, rail.height],
        thickness: rail.thickness,
    }
}

fn recess(checked: &CheckedDesign, surface: Surface) -> Length {
    let freight_box = checked.freight_box();
    match surface {
        Surface::FrontEnd => freight_box.front_recess(),
        Surface::DoorEnd => freight_box.door_recess(),
        Surface::SideWall | Surface::Ceiling | Surface::Floor => freight_box.side_recess(),
    }
}

fn roof_edge(checked: &CheckedDesign, wall: Surface) -> EdgeSection {
    let second = BuildUp::of(checked, Surface::Ceiling);
    EdgeSection {
        first: BuildUp::of(checked, wall),
        second,
        steel: top_rail(checked, recess(checked, wall), second.sheet),
    }
}

fn corner_post(checked: &CheckedDesign, end: End) -> EdgeSection {
    let freight_box = checked.freight_box();
    let clearance = freight_box.rail_clearance;
    EdgeSection {
        first: BuildUp::of(checked, Surface::SideWall),
        second: BuildUp::of(checked, end.surface()),
        steel: EdgeSteel {
            x: [clearance - freight_box.side_recess(), Length::ZERO],
            y: [clearance - recess(checked, end.surface()), Length::ZERO],
            thickness: freight_box.corner_post_thickness,
        },
    }
}

/// Gives ψ of a section that a body runs into, or says why it cannot.
pub type LineOf<'a> = dyn FnMut(&Detail) -> Result<LinearThermalTransmittance, Outcome> + 'a;

fn top_corner(
    checked: &CheckedDesign,
    end: End,
    line: &mut LineOf<'_>,
) -> Result<CornerBody, Outcome> {
    let (design, freight_box) = (checked.design(), checked.freight_box());
    let side_edge = roof_edge(checked, Surface::SideWall);
    let end_edge = roof_edge(checked, end.surface());
    let post = corner_post(checked, end);
    let casting = freight_box.casting;
    let along = match end {
        End::Front => casting.front_length,
        End::Door => casting.door_length,
    };
    let bare = design.end_wall_treatment == EndWallTreatment::LeaveBare;
    Ok(CornerBody {
        side: side_edge.first,
        end: end_edge.first,
        ceiling: side_edge.second,
        casting: Casting {
            reach: [casting.width, along, casting.height],
            outside: [
                freight_box.side_recess(),
                recess(checked, end.surface()),
                freight_box.roof_recess(),
            ],
            cover: (!bare).then_some(design.casting_cover),
        },
        side_rail: side_edge.steel,
        end_rail: end_edge.steel,
        post: post.steel,
        edge_transmittance: [
            line(&Detail::Edge(end_edge))?,
            line(&Detail::Edge(side_edge))?,
            line(&Detail::Edge(post))?,
        ],
    })
}

fn bottom_corner(
    checked: &CheckedDesign,
    end: End,
    line: &mut LineOf<'_>,
) -> Result<BottomCornerBody, Outcome> {
    let freight_box = checked.freight_box();
    let nominal = freight_box.size.nominal().casting;
    let along = match end {
        End::Front => nominal.front_length,
        End::Door => nominal.door_length,
    };
    let side_edge = FloorEdgeSection::of(checked, Surface::SideWall);
    let end_edge = FloorEdgeSection::of(checked, end.surface());
    let bottom = -freight_box.floor_height();
    Ok(BottomCornerBody {
        side: side_edge.wall,
        end: end_edge.wall,
        floor: side_edge.floor,
        rail: side_edge.rail,
        casting: BottomCasting {
            reach: [nominal.width, along],
            outside: [freight_box.side_recess(), recess(checked, end.surface())],
            bottom,
            top: bottom + CORNER_FITTING_HEIGHT,
        },
        edge_transmittance: [
            line(&Detail::FloorEdge(end_edge))?,
            line(&Detail::FloorEdge(side_edge))?,
            line(&Detail::Edge(corner_post(checked, end)))?,
        ],
    })
}

/// The detail that stands at a place of a design.
///
/// # Errors
/// What `line` says of the sections that a body in three dimensions is judged against.
pub fn detail_at(
    checked: &CheckedDesign,
    place: ThermalBridge,
    line: &mut LineOf<'_>,
) -> Result<Detail, Outcome> {
    let design = checked.design();
    Ok(match place {
        ThermalBridge::FrameLine(surface) => Detail::FrameLine(FrameSlice::of(checked, surface)),
        ThermalBridge::Waves(surface) => Detail::Wave(WaveSection::of(checked, surface)),
        ThermalBridge::StudHead => {
            let edge = roof_edge(checked, Surface::SideWall);
            let stud = FrameSlice::on_a_crest(checked, Surface::SideWall);
            Detail::Bracket(BracketBody {
                edge,
                stud,
                pad: design.bracket_pad,
                line_transmittance: [line(&Detail::Edge(edge))?, line(&Detail::FrameLine(stud))?],
            })
        }
        ThermalBridge::RoofEdge(wall) => Detail::Edge(roof_edge(checked, wall)),
        ThermalBridge::CornerPost(end) => Detail::Edge(corner_post(checked, end)),
        ThermalBridge::FloorEdge(wall) => Detail::FloorEdge(FloorEdgeSection::of(checked, wall)),
        ThermalBridge::FloorMember => {
            Detail::FloorMember(FloorMemberSlice { floor: FloorBuildUp::of(checked) })
        }
        ThermalBridge::OpeningFrame(Opening::PersonnelDoor) => {
            let wall = design.personnel_door.wall().map_or(Surface::SideWall, surface_of);
            Detail::OpeningFrame(OpeningFrameSection::of(checked, wall, design.door_transmittance))
        }
        ThermalBridge::OpeningFrame(Opening::Window) => {
            Detail::OpeningFrame(OpeningFrameSection::of(
                checked,
                surface_of(design.window_wall),
                design.window_transmittance,
            ))
        }
        ThermalBridge::TopCasting(end) => Detail::Corner(top_corner(checked, end, line)?),
        ThermalBridge::BottomCasting(end) => {
            Detail::BottomCorner(bottom_corner(checked, end, line)?)
        }
        ThermalBridge::DamperSleeve => {
            Detail::Sleeve(SleeveBody::of(checked, design.damper_diameter))
        }
        ThermalBridge::ExhaustSleeve => {
            Detail::Sleeve(SleeveBody::of(checked, design.exhaust_diameter))
        }
    })
}

/// The detail at a place as it is drawn ([`Detail::drawn`]), for which nothing else need be solved;
/// `None` where the place takes none.
pub fn drawn_detail(checked: &CheckedDesign, place: ThermalBridge) -> Option<Detail> {
    detail_at(checked, place, &mut |_| Ok(LinearThermalTransmittance::ZERO)).ok()
}
