//! How humid the room may be before a surface drips or moulds.

use crate::psychro::PsychroError;
use crate::psychro::iso_13788::saturation_pressure;
use crate::units::{RelativeHumidity, Temperature, TemperatureFactor};

/// Relative humidity at a surface from which mould may grow, 80 % over several days
/// (ISO 13788:2012, clause 5).
pub const MOULD_SURFACE_HUMIDITY: RelativeHumidity = RelativeHumidity::percent(80.0);

/// Surface temperature θ_si = θ_e + f_Rsi·(θ_i − θ_e), °C (ISO 10211:2017).
pub fn surface_temperature(
    factor: TemperatureFactor,
    indoor: Temperature,
    outdoor: Temperature,
) -> Temperature {
    outdoor + (indoor - outdoor) * factor.value()
}

/// What a humidity of the room brings to a surface.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum SurfaceRisk {
    /// Neither.
    None,
    /// Mould if it lasts for days.
    Mould,
    /// Water, or frost below 0 °C.
    Drip,
}

impl SurfaceRisk {
    /// Stable name.
    pub const fn key(self) -> &'static str {
        match self {
            Self::None => "none",
            Self::Mould => "mould",
            Self::Drip => "drip",
        }
    }
}

/// The highest relative humidity of the room that a surface stands.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct HumidityLimit {
    /// Before it drips, or frosts below 0 °C: the dew point lies at the surface.
    pub drip: RelativeHumidity,
    /// Before mould may grow: 80 % at the surface.
    pub mould: RelativeHumidity,
}

impl HumidityLimit {
    /// The limits of a surface in a room.
    ///
    /// φ_drip = p_sat(θ_si) / p_sat(θ_i) and φ_mould = 0.8·φ_drip. Above 1 where the surface is
    /// warmer than the room. Range: −90 °C to 100 °C. Source: ISO 13788:2012, clause 5 and
    /// annex E.
    ///
    /// # Errors
    /// Refuses a temperature out of range.
    pub fn at_surface(surface: Temperature, indoor: Temperature) -> Result<Self, PsychroError> {
        let drip = saturation_pressure(surface)? / saturation_pressure(indoor)?;
        Ok(Self {
            drip: RelativeHumidity::new(drip),
            mould: RelativeHumidity::new(drip * MOULD_SURFACE_HUMIDITY.value()),
        })
    }

    /// What a humidity of the room brings; at the limit itself, nothing yet.
    pub fn risk(&self, humidity: RelativeHumidity) -> SurfaceRisk {
        if humidity > self.drip {
            SurfaceRisk::Drip
        } else if humidity > self.mould {
            SurfaceRisk::Mould
        } else {
            SurfaceRisk::None
        }
    }
}

/// The limit of a place at one outdoor temperature.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LimitPoint {
    /// Outdoor temperature θ_e.
    pub outdoor: Temperature,
    /// Surface temperature θ_si.
    pub surface: Temperature,
    /// What the room may have.
    pub limit: HumidityLimit,
}

/// The limit of a place over a run of outdoor temperatures: by [`surface_temperature`] and
/// [`HumidityLimit::at_surface`].
///
/// # Errors
/// Refuses a temperature out of range.
pub fn limit_curve(
    factor: TemperatureFactor,
    indoor: Temperature,
    outdoors: impl IntoIterator<Item = Temperature>,
) -> Result<Vec<LimitPoint>, PsychroError> {
    outdoors
        .into_iter()
        .map(|outdoor| {
            let surface = surface_temperature(factor, indoor, outdoor);
            HumidityLimit::at_surface(surface, indoor).map(|limit| LimitPoint {
                outdoor,
                surface,
                limit,
            })
        })
        .collect()
}
