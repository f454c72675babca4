//! Every place the damp looks at, coldest first.

use super::limit::{HumidityLimit, SurfaceRisk, surface_temperature};
use super::remedy::Remedy;
use crate::design::{Design, Surface};
use crate::detail::{Outcome, PlacedDetail};
use crate::envelope::{
    DAMP_SURFACE_RESISTANCE, Envelope, HeatFlow, Openings, PlainArea, ThermalBridge,
};
use crate::heat_loss::Element;
use crate::psychro::PsychroError;
use crate::units::{Area, RelativeHumidity, Temperature, TemperatureFactor};

/// A place of the room's surface.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum SpotPlace {
    /// A cold detail.
    Detail(ThermalBridge),
    /// The plain area of a surface at its coldest.
    Plain(Surface),
    /// The personnel door.
    PersonnelDoor,
    /// The windows.
    Windows,
}

impl SpotPlace {
    /// Where a detail is coldest: on the plain area for the waves of its sheet, which show it as it
    /// is.
    pub const fn of(place: ThermalBridge) -> Self {
        match place {
            ThermalBridge::Waves(surface) => Self::Plain(surface),
            _ => Self::Detail(place),
        }
    }

    /// Stable name, that of the same place in the heat loss.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Detail(place) => Element::Detail(place).key(),
            Self::Plain(surface) => Element::Plain(surface).key(),
            Self::PersonnelDoor => Element::PersonnelDoor.key(),
            Self::Windows => Element::Windows.key(),
        }
    }
}

/// A place with what it stands.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ColdSpot {
    /// Where.
    pub place: SpotPlace,
    /// f_Rsi there, at its coldest.
    pub temperature_factor: TemperatureFactor,
    /// Surface temperature at the temperatures looked at.
    pub surface_temperature: Temperature,
    /// How humid the room may be.
    pub limit: HumidityLimit,
}

impl ColdSpot {
    /// Whether what condenses there freezes.
    pub fn frosts(&self) -> bool {
        self.surface_temperature < Temperature::celsius(0.0)
    }

    /// What mends it.
    pub const fn remedy(&self) -> Remedy {
        Remedy::of(self.place)
    }
}

/// Why nothing is said of a place.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum UnknownReason {
    /// Its field is being solved aside.
    Waiting,
    /// Its field did not solve.
    DidNotSolve,
    /// Its temperature is outside the range of the moisture formulas.
    OutOfRange(PsychroError),
}

impl UnknownReason {
    /// Stable name.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Waiting => "waiting",
            Self::DidNotSolve => "did_not_solve",
            Self::OutOfRange(_) => "out_of_range",
        }
    }
}

/// A place that nothing is known of yet. It may be the coldest.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct UnknownSpot {
    /// Where.
    pub place: SpotPlace,
    /// Why.
    pub reason: UnknownReason,
}

/// Every place of a room, coldest first.
#[derive(Clone, Debug, PartialEq)]
pub struct ColdSpots {
    /// Room temperature looked at.
    pub indoor: Temperature,
    /// Outdoor temperature looked at.
    pub outdoor: Temperature,
    /// Places known, coldest first.
    pub spots: Vec<ColdSpot>,
    /// Places not known.
    pub unknown: Vec<UnknownSpot>,
}

/// Temperature factor of a plain area of plane layers, f = 1 − R_si / R_tot with R_si = 0.25 m²·K/W both
/// times (ISO 13788:2012, clause 5: 1 − U·R_si, U being taken with that R_si). Where the waves of the
/// sheet count, the field of one of them tells instead.
pub fn plain_temperature_factor(plain: &PlainArea) -> TemperatureFactor {
    let inside = HeatFlow::through(plain.surface).inside_surface_resistance();
    let with_damp_surface = plain.transmittance.resistance() - inside + DAMP_SURFACE_RESISTANCE;
    TemperatureFactor::new(1.0 - DAMP_SURFACE_RESISTANCE / with_damp_surface)
}

/// Temperature factor of a door or window in its mean, f = 1 − 0.13·U (ISO 13788:2012, clause 5:
/// R_si 0.13 m²·K/W for frames and glazing). The edge of a pane is colder.
pub fn opening_temperature_factor(openings: &Openings) -> TemperatureFactor {
    let inside = HeatFlow::Horizontal.inside_surface_resistance();
    TemperatureFactor::new(1.0 - inside / openings.transmittance.resistance())
}

impl ColdSpots {
    /// The places of a design at its own temperatures.
    pub fn of(design: &Design, envelope: &Envelope, details: &[PlacedDetail]) -> Self {
        let mut known = Vec::new();
        let mut unknown = Vec::new();
        for placed in details {
            let place = SpotPlace::of(placed.place);
            match &placed.outcome {
                Outcome::Solved(field) => known.push((place, field.temperature_factor)),
                Outcome::Waiting => {
                    unknown.push(UnknownSpot { place, reason: UnknownReason::Waiting });
                }
                Outcome::Failed(_) => {
                    unknown.push(UnknownSpot { place, reason: UnknownReason::DidNotSolve });
                }
            }
        }
        let flat = envelope.plain.iter().filter(|plain| {
            let waves = ThermalBridge::Waves(plain.surface);
            !details.iter().any(|placed| placed.place == waves)
        });
        known.extend(
            flat.map(|plain| (SpotPlace::Plain(plain.surface), plain_temperature_factor(plain))),
        );
        for (place, openings) in [
            (SpotPlace::PersonnelDoor, &envelope.personnel_door),
            (SpotPlace::Windows, &envelope.windows),
        ] {
            if openings.area > Area::ZERO {
                known.push((place, opening_temperature_factor(openings)));
            }
        }
        Self::from_factors(design.indoor_temperature, design.outdoor_temperature, known, unknown)
    }

    /// Places of known temperature factors at a room and outdoor temperature, put in order.
    pub fn from_factors(
        indoor: Temperature,
        outdoor: Temperature,
        known: impl IntoIterator<Item = (SpotPlace, TemperatureFactor)>,
        mut unknown: Vec<UnknownSpot>,
    ) -> Self {
        let mut spots = Vec::new();
        for (place, temperature_factor) in known {
            let surface_temperature = surface_temperature(temperature_factor, indoor, outdoor);
            match HumidityLimit::at_surface(surface_temperature, indoor) {
                Ok(limit) => {
                    // Two dozen at most: each goes in front of the first that is warmer.
                    let warmer = |other: &ColdSpot| other.temperature_factor > temperature_factor;
                    let row = spots.iter().position(warmer).unwrap_or(spots.len());
                    let spot = ColdSpot { place, temperature_factor, surface_temperature, limit };
                    spots.insert(row, spot);
                }
                Err(error) => {
                    let reason = UnknownReason::OutOfRange(error);
                    unknown.push(UnknownSpot { place, reason });
                }
            }
        }
        Self { indoor, outdoor, spots, unknown }
    }

    /// The same places at other temperatures. No field is solved again.
    #[must_use]
    pub fn at(&self, indoor: Temperature, outdoor: Temperature) -> Self {
        let known = self.spots.iter().map(|spot| (spot.place, spot.temperature_factor));
        Self::from_factors(indoor, outdoor, known, self.unknown.clone())
    }

    /// The coldest place known.
    pub fn weakest(&self) -> Option<&ColdSpot> {
        self.spots.first()
    }

    /// The coldest place left once the weakest is mended, and with it all that the same remedy
    /// mends.
    pub fn next_weakest(&self) -> Option<&ColdSpot> {
        let mended = self.weakest()?.remedy();
        self.spots.iter().find(|spot| spot.remedy() != mended)
    }

    /// Places that a humidity of the room wets or lets mould grow on, coldest first.
    pub fn at_risk(
        &self,
        humidity: RelativeHumidity,
    ) -> impl Iterator<Item = (&ColdSpot, SurfaceRisk)> {
        self.spots
            .iter()
            .map(move |spot| (spot, spot.limit.risk(humidity)))
            .filter(|&(_, risk)| risk != SurfaceRisk::None)
    }

    /// Whether places are still being solved aside, so that a colder one may turn up.
    pub fn is_waiting(&self) -> bool {
        self.unknown.iter().any(|spot| spot.reason == UnknownReason::Waiting)
    }
}
