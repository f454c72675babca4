//! The year by months only, as a cross-check of the hours.

use crate::units::{Energy, HeatCapacity, HeatTransferCoefficient, Temperature, Time};

/// Share η of the gains of a month that saves heating, with γ = gains over losses and a time constant τ:
/// (1 − γ^a)/(1 − γ^(a+1)), a/(a+1) at γ = 1, with a = 1 + τ/15 h; 1 where there are no gains, or where
/// a cold sky takes more than they bring.
///
/// Range: τ above 0. Source: ISO 13790:2008, 12.2.1.1, monthly method (from memory).
pub fn gain_utilisation(gains_over_losses: f64, time_constant: Time) -> f64 {
    let a = 1.0 + time_constant.as_hours() / 15.0;
    let gamma = gains_over_losses;
    if gamma <= 0.0 {
        1.0
    } else if (gamma - 1.0).abs() < 1e-9 {
        a / (a + 1.0)
    } else {
        (1.0 - libm::pow(gamma, a)) / (1.0 - libm::pow(gamma, a + 1.0))
    }
}

/// Heat a room needs in a month: losses less the share of the gains that saves heating,
/// H·(θ_i − θ_e)·t − η·gains; nothing in a month as warm as the room.
///
/// Source: ISO 13790:2008, 7.2.1.1, monthly method (from memory).
pub fn monthly_heating(
    loss: HeatTransferCoefficient,
    capacity: HeatCapacity,
    room: Temperature,
    outdoors: Temperature,
    lasting: Time,
    gains: Energy,
) -> Energy {
    let losses = loss * (room - outdoors) * lasting;
    if losses <= Energy::ZERO {
        return Energy::ZERO;
    }
    let time_constant = Time::new(capacity.value() / loss.value());
    losses - gains * gain_utilisation(gains / losses, time_constant)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_sky_that_takes_more_than_comes_in_is_one_loss_more() {
        let needed = |gains: f64| {
            let loss = HeatTransferCoefficient::new(100.0);
            let lasting = Time::hours(10.0);
            monthly_heating(
                loss,
                HeatCapacity::new(1e6),
                Temperature::celsius(20.0),
                Temperature::celsius(0.0),
                lasting,
                Energy::kilowatt_hours(gains),
            )
        };
        assert!((needed(-3.0).as_kilowatt_hours() - 23.0).abs() < 1e-9);
        assert!((needed(0.0).as_kilowatt_hours() - 20.0).abs() < 1e-9);
    }
}
