//! A place as plain numbers, and the hours of a year measured there.

use inchwise_core::climate::{
    CheckedPlace, HOURS_IN_YEAR, MonthMeans, NotReached, Place, SEED, Spread, WeatherHour,
    WeatherYear, exceeded_for, not_reached, reconstruct,
};
use inchwise_core::units::{
    Angle, Irradiance, Irradiation, Length, Pressure, Temperature, TemperatureDifference,
};

/// Numbers of the whole place, then of each month.
const WHOLE: usize = 4;
const MONTHLY: usize = 4;

/// Numbers of a place.
pub(crate) const IN_PLACE: usize = WHOLE + 12 * MONTHLY;

/// A place as numbers: four of the whole, then four of each month.
pub(crate) fn pack_place(place: &Place) -> Vec<f64> {
    let mut numbers = Vec::with_capacity(IN_PLACE);
    numbers.extend([
        place.elevation.value(),
        place.latitude.value(),
        place.winter_design.as_celsius(),
        place.summer_design.as_celsius(),
    ]);
    for month in &place.months {
        numbers.extend([
            month.temperature.as_celsius(),
            month.daily_range.value(),
            month.vapour_pressure.value(),
            month.daily_global_irradiation.value(),
        ]);
    }
    numbers
}

/// The place that was packed; `None` if these are not the numbers of one.
pub(crate) fn unpack_place(numbers: &[f64]) -> Option<Place> {
    let (&[elevation, latitude, winter, summer], months) = numbers.split_first_chunk::<WHOLE>()?;
    let (months, []) = months.as_chunks::<MONTHLY>() else { return None };
    let months: &[[f64; MONTHLY]; 12] = months.try_into().ok()?;
    Some(Place {
        elevation: Length::new(elevation),
        latitude: Angle::new(latitude),
        winter_design: Temperature::celsius(winter),
        summer_design: Temperature::celsius(summer),
        months: months.map(|[temperature, range, vapour, sun]| MonthMeans {
            temperature: Temperature::celsius(temperature),
            daily_range: TemperatureDifference::new(range),
            vapour_pressure: Pressure::new(vapour),
            daily_global_irradiation: Irradiation::new(sun),
        }),
    })
}

/// Measured hours as numbers: °C, Pa and W/m² of each; none for no hours.
pub fn pack_hours(measured: Option<&WeatherYear>) -> Vec<f64> {
    let columns = |year: &WeatherYear| {
        [year.celsius(), year.vapour_pascals(), year.global_horizontal_irradiance()].concat()
    };
    measured.map(columns).unwrap_or_default()
}

/// The hours of a place.
pub(crate) struct PlaceHours {
    pub(crate) weather: WeatherYear,
    /// The winter temperature heaters are sized for there: the place's, or that of the measured hours.
    pub(crate) winter: Temperature,
    /// What of the place the hours do not have.
    pub(crate) not_reached: Vec<NotReached>,
}

impl PlaceHours {
    /// Those measured, at the place's height and latitude, or those made from its months where none were; `None` if
    /// these are not the numbers of hours.
    pub(crate) fn of(place: &CheckedPlace, measured: &[f64]) -> Option<Self> {
        if measured.is_empty() {
            let weather = reconstruct(place, Spread::DesignTemperatures, SEED);
            let not_reached = not_reached(place, &weather);
            return Some(Self { weather, winter: place.place().winter_design, not_reached });
        }
        if measured.len() != 3 * HOURS_IN_YEAR {
            return None;
        }
        let (celsius, others) = measured.split_at(HOURS_IN_YEAR);
        let (pascals, sun) = others.split_at(HOURS_IN_YEAR);
        let hours: Vec<WeatherHour> = celsius
            .iter()
            .zip(pascals)
            .zip(sun)
            .map(|((&celsius, &pascals), &sun)| WeatherHour {
                temperature: Temperature::celsius(celsius),
                vapour_pressure: Pressure::new(pascals),
                global_horizontal_irradiance: Irradiance::new(sun),
            })
            .collect();
        let (elevation, latitude) = (place.place().elevation, place.place().latitude);
        let weather = WeatherYear::new(elevation, latitude, &hours).ok()?;
        let winter = exceeded_for(&weather, 0.99);
        Some(Self { weather, winter, not_reached: Vec::new() })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use inchwise_core::climate::varnholm_flats;

    #[test]
    fn places_come_back_bit_for_bit() {
        let place = varnholm_flats();
        let numbers = pack_place(&place);
        assert_eq!(unpack_place(&numbers).as_ref(), Some(&place));
        assert!(unpack_place(&numbers[1..]).is_none());
        let made = reconstruct(&CheckedPlace::default(), Spread::DesignTemperatures, SEED);
        let hours = PlaceHours::of(&CheckedPlace::default(), &pack_hours(None)).unwrap();
        assert_eq!((hours.weather, hours.winter), (made, place.winter_design));
    }

    #[test]
    fn measured_hours_stand_in_for_those_made_and_take_the_height_of_the_place() {
        let place = Place { elevation: Length::new(321.0), ..varnholm_flats() };
        let hour = |n: usize| WeatherHour {
            temperature: Temperature::celsius((n % 24) as f64 - 20.0),
            vapour_pressure: Pressure::new(100.0 + (n % 7) as f64),
            global_horizontal_irradiance: Irradiance::new((n % 12) as f64),
        };
        let hours: Vec<WeatherHour> = (0..HOURS_IN_YEAR).map(hour).collect();
        let measured = WeatherYear::new(Length::ZERO, place.latitude, &hours).unwrap();
        let checked = place.check().unwrap();
        let back = PlaceHours::of(&checked, &pack_hours(Some(&measured))).unwrap();
        assert!(back.not_reached.is_empty(), "nothing is asked of measured hours");
        // One hour in 24 is at −20 °C, so 99 % of them are not below it.
        assert_eq!(back.winter, Temperature::celsius(-20.0));
        let mut moved = measured.clone();
        moved.elevation = place.elevation;
        assert_eq!(back.weather, moved);
        let mut short = pack_hours(Some(&measured));
        short.pop();
        assert!(PlaceHours::of(&checked, &short).is_none());
    }
}
