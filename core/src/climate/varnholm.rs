//! Varnholm Flats, an invented northern plain.

use super::place::{MonthMeans, Place};
use crate::units::{Angle, Irradiation, Length, Pressure, Temperature, TemperatureDifference};

/// January to December: °C, K, Pa, kWh/m² a day.
const MONTHS: [[f64; 4]; 12] = [
    [-15.2, 9.6, 150.0, 1.10],
    [-13.6, 10.2, 170.0, 2.05],
    [-8.4, 10.4, 265.0, 3.45],
    [1.2, 11.2, 450.0, 4.75],
    [9.3, 12.2, 690.0, 5.60],
    [15.0, 12.0, 1090.0, 6.05],
    [18.9, 12.4, 1420.0, 6.00],
    [17.4, 12.6, 1310.0, 4.95],
    [10.6, 11.6, 890.0, 3.35],
    [3.2, 9.8, 580.0, 2.00],
    [-7.0, 8.2, 310.0, 1.15],
    [-13.6, 8.8, 175.0, 0.85],
];

/// Pressure of the standard atmosphere at its 420 m, which a test holds to the formula.
pub(super) const AIR_PRESSURE_AT_VARNHOLM_FLATS: Pressure = Pressure::new(96380.13941778414);

/// The default place: invented, so that nothing needs the network and no real town is judged. A
/// northern plain of about 6,140 heating degree days (base 18 °C).
pub fn varnholm_flats() -> Place {
    Place {
        elevation: Length::new(420.0),
        latitude: Angle::degrees(52.0),
        months: MONTHS.map(|[temperature, range, vapour, sun]| MonthMeans {
            temperature: Temperature::celsius(temperature),
            daily_range: TemperatureDifference::new(range),
            vapour_pressure: Pressure::new(vapour),
            daily_global_irradiation: Irradiation::kilowatt_hours(sun),
        }),
        winter_design: Temperature::celsius(-27.0),
        summer_design: Temperature::celsius(29.0),
    }
}

#[cfg(test)]
mod tests {
    use super::super::place::CheckedPlace;
    use super::*;

    #[test]
    fn the_invented_place_passes_its_check() {
        let checked = varnholm_flats().check();
        assert_eq!(checked, Ok(CheckedPlace::default()));
    }
}
