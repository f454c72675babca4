//! Where the hours of a year come from, as plain numbers: a place's months, or measured hours
//! behind them.

use inchwise_core::climate::{
    HOURS_IN_YEAR, MonthMeans, NotReached, Place, SEED, Spread, WeatherHour, WeatherYear,
    not_reached, reconstruct,
};
use inchwise_core::units::{
    Angle, Irradiance, Irradiation, Length, Pressure, Temperature, TemperatureDifference,
};

/// Numbers of the whole place, then of each month.
const WHOLE: usize = 4;
const MONTHLY: usize = 4;
const IN_PLACE: usize = WHOLE + 12 * MONTHLY;

/// A place as numbers: four of the whole, then four of each month; behind them, where hours were
/// measured, °C, Pa and W/m² of each. Elevation and latitude are those of the place.
pub fn pack_climate(place: &Place, measured: Option<&WeatherYear>) -> Vec<f64> {
    let mut numbers = Vec::with_capacity(IN_PLACE + measured.map_or(0, |_| 3 * HOURS_IN_YEAR));
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
    if let Some(year) = measured {
        for column in [year.celsius(), year.vapour_pascals(), year.global_horizontal_irradiance()] {
            numbers.extend_from_slice(column);
        }
    }
    numbers
}

/// The place that was packed, and the numbers of the hours behind it; `None` if these are not the
/// numbers of one.
fn unpack(numbers: &[f64]) -> Option<(Place, &[f64])> {
    let (numbers, hours) = numbers.split_at_checked(IN_PLACE)?;
    let (&[elevation, latitude, winter, summer], months) = numbers.split_first_chunk::<WHOLE>()?;
    let months: &[[f64; MONTHLY]; 12] = months.as_chunks::<MONTHLY>().0.try_into().ok()?;
    let place = Place {
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
    };
    Some((place, hours))
}

/// The winter temperature heaters are sized for, of a packed place.
pub(crate) fn winter_of(numbers: &[f64]) -> Option<Temperature> {
    unpack(numbers).map(|(place, _)| place.winter_design)
}

/// The hours of a packed place: those measured, or those made from its months, with what they miss
/// of it; `None` if these are not the numbers of a place, or of one that does not pass its check.
pub(crate) fn weather_of(numbers: &[f64]) -> Option<(WeatherYear, Vec<NotReached>)> {
    let (place, hours) = unpack(numbers)?;
    if hours.is_empty() {
        let checked = place.check().ok()?;
        let made = reconstruct(&checked, Spread::DesignTemperatures, SEED);
        let missed = not_reached(&checked, &made);
        return Some((made, missed));
    }
    if hours.len() != 3 * HOURS_IN_YEAR {
        return None;
    }
    let (celsius, others) = hours.split_at(HOURS_IN_YEAR);
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
    let measured = WeatherYear::new(place.elevation, place.latitude, &hours).ok()?;
    Some((measured, Vec::new()))
}

#[cfg(test)]
mod tests {
    use super::*;
    use inchwise_core::climate::varnholm_flats;

    #[test]
    fn places_come_back_bit_for_bit() {
        let place = varnholm_flats();
        let numbers = pack_climate(&place, None);
        let (back, hours) = unpack(&numbers).unwrap();
        assert_eq!((&back, hours), (&place, &[][..]));
        assert_eq!(winter_of(&numbers), Some(place.winter_design));
        assert!(unpack(&numbers[1..]).is_none());
        let made = reconstruct(&place.check().unwrap(), Spread::DesignTemperatures, SEED);
        assert_eq!(weather_of(&numbers).map(|(hours, _)| hours), Some(made));
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
        let (back, missed) = weather_of(&pack_climate(&place, Some(&measured))).unwrap();
        assert!(missed.is_empty(), "nothing is asked of measured hours");
        let mut moved = measured.clone();
        moved.elevation = place.elevation;
        assert_eq!(back, moved);
        let high = Place { elevation: Length::new(1e5), ..place.clone() };
        assert_eq!(weather_of(&pack_climate(&high, Some(&measured))), None);
        let mut short = pack_climate(&place, Some(&measured));
        short.pop();
        assert_eq!(weather_of(&short), None);
    }
}
