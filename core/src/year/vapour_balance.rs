//! Vapour of the room's air with a lining that takes it up and gives it back.

use crate::design::{Design, LiningMaterial, Surface};
use crate::envelope::{Envelope, lining_material};
use crate::extremes::{greater, lesser};
use crate::heat_loss::{AIR_DENSITY, AIR_HEAT_CAPACITY};
use crate::moisture::{LEWIS_NUMBER, STILL_AIR_PERMEABILITY, STILL_CORNER_COEFFICIENT};
use crate::psychro::{GAS_CONSTANT_OF_VAPOUR, MOLAR_MASS_RATIO, STANDARD_PRESSURE};
use crate::room::Room;
use crate::units::Pressure;

/// Seconds of the cycle that the lining's depth is reckoned for: a day.
const CYCLE: f64 = 86_400.0;

/// Saturation pressure at 20 °C, Pa, at which the lining's depth is reckoned.
const AT_TWENTY: f64 = 2338.8;

/// Water that a cubic metre of board takes up from dry to saturated air, kg/m³, in the mean of the
/// sorption curve between 30 % and 80 %: plywood 13 % of 500 kg/m³, gypsum board 1 % of 900 kg/m³
/// (from memory).
const fn sorption(lining: LiningMaterial) -> f64 {
    match lining {
        LiningMaterial::Plywood => 65.0,
        LiningMaterial::GypsumBoard => 9.0,
    }
}

/// Coefficients of the balance, SI.
#[derive(Clone, Copy, Debug)]
pub(super) struct VapourBalance {
    /// Water in the room's air for each pascal, kg/Pa.
    air: f64,
    /// Water carried for each pascal and each W/K of air let in, kg/(s·Pa) over W/K.
    per_watt_kelvin: f64,
    /// Water in the lining from dry to saturated, kg.
    lining: f64,
    /// Conductance from air into the lining, kg/(s·Pa).
    into_lining: f64,
    /// Conductance onto the windows, kg/(s·Pa).
    onto_windows: f64,
    /// Conductance onto a square metre of cold surface, kg/(m²·s·Pa).
    pub(super) onto_spot: f64,
}

/// What the air is driven by through a step: Pa, W/K and kg/s.
#[derive(Clone, Copy, Debug)]
pub(super) struct VapourDrive {
    /// Outdoors.
    pub(super) outdoors: f64,
    /// H of all air let in.
    pub(super) air: f64,
    /// Moisture given off.
    pub(super) source: f64,
    /// Saturation at the lining's face.
    pub(super) at_lining: f64,
    /// Saturation of the room's air.
    pub(super) at_air: f64,
    /// Saturation at the windows.
    pub(super) at_windows: f64,
}

/// Room and lining.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct VapourState {
    /// Vapour pressure of the room's air, Pa.
    pub(super) pascals: f64,
    /// Relative humidity of the lining's outer layer.
    pub(super) lining: f64,
}

/// Where the water went through a step, kg.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct WaterGone {
    /// Carried off by air; below 0 brought in.
    pub(super) by_air: f64,
    /// Run down the windows.
    pub(super) on_windows: f64,
    /// Condensed on the lining, because air and lining were full.
    pub(super) on_lining: f64,
}

impl VapourBalance {
    /// The lining by its effective moisture penetration depth d = √(D·T/π), D = δ·p_sat/ξ (M. J. Cunningham, Modelling of
    /// moisture transfer in structures, Building and Environment 23, 1988; ASHRAE Handbook of
    /// Fundamentals 2017, chapter 25), its layer reached through the air at its face and half the depth.
    /// Walls and ceiling count; the sealed floor does not. Onto surfaces by the Lewis relation.
    pub(super) fn of(
        design: &Design,
        room: &Room,
        envelope: &Envelope,
        air_pressure: Pressure,
    ) -> Self {
        let thinner = air_pressure / STANDARD_PRESSURE;
        let dry_air = AIR_DENSITY.value() * thinner * room.volume.value();
        let per_pascal = MOLAR_MASS_RATIO / air_pressure.value();
        let lined: f64 = envelope
            .plain
            .iter()
            .filter(|plain| plain.surface != Surface::Floor)
            .map(|plain| plain.area.value())
            .sum();
        let sorption = sorption(design.lining_material);
        let resistance_factor = lining_material(design).vapour_resistance_factor.value();
        let permeability = STILL_AIR_PERMEABILITY.value() / resistance_factor;
        let depth = (permeability * AT_TWENTY / sorption * CYCLE / core::f64::consts::PI)
            .sqrt()
            .min(design.lining_thickness.value());
        // A room's surfaces stand in air that moves little; its corners are the still ones.
        let volumetric = AIR_DENSITY.value() * AIR_HEAT_CAPACITY.value();
        let lewis = libm::pow(LEWIS_NUMBER, 2.0 / 3.0);
        let beta = STILL_CORNER_COEFFICIENT.value() / (volumetric * lewis);
        let onto_spot = beta / (GAS_CONSTANT_OF_VAPOUR * 293.15);
        let through = 1.0 / (1.0 / onto_spot + 0.5 * depth / permeability);
        Self {
            air: dry_air * per_pascal,
            per_watt_kelvin: per_pascal / AIR_HEAT_CAPACITY.value(),
            lining: lined * sorption * depth,
            into_lining: lined * through,
            onto_windows: envelope.windows.area.value() * onto_spot,
            onto_spot,
        }
    }

    /// The coefficients by name.
    pub(super) fn coefficients(&self) -> [(&'static str, f64); 6] {
        [
            ("vapour_in_air", self.air),
            ("vapour_per_watt_kelvin", self.per_watt_kelvin),
            ("vapour_in_lining", self.lining),
            ("vapour_into_lining", self.into_lining),
            ("vapour_onto_windows", self.onto_windows),
            ("vapour_onto_spot", self.onto_spot),
        ]
    }

    /// Numerator and denominator of the vapour pressure after a step of seconds.
    fn terms(&self, state: &VapourState, drive: &VapourDrive, seconds: f64) -> [f64; 2] {
        let held = self.air / seconds;
        let lining = self.lining / seconds;
        let by_air = drive.air * self.per_watt_kelvin;
        let into = self.into_lining * lining / (lining + self.into_lining * drive.at_lining);
        let numerator = held * state.pascals
            + drive.source
            + by_air * drive.outdoors
            + into * state.lining * drive.at_lining;
        [numerator, held + by_air + into]
    }

    /// H of more air, W/K, that would bring the room to a vapour pressure by the end of a step;
    /// `None` where outdoor air cannot.
    pub(super) fn air_to_hold(
        &self,
        wanted: f64,
        state: &VapourState,
        drive: &VapourDrive,
        seconds: f64,
    ) -> Option<f64> {
        let [numerator, denominator] = self.terms(state, drive, seconds);
        let onto_windows = self.onto_windows * greater(wanted - drive.at_windows, 0.0);
        let missing = numerator - wanted * denominator - onto_windows;
        (wanted > drive.outdoors)
            .then(|| missing / (wanted - drive.outdoors) / self.per_watt_kelvin)
    }

    /// The state after a step, implicit in time, so that water is neither lost nor made.
    pub(super) fn go(
        &self,
        state: &VapourState,
        drive: &VapourDrive,
        seconds: f64,
    ) -> (VapourState, WaterGone) {
        let [numerator, denominator] = self.terms(state, drive, seconds);
        let mut pascals = numerator / denominator;
        let mut gone = WaterGone::default();
        if pascals > drive.at_windows && self.onto_windows > 0.0 {
            pascals = (numerator + self.onto_windows * drive.at_windows)
                / (denominator + self.onto_windows);
            gone.on_windows = self.onto_windows * (pascals - drive.at_windows) * seconds;
        }
        // Air holds no more than it does at its own temperature, nor beside a colder lining.
        let most = lesser(drive.at_lining, drive.at_air);
        if pascals > most {
            // Windows warmer than that stay dry; the lining takes all that is too much.
            let windows = if drive.at_windows < most { self.onto_windows } else { 0.0 };
            gone.on_windows = windows * (most - drive.at_windows) * seconds;
            gone.on_lining = (numerator - most * denominator) * seconds - gone.on_windows;
            pascals = most;
        }
        gone.by_air = drive.air * self.per_watt_kelvin * (pascals - drive.outdoors) * seconds;
        let lining = self.lining / seconds;
        let after = VapourState {
            pascals,
            lining: (lining * state.lining + self.into_lining * pascals)
                / (lining + self.into_lining * drive.at_lining),
        };
        (after, gone)
    }

    /// Water held by air and lining, kg.
    pub(super) fn held(&self, state: &VapourState) -> f64 {
        self.air * state.pascals + self.lining * state.lining
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A 20 ft room's coefficients, in round figures.
    const BALANCE: VapourBalance = VapourBalance {
        air: 2.0e-4,
        per_watt_kelvin: 6.0e-9,
        lining: 10.0,
        into_lining: 3.0e-7,
        onto_windows: 2.0e-8,
        onto_spot: 1.0e-8,
    };

    /// Saturation at whole degrees from 17 to 30 °C, Pa (ASHRAE Fundamentals 2017, chapter 1, table 3).
    fn saturation(celsius: usize) -> f64 {
        [1938.0, 2064.0, 2198.0, 2339.0, 2488.0, 2645.0, 2810.0, 2985.0, 3169.0]
            .get(celsius - 17)
            .copied()
            .unwrap_or(4246.0)
    }

    #[test]
    fn water_neither_comes_out_of_a_surface_nor_stands_above_saturation() {
        // Muggy outdoors with windows warmer than the lining, then a wet source in air colder
        // than the lining, then the usual winter the other way round.
        for (outdoors, source, air, lining, windows) in
            [(3564.0, 0.0, 20, 19, 25), (1500.0, 2.0e-3, 18, 19, 18), (300.0, 2.0e-3, 20, 19, 17)]
        {
            let drive = VapourDrive {
                outdoors,
                air: 60.0,
                source,
                at_air: saturation(air),
                at_lining: saturation(lining),
                at_windows: saturation(windows),
            };
            let mut state = VapourState { pascals: 1900.0, lining: 0.9 };
            for _ in 0..200 {
                let (after, gone) = BALANCE.go(&state, &drive, 3600.0);
                assert!(gone.on_windows >= 0.0 && gone.on_lining >= 0.0, "{gone:?}");
                assert!(after.pascals <= drive.at_air * (1.0 + 1e-12), "{after:?}");
                let made = source * 3600.0 - gone.by_air - gone.on_windows - gone.on_lining;
                let kept = BALANCE.held(&after) - BALANCE.held(&state);
                // The lining takes up by its humidity, whose saturation may move between steps.
                assert!((made - kept).abs() < 1e-9 * (1.0 + made.abs()), "{made} kept {kept}");
                state = after;
            }
        }
    }
}
