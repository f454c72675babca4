//! Vapour of the outdoor air through a year whose temperatures are known.

use super::calendar::{DAYS_IN_YEAR, hours_of};
use super::place::MonthMeans;
use crate::psychro::SaturationTable;

/// How often a month's level is put right; each time takes most of what is left.
const ROUNDS: usize = 8;

/// Vapour pressure of every hour, Pa.
///
/// A day's air keeps its vapour from hour to hour, and days of a month have the same relative
/// humidity at their mean temperature: p = c·p_ws(day's mean), never above saturation of the hour;
/// c is set so that the month has its mean. A month whose mean is more than its hours can hold
/// stays saturated. Common practice, no source; the spread of dew points within a month is that
/// of the day's temperatures.
pub(super) fn vapour_of_hours(
    celsius: &[f64],
    months: &[MonthMeans; 12],
    saturation: &SaturationTable,
) -> Vec<f64> {
    let ceiling: Vec<f64> = celsius.iter().map(|&t| saturation.pascals(t)).collect();
    let of_day: Vec<f64> = (0..DAYS_IN_YEAR)
        .map(|day| saturation.pascals(celsius[day * 24..day * 24 + 24].iter().sum::<f64>() / 24.0))
        .collect();
    let mut vapour = vec![0.0; celsius.len()];
    for (month, means) in months.iter().enumerate() {
        let hours = hours_of(month);
        let count = hours.len() as f64;
        let wanted = means.vapour_pressure.value();
        let mut level = 1.0;
        for _ in 0..ROUNDS {
            let mut sum = 0.0;
            for hour in hours.clone() {
                vapour[hour] = (level * of_day[hour / 24]).min(ceiling[hour]);
                sum += vapour[hour];
            }
            level *= wanted * count / sum;
        }
        for hour in hours {
            vapour[hour] = (level * of_day[hour / 24]).min(ceiling[hour]);
        }
    }
    vapour
}
