//! The factor that three readings give, what it means at the design's temperatures, and whether it
//! is what was predicted.

use super::refusal::{ReadingError, ReadingField, Refusals, beyond_saturation};
use super::taken::{PlaceReadings, USUAL_READING_DIFFERENCE};
use crate::moisture::{HumidityLimit, surface_temperature};
use crate::units::{Temperature, TemperatureDifference, TemperatureFactor};

/// Half the widest band that a factor is given with, 0.10: a wider one cannot tell a place that
/// stands a room from one that drips. A choice of this project, no source; 0.10 is 4 K at 40 K.
pub const WIDEST_HALF_BAND: TemperatureFactor = TemperatureFactor::new(0.10);

/// The design's room must be this much warmer than its outdoors, K.
const LEAST_DESIGN_DIFFERENCE: f64 = 1.0;

/// What each reading adds to half the band of the factor.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BandParts {
    /// Of the inside air, f·u_i / (θ_i − θ_e).
    pub inside: TemperatureFactor,
    /// Of the outside air, (1 − f)·u_e / (θ_i − θ_e).
    pub outside: TemperatureFactor,
    /// Of the surface, u_si / (θ_i − θ_e).
    pub surface: TemperatureFactor,
    /// Of what drifts, τ·max(|r_si|, f·|r_i| + (1 − f)·|r_e|) / (θ_i − θ_e).
    pub drift: TemperatureFactor,
}

/// Something about readings that are taken all the same.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum ReadingDoubt {
    /// Inside and outside differ by less than is usually asked.
    DifferenceBelowUsual,
    /// The surface read warmer than the room, within the uncertainty.
    WarmerThanRoom,
    /// The surface read colder than outdoors, within the uncertainty.
    ColderThanOutdoors,
    /// Drift widens the band more than the thermometers do: waiting helps more than better ones.
    DriftPrevails,
}

impl ReadingDoubt {
    /// Stable name.
    pub const fn key(self) -> &'static str {
        match self {
            Self::DifferenceBelowUsual => "difference_below_usual",
            Self::WarmerThanRoom => "warmer_than_room",
            Self::ColderThanOutdoors => "colder_than_outdoors",
            Self::DriftPrevails => "drift_prevails",
        }
    }
}

/// The temperature factor of a place as it was read, [`PlaceReadings::factor`].
#[derive(Clone, Debug, PartialEq)]
pub struct MeasuredFactor {
    /// f, with the surface resistances that were there. Below 0 or above 1 by no more than the
    /// uncertainty.
    pub factor: TemperatureFactor,
    /// The lower end of its band.
    pub least: TemperatureFactor,
    /// The upper end of its band.
    pub most: TemperatureFactor,
    /// What makes the band wide.
    pub parts: BandParts,
    /// What should be known beside it.
    pub doubts: Vec<ReadingDoubt>,
}

impl MeasuredFactor {
    /// f = (θ_si − θ_e) / (θ_i − θ_e), D = θ_i − θ_e.
    ///
    /// By first order ∂f/∂θ_si = 1/D, ∂f/∂θ_i = −f/D, ∂f/∂θ_e = −(1 − f)/D; thermometers are off
    /// independently, so these add in quadrature (JCGM 100:2008, 5.1.2, from memory). A place of
    /// one time constant is τ·dθ_si/dt from where it would settle, and in a ramp of the airs that has
    /// lasted it lags τ·(f·r_i + (1 − f)·r_e); the larger is taken, r of both airs as if they worked the
    /// same way. That pushes the factor one way and so adds to the thermometers' part as it is.
    pub(super) fn of(readings: &PlaceReadings) -> Self {
        let PlaceReadings { inside, outside, surface, .. } = readings;
        let difference = inside.temperature - outside.temperature;
        let factor = (surface.temperature - outside.temperature) / difference;
        let (of_room, of_outdoors) = (factor.abs(), (1.0 - factor).abs());
        let drift = |reading: &super::ThermometerReading| reading.drift_per_hour.value().abs();
        let ramp = of_room * drift(inside) + of_outdoors * drift(outside);
        let unsettled = readings.time_constant.as_hours() * ramp.max(drift(surface));
        let parts = [
            of_room * (inside.uncertainty / difference),
            of_outdoors * (outside.uncertainty / difference),
            surface.uncertainty / difference,
            unsettled / difference.value(),
        ];
        let thermometers = (parts[0] * parts[0] + parts[1] * parts[1] + parts[2] * parts[2]).sqrt();
        let half = thermometers + parts[3];
        let doubts = [
            (difference < USUAL_READING_DIFFERENCE, ReadingDoubt::DifferenceBelowUsual),
            (factor > 1.0, ReadingDoubt::WarmerThanRoom),
            (factor < 0.0, ReadingDoubt::ColderThanOutdoors),
            (parts[3] > thermometers, ReadingDoubt::DriftPrevails),
        ];
        let [inside, outside, surface, drift] = parts.map(TemperatureFactor::new);
        Self {
            factor: TemperatureFactor::new(factor),
            least: TemperatureFactor::new(factor - half),
            most: TemperatureFactor::new(factor + half),
            parts: BandParts { inside, outside, surface, drift },
            doubts: doubts.into_iter().filter(|doubt| doubt.0).map(|doubt| doubt.1).collect(),
        }
    }

    /// Half the width of its band.
    pub fn half_band(&self) -> TemperatureFactor {
        TemperatureFactor::new((self.most.value() - self.least.value()) / 2.0)
    }

    /// What the place stands at the design's temperatures, θ_si = θ_e + f·(θ_i − θ_e).
    ///
    /// Range: θ_i to 100 °C, θ_e from −60 °C to 1 K below θ_i. Of a free wall as it was read: behind
    /// furniture the surface is colder (ISO 13788: 0.25 m²·K/W).
    ///
    /// # Errors
    /// Every number that cannot stand, together.
    pub fn at(
        &self,
        indoor: Temperature,
        outdoor: Temperature,
    ) -> Result<MeasuredLimit, ReadingError> {
        let mut refusals = Refusals::default();
        check_design(&mut refusals, indoor, outdoor);
        refusals.done()?;
        let at = |factor| {
            let surface = surface_temperature(factor, indoor, outdoor);
            HumidityLimit::at_surface(surface, indoor)
                .map(|limit| SurfaceAt { surface, limit })
                .map_err(|error| beyond_saturation(&error))
        };
        Ok(MeasuredLimit { read: at(self.factor)?, least: at(self.least)?, most: at(self.most)? })
    }

    /// Whether the place is as it was predicted.
    ///
    /// The prediction must be of ordinary surface resistances,
    /// [`crate::detail::DetailField::ordinary_temperature_factor`]: against the factor of a damp verdict
    /// a sound place tends to read warmer. Range: predicted factor from 0 to 1, temperatures as [`Self::at`].
    ///
    /// # Errors
    /// Every number that cannot stand, together.
    pub fn against(
        &self,
        predicted: TemperatureFactor,
        indoor: Temperature,
        outdoor: Temperature,
    ) -> Result<Comparison, ReadingError> {
        let mut refusals = Refusals::default();
        check_design(&mut refusals, indoor, outdoor);
        refusals.holds(ReadingField::PredictedFactor, predicted.value(), 0.0..=1.0);
        refusals.done()?;
        let (standing, nearest) = if predicted < self.least {
            (Standing::Warmer, self.least)
        } else if predicted > self.most {
            (Standing::Colder, self.most)
        } else {
            (Standing::AsPredicted, predicted)
        };
        let span = indoor - outdoor;
        Ok(Comparison {
            standing,
            warmer_by: span * (self.factor.value() - predicted.value()),
            beyond_band: span * (nearest.value() - predicted.value()),
        })
    }
}

fn check_design(refusals: &mut Refusals, indoor: Temperature, outdoor: Temperature) {
    let indoor = indoor.as_celsius();
    let is_lawful =
        refusals.holds(ReadingField::DesignIndoor, indoor, -60.0 + LEAST_DESIGN_DIFFERENCE..=100.0);
    let warmest = if is_lawful { indoor } else { 100.0 } - LEAST_DESIGN_DIFFERENCE;
    refusals.holds(ReadingField::DesignOutdoor, outdoor.as_celsius(), -60.0..=warmest);
}

/// A surface at the design's temperatures.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SurfaceAt {
    /// θ_si.
    pub surface: Temperature,
    /// The humidity it stands.
    pub limit: HumidityLimit,
}

/// What a place that was read stands at the design's temperatures.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct MeasuredLimit {
    /// By the factor as it was read.
    pub read: SurfaceAt,
    /// By the lower end of the band: the safe side.
    pub least: SurfaceAt,
    /// By the upper end of the band.
    pub most: SurfaceAt,
}

/// How a place that was read stands to its prediction.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Standing {
    /// The prediction lies in the band.
    AsPredicted,
    /// The whole band is warmer.
    Warmer,
    /// The whole band is colder.
    Colder,
}

impl Standing {
    /// Stable name.
    pub const fn key(self) -> &'static str {
        match self {
            Self::AsPredicted => "as_predicted",
            Self::Warmer => "warmer",
            Self::Colder => "colder",
        }
    }
}

/// A place that was read beside its prediction, at the design's temperatures.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Comparison {
    /// Within the band, warmer or colder.
    pub standing: Standing,
    /// The surface as read less as predicted, (f − f_predicted)·(θ_i − θ_e).
    pub warmer_by: TemperatureDifference,
    /// The nearer end of the band less the prediction, 0 within it: what no thermometer excuses.
    pub beyond_band: TemperatureDifference,
}
