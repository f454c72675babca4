//! Every place the damp looks at, coldest first.

use crate::design::{Design, Surface};
use crate::detail::{Outcome, PlacedDetail};
use crate::envelope::{
    DAMP_SURFACE_RESISTANCE, Envelope, HeatFlow, Opening, Openings, PlainArea, SurfaceKind,
    ThermalBridge,
};
use crate::heat_loss::Element;
use crate::moisture::{HumidityLimit, SurfaceRisk, surface_temperature};
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

    /// The frame, leaf or glazing of an opening.
    pub const fn of_opening(opening: Opening) -> Self {
        match opening {
            Opening::PersonnelDoor => Self::PersonnelDoor,
            Opening::Window => Self::Windows,
        }
    }

    /// Whether two places are of one sort, as the top castings of both ends are.
    pub fn is_of_one_sort_with(self, other: Self) -> bool {
        let sort = core::mem::discriminant::<Self>;
        match (self, other) {
            (Self::Detail(one), Self::Detail(other)) => {
                core::mem::discriminant(&one) == core::mem::discriminant(&other)
            }
            _ => sort(&self) == sort(&other),
        }
    }

    /// What is judged here: which surface resistance its factor is taken with, and which verdict of
    /// ISO 13788 applies. Of the detail round an opening it is tube, lining and reveal; what belongs to
    /// door or window is the opening's own place.
    pub const fn surface_kind(self) -> SurfaceKind {
        match self {
            Self::Detail(_) | Self::Plain(_) => SurfaceKind::Opaque,
            Self::PersonnelDoor | Self::Windows => SurfaceKind::FrameOrGlazing,
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
    /// What kind of surface.
    pub kind: SurfaceKind,
    /// f_Rsi there, at its coldest, with the surface resistance of its kind: by it the place is judged.
    pub temperature_factor: TemperatureFactor,
    /// The same with the ordinary surface resistance, which is there while it takes water from the air.
    pub ordinary_factor: TemperatureFactor,
    /// Surface temperature at the temperatures looked at.
    pub surface_temperature: Temperature,
    /// How humid the room may be.
    pub limit: HumidityLimit,
}

impl ColdSpot {
    /// Temperature factor by which it is judged, and the ordinary one.
    pub fn factors(&self) -> [TemperatureFactor; 2] {
        [self.temperature_factor, self.ordinary_factor]
    }

    /// Whether what condenses there freezes.
    pub fn frosts(&self) -> bool {
        self.surface_temperature < Temperature::celsius(0.0)
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

/// Temperature factors of a plain area of plane layers, f = 1 − R_si / R_tot: with R_si = 0.25 m²·K/W both times,
/// by which it is judged (ISO 13788:2012, clause 5: 1 − U·R_si, U being taken with that R_si), and with the ordinary R_si
/// of ISO 6946. Where the waves of the sheet count, the field of one of them tells instead.
pub fn plain_temperature_factors(plain: &PlainArea) -> [TemperatureFactor; 2] {
    let inside = HeatFlow::through(plain.surface).inside_surface_resistance();
    let rest = plain.transmittance.resistance() - inside;
    [DAMP_SURFACE_RESISTANCE, inside]
        .map(|surface| TemperatureFactor::new(1.0 - surface / (rest + surface)))
}

/// Temperature factor of a door or window in its mean, f = 1 − 0.13·U (ISO 13788:2012, clause 5:
/// R_si 0.13 m²·K/W for frames and glazing). Its edge in the steel frame is colder: the detail there
/// tells how much.
pub fn opening_temperature_factor(openings: &Openings) -> TemperatureFactor {
    let inside = HeatFlow::Horizontal.inside_surface_resistance();
    TemperatureFactor::new(1.0 - inside / openings.transmittance.resistance())
}

impl ColdSpots {
    /// The places of a design at its own temperatures.
    pub fn of(design: &Design, envelope: &Envelope, details: &[PlacedDetail]) -> Self {
        let mut known = Vec::new();
        let mut edges: Vec<(SpotPlace, TemperatureFactor)> = Vec::new();
        let mut unknown = Vec::new();
        for placed in details {
            let place = SpotPlace::of(placed.place);
            match &placed.outcome {
                Outcome::Solved(field) => {
                    let own = field.lowest_of(place.surface_kind());
                    let factor = own.map_or(field.temperature_factor, |spot| spot.factor);
                    known.push((place, [factor, field.ordinary_opaque_factor]));
                    let opening = placed.place.opening_shown();
                    if let (Some(opening), Some(edge)) = (opening, field.frame_or_glazing) {
                        edges.push((SpotPlace::of_opening(opening), edge.factor));
                    }
                }
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
            flat.map(|plain| (SpotPlace::Plain(plain.surface), plain_temperature_factors(plain))),
        );
        for (place, openings) in [
            (SpotPlace::PersonnelDoor, &envelope.personnel_door),
            (SpotPlace::Windows, &envelope.windows),
        ] {
            if openings.area > Area::ZERO {
                let mean = opening_temperature_factor(openings);
                let of_place = edges.iter().filter(|(of, _)| *of == place);
                let coldest = of_place.fold(
                    mean,
                    |coldest, &(_, factor)| {
                        if factor < coldest { factor } else { coldest }
                    },
                );
                // Judged at its edge; as a whole it takes water at its mean.
                known.push((place, [coldest, mean]));
            }
        }
        Self::from_factors(design.indoor_temperature, design.outdoor_temperature, known, unknown)
    }

    /// Places of known temperature factors, that by which each is judged and the ordinary one, at a room and
    /// outdoor temperature, put in order.
    pub fn from_factors(
        indoor: Temperature,
        outdoor: Temperature,
        known: impl IntoIterator<Item = (SpotPlace, [TemperatureFactor; 2])>,
        mut unknown: Vec<UnknownSpot>,
    ) -> Self {
        let mut spots = Vec::new();
        for (place, [temperature_factor, ordinary_factor]) in known {
            let surface_temperature = surface_temperature(temperature_factor, indoor, outdoor);
            match HumidityLimit::at_surface(surface_temperature, indoor) {
                Ok(limit) => {
                    // Two dozen at most: each goes in front of the first that is warmer.
                    let warmer = |other: &ColdSpot| other.temperature_factor > temperature_factor;
                    let row = spots.iter().position(warmer).unwrap_or(spots.len());
                    let kind = place.surface_kind();
                    let spot = ColdSpot {
                        place,
                        kind,
                        temperature_factor,
                        ordinary_factor,
                        surface_temperature,
                        limit,
                    };
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
        let known = self.spots.iter().map(|spot| (spot.place, spot.factors()));
        Self::from_factors(indoor, outdoor, known, self.unknown.clone())
    }

    /// The same places, those that wait with the temperature factors they had before. What waits is still
    /// told.
    #[must_use]
    pub fn with_waiting_from(&self, earlier: &Self) -> Self {
        let known = self.spots.iter().map(|spot| (spot.place, spot.factors()));
        let before = self.unknown.iter().filter_map(|unknown| {
            let before = earlier.spots.iter().find(|spot| spot.place == unknown.place)?;
            (unknown.reason == UnknownReason::Waiting).then_some((unknown.place, before.factors()))
        });
        Self::from_factors(self.indoor, self.outdoor, known.chain(before), self.unknown.clone())
    }

    /// The coldest place known.
    pub fn weakest(&self) -> Option<&ColdSpot> {
        self.spots.first()
    }

    /// The coldest place of another sort than the weakest: what sets the limit once all of that sort are
    /// mended.
    pub fn next_weakest(&self) -> Option<&ColdSpot> {
        let weakest = self.weakest()?.place;
        self.spots.iter().find(|spot| !spot.place.is_of_one_sort_with(weakest))
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
