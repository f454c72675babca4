//! Everything a year needs to know of a design, reckoned once.

use super::check::CheckedYearChoices;
use super::choices::YearChoices;
use super::envelope_heat::{EnvelopeHeat, face_of};
use super::error::YearModelError;
use super::heat_capacity::InsideMass;
use super::network::{NetworkParts, RoomNetwork};
use super::sol_air::{SKY_BEFORE_WINDOWS, SUNNY_SURFACE_COEFFICIENT, WHOLE_SKY};
use super::surroundings::Surroundings;
use super::vapour_balance::VapourBalance;
use crate::climate::BoxFace;
use crate::evaluate::Evaluation;
use crate::heat_loss::{AIR_DENSITY, AIR_HEAT_CAPACITY};
use crate::moisture::{SpotPlace, opening_temperature_factor};
use crate::psychro::{STANDARD_PRESSURE, latent_heat_of_vaporisation};
use crate::units::{Area, HeatTransferCoefficient, Power, TemperatureFactor};

/// Heat that a kilogram of water takes to dry at 20 °C, J/kg.
const LATENT_HEAT: f64 = latent_heat_of_vaporisation(20.0);

/// A design in its surroundings with the choices about use, ready to run.
#[derive(Clone, Debug)]
pub struct YearModel<'a> {
    pub(super) surroundings: &'a Surroundings,
    pub(super) choices: YearChoices,
    pub(super) network: RoomNetwork,
    pub(super) vapour: VapourBalance,
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
    /// Watts that water drying in the room takes from its air.
    pub(super) drying: f64,
    /// Square metres of full sun through the windows, and the column of their face.
    pub(super) window: (f64, usize),
    /// Temperature factor of the windows in their mean.
    pub(super) window_factor: f64,
    /// W/K of the fan at full flow.
    pub(super) fan: f64,
    /// Known cold spots, coldest first.
    pub(super) spots: Vec<(SpotPlace, TemperatureFactor)>,
    pub(super) factors: Vec<f64>,
    pub(super) is_waiting: bool,
}

impl<'a> YearModel<'a> {
    /// Of an evaluation. The set-point is the design's room temperature; air weighs what it does at
    /// the place's elevation.
    ///
    /// # Errors
    /// Refuses surroundings whose box faces otherwise than chosen, choices checked beside another
    /// set-point, and a design whose network of heat cannot be.
    pub fn new(
        evaluation: &Evaluation,
        surroundings: &'a Surroundings,
        checked: &CheckedYearChoices,
    ) -> Result<Self, YearModelError> {
        let choices = checked.choices().clone();
        let design = evaluation.checked.design();
        if checked.set_point() != design.indoor_temperature {
            return Err(YearModelError::CheckedForAnotherSetPoint {
                checked: checked.set_point(),
                design: design.indoor_temperature,
            });
        }
        if surroundings.front_faces != choices.front_faces {
            return Err(YearModelError::FacesOtherwise {
                surroundings: surroundings.front_faces,
                chosen: choices.front_faces,
            });
        }
        let (room, envelope) = (&evaluation.room, &evaluation.envelope);
        let thinner = surroundings.air_pressure / STANDARD_PRESSURE;
        let heat = EnvelopeHeat::of(design, &evaluation.heat_loss);
        let opaque = heat.opaque();
        let mass = InsideMass::of(design, room, envelope, choices.contents);
        let opaque_area: Area = envelope.plain.iter().map(|plain| plain.area).sum();
        let network = RoomNetwork::new(&NetworkParts {
            opaque: HeatTransferCoefficient::new(opaque),
            openings: HeatTransferCoefficient::new(heat.windows + heat.door),
            leaks: evaluation.heat_loss.air * thinner,
            capacity: mass.capacity,
            opaque_area,
            mass_to_surface: mass.to_surface,
            mass_area: mass.area,
            total_area: opaque_area + envelope.windows.area + envelope.personnel_door.area,
        })?;
        // Kelvin at the paint for each W/m².
        let per_sun = choices.paint.value() / SUNNY_SURFACE_COEFFICIENT.value();
        let mut sun_at_steel = heat.faces.map(|face| face * per_sun / opaque);
        let roof = column_of(BoxFace::Roof);
        sun_at_steel[roof] *= choices.sun_on_roof.value();
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
            * choices.window_sun.value()
            * choices.sun_on_windows.value();
        let spots: Vec<_> = evaluation
            .cold_spots
            .spots
            .iter()
            .map(|spot| (spot.place, spot.temperature_factor))
            .collect();
        let fan = choices.fan_flow * AIR_DENSITY * thinner;
        Ok(Self {
            surroundings,
            network,
            vapour: VapourBalance::of(design, room, envelope, surroundings.air_pressure),
            set_point: design.indoor_temperature.as_celsius(),
            sun_at_steel,
            sky: WHOLE_SKY.value() * seen / opaque,
            opaque,
            sky_through_openings: heat.windows * SKY_BEFORE_WINDOWS.value()
                + heat.door * 0.5 * WHOLE_SKY.value(),
            sun_on_door: (heat.door * per_sun, door_column),
            drying: choices.moisture_drying.value() * LATENT_HEAT,
            window: (open, window_column),
            window_factor: opening_temperature_factor(&envelope.windows).value(),
            fan: fan.value() * AIR_HEAT_CAPACITY.value(),
            factors: spots.iter().map(|(_, factor)| factor.value()).collect(),
            spots,
            is_waiting: evaluation.heat_loss.is_waiting() || evaluation.cold_spots.is_waiting(),
            choices,
        })
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
