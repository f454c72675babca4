//! What of a place the hours made from it do not have.

use super::degree_days::exceeded_for;
use super::error::ClimateQuantity;
use super::place::CheckedPlace;
use super::weather_year::WeatherYear;
use crate::units::Temperature;

/// A figure of a place that the hours made from it miss.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct NotReached {
    /// What it is.
    pub quantity: ClimateQuantity,
    /// The month it is of, from 0; `None` for a figure of the whole year.
    pub month: Option<usize>,
    /// What the place asks, in the unit of the quantity.
    pub asked: f64,
    /// What the hours have.
    pub reached: f64,
}

/// What may be missed without a word: a kelvin of a temperature, two of a daily range, two in a hundred
/// of vapour and sun. All are less than one year differs from another (common practice, no source).
fn allowed(quantity: ClimateQuantity, asked: f64) -> f64 {
    use ClimateQuantity as Q;
    match quantity {
        Q::Temperature | Q::WinterDesign | Q::SummerDesign => 1.0,
        Q::DailyRange => 2.0,
        _ => 0.02 * asked,
    }
}

/// Every figure of a place that a year made with [`Spread::DesignTemperatures`](super::Spread) misses.
///
/// Days are drawn only so far apart, a day swings only so little or so much, and air holds only so
/// much vapour: a place whose figures do not go together, such as a design temperature of −50 °C
/// after a January of −10 °C, does not get all of them.
pub fn not_reached(checked: &CheckedPlace, year: &WeatherYear) -> Vec<NotReached> {
    use ClimateQuantity as Q;
    let place = checked.place();
    let design = |quantity, asked: Temperature, share| {
        (quantity, None, asked.as_celsius(), exceeded_for(year, share).as_celsius())
    };
    let mut figures = vec![
        design(Q::WinterDesign, place.winter_design, 0.99),
        design(Q::SummerDesign, place.summer_design, 0.01),
    ];
    for (month, (asked, reached)) in place.months.iter().zip(year.month_means()).enumerate() {
        let [asked, reached] = [*asked, reached].map(|means| {
            [
                (Q::Temperature, means.temperature.as_celsius()),
                (Q::DailyRange, means.daily_range.value()),
                (Q::VapourPressure, means.vapour_pressure.value()),
                (Q::DailyGlobalIrradiation, means.daily_global_irradiation.as_kilowatt_hours()),
            ]
        });
        let pairs = asked.into_iter().zip(reached);
        figures.extend(
            pairs.map(|((quantity, asked), (_, reached))| (quantity, Some(month), asked, reached)),
        );
    }
    figures
        .into_iter()
        .filter(|&(quantity, _, asked, reached)| (reached - asked).abs() > allowed(quantity, asked))
        .map(|(quantity, month, asked, reached)| NotReached { quantity, month, asked, reached })
        .collect()
}
