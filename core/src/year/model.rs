//! Everything a year needs to know of a design, reckoned once.

use super::check::CheckedYearChoices;
use super::choices::YearChoices;
use super::cold_places::OfYear;
use super::envelope_heat::{EnvelopeHeat, face_of};
use super::error::YearModelError;
use super::fan::FanOfYear;
use super::surroundings::Surroundings;
use super::use_schedule::UseSchedule;
use super::vapour_balance::VapourBalance;
use crate::climate::{BoxFace, SKY_BEFORE_WINDOWS, SUNNY_SURFACE_COEFFICIENT, WHOLE_SKY};
use crate::design::Design;
use crate::evaluate::{Evaluation, NotReckoned};
use crate::humidity::conductance_onto_surface;
use crate::room_network::RoomNetwork;
use crate::units::Power;

/// A design in its surroundings with its heater, ready to run.
#[derive(Clone, Debug)]
pub struct YearModel<'a> {
    pub(super) surroundings: &'a Surroundings,
    pub(super) design: Design,
    pub(super) choices: YearChoices,
    pub(super) network: RoomNetwork,
    pub(super) vapour: VapourBalance,
    pub(super) schedule: UseSchedule,
    pub(super) fan: FanOfYear,
    pub(super) set_point: f64,
    /// Kelvin of sol-air temperature for each W/m² on a face.
    pub(super) sun_at_steel: [f64; 5],
    /// Kelvin that the sky takes off.
    pub(super) sky: f64,
    opaque: f64,
    /// Watts that the sky draws through windows and personnel door.
    pub(super) sky_through_openings: f64,
    /// Watts through the personnel door for each W/m² of sun on it, and the column of its face.
    pub(super) sun_on_door: (f64, usize),
    /// Square metres of full sun through the windows, and the column of their face.
    pub(super) window: (f64, usize),
    /// Known cold places, coldest first.
    pub(super) places: Vec<OfYear>,
    pub(super) is_waiting: bool,
}

impl<'a> YearModel<'a> {
    /// Of an evaluation. Set-point, use, air and site are the design's; air weighs what it does at the height of the
    /// design's place.
    ///
    /// # Errors
    /// Refuses surroundings whose box faces otherwise than chosen, and a design whose own balance was not
    /// reckoned.
    pub fn new(
        evaluation: &Evaluation,
        surroundings: &'a Surroundings,
        checked: &CheckedYearChoices,
    ) -> Result<Self, YearModelError> {
        let design = evaluation.checked.design();
        if surroundings.front_faces != design.front_faces {
            return Err(YearModelError::FacesOtherwise {
                surroundings: surroundings.front_faces,
                chosen: design.front_faces,
            });
        }
        let balance = evaluation.balance.as_ref().map_err(Clone::clone)?;
        let (room, envelope) = (&evaluation.room, &evaluation.envelope);
        let onto = conductance_onto_surface(design.indoor_temperature).map_err(NotReckoned::Air)?;
        let heat = EnvelopeHeat::of(design, &evaluation.heat_loss);
        let opaque = heat.opaque();
        // Kelvin at the paint for each W/m².
        let per_sun = design.paint.value() / SUNNY_SURFACE_COEFFICIENT.value();
        let mut sun_at_steel = heat.faces.map(|face| face * per_sun / opaque);
        let roof = column_of(BoxFace::Roof);
        sun_at_steel[roof] *= design.sun_on_roof.value();
        // A wall sees half of the sky, a roof all of it.
        let seen: f64 = heat
            .faces
            .iter()
            .enumerate()
            .map(|(column, face)| if column == roof { *face } else { 0.5 * face })
            .sum();
        let window_column = column_of(face_of(design.window_wall));
        let door_column = design.personnel_door.wall().map_or(0, |wall| column_of(face_of(wall)));
        let open = envelope.windows.area.value()
            * design.window_sun.value()
            * design.sun_on_windows.value();
        Ok(Self {
            surroundings,
            network: balance.network,
            vapour: VapourBalance::of(design, room, envelope, onto),
            schedule: UseSchedule::of(design, &balance.humidity.sources),
            fan: FanOfYear::of(design, &balance.humidity),
            set_point: design.indoor_temperature.as_celsius(),
            sun_at_steel,
            sky: WHOLE_SKY.value() * seen / opaque,
            opaque,
            sky_through_openings: heat.windows * SKY_BEFORE_WINDOWS.value()
                + heat.door * 0.5 * WHOLE_SKY.value(),
            sun_on_door: (heat.door * per_sun, door_column),
            window: (open, window_column),
            places: balance.humidity.places.iter().map(|&at| OfYear::new(at, onto)).collect(),
            is_waiting: evaluation.heat_loss.is_waiting() || evaluation.cold_spots.is_waiting(),
            choices: checked.choices().clone(),
            design: design.clone(),
        })
    }

    /// Takes as much less of the sun at all steel and the door.
    pub(super) fn with_paint(&mut self, share: f64) {
        self.sun_at_steel = self.sun_at_steel.map(|per_sun| per_sun * share);
        self.sun_on_door.0 *= share;
    }

    /// Takes as much less of the sun on the roof and through the windows.
    pub(super) fn with_shade(&mut self, roof: f64, windows: f64) {
        self.sun_at_steel[column_of(BoxFace::Roof)] *= roof;
        self.window.0 *= windows;
    }

    /// The network of the room, fan off.
    pub fn network(&self) -> &RoomNetwork {
        &self.network
    }

    /// What the sky draws from steel, windows and door beyond what outdoor air does, at a steady room, W.
    pub fn sky_loss(&self) -> Power {
        Power::new(self.opaque * self.sky + self.sky_through_openings)
    }
}

/// The column of a face in the table of sun.
fn column_of(face: BoxFace) -> usize {
    BoxFace::ALL.iter().position(|&one| one == face).unwrap_or(0)
}
