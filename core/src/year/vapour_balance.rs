//! Vapour of the room's air with a lining that takes it up and gives it back.

use crate::design::{Design, LiningMaterial, Surface};
use crate::envelope::{Envelope, lining_material};
use crate::extremes::lesser;
use crate::heat_loss::{AIR_DENSITY, AIR_HEAT_CAPACITY};
use crate::material::{REINFORCED_PLASTIC, STILL_AIR_PERMEABILITY};
use crate::moisture::{Sink, Supply};
use crate::psychro::{MOLAR_MASS_RATIO, STANDARD_PRESSURE};
use crate::room::Room;

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

/// Most of the air's pressure that its vapour may be, one half: saturation at 81 °C at sea level. Hotter rooms, which
/// no heater of a room makes, are out of the range of W = 0.622·p/(P − p).
const MOST_VAPOUR: f64 = 0.5;

/// Coefficients of the balance, SI.
#[derive(Clone, Copy, Debug)]
pub(super) struct VapourBalance {
    /// Pressure of the air, Pa.
    air_pressure: f64,
    /// Water in the room's air for each pascal, kg/Pa.
    air: f64,
    /// Water in the lining from dry to saturated, kg.
    lining: f64,
    /// Conductance from air into the lining, kg/(s·Pa).
    into_lining: f64,
}

/// What the air is driven by through a step: Pa, W/K and kg/s.
#[derive(Clone, Copy, Debug)]
pub(super) struct VapourDrive {
    /// Outdoors.
    pub(super) outdoors: f64,
    /// H of all air let in, as if none of its heat were kept back.
    pub(super) air: f64,
    /// Moisture given off.
    pub(super) source: f64,
    /// Saturation at the lining's face.
    pub(super) at_lining: f64,
    /// Saturation of the room's air.
    pub(super) at_air: f64,
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
    /// Condensed wherever it could, because the air was full.
    pub(super) anywhere: f64,
}

/// The balance of a step but for the sinks.
#[derive(Clone, Copy, Debug)]
pub(super) struct Terms {
    pub(super) supply: Supply,
    /// Kilograms of water for each kilogram of dry air and pascal, as the room's air holds them.
    ratio: f64,
    /// Humidity ratio outdoors.
    outdoors: f64,
    /// Air let in, kg/s.
    flow: f64,
}

impl VapourBalance {
    /// The lining by its effective moisture penetration depth d = √(D·T/π), D = δ·p_sat/ξ (M. J. Cunningham, Modelling of
    /// moisture transfer in structures, Building and Environment 23, 1988; ASHRAE Handbook of
    /// Fundamentals 2017, chapter 25), its layer reached through the air at its face, a wipeable
    /// panel if there is one, and half the depth.
    /// Walls and ceiling count; the sealed floor does not. Onto surfaces by the Lewis relation.
    ///
    /// Onto a square metre of surface passes `onto_surface`, kg/(m²·s·Pa).
    pub(super) fn of(design: &Design, room: &Room, envelope: &Envelope, onto_surface: f64) -> Self {
        let air_pressure = design.place.air_pressure();
        let thinner = air_pressure / STANDARD_PRESSURE;
        let dry_air = AIR_DENSITY.value() * thinner * room.volume.value();
        let lined: f64 = envelope
            .plain
            .iter()
            .filter(|plain| plain.surface != Surface::Floor)
            .map(|plain| plain.area.value())
            .sum();
        let sorption = sorption(design.lining_material);
        let permeability = STILL_AIR_PERMEABILITY.value()
            / lining_material(design).vapour_resistance_factor.value();
        let depth = (permeability * AT_TWENTY / sorption * CYCLE / core::f64::consts::PI)
            .sqrt()
            .min(design.lining_thickness.value());
        let panel = design.panel_thickness.value()
            * REINFORCED_PLASTIC.vapour_resistance_factor.value()
            / STILL_AIR_PERMEABILITY.value();
        let through = 1.0 / (1.0 / onto_surface + panel + 0.5 * depth / permeability);
        Self {
            air_pressure: air_pressure.value(),
            air: dry_air * MOLAR_MASS_RATIO / air_pressure.value(),
            lining: lined * sorption * depth,
            into_lining: lined * through,
        }
    }

    /// The most vapour that air of a saturation pressure holds, Pa.
    pub(super) fn most(&self, saturation: f64) -> f64 {
        lesser(saturation, MOST_VAPOUR * self.air_pressure)
    }

    /// The coefficients by name.
    pub(super) fn coefficients(&self) -> [(&'static str, f64); 4] {
        [
            ("air_pressure", self.air_pressure),
            ("vapour_in_air", self.air),
            ("vapour_in_lining", self.lining),
            ("vapour_into_lining", self.into_lining),
        ]
    }

    /// The straight part of the balance of a step of seconds.
    ///
    /// Air carries W = 0.622·p/(P − p) of each side; P − p of the room is that before the step, which moves by a
    /// thousandth.
    pub(super) fn terms(&self, state: &VapourState, drive: &VapourDrive, seconds: f64) -> Terms {
        let held = self.air / seconds;
        let lining = self.lining / seconds;
        let flow = drive.air / AIR_HEAT_CAPACITY.value();
        let ratio = MOLAR_MASS_RATIO / (self.air_pressure - state.pascals);
        let outdoors = MOLAR_MASS_RATIO * drive.outdoors / (self.air_pressure - drive.outdoors);
        let into = self.into_lining * lining / (lining + self.into_lining * drive.at_lining);
        Terms {
            supply: Supply {
                given: held * state.pascals
                    + drive.source
                    + flow * outdoors
                    + into * state.lining * drive.at_lining,
                carried: held + flow * ratio + into,
            },
            ratio,
            outdoors,
            flow,
        }
    }

    /// H of more air, W/K, that would bring the room to a vapour pressure by the end of a step;
    /// `None` where outdoor air cannot.
    pub(super) fn air_to_hold(&self, wanted: f64, terms: &Terms, sinks: &[Sink]) -> Option<f64> {
        let missing = terms.supply.left(sinks, wanted);
        let carried = terms.ratio * wanted - terms.outdoors;
        (carried > 0.0).then(|| missing / carried * AIR_HEAT_CAPACITY.value())
    }

    /// The vapour pressure after a step, implicit in time, so that water is neither lost nor made: no higher than air
    /// holds. A lining colder than that takes up a film beyond its saturation, and gives it back.
    pub(super) fn pressure(
        terms: &Terms,
        drive: &VapourDrive,
        sinks: &[Sink],
        before: &VapourState,
    ) -> f64 {
        lesser(terms.supply.balanced(sinks, before.pascals), drive.at_air)
    }

    /// The state after a step of seconds that ended at a vapour pressure.
    pub(super) fn go(
        &self,
        state: &VapourState,
        drive: &VapourDrive,
        terms: &Terms,
        sinks: &[Sink],
        pascals: f64,
        seconds: f64,
    ) -> (VapourState, WaterGone) {
        // What does not balance in air that holds no more condenses wherever it can.
        let over = if pascals >= drive.at_air { terms.supply.left(sinks, pascals) } else { 0.0 };
        let gone = WaterGone {
            by_air: terms.flow * (terms.ratio * pascals - terms.outdoors) * seconds,
            anywhere: over * seconds,
        };
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
    const BALANCE: VapourBalance =
        VapourBalance { air_pressure: 101_325.0, air: 2.0e-4, lining: 10.0, into_lining: 3.0e-7 };

    /// Saturation at whole degrees from 17 to 30 °C, Pa (ASHRAE Fundamentals 2017, chapter 1, table 3).
    fn saturation(celsius: usize) -> f64 {
        [1938.0, 2064.0, 2198.0, 2339.0, 2488.0, 2645.0, 2810.0, 2985.0, 3169.0]
            .get(celsius - 17)
            .copied()
            .unwrap_or(4246.0)
    }

    /// Through 2.3 mm of plastic pass 2·10⁻¹⁰/(10 000 · 0.0023) = 8.7·10⁻¹² kg/(m²·s·Pa): a lining behind it takes up next
    /// to nothing, where bare plywood takes hundreds of times as much.
    #[test]
    fn a_panel_keeps_vapour_from_the_lining() {
        let into = |panel: f64| {
            let panel_thickness = crate::units::Length::mm(panel);
            let checked = Design { panel_thickness, ..Design::default() }.check().unwrap();
            let room = Room::of(&checked);
            let envelope = Envelope::of(&checked, &room.clear);
            let balance = VapourBalance::of(checked.design(), &room, &envelope, 2.5e-8);
            let lined = envelope.plain.iter().filter(|plain| plain.surface != Surface::Floor);
            balance.into_lining / lined.map(|plain| plain.area.value()).sum::<f64>()
        };
        let (bare, behind_plastic) = (into(0.0), into(2.3));
        assert!((behind_plastic / 8.696e-12 - 1.0).abs() < 0.02, "{behind_plastic}");
        assert!(bare > 100.0 * behind_plastic, "{bare}");
    }

    #[test]
    fn water_neither_comes_out_of_a_surface_nor_stands_above_saturation() {
        // Muggy outdoors with a window warmer than the lining, then a wet source in air colder
        // than the lining, then the usual winter the other way round.
        for (outdoors, source, air, lining, window) in
            [(3564.0, 0.0, 20, 19, 25), (1500.0, 2.0e-3, 18, 19, 18), (300.0, 2.0e-3, 20, 19, 17)]
        {
            let drive = VapourDrive {
                outdoors,
                air: 60.0,
                source,
                at_air: saturation(air),
                at_lining: saturation(lining),
            };
            let sinks =
                [Sink { conductance: 2.0e-8, balance: saturation(window), gives_at_most: 0.0 }];
            let mut state = VapourState { pascals: 1900.0, lining: 0.9 };
            for _ in 0..200 {
                let terms = BALANCE.terms(&state, &drive, 3600.0);
                let pascals = VapourBalance::pressure(&terms, &drive, &sinks, &state);
                let (after, gone) = BALANCE.go(&state, &drive, &terms, &sinks, pascals, 3600.0);
                let onto_window = sinks[0].takes(pascals) * 3600.0;
                assert!(onto_window >= 0.0 && gone.anywhere >= -1e-12, "{gone:?}");
                assert!(after.pascals <= drive.at_air * (1.0 + 1e-12), "{after:?}");
                let made = source * 3600.0 - gone.by_air - onto_window - gone.anywhere;
                let kept = BALANCE.held(&after) - BALANCE.held(&state);
                // The lining takes up by its humidity, whose saturation may move between steps.
                assert!((made - kept).abs() < 1e-9 * (1.0 + made.abs()), "{made} kept {kept}");
                state = after;
            }
        }
    }
}
