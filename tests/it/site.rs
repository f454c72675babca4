//! Places of stated air, for checks that reckon by hand.

use inchwise_core::climate::{CheckedPlace, MonthMeans, Place};
use inchwise_core::design::Design;
use inchwise_core::psychro::hyland_wexler::saturation_pressure;
use inchwise_core::units::{
    Angle, Irradiation, Length, Pressure, RelativeHumidity, Temperature, TemperatureDifference,
};

/// A sunless place at a height over the sea in m whose twelve months are alike, °C and Pa.
pub(crate) fn still_place(height: f64, celsius: f64, pascals: f64) -> CheckedPlace {
    let temperature = Temperature::celsius(celsius);
    let month = MonthMeans {
        temperature,
        daily_range: TemperatureDifference::new(0.5),
        vapour_pressure: Pressure::new(pascals),
        daily_global_irradiation: Irradiation::new(0.0),
    };
    let kelvin = TemperatureDifference::new(1.0);
    let place = Place {
        elevation: Length::new(height),
        latitude: Angle::degrees(50.0),
        months: [month; 12],
        winter_design: temperature - kelvin,
        summer_design: temperature + kelvin,
    };
    place.check().expect("a place that can be")
}

/// The same at sea level by its relative humidity.
pub(crate) fn at_sea_level(celsius: f64, percent: f64) -> CheckedPlace {
    let saturated = saturation_pressure(Temperature::celsius(celsius)).expect("in range");
    still_place(0.0, celsius, saturated.value() * RelativeHumidity::percent(percent).value())
}

/// A design at sea level in outdoor air of 80 % at its winter temperature.
pub(crate) fn sea_level_winter(design: Design) -> Design {
    Design { place: at_sea_level(-15.0, 80.0), ..design }
}
