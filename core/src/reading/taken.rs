//! What was read, and whether it is worth a factor.

use super::factor::MeasuredFactor;
use super::refusal::{ReadingError, ReadingField, Refusals};
use super::settling::SETTLING_TIME_CONSTANTS;
use crate::units::{Temperature, TemperatureDifference, Time};

/// Least difference of inside and outside air, 10 K: below it no factor is taken.
/// Common practice, no source: 10 to 15 K at least.
pub const LEAST_READING_DIFFERENCE: TemperatureDifference = TemperatureDifference::new(10.0);

/// Difference of inside and outside air that is usually asked for, 15 K. Common practice, no source.
pub const USUAL_READING_DIFFERENCE: TemperatureDifference = TemperatureDifference::new(15.0);

/// One thermometer.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ThermometerReading {
    /// What it showed.
    pub temperature: Temperature,
    /// How far it may be off to either side. All three are stated with the same confidence, and the
    /// band of the factor has that confidence too. One thermometer carried from place to place is
    /// off alike at all three, which the factor does not feel: then only what it scatters counts.
    pub uncertainty: TemperatureDifference,
    /// What it changed in an hour, negative where it fell.
    pub drift_per_hour: TemperatureDifference,
}

/// Three thermometers read at one place at one time.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PlaceReadings {
    /// Inside air θ_i.
    pub inside: ThermometerReading,
    /// Outside air θ_e.
    pub outside: ThermometerReading,
    /// The surface θ_si.
    pub surface: ThermometerReading,
    /// Time constant τ of the place: of a plain area [`super::plain_time_constant`].
    pub time_constant: Time,
    /// For how long room and outdoors have changed by no more than the drifts say.
    pub steady_for: Time,
    /// Since when no sun has stood on the steel there; sun warms it past the air that is read.
    pub since_sun: Time,
}

/// Temperatures that the saturation formula of ISO 13788 is used for here, °C.
const TEMPERATURES: core::ops::RangeInclusive<f64> = -60.0..=100.0;

impl PlaceReadings {
    /// The temperature factor of the place, with its band.
    ///
    /// Range: temperatures from −60 °C to 100 °C, uncertainties from 0.01 K to 5 K, drifts to 20 K an
    /// hour either way, τ from 1 s to 30 days. Inside at least [`LEAST_READING_DIFFERENCE`] warmer than
    /// outside. The surface between them, give or take the uncertainties of the two in quadrature.
    /// Steady, and without sun on the steel, for [`SETTLING_TIME_CONSTANTS`] · τ. Half the band no more
    /// than [`super::WIDEST_HALF_BAND`].
    ///
    /// # Errors
    /// Every number that cannot stand, together. What needs a number that is refused itself is not
    /// asked of it.
    pub fn factor(&self) -> Result<MeasuredFactor, ReadingError> {
        use ReadingField as Field;
        let mut refusals = Refusals::default();
        let readings = [self.inside, self.outside, self.surface];
        let fields =
            [Field::InsideTemperature, Field::OutsideTemperature, Field::SurfaceTemperature];
        let lawful = [0, 1, 2]
            .map(|n| refusals.holds(fields[n], readings[n].temperature.as_celsius(), TEMPERATURES));
        let fields =
            [Field::InsideUncertainty, Field::OutsideUncertainty, Field::SurfaceUncertainty];
        let known = [0, 1, 2]
            .map(|n| refusals.holds(fields[n], readings[n].uncertainty.value(), 0.01..=5.0));
        let fields = [Field::InsideDrift, Field::OutsideDrift, Field::SurfaceDrift];
        let drifts = [0, 1, 2]
            .map(|n| refusals.holds(fields[n], readings[n].drift_per_hour.value(), -20.0..=20.0));

        let constant = self.time_constant.as_hours();
        let longest = Time::days(30.0).as_hours();
        let has_constant = refusals.holds(Field::TimeConstant, constant, 1.0 / 3600.0..=longest);
        let wait = if has_constant { SETTLING_TIME_CONSTANTS * constant } else { 0.0 };
        for (field, since) in
            [(Field::SteadyFor, self.steady_for), (Field::SinceSun, self.since_sun)]
        {
            refusals.holds(field, since.as_hours(), wait..=f64::INFINITY);
        }

        let [inside, outside, surface] = readings;
        let mut is_ordered = true;
        if lawful == [true; 3] && known == [true; 3] {
            let coldest = outside.temperature - both(outside.uncertainty, surface.uncertainty);
            let warmest = inside.temperature + both(inside.uncertainty, surface.uncertainty);
            // Outdoors warmer than the room has no order: the difference is refused below.
            if coldest <= warmest {
                let allowed = coldest.as_celsius()..=warmest.as_celsius();
                let given = surface.temperature.as_celsius();
                is_ordered = refusals.holds(Field::SurfaceTemperature, given, allowed);
            }
        }
        let is_wide = lawful[0]
            && lawful[1]
            && refusals.holds(
                Field::Difference,
                (inside.temperature - outside.temperature).value(),
                LEAST_READING_DIFFERENCE.value()..=f64::INFINITY,
            );

        let is_whole = [lawful, known, drifts].iter().all(|all| *all == [true; 3]);
        let measured = (is_whole && has_constant && is_wide && is_ordered)
            .then(|| MeasuredFactor::of(self))
            .filter(|measured| {
                let widest = super::WIDEST_HALF_BAND.value();
                refusals.holds(Field::HalfBand, measured.half_band().value(), 0.0..=widest)
            });
        match measured {
            Some(measured) if refusals.are_none() => Ok(measured),
            _ => Err(refusals.into_error()),
        }
    }
}

/// Two independent uncertainties together, √(a² + b²).
pub(super) fn both(a: TemperatureDifference, b: TemperatureDifference) -> TemperatureDifference {
    TemperatureDifference::new((a.value() * a.value() + b.value() * b.value()).sqrt())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::reading::{ReadingDoubt, ReadingRefusal};

    fn thermometer(celsius: f64) -> ThermometerReading {
        ThermometerReading {
            temperature: Temperature::celsius(celsius),
            uncertainty: TemperatureDifference::new(0.3),
            drift_per_hour: TemperatureDifference::ZERO,
        }
    }

    fn sound() -> PlaceReadings {
        PlaceReadings {
            inside: thermometer(20.0),
            outside: thermometer(-10.0),
            surface: thermometer(12.0),
            time_constant: Time::hours(1.0),
            steady_for: Time::hours(3.0),
            since_sun: Time::hours(3.0),
        }
    }

    fn refused(readings: &PlaceReadings) -> Vec<ReadingRefusal> {
        readings.factor().map_or_else(|error| error.refusals, |_| Vec::new())
    }

    #[test]
    fn all_that_cannot_stand_is_told_together() {
        let mut readings = sound();
        readings.inside.temperature = Temperature::celsius(f64::NAN);
        readings.outside.uncertainty = TemperatureDifference::ZERO;
        readings.surface.drift_per_hour = TemperatureDifference::new(-21.0);
        readings.steady_for = Time::hours(2.9);
        readings.since_sun = Time::hours(0.0);
        let fields: Vec<ReadingField> = refused(&readings).iter().map(|one| one.field).collect();
        assert_eq!(
            fields,
            [
                ReadingField::InsideTemperature,
                ReadingField::OutsideUncertainty,
                ReadingField::SurfaceDrift,
                ReadingField::SteadyFor,
                ReadingField::SinceSun,
            ]
        );
    }

    /// Give or take √(0.3² + 0.3²) = 0.424 K a surface lies between outdoors and room.
    #[test]
    fn a_surface_beyond_the_airs_is_refused_past_the_uncertainty_only() {
        let surface = |celsius| {
            let readings = PlaceReadings { surface: thermometer(celsius), ..sound() };
            readings.factor().map(|measured| measured.doubts)
        };
        assert_eq!(surface(20.42), Ok(vec![ReadingDoubt::WarmerThanRoom]));
        assert_eq!(surface(-10.42), Ok(vec![ReadingDoubt::ColderThanOutdoors]));
        for beyond in [20.43, -10.43] {
            let refusals = surface(beyond).map_or_else(|error| error.refusals, |_| Vec::new());
            assert_eq!(refusals.len(), 1, "{refusals:?}");
            assert_eq!(refusals[0].field, ReadingField::SurfaceTemperature);
            assert_eq!(refusals[0].given, beyond);
            assert!((refusals[0].allowed.end() - 20.424_264).abs() < 1e-6, "{refusals:?}");
            assert!((refusals[0].allowed.start() + 10.424_264).abs() < 1e-6, "{refusals:?}");
        }
    }

    /// 4 K an hour outdoors, an hour to follow, a factor of 22/30: (1 − f)·4/30 = 0.0356 beside 0.0127 of
    /// the thermometers; 10 K an hour make 0.0889, with theirs more than 0.10.
    #[test]
    fn drift_prevails_before_it_is_too_much() {
        let drifting = |kelvin_per_hour| {
            let mut readings = sound();
            readings.outside.drift_per_hour = TemperatureDifference::new(kelvin_per_hour);
            readings
        };
        let doubts = drifting(4.0).factor().map(|measured| measured.doubts);
        assert_eq!(doubts, Ok(vec![ReadingDoubt::DriftPrevails]));
        let refusals = refused(&drifting(-10.0));
        assert_eq!(refusals.len(), 1, "{refusals:?}");
        assert_eq!(refusals[0].field, ReadingField::HalfBand);
    }

    #[test]
    fn a_refusal_says_field_value_and_range() {
        let readings = PlaceReadings { since_sun: Time::hours(0.5), ..sound() };
        let said = readings.factor().map_or_else(|error| error.to_string(), |_| String::new());
        assert_eq!(said, "since_sun is 0.5, allowed is from 3 to inf h");
    }
}
