//! Wet-bulb temperature: where adiabatic saturation ends.

use super::error::{
    COLDEST, PsychroError, PsychroQuantity, check_air_pressure, check_humidity_ratio,
    check_temperature, check_vapour_pressure,
};
use super::humidity::{ratio_of, saturation_humidity_ratio};
use super::hyland_wexler::{TRIPLE_POINT, saturation_pascals};
use crate::bounds::{BoundedQuantity, Bounds};
use crate::root_finding::root_between;
use crate::units::{HumidityRatio, Pressure, Temperature};

/// How near the wet bulb is found, K.
const ACCURACY: f64 = 1e-10;

/// Part of a saturated humidity ratio that is rounding, not supersaturation.
pub(super) const ROUNDING: f64 = 1e-12;

/// What the wick is wet with.
#[derive(Clone, Copy)]
enum Bulb {
    Ice,
    Water,
}

impl Bulb {
    /// W of air at t whose bulb reads t*, both in °C, at p in Pa; negative where no air dries a
    /// bulb so far.
    fn humidity_ratio(self, dry: f64, wet: f64, air_pressure: f64) -> f64 {
        let saturated = ratio_of(saturation_pascals(wet), air_pressure);
        let (latent, sensible, total) = match self {
            Self::Ice => (2830.0 - 0.24 * wet, 1.006, 2830.0 + 1.86 * dry - 2.1 * wet),
            Self::Water => (2501.0 - 2.326 * wet, 1.006, 2501.0 + 1.86 * dry - 4.186 * wet),
        };
        (latent * saturated - sensible * (dry - wet)) / total
    }
}

/// Humidity ratio of air at dry bulb t with wet bulb t*, kg/kg, W_s* being that of saturated air
/// at t*:
///
/// - water on the bulb: W = ((2501 − 2.326·t*)·W_s* − 1.006·(t − t*)) / (2501 + 1.86·t − 4.186·t*)
/// - ice on the bulb: W = ((2830 − 0.24·t*)·W_s* − 1.006·(t − t*)) / (2830 + 1.86·t − 2.1·t*)
///
/// Ice is taken below the triple point. Range: t from −100 °C to 200 °C, t* from −100 °C to t and
/// 2 K below boiling at p. Source: ASHRAE Fundamentals 2017, chapter 1, equations 33 and 35.
///
/// # Errors
/// Refuses an input out of range, or a wet bulb so low that the humidity ratio would be negative.
pub fn humidity_ratio_from_wet_bulb(
    dry_bulb: Temperature,
    wet_bulb: Temperature,
    air_pressure: Pressure,
) -> Result<HumidityRatio, PsychroError> {
    let dry = check_temperature(dry_bulb)?;
    let p = check_air_pressure(air_pressure)?;
    let allowed = Bounds::between(COLDEST, dry);
    let wet = PsychroQuantity::WetBulb.check_within(wet_bulb.as_celsius(), allowed)?;
    check_vapour_pressure(Pressure::new(saturation_pascals(wet)), p)?;
    let bulb = if wet < TRIPLE_POINT.as_celsius() { Bulb::Ice } else { Bulb::Water };
    let ratio = HumidityRatio::new(bulb.humidity_ratio(dry, wet, p));
    check_humidity_ratio(ratio)?;
    Ok(ratio)
}

/// Wet-bulb temperature, °C: the t* whose [`humidity_ratio_from_wet_bulb`] is W, found to
/// 10⁻¹⁰ K.
///
/// A bulb near freezing can read two temperatures, up to 0.7 K apart in dry air: one with water,
/// one with ice. Where water can stay liquid the liquid reading is given.
///
/// Range: t from −100 °C to 2 K below boiling at p, W from 0 to saturation.
/// Source: ASHRAE Fundamentals 2017, chapter 1, equations 33 and 35.
///
/// # Errors
/// Refuses an input out of range, or air so cold and dry that the bulb would read below −100 °C.
pub fn wet_bulb(
    dry_bulb: Temperature,
    ratio: HumidityRatio,
    air_pressure: Pressure,
) -> Result<Temperature, PsychroError> {
    let saturated = saturation_humidity_ratio(dry_bulb, air_pressure)?.value();
    let (dry, p) = (dry_bulb.as_celsius(), air_pressure.value());
    let freezing = TRIPLE_POINT.as_celsius();

    let coldest = Bulb::Ice.humidity_ratio(dry, COLDEST, p).max(0.0);
    let allowed = Bounds::between(coldest, saturated * (1.0 + ROUNDING));
    let w = PsychroQuantity::HumidityRatio.check_within(ratio.value(), allowed)?;
    if w >= saturated {
        return Ok(dry_bulb);
    }

    let liquid = dry > freezing && w >= Bulb::Water.humidity_ratio(dry, freezing, p);
    let (bulb, lowest, highest) =
        if liquid { (Bulb::Water, freezing, dry) } else { (Bulb::Ice, COLDEST, dry.min(freezing)) };
    root_between(|wet| bulb.humidity_ratio(dry, wet, p) - w, lowest, highest, ACCURACY)
        .map(Temperature::celsius)
        .ok_or(PsychroError { quantity: PsychroQuantity::HumidityRatio, given: w, allowed })
}
