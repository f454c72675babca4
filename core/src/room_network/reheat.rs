//! The heat that brings a room back from its setback in time.

use super::course::RoomPart;
use super::network::{Drive, RoomNetwork};
use crate::units::{Power, Temperature, TemperatureDifference, Time};

impl RoomNetwork {
    /// Heat to the air that brings it to a temperature at the end of a time, whatever it does before:
    /// θ_air(t) is a straight line in the heat, so two of its points tell, W. Below 0 where the room is
    /// too warm anyway.
    pub fn heat_to_reach(
        &self,
        to: Temperature,
        within: Time,
        outdoor: Temperature,
        mass_from: Temperature,
    ) -> Power {
        let step = self.step(0.0, within.value());
        let outdoors = outdoor.as_celsius();
        let air_after = |heat: f64| {
            let drive =
                Drive { to_air: heat, to_surface: 0.0, to_mass: 0.0, outdoors, at_steel: outdoors };
            let mass = step.go(self, &drive, mass_from.as_celsius()).mass_after;
            self.step(0.0, within.value()).air_at(self, &drive, mass)[0]
        };
        let (without, with_one) = (air_after(0.0), air_after(1.0));
        Power::new((to.as_celsius() - without) / (with_one - without))
    }

    /// Reheat power Φ_hu: what the heater must give beyond the steady loss to bring the air back to its
    /// temperature in a time, after the room stood unheated until it had fallen by the setback, or for as long
    /// as it was not used if it does not fall so far, W. Nothing without a setback, and never below
    /// nothing: air is warm at once where the time is long.
    ///
    /// A room that has fallen by the whole setback is held there for the rest of that time, in which its mass goes on
    /// cooling towards the steady state of that temperature.
    ///
    /// Range: setback from 0, times above 0. Source: the part Φ_hu of EN 12831-1:2017, which gives its size by a table of
    /// building types; here it is that of this room's own network.
    pub fn heat_to_reheat(
        &self,
        room: Temperature,
        setback: TemperatureDifference,
        unused: Time,
        within: Time,
        outdoor: Temperature,
    ) -> Power {
        if setback.value() <= 0.0 || unused <= Time::ZERO {
            return Power::ZERO;
        }
        let cooling = self.cooling(room, outdoor, RoomPart::Air);
        let low = room - setback;
        let mass = match cooling.until(low) {
            Some(time) if time <= unused => {
                let fallen = self.mass_after_cooling(room, outdoor, time);
                self.mass_after_holding(low, outdoor, fallen, unused - time)
            }
            _ => self.mass_after_cooling(room, outdoor, unused),
        };
        let needed = self.heat_to_reach(room, within, outdoor, mass);
        (needed - self.steady_loss() * (room - outdoor)).max(Power::ZERO)
    }

    /// The mass after a time in which the air is held at a temperature, θ_∞ + (θ_0 − θ_∞)·e^(−t·(H_in + H_out)/C) with H_in
    /// from the air through its surfaces.
    fn mass_after_holding(
        &self,
        air: Temperature,
        outdoor: Temperature,
        from: Temperature,
        lasting: Time,
    ) -> Temperature {
        let towards = self.steady(self.steady_loss() * (air - outdoor), outdoor).mass;
        let from_air = 1.0 / (1.0 / self.surface_to_air + 1.0 / self.mass_to_surface);
        let rate = (from_air + self.mass_to_outdoors) / self.capacity;
        towards + (from - towards) * libm::exp(-lasting.value() * rate)
    }

    /// The mass after a time without heat, from the steady state at a room temperature.
    fn mass_after_cooling(
        &self,
        room: Temperature,
        outdoor: Temperature,
        lasting: Time,
    ) -> Temperature {
        let outdoors = outdoor.as_celsius();
        let drive =
            Drive { to_air: 0.0, to_surface: 0.0, to_mass: 0.0, outdoors, at_steel: outdoors };
        let held = self.steady(self.steady_loss() * (room - outdoor), outdoor).mass;
        let step = self.step(0.0, lasting.value());
        Temperature::celsius(step.go(self, &drive, held.as_celsius()).mass_after)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{HeatCapacity, HeatTransferCoefficient};

    /// One node, closed form: Φ = H·(θ − θ_e − (θ_0 − θ_e)·e^(−t/τ))/(1 − e^(−t/τ)). H = 30 W/K, C = 1.08 MJ/K, so τ = 10 h.
    /// From 20 to 15 °C at −30: ln(50/45)·10 h = 1.05 h, well within a night. Back in 2 h: e^(−0.2) = 0.818731;
    /// 30·(50 − 45·0.818731)/(1 − 0.818731) = 2,177.5 W, less the steady 1,500: 677.5 W.
    #[test]
    fn one_node_comes_back_as_its_closed_form_says() {
        let network =
            RoomNetwork::one_node(HeatTransferCoefficient::new(30.0), HeatCapacity::new(1.08e6))
                .expect("a room");
        let reheat = |setback: f64, unused: f64, within: f64| {
            network
                .heat_to_reheat(
                    Temperature::celsius(20.0),
                    TemperatureDifference::new(setback),
                    Time::hours(unused),
                    Time::hours(within),
                    Temperature::celsius(-30.0),
                )
                .value()
        };
        let decay = 0.818_730_753;
        let expected = 30.0 * (50.0 - 45.0 * decay) / (1.0 - decay) - 1500.0;
        assert!(
            (reheat(5.0, 12.0, 2.0) / expected - 1.0).abs() < 1e-5,
            "{}",
            reheat(5.0, 12.0, 2.0)
        );
        // A setback that half an hour does not reach: 50·e^(−0.05) = 47.5615 K over outdoors at its end.
        let short = 30.0 * (50.0 - 47.561_471 * decay) / (1.0 - decay) - 1500.0;
        assert!((reheat(5.0, 0.5, 2.0) / short - 1.0).abs() < 1e-5, "{}", reheat(5.0, 0.5, 2.0));
        // A deeper setback never asks for less, whether or not it is reached.
        let deeper: Vec<f64> = (1..40).map(|kelvin| reheat(f64::from(kelvin), 12.0, 2.0)).collect();
        assert!(deeper.is_sorted(), "{deeper:?}");
        assert!(reheat(5.0, 12.0, 1.0) > 1.8 * reheat(5.0, 12.0, 2.0));
        assert_eq!(reheat(0.0, 12.0, 2.0), 0.0);
        assert_eq!(reheat(5.0, 0.0, 2.0), 0.0);
    }
}
