//! A year of hours from twelve months of means.

use core::f64::consts::TAU;

use super::calendar::{
    DAYS_IN_MONTH, DAYS_IN_YEAR, HOURS_IN_YEAR, days_of, hours_of, month_of_day,
};
use super::clearness::Clearness;
use super::daily::{DayScores, coldness, draw_days};
use super::degree_days::exceeded_among;
use super::hourly_sun::hourly_to_daily_ratio;
use super::place::{CheckedPlace, MonthMeans, mean_extraterrestrial_irradiation};
use super::sun_position::{daily_extraterrestrial_irradiation, declination, sunset_hour_angle};
use super::vapour::vapour_of_hours;
use super::weather_year::WeatherYear;
use crate::psychro::SaturationTable;
use crate::units::Angle;

/// The seed of every year shown, so that a place has the same weather each time.
pub const SEED: u64 = 1956;

/// From what the spread of the days within a month is taken.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Spread {
    /// From the months alone.
    Months,
    /// From the months, then drawn wider or narrower in winter and in summer until the hours meet
    /// the place's design temperatures.
    DesignTemperatures,
}

/// How often the spread is put right by the design temperatures, and the least and the most that
/// it is multiplied by; [`not_reached`](super::not_reached) tells what that leaves missing.
const SPREAD_ROUNDS: usize = 8;
const SPREAD_FACTOR: [f64; 2] = [0.4, 2.0];

/// How often the daily swing is put right, and the least and the most of it, as a share of the
/// daily range: days that grow warmer or colder have part of the range from that.
const SWING_ROUNDS: usize = 4;
const SWING_SHARE: [f64; 2] = [0.2, 1.5];

/// How much more the temperature swings on a day one score clearer than its month. Mean of fifteen measured typical
/// years, where the clearer half of the days swings 1.0 to 1.2 times the mean.
const SWING_WITH_CLEARNESS: f64 = 0.17;

/// Least share of a month's spread that is left to days once its trend is taken off.
const LEAST_DAILY_SHARE: f64 = 0.5;

/// A year of hours that has the place's months: mean temperature, daily range, vapour pressure and
/// sun.
///
/// - Temperature of the days: a trend through the months plus deviations of standard deviation σ
///   ([`daily_standard_deviation`]), which persist from day to day.
/// - Of the hours: straight from noon to noon plus a daily swing of the shape found by D. G. Erbs,
///   S. A. Klein and W. A. Beckman (Estimation of degree-days and ambient temperature bin data from monthly-average temperatures,
///   ASHRAE Journal 25(6), 1983), wider on clear days.
/// - Sun: the days' clearness by [`Clearness`], their hours by [`hourly_to_daily_ratio`].
/// - Vapour: that of the day, in step with its temperature.
///
/// The same place, spread and seed give the same bits. What of the place its hours cannot have,
/// [`not_reached`](super::not_reached) tells.
pub fn reconstruct(checked: &CheckedPlace, spread: Spread, seed: u64) -> WeatherYear {
    let place = checked.place();
    let scores = draw_days(&place.months, seed);
    let trend = seasonal_trend(&place.months);
    let sigma = deviations(&place.months, &trend);
    let cold = coldness(&place.months);
    let hours_with = |[winter, summer]: [f64; 2]| {
        let widened: [f64; 12] =
            core::array::from_fn(|m| sigma[m] * (cold[m] * winter + (1.0 - cold[m]) * summer));
        temperature_of_hours(&place.months, &trend, &widened, &scores)
    };
    let mut celsius = hours_with([1.0, 1.0]);
    if spread == Spread::DesignTemperatures {
        let wanted = [place.winter_design.as_celsius(), place.summer_design.as_celsius()];
        let mut factors = [1.0, 1.0];
        for _ in 0..SPREAD_ROUNDS {
            let mut sorted = celsius.clone();
            let found = [exceeded_among(&mut sorted, 0.99), exceeded_among(&mut sorted, 0.01)];
            factors = next_factors(factors, found, wanted, &place.months, &sigma);
            celsius = hours_with(factors);
        }
    }
    let saturation = SaturationTable::new();
    let vapour = vapour_of_hours(&celsius, &place.months, &saturation);
    let sun = sun_of_hours(place.latitude, &place.months, &scores);
    WeatherYear::of_numbers(place.elevation, place.latitude, celsius, vapour, sun)
}

/// Factors on the spread that bring the found design temperatures nearer the wanted ones: a
/// quantile moves with the spread of the outermost month by the distance in standard deviations.
fn next_factors(
    factors: [f64; 2],
    found: [f64; 2],
    wanted: [f64; 2],
    months: &[MonthMeans; 12],
    sigma: &[f64; 12],
) -> [f64; 2] {
    let cold = coldness(months);
    let outermost = |end: f64| (0..12).find(|&m| (cold[m] - end).abs() < 1e-12).unwrap_or(0);
    // Winter has three months of 8.3 %: 1 % of the year is about 4 % of them, 1.75 deviations out.
    const DEVIATIONS: f64 = 1.75;
    core::array::from_fn(|side| {
        let (end, outwards) = if side == 0 { (1.0, -1.0) } else { (0.0, 1.0) };
        let missing = (wanted[side] - found[side]) * outwards;
        let step = missing / (DEVIATIONS * sigma[outermost(end)]);
        (factors[side] + step).clamp(SPREAD_FACTOR[0], SPREAD_FACTOR[1])
    })
}

/// Standard deviation of the daily mean temperatures of a month about the month's mean over many
/// years, K: 0.512·√N·σ_m, σ_m = 1.45 − 0.029·θ_m + 0.0664·σ_yr, with N days, mean θ_m in °C and σ_yr the standard
/// deviation of the twelve months.
///
/// σ_m, the deviation of monthly means, is that of Erbs, Klein and Beckman, 1983 (coefficients from
/// memory). Their degree days at the mean, 0.2041·σ_m·N^1.5, are those of normal days of standard
/// deviation 0.2041·√(2π)·√N·σ_m, hence 0.512.
pub fn daily_standard_deviation(months: &[MonthMeans; 12], month: usize) -> f64 {
    let celsius = months.map(|month| month.temperature.as_celsius());
    let year = celsius.iter().sum::<f64>() / 12.0;
    let squares: f64 = celsius.iter().map(|mean| (mean - year) * (mean - year)).sum();
    let of_months = (squares / 11.0).sqrt();
    let of_means = 1.45 - 0.029 * celsius[month] + 0.0664 * of_months;
    // Above about 50 °C the fitted line falls to nothing; no month is so warm.
    0.512 * (DAYS_IN_MONTH[month] as f64).sqrt() * of_means.max(0.1)
}

/// Daily trend, straight between mid-months, whose months have their means.
fn seasonal_trend(months: &[MonthMeans; 12]) -> Vec<f64> {
    let means = months.map(|month| month.temperature.as_celsius());
    let middle =
        |month: usize| days_of(month).start as f64 + (DAYS_IN_MONTH[month] as f64 - 1.0) / 2.0;
    let mut knots = means;
    let mut trend = vec![0.0; DAYS_IN_YEAR];
    // Each round leaves about a quarter of what is off.
    for _ in 0..24 {
        for (day, value) in trend.iter_mut().enumerate() {
            let here = month_of_day(day);
            let after = day as f64 >= middle(here);
            let from = if after { here } else { (here + 11) % 12 };
            let to = (from + 1) % 12;
            let year = DAYS_IN_YEAR as f64;
            let since = (day as f64 - middle(from) + year) % year;
            let gap = (middle(to) - middle(from) + year) % year;
            *value = knots[from] + (knots[to] - knots[from]) * since / gap;
        }
        for month in 0..12 {
            let days = days_of(month);
            let mean = trend[days.clone()].iter().sum::<f64>() / days.len() as f64;
            knots[month] += means[month] - mean;
        }
    }
    trend
}

/// Standard deviation of the days of each month about the trend, K.
fn deviations(months: &[MonthMeans; 12], trend: &[f64]) -> [f64; 12] {
    core::array::from_fn(|month| {
        let all = daily_standard_deviation(months, month);
        let days = &trend[days_of(month)];
        let mean = months[month].temperature.as_celsius();
        let of_trend =
            days.iter().map(|t| (t - mean) * (t - mean)).sum::<f64>() / days.len() as f64;
        let least = LEAST_DAILY_SHARE * all;
        (all * all - of_trend).max(least * least).sqrt()
    })
}

/// Temperature of every hour, °C.
fn temperature_of_hours(
    months: &[MonthMeans; 12],
    trend: &[f64],
    sigma: &[f64; 12],
    scores: &DayScores,
) -> Vec<f64> {
    let means: Vec<f64> = (0..DAYS_IN_YEAR)
        .map(|day| trend[day] + sigma[month_of_day(day)] * scores.warmth[day])
        .collect();
    let base = through_days(&means);
    let shape = daily_swing();
    let mut hours = vec![0.0; HOURS_IN_YEAR];
    for (month, of_month) in months.iter().enumerate() {
        let wanted = of_month.daily_range.value();
        let mut swing = wanted;
        for _ in 0..SWING_ROUNDS {
            let mut ranges = 0.0;
            for day in days_of(month) {
                let wide = swing * (1.0 + SWING_WITH_CLEARNESS * scores.clearness[day]);
                let (mut lowest, mut highest) = (f64::INFINITY, f64::NEG_INFINITY);
                for (h, part) in shape.iter().enumerate() {
                    let t = base[day * 24 + h] + wide * part;
                    hours[day * 24 + h] = t;
                    lowest = lowest.min(t);
                    highest = highest.max(t);
                }
                ranges += highest - lowest;
            }
            let found = ranges / DAYS_IN_MONTH[month] as f64;
            let [least, most] = SWING_SHARE;
            swing = (swing + wanted - found).clamp(least * wanted, most * wanted);
        }
    }
    hours
}

/// Hourly temperatures straight from one noon to the next, such that every day keeps its mean.
fn through_days(means: &[f64]) -> Vec<f64> {
    let year = means.len();
    let around =
        |values: &[f64], day: usize| values[(day + year - 1) % year] + values[(day + 1) % year];
    // A day's mean of the straight lines is three quarters its noon, an eighth each neighbour's.
    let mut noons = means.to_vec();
    for _ in 0..8 {
        let found: Vec<f64> =
            (0..year).map(|day| 0.75 * noons[day] + 0.125 * around(&noons, day)).collect();
        for day in 0..year {
            noons[day] += means[day] - found[day];
        }
    }
    let mut hours = Vec::with_capacity(year * 24);
    for day in 0..year {
        let [before, after] = [noons[(day + year - 1) % year], noons[(day + 1) % year]];
        for h in 0..24 {
            let from_noon = (h as f64 + 0.5) / 24.0 - 0.5;
            let other = if from_noon < 0.0 { before } else { after };
            hours.push(noons[day] + (other - noons[day]) * from_noon.abs());
        }
    }
    hours
}

/// The swing of a day about its mean, from highest to lowest 1:
/// 0.4632·cos(t* − 3.805) + 0.0984·cos(2t* − 0.360) + 0.0168·cos(3t* − 0.822) + 0.0138·cos(4t* − 3.513),
/// t* = 2π·(t − 1)/24, t in hours. Source: Erbs, Klein and Beckman, 1983 (coefficients from memory).
fn daily_swing() -> [f64; 24] {
    let raw: [f64; 24] = core::array::from_fn(|h| {
        let t = TAU * (h as f64 + 0.5 - 1.0) / 24.0;
        0.4632 * libm::cos(t - 3.805)
            + 0.0984 * libm::cos(2.0 * t - 0.360)
            + 0.0168 * libm::cos(3.0 * t - 0.822)
            + 0.0138 * libm::cos(4.0 * t - 3.513)
    });
    let highest = raw.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    let lowest = raw.iter().copied().fold(f64::INFINITY, f64::min);
    raw.map(|part| part / (highest - lowest))
}

/// Global horizontal irradiance of every hour, W/m².
fn sun_of_hours(latitude: Angle, months: &[MonthMeans; 12], scores: &DayScores) -> Vec<f64> {
    let mut hours = vec![0.0; HOURS_IN_YEAR];
    for (month, of_month) in months.iter().enumerate() {
        let wanted = of_month.daily_global_irradiation.value();
        let above = mean_extraterrestrial_irradiation(latitude, month).value();
        if wanted <= 0.0 || above <= 0.0 {
            continue;
        }
        let mean = wanted / above;
        let spread = Clearness::of_mean(mean);
        for day in days_of(month) {
            let clearness = spread.at(scores.cloudier[day], mean);
            let of_day = clearness * daily_extraterrestrial_irradiation(latitude, day).value();
            let sunset = sunset_hour_angle(latitude, declination(day));
            for h in 0..24 {
                let hour_angle = Angle::degrees((h as f64 + 0.5 - 12.0) * 15.0);
                hours[day * 24 + h] = of_day * hourly_to_daily_ratio(hour_angle, sunset) / 3600.0;
            }
        }
        // The fitted distribution and the hourly shares come to the mean within a few per cent.
        let range = hours_of(month);
        let found = hours[range.clone()].iter().sum::<f64>() * 3600.0 / DAYS_IN_MONTH[month] as f64;
        if found > 0.0 {
            hours[range].iter_mut().for_each(|sun| *sun *= wanted / found);
        }
    }
    hours
}
