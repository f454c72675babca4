//! Any lawful place.

use inchwise_core::climate::{CheckedPlace, MonthMeans, Place, mean_extraterrestrial_irradiation};
use inchwise_core::psychro::SaturationTable;
use inchwise_core::units::{
    Angle, Irradiation, Length, Pressure, Temperature, TemperatureDifference,
};
use proptest::prelude::*;

/// Any place of the range, lawful for all its figures: a cosine of warmth through the year, with air
/// and sun in proportion.
pub(crate) fn lawful_place() -> impl Strategy<Value = CheckedPlace> {
    let latitude = -90.0..=90.0_f64;
    let warmth = (-45.0..=30.0_f64, 0.0..=28.0_f64);
    let design = (1.0..=25.0_f64, 1.0..=20.0_f64);
    (latitude, warmth, 0.5..=35.0_f64, 0.05..=1.6_f64, 0.0..=1.0_f64, design, -450.0..=6000.0_f64)
        .prop_filter_map(
            "a place",
            |(latitude, (mean, half), range, damp, sun, ends, elevation)| {
                let saturation = SaturationTable::new();
                let latitude = Angle::degrees(latitude);
                let months = core::array::from_fn(|month| {
                    let celsius =
                        mean - half * libm::cos(month as f64 / 6.0 * core::f64::consts::PI);
                    let above = mean_extraterrestrial_irradiation(latitude, month);
                    MonthMeans {
                        temperature: Temperature::celsius(celsius),
                        daily_range: TemperatureDifference::new(range),
                        vapour_pressure: Pressure::new(
                            (damp * saturation.pascals(celsius)).clamp(0.1, 5000.0),
                        ),
                        daily_global_irradiation: Irradiation::new(sun * above.value()),
                    }
                });
                let place = Place {
                    elevation: Length::new(elevation),
                    latitude,
                    winter_design: Temperature::celsius(mean - half - ends.0),
                    summer_design: Temperature::celsius(mean + half + ends.1),
                    months,
                };
                place.check().ok()
            },
        )
}
