//! How the sun of a day falls on its hours, and how much of it comes from the whole sky.

use core::f64::consts::PI;

use crate::units::Angle;

/// Ratio r_t of the global irradiation of an hour of hour angle ω to that of its day,
/// r = (π/24)·(a + b·cos ω)·(cos ω − cos ω_s) / (sin ω_s − ω_s·cos ω_s),
/// a = 0.409 + 0.5016·sin(ω_s − 60°), b = 0.6609 − 0.4767·sin(ω_s − 60°); nothing before sunrise
/// and after sunset.
///
/// Source: M. Collares-Pereira and A. Rabl, The average distribution of solar radiation, Solar
/// Energy 22, 1979, as in Duffie and Beckman, section 2.13. The shares of a day's 24 hours add up
/// to about 1.
pub fn hourly_to_daily_ratio(hour_angle: Angle, sunset: Angle) -> f64 {
    let (omega, sunset) = (hour_angle.value(), sunset.value());
    let below = libm::sin(sunset) - sunset * libm::cos(sunset);
    if omega.abs() >= sunset || below <= 0.0 {
        return 0.0;
    }
    let shift = libm::sin(sunset - PI / 3.0);
    let a = 0.409 + 0.5016 * shift;
    let b = 0.6609 - 0.4767 * shift;
    let cosine = libm::cos(omega);
    (PI / 24.0 * (a + b * cosine) * (cosine - libm::cos(sunset)) / below).max(0.0)
}

/// Diffuse fraction of an hour's global irradiation, over its clearness index k_T, which is that
/// irradiation over the extraterrestrial.
///
/// Source: D. G. Erbs, S. A. Klein and J. A. Duffie, Estimation of the diffuse radiation fraction
/// for hourly, daily and monthly-average global radiation, Solar Energy 28, 1982.
pub fn diffuse_fraction(clearness: f64) -> f64 {
    if clearness <= 0.22 {
        1.0 - 0.09 * clearness
    } else if clearness <= 0.80 {
        let k = clearness;
        0.9511 + k * (-0.1604 + k * (4.388 + k * (-16.638 + k * 12.336)))
    } else {
        0.165
    }
}
