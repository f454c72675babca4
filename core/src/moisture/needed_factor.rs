//! How warm a surface must be for a humidity, and rules of one fixed temperature factor.

use super::error::{MoistureError, MoistureQuantity};
use super::limit::{HumidityLimit, MOULD_SURFACE_HUMIDITY, surface_temperature};
use crate::bounds::{BoundedQuantity, Bounds};
use crate::psychro::PsychroError;
use crate::psychro::iso_13788::{lowest_surface_temperature, vapour_pressure};
use crate::source::Source;
use crate::units::{RelativeHumidity, Temperature, TemperatureFactor};

/// The temperature factor that a surface needs in one state of room and outdoors.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct NeededFactor {
    /// Lowest surface temperature without dripping: the dew point.
    pub drip_surface: Temperature,
    /// Lowest surface temperature without mould: 80 % at the surface.
    pub mould_surface: Temperature,
    /// f_Rsi that keeps the surface from dripping.
    pub drip: TemperatureFactor,
    /// f_Rsi that keeps it from mould.
    pub mould: TemperatureFactor,
}

impl NeededFactor {
    /// What a humidity of the room needs at an outdoor temperature.
    ///
    /// p = φ·p_sat(θ_i); θ_si is where p is p_sat, or 0.8·p_sat; f = (θ_si − θ_e) / (θ_i − θ_e).
    /// Less than 0 where even a surface as cold as outdoors would do; more than 1 where none does.
    ///
    /// Range: θ_e from −60 °C to 0.1 K below θ_i, θ_i to 100 °C, φ above 0 and to 1.
    /// Source: ISO 13788:2012, clause 5 and annex E.
    ///
    /// # Errors
    /// Refuses an input out of range, or outdoors not colder than the room.
    pub fn of(
        indoor: Temperature,
        humidity: RelativeHumidity,
        outdoor: Temperature,
    ) -> Result<Self, MoistureError> {
        let quantity = MoistureQuantity::OutdoorTemperature;
        let coldest = quantity.bounds().minimum();
        let allowed = Bounds::between(coldest, indoor.as_celsius() - 0.1);
        quantity.check_within(outdoor.as_celsius(), allowed)?;
        let vapour = vapour_pressure(indoor, humidity)?;
        let drip_surface = lowest_surface_temperature(vapour, RelativeHumidity::new(1.0))?;
        let mould_surface = lowest_surface_temperature(vapour, MOULD_SURFACE_HUMIDITY)?;
        let factor =
            |surface: Temperature| TemperatureFactor::new((surface - outdoor) / (indoor - outdoor));
        Ok(Self {
            drip_surface,
            mould_surface,
            drip: factor(drip_surface),
            mould: factor(mould_surface),
        })
    }
}

/// A rule that asks every surface for one temperature factor, and the state it was made for.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FixedCriterion {
    /// The least f_Rsi.
    pub factor: TemperatureFactor,
    /// Room temperature it was made for.
    pub indoor: Temperature,
    /// Humidity it was made for.
    pub humidity: RelativeHumidity,
    /// Outdoor temperature it was made for.
    pub outdoor: Temperature,
    /// Where it stands.
    pub source: Source,
}

impl FixedCriterion {
    /// f_Rsi ≥ 0.70 for 20 °C and 50 % indoors at −5 °C (DIN 4108-2:2013, 6.2). In a colder place
    /// it protects a drier room only: see [`Self::limit_at`].
    pub const DIN_4108_2: Self = Self {
        factor: TemperatureFactor::new(0.70),
        indoor: Temperature::celsius(20.0),
        humidity: RelativeHumidity::percent(50.0),
        outdoor: Temperature::celsius(-5.0),
        source: Source::Din4108Part2,
    };

    /// The factor that its own state needs, before rounding.
    ///
    /// # Errors
    /// As [`NeededFactor::of`].
    pub fn needed(&self) -> Result<NeededFactor, MoistureError> {
        NeededFactor::of(self.indoor, self.humidity, self.outdoor)
    }

    /// The humidity that a surface which just meets the rule stands at another outdoor
    /// temperature.
    ///
    /// # Errors
    /// Refuses a temperature out of range.
    pub fn limit_at(&self, outdoor: Temperature) -> Result<HumidityLimit, PsychroError> {
        let surface = surface_temperature(self.factor, self.indoor, outdoor);
        HumidityLimit::at_surface(surface, self.indoor)
    }
}
