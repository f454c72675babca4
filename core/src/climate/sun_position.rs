//! Where the sun stands, and extraterrestrial irradiance.

use core::f64::consts::{PI, TAU};

use super::calendar::DAYS_IN_YEAR;
use crate::units::{Angle, Irradiance, Irradiation};

/// Solar constant: extraterrestrial normal irradiance at the mean distance,
/// 1367 W/m² (World Radiation Center, as in Duffie and Beckman, Solar Engineering of Thermal
/// Processes, section 1.2).
pub const SOLAR_CONSTANT: Irradiance = Irradiance::new(1367.0);

/// Radians of the year gone by at a day, from 0 on 1 January.
fn day_angle(day: usize) -> f64 {
    TAU * day as f64 / DAYS_IN_YEAR as f64
}

/// Declination of the sun at a day, from 0 on 1 January.
///
/// Source: J. W. Spencer, Fourier series representation of the position of the sun, Search 2(5),
/// 1971; within 0.035 degrees.
pub fn declination(day: usize) -> Angle {
    let b = day_angle(day);
    Angle::new(
        0.006_918 - 0.399_912 * libm::cos(b) + 0.070_257 * libm::sin(b)
            - 0.006_758 * libm::cos(2.0 * b)
            + 0.000_907 * libm::sin(2.0 * b)
            - 0.002_697 * libm::cos(3.0 * b)
            + 0.001_48 * libm::sin(3.0 * b),
    )
}

/// Extraterrestrial normal irradiance at a day, from 0 on 1 January.
///
/// Source: Spencer, 1971, as for [`declination`].
pub fn extraterrestrial_irradiance(day: usize) -> Irradiance {
    let b = day_angle(day);
    SOLAR_CONSTANT
        * (1.000_11
            + 0.034_221 * libm::cos(b)
            + 0.001_28 * libm::sin(b)
            + 0.000_719 * libm::cos(2.0 * b)
            + 0.000_077 * libm::sin(2.0 * b))
}

/// Hour angle at which the sun sets, cos ω_s = −tan φ·tan δ; 0 where it does not rise, π where it
/// does not set.
///
/// Source: Duffie and Beckman, section 1.6.
pub fn sunset_hour_angle(latitude: Angle, declination: Angle) -> Angle {
    let cosine = -libm::tan(latitude.value()) * libm::tan(declination.value());
    Angle::new(if cosine >= 1.0 {
        0.0
    } else if cosine <= -1.0 {
        PI
    } else {
        libm::acos(cosine)
    })
}

/// Extraterrestrial irradiation of a level plane through a day,
/// H₀ = (86400/π)·G_on·(cos φ·cos δ·sin ω_s + ω_s·sin φ·sin δ), a day from 0 on 1 January.
///
/// Source: Duffie and Beckman, section 1.10.
pub fn daily_extraterrestrial_irradiation(latitude: Angle, day: usize) -> Irradiation {
    let declination = declination(day);
    let sunset = sunset_hour_angle(latitude, declination).value();
    let (phi, delta) = (latitude.value(), declination.value());
    let geometry = libm::cos(phi) * libm::cos(delta) * libm::sin(sunset)
        + sunset * libm::sin(phi) * libm::sin(delta);
    Irradiation::new(86_400.0 / PI * extraterrestrial_irradiance(day).value() * geometry)
}

/// Direction of the sun as a unit vector.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SunDirection {
    /// Towards the south.
    pub south: f64,
    /// Towards the west.
    pub west: f64,
    /// Upwards: the cosine of the zenith angle; below 0 the sun is down.
    pub up: f64,
}

impl SunDirection {
    /// At an hour angle, 0 at noon, 15 degrees an hour, afternoon above 0.
    ///
    /// cos θ_z = cos φ·cos δ·cos ω + sin φ·sin δ (Duffie and Beckman, section 1.6).
    pub fn at(latitude: Angle, declination: Angle, hour_angle: Angle) -> Self {
        let [phi, delta, omega] = [latitude, declination, hour_angle].map(Angle::value);
        Self {
            south: libm::sin(phi) * libm::cos(delta) * libm::cos(omega)
                - libm::cos(phi) * libm::sin(delta),
            west: libm::cos(delta) * libm::sin(omega),
            up: libm::cos(phi) * libm::cos(delta) * libm::cos(omega)
                + libm::sin(phi) * libm::sin(delta),
        }
    }

    /// Cosine of the angle to the normal of an upright wall that faces a compass direction,
    /// clockwise from north.
    pub fn on_wall(&self, facing: Angle) -> f64 {
        -self.south * libm::cos(facing.value()) - self.west * libm::sin(facing.value())
    }
}
