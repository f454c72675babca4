//! Readings taken again and again at one place.

use super::refusal::{ReadingError, ReadingField, Refusals};
use super::taken::{PlaceReadings, ThermometerReading, both};
use crate::units::{Temperature, TemperatureDifference, Time};

/// Three thermometers, read at one time.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LogRow {
    /// When, since any beginning.
    pub at: Time,
    /// Inside air θ_i.
    pub inside: Temperature,
    /// Outside air θ_e.
    pub outside: Temperature,
    /// The surface θ_si.
    pub surface: Temperature,
}

/// What is known of a log besides its rows.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LogTerms {
    /// How far the inside thermometer may be off, as of [`ThermometerReading`].
    pub inside_uncertainty: TemperatureDifference,
    /// How far the outside thermometer may be off.
    pub outside_uncertainty: TemperatureDifference,
    /// How far the surface thermometer may be off.
    pub surface_uncertainty: TemperatureDifference,
    /// Time constant of the place.
    pub time_constant: Time,
    /// How long before the first row the sun left the steel.
    pub since_sun: Time,
}

impl PlaceReadings {
    /// The mean of a log, with what it drifted and scattered.
    ///
    /// Of each thermometer: the mean θ̄ of the rows, the drift r = Σ(t − t̄)(θ − θ̄) / Σ(t − t̄)², the line of
    /// least squares, and what is left about that line, s = √(Σ(θ − θ̄ − r·(t − t̄))² / (n − 2)), added
    /// to its uncertainty in quadrature. The log's length is how long it stood.
    ///
    /// Range: 3 to 10 000 rows, each at least a second after the one before and at most 366 days from
    /// the beginning; temperatures as [`PlaceReadings::factor`].
    ///
    /// # Errors
    /// Every number of the rows that cannot stand, together.
    pub fn of_log(rows: &[LogRow], terms: &LogTerms) -> Result<Self, ReadingError> {
        use ReadingField as Field;
        let mut refusals = Refusals::default();
        refusals.holds(Field::LogRows, rows.len() as f64, 3.0..=10_000.0);
        let end = Time::days(366.0).as_hours();
        let mut earliest = -end;
        for (n, row) in rows.iter().enumerate() {
            if refusals.holds_in_row(Some(n), Field::RowTime, row.at.as_hours(), earliest..=end) {
                earliest = row.at.as_hours() + 1.0 / 3600.0;
            }
            for (field, temperature) in [
                (Field::InsideTemperature, row.inside),
                (Field::OutsideTemperature, row.outside),
                (Field::SurfaceTemperature, row.surface),
            ] {
                refusals.holds_in_row(Some(n), field, temperature.as_celsius(), -60.0..=100.0);
            }
        }
        refusals.done()?;
        let hours: Vec<f64> = rows.iter().map(|row| row.at.as_hours()).collect();
        let thermometer = |read: fn(&LogRow) -> Temperature, uncertainty| {
            let celsius: Vec<f64> = rows.iter().map(|row| read(row).as_celsius()).collect();
            line_through(&hours, &celsius, uncertainty)
        };
        let [first, last] = [hours.first(), hours.last()].map(|hour| hour.copied().unwrap_or(0.0));
        Ok(Self {
            inside: thermometer(|row| row.inside, terms.inside_uncertainty),
            outside: thermometer(|row| row.outside, terms.outside_uncertainty),
            surface: thermometer(|row| row.surface, terms.surface_uncertainty),
            time_constant: terms.time_constant,
            steady_for: Time::hours(last - first),
            since_sun: terms.since_sun,
        })
    }
}

/// The mean, drift and scatter of temperatures at three times or more that differ.
fn line_through(
    hours: &[f64],
    celsius: &[f64],
    uncertainty: TemperatureDifference,
) -> ThermometerReading {
    let count = hours.len() as f64;
    let middle = hours.iter().sum::<f64>() / count;
    let mean = celsius.iter().sum::<f64>() / count;
    let pairs = || hours.iter().zip(celsius).map(|(hour, value)| (hour - middle, value - mean));
    let drift = pairs().map(|(hour, off)| hour * off).sum::<f64>()
        / pairs().map(|(hour, _)| hour * hour).sum::<f64>();
    let left = pairs().map(|(hour, off)| off - drift * hour).map(|left| left * left).sum::<f64>();
    let scatter = TemperatureDifference::new((left / (count - 2.0)).sqrt());
    ThermometerReading {
        temperature: Temperature::celsius(mean),
        uncertainty: both(uncertainty, scatter),
        drift_per_hour: TemperatureDifference::new(drift),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn rows_that_cannot_stand_are_named() {
        let row = |hours, surface| LogRow {
            at: Time::hours(hours),
            inside: Temperature::celsius(20.0),
            outside: Temperature::celsius(-10.0),
            surface: Temperature::celsius(surface),
        };
        let half = TemperatureDifference::new(0.5);
        let terms = LogTerms {
            inside_uncertainty: half,
            outside_uncertainty: half,
            surface_uncertainty: half,
            time_constant: Time::hours(0.5),
            since_sun: Time::hours(12.0),
        };
        let refused = |rows: &[LogRow]| {
            let refusals =
                PlaceReadings::of_log(rows, &terms).map_or_else(|error| error.refusals, |_| vec![]);
            refusals.iter().map(|one| (one.row, one.field)).collect::<Vec<_>>()
        };
        // Two rows have no scatter; a row of the same minute twice has no place on a line.
        assert_eq!(refused(&[row(0.0, 14.0), row(1.0, 14.0)]), [(None, ReadingField::LogRows)]);
        assert_eq!(
            refused(&[row(0.0, 14.0), row(0.0, 14.0), row(2.0, 200.0)]),
            [(Some(1), ReadingField::RowTime), (Some(2), ReadingField::SurfaceTemperature)]
        );
        assert_eq!(refused(&[row(0.0, 14.0), row(1.0, 14.0), row(2.0, 15.0)]), []);
    }
}
