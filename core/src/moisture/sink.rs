//! Cold surfaces as sinks of a room's vapour, and the vapour pressure at which a room with sinks is in balance.

use crate::units::{MassFlow, Pressure};

/// A surface that takes water from the air of a room, and gives back what lies on it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Sink {
    /// Conductance A·β/(R_v·T_room), kg/(s·Pa).
    pub conductance: f64,
    /// Vapour pressure of the room with which it is in balance, Pa: flux follows the difference of vapour
    /// concentrations p/(R_v·T), each at its own temperature, so p_sat(θ_s)·T_room/T_s.
    pub balance: f64,
    /// The most it can give back, kg/s: nothing where nothing lies on it.
    pub gives_at_most: f64,
}

impl Sink {
    /// What it takes at a vapour pressure of the room, kg/s; below 0 what it gives back.
    pub fn takes(&self, pascals: f64) -> f64 {
        let taken = self.conductance * (pascals - self.balance);
        if taken > -self.gives_at_most { taken } else { -self.gives_at_most }
    }
}

/// What is given to a room's air and carried off by its air, apart from sinks: N − D·p, kg/s at a vapour pressure
/// in Pa.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Supply {
    /// N, kg/s.
    pub given: f64,
    /// D, kg/(s·Pa).
    pub carried: f64,
}

impl Supply {
    /// The vapour pressure at which what is given, carried off and taken balance, N − D·p = Σ takes(p), Pa.
    ///
    /// The left falls and the right rises with p, both in straight pieces: each round takes the pieces that hold at the
    /// last pressure (Newton's method, exact once the pieces stand), from a first guess.
    /// Range: D above 0.
    pub fn balanced(&self, sinks: &[Sink], guess: f64) -> f64 {
        if sinks.is_empty() {
            return self.given / self.carried;
        }
        let mut pascals = guess;
        for _ in 0..2 * sinks.len() + 2 {
            let (mut up, mut down) = (self.given, self.carried);
            for sink in sinks {
                if sink.conductance * (pascals - sink.balance) > -sink.gives_at_most {
                    up += sink.conductance * sink.balance;
                    down += sink.conductance;
                } else {
                    up += sink.gives_at_most;
                }
            }
            let next = up / down;
            let moved = next - pascals;
            pascals = next;
            if moved.abs() <= 1e-10 * pascals.abs() {
                break;
            }
        }
        pascals
    }

    /// What is left over at a vapour pressure, kg/s.
    pub fn left(&self, sinks: &[Sink], pascals: f64) -> f64 {
        let taken: f64 = sinks.iter().map(|sink| sink.takes(pascals)).sum();
        self.given - self.carried * pascals - taken
    }
}

/// All that sinks take at a vapour pressure of the room, kg/s.
pub fn taken(sinks: &[Sink], vapour: Pressure) -> MassFlow {
    MassFlow::new(sinks.iter().map(|sink| sink.takes(vapour.value())).sum())
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Worked by hand. N = 10, D = 1: 10 Pa without sinks. Sink of conductance 1 and balance 4: (10 + 4)/2 = 7. A second of
    /// conductance 2 and balance 8 stays dry; wet with no end of water it gives: (10 + 4 + 16)/4 = 7.5; wet with
    /// only 0.5 it gives that: (10 + 0.5 + 4)/2 = 7.25.
    #[test]
    fn pressures_balance_as_by_hand() {
        let supply = Supply { given: 10.0, carried: 1.0 };
        let cold = Sink { conductance: 1.0, balance: 4.0, gives_at_most: 0.0 };
        let warm = |gives_at_most| Sink { conductance: 2.0, balance: 8.0, gives_at_most };
        for (sinks, expected) in [
            (vec![], 10.0),
            (vec![cold], 7.0),
            (vec![cold, warm(0.0)], 7.0),
            (vec![cold, warm(100.0)], 7.5),
            (vec![cold, warm(0.5)], 7.25),
        ] {
            for guess in [0.0, 3.0, 7.4, 50.0] {
                let found = supply.balanced(&sinks, guess);
                assert!((found - expected).abs() < 1e-9, "{found} for {sinks:?}");
                assert!(supply.left(&sinks, found).abs() < 1e-9);
            }
        }
    }
}
