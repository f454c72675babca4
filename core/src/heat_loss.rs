//! Heat-transfer coefficients by element and the design heating load.

use crate::design::{Design, Surface};
use crate::detail::FrameLineDetail;
use crate::envelope::Envelope;
use crate::room::Room;
use crate::units::{
    Density, HeatTransferCoefficient, Power, SpecificHeatCapacity, TemperatureDifference,
};

/// Air density at about 20 °C and sea level, 1.2 kg/m³: with [`AIR_HEAT_CAPACITY`] it makes the
/// 0.335 Wh/(m³·K) of EN 12831-1.
pub const AIR_DENSITY: Density = Density::new(1.2);

/// Specific heat capacity of air, 1005 J/(kg·K).
pub const AIR_HEAT_CAPACITY: SpecificHeatCapacity = SpecificHeatCapacity::new(1005.0);

/// A way that heat leaves the room.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Element {
    /// The plain area of a surface, between frame members.
    Plain(Surface),
    /// What the frame members add on a surface.
    FrameLines(Surface),
    /// The personnel door.
    PersonnelDoor,
    /// The windows.
    Windows,
    /// Outdoor air that leaks or is let in.
    Air,
}

impl Element {
    /// Stable name.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Plain(Surface::SideWall) => "side_walls",
            Self::Plain(Surface::FrontEnd) => "front_end",
            Self::Plain(Surface::DoorEnd) => "door_end",
            Self::Plain(Surface::Ceiling) => "ceiling",
            Self::Plain(Surface::Floor) => "floor",
            Self::FrameLines(Surface::SideWall) => "side_wall_studs",
            Self::FrameLines(Surface::FrontEnd) => "front_end_studs",
            Self::FrameLines(Surface::DoorEnd) => "door_end_studs",
            Self::FrameLines(Surface::Ceiling) => "ceiling_joists",
            Self::FrameLines(Surface::Floor) => "floor_members",
            Self::PersonnelDoor => "personnel_door",
            Self::Windows => "windows",
            Self::Air => "air",
        }
    }
}

/// What one element loses.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Loss {
    /// Which element.
    pub element: Element,
    /// Heat-transfer coefficient H, W/K.
    pub coefficient: HeatTransferCoefficient,
    /// Heat flow at the design temperatures, W.
    pub power: Power,
    /// Share of the whole, 0 to 1.
    pub share: f64,
}

/// A part that loses heat too and that nothing here has solved: no allowance is invented for it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum NotCounted {
    /// The corner castings.
    CornerCastings,
    /// The brackets that hold the studs to the top rail.
    StudBrackets,
    /// Top rails and the edge between wall and roof.
    TopRails,
    /// Corner posts and the edge between side and end wall.
    CornerPosts,
    /// The steel members under the floor.
    FloorMembers,
    /// The edge between floor and wall, at the bottom rail.
    FloorEdges,
    /// The steel frames round doors and windows.
    OpeningFrames,
    /// A frame line whose field did not solve.
    UnsolvedFrameLine(Surface),
}

impl NotCounted {
    /// Stable name.
    pub const fn key(self) -> &'static str {
        match self {
            Self::CornerCastings => "corner_castings",
            Self::StudBrackets => "stud_brackets",
            Self::TopRails => "top_rails",
            Self::CornerPosts => "corner_posts",
            Self::FloorMembers => "floor_members",
            Self::FloorEdges => "floor_edges",
            Self::OpeningFrames => "opening_frames",
            Self::UnsolvedFrameLine(_) => "unsolved_frame_line",
        }
    }
}

/// The heat loss of the room.
#[derive(Clone, Debug, PartialEq)]
pub struct HeatLoss {
    /// Element by element, in a fixed order; elements that are not there are left out.
    pub losses: Vec<Loss>,
    /// Through the envelope, W/K.
    pub transmission: HeatTransferCoefficient,
    /// By air, W/K.
    pub air: HeatTransferCoefficient,
    /// Indoor less outdoor design temperature.
    pub temperature_difference: TemperatureDifference,
    /// Design heating load Φ = (H_T + H_V)·(θ_i − θ_e), W.
    pub design_load: Power,
    /// Parts left out.
    pub not_counted: Vec<NotCounted>,
}

impl HeatLoss {
    /// The losses of a design.
    ///
    /// H_T = Σ A·U + Σ l·ψ; H_V = ρ·c·n·V; Φ = (H_T + H_V)·(θ_i − θ_e) (EN 12831-1:2017, without
    /// the reheat allowance).
    pub fn of(
        design: &Design,
        room: &Room,
        envelope: &Envelope,
        frame_lines: &[FrameLineDetail],
    ) -> Self {
        let mut coefficients: Vec<(Element, HeatTransferCoefficient)> = envelope
            .plain
            .iter()
            .map(|plain| (Element::Plain(plain.surface), plain.transmittance * plain.area))
            .collect();
        let mut not_counted = vec![
            NotCounted::CornerCastings,
            NotCounted::StudBrackets,
            NotCounted::TopRails,
            NotCounted::CornerPosts,
            NotCounted::FloorMembers,
            NotCounted::FloorEdges,
            NotCounted::OpeningFrames,
        ];
        for lines in &envelope.frame_lines {
            let detail = frame_lines.iter().find(|detail| detail.surface == lines.surface);
            match detail.map(|detail| &detail.outcome) {
                Some(Ok(solved)) => coefficients.push((
                    Element::FrameLines(lines.surface),
                    solved.linear_transmittance * lines.length,
                )),
                Some(Err(_)) | None => {
                    not_counted.push(NotCounted::UnsolvedFrameLine(lines.surface));
                }
            }
        }
        coefficients.extend(
            [
                (Element::PersonnelDoor, envelope.personnel_door),
                (Element::Windows, envelope.windows),
            ]
            .map(|(element, openings)| (element, openings.transmittance * openings.area)),
        );
        let transmission = coefficients.iter().map(|&(_, coefficient)| coefficient).sum();
        let air = HeatTransferCoefficient::new(
            (design.air_changes * room.volume).value()
                * AIR_DENSITY.value()
                * AIR_HEAT_CAPACITY.value(),
        );
        coefficients.push((Element::Air, air));
        let temperature_difference = design.indoor_temperature - design.outdoor_temperature;
        let total = transmission + air;
        let losses = coefficients
            .into_iter()
            .filter(|&(_, coefficient)| coefficient != HeatTransferCoefficient::ZERO)
            .map(|(element, coefficient)| Loss {
                element,
                coefficient,
                power: coefficient * temperature_difference,
                share: coefficient / total,
            })
            .collect();
        Self {
            losses,
            transmission,
            air,
            temperature_difference,
            design_load: total * temperature_difference,
            not_counted,
        }
    }

    /// H_T + H_V, W/K.
    pub fn total(&self) -> HeatTransferCoefficient {
        self.transmission + self.air
    }
}
