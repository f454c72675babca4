//! Sun and cold sky on the steel, as a change of the outdoor temperature.

use crate::units::{
    Irradiance, SolarShare, SurfaceCoefficient, Temperature, TemperatureDifference,
};

/// Sol-air temperature θ_e + α·I/h_o − ε·ΔR/h_o: the outdoor temperature at which a surface without sun
/// and sky would pass the same heat.
///
/// `sky` is ε·ΔR/h_o: 3.9 K for a level surface under a clear sky, nothing for an upright one.
/// Source: ASHRAE Handbook of Fundamentals 2017, chapter 18.
pub fn sol_air_temperature(
    outdoor: Temperature,
    sun: Irradiance,
    absorptance: SolarShare,
    outside: SurfaceCoefficient,
    sky: TemperatureDifference,
) -> Temperature {
    let warmed = absorptance.value() * sun.value() / outside.value();
    outdoor + TemperatureDifference::new(warmed) - sky
}

/// Surface coefficient h_o outdoors of a surface in the sun, radiation and a wind of 3.4 m/s together.
/// Sun is strongest on still days, so it holds all year; at the 25 W/(m²·K) of ISO 6946, which a heat loss rests on,
/// the steel would rise a tenth less.
///
/// Source: ASHRAE Handbook of Fundamentals 2017, chapter 26, table 10, summer; read as quoted for outer walls, 22.7 in
/// summer and 34.0 in winter (mypdh.engineer, Interior and exterior surface heat transfer coefficients); its wind from memory.
pub const SUNNY_SURFACE_COEFFICIENT: SurfaceCoefficient = SurfaceCoefficient::new(22.7);

/// Emissivity of paint for warmth, about 0.9 (from memory).
const EMISSIVITY: f64 = 0.9;

/// Emissivity of bare glass for warmth, 0.837 (EN 673:2011, from memory).
const EMISSIVITY_OF_GLASS: f64 = 0.837;

/// How much colder the sky is than the air in the mean of the year, 11 K in between subpolar and
/// tropical zones (ISO 13790:2008, 11.4.6, from memory).
const SKY_BELOW_AIR: f64 = 11.0;

/// What the sky takes off the sol-air temperature of a surface that sees all of it,
/// R_se·h_r·Δθ_er, with h_r = 5·ε and R_se = 0.04 m²·K/W (ISO 13790:2008, 11.3.5, from memory).
pub const WHOLE_SKY: TemperatureDifference =
    TemperatureDifference::new(0.04 * 5.0 * EMISSIVITY * SKY_BELOW_AIR);

/// The same for an upright window, which sees half of the sky, ½·R_se·h_r·Δθ_er: the standard takes glazed parts as
/// it does opaque ones (ISO 13790:2008, 11.3.5, from memory).
pub const SKY_BEFORE_WINDOWS: TemperatureDifference =
    TemperatureDifference::new(0.5 * 0.04 * 5.0 * EMISSIVITY_OF_GLASS * SKY_BELOW_AIR);
