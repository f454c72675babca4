//! The plain wall as its sheet waves: one wave with its foam, still air and lining, no member.

use super::build_up::BuildUp;
use super::model::{Drawing, Model, Surfaces};
use super::waves::Waves;
use crate::conduction::{CellSizes, Problem, Side};
use crate::design::{CheckedDesign, Surface};
use crate::envelope::{layers, transmittance};
use crate::freight_box::{Corrugation, ROOF};
use crate::units::{HeatTransferCoefficient, Length, ThermalConductivity, ThermalTransmittance};

/// One wave of a surface, from the middle of a trough to that of the next.
///
/// The plain area beside it is counted with the U of a formula, which knows nothing of heat that runs
/// aside along the steel; ψ of the wave is what its section loses more, and below zero where the
/// formula says too much: ψ = `L_2D` − U·pitch. Studs and joists add theirs to that, for their ψ is over
/// the same wall without them.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WaveSection {
    /// The surface.
    pub build_up: BuildUp,
    /// Its sheet.
    pub waves: Waves,
    /// U that its plain area is counted with.
    pub plain: ThermalTransmittance,
}

impl WaveSection {
    /// The wave of a surface of a design; of a flat sheet a stretch of it, which loses nothing more.
    pub fn of(checked: &CheckedDesign, surface: Surface) -> Self {
        let build_up = BuildUp::of(checked, surface);
        let flat = Corrugation { depth: Length::ZERO, thickness: build_up.sheet, ..ROOF };
        let stretch = Waves { sheet: flat, foam_follows: false, count: 1 };
        Self {
            build_up,
            waves: Waves::of(checked, surface).unwrap_or(stretch),
            plain: transmittance(checked, surface, &layers(checked, surface)),
        }
    }
}

impl Model for WaveSection {
    /// x along the wall, y from outdoors to the room, y = 0 on the inner face of the inner crests.
    fn problem(&self, surfaces: Surfaces) -> Problem {
        let (build_up, waves) = (&self.build_up, &self.waves);
        let cells = CellSizes::new(Length::mm(1.0), Length::mm(16.0));
        let along = [Length::ZERO, waves.width()];
        let across = [waves.bottom(), build_up.face()];
        let mut drawing = Drawing::section(along, across, surfaces, cells);
        waves.draw(&mut drawing, build_up);
        drawing.fill(along, build_up.lining_span(), build_up.lining_conductivity);
        waves.claim_outdoors(&mut drawing);
        drawing.expose_room(Side::YMaximum, build_up.direction);
        drawing.finish()
    }

    fn foam(&self) -> ThermalConductivity {
        self.build_up.foam_conductivity
    }

    fn lining(&self) -> Option<ThermalConductivity> {
        Some(self.build_up.lining_conductivity)
    }

    fn flanking(&self) -> HeatTransferCoefficient {
        self.plain * (self.waves.width() * Length::new(1.0))
    }
}
