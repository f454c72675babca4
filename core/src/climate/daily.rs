//! The days of a year as scores: how warm and how clear each is among the days of its month.

use super::calendar::{DAYS_IN_MONTH, DAYS_IN_YEAR, days_of, month_of_day};
use super::generator::{SplitMix64, normal_quantile};
use super::place::MonthMeans;

/// How much of a day's deviation from its month stays to the next: the correlation of one day's
/// mean temperature with the next day's. Mean of fifteen measured typical years (TMY3, National Renewable Energy Laboratory, and
/// PVGIS), which lie from 0.52 to 0.74 but for one tropical island.
const TEMPERATURE_PERSISTENCE: f64 = 0.65;

/// The same of the clearness index; the fifteen years lie from 0.11 to 0.35.
const CLEARNESS_PERSISTENCE: f64 = 0.25;

/// Correlation of a day's warmth with its clearness in the coldest and in the warmest month: clear
/// winter days are cold, clear summer days warm. The six cold places among the fifteen years lie from
/// −0.6 to 0.0 in winter and from 0.0 to 0.4 in summer.
const WARMTH_WITH_CLEARNESS: [f64; 2] = [-0.4, 0.25];

/// How many days run before 1 January until the start is forgotten.
const LEAD_IN: usize = 30;

/// Scores of every day: in each month of mean 0, variance 1 and evenly spread over the normal
/// distribution, so that a month has its mean and its coldest days whatever the seed.
pub(super) struct DayScores {
    /// Warmth.
    pub(super) warmth: Vec<f64>,
    /// Clearness.
    pub(super) clearness: Vec<f64>,
    /// Share of the month's days that are cloudier.
    pub(super) cloudier: Vec<f64>,
}

/// How cold each month is among the twelve: 1 the coldest, 0 the warmest.
pub(super) fn coldness(months: &[MonthMeans; 12]) -> [f64; 12] {
    let celsius = months.map(|month| month.temperature.as_celsius());
    let warmest = celsius.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    let coldest = celsius.iter().copied().fold(f64::INFINITY, f64::min);
    let span = (warmest - coldest).max(1e-9);
    celsius.map(|mean| (warmest - mean) / span)
}

/// Draws the days: two first-order autoregressive series whose innovations are correlated, each
/// replaced within a month by the normal score of its rank.
///
/// After K. M. Knight, S. A. Klein and J. A. Duffie, A methodology for the synthesis of hourly weather data,
/// Solar Energy 46, 1991: distribution from the month's mean, order from an autoregressive series.
pub(super) fn draw_days(months: &[MonthMeans; 12], seed: u64) -> DayScores {
    let coldness = coldness(months);
    let mut generator = SplitMix64::new(seed);
    let new_warmth = (1.0 - TEMPERATURE_PERSISTENCE * TEMPERATURE_PERSISTENCE).sqrt();
    let new_clearness = (1.0 - CLEARNESS_PERSISTENCE * CLEARNESS_PERSISTENCE).sqrt();
    // Correlation of the innovations that gives the series theirs.
    let sharpen =
        (1.0 - TEMPERATURE_PERSISTENCE * CLEARNESS_PERSISTENCE) / (new_warmth * new_clearness);
    let mut warmth = vec![0.0; DAYS_IN_YEAR];
    let mut clearness = vec![0.0; DAYS_IN_YEAR];
    let (mut warm, mut clear) = (0.0, 0.0);
    for step in 0..LEAD_IN + DAYS_IN_YEAR {
        let day = step.saturating_sub(LEAD_IN);
        let cold = coldness[month_of_day(day)];
        let [winter, summer] = WARMTH_WITH_CLEARNESS;
        let together = sharpen * (cold * winter + (1.0 - cold) * summer);
        let (first, second) = (generator.normal(), generator.normal());
        let mixed = together * first + (1.0 - together * together).sqrt() * second;
        clear = CLEARNESS_PERSISTENCE * clear + new_clearness * first;
        warm = TEMPERATURE_PERSISTENCE * warm + new_warmth * mixed;
        warmth[day] = warm;
        clearness[day] = clear;
    }
    let mut cloudier = vec![0.0; DAYS_IN_YEAR];
    for (month, &count) in DAYS_IN_MONTH.iter().enumerate() {
        let days = days_of(month);
        let scores = normal_scores(count);
        replace_by_rank(&mut warmth[days.clone()], |rank| scores[rank]);
        let n = count as f64;
        cloudier[days.clone()].copy_from_slice(&clearness[days.clone()]);
        replace_by_rank(&mut cloudier[days.clone()], |rank| (rank as f64 + 0.5) / n);
        replace_by_rank(&mut clearness[days], |rank| scores[rank]);
    }
    DayScores { warmth, clearness, cloudier }
}

/// Normal quantiles at (k + ½)/n, stretched to variance 1.
fn normal_scores(n: usize) -> Vec<f64> {
    let mut scores: Vec<f64> =
        (0..n).map(|rank| normal_quantile((rank as f64 + 0.5) / n as f64)).collect();
    let variance = scores.iter().map(|z| z * z).sum::<f64>() / n as f64;
    let stretch = 1.0 / variance.sqrt();
    scores.iter_mut().for_each(|z| *z *= stretch);
    scores
}

/// Replaces each value by what its rank, from 0 for the lowest, stands for.
fn replace_by_rank(values: &mut [f64], stands_for: impl Fn(usize) -> f64) {
    let mut order: Vec<usize> = (0..values.len()).collect();
    order.sort_by(|&a, &b| values[a].total_cmp(&values[b]));
    for (rank, &at) in order.iter().enumerate() {
        values[at] = stands_for(rank);
    }
}
